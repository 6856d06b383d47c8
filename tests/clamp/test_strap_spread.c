/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap spread: trials against the closed form where there is one, against the
 * strap itself where the preload alone scatters, and against the strap's band.
 */
#include "../short_memory.h"
#include "../gsl_handler.h"
#include "strap_spread_question.h"

static sw_strap_spread_out good(const char *what, const sw_strap_in *in,
                                const sw_spread_in *s)
{
    sw_error err;
    const sw_strap_spread_out out = sw_strap_spread(in, s, NULL, NULL, &err);
    check_no_error(what, out.status, &err);
    check_numbers(what, &out, SW_STRUCT_STRAP_SPREAD_OUT, out.status);
    ck_assert_int_eq(out.band, SW_BAND_SCATTER);
    must(out.preload_low_N <= out.preload_N &&
             out.preload_N <= out.preload_high_N &&
             out.toe_force_low_N <= out.toe_force_N &&
             out.toe_force_N <= out.toe_force_high_N &&
             out.side_pull_low_N <= out.side_pull_N &&
             out.side_pull_N <= out.side_pull_high_N,
         "%s: order", what);
    return out;
}

/* The bits of every field: what padding holds is nobody's. */
static int same(const sw_strap_spread_out *a, const sw_strap_spread_out *b)
{
    for (int i = 0; sw_field_at(SW_STRUCT_STRAP_SPREAD_OUT, i); i++) {
        const sw_field *f = sw_field_at(SW_STRUCT_STRAP_SPREAD_OUT, i);
        if (memcmp((const char *)a + f->offset, (const char *)b + f->offset,
                   f->size))
            return 0;
    }
    return a->status == b->status && a->warnings == b->warnings;
}

/* Published quantile of the normal distribution at 0.975 (any table). */
#define Z95 1.95996398454005

/* Error by chance of the quantile p of n log-normal values, of its logarithm:
 * sqrt(p (1 - p)/n) over the normal density there, times sigma. */
static double quantile_error(double z, double p, double n, double sigma)
{
    const double density = exp(-z * z / 2) / sqrt(2 * 3.14159265358979323846);
    return sqrt(p * (1 - p) / n) / density * sigma;
}

/* Closed form: level rigid strap, so toe force = F b/(a + b), and F by
 * sw_spread(). Three quantiles of 50 chains; each against its error by chance.
 * Of 150 such numbers 0.4 exceed 3 on average, so a third of all seeds would
 * fail: the chains are drawn from seed 61 and the trials from seeds 1 to 50,
 * the first that were tried, and none of the 150 does. The numbers must also be
 * spread as chance spreads them: a mean square of 1 within 0.25 (three times
 * sqrt(2/100); the three of a chain hang together a little), not far less. */
