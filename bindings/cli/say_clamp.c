/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say clamp: the sentence that comes first: does it hold, what does it give.
 */
#include "cli.h"

#include <string.h>

static void say_stays(page *p, int verdict, int first, double margin,
                      double wanted)
{
    if (!verdict) {
        page_add(p, "No cut was given, so nothing is said about a margin. ");
        return;
    }
    page_add(p, verdict == SW_STAYS_YES      ? "Holds"
                : verdict == SW_STAYS_BARELY ? "Too little margin"
                                             : "Does not hold");
    page_add(p, ": margin ");
    page_number(p, margin, 3);
    page_add(p, " on the cut, ");
    page_number(p, wanted, 3);
    page_add(p, " wanted. ");
    static const char *const what[] = {
        NULL,
        "First the part slides. ",
        "First it turns on its face. ",
        "First a gap opens at its edge. ",
        "First it tips over an edge. ",
        "First it lifts off. ",
        "First the bond tears. ",
        NULL, /* speed: lead_chuck() */
    };
    if (first && what[first])
        page_add(p, what[first]);
}

static void lead_screw(page *p, int us, const sw_screw_in *q,
                       const sw_screw_out *o)
{
    say_force(p, us, o->force_N);
    page_add(p, " along the screw at ");
    say_torque(p, us, o->torque_Nm);
    page_add(p, ". ");
    if (is_known(o->yield_use)) {
        page_add(p, o->yield_use > 1 ? "The screw yields: its stress is "
                                     : "The stress in the screw is ");
        say_percent(p, o->yield_use);
        page_add(p, " of the yield of ");
        say_grade(p, q->grade);
        page_add(p, o->yield_use > 1 ? ". Less torque, a thicker screw or a "
                                       "better grade. "
                                     : ". ");
    }
    page_add(p, "Friction scatters: hold with the low end, look for bow and "
                "marks with the high end.");
}

static void lead_cylinder(page *p, int us, const sw_cylinder_in *q,
                          const sw_cylinder_out *o)
{
    page_add(p, "Count on ");
    say_force(p, us, o->force_N);
    page_add(p, " at ");
    say_shop_pressure(p, us, q->pressure_MPa, "bar");
    if (o->warnings & SW_WARN_DEVICE_LIMIT) {
        page_add(p, ", the most that its maker allows. The device is "
                    "overloaded: ");
        say_force(p, us, o->uncapped_N);
        page_add(p, " acts. Lower the pressure to ");
        say_shop_pressure(p, us, o->pressure_at_limit_MPa, "most bar");
    } else if (!is_known(o->limit_use)) {
        page_add(p, ". The maker's limit is not given: look it up (--limit)");
    }
    page_add(p, ".");
}

static void lead_swing(page *p, int us, const sw_swing_in *q,
                       const sw_swing_out *o)
{
    page_add(p, "Count on ");
    say_force(p, us, o->force_N);
    page_add(p, " at the end of an arm of ");
    say_length(p, us, q->arm_mm);
    const int lower = is_known(q->pressure_MPa) &&
                      is_known(o->allowed_pressure_MPa) &&
                      q->pressure_MPa > o->allowed_pressure_MPa;
    if (o->warnings & SW_WARN_DEVICE_LIMIT) {
        page_add(p, lower ? ", once the pressure is lowered to " : "");
        if (lower)
            say_shop_pressure(p, us, o->allowed_pressure_MPa, "most bar");
        page_add(p, ". The device is overloaded now");
        if (lower) {
            page_add(p, " at ");
            say_shop_pressure(p, us, q->pressure_MPa, "bar");
        }
        if (is_known(q->rated_pressure_MPa) && is_known(q->pressure_MPa) &&
            q->pressure_MPa > q->rated_pressure_MPa) {
            page_add(p, ": that is more than its rated ");
            say_shop_pressure(p, us, q->rated_pressure_MPa, "bar");
        } else if (is_known(o->moment_use) && o->moment_use > 1) {
            page_add(p, ": more than the rated moment acts on the arm");
        } else {
            page_add(p, ": a longer arm than the rated one stands less "
                        "pressure");
        }
    }
    page_add(p, ". The maker's chart governs.");
}

static void lead_vacuum(page *p, int us, const sw_vacuum_in *q,
                        const sw_vacuum_out *o)
{
    say_stays(p, o->verdict, o->first, o->margin, q->required_margin);
    const int flat = q->side_cut_N > 0 && !(q->cut_height_mm > 0),
              down = q->side_cut_N > 0 && !(q->lift_N + q->rim_lift_N > 0);
    if (flat || down)
        page_add(p, flat && down ? "Sliding only: neither the height of the "
                                   "cut nor its lift is given. "
                    : flat ? "Tipping is not tested: the height of the cut is "
                             "not given. "
                           : "The lift of the cut is not given. ");
    page_add(p, "The plate holds ");
    say_force(p, us, o->held_N);
    page_add(p, " at ");
    say_shop_pressure(p, us, q->vacuum_MPa, "inHg");
    page_add(p, ", ");
    say_percent(p, o->vacuum_share);
    page_add(p, " of the air there. ");
    if (o->first == SW_LOSES_SLIDE && o->verdict != SW_STAYS_YES)
        page_add(p, "Stops on the side the cut pushes to help most; abrasive "
                    "sheet under the part too, once tested. ");
    page_add(p, "A seal leaks at the first gap, which comes "
                "long before the part tips.");
}

