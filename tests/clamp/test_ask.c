/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Ask: every answer is put back into sw_strap() and must keep what was asked,
 * and just beyond it must not.
 */
#include "../near.h"
#include "../random.h"
#include "strap_question.h"

static sw_tilt_out ask_tilt(const char *what, const sw_strap_in *in, double S,
                            double error, double vial, int basis)
{
    sw_error err;
    const sw_tilt_out out = sw_strap_tilt(in, S, error, vial, basis, &err);
    check_no_error(what, out.status, &err);
    check_numbers(what, &out, SW_STRUCT_TILT_OUT, out.status);
    return out;
}

/* Largest |side pull| and |toe force error| at a tilt, as the basis says. The
 * stud keeps the length it has in the question. */
static void worst(const sw_strap_in *in, double tilt, int basis, double *S,
                  double *error)
{
    sw_strap_in at = *in;
    at.tilt_deg = tilt;
    at.heel_height_mm = SW_UNSET;
    const sw_strap_out out = good_strap("forward", &at);
    *S = fabs(out.side_pull_N);
    *error = fabs(out.toe_force_error_pct);
    if (basis == SW_BASIS_BAND) {
        *S = fmax(fabs(out.side_pull_low_N), fabs(out.side_pull_high_N));
        const double level = out.toe_force_level_N;
        *error = 100 * fmax(fabs(out.toe_force_low_N / level - 1),
                            fabs(out.toe_force_high_N / level - 1));
    }
}

/* A limit counts as kept within a billionth of the stud tension (and of the
 * toe force), so that one of zero can be met. */
static int keeps(const sw_strap_in *in, double s, double e, double S,
                 double error)
{
    return (S == SW_UNSET || s <= S + 2e-9 * in->preload_N) &&
           (error == SW_UNSET || e <= error + 2e-7);
}

static void check_end(const char *what, const sw_strap_in *in, double tilt,
                      int way, double S, double error, int basis)
{
    double s, e;
    worst(in, tilt, basis, &s, &e);
    must(keeps(in, s, e, S, error),
         "%s: at %.9g deg side pull %.9g of %.9g, error %.9g of "
         "%.9g",
         what, tilt, s, S, e, error);
    if (fabs(tilt) >= 10)
        return;
    worst(in, tilt + way * 1e-5, basis, &s, &e);
    must((S != SW_UNSET && s > S) || (error != SW_UNSET && e > error),
         "%s: beyond %.9g deg side pull %.9g of %.9g, error %.9g of "
         "%.9g are still kept",
         what, tilt, s, S, e, error);
}

static void check_tilts(const char *what, const sw_strap_in *in, double S,
                        double error, double vial, int basis)
{
    const sw_tilt_out out = ask_tilt(what, in, S, error, vial, basis);
    must(-10 <= out.tilt_low_deg && out.tilt_low_deg <= out.tilt_high_deg &&
             out.tilt_high_deg <= 10,
         "%s: %g .. %g", what, out.tilt_low_deg, out.tilt_high_deg);
    check_end(what, in, out.tilt_low_deg, -1, S, error, basis);
    check_end(what, in, out.tilt_high_deg, 1, S, error, basis);
    for (int i = 1; i < 20; i++) { /* between them it is kept everywhere */
        double s, e;
        const double tilt = out.tilt_low_deg +
                            i / 20.0 * (out.tilt_high_deg - out.tilt_low_deg);
        worst(in, tilt, basis, &s, &e);
        must(keeps(in, s, e, S, error), "%s: not kept at %g", what, tilt);
    }
    /* the same as a slope, as heel height, on the vial */
    const double L = in->stud_to_toe_mm + in->stud_to_heel_mm;
    near_in(what, out.slope_low_mm_per_m, 1000 * tan(out.tilt_low_deg * TO_RAD),
            1e-12, 1e-12);
    near_in(what, out.slope_high_mm_per_m,
            1000 * tan(out.tilt_high_deg * TO_RAD), 1e-12, 1e-12);
    near_in(what, out.heel_low_mm, out.slope_low_mm_per_m * L / 1000, 1e-12,
            1e-12);
    near_in(what, out.heel_high_mm, out.slope_high_mm_per_m * L / 1000, 1e-12,
            1e-12);
    near_in(what, out.divisions_low * vial, out.slope_low_mm_per_m, 1e-12,
            1e-12);
    near_in(what, out.divisions_high * vial, out.slope_high_mm_per_m, 1e-12,
            1e-12);
    double s, e;
    worst(in, out.tilt_low_deg, basis, &s, &e);
    near_in(what, fabs(out.side_pull_low_N), s, 1e-9 * s, 1e-9);
    near_in(what, fabs(out.toe_error_low_pct), e, 1e-9, 1e-9);
    worst(in, out.tilt_high_deg, basis, &s, &e);
    near_in(what, fabs(out.side_pull_high_N), s, 1e-9 * s, 1e-9);
    near_in(what, fabs(out.toe_error_high_pct), e, 1e-9, 1e-9);
}

