/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Clamp others: screws, cylinders, arms and vacuum, each by its own room, as a
 * force straight down where it presses.
 *
 * Where the user left efficiency, guide friction and guide length of a power
 * clamp to the library, holding counts on the bad end of their usual ranges
 * (clamp/cylinder.c, clamp/swing.c). A vacuum is what the gauge reads, without a
 * spread.
 *
 * A vacuum is a force in the middle of its seal. Where the face gapes at its
 * edge the seal leaks, long before a rigid part on points would tip: that is
 * for the room of the vacuum (clamp/vacuum.c), and the job says so.
 */
#include "job/clamp.h"

/* the ends of the usual ranges of clamp/cylinder.c and clamp/swing.c */
#define LEAST_EFFICIENCY 0.85
#define MOST_GUIDE 0.15
#define SHORTEST_GUIDE 0.7

static void take_force(sw__clamp_draft *d, double low, double nominal,
                       double high, uint64_t warnings)
{
    d->out->force_low_N = low;
    d->out->force_N = nominal;
    d->out->force_high_N = high;
    d->out->warnings |= warnings;
}

static int open_as(sw__clamp_draft *d, int structure, void *in,
                   const char *skip)
{
    d->form[1] = (sw__form){structure, in, skip, NULL};
    return 1;
}

/* ---- screws ---- */

static int open_screw(sw__clamp_draft *d)
{
    sw_screw_defaults(&d->of.screw);
    d->of.screw.screw = SW_SCREW_PRESSING;
    return open_as(d, SW_STRUCT_SCREW_IN, &d->of.screw, " screw");
}

static int open_through(sw__clamp_draft *d)
{
    open_screw(d);
    d->of.screw.screw = SW_SCREW_THROUGH;
    return 1;
}

static sw_assumption ask_screw(const sw__clamp_draft *d, int index)
{
    return sw_screw_assumed(&d->of.screw, index, NULL);
}

/* A screw on a tool is set to what the tool can be set to. */
static int set_screw(sw__clamp_draft *d, sw_screw_out *s, sw_error *inner)
{
    sw_screw_in *in = &d->of.screw;
    double torque_Nm = s->torque_Nm;
    if (!d->tool[0])
        return SW_OK;
    const int status = sw__clamp_set_tool(d, &torque_Nm);
    if (status)
        return status;
    in->torque_Nm = torque_Nm;
    in->force_N = in->hand_force_N = in->handle_length_mm = SW_UNSET;
    *s = sw_screw(in, inner);
    return s->status ? sw__clamp_fail(d, inner) : SW_OK;
}

static int solve_screw(sw__clamp_draft *d)
{
    sw_error inner;
    sw_screw_out s = sw_screw(&d->of.screw, &inner);
    if (s.status)
        return sw__clamp_fail(d, &inner);
    const int status = set_screw(d, &s, &inner);
    if (status)
        return status;
    sw_screw_in full = d->of.screw;
    if (sw_screw_resolve(&full, &inner))
        return sw__clamp_fail(d, &inner);
    sw__copy(d->out->thread, sizeof d->out->thread, full.thread);
    d->out->torque_Nm = s.torque_Nm;
    d->out->prevailing_torque_Nm = 0;
    d->out->scatter_pct = full.scatter_pct;
    take_force(d, s.force_low_N, s.force_N, s.force_high_N, s.warnings);
    const int judged = sw__clamp_judge_screw(d, &full, &s);
    return judged ? judged : sw__clamp_note(d, ask_screw);
}

/* ---- cylinders and arms ---- */

static int open_cylinder(sw__clamp_draft *d)
{
    sw_cylinder_defaults(&d->of.cylinder);
    return open_as(d, SW_STRUCT_CYLINDER_IN, &d->of.cylinder, "");
}

static sw_assumption ask_cylinder(const sw__clamp_draft *d, int index)
{
    return sw_cylinder_assumed(&d->of.cylinder, index, NULL);
}

