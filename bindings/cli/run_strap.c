/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Run strap: one strap clamp, and before it what was to be found.
 */
#include "cli.h"

#include <string.h>

static void find_json(json *j, request *r, answer *found)
{
    const topic *t = find_topic(r);
    json_open(j, "find", '{');
    json_fields(j, r, t, found);
    json_warnings(j, "warnings", topic_warnings(t, found));
    json_close(j, '}');
}

static void turn_json(json *j, request *r, answer *turn)
{
    json_open(j, "turn", '{');
    json_fields(j, r, topic_named("turn"), turn);
    json_close(j, '}');
}

static void spread_json(json *j, request *r, answer *spread)
{
    json_open(j, "spread", '{');
    json_fields(j, r, r->with, spread);
    json_close(j, '}');
}

/* What each open value can do to the answer, in the order of "assumed". */
static void json_matters(json *j, const sw_strap_in *in)
{
    json_open(j, "matters", '[');
    for (int i = 0;; i++) {
        const sw_matter_out m = sw_strap_matters(in, i, NULL);
        if (m.status)
            break;
        json_open(j, NULL, '{');
        json_text(j, "name", m.name);
        json_number(j, "toe_low_N", m.toe_low_N);
        json_number(j, "toe_high_N", m.toe_high_N);
        json_number(j, "pull_low_N", m.pull_low_N);
        json_number(j, "pull_high_N", m.pull_high_N);
        json_close(j, '}');
    }
    json_close(j, ']');
}

/* The scatter is carried on wherever a torque is what is set; the low and high
 * of the answer itself hold it where it was asked for. */
static int wants_spread(const request *r)
{
    const sw_strap_in *in = &r->question.in.strap;
    const int turned = in->nut != SW_NUT_STILL;
    return spread_asked(r) || (turned && (is_known(in->torque_Nm) || r->find));
}

static void take_spread(sw_strap_out *s, const sw_strap_spread_out *spread)
{
    s->toe_force_low_N = spread->toe_force_low_N;
    s->toe_force_high_N = spread->toe_force_high_N;
    s->side_pull_low_N = spread->side_pull_low_N;
    s->side_pull_high_N = spread->side_pull_high_N;
    s->band = spread->band;
}

static int check_pictures(const request *r)
{
    if (r->svg && r->tilt_svg && strcmp(r->svg, r->tilt_svg) == 0)
        return complain(BAD_INPUT, r->command->name,
                        "--tilt-svg: not the same file as --svg", (char *)NULL);
    if (r->tilt_svg && r->question.in.strap.nut == SW_NUT_STILL)
        return complain(BAD_INPUT, r->command->name,
                        "--tilt-svg: a nut that is not turned has a range, and "
                        "no line to plot",
                        (char *)NULL);
    const int status = picture_refused(r, "--svg", r->svg);
    return status ? status : picture_refused(r, "--tilt-svg", r->tilt_svg);
}

/* The strap as it was found, where one was to be found. Both are made before
 * one is written. */
static int draw(request *r)
{
    sw_error err;
    sw_strap_drawing_in how;
    const sw_strap_in *in = &r->question.in.strap;
    sw_drawing *views = NULL, *plot = NULL;
    sw_strap_drawing_defaults(&how);
    how.show = r->us ? SW_SHOW_US_FIRST : SW_SHOW_SI_FIRST;
    if (request_given(r, "--vial"))
        how.vial_mm_per_m = r->question.arguments.vial_mm_per_m;
    if (r->svg && !(views = sw_strap_drawing(in, &how, &err)))
        return complain_error(r, &err);
    if (r->tilt_svg &&
        !(plot = sw_tilt_plot(in, SW_UNSET, SW_UNSET, how.show, &err))) {
        sw_drawing_free(views);
        return complain_error(r, &err);
    }
    int status = views ? picture_deliver(r, views, r->svg, &err) : DONE;
    if (!status && views && plot && same_file(r->svg, r->tilt_svg))
        status =
            complain(BAD_INPUT, r->command->name,
                     "--tilt-svg: not the same file as --svg", (char *)NULL);
    if (!status && plot)
        return picture_deliver(r, plot, r->tilt_svg, &err);
    sw_drawing_free(plot);
    return status;
}

typedef struct {
    answer found, strap, spread, turn;
    const topic *find; /* what was asked backwards, or NULL */
    int spreads;
    uint64_t own; /* warnings of the strap itself */
} told;

static int solve(request *r, told *a)
{
    int status = check_pictures(r);
    if (!status)
        status = calibration_take(r);
    if (!status)
        status = find_ask(r, &a->found);
    if (status)
        return status;
    a->find = find_topic(r);
    r->topic->solve(&r->question, &a->strap);
    if (a->strap.out.status)
        return complain_error(r, &a->strap.err);
    a->turn.out.turn =
        sw_strap_turn(&r->question.in.strap, SW_UNSET, &a->turn.err);
    a->spreads = wants_spread(r);
    a->own = topic_warnings(r->topic, &a->strap) | r->calibration.warnings;
    if (a->spreads) {
        status = spread_strap(r, &a->spread);
        if (status)
            return status;
        a->own |= a->spread.out.strap_spread.warnings;
    }
    r->warnings = a->own | (a->find ? topic_warnings(a->find, &a->found) : 0);
    return DONE;
}

static void whole_json(request *r, page *p, told *a)
{
    json j = json_start(p);
    if (a->spreads && (spread_asked(r) || r->calibration.scatters))
        take_spread(&a->strap.out.strap, &a->spread.out.strap_spread);
    json_fields(&j, r, r->topic, &a->strap);
    if (a->find)
        find_json(&j, r, &a->found);
    if (a->spreads)
        spread_json(&j, r, &a->spread);
    if (!a->turn.out.status)
        turn_json(&j, r, &a->turn);
    json_calibration(&j, r);
    json_assumed(&j, a->spreads ? r->with : r->topic, &r->question, r);
    json_matters(&j, &r->question.in.strap);
    json_not_checked(&j, r->topic);
    json_warnings(&j, "warnings", r->warnings);
    json_end(&j);
}

static void whole_text(request *r, page *p, told *a)
{
    const sw_strap_out *strap = &a->strap.out.strap;
    if (a->find)
        say_find(p, r, &a->found);
    say_strap(p, r, strap);
    if (!a->turn.out.status) /* nobody turns a nut that stands still */
        say_turn(p, &a->turn.out.turn);
    if (a->spreads)
        say_strap_spread(p, r, &a->spread.out.strap_spread);
    say_calibration(p, r);
    say_warnings(p, a->own);
    /* what matters is judged by the nominal answer; one that has none gets the
     * plain list */
    if (a->own & SW_WARN_NO_NOMINAL)
        r->assumed = 1;
    const topic *asked = a->spreads ? r->with : r->topic;
    if (!r->assumed)
        say_matters(p, r->us, &r->question.in.strap, strap->toe_force_N);
    say_assumed(p, r->us, r->assumed ? asked : NULL, &r->question, r);
    say_not_checked(p, r->topic);
    say_caution(p);
}

int run_strap(request *r, page *p)
{
    told a;
    int status = solve(r, &a);
    if (status)
        return status;
    const int none = a.find && a.find->out == SW_STRUCT_WINDOW_OUT &&
                     a.found.out.window.verdict == SW_VERDICT_NONE;
    if (r->json)
        whole_json(r, p, &a);
    else
        whole_text(r, p, &a);
    if (none) /* there is no strap to draw */
        return NOT_MET;
    return draw(r);
}
