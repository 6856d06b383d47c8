/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Find: the questions put to a strap backwards: which tilt, which place of the
 * stud, which torque.
 */
#include "cli.h"

#include <math.h>
#include <string.h>

static const struct {
    const char *word, *topic, *options;
} find_row[] = {
    {"tilt", "tilt", " --side-pull-limit --toe-error-limit --vial --basis"},
    {"place", "place", " --toe-force"},
    {"torque", "strap_torque", " --toe-force"},
    {"window", "strap_window", " --hold --flat"},
};
enum { FINDS = sizeof find_row / sizeof find_row[0] };

static int find_index(const request *r)
{
    for (int i = 0; r->find && i < FINDS; i++)
        if (strcmp(find_row[i].word, r->find) == 0)
            return i;
    return -1;
}

const topic *find_topic(const request *r)
{
    const int i = find_index(r);
    return i < 0 ? NULL : topic_named(find_row[i].topic);
}

static int asks_tilt(const request *r)
{
    return r->find && strcmp(r->find, "tilt") == 0;
}

static int level_assumed(const request *r)
{
    return asks_tilt(r) && !request_given(r, "--tilt") &&
           !request_given(r, "--heel-height");
}

static sw_assumption assumption(const char *name, const char *unit,
                                const char *word, double value,
                                const char *source)
{
    sw_assumption a;
    memset(&a, 0, sizeof a);
    copy_cut(a.name, sizeof a.name, name);
    copy_cut(a.unit, sizeof a.unit, unit);
    copy_cut(a.word, sizeof a.word, word);
    copy_cut(a.source, sizeof a.source, source);
    a.value = value;
    a.low = a.high = SW_UNSET;
    return a;
}

#define VIAL_MM_PER_M 0.02
#define TILT_SOUGHT_DEG 10.0
#define VIAL_MOST 20.0 /* divisions: no vial is longer */

sw_assumption find_assumed(const request *r, int index)
{
    if (asks_tilt(r) && !request_given(r, "--vial") && index-- == 0) {
        sw_assumption a =
            assumption("vial_mm_per_m", "mm/m", "", VIAL_MM_PER_M,
                       "a machinist's level, from memory: read it on the vial");
        a.low = 0.02;
        a.high = 0.3;
        return a;
    }
    if (asks_tilt(r) && !request_given(r, "--basis") && index-- == 0)
        return assumption("basis", "",
                          sw_word(SW_WORDS_BASIS, SW_BASIS_NOMINAL), SW_UNSET,
                          "the nominal answer; the band is stricter");
    if (level_assumed(r) && index == 0)
        return assumption("tilt_deg", "deg", "", 0,
                          "the strap is described level: neither its tilt nor "
                          "its heel height was given");
    sw_assumption none = assumption("", "", "", SW_UNSET, "");
    none.status = SW_ERR_RANGE;
    return none;
}

/* Options of a question that was not asked would silently do nothing. */
static int check_options(const request *r, int asked)
{
    for (int i = 0; i < FINDS; i++) {
        for (int k = 0; k < r->options; k++) {
            const option *o = &r->option[k];
            if (!o->given || !listed(find_row[i].options, o->name) ||
                (r->svg && strcmp(o->name, "--vial") == 0) || /* is drawn */
                (asked >= 0 && listed(find_row[asked].options, o->name)))
                continue;
            return complain(BAD_INPUT, r->command->name, o->name,
                            i == 0   ? ": only with --find tilt"
                            : i == 3 ? ": only with --find window"
                                     : ": only with --find place or --find "
                                       "torque",
                            (char *)NULL);
        }
    }
    return DONE;
}

static int refuse(const request *r, const char *name, const char *why)
{
    return complain(BAD_INPUT, r->command->name, name, why, (char *)NULL);
}

static int check(const request *r)
{
    const int asked = find_index(r);
    if (r->find && asked < 0) {
        page line = {0};
        page_add(&line, "--find: ");
        spell_quoted(&line, r->find);
        page_add(&line, " is none of tilt, place, torque, window");
        return complain_page(BAD_INPUT, r->command->name, &line);
    }
    const int status = check_options(r, asked);
    if (status || asked < 0)
        return status;
    if (asks_tilt(r)) {
        if (!request_given(r, "--side-pull-limit") &&
            !request_given(r, "--toe-error-limit"))
            return refuse(r, "--find tilt",
                          ": give --side-pull-limit, --toe-error-limit or "
                          "both");
        return DONE;
    }
    if (strcmp(r->find, "window") == 0) {
        if (!request_given(r, "--hold") || !request_given(r, "--flat"))
            return refuse(r, "--find window",
                          ": give --hold and --flat, the least and the largest "
                          "toe force");
        if (request_given(r, "--torque") || request_given(r, "--preload"))
            return refuse(r, "--find window",
                          ": finds the torque; give neither --torque nor "
                          "--preload");
        return DONE;
    }
    if (!request_given(r, "--toe-force"))
        return refuse(r, "--toe-force",
                      ": missing; give the toe force wanted "
                      "(--toe-force 6kN)");
    return DONE;
}