static int solve_cylinder(sw__clamp_draft *d)
{
    sw_error inner;
    const sw_cylinder_out c = sw_cylinder(&d->of.cylinder, &inner);
    if (c.status)
        return sw__clamp_fail(d, &inner);
    sw_cylinder_in least = d->of.cylinder;
    sw_cylinder_in full = d->of.cylinder;
    if (sw_cylinder_resolve(&full, &inner))
        return sw__clamp_fail(d, &inner);
    if (full.assumed & sw__bit(SW_STRUCT_CYLINDER_IN, "efficiency"))
        least.efficiency = LEAST_EFFICIENCY;
    const sw_cylinder_out low = sw_cylinder(&least, &inner);
    if (low.status)
        return sw__clamp_fail(d, &inner);
    take_force(d, low.force_low_N, c.force_N, c.uncapped_N, c.warnings);
    sw__clamp_judge_device(d, c.uncapped_N, d->of.cylinder.limit_N,
                           d->of.cylinder.pressure_MPa,
                           c.pressure_at_limit_MPa);
    return sw__clamp_note(d, ask_cylinder);
}

static int open_swing(sw__clamp_draft *d)
{
    sw_swing_defaults(&d->of.swing);
    return open_as(d, SW_STRUCT_SWING_IN, &d->of.swing, "");
}

static sw_assumption ask_swing(const sw__clamp_draft *d, int index)
{
    return sw_swing_assumed(&d->of.swing, index, NULL);
}

static int solve_swing(sw__clamp_draft *d)
{
    sw_error inner;
    const sw_swing_out s = sw_swing(&d->of.swing, &inner);
    if (s.status)
        return sw__clamp_fail(d, &inner);
    const sw_swing_in *in = &d->of.swing;
    double allowed = s.allowed_pressure_MPa;
    if (sw__is_set(in->rated_pressure_MPa)) /* a short arm gives no more */
        allowed = sw__is_set(allowed) ? fmin(allowed, in->rated_pressure_MPa)
                                      : in->rated_pressure_MPa;
    sw__clamp_judge_device(d, s.available_N, s.allowed_N, in->pressure_MPa,
                           allowed);
    /* what is over the limit acts all the same */
    const double use = sw__is_set(d->out->limit_use) ? d->out->limit_use : 1;
    sw_swing_in least = *in, full = *in;
    if (sw_swing_resolve(&full, &inner))
        return sw__clamp_fail(d, &inner);
    if (full.assumed & sw__bit(SW_STRUCT_SWING_IN, "efficiency"))
        least.efficiency = LEAST_EFFICIENCY;
    if (full.assumed & sw__bit(SW_STRUCT_SWING_IN, "mu_guide"))
        least.mu_guide = MOST_GUIDE;
    if (full.assumed & sw__bit(SW_STRUCT_SWING_IN, "guide_length_mm"))
        least.guide_length_mm = SHORTEST_GUIDE * full.guide_length_mm;
    const sw_swing_out low = sw_swing(&least, &inner);
    if (low.status)
        return sw__clamp_fail(d, &inner);
    take_force(d, fmin(low.force_N, s.force_N), s.force_N,
               sw__is_set(s.available_N) ? fmax(s.available_N, s.force_N)
                                         : s.force_N * fmax(1, use),
               s.warnings);
    return sw__clamp_note(d, ask_swing);
}

/* ---- vacuum ---- */

static int open_vacuum(sw__clamp_draft *d)
{
    sw_vacuum_defaults(&d->of.vacuum);
    return open_as(d, SW_STRUCT_VACUUM_IN, &d->of.vacuum,
                   " mu_face weight_N side_cut_N cut_height_mm lift_N "
                   "rim_lift_N required_margin");
}

static sw_assumption ask_vacuum(const sw__clamp_draft *d, int index)
{
    sw_assumption a = sw_vacuum_assumed(&d->of.vacuum, index, NULL);
    if (!a.status && sw__listed(d->form[1].skip, a.name))
        a.value = SW_UNSET; /* the job has its own */
    return a;
}

