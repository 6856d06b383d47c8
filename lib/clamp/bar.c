/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Bar: a straight bar across the part, pulled down by a stud near each end, on
 * two pads.
 *
 * Symbols: x along the bar from the first stud, T1 at 0 and T2 at s tensions,
 * R1 at p1 and R2 at p2 forces of the pads, w width, t thickness, d hole, E
 * Young's modulus, I = w t^3/12, M bending moment, y deflection downward.
 *
 *   pads     R2 = (T2 (s - p1) - T1 p1)/(p2 - p1), R1 = T1 + T2 - R2      (1)
 *   moment   M(x) = sum of F_i <x - x_i>, F down positive, over all that is
 *            left of x; largest at a stud or a pad                        (2)
 *   stress   6 |M|/(w t^2), at a stud with w - d                          (3)
 *   bending  E I y = sum of F_i <x - x_i>^3/6 + c1 x + c0, y = 0 at both
 *            pads (Macaulay)                                              (4)
 *
 * Textbook beam. A pad that would have to pull has a force of zero or below,
 * and the answer says that the bar rocks: moment, stress and deflections do not
 * apply then.
 *
 * Not in it: how far the part gives under the pads, the side pull of a bar
 * that is not level (strap.c), shear (a bar shorter than five thicknesses
 * bends up to 20 % more), the weaker inertia at the holes.
 */
#include "base/material.h"
#include "base/room.h"

#include <strapwise/bar.h>

#define SW__S sw_bar_in
const sw_field sw__bar_in_fields[] = {
    SW__IN(stud1_N, "N", 0, 1e8, 0, 0, ""),
    SW__IN(stud2_N, "N", 0, 1e8, 0, 0, ""),
    SW__IN(span_mm, "mm", 0.001, 100000, 0, 0, ""),
    SW__IN(pad1_mm, "mm", -100000, 100000, 0, 0, ""),
    SW__IN(pad2_mm, "mm", -100000, 100000, 0, 0, ""),
    SW__IN(bar_width_mm, "mm", 0.001, 100000, 0, 0, ""),
    SW__IN(bar_thickness_mm, "mm", 0.001, 100000, 0, 0, ""),
    SW__IN(hole_mm, "mm", 0, 10000, 0, 0, "no hole"),
    SW__IN_TEXT(bar_material, "a steel bar; common practice, no source"),
    SW__IN_TIMES(bar_modulus_MPa, "MPa", 1, 1e6, 0.97, 1.03, "by material"),
    SW__IN_TIMES(bar_yield_MPa, "MPa", 1, 10000, 0.9, 1.2, "by material"),
    SW__END,
};
#undef SW__S

#define SW__S sw_bar_out
const sw_field sw__bar_out_fields[] = {
    SW__OUT_WORD(rest, SW_WORDS_REST),
    SW__OUT(pad1_N, "N"),
    SW__OUT(pad2_N, "N"),
    SW__OUT(moment_Nm, "N.m"),
    SW__OUT(stress_MPa, "MPa"),
    SW__OUT(yield_margin, ""),
    SW__OUT(sag1_mm, "mm"),
    SW__OUT(sag2_mm, "mm"),
    SW__OUT(bow_mm, "mm"),
    SW__END,
};
#undef SW__S

static int need(const sw_bar_in *in, sw_error *err)
{
    const double given[] = {in->stud1_N,         in->stud2_N, in->span_mm,
                            in->pad1_mm,         in->pad2_mm, in->bar_width_mm,
                            in->bar_thickness_mm};
    static const char *const name[] = {
        "stud1_N", "stud2_N",      "span_mm",          "pad1_mm",
        "pad2_mm", "bar_width_mm", "bar_thickness_mm",
    };
    for (size_t i = 0; i < sizeof given / sizeof given[0]; i++)
        if (!sw__is_set(given[i]))
            return sw__fail_missing(err, name[i],
                                    "both tensions, span, both pads, width and "
                                    "thickness are needed");
    return SW_OK;
}

