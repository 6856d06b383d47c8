/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Turn: each share against an independent calculation (the stud's turn of the
 * torque room, the strap's deflection integrated along it, a lever on two
 * springs), the limits, the band.
 */
#include "../near.h"
#include "../random.h"
#include "strap_question.h"

static const double pi = 3.14159265358979323846;

static sw_turn_out good(const char *what, const sw_strap_in *in, double snug)
{
    sw_error err;
    const sw_turn_out t = sw_strap_turn(in, snug, &err);
    check_no_error(what, t.status, &err);
    check_numbers(what, &t, SW_STRUCT_TURN_OUT, t.status);
    return t;
}

/* Independent: the torque room's turn of the stud alone. */
START_TEST(stud)
{
    const sw_strap_in in = base_strap(15000, 0);
    sw_torque_in q;
    sw_torque_defaults(&q);
    SET(q.thread, "M12");
    q.preload_N = 15000;
    q.free_length_mm = 80;
    const sw_turn_out t = good("stud", &in, 0);
    near(360 * t.stud_mm / 1.75, sw_torque(&q, NULL).turn_from_snug_deg, 0,
         1e-12);
    /* worked by hand: 15000 N * 80 mm/(205000 MPa * 84.27 mm2), ISO 898-1 */
    near(t.stud_mm, 0.06946, 0, 1e-3);
}
END_TEST

/* Independent: the bending line of the strap, moment over EI summed twice from
 * end to end, at the stud. */
static double integrated_sag(double F, double a, double b, double EI)
{
    enum { N = 200000 };
    const double L = a + b, dx = L / N;
    double slope = 0, y = 0, y_stud = 0;
    for (int i = 0; i < N; i++) {
        const double x = (i + 0.5) * dx; /* from the heel */
        const double M = x < b ? F * a / L * x : F * b / L * (L - x);
        slope += M / EI * dx;
        y += slope * dx;
        if (i + 1 == (int)(b / dx + 0.5))
            y_stud = y;
    }
    return y * b / L - y_stud; /* ends put on the supports */
}

START_TEST(strap)
{
    const sw_strap_in in = base_strap(15000, 0);
    const double EI = 205000.0 * 32 * 16 * 16 * 16 / 12;
    near(good("strap", &in, 3000).strap_mm,
         fabs(integrated_sag(12000, 30, 60, EI)), 0, 1e-4);
}
END_TEST

/* Independent: a stiff lever on two springs, solved for its two ends by their
 * forces. Part 40 and heel 40 mm, columns of 32 x 32 mm; then a jack screw. */
START_TEST(supports)
{
    sw_strap_in in = base_strap(9000, 0);
    double toe = 9000.0 * 60 / 90 * 40 / (205000.0 * 32 * 32);
    double heel = 9000.0 * 30 / 90 * 40 / (205000.0 * 32 * 32);
    near(good("blocks", &in, 0).supports_mm, heel + (toe - heel) * 60 / 90, 0,
         1e-12);
    in.heel = SW_HEEL_SCREW;
    in.heel_screw_diameter_mm = 10;
    heel = 9000.0 * 30 / 90 * 40 / (205000.0 * pi * 25);
    near(good("screw", &in, 0).supports_mm, heel + (toe - heel) * 60 / 90, 0,
         1e-12);
}
END_TEST

/* VDI 2230-1: half a diameter of thread on the root at each end, 0.4 of a
 * diameter of nut and 0.33 of tapped thread on the nominal section; M12, root
 * 76.25 mm2. */
START_TEST(ends)
{
    const sw_strap_in in = base_strap(10000, 0);
    near(good("ends", &in, 0).ends_mm,
         10000.0 * (12 / 76.25 + 0.73 * 12 / (pi * 36)) / 205000, 0, 2e-4);
}
END_TEST

/* Limit: a rigid strap on nothing and a long stud leave 360 F l/(E A P). */
START_TEST(long_stud)
{
    sw_strap_in in = base_strap(10000, 0);
    in.strap = SW_STRAP_RIGID;
    in.part_height_mm = 0.01;
    in.stud_length_mm = 20000;
    const double A = sw_thread("M12", NULL).stress_area_mm2;
    near(good("long", &in, 0).turn_deg,
         360 * 10000.0 * 20000 / (205000 * A * 1.75), 0, 2e-3);
    ck_assert(good("long", &in, 0).strap_mm == 0);
}
END_TEST

/* Properties on straps drawn by a seed: the shares add up; the turn is in
 * proportion to the way from snug; the band holds it, and its ends are what
 * they say. */
