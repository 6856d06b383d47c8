/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Spread: published pairs of factor and ±, the normal distribution by erfc and
 * by its published quantiles, the product of two scattered factors by numeric
 * integration, and the properties of a log-normal.
 */
#include "../random.h"
#include "spread_question.h"

/* Published: VDI 2230-1, alpha = F_max/F_min; its tables print these pairs of
 * factor and ±% (one decimal computed from the definition, whole percents as
 * printed: 9, 17, 23, 33, 43, 60). Both at the coverage they were published
 * for, whatever that is. */
START_TEST(published_pairs)
{
    static const struct {
        double alpha, pct, digit;
    } row[] = {{1.2, 9.1, 0.05},  {1.4, 16.7, 0.05}, {1.6, 23.1, 0.05},
               {2.0, 33.3, 0.05}, {2.5, 42.9, 0.05}, {4.0, 60, 0.05},
               {1.2, 9, 0.5},     {1.4, 17, 0.5},    {1.6, 23, 0.5},
               {2.0, 33, 0.5},    {2.5, 43, 0.5}};
    const sw_torque_in in = nut_of("M12", 20000);
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_spread_in s = whole_spread(row[i].pct);
        s.published_coverage = s.coverage = 0.9;
        const sw_spread_out out = good_spread("pair", &in, &s);
        /* d alpha = 2/(1 - s)^2 ds */
        const double rest = 1 - row[i].pct / 100;
        near(out.alpha, row[i].alpha,
             2 / (rest * rest) * 1.02 * row[i].digit / 100, 0);
        /* and back: the ± that gives the printed alpha exactly */
        double low = 0, high = 90;
        for (int k = 0; k < 80; k++) {
            s.scatter_pct = (low + high) / 2;
            *(sw_spread(&in, &s, NULL).alpha < row[i].alpha ? &low : &high) =
                s.scatter_pct;
        }
        near(s.scatter_pct, row[i].pct, 1.02 * row[i].digit, 0);
    }
}
END_TEST

/* Published: VDI 2230 worked example: M12x40 of grade 8.8, friction 0.14,
 * largest preload 41.9 kN, tightening factor 1.8: smallest 23.3 kN. */
START_TEST(vdi_example)
{
    sw_torque_in in = nut_of("M12", 41900 / sqrt(1.8));
    in.nut_factor = SW_UNSET;
    in.mu_thread = in.mu_seat = 0.14;
    sw_spread_in s = whole_spread(100 * 0.8 / 2.8);
    s.published_coverage = s.coverage = 0.95;
    const sw_spread_out out = good_spread("example", &in, &s);
    near(out.preload_high_N / 1000, 41.9, 0, 1e-12);
    near(out.preload_low_N / 1000, 23.3, 0.05, 0);
    near(out.alpha, 1.8, 0, 1e-12);
}
END_TEST

/* sigma = atanh(s)/z: so the answer tells the quantile that entered. Published
 * quantiles of the normal distribution: NIST/SEMATECH e-Handbook 1.3.6.7.1 and
 * any table print 0.6745, 1.6449, 1.9600, 2.5758, 3.2905, 3.8906; more digits
 * are common knowledge. */
START_TEST(normal_quantiles)
{
    static const struct {
        double coverage, z;
    } row[] = {{0.5, 0.674489750196082},  {0.9, 1.64485362695147},
               {0.95, 1.95996398454005},  {0.99, 2.57582930354890},
               {0.999, 3.29052673149193}, {0.9999, 3.89059188641312}};
    const sw_torque_in in = nut_of("M12", 20000);
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_spread_in s = whole_spread(25);
        s.published_coverage = row[i].coverage;
        const double z =
            atanh(0.25) / good_spread("quantile", &in, &s).sigma_ln;
        near(z, row[i].z, 1e-12, 0);
        near(normal_half_width(row[i].coverage), row[i].z, 1e-12, 0);
    }
    randoms r = {31};
    for (int i = 0; i < 500; i++) {
        sw_spread_in s = whole_spread(random_between(&r, 1, 95));
        s.published_coverage = random_between(&r, 0.5, 0.9999);
        s.coverage = random_between(&r, 0.5, 0.9999);
        const sw_spread_out out = good_spread("quantile", &in, &s);
        const double sigma = atanh(s.scatter_pct / 100) /
                             normal_half_width(s.published_coverage);
        near(out.sigma_ln, sigma, 0, 2e-12);
        /* the part of a normal distribution between the ends */
        const double z = log(out.preload_high_N / out.preload_N) / sigma;
        near(1 - 2 * normal_above(z), s.coverage, 1e-12, 0);
        near(out.coverage, s.coverage, 0, 0);
    }
}
END_TEST

