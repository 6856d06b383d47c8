/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Distribution: Student's t and chi-square.
 *
 * Symbols: v degrees of freedom, I_x(a, b) the regularised incomplete beta
 * function, Q(a, x) the upper regularised incomplete gamma function.
 *
 *   t        P(T > t) = 1/2 I_x(v/2, 1/2), x = v/(v + t^2)               (1)
 *            P(|T| < t) = I_{1-x}(1/2, v/2)                              (2)
 *   chi2     P(X > x) = Q(v/2, x/2)                                      (3)
 *   I_x(a, b) = x^a (1-x)^b/(a B(a, b)) times a continued fraction where
 *            x < (a+1)/(a+b+2), else 1 - I_{1-x}(b, a)                   (4)
 *   Q(a, x)  by the series of P = 1 - Q below x = a + 1, by a continued
 *            fraction above                                              (5)
 *   1/B(a, 1/2) = G(a)/sqrt(pi), G(a) = Gamma(a+1/2)/Gamma(a)
 *            = sqrt(a) (1 - 1/(8a) + ...), for small a by
 *            G(a) = G(a+1) a/(a+1/2)                                     (6)
 *
 * Sources: Abramowitz and Stegun, 26.5.8 (4), 6.5.29 and 6.5.31 (5), 26.7.1
 * (1); continued fractions by the method of Lentz, as in Numerical Recipes.
 *
 * GSL has all of these, but its t distribution is an expansion beyond 30
 * degrees of freedom, and its incomplete gamma function may call the error
 * handler, which is the caller's.
 */
#include "base/distribution.h"

#include "base/internal.h"

#include <float.h>

enum { MOST_TERMS = 100000 };

/* A denominator that must not be zero. */
static double apart(double x) { return fabs(x) < 1e-300 ? 1e-300 : x; }

/* The fraction of equation (4). */
static double beta_fraction(double a, double b, double x)
{
    double c = 1, d = 1 / apart(1 - (a + b) * x / (a + 1)), h = d;
    for (int m = 1; m < MOST_TERMS; m++) {
        const double even =
            m * (b - m) * x / ((a - 1 + 2.0 * m) * (a + 2.0 * m));
        d = 1 / apart(1 + even * d);
        c = apart(1 + even / c);
        h *= d * c;
        const double odd =
            -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 1 + 2.0 * m));
        d = 1 / apart(1 + odd * d);
        c = apart(1 + odd / c);
        h *= d * c;
        if (fabs(d * c - 1) < DBL_EPSILON)
            break;
    }
    return h;
}

/* G(a) of equation (6); the series is good to the last digit from 30 on. */
static double half_ratio(double a)
{
    double factor = 1;
    for (; a < 30; a++)
        factor *= a / (a + 0.5);
    const double u = 1 / (a * a);
    const double rest =
        (-1.0 / 8 + u * (1.0 / 192 + u * (-1.0 / 640 + u * 17 / 14336))) / a;
    return factor * sqrt(a) * exp(rest);
}

/* ln(1 + t^2/v), also where the square is no number any more */
static double log_stretch(double t, double v)
{
    return t < 1e100 ? log1p(t * t / v) : 2 * log(t) - log(v);
}

sw__t_shares sw__t_share(double t, double df)
{
    const double a = df / 2, stretch = log_stretch(t, df);
    const double x = exp(-stretch), y = -expm1(-stretch); /* y = 1 - x */
    const double front =
        exp(-a * stretch) * sqrt(y) * half_ratio(a) / sqrt(SW__PI);
    sw__t_shares s;
    if (x < (a + 1) / (a + 2.5)) {
        s.above = 0.5 * front / a * beta_fraction(a, 0.5, x);
        s.between = 1 - 2 * s.above;
    } else {
        s.between = 2 * front * beta_fraction(0.5, a, y);
        s.above = 0.5 * (1 - s.between);
    }
    return s;
}

double sw__t_density(double t, double df)
{
    return half_ratio(df / 2) / sqrt(df * SW__PI) *
           exp(-(df + 1) / 2 * log_stretch(t, df));
}

/* x^a e^-x/Gamma(a+1), by Stirling's series from 15 on: the exponents of the
 * large factors never meet. */
static double gamma_front(double a, double x)
{
    const double u = 1 / (a * a), mu = (x - a) / a;
    const double scale =
        a < 15 ? tgamma(a + 1) * exp(a - a * log(a)) / sqrt(2 * SW__PI * a)
               : exp((1.0 / 12 -
                      u * (1.0 / 360 -
                           u * (1.0 / 1260 - u * (1.0 / 1680 - u / 1188)))) /
                     a);
    return exp(a * (log1p(mu) - mu)) / (sqrt(2 * SW__PI * a) * scale);
}

double sw__chi2_above(double x, double df)
{
    const double a = df / 2, y = x / 2;
    if (!(y > 0))
        return 1;
    if (y > a + 800 + 40 * sqrt(a)) /* far below the smallest double */
        return 0;
    const double front = gamma_front(a, y);
    if (y < a + 1) {
        double term = 1, sum = 1;
        for (int n = 1; n < MOST_TERMS && term > DBL_EPSILON * sum; n++)
            sum += term *= y / (a + n);
        return 1 - front * sum;
    }
    double b = y + 1 - a, c = 1e300, d = 1 / b, h = d;
    for (int n = 1; n < MOST_TERMS; n++) {
        const double over = -n * (n - a);
        b += 2;
        d = 1 / apart(over * d + b);
        c = apart(b + over / c);
        h *= d * c;
        if (fabs(d * c - 1) < DBL_EPSILON)
            break;
    }
    return front * a * h;
}
