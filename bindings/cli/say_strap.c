/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say strap: a strap clamp as a machinist reads it at the bench: the toe force,
 * then which way the part is drawn, then everything that gives way.
 */
#include "cli.h"

#include <math.h>
#include <string.h>

/* A nut that does not turn has a range and no value in it to aim at. */
static int has_nominal(const sw_strap_out *s)
{
    return !(s->warnings & SW_WARN_NO_NOMINAL);
}

static void say_head(page *p, int us, const sw_strap_in *in,
                     const sw_strap_out *s)
{
    const size_t start = p->length;
    const sw_thread_out t = sw_thread(in->thread, NULL);
    page_add(p, t.designation);
    page_add(p, ", stud tension ");
    say_force(p, us, s->preload_N);
    if (has_nominal(s)) { /* else nobody turns the nut */
        page_add(p, ", torque ");
        say_torque(p, us, s->torque_Nm);
    }
    page_add(p, ", ");
    if (fabs(s->tilt_deg) < 0.0005) {
        page_add(p, "level");
    } else {
        page_add(p, "heel" KEEP);
        page_add(p, s->tilt_deg > 0 ? "high by " : "LOW by ");
        page_fixed(p, fabs(s->tilt_deg), fabs(s->tilt_deg) < 0.05 ? 3 : 2);
        page_add(p, KEEP "deg");
    }
    page_wrap(p, start, 0);
    page_add(p, "\n\n");
}

static void say_forces(page *p, int us, const sw_strap_out *s)
{
    size_t start = say_label(p, "toe force");
    const int band = s->toe_force_low_N < s->toe_force_high_N;
    if (has_nominal(s) || !band)
        say_force(p, us, s->toe_force_N);
    if (band) {
        page_add(p, has_nominal(s) ? ", " : "");
        say_force_range(p, us, s->toe_force_low_N, s->toe_force_high_N);
        page_add(p, " in the model's band");
    }
    say_done(p, start);

    start = say_label(p, "lever ratio");
    page_fixed(p, s->lever_ratio, 3);
    page_add(p, ": level, the toe would get ");
    say_force(p, us, s->toe_force_level_N);
    if (has_nominal(s) && fabs(s->toe_force_error_pct) >= 0.05) {
        page_add(p, "; this is ");
        page_fixed(p, fabs(s->toe_force_error_pct), 1);
        page_add(p, s->toe_force_error_pct < 0 ? KEEP "% less" : KEEP "% more");
    }
    say_done(p, start);

    start = say_label(p, "heel force");
    if (has_nominal(s))
        say_force(p, us, s->heel_force_N);
    else /* what the toe does not take of the stud's pull */
        say_force_range(p, us, s->preload_N - s->toe_force_high_N,
                        s->preload_N - s->toe_force_low_N);
    say_done(p, start);
}

/* "120 N (27 lbf) toward" */
static void say_way(page *p, int us, double pull)
{
    if (fabs(pull) < 0.05) {
        page_add(p, "0");
        return;
    }
    say_force(p, us, fabs(pull));
    page_add(p, pull > 0 ? KEEP "toward" : KEEP "away");
}

static const char *pull_words(int direction)
{
    switch (direction) {
    case SW_PULL_TOWARD:
        return "The part is drawn TOWARD the stud with ";
    case SW_PULL_AWAY:
        return "The part is pushed AWAY from the stud with ";
    default:
        return "The part is not drawn either way";
    }
}

static void say_pull(page *p, int us, const sw_strap_out *s)
{
    page_add(p, "\n");
    if (has_nominal(s)) {
        page_add(p, pull_words(s->pull_direction));
        if (s->pull_direction != SW_PULL_NONE)
            say_force(p, us, fabs(s->side_pull_N));
        page_add(p, ".\n");
    } else {
        page_add(p, "The nut does not turn: the part is drawn somewhere within "
                    "the range.\n");
    }
    const size_t start = say_label(p, "range");
    say_way(p, us, s->side_pull_low_N);
    if (s->side_pull_low_N != s->side_pull_high_N) {
        page_add(p, " .. ");
        say_way(p, us, s->side_pull_high_N);
    }
    say_done(p, start);
    page_add(p, "\n");
}

static void say_drag(page *p, int us, const sw_strap_out *s)
{
    size_t start = say_label(p, "nut drag");
    if (!has_nominal(s)) {
        page_add(p, "none, the nut is not turned");
        say_done(p, start);
        return;
    }
    say_force(p, us, s->drag_N);
    page_add(p, ", within ");
    say_force_range(p, us, s->drag_low_N, s->drag_high_N);
    page_add(p, ", to the right of one who stands at the stud and faces the "
                "part");
    page_add(p, ". Hold the strap with a second spanner or a stop while the "
                "nut is turned.");
    say_done(p, start);

    start = say_label(p, "net on the part");
    say_force(p, us, s->net_part_force_N);
    if (s->net_part_force_N > 0) {
        page_add(p, " at ");
        page_fixed(p, s->net_part_angle_deg, 0);
        page_add(p, KEEP "deg (0 toward the stud, 90 to the right, 180 "
                         "away)");
    }
    page_add(p, ": ");
    say_percent(p, s->toe_friction_use);
    page_add(p, " of what friction at the toe holds");
    say_done(p, start);
}

