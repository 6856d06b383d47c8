/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the three cuts share: the metal and its specific force, the speed.
 */
#ifndef SW_CUT_KIENZLE_H
#define SW_CUT_KIENZLE_H

#include "base/internal.h"

#include <strapwise/cut_material.h>

/* Chips thinner than this are outside of what the law was measured on. */
#define SW__CHIP_THIN_MM 0.02

/* The fields on the metal, wherever they stand. */
typedef struct {
    const char *material;
    const double *kc11_MPa, *mc, *rake_deg, *reference_rake_deg,
        *rake_effect_pct, *wear_factor, *unit_power_MPa;
} sw__metal;

#define SW__METAL_OF(in)                                                       \
    {                                                                          \
        (in)->material, &(in)->kc11_MPa, &(in)->mc, &(in)->rake_deg,           \
            &(in)->reference_rake_deg, &(in)->rake_effect_pct,                 \
            &(in)->wear_factor, &(in)->unit_power_MPa                          \
    }

#define SW__METAL_OPEN(in)                                                     \
    ((in)->kc11_MPa = (in)->mc = (in)->rake_deg = (in)->reference_rake_deg =   \
         (in)->rake_effect_pct = (in)->wear_factor = (in)->unit_power_MPa =    \
             SW_UNSET)

/* Their rows in a field list. */
#define SW__METAL_FIELDS                                                       \
    SW__IN_TEXT(material, ""),                                                 \
        SW__IN_TIMES(kc11_MPa, "MPa", 50, 2e4, 0.85, 1.15, "by material"),     \
        SW__IN(mc, "", 0, 0.6, 0.14, 0.3, "by material"),                      \
        SW__IN(rake_deg, "deg", -30, 45, 0, 0,                                 \
               "the rake that the table holds for"),                           \
        SW__IN(reference_rake_deg, "deg", -30, 45, 0, 0,                       \
               "of the table the constants come from"),                        \
        SW__IN(rake_effect_pct, "%", 0, 2, 1, 1.5,                             \
               "1 % for each degree by tool makers; 1.5 classical; from "      \
               "memory"),                                                      \
        SW__IN(wear_factor, "", 0.8, 3, 1, 1.5,                                \
               "1.0 sharp to 1.5 worn: common practice, no source"),           \
        SW__IN(unit_power_MPa, "MPa", 10, 2e4, 0, 0, "by material")

/* Cosine of an angle in degrees, nothing at all for a square corner. */
static inline double sw__cos_deg(double deg)
{
    return deg == 90 ? 0 : cos(SW__RAD(deg));
}

/* Opens what is open of the metal. 0 or the error recorded. */
int sw__metal_open(const sw__metal *m, const sw__filler *fill,
                   uint64_t *warnings, sw_error *err);

/* Specific force at a chip thickness, from a metal with nothing open. */
double sw__kc(const sw__metal *m, double chip_mm);

/* Specific force of the second opinion, SW_UNSET where there is none. */
double sw__by_volume(const sw__metal *m);

/* Either of rotation and cutting speed from the other; what cannot be known
 * stays open. 0 or the error recorded. */
typedef struct {
    double rpm, m_per_min;
} sw__speed;
int sw__speed_open(double speed_rpm, double cutting_speed_m_per_min,
                   double diameter_mm, sw__speed *speed, sw_error *err);

/* A product that is open where one factor is. */
double sw__times(double a, double b);

/* sw__assumed() with the table's own range and source for the metal. */
sw_assumption sw__cut_assumed(const void *in, int structure, uint64_t assumed,
                              const char *material, int index, sw_error *err);

/* A required number that is open. */
int sw__cut_missing(double value, const char *field, const char *what,
                    sw_error *err);

#endif
