/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Window: the torque whose low end still holds and whose high end does not
 * bend.
 *
 * Low and high end of one torque are F/sqrt(alpha) and F sqrt(alpha) about the
 * preload F that it is meant to give (spread.c). They fit between two limits
 * where
 *
 *   F_flat/F_hold >= alpha                                               (1)
 *
 * and then any F from F_hold sqrt(alpha) to F_flat/sqrt(alpha) does; the one
 * with the same room on both sides is sqrt(F_hold F_flat), so that
 *
 *   T = T0 + K d sqrt(F_hold F_flat)                                     (2)
 *
 * The ± that would just fit is (r - 1)/(r + 1) with r = F_flat/F_hold, at the
 * coverage asked for. It is told at the coverage at which a ± is published, as
 * tanh(z_p/z_c ln(r)/2), so that it can be compared with that of a method.
 *
 * With a prevailing torque T0 alpha falls a little with the torque. (1) is
 * judged at (2): where that one does not fit, no other does. The smallest and
 * the largest torque take alpha at their own,
 *
 *   F = F_hold sqrt(alpha(F)), F = F_flat/sqrt(alpha(F))                 (3)
 *
 * Where the high end would take the stud past its yield, the tension at which
 * it just reaches it stands for F_flat: nothing above can be promised.
 *
 * Source: follows from the definition of alpha in VDI 2230-1.
 */
#include "fastener/window.h"

#include "fastener/spread.h"

#include <strapwise/units.h>

#include <string.h>

#define SW__S sw_window_out
const sw_field sw__window_out_fields[] = {
    SW__OUT(torque_Nm, "N.m"),
    SW__OUT(torque_low_Nm, "N.m"),
    SW__OUT(torque_high_Nm, "N.m"),
    SW__OUT_WORD(verdict, SW_WORDS_VERDICT),
    SW__OUT(hold_N, "N"),
    SW__OUT(flat_N, "N"),
    SW__OUT(ratio, ""),
    SW__OUT(alpha, ""),
    SW__OUT(coverage, ""),
    SW__OUT(fitting_pct, "%"),
    SW__OUT(preload_N, "N"),
    SW__OUT(preload_low_N, "N"),
    SW__OUT(preload_high_N, "N"),
    SW__OUT(hold_preload_N, "N"),
    SW__OUT(flat_preload_N, "N"),
    SW__OUT(proof_use_high, ""),
    SW__OUT(yield_use_high, ""),
    SW__OUT_TEXT(sentence),
    SW__END,
};
#undef SW__S

int sw__window_check(double hold_N, double flat_N, double most, sw_error *err)
{
    if (!(hold_N >= 1e-3 && hold_N <= most))
        return sw__fail_range(err, "hold_N", hold_N, "N", 1e-3, most);
    if (!(flat_N >= 1e-3 && flat_N <= most))
        return sw__fail_range(err, "flat_N", flat_N, "N", 1e-3, most);
    if (flat_N > hold_N)
        return SW_OK;
    char message[160];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "flat_N: ");
    sw__line_add_number(&line, flat_N);
    sw__line_add(&line, " N is not above hold_N, ");
    sw__line_add_number(&line, hold_N);
    sw__line_add(&line, " N: no force at all is allowed");
    return sw__fail(err, SW_ERR_CONFLICT, "flat_N", message);
}

static void add_rounded(sw__line *line, double value)
{
    char text[40];
    sw_format(value, 3, text, sizeof text);
    sw__line_add(line, text);
}

/* Three digits, on the side that still keeps the limit. */
static void add_inward(sw__line *line, double value, int up)
{
    const double step = pow(10, floor(log10(value)) - 2), rounding = 1e-9;
    add_rounded(line, step * (up ? ceil(value / step - rounding)
                                 : floor(value / step + rounding)));
}

