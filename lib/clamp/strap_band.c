/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap band: how far toe force and side pull can be off because of what
 * nobody knows about a strap.
 *
 * Smallest and largest over the corners of what is not known: friction
 * along the slope at the seat, foot held or rocking, heel friction relaxed or
 * at its upper end, thread play, the strap's slope at the stud; side pull
 * limited by the largest toe force among them; either edge of a flat land that
 * is about to change its edge. The friction coefficient of the
 * toe is not varied. Where friction along the slope brings the nut from its face
 * to its rim, the toe force has a bend there, which is looked at too; where it
 * makes a contact begin to slide there is another, of 0.2 % of the toe force at
 * most in 20,000 straps drawn by a seed, which is not.
 *
 * The ends: friction along the slope 0 .. seat_slip for a nut that turns, 0 ..
 * mu_seat for one that does not; thread play 0 .. its mean; heel friction 0 ..
 * mu_heel_high; a jack screw's heel as it gives or as firm as a block. Compared
 * with planar contact finite element runs at 5 to 20 kN: every state lay
 * inside.
 */
#include "clamp/strap_band.h"

#include "clamp/strap_geometry.h"

#include <string.h>

sw__strap_choice sw__strap_nominal(const sw_strap_in *in,
                                   const sw__strap_geometry *g)
{
    sw__strap_choice c;
    memset(&c, 0, sizeof c);
    c.heel_share = 1;
    c.mu_heel = g->mu_heel;
    c.rocking = in->foot == SW_FOOT_ROCKING;
    c.slope = in->strap == SW_STRAP_FULL;
    c.rigid = in->strap == SW_STRAP_RIGID;
    /* a nut that does not turn has no nominal: half the friction, flagged */
    c.slip = in->nut == SW_NUT_STILL ? in->mu_seat / 2 : 0;
    return c;
}

typedef struct {
    double N_low, N_high, S_low, S_high; /* S before the toe's cap */
} extent;

/* Returns whether the nut is on its rim. */
static int widen(extent *e, const sw__strap_geometry *g,
                 const sw__strap_choice *c)
{
    const sw__strap_forces f = sw__strap_balance(g, c);
    if (f.jammed)
        return f.seat.on_rim;
    const double N = fmin(fmax(f.N_toe, 0), g->F);
    const double S = f.S_free;
    e->N_low = fmin(e->N_low, N);
    e->N_high = fmax(e->N_high, N);
    e->S_low = fmin(e->S_low, S);
    e->S_high = fmax(e->S_high, S);
    return f.seat.on_rim;
}

/* Heel relaxed, as nominal, at the upper end of its friction, and (jack screw)
 * as firm as a solid block. */
static int widen_over_heel(extent *e, const sw_strap_in *in,
                           const sw__strap_geometry *g, sw__strap_choice c)
{
    c.mu_heel = g->mu_heel;
    c.heel_share = 0;
    const int on_rim = widen(e, g, &c);
    c.heel_share = 1;
    widen(e, g, &c);
    if (in->heel == SW_HEEL_SERRATED)
        return on_rim;
    c.mu_heel = fmax(in->mu_heel_high, in->mu_heel);
    widen(e, g, &c);
    if (in->heel == SW_HEEL_SCREW && !c.rigid) {
        c.firm = 1;
        widen(e, g, &c);
    }
    return on_rim;
}

/* Friction along the slope at which the nut changes between face and rim. */
static double slip_at_rim(const sw__strap_geometry *g, sw__strap_choice c,
                          double high, int rim_at_high)
{
    enum { HALVINGS = 24 };
    double low = 0;
    for (int i = 0; i < HALVINGS; i++) {
        c.slip = (low + high) / 2;
        *(sw__strap_balance(g, &c).seat.on_rim == rim_at_high ? &high : &low) =
            c.slip;
    }
    return high;
}

static void widen_over_seat(extent *e, const sw__strap_full *full,
                            const sw__strap_geometry *g, sw__strap_choice c)
{
    const sw_strap_in *in = &full->in;
    const int still = in->nut == SW_NUT_STILL;
    const int sphere = in->seat == SW_SEAT_SPHERICAL;
    /* compared with the contact runs: near level a still nut can be dragged
     * either way by 0.06 F; a spherical pair keeps at most 0.01 F */
    double load = sphere ? SW__SPHERE_LOAD : 0;
    if (still && !sphere && fabs(in->tilt_deg) <= 0.5)
        load = 0.06;
    const double place = sphere ? in->mu_sphere * in->sphere_radius_mm : 0;
    const double slip_high = still ? in->mu_seat : in->seat_slip;
    int rim[3] = {0, 0, 0}; /* friction none, high, where the nut changes */
    for (int slip = 0; slip <= (rim[0] == rim[1] ? 1 : 2); slip++) {
        c.slip = slip == 0   ? 0
                 : slip == 1 ? slip_high
                             : slip_at_rim(g, c, slip_high, rim[1]);
        for (int way = load > 0 ? -1 : 0; way <= (load > 0); way++)
            for (int at = place > 0 ? -1 : 0; at <= (place > 0); at++) {
                c.extra_load = way * load;
                c.extra_place = at * place;
                rim[slip] = widen_over_heel(e, in, g, c);
            }
    }
}

static void widen_over_foot(extent *e, const sw__strap_full *full,
                            const sw__strap_geometry *g, sw__strap_choice c)
{
    for (c.rocking = 0; c.rocking <= 1; c.rocking++)
        for (int play = 0; play <= 1; play++)
            for (c.slope = 0; c.slope <= !c.rigid; c.slope++) {
                c.play = play * SW__RAD(full->in.thread_play_deg);
                widen_over_seat(e, full, g, c);
            }
}

static extent band_of(const sw__strap_full *full, const sw__strap_geometry *g,
                      const sw__strap_choice *nominal)
{
    extent e = {INFINITY, -INFINITY, INFINITY, -INFINITY};
    widen(&e, g, nominal);
    for (int toe = 0; toe <= g->toe_near; toe++)
        for (int heel = 0; heel <= g->heel_near; heel++) {
            const sw__strap_geometry other = sw__strap_place(full, toe, heel);
            widen_over_foot(&e, full, &other, *nominal);
        }
    return e;
}

static double limit(double value, double most)
{
    return value > most ? most : value < -most ? -most : value;
}

void sw__strap_band(const sw__strap_full *full, const sw__strap_geometry *g,
                    const sw__strap_choice *nominal, const sw__strap_forces *f,
                    sw_strap_out *out)
{
    const extent e = band_of(full, g, nominal);
    const double cap = g->mu_toe * e.N_high;
    out->toe_force_low_N = fmin(e.N_low, f->N_toe);
    out->toe_force_high_N = fmax(e.N_high, f->N_toe);
    out->side_pull_low_N = fmin(limit(e.S_low, cap), f->S);
    out->side_pull_high_N = fmax(limit(e.S_high, cap), f->S);
    if (f->U != 0) /* at its friction limit: nothing left to vary */
        out->side_pull_low_N = out->side_pull_high_N = f->S;
    out->band = SW_BAND_MODEL;
}

double sw__strap_worst_bending(const sw__strap_full *full,
                               const sw__strap_geometry *g)
{
    double worst = 0;
    sw__strap_choice c = sw__strap_nominal(&full->in, g);
    for (int holds = 0; holds <= 1; holds++) {
        c.slip = holds * full->in.mu_seat;
        const sw__seat seat = sw__strap_balance(g, &c).seat;
        worst = fmax(worst, fmax(seat.M_nut, fabs(seat.M_foot)));
    }
    return worst;
}
