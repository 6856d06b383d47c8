/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Window: the torque between two limits, fed back through the spread, drawn by
 * chance, and refused where it must be.
 */
#include "../random.h"
#include "spread_question.h"

static sw_window_out good(const char *what, const sw_torque_in *in,
                          const sw_spread_in *s, double hold, double flat)
{
    sw_error err;
    const sw_window_out out = sw_window(in, s, hold, flat, &err);
    check_no_error(what, out.status, &err);
    check_numbers(what, &out, SW_STRUCT_WINDOW_OUT, out.status);
    must(out.sentence[0] && strlen(out.sentence) < sizeof out.sentence - 1,
         "%s: %s", what, out.sentence);
    near_in(what, out.hold_N, hold, 0, 0);
    near_in(what, out.flat_N, flat, 0, 0);
    near_in(what, out.ratio, out.flat_preload_N / hold, 0, 0);
    must(out.flat_preload_N <= flat &&
             (out.flat_preload_N == flat) ==
                 !(out.warnings & SW_WARN_STUD_ENDS_WINDOW),
         "%s: %g of %g", what, out.flat_preload_N, flat);
    return out;
}

/* Threads for which the assumed grade has no yield: nothing but the limits
 * bounds their window. */
static const char *boundless(randoms *r)
{
    static const char *const thread[] = {"M42", "M48", "M56", "M64"};
    return thread[random_below(r, 4)];
}

/* The spread of a torque that the window gave. */
static sw_spread_out at_torque(const sw_torque_in *in, const sw_spread_in *s,
                               double torque_Nm)
{
    sw_torque_in q = *in;
    q.preload_N = SW_UNSET;
    q.torque_Nm = torque_Nm;
    return good_spread("fed back", &q, s);
}

static void check_none(const sw_window_out *out)
{
    ck_assert_int_eq(out->verdict, SW_VERDICT_NONE);
    ck_assert(
        out->torque_Nm == SW_UNSET && out->torque_low_Nm == SW_UNSET &&
        out->torque_high_Nm == SW_UNSET && out->preload_N == SW_UNSET &&
        out->preload_low_N == SW_UNSET && out->preload_high_N == SW_UNSET &&
        out->proof_use_high == SW_UNSET && out->yield_use_high == SW_UNSET);
}

/* By hand: 8000 to 18000 N are 2.25 apart, ±25 % spreads by 5/3: 12000 N, so
 * 0.2 x 0.012 x 12000 = 28.8 N.m; from 8000 sqrt(5/3) to 18000/sqrt(5/3). The
 * ± that just fits: 1.25/3.25 = 38.46 %. */
START_TEST(by_hand)
{
    const sw_torque_in in = nut_of("M12", SW_UNSET);
    const sw_spread_in s = whole_spread(25);
    const sw_window_out out = good("by hand", &in, &s, 8000, 18000);
    ck_assert_int_eq(out.verdict, SW_VERDICT_FITS);
    near(out.torque_Nm, 28.8, 0, 1e-14);
    near(out.preload_N, 12000, 0, 1e-14);
    near(out.torque_low_Nm, 0.0024 * 8000 * sqrt(5.0 / 3), 0, 1e-13);
    near(out.torque_high_Nm, 0.0024 * 18000 / sqrt(5.0 / 3), 0, 1e-13);
    near(out.preload_low_N, 12000 / sqrt(5.0 / 3), 0, 1e-13);
    near(out.preload_high_N, 12000 * sqrt(5.0 / 3), 0, 1e-13);
    near(out.hold_preload_N, 8000, 0, 0);
    near(out.flat_preload_N, 18000, 0, 0);
    near(out.ratio, 2.25, 0, 0);
    near(out.alpha, 5.0 / 3, 0, 1e-14);
    near(out.fitting_pct, 100 * 1.25 / 3.25, 0, 1e-14);
    near(out.coverage, 0.95, 0, 0);
    ck_assert_str_eq(out.sentence,
                     "28.8 N.m keeps both limits (any torque from 24.8 to 33.4 "
                     "N.m does): the limits are 2.25 apart, one torque spreads "
                     "the force by 1.67.");
    /* 8000 to 12000 N: 1.5 apart */
    const sw_window_out none = good("refused", &in, &s, 8000, 12000);
    check_none(&none);
    near(none.fitting_pct, 20, 0, 1e-14);
    ck_assert_str_eq(none.sentence,
                     "No torque works: the limits are 1.5 apart, one torque "
                     "spreads the force by 1.67; a way of tightening with +-20 "
                     "% or better would fit, or limits farther apart.");
}
END_TEST

