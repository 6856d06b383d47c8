/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap window: the torque between two limits of the toe force, fed back
 * through spread and strap, and against the nut's own window where the strap is
 * but a lever.
 */
#include "../gsl_handler.h"
#include "strap_spread_question.h"

static sw_window_out good(const char *what, const sw_strap_in *in,
                          const sw_spread_in *s, double hold, double flat)
{
    sw_error err;
    const sw_window_out out = sw_strap_window(in, s, hold, flat, &err);
    check_no_error(what, out.status, &err);
    check_numbers(what, &out, SW_STRUCT_WINDOW_OUT, out.status);
    near_in(what, out.hold_N, hold, 0, 0);
    near_in(what, out.flat_N, flat, 0, 0);
    must(out.sentence[0], "%s", what);
    return out;
}

/* Level and rigid: the strap has no band but the lever, so that the window is
 * the nut's own between limits (a + b)/b times as high. */
START_TEST(lever)
{
    randoms r = {65};
    int fits = 0;
    for (int i = 0; i < 100; i++) {
        sw_strap_in in = base_strap(SW_UNSET, 0);
        in.strap = SW_STRAP_RIGID;
        in.nut_factor = random_between(&r, 0.1, 0.3);
        in.stud_to_toe_mm = random_between(&r, 20, 60);
        in.stud_to_heel_mm = random_between(&r, 20, 80);
        const sw_spread_in s = spread_of(random_between(&r, 0, 40), 1);
        const double more =
            (in.stud_to_toe_mm + in.stud_to_heel_mm) / in.stud_to_heel_mm;
        const double hold = random_log(&r, 100, 5000);
        const double flat = hold * random_between(&r, 1.1, 4);
        const sw_window_out out = good("lever", &in, &s, hold, flat);
        sw_torque_in nut;
        sw_torque_defaults(&nut);
        SET(nut.thread, in.thread);
        nut.nut_factor = in.nut_factor;
        const sw_window_out want =
            sw_window(&nut, &s, more * hold, more * flat, NULL);
        ck_assert_int_eq(out.verdict, want.verdict);
        near(out.hold_preload_N, more * hold, 0, 1e-9);
        near(out.flat_preload_N, more * flat, 0, 1e-9);
        near(out.ratio, flat / hold, 0, 1e-9);
        near(out.alpha, want.alpha, 0, 0);
        if (out.verdict != SW_VERDICT_FITS)
            continue;
        fits++;
        near(out.torque_Nm, want.torque_Nm, 0, 1e-9);
        near(out.torque_low_Nm, want.torque_low_Nm, 0, 1e-9);
        near(out.torque_high_Nm, want.torque_high_Nm, 0, 1e-9);
    }
    ck_assert_int_ge(fits, 30);
}
END_TEST

/* Fed back through the strap: at the low end of the preload the low end of the
 * strap's band holds, at the high end its high end does not bend; for the
 * torque aimed at and for both outer ones. */
START_TEST(fed_back)
{
    randoms r = {66};
    int fits = 0, none = 0, band = 0;
    for (int i = 0; i < 400; i++) {
        sw_strap_out nominal;
        sw_strap_in in = next_strap(&r, &nominal);
        const double hold = nominal.toe_force_N * random_between(&r, 0.5, 0.99);
        const double flat = nominal.toe_force_N * random_between(&r, 1.01, 2);
        const sw_spread_in s = spread_of(random_between(&r, 1, 45), 1);
        const double given = in.preload_N;
        in.preload_N = SW_UNSET; /* not used */
        sw_error err;
        const sw_window_out out = sw_strap_window(&in, &s, hold, flat, &err);
        check_numbers("window", &out, SW_STRUCT_WINDOW_OUT, out.status);
        if (out.status) { /* the stud tears or the strap tips before */
            ck_assert_int_eq(out.status, SW_ERR_NONE);
            continue;
        }
        in.preload_N = given;
        must(memcmp(&out.torque_Nm,
                    &(double){good("given", &in, &s, hold, flat).torque_Nm},
                    sizeof(double)) == 0,
             "the preload given matters");
        in.preload_N = out.hold_preload_N;
        must(good_strap("hold", &in).toe_force_low_N >= hold * (1 - 1e-9),
             "hold");
        in.preload_N = out.flat_preload_N;
        must(good_strap("flat", &in).toe_force_high_N <= flat * (1 + 1e-9),
             "flat");
        if (out.verdict == SW_VERDICT_NONE) {
            must(out.ratio < out.alpha, "%g", out.ratio);
            must(strncmp(out.sentence, "No torque works", 15) == 0, "%s",
                 out.sentence);
            if (out.ratio < 1) {
                must(out.fitting_pct == SW_UNSET, "%g", out.fitting_pct);
                must(strstr(out.sentence, "band"), "%s", out.sentence);
                band++;
            }
            none++;
            continue;
        }
        fits++;
        sw_torque_in nut;
        sw_torque_defaults(&nut);
        SET(nut.thread, in.thread);
        const double torque[] = {out.torque_low_Nm, out.torque_Nm,
                                 out.torque_high_Nm};
        for (int k = 0; k < 3; k++) {
            nut.torque_Nm = torque[k];
            const sw_spread_out t = sw_spread(&nut, &s, &err);
            check_no_error("spread", t.status, &err);
            in.preload_N = t.preload_low_N;
            must(good_strap("low", &in).toe_force_low_N >= hold * (1 - 1e-9),
                 "torque %d does not hold", k);
            in.preload_N = t.preload_high_N;
            must(good_strap("high", &in).toe_force_high_N <= flat * (1 + 1e-9),
                 "torque %d bends", k);
        }
        near(out.preload_low_N,
             sqrt(out.hold_preload_N * out.flat_preload_N / out.alpha), 0,
             1e-12);
    }
    must(fits >= 50 && none >= 50 && band >= 3, "%d fit, %d do not, %d by band",
         fits, none, band);
}
END_TEST