/* A published ± comes back at its own coverage; ends at other coverages widen
 * with it. */
START_TEST(own_coverage)
{
    randoms r = {32};
    const sw_torque_in in = nut_of("1/2-13", 20000);
    for (int i = 0; i < 1000; i++) {
        sw_spread_in s = whole_spread(random_between(&r, 0.01, 95));
        s.published_coverage = s.coverage = random_between(&r, 0.5, 0.9999);
        const sw_spread_out out = good_spread("own", &in, &s);
        near(out.scatter_pct, s.scatter_pct, 0, 1e-13);
        near(out.alpha, (100 + s.scatter_pct) / (100 - s.scatter_pct), 0,
             1e-13);
        s.coverage = fmax(0.5, s.coverage - 0.01);
        const sw_spread_out less = good_spread("less", &in, &s);
        must(less.alpha < out.alpha || s.coverage == s.published_coverage,
             "%g %g", less.alpha, out.alpha);
    }
    for (int i = 0; sw_method_name(i); i++) { /* and that of every method */
        const sw_method_out m = sw_method(sw_method_name(i), NULL);
        sw_spread_in s = open_spread();
        SET(s.method, m.method);
        const sw_spread_out out = good_spread(m.method, &in, &s);
        near_in(m.method, out.scatter_pct, m.scatter_pct, 0, 1e-13);
        near_in(m.method, out.alpha, m.alpha, 0, 1e-13);
        ck_assert_str_eq(out.method, m.method);
    }
}
END_TEST

/* About the median evenly in the logarithm; in the ratio of the ends alone
 * nothing of torque, thread or K is left. */
START_TEST(log_normal)
{
    randoms r = {33};
    for (int i = 0; i < 2000; i++) {
        sw_torque_in in =
            nut_of(sw_thread_name(random_below(&r, sw_thread_count())),
                   random_log(&r, 1, 1e5));
        in.nut_factor = random_between(&r, 0.1, 0.4);
        sw_spread_in s = random_below(&r, 2)
                             ? whole_spread(random_between(&r, 0, 95))
                             : parts_spread(random_between(&r, 0, 95),
                                            random_between(&r, 0, 95));
        s.coverage = random_between(&r, 0.5, 0.9999);
        const sw_spread_out out = good_spread(in.thread, &in, &s);
        const double F = out.preload_N;
        near_in(in.thread, F, in.preload_N, 0, 0);
        near_in(in.thread, out.torque_Nm, sw_torque(&in, NULL).torque_Nm, 0, 0);
        near_in(in.thread, out.preload_low_N * out.preload_high_N, F * F, 0,
                1e-14);
        near_in(in.thread, out.preload_high_N / out.preload_low_N, out.alpha, 0,
                1e-13);
        near_in(in.thread, 100 * (out.alpha - 1) / (out.alpha + 1),
                out.scatter_pct, 1e-12, 1e-13);
        in.preload_N *= 0.37;
        const sw_spread_out other = good_spread(in.thread, &in, &s);
        near_in(in.thread, other.alpha, out.alpha, 0, 0);
        near_in(in.thread, other.preload_low_N, 0.37 * out.preload_low_N, 0,
                1e-14);
        /* the same from the torque's side */
        in.preload_N = SW_UNSET;
        in.torque_Nm = out.torque_Nm;
        const sw_spread_out by_torque = good_spread(in.thread, &in, &s);
        near_in(in.thread, by_torque.preload_high_N, out.preload_high_N, 0,
                1e-13);
    }
}
END_TEST

/* Limits: without scatter the ends meet, and they do so evenly. */
START_TEST(no_scatter)
{
    const sw_torque_in in = nut_of("M12", 20000);
    sw_spread_in s = whole_spread(0);
    sw_spread_out out = good_spread("none", &in, &s);
    near(out.preload_low_N, 20000, 0, 0);
    near(out.preload_high_N, 20000, 0, 0);
    near(out.alpha, 1, 0, 0);
    near(out.scatter_pct, 0, 0, 0);
    near(out.sigma_ln, 0, 0, 0);
    ck_assert(out.tool_share == SW_UNSET);
    s = parts_spread(0, 0);
    out = good_spread("none apart", &in, &s);
    near(out.alpha, 1, 0, 0);
    ck_assert(out.tool_share == SW_UNSET); /* no variance to share */
    /* small: ± of the ends about the median is ± itself */
    s = whole_spread(1e-4);
    out = good_spread("little", &in, &s);
    near(out.preload_high_N / 20000 - 1, 1e-6, 0, 1e-5);
    near(1 - out.preload_low_N / 20000, 1e-6, 0, 1e-5);
}
END_TEST