START_TEST(closed_form)
{
    randoms r = {61};
    double square = 0, most = 0;
    int beyond = 0;
    for (int i = 0; i < 50; i++) {
        sw_strap_in in = base_strap(SW_UNSET, 0);
        SET(in.thread, sw_thread_name(random_below(&r, sw_thread_count())));
        const sw_thread_out t = sw_thread(in.thread, NULL);
        in.strap = SW_STRAP_RIGID;
        in.part_height_mm = 60;
        in.stud_length_mm = in.rim_radius_mm = SW_UNSET;
        in.stud_to_toe_mm = random_between(&r, 20, 100);
        in.stud_to_heel_mm = random_between(&r, 20, 100);
        in.nut_factor = random_between(&r, 0.1, 0.35);
        in.torque_Nm = in.nut_factor * t.nominal_mm / 1000 * t.stress_area_mm2 *
                       random_between(&r, 20, 300);
        sw_spread_in s = spread_of(SW_UNSET, SW_VARY_PRELOAD);
        if (random_below(&r, 2)) {
            s.scatter_pct = random_between(&r, 2, 60);
        } else {
            s.tool_scatter_pct = random_between(&r, 1, 20);
            s.factor_scatter_pct = random_between(&r, 2, 50);
        }
        s.seed = i + 1;
        s.threads = 2;
        sw_torque_in q;
        sw_torque_defaults(&q);
        SET(q.thread, in.thread);
        q.torque_Nm = in.torque_Nm;
        q.nut_factor = in.nut_factor;
        const sw_spread_out closed = sw_spread(&q, &s, NULL);
        ck_assert_int_eq(closed.status, SW_OK);
        const sw_strap_spread_out out = good(in.thread, &in, &s);
        const double lever =
            in.stud_to_heel_mm / (in.stud_to_toe_mm + in.stud_to_heel_mm);
        const double off[] = {
            log(out.toe_force_low_N / (lever * closed.preload_low_N)) /
                quantile_error(Z95, 0.025, out.trials, closed.sigma_ln),
            log(out.toe_force_N / (lever * closed.preload_N)) /
                quantile_error(0, 0.5, out.trials, closed.sigma_ln),
            log(out.toe_force_high_N / (lever * closed.preload_high_N)) /
                quantile_error(Z95, 0.975, out.trials, closed.sigma_ln)};
        for (int k = 0; k < 3; k++) {
            square += off[k] * off[k];
            most = fmax(most, fabs(off[k]));
            beyond += fabs(off[k]) > 3;
        }
        near(out.toe_ratio, out.toe_force_high_N / out.toe_force_low_N, 0, 0);
        near(out.trials, 20000, 0, 0);
        near(out.failed, 0, 0, 0);
        near(out.side_pull_low_N, 0, 0, 0); /* rigid and level: no side pull */
        near(out.side_pull_high_N, 0, 0, 0);
        near(out.slides_share, 0, 0, 0);
        near(out.walks_share, 0, 0, 0);
    }
    must(beyond == 0, "%d of 150 beyond three standard errors", beyond);
    must(fabs(square / 150 - 1) < 0.25, "mean square %g", square / 150);
    must(most > 1.5, "largest of 150 is only %g", most);
}
END_TEST

/* Where the tightening alone varies, toe force grows with preload, so its
 * quantiles are the toe forces of the preload's own: to what lies between two
 * neighbours among 20,000. And those of the preload are the closed ones,
 * within four standard errors (one in 16,000 each; seed 62 as it stands). */
START_TEST(preload_alone)
{
    randoms r = {62};
    for (int i = 0; i < 100; i++) {
        sw_strap_out nominal;
        sw_strap_in in = next_strap(&r, &nominal);
        sw_spread_in s = spread_of(random_between(&r, 5, 35), SW_VARY_PRELOAD);
        s.seed = i;
        const sw_strap_spread_out out = good(in.thread, &in, &s);
        if (out.failed > 0)
            continue; /* tips at some preloads: the rest is cut off */
        const double sigma = atanh(s.scatter_pct / 100) / Z95;
        const double F[] = {out.preload_low_N, out.preload_N,
                            out.preload_high_N};
        const double toe[] = {out.toe_force_low_N, out.toe_force_N,
                              out.toe_force_high_N};
        for (int k = 0; k < 3; k++) {
            const double z = (k - 1) * Z95, p = k == 1 ? 0.5 : 0.025;
            near(log(F[k] / in.preload_N), z * sigma,
                 4 * quantile_error(z, p, 20000, sigma), 0);
            sw_strap_in at = in;
            at.preload_N = F[k];
            const double want = sw_strap(&at, NULL).toe_force_N;
            /* a land that changes its edge there makes toe force jump */
            at.preload_N = F[k] * (1 - 1e-3);
            const double below = sw_strap(&at, NULL).toe_force_N;
            at.preload_N = F[k] * (1 + 1e-3);
            const double above = sw_strap(&at, NULL).toe_force_N;
            if (above - below < 0.01 * want)
                near(toe[k], want, 0, 1e-4);
            else
                must(below <= toe[k] && toe[k] <= above, "%g <= %g <= %g",
                     below, toe[k], above);
        }
    }
}
END_TEST

/* The same question gives the same bits with any number of threads, and
 * another seed others. */
START_TEST(threads_alike)
{
    static const double threads[] = {2, 3, 8, 64};
    for (int vary = 1; vary <= 2; vary++) {
        const sw_strap_in in = base_strap(10000, 3);
        sw_spread_in s = spread_of(25, vary);
        s.trials = 100000;
        const sw_strap_spread_out one = good("one thread", &in, &s);
        for (size_t i = 0; i < sizeof threads / sizeof threads[0]; i++) {
            s.threads = threads[i];
            const sw_strap_spread_out many = good("threads", &in, &s);
            must(same(&one, &many), "%g threads", threads[i]);
        }
        s.seed = 2;
        const sw_strap_spread_out other = good("another seed", &in, &s);
        ck_assert(!same(&one, &other));
        near(other.toe_force_N, one.toe_force_N, 0, 0.01);
    }
}
END_TEST

