/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tolerance: factors of two-sided normal tolerance intervals, and the
 * distributions behind them. Not exported, so the sources are compiled into
 * this program.
 */
#include "base/distribution.h"
#include "base/tolerance.h"

#include "../gsl_handler.h"
#include "../near.h"
#include "../random.h"
#include "../values.h"

/* Published: Odeh and Owen 1980, as in ISO 16269-6; from memory. */
START_TEST(printed)
{
    static const struct {
        int n;
        double p, g, k;
    } row[] = {{2, 0.95, 0.95, 36.519},  {3, 0.95, 0.95, 9.789},
               {4, 0.95, 0.95, 6.341},   {5, 0.95, 0.95, 5.077},
               {10, 0.95, 0.95, 3.393},  {20, 0.95, 0.95, 2.760},
               {100, 0.95, 0.95, 2.234}, {10, 0.99, 0.95, 4.437},
               {10, 0.90, 0.95, 2.856}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
        near(sw__tolerance_factor(row[i].n, row[i].p, row[i].g), row[i].k,
             0.00051, 0);
    /* Howe's approximation in the engineering statistics handbook, 7.2.6.3:
     * 2.217 for n = 43, 0.90, 0.99; it is good to half a per cent there */
    near(sw__tolerance_factor(43, 0.90, 0.99), 2.217, 0, 0.005);
}
END_TEST

/* Computed by tests/reference/tolerance_factors.py, to its printed digits. */
START_TEST(computed)
{
    values v;
    int rows = 0;
    values_open(&v, "tests/values/tolerance_factors.csv");
    for (; values_next(&v); rows++)
        near_in(v.cell[0],
                sw__tolerance_factor((int)values_number(&v, "n"),
                                     values_number(&v, "proportion"),
                                     values_number(&v, "confidence")),
                values_number(&v, "factor"), 1e-9, 1e-10);
    ck_assert_int_ge(rows, 40);
}
END_TEST

/* A large sample knows the population: the factor is the normal quantile. And
 * it grows with both shares and falls with n. */
START_TEST(properties)
{
    near(sw__tolerance_factor(100000, 0.95, 0.5), 1.959964, 0, 1e-5);
    for (int n = 2; n < 60; n++) {
        const double k = sw__tolerance_factor(n, 0.9, 0.9);
        ck_assert(sw__tolerance_factor(n + 1, 0.9, 0.9) < k);
        ck_assert(sw__tolerance_factor(n, 0.91, 0.9) > k);
        ck_assert(sw__tolerance_factor(n, 0.9, 0.91) > k);
    }
    /* the corners of what is allowed */
    static const int n[] = {2, 10000};
    for (int i = 0; i < 8; i++) {
        const double k = sw__tolerance_factor(n[i & 1], i & 2 ? 0.9999 : 0.5,
                                              i & 4 ? 0.9999 : 0.5);
        must(isfinite(k) && k > 0.6, "corner %d: %g", i, k);
    }
}
END_TEST

/* What the words promise, tried: of 20,000 samples of 8, the share whose
 * interval holds at least 90 % of the population. Three standard errors. */
START_TEST(promise)
{
    enum { TRIALS = 20000, N = 8 };
    const double k = sw__tolerance_factor(N, 0.9, 0.95);
    randoms r = {7};
    int held = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
        double x[N], mean = 0, square = 0;
        for (int i = 0; i < N; i++) {
            const double u = random_between(&r, 0, 1);
            const double angle = random_between(&r, 0, 6.283185307179586);
            x[i] = sqrt(-2 * log(1 - u)) * cos(angle);
            mean += x[i] / N;
        }
        for (int i = 0; i < N; i++)
            square += (x[i] - mean) * (x[i] - mean);
        const double s = sqrt(square / (N - 1));
        const double share = (erfc(-(mean + k * s) / sqrt(2)) -
                              erfc(-(mean - k * s) / sqrt(2))) /
                             2;
        held += share >= 0.9;
    }
    near((double)held / TRIALS, 0.95, 3 * sqrt(0.95 * 0.05 / TRIALS), 0);
}
END_TEST

/* Published: chi-square tables, from memory; exact for two degrees. */
START_TEST(chi_square)
{
    near(sw__chi2_above(3.841459, 1), 0.05, 1e-8, 0);
    near(sw__chi2_above(18.307038, 10), 0.05, 1e-8, 0);
    near(sw__chi2_above(124.342113, 100), 0.05, 1e-8, 0);
    near(sw__chi2_above(3.247, 10), 0.975, 2e-5, 0);
    for (double x = 0.01; x < 1000; x *= 1.3) {
        near(sw__chi2_above(x, 2), exp(-x / 2), 1e-16, 1e-12);
        near(sw__chi2_above(x, 1), erfc(sqrt(x / 2)), 1e-16, 1e-12);
        /* Q(v + 2) - Q(v) = (x/2)^(v/2) e^(-x/2)/Gamma(v/2 + 1) */
        for (double v = 1; v < 300; v *= 2.1)
            near(sw__chi2_above(x, v + 2) - sw__chi2_above(x, v),
                 exp(v / 2 * log(x / 2) - x / 2 - lgamma(v / 2 + 1)), 1e-13, 0);
    }
    near(sw__chi2_above(0, 5), 1, 0, 0);
    near(sw__chi2_above(1e300, 5), 0, 0, 0);
    near(sw__chi2_above(1e-300, 5), 1, 0, 0);
}
END_TEST

/* Nothing of it meets GSL's error handler. */
START_TEST(no_handler)
{
    count_gsl_errors();
    for (int n = 2; n < 20000; n = n * 2 + 1)
        for (int i = 0; i < 4; i++)
            ck_assert(isfinite(sw__tolerance_factor(n, i & 1 ? 0.9999 : 0.5,
                                                    i & 2 ? 0.9999 : 0.5)));
    ck_assert_int_eq(gsl_errors(), 0);
}
END_TEST

int main(void)
{
    return RUN_TESTS("tolerance", printed, computed, properties, promise,
                     chi_square, no_handler);
}
