/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Calibrate: the shop's own K against published samples, certified fits, other
 * computations and what the words promise.
 */
#include "nist.h"
#include "pairs_sets.h"

#include "../random.h"

static sw_calibrate_in question(const char *thread)
{
    sw_calibrate_in in;
    sw_calibrate_defaults(&in);
    SET(in.thread, thread);
    return in;
}

static sw_calibrate_out ask(const sw_calibrate_in *in, sw_pairs *pairs)
{
    sw_error err;
    const sw_calibrate_out out = sw_calibrate(in, pairs, &err);
    check_no_error("calibrate", out.status, &err);
    check_numbers("calibrate", &out, SW_STRUCT_CALIBRATE_OUT, out.status);
    return out;
}

static sw_calibrate_out of(const char *thread, sw_pairs *pairs)
{
    const sw_calibrate_in in = question(thread);
    const sw_calibrate_out out = ask(&in, pairs);
    sw_pairs_free(pairs);
    return out;
}

/* Published: Mechanical Engineering Design (Shigley) 9th ed. table 8-13, 20
 * bolts at 90 N.m; mean 34.3 and standard deviation 4.91 kN. The four K are
 * computed from its data, to their printed digits. */
START_TEST(unlubricated)
{
    const sw_calibrate_out out = of("M12x1.25", preloads(dry_kN, DRY));
    near(out.n, 20, 0, 0);
    ck_assert_str_eq(out.thread, "M12x1.25");
    near(out.nut_factor_origin, 0.21473, 0.5e-5, 0);
    near(out.nut_factor_mean, 0.22362, 0.5e-5, 0);
    near(out.nut_factor_sd, 0.03515, 0.5e-5, 0);
    near(out.nut_factor_mean_force, 0.21891, 0.5e-5, 0);
    /* one torque: slope and its error are mean force and its error over it */
    near(90 * out.slope / 1000, 34.26, 0.005, 0);
    near(90 * out.slope_se * sqrt(20) / 1000, 4.909, 0.0005, 0);
    ck_assert(out.line_slope == SW_UNSET && out.line_intercept_N == SW_UNSET &&
              out.line_intercept_p == SW_UNSET &&
              out.torque_trend_p == SW_UNSET);
    /* the geometric mean lies between the others */
    ck_assert(out.nut_factor < out.nut_factor_mean &&
              out.nut_factor > out.nut_factor_origin);
    /* rows sorted by force: K goes from row to row */
    ck_assert_uint_eq(out.warnings, SW_WARN_FACTOR_VARIES);
}
END_TEST

/* Published: table 8-14, from memory; mean 34.18 and deviation 2.88 kN. */
START_TEST(lubricated)
{
    const sw_calibrate_out out = of("M12x1.25", preloads(oiled_kN, OILED));
    near(90 * out.slope / 1000, 34.18, 0.005, 0);
    near(90 * out.slope_se * sqrt(10) / 1000, 2.88, 0.005, 0);
    ck_assert(out.scatter_pct <
              of("M12x1.25", preloads(dry_kN, DRY)).scatter_pct);
}
END_TEST

/* Published: certified values of NIST StRD; torque is x, force is y. */
START_TEST(nist)
{
    sw_pairs *pairs = new_pairs();
    for (int i = 0; i < NOINT1; i++)
        add_pair(pairs, 60 + i, 130 + i);
    sw_calibrate_out out = of("M12", pairs);
    near(out.slope, 2.07438016528926, 0, 1e-12);
    near(out.slope_se, 0.0165289256198347, 0, 1e-10);
    ck_assert(out.warnings & SW_WARN_FACTOR_IMPLAUSIBLE);
    pairs = new_pairs();
    for (int i = 0; i < NORRIS; i++)
        add_pair(pairs, norris_x[i], norris_y[i]);
    out = of("M12", pairs);
    near(out.line_slope, 1.00211681802045, 0, 1e-12);
    near(out.line_intercept_N, -0.262323073774029, 0, 1e-12);
    near(out.line_slope_se, 0.000429796848199937, 0, 1e-10);
    near(out.line_intercept_se_N, 0.232818234301152, 0, 1e-10);
    /* its t is 1.13 with 34 degrees: tables have 1.09 at 28 % and 1.31 at
     * 20 % */
    ck_assert(out.line_intercept_p > 0.2 && out.line_intercept_p < 0.28);
}
END_TEST

