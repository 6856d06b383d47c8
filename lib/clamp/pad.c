/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pad: pressure under what presses on the part, and whether it marks.
 *
 * Symbols: F force, A area, p pressure, p0 peak of a Hertz contact, Y yield,
 * pG limiting surface pressure, Rm tensile strength, q ratio to the limit.
 *
 *   flat     p = F/A, even                                               (1)
 *   nose     line contact of contact.c (2) over the width; ball: (3)     (2)
 *   limit    flat: the lower of Y and pG; nose 1.67 Y, ball 1.60 Y; Rm/2
 *            where neither is known; what the caller gives beats all     (3)
 *   mark     q up to 0.6 unlikely, up to 1 possible, above likely        (4)
 *   force    at q = 1: F/q flat, F/q^2 nose, F/q^3 ball                  (5)
 *
 * Sources: pG of VDI 2230, the lower of two editions, by tables/materials.csv;
 * it is where a bolt's seat starts to creep in, which may be far above Y and
 * then marks already, hence the lower of both. Onset factors as in contact.c.
 * Rm/2 and the steps of (4) are common practice, no source.
 *
 * Not in it: the sharp edge of a flat pad (break it: it marks first), chips
 * and grit under the pad, anodised and painted faces, rubbing while it is
 * tightened; creep of plastics: nobody knows how much is left, so it is said
 * and not calculated.
 */
#include "base/material.h"
#include "base/room.h"
#include "clamp/hertz.h"

#include <strapwise/pad.h>

#define SW__S sw_pad_in
const sw_field sw__pad_in_fields[] = {
    SW__IN(force_N, "N", 0.001, 1e8, 0, 0, ""),
    SW__IN_WORD(nose, SW_WORDS_NOSE, "a flat pad"),
    SW__IN(pad_length_mm, "mm", 0.001, 100000, 0, 0, ""),
    SW__IN(pad_width_mm, "mm", 0.001, 100000, 0, 0, ""),
    SW__IN(pad_diameter_mm, "mm", 0.001, 100000, 0, 0, ""),
    SW__IN(pad_area_mm2, "mm2", 0.001, 1e8, 0, 0, "from its measures"),
    SW__IN(nose_radius_mm, "mm", 0.05, 100000, 0, 0, ""),
    SW__IN_TEXT(pad_material, "steel, as a bare strap or button"),
    SW__IN_TEXT(part_material, ""),
    SW__IN(part_limit_MPa, "MPa", 0.1, 100000, 0, 0, ""),
    SW__IN(pad_limit_MPa, "MPa", 0.1, 100000, 0, 0, ""),
    SW__END,
};
#undef SW__S

#define SW__S sw_pad_out
const sw_field sw__pad_out_fields[] = {
    SW__OUT_WORD(mark, SW_WORDS_MARK),
    SW__OUT_WORD(part_limit_kind, SW_WORDS_LIMIT),
    SW__OUT_WORD(pad_limit_kind, SW_WORDS_LIMIT),
    SW__OUT(pressure_MPa, "MPa"),
    SW__OUT(mean_MPa, "MPa"),
    SW__OUT(area_mm2, "mm2"),
    SW__OUT(half_width_mm, "mm"),
    SW__OUT(part_limit_MPa, "MPa"),
    SW__OUT(part_ratio, ""),
    SW__OUT(mark_N, "N"),
    SW__OUT(pad_limit_MPa, "MPa"),
    SW__OUT(pad_ratio, ""),
    SW__END,
};
#undef SW__S

#define PLASTIC_MPA                                                            \
    10000.0 /* Young's modulus: no metal is below, no plastic
                               of the table above */

static int fill_flat(sw_pad_in *in, const sw__filler *fill, uint64_t *warnings,
                     sw_error *err)
{
    const int box =
        sw__is_set(in->pad_length_mm) && sw__is_set(in->pad_width_mm);
    if (sw__is_set(in->nose_radius_mm))
        *warnings |= SW_WARN_UNUSED_INPUT;
    if (box && sw__is_set(in->pad_diameter_mm))
        return sw__fail_conflict(err, "pad_diameter_mm",
                                 "a pad is round, or has length and width");
    if (box)
        sw__fill_number(fill, "pad_area_mm2",
                        in->pad_length_mm * in->pad_width_mm);
    else if (sw__is_set(in->pad_diameter_mm))
        sw__fill_number(fill, "pad_area_mm2",
                        SW__PI / 4 * in->pad_diameter_mm * in->pad_diameter_mm);
    if (!sw__is_set(in->pad_area_mm2))
        return sw__fail_missing(err, "pad_area_mm2",
                                "give diameter, or length and width, or area");
    return SW_OK;
}

static int fill_nose(const sw_pad_in *in, uint64_t *warnings, sw_error *err)
{
    if (!sw__is_set(in->nose_radius_mm))
        return sw__fail_missing(err, "nose_radius_mm",
                                "radius of the nose or ball");
    if (in->nose == SW_NOSE_ROUND && !sw__is_set(in->pad_width_mm))
        return sw__fail_missing(err, "pad_width_mm",
                                "width of the nose on the part");
    if (!in->part_material[0])
        return sw__fail_missing(err, "part_material",
                                "a nose or ball needs the part's stiffness");
    if (sw__is_set(in->pad_area_mm2) || sw__is_set(in->pad_length_mm) ||
        sw__is_set(in->pad_diameter_mm))
        *warnings |= SW_WARN_UNUSED_INPUT;
    return SW_OK;
}

