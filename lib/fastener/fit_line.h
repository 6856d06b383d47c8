/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_FASTENER_FIT_LINE_H
#define SW_FASTENER_FIT_LINE_H

#include <stddef.h>

/* A number that the points do not determine is SW_UNSET. */
typedef struct {
    double slope, slope_se;
    double intercept, intercept_se; /* 0 through the origin */
    double residual_sd;
} sw__line_fit;

/* y = slope x; n >= 2, x not all 0. */
sw__line_fit sw__fit_origin(const double *x, const double *y, size_t n);

/* y = intercept + slope x; n >= 2. */
sw__line_fit sw__fit_line(const double *x, const double *y, size_t n);

/* Probability, were the true value 0, of one as far from it as `value`; for a
 * fit of n points with so many parameters. `scale` is what the value would be
 * compared with: below a part in 1e9 of it only rounding is left. */
double sw__fit_p(double value, double se, double scale, size_t n,
                 int parameters);

#endif