static int solve_vacuum(sw__clamp_draft *d)
{
    sw_error inner;
    const sw_vacuum_out v = sw_vacuum(&d->of.vacuum, &inner);
    if (v.status)
        return sw__clamp_fail(d, &inner);
    sw_vacuum_in full = d->of.vacuum;
    if (sw_vacuum_resolve(&full, &inner))
        return sw__clamp_fail(d, &inner);
    int status = sw__clamp_seal(d, &full);
    if (status)
        return status;
    take_force(d, v.held_N, v.held_N, v.held_N, v.warnings);
    status = sw__clamp_note(d, ask_vacuum);
    if (status)
        return status;
    return sw__job_note_word(d->job, d->in.name, "vacuum", "in the middle",
                             "as one force in the middle of the seal; the seal "
                             "leaks where the face gapes first: strapwise "
                             "vacuum",
                             d->r->err);
}

/* ---- bars ---- */

static int open_bar(sw__clamp_draft *d)
{
    sw_bar_defaults(&d->of.bar);
    return open_as(d, SW_STRUCT_BAR_IN, &d->of.bar, "");
}

static sw_assumption ask_bar(const sw__clamp_draft *d, int index)
{
    return sw_bar_assumed(&d->of.bar, index, NULL);
}

/* Two pads: the second becomes a clamp of its own. */
static int solve_bar(sw__clamp_draft *d)
{
    sw_error inner;
    const sw_bar_in *in = &d->of.bar;
    const sw_bar_out b = sw_bar(in, &inner);
    if (b.status)
        return sw__clamp_fail(d, &inner);
    if (!d->second_placed)
        return sw__fail_key(d->r, d->map, SW_ERR_MISSING, "second place",
                            "a bar needs the place of its second pad too, such "
                            "as second place: [85 mm, 80 mm]");
    const double apart =
        hypot(d->second[0] - d->at[0], d->second[1] - d->at[1]);
    if (fabs(apart - fabs(in->pad2_mm - in->pad1_mm)) > 1)
        return sw__fail_key(d->r, d->map, SW_ERR_CONFLICT, "second place",
                            "the pads stand elsewhere on the bar: pad1 and "
                            "pad2 are not as far apart as the two places");
    if (!(b.pad1_N > 0 && b.pad2_N > 0))
        return sw__fail_key(d->r, d->map, SW_ERR_CONFLICT, "pad1",
                            "one of the bar's pads does not press: it stands "
                            "outside of the studs");
    take_force(d, b.pad1_N, b.pad1_N, b.pad1_N, b.warnings);
    d->second_N = b.pad2_N;
    return sw__clamp_note(d, ask_bar);
}

const sw__clamp_way sw__clamp_screw_way = {
    SW_CLAMP_SCREW, SW__CLAMP_SKIP, 0, 1, 1, open_screw, solve_screw};
const sw__clamp_way sw__clamp_through_way = {
    SW_CLAMP_THROUGH, SW__CLAMP_SKIP, 0, 1, 1, open_through, solve_screw};
const sw__clamp_way sw__clamp_cylinder_way = {
    SW_CLAMP_CYLINDER, SW__CLAMP_SKIP, 0, 0, 1, open_cylinder, solve_cylinder};
const sw__clamp_way sw__clamp_swing_way = {
    SW_CLAMP_SWING, SW__CLAMP_SKIP, 0, 0, 1, open_swing, solve_swing};
const sw__clamp_way sw__clamp_vacuum_way = {
    SW_CLAMP_VACUUM, SW__CLAMP_SKIP, 0, 0, 1, open_vacuum, solve_vacuum};
const sw__clamp_way sw__clamp_bar_way = {SW_CLAMP_BAR, SW__CLAMP_SKIP, 0, 0, 2,
                                         open_bar,     solve_bar};
