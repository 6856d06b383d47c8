/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap balance: the forces on one strap. Equations as numbered in strap.c.
 */
#include "clamp/strap_balance.h"

#include "base/settle.h"

double sw__strap_toe_slope(const sw__strap_geometry *g)
{
    return g->F * g->a * g->b * (g->L + g->b) / (6 * g->EI_strap * g->L);
}

double sw__strap_heel_slope(const sw__strap_geometry *g)
{
    return g->F * g->a * g->b * (g->L + g->a) / (6 * g->EI_strap * g->L);
}

static double clamp(double value, double limit)
{
    return value > limit ? limit : value < -limit ? -limit : value;
}

static double positive(double value) { return value > 0 ? value : 0; }

/* Equation (5), before its limit. */
static double heel_wish(const sw__strap_geometry *g, const sw__strap_choice *c,
                        double spread, double X)
{
    const double own = c->rigid ? 0 : 4 / g->EA_strap; /* per mm of strap */
    const double c_toe = g->c_toe + own * g->a;
    const double c_heel = g->c_heel + own * g->b;
    const double give = c_heel + c_toe;
    return c->firm || give <= 0 ? (spread > 0 ? INFINITY : -X / 2)
                                : (spread - X * c_toe) / give;
}

/* Sag at x of a strap loaded at c, both from the heel; times EI_strap. */
static double sag(const sw__strap_geometry *g, double x, double c)
{
    if (x > c) { /* the same beam seen from the toe */
        x = g->L - x;
        c = g->L - c;
    }
    const double d = g->L - c;
    return g->F * d * x * (g->L * g->L - d * d - x * x) / (6 * g->L);
}

/* Equation (7): slope of the chord under the nut, falling to the heel
 * positive: the strap sags most on its longer side. */
static double own_slope(const sw__strap_geometry *g, double nut, double load)
{
    const double c = fmin(fmax(load, 0), g->L);
    return (sag(g, nut - g->rim, c) - sag(g, nut + g->rim, c)) /
           (2 * g->rim * g->EI_strap);
}

/* The seat for a strap that leans by theta at the nut. */
static void press_once(const sw__strap_geometry *g, const sw__strap_choice *c,
                       double most, double theta, sw__strap_forces *f)
{
    const double sign = theta < 0 ? -1 : 1;
    const sw__stud stud = {g->F,
                           g->EI_stud,
                           g->length,
                           g->rim,
                           fmax(0, fabs(theta) - g->permitted),
                           most,
                           c->play,
                           c->rocking};
    f->seat = sw__seat_press(&stud, &g->beam);
    f->X = -sign * g->F * f->seat.tan_lean + c->extra_load * g->F;
    f->x_seat = g->b + sign * f->seat.arm + c->extra_place;
    f->y_seat = g->y_seat - sign * f->seat.travel * g->tan_theta + f->seat.lift;
    f->x_nut = g->b + sign * f->seat.travel;
    f->theta = theta;
}

/* Equations (2) and (4). Where nut and resultant stand hangs on the strap's
 * own slope, which moves with them by a small part of its bending. */
static void press_seat(const sw__strap_geometry *g, const sw__strap_choice *c,
                       sw__strap_forces *f)
{
    enum { PASSES = 60 };
    sw__settling settling = {0, 0, 0};
    const double most = atan(c->slip);
    double own = 0;
    press_once(g, c, most, g->theta, f);
    for (int i = 0; c->slope && i < PASSES; i++) {
        const double change = own_slope(g, f->x_nut, f->x_seat) - own;
        if (fabs(change) <= 1e-13)
            break;
        own += sw__settle(&settling, own, change);
        press_once(g, c, most, g->theta - own, f);
    }
    const double b = fmin(fmax(f->x_seat, 0), g->L);
    f->spread = c->rigid ? 0 : g->F * (g->L - b) * b * g->t / (4 * g->EI_strap);
}

/* Equation (3). */
static void set_normals(const sw__strap_geometry *g, sw__strap_forces *f)
{
    f->N_toe = (g->F * f->x_seat + f->X * f->y_seat + f->S * g->y_toe) / g->L;
    f->N_heel = g->F - f->N_toe;
}

/* Equations (5) and (6): how much the side pull that the contacts want exceeds
 * a trial value. */
static double side_surplus(const sw__strap_geometry *g,
                           const sw__strap_choice *c, double heel_wish,
                           double S, sw__strap_forces *f)
{
    f->S = S;
    set_normals(g, f);
    const double T =
        c->heel_share * clamp(heel_wish, c->mu_heel * positive(f->N_heel));
    f->S_free = -f->X - T;
    return clamp(f->S_free, g->mu_toe * positive(f->N_toe)) - S;
}

sw__strap_forces sw__strap_balance(const sw__strap_geometry *g,
                                   const sw__strap_choice *c)
{
    sw__strap_forces f;
    press_seat(g, c, &f);
    /* S hangs on the normal forces through the caps, they on S through its
     * lever: for a straight strap a contraction by mu tan(theta). A strap with
     * a deep step may need halving, and with high friction it may jam. */
    enum { PASSES = 60, HALVINGS = 100 };
    sw__settling settling = {0, 0, 0};
    const double wish = heel_wish(g, c, f.spread, f.X);
    f.T_spread = heel_wish(g, c, f.spread, 0);
    f.T_lean = heel_wish(g, c, 0, f.X);
    double S = 0, surplus = INFINITY;
    for (int i = 0; i < PASSES && fabs(surplus) > 1e-15 * g->F; i++) {
        surplus = side_surplus(g, c, wish, S, &f);
        S += sw__settle(&settling, S, surplus);
    }
    f.S = S;
    if (fabs(surplus) > 1e-12 * g->F) {
        double low = -g->mu_toe * g->F, high = -low;
        for (int i = 0; i < HALVINGS; i++) {
            f.S = (low + high) / 2;
            surplus = side_surplus(g, c, wish, f.S, &f);
            *(surplus > 0 ? &low : &high) = f.S;
        }
    }
    f.jammed = fabs(surplus) > 1e-12 * g->F;
    set_normals(g, &f);
    f.T_heel = clamp(-f.X - f.S, c->mu_heel * positive(f.N_heel));
    f.U = -f.X - f.S - f.T_heel;
    if (fabs(f.U) < 1e-12 * g->F) { /* rounding, not walking */
        f.T_heel += f.U;
        f.U = 0;
    }
    return f;
}
