/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say cut: what a cut does to the part, in words that are read at the machine.
 */
#include "cli.h"

#include <math.h>
#include <string.h>

#define RAD (3.14159265358979323846 / 180)

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

/* A chip or a feed: three digits, however thin. */
static void say_thin(page *p, int us, double mm)
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

static void say_metal(page *p, const char *material)
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

static void say_one(page *p, int us, const char *label, double N)
{
    const size_t start = say_label(p, label);
    say_force(p, us, N);
    say_done(p, start);
}

static void say_xyz(page *p, int us, const char *name, double N)
{
    page_add(p, name);
    page_add(p, KEEP);
    say_force(p, us, N);
}

/* The three components, each kept together. */
static void say_vector(page *p, int us, double x, double y, double z)
{
    say_xyz(p, us, "x", x);
    page_add(p, ", ");
    say_xyz(p, us, "y", y);
    page_add(p, ", ");
    say_xyz(p, us, "z", z);
}

static void say_swing(page *p, int us, const char *label, double low,
                      double high)
{
    const size_t start = say_label(p, label);
    say_force_range(p, us, low, high);
    say_done(p, start);
}

/* Small beside the whole: not worth a word. */
static int matters(double part, double whole)
{
    return fabs(part) > 0.1 * whole;
}

/* Which way the part is pushed, seen along the feed. */
static void say_push(page *p, double along, double left, double up)
{
    const double whole = hypot(hypot(along, left), up);
    const char *join = "the part is pushed ";
    if (matters(along, whole)) {
        page_add(p, join);
        page_add(p, along < 0 ? "back against the feed, into the cutter"
                              : "ahead along the feed");
        join = ", and ";
    }
    if (matters(left, whole)) {
        page_add(p, join);
        page_add(p, left < 0 ? "to the right of the feed"
                             : "to the left of the feed");
        join = ", and ";
    }
    if (matters(up, whole)) {
        page_add(p, join);
        page_add(p, up > 0 ? "lifted" : "pressed down");
        join = "";
    }
    if (join[0] == 't')
        page_add(p, "the part is hardly pushed anywhere");
}

static void say_frame(page *p, const sw_milling_in *in)
{
    const size_t start = p->length;
    if (in->feed_direction_deg == 0)
        page_add(p,
                 "Forces on the part: x along the feed, y to the left of it, "
                 "z up. The cutter turns clockwise seen from above.");
    else {
        page_add(p, "Forces on the part: x, y the part's own, z up; the feed "
                    "goes ");
        page_number(p, in->feed_direction_deg, 4);
        page_add(p, KEEP "deg counterclockwise from x. The cutter turns "
                         "clockwise seen from above.");
    }
    page_wrap(p, start, 0);
    page_add(p, "\n\n");
}

static void say_cutter(page *p, int us, const sw_milling_in *in)
{
    static const char *const title[] = {"", "Slot", "Side milling",
                                        "Face milling"};
    const size_t start = p->length;
    page_add(p, in->mode != SW_MILL_SIDE ? title[in->mode]
                : in->way == SW_CUT_UP   ? "Up milling"
                                         : "Climb milling");
    page_add(p, " in ");
    say_metal(p, in->material);
    page_add(p, ": cutter ");
    say_length(p, us, in->diameter_mm);
    page_add(p, ", ");
    page_number(p, in->teeth, 3);
    page_add(p, in->teeth > 1 ? KEEP "teeth, " : KEEP "tooth, ");
    say_thin(p, us, in->feed_per_tooth_mm);
    page_add(p, " a tooth, ");
    say_length(p, us, in->depth_mm);
    page_add(p, " deep, ");
    say_length(p, us, in->width_mm);
    page_add(p, " wide");
    page_wrap(p, start, 0);
    page_add(p, "\n");
}

static void say_second(page *p, int us, double by_chip, double by_volume)
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

static void say_chip(page *p, int us, double mm, double most_mm, double kc)
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

static void say_drive(page *p, int us, double W, double rpm, double m_per_min,
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

void say_milling(page *p, request *r, const sw_milling_out *m)
{
    sw_milling_in full = r->question.in.milling;
    const int us = r->us;
    if (sw_milling_resolve(&full, NULL)) /* solved before, so it resolves */
        return;
    const double c = cos(full.feed_direction_deg * RAD);
    const double s = sin(full.feed_direction_deg * RAD);
    say_cutter(p, us, &full);
    say_frame(p, &full);
    size_t start = say_label(p, "mean");
    say_vector(p, us, m->mean_x_N, m->mean_y_N, m->mean_z_N);
    say_done(p, start);
    start = say_label(p, "");
    say_push(p, c * m->mean_x_N + s * m->mean_y_N,
             c * m->mean_y_N - s * m->mean_x_N, m->mean_z_N);
    say_done(p, start);
    start = say_label(p, "peak in the plane");
    say_force(p, us, m->peak_N);
    page_add(p, ": ");
    say_vector(p, us, m->peak_x_N, m->peak_y_N, m->peak_z_N);
    say_done(p, start);
    say_swing(p, us, "x swings", m->x_low_N, m->x_high_N);
    say_swing(p, us, "y swings", m->y_low_N, m->y_high_N);
    say_swing(p, us, "z swings", m->z_low_N, m->z_high_N);
    start = say_label(p, "");
    page_add(p, m->z_high_N > 0.5
                    ? "lifts the part at the arc of the cut, not at the axis"
                : m->z_low_N < -0.5
                    ? "presses the part down, at the arc of the cut"
                    : "neither lifts nor presses down");
    say_done(p, start);
    start = say_label(p, "torque");
    say_torque(p, us, m->torque_Nm);
    page_add(p, " mean, ");
    say_torque(p, us, m->torque_peak_Nm);
    page_add(p, " at most; it turns the part clockwise");
    say_done(p, start);
    start = say_label(p, "teeth in the cut");
    page_number(p, m->teeth_least, 3);
    if (m->teeth_most != m->teeth_least) {
        page_add(p, KEEP "or" KEEP);
        page_number(p, m->teeth_most, 3);
    }
    page_add(p, m->teeth_least < 1 ? ": the load stops and starts with each "
                                     "tooth"
                                   : "");
    say_done(p, start);
    say_chip(p, us, m->chip_mean_mm, m->chip_most_mm, m->kc_MPa);
    say_drive(p, us, m->power_W, m->speed_rpm, m->cutting_speed_m_per_min,
              m->removal_mm3_per_min);
    say_one(p, us, "along the rim, mean", m->tangential_N);
    say_second(p, us, m->mean_chip_N, m->unit_power_N);
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
    say_one(p, us, "all together", t->total_N);
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