/* A torque exists where ratio >= alpha, the border itself included. Limits
 * that are alpha apart to the last bit: hold is a power of two. */
START_TEST(border)
{
    randoms r = {41};
    for (int i = 0; i < 500; i++) {
        const sw_torque_in in = nut_of(boundless(&r), SW_UNSET);
        sw_spread_in s = random_below(&r, 2)
                             ? whole_spread(random_between(&r, 1, 80))
                             : parts_spread(random_between(&r, 1, 40),
                                            random_between(&r, 1, 60));
        s.coverage = random_between(&r, 0.5, 0.99);
        const double hold = ldexp(1, random_below(&r, 10));
        const double alpha = good("any", &in, &s, hold, 1e7).alpha;
        const double flat = hold * alpha;
        const sw_window_out on = good("on", &in, &s, hold, flat);
        ck_assert_int_eq(on.verdict, SW_VERDICT_FITS);
        near(on.ratio, on.alpha, 0, 0);
        near(on.torque_low_Nm, on.torque_Nm, 0, 1e-13);
        near(on.torque_high_Nm, on.torque_Nm, 0, 1e-13);
        const sw_window_out under =
            good("under", &in, &s, hold, nextafter(flat, 0));
        check_none(&under);
        /* two numbers that a reader can tell apart would need 16 digits here;
         * at a millionth below they are told apart */
        const sw_window_out less =
            good("less", &in, &s, hold, flat * (1 - 1e-6));
        char ratio[40], spread[40];
        ck_assert_int_eq(sscanf(less.sentence,
                                "No torque works: the limits are %39s apart, "
                                "one torque spreads the force by %39[0-9.,];",
                                ratio, spread),
                         2);
        must(strcmp(ratio, spread) != 0, "%s", less.sentence);
    }
}
END_TEST

static sw_torque_in random_nut(randoms *r)
{
    sw_torque_in in = nut_of(boundless(r), SW_UNSET);
    if (random_below(r, 2)) {
        in.nut_factor = random_between(r, 0.1, 0.4);
    } else {
        in.nut_factor = SW_UNSET;
        in.mu_thread = random_between(r, 0.05, 0.3);
        in.mu_seat = random_between(r, 0.05, 0.3);
    }
    return in;
}

static sw_spread_in random_spread(randoms *r)
{
    sw_spread_in s =
        random_below(r, 2)
            ? whole_spread(random_between(r, 0, 60))
            : parts_spread(random_between(r, 0, 20), random_between(r, 1, 50));
    s.published_coverage = random_between(r, 0.6, 0.999);
    s.coverage = random_between(r, 0.6, 0.999);
    return s;
}

/* T = T0 + K d sqrt(hold flat). The least torque's low end meets hold, the
 * largest one's high end meets flat, and the one aimed at keeps both; each
 * through the spread's own answer. With a prevailing torque too. */