START_TEST(tilts)
{
    randoms r = {31};
    for (int i = 0; i < 60; i++) {
        sw_strap_in in = base_strap(random_log(&r, 1000, 30000), SW_UNSET);
        in.stud_to_toe_mm = random_between(&r, 20, 60);
        in.stud_to_heel_mm = random_between(&r, 1, 2.5) * in.stud_to_toe_mm;
        in.part_height_mm = 100;
        in.strap = 1 + i % 3;
        in.foot = 1 + random_below(&r, 2);
        const double S = random_between(&r, 0.08, 0.2) * in.preload_N;
        char what[32];
        snprintf(what, sizeof what, "strap %d", i);
        check_tilts(what, &in, S, SW_UNSET, 0.02, SW_BASIS_NOMINAL);
        check_tilts(what, &in, SW_UNSET, random_between(&r, 1, 10), 0.3,
                    SW_BASIS_NOMINAL);
        check_tilts(what, &in, S, 6, 50, SW_BASIS_NOMINAL);
        check_tilts(what, &in, S, SW_UNSET, 0.001, SW_BASIS_BAND);
    }
}
END_TEST

/* By hand: rigid level strap on stiff supports that share alike: the part
 * gets F tan(tilt)/2, so 100 N at 10 kN is atan(0.02). Rocking foot and a
 * turned nut on a spherical pair that takes nothing up leave the moments out
 * of it. */
START_TEST(by_hand)
{
    sw_strap_in in = base_strap(10000, SW_UNSET);
    in.strap = SW_STRAP_RIGID;
    const sw_tilt_out out =
        ask_tilt("rigid", &in, 100, SW_UNSET, 0.02, SW_BASIS_NOMINAL);
    near(out.tilt_high_deg, atan(0.02) / TO_RAD, 3e-7, 0);
    near(out.tilt_low_deg, -atan(0.02) / TO_RAD, 3e-7, 0);
    near(out.slope_high_mm_per_m, 20, 1e-5, 0);
    near(out.divisions_high, 1000, 1e-3, 0);
    near(out.heel_high_mm, 1.8, 1e-6, 0);
    ck_assert(out.warnings & SW_WARN_HEEL_LOW);
}
END_TEST

/* No limit reached within 10 degrees: the ends are there. */
START_TEST(unlimited)
{
    sw_strap_in in = base_strap(20000, SW_UNSET);
    in.part_height_mm = 100;
    const sw_tilt_out out =
        ask_tilt("wide", &in, 1e7, SW_UNSET, 0.02, SW_BASIS_NOMINAL);
    near(out.tilt_low_deg, -10, 1e-9, 0);
    near(out.tilt_high_deg, 10, 1e-9, 0);
}
END_TEST

/* On a solid heel the side pull vanishes at some heel-high tilt: a small
 * limit leaves level out. */
START_TEST(level_left_out)
{
    sw_strap_in in = base_strap(20000, SW_UNSET);
    const sw_tilt_out out =
        ask_tilt("small", &in, 100, SW_UNSET, 0.02, SW_BASIS_NOMINAL);
    ck_assert(out.tilt_low_deg > 0.5);
    /* contact runs: S = -0.0003 F at +3 degrees, 20 kN */
    ck_assert(out.tilt_low_deg < 3.1 && out.tilt_high_deg > 2.9);
}
END_TEST

/* No side pull at all is met at one tilt, which lies between the steps of any
 * search: about +3 degrees at 20 kN (contact runs: -0.0003 F there). */