/* The equations of the head comment in long double, with t and k from tables:
 * t 2.093024, k 2.760 (95 %/95 %, n = 20), z 1.959964. */
START_TEST(by_hand)
{
    long double mean = 0, square = 0;
    for (int i = 0; i < DRY; i++)
        mean += logl(90 / (12 * (long double)dry_kN[i])) / DRY;
    for (int i = 0; i < DRY; i++)
        square += powl(logl(90 / (12 * (long double)dry_kN[i])) - mean, 2);
    const double m = (double)mean, s = (double)sqrtl(square / (DRY - 1));
    const sw_calibrate_out out = of("M12x1.25", preloads(dry_kN, DRY));
    near(out.nut_factor, exp(m), 0, 1e-14);
    near(out.sigma_ln, s, 0, 1e-13);
    near(out.nut_factor_low, exp(m - 2.093024 * s / sqrt(DRY)), 0, 1e-7);
    near(out.nut_factor_high, exp(m + 2.093024 * s / sqrt(DRY)), 0, 1e-7);
    near(out.tolerance_factor, 2.760, 0.0005, 0);
    near(out.tolerance_low, exp(m - 2.760346178 * s), 0, 1e-8);
    near(out.tolerance_high, exp(m + 2.760346178 * s), 0, 1e-8);
    const double a = exp(2 * 1.959963985 * s); /* F_max/F_min */
    near(out.scatter_pct, 100 * (a - 1) / (a + 1), 0, 1e-8);
    const double b = exp(2 * 2.760346178 * s);
    near(out.tolerance_pct, 100 * (b - 1) / (b + 1), 0, 1e-8);
}
END_TEST

/* Published: VDI 2230-1, alpha = F_max/F_min against +-s. Two studs whose
 * scatter of 95 % is that alpha. */
START_TEST(alpha)
{
    static const double row[][2] = {
        {1.2, 9.1}, {1.4, 16.7}, {1.6, 23.1}, {2.5, 42.9}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const double sigma = log(row[i][0]) / (2 * 1.959963985);
        sw_pairs *pairs = new_pairs();
        add_pair(pairs, 40, 16000 * exp(sigma / sqrt(2)));
        add_pair(pairs, 40, 16000 * exp(-sigma / sqrt(2)));
        const sw_calibrate_out out = of("M12", pairs);
        near(out.scatter_pct, row[i][1], 0.05, 0);
        near(out.sigma_ln, sigma, 0, 1e-12);
    }
}
END_TEST

/* Published: ASTM E178 (Grubbs), 5 % two-sided, from memory. */
START_TEST(grubbs)
{
    static const struct {
        int n;
        double limit, digit;
    } row[] = {{3, 1.155, 1e-3},  {5, 1.715, 1e-3},  {10, 2.290, 1e-3},
               {20, 2.709, 1e-3}, {30, 2.908, 1e-3}, {50, 3.128, 1e-3}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_pairs *pairs = new_pairs();
        for (int k = 0; k < row[i].n; k++)
            add_pair(pairs, 40, 16000 + 10 * (k % 3));
        near(of("M12", pairs).outlier_limit, row[i].limit, row[i].digit, 0);
    }
}
END_TEST

