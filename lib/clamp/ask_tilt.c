/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Ask tilt: how far a strap may tilt and keep a limit.
 *
 * All tilts within 10 degrees at which |side pull| and |toe force error| keep
 * their limits; of several ranges the one nearest level. Found by solving the
 * strap (strap.c) at trial tilts: a walk outward from level in twentieths of a
 * degree, with a look for a zero of side pull and of toe error in every step so
 * that a narrow range is not missed, then bisection at both ends. A trial that
 * has no equilibrium counts as not allowed.
 *
 * As a slope: 1000 tan(theta) mm/m; on a vial: that over its sensitivity (the
 * slope that moves the bubble one division, DIN 2276 practice); as heel height
 * over level: L tan(theta).
 */
#include "base/internal.h"
#include "base/root.h"
#include "clamp/strap.h"

#include <strapwise/ask.h>

#include <string.h>

#define SW__S sw_tilt_out
const sw_field sw__tilt_out_fields[] = {
    SW__OUT(tilt_low_deg, "deg"),
    SW__OUT(tilt_high_deg, "deg"),
    SW__OUT(heel_low_mm, "mm"),
    SW__OUT(heel_high_mm, "mm"),
    SW__OUT(slope_low_mm_per_m, "mm/m"),
    SW__OUT(slope_high_mm_per_m, "mm/m"),
    SW__OUT(divisions_low, ""),
    SW__OUT(divisions_high, ""),
    SW__OUT(side_pull_low_N, "N"),
    SW__OUT(side_pull_high_N, "N"),
    SW__OUT(toe_error_low_pct, "%"),
    SW__OUT(toe_error_high_pct, "%"),
    SW__END,
};
#undef SW__S

#define TILT_MOST_DEG 10.0
#define ROUNDING 1e-9   /* of the stud tension: a limit of zero can be met */
#define NOT_ALLOWED 1e6 /* excess of a trial without equilibrium */

typedef struct {
    sw_strap_in in;
    double side_pull_N, toe_error_pct;
    int basis;
} tilt_demand;

static void set_tilt(sw_strap_in *in, double tilt_deg)
{
    in->tilt_deg = tilt_deg;
    in->heel_height_mm = SW_UNSET;
}

static double toe_error(const sw_strap_out *s, int basis)
{
    if (basis != SW_BASIS_BAND)
        return s->toe_force_error_pct;
    const double low = 100 * (s->toe_force_low_N / s->toe_force_level_N - 1);
    const double high = 100 * (s->toe_force_high_N / s->toe_force_level_N - 1);
    return fabs(low) > fabs(high) ? low : high;
}

static double side_pull(const sw_strap_out *s, int basis)
{
    if (basis != SW_BASIS_BAND)
        return s->side_pull_N;
    return fabs(s->side_pull_low_N) > fabs(s->side_pull_high_N)
               ? s->side_pull_low_N
               : s->side_pull_high_N;
}

static sw_strap_out try_tilt(tilt_demand *d, double tilt_deg)
{
    set_tilt(&d->in, tilt_deg);
    return d->basis == SW_BASIS_BAND ? sw_strap(&d->in, NULL)
                                     : sw__strap_bare(&d->in);
}

/* How far a tilt exceeds the demand: <= 0 is allowed. */
static double excess(double tilt_deg, void *with)
{
    tilt_demand *d = with;
    const sw_strap_out s = try_tilt(d, tilt_deg);
    if (s.status)
        return NOT_ALLOWED;
    double worst = -1;
    if (sw__is_set(d->side_pull_N))
        worst = fmax(worst, fabs(side_pull(&s, d->basis)) -
                                d->side_pull_N * (1 + 1e-12) -
                                ROUNDING * s.preload_N);
    if (sw__is_set(d->toe_error_pct))
        worst =
            fmax(worst, fabs(toe_error(&s, d->basis)) -
                            d->toe_error_pct * (1 + 1e-12) - 100 * ROUNDING);
    return worst;
}

/* Signed quantities whose size is limited. */
static double signed_pull(double tilt_deg, void *with)
{
    tilt_demand *d = with;
    const sw_strap_out s = try_tilt(d, tilt_deg);
    return s.status ? NAN : side_pull(&s, d->basis);
}

static double signed_error(double tilt_deg, void *with)
{
    tilt_demand *d = with;
    const sw_strap_out s = try_tilt(d, tilt_deg);
    return s.status ? NAN : toe_error(&s, d->basis);
}

/* Between two tilts that are not allowed: a tilt where side pull or toe error
 * passes through zero, if that one is allowed; NaN otherwise. */
static double allowed_between(tilt_demand *d, double low, double high)
{
    double (*const passes[])(double, void *) = {signed_pull, signed_error};
    for (int i = 0; i < 2; i++) {
        double from = low, to = high;
        if (sw__root(passes[i], d, &from, &to, 1e-12))
            continue;
        if (excess(from, d) <= 0)
            return from;
        if (excess(to, d) <= 0)
            return to;
    }
    return NAN;
}

/* A tilt that is allowed, nearest to level, or NaN: level itself, else a walk
 * outward in twentieths of a degree, both ways. */
