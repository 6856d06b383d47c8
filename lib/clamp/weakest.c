/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Weakest: which part of one strap gives first.
 *
 * Symbols: F stud tension of the strap, A stress area; margin = tension at which
 * the part gives over F.
 *
 *   stud            tension, bending and, while the nut is turned, torsion
 *                   against the yield (strap.c, equation 11)              (1)
 *   stud thread,    shearing off in what the stud is screwed into
 *   tapped thread   (strip.c, equation 3)                                 (2)
 *   nut             F against proof stress times A                        (3)
 *   washer bearing  F/A_w against the limiting pressure of the strap's
 *                   material, VDI 2230. A_w: a ring of outer radius R and
 *                   hole r, less the slot of width s that runs under it
 *                     A_w = 2 [seg(R, s/2) - seg(r, s/2)]
 *                     seg(R, h) = R^2 acos(h/R) - h sqrt(R^2 - h^2), 0 for
 *                     h >= R                                              (4)
 *                   R: a washer spreads the nut's face by 0.8 of its
 *                   thickness to each side at most (VDI 2230, from memory)
 *   strap           bending at the stud against its yield (strap.c,
 *                   equation 10)                                          (5)
 *
 * Tension at which a part gives: (2), (3), (4) are in proportion to F; for the
 * stud and the strap the same strap is solved again for trial tensions, since
 * the stud's bending and the place where the strap bears change with F.
 *
 * Sources: the rooms named. Not in it: T-slot lips and T-nut, the machine
 * maker's limit governs; a washer that dishes over the slot; a nut that bears
 * on its rim presses one edge harder than (4); heel, part and packing; fatigue.
 */
#include "clamp/engage.h"

#include "base/root.h"
#include "base/tables.h"
#include "clamp/strap.h"

#include <strapwise/material.h>

#include <string.h>

#define SW__S sw_gives_out
const sw_field sw__gives_out_fields[] = {
    SW__OUT_WORD(part, SW_WORDS_GIVES),
    SW__OUT(margin, ""),
    SW__OUT(preload_at_limit_N, "N"),
    SW__OUT(load_N, "N"),
    SW__OUT(limit_N, "N"),
    SW__OUT(load_MPa, "MPa"),
    SW__OUT(limit_MPa, "MPa"),
    SW__OUT_TEXT(how),
    SW__END,
};
#undef SW__S

enum { PARTS = SW_GIVES_STRAP };

/* ---- the tension at which stud or strap gives ---- */

typedef struct {
    sw_strap_in in;
    int part;
} trial;

/* Load over limit, less one. */
static double excess(double log_F, void *with)
{
    trial *t = with;
    t->in.preload_N = exp(log_F);
    const sw_strap_out s = sw__strap_bare(&t->in);
    if (s.status)
        return NAN;
    return t->part == SW_GIVES_STUD
               ? s.stud_yield_use - 1
               : s.strap_stress_MPa / t->in.strap_yield_MPa - 1;
}

/* From the strap's own tension in steps toward the limit, shorter ones where a
 * step finds no answer. */
static double tension_at_limit(const sw__strap_full *strap, int part)
{
    enum { STEPS = 60 };
    trial t = {strap->in, part};
    if (sw__reopen(&t.in, SW_STRUCT_STRAP_IN, &t.in.assumed, &t.in.seal, NULL))
        return SW_UNSET;
    t.in.torque_Nm = SW_UNSET;
    t.in.strap_yield_MPa = strap->in.strap_yield_MPa;
    double at = log(strap->torque.preload_N), step = log(1.5);
    const double start = excess(at, &t);
    step = start > 0 ? -step : step;
    for (int i = 0; i < STEPS; i++) {
        const double next = excess(at + step, &t);
        if (isnan(next)) {
            step /= 2;
        } else if ((next > 0) != (start > 0)) {
            double low = fmin(at, at + step), high = fmax(at, at + step);
            return sw__root(excess, &t, &low, &high, 1e-13)
                       ? SW_UNSET
                       : exp((low + high) / 2);
        } else {
            at += step;
        }
    }
    return SW_UNSET;
}

/* ---- equation (4) ---- */

