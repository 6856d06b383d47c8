/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Strength of nuts by class or grade and diameter.
 */
#ifndef STRAPWISE_NUT_H
#define STRAPWISE_NUT_H

#include <strapwise/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Strength of one class of nut for one diameter. */
typedef struct {
    int status;         /**< 0 or sw_status */
    uint64_t warnings;  /**< SW_WARN_ bits */
    char nut_class[16]; /**< as the table spells it */
    double proof_MPa;   /**< proof load over the stud's stress area */
    char source[80];    /**< standard and edition */
} sw_nut_out;

/**
 * Proof stress of a nut for a nominal diameter: "8", "10", "grade-5", "A2-70".
 * Its proof load is that times the stress area of the thread.
 *
 * @code
 * sw_nut_out n = sw_nut_proof("8", 12, NULL);   // n.proof_MPa is 880
 * @endcode
 *
 * @param nut_class   name of the class or grade; full-height nuts
 * @param nominal_mm  nominal diameter, 1 .. 100
 * @param err         error record, may be NULL
 */
SW_API SW_NODISCARD sw_nut_out sw_nut_proof(const char *nut_class,
                                            double nominal_mm, sw_error *err);

/** Name of the index-th row of the nut table, or NULL past the end. Classes
 *  with several diameter ranges appear several times. */
SW_API const char *sw_nut_name(int index);

#ifdef __cplusplus
}
#endif
#endif