static int bar_fill(sw_bar_in *in, const sw__filler *fill, uint64_t *warnings,
                    sw_error *err)
{
    const int status = need(in, err);
    if (status)
        return status;
    sw__fill_number(fill, "hole_mm", 0);
    if (in->hole_mm >= in->bar_width_mm)
        return sw__fail_conflict(err, "hole_mm", "not smaller than the bar");
    if (!(in->pad2_mm > in->pad1_mm))
        return sw__fail_conflict(err, "pad2_mm",
                                 "not beyond the first pad, seen from the "
                                 "first stud");
    if (sw__is_set(in->bar_modulus_MPa) && sw__is_set(in->bar_yield_MPa)) {
        if (in->bar_material[0])
            *warnings |= SW_WARN_UNUSED_INPUT;
        return SW_OK;
    }
    sw__fill_text(fill, "bar_material", "C45");
    const sw_material_out m =
        sw__material(in->bar_material, "bar_material", err);
    if (m.status)
        return m.status;
    *warnings |= m.warnings;
    sw__fill_number(fill, "bar_modulus_MPa", m.modulus_MPa);
    sw__fill_number(fill, "bar_yield_MPa", m.yield_MPa);
    return SW_OK;
}

/* Forces down at their places, in the order of stud, stud, pad, pad. */
typedef struct {
    double at[4], F[4], c1, c0;
} beam;

static double bracket(const beam *b, double x, int power)
{
    double sum = 0;
    for (int i = 0; i < 4; i++)
        if (x > b->at[i])
            sum += b->F[i] * pow(x - b->at[i], power);
    return sum;
}

/* E I y and E I dy/dx of equation (4). */
static double sunk(const beam *b, double x)
{
    return bracket(b, x, 3) / 6 + b->c1 * x + b->c0;
}

static double slope(const beam *b, double x)
{
    return bracket(b, x, 2) / 2 + b->c1;
}

/* Where the slope is zero in (low, high), of which it is a parabola; the
 * largest deflection there. */
static double largest_in(const beam *b, double low, double high)
{
    enum { PARTS = 64, HALVINGS = 60 };
    double most =
        fabs(sunk(b, high)) > fabs(sunk(b, low)) ? sunk(b, high) : sunk(b, low);
    for (int i = 0; i < PARTS; i++) {
        double p = low + (high - low) * i / PARTS,
               q = low + (high - low) * (i + 1) / PARTS;
        if (slope(b, p) * slope(b, q) > 0)
            continue;
        for (int n = 0; n < HALVINGS; n++) {
            const double m = (p + q) / 2;
            if (slope(b, p) * slope(b, m) > 0)
                p = m;
            else
                q = m;
        }
        if (fabs(sunk(b, p)) > fabs(most))
            most = sunk(b, p);
    }
    return most;
}

static int bar_solve(const sw_bar_in *in, sw_bar_out *out, sw_error *err)
{
    const double s = in->span_mm, p1 = in->pad1_mm, p2 = in->pad2_mm;
    const double w = in->bar_width_mm, t = in->bar_thickness_mm;
    out->pad2_N = (in->stud2_N * (s - p1) - in->stud1_N * p1) / (p2 - p1);
    out->pad1_N = in->stud1_N + in->stud2_N - out->pad2_N;
    (void)err;
    const int tips = !(out->pad1_N > 0 && out->pad2_N > 0);
    out->rest = tips ? SW_REST_ROCKS : SW_REST_STAYS;
    if (tips)
        return SW_OK;
    beam b = {{0, s, p1, p2},
              {in->stud1_N, in->stud2_N, -out->pad1_N, -out->pad2_N},
              0,
              0};
    const double at1 = bracket(&b, p1, 3) / 6, at2 = bracket(&b, p2, 3) / 6;
    b.c1 = -(at2 - at1) / (p2 - p1);
    b.c0 = -at1 - b.c1 * p1;
    double moment = 0, stress = 0;
    for (int i = 0; i < 4; i++) {
        const double M = fabs(bracket(&b, b.at[i], 1));
        const double left = i < 2 ? w - in->hole_mm : w;
        moment = fmax(moment, M);
        stress = fmax(stress, 6 * M / (left * t * t));
    }
    out->moment_Nm = moment / 1000;
    out->stress_MPa = stress;
    if (stress > 0 && sw__is_set(in->bar_yield_MPa)) {
        out->yield_margin = in->bar_yield_MPa / stress;
        if (out->yield_margin < 1)
            out->warnings |= SW_WARN_STRAP_YIELDS;
    }
    const double EI = in->bar_modulus_MPa * w * t * t * t / 12;
    out->sag1_mm = sunk(&b, 0) / EI;
    out->sag2_mm = sunk(&b, s) / EI;
    out->bow_mm = largest_in(&b, p1, p2) / EI;
    return SW_OK;
}

SW__ROOM(bar, BAR);
