/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Spread: what the same torque gives from one tightening to the next.
 *
 * Preload F = (T - T0)/(K d) (torque.c) is a product of what scatters: torque
 * T, by the tool, and nut factor K, by friction. Each is taken as log-normal
 * about the value of the plain formula, which is then the median, and as
 * independent of the other.
 *
 *   published ±s   F_max/F_min = alpha = (1 + s)/(1 - s)                 (1)
 *                  sigma = ln(alpha)/(2 z) = atanh(s)/z(c)               (2)
 *                  c: part of all tightenings that ±s encloses, two-sided;
 *                  z(c) = normal quantile at (1 + c)/2
 *   both           sigma^2 = (sigma_T T/(T - T0))^2 + sigma_K^2          (3)
 *                  exact without prevailing torque T0, else first order:
 *                  refused where T0 exceeds half of the torque's low end, from
 *                  where on the low end would come out much too high
 *   ends           F exp(-z sigma), F exp(+z sigma), z at the wanted
 *                  coverage; alpha = exp(2 z sigma), s = tanh(z sigma)   (4)
 *   high end       tension F_high/A with the twist of the nominal torque: a
 *                  stud that gets more tension from the same torque got it
 *                  from less friction                                    (5)
 *
 * So (1) and (4) give a published ± back at its own coverage. Sources: (1) VDI
 * 2230-1, tightening factor; (2) to (4) follow for a log-normal product.
 *
 * Not in it: settling and loosening after tightening, elastic interaction of
 * several studs, a tool that reads wrong every time (its permitted deviation
 * is counted as scatter).
 */
#include "fastener/spread.h"
#include "fastener/torque.h"

#include <strapwise/method.h>

#include <gsl/gsl_cdf.h>

#include <string.h>

#define SW__S sw_spread_out
const sw_field sw__spread_out_fields[] = {
    SW__OUT_TEXT(method),
    SW__OUT(torque_Nm, "N.m"),
    SW__OUT(preload_low_N, "N"),
    SW__OUT(preload_N, "N"),
    SW__OUT(preload_high_N, "N"),
    SW__OUT(coverage, ""),
    SW__OUT(alpha, ""),
    SW__OUT(scatter_pct, "%"),
    SW__OUT(sigma_ln, ""),
    SW__OUT(tool_share, ""),
    SW__OUT(proof_use_high, ""),
    SW__OUT(yield_use_high, ""),
    SW__END,
};
#undef SW__S

double sw__spread_z(double coverage)
{
    return gsl_cdf_ugaussian_Pinv((1 + coverage) / 2);
}

sw__sigmas sw__spread_sigmas(const sw_spread_in *full)
{
    const double z = sw__spread_z(full->published_coverage);
    sw__sigmas s = {0, 0, 0};
    if (sw__is_set(full->scatter_pct)) {
        s.factor = atanh(full->scatter_pct / 100) / z;
        return s;
    }
    s.tool = atanh(full->tool_scatter_pct / 100) / z;
    s.factor = atanh(full->factor_scatter_pct / 100) / z;
    s.apart = 1;
    return s;
}

double sw__spread_sigma(const sw__sigmas *s, double torque_Nm, double lost_Nm)
{
    return hypot(s->tool * (torque_Nm / (torque_Nm - lost_Nm)), s->factor);
}

uint64_t sw__spread_warnings(const sw_spread_in *full)
{
    if (!full->method[0])
        return 0;
    const sw_method_out m = sw_method(full->method, NULL);
    const int by_torque =
        strcmp(m.reads, "torque") == 0 || strcmp(m.reads, "feel") == 0;
    return m.warnings | (by_torque ? 0 : SW_WARN_METHOD_READS);
}

double sw__spread_least(const sw__sigmas *s, double z, double lost_Nm)
{
    return s->tool > 0 ? 2 * lost_Nm * exp(z * s->tool) : 0;
}

static int check_lost(const sw__sigmas *s, double z, double torque_Nm,
                      double lost_Nm, sw_error *err)
{
    if (torque_Nm >= sw__spread_least(s, z, lost_Nm))
        return SW_OK;
    return sw__fail(err, SW_ERR_NONE, "prevailing_torque_Nm",
                    "prevailing_torque_Nm: takes more than half of the torque "
                    "at the low end of the tool's scatter; how far the rest "
                    "scatters is not known");
}

void sw__spread_judge(const sw_torque_out *t, double high_N, double *proof_use,
                      double *yield_use, uint64_t *warnings)
{
    const double more = high_N / t->preload_N;
    *proof_use = *yield_use = SW_UNSET;
    if (sw__is_set(t->proof_use)) {
        *proof_use = more * t->proof_use;
        if (*proof_use > SW__PROOF_ADVISED)
            *warnings |= SW_WARN_HIGH_OVER_PROOF;
    }
    if (!sw__is_set(t->yield_use))
        return;
    const double yield_MPa = t->equivalent_MPa / t->yield_use;
    *yield_use = hypot(more * t->tension_MPa, sqrt(3) * t->torsion_MPa) /
                 yield_MPa; /* (5) */
    if (*yield_use > 1)
        *warnings |= SW_WARN_HIGH_OVER_YIELD;
}

static int solve(const sw_torque_in *in, const sw_spread_in *spread,
                 sw_spread_out *out, sw_error *err)
{
    sw_torque_in full = *in;
    sw_spread_in scatter = *spread;
    int status = sw_torque_resolve(&full, err);
    if (!status)
        status = sw__spread_open(&scatter, sw__lubrication_used(&full), err);
    if (status)
        return status;
    const sw_torque_out t = sw_torque(&full, err);
    if (t.status)
        return t.status;
    const sw__sigmas s = sw__spread_sigmas(&scatter);
    const double z = sw__spread_z(scatter.coverage);
    const double lost = full.prevailing_torque_Nm;
    status = check_lost(&s, z, t.torque_Nm, lost, err);
    if (status)
        return status;
    const double sigma = sw__spread_sigma(&s, t.torque_Nm, lost);
    const double width = z * sigma;
    out->warnings = t.warnings | sw__spread_warnings(&scatter);
    sw__copy(out->method, sizeof out->method, scatter.method);
    out->torque_Nm = t.torque_Nm;
    out->preload_N = t.preload_N;
    out->preload_low_N = t.preload_N * exp(-width);
    out->preload_high_N = t.preload_N * exp(width);
    out->coverage = scatter.coverage;
    out->alpha = exp(2 * width);
    out->scatter_pct = 100 * tanh(width);
    out->sigma_ln = sigma;
    const double from_factor = s.factor / sigma;
    out->tool_share =
        s.apart && sigma > 0 ? 1 - from_factor * from_factor : SW_UNSET;
    sw__spread_judge(&t, out->preload_high_N, &out->proof_use_high,
                     &out->yield_use_high, &out->warnings);
    return SW_OK;
}

sw_spread_out sw_spread(const sw_torque_in *in, const sw_spread_in *spread,
                        sw_error *err)
{
    sw_spread_out out;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    int status = in ? SW_OK : sw__fail_null(err, "in");
    if (!status && !spread)
        status = sw__fail_null(err, "spread");
    if (!status)
        status = solve(in, spread, &out, err);
    if (status)
        sw__spoil(&out, SW_STRUCT_SPREAD_OUT, status);
    return out;
}