START_TEST(nothing_allowed)
{
    sw_strap_in in = base_strap(20000, SW_UNSET);
    const sw_tilt_out out =
        ask_tilt("zero", &in, 0, SW_UNSET, 0.02, SW_BASIS_NOMINAL);
    near(out.tilt_low_deg, 3, 0.1, 0);
    near(out.tilt_high_deg, out.tilt_low_deg, 1e-6, 0);
    near(out.side_pull_low_N, 0, 1e-4, 0);
    near(out.side_pull_high_N, 0, 1e-4, 0);
    /* no toe force error: level, where the lever law holds exactly */
    in.strap = SW_STRAP_RIGID;
    const sw_tilt_out level =
        ask_tilt("level", &in, SW_UNSET, 0, 0.02, SW_BASIS_NOMINAL);
    ck_assert(level.tilt_low_deg <= 0 && level.tilt_high_deg >= 0);
    near(level.tilt_low_deg, 0, 1e-4, 0);
    near(level.tilt_high_deg, 0, 1e-4, 0);
}
END_TEST

START_TEST(no_tilt)
{
    sw_error err;
    sw_strap_in in = base_strap(20000, SW_UNSET);
    /* a part on edge: side pull and toe error cannot both be nothing */
    sw_tilt_out out =
        sw_strap_tilt(&in, 1, 0.0001, 0.02, SW_BASIS_NOMINAL, &err);
    ck_assert_int_eq(out.status, SW_ERR_NONE);
    check_refused("nothing", &err, SW_ERR_NONE, "side_pull_N");
    check_numbers("nothing", &out, SW_STRUCT_TILT_OUT, out.status);
    out = sw_strap_tilt(&in, 0, SW_UNSET, 0.02, SW_BASIS_BAND, &err);
    check_refused("band", &err, SW_ERR_NONE, "side_pull_N");
}
END_TEST

START_TEST(tilt_refused)
{
    sw_error err;
    sw_strap_in in = base_strap(20000, SW_UNSET);
    static const struct {
        double S, error, vial;
        int basis, code;
        const char *field;
    } row[] = {
        {SW_UNSET, SW_UNSET, 0.02, SW_BASIS_NOMINAL, SW_ERR_MISSING,
         "side_pull_N"},
        {-1, SW_UNSET, 0.02, SW_BASIS_NOMINAL, SW_ERR_RANGE, "side_pull_N"},
        {1.1e7, SW_UNSET, 0.02, SW_BASIS_NOMINAL, SW_ERR_RANGE, "side_pull_N"},
        {NAN, SW_UNSET, 0.02, SW_BASIS_NOMINAL, SW_ERR_NAN, "side_pull_N"},
        {INFINITY, SW_UNSET, 0.02, SW_BASIS_NOMINAL, SW_ERR_RANGE,
         "side_pull_N"},
        {SW_UNSET, -1, 0.02, SW_BASIS_NOMINAL, SW_ERR_RANGE, "toe_error_pct"},
        {SW_UNSET, 101, 0.02, SW_BASIS_NOMINAL, SW_ERR_RANGE, "toe_error_pct"},
        {SW_UNSET, NAN, 0.02, SW_BASIS_NOMINAL, SW_ERR_NAN, "toe_error_pct"},
        {100, SW_UNSET, 0, SW_BASIS_NOMINAL, SW_ERR_RANGE, "vial_mm_per_m"},
        {100, SW_UNSET, 51, SW_BASIS_NOMINAL, SW_ERR_RANGE, "vial_mm_per_m"},
        {100, SW_UNSET, SW_UNSET, SW_BASIS_NOMINAL, SW_ERR_RANGE,
         "vial_mm_per_m"},
        {100, SW_UNSET, NAN, SW_BASIS_NOMINAL, SW_ERR_NAN, "vial_mm_per_m"},
        {100, SW_UNSET, 0.02, 0, SW_ERR_RANGE, "basis"},
        {100, SW_UNSET, 0.02, 3, SW_ERR_RANGE, "basis"},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const sw_tilt_out out = sw_strap_tilt(&in, row[i].S, row[i].error,
                                              row[i].vial, row[i].basis, &err);
        ck_assert_int_eq(out.status, row[i].code);
        check_refused(row[i].field, &err, row[i].code, row[i].field);
        check_numbers(row[i].field, &out, SW_STRUCT_TILT_OUT, out.status);
    }
    const sw_tilt_out out =
        sw_strap_tilt(NULL, 100, SW_UNSET, 0.02, SW_BASIS_NOMINAL, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "in");
    check_numbers("NULL", &out, SW_STRUCT_TILT_OUT, out.status);
    in.thread[0] = '\0';
    const sw_tilt_out bad =
        sw_strap_tilt(&in, 100, SW_UNSET, 0.02, SW_BASIS_NOMINAL, &err);
    check_refused("thread", &err, SW_ERR_MISSING, "thread");
    check_numbers("thread", &bad, SW_STRUCT_TILT_OUT, bad.status);
}
END_TEST