static const char *seat_words(const sw_strap_out *s)
{
    switch (s->seat_state) {
    case SW_STATE_LEVEL:
        return "no tilt at the nut";
    case SW_STATE_CONFORMED:
        return s->foot_bending_Nm > 0
                   ? "the stud bends until the nut lies flat"
                   : "the stud leans in its foot until the nut lies flat";
    case SW_STATE_RIM:
        return "the nut or washer bears on its rim only";
    case SW_STATE_SWIVELLED:
        return "the spherical pair takes the tilt up";
    default:
        return "-";
    }
}

static void say_seat(page *p, int us, const sw_strap_out *s)
{
    const size_t start = say_label(p, "seat of the nut");
    page_add(p, seat_words(s));
    if (fabs(s->seat_offset_mm) >= 0.005) {
        page_add(p, "; it bears ");
        say_length(p, us, fabs(s->seat_offset_mm));
        page_add(p, s->seat_offset_mm > 0 ? " off its axis, toward the toe"
                                          : " off its axis, toward the heel");
    }
    if (fabs(s->nut_travel_mm) >= 0.005) {
        page_add(p, "; it moves ");
        say_length(p, us, fabs(s->nut_travel_mm));
        page_add(p,
                 s->nut_travel_mm > 0 ? " toward the toe" : " toward the heel");
    }
    say_done(p, start);
}

static void say_stud(page *p, int us, const sw_strap_in *in,
                     const sw_strap_out *s)
{
    const size_t start = say_label(p, "stud");
    if (!has_nominal(s)) {
        page_add(p, "bent the more the firmer the seat holds the nut: up to ");
    } else if (s->stud_bending_Nm == 0 && s->foot_bending_Nm == 0) {
        page_add(p, "not bent; ");
    } else {
        page_add(p, "bent by ");
        say_torque(p, us, fabs(s->stud_bending_Nm));
        page_add(p, " at the nut, ");
        say_torque(p, us, fabs(s->foot_bending_Nm));
        page_add(p, " at the foot; ");
    }
    say_stress(p, us, s->stud_stress_MPa);
    page_add(p, " with the tension");
    if (is_known(s->stud_yield_use)) {
        page_add(p,
                 has_nominal(s) ? ", and with the twist of tightening " : ", ");
        say_percent(p, s->stud_yield_use);
        page_add(p, " of the yield of ");
        say_grade(p, in->grade);
        page_add(p, " at the root of its thread");
    }
    say_done(p, start);
}

static void say_strap_itself(page *p, int us, const sw_strap_out *s)
{
    size_t start = say_label(p, "strap");
    say_stress(p, us, s->strap_stress_MPa);
    page_add(p, " from bending at the stud");
    if (s->strap_sag_mm > 0) {
        page_add(p, "; it sags ");
        say_length(p, us, s->strap_sag_mm);
    }
    say_done(p, start);

    start = say_label(p, "highest point");
    say_length(p, us, s->top_mm);
    page_add(p, " over the table");
    say_done(p, start);

    if (s->unheld_N != 0) {
        start = say_label(p, "not held");
        say_force(p, us, fabs(s->unheld_N));
        page_add(p, s->unheld_N > 0 ? " toward the toe" : " toward the heel");
        page_add(p, ": the strap walks until the end of its slot meets the "
                    "stud");
        say_done(p, start);
    }
}

static void say_edge(page *p, int us, const sw_strap_out *s)
{
    const double radian = in_unit(1, "rad", SW_KIND_ANGLE); /* of a degree */
    const double lift =
        s->edge_lift_mm - s->toe_place_mm * tan(s->tilt_deg * radian);
    if (s->toe_bears == SW_BEARS_EDGE && lift > 0) {
        const size_t start = say_label(p, "toe");
        page_add(p, "bears on the part's edge; with the heel higher by ");
        say_length(p, us, lift);
        page_add(p, " it comes off the edge and bears at the strap's end");
        say_done(p, start);
    }
    if (s->toe_bears == SW_BEARS_TIP || s->heel_bears == SW_BEARS_TIP) {
        const size_t start =
            say_label(p, s->toe_bears == SW_BEARS_TIP ? "toe" : "heel");
        page_add(p, s->toe_bears == SW_BEARS_TIP
                        ? "bears at the strap's end"
                        : "bears at the outer edge of the block");
        say_done(p, start);
    }
}

void say_strap(page *p, request *r, const sw_strap_out *s)
{
    sw_strap_in full = r->question.in.strap;
    if (sw_strap_resolve(&full, NULL)) /* solved before, so it resolves */
        return;
    say_head(p, r->us, &full, s);
    say_forces(p, r->us, s);
    say_pull(p, r->us, s);
    say_drag(p, r->us, s);
    if (has_nominal(s))
        say_seat(p, r->us, s);
    say_stud(p, r->us, &full, s);
    say_strap_itself(p, r->us, s);
    say_edge(p, r->us, s);
}

void say_turn(page *p, const sw_turn_out *t)
{
    const size_t start = say_label(p, "turn from snug");
    page_number(p, t->turn_deg, 2);
    page_add(p, KEEP "deg, within ");
    page_number(p, t->turn_low_deg, 2);
    page_add(p, KEEP ".." KEEP);
    page_number(p, t->turn_high_deg, 2);
    page_add(p, KEEP "deg (a flat is 60): a cross-check, no setting");
    say_done(p, start);
}
