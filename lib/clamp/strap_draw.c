/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap draw: one strap with everything uncertain drawn by chance.
 *
 *   preload   F = F0 (T e^x - T0)/(T - T0) e^-y, x ~ N(0, sigma_T),
 *             y ~ N(0, sigma_K): the torque formula with both factors of it
 *             scattered (spread.c)                                       (1)
 *   tilt      tan(theta) = tan(theta0) + h/L, h ~ N(0, sigma_h)          (2)
 *   the rest  what the corners of strap_band.c vary, each evenly between
 *             the same ends: friction along the slope, thread play, heel
 *             friction from relaxed to its upper end, the rest of a spherical
 *             pair; and by toss of a coin what is either so or so: foot held
 *             or rocking (where nobody said), the strap's own slope at the
 *             stud, a jack screw firm or not, the edge of a land that is about
 *             to change                                                  (3)
 *
 * (3) is no knowledge of how often: nobody counted. It says what the spread
 * would be if all of the band were equally likely.
 *
 * The number of draws hangs on how a tightening scatters, not on the strap: two
 * straps drawn from one seed have their luck in common and differ by the strap
 * alone.
 */
#include "clamp/strap_draw.h"

#include "clamp/strap_band.h"
#include "clamp/strap_geometry.h"

typedef struct {
    double x, y, h;                       /* normal */
    double slip, play, load, place, heel; /* even, 0 .. 1 */
    int foot, slope, firm, toe_flip, heel_flip;
} luck;

static luck draw(const sw__strap_lot *lot, sw__chance *c)
{
    luck l = {0};
    l.x = lot->sigmas.apart ? sw__normal(c) : 0;
    l.y = sw__normal(c);
    if (!lot->all)
        return l;
    l.h = sw__normal(c);
    l.slip = sw__uniform(c);
    l.play = sw__uniform(c);
    l.load = sw__uniform(c);
    l.place = sw__uniform(c);
    l.heel = sw__uniform(c);
    const unsigned coins = sw__coins(c);
    l.foot = coins & 1;
    l.slope = coins >> 1 & 1;
    l.firm = coins >> 2 & 1;
    l.toe_flip = coins >> 3 & 1;
    l.heel_flip = coins >> 4 & 1;
    return l;
}

/* Equation (1). */
static double preload(const sw__strap_lot *lot, const luck *l)
{
    const double T = lot->full.torque.torque_Nm;
    const double T0 = lot->full.in.prevailing_torque_Nm;
    const double tool = lot->sigmas.tool;
    const double turning = T * (lot->sigmas.apart ? exp(tool * l->x) : 1) - T0;
    return lot->full.torque.preload_N * fmax(0, turning) / (T - T0) *
           exp(-lot->sigmas.factor * l->y);
}

/* Equation (3). */
static sw__strap_choice choice(const sw__strap_lot *lot, const luck *l)
{
    const sw_strap_in *in = &lot->full.in;
    sw__strap_choice c = lot->nominal;
    c.slip = l->slip * in->seat_slip;
    c.play = l->play * SW__RAD(in->thread_play_deg);
    if (in->seat == SW_SEAT_SPHERICAL) {
        c.extra_load = (2 * l->load - 1) * SW__SPHERE_LOAD;
        c.extra_place =
            (2 * l->place - 1) * in->mu_sphere * in->sphere_radius_mm;
    }
    if (in->heel == SW_HEEL_SERRATED)
        c.heel_share = l->heel;
    else
        c.mu_heel = l->heel * fmax(in->mu_heel_high, in->mu_heel);
    c.firm = in->heel == SW_HEEL_SCREW && !c.rigid && l->firm;
    if (lot->foot_open)
        c.rocking = l->foot;
    c.slope = !c.rigid && l->slope;
    return c;
}

sw__strap_drawn sw__strap_draw(const sw__strap_lot *lot, sw__chance *chance)
{
    const sw_strap_in *in = &lot->full.in;
    const luck l = draw(lot, chance);
    sw__strap_drawn d = {0, 0, 0, 0, 0, 0};
    d.preload = preload(lot, &l);
    if (!(d.preload > 0)) /* the nut turned without pressing: no force */
        return d;
    const double slope = lot->slope + (lot->all ? lot->slope_sigma * l.h : 0);
    sw__strap_geometry g = lot->laid;
    sw__strap_load(&g, in, d.preload, atan(slope), slope);
    const sw__strap_geometry loaded = g;
    sw__strap_bear(&g, in, 0, 0);
    const int toe = lot->all && g.toe_near && l.toe_flip;
    const int heel = lot->all && g.heel_near && l.heel_flip;
    if (toe || heel) {
        g = loaded;
        sw__strap_bear(&g, in, toe, heel);
    }
    if (!(g.a > 0)) {
        d.failed = 1;
        return d;
    }
    const sw__strap_choice c = lot->all ? choice(lot, &l) : lot->nominal;
    const sw__strap_forces f = sw__strap_balance(&g, &c);
    d.toe = f.N_toe;
    d.pull = f.S;
    d.failed = f.jammed || !(f.N_toe > 0) || !(f.N_heel > 0);
    d.slides = f.S != 0 && fabs(f.S) >= g.mu_toe * f.N_toe * (1 - 1e-9);
    d.walks = f.U != 0;
    return d;
}
