/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strip resolve: a question about stripping with nothing left open. Symbols as
 * in strip.c; limits of size from fit.c, the loosest pair.
 */
#include "base/material.h"
#include "base/tables.h"
#include "fastener/fit.h"
#include "fastener/strip.h"
#include "fastener/torque.h"

#include <string.h>

#define SW__S sw_strip_in
const sw_field sw__strip_in_fields[] = {
    SW__IN_TEXT(thread, ""),
    SW__IN_TEXT(grade, "at least this grade is usual for clamping studs; "
                       "common practice, no source"),
    SW__IN_TEXT(material,
                "a steel T-nut of DIN 508, heat treated; from memory"),
    SW__IN(preload_N, "N", 1e-3, 1e8, 0, 0, ""),
    SW__IN_TIMES(engaged_length_mm, "mm", 0.1, 1000, 0.5, 1,
                 "height of the DIN 508 T-nut by stud size; one diameter where "
                 "it has none"),
    SW__IN(factor, "", 0.1, 20, 1.2, 2, "common practice, no source"),
    SW__IN(stud_tensile_MPa, "MPa", 1, 1e4, 0, 0, "by grade, least"),
    SW__IN(stud_shear_ratio, "", 0.3, 1.5, 0.58, 0.65,
           "steel; VDI 2230 has 0.60 to 0.65 by class, from memory"),
    SW__IN(tensile_MPa, "MPa", 1, 1e4, 0, 0, "by material"),
    SW__IN_TIMES(shear_strength_MPa, "MPa", 0.1, 1e4, 0.95, 1.15,
                 "tensile strength times the material's shear ratio: common "
                 "practice, no source"),
    SW__IN(major_diameter_mm, "mm", 0.5, 200, 0, 0,
           "least of 6g, ISO 965-1, or 2A, ASME B1.1"),
    SW__IN(pitch_diameter_mm, "mm", 0.5, 200, 0, 0,
           "least of 6g, ISO 965-1, or 2A, ASME B1.1"),
    SW__IN(nut_pitch_diameter_mm, "mm", 0.5, 200, 0, 0,
           "largest of 6H, ISO 965-1, or 2B, ASME B1.1"),
    SW__IN(nut_minor_diameter_mm, "mm", 0.5, 200, 0, 0,
           "largest of 6H, ISO 965-1, or 2B, ASME B1.1"),
    SW__END,
};
#undef SW__S

void sw_strip_defaults(sw_strip_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    in->preload_N = in->engaged_length_mm = in->factor = SW_UNSET;
    in->stud_tensile_MPa = in->stud_shear_ratio = SW_UNSET;
    in->tensile_MPa = in->shear_strength_MPa = SW_UNSET;
    in->major_diameter_mm = in->pitch_diameter_mm = SW_UNSET;
    in->nut_pitch_diameter_mm = in->nut_minor_diameter_mm = SW_UNSET;
}

static double tnut_height_mm(const sw_thread_out *t)
{
    for (size_t i = 0; i < sw__tslots_count; i++)
        if (strcmp(sw__tslots[i].size, t->size) == 0 &&
            sw__is_set(sw__tslots[i].tnut_height_mm))
            return sw__tslots[i].tnut_height_mm;
    return t->nominal_mm;
}

/* What enters by a default that is common practice. */
static int enters(const sw_strip_in *in, const char *field)
{
    return (in->assumed & sw__bit(SW_STRUCT_STRIP_IN, field)) != 0;
}

/* The stud's strength by its grade; one that does not cover the size leaves it
 * open where it was only assumed. */
