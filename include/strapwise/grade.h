/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Strength of studs and nuts by grade and diameter.
 */
#ifndef STRAPWISE_GRADE_H
#define STRAPWISE_GRADE_H

#include <strapwise/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Strength of one grade for one diameter. */
typedef struct {
    int status;         /**< 0 or sw_status */
    uint64_t warnings;  /**< SW_WARN_ bits */
    char grade[16];     /**< as the table spells it */
    double proof_MPa;   /**< stress under proof load; SW_UNSET where the
                             standard gives none (stainless) */
    double yield_MPa;   /**< lower yield or 0.2 % proof stress, minimum */
    double tensile_MPa; /**< tensile strength, minimum */
    char source[80];    /**< standard and edition */
} sw_grade_out;

/**
 * Strength of a grade for a nominal diameter: "8.8", "10.9", "grade-5",
 * "A2-70".
 *
 * @param grade       name of the grade
 * @param nominal_mm  nominal diameter, 1 .. 100
 * @param err         error record, may be NULL
 */
SW_API SW_NODISCARD sw_grade_out sw_grade(const char *grade, double nominal_mm,
                                          sw_error *err);

/** Name of the index-th row of the grade table, or NULL past the end. Grades
 *  with two diameter ranges appear twice. */
SW_API const char *sw_grade_name(int index);

#ifdef __cplusplus
}
#endif
#endif