/* Nothing scatters but what the strap's band holds: so no quantile leaves the
 * band. 0.9999 of 4000 trials is all of them. Allowed: 0.3 % of toe force, as
 * in tests/reference, for bends that the band's corners miss (strap_band.c).
 * A strap that walks has one side pull by definition, no band. */
START_TEST(inside_band)
{
    randoms r = {63};
    for (int i = 0; i < 200; i++) {
        sw_strap_out strap;
        const sw_strap_in in = next_strap(&r, &strap);
        sw_spread_in s = spread_of(0, SW_VARY_ALL);
        s.height_scatter_mm = 0;
        s.coverage = 0.9999;
        s.trials = 4000;
        s.seed = i;
        const sw_strap_spread_out out = good(in.thread, &in, &s);
        const double F = in.preload_N;
        near(out.preload_low_N, F, 0, 1e-13);
        near(out.preload_high_N, F, 0, 1e-13);
        const double room = 0.003 * strap.toe_force_N;
        must(out.toe_force_low_N >= strap.toe_force_low_N - room &&
                 out.toe_force_high_N <= strap.toe_force_high_N + room,
             "strap %d (warnings %#llx): toe force %.9g .. %.9g leaves the "
             "band %.9g .. %.9g",
             i, (unsigned long long)strap.warnings, out.toe_force_low_N,
             out.toe_force_high_N, strap.toe_force_low_N,
             strap.toe_force_high_N);
        must(strap.unheld_N != 0 ||
                 (out.side_pull_low_N >= strap.side_pull_low_N - 1e-6 * F &&
                  out.side_pull_high_N <= strap.side_pull_high_N + 1e-6 * F),
             "strap %d (warnings %#llx): side pull %.9g .. %.9g leaves the "
             "band %.9g .. %.9g",
             i, (unsigned long long)strap.warnings, out.side_pull_low_N,
             out.side_pull_high_N, strap.side_pull_low_N,
             strap.side_pull_high_N);
    }
}
END_TEST

/* And the draws reach far into the band: of a tilted strap on a flat seat at
 * least half of it. */
START_TEST(fills_band)
{
    const sw_strap_in in = base_strap(10000, 3);
    const sw_strap_out strap = good_strap("nominal", &in);
    sw_spread_in s = spread_of(0, SW_VARY_ALL);
    s.height_scatter_mm = 0;
    const sw_strap_spread_out out = good("all", &in, &s);
    must(out.toe_force_high_N - out.toe_force_low_N >
             0.5 * (strap.toe_force_high_N - strap.toe_force_low_N),
         "toe force");
    must(out.side_pull_high_N - out.side_pull_low_N >
             0.5 * (strap.side_pull_high_N - strap.side_pull_low_N),
         "side pull");
    s.vary = SW_VARY_PRELOAD;
    const sw_strap_spread_out none = good("nothing", &in, &s);
    near(none.toe_force_low_N, strap.toe_force_N, 0, 1e-13);
    near(none.toe_force_high_N, strap.toe_force_N, 0, 1e-13);
    near(none.side_pull_low_N, strap.side_pull_N, 1e-13 * 10000, 1e-12);
    near(none.side_pull_high_N, strap.side_pull_N, 1e-13 * 10000, 1e-12);
    near(none.toe_ratio, 1, 0, 1e-13);
}
END_TEST

/* Heights alone: a rigid strap on a ball nose and a stud that rocks at its
 * foot, nothing uncertain at the seat, the heel rough. Then toe force falls or
 * rises evenly with the tilt, and its quantiles are the toe forces at the
 * tilt's own: tan(tilt) off by z sigma/(a + b), z sigma = the ± given. Within
 * four standard errors of the tilt's quantile, seed 1 as it stands. */
