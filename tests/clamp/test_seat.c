/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Seat: the closed formulas of seat.c against the beam-column equation solved
 * by finite differences, and their limits. seat.c is not exported, so its
 * source is compiled into this program.
 *
 * The other method. Slope q(z) of the stud, foot at 0, nut at l:
 *
 *   E I q'' = F q - V,   V = F theta_R,
 *
 * central differences on 2000 and 4000 intervals, a tridiagonal solve, and
 * Richardson's extrapolation of what is wanted. Unknown are the force's lean
 * theta_R and, on the rim, the slope at the nut; both follow from the
 * conditions in words: the face lies flat, or the nut bears on one edge, whose
 * lever about the nut's centre is found by iteration; nothing holds along the
 * slope, or all that is needed to keep the nut where it is. The equation is
 * linear, so two solutions are combined for the latter.
 */
#include "clamp/seat.h"

#include "../near.h"
#include "../random.h"

#include <stdio.h>

static sw__seat solve_seat(const sw__stud *s)
{
    const sw__beam beam = sw__beam_of(s->F, s->EI, s->length);
    return sw__seat_press(s, &beam);
}

enum { MOST_NODES = 4001 };

typedef struct {
    double M_nut, M_foot, travel, turn; /* turn: slope at the nut */
} bending;

/* What is known at the nut. */
typedef enum { SLOPE, MOMENT } tip_kind;

/* One solve on n intervals. Ends where the derivative is prescribed use a
 * node beyond the end, eliminated with the equation itself. */
static bending solve_on(const sw__stud *s, double V, tip_kind kind, double tip,
                        int n)
{
    static double a[MOST_NODES], b[MOST_NODES], c[MOST_NODES], r[MOST_NODES],
        q[MOST_NODES];
    const double h = s->length / n, k2 = s->F / s->EI, v = V / s->EI;
    for (int i = 0; i <= n; i++) {
        a[i] = c[i] = 1;
        b[i] = -2 - k2 * h * h;
        r[i] = -v * h * h;
    }
    if (s->rocking) { /* q'(0) = 0 */
        c[0] = 2;
    } else { /* q(0) = 0 */
        b[0] = 1;
        c[0] = 0;
        r[0] = 0;
    }
    if (kind == SLOPE) {
        a[n] = 0;
        b[n] = 1;
        r[n] = tip;
    } else { /* E I q'(l) = tip */
        a[n] = 2;
        r[n] -= 2 * h * tip / s->EI;
    }
    for (int i = 1; i <= n; i++) {
        const double m = a[i] / b[i - 1];
        b[i] -= m * c[i - 1];
        r[i] -= m * r[i - 1];
    }
    q[n] = r[n] / b[n];
    for (int i = n - 1; i >= 0; i--)
        q[i] = (r[i] - c[i] * q[i + 1]) / b[i];
    /* q' at an end: one-sided, the second derivative from the equation */
    bending x;
    x.M_nut = s->EI * ((q[n] - q[n - 1]) / h + h / 2 * (k2 * q[n] - v) -
                       h * h / 6 * k2 * (q[n] - q[n - 1]) / h);
    x.M_foot = s->EI * ((q[1] - q[0]) / h - h / 2 * (k2 * q[0] - v) -
                        h * h / 6 * k2 * (q[1] - q[0]) / h);
    x.travel = (q[0] + q[n]) / 2;
    for (int i = 1; i < n; i++)
        x.travel += q[i];
    x.travel *= h;
    x.turn = q[n];
    return x;
}

static double extrapolate(double coarse, double fine)
{
    return fine + (fine - coarse) / 3;
}

static bending solve(const sw__stud *s, double V, tip_kind kind, double tip)
{
    const bending coarse = solve_on(s, V, kind, tip, 2000);
    const bending fine = solve_on(s, V, kind, tip, 4000);
    const bending x = {extrapolate(coarse.M_nut, fine.M_nut),
                       extrapolate(coarse.M_foot, fine.M_foot),
                       extrapolate(coarse.travel, fine.travel),
                       extrapolate(coarse.turn, fine.turn)};
    return x;
}

typedef struct {
    double lean, M_nut, M_foot, travel, turn;
    int on_rim;
} answer;

/* Travel depends on V alone once the tip is given: a straight line. Returns
 * the V at which it is zero. */
static double V_that_holds(const sw__stud *s, tip_kind kind, double tip)
{
    const double at0 = solve(s, 0, kind, tip).travel;
    const double at1 = solve(s, s->F, kind, tip).travel;
    return at0 == at1 ? -INFINITY : s->F * at0 / (at0 - at1);
}