static void lead_bar(page *p, int us, const sw_bar_out *o)
{
    page_add(p, "The first pad gets ");
    say_force(p, us, o->pad1_N);
    page_add(p, ", the second ");
    say_force(p, us, o->pad2_N);
    if (o->rest == SW_REST_ROCKS) {
        page_add(p, ": the bar tips about the ");
        page_add(p, o->pad1_N > o->pad2_N ? "first" : "second");
        page_add(p, ", and the other pad carries nothing. Put the pads so that "
                    "the studs' resultant lies between them.");
        return;
    }
    page_add(p, ". The bar ");
    page_add(p, is_known(o->yield_margin) && o->yield_margin < 1
                    ? "bends past its yield: take a thicker one."
                    : "bends within its yield.");
}

static void lead_pad(page *p, int us, const sw_pad_out *o)
{
    page_add(p, "A mark on the part is ");
    page_add(p, sw_word(SW_WORDS_MARK, o->mark));
    page_add(p, ": ");
    say_stress(p, us, o->pressure_MPa);
    if (is_known(o->part_ratio)) {
        page_add(p, " is ");
        say_percent(p, o->part_ratio);
        page_add(p, " of what the part stands (");
        page_add(p, sw_word(SW_WORDS_LIMIT, o->part_limit_kind));
        page_add(p, ")");
    }
    page_add(p, ". ");
    if (is_known(o->pad_ratio) && o->pad_ratio > 1)
        page_add(p, is_known(o->part_ratio) && o->part_ratio > o->pad_ratio
                        ? "The pad gives too, after the part. "
                        : "The pad itself gives first. ");
    if (o->warnings & SW_WARN_PAD_CREEPS)
        page_add(p, "It is plastic and creeps: how much force is left, "
                    "measure.");
}

static void lead_disc(page *p, int us, const sw_disc_in *q,
                      const sw_disc_out *o)
{
    say_stays(p, o->verdict, o->first, o->margin, q->required_margin);
    page_add(p, "The driver's face carries ");
    say_torque(p, us, o->torque_Nm);
    page_add(p, q->driven_faces > 1
                    ? ", two driven faces counted: only right if the cap "
                      "drives too."
                    : ", one face: a cap on a live centre turns with the disc "
                      "and drives nothing.");
    if (is_known(o->gap_margin) && o->gap_margin < 1)
        page_add(p, " That is the torque of a face that bears all over: under "
                    "this cut it gapes, and nobody knows what is left.");
    else if (o->first == SW_LOSES_GAP)
        page_add(p, " That is the torque of a face that bears all over: past "
                    "the first gap nobody knows what is left.");
    if ((q->tangential_cut_N > 0 || q->radial_cut_N > 0) &&
        !(q->cut_height_mm > 0))
        page_add(p, " The height of the cut over the driver is not given: "
                    "tipping by a cut round or toward the axis is not "
                    "tested.");
    if (is_known(o->rim_N)) {
        page_add(p, " A cut at the rim also pushes it sideways: it turns at ");
        say_force(p, us, o->rim_N);
        page_add(p, ", not at torque over radius.");
    }
}

static void lead_chuck(page *p, int us, const sw_chuck_in *q,
                       const sw_chuck_out *o)
{
    const int weak = is_known(o->standing_needed_N) &&
                     q->chuck_force_N < o->standing_needed_N * (1 - 1e-12);
    if (o->first == SW_LOSES_SPEED && !(o->grip_N > 0)) {
        page_add(p, "Does not hold: the jaws let go, the speed takes all of "
                    "their grip. ");
    } else if (o->first == SW_LOSES_SPEED) {
        page_add(p, "Does not hold: too fast. The speed takes ");
        say_percent(p, o->loss_share);
        page_add(p, " of the grip, and no more than 67 % may go (EN 1550). ");
    } else if (weak && o->margin >= q->required_margin) {
        page_add(p, "Too little force standing, though the margin at speed "
                    "is ");
        page_number(p, o->margin, 3);
        page_add(p, " and ");
        page_number(p, q->required_margin, 3);
        page_add(p, " is wanted. ");
    } else {
        say_stays(p, o->verdict, o->first, o->margin, q->required_margin);
    }
    if (weak) {
        page_add(p, "Standing it wants ");
        say_force(p, us, o->standing_needed_N);
        page_add(p, " with the clamp factor of ");
        page_number(p, q->clamp_factor, 3);
        page_add(p, " (VDI 3106) and has ");
        say_force(p, us, q->chuck_force_N);
        page_add(p, ": slow down, cut less or clamp harder. ");
    }
    page_add(p, "The jaws grip with ");
    say_force(p, us, o->grip_N);
    page_add(p, " at ");
    page_number(p, q->speed_rpm, 5);
    page_add(p, KEEP "rpm, all jaws together (each jaw is one face). ");
    if (!is_known(o->speed_limit_rpm))
        return;
    if (o->speed_limit_rpm > 0) {
        page_add(p, "Never above ");
        page_number(p, rounded_down(o->speed_limit_rpm, 4), 4);
        page_add(p, KEEP "rpm, nor above what chuck and maker allow.");
    } else {
        page_add(p, "No speed is low enough for this cut.");
    }
}

