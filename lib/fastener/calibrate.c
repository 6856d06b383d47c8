/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Calibrate: nut factor and its scatter from pairs of torque and force.
 *
 * Symbols: T torque net of the prevailing one, F force, d nominal diameter,
 * K_i = T_i/(F_i d) of pair i, m and s mean and sample standard deviation of
 * ln K_i, n pairs, z and t quantiles of the normal and Student's distribution,
 * c confidence, p proportion, k factor of a tolerance interval.
 *
 *   the K to use       K = exp(m), the geometric mean: the median of a
 *                      log-normal K; what 1/K does is the same         (1)
 *   its interval       exp(m +- t s/sqrt(n)), t at (1 + c)/2, n - 1    (2)
 *   scatter            s% = 100 tanh(z s), z at (1 + p)/2: the +-s of
 *                      a book, whose alpha = F_max/F_min = (1+s)/(1-s),
 *                      sigma_ln = atanh(s)/z                           (3)
 *   tolerance          exp(m +- k s), and 100 tanh(k s): allows for
 *                      what n pairs do not tell (tolerance.c)          (4)
 *   other estimates    arithmetic mean of K_i                          (5)
 *                      sum T F d/sum (F d)^2, T fitted on F d          (6)
 *                      mean T/(d mean F)                               (7)
 *                      slope F = b T, and F = a + b T (fit_line.c)     (8)
 *
 * The estimates differ: on twenty dry studs at one torque (table 8-13 of
 * Mechanical Engineering Design, Shigley, 9th ed.) (5) to (7) lie between
 * 0.2147 and 0.2236. (6) weighs the strongly tightened ones most, (5) the slack
 * ones; (1) is the one that the spread of a preload is built on, and it stays
 * the same when force and torque are fitted the other way round.
 *
 * Sources: (2) to (4) any text on statistics, ISO 16269-6; (3) VDI 2230-1 for
 * alpha.
 *
 * Not in it: errors of the load cell and of the wrench that every pair shares.
 */
#include "fastener/calibrate.h"

#include "base/tolerance.h"
#include "fastener/fit_line.h"

#include <strapwise/quantile.h>

#include <stdlib.h>
#include <string.h>

#define SW__S sw_pair_out
const sw_field sw__pair_out_fields[] = {
    SW__OUT(torque_Nm, "N.m"),
    SW__OUT(force_N, "N"),
    SW__OUT(nut_factor, ""),
    SW__OUT(deviation, ""),
    SW__OUT(thread_torque_Nm, "N.m"),
    SW__OUT(seat_torque_Nm, "N.m"),
    SW__END,
};
#undef SW__S

#define SW__S sw_calibrate_out
const sw_field sw__calibrate_out_fields[] = {
    SW__OUT(nut_factor, ""),
    SW__OUT(nut_factor_low, ""),
    SW__OUT(nut_factor_high, ""),
    SW__OUT(sigma_ln, ""),
    SW__OUT(scatter_pct, "%"),
    SW__OUT(slope, ""),
    SW__OUT(n, ""),
    SW__OUT_TEXT(thread),
    SW__OUT(tolerance_factor, ""),
    SW__OUT(tolerance_low, ""),
    SW__OUT(tolerance_high, ""),
    SW__OUT(tolerance_pct, "%"),
    SW__OUT(nut_factor_mean, ""),
    SW__OUT(nut_factor_sd, ""),
    SW__OUT(nut_factor_origin, ""),
    SW__OUT(nut_factor_mean_force, ""),
    SW__OUT(slope_se, ""),
    SW__OUT(line_slope, ""),
    SW__OUT(line_slope_se, ""),
    SW__OUT(line_intercept_N, "N"),
    SW__OUT(line_intercept_se_N, "N"),
    SW__OUT(line_intercept_p, ""),
    SW__OUT(torque_trend_p, ""),
    SW__OUT(order_trend_p, ""),
    SW__OUT(outlier_pair, ""),
    SW__OUT(outlier_deviation, ""),
    SW__OUT(outlier_limit, ""),
    SW__OUT(mu_thread, ""),
    SW__OUT(mu_thread_low, ""),
    SW__OUT(mu_thread_high, ""),
    SW__OUT(mu_seat, ""),
    SW__OUT(mu_seat_low, ""),
    SW__OUT(mu_seat_high, ""),
    SW__OUT(mu_total, ""),
    SW__OUT(mu_total_low, ""),
    SW__OUT(mu_total_high, ""),
    SW__OUT(friction_radius_mm, "mm"),
    SW__END,
};
#undef SW__S

/* Below this k of 95 %/95 % exceeds 1.7 times that of a large sample. */
enum { FEW = 10 };
#define K_LEAST 0.05
#define K_MOST 0.6

double sw__mean_margin(double sd, size_t n, double confidence)
{
    const double t =
        sw_t_quantile((1 + confidence) / 2, (double)n - 1, NULL).value;
    return t * sd / sqrt((double)n);
}

