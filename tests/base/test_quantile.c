/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Quantile: normal and t, against printed tables, and fed back into
 * distributions that share no formula with the library's.
 */
#include "../common.h"

#define PI 3.14159265358979323846

static double z_of(double p)
{
    sw_error err;
    const sw_quantity_out q = sw_normal_quantile(p, &err);
    check_no_error("normal", q.status, &err);
    return q.value;
}

static double t_of(double p, double df)
{
    sw_error err;
    const sw_quantity_out q = sw_t_quantile(p, df, &err);
    check_no_error("t", q.status, &err);
    return q.value;
}

/* Published: standard normal tables; the digits beyond theirs from a
 * double-precision inverse. */
START_TEST(normal_table)
{
    near(z_of(0.9), 1.2815515655446, 0, 1e-12);
    near(z_of(0.95), 1.64485362695147, 0, 1e-12);
    near(z_of(0.975), 1.95996398454005, 0, 1e-12);
    near(z_of(0.995), 2.5758293035489, 0, 1e-12);
    near(z_of(0.9985), 2.96773792534179, 0, 1e-12);
    near(z_of(0.5), 0, 1e-300, 0);
}
END_TEST

/* Fed back into the C library's error function, over 300 decades. */
START_TEST(normal_back)
{
    for (double p = 1e-300; p < 0.5; p *= 1.7) {
        const double z = z_of(p);
        /* demanded of z: 1e-15, which moves p by z^2 as much */
        near(erfc(-z / sqrt(2)) / 2, p, 0, (z * z + 2) * 1e-15);
        if (p > 1e-15)
            near(z_of(1 - p), -z, 0, 1e-15 / p);
    }
}
END_TEST

/* Published: tables of Student's t, 97.5 %, one unit of the last digit; from
 * memory: 99 % and 99.5 %. */