START_TEST(fed_back)
{
    randoms r = {42};
    int fits = 0, none = 0, lost = 0;
    for (int i = 0; i < 3000; i++) {
        sw_torque_in in = random_nut(&r);
        const sw_spread_in s = random_spread(&r);
        const double hold = random_log(&r, 10, 1e5);
        const double flat = hold * random_log(&r, 1.01, 10);
        sw_torque_in q = in;
        q.preload_N = sqrt(hold * flat);
        const double plain = sw_torque(&q, NULL).torque_Nm;
        double T0 = 0;
        if (random_below(&r, 2))
            T0 = in.prevailing_torque_Nm =
                plain * random_between(&r, 0.01, 0.15);
        const sw_window_out out = good("random", &in, &s, hold, flat);
        if (out.verdict == SW_VERDICT_NONE) {
            check_none(&out);
            must(out.ratio < out.alpha, "%g", out.ratio);
            none++;
            continue;
        }
        fits++;
        must(out.ratio >= out.alpha, "%g", out.ratio);
        near(out.torque_Nm, plain + T0, 0, 1e-13);
        near(out.preload_N, q.preload_N, 0, 1e-13);
        must(out.torque_low_Nm <= out.torque_Nm * (1 + 1e-13) &&
                 out.torque_Nm <= out.torque_high_Nm * (1 + 1e-13),
             "%g %g %g", out.torque_low_Nm, out.torque_Nm, out.torque_high_Nm);
        const sw_spread_out aim = at_torque(&in, &s, out.torque_Nm);
        near(aim.preload_low_N, out.preload_low_N, 0, 1e-12);
        near(aim.preload_high_N, out.preload_high_N, 0, 1e-12);
        near(aim.alpha, out.alpha, 0, 1e-12);
        must(aim.preload_low_N >= hold * (1 - 1e-12) &&
                 aim.preload_high_N <= flat * (1 + 1e-12),
             "%g .. %g", aim.preload_low_N, aim.preload_high_N);
        const sw_spread_out low = at_torque(&in, &s, out.torque_low_Nm);
        near(low.preload_low_N, hold, 0, 2e-12);
        must(low.preload_high_N <= flat * (1 + 1e-12), "low torque");
        const sw_spread_out high = at_torque(&in, &s, out.torque_high_Nm);
        near(high.preload_high_N, flat, 0, 2e-12);
        must(high.preload_low_N >= hold * (1 - 1e-12), "high torque");
        lost += T0 > 0 && out.alpha > 1.05;
    }
    ck_assert_int_ge(fits, 800);
    ck_assert_int_ge(none, 400);
    ck_assert_int_ge(lost, 200);
}
END_TEST

/* The stud's yield ends a window: the high end of the largest torque, fed back,
 * just reaches it, and a stud that yields below the lower limit leaves none. By
 * hand: 53.9 kN is the yield of M12 8.8 without twist. */
START_TEST(stud_ends)
{
    const sw_torque_in in = nut_of("M12", SW_UNSET);
    const sw_spread_in s = whole_spread(25);
    const sw_window_out out = good("ended", &in, &s, 10000, 500000);
    ck_assert_int_eq(out.verdict, SW_VERDICT_FITS);
    ck_assert(out.warnings & SW_WARN_STUD_ENDS_WINDOW);
    must(out.flat_preload_N < 53900 && out.yield_use_high < 1, "%g",
         out.flat_preload_N);
    const sw_spread_out high = at_torque(&in, &s, out.torque_high_Nm);
    near(high.yield_use_high, 1, 0, 1e-12);
    near(high.preload_high_N, out.flat_preload_N, 0, 1e-12);
    near(out.preload_N, sqrt(10000 * out.flat_preload_N), 0, 1e-12);
    must(strstr(out.sentence, "the upper limit is the stud's yield") != NULL,
         "%s", out.sentence);
    const sw_window_out none = good("none", &in, &s, 60000, 500000);
    check_none(&none);
    must(none.ratio < 1 && strstr(none.sentence, "below the lower one"), "%s",
         none.sentence);
    const sw_window_out free = good("not reached", &in, &s, 10000, 20000);
    ck_assert(!(free.warnings & SW_WARN_STUD_ENDS_WINDOW));
}
END_TEST

/* So much lost that the spread of the least torque would not be known: the
 * least told is the least that is, twice 5 N.m over a tool's low end of
 * sqrt(0.9/1.1). And with the middle one unknown there is no answer. */
START_TEST(least_known)
{
    sw_torque_in in = nut_of("M12", SW_UNSET);
    in.prevailing_torque_Nm = 5;
    const sw_spread_in s = parts_spread(10, 5);
    const sw_window_out out = good("lost", &in, &s, 600, 20000);
    ck_assert_int_eq(out.verdict, SW_VERDICT_FITS);
    near(out.torque_low_Nm, 10 * sqrt(1.1 / 0.9), 0, 1e-13);
    in.torque_Nm = out.torque_low_Nm * (1 + 1e-12);
    must(good_spread("least", &in, &s).preload_low_N > 600, "holds");
    in.torque_Nm = out.torque_low_Nm * (1 - 1e-12);
    sw_error err;
    ck_assert_int_eq(sw_spread(&in, &s, &err).status, SW_ERR_NONE);
    const sw_window_out none = sw_window(&in, &s, 1, 20000, &err);
    check_refused("middle", &err, SW_ERR_NONE, "prevailing_torque_Nm");
    check_numbers("middle", &none, SW_STRUCT_WINDOW_OUT, none.status);
}
END_TEST

