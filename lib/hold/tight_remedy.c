/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tight remedy: single changes that a shop can make, each tried and computed
 * anew; told are those with which a torque exists, in a fixed order.
 */
#include "hold/tight.h"

#include <string.h>

enum { MOST_STRAPS = 12, STEPS = 19 };

typedef struct {
    sw_tight_in in;
    sw_strap_in strap;
    sw_spread_in spread;
} change;

/* Whether a torque exists after a change; its answer in `out` then. */
static int opens(const change *c, double value, sw_remedy_out *out)
{
    const sw_tight_out t = sw_tight(&c->in, &c->strap, &c->spread, NULL);
    if (t.status || t.verdict != SW_VERDICT_FITS)
        return 0;
    out->value = value;
    out->warnings = t.warnings;
    out->torque_Nm = t.torque_Nm;
    out->torque_low_Nm = t.torque_low_Nm;
    out->torque_high_Nm = t.torque_high_Nm;
    return 1;
}

static int more_straps(const change *now, sw_remedy_out *out)
{
    change c = *now;
    while (c.in.straps < MOST_STRAPS) {
        c.in.straps += 1;
        if (opens(&c, c.in.straps, out))
            return 1;
    }
    return 0;
}

/* In steps of 5 % of the cut. */
static int lighter_cut(const change *now, sw_remedy_out *out)
{
    change c = *now;
    for (int i = STEPS; i >= 1; i--) {
        const double part = (double)i / (STEPS + 1);
        c.in.cut_N = part * now->in.cut_N;
        if (sw__is_set(now->in.lift_N))
            c.in.lift_N = part * now->in.lift_N;
        if (c.in.cut_N > 0 && opens(&c, c.in.cut_N, out))
            return 1;
    }
    return 0;
}

/* The usual ways, from the loosest to the surest. */
static int surer_tightening(const change *now, sw_remedy_out *out)
{
    static const double pct[] = {30, 25, 20, 15, 10, 5};
    const sw_tight_out t = sw_tight(&now->in, &now->strap, &now->spread, NULL);
    const double published = 100 * (t.alpha - 1) / (t.alpha + 1);
    for (size_t i = 0; i < sizeof pct / sizeof pct[0]; i++) {
        change c = *now;
        c.spread.method[0] = '\0';
        c.spread.scatter_pct = pct[i];
        c.spread.tool_scatter_pct = c.spread.factor_scatter_pct = SW_UNSET;
        if (pct[i] < published && opens(&c, pct[i], out))
            return 1;
    }
    return 0;
}

static int level_straps(const change *now, sw_remedy_out *out)
{
    change c = *now;
    c.strap.seat = SW_SEAT_SPHERICAL;
    c.strap.restraint = SW_RESTRAINT_HELD;
    if (sw__is_set(c.strap.tilt_deg))
        c.strap.tilt_deg = 0;
    else if (sw__is_set(c.strap.heel_height_mm) &&
             sw__is_set(c.strap.part_height_mm))
        c.strap.heel_height_mm =
            c.strap.part_height_mm + fmax(0, c.strap.pad_thickness_mm) +
            (sw__is_set(c.strap.step_mm) ? c.strap.step_mm : 0);
    return opens(&c, 0, out);
}

static int more_grip(const change *now, sw_remedy_out *out)
{
    static const double mu[] = {0.2, 0.25, 0.3, 0.35, 0.4};
    const double friction =
        sw__is_set(now->in.friction) ? now->in.friction : 0.15;
    for (size_t i = 0; i < sizeof mu / sizeof mu[0]; i++) {
        change c = *now;
        c.in.friction = mu[i];
        if (mu[i] > friction && opens(&c, mu[i], out))
            return 1;
    }
    return 0;
}

sw_remedy_out sw_tight_remedy(const sw_tight_in *in, const sw_strap_in *strap,
                              const sw_spread_in *spread, int index,
                              sw_error *err)
{
    static const struct {
        int remedy;
        int (*tried)(const change *now, sw_remedy_out *out);
    } row[] = {
        {SW_REMEDY_STRAPS, more_straps},
        {SW_REMEDY_TIGHTENING, surer_tightening},
        {SW_REMEDY_LEVEL, level_straps},
        {SW_REMEDY_GRIP, more_grip},
        {SW_REMEDY_CUT, lighter_cut},
    };
    sw_remedy_out out;
    memset(&out, 0, sizeof out);
    const sw_tight_out now = sw_tight(in, strap, spread, err);
    int status = now.status;
    if (!status && index < 0)
        status = sw__fail_range(err, "index", index, "", 0, 4);
    if (!status) {
        change c = {*in, *strap, *spread};
        /* a resolved question is opened, or a change would be refused */
        status = sw__reopen(&c.in, SW_STRUCT_TIGHT_IN, &c.in.assumed,
                            &c.in.seal, err);
        if (!status)
            status = sw__reopen(&c.strap, SW_STRUCT_STRAP_IN, &c.strap.assumed,
                                &c.strap.seal, err);
        if (!status)
            status = sw__reopen(&c.spread, SW_STRUCT_SPREAD_IN,
                                &c.spread.assumed, &c.spread.seal, err);
        for (size_t i = 0; !status && i < sizeof row / sizeof row[0]; i++) {
            out.remedy = row[i].remedy;
            if (row[i].tried(&c, &out) && index-- == 0)
                return out;
        }
        if (!status)
            status = sw__fail(err, SW_ERR_NONE, "index",
                              "index: no further single change lets a torque "
                              "exist");
    }
    out.remedy = 0;
    out.warnings = 0;
    sw__spoil(&out, SW_STRUCT_REMEDY_OUT, status);
    return out;
}

#define SW__S sw_remedy_out
const sw_field sw__remedy_out_fields[] = {
    SW__OUT_WORD(remedy, SW_WORDS_REMEDY),
    SW__OUT(value, ""),
    SW__OUT(torque_Nm, "N.m"),
    SW__OUT(torque_low_Nm, "N.m"),
    SW__OUT(torque_high_Nm, "N.m"),
    SW__END,
};
#undef SW__S
