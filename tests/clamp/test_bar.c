/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Bar: sums of forces and moments, and deflections by the work of a unit load
 * (Castigliano), summed along the bar. Beam tables are in tests/cases/.
 */
#include "../common.h"
#include "../near.h"
#include "../random.h"

static sw_bar_in drawn(randoms *r)
{
    sw_bar_in in;
    sw_bar_defaults(&in);
    in.span_mm = random_between(r, 100, 500);
    in.stud1_N = random_between(r, 1000, 9000);
    in.stud2_N = random_between(r, 1000, 9000);
    in.pad1_mm = random_between(r, -0.2, 0.4) * in.span_mm;
    in.pad2_mm = random_between(r, 0.5, 1.2) * in.span_mm;
    in.bar_width_mm = 40;
    in.bar_thickness_mm = 20;
    return in;
}

/* Bending moment at x of forces F1, F2 at the studs on these pads. */
static double moment(const sw_bar_in *in, double F1, double F2, double x)
{
    const double s = in->span_mm, a = in->pad1_mm, b = in->pad2_mm;
    const double R2 = (F2 * (s - a) - F1 * a) / (b - a), R1 = F1 + F2 - R2;
    double M = 0;
    if (x > 0)
        M += F1 * x;
    if (x > s)
        M += F2 * (x - s);
    if (x > a)
        M -= R1 * (x - a);
    if (x > b)
        M -= R2 * (x - b);
    return M;
}

START_TEST(by_unit_loads)
{
    enum { STEPS = 200000 };
    randoms some = {11};
    int solved = 0, rocking = 0;
    for (int n = 0; n < 60; n++) {
        const sw_bar_in in = drawn(&some);
        const double s = in.span_mm;
        sw_error err;
        const sw_bar_out out = sw_bar(&in, &err);
        check_no_error("bar", out.status, &err);
        near(out.pad1_N + out.pad2_N, in.stud1_N + in.stud2_N, 0, 1e-12);
        near(out.pad1_N * in.pad1_mm + out.pad2_N * in.pad2_mm, in.stud2_N * s,
             1e-6, 1e-12);
        const double R2 =
            (in.stud2_N * (s - in.pad1_mm) - in.stud1_N * in.pad1_mm) /
            (in.pad2_mm - in.pad1_mm);
        const int tips = R2 <= 0 || in.stud1_N + in.stud2_N - R2 <= 0;
        ck_assert_int_eq(out.rest, tips ? SW_REST_ROCKS : SW_REST_STAYS);
        if (tips) { /* no such bar stands still: forces alone */
            must(out.moment_Nm == SW_UNSET && out.stress_MPa == SW_UNSET &&
                     out.sag1_mm == SW_UNSET && out.yield_margin == SW_UNSET,
                 "tips");
            rocking++;
            continue;
        }
        solved++;
        const double low = fmin(0, in.pad1_mm), high = fmax(s, in.pad2_mm);
        const double dx = (high - low) / STEPS, EI = 207000.0 * 40 * 8000 / 12;
        double sag1 = 0, sag2 = 0, most = 0;
        for (int i = 0; i < STEPS; i++) {
            const double x = low + (i + 0.5) * dx;
            const double M = moment(&in, in.stud1_N, in.stud2_N, x);
            sag1 += M * moment(&in, 1, 0, x) * dx / EI;
            sag2 += M * moment(&in, 0, 1, x) * dx / EI;
            most = fmax(most, fabs(M));
        }
        near(out.sag1_mm, sag1, 1e-7, 1e-6);
        near(out.sag2_mm, sag2, 1e-7, 1e-6);
        near(1000 * out.moment_Nm, most, 1, 1e-4);
        near(out.stress_MPa, 6000 * out.moment_Nm / (40 * 400), 0, 1e-12);
        near(out.yield_margin, 305 / out.stress_MPa, 0, 1e-12);
    }
    ck_assert_int_gt(solved, 30);
    ck_assert_int_gt(rocking, 3);
}
END_TEST

/* The bow between the pads, from the curve integrated step by step. */
START_TEST(bow_by_steps)
{
    enum { STEPS = 200000 };
    randoms some = {12};
    for (int n = 0; n < 20; n++) {
        const sw_bar_in in = drawn(&some);
        const sw_bar_out out = sw_bar(&in, NULL);
        if (out.rest == SW_REST_ROCKS)
            continue;
        const double a = in.pad1_mm, w = in.pad2_mm - a, dx = w / STEPS;
        const double EI = 207000.0 * 40 * 8000 / 12;
        double end = 0, slope = 0, most = 0;
        for (int pass = 0; pass < 2; pass++) {
            double y = 0, turn = pass ? -end / w : 0;
            slope = 0;
            for (int i = 0; i < STEPS; i++) {
                const double M =
                    moment(&in, in.stud1_N, in.stud2_N, a + (i + 0.5) * dx);
                y += (slope + turn + M * dx / EI / 2) * dx;
                slope += M * dx / EI;
                if (pass && fabs(y) > fabs(most))
                    most = y;
            }
            end = pass ? end : y;
        }
        near(out.bow_mm, most, 1e-6, 1e-4);
    }
}
END_TEST

START_TEST(mirrored)
{
    randoms some = {13};
    for (int n = 0; n < 200; n++) {
        const sw_bar_in in = drawn(&some);
        sw_bar_in other = in;
        other.stud1_N = in.stud2_N;
        other.stud2_N = in.stud1_N;
        other.pad1_mm = in.span_mm - in.pad2_mm;
        other.pad2_mm = in.span_mm - in.pad1_mm;
        const sw_bar_out one = sw_bar(&in, NULL), two = sw_bar(&other, NULL);
        ck_assert_int_eq(one.rest, two.rest);
        near(one.pad1_N, two.pad2_N, 1e-6, 1e-9);
        if (one.rest == SW_REST_ROCKS)
            continue;
        near(one.sag1_mm, two.sag2_mm, 1e-9, 1e-8);
        near(one.bow_mm, two.bow_mm, 1e-9, 1e-8);
        near(one.stress_MPa, two.stress_MPa, 1e-9, 1e-9);
    }
}
END_TEST

START_TEST(yields)
{
    randoms some = {11};
    sw_bar_in in = drawn(&some);
    in.pad1_mm = 0.2 * in.span_mm;
    in.pad2_mm = 0.8 * in.span_mm;
    in.stud2_N = in.stud1_N;
    const sw_bar_out one = sw_bar(&in, NULL);
    ck_assert_int_eq(one.status, SW_OK);
    in.bar_yield_MPa = one.stress_MPa * 1.001;
    ck_assert(!(sw_bar(&in, NULL).warnings & SW_WARN_STRAP_YIELDS));
    in.bar_yield_MPa = one.stress_MPa * 0.999;
    ck_assert(sw_bar(&in, NULL).warnings & SW_WARN_STRAP_YIELDS);
    in.bar_thickness_mm *=
        2; /* an eighth of the sag, a quarter of the stress */
    near(sw_bar(&in, NULL).sag1_mm, one.sag1_mm / 8, 0, 1e-10);
    near(sw_bar(&in, NULL).stress_MPa, one.stress_MPa / 4, 0, 1e-12);
}
END_TEST

int main(void)
{
    return RUN_TESTS("bar", by_unit_loads, bow_by_steps, mirrored, yields);
}