/* The ± told to fit does, as a published one, at any pair of coverages; a
 * little more does not. */
START_TEST(fitting)
{
    randoms r = {43};
    for (int i = 0; i < 1000; i++) {
        const sw_torque_in in = random_nut(&r);
        sw_spread_in s = random_spread(&r);
        const double hold = random_log(&r, 10, 1e5);
        const double flat = hold * random_log(&r, 1.01, 10);
        const double pct = good("any", &in, &s, hold, flat).fitting_pct;
        must(pct > 0 && pct < 100, "%g", pct);
        if (pct > 94.9)
            continue; /* no ± beyond 95 % can be given */
        sw_spread_in fed = whole_spread(pct * (1 - 1e-9));
        fed.published_coverage = s.published_coverage;
        fed.coverage = s.coverage;
        ck_assert_int_eq(good("fits", &in, &fed, hold, flat).verdict,
                         SW_VERDICT_FITS);
        fed.scatter_pct = pct * (1 + 1e-9);
        ck_assert_int_eq(good("fits not", &in, &fed, hold, flat).verdict,
                         SW_VERDICT_NONE);
    }
    /* and the one in the sentence, which is cut to a tenth */
    const sw_torque_in in = nut_of("M12", SW_UNSET);
    for (int i = 0; i < 200; i++) {
        sw_spread_in s = whole_spread(80);
        s.published_coverage = random_between(&r, 0.6, 0.999);
        const double flat = 1000 * random_between(&r, 1.2, 3);
        const sw_window_out out = good("wide", &in, &s, 1000, flat);
        if (out.verdict == SW_VERDICT_FITS)
            continue;
        char told[20];
        const char *at = strstr(out.sentence, "+-");
        must(at && sscanf(at, "+-%19s %%", told) == 1, "%s", out.sentence);
        const sw_quantity_out pct = sw_number(told, "pct", NULL);
        ck_assert_int_eq(pct.status, SW_OK);
        s.scatter_pct = pct.value;
        ck_assert_int_eq(good("told", &in, &s, 1000, flat).verdict,
                         SW_VERDICT_FITS);
        near(pct.value, out.fitting_pct, 0.1 + 1e-9, 0);
    }
}
END_TEST

/* Scaling: both limits times c, torque times c. Limits without scatter: any
 * torque between. */
START_TEST(scaling)
{
    randoms r = {44};
    for (int i = 0; i < 300; i++) {
        const sw_torque_in in = random_nut(&r);
        const sw_spread_in s = whole_spread(random_between(&r, 0, 20));
        const double c = random_log(&r, 0.1, 10);
        const sw_window_out one = good("one", &in, &s, 100, 200);
        const sw_window_out other = good("c", &in, &s, 100 * c, 200 * c);
        near(other.torque_Nm, c * one.torque_Nm, 0, 1e-13);
        near(other.torque_low_Nm, c * one.torque_low_Nm, 0, 1e-12);
        near(other.torque_high_Nm, c * one.torque_high_Nm, 0, 1e-12);
        near(other.alpha, one.alpha, 0, 0);
        near(other.fitting_pct, one.fitting_pct, 0, 1e-12);
    }
    const sw_torque_in in = nut_of("M12", SW_UNSET);
    const sw_spread_in s = whole_spread(0);
    const sw_window_out out = good("sharp", &in, &s, 100, 200);
    near(out.torque_low_Nm, 0.24, 0, 1e-13);
    near(out.torque_high_Nm, 0.48, 0, 1e-13);
}
END_TEST

static double normal(randoms *r) /* Box and Muller */
{
    const double u = 1 - random_between(r, 0, 1);
    return sqrt(-2 * log(u)) * cos(6.283185307179586 * random_between(r, 0, 1));
}

