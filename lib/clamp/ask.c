/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Ask: where the stud must stand, and how hard the nut must be turned, for a
 * wanted toe force.
 *
 * Answered by solving the same strap (strap.c) for trial values and narrowing
 * down by bisection; there is no second model. Place: the distance of toe and
 * heel is kept. Torque: the strap stays as it stands.
 */
#include "base/internal.h"
#include "base/root.h"
#include "clamp/strap.h"

#include <strapwise/ask.h>

#include <string.h>

#define SW__S sw_place_out
const sw_field sw__place_out_fields[] = {
    SW__OUT(stud_to_toe_mm, "mm"),
    SW__OUT(stud_to_heel_mm, "mm"),
    SW__OUT(toe_force_N, "N"),
    SW__END,
};
#undef SW__S

#define SW__S sw_strap_torque_out
const sw_field sw__strap_torque_out_fields[] = {
    SW__OUT(preload_N, "N"),
    SW__OUT(torque_Nm, "N.m"),
    SW__OUT(toe_force_N, "N"),
    SW__END,
};
#undef SW__S

typedef struct {
    sw_strap_in in;
    double span, wanted;
} toe_demand;

static double toe_force_of(const sw_strap_in *in)
{
    const sw_strap_out s = sw__strap_bare(in);
    return s.status ? NAN : s.toe_force_N;
}

static double surplus_at_place(double a, void *with)
{
    toe_demand *d = with;
    d->in.stud_to_toe_mm = a;
    d->in.stud_to_heel_mm = d->span - a;
    return toe_force_of(&d->in) - d->wanted;
}

static double surplus_at_tension(double log_F, void *with)
{
    toe_demand *d = with;
    d->in.preload_N = exp(log_F);
    return toe_force_of(&d->in) - d->wanted;
}

/* Opens a question again and looks for what is wrong with it before trials
 * hide that. One that merely tips as it stands may be answered all the same. */
static int make_ready(sw_strap_in *in, sw_error *err)
{
    int status =
        sw__reopen(in, SW_STRUCT_STRAP_IN, &in->assumed, &in->seal, err);
    if (!status && in->nut == SW_NUT_STILL)
        return sw__fail(err, SW_ERR_CONFLICT, "nut",
                        "nut: one that does not turn has no nominal answer to "
                        "search for");
    if (!status)
        status = sw_strap(in, err).status;
    return status == SW_ERR_NONE ? SW_OK : status;
}

static int check_wanted(double toe_force_N, sw_error *err)
{
    if (!(toe_force_N >= 1e-3 && toe_force_N <= 1e7))
        return sw__fail_range(err, "toe_force_N", toe_force_N, "N", 1e-3, 1e7);
    return SW_OK;
}

static int solve_place(toe_demand *d, sw_place_out *out, sw_error *err)
{
    enum { STEPS = 200 };
    const double nearest = 1; /* mm: as for the fields themselves */
    const double room = d->span - 2 * nearest;
    double before = NAN, low = 0, high = 0;
    int found = 0;
    for (int i = 0; i <= STEPS && !found; i++) {
        const double a = nearest + room * i / STEPS;
        const double now = surplus_at_place(a, d);
        found = !isnan(before) && !isnan(now) && (before > 0) != (now > 0);
        low = found ? a - room / STEPS : low;
        high = found ? a : high;
        before = now;
    }
    if (!found || sw__root(surplus_at_place, d, &low, &high, 1e-9))
        return sw__fail(err, SW_ERR_NONE, "toe_force_N",
                        "toe_force_N: no place of the stud between toe and "
                        "heel gives it at this preload");
    surplus_at_place((low + high) / 2, d);
    const sw_strap_out s = sw_strap(&d->in, err);
    out->warnings = s.warnings;
    out->stud_to_toe_mm = d->in.stud_to_toe_mm;
    out->stud_to_heel_mm = d->in.stud_to_heel_mm;
    out->toe_force_N = s.toe_force_N;
    return s.status;
}

sw_place_out sw_strap_place(const sw_strap_in *in, double toe_force_N,
                            sw_error *err)
{
    sw_place_out out;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    int status = in ? check_wanted(toe_force_N, err) : sw__fail_null(err, "in");
    if (!status) {
        toe_demand d = {*in, 0, toe_force_N};
        status = make_ready(&d.in, err);
        d.span = d.in.stud_to_toe_mm + d.in.stud_to_heel_mm;
        if (!status)
            status = solve_place(&d, &out, err);
    }
    if (status)
        sw__spoil(&out, SW_STRUCT_PLACE_OUT, status);
    return out;
}

static int solve_tension(toe_demand *d, sw_strap_torque_out *out, sw_error *err)
{
    enum { DOUBLINGS = 24 };
    /* toe force grows with tension; the lever law gives the first guess */
    const double guess = log(d->wanted * d->span / d->in.stud_to_heel_mm);
    double low = guess, high = guess;
    int found = 0;
    for (int i = 0; i < DOUBLINGS && !found; i++) {
        low = fmax(low - log(2) / 2, log(1e-3));
        high = fmin(high + log(2) / 2, log(1e7));
        found =
            surplus_at_tension(low, d) < 0 && surplus_at_tension(high, d) > 0;
    }
    if (!found || sw__root(surplus_at_tension, d, &low, &high, 1e-12))
        return sw__fail(err, SW_ERR_NONE, "toe_force_N",
                        "toe_force_N: no preload gives it with this strap");
    surplus_at_tension((low + high) / 2, d);
    const sw_strap_out s = sw_strap(&d->in, err);
    out->warnings = s.warnings;
    out->preload_N = s.preload_N;
    out->torque_Nm = s.torque_Nm;
    out->toe_force_N = s.toe_force_N;
    return s.status;
}

sw_strap_torque_out sw_strap_torque(const sw_strap_in *in, double toe_force_N,
                                    sw_error *err)
{
    sw_strap_torque_out out;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    int status = in ? check_wanted(toe_force_N, err) : sw__fail_null(err, "in");
    if (!status) {
        toe_demand d = {*in, 0, toe_force_N};
        d.in.torque_Nm = SW_UNSET;
        d.in.preload_N = 1; /* any that no stud minds */
        d.in.seal = 0;      /* changed by us */
        status = make_ready(&d.in, err);
        d.span = d.in.stud_to_toe_mm + d.in.stud_to_heel_mm;
        if (!status)
            status = solve_tension(&d, &out, err);
    }
    if (status)
        sw__spoil(&out, SW_STRUCT_STRAP_TORQUE_OUT, status);
    return out;
}
