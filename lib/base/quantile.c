/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Quantile: normal, and Student's t.
 *
 *   normal   algorithm AS 241 of Wichura, by GSL: sixteen digits
 *   t        ln P(T > t) = ln q solved for ln t by Newton's method, where q is
 *            the smaller share; near the middle, where q loses digits,
 *            ln P(|T| < t) = ln(1 - 2q)
 *
 * Both sides bend one way only, so the steps do not run away; a share that is
 * the same as before to the last digit ends them. GSL's own t quantile is
 * good to nine digits or so.
 */
#include "base/distribution.h"
#include "base/internal.h"

#include <strapwise/quantile.h>

#include <gsl/gsl_cdf.h>

static sw_quantity_out refuse(double p, double least, sw_error *err)
{
    sw_quantity_out out = {SW_OK, NAN};
    if (p >= least && p < 1)
        return out;
    char message[120];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "p: ");
    sw__line_add_number(&line, p);
    sw__line_add(&line, " is no share between 0 and 1, both excluded");
    out.status =
        sw__fail(err, isnan(p) ? SW_ERR_NAN : SW_ERR_RANGE, "p", message);
    if (err) {
        err->low = least;
        err->high = 1;
    }
    return out;
}

sw_quantity_out sw_normal_quantile(double p, sw_error *err)
{
    sw__clear(err);
    sw_quantity_out out = refuse(p, 5e-324, err);
    if (!out.status)
        out.value = gsl_cdf_ugaussian_Pinv(p);
    return out;
}

/* t > 0 with the share q above it, q < 1/2. */
static double upper_t(double q, double df)
{
    const int middle = q > 0.25;
    const double target = log(middle ? 1 - 2 * q : q);
    double log_t = log(gsl_cdf_ugaussian_Qinv(q));
    for (int i = 0; i < 200; i++) {
        const double t = exp(log_t);
        const sw__t_shares s = sw__t_share(t, df);
        const double share = middle ? s.between : s.above;
        const double slope =
            (middle ? 2 : -1) * t * sw__t_density(t, df) / share;
        const double step = (target - log(share)) / slope;
        log_t += step;
        if (fabs(step) <= 1e-16 * fmax(1, fabs(log_t)))
            break;
    }
    return exp(log_t);
}

sw_quantity_out sw_t_quantile(double p, double df, sw_error *err)
{
    sw__clear(err);
    sw_quantity_out out = refuse(p, 1e-30, err);
    if (!out.status && !(df >= 0.1 && df <= 1e6))
        out.status = sw__fail_range(err, "df", df, "", 0.1, 1e6);
    if (!out.status)
        out.value = p == 0.5  ? 0
                    : p < 0.5 ? -upper_t(p, df)
                              : upper_t(1 - p, df);
    return out;
}