START_TEST(outlier)
{
    sw_error err;
    sw_pairs *pairs = preloads(oiled_kN, OILED);
    add_pair(pairs, 90, 60000);
    const sw_calibrate_in in = question("M12x1.25");
    const sw_calibrate_out out = ask(&in, pairs);
    ck_assert(out.warnings & SW_WARN_OUTLIER);
    near(out.outlier_pair, 11, 0, 0);
    ck_assert(out.outlier_deviation < -out.outlier_limit); /* K is low */
    for (int i = 0; i < OILED + 1; i++) {
        const sw_pair_out p = sw_pairs_at(&in, pairs, i, &err);
        check_no_error("pair", p.status, &err);
        ck_assert_uint_eq(p.warnings, i == OILED ? SW_WARN_OUTLIER : 0);
        near(p.deviation,
             (log(p.nut_factor) - log(out.nut_factor)) / out.sigma_ln, 1e-12,
             0);
    }
    sw_pairs_free(pairs);
    /* without it there is none */
    ck_assert(!(of("M12x1.25", preloads(oiled_kN, OILED)).warnings &
                SW_WARN_OUTLIER));
}
END_TEST

/* K that rises with the torque, from row to row, or because force does not
 * start at zero; and one that does nothing of the kind. */
START_TEST(varies)
{
    static const double noise[12] = {0.01,  -0.02, 0.015, -0.01, 0.02,  -0.015,
                                     0.005, 0.01,  -0.01, 0.02,  -0.02, 0};
    for (int kind = 0; kind < 4; kind++) {
        sw_pairs *pairs = new_pairs();
        for (int i = 0; i < 12; i++) {
            const double T = 20 + 10 * (i % 4);
            double F = 1000 * T / (0.2 * 12) * exp(noise[i]);
            if (kind == 1)
                F *= pow(T / 20, -0.3);
            else if (kind == 2)
                F *= exp(-0.03 * i);
            else if (kind == 3)
                F -= 2000;
            add_pair(pairs, T, F);
        }
        const sw_calibrate_out out = of("M12", pairs);
        must(!(out.warnings & SW_WARN_FACTOR_VARIES) == (kind == 0), "kind %d",
             kind);
        must((out.torque_trend_p < 0.05) == (kind == 1 || kind == 3), "%d",
             kind);
        must((out.order_trend_p < 0.05) == (kind == 2), "kind %d: %g", kind,
             out.order_trend_p);
        if (kind == 3)
            near(out.line_intercept_N, -2000, 3 * out.line_intercept_se_N, 0);
    }
}
END_TEST

/* Forward by sw_torque(), back by the pairs. */
START_TEST(friction)
{
    for (int given = 1; given < 4; given++) {
        sw_pairs *pairs = new_pairs();
        for (int i = 0; i < 5; i++) {
            sw_torque_in t;
            sw_torque_defaults(&t);
            SET(t.thread, "M12");
            t.preload_N = 5000 * (i + 1);
            t.mu_thread = 0.12;
            t.mu_seat = 0.15;
            t.prevailing_torque_Nm = 2;
            const sw_torque_out o = sw_torque(&t, NULL);
            ck_assert_int_eq(
                sw_pairs_add(pairs, o.torque_Nm, o.preload_N,
                             given & 1 ? o.torque_Nm - o.seat_torque_Nm
                                       : SW_UNSET,
                             given & 2 ? o.seat_torque_Nm : SW_UNSET, NULL),
                0);
        }
        sw_calibrate_in in = question("M12");
        in.prevailing_torque_Nm = 2;
        const sw_calibrate_out out = ask(&in, pairs);
        near(out.mu_thread, 0.12, 0, 1e-12);
        near(out.mu_seat, 0.15, 0, 1e-12);
        near(out.mu_thread_low, 0.12, 0, 1e-12);
        near(out.mu_thread_high, 0.12, 0, 1e-12);
        ck_assert(out.mu_total > 0.12 && out.mu_total < 0.15);
        near(out.friction_radius_mm, (16.63 + 13.5) / 4, 0, 1e-9);
        ck_assert(!(out.warnings & SW_WARN_FACTOR_IMPLAUSIBLE));
        sw_pairs_free(pairs);
    }
}
END_TEST

/* The definitions of ISO 16047 as they are printed (from memory), with its
 * 0.577 d2: M12, P 1.75, d2 10.863, D_b 15. */