/* The widest question that is allowed still has numbers for ends. */
START_TEST(widest)
{
    const sw_torque_in in = nut_of("M12", 20000);
    sw_spread_in s = parts_spread(95, 95);
    s.published_coverage = 0.5;
    s.coverage = 0.9999;
    const sw_spread_out out = good_spread("widest", &in, &s);
    must(out.preload_low_N > 0 && out.alpha > 1e9, "%g", out.alpha);
}
END_TEST

/* Tool and nut factor apart: variances add. */
START_TEST(apart)
{
    randoms r = {34};
    const sw_torque_in in = nut_of("M12", 20000);
    for (int i = 0; i < 500; i++) {
        const double tool = random_between(&r, 0, 50);
        const double factor = random_between(&r, 0.1, 60);
        sw_spread_in s = parts_spread(tool, factor);
        const sw_spread_out both = good_spread("both", &in, &s);
        s = whole_spread(tool);
        const sw_spread_out one = good_spread("tool", &in, &s);
        s = whole_spread(factor);
        const sw_spread_out other = good_spread("factor", &in, &s);
        const double square =
            one.sigma_ln * one.sigma_ln + other.sigma_ln * other.sigma_ln;
        near(both.sigma_ln, sqrt(square), 0, 1e-14);
        near(both.tool_share, one.sigma_ln * one.sigma_ln / square, 1e-14,
             1e-12);
        ck_assert(one.tool_share == SW_UNSET);
        s = parts_spread(factor, tool); /* exchanged */
        near(good_spread("exchanged", &in, &s).alpha, both.alpha, 0, 1e-14);
    }
    /* by hand: two parts of 20 % are atanh(0.2) sqrt 2 together: 28.0 %; the
     * tool is half of it */
    sw_spread_in s = parts_spread(20, 20);
    const sw_spread_out out = good_spread("20 and 20", &in, &s);
    near(out.scatter_pct, 100 * tanh(0.202732554054082 * sqrt(2)), 0, 1e-13);
    near(out.tool_share, 0.5, 1e-15, 0);
    s = parts_spread(SW_UNSET, 20); /* the tool as ISO 6789 allows it: 4 % */
    near(good_spread("usual tool", &in, &s).tool_share,
         1 / (1 + pow(0.202732554054082 / atanh(0.04), 2)), 0, 1e-12);
}
END_TEST

/* Part of all tightenings whose preload stays under f, by the trapezoid rule
 * over the torque's scatter (exact to rounding for so smooth a curve): the nut
 * factor must be larger than (T e^x - T0)/(f d). */
static double part_under(double f_over_median, double rho, double sigma_T,
                         double sigma_K)
{
    enum { STEPS = 4000 };
    const double most = 9, step = 2 * most / STEPS;
    double sum = 0;
    for (int i = 0; i <= STEPS; i++) {
        const double x = -most + i * step;
        const double turning = (exp(sigma_T * x) - rho) / (1 - rho);
        const double below =
            turning > 0 ? normal_above(log(turning / f_over_median) / sigma_K)
                        : 1;
        sum += exp(-x * x / 2) * below;
    }
    return sum * step / sqrt(2 * 3.14159265358979323846);
}

static double quantile_of(double p, double rho, double sigma_T, double sigma_K)
{
    double low = log(1e-6), high = log(1e6);
    for (int i = 0; i < 60; i++) {
        const double at = (low + high) / 2;
        *(part_under(exp(at), rho, sigma_T, sigma_K) < p ? &low : &high) = at;
    }
    return exp(low);
}

/* Independent: both ends by numeric integration. Without prevailing torque
 * they agree to rounding. With it, the logarithm of (e^x - rho)/(1 - rho), rho
 * = T0/T, is x/(1 - rho) and a second term of -x^2 rho/(2 (1 - rho)^2), which
 * equation (3) leaves out: at most that much at x = z sigma_T. */