static double segment(double radius, double h)
{
    if (h >= radius)
        return 0;
    return radius * radius * acos(h / radius) -
           h * sqrt(radius * radius - h * h);
}

/* What presses on the strap: outer and hole radius. */
static void bearing_ring(const sw__strap_full *strap, double *R, double *r)
{
    const sw_strap_in *in = &strap->in;
    const sw_thread_out *t = &strap->thread;
    const double face = t->bearing_diameter_mm / 2;
    double hole = t->clearance_hole_mm;
    *R = face;
    if (in->seat == SW_SEAT_SPHERICAL) {
        const struct sw__spherical_row *pair = sw__spherical_of(t->size);
        *R = pair ? pair->seat_outer_mm / 2 : t->nominal_mm;
        hole = pair ? pair->seat_hole_mm : 1.2 * t->nominal_mm;
    } else if (in->washer_diameter_mm > 0) {
        *R = fmin(in->washer_diameter_mm / 2,
                  face + 0.8 * in->washer_thickness_mm);
        hole = fmax(hole, t->washer_hole_mm);
    }
    *r = hole / 2;
}

static double bearing_area(const sw__strap_full *strap)
{
    double R, r;
    bearing_ring(strap, &R, &r);
    const double h = strap->in.slot_width_mm / 2;
    return 2 * (segment(R, h) - segment(r, h));
}

/* ---- the parts ---- */

static sw_gives_out part_of(int part, const char *how, uint64_t warnings)
{
    sw_gives_out g;
    memset(&g, 0, sizeof g);
    g.part = part;
    g.warnings = warnings;
    g.margin = g.load_N = g.limit_N = SW_UNSET;
    g.load_MPa = g.limit_MPa = g.preload_at_limit_N = SW_UNSET;
    sw__copy(g.how, sizeof g.how, how);
    return g;
}

static void judge(sw_gives_out *g, double load, double limit)
{
    if (!sw__is_set(limit)) {
        g->warnings |= SW_WARN_STRENGTH_UNKNOWN;
        return;
    }
    g->margin = limit / load;
    if (g->margin < 1)
        g->warnings |= SW_WARN_GIVES;
}

/* A part whose load is the stud's tension. */
static void set_force(sw_gives_out *g, double F, double limit)
{
    g->load_N = F;
    g->limit_N = g->preload_at_limit_N = limit;
    judge(g, F, limit);
}

static void set_stress(sw_gives_out *g, double load, double limit)
{
    g->load_MPa = load;
    g->limit_MPa = limit;
    judge(g, load, limit);
}

static void set_stud(const sw__strap_full *strap, const sw_strap_out *s,
                     sw_gives_out *g)
{
    *g = part_of(SW_GIVES_STUD,
                 "tension, bending and the twist of tightening reach its yield",
                 strap->torque.warnings & SW_WARN_TABLE_FROM_MEMORY);
    if (!sw__is_set(strap->yield_MPa)) {
        judge(g, 1, SW_UNSET);
        return;
    }
    set_stress(g, s->stud_yield_use * strap->yield_MPa, strap->yield_MPa);
}

static void set_threads(const sw__engage_full *e, double F, sw_gives_out *stud,
                        sw_gives_out *tapped)
{
    const uint64_t w =
        e->strip.warnings & (SW_WARN_TABLE_FROM_MEMORY | SW_WARN_UNUSED_INPUT);
    *stud = part_of(SW_GIVES_STUD_THREAD,
                    "the stud's thread shears off where it is screwed in", w);
    set_force(stud, F, e->strip.stud_strip_N);
    *tapped = part_of(SW_GIVES_TAPPED_THREAD,
                      "the thread that the stud is screwed into shears off", w);
    set_force(tapped, F, e->strip.tapped_strip_N);
}

static void set_nut(const sw__strap_full *strap, const sw__engage_full *e,
                    sw_gives_out *g)
{
    const double proof = e->in.nut_proof_MPa;
    *g = part_of(SW_GIVES_NUT, "the nut is loaded past its proof load",
                 e->nut_warnings);
    set_force(g, strap->torque.preload_N,
              sw__is_set(proof) ? proof * strap->thread.stress_area_mm2
                                : SW_UNSET);
}

