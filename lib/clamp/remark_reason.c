/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Remark reason: why the part is pressed, drawn or pushed as it is. Equations
 * as numbered in strap.c: the lever (1), the tilt at the nut (2), the strap's
 * own spread that the heel hands on (4) to (6), the edge (8), the stud (11).
 */
#include "clamp/remark.h"

#include <strapwise/say.h>

static void say_lever(sw__remarks *r)
{
    const sw_strap_out *s = &r->out;
    if (!sw__remark(r, SW_ABOUT_REASON))
        return;
    if (sw__remark_warns(r, SW_WARN_STUD_NEAR_HEEL)) {
        sw__remark_add(r, "The stud stands nearer the heel than the part, so "
                          "by the lever the heel takes the larger share of "
                          "the stud's ");
        sw__remark_say(r, s->preload_N, SW_KIND_FORCE);
    } else {
        sw__remark_add(r, "By the lever the toe gets ");
        sw__remark_say(r, s->lever_ratio, SW_KIND_RATIO);
        sw__remark_add(r, " of the stud's ");
        sw__remark_say(r, s->preload_N, SW_KIND_FORCE);
        sw__remark_add(r, " and the heel the rest");
    }
    if (!r->still) {
        sw__remark_add(r, "; as the strap stands, the toe presses with ");
        sw__remark_say(r, s->toe_force_N, SW_KIND_FORCE);
    }
    sw__remark_add(r, ".");
}

static void add_edge(sw__remarks *r)
{
    if (sw__remark_warns(r, SW_WARN_TOE_ON_EDGE))
        sw__remark_add(r, "; its flat nose bears on the part's edge");
}

/* How the strap leans under the nut. */
static void add_slope(sw__remarks *r)
{
    const int level = fabs(r->in.tilt_deg) <= SW__DEG(1e-9);
    if (level) {
        sw__remark_add(r, "Bent by its load, the strap slopes under the nut: ");
        return;
    }
    sw__remark_add(r, r->out.tilt_deg < 0 ? "The heel is low by "
                                          : "The heel is high by ");
    sw__remark_say(r, fabs(r->rise_mm), SW_KIND_LENGTH);
    sw__remark_add(r, r->out.tilt_deg < 0
                          ? ", so the strap climbs toward the part: "
                          : ", so the strap slopes down to the part: ");
}

static void say_tilt(sw__remarks *r)
{
    const sw_strap_out *s = &r->out;
    if (s->seat_state == SW_STATE_LEVEL &&
        !sw__remark_warns(r, SW_WARN_HEEL_LOW))
        return;
    if (!sw__remark(r, SW_ABOUT_REASON))
        return;
    add_slope(r);
    if (s->seat_state == SW_STATE_SWIVELLED) {
        sw__remark_add(r, "the spherical pair takes that up, so that the nut "
                          "pulls straight and the stud stays unbent");
    } else if (!sw__remark_is_bent(r)) {
        sw__remark_add(r, "its own bending makes it level under the nut");
    } else if (r->still) {
        sw__remark_add(r, "a nut that does not turn sticks on that slope, and "
                          "the bent stud may drag the strap either way");
    } else {
        sw__remark_add(
            r, s->seat_state == SW_STATE_RIM
                   ? "the nut bears on one edge, presses along the "
                     "slope and pushes the strap toward its "
                   : "the nut presses square to that slope and pushes the "
                     "strap toward its ");
        sw__remark_add(r, s->side_load_on_strap_N > 0 ? "toe" : "heel");
        sw__remark_add(r, " with ");
        sw__remark_say(r, fabs(s->side_load_on_strap_N), SW_KIND_FORCE);
        sw__remark_add(r, ", which bends the stud");
    }
    if (sw__remark_warns(r, SW_WARN_SEAT_ANGLE)) {
        sw__remark_add(r, "; the tilt is past the ");
        sw__remark_say(r, r->in.permitted_tilt_deg, SW_KIND_ANGLE);
        sw__remark_add(r, " that the spherical pair takes up");
    }
    if (r->in.strap == SW_STRAP_RIGID)
        add_edge(r);
    sw__remark_add(r, ".");
}

static void say_bending(sw__remarks *r)
{
    const sw_strap_out *s = &r->out;
    if (r->in.strap == SW_STRAP_RIGID || !sw__remark(r, SW_ABOUT_REASON))
        return;
    sw__remark_add(r, "Under load the strap bends and its underside grows ");
    if (r->still) {
        sw__remark_add(r, "longer, and where the heel does not follow it "
                          "pushes the strap toward the part, level or not");
    } else {
        sw__remark_add(r, "by ");
        sw__remark_say(r, s->strap_spread_mm, SW_KIND_LENGTH);
        if (s->heel_side_N > 0) {
            sw__remark_add(r, "; the heel does not follow and pushes the strap "
                              "toward the part with ");
            sw__remark_say(r, s->heel_side_N, SW_KIND_FORCE);
            sw__remark_add(r, ", as it would on a level strap too");
        } else if (s->heel_side_N < 0) {
            sw__remark_add(r, ", yet here the heel holds the strap back from "
                              "the part with ");
            sw__remark_say(r, -s->heel_side_N, SW_KIND_FORCE);
        } else {
            sw__remark_add(r, ", but the heel holds nothing against that");
        }
    }
    add_edge(r);
    sw__remark_add(r, ".");
}

static void say_stud(sw__remarks *r)
{
    const sw_strap_out *s = &r->out;
    const int yields = sw__remark_warns(r, SW_WARN_STUD_YIELDS);
    if (!sw__is_set(s->stud_yield_use) || (!yields && !sw__remark_is_bent(r)) ||
        !sw__remark(r, SW_ABOUT_REASON))
        return;
    sw__remark_add(r, r->still ? "Tension and bending load the stud to "
                               : "Tension, bending and the twist of the nut "
                                 "load the stud to ");
    sw__remark_say(r, s->stud_yield_use, SW_KIND_RATIO);
    sw__remark_add(r, yields ? " of its yield: it is past its yield, where "
                               "these figures end"
                             : " of its yield");
    sw__remark_add(r, ".");
}

void sw__remark_reasons(sw__remarks *r)
{
    say_lever(r);
    say_tilt(r);
    say_bending(r);
    say_stud(r);
}