START_TEST(prevailing_torque)
{
    static const double part[] = {0, 0.05, 0.2, 0.4}, tool[] = {4, 6, 10},
                        factor[] = {8, 20, 33.3};
    const double z = normal_half_width(0.95);
    for (size_t i = 0; i < sizeof part / sizeof part[0]; i++)
        for (size_t j = 0; j < sizeof tool / sizeof tool[0]; j++)
            for (size_t k = 0; k < sizeof factor / sizeof factor[0]; k++) {
                sw_torque_in in = nut_of("M12", SW_UNSET);
                in.torque_Nm = 40;
                in.prevailing_torque_Nm = 40 * part[i];
                const sw_spread_in s = parts_spread(tool[j], factor[k]);
                const sw_spread_out out = good_spread("prevailing", &in, &s);
                near(out.preload_N, 40 * (1 - part[i]) / (0.2 * 0.012), 0,
                     1e-14);
                const double sT = atanh(tool[j] / 100) / z;
                const double sK = atanh(factor[k] / 100) / z;
                const double low = quantile_of(0.025, part[i], sT, sK);
                const double high = quantile_of(0.975, part[i], sT, sK);
                const double x = z * sT, rest = 1 - part[i];
                const double second = x * x * part[i] / (2 * rest * rest);
                near(log(out.preload_low_N / out.preload_N), log(low),
                     1.3 * second + 1e-9, 0);
                near(log(out.preload_high_N / out.preload_N), log(high),
                     1.3 * second + 1e-9, 0);
                if (part[i] == 0)
                    continue;
                /* the first order must be there: without it the tool's part
                 * would be off by far more than the second */
                const double without = z * hypot(sT, sK);
                must(log(out.preload_high_N / out.preload_N) > without,
                     "no first order at %g", part[i]);
            }
}
END_TEST

/* A whole ± of the preload holds at any prevailing torque. */
START_TEST(prevailing_whole)
{
    sw_torque_in in = nut_of("M12", SW_UNSET);
    const sw_spread_in s = whole_spread(25);
    in.torque_Nm = 40;
    const double alpha = good_spread("none", &in, &s).alpha;
    for (double T0 = 1; T0 < 39; T0 += 3) {
        in.prevailing_torque_Nm = T0;
        near(good_spread("some", &in, &s).alpha, alpha, 0, 0);
    }
}
END_TEST

/* Where the prevailing torque exceeds half of the torque's low end the first
 * order is no answer any more: refused, and never an infinite one. */
START_TEST(prevailing_takes_most)
{
    sw_torque_in in = nut_of("M12", SW_UNSET);
    in.torque_Nm = 40;
    sw_error err;
    int refused = 0, answered = 0;
    for (double part = 0.02; part < 1; part += (1 - part) / 20 + 1e-12)
        for (double tool = 5; tool <= 95; tool += 10) {
            in.prevailing_torque_Nm = 40 * part;
            const sw_spread_in s = parts_spread(tool, 20);
            const sw_spread_out out = sw_spread(&in, &s, &err);
            check_numbers("nearly all", &out, SW_STRUCT_SPREAD_OUT, out.status);
            /* low end of the torque over twice the prevailing one */
            const double room = sqrt((100 - tool) / (100 + tool)) / (2 * part);
            if (out.status) {
                check_refused("nearly all", &err, SW_ERR_NONE,
                              "prevailing_torque_Nm");
                must(room <= 1 + 1e-12, "refused at %g, %g", part, tool);
                refused++;
            } else {
                must(room >= 1 - 1e-12, "answered at %g, %g", part, tool);
                answered++;
            }
        }
    ck_assert_int_ge(refused, 50);
    ck_assert_int_ge(answered, 50);
    /* a tool without scatter has nothing to refuse */
    in.prevailing_torque_Nm = 39.99;
    const sw_spread_in s = parts_spread(0, 20);
    near(good_spread("no tool", &in, &s).scatter_pct, 20, 0, 1e-13);
}
END_TEST

START_TEST(header_example)
{
    sw_torque_in in = nut_of("M12", SW_UNSET);
    in.torque_Nm = 48;
    const sw_spread_in s = whole_spread(25);
    const sw_spread_out out = good_spread("header", &in, &s);
    /* 20000/sqrt(1.25/0.75), 20000 sqrt(1.25/0.75) by hand */
    near(out.preload_low_N, 15492, 0.5, 0);
    near(out.preload_high_N, 25820, 0.5, 0);
}
END_TEST

/* The high end: tension by hand over proof load and yield of 8.8 in M12
 * (580 and 640 MPa on 84.27 mm2), twist that of the nominal torque. */