static double allowed_tilt(tilt_demand *d)
{
    enum { STEPS = 200 };
    if (excess(0, d) <= 0)
        return 0;
    for (int i = 1; i <= STEPS; i++)
        for (int way = 1; way >= -1; way -= 2) {
            const double tilt = way * i * TILT_MOST_DEG / STEPS;
            const double before = way * (i - 1) * TILT_MOST_DEG / STEPS;
            if (excess(tilt, d) <= 0)
                return tilt;
            const double between =
                allowed_between(d, fmin(before, tilt), fmax(before, tilt));
            if (!isnan(between))
                return between;
        }
    return NAN;
}

/* The end of the allowed range, going from an allowed tilt one way. */
static double end_of_range(tilt_demand *d, double from, int way)
{
    const double step = TILT_MOST_DEG / 200;
    double inside = from;
    while (fabs(inside) < TILT_MOST_DEG || way * inside < 0) {
        double next = inside + way * step;
        if (fabs(next) > TILT_MOST_DEG)
            next = way * TILT_MOST_DEG;
        if (excess(next, d) > 0) {
            double low = fmin(inside, next), high = fmax(inside, next);
            if (sw__root(excess, d, &low, &high, 1e-12))
                return inside;
            return way > 0 ? low : high; /* the side that is still allowed */
        }
        inside = next;
    }
    return inside;
}

static int check_demand(const tilt_demand *d, double vial, sw_error *err)
{
    if (!sw__is_set(d->side_pull_N) && !sw__is_set(d->toe_error_pct))
        return sw__fail(err, SW_ERR_MISSING, "side_pull_N",
                        "side_pull_N: missing; give a limit of side pull, of "
                        "toe force error, or both");
    if (sw__is_set(d->side_pull_N) &&
        !(d->side_pull_N >= 0 && d->side_pull_N <= 1e7))
        return sw__fail_range(err, "side_pull_N", d->side_pull_N, "N", 0, 1e7);
    if (sw__is_set(d->toe_error_pct) &&
        !(d->toe_error_pct >= 0 && d->toe_error_pct <= 100))
        return sw__fail_range(err, "toe_error_pct", d->toe_error_pct, "%", 0,
                              100);
    if (!(vial >= 0.001 && vial <= 50))
        return sw__fail_range(err, "vial_mm_per_m", vial, "mm/m", 0.001, 50);
    if (!sw_word(SW_WORDS_BASIS, d->basis))
        return sw__fail(err, SW_ERR_RANGE, "basis",
                        "basis: is none of nominal, band");
    return SW_OK;
}

static void report_end(tilt_demand *d, double tilt, sw_tilt_out *out, int high,
                       double vial)
{
    set_tilt(&d->in, tilt);
    const sw_strap_out s = sw_strap(&d->in, NULL);
    const double slope = 1000 * tan(SW__RAD(tilt));
    const double L = d->in.stud_to_toe_mm + d->in.stud_to_heel_mm;
    out->warnings |= s.warnings;
    *(high ? &out->tilt_high_deg : &out->tilt_low_deg) = tilt;
    *(high ? &out->heel_high_mm : &out->heel_low_mm) = slope * L / 1000;
    *(high ? &out->slope_high_mm_per_m : &out->slope_low_mm_per_m) = slope;
    *(high ? &out->divisions_high : &out->divisions_low) = slope / vial;
    *(high ? &out->side_pull_high_N : &out->side_pull_low_N) =
        side_pull(&s, d->basis);
    *(high ? &out->toe_error_high_pct : &out->toe_error_low_pct) =
        toe_error(&s, d->basis);
}

static int solve_tilt(tilt_demand *d, double vial, sw_tilt_out *out,
                      sw_error *err)
{
    if (d->in.nut == SW_NUT_STILL && d->basis != SW_BASIS_BAND)
        return sw__fail(
            err, SW_ERR_CONFLICT, "basis",
            "basis: a nut that does not turn has no nominal answer; "
            "ask for the band");
    int status = check_demand(d, vial, err);
    if (!status) { /* for what is wrong with it; tipping when level is not */
        status = sw_strap(&d->in, err).status;
        status = status == SW_ERR_NONE ? SW_OK : status;
    }
    if (status)
        return status;
    const double from = allowed_tilt(d);
    if (isnan(from))
        return sw__is_set(d->side_pull_N)
                   ? sw__fail(err, SW_ERR_NONE, "side_pull_N",
                              "side_pull_N: no tilt within 10 degrees keeps "
                              "the limits")
                   : sw__fail(err, SW_ERR_NONE, "toe_error_pct",
                              "toe_error_pct: no tilt within 10 degrees keeps "
                              "the limit");
    report_end(d, end_of_range(d, from, -1), out, 0, vial);
    report_end(d, end_of_range(d, from, 1), out, 1, vial);
    return SW_OK;
}

sw_tilt_out sw_strap_tilt(const sw_strap_in *in, double side_pull_N,
                          double toe_error_pct, double vial_mm_per_m, int basis,
                          sw_error *err)
{
    sw_tilt_out out;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    int status;
    if (in) {
        tilt_demand d = {*in, side_pull_N, toe_error_pct, basis};
        status = sw__reopen(&d.in, SW_STRUCT_STRAP_IN, &d.in.assumed,
                            &d.in.seal, err);
        set_tilt(&d.in, 0);
        if (!status)
            status = solve_tilt(&d, vial_mm_per_m, &out, err);
    } else {
        status = sw__fail_null(err, "in");
    }
    if (status)
        sw__spoil(&out, SW_STRUCT_TILT_OUT, status);
    return out;
}