/* Friction pushes the nut up the slope, so it makes the lean smaller, by as
 * much as it can or as it needs. */
static answer lean_on(const sw__stud *s, tip_kind kind, double tip)
{
    double lean = s->phi - s->most;
    if (s->most > 0)
        lean = fmax(lean, V_that_holds(s, kind, tip) / s->F);
    const bending x = solve(s, s->F * lean, kind, tip);
    const answer a = {lean, x.M_nut, x.M_foot, x.travel, x.turn, 0};
    return a;
}

/* Moment about the nut's centre of a force whose vertical part is F, leaning
 * by `lean`, at the edge of a face of half width rim turned by `turn`: a sum
 * of two levers. The edge lies on the high side, raised by the turn. */
static double edge_moment(const sw__stud *s, double turn, double lean)
{
    const double edge[2] = {s->rim * cos(turn), s->rim * sin(turn)};
    const double force[2] = {s->F * tan(lean), s->F};
    return edge[0] * force[1] + edge[1] * force[0];
}

static answer other_method(const sw__stud *s)
{
    answer a = lean_on(s, SLOPE, s->phi - s->play);
    if (a.M_nut > edge_moment(s, s->phi - s->play, a.lean)) {
        for (int i = 0; i < 12; i++)
            a = lean_on(s, MOMENT, edge_moment(s, a.turn, a.lean));
        a.on_rim = 1;
    }
    return a;
}

static const double E_steel = 205000;

static double EI_of(double d3)
{
    return E_steel * acos(-1) * d3 * d3 * d3 * d3 / 64;
}

static sw__stud base_case(void)
{
    /* the M12 stud of the contact runs: d3 9.85 mm, 80 mm free */
    const sw__stud s = {10000, EI_of(9.85), 80, 9.5, 0.03, 0, 0, 0};
    return s;
}

static sw__stud random_stud(randoms *r)
{
    sw__stud s;
    const double d3 = random_log(r, 1.2, 60);
    s.EI = EI_of(d3);
    s.length = d3 * random_log(r, 2, 30);
    const double u = random_log(r, 0.03, 12);
    s.F = s.EI * u * u / (s.length * s.length);
    s.rim = d3 * random_log(r, 0.05, 20);
    s.phi = random_log(r, 1e-4, 0.35);
    s.most = atan(0);
    s.play = 0;
    s.rocking = random_below(r, 2);
    return s;
}

/* Compares; moments relative to the largest of the problem. The nut's way
 * keeps the tangent of the lean where the bending has the lean itself. */
static void compare(const char *what, const sw__stud *s, double tolerance)
{
    const sw__seat got = solve_seat(s);
    const answer want = other_method(s);
    char text[256];
    snprintf(text, sizeof text,
             "%s: F %.17g EI %.17g l %.17g rim %.17g phi %.17g slip %.17g "
             "play %.17g rocking %d, u %g",
             what, s->F, s->EI, s->length, s->rim, s->phi, s->most, s->play,
             s->rocking, s->length * sqrt(s->F / s->EI));
    const double onset = edge_moment(s, s->phi - s->play, want.lean);
    if (!want.on_rim && want.M_nut > (1 - 1e-6) * onset)
        return; /* either state, by rounding */
    must(got.on_rim == want.on_rim, "%s: on_rim %d, want %d", text, got.on_rim,
         want.on_rim);
    const double most = fmax(fmax(fabs(want.M_nut), fabs(want.M_foot)),
                             s->EI * s->phi / s->length);
    near_in(text, got.lean, want.lean, tolerance * s->phi, tolerance);
    near_in(text, got.M_nut, want.M_nut, tolerance * most, tolerance);
    near_in(text, got.M_foot, want.M_foot, tolerance * most, tolerance);
    near_in(text, got.offset, want.M_nut / s->F, tolerance * most / s->F,
            tolerance);
    const double bent = s->length * (tan(got.lean) - got.lean);
    const double way = fmax(s->length * s->phi, most / s->F);
    near_in(text, got.travel - bent, want.travel, tolerance * way, tolerance);
    near_in(text, got.arm - bent, want.travel - want.M_nut / s->F,
            tolerance * way, tolerance);
    /* the nut's centre over the seat below it, its edge on the seat */
    const double lift =
        want.on_rim ? s->rim * (cos(want.turn) * tan(s->phi) - sin(want.turn))
                    : 0;
    near_in(text, got.lift, lift, tolerance * s->rim, tolerance);
}