/* Three digits of both, or as many as tell them apart. */
static void add_compared(sw__line *line, double ratio, double alpha)
{
    enum { DIGITS_MOST = 9 };
    char limits[40], spread[40];
    for (int digits = 3; digits <= DIGITS_MOST; digits++) {
        sw_format(ratio, digits, limits, sizeof limits);
        sw_format(alpha, digits, spread, sizeof spread);
        if (strcmp(limits, spread) != 0)
            break;
    }
    sw__line_add(line, " limits are ");
    sw__line_add(line, limits);
    sw__line_add(line, " apart, one torque spreads the force by ");
    sw__line_add(line, spread);
}

static void say(sw_window_out *out)
{
    sw__line line = sw__line_start(out->sentence, sizeof out->sentence);
    const int fits = out->verdict == SW_VERDICT_FITS;
    if (fits) {
        add_rounded(&line, out->torque_Nm);
        sw__line_add(&line, " N.m keeps both limits");
        const double wide = 1.03; /* narrower has no third digit of its own */
        if (out->torque_high_Nm > wide * out->torque_low_Nm) {
            sw__line_add(&line, " (any torque from ");
            add_inward(&line, out->torque_low_Nm, 1);
            sw__line_add(&line, " to ");
            add_inward(&line, out->torque_high_Nm, 0);
            sw__line_add(&line, " N.m does)");
        }
        sw__line_add(&line, ": the");
    } else {
        sw__line_add(&line, "No torque works: the");
    }
    const int stud = (out->warnings & SW_WARN_STUD_ENDS_WINDOW) != 0;
    add_compared(&line, out->ratio, out->alpha);
    if (stud)
        sw__line_add(&line, "; the upper limit is the stud's yield");
    if (fits) {
        sw__line_add(&line, ".");
        return;
    }
    if (!(out->ratio > 1)) {
        sw__line_add(&line, stud ? ", which is below the lower one."
                                 : "; the strap's own band alone is wider "
                                   "than that.");
        return;
    }
    sw__line_add(&line, "; a way of tightening with +-");
    add_rounded(&line, floor(10 * out->fitting_pct + 1e-9) / 10);
    sw__line_add(&line, " % or better would fit, or limits farther apart.");
}

/* What stands behind the spread of one nut, at any torque. */
typedef struct {
    sw__sigmas sigmas;
    double z, published_z;
    double lost_Nm;  /* prevailing torque */
    double Nm_per_N; /* of the rest */
} law;

static int open_law(const sw_torque_in *in, const sw_spread_in *spread,
                    const sw_spread_out *middle, law *w, sw_error *err)
{
    sw_torque_in nut = *in;
    sw_spread_in full = *spread;
    int status = sw_torque_resolve(&nut, err);
    if (!status)
        status = sw__spread_open(&full, sw__lubrication_used(&nut), err);
    if (status)
        return status;
    w->sigmas = sw__spread_sigmas(&full);
    w->z = sw__spread_z(full.coverage);
    w->published_z = sw__spread_z(full.published_coverage);
    w->lost_Nm = nut.prevailing_torque_Nm;
    w->Nm_per_N = (middle->torque_Nm - w->lost_Nm) / middle->preload_N;
    return SW_OK;
}

static double torque_of(const law *w, double preload_N)
{
    return w->lost_Nm + w->Nm_per_N * preload_N;
}

/* Equation (3), the side by its sign: the torque whose end is at the limit, by
 * bisection between the limit, which is too near, and a preload that fits. */
static double torque_at_limit(const law *w, double limit_N, double fits_N,
                              int side)
{
    enum { HALVINGS = 64 };
    double near = log(limit_N), fits = log(fits_N);
    for (int i = 0; i < HALVINGS; i++) {
        const double x = near + (fits - near) / 2;
        const double sigma =
            sw__spread_sigma(&w->sigmas, torque_of(w, exp(x)), w->lost_Nm);
        *(side * (x - log(limit_N)) < w->z * sigma ? &near : &fits) = x;
    }
    return torque_of(w, exp(fits));
}