static int open_stud(sw__strip_full *full, const sw__filler *fill,
                     sw_error *err)
{
    sw_strip_in *in = &full->in;
    if (sw__is_set(in->stud_tensile_MPa)) {
        if (in->grade[0])
            full->warnings |= SW_WARN_UNUSED_INPUT;
        sw__fill_number(fill, "stud_shear_ratio", 0.6);
        return SW_OK;
    }
    sw__fill_text(fill, "grade", sw__usual_grade(&full->thread));
    const sw_grade_out g = sw_grade(in->grade, full->thread.nominal_mm, err);
    if (g.status && !enters(in, "grade"))
        return g.status;
    sw__clear(err);
    if (!g.status) {
        sw__fill_number(fill, "stud_tensile_MPa", g.tensile_MPa);
        sw__fill_number(fill, "stud_shear_ratio", 0.6);
        full->warnings |= g.warnings;
    }
    return SW_OK;
}

static int open_material(sw__strip_full *full, const sw__filler *fill,
                         sw_error *err)
{
    sw_strip_in *in = &full->in;
    const int given = in->material[0] || sw__is_set(in->tensile_MPa);
    if (sw__is_set(in->shear_strength_MPa)) {
        if (given)
            full->warnings |= SW_WARN_UNUSED_INPUT;
        return SW_OK;
    }
    sw__fill_text(fill, "material", "C45-QT");
    const sw_material_out m = sw_material(in->material, err);
    if (m.status)
        return m.status;
    full->warnings |= m.warnings;
    sw__fill_number(fill, "tensile_MPa", m.tensile_MPa);
    sw__fill_number(fill, "shear_strength_MPa",
                    m.shear_ratio * in->tensile_MPa);
    return SW_OK;
}

int sw__strip_open(const sw_strip_in *in, sw__strip_full *full, sw_error *err)
{
    memset(full, 0, sizeof *full);
    full->in = *in;
    const sw__filler fill = {(char *)&full->in, SW_STRUCT_STRIP_IN,
                             &full->in.assumed};
    int status = sw__reopen(&full->in, SW_STRUCT_STRIP_IN, &full->in.assumed,
                            &full->in.seal, err);
    if (!status)
        status = sw__check_input(&full->in, SW_STRUCT_STRIP_IN, err);
    if (status)
        return status;
    full->thread = sw_thread(full->in.thread, err);
    status = full->thread.status;
    if (!status)
        status = open_stud(full, &fill, err);
    if (!status)
        status = open_material(full, &fill, err);
    if (status)
        return status;
    const sw_thread_out *t = &full->thread;
    const sw__fit f = sw__fit_of(t->system, t->nominal_mm, t->pitch_mm);
    sw__fill_number(&fill, "engaged_length_mm", tnut_height_mm(t));
    if (sw__is_set(full->in.preload_N))
        sw__fill_number(&fill, "factor", 1.5);
    sw__fill_number(&fill, "major_diameter_mm", f.Ds_min);
    sw__fill_number(&fill, "pitch_diameter_mm", f.Es_min);
    sw__fill_number(&fill, "nut_pitch_diameter_mm", f.En_max);
    sw__fill_number(&fill, "nut_minor_diameter_mm", f.Kn_max);
    if (enters(&full->in, "stud_shear_ratio") ||
        enters(&full->in, "shear_strength_MPa"))
        full->warnings |= SW_WARN_TABLE_FROM_MEMORY;
    return SW_OK;
}

int sw_strip_resolve(sw_strip_in *in, sw_error *err)
{
    sw__strip_full full;
    sw__clear(err);
    if (!in)
        return sw__fail_null(err, "in");
    const int status = sw__strip_open(in, &full, err);
    if (!status) {
        *in = full.in;
        in->seal = sw__seal(in, SW_STRUCT_STRIP_IN, in->assumed);
    }
    return status;
}

sw_assumption sw_strip_assumed(const sw_strip_in *in, int index, sw_error *err)
{
    sw__strip_full full;
    sw__clear(err);
    const int status =
        in ? sw__strip_open(in, &full, err) : sw__fail_null(err, "in");
    if (status)
        return sw__no_assumption(status);
    return sw__assumed(&full.in, SW_STRUCT_STRIP_IN, full.in.assumed, index,
                       err);
}