/* A nut that does not turn has no nominal answer: the band can be asked for,
 * nothing else. */
START_TEST(still_nut)
{
    sw_error err;
    sw_strap_in in = base_strap(10000, 0);
    in.nut = SW_NUT_STILL;
    in.mu_thread = in.mu_seat = 0.1;
    const sw_tilt_out tilt =
        sw_strap_tilt(&in, 1400, SW_UNSET, 0.02, SW_BASIS_NOMINAL, &err);
    check_refused("tilt", &err, SW_ERR_CONFLICT, "basis");
    check_numbers("tilt", &tilt, SW_STRUCT_TILT_OUT, tilt.status);
    const sw_place_out place = sw_strap_place(&in, 5000, &err);
    check_refused("place", &err, SW_ERR_CONFLICT, "nut");
    check_numbers("place", &place, SW_STRUCT_PLACE_OUT, place.status);
    const sw_strap_torque_out torque = sw_strap_torque(&in, 5000, &err);
    check_refused("torque", &err, SW_ERR_CONFLICT, "nut");
    check_numbers("torque", &torque, SW_STRUCT_STRAP_TORQUE_OUT, torque.status);
    in.tilt_deg = SW_UNSET;
    check_tilts("band", &in, 1400, SW_UNSET, 0.02, SW_BASIS_BAND);
}
END_TEST

/* The place for a toe force, put back, gives it; the span is kept. Level it
 * is the lever law: b = L N/F. */
START_TEST(places)
{
    randoms r = {32};
    for (int i = 0; i < 200; i++) {
        sw_strap_in in = base_strap(random_log(&r, 1000, 30000),
                                    i % 2 ? random_between(&r, -2, 2) : 0);
        const double wanted = random_between(&r, 0.2, 0.8) * in.preload_N;
        sw_error err;
        const sw_place_out out = sw_strap_place(&in, wanted, &err);
        check_no_error("place", out.status, &err);
        check_numbers("place", &out, SW_STRUCT_PLACE_OUT, out.status);
        near(out.stud_to_toe_mm + out.stud_to_heel_mm, 90, 0, 1e-14);
        near(out.toe_force_N, wanted, 0, 1e-8);
        if (in.tilt_deg == 0)
            near(out.stud_to_heel_mm, 90 * wanted / in.preload_N, 1e-7, 0);
        in.stud_to_toe_mm = out.stud_to_toe_mm;
        in.stud_to_heel_mm = out.stud_to_heel_mm;
        near(good_strap("put back", &in).toe_force_N, wanted, 0, 1e-8);
    }
}
END_TEST

START_TEST(place_refused)
{
    sw_error err;
    sw_strap_in in = base_strap(10000, 0);
    sw_place_out out = sw_strap_place(&in, 10001, &err); /* more than F */
    check_refused("more", &err, SW_ERR_NONE, "toe_force_N");
    check_numbers("more", &out, SW_STRUCT_PLACE_OUT, out.status);
    out = sw_strap_place(&in, 1, &err); /* under 1 mm from the heel */
    check_refused("less", &err, SW_ERR_NONE, "toe_force_N");
    static const double bad[] = {0, -5, 1e8, INFINITY, SW_UNSET};
    for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++) {
        out = sw_strap_place(&in, bad[i], &err);
        check_refused("range", &err, SW_ERR_RANGE, "toe_force_N");
    }
    out = sw_strap_place(&in, NAN, &err);
    check_refused("nan", &err, SW_ERR_NAN, "toe_force_N");
    out = sw_strap_place(NULL, 100, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "in");
    check_numbers("NULL", &out, SW_STRUCT_PLACE_OUT, out.status);
    in.stud_to_toe_mm = SW_UNSET;
    out = sw_strap_place(&in, 100, &err);
    check_refused("open", &err, SW_ERR_MISSING, "stud_to_toe_mm");
}
END_TEST

/* The preload for a toe force, put back, gives it. Level: F = N L/b, and the
 * torque is that of sw_torque(). */