START_TEST(heights)
{
    sw_strap_in in = base_strap(10000, 2);
    in.strap = SW_STRAP_RIGID;
    in.heel = SW_HEEL_BLOCK;
    in.foot = SW_FOOT_ROCKING;
    in.seat_slip = in.thread_play_deg = 0;
    in.mu_heel = in.mu_heel_high = 0;
    in.mu_toe = 1;
    sw_spread_in s = spread_of(0, SW_VARY_ALL);
    s.height_scatter_mm = 1.5;
    const sw_strap_spread_out out = good("heights", &in, &s);
    const double tangent = tan(2 * TO_RAD), off = 1.5 / 90;
    const double chance = 4 * quantile_error(Z95, 0.025, 20000, off / Z95);
    double toe[4], pull[4]; /* at the tilt's ends, a little less and more */
    for (int k = 0; k < 4; k++) {
        const double end = k < 2 ? -off : off, more = k % 2 ? chance : -chance;
        in.tilt_deg = atan(tangent + end + more) / TO_RAD;
        const sw_strap_out at = good_strap("end", &in);
        toe[k] = at.toe_force_N;
        pull[k] = at.side_pull_N;
    }
    must(toe[0] != toe[3] && pull[0] != pull[3], "tilt must matter");
    const int up = toe[3] > toe[0], drawn = pull[3] > pull[0];
    const double *low = up ? toe : toe + 2, *high = up ? toe + 2 : toe;
    must(fmin(low[0], low[1]) <= out.toe_force_low_N &&
             out.toe_force_low_N <= fmax(low[0], low[1]) &&
             fmin(high[0], high[1]) <= out.toe_force_high_N &&
             out.toe_force_high_N <= fmax(high[0], high[1]),
         "toe force %g .. %g, at the ends %g, %g", out.toe_force_low_N,
         out.toe_force_high_N, low[0], high[0]);
    low = drawn ? pull : pull + 2;
    high = drawn ? pull + 2 : pull;
    must(fmin(low[0], low[1]) <= out.side_pull_low_N &&
             out.side_pull_low_N <= fmax(low[0], low[1]) &&
             fmin(high[0], high[1]) <= out.side_pull_high_N &&
             out.side_pull_high_N <= fmax(high[0], high[1]),
         "side pull %g .. %g, at the ends %g, %g", out.side_pull_low_N,
         out.side_pull_high_N, low[0], high[0]);
}
END_TEST

/* One strap tilted by 3 degrees, heel high, on a flat and on a dished seat:
 * both have the same luck. What the dished one gains is in the median and in
 * the side pull toward the stud; the ratio of the ends stays within a tenth.
 * Printed, whatever it is. */
START_TEST(flat_and_dished)
{
    for (int vary = 1; vary <= 2; vary++) {
        sw_strap_in in = base_strap(10000, 3);
        const sw_spread_in s = spread_of(25, vary);
        const sw_strap_spread_out flat = good("flat", &in, &s);
        in.seat = SW_SEAT_SPHERICAL;
        const sw_strap_spread_out dished = good("dished", &in, &s);
        near(dished.preload_low_N, flat.preload_low_N, 0, 0);
        near(dished.preload_N, flat.preload_N, 0, 0);
        near(dished.preload_high_N, flat.preload_high_N, 0, 0);
        printf("%s: toe force flat %.0f N (high/low %.3f), dished %.0f N "
               "(%.3f); side pull at the high end %.0f N, %.0f N\n",
               sw_word(SW_WORDS_VARY, vary), flat.toe_force_N, flat.toe_ratio,
               dished.toe_force_N, dished.toe_ratio, flat.side_pull_high_N,
               dished.side_pull_high_N);
        must(dished.toe_force_N > flat.toe_force_N, "median");
        must(dished.side_pull_high_N < flat.side_pull_high_N, "side pull");
        near(dished.toe_ratio, flat.toe_ratio, 0, 0.1);
    }
}
END_TEST

/* Straps that tip in some trials: those are counted and left out. */
START_TEST(some_fail)
{
    sw_strap_in in = base_strap(10000, 0);
    in.stud_to_toe_mm = 5;
    in.nose = SW_NOSE_ROUND;
    sw_spread_in s = spread_of(25, SW_VARY_ALL);
    s.height_scatter_mm = 5;
    const sw_strap_spread_out out = good("tips", &in, &s);
    ck_assert(out.warnings & SW_WARN_TRIALS_FAILED);
    must(out.failed > 0 && out.trials > 0, "%g", out.failed);
    near(out.failed + out.trials, 20000, 0, 0);
    must(out.toe_force_low_N > 0 && out.toe_force_high_N < 40000, "ends");
    in = base_strap(10000, 0);
    ck_assert_uint_eq(good("none", &in, &s).warnings & SW_WARN_TRIALS_FAILED,
                      0);
}
END_TEST

