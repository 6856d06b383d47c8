/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say milling: what a milling cutter does to the part, and which way it pushes.
 */
#include "say_cut.h"

#include <math.h>
#include <string.h>

#define RAD (3.14159265358979323846 / 180)

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
    say_one_force(p, us, "along the rim, mean", m->tangential_N);
    say_second(p, us, m->mean_chip_N, m->unit_power_N);
}
