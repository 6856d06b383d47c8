/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Vacuum and adhesive: the pressure on the face summed strip by strip at the
 * margin, and the least of all margins searched. Published values are in
 * tests/cases/.
 */
#include "../common.h"
#include "../near.h"
#include "../random.h"

static sw_vacuum_in question(void)
{
    sw_vacuum_in in;
    sw_vacuum_defaults(&in);
    in.vacuum_MPa = 0.07;
    in.seal_length_mm = 180;
    in.seal_width_mm = 90;
    in.mu_face = 0.25;
    in.weight_N = 12;
    in.side_cut_N = 100;
    in.cut_height_mm = 30;
    in.lift_N = 40;
    in.rim_lift_N = 25;
    return in;
}

static sw_vacuum_out good(const sw_vacuum_in *in)
{
    sw_error err;
    const sw_vacuum_out out = sw_vacuum(in, &err);
    check_no_error("vacuum", out.status, &err);
    return out;
}

/* Independent: a rigid part on strips of an even bed that only push. Returns
 * how many strips of 2000 are without load, -1 where no tilt balances it. */
static int strips_off(double N, double M, double b)
{
    enum { STRIPS = 2000 };
    /* sink so that the sum is N, for every tilt; then the tilt by bisection */
    double low = 0, high = 1e6;
    if (M > N * b / 2 * (1 - 1e-9))
        return -1;
    int off = 0;
    for (int t = 0; t < 100; t++) {
        const double tilt = (low + high) / 2;
        double a = -1e9, c = 1e9;
        for (int s = 0; s < 100; s++) {
            const double sink = (a + c) / 2;
            double sum = 0;
            for (int i = 0; i < STRIPS; i++) {
                const double x = b * ((i + 0.5) / STRIPS - 0.5);
                sum += fmax(0, sink + tilt * x) / STRIPS;
            }
            if (sum < N)
                a = sink;
            else
                c = sink;
        }
        double moment = 0;
        off = 0;
        for (int i = 0; i < STRIPS; i++) {
            const double x = b * ((i + 0.5) / STRIPS - 0.5);
            const double p = fmax(0, (a + c) / 2 + tilt * x) / STRIPS;
            moment += p * x;
            off += p == 0;
        }
        if (moment < M)
            low = tilt;
        else
            high = tilt;
    }
    return off;
}

START_TEST(first_gap_by_strips)
{
    const sw_vacuum_in in = question();
    const sw_vacuum_out out = good(&in);
    const double b = 90, N = 0.07 * 180 * 90 + 12;
    for (int side = -1; side <= 1; side += 2) {
        const double k = out.gap_margin * (1 + side * 0.004);
        const int off = strips_off(N - k * 65, k * (100 * 30 + 25 * b / 2), b);
        must(side < 0 ? off == 0 : off > 0, "%d strips at %g", off, k);
        const double t = out.tip_margin * (1 + side * 0.004);
        const double left = N - t * 65, M = t * (100 * 30 + 25 * b / 2);
        must(side < 0 ? M < left * b / 2 : M > left * b / 2, "tips at %g", t);
    }
    near(out.margin, fmin(out.slide_margin, out.gap_margin), 0, 0);
    /* the force at which it slides is that of the margin */
    sw_vacuum_in at = in;
    at.side_cut_N = out.slide_N;
    near(good(&at).slide_margin, 1, 0, 1e-12);
    at.side_cut_N = out.gap_N;
    near(good(&at).gap_margin, 1, 0, 1e-12);
    at.side_cut_N = out.tip_N;
    near(good(&at).tip_margin, 1, 0, 1e-12);
}
END_TEST

/* Scaling the cut by k divides every margin by k; the margin is the least. */
START_TEST(scaling)
{
    randoms some = {5};
    for (int i = 0; i < 2000; i++) {
        sw_vacuum_in in = question();
        in.side_cut_N = 300 * random_between(&some, 0, 1);
        in.cut_height_mm = 80 * random_between(&some, 0, 1);
        in.lift_N = 200 * random_between(&some, 0, 1);
        in.rim_lift_N = 100 * random_between(&some, 0, 1);
        in.mu_face = 0.05 + random_between(&some, 0, 1);
        const sw_vacuum_out one = good(&in);
        const double k = 0.2 + 3 * random_between(&some, 0, 1);
        in.side_cut_N *= k;
        in.lift_N *= k;
        in.rim_lift_N *= k;
        const sw_vacuum_out two = good(&in);
        near(two.margin * k, one.margin, 0, 1e-12);
        near(two.tip_margin * k, one.tip_margin, 0, 1e-12);
        must(one.margin <= one.slide_margin && one.margin <= one.gap_margin &&
                 one.margin <= one.tip_margin && one.margin <= one.lift_margin,
             "not the least");
        must(one.gap_margin <= one.tip_margin, "gap after tipping");
        must(two.first == one.first, "first");
        const int stays = one.margin >= 2   ? SW_STAYS_YES
                          : one.margin >= 1 ? SW_STAYS_BARELY
                                            : SW_STAYS_NOT;
        ck_assert_int_eq(one.verdict, stays);
    }
}
END_TEST

/* Air of the standard atmosphere: ISO 2533, from memory, hPa. */
START_TEST(air)
{
    static const double row[][2] = {{0, 1013.25},
                                    {500, 954.61},
                                    {1000, 898.75},
                                    {2000, 794.95},
                                    {3000, 701.08}};
    for (int i = 0; i < 5; i++) {
        sw_vacuum_in in = question();
        in.altitude_m = row[i][0];
        in.vacuum_MPa = 0.03;
        near(good(&in).atmosphere_MPa, row[i][1] * 1e-4, 0, 1e-4);
    }
}
END_TEST

/* A bond's edge: stress of a bent block, summed over strips. */
START_TEST(bonds)
{
    sw_adhesive_in in;
    sw_adhesive_defaults(&in);
    in.shear_MPa = 0.8;
    in.tension_MPa = 0.5;
    in.sheet_factor = 4;
    in.bond_length_mm = 120;
    in.bond_width_mm = 70;
    in.side_cut_N = 90;
    in.cut_height_mm = 12;
    in.lift_N = 30;
    const sw_adhesive_out out = sw_adhesive(&in, NULL);
    enum { STRIPS = 20000 };
    const double edge = out.peel_stress_MPa - 30 / (120.0 * 70);
    double moment = 0;
    for (int i = 0; i < STRIPS; i++) {
        const double x = 70 * ((i + 0.5) / STRIPS - 0.5);
        moment += edge * x / 35 * x * 120 * 70 / STRIPS;
    }
    near(moment, 90 * 12, 0, 1e-7);
    /* at the margin the uses add up to one */
    in.side_cut_N *= out.margin;
    in.lift_N *= out.margin;
    const sw_adhesive_out at = sw_adhesive(&in, NULL);
    near(at.shear_use + at.tension_use, 1, 0, 1e-12);
    near(at.margin, 1, 0, 1e-12);
    /* a higher factor holds less, in proportion */
    in.sheet_factor = 8;
    near(sw_adhesive(&in, NULL).margin, 0.5, 0, 1e-12);
}
END_TEST

int main(void)
{
    return RUN_TESTS("vacuum", first_gap_by_strips, scaling, air, bonds);
}