START_TEST(high_end)
{
    sw_torque_in in = nut_of("M12", 28000);
    SET(in.grade, "8.8");
    const double area = sw_thread("M12", NULL).stress_area_mm2;
    const sw_spread_in s = whole_spread(25);
    const sw_spread_out out = good_spread("high", &in, &s);
    const double high = 28000 * sqrt(1.25 / 0.75);
    near(out.proof_use_high, high / (580 * area), 0, 1e-13);
    const double tau = sw_torque(&in, NULL).torsion_MPa;
    const double mises = sqrt(pow(high / area, 2) + 3 * tau * tau);
    near(out.yield_use_high, mises / 640, 0, 1e-13);
    /* borders of both warnings, found by the uses themselves */
    ck_assert_uint_eq(out.warnings, 0);
    in.preload_N = 28000 * 0.7501 / out.proof_use_high;
    ck_assert(good_spread("proof", &in, &s).warnings ==
              SW_WARN_HIGH_OVER_PROOF);
    in.preload_N = 28000 * 0.7499 / out.proof_use_high;
    ck_assert_uint_eq(good_spread("proof", &in, &s).warnings, 0);
    in.preload_N = 28000 * 1.0001 / out.yield_use_high;
    ck_assert(good_spread("yield", &in, &s).warnings & SW_WARN_HIGH_OVER_YIELD);
    in.preload_N = 28000 * 0.9999 / out.yield_use_high;
    ck_assert_uint_eq(
        good_spread("yield", &in, &s).warnings & SW_WARN_HIGH_OVER_YIELD, 0);
    SET(in.grade, "A2-70"); /* no proof stress in the standard */
    ck_assert(good_spread("A2", &in, &s).proof_use_high == SW_UNSET);
    SET(in.grade, "");
    SET(in.thread, "M42"); /* assumed 8.8 ends at M39 */
    const sw_spread_out big = good_spread("M42", &in, &s);
    ck_assert(big.proof_use_high == SW_UNSET && big.yield_use_high == SW_UNSET);
    ck_assert(big.warnings & SW_WARN_STUD_STRENGTH_UNKNOWN);
}
END_TEST

/* Warnings of the torque come along, and what is from memory is said. */
START_TEST(warned)
{
    sw_torque_in in = nut_of("M12", 20000);
    in.nut_factor = SW_UNSET;
    SET(in.lubrication, "zinc");
    sw_spread_in s = open_spread();
    ck_assert(good_spread("zinc", &in, &s).warnings &
              SW_WARN_LUBRICATION_CONFLICT);
    in = nut_of("M12", 5000);
    SET(s.method, "impact");
    ck_assert_uint_eq(good_spread("impact", &in, &s).warnings,
                      SW_WARN_TABLE_FROM_MEMORY);
    SET(s.method, "by-feel");
    ck_assert_uint_eq(good_spread("by-feel", &in, &s).warnings, 0);
}
END_TEST

/* Every row of lubrication names the way of tightening that fits, and that
 * one's scatter enters; friction or K by hand: as guessed. */
START_TEST(method_by_lubrication)
{
    for (int i = 0; sw_lubrication_name(i); i++) {
        const char *key = sw_lubrication_name(i);
        sw_torque_in in = nut_of("M12", 10000);
        in.nut_factor = SW_UNSET;
        SET(in.lubrication, key);
        const sw_spread_in s = open_spread();
        const sw_spread_out out = good_spread(key, &in, &s);
        const sw_method_out m =
            sw_method(sw_lubrication(key, NULL).method, NULL);
        ck_assert_int_eq(m.status, SW_OK);
        ck_assert_str_eq(out.method, m.method);
        near_in(key, out.scatter_pct, m.scatter_pct, 0, 1e-13);
    }
    /* NASA's words: unlubricated, lubricated, cadmium-plated bolts */
    static const char *const pair[][2] = {{"dry", "wrench-dry"},
                                          {"oiled", "wrench-oiled"},
                                          {"cadmium", "wrench-cadmium"},
                                          {"", "wrench-dry"}};
    for (size_t i = 0; i < sizeof pair / sizeof pair[0]; i++) {
        sw_torque_in in = nut_of("M12", 10000);
        in.nut_factor = SW_UNSET;
        SET(in.lubrication, pair[i][0]);
        const sw_spread_in s = open_spread();
        ck_assert_str_eq(good_spread(pair[i][0], &in, &s).method, pair[i][1]);
    }
    sw_torque_in in = nut_of("M12", 10000);
    SET(in.lubrication, "oiled"); /* K by hand: nothing of it is used */
    const sw_spread_in s = open_spread();
    ck_assert_str_eq(good_spread("K", &in, &s).method,
                     "wrench-friction-guessed");
    in.nut_factor = SW_UNSET;
    in.mu_thread = in.mu_seat = 0.12;
    ck_assert_str_eq(good_spread("mu", &in, &s).method,
                     "wrench-friction-guessed");
    in.mu_seat = SW_UNSET; /* half of it from the row */
    ck_assert_str_eq(good_spread("one mu", &in, &s).method, "wrench-oiled");
    SET(in.lubrication, "mu-class-b");
    ck_assert_str_eq(good_spread("class", &in, &s).method,
                     "wrench-friction-guessed");
}
END_TEST

static const sw_assumption *assumption(const sw_spread_in *s,
                                       const sw_torque_in *in, const char *name)
{
    static sw_assumption a;
    sw_error err;
    for (int i = 0;; i++) {
        a = sw_spread_assumed(s, in, i, &err);
        if (a.status) {
            check_refused("end", &err, SW_ERR_RANGE, "index");
            return NULL;
        }
        must(a.source[0], "%s: no source", a.name);
        if (strcmp(a.name, name) == 0)
            return &a;
    }
}

