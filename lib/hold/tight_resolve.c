/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tight resolve: a question about equal straps with nothing left open.
 * Equations as numbered in tight_need.c.
 */
#include "hold/tight.h"

#include "base/material.h"

#include <string.h>

#define FRICTION 0.15 /* field lists tell the ranges */
#define MARGIN 2.0
#define LIFT_SHARE 0.6
#define SEAT_N 500.0

#define SW__S sw_tight_in
const sw_field sw__tight_in_fields[] = {
    SW__IN(straps, "", 1, 24, 0, 0, ""),
    SW__IN(cut_N, "N", 0, 1e6, 0, 0, ""),
    SW__IN(lift_N, "N", 0, 1e6, 0, 0,
           "0.6 of the cut, as of a 30 deg helix: common practice, no source"),
    SW__IN(part_length_mm, "mm", 1, 1e5, 0, 0, ""),
    SW__IN(part_width_mm, "mm", 1, 1e5, 0, 0, "as the longer side"),
    SW__IN(cut_height_mm, "mm", 0, 1e4, 0, 0, "the part height"),
    SW__IN(cut_offset_mm, "mm", 0, 1e5, 0, 0,
           "half the longer side: a cut along the edge"),
    SW__IN(strap_radius_mm, "mm", 1, 1e5, 0, 0, "half the longer side"),
    SW__IN(weight_N, "N", 0, 1e7, 0, 0, "none counted on"),
    SW__IN(friction, "", 0.01, 2, 0.1, 0.2,
           "smooth faces wet with coolant: common practice, no source"),
    SW__IN(required_margin, "", 1, 20, 1.5, 4,
           "fixture textbooks 2 to 2.5, from memory; VDI 3106 at least 1.5"),
    SW__IN(seat_N, "N", 0, 1e6, 200, 1000,
           "a snug nut: common practice, no source"),
    SW__IN(toe_limit_N, "N", 1e-3, 1e7, 0, 0,
           "toe area times the material's limit"),
    SW__IN(toe_area_mm2, "mm2", 0.1, 1e5, 0, 0, ""),
    SW__IN_TEXT(part_material, ""),
    SW__IN_WORD(facing, SW_WORDS_FACING, "pairs across the part"),
    SW__END,
};
#undef SW__S

void sw_tight_defaults(sw_tight_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    for (const sw_field *f = sw__tight_in_fields; f->name; f++)
        if (f->type == SW_FIELD_NUMBER)
            memcpy((char *)in + f->offset, &(double){SW_UNSET}, sizeof(double));
}

static int check_required(const sw_tight_in *in, sw_error *err)
{
    if (!sw__is_set(in->straps))
        return sw__fail(err, SW_ERR_MISSING, "straps",
                        "straps: missing; say how many hold the part");
    if (in->straps != floor(in->straps))
        return sw__fail(err, SW_ERR_RANGE, "straps",
                        "straps: must be a whole number, 1 to 24");
    if (!sw__is_set(in->cut_N))
        return sw__fail(err, SW_ERR_MISSING, "cut_N",
                        "cut_N: missing; give the largest sideways force of "
                        "the cut");
    if (sw__is_set(in->part_width_mm) && !sw__is_set(in->part_length_mm))
        return sw__fail(err, SW_ERR_MISSING, "part_length_mm",
                        "part_length_mm: missing beside part_width_mm");
    if (sw__is_set(in->part_width_mm) && in->part_width_mm > in->part_length_mm)
        return sw__fail(err, SW_ERR_CONFLICT, "part_width_mm",
                        "part_width_mm: must not exceed part_length_mm, the "
                        "longer side");
    if (sw__is_set(in->cut_offset_mm) && in->cut_offset_mm > 0 &&
        !sw__is_set(in->part_length_mm) && !sw__is_set(in->strap_radius_mm))
        return sw__fail(err, SW_ERR_MISSING, "strap_radius_mm",
                        "strap_radius_mm: missing beside cut_offset_mm; give "
                        "it, or the part's length");
    return SW_OK;
}

