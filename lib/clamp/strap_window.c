/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap window: the torque that keeps the toe force between two limits.
 *
 * The limits at the toe become limits of the stud tension: F_hold is the least
 * tension at which even the low end of the strap's own band holds, F_flat the
 * largest at which even its high end does not bend. Between them window.c finds
 * the torque. So the strap's band and the scatter of the tightening stand one
 * on the other, which is the careful side: the band is no chance.
 */
#include "base/root.h"
#include "clamp/strap_resolve.h"
#include "fastener/window.h"

#include <strapwise/strap_spread.h>

#include <string.h>

typedef struct {
    sw_strap_in in;
    double wanted;
    int high; /* which end of the band */
} demand;

static double surplus(double log_F, void *with)
{
    demand *d = with;
    d->in.preload_N = exp(log_F);
    const sw_strap_out s = sw_strap(&d->in, NULL);
    if (s.status)
        return NAN;
    return (d->high ? s.toe_force_high_N : s.toe_force_low_N) - d->wanted;
}

/* Tension at which one end of the toe force is as wanted; the side of it that
 * keeps the demand. */
static double tension_for(demand *d, sw_error *err)
{
    enum { DOUBLINGS = 24 };
    const double a = d->in.stud_to_toe_mm, b = d->in.stud_to_heel_mm;
    const double guess = log(d->wanted * (a + b) / b); /* lever law */
    double low = guess, high = guess;
    int found = 0;
    for (int i = 0; i < DOUBLINGS && !found; i++) {
        low = fmax(low - log(2) / 8, log(1e-3));
        high = fmin(high + log(2) / 8, log(1e7));
        found = surplus(low, d) < 0 && surplus(high, d) > 0;
    }
    if (!found || sw__root(surplus, d, &low, &high, 1e-10)) {
        sw__fail(err, SW_ERR_NONE, d->high ? "flat_N" : "hold_N",
                 d->high ? "flat_N: no preload brings the high end of the toe "
                           "force there with this strap"
                         : "hold_N: no preload brings the low end of the toe "
                           "force there with this strap");
        return NAN;
    }
    return exp(d->high ? low : high);
}

/* The strap without its tension, and its question about torque. */
static int make_ready(const sw_strap_in *in, sw_strap_in *strap,
                      sw_torque_in *torque, uint64_t *warnings, sw_error *err)
{
    *strap = *in;
    int status = sw__reopen(strap, SW_STRUCT_STRAP_IN, &strap->assumed,
                            &strap->seal, err);
    if (status)
        return status;
    if (strap->nut == SW_NUT_STILL)
        return sw__fail(err, SW_ERR_CONFLICT, "nut",
                        "nut: nobody turns this one, so there is no torque to "
                        "find");
    strap->torque_Nm = SW_UNSET;
    strap->preload_N = 1; /* any that no stud minds */
    sw__strap_full full;
    status = sw__strap_open(strap, &full, err);
    if (status)
        return status;
    *torque = full.question;
    *warnings = full.warnings;
    return SW_OK;
}

static int solve(const sw_strap_in *in, const sw_spread_in *spread,
                 sw_window_out *out, sw_error *err)
{
    sw_torque_in torque;
    demand d = {*in, out->hold_N, 0};
    int status = make_ready(in, &d.in, &torque, &out->warnings, err);
    if (status)
        return status;
    const double hold = tension_for(&d, err);
    if (isnan(hold))
        return SW_ERR_NONE;
    d.wanted = out->flat_N;
    d.high = 1;
    const double flat = tension_for(&d, err);
    if (isnan(flat))
        return SW_ERR_NONE;
    status = sw__window_between(&torque, spread, hold, flat, out, err);
    if (!status && out->verdict == SW_VERDICT_FITS) {
        d.in.preload_N = out->preload_N;
        out->warnings |= sw_strap(&d.in, NULL).warnings;
    }
    return status;
}

sw_window_out sw_strap_window(const sw_strap_in *in, const sw_spread_in *spread,
                              double hold_N, double flat_N, sw_error *err)
{
    sw_window_out out;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    int status = in ? SW_OK : sw__fail_null(err, "in");
    if (!status && !spread)
        status = sw__fail_null(err, "spread");
    if (!status)
        status = sw__window_check(hold_N, flat_N, 1e7, err);
    out.hold_N = hold_N;
    out.flat_N = flat_N;
    if (!status)
        status = solve(in, spread, &out, err);
    if (status)
        sw__spoil(&out, SW_STRUCT_WINDOW_OUT, status);
    return out;
}