/* Independent: draws of torque and nut factor. Of those at least `coverage`
 * keep both limits, at every torque told, but for three standard errors of
 * chance. With a prevailing torque of a tenth the first order leaves the low
 * end wrong by less than that. Seeds as they stand, none chosen. */
START_TEST(drawn)
{
    enum { DRAWS = 40000 };
    randoms r = {45};
    int fits = 0;
    for (int i = 0; fits < 12; i++) {
        sw_torque_in in = nut_of("M12", SW_UNSET);
        sw_spread_in s =
            parts_spread(random_between(&r, 1, 8), random_between(&r, 5, 35));
        s.coverage = random_between(&r, 0.8, 0.99);
        in.prevailing_torque_Nm = i % 2 ? 2.4 : 0;
        const sw_window_out out =
            good("drawn", &in, &s, 7000, 7000 * random_between(&r, 1.5, 3));
        if (out.verdict == SW_VERDICT_NONE)
            continue;
        fits++;
        const double z = normal_half_width(0.95);
        const double sT = atanh(s.tool_scatter_pct / 100) / z;
        const double sK = atanh(s.factor_scatter_pct / 100) / z;
        const double torque[] = {out.torque_low_Nm, out.torque_Nm,
                                 out.torque_high_Nm};
        for (int k = 0; k < 3; k++) {
            int inside = 0;
            for (int n = 0; n < DRAWS; n++) {
                const double T = torque[k] * exp(sT * normal(&r));
                const double K = 0.2 * exp(sK * normal(&r));
                const double F = (T - in.prevailing_torque_Nm) / (K * 0.012);
                inside += F >= out.hold_N && F <= out.flat_N;
            }
            const double c = s.coverage;
            must(inside >= DRAWS * c - 3 * sqrt(DRAWS * c * (1 - c)),
                 "%d of %d inside at %g N.m, wanted %g", inside, (int)DRAWS,
                 torque[k], c * DRAWS);
        }
    }
}
END_TEST

/* What the spread warns of; of a torque that is not, nothing about strength. */
START_TEST(warned)
{
    sw_torque_in in = nut_of("M12", SW_UNSET);
    sw_spread_in s = whole_spread(25);
    /* proof load of 8.8: 580 MPa on 84.27 mm2 = 48.9 kN, yield 53.9 kN */
    sw_window_out out = good("strong", &in, &s, 5000, 20000);
    ck_assert_uint_eq(out.warnings, 0);
    out = good("over proof", &in, &s, 20000, 60000);
    ck_assert(out.warnings & SW_WARN_HIGH_OVER_PROOF);
    near(out.proof_use_high,
         out.preload_high_N / (580 * sw_thread("M12", NULL).stress_area_mm2), 0,
         1e-12);
    SET(in.thread, "M14"); /* its nut is from memory */
    ck_assert(good("M14", &in, &s, 80000, 90000).warnings &
              SW_WARN_TABLE_FROM_MEMORY);
    SET(in.thread, "M12");
    s = open_spread();
    SET(s.method, "impact");
    ck_assert(good("impact", &in, &s, 5000, 20000).warnings &
              SW_WARN_TABLE_FROM_MEMORY);
}
END_TEST

/* Preload, torque and use of the question do not matter, nor does whether it
 * was resolved. */
START_TEST(not_used)
{
    sw_torque_in in = nut_of("M12", SW_UNSET);
    in.nut_factor = SW_UNSET;
    SET(in.lubrication, "oiled");
    sw_spread_in s = open_spread();
    const sw_window_out want = good("open", &in, &s, 8000, 18000);
    ck_assert(want.verdict == SW_VERDICT_FITS && want.alpha > 1.6);
    in.preload_N = 1;
    sw_error err;
    sw_torque_in full = in;
    check_no_error("torque", sw_torque_resolve(&full, &err), &err);
    check_no_error("spread", sw_spread_resolve(&s, &in, &err), &err);
    const sw_torque_in *const nut[] = {&in, &full};
    for (int i = 0; i < 2; i++) {
        const sw_window_out out = good("same", nut[i], &s, 8000, 18000);
        near(out.torque_Nm, want.torque_Nm, 0, 0);
        near(out.torque_low_Nm, want.torque_low_Nm, 0, 0);
        ck_assert_str_eq(out.sentence, want.sentence);
    }
    in.torque_Nm = 5; /* two of them: still not used */
    in.use = 0.5;
    near(good("three", &in, &s, 8000, 18000).torque_Nm, want.torque_Nm, 0, 0);
    full.nut_factor = 0.19;
    const sw_window_out out = sw_window(&full, &s, 8000, 18000, &err);
    check_refused("changed", &err, SW_ERR_CONFLICT, "seal");
    check_numbers("changed", &out, SW_STRUCT_WINDOW_OUT, out.status);
    s.coverage = 0.9;
    ck_assert_int_eq(sw_window(&in, &s, 8000, 18000, &err).status,
                     SW_ERR_CONFLICT);
}
END_TEST

