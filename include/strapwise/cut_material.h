/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief What a metal takes to be cut: the constants of Kienzle's law.
 *
 * Theory, sources and limits: lib/cut/cut_material.c, tables/README.md.
 */
#ifndef STRAPWISE_CUT_MATERIAL_H
#define STRAPWISE_CUT_MATERIAL_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** One row of the table of metals to be cut. A number that is not known is
 *  open. */
typedef struct {
    int status;                /**< 0 or sw_status */
    uint64_t warnings;         /**< SW_WARN_ bits */
    char material[24];         /**< as it was asked for: "6061-T6" */
    char stands_for[24];       /**< row that was taken: "vdi-22" */
    char label[96];            /**< that row in words */
    double kc11_MPa;           /**< specific force at a chip of 1 mm by 1 mm */
    double kc11_low_MPa;       /**< usual range, lower end */
    double kc11_high_MPa;      /**< usual range, upper end */
    double mc;                 /**< exponent; open where none is in print */
    double reference_rake_deg; /**< rake that the constants hold for */
    double unit_power_MPa;     /**< energy per volume of chips of a handbook, 1
                                    kW per cm3/s is 1000; open: none */
    char unit_power[64];       /**< what metal that figure is for, or "" */
    char source[160];          /**< source, edition */
} sw_cut_material_out;

/**
 * Looks a metal up by a name of its own or by its group: "6061-T6", "S235",
 * "4140", "304", "vdi-22". A name that stands for a group says so in
 * `warnings`.
 *
 * @code
 * sw_cut_material_out m = sw_cut_material("6061-T6", NULL);
 * // m.stands_for is "vdi-22", m.kc11_MPa 800, m.mc 0.25
 * @endcode
 *
 * @param name  one of sw_cut_material_name(), capitals and small letters alike
 * @param err   error record, may be NULL; SW_ERR_UNKNOWN offers the nearest
 */
SW_API SW_NODISCARD sw_cut_material_out sw_cut_material(const char *name,
                                                        sw_error *err);

/** The index-th name, or NULL past the end; first the rows of the table, then
 *  the other names for them. */
SW_API const char *sw_cut_material_name(int index);

#ifdef __cplusplus
}
#endif
#endif
