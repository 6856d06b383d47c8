/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Contact: Hertz contact of a cylinder on its line, or of a ball.
 *
 * Symbols: F force, L length, r1 r2 radii (negative: hollow), E n Young's
 * modulus and Poisson's ratio, b half-width, a radius of the spot, p0 peak
 * pressure, d approach.
 *
 *   both     1/R = 1/r1 + 1/r2, 1/E = (1 - n1^2)/E1 + (1 - n2^2)/E2      (1)
 *   line     b = sqrt(4 F R/(pi L E)), p0 = 2 F/(pi b L)                  (2)
 *   ball     a = (3 F R/(4 E))^(1/3), p0 = 3 F/(2 pi a^2), d = a^2/R      (3)
 *   shear    largest below the surface: 0.300 p0 line, 0.310 p0 ball      (4)
 *   onset    yield starts at p0 = 1.67 Y line, 1.60 Y ball (Tresca)       (5)
 *
 * (2) Mechanical Engineering Design eq. 3-73, 3-74; (3) as Formulas for
 * Stress, Strain and Structural Matrices, Table 9-2 case 1b, within the digits
 * of its coefficients; (4), (5) Contact Mechanics (Johnson), from memory, for
 * Poisson's ratio 0.3.
 *
 * Not in it: elliptical contact, ends of a cylinder (they bite first), layers,
 * friction, roughness, plastic flow beyond the onset; the approach of a line,
 * which depends on where the bodies are held.
 */
#include "base/material.h"
#include "base/room.h"
#include "clamp/hertz.h"

#include <strapwise/contact.h>

#define SW__S sw_contact_in
const sw_field sw__contact_in_fields[] = {
    SW__IN(force_N, "N", 0.001, 1e8, 0, 0, ""),
    SW__IN_WORD(contact, SW_WORDS_CONTACT, "a cylinder"),
    SW__IN(radius1_mm, "mm", 0.001, 1e6, 0, 0, ""),
    SW__IN(radius2_mm, "mm", -1e9, 1e9, 0, 0, "flat"),
    SW__IN(contact_length_mm, "mm", 0.001, 100000, 0, 0, ""),
    SW__IN_TEXT(material1, ""),
    SW__IN_TEXT(material2, ""),
    SW__IN(modulus1_MPa, "MPa", 1, 2e6, 0, 0, "by material"),
    SW__IN(modulus2_MPa, "MPa", 1, 2e6, 0, 0, "by material"),
    SW__IN(poisson1, "", 0, 0.5, 0, 0, "by material"),
    SW__IN(poisson2, "", 0, 0.5, 0, 0, "by material"),
    SW__IN(yield_MPa, "MPa", 0.1, 10000, 0, 0,
           "by material, the lower of both"),
    SW__END,
};
#undef SW__S

#define SW__S sw_contact_out
const sw_field sw__contact_out_fields[] = {
    SW__OUT(half_width_mm, "mm"),
    SW__OUT(peak_MPa, "MPa"),
    SW__OUT(mean_MPa, "MPa"),
    SW__OUT(approach_mm, "mm"),
    SW__OUT(shear_MPa, "MPa"),
    SW__OUT(onset_MPa, "MPa"),
    SW__OUT(onset_ratio, ""),
    SW__OUT(onset_N, "N"),
    SW__OUT(reduced_modulus_MPa, "MPa"),
    SW__END,
};
#undef SW__S

/* One body's constants and yield from its material. */
static int fill_body(const sw__filler *fill, const char *key,
                     const char *const name[3], const double given[2],
                     double *yield, uint64_t *warnings, sw_error *err)
{
    *yield = SW_UNSET;
    if (!key[0]) {
        if (sw__is_set(given[0]) && sw__is_set(given[1]))
            return SW_OK;
        return sw__fail_missing(err, name[0],
                                "give a material, or modulus and Poisson's "
                                "ratio");
    }
    const sw_material_out m = sw__material(key, name[0], err);
    if (m.status)
        return m.status;
    *warnings |= m.warnings;
    sw__fill_number(fill, name[1], m.modulus_MPa);
    sw__fill_number(fill, name[2], m.poisson);
    *yield = m.yield_MPa;
    return SW_OK;
}

static int contact_fill(sw_contact_in *in, const sw__filler *fill,
                        uint64_t *warnings, sw_error *err)
{
    static const char *const first[] = {"material1", "modulus1_MPa",
                                        "poisson1"},
                             *const second[] = {"material2", "modulus2_MPa",
                                                "poisson2"};
    double yield1 = SW_UNSET, yield2 = SW_UNSET;
    if (!sw__is_set(in->force_N))
        return sw__fail_missing(err, "force_N", "force on the contact");
    if (!sw__is_set(in->radius1_mm))
        return sw__fail_missing(err, "radius1_mm", "radius of the first body");
    sw__fill_word(fill, "contact", SW_CONTACT_LINE);
    if (in->contact == SW_CONTACT_LINE && !sw__is_set(in->contact_length_mm))
        return sw__fail_missing(err, "contact_length_mm",
                                "length of the line, or say that it is a "
                                "point");
    if (in->contact == SW_CONTACT_POINT && sw__is_set(in->contact_length_mm))
        *warnings |= SW_WARN_UNUSED_INPUT;
    if (sw__is_set(in->radius2_mm) &&
        !(in->radius2_mm > 0 || in->radius2_mm < -in->radius1_mm))
        return sw__fail_conflict(err, "radius2_mm",
                                 "a hollow must be wider than what lies in "
                                 "it, and 0 is no radius");
    const double given1[] = {in->modulus1_MPa, in->poisson1},
                 given2[] = {in->modulus2_MPa, in->poisson2};
    int status =
        fill_body(fill, in->material1, first, given1, &yield1, warnings, err);
    if (!status)
        status = fill_body(fill, in->material2, second, given2, &yield2,
                           warnings, err);
    if (status)
        return status;
    if (sw__is_set(yield1) && sw__is_set(yield2))
        sw__fill_number(fill, "yield_MPa", fmin(yield1, yield2));
    return SW_OK;
}

static int contact_solve(const sw_contact_in *in, sw_contact_out *out,
                         sw_error *err)
{
    const int line = in->contact == SW_CONTACT_LINE;
    const double curve = 1 / in->radius1_mm +
                         (sw__is_set(in->radius2_mm) ? 1 / in->radius2_mm : 0);
    const double E = sw__reduced_modulus(in->modulus1_MPa, in->poisson1,
                                         in->modulus2_MPa, in->poisson2);
    const sw__spot s =
        sw__hertz(in->force_N, line ? in->contact_length_mm : 0, 1 / curve, E);
    if (s.half_width_mm > in->radius1_mm / 2)
        return sw__fail_conflict(err, "radius1_mm",
                                 "flattens to more than half its radius: no "
                                 "Hertz contact");
    out->half_width_mm = s.half_width_mm;
    out->peak_MPa = s.peak_MPa;
    out->mean_MPa = s.mean_MPa;
    out->approach_mm = s.approach_mm;
    out->reduced_modulus_MPa = E;
    out->shear_MPa = s.peak_MPa * (line ? SW__LINE_SHEAR : SW__POINT_SHEAR);
    if (!sw__is_set(in->yield_MPa))
        return SW_OK;
    out->onset_MPa = in->yield_MPa * (line ? SW__LINE_ONSET : SW__POINT_ONSET);
    out->onset_ratio = s.peak_MPa / out->onset_MPa;
    out->onset_N = in->force_N / pow(out->onset_ratio, line ? 2 : 3);
    return SW_OK;
}

SW__ROOM(contact, CONTACT);