static void lead_squeeze(page *p, int us, const sw_squeeze_in *q,
                         const sw_squeeze_out *o)
{
    if (o->verdict)
        say_stays(p, o->verdict, 0, o->margin, q->required_margin);
    page_add(p, "Squeeze with ");
    say_force(p, us, o->squeeze_needed_N);
    page_add(p, q->faces > 1 ? ", counted on two faces. Only right if neither "
                               "can move sideways; on one face it takes "
                             : ", counted on one face. If both faces grip and "
                               "neither can move sideways, ");
    say_force(p, us, q->faces > 1 ? o->normal_N : o->normal_N / 2);
    page_add(p, q->faces > 1 ? "." : " will do.");
}

static void lead_couple(page *p, const sw_couple_in *q, const sw_couple_out *o)
{
    say_stays(p, o->verdict, 0, o->margin, q->required_margin);
    page_add(p, q->faces > 1
                    ? "Two faces of each clamp are counted: only right if the "
                      "toe cannot move sideways."
                    : "One face of each clamp is counted, the pad's: twice as "
                      "much only if the toe cannot move sideways.");
}

static void lead_tripod(page *p, int us, const sw_tripod_out *o)
{
    if (o->rest == SW_REST_ROCKS) {
        page_add(p, "The part rocks: the force lies ");
        say_length(p, us, -o->inside_mm);
        page_add(p, " outside the triangle of the supports, and a support "
                    "would have to pull. Move the force or a support.");
        return;
    }
    page_add(p, "The part stands: the force lies ");
    say_length(p, us, o->inside_mm);
    page_add(p, " inside the triangle, and its lightest support carries ");
    say_percent(p, o->least_share);
    page_add(p, ".");
}

void say_clamp_lead(page *p, request *r, const answer *a)
{
    const char *name = r->topic->name;
    const int us = r->us;
    question q = r->question; /* with its defaults */
    if (strcmp(name, "screw") == 0) {
        if (!sw_screw_resolve(&q.in.screw, NULL))
            lead_screw(p, us, &q.in.screw, &a->out.screw);
    } else if (strcmp(name, "cylinder") == 0) {
        lead_cylinder(p, us, &q.in.cylinder, &a->out.cylinder);
    } else if (strcmp(name, "swing") == 0) {
        lead_swing(p, us, &q.in.swing, &a->out.swing);
    } else if (strcmp(name, "bar") == 0) {
        lead_bar(p, us, &a->out.bar);
    } else if (strcmp(name, "pad") == 0) {
        lead_pad(p, us, &a->out.pad);
    } else if (strcmp(name, "vacuum") == 0) {
        if (!sw_vacuum_resolve(&q.in.vacuum, NULL))
            lead_vacuum(p, us, &q.in.vacuum, &a->out.vacuum);
    } else if (strcmp(name, "adhesive") == 0) {
        if (sw_adhesive_resolve(&q.in.adhesive, NULL))
            return;
        const sw_adhesive_out *o = &a->out.adhesive;
        say_stays(p, o->verdict, o->first, o->margin,
                  q.in.adhesive.required_margin);
        page_add(p, "By the data sheet alone, its factor and the scatter of "
                    "bonds taken off.");
    } else if (strcmp(name, "disc") == 0) {
        if (!sw_disc_resolve(&q.in.disc, NULL))
            lead_disc(p, us, &q.in.disc, &a->out.disc);
    } else if (strcmp(name, "chuck") == 0) {
        if (!sw_chuck_resolve(&q.in.chuck, NULL))
            lead_chuck(p, us, &q.in.chuck, &a->out.chuck);
    } else if (strcmp(name, "squeeze") == 0) {
        if (!sw_squeeze_resolve(&q.in.squeeze, NULL))
            lead_squeeze(p, us, &q.in.squeeze, &a->out.squeeze);
    } else if (strcmp(name, "couple") == 0) {
        if (!sw_couple_resolve(&q.in.couple, NULL))
            lead_couple(p, &q.in.couple, &a->out.couple);
    } else if (strcmp(name, "tripod") == 0) {
        lead_tripod(p, us, &a->out.tripod);
    }
}