/* Every default that entered is told with range and source. */
START_TEST(assumed)
{
    static const char *const trials[] = {"height_scatter_mm", "trials", "seed",
                                         "threads", "vary"};
    sw_torque_in in = nut_of("M12", 10000);
    in.nut_factor = SW_UNSET;
    SET(in.lubrication, "oiled");
    sw_spread_in s = open_spread();
    for (size_t i = 0; i < sizeof trials / sizeof trials[0]; i++)
        must(!assumption(&s, &in, trials[i]), "%s did not enter", trials[i]);
    near(assumption(&s, &in, "coverage")->value, 0.95, 0, 0);
    ck_assert_str_eq(assumption(&s, &in, "method")->word, "wrench-oiled");
    const sw_assumption *a = assumption(&s, &in, "scatter_pct");
    near(a->value, 25, 0, 0);
    const sw_method_out m = sw_method("wrench-oiled", NULL);
    ck_assert_str_eq(a->source, m.source);
    near(a->low, m.scatter_low_pct, 0, 0);
    near(a->high, m.scatter_high_pct, 0, 0);
    a = assumption(&s, &in, "published_coverage");
    near(a->value, 0.95, 0, 0);
    must(a->low < 0.95 && a->high > 0.95, "range");
    ck_assert_ptr_null(assumption(&s, &in, "tool_scatter_pct"));
    s = parts_spread(SW_UNSET, 20);
    a = assumption(&s, &in, "tool_scatter_pct");
    near(a->value, 4, 0, 0); /* ISO 6789, from memory */
    near(a->low, 4, 0, 0);
    near(a->high, 6, 0, 0);
    ck_assert_ptr_null(assumption(&s, &in, "method"));
    ck_assert_ptr_null(assumption(&s, &in, "scatter_pct"));
    ck_assert_ptr_null(assumption(&s, &in, "factor_scatter_pct"));
    s = whole_spread(20);
    ck_assert_ptr_null(assumption(&s, &in, "method"));
    ck_assert_ptr_null(assumption(&s, &in, "scatter_pct"));
    s = open_spread();
    SET(s.method, "hydraulic");
    ck_assert_ptr_null(assumption(&s, &in, "method"));
    near(assumption(&s, &in, "scatter_pct")->high, 23, 0, 0);
}
END_TEST

static int same_spread(const sw_spread_in *a, const sw_spread_in *b)
{
    for (int i = 0; sw_field_at(SW_STRUCT_SPREAD_IN, i); i++) {
        const sw_field *f = sw_field_at(SW_STRUCT_SPREAD_IN, i);
        if (memcmp((const char *)a + f->offset, (const char *)b + f->offset,
                   f->size))
            return 0;
    }
    return a->assumed == b->assumed && a->seal == b->seal;
}

/* Resolving fills everything, twice changes nothing, the answer stays; with
 * another nut the method follows it; a resolved one that was changed is
 * refused. */
START_TEST(resolved)
{
    sw_torque_in in = nut_of("M12", 10000);
    in.nut_factor = SW_UNSET;
    SET(in.lubrication, "oiled");
    const sw_spread_in open = open_spread();
    sw_spread_in s = open;
    sw_error err;
    check_no_error("resolve", sw_spread_resolve(&s, &in, &err), &err);
    ck_assert(s.assumed && s.seal);
    ck_assert_str_eq(s.method, "wrench-oiled");
    sw_spread_in twice = s;
    check_no_error("twice", sw_spread_resolve(&twice, &in, &err), &err);
    ck_assert(same_spread(&twice, &s));
    near(good_spread("resolved", &in, &s).alpha,
         good_spread("open", &in, &open).alpha, 0, 0);
    SET(in.lubrication, "dry");
    ck_assert_str_eq(good_spread("dry", &in, &s).method, "wrench-dry");
    for (int i = 0; sw_field_at(SW_STRUCT_SPREAD_IN, i); i++) {
        const sw_field *f = sw_field_at(SW_STRUCT_SPREAD_IN, i);
        sw_spread_in changed = s;
        ((char *)&changed)[f->offset] ^= 1;
        const sw_spread_in before = changed;
        const sw_spread_out out = sw_spread(&in, &changed, &err);
        check_refused(f->name, &err, SW_ERR_CONFLICT, "seal");
        check_numbers(f->name, &out, SW_STRUCT_SPREAD_OUT, out.status);
        ck_assert_int_eq(sw_spread_resolve(&changed, &in, &err),
                         SW_ERR_CONFLICT);
        ck_assert(same_spread(&changed, &before));
    }
    /* an error leaves the question as it was */
    s = open;
    s.coverage = 2;
    const sw_spread_in before = s;
    ck_assert_int_eq(sw_spread_resolve(&s, &in, &err), SW_ERR_RANGE);
    ck_assert(same_spread(&s, &before));
    /* so does a sealed nut that was changed */
    s = open;
    check_no_error("nut", sw_torque_resolve(&in, &err), &err);
    near(good_spread("sealed nut", &in, &s).preload_N, 10000, 0, 0);
    in.preload_N = 11000;
    ck_assert_int_eq(sw_spread(&in, &s, &err).status, SW_ERR_CONFLICT);
    check_refused("changed nut", &err, SW_ERR_CONFLICT, "seal");
}
END_TEST