START_TEST(t_table)
{
    static const struct {
        double p, df, t, digit;
    } row[] = {{0.975, 2, 4.302653, 1e-6},  {0.975, 9, 2.262157, 1e-6},
               {0.975, 10, 2.228139, 1e-6}, {0.975, 19, 2.093024, 1e-6},
               {0.975, 34, 2.032245, 1e-6}, {0.975, 1, 12.706, 1e-3},
               {0.99, 10, 2.764, 1e-3},     {0.995, 5, 4.032, 1e-3},
               {0.995, 30, 2.750, 1e-3},    {0.9, 20, 1.325, 1e-3}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
        near(t_of(row[i].p, row[i].df), row[i].t, 0.5001 * row[i].digit, 0);
}
END_TEST

/* P(|T| < t) for whole degrees of freedom as a finite sum: Abramowitz and
 * Stegun 26.7.3 (odd) and 26.7.4 (even). */
static double between(double t, int df)
{
    const double angle = atan(t / sqrt(df)), c = cos(angle), s = sin(angle);
    double sum = 0, term = 1;
    if (df % 2) {
        term = c;
        for (int k = 1; k < df - 1; k += 2) {
            sum += term;
            term *= c * c * (k + 1) / (k + 2);
        }
        return 2 / PI * (angle + s * sum);
    }
    for (int k = 0; k < df - 1; k += 2) {
        sum += term;
        term *= c * c * (k + 1) / (k + 2);
    }
    return s * sum;
}

START_TEST(t_back)
{
    for (int df = 1; df <= 400; df += df < 12 ? 1 : 13)
        for (double p = 0.0005; p < 1; p += 0.0077) {
            const double t = t_of(p, df);
            const double back =
                t < 0 ? (1 - between(-t, df)) / 2 : (1 + between(t, df)) / 2;
            must(fabs(back - p) <= 1e-12, "df %d, p %g: back %.17g", df, p,
                 back);
        }
}
END_TEST

/* Closed forms: Cauchy for one degree, and for two and four. */
START_TEST(t_closed)
{
    for (double p = 0.001; p < 0.999; p += 0.00317) {
        near(t_of(p, 1), tan(PI * (p - 0.5)), 1e-15, 1e-12);
        const double a = 4 * p * (1 - p);
        near(t_of(p, 2), 2 * (p - 0.5) * sqrt(2 / a), 1e-15, 1e-12);
        const double q = cos(acos(sqrt(a)) / 3) / sqrt(a);
        near(t_of(p, 4), (p > 0.5 ? 1 : -1) * 2 * sqrt(q - 1), 1e-15, 1e-7);
    }
    /* far out, where the share above is all that is left of p */
    near(t_of(1e-30, 1), -1 / (PI * 1e-30), 0, 1e-12);
    near(t_of(1e-30, 2), -1 / sqrt(2e-30), 0, 1e-12);
}
END_TEST

/* Degrees of freedom between whole ones: the density integrated by Simpson's
 * rule over the angle, t = sqrt(df) tan(angle). */
static double simpson(double end, double power)
{
    enum { PARTS = 4000 };
    double sum = 1 + pow(cos(end), power);
    for (int i = 1; i < PARTS; i++)
        sum += (i % 2 ? 4 : 2) * pow(cos(end * i / PARTS), power);
    return sum * end / PARTS / 3;
}

START_TEST(t_between_degrees)
{
    static const double df[] = {2.5, 3.7, 9.25, 30.5, 99.9};
    for (size_t i = 0; i < sizeof df / sizeof df[0]; i++)
        for (double p = 0.51; p < 1; p += 0.033) {
            /* the whole by the gamma function: steps would cost digits where
             * the cosine ends in a fractional power */
            const double whole =
                sqrt(PI) / 2 * exp(lgamma(df[i] / 2) - lgamma((df[i] + 1) / 2));
            const double angle = atan(t_of(p, df[i]) / sqrt(df[i]));
            near(0.5 + 0.5 * simpson(angle, df[i] - 1) / whole, p, 1e-12, 0);
        }
}
END_TEST

/* Symmetric, rising, and normal in the limit. */
START_TEST(t_properties)
{
    for (double df = 0.1; df <= 1e6; df *= 3.3) {
        double last = -INFINITY;
        for (double p = 1.0 / 64; p < 1; p += 1.0 / 64) {
            const double t = t_of(p, df);
            must(t > last, "df %g, p %g", df, p);
            near(t_of(1 - p, df), -t, 0, 1e-14);
            last = t;
        }
    }
    near(t_of(0.5, 7), 0, 0, 0);
    /* t = z + (z^3 + z)/(4 df) + ...: Abramowitz and Stegun 26.7.5 */
    for (double p = 0.01; p < 1; p += 0.03) {
        const double z = z_of(p);
        near(t_of(p, 1e6), z + (z * z * z + z) / 4e6, 1e-10, 0);
    }
}
END_TEST

START_TEST(bad)
{
    static const double p[] = {0, 1, -0.1, 1.1, INFINITY, -INFINITY, SW_UNSET};
    sw_error err;
    for (size_t i = 0; i < sizeof p / sizeof p[0]; i++) {
        sw_quantity_out q = sw_normal_quantile(p[i], &err);
        check_refused("p", &err, SW_ERR_RANGE, "p");
        ck_assert(isnan(q.value) && q.status == SW_ERR_RANGE);
        q = sw_t_quantile(p[i], 9, &err);
        check_refused("p", &err, SW_ERR_RANGE, "p");
        ck_assert(isnan(q.value) && q.status == SW_ERR_RANGE);
    }
    static const double df[] = {0, -1, 0.099, 1.1e6, INFINITY, SW_UNSET};
    for (size_t i = 0; i < sizeof df / sizeof df[0]; i++) {
        ck_assert(isnan(sw_t_quantile(0.9, df[i], &err).value));
        check_refused("df", &err, SW_ERR_RANGE, "df");
        near(err.high, 1e6, 0, 0);
    }
    ck_assert_int_eq(sw_normal_quantile(NAN, &err).status, SW_ERR_NAN);
    check_refused("nan", &err, SW_ERR_NAN, "p");
    ck_assert_int_eq(sw_t_quantile(NAN, 9, &err).status, SW_ERR_NAN);
    check_refused("nan", &err, SW_ERR_NAN, "p");
    ck_assert_int_eq(sw_t_quantile(0.9, NAN, &err).status, SW_ERR_NAN);
    check_refused("nan", &err, SW_ERR_NAN, "df");
    ck_assert_int_eq(sw_t_quantile(0.9, 0, NULL).status, SW_ERR_RANGE);
}
END_TEST

int main(void)
{
    return RUN_TESTS("quantile", normal_table, normal_back, t_table, t_back,
                     t_closed, t_between_degrees, t_properties, bad);
}
