/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Materials of straps, T-nuts, plates and parts.
 *
 * Where the numbers come from: tables/README.md.
 */
#ifndef STRAPWISE_MATERIAL_H
#define STRAPWISE_MATERIAL_H

#include <strapwise/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/** One material; strengths are least or low typical values. A number that is
 *  not known is SW_UNSET. */
typedef struct {
    int status;               /**< 0 or sw_status */
    uint64_t warnings;        /**< SW_WARN_ bits */
    char material[24];        /**< key */
    char label[64];           /**< in words */
    double modulus_MPa;       /**< Young's modulus */
    double poisson;           /**< Poisson's ratio */
    double density_kg_per_m3; /**< density */
    double yield_MPa;         /**< yield or 0.2 % proof stress */
    double tensile_MPa;       /**< tensile strength */
    double shear_ratio;       /**< shear over tensile strength: common practice,
                                   no source */
    double pressure_limit_MPa; /**< limiting surface pressure of a bolt's seat,
                                    VDI 2230, the lower edition */
    char source[160];          /**< source, edition */
} sw_material_out;

/**
 * Looks a material up by its key: "C45", "S235", "6061-T6", "GJL-250".
 *
 * @code
 * sw_material_out m = sw_material("6061-T6", NULL);   // m.modulus_MPa is 68900
 * @endcode
 *
 * @param key  one of sw_material_name(), capitals and small letters alike
 * @param err  error record, may be NULL; SW_ERR_UNKNOWN offers the nearest
 */
SW_API SW_NODISCARD sw_material_out sw_material(const char *key, sw_error *err);

/** Key of the index-th material, or NULL past the end. */
SW_API const char *sw_material_name(int index);

#ifdef __cplusplus
}
#endif
#endif