START_TEST(turned)
{
    randoms r = {11};
    int rims = 0;
    for (int i = 0; i < 400; i++) {
        const sw__stud s = random_stud(&r);
        rims += solve_seat(&s).on_rim;
        compare("turned", &s, 1e-6);
    }
    ck_assert_int_ge(rims, 50);
    ck_assert_int_le(rims, 350);
}
END_TEST

/* Friction along the slope, from hardly any to more than can be used. Where
 * it holds the nut on its rim the friction is limited to what a nut may have,
 * and the edge's lever counts. */
static void compare_still(int rocking, int on_rim)
{
    randoms r = {12};
    int seen = 0;
    for (int i = 0; i < 1500; i++) {
        sw__stud s = random_stud(&r);
        s.rocking = rocking;
        s.phi = random_log(&r, 1e-4, 0.1);
        s.most = atan(i % 4 || on_rim ? random_log(&r, 1e-3, 0.5) : INFINITY);
        if (solve_seat(&s).on_rim != on_rim)
            continue;
        seen++;
        compare("still", &s, 1e-6);
    }
    ck_assert_int_ge(seen, 100);
}

START_TEST(still_held) { compare_still(0, 0); }
END_TEST

START_TEST(still_held_on_rim) { compare_still(0, 1); }
END_TEST

START_TEST(still_rocking) { compare_still(1, 0); }
END_TEST

START_TEST(still_rocking_on_rim) { compare_still(1, 1); }
END_TEST

/* Short or slack studs, where the closed forms are differences of nearly
 * equal numbers and a series stands in for them. The tilt is so small that
 * friction of any angle can hold the nut. */
static void compare_small_u(int slip, int on_rim)
{
    for (double u = 2e-3; u < 0.5; u *= 1.17)
        for (int rocking = 0; rocking <= !on_rim; rocking++) {
            sw__stud s = base_case();
            s.F = s.EI * u * u / (s.length * s.length);
            s.phi = 0.01 * u * u;
            s.rocking = rocking;
            s.most = atan(slip ? INFINITY : 0);
            s.rim = on_rim ? 0.5 * s.EI * s.phi / s.length / s.F : 1e6;
            compare("small u", &s, 1e-6);
        }
}

START_TEST(small_u_turned) { compare_small_u(0, 0); }
END_TEST

START_TEST(small_u_still) { compare_small_u(1, 0); }
END_TEST

START_TEST(small_u_on_rim) { compare_small_u(0, 1); }
END_TEST

/* Thread play lets the nut tilt on its thread: it takes its angle off the
 * bending, and never bends the stud the other way. Nut turned. */
START_TEST(play)
{
    randoms r = {13};
    int clipped = 0;
    for (int i = 0; i < 300; i++) {
        sw__stud s = random_stud(&r);
        s.play = random_between(&r, 0, 2 * s.phi);
        const answer want = other_method(&s);
        const sw__seat got = solve_seat(&s);
        if (want.M_nut >= 0) {
            compare("play", &s, 1e-6);
            continue;
        }
        clipped++;
        near(got.M_nut, 0, 0, 0);
        const bending free_tip = solve(&s, s.F * s.phi, MOMENT, 0);
        near(got.M_foot, free_tip.M_foot, 1e-6 * s.EI * s.phi / s.length, 1e-6);
    }
    ck_assert_int_ge(clipped, 30);
}
END_TEST

/* Limits for small u, textbook beams. A nut turned up: nut and foot bend by
 * E I phi/l (a beam whose end is turned by phi and free to move). Held fast:
 * 4 E I phi/l at the turned end, 2 E I phi/l at the other, with a shear of
 * 6 E I phi/l2 (slope-deflection equations). Series of the first: 1 - u2/6
 * and 1 + u2/3. */
START_TEST(limits)
{
    sw__stud s = base_case();
    s.rim = 1e9;
    for (double u = 1e-2; u > 1e-6; u /= 3) {
        s.F = s.EI * u * u / (s.length * s.length);
        s.phi = 0.03 * u * u; /* so that friction can hold it fast */
        const double one = s.EI * s.phi / s.length;
        s.most = atan(0);
        sw__seat x = solve_seat(&s);
        near(x.M_nut, one, 0, u * u);
        near(x.M_foot, one, 0, u * u);
        near(x.lean, s.phi, 0, 0);
        s.most = atan(INFINITY);
        x = solve_seat(&s);
        /* the last digits go in the difference of 1/tanh u and 1/sinh u */
        near(x.M_nut, 4 * one, 0, u * u + 1e-14 / (u * u));
        near(x.M_foot, -2 * one, 0, u * u + 1e-14 / (u * u));
        near(s.F * x.lean, -6 * one / s.length, 0, u * u);
    }
    s.most = atan(0);
    s.phi = 0.03;
    const double one = s.EI * s.phi / s.length;
    s.F = s.EI * 0.01 / (s.length * s.length); /* u = 0.1 */
    const sw__seat x = solve_seat(&s);
    near(x.M_nut / one, 1 - 0.01 / 6, 0, 3e-6);
    near(x.M_foot / one, 1 + 0.01 / 3, 0, 3e-6);
}
END_TEST