/* What slides and what walks is counted; warnings are those of the nominal
 * strap and of the method. */
START_TEST(shares)
{
    sw_strap_in in = base_strap(10000, 5);
    in.mu_toe = in.mu_heel = in.mu_heel_high = 0.02;
    sw_spread_in s = spread_of(25, SW_VARY_PRELOAD);
    sw_strap_spread_out out = good("walks", &in, &s);
    near(out.walks_share, 1, 0, 0);
    near(out.slides_share, 1, 0, 0);
    ck_assert(out.warnings & SW_WARN_STRAP_WALKS);
    near(out.side_pull_high_N, 0.02 * out.toe_force_high_N, 0, 1e-9);
    in = base_strap(10000, 3);
    out = good("keeps", &in, &s);
    near(out.walks_share, 0, 0, 0);
    near(out.slides_share, 0, 0, 0);
    ck_assert_uint_eq(out.warnings, good_strap("keeps", &in).warnings);
    s.scatter_pct = SW_UNSET;
    SET(s.method, "impact");
    ck_assert(good("impact", &in, &s).warnings & SW_WARN_TABLE_FROM_MEMORY);
}
END_TEST

/* A prevailing torque leaves some trials without any force: toe force 0, not
 * left out, and no ratio. */
START_TEST(turned_without_pressing)
{
    sw_strap_in in = base_strap(SW_UNSET, 0);
    in.strap = SW_STRAP_RIGID;
    in.torque_Nm = 20;
    in.nut_factor = 0.2;
    in.prevailing_torque_Nm = 18;
    sw_spread_in s = spread_of(SW_UNSET, SW_VARY_PRELOAD);
    s.tool_scatter_pct = 15;
    s.factor_scatter_pct = 10;
    const sw_strap_spread_out out = good("little left", &in, &s);
    near(out.toe_force_low_N, 0, 0, 0);
    near(out.preload_low_N, 0, 0, 0);
    must(out.toe_ratio == SW_UNSET, "%g", out.toe_ratio);
    near(out.failed, 0, 0, 0);
    must(out.toe_force_N > 0, "%g", out.toe_force_N);
}
END_TEST

START_TEST(refused)
{
    for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++) {
        sw_strap_in in = base_strap(10000, 3);
        sw_spread_in s = spread_of(25, SW_VARY_ALL);
        bad[i].make(&in, &s);
        sw_error err;
        const sw_strap_spread_out out =
            sw_strap_spread(&in, &s, NULL, NULL, &err);
        check_refused(bad[i].what, &err, bad[i].code, bad[i].field);
        check_numbers(bad[i].what, &out, SW_STRUCT_STRAP_SPREAD_OUT,
                      out.status);
        ck_assert_int_eq(sw_strap_spread(&in, &s, NULL, NULL, NULL).status,
                         bad[i].code);
    }
    const sw_strap_in in = base_strap(10000, 3);
    const sw_spread_in s = spread_of(25, SW_VARY_ALL);
    sw_error err;
    sw_strap_spread_out out = sw_strap_spread(NULL, &s, NULL, NULL, &err);
    check_refused("in", &err, SW_ERR_NULL, "in");
    check_numbers("in", &out, SW_STRUCT_STRAP_SPREAD_OUT, out.status);
    out = sw_strap_spread(&in, NULL, NULL, NULL, &err);
    check_refused("spread", &err, SW_ERR_NULL, "spread");
    ck_assert_int_eq(sw_strap_spread_assumed(NULL, &s, 0, &err).status,
                     SW_ERR_NULL);
    ck_assert_int_eq(sw_strap_spread_assumed(&in, NULL, 0, &err).status,
                     SW_ERR_NULL);
    /* a strap that tips as it stands is told as such */
    sw_strap_in tips = base_strap(10000, -5);
    tips.stud_to_toe_mm = 1;
    tips.nose = SW_NOSE_ROUND;
    tips.nose_radius_mm = 50;
    out = sw_strap_spread(&tips, &s, NULL, NULL, &err);
    check_refused("tips", &err, SW_ERR_NONE, "stud_to_toe_mm");
    check_numbers("tips", &out, SW_STRUCT_STRAP_SPREAD_OUT, out.status);
}
END_TEST