static void set_bearing(const sw__strap_full *strap, const sw__engage_full *e,
                        double area, const sw_strap_out *s, sw_gives_out *g)
{
    *g = part_of(SW_GIVES_WASHER_BEARING,
                 "nut, washer or seat digs into the strap beside its slot",
                 e->bearing_warnings | (s->warnings & SW_WARN_ON_RIM));
    set_stress(g, strap->torque.preload_N / area, e->in.pressure_limit_MPa);
    if (sw__is_set(g->margin))
        g->preload_at_limit_N = e->in.pressure_limit_MPa * area;
}

/* A strap whose material was named bends by that one's yield, unless its own
 * was given. */
static void take_strap_material(sw__strap_full *strap, const sw__engage_full *e)
{
    const int named =
        !(e->in.assumed & sw__bit(SW_STRUCT_ENGAGE_IN, "strap_material"));
    const int open = (strap->in.assumed &
                      sw__bit(SW_STRUCT_STRAP_IN, "strap_yield_MPa")) != 0;
    if (named && open && e->in.strap_material[0])
        strap->in.strap_yield_MPa =
            sw_material(e->in.strap_material, NULL).yield_MPa;
}

static void set_strap(const sw__strap_full *strap, const sw_strap_out *s,
                      sw_gives_out *g)
{
    *g = part_of(SW_GIVES_STRAP, "the strap bends past its yield at the stud",
                 0);
    set_stress(g, s->strap_stress_MPa, strap->in.strap_yield_MPa);
}

/* Stud and strap are bent too, so their stress is not in proportion to the
 * tension; the margin of all is that of the tension, to be compared. */
static void set_bent(const sw__strap_full *strap, sw_gives_out *g)
{
    if (!sw__is_set(g->margin))
        return;
    g->preload_at_limit_N = tension_at_limit(strap, g->part);
    if (sw__is_set(g->preload_at_limit_N))
        g->margin = g->preload_at_limit_N / strap->torque.preload_N;
}

/* Least margin first, unknown ones last, equal ones in the order of parts. */
static void sort(sw_gives_out *g)
{
    for (int i = 1; i < PARTS; i++)
        for (int j = i; j > 0; j--) {
            const double here = g[j].margin, before = g[j - 1].margin;
            if (!sw__is_set(here) || (sw__is_set(before) && before <= here))
                break;
            const sw_gives_out swap = g[j];
            g[j] = g[j - 1];
            g[j - 1] = swap;
        }
}

static int solve(const sw_strap_in *in, const sw_engage_in *engage, int rank,
                 sw_gives_out *out, sw_error *err)
{
    sw__strap_full strap;
    sw__engage_full e;
    if (rank < 0 || rank >= PARTS)
        return sw__fail(err, SW_ERR_RANGE, "rank",
                        "rank: past the end of the parts that can give");
    int status = sw__strap_open(in, &strap, err);
    if (!status)
        status = sw__engage_open(&strap, engage, &e, err);
    if (status)
        return status;
    const sw_strap_out s = sw_strap(in, err);
    if (s.status)
        return s.status;
    const double area = bearing_area(&strap);
    if (!(area > 0))
        return sw__fail(err, SW_ERR_CONFLICT, "slot_width_mm",
                        "slot_width_mm: the slot is as wide as what bears on "
                        "the strap: it falls through");
    sw_gives_out all[PARTS];
    take_strap_material(&strap, &e);
    set_stud(&strap, &s, &all[0]);
    set_threads(&e, strap.torque.preload_N, &all[1], &all[2]);
    set_nut(&strap, &e, &all[3]);
    set_bearing(&strap, &e, area, &s, &all[4]);
    set_strap(&strap, &s, &all[5]);
    set_bent(&strap, &all[0]);
    set_bent(&strap, &all[5]);
    sort(all);
    *out = all[rank];
    return SW_OK;
}

sw_gives_out sw_strap_weakest(const sw_strap_in *in, const sw_engage_in *engage,
                              int rank, sw_error *err)
{
    sw_gives_out out;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    const int status = !in       ? sw__fail_null(err, "in")
                       : !engage ? sw__fail_null(err, "engage")
                                 : solve(in, engage, rank, &out, err);
    if (status)
        sw__spoil(&out, SW_STRUCT_GIVES_OUT, status);
    return out;
}
