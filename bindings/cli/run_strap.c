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
    const int status = picture_refused(r, "--svg", r->svg);
    return status ? status : picture_refused(r, "--tilt-svg", r->tilt_svg);
}

/* The strap as it was found, where one was to be found. */
static int draw(request *r)
{
    sw_error err;
    sw_strap_drawing_in how;
    const sw_strap_in *in = &r->question.in.strap;
    int status = DONE;
    sw_strap_drawing_defaults(&how);
    how.show = r->us ? SW_SHOW_US_FIRST : SW_SHOW_SI_FIRST;
    if (request_given(r, "--vial"))
        how.vial_mm_per_m = r->question.arguments.vial_mm_per_m;
    if (r->svg)
        status =
            picture_deliver(r, sw_strap_drawing(in, &how, &err), r->svg, &err);
    if (!status && r->tilt_svg)
        status = picture_deliver(
            r, sw_tilt_plot(in, SW_UNSET, SW_UNSET, how.show, &err),
            r->tilt_svg, &err);
    return status;
}

int run_strap(request *r, page *p)
{
    answer found, a, spread, turn;
    int status = check_pictures(r);
    if (!status)
        status = calibration_take(r);
    if (!status)
        status = find_ask(r, &found);
    if (status)
        return status;
    const topic *find = find_topic(r);
    r->topic->solve(&r->question, &a);
    if (a.out.status)
        return complain_error(r, &a.err);
    turn.out.turn = sw_strap_turn(&r->question.in.strap, SW_UNSET, &turn.err);
    const int spreads = wants_spread(r);
    uint64_t own = topic_warnings(r->topic, &a) | r->calibration.warnings;
    if (spreads) {
        status = spread_strap(r, &spread);
        if (status)
            return status;
        own |= spread.out.strap_spread.warnings;
    }
    r->warnings = own | (find ? topic_warnings(find, &found) : 0);
    status = find && find->out == SW_STRUCT_WINDOW_OUT &&
                     found.out.window.verdict == SW_VERDICT_NONE
                 ? NOT_MET
                 : DONE;
    const int drawn = draw(r);
    if (drawn)
        return drawn;
    const topic *asked = spreads ? r->with : r->topic;
    if (r->json) {
        json j = json_start(p);
        if (spreads && (spread_asked(r) || r->calibration.scatters))
            take_spread(&a.out.strap, &spread.out.strap_spread);
        json_fields(&j, r, r->topic, &a);
        if (find)
            find_json(&j, r, &found);
        if (spreads)
            spread_json(&j, r, &spread);
        if (!turn.out.status)
            turn_json(&j, r, &turn);
        json_calibration(&j, r);
        json_assumed(&j, asked, &r->question, r);
        json_matters(&j, &r->question.in.strap);
        json_not_checked(&j, r->topic);
        json_warnings(&j, "warnings", r->warnings);
        json_end(&j);
        return status;
    }
    if (find)
        say_find(p, r, &found);
    say_strap(p, r, &a.out.strap);
    if (!turn.out.status) /* nobody turns a nut that stands still */
        say_turn(p, &turn.out.turn);
    if (spreads)
        say_strap_spread(p, r, &spread.out.strap_spread);
    say_calibration(p, r);
    say_warnings(p, own);
    /* what matters is judged by the nominal answer; one that has none gets the
     * plain list */
    if (own & SW_WARN_NO_NOMINAL)
        r->assumed = 1;
    if (!r->assumed)
        say_matters(p, r->us, &r->question.in.strap, a.out.strap.toe_force_N);
    say_assumed(p, r->us, r->assumed ? asked : NULL, &r->question, r);
    say_not_checked(p, r->topic);
    say_caution(p);
    return status;
}