START_TEST(drawn)
{
    randoms r = {33};
    static const char *const thread[] = {"M8", "M12", "M16", "1/2-13"};
    int n = 0;
    for (int i = 0; i < 200; i++) {
        sw_strap_in in;
        sw_strap_defaults(&in);
        SET(in.thread, thread[random_below(&r, 4)]);
        in.stud_to_toe_mm = random_between(&r, 20, 80);
        in.stud_to_heel_mm = random_between(&r, 20, 120);
        in.part_height_mm = random_between(&r, 5, 120);
        in.tilt_deg = random_between(&r, 0, 2);
        in.preload_N = random_between(&r, 500, 15000);
        in.nose = SW_NOSE_BALL;
        in.heel = random_below(&r, 2) ? SW_HEEL_BLOCK : SW_HEEL_SCREW;
        if (sw_strap(&in, NULL).status)
            continue;
        n++;
        const double F = in.preload_N, P = sw_thread(in.thread, NULL).pitch_mm;
        const sw_turn_out t = good("drawn", &in, SW_UNSET);
        near(t.snug_N, 0.05 * F, 0, 1e-14);
        near(t.turn_deg * P / 360,
             t.stud_mm + t.ends_mm + t.strap_mm + t.supports_mm, 0, 1e-12);
        near(t.flats, t.turn_deg / 60, 0, 1e-14);
        must(0 < t.turn_low_deg && t.turn_low_deg < t.turn_deg &&
                 t.turn_deg < t.turn_high_deg,
             "%g not within %g .. %g", t.turn_deg, t.turn_low_deg,
             t.turn_high_deg);
        const sw_turn_out from_0 = good("0", &in, 0);
        const sw_turn_out from_half = good("half", &in, F / 2);
        near(t.turn_deg, 0.95 * from_0.turn_deg, 0, 1e-12);
        near(from_half.turn_deg, from_0.turn_deg / 2, 0, 1e-12);
        near(from_half.turn_low_deg, from_0.turn_low_deg / 2, 0, 1e-12);
        /* an open snug reaches from 0 to 10 % */
        near(t.turn_high_deg, from_0.turn_high_deg, 0, 1e-12);
        near(t.turn_low_deg, 0.9 * from_0.turn_low_deg, 0, 1e-12);
        /* the low end: a plain shank at 210 GPa */
        sw_strap_in full = in;
        ck_assert_int_eq(sw_strap_resolve(&full, NULL), SW_OK);
        const double d = sw_thread(in.thread, NULL).nominal_mm;
        near(from_0.turn_low_deg,
             360 / P * F * full.stud_length_mm / (210000 * pi / 4 * d * d), 0,
             1e-12);
        /* a modulus that was given has no range */
        in.stud_modulus_MPa = 205000;
        near(good("given", &in, 0).turn_low_deg,
             from_0.turn_low_deg * 210 / 205, 0, 1e-12);
    }
    ck_assert_int_ge(n, 150);
}
END_TEST

/* The high end, worked out here for the base strap: softer moduli (200 GPa),
 * three times the supports, 7 joints of 3 um, the twist of the stud. */
START_TEST(high_end)
{
    sw_strap_in in = base_strap(12000, 0);
    in.mu_thread = in.mu_seat = 0.12;
    const sw_turn_out t = good("nominal", &in, 0);
    sw_torque_in q;
    sw_torque_defaults(&q);
    SET(q.thread, "M12");
    q.preload_N = 12000;
    q.mu_thread = q.mu_seat = 0.12;
    const double d3 = sw_thread("M12", NULL).root_diameter_mm;
    const double J = pi * d3 * d3 * d3 * d3 / 32;
    const double twist = 1000 * sw_torque(&q, NULL).thread_torque_Nm * 80 /
                         (205000 / 2.6 * J) * 180 / pi;
    const double soft = 205.0 / 200;
    near(t.turn_high_deg,
         360 / 1.75 *
                 (soft * (t.stud_mm + t.ends_mm + t.strap_mm) +
                  3 * t.supports_mm + 0.021) +
             twist,
         0, 1e-12);
}
END_TEST

START_TEST(warned_and_refused)
{
    sw_strap_in in = base_strap(10000, 0);
    ck_assert_uint_eq(good("plain", &in, 0).warnings, 0);
    in.preload_N = 60000;
    ck_assert_uint_ne(good("tight", &in, 0).warnings & SW_WARN_STUD_YIELDS, 0);
    in = base_strap(10000, 0);
    in.part_height_mm = in.stud_length_mm = SW_UNSET;
    ck_assert_uint_ne(good("open", &in, 0).warnings & SW_WARN_HEIGHTS_ASSUMED,
                      0);
    sw_error err;
    in = base_strap(10000, 0);
    static const double bad[] = {-1, 10000, 1e300, INFINITY, -INFINITY};
    for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++) {
        const sw_turn_out t = sw_strap_turn(&in, bad[i], &err);
        check_refused("snug", &err, SW_ERR_RANGE, "snug_N");
        check_numbers("snug", &t, SW_STRUCT_TURN_OUT, t.status);
        near(err.high, 10000, 0, 0);
    }
    sw_turn_out t = sw_strap_turn(&in, NAN, &err);
    check_refused("snug", &err, SW_ERR_NAN, "snug_N");
    t = sw_strap_turn(NULL, 0, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "in");
    check_numbers("NULL", &t, SW_STRUCT_TURN_OUT, t.status);
    in.nut = SW_NUT_STILL;
    t = sw_strap_turn(&in, 0, &err);
    check_refused("still", &err, SW_ERR_CONFLICT, "nut");
    in = base_strap(NAN, 0);
    t = sw_strap_turn(&in, 0, &err);
    check_refused("NaN", &err, SW_ERR_NAN, "preload_N");
}
END_TEST

int main(void)
{
    return RUN_TESTS("turn", stud, strap, supports, ends, long_stud, drawn,
                     high_end, warned_and_refused);
}