typedef void change(sw_torque_in *in, sw_spread_in *s);

static void both_ways(sw_torque_in *in, sw_spread_in *s)
{
    (void)in;
    s->scatter_pct = 25;
    s->factor_scatter_pct = 20;
}
static void whole_and_tool(sw_torque_in *in, sw_spread_in *s)
{
    (void)in;
    s->scatter_pct = 25;
    s->tool_scatter_pct = 4;
}
static void method_and_whole(sw_torque_in *in, sw_spread_in *s)
{
    (void)in;
    SET(s->method, "by-feel");
    s->scatter_pct = 35;
}
static void method_and_factor(sw_torque_in *in, sw_spread_in *s)
{
    (void)in;
    SET(s->method, "by-feel");
    s->factor_scatter_pct = 35;
}
static void method_and_tool(sw_torque_in *in, sw_spread_in *s)
{
    (void)in;
    SET(s->method, "by-feel");
    s->tool_scatter_pct = 4;
}
static void tool_alone(sw_torque_in *in, sw_spread_in *s)
{
    (void)in;
    s->tool_scatter_pct = 4;
}
static void odd_method(sw_torque_in *in, sw_spread_in *s)
{
    (void)in;
    SET(s->method, "by-fool");
}
static void endless_method(sw_torque_in *in, sw_spread_in *s)
{
    (void)in;
    memset(s->method, 'x', sizeof s->method);
}
static void odd_lubrication(sw_torque_in *in, sw_spread_in *s)
{
    (void)s;
    in->nut_factor = SW_UNSET;
    SET(in->lubrication, "soap");
}
static void no_preload(sw_torque_in *in, sw_spread_in *s)
{
    (void)s;
    in->preload_N = SW_UNSET;
}
static void part_trial(sw_torque_in *in, sw_spread_in *s)
{
    (void)in;
    s->trials = 1000.5;
}
static void part_seed(sw_torque_in *in, sw_spread_in *s)
{
    (void)in;
    s->seed = 0.1;
}
static void part_thread(sw_torque_in *in, sw_spread_in *s)
{
    (void)in;
    s->threads = 2.5;
}
static void odd_vary(sw_torque_in *in, sw_spread_in *s)
{
    (void)in;
    s->vary = 3;
}

START_TEST(refused)
{
    static const struct {
        const char *what;
        change *make;
        int code;
        const char *field;
    } row[] = {
        {"whole and parts", both_ways, SW_ERR_CONFLICT, "scatter_pct"},
        {"whole and tool", whole_and_tool, SW_ERR_CONFLICT, "scatter_pct"},
        {"method and whole", method_and_whole, SW_ERR_CONFLICT, "method"},
        {"method and factor", method_and_factor, SW_ERR_CONFLICT, "method"},
        {"method and tool", method_and_tool, SW_ERR_CONFLICT, "method"},
        {"tool alone", tool_alone, SW_ERR_MISSING, "factor_scatter_pct"},
        {"unknown method", odd_method, SW_ERR_UNKNOWN, "method"},
        {"text without end", endless_method, SW_ERR_SYNTAX, "method"},
        {"unknown lubrication", odd_lubrication, SW_ERR_UNKNOWN, "lubrication"},
        {"no preload", no_preload, SW_ERR_MISSING, "preload_N"},
        {"part of a trial", part_trial, SW_ERR_SYNTAX, "trials"},
        {"part of a seed", part_seed, SW_ERR_SYNTAX, "seed"},
        {"part of a thread", part_thread, SW_ERR_SYNTAX, "threads"},
        {"unknown word", odd_vary, SW_ERR_RANGE, "vary"},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_torque_in in = nut_of("M12", 20000);
        sw_spread_in s = open_spread();
        row[i].make(&in, &s);
        sw_error err;
        const sw_spread_out out = sw_spread(&in, &s, &err);
        must(out.status == row[i].code, "%s: status %d", row[i].what,
             out.status);
        check_refused(row[i].what, &err, row[i].code, row[i].field);
        check_numbers(row[i].what, &out, SW_STRUCT_SPREAD_OUT, out.status);
        ck_assert_int_eq(sw_spread(&in, &s, NULL).status, row[i].code);
        const sw_assumption a = sw_spread_assumed(&s, &in, 0, &err);
        ck_assert_int_eq(a.status, row[i].code);
        check_refused(row[i].what, &err, row[i].code, row[i].field);
    }
}
END_TEST

