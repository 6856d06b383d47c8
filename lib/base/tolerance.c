/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tolerance: the exact factor of a two-sided normal tolerance interval.
 *
 * Symbols: n size of the sample, m and s its mean and standard deviation, p
 * proportion, g confidence, v = n - 1, Phi the normal distribution.
 *
 * The mean misses by z, in standard deviations of the population; z is normal
 * with standard deviation 1/sqrt(n). The interval m +- k s then holds at least
 * p where k s >= r(z) with
 *
 *   Phi(z + r) - Phi(z - r) = p                                          (1)
 *
 * and v s^2 is chi-square with v degrees of freedom, so that k solves
 *
 *   E P(X > v r(z)^2/k^2) = g                                            (2)
 *
 * Source: ISO 16269-6, annex on two-sided intervals with mean and standard
 * deviation unknown; Odeh and Owen 1980. Howe's approximation, common in
 * handbooks, is up to a few per cent off for small n.
 *
 * The expectation is a sum of equal steps: for a smooth function that dies away
 * at both ends as a normal density does it converges faster than any power of
 * the step.
 */
#include "base/tolerance.h"

#include "base/distribution.h"
#include "base/internal.h"
#include "base/root.h"

#include <gsl/gsl_cdf.h>

/* Steps of the standardised z = s/sqrt(n), s = 0 .. END; the function is
 * symmetric. */
enum { STEPS = 96 };
#define END 9.6

typedef struct {
    double v, confidence;
    double square[STEPS + 1]; /* r(z)^2 */
    double weight[STEPS + 1];
} expectation;

static double normal(double x) { return 0.5 * erfc(-x / sqrt(2)); }

static double density(double x) { return exp(-x * x / 2) / sqrt(2 * SW__PI); }

/* Equation (1) by Newton's method. The left side rises ever more slowly beyond
 * z, and z + (quantile of p) lies below the root: no step passes it. */
static double half_width(double z, double p)
{
    double r = z + gsl_cdf_ugaussian_Pinv(p);
    for (int i = 0; i < 60; i++) {
        const double miss = p - (normal(z + r) - normal(z - r));
        const double step = miss / (density(z + r) + density(z - r));
        r += step;
        if (fabs(step) <= 1e-15 * r)
            break;
    }
    return r;
}

/* Left side of (2) less its right side. */
static double surplus(double k, void *with)
{
    const expectation *e = with;
    double sum = 0;
    for (int i = 0; i <= STEPS; i++)
        sum +=
            e->weight[i] * sw__chi2_above(e->v * e->square[i] / (k * k), e->v);
    return sum - e->confidence;
}

double sw__tolerance_factor(int n, double proportion, double confidence)
{
    expectation e = {.v = n - 1, .confidence = confidence};
    const double step = END / STEPS;
    for (int i = 0; i <= STEPS; i++) {
        const double r = half_width(i * step / sqrt(n), proportion);
        e.square[i] = r * r;
        e.weight[i] = (i ? 2 : 1) * step * density(i * step);
    }
    double low = 0.1, high = 2;
    while (surplus(high, &e) < 0 && high < 1e9)
        high *= 2;
    if (sw__root(surplus, &e, &low, &high, 0))
        return NAN;
    return low;
}