int find_ask(request *r, answer *found)
{
    const int status = check(r);
    const topic *t = find_topic(r);
    if (status || !t)
        return status;
    topic_arguments *g = &r->question.arguments;
    sw_strap_in *in = &r->question.in.strap;
    if (!request_given(r, "--vial"))
        g->vial_mm_per_m = VIAL_MM_PER_M;
    if (!request_given(r, "--basis"))
        g->basis = SW_BASIS_NOMINAL;
    t->solve(&r->question, found);
    if (found->out.status)
        return complain_error(r, &found->err);
    /* the strap that is described afterwards is the one that was found */
    if (t->out == SW_STRUCT_PLACE_OUT) {
        in->stud_to_toe_mm = found->out.place.stud_to_toe_mm;
        in->stud_to_heel_mm = found->out.place.stud_to_heel_mm;
    } else if (t->out == SW_STRUCT_STRAP_TORQUE_OUT) {
        in->preload_N = found->out.strap_torque.preload_N;
        in->torque_Nm = SW_UNSET;
    } else if (t->out == SW_STRUCT_WINDOW_OUT) {
        /* where none fits: the middle, which misses both limits alike */
        const sw_window_out *w = &found->out.window;
        in->preload_N = sqrt(w->hold_preload_N) * sqrt(w->flat_preload_N);
        in->torque_Nm = SW_UNSET;
    } else if (level_assumed(r)) {
        in->tilt_deg = 0;
    }
    return DONE;
}

/* "within 100 N of side pull and 5 % of toe force" */
static void say_limits(page *p, const request *r)
{
    const topic_arguments *g = &r->question.arguments;
    if (is_known(g->side_pull_N)) {
        page_add(p, "side pull within ");
        say_force(p, r->us, g->side_pull_N);
    }
    if (is_known(g->toe_error_pct)) {
        page_add(p, is_known(g->side_pull_N) ? " and toe force within "
                                             : "toe force within ");
        page_number(p, g->toe_error_pct, 3);
        page_add(p, KEEP "% of the level strap's");
    }
    page_add(p, g->basis == SW_BASIS_BAND ? ", the worse end of the band"
                                          : ", nominal");
}

static void say_ends(page *p, const char *label, double low, double high,
                     int decimals, const char *unit)
{
    const size_t start = say_label(p, label);
    page_fixed(p, low, decimals);
    page_add(p, KEEP ".." KEEP);
    page_fixed(p, high, decimals);
    page_add(p, KEEP);
    page_add(p, unit);
    say_done(p, start);
}

static void say_entry(page *p, const char *label, const char *text)
{
    const size_t start = say_label(p, label);
    page_add(p, text);
    say_done(p, start);
}

static void say_tilt(page *p, const request *r, const sw_tilt_out *t)
{
    size_t start = p->length;
    page_add(p, "Tilts that keep the ");
    say_limits(p, r);
    page_add(p, " (heel high is positive)\n");
    page_wrap(p, start, 0);
    say_ends(p, "tilt", t->tilt_low_deg, t->tilt_high_deg, 2, "deg");
    if (t->tilt_low_deg <= -TILT_SOUGHT_DEG ||
        t->tilt_high_deg >= TILT_SOUGHT_DEG)
        say_entry(p, "", "10 deg is as far as was looked, not a limit found");
    start = say_label(p, "heel over level");
    say_length_range(p, r->us, t->heel_low_mm, t->heel_high_mm);
    say_done(p, start);
    say_ends(p, "slope", t->slope_low_mm_per_m, t->slope_high_mm_per_m, 1,
             "mm/m");
    if (fmin(fabs(t->divisions_low), fabs(t->divisions_high)) <= VIAL_MOST)
        say_ends(p, "on the level's vial", t->divisions_low, t->divisions_high,
                 1, "divisions");
    else
        say_entry(p, "on the level's vial",
                  "both ends are off the vial; use the heel height");
    start = say_label(p, "side pull there");
    say_force_range(p, r->us, t->side_pull_low_N, t->side_pull_high_N);
    page_add(p, ", toward the stud positive");
    say_done(p, start);
    say_ends(p, "toe force there", t->toe_error_low_pct, t->toe_error_high_pct,
             1, "% off the level strap's");
}

void say_find(page *p, const request *r, const answer *found)
{
    const topic *t = find_topic(r);
    if (t->out == SW_STRUCT_TILT_OUT) {
        say_tilt(p, r, &found->out.tilt);
        say_warnings_as(p, "at the ends of that range",
                        found->out.tilt.warnings);
        page_add(p, "\nThe strap as it was given\n\n");
        return;
    }
    if (t->out == SW_STRUCT_WINDOW_OUT) {
        say_window(p, r->us, &found->out.window, " at the toe");
        page_add(p, found->out.window.verdict == SW_VERDICT_FITS
                        ? "\nThe strap then\n\n"
                        : "\nThe strap half way between the limits\n\n");
        return;
    }
    page_add(p, "For ");
    say_force(p, r->us, r->question.arguments.toe_force_N);
    page_add(p, " at the toe\n");
    size_t start;
    if (t->out == SW_STRUCT_PLACE_OUT) {
        start = say_label(p, "stud to toe");
        say_length(p, r->us, found->out.place.stud_to_toe_mm);
        say_done(p, start);
        start = say_label(p, "stud to heel");
        say_length(p, r->us, found->out.place.stud_to_heel_mm);
        say_done(p, start);
    } else {
        start = say_label(p, "torque on the nut");
        say_torque(p, r->us, found->out.strap_torque.torque_Nm);
        say_done(p, start);
        start = say_label(p, "stud tension");
        say_force(p, r->us, found->out.strap_torque.preload_N);
        say_done(p, start);
    }
    page_add(p, "\nThe strap then\n\n");
}