/* What is assumed: the same as for the nut alone, and where the strap's own
 * words make the friction known, the method of that. */
START_TEST(assumed)
{
    sw_strap_in in = base_strap(10000, 3);
    SET(in.lubrication, "oiled");
    sw_spread_in s;
    sw_spread_defaults(&s);
    int method = 0, trials = 0, i = 0;
    sw_error err;
    for (;; i++) {
        const sw_assumption a = sw_strap_spread_assumed(&in, &s, i, &err);
        if (a.status)
            break;
        must(a.source[0], "%s: no source", a.name);
        method += strcmp(a.name, "method") == 0 &&
                  strcmp(a.word, "wrench-oiled") == 0;
        trials += strcmp(a.name, "trials") == 0 && a.value == 20000;
    }
    check_refused("end", &err, SW_ERR_RANGE, "index");
    ck_assert_int_eq(method, 1);
    ck_assert_int_eq(trials, 1);
    ck_assert_int_eq(i, 9);
}
END_TEST

START_TEST(no_memory)
{
    const sw_strap_in in = base_strap(10000, 3);
    sw_spread_in s = spread_of(25, SW_VARY_ALL);
    s.trials = 1e7; /* 250 MB */
    sw_error err;
    memory_short();
    const sw_strap_spread_out out = sw_strap_spread(&in, &s, NULL, NULL, &err);
    memory_plenty();
    check_refused("memory", &err, SW_ERR_MEMORY, "trials");
    check_numbers("memory", &out, SW_STRUCT_STRAP_SPREAD_OUT, out.status);
}
END_TEST

typedef struct {
    double last;
    int calls, end_at;
} told;

static int listen(double done, void *with)
{
    told *t = with;
    must(done >= t->last && done <= 1, "%g after %g", done, t->last);
    t->last = done;
    return ++t->calls == t->end_at;
}

START_TEST(stopped)
{
    const sw_strap_in in = base_strap(10000, 3);
    sw_spread_in s = spread_of(25, SW_VARY_ALL);
    s.trials = 100000;
    const sw_strap_spread_out alone = good("alone", &in, &s);
    for (s.threads = 1; s.threads <= 4; s.threads++) {
        told t = {0, 0, 0};
        sw_error err;
        sw_strap_spread_out out = sw_strap_spread(&in, &s, listen, &t, &err);
        check_no_error("told", out.status, &err);
        near(t.last, 1, 0, 0);
        must(same(&out, &alone), "listening changed the answer");
        t = (told){0, 0, 2};
        out = sw_strap_spread(&in, &s, listen, &t, &err);
        check_refused("stopped", &err, SW_ERR_STOPPED, "progress");
        check_numbers("stopped", &out, SW_STRUCT_STRAP_SPREAD_OUT, out.status);
        ck_assert_int_eq(t.calls, 2);
    }
}
END_TEST

/* GSL's error handler is the caller's and is never reached. */
START_TEST(no_handler)
{
    count_gsl_errors();
    randoms r = {64};
    for (int i = 0; i < 300; i++) {
        const sw_strap_in in = random_strap(&r);
        sw_spread_in s = spread_of(random_between(&r, 0, 95), 1 + i % 2);
        s.height_scatter_mm = i % 10 ? random_between(&r, 0, 5) : 50;
        s.published_coverage = random_between(&r, 0.5, 0.9999);
        s.coverage = i % 5 ? random_between(&r, 0.5, 0.9999) : 0.9999;
        s.trials = 100 + i;
        s.seed = (double)(random_bits(&r) >> 11);
        const sw_strap_spread_out out =
            sw_strap_spread(&in, &s, NULL, NULL, NULL);
        check_numbers("any", &out, SW_STRUCT_STRAP_SPREAD_OUT, out.status);
    }
    ck_assert_int_eq(gsl_errors(), 0);
}
END_TEST

int main(void)
{
    return RUN_TESTS("strap spread", closed_form, preload_alone, threads_alike,
                     inside_band, fills_band, heights, flat_and_dished,
                     some_fail, shares, turned_without_pressing, refused,
                     assumed, no_memory, stopped, no_handler);
}
