/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fit line: least squares, through the origin and with an intercept.
 *
 * Symbols: n points (x, y), xm and ym their means, e residuals.
 *
 *   through the origin  b = sum x y/sum x^2, s^2 = sum e^2/(n-1),
 *                       se(b)^2 = s^2/sum x^2                            (1)
 *   ordinary            b = sum (x-xm)(y-ym)/sum (x-xm)^2, a = ym - b xm,
 *                       s^2 = sum e^2/(n-2),
 *                       se(b)^2 = s^2/sum (x-xm)^2,
 *                       se(a)^2 = s^2 (1/n + xm^2/sum (x-xm)^2)          (2)
 *   test of a value v   P(|T| > |v|/se(v)), T with the degrees of freedom of
 *                       s                                                (3)
 *
 * By GSL's gsl_fit_mul and gsl_fit_linear, which keep the covariance with s^2
 * in it; neither allocates or calls the error handler. Source: any text on
 * regression; checked against the certified values of NIST StRD.
 *
 * Not in it: weights, errors in x.
 */
#include "fastener/fit_line.h"

#include "base/distribution.h"
#include "base/internal.h"

#include <gsl/gsl_fit.h>

sw__line_fit sw__fit_origin(const double *x, const double *y, size_t n)
{
    sw__line_fit f = {0, SW_UNSET, 0, 0, SW_UNSET};
    double variance, squares;
    gsl_fit_mul(x, 1, y, 1, n, &f.slope, &variance, &squares);
    if (n > 1) {
        f.slope_se = sqrt(variance);
        f.residual_sd = sqrt(squares / (double)(n - 1));
    }
    return f;
}

static int all_equal(const double *x, size_t n)
{
    for (size_t i = 1; i < n; i++)
        if (x[i] != x[0])
            return 0;
    return 1;
}

sw__line_fit sw__fit_line(const double *x, const double *y, size_t n)
{
    sw__line_fit f = {SW_UNSET, SW_UNSET, SW_UNSET, SW_UNSET, SW_UNSET};
    double var_intercept, covariance, var_slope, squares;
    if (n < 2 || all_equal(x, n))
        return f;
    gsl_fit_linear(x, 1, y, 1, n, &f.intercept, &f.slope, &var_intercept,
                   &covariance, &var_slope, &squares);
    if (n > 2) {
        f.slope_se = sqrt(var_slope);
        f.intercept_se = sqrt(var_intercept);
        f.residual_sd = sqrt(squares / (double)(n - 2));
    }
    return f;
}

double sw__fit_p(double value, double se, double scale, size_t n,
                 int parameters)
{
    if (!sw__is_set(value) || !sw__is_set(se))
        return SW_UNSET;
    if (fabs(value) <= 1e-9 * scale)
        return 1;
    if (!(se > 0))
        return 0;
    return 2 * sw__t_share(fabs(value) / se, (double)n - parameters).above;
}