START_TEST(friction_iso)
{
    const double T = 90, Tth = 38, Tb = 52, F = 36000;
    sw_pairs *pairs = new_pairs();
    for (int i = 0; i < 2; i++)
        ck_assert_int_eq(sw_pairs_add(pairs, T, F, Tth, Tb, NULL), 0);
    sw_calibrate_in in = question("M12");
    in.friction_radius_mm = 7.5;
    const sw_calibrate_out out = ask(&in, pairs);
    const double pitch = 1.75 / (2 * 3.14159265358979);
    near(out.mu_thread, (1000 * Tth / F - pitch) / (0.577 * 10.863), 0, 1e-3);
    near(out.mu_seat, 1000 * Tb / (0.5 * 15 * F), 0, 1e-14);
    near(out.mu_total, (1000 * T / F - pitch) / (0.577 * 10.863 + 0.5 * 15), 0,
         1e-3);
    sw_pairs_free(pairs);
    /* torques that do not add up */
    pairs = new_pairs();
    for (int i = 0; i < 2; i++)
        ck_assert_int_eq(sw_pairs_add(pairs, T, F, Tth, 30, NULL), 0);
    ck_assert(ask(&in, pairs).warnings & SW_WARN_FACTOR_IMPLAUSIBLE);
    sw_pairs_free(pairs);
    /* one pair with parted torques: a mean, but no interval */
    pairs = new_pairs();
    add_pair(pairs, T, F);
    ck_assert_int_eq(sw_pairs_add(pairs, T, F, Tth, Tb, NULL), 0);
    const sw_calibrate_out one = ask(&in, pairs);
    near(one.mu_seat, 1000 * Tb / (7.5 * F), 0, 1e-14);
    ck_assert(one.mu_seat_low == SW_UNSET && one.mu_total_high == SW_UNSET);
    sw_pairs_free(pairs);
}
END_TEST

/* What the words promise, tried on log-normal K: of 4000 samples of 6, how
 * often the interval holds the true K. Three standard errors. */
START_TEST(promise)
{
    enum { TRIALS = 4000 };
    randoms r = {11};
    int held = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
        sw_pairs *pairs = new_pairs();
        for (int i = 0; i < 6; i++) {
            const double u = random_between(&r, 0, 1);
            const double angle = random_between(&r, 0, 6.283185307179586);
            const double z = sqrt(-2 * log(1 - u)) * cos(angle);
            const double T = random_between(&r, 20, 60);
            add_pair(pairs, T, 1000 * T / (0.18 * exp(0.12 * z) * 12));
        }
        const sw_calibrate_out out = of("M12", pairs);
        held += out.nut_factor_low < 0.18 && out.nut_factor_high > 0.18;
    }
    near((double)held / TRIALS, 0.95, 3 * sqrt(0.95 * 0.05 / TRIALS), 0);
}
END_TEST

/* Scale of force, scale of diameter, order: what may change and what not. */
START_TEST(properties)
{
    const sw_calibrate_out a = of("M12", preloads(dry_kN, DRY));
    sw_pairs *pairs = new_pairs();
    for (int i = DRY - 1; i >= 0; i--)
        add_pair(pairs, 180, 1000 * dry_kN[i]);
    const sw_calibrate_out b = of("M12", pairs);
    near(b.nut_factor, 2 * a.nut_factor, 0, 1e-14);
    near(b.sigma_ln, a.sigma_ln, 0, 1e-13);
    near(b.scatter_pct, a.scatter_pct, 0, 1e-13);
    near(b.nut_factor_sd, 2 * a.nut_factor_sd, 0, 1e-12);
    near(b.order_trend_p, a.order_trend_p, 0, 1e-9);
    const sw_calibrate_out c = of("M24", preloads(dry_kN, DRY));
    near(c.nut_factor, a.nut_factor / 2, 0, 1e-14);
    near(c.slope, a.slope, 0, 0);
    near(c.tolerance_high, a.tolerance_high / 2, 0, 1e-13);
    /* the prevailing torque comes off first */
    sw_calibrate_in in = question("M12");
    in.prevailing_torque_Nm = 30;
    pairs = preloads(dry_kN, DRY);
    near(ask(&in, pairs).nut_factor, a.nut_factor * 60 / 90, 0, 1e-13);
    /* wider where more is asked */
    in = question("M12");
    in.confidence = 0.99;
    sw_calibrate_out d = ask(&in, pairs);
    ck_assert(d.nut_factor_high > a.nut_factor_high);
    ck_assert(d.tolerance_pct > a.tolerance_pct);
    near(d.scatter_pct, a.scatter_pct, 0, 0);
    in.confidence = SW_UNSET;
    in.proportion = 0.99;
    d = ask(&in, pairs);
    near(d.nut_factor_high, a.nut_factor_high, 0, 0);
    ck_assert(d.tolerance_pct > a.tolerance_pct);
    ck_assert(d.scatter_pct > a.scatter_pct);
    sw_pairs_free(pairs);
}
END_TEST

