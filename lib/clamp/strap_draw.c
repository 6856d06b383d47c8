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
 * The number of draws is the same for every strap, so that two straps drawn
 * from one seed have their luck in common and differ by the strap alone.
 */
#include "clamp/strap_draw.h"

#include "clamp/strap_band.h"
#include "clamp/strap_geometry.h"

typedef struct {
    double x, y, h;                             /* normal */
    double slip, play, load, place, heel, firm; /* even, 0 .. 1 */
    double foot, slope, toe_flip, heel_flip;
} luck;

static luck draw(sw__chance *c)
{
    luck l;
    l.x = sw__normal(c);
    l.y = sw__normal(c);
    l.h = sw__normal(c);
    l.slip = sw__uniform(c);
    l.play = sw__uniform(c);
    l.load = sw__uniform(c);
    l.place = sw__uniform(c);
    l.heel = sw__uniform(c);
    l.firm = sw__uniform(c);
    l.foot = sw__uniform(c);
    l.slope = sw__uniform(c);
    l.toe_flip = sw__uniform(c);
    l.heel_flip = sw__uniform(c);
    return l;
}

/* Equation (1). */
static double preload(const sw__strap_lot *lot, const luck *l)
{
    const double T = lot->full.torque.torque_Nm;
    const double T0 = lot->full.in.prevailing_torque_Nm;
    const double turning = T * exp(lot->sigmas.tool * l->x) - T0;
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
    c.firm = in->heel == SW_HEEL_SCREW && !c.rigid && l->firm < 0.5;
    if (lot->foot_open)
        c.rocking = l->foot < 0.5;
    c.slope = !c.rigid && l->slope < 0.5;
    return c;
}

sw__strap_drawn sw__strap_draw(const sw__strap_lot *lot,
                               sw__strap_full *scratch, sw__chance *chance)
{
    const luck l = draw(chance);
    sw__strap_drawn d = {0, 0, 0, 0, 0, 0};
    sw__strap_choice c = lot->nominal;
    d.preload = preload(lot, &l);
    if (!(d.preload > 0)) /* the nut turned without pressing: no force */
        return d;
    scratch->torque.preload_N = d.preload;
    if (lot->all) {
        c = choice(lot, &l);
        scratch->in.tilt_deg = SW__DEG(
            atan(tan(SW__RAD(lot->full.in.tilt_deg)) + lot->slope_sigma * l.h));
    }
    sw__strap_geometry g = sw__strap_place(scratch, 0, 0);
    const int toe = lot->all && g.toe_near && l.toe_flip < 0.5;
    const int heel = lot->all && g.heel_near && l.heel_flip < 0.5;
    if (toe || heel)
        g = sw__strap_place(scratch, toe, heel);
    if (!(g.a > 0)) {
        d.failed = 1;
        return d;
    }
    const sw__strap_forces f = sw__strap_balance(&g, &c);
    d.toe = f.N_toe;
    d.pull = f.S;
    d.failed = f.jammed || !(f.N_toe > 0) || !(f.N_heel > 0);
    d.slides = f.S != 0 && fabs(f.S) >= g.mu_toe * f.N_toe * (1 - 1e-9);
    d.walks = f.U != 0;
    return d;
}
