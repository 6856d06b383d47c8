/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Engage: what stands at both ends of a strap's stud, with nothing left open.
 * The threads below are answered by the stripping room (strip.c), nut and strap
 * material by their tables.
 */
#include "clamp/engage.h"

#include "base/material.h"
#include "fastener/nut.h"

#include <string.h>

#define SW__S sw_engage_in
const sw_field sw__engage_in_fields[] = {
    SW__IN_TEXT(nut_class, "the class that goes with the stud's grade: ISO "
                           "898-2; SAE J995 and ISO 3506-2 from memory"),
    SW__IN_TEXT(material,
                "a steel T-nut of DIN 508, heat treated; from memory"),
    SW__IN_TEXT(strap_material, "a plain strap, not hardened; common practice, "
                                "no source"),
    SW__IN_TIMES(engaged_length_mm, "mm", 0.1, 1000, 0.5, 1,
                 "height of the DIN 508 T-nut by stud size; one diameter where "
                 "it has none"),
    SW__IN(stud_tensile_MPa, "MPa", 1, 1e4, 0, 0, "by grade, least"),
    SW__IN(stud_shear_ratio, "", 0.3, 1.5, 0.58, 0.65,
           "steel; VDI 2230 has 0.60 to 0.65 by class, from memory"),
    SW__IN_TIMES(shear_strength_MPa, "MPa", 0.1, 1e4, 0.95, 1.15,
                 "tensile strength times the material's shear ratio: common "
                 "practice, no source"),
    SW__IN(nut_proof_MPa, "MPa", 1, 1e4, 0, 0, "by class and diameter"),
    SW__IN_TIMES(pressure_limit_MPa, "MPa", 1, 1e4, 1, 1.8,
                 "by strap material: VDI 2230, of two editions the lower"),
    SW__END,
};
#undef SW__S

void sw_engage_defaults(sw_engage_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    in->engaged_length_mm = in->stud_tensile_MPa = SW_UNSET;
    in->stud_shear_ratio = in->shear_strength_MPa = SW_UNSET;
    in->nut_proof_MPa = in->pressure_limit_MPa = SW_UNSET;
}

static int grade_assumed(const sw__strap_full *strap)
{
    return (strap->in.assumed & sw__bit(SW_STRUCT_STRAP_IN, "grade")) != 0;
}

/* The stripping room's question inside this one. A grade that was assumed stays
 * open: where it does not cover the size that is no error. */
static sw_strip_in strip_question(const sw__strap_full *strap,
                                  const sw_engage_in *in)
{
    sw_strip_in q;
    sw_strip_defaults(&q);
    sw__copy(q.thread, sizeof q.thread, strap->in.thread);
    if (!grade_assumed(strap) && !sw__is_set(in->stud_tensile_MPa))
        sw__copy(q.grade, sizeof q.grade, strap->in.grade);
    sw__copy(q.material, sizeof q.material, in->material);
    q.preload_N = strap->torque.preload_N;
    q.engaged_length_mm = in->engaged_length_mm;
    q.stud_tensile_MPa = in->stud_tensile_MPa;
    q.stud_shear_ratio = in->stud_shear_ratio;
    q.shear_strength_MPa = in->shear_strength_MPa;
    return q;
}

static int open_threads(const sw__strap_full *strap, sw__engage_full *full,
                        const sw__filler *fill, sw_error *err)
{
    sw_strip_in q = strip_question(strap, &full->in);
    int status = sw_strip_resolve(&q, err);
    if (status)
        return status;
    full->strip = sw_strip(&q, err);
    sw__fill_text(fill, "material", q.material);
    sw__fill_number(fill, "engaged_length_mm", q.engaged_length_mm);
    sw__fill_number(fill, "stud_tensile_MPa", q.stud_tensile_MPa);
    sw__fill_number(fill, "stud_shear_ratio", q.stud_shear_ratio);
    sw__fill_number(fill, "shear_strength_MPa", q.shear_strength_MPa);
    return full->strip.status;
}

static int open_nut(const sw__strap_full *strap, sw__engage_full *full,
                    const sw__filler *fill, sw_error *err)
{
    const int given = full->in.nut_class[0] != '\0';
    if (sw__is_set(full->in.nut_proof_MPa)) {
        full->nut_warnings = given ? SW_WARN_UNUSED_INPUT : 0;
        return SW_OK;
    }
    sw__fill_text(fill, "nut_class", sw__nut_for(strap->in.grade));
    const sw_nut_out n =
        sw_nut_proof(full->in.nut_class, strap->thread.nominal_mm, err);
    if (n.status && given)
        return n.status;
    sw__clear(err);
    if (!n.status) {
        sw__fill_number(fill, "nut_proof_MPa", n.proof_MPa);
        full->nut_warnings = n.warnings;
    }
    return SW_OK;
}

static int open_bearing(sw__engage_full *full, const sw__filler *fill,
                        sw_error *err)
{
    if (sw__is_set(full->in.pressure_limit_MPa)) {
        full->bearing_warnings =
            full->in.strap_material[0] ? SW_WARN_UNUSED_INPUT : 0;
        return SW_OK;
    }
    sw__fill_text(fill, "strap_material", "C45");
    const sw_material_out m =
        sw__material(full->in.strap_material, "strap_material", err);
    if (m.status)
        return m.status;
    sw__fill_number(fill, "pressure_limit_MPa", m.pressure_limit_MPa);
    full->bearing_warnings = m.warnings;
    return SW_OK;
}

int sw__engage_open(const sw__strap_full *strap, const sw_engage_in *in,
                    sw__engage_full *full, sw_error *err)
{
    memset(full, 0, sizeof *full);
    full->in = *in;
    const sw__filler fill = {(char *)&full->in, SW_STRUCT_ENGAGE_IN,
                             &full->in.assumed};
    int status = sw__reopen(&full->in, SW_STRUCT_ENGAGE_IN, &full->in.assumed,
                            &full->in.seal, err);
    if (!status)
        status = sw__check_input(&full->in, SW_STRUCT_ENGAGE_IN, err);
    if (!status)
        status = open_threads(strap, full, &fill, err);
    if (!status)
        status = open_nut(strap, full, &fill, err);
    if (!status)
        status = open_bearing(full, &fill, err);
    return status;
}

sw_assumption sw_strap_weakest_assumed(const sw_strap_in *in,
                                       const sw_engage_in *engage, int index,
                                       sw_error *err)
{
    sw__strap_full strap;
    sw__engage_full full;
    sw__clear(err);
    int status = !in       ? sw__fail_null(err, "in")
                 : !engage ? sw__fail_null(err, "engage")
                           : sw__strap_open(in, &strap, err);
    if (!status)
        status = sw__engage_open(&strap, engage, &full, err);
    if (status)
        return sw__no_assumption(status);
    return sw__assumed(&full.in, SW_STRUCT_ENGAGE_IN, full.in.assumed, index,
                       err);
}