static int pad_fill(sw_pad_in *in, const sw__filler *fill, uint64_t *warnings,
                    sw_error *err)
{
    if (!sw__is_set(in->force_N))
        return sw__fail_missing(err, "force_N", "force on the pad");
    if (!in->part_material[0] && !sw__is_set(in->part_limit_MPa))
        return sw__fail_missing(err, "part_material",
                                "give the part's material or its limit");
    sw__fill_word(fill, "nose", SW_NOSE_FLAT);
    const int status = in->nose == SW_NOSE_FLAT
                           ? fill_flat(in, fill, warnings, err)
                           : fill_nose(in, warnings, err);
    sw__fill_text(fill, "pad_material", "C45");
    return status;
}

/* Equation (3); `onset` 0 for a flat pad. */
static double limit_of(const sw_material_out *m, double given, double onset,
                       int *kind)
{
    *kind = SW_LIMIT_GIVEN;
    if (sw__is_set(given))
        return given;
    const double Y = m->yield_MPa, pG = m->pressure_limit_MPa;
    if (sw__is_set(Y) && onset > 0) {
        *kind = SW_LIMIT_ONSET;
        return onset * Y;
    }
    if (sw__is_set(Y) && !(sw__is_set(pG) && pG < Y)) {
        *kind = SW_LIMIT_YIELD;
        return Y;
    }
    if (sw__is_set(pG)) {
        *kind = SW_LIMIT_PRESSURE;
        return pG;
    }
    if (sw__is_set(m->tensile_MPa)) {
        *kind = SW_LIMIT_TENSILE;
        return m->tensile_MPa / 2;
    }
    *kind = SW_LIMIT_UNKNOWN;
    return SW_UNSET;
}

static int press(const sw_pad_in *in, const sw_material_out *pad,
                 const sw_material_out *part, sw_pad_out *out, sw_error *err)
{
    const double F = in->force_N;
    if (in->nose == SW_NOSE_FLAT) {
        out->area_mm2 = in->pad_area_mm2;
        out->pressure_MPa = out->mean_MPa = F / in->pad_area_mm2;
        return SW_OK;
    }
    const int round = in->nose == SW_NOSE_ROUND;
    const double E = sw__reduced_modulus(pad->modulus_MPa, pad->poisson,
                                         part->modulus_MPa, part->poisson);
    const sw__spot s =
        sw__hertz(F, round ? in->pad_width_mm : 0, in->nose_radius_mm, E);
    if (s.half_width_mm > in->nose_radius_mm / 2)
        return sw__fail_conflict(err, "nose_radius_mm",
                                 "flattens to more than half its radius: count "
                                 "it as a flat pad");
    out->pressure_MPa = s.peak_MPa;
    out->mean_MPa = s.mean_MPa;
    out->half_width_mm = s.half_width_mm;
    out->area_mm2 = F / s.mean_MPa;
    return SW_OK;
}

static int pad_solve(const sw_pad_in *in, sw_pad_out *out, sw_error *err)
{
    const int flat = in->nose == SW_NOSE_FLAT,
              round = in->nose == SW_NOSE_ROUND;
    const double onset = flat ? 0 : round ? SW__LINE_ONSET : SW__POINT_ONSET;
    sw_material_out part,
        pad = sw__material(in->pad_material, "pad_material", err);
    if (pad.status)
        return pad.status;
    sw__leave_open(&part, sizeof part, SW_STRUCT_MATERIAL_OUT);
    if (in->part_material[0])
        part = sw__material(in->part_material, "part_material", err);
    if (part.status)
        return part.status;
    out->warnings |= pad.warnings | part.warnings;
    if (pad.modulus_MPa < PLASTIC_MPA)
        out->warnings |= SW_WARN_PAD_CREEPS;
    const int status = press(in, &pad, &part, out, err);
    if (status)
        return status;
    out->part_limit_MPa =
        limit_of(&part, in->part_limit_MPa, onset, &out->part_limit_kind);
    out->pad_limit_MPa =
        limit_of(&pad, in->pad_limit_MPa, onset, &out->pad_limit_kind);
    out->mark = SW_MARK_UNKNOWN;
    if (sw__is_set(out->part_limit_MPa)) {
        const double q = out->pressure_MPa / out->part_limit_MPa;
        out->part_ratio = q;
        out->mark_N = in->force_N / (flat ? q : round ? q * q : q * q * q);
        out->mark = q > 1     ? SW_MARK_LIKELY
                    : q > 0.6 ? SW_MARK_POSSIBLE
                              : SW_MARK_UNLIKELY;
    }
    if (sw__is_set(out->pad_limit_MPa))
        out->pad_ratio = out->pressure_MPa / out->pad_limit_MPa;
    return SW_OK;
}

SW__ROOM(pad, PAD);