/* u -> infinity: a rope. The stud follows the force, bends in a boundary
 * layer only: M_foot = E I k phi, M_nut -> 0 for a turned nut. */
START_TEST(rope)
{
    sw__stud s = base_case();
    static const double u[] = {30, 100, 1e3, 1e6};
    for (size_t i = 0; i < sizeof u / sizeof u[0]; i++) {
        s.F = s.EI * u[i] * u[i] / (s.length * s.length);
        const double k = u[i] / s.length;
        const sw__seat x = solve_seat(&s);
        near(x.M_foot, s.EI * k * s.phi, 0, 1e-9);
        near(x.M_nut, 0, 1e-9 * s.EI * k * s.phi, 0);
        s.most = atan(0.2);
        const sw__seat y = solve_seat(&s);
        ck_assert(isfinite(y.M_nut) && isfinite(y.M_foot) && isfinite(y.lean) &&
                  isfinite(y.arm));
        s.most = atan(0);
    }
}
END_TEST

/* A turned nut: the foot bears at least the moment of the nut, rim or not. A
 * rocking foot bears none. */
START_TEST(foot)
{
    randoms r = {14};
    for (int i = 0; i < 20000; i++) {
        sw__stud s = random_stud(&r);
        s.play = i % 3 ? 0 : random_between(&r, 0, 2 * s.phi);
        s.rocking = 0;
        sw__seat x = solve_seat(&s);
        ck_assert(fabs(x.M_foot) >= fabs(x.M_nut) * (1 - 1e-12));
        /* an edge that stands higher than the centre has a longer lever */
        ck_assert(x.M_nut <= s.F * s.rim / cos(s.phi) * (1 + 1e-12));
        s.rocking = 1;
        s.most = atan(random_between(&r, 0, 0.5));
        x = solve_seat(&s);
        near(x.M_foot, 0, 0, 0);
    }
}
END_TEST

/* Nothing leans, nothing bends; more tilt never bends less. */
START_TEST(level_and_rising)
{
    sw__stud s = base_case();
    s.phi = 0;
    const sw__seat flat = solve_seat(&s);
    ck_assert(flat.lean == 0 && flat.M_nut == 0 && flat.M_foot == 0 &&
              flat.offset == 0 && flat.travel == 0 && flat.arm == 0 &&
              !flat.on_rim);
    double M_before = 0, foot_before = 0;
    for (s.phi = 1e-4; s.phi < 0.3; s.phi += 1e-3) {
        const sw__seat x = solve_seat(&s);
        ck_assert(x.M_nut >= M_before && x.M_foot > foot_before);
        M_before = x.M_nut;
        foot_before = x.M_foot;
    }
}
END_TEST

/* Nothing jumps where the nut comes onto its rim, nor where friction ends. */
START_TEST(continuous)
{
    static const double slip[] = {0, 0.02, 0.15, INFINITY};
    for (size_t i = 0; i < sizeof slip / sizeof slip[0]; i++)
        for (int rocking = 0; rocking <= 1; rocking++) {
            sw__stud s = base_case();
            s.most = atan(slip[i]);
            s.rocking = rocking;
            s.phi = 1e-5;
            const double step = 1e-5, EIk = s.EI * sqrt(s.F / s.EI);
            sw__seat x = solve_seat(&s);
            for (; s.phi < 0.25; s.phi += step) {
                const sw__seat y = solve_seat(&s);
                must(fabs(y.M_foot - x.M_foot) < 20 * EIk * step &&
                         fabs(y.M_nut - x.M_nut) < 20 * EIk * step &&
                         fabs(y.lean - x.lean) < 20 * step &&
                         fabs(y.arm - x.arm) < 20 * s.length * step,
                     "slip %g rocking %d phi %.17g: a jump, lean "
                     "%.17g to %.17g",
                     slip[i], rocking, s.phi, x.lean, y.lean);
                x = y;
            }
        }
}
END_TEST

int main(void)
{
    return RUN_TESTS("seat", turned, still_held, still_held_on_rim,
                     still_rocking, still_rocking_on_rim, small_u_turned,
                     small_u_still, small_u_on_rim, play, limits, rope, foot,
                     level_and_rising, continuous);
}