START_TEST(limits_refused)
{
    static const struct {
        const char *what;
        double hold, flat;
        int code;
        const char *field;
    } row[] = {
        {"hold 0", 0, 100, SW_ERR_RANGE, "hold_N"},
        {"hold too large", 1.1e7, 1.2e7, SW_ERR_RANGE, "hold_N"},
        {"hold NaN", NAN, 100, SW_ERR_NAN, "hold_N"},
        {"flat too large", 100, 1.1e7, SW_ERR_RANGE, "flat_N"},
        {"flat NaN", 100, NAN, SW_ERR_NAN, "flat_N"},
        {"exchanged", 200, 100, SW_ERR_CONFLICT, "flat_N"},
        {"the same", 200, 200, SW_ERR_CONFLICT, "flat_N"},
        /* an M12 stud tears first */
        {"no preload holds", 1e6, 2e6, SW_ERR_NONE, "hold_N"},
        {"no preload bends", 1000, 1e6, SW_ERR_NONE, "flat_N"},
    };
    const sw_strap_in in = base_strap(SW_UNSET, 3);
    const sw_spread_in s = spread_of(25, SW_VARY_ALL);
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_error err;
        const sw_window_out out =
            sw_strap_window(&in, &s, row[i].hold, row[i].flat, &err);
        check_refused(row[i].what, &err, row[i].code, row[i].field);
        check_numbers(row[i].what, &out, SW_STRUCT_WINDOW_OUT, out.status);
        ck_assert_int_eq(
            sw_strap_window(&in, &s, row[i].hold, row[i].flat, NULL).status,
            row[i].code);
    }
}
END_TEST

START_TEST(refused)
{
    for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++) {
        sw_strap_in in = base_strap(10000, 3);
        sw_spread_in s = spread_of(25, SW_VARY_ALL);
        bad[i].make(&in, &s);
        sw_error err;
        const sw_window_out out = sw_strap_window(&in, &s, 1000, 9000, &err);
        check_refused(bad[i].what, &err, bad[i].code, bad[i].field);
        check_numbers(bad[i].what, &out, SW_STRUCT_WINDOW_OUT, out.status);
    }
    const sw_strap_in in = base_strap(10000, 3);
    const sw_spread_in s = spread_of(25, SW_VARY_ALL);
    sw_error err;
    ck_assert_int_eq(sw_strap_window(NULL, &s, 1, 2, &err).status, SW_ERR_NULL);
    check_refused("in", &err, SW_ERR_NULL, "in");
    ck_assert_int_eq(sw_strap_window(&in, NULL, 1, 2, &err).status,
                     SW_ERR_NULL);
    check_refused("spread", &err, SW_ERR_NULL, "spread");
}
END_TEST

/* GSL's error handler is the caller's and is never reached. */
START_TEST(no_handler)
{
    count_gsl_errors();
    randoms r = {67};
    for (int i = 0; i < 300; i++) {
        const sw_strap_in in = random_strap(&r);
        sw_spread_in s = spread_of(random_between(&r, 0, 95), 1);
        s.published_coverage = random_between(&r, 0.5, 0.9999);
        s.coverage = i % 5 ? random_between(&r, 0.5, 0.9999) : 0.9999;
        const double hold = random_log(&r, 1e-3, 1e5);
        const sw_window_out out = sw_strap_window(
            &in, &s, hold, hold * random_log(&r, 1.01, 50), NULL);
        check_numbers("any", &out, SW_STRUCT_WINDOW_OUT, out.status);
    }
    ck_assert_int_eq(gsl_errors(), 0);
}
END_TEST

int main(void)
{
    return RUN_TESTS("strap window", lever, fed_back, limits_refused, refused,
                     no_handler);
}
