/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Swing clamps and pivoted arms.
 *
 * Theory, sources and limits: lib/clamp/swing.c.
 */
#ifndef STRAPWISE_SWING_H
#define STRAPWISE_SWING_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_swing(). Set by sw_swing_defaults() first. Required: arm
 *  length; and pressure with bore, or input force, or the rating alone. */
typedef struct {
    int arm_kind;  /**< stands out from the piston, or turns about a pivot */
    double arm_mm; /**< piston axis or pivot to the contact on the part, 0.1
                        .. 10000 */
    double input_arm_mm; /**< pivoted arm: pivot to where it is pushed, 0.1
                              .. 10000 */
    double pressure_MPa; /**< supply pressure over the atmosphere, 0.0001 ..
                              1000 */
    double bore_mm;      /**< bore, 0.5 .. 2000 */
    double rod_mm; /**< rod diameter, which a pulling piston loses, 0 .. 2000 */
    double input_force_N; /**< pull of the piston or push on the arm, instead
                               of pressure and bore, 0.001 .. 1e8 */
    double efficiency;    /**< part left by the friction of seals and pivot, 0.1
                            .. 1 */
    double guide_length_mm; /**< swing arm: length over which the rod is
                                 guided, 0.1 .. 10000 */
    double mu_guide;      /**< swing arm: friction of the rod in its guide, 0 ..
                          0.5 */
    double rated_force_N; /**< force the maker allows at the rated arm, 0.001
                               .. 1e8 */
    double rated_arm_mm;  /**< arm of the rating, 0.1 .. 10000 */
    double rated_pressure_MPa; /**< pressure of the rating, 0.0001 .. 1000 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default
                           of the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                        question was changed afterwards */
} sw_swing_in;

/** Answer of sw_swing(). A double that does not apply is SW_UNSET. */
typedef struct {
    int status;         /**< 0 or sw_status */
    uint64_t warnings;  /**< SW_WARN_ bits */
    double force_N;     /**< force at the contact that can be had: what the arm
                           and its highest pressure allow kept */
    double available_N; /**< what acts with this input; by the rating where
                           there is no bore */
    double allowed_N;   /**< what the rated moment allows at this arm */
    double moment_Nm;   /**< moment of the force on the arm */
    double rated_moment_Nm; /**< moment the rating stands for */
    double arm_loss; /**< part of the pull lost in the guide to the arm */
    double allowed_pressure_MPa; /**< highest pressure for this arm, the rated
                                    one or lower */
    double moment_use;  /**< moment of what the input would give over the
                            rated moment */
    double force_ratio; /**< force at the contact over the input force */
} sw_swing_out;

/** Sets every field to "left to the library". */
SW_API void sw_swing_defaults(sw_swing_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask
 *  another, change the one it came from; a resolved one that was changed is
 *  refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_swing_resolve(sw_swing_in *in, sw_error *err);

/**
 * Force at the end of a swing arm or pivoted arm, and the pressure that
 * its arm allows.
 *
 * Example:
 * @code
 * sw_swing_in in;
 * sw_swing_defaults(&in);
 * in.arm_mm = 80.5;
 * in.rated_force_N = 4450;
 * in.rated_arm_mm = 49.5;
 * sw_swing_out out = sw_swing(&in, NULL);   // out.allowed_N is 2736
 * @endcode
 */
SW_API SW_NODISCARD sw_swing_out sw_swing(const sw_swing_in *in, sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_swing_assumed(const sw_swing_in *in,
                                                   int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