/* A stud past its yield keeps no promise, so the high end must not reach it:
 * the stresses at the high end are in proportion to the tension aimed at. */
static double stud_limit(const sw_spread_out *s, double flat_preload_N)
{
    if (!sw__is_set(s->yield_use_high))
        return flat_preload_N;
    return fmin(flat_preload_N, s->preload_high_N / s->yield_use_high);
}

int sw__window_between(const sw_torque_in *in, const sw_spread_in *spread,
                       double hold_preload_N, double flat_preload_N,
                       sw_window_out *out, sw_error *err)
{
    sw_torque_in q = *in;
    int status = sw__reopen(&q, SW_STRUCT_TORQUE_IN, &q.assumed, &q.seal, err);
    if (status)
        return status;
    q.torque_Nm = q.use = SW_UNSET;
    q.preload_N = sqrt(hold_preload_N) * sqrt(flat_preload_N);
    sw_spread_out s = sw_spread(&q, spread, err);
    if (s.status)
        return s.status;
    const double most = stud_limit(&s, flat_preload_N);
    if (most < flat_preload_N) {
        out->warnings |= SW_WARN_STUD_ENDS_WINDOW;
        flat_preload_N = most;
        q.preload_N = sqrt(hold_preload_N) * sqrt(most);
        s = sw_spread(&q, spread, err);
        if (s.status)
            return s.status;
    }
    law w;
    status = open_law(&q, spread, &s, &w, err);
    if (status)
        return status;
    out->hold_preload_N = hold_preload_N;
    out->flat_preload_N = flat_preload_N;
    out->ratio = flat_preload_N / hold_preload_N;
    out->fitting_pct =
        out->ratio < 1 ? SW_UNSET
                       : 100 * tanh(w.published_z / w.z * log(out->ratio) / 2);
    out->alpha = s.alpha;
    out->coverage = s.coverage;
    out->warnings |= s.warnings;
    if (out->ratio < s.alpha) {
        out->verdict = SW_VERDICT_NONE;
        out->torque_Nm = out->torque_low_Nm = out->torque_high_Nm = SW_UNSET;
        out->preload_N = out->preload_low_N = out->preload_high_N = SW_UNSET;
        out->proof_use_high = out->yield_use_high = SW_UNSET;
        out->warnings &= ~(SW_WARN_HIGH_OVER_PROOF | SW_WARN_HIGH_OVER_YIELD |
                           SW_WARN_OVER_PROOF | SW_WARN_OVER_YIELD);
        say(out);
        return SW_OK;
    }
    out->verdict = SW_VERDICT_FITS;
    out->torque_Nm = s.torque_Nm;
    out->torque_low_Nm =
        fmax(torque_at_limit(&w, hold_preload_N, s.preload_N, 1),
             sw__spread_least(&w.sigmas, w.z, w.lost_Nm));
    out->torque_high_Nm = torque_at_limit(&w, flat_preload_N, s.preload_N, -1);
    out->preload_N = s.preload_N;
    out->preload_low_N = s.preload_low_N;
    out->preload_high_N = s.preload_high_N;
    out->proof_use_high = s.proof_use_high;
    out->yield_use_high = s.yield_use_high;
    say(out);
    return SW_OK;
}

sw_window_out sw_window(const sw_torque_in *in, const sw_spread_in *spread,
                        double hold_N, double flat_N, sw_error *err)
{
    sw_window_out out;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    int status = in ? SW_OK : sw__fail_null(err, "in");
    if (!status && !spread)
        status = sw__fail_null(err, "spread");
    if (!status)
        status = sw__window_check(hold_N, flat_N, 1e8, err);
    out.hold_N = hold_N;
    out.flat_N = flat_N;
    if (!status)
        status = sw__window_between(in, spread, hold_N, flat_N, &out, err);
    if (status)
        sw__spoil(&out, SW_STRUCT_WINDOW_OUT, status);
    return out;
}