/* Each number: just inside, just outside, NaN. */
START_TEST(ranges)
{
    static const struct {
        const char *field;
        double low, high, step;
    } row[] = {{"scatter_pct", 0, 95, 1e-9},
               {"tool_scatter_pct", 0, 95, 1e-9},
               {"factor_scatter_pct", 0, 95, 1e-9},
               {"published_coverage", 0.5, 0.9999, 1e-9},
               {"coverage", 0.5, 0.9999, 1e-9},
               {"height_scatter_mm", 0, 50, 1e-9},
               {"trials", 100, 1e7, 1},
               {"seed", 0, 9007199254740992, 2},
               {"threads", 1, 64, 1}};
    const sw_torque_in in = nut_of("M12", 20000);
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const sw_field *f = sw_field_named(SW_STRUCT_SPREAD_IN, row[i].field);
        const double value[] = {row[i].low,
                                row[i].high,
                                row[i].low - row[i].step,
                                row[i].high + row[i].step,
                                NAN,
                                INFINITY,
                                -INFINITY};
        for (size_t k = 0; k < sizeof value / sizeof value[0]; k++) {
            sw_spread_in s = open_spread();
            if (strcmp(f->name, "tool_scatter_pct") == 0)
                s.factor_scatter_pct = 20;
            set_field(&s, f, value[k]);
            sw_error err;
            const sw_spread_out out = sw_spread(&in, &s, &err);
            check_numbers(f->name, &out, SW_STRUCT_SPREAD_OUT, out.status);
            if (k < 2) {
                check_no_error(f->name, out.status, &err);
                continue;
            }
            check_refused(f->name, &err,
                          isnan(value[k]) ? SW_ERR_NAN : SW_ERR_RANGE, f->name);
            if (isnan(value[k]))
                continue;
            near_in(f->name, err.low, row[i].low, 0, 0);
            near_in(f->name, err.high, row[i].high, 0, 0);
        }
    }
}
END_TEST

START_TEST(null)
{
    const sw_torque_in in = nut_of("M12", 20000);
    sw_spread_in s = open_spread();
    sw_error err;
    sw_spread_out out = sw_spread(NULL, &s, &err);
    check_refused("in", &err, SW_ERR_NULL, "in");
    check_numbers("in", &out, SW_STRUCT_SPREAD_OUT, out.status);
    out = sw_spread(&in, NULL, &err);
    check_refused("spread", &err, SW_ERR_NULL, "spread");
    check_numbers("spread", &out, SW_STRUCT_SPREAD_OUT, out.status);
    ck_assert_int_eq(sw_spread(NULL, NULL, NULL).status, SW_ERR_NULL);
    ck_assert_int_eq(sw_spread_resolve(NULL, &in, &err), SW_ERR_NULL);
    check_refused("resolve", &err, SW_ERR_NULL, "spread");
    ck_assert_int_eq(sw_spread_resolve(&s, NULL, &err), SW_ERR_NULL);
    check_refused("resolve", &err, SW_ERR_NULL, "in");
    ck_assert_int_eq(sw_spread_assumed(NULL, &in, 0, &err).status, SW_ERR_NULL);
    check_refused("assumed", &err, SW_ERR_NULL, "spread");
    ck_assert_int_eq(sw_spread_assumed(&s, NULL, 0, &err).status, SW_ERR_NULL);
    check_refused("assumed", &err, SW_ERR_NULL, "in");
    ck_assert_int_eq(sw_spread_assumed(&s, &in, -1, &err).status, SW_ERR_RANGE);
    sw_spread_defaults(NULL);
    /* the record is cleared by a good call */
    err.code = 5;
    SET(err.message, "old");
    check_no_error("cleared", sw_spread(&in, &s, &err).status, &err);
}
END_TEST

int main(void)
{
    return RUN_TESTS("spread", published_pairs, vdi_example, normal_quantiles,
                     own_coverage, log_normal, no_scatter, widest, apart,
                     prevailing_torque, prevailing_whole, prevailing_takes_most,
                     header_example, high_end, warned, method_by_lubrication,
                     assumed, resolved, refused, ranges, null);
}