/* exp(mean -+ margin); neither end where the upper one has no number. */
static void around(double mean, double margin, double *low, double *high)
{
    *low = exp(mean - margin);
    *high = exp(mean + margin);
    if (!isfinite(*high))
        *low = *high = SW_UNSET;
}

static void intervals(const sw__sample *s, const sw_calibrate_in *full,
                      sw_calibrate_out *out)
{
    out->nut_factor = exp(s->mean);
    out->sigma_ln = s->sigma;
    around(s->mean, sw__mean_margin(s->sigma, s->n, full->confidence),
           &out->nut_factor_low, &out->nut_factor_high);
    const double z = sw_normal_quantile((1 + full->proportion) / 2, NULL).value;
    out->scatter_pct = 100 * tanh(z * s->sigma);
    out->tolerance_factor =
        sw__tolerance_factor((int)s->n, full->proportion, full->confidence);
    around(s->mean, out->tolerance_factor * s->sigma, &out->tolerance_low,
           &out->tolerance_high);
    out->tolerance_pct = 100 * tanh(out->tolerance_factor * s->sigma);
}

static void fits(const sw__sample *s, double d_mm, sw_calibrate_out *out)
{
    double sum_T = 0, sum_F = 0, sum_K = 0, square = 0, most = 0;
    for (size_t i = 0; i < s->n; i++) {
        sum_T += s->torque[i];
        sum_F += s->force[i];
        sum_K += exp(s->ln_factor[i]);
        most = fmax(most, s->force[i]);
    }
    out->nut_factor_mean = sum_K / (double)s->n;
    for (size_t i = 0; i < s->n; i++)
        square += pow(exp(s->ln_factor[i]) - out->nut_factor_mean, 2);
    out->nut_factor_sd = sqrt(square / ((double)s->n - 1));
    out->nut_factor_mean_force = 1000 * sum_T / (d_mm * sum_F);
    out->nut_factor_origin =
        1000 / d_mm * sw__fit_origin(s->force, s->torque, s->n).slope;
    const sw__line_fit origin = sw__fit_origin(s->torque, s->force, s->n);
    out->slope = origin.slope;
    out->slope_se = origin.slope_se;
    const sw__line_fit line = sw__fit_line(s->torque, s->force, s->n);
    out->line_slope = line.slope;
    out->line_slope_se = line.slope_se;
    out->line_intercept_N = line.intercept;
    out->line_intercept_se_N = line.intercept_se;
    out->line_intercept_p =
        sw__fit_p(line.intercept, line.intercept_se, most, s->n, 2);
}

static int is_outside(double value, double least, double most)
{
    return sw__is_set(value) && !(value >= least && value <= most);
}

static void warn(const sw__sample *s, const sw_calibrate_in *full,
                 const sw_pairs *pairs, const sw_thread_out *t,
                 sw_calibrate_out *out)
{
    if (s->n < FEW)
        out->warnings |= SW_WARN_FEW_PAIRS;
    const double alike = 1e-4; /* finer than any gauge reads */
    if (out->sigma_ln < alike)
        out->warnings |= SW_WARN_PAIRS_ALIKE;
    for (size_t i = 0; i < s->n; i++)
        if (is_outside(exp(s->ln_factor[i]), K_LEAST, K_MOST))
            out->warnings |= SW_WARN_FACTOR_IMPLAUSIBLE;
    if (is_outside(out->mu_thread, 0, K_MOST) ||
        is_outside(out->mu_seat, 0, K_MOST))
        out->warnings |= SW_WARN_FACTOR_IMPLAUSIBLE;
    if (pairs->thread[0] && strcmp(pairs->thread, t->designation) != 0)
        out->warnings |= SW_WARN_THREAD_DIFFERS;
    if (full->assumed & sw__bit(SW_STRUCT_CALIBRATE_IN, "friction_radius_mm"))
        out->warnings |= t->warnings;
}

static int solve(const sw_calibrate_in *full, const sw_pairs *pairs,
                 const sw_thread_out *t, sw_calibrate_out *out, sw_error *err)
{
    sw__sample s;
    int status = sw__sample_make(&s, full, pairs, t, err);
    if (status)
        return status;
    sw__copy(out->thread, sizeof out->thread, t->designation);
    out->n = (double)s.n;
    intervals(&s, full, out);
    fits(&s, t->nominal_mm, out);
    sw__calibrate_judge(&s, out);
    status = sw__calibrate_friction(full, pairs, t, out, err);
    if (!status)
        warn(&s, full, pairs, t, out);
    sw__sample_free(&s);
    return status;
}

sw_calibrate_out sw_calibrate(const sw_calibrate_in *in, const sw_pairs *pairs,
                              sw_error *err)
{
    sw_calibrate_out out;
    sw_thread_out t;
    memset(&out, 0, sizeof out);
    int status = in ? SW_OK : sw__fail_null(err, "in");
    sw_calibrate_in full;
    if (!status) {
        full = *in;
        status = sw__calibrate_open(&full, pairs, &t, err);
    }
    if (!status)
        status = solve(&full, pairs, &t, &out, err);
    if (status)
        sw__spoil(&out, SW_STRUCT_CALIBRATE_OUT, status);
    return out;
}
