/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Seat: a nut pressed on a leaning surface, and the stud it bends.
 *
 * The stud is a beam-column: foot at z = 0, nut at z = l, tension F, and at
 * the nut a force that leans by theta_R from vertical toward the seat's low
 * end. Its slope q(z) obeys
 *
 *   E I q'' = F q - F tan(theta_R),  q(0) = 0 (held) or q'(0) = 0 (rocking)
 *
 * with k = sqrt(F/EI), u = k l and angles small enough that tan(x) = x in the
 * bending part (the force's own line keeps its tangent). With the nut turned
 * by alpha at the tip:
 *
 *   held     M_nut  = EI k [(alpha - theta_R)/tanh u + theta_R/sinh u]   (1)
 *            M_foot = M_nut/cosh u + EI k theta_R tanh u                 (2)
 *   rocking  M_nut  = EI k (alpha - theta_R) tanh u, M_foot = 0          (3)
 *
 * What the seat does to it:
 *   conformed  alpha = phi - play: the face lies flat;
 *   on rim     M_nut = F rim (cos alpha + sin alpha tan theta_R), alpha free:
 *              the edge stands rim sin(alpha) above the nut's centre;
 *   rho = phi - theta_R is how far the force leans from the seat's normal. A
 *   nut that turns has no friction along the slope (rho = 0); otherwise rho is
 *   what sticks, at most atan(slip):
 *     held     tip does not travel: rho = phi + alpha T/(u - 2T), T = tanh(u/2)
 *              (without play phi (u - T)/(u - 2T); 6 phi/u^2 for small u) (4)
 *              on rim: rho = phi + (M_nut/F) k (1 - 1/cosh u)/(u - tanh u)
 *                                                                        (5)
 *     rocking  rho = phi + alpha tanh u/(u - tanh u)                     (6)
 *              on rim: rho = phi + M_nut/(F l)                           (7)
 *   thread play lets the nut lie flat before the stud bends: M_nut >= 0.
 *
 * At the height of the nut's face the force passes arm = l tan(theta_R) -
 * M_foot/F from the foot's axis, and the nut has travelled arm + M_nut/F; both
 * toward the low end. On the rim the nut's centre stands off the seat by
 * rim (cos alpha tan phi - sin alpha). A nut that is turned: u -> 0 gives
 * M_nut = M_foot = EI phi/l.
 *
 * Source: derived here from the beam-column equation (any text on structural
 * stability, e.g. Timoshenko and Gere); compared with a planar contact finite
 * element run and with tests/reference/strap_planar.py.
 *
 * Not in it: a washer that dishes, a ring-shaped face (it lifts a little
 * earlier than two points), plastic studs, the foot's own give.
 */
#include "clamp/seat.h"

/* (u - T)/(u - 2T) with T = tanh(u/2); the difference below cancels for small
 * u: u - 2T = u^3/12 (1 - u^2/10 ...). */
static double stick_ratio(double u)
{
    const double small = 0.02; /* next term of the series: u^4/500 relative */
    if (u < small)
        return 6 / (u * u) * (1 + 11 * u * u / 60);
    const double T = tanh(u / 2);
    return (u - T) / (u - 2 * T);
}

/* u - tanh u, without cancellation for small u */
static double tanh_lag(double u)
{
    const double small = 0.02;
    return u < small ? u * u * u / 3 * (1 - 0.4 * u * u) : u - tanh(u);
}

sw__beam sw__beam_of(double F, double EI, double length)
{
    sw__beam b;
    b.k = sqrt(F / EI);
    b.u = b.k * length;
    b.tanh_u = tanh(b.u);
    b.sinh_u = sinh(b.u);
    b.cosh_u = cosh(b.u);
    b.stick = stick_ratio(b.u);
    b.lag = tanh_lag(b.u);
    return b;
}

/* alpha matters by its square and the lean by its product with alpha, so each
 * pass takes the error down by some hundred times */
#define RIM_PASSES 8

/* Moment of a nut turned by alpha that bears on its edge. */
static double rim_moment(const sw__stud *s, double alpha, double lean)
{
    return s->F * s->rim * (cos(alpha) + sin(alpha) * tan(lean));
}

/* How far the tip must turn to lie flat. */
static double flat_turn(const sw__stud *s) { return fmax(0, s->phi - s->play); }

static void conform_held(const sw__stud *s, const sw__beam *b, sw__seat *seat)
{
    const double EIk = s->EI * b->k, most = atan(s->slip);
    double rho = fmin(most, s->phi + flat_turn(s) * (b->stick - 1));
    seat->lean = s->phi - rho;
    seat->M_nut = EIk * ((s->phi - s->play - seat->lean) / b->tanh_u +
                         seat->lean / b->sinh_u);
    if (seat->M_nut < 0)
        seat->M_nut = 0;
    double alpha = s->phi - s->play;
    if (seat->M_nut > rim_moment(s, alpha, seat->lean)) {
        seat->on_rim = 1;
        for (int i = 0; i < RIM_PASSES; i++) {
            seat->M_nut = rim_moment(s, alpha, seat->lean);
            rho = fmin(most, s->phi + seat->M_nut / s->F * b->k *
                                          (1 - 1 / b->cosh_u) / b->lag);
            seat->lean = s->phi - rho;
            alpha = seat->lean + b->tanh_u * (seat->M_nut / EIk -
                                              seat->lean / b->sinh_u); /* (1) */
        }
        seat->lift = s->rim * (cos(alpha) * tan(s->phi) - sin(alpha));
    }
    seat->M_foot = seat->M_nut / b->cosh_u + EIk * seat->lean * b->tanh_u;
}

static void conform_rocking(const sw__stud *s, const sw__beam *b,
                            sw__seat *seat)
{
    const double EIk = s->EI * b->k, most = atan(s->slip);
    seat->lean =
        s->phi - fmin(most, s->phi + flat_turn(s) * (b->u / b->lag - 1));
    seat->M_nut = fmax(0, EIk * (s->phi - s->play - seat->lean) * b->tanh_u);
    double alpha = s->phi - s->play;
    if (seat->M_nut > rim_moment(s, alpha, seat->lean)) {
        seat->on_rim = 1;
        for (int i = 0; i < RIM_PASSES; i++) {
            seat->M_nut = rim_moment(s, alpha, seat->lean);
            seat->lean =
                s->phi - fmin(most, s->phi + seat->M_nut / (s->F * s->length));
            alpha = seat->lean + seat->M_nut / (EIk * b->tanh_u); /* (3) */
        }
        seat->lift = s->rim * (cos(alpha) * tan(s->phi) - sin(alpha));
    }
    seat->M_foot = 0;
}

sw__seat sw__seat_press(const sw__stud *s, const sw__beam *b)
{
    sw__seat seat = {0, 0, 0, 0, 0, 0, 0, 0};
    if (s->phi <= 0)
        return seat;
    if (s->rocking)
        conform_rocking(s, b, &seat);
    else
        conform_held(s, b, &seat);
    seat.offset = seat.M_nut / s->F;
    seat.arm = s->length * tan(seat.lean) - seat.M_foot / s->F;
    seat.travel = seat.arm + seat.offset;
    return seat;
}
