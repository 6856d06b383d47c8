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

#include "base/settle.h"

/* (u - T)/(u - 2T) with T = tanh(u/2); the difference below cancels for small
 * u: u - 2T = u^3/12 (1 - u^2/10 ...). */
static double stick_ratio(double u, double T)
{
    const double small = 0.02; /* next term of the series: u^4/500 relative */
    if (u < small)
        return 6 / (u * u) * (1 + 11 * u * u / 60);
    return (u - T) / (u - 2 * T);
}

/* u - tanh u, without cancellation for small u */
static double tanh_lag(double u, double tanh_u)
{
    const double small = 0.02;
    return u < small ? u * u * u / 3 * (1 - 0.4 * u * u) : u - tanh_u;
}

sw__beam sw__beam_of(double F, double EI, double length)
{
    sw__beam b;
    b.k = sqrt(F / EI);
    b.u = b.k * length;
    /* all from one e^u - 1, which is exact for small u too; of a longer stud
     * only the end bends, and none of these changes any more */
    const double longest = 300, m = expm1(fmin(b.u, longest));
    const double half = m / (m + 2); /* tanh(u/2) */
    b.sinh_u = (m + m / (m + 1)) / 2;
    b.cosh_u = 1 + m / (m + 1) * m / 2;
    b.tanh_u = 2 * half / (1 + half * half);
    b.stick = stick_ratio(b.u, half);
    b.lag = tanh_lag(b.u, b.tanh_u);
    return b;
}

/* Moment of a nut turned by alpha that bears on its edge. */
static double rim_moment(const sw__stud *s, double alpha, double lean)
{
    return s->F * s->rim * (cos(alpha) + sin(alpha) * tan(lean));
}

/* How far the tip must turn to lie flat. */
static double flat_turn(const sw__stud *s) { return fmax(0, s->phi - s->play); }

/* What sticks of the lean, for a nut on its edge: (5), (7). */
static double rim_stick(const sw__stud *s, const sw__beam *b, double M_nut)
{
    const double arm =
        s->rocking ? 1 / s->length : b->k * (1 - 1 / b->cosh_u) / b->lag;
    return s->phi + M_nut / s->F * arm;
}

/* How far that moment and lean turn the tip: (1), (3). */
static double tip_turn(const sw__stud *s, const sw__beam *b,
                       const sw__seat *seat)
{
    const double bent = seat->M_nut / (s->EI * b->k);
    return s->rocking
               ? seat->lean + bent / b->tanh_u
               : seat->lean + b->tanh_u * (bent - seat->lean / b->sinh_u);
}

/* On the edge the moment hangs on the tip's turn, by its square, and on the
 * lean by its product with it. */
static void press_rim(const sw__stud *s, const sw__beam *b, sw__seat *seat)
{
    enum { PASSES = 60 };
    const double settled = 1e-15;
    sw__settling settling = {0, 0, 0};
    double alpha = s->phi - s->play, change = INFINITY;
    seat->on_rim = 1;
    for (int i = 0; i < PASSES && fabs(change) > settled; i++) {
        seat->M_nut = rim_moment(s, alpha, seat->lean);
        seat->lean = s->phi - fmin(s->most, rim_stick(s, b, seat->M_nut));
        change = tip_turn(s, b, seat) - alpha;
        alpha += sw__settle(&settling, alpha, change);
    }
    seat->lift = s->rim * (cos(alpha) * tan(s->phi) - sin(alpha));
}

static void conform_held(const sw__stud *s, const sw__beam *b, sw__seat *seat)
{
    const double EIk = s->EI * b->k;
    const double rho = fmin(s->most, s->phi + flat_turn(s) * (b->stick - 1));
    seat->lean = s->phi - rho;
    seat->M_nut = EIk * ((s->phi - s->play - seat->lean) / b->tanh_u +
                         seat->lean / b->sinh_u);
    if (seat->M_nut < 0)
        seat->M_nut = 0;
    if (seat->M_nut > rim_moment(s, s->phi - s->play, seat->lean))
        press_rim(s, b, seat);
    seat->M_foot = seat->M_nut / b->cosh_u + EIk * seat->lean * b->tanh_u;
}

static void conform_rocking(const sw__stud *s, const sw__beam *b,
                            sw__seat *seat)
{
    seat->lean =
        s->phi - fmin(s->most, s->phi + flat_turn(s) * (b->u / b->lag - 1));
    seat->M_nut =
        fmax(0, s->EI * b->k * (s->phi - s->play - seat->lean) * b->tanh_u);
    if (seat->M_nut > rim_moment(s, s->phi - s->play, seat->lean))
        press_rim(s, b, seat);
    seat->M_foot = 0;
}

sw__seat sw__seat_press(const sw__stud *s, const sw__beam *b)
{
    sw__seat seat = {0, 0, 0, 0, 0, 0, 0, 0, 0};
    if (s->phi <= 0)
        return seat;
    if (s->rocking)
        conform_rocking(s, b, &seat);
    else
        conform_held(s, b, &seat);
    seat.offset = seat.M_nut / s->F;
    seat.tan_lean = tan(seat.lean);
    seat.arm = s->length * seat.tan_lean - seat.M_foot / s->F;
    seat.travel = seat.arm + seat.offset;
    return seat;
}
