/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief How far a strap's nut turns from snug to its tension: the shop's
 *        cross-check of a torque wrench.
 *
 * Theory, sources and limits: lib/clamp/turn.c.
 */
#ifndef STRAPWISE_TURN_H
#define STRAPWISE_TURN_H

#include <strapwise/strap.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Answer of sw_strap_turn(). */
typedef struct {
    int status;          /**< 0 or sw_status */
    uint64_t warnings;   /**< SW_WARN_ bits */
    double turn_deg;     /**< turn of the nut from snug */
    double turn_low_deg; /**< the stud stretches alone, as stiff as it can be */
    double turn_high_deg; /**< everything gives, settles and twists */
    double flats;         /**< the same in flats of the hexagon, 60 deg each */
    double snug_N;        /**< tension from which the turn counts */
    double preload_N;     /**< tension at which it ends */
    double stud_mm;       /**< stretch of the free stud on the way */
    double ends_mm;       /**< give of its engaged threads */
    double strap_mm;      /**< the strap bends down at the stud */
    double supports_mm;   /**< part and heel yield under the strap, as the stud
                               feels it */
} sw_turn_out;

/**
 * Nut turn from snug to the strap's tension, with its band.
 *
 * @code
 * sw_turn_out t = sw_strap_turn(&in, SW_UNSET, NULL);   // t.flats
 * @endcode
 *
 * @param in     the strap; its nut must turn
 * @param snug_N tension when the nut is snug, 0 .. below the strap's tension;
 *               SW_UNSET = 5 % of it, in the band 0 to 10 %
 * @param err    error record, may be NULL
 */
SW_API SW_NODISCARD sw_turn_out sw_strap_turn(const sw_strap_in *in,
                                              double snug_N, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
