/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fit line: certified values of NIST StRD. Not exported, so the source is
 * compiled into this program.
 */
#include "fastener/fit_line.h"

#include "../near.h"
#include "nist.h"

#include <strapwise/status.h>

/* Published: certified values of NIST StRD, "NoInt1". */
START_TEST(noint1)
{
    double x[NOINT1], y[NOINT1];
    for (int i = 0; i < NOINT1; i++) {
        x[i] = 60 + i;
        y[i] = 130 + i;
    }
    const sw__line_fit f = sw__fit_origin(x, y, NOINT1);
    near(f.slope, 2.07438016528926, 0, 1e-12);
    near(f.slope_se, 0.165289256198347e-01, 0, 1e-10);
    near(f.residual_sd, 3.56753034006338, 0, 1e-10);
    near(f.intercept, 0, 0, 0);
}
END_TEST

/* Published: certified values of NIST StRD, "Norris". */
START_TEST(norris)
{
    const sw__line_fit f = sw__fit_line(norris_x, norris_y, NORRIS);
    near(f.slope, 1.00211681802045, 0, 1e-12);
    near(f.intercept, -0.262323073774029, 0, 1e-12);
    near(f.slope_se, 0.429796848199937e-03, 0, 1e-10);
    near(f.intercept_se, 0.232818234301152, 0, 1e-10);
    near(f.residual_sd, 0.884796396144373, 0, 1e-10); /* from memory */
}
END_TEST

/* The sums of the head comment, in long double. */
START_TEST(by_sums)
{
    long double xm = 0, ym = 0, xx = 0, xy = 0, ee = 0;
    for (int i = 0; i < NORRIS; i++) {
        xm += (long double)norris_x[i] / NORRIS;
        ym += (long double)norris_y[i] / NORRIS;
    }
    for (int i = 0; i < NORRIS; i++) {
        xx += (norris_x[i] - xm) * (norris_x[i] - xm);
        xy += (norris_x[i] - xm) * (norris_y[i] - ym);
    }
    const long double b = xy / xx, a = ym - b * xm;
    for (int i = 0; i < NORRIS; i++) {
        const long double e = norris_y[i] - a - b * norris_x[i];
        ee += e * e;
    }
    const long double s = sqrtl(ee / (NORRIS - 2));
    const sw__line_fit f = sw__fit_line(norris_x, norris_y, NORRIS);
    near(f.slope, (double)b, 0, 1e-14);
    near(f.intercept, (double)a, 0, 1e-12);
    near(f.slope_se, (double)(s / sqrtl(xx)), 0, 1e-11);
    near(f.intercept_se, (double)(s * sqrtl(1.0L / NORRIS + xm * xm / xx)), 0,
         1e-11);
}
END_TEST

/* Scaling y scales the line; moving y moves the intercept alone. */
START_TEST(properties)
{
    double y[NORRIS];
    const sw__line_fit f = sw__fit_line(norris_x, norris_y, NORRIS);
    for (int i = 0; i < NORRIS; i++)
        y[i] = 1000 * norris_y[i] + 5;
    const sw__line_fit g = sw__fit_line(norris_x, y, NORRIS);
    near(g.slope, 1000 * f.slope, 0, 1e-13);
    near(g.intercept, 1000 * f.intercept + 5, 0, 1e-11);
    near(g.slope_se, 1000 * f.slope_se, 0, 1e-10);
    near(g.intercept_se, 1000 * f.intercept_se, 0, 1e-10);
}
END_TEST

/* What the points do not say. */
START_TEST(undetermined)
{
    const double x[] = {5, 5, 5}, y[] = {1, 2, 4}, z[] = {1, 3, 5};
    sw__line_fit f = sw__fit_line(x, y, 3);
    ck_assert(f.slope == SW_UNSET && f.intercept == SW_UNSET &&
              f.slope_se == SW_UNSET && f.intercept_se == SW_UNSET);
    f = sw__fit_origin(x, y, 3);
    near(f.slope, 7.0 / 15, 0, 1e-15);
    f = sw__fit_line(z, y, 2);
    near(f.slope, 0.5, 0, 1e-15);
    near(f.intercept, 0.5, 0, 1e-15);
    ck_assert(f.slope_se == SW_UNSET && f.intercept_se == SW_UNSET);
    ck_assert(sw__fit_p(f.intercept, f.intercept_se, 1, 2, 2) == SW_UNSET);
}
END_TEST

/* Closed form for one degree of freedom; an exact fit has no doubt, and what
 * rounding leaves of an intercept is none. */
START_TEST(p_value)
{
    near(sw__fit_p(2, 1, 10, 3, 2), 1 - 2 / 3.14159265358979 * atan(2), 1e-13,
         0);
    near(sw__fit_p(-2, 1, 10, 3, 2), 1 - 2 / 3.14159265358979 * atan(2), 1e-13,
         0);
    /* tables of t: 97.5 % with 19 degrees is 2.093024 */
    near(sw__fit_p(2.093024, 1, 10, 21, 2), 0.05, 1e-7, 0);
    near(sw__fit_p(3, 0, 10, 9, 2), 0, 0, 0);
    near(sw__fit_p(1e-12, 1e-15, 10, 9, 2), 1, 0, 0);
    near(sw__fit_p(0, 0, 10, 9, 2), 1, 0, 0);
}
END_TEST

int main(void)
{
    return RUN_TESTS("fit_line", noint1, norris, by_sums, properties,
                     undetermined, p_value);
}