START_TEST(refused)
{
    static const struct {
        const char *what;
        double hold, flat;
        int code;
        const char *field;
    } row[] = {
        {"hold 0", 0, 100, SW_ERR_RANGE, "hold_N"},
        {"hold below 0", -5, 100, SW_ERR_RANGE, "hold_N"},
        {"hold too small", 0.99e-3, 100, SW_ERR_RANGE, "hold_N"},
        {"hold too large", 1.01e8, 2e8, SW_ERR_RANGE, "hold_N"},
        {"hold NaN", NAN, 100, SW_ERR_NAN, "hold_N"},
        {"hold open", SW_UNSET, 100, SW_ERR_RANGE, "hold_N"},
        {"hold infinite", INFINITY, 100, SW_ERR_RANGE, "hold_N"},
        {"flat 0", 100, 0, SW_ERR_RANGE, "flat_N"},
        {"flat too large", 100, 1.01e8, SW_ERR_RANGE, "flat_N"},
        {"flat NaN", 100, NAN, SW_ERR_NAN, "flat_N"},
        {"flat open", 100, SW_UNSET, SW_ERR_RANGE, "flat_N"},
        {"flat infinite", 100, INFINITY, SW_ERR_RANGE, "flat_N"},
        {"the same", 100, 100, SW_ERR_CONFLICT, "flat_N"},
        {"exchanged", 200, 100, SW_ERR_CONFLICT, "flat_N"},
    };
    const sw_torque_in in = nut_of("M12", SW_UNSET);
    sw_spread_in s = open_spread();
    sw_error err;
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const sw_window_out out =
            sw_window(&in, &s, row[i].hold, row[i].flat, &err);
        check_refused(row[i].what, &err, row[i].code, row[i].field);
        check_numbers(row[i].what, &out, SW_STRUCT_WINDOW_OUT, out.status);
        ck_assert_int_eq(
            sw_window(&in, &s, row[i].hold, row[i].flat, NULL).status,
            row[i].code);
    }
    good("least", &in, &s, 1e-3, 1e8); /* the ends of the range */
    sw_window_out out = sw_window(NULL, &s, 1, 2, &err);
    check_refused("in", &err, SW_ERR_NULL, "in");
    check_numbers("in", &out, SW_STRUCT_WINDOW_OUT, out.status);
    out = sw_window(&in, NULL, 1, 2, &err);
    check_refused("spread", &err, SW_ERR_NULL, "spread");
    check_numbers("spread", &out, SW_STRUCT_WINDOW_OUT, out.status);
    /* faults of both questions come through */
    sw_torque_in bad = in;
    SET(bad.thread, "M13");
    ck_assert_int_eq(sw_window(&bad, &s, 1, 2, &err).status, SW_ERR_UNKNOWN);
    check_refused("thread", &err, SW_ERR_UNKNOWN, "thread");
    bad = in;
    bad.nut_factor = NAN;
    ck_assert_int_eq(sw_window(&bad, &s, 1, 2, &err).status, SW_ERR_NAN);
    check_refused("factor", &err, SW_ERR_NAN, "nut_factor");
    s.scatter_pct = 96;
    ck_assert_int_eq(sw_window(&in, &s, 1, 2, &err).status, SW_ERR_RANGE);
    check_refused("scatter", &err, SW_ERR_RANGE, "scatter_pct");
}
END_TEST

int main(void)
{
    return RUN_TESTS("window", by_hand, border, stud_ends, fed_back,
                     least_known, fitting, scaling, drawn, warned, not_used,
                     refused);
}
