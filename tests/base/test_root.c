/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Root: the bisection behind the backward questions. It is not exported, so
 * its source is compiled into this program.
 */
#include "base/root.h"

#include "../gsl_handler.h"
#include "../near.h"

static int calls;

static double cubic(double x, void *with)
{
    calls++;
    return x * x * x - *(double *)with;
}

/* jumps over zero at 1, and is not defined above 5 */
static double jump(double x, void *with)
{
    (void)with;
    return x > 5 ? NAN : x < 1 ? -1 : 2;
}

static double never(double x, void *with)
{
    (void)with;
    return x * x + 1;
}

/* Cube roots: pow() of the C library. */
START_TEST(cube_roots)
{
    for (double c = 1e-3; c < 1e3; c *= 3) {
        double low = 0, high = 20;
        ck_assert_int_eq(sw__root(cubic, &c, &low, &high, 1e-9), 0);
        ck_assert(low <= high && high - low <= 1e-9);
        ck_assert(low * low * low <= c && high * high * high >= c);
        near(low, cbrt(c), 1e-9, 0);
    }
}
END_TEST

/* A width of 0 ends when the bracket cannot get narrower. */
START_TEST(narrowest)
{
    double c = 2, low = 1, high = 2;
    calls = 0;
    ck_assert_int_eq(sw__root(cubic, &c, &low, &high, 0), 0);
    near(low, cbrt(2), 0, 3e-16);
    near(high, cbrt(2), 0, 3e-16);
    ck_assert_int_le(calls, 500);
}
END_TEST

START_TEST(jumps)
{
    double low = -3, high = 4;
    ck_assert_int_eq(sw__root(jump, NULL, &low, &high, 1e-9), 0);
    ck_assert(low < 1 && high >= 1 && high - low <= 1e-9);
}
END_TEST

/* Refused without touching GSL's error handler, which would abort. */
START_TEST(no_bracket)
{
    count_gsl_errors();
    double low = -1, high = 1;
    ck_assert_int_ne(sw__root(never, NULL, &low, &high, 1e-9), 0);
    low = 0;
    high = 6;
    ck_assert_int_ne(sw__root(jump, NULL, &low, &high, 1e-9), 0);
    low = 2;
    high = 4;
    ck_assert_int_ne(sw__root(jump, NULL, &low, &high, 1e-9), 0);
    ck_assert_int_eq(gsl_errors(), 0);
}
END_TEST

/* not defined between 0.3 and 0.6, nor where it passes zero */
static double gap(double x, void *with)
{
    (void)with;
    return x > 0.3 && x < 0.6 ? NAN : x - 0.45;
}

static double pole(double x, void *with)
{
    (void)with;
    return 1 / (x - 0.5);
}

/* Trials that have no answer lie inside many a bracket. */
START_TEST(gaps)
{
    count_gsl_errors();
    for (double wide = 0.05; wide < 100; wide *= 1.7) {
        double low = 0.3 - wide, high = 0.6 + 2 * wide;
        const int failed = sw__root(gap, NULL, &low, &high, 1e-9);
        must(gsl_handled == 0, "GSL's error handler was called");
        must(failed || (low <= 0.6 && high >= 0.3), "%g .. %g", low, high);
        low = 0.5 - wide;
        high = 0.5 + wide; /* its middle is the pole */
        sw__root(pole, NULL, &low, &high, 1e-9);
        must(gsl_handled == 0, "GSL's error handler was called");
    }
}
END_TEST

int main(void)
{
    return RUN_TESTS("root", cube_roots, narrowest, jumps, no_bracket, gaps);
}