START_TEST(torques)
{
    randoms r = {33};
    for (int i = 0; i < 200; i++) {
        sw_strap_in in =
            base_strap(SW_UNSET, i % 2 ? random_between(&r, -4, 4) : 0);
        const double wanted = random_log(&r, 1000, 20000);
        sw_error err;
        const sw_strap_torque_out out = sw_strap_torque(&in, wanted, &err);
        check_no_error("torque", out.status, &err);
        check_numbers("torque", &out, SW_STRUCT_STRAP_TORQUE_OUT, out.status);
        near(out.toe_force_N, wanted, 0, 1e-9);
        if (in.tilt_deg == 0)
            near(out.preload_N, wanted * 90 / 60, 0, 1e-9);
        in.preload_N = out.preload_N;
        const sw_strap_out back = good_strap("put back", &in);
        near(back.toe_force_N, wanted, 0, 1e-9);
        near(back.torque_Nm, out.torque_Nm, 0, 1e-12);
        in.preload_N = SW_UNSET;
        in.torque_Nm = out.torque_Nm;
        near(good_strap("by torque", &in).toe_force_N, wanted, 0, 1e-9);
        /* preload and torque of the question are not used */
        in.torque_Nm = 12345;
        near(sw_strap_torque(&in, wanted, &err).preload_N, out.preload_N, 0, 0);
    }
}
END_TEST

/* Found by fuzzing: some tensions between the first two guesses have no
 * equilibrium, and GSL's error handler ended the process. A long stud and a
 * soft one, over all the forces. */
START_TEST(gaps)
{
    for (double length = 100; length < 20000; length *= 1.6)
        for (double toe = 1e-2; toe < 5000; toe *= 1.9) {
            sw_strap_in in = base_strap(SW_UNSET, 1.875);
            SET(in.thread, "#8-32");
            in.stud_length_mm = length;
            in.strap_thickness_mm = in.strap_width_mm = SW_UNSET;
            in.slot_width_mm = in.rim_radius_mm = SW_UNSET;
            in.nose = SW_NOSE_ROUND;
            in.strap = SW_STRAP_FULL;
            sw_error err;
            const sw_strap_torque_out t = sw_strap_torque(&in, toe, &err);
            check_numbers("torque", &t, SW_STRUCT_STRAP_TORQUE_OUT, t.status);
            if (t.status)
                check_error("torque", &err, t.status);
            else
                near(t.toe_force_N, toe, 0, 1e-6);
            in.preload_N = 2 * toe;
            const sw_place_out p = sw_strap_place(&in, toe, &err);
            check_numbers("place", &p, SW_STRUCT_PLACE_OUT, p.status);
            if (p.status)
                check_error("place", &err, p.status);
            in.tilt_deg = SW_UNSET;
            const sw_tilt_out w = sw_strap_tilt(&in, 0.01 * toe, SW_UNSET, 0.02,
                                                SW_BASIS_NOMINAL, &err);
            check_numbers("tilt", &w, SW_STRUCT_TILT_OUT, w.status);
            if (w.status)
                check_error("tilt", &err, w.status);
        }
}
END_TEST

START_TEST(torque_refused)
{
    sw_error err;
    sw_strap_in in = base_strap(SW_UNSET, 0);
    static const double bad[] = {0, -5, 1e8, INFINITY, SW_UNSET};
    sw_strap_torque_out out;
    for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++) {
        out = sw_strap_torque(&in, bad[i], &err);
        check_refused("range", &err, SW_ERR_RANGE, "toe_force_N");
        check_numbers("range", &out, SW_STRUCT_STRAP_TORQUE_OUT, out.status);
    }
    out = sw_strap_torque(&in, NAN, &err);
    check_refused("nan", &err, SW_ERR_NAN, "toe_force_N");
    out = sw_strap_torque(&in, 9e6, &err); /* needs 13.5e6 N of preload */
    check_refused("too much", &err, SW_ERR_NONE, "toe_force_N");
    out = sw_strap_torque(NULL, 100, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "in");
    check_numbers("NULL", &out, SW_STRUCT_STRAP_TORQUE_OUT, out.status);
    in.thread[0] = '\0';
    out = sw_strap_torque(&in, 100, &err);
    check_refused("thread", &err, SW_ERR_MISSING, "thread");
}
END_TEST

int main(void)
{
    return RUN_TESTS("ask", tilts, by_hand, unlimited, level_left_out,
                     nothing_allowed, no_tilt, tilt_refused, still_nut, places,
                     place_refused, torques, gaps, torque_refused);
}
