/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Remark change: what to change at the bench, and what it would bring, by
 * asking the same strap with that one thing changed: the heel at level, a
 * spherical pair, the stud a third of the way from part to heel, the strap
 * held.
 *
 * A low heel is always to be raised; a high one is to be lowered only where
 * that leaves less side pull, since a heel a little high does no harm. A land
 * on the part's edge comes off it with the heel at edge_lift_mm over level.
 */
#include "clamp/remark.h"

#include <strapwise/say.h>

#define WORTH 0.8      /* of a side pull: less of a change is no word's worth */
#define WORTH_MM 0.005 /* of a heel's height, likewise: it is told as 0.00 */

/* "the side pull would go from .. to .." */
static void add_pulls(sw__remarks *r, const sw_strap_out *then)
{
    if (r->still) {
        sw__remark_add(r, "the side pull would lie ");
        sw__remark_pull_range(r, then);
    } else {
        sw__remark_add(r, "the side pull would go from ");
        sw__remark_pull(r, &r->out);
        sw__remark_add(r, " to ");
        sw__remark_pull(r, then);
    }
}

/* "the toe force would go from .. to ..", without a verb behind add_pulls() */
static void add_toes(sw__remarks *r, const char *verb, const sw_strap_out *then)
{
    sw__remark_add(r, "the toe force ");
    sw__remark_add(r, verb);
    if (r->still) {
        sw__remark_toe_range(r, then);
    } else {
        sw__remark_add(r, "from ");
        sw__remark_say(r, r->out.toe_force_N, SW_KIND_FORCE);
        sw__remark_add(r, " to ");
        sw__remark_say(r, then->toe_force_N, SW_KIND_FORCE);
    }
}

static sw_strap_out at_level(const sw__remarks *r)
{
    sw_strap_in q = r->open;
    q.heel_height_mm = SW_UNSET;
    q.tilt_deg = 0;
    return sw__remark_ask(r, &q);
}

static void say_heel(sw__remarks *r)
{
    const int low = sw__remark_warns(r, SW_WARN_HEEL_LOW);
    const int edge =
        sw__remark_warns(r, SW_WARN_TOE_ON_EDGE) && r->out.edge_lift_mm > 0;
    if (!low && edge) {
        if (!sw__remark(r, SW_ABOUT_CHANGE))
            return;
        sw__remark_add(r, "Raise the heel until it stands ");
        sw__remark_say(r, r->out.edge_lift_mm, SW_KIND_LENGTH);
        sw__remark_add(r, " above level: then a flat nose comes off the part's "
                          "edge.");
        return;
    }
    const sw_strap_out level = at_level(r);
    const int helps =
        !r->still && r->rise_mm >= WORTH_MM &&
        fabs(level.side_pull_N) < WORTH * fabs(r->out.side_pull_N);
    if (level.status || !(low || helps) || !sw__remark(r, SW_ABOUT_CHANGE))
        return;
    sw__remark_add(r, low ? "Raise the heel by " : "Lower the heel by ");
    sw__remark_say(r, fabs(r->rise_mm), SW_KIND_LENGTH);
    sw__remark_add(r, " to level: ");
    add_pulls(r, &level);
    sw__remark_add(r, ", and ");
    add_toes(r, "", &level);
    if (edge) {
        sw__remark_add(r, "; a flat nose comes off the edge ");
        sw__remark_say(r, r->out.edge_lift_mm, SW_KIND_LENGTH);
        sw__remark_add(r, " above level");
    }
    sw__remark_add(r, ".");
}

/* Before all else: the elastic answer ends where the stud yields. */
static void say_yield(sw__remarks *r)
{
    if (!sw__remark_warns(r, SW_WARN_STUD_YIELDS))
        return;
    const sw_strap_out level = at_level(r);
    if (level.status || !sw__is_set(level.stud_yield_use) ||
        !sw__remark(r, SW_ABOUT_CHANGE))
        return;
    if (level.stud_yield_use < 1 && r->rise_mm != 0) {
        sw__remark_add(r, "Spare the stud: with the strap level it would be "
                          "loaded to ");
        sw__remark_say(r, level.stud_yield_use, SW_KIND_RATIO);
        sw__remark_add(r, " of its yield instead of ");
        sw__remark_say(r, r->out.stud_yield_use, SW_KIND_RATIO);
        sw__remark_add(r, ".");
    } else {
        sw__remark_add(r, "Turn the nut less or take a stronger stud: even "
                          "level it would be loaded to ");
        sw__remark_say(r, level.stud_yield_use, SW_KIND_RATIO);
        sw__remark_add(r, " of its yield.");
    }
}

static void say_pair(sw__remarks *r)
{
    if (r->in.seat != SW_SEAT_FLAT || !sw__remark_is_bent(r))
        return;
    sw_strap_in q = r->open;
    q.seat = SW_SEAT_SPHERICAL;
    q.stud_length_mm = r->in.stud_length_mm;
    const sw_strap_out pair = sw__remark_ask(r, &q);
    if (pair.status || !sw__remark(r, SW_ABOUT_CHANGE))
        return;
    sw__remark_add(r, pair.seat_state == SW_STATE_SWIVELLED
                          ? "A spherical washer pair would take the slope up "
                            "and spare the stud its bending"
                          : "A spherical washer pair would take up part of the "
                            "slope");
    const int worse =
        !r->still && WORTH * fabs(pair.side_pull_N) > fabs(r->out.side_pull_N);
    sw__remark_add(r, worse ? ", but " : ": ");
    add_pulls(r, &pair);
    sw__remark_add(r, ".");
}

static void say_stud_place(sw__remarks *r)
{
    const double span = r->in.stud_to_toe_mm + r->in.stud_to_heel_mm;
    const double far = 0.4; /* of the span; a third is what shops aim at */
    if (!(r->in.stud_to_toe_mm > far * span))
        return;
    sw_strap_in q = r->open;
    q.stud_to_toe_mm = span / 3;
    q.stud_to_heel_mm = span - q.stud_to_toe_mm;
    const sw_strap_out nearer = sw__remark_ask(r, &q);
    if (nearer.status || !sw__remark(r, SW_ABOUT_CHANGE))
        return;
    sw__remark_add(r, "Move the stud nearer the part, to ");
    sw__remark_say(r, q.stud_to_toe_mm, SW_KIND_LENGTH);
    sw__remark_add(r, " from the toe, a third of the way to the heel: with the "
                      "same pull in the stud ");
    add_toes(r, r->still ? "would lie " : "would go ", &nearer);
    sw__remark_add(r, ".");
}

static void say_hold(sw__remarks *r)
{
    if (r->still || !(r->out.drag_N > 0) || !sw__remark(r, SW_ABOUT_CHANGE))
        return;
    sw__remark_add(r, "Hold the strap while the nut is turned, with a second "
                      "spanner or against a stop: the drag of ");
    sw__remark_say(r, r->out.drag_N, SW_KIND_FORCE);
    sw__remark_add(r, " is gone.");
}

void sw__remark_changes(sw__remarks *r)
{
    say_yield(r);
    say_heel(r);
    say_pair(r);
    say_stud_place(r);
    say_hold(r);
}
