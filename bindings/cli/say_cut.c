/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say cut: what a cut does to the part, in words that are read at the machine.
 */
#include "say_cut.h"

#include <math.h>
#include <string.h>

void say_power(page *p, int us, double W)
{
    for (int half = 0; half < 2; half++) {
        page_add(p, half ? KEEP "(" : "");
        if (us != half)
            page_number(p, in_unit(W, "hp", SW_KIND_POWER), 3);
        else
            page_number(p, in_unit(W, "kW", SW_KIND_POWER), 3);
        page_add(p, us != half ? KEEP "hp" : KEEP "kW");
    }
    page_add(p, ")");
}

void say_thin(page *p, int us, double mm)
{
    for (int half = 0; half < 2; half++) {
        const int inch = us != half;
        page_add(p, half ? KEEP "(" : "");
        page_number(p, inch ? in_unit(mm, "in", SW_KIND_LENGTH) : mm, 3);
        page_add(p, inch ? KEEP "in" : KEEP "mm");
    }
    page_add(p, ")");
}

/* 120 m/min (394 ft/min) */
static void say_speed(page *p, int us, double m_per_min)
{
    for (int half = 0; half < 2; half++) {
        const char *unit = us != half ? "ft/min" : "m/min";
        page_add(p, half ? KEEP "(" : "");
        page_number(p, in_unit(m_per_min, unit, SW_KIND_SPEED), 3);
        page_add(p, KEEP);
        page_add(p, unit);
    }
    page_add(p, ")");
}

void say_metal(page *p, const char *material)
{
    const sw_cut_material_out m = sw_cut_material(material, NULL);
    if (m.status) {
        page_add(p, "a metal of the constants given");
        return;
    }
    page_add(p, m.material);
    if (strcmp(m.material, m.stands_for) != 0) {
        page_add(p, m.warnings & SW_WARN_CUT_GROUP ? ", assumed group "
                                                   : ", taken as ");
        page_add(p, m.stands_for);
    }
    page_add(p, " (");
    page_add(p, m.label);
    page_add(p, ")");
}

void say_one_force(page *p, int us, const char *label, double N)
{
    const size_t start = say_label(p, label);
    say_force(p, us, N);
    say_done(p, start);
}

void say_second(page *p, int us, double by_chip, double by_volume)
{
    const size_t start = say_label(p, "second opinion");
    if (is_known(by_chip)) {
        say_force(p, us, by_chip);
        page_add(p, " by the mean chip");
    }
    if (is_known(by_volume)) {
        page_add(p, is_known(by_chip) ? ", " : "");
        say_force(p, us, by_volume);
        page_add(p, " by the handbook's power for that volume of chips");
    }
    say_done(p, start);
}

void say_chip(page *p, int us, double mm, double most_mm, double kc)
{
    const size_t start = say_label(p, "chip");
    say_thin(p, us, mm);
    page_add(p, is_known(most_mm) ? " thick in the mean, " : " thick");
    if (is_known(most_mm)) {
        say_thin(p, us, most_mm);
        page_add(p, " at most");
    }
    page_add(p, "; specific force ");
    say_stress(p, us, kc);
    say_done(p, start);
}

void say_drive(page *p, int us, double W, double rpm, double m_per_min,
               double mm3_per_min)
{
    if (!is_known(W))
        return;
    const size_t start = say_label(p, "power at the cut");
    say_power(p, us, W);
    if (is_known(rpm)) {
        page_add(p, " at ");
        page_number(p, rpm, 4);
        page_add(p, KEEP "rpm, ");
    } else {
        page_add(p, " at ");
    }
    say_speed(p, us, m_per_min);
    if (is_known(mm3_per_min)) {
        const double in3 = pow(in_unit(1, "in", SW_KIND_LENGTH), 3);
        page_add(p, "; chips ");
        page_number(p, us ? mm3_per_min * in3 : mm3_per_min / 1000, 3);
        page_add(p, us ? KEEP "in\xc2\xb3/min" : KEEP "cm\xc2\xb3/min");
    }
    say_done(p, start);
}