/* No scatter at all, and so much that an interval has no end. */
START_TEST(extremes)
{
    sw_pairs *pairs = new_pairs();
    for (int i = 1; i <= 12; i++)
        add_pair(pairs, 7 * i, 2916.7 * i);
    sw_calibrate_out out = of("M12", pairs);
    near(out.sigma_ln, 0, 0, 0);
    near(out.nut_factor_low, out.nut_factor, 0, 1e-15);
    near(out.tolerance_pct, 0, 0, 0);
    near(out.nut_factor_origin, out.nut_factor, 0, 1e-14);
    near(out.nut_factor_mean, out.nut_factor, 0, 1e-14);
    ck_assert_uint_eq(out.warnings, SW_WARN_PAIRS_ALIKE);
    pairs = new_pairs();
    add_pair(pairs, 1e6, 1e-3);
    add_pair(pairs, 1e-6, 1e8);
    sw_calibrate_in in = question("M12");
    in.confidence = in.proportion = 0.9999;
    out = ask(&in, pairs);
    ck_assert(out.nut_factor_high == SW_UNSET &&
              out.nut_factor_low == SW_UNSET);
    ck_assert(out.tolerance_high == SW_UNSET);
    near(out.tolerance_pct, 100, 1e-9, 0);
    ck_assert(out.outlier_limit == SW_UNSET && out.outlier_pair == SW_UNSET);
    ck_assert(out.order_trend_p == SW_UNSET);
    sw_pairs_free(pairs);
}
END_TEST

START_TEST(head)
{
    static const char text[] = "thread: M10\nprevailing: 2 N.m\n"
                               "torque [N.m],force [kN]\n22,10\n42,20.5\n";
    sw_error err;
    sw_pairs *pairs = new_pairs();
    ck_assert_int_eq(sw_pairs_read(pairs, text, strlen(text), NULL, NULL), 0);
    sw_calibrate_in in = question("");
    sw_calibrate_out out = ask(&in, pairs);
    ck_assert_str_eq(out.thread, "M10");
    near(out.nut_factor, 2 / sqrt(10 * 10.25), 0, 1e-14);
    ck_assert_uint_eq(out.warnings, SW_WARN_FEW_PAIRS);
    sw_assumption a = sw_calibrate_assumed(&in, pairs, 0, &err);
    ck_assert_str_eq(a.name, "thread");
    ck_assert_str_eq(a.word, "M10");
    a = sw_calibrate_assumed(&in, pairs, 1, &err);
    ck_assert_str_eq(a.name, "prevailing_torque_Nm");
    ck_assert_str_eq(a.source, "head of the pairs");
    near(a.value, 2, 0, 0);
    /* another thread is taken as given, and said */
    SET(in.thread, "M12");
    out = ask(&in, pairs);
    ck_assert_str_eq(out.thread, "M12");
    ck_assert(out.warnings & SW_WARN_THREAD_DIFFERS);
    SET(in.thread, "m10x1.5");
    ck_assert(!(ask(&in, pairs).warnings & SW_WARN_THREAD_DIFFERS));
    in.prevailing_torque_Nm = 22;
    out = sw_calibrate(&in, pairs, &err);
    check_refused("all prevailing", &err, SW_ERR_CONFLICT,
                  "prevailing_torque_Nm");
    ck_assert_ptr_nonnull(strstr(err.message, "pair 1, 22 N.m"));
    check_numbers("all prevailing", &out, SW_STRUCT_CALIBRATE_OUT, out.status);
    sw_pairs_free(pairs);
}
END_TEST

