/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Calibrate judge: does one pair stand apart, and is K a constant at all?
 *
 * Symbols as in calibrate.c.
 *
 *   outlier   G = max |ln K_i - m|/s against
 *             (n-1)/sqrt(n) sqrt(t^2/(n-2+t^2)), t at 1 - a/(2n), n - 2,
 *             a = 5 %                                                  (1)
 *   trend     ln K fitted on ln T, and on the number of the row; the
 *             slope's t-test at 5 %                                    (2)
 *   zero      the intercept of F on T, its t-test at 5 %               (3)
 *
 * Sources: (1) Grubbs 1969, ASTM E178; (2), (3) fit_line.c. Of ten good
 * samples about one gets a warning from (2) or (3): three tests at 5 %.
 *
 * Only the pair furthest out is judged: two outliers can hide each other. It
 * is not left out of anything.
 */
#include "fastener/calibrate.h"

#include "fastener/fit_line.h"

#include <strapwise/quantile.h>

#define LEVEL 0.05

double sw__outlier_limit(size_t count)
{
    const double n = (double)count;
    if (count < 3)
        return SW_UNSET;
    const double t = sw_t_quantile(1 - LEVEL / (2 * n), n - 2, NULL).value;
    return (n - 1) / sqrt(n) * sqrt(t * t / (n - 2 + t * t));
}

static void outlier(const sw__sample *s, sw_calibrate_out *out)
{
    out->outlier_limit = sw__outlier_limit(s->n);
    out->outlier_pair = out->outlier_deviation = SW_UNSET;
    if (!sw__is_set(out->outlier_limit) || !(s->sigma > 0))
        return;
    for (size_t i = 0; i < s->n; i++) {
        const double off = (s->ln_factor[i] - s->mean) / s->sigma;
        if (out->outlier_pair == SW_UNSET ||
            fabs(off) > fabs(out->outlier_deviation)) {
            out->outlier_pair = (double)i + 1;
            out->outlier_deviation = off;
        }
    }
    if (fabs(out->outlier_deviation) > out->outlier_limit)
        out->warnings |= SW_WARN_OUTLIER;
}

static double trend_p(const sw__sample *s, const double *x)
{
    double low = x[0], high = x[0];
    for (size_t i = 1; i < s->n; i++) {
        low = fmin(low, x[i]);
        high = fmax(high, x[i]);
    }
    const sw__line_fit f = sw__fit_line(x, s->ln_factor, s->n);
    return sw__fit_p(f.slope, f.slope_se, 1 / (high - low), s->n, 2);
}

static int is_unlikely(double p) { return sw__is_set(p) && p < LEVEL; }

void sw__calibrate_judge(const sw__sample *s, sw_calibrate_out *out)
{
    outlier(s, out);
    out->torque_trend_p = trend_p(s, s->ln_torque);
    out->order_trend_p = trend_p(s, s->row);
    if (is_unlikely(out->torque_trend_p) || is_unlikely(out->order_trend_p) ||
        is_unlikely(out->line_intercept_p))
        out->warnings |= SW_WARN_FACTOR_VARIES;
}