void say_turning(page *p, request *r, const sw_turning_out *t)
{
    static const char *const title[] = {"", "Turning along", "Facing",
                                        "Boring"};
    sw_turning_in full = r->question.in.turning;
    const int us = r->us;
    if (sw_turning_resolve(&full, NULL))
        return;
    const int facing = full.direction == SW_TURNING_FACING;
    size_t start = p->length;
    page_add(p, title[full.direction]);
    page_add(p, ", ");
    say_metal(p, full.material);
    page_add(p, ": ");
    say_length(p, us, full.depth_mm);
    page_add(p, " deep, ");
    say_thin(p, us, full.feed_mm);
    page_add(p, " a turn");
    page_wrap(p, start, 0);
    page_add(p, "\n");
    start = p->length;
    page_add(p,
             "Forces on the part: x from the spindle axis to the tool, y the "
             "way the work's surface runs there, z along the axis, away "
             "from the chuck.");
    page_wrap(p, start, 0);
    page_add(p, "\n\n");
    start = say_label(p, "cutting force");
    say_force(p, us, t->cutting_N);
    page_add(p, " (y negative): brakes the work");
    say_done(p, start);
    start = say_label(p, "feed force");
    say_force(p, us, fabs(t->feed_N));
    page_add(p, facing ? " (x negative): pushes toward the axis"
                       : " (z negative): pushes toward the chuck");
    say_done(p, start);
    start = say_label(p, "thrust");
    say_force(p, us, fabs(t->passive_N));
    if (facing)
        page_add(p, t->z_N <= 0 ? " (z): presses toward the chuck"
                                : " (z): pulls out of the chuck");
    else
        page_add(p, t->x_N <= 0 ? " (x): pushes inward, toward the axis"
                                : " (x): pushes outward, away from the axis");
    say_done(p, start);
    say_one_force(p, us, "all together", t->total_N);
    if (is_known(t->torque_Nm)) {
        start = say_label(p, "torque");
        say_torque(p, us, t->torque_Nm);
        page_add(p, ": the grip must carry it; the feed force tips with ");
        say_torque(p, us, fabs(t->my_Nm));
        say_done(p, start);
    }
    say_chip(p, us, t->chip_mm, SW_UNSET, t->kc_MPa);
    say_drive(p, us, t->power_W, t->speed_rpm, t->cutting_speed_m_per_min,
              t->removal_mm3_per_min);
    if (is_known(t->unit_power_N))
        say_second(p, us, SW_UNSET, t->unit_power_N);
}

void say_drilling(page *p, request *r, const sw_drilling_out *d)
{
    sw_drilling_in full = r->question.in.drilling;
    const int us = r->us;
    if (sw_drilling_resolve(&full, NULL))
        return;
    size_t start = p->length;
    page_add(p, "Drilling ");
    say_metal(p, full.material);
    page_add(p, ": drill ");
    say_length(p, us, full.diameter_mm);
    page_add(p, ", ");
    say_thin(p, us, full.feed_mm);
    page_add(p, " a turn");
    page_wrap(p, start, 0);
    page_add(p, "\n");
    page_add(p, "Forces on the part, drilled from above.\n\n");
    start = say_label(p, "torque");
    say_torque(p, us, d->torque_Nm);
    page_add(p, ": turns the part clockwise, seen from above");
    say_done(p, start);
    start = say_label(p, "thrust");
    say_force_range(p, us, d->thrust_low_N, d->thrust_high_N);
    page_add(p,
             " down; the low end is that of the lips alone, the high end has "
             "the chisel edge in it");
    say_done(p, start);
    start = say_label(p, "at breakthrough");
    page_add(p, "the thrust falls to nothing and the torque stays: the drill "
                "may pull the part up its helix with up to ");
    say_force(p, us, d->pull_N);
    say_done(p, start);
    say_chip(p, us, d->chip_mm, SW_UNSET, d->kc_MPa);
    say_drive(p, us, d->power_W, d->speed_rpm, d->cutting_speed_m_per_min,
              d->removal_mm3_per_min);
    if (is_known(d->handbook_thrust_N)) {
        start = say_label(p, "handbook");
        say_torque(p, us, d->handbook_torque_Nm);
        page_add(p, " and ");
        say_force(p, us, d->handbook_thrust_N);
        say_done(p, start);
    }
    if (is_known(d->unit_power_Nm)) {
        start = say_label(p, "second opinion");
        say_torque(p, us, d->unit_power_Nm);
        page_add(p, " by the handbook's power for that volume of chips");
        say_done(p, start);
    }
}