/* The force that one toe may press with, from the face it bears on. */
static int fill_limit(sw_tight_in *in, const sw__filler *fill, sw_error *err)
{
    const int area = sw__is_set(in->toe_area_mm2);
    if (area != (in->part_material[0] != '\0'))
        return sw__fail(
            err, SW_ERR_MISSING, area ? "part_material" : "toe_area_mm2",
            area ? "part_material: missing beside toe_area_mm2; name "
                   "the part's material"
                 : "toe_area_mm2: missing beside part_material; give "
                   "the area on which one toe bears");
    if (!area)
        return SW_OK;
    if (sw__is_set(in->toe_limit_N))
        return sw__fail(err, SW_ERR_CONFLICT, "toe_limit_N",
                        "toe_limit_N: give the force, or part_material and "
                        "toe_area_mm2, not both");
    const sw_material_out m =
        sw__material(in->part_material, "part_material", err);
    if (m.status)
        return m.status;
    const double MPa =
        sw__is_set(m.pressure_limit_MPa) ? m.pressure_limit_MPa : m.yield_MPa;
    if (!sw__is_set(MPa))
        return sw__fail(
            err, SW_ERR_NONE, "part_material",
            "part_material: the table has neither a pressure limit nor "
            "a yield of it; give toe_limit_N");
    sw__fill_number(fill, "toe_limit_N", MPa * in->toe_area_mm2);
    return SW_OK;
}

int sw__tight_open(sw_tight_in *in, const sw_strap_in *strap, sw_error *err)
{
    int status =
        sw__reopen(in, SW_STRUCT_TIGHT_IN, &in->assumed, &in->seal, err);
    if (!status)
        status = sw__check_input(in, SW_STRUCT_TIGHT_IN, err);
    if (!status)
        status = check_required(in, err);
    const sw__filler fill = {(char *)in, SW_STRUCT_TIGHT_IN, &in->assumed};
    if (!status)
        status = fill_limit(in, &fill, err);
    if (status)
        return status;
    sw__fill_number(&fill, "lift_N", LIFT_SHARE * in->cut_N);
    sw__fill_number(&fill, "weight_N", 0);
    sw__fill_number(&fill, "friction", FRICTION);
    sw__fill_number(&fill, "required_margin", MARGIN);
    sw__fill_number(&fill, "seat_N", SEAT_N);
    sw__fill_number(&fill, "cut_height_mm", strap->part_height_mm);
    if (sw__is_set(in->part_length_mm)) {
        sw__fill_number(&fill, "part_width_mm", in->part_length_mm);
        sw__fill_number(&fill, "cut_offset_mm", in->part_length_mm / 2);
        sw__fill_number(&fill, "strap_radius_mm", in->part_length_mm / 2);
    }
    if (in->straps > 1)
        sw__fill_word(&fill, "facing", SW_FACING_OPPOSED);
    else
        sw__fill_word(&fill, "facing", SW_FACING_ALIKE);
    return SW_OK;
}

int sw_tight_resolve(sw_tight_in *in, const sw_strap_in *strap, sw_error *err)
{
    sw__clear(err);
    if (!in || !strap)
        return sw__fail_null(err, in ? "strap" : "in");
    sw_tight_in open = *in;
    const int status = sw__tight_open(&open, strap, err);
    if (!status) {
        *in = open;
        in->seal = sw__seal(in, SW_STRUCT_TIGHT_IN, in->assumed);
    }
    return status;
}

sw_assumption sw_tight_assumed(const sw_tight_in *in, const sw_strap_in *strap,
                               int index, sw_error *err)
{
    sw__clear(err);
    if (!in || !strap)
        return sw__no_assumption(sw__fail_null(err, in ? "strap" : "in"));
    sw_tight_in full = *in;
    const int status = sw__tight_open(&full, strap, err);
    if (status)
        return sw__no_assumption(status);
    return sw__assumed(&full, SW_STRUCT_TIGHT_IN, full.assumed, index, err);
}