START_TEST(resolved)
{
    sw_error err;
    sw_pairs *pairs = preloads(dry_kN, DRY);
    sw_calibrate_in in = question("M12");
    const sw_calibrate_out before = ask(&in, pairs);
    check_no_error("resolve", sw_calibrate_resolve(&in, pairs, &err), &err);
    near(in.confidence, 0.95, 0, 0);
    near(in.proportion, 0.95, 0, 0);
    near(in.prevailing_torque_Nm, 0, 0, 0);
    ck_assert(in.friction_radius_mm == SW_UNSET); /* enters nothing here */
    const sw_calibrate_out after = ask(&in, pairs);
    near(after.nut_factor, before.nut_factor, 0, 0);
    in.confidence = 0.9;
    ck_assert_int_eq(sw_calibrate(&in, pairs, &err).status, SW_ERR_CONFLICT);
    check_refused("changed", &err, SW_ERR_CONFLICT, "seal");
    int i = 0;
    while (!sw_calibrate_assumed(&in, pairs, i, NULL).status)
        i++;
    ck_assert_int_eq(i, 0); /* a changed one has no list */
    in = question("M12");
    while (!sw_calibrate_assumed(&in, pairs, i, &err).status)
        i++;
    ck_assert_int_eq(i, 3);
    check_refused("past the end", &err, SW_ERR_RANGE, "index");
    sw_pairs_free(pairs);
}
END_TEST

START_TEST(bad)
{
    sw_error err;
    sw_pairs *pairs = new_pairs();
    sw_calibrate_in in = question("M12");
    sw_calibrate_out out = sw_calibrate(NULL, pairs, &err);
    check_refused("in", &err, SW_ERR_NULL, "in");
    check_numbers("in", &out, SW_STRUCT_CALIBRATE_OUT, out.status);
    out = sw_calibrate(&in, NULL, &err);
    check_refused("pairs", &err, SW_ERR_NULL, "pairs");
    check_numbers("pairs", &out, SW_STRUCT_CALIBRATE_OUT, out.status);
    ck_assert_int_eq(sw_calibrate(&in, NULL, NULL).status, SW_ERR_NULL);
    for (int n = 0; n < 2; n++) {
        out = sw_calibrate(&in, pairs, &err);
        check_refused("few", &err, SW_ERR_MISSING, "pairs");
        add_pair(pairs, 20, 8000);
    }
    SET(in.thread, "M13");
    out = sw_calibrate(&in, pairs, &err);
    check_refused("thread", &err, SW_ERR_UNKNOWN, "thread");
    in = question("");
    out = sw_calibrate(&in, pairs, &err);
    check_refused("thread", &err, SW_ERR_MISSING, "thread");
    ck_assert_int_eq(sw_calibrate_resolve(NULL, pairs, &err), SW_ERR_NULL);
    ck_assert_int_eq(sw_calibrate_resolve(&in, NULL, &err), SW_ERR_NULL);
    ck_assert_int_eq(sw_calibrate_assumed(NULL, pairs, 0, &err).status,
                     SW_ERR_NULL);
    ck_assert_int_eq(sw_calibrate_assumed(&in, NULL, 0, &err).status,
                     SW_ERR_NULL);
    sw_calibrate_defaults(NULL);
    int i = 0;
    for (; sw_calibrate_not_checked(i); i++)
        ck_assert_uint_ge(strlen(sw_calibrate_not_checked(i)), 20);
    ck_assert_int_ge(i, 3);
    ck_assert_ptr_null(sw_calibrate_not_checked(-1));
    sw_pairs_free(pairs);
}
END_TEST

int main(void)
{
    return RUN_TESTS("calibrate", unlubricated, lubricated, nist, by_hand,
                     alpha, grubbs, outlier, varies, friction, friction_iso,
                     promise, properties, extremes, head, resolved, bad);
}
