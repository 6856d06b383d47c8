/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Vacuum holding: slide, tip, first gap and peel.
 *
 * Theory, sources and limits: lib/clamp/vacuum.c.
 */
#ifndef STRAPWISE_VACUUM_H
#define STRAPWISE_VACUUM_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_vacuum(). Set by sw_vacuum_defaults() first. Required:
 *  vacuum; and the length and width inside the seal, or its area. */
typedef struct {
    double vacuum_MPa; /**< gauge reading below the atmosphere, 1e-5 .. 0.12 */
    double altitude_m; /**< height over the sea, -500 .. 9000 */
    double atmosphere_MPa; /**< pressure of the air, 0.02 .. 0.12 */
    double seal_length_mm; /**< length inside the seal line, 0.001 .. 100000 */
    double seal_width_mm;  /**< width inside the seal line: the cut is taken
                               across the shorter of both, 0.001 .. 100000 */
    double seal_area_mm2;  /**< area inside the seal line, 0.1 .. 1e8 */
    double mu_face;        /**< friction of the part on plate or seal, 0 .. 2 */
    double weight_N;       /**< weight of the part, 0 .. 1e8 */
    double side_cut_N;     /**< cut sideways, along the plate, 0 .. 1e8 */
    double cut_height_mm;  /**< its height over the plate, 0 .. 100000 */
    double lift_N;         /**< cut that lifts, at the middle, 0 .. 1e8 */
    double rim_lift_N;     /**< cut that lifts at the rim, 0 .. 1e8 */
    double required_margin; /**< wanted margin on the cut, 1 .. 20 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default
                           of the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                        question was changed afterwards */
} sw_vacuum_in;

/** Answer of sw_vacuum(). A double that does not apply is SW_UNSET. */
typedef struct {
    int status;        /**< 0 or sw_status */
    uint64_t warnings; /**< SW_WARN_ bits */
    int verdict;   /**< whether it holds with the wanted margin; open: no cut
                      given */
    int first;     /**< what would be lost first; open: no cut given */
    double held_N; /**< vacuum times area */
    double atmosphere_MPa; /**< pressure of the air that entered: no vacuum
                                is deeper */
    double vacuum_share;   /**< vacuum over the atmosphere */
    double slide_N;        /**< side cut that slides, beside the lift given */
    double gap_N;        /**< side cut at its height that opens the first gap */
    double tip_N;        /**< side cut at its height that tips */
    double rim_gap_N;    /**< lift at the rim alone that opens the first gap */
    double rim_tip_N;    /**< lift at the rim alone that tips */
    double slide_margin; /**< load factor of sliding */
    double gap_margin;   /**< load factor of the first gap: the seal leaks
                            there */
    double tip_margin;   /**< load factor of tipping */
    double lift_margin;  /**< load factor of lifting off */
    double margin; /**< load factor at which it stops holding; open: no cut
                        given */
} sw_vacuum_out;

/** Sets every field to "left to the library". */
SW_API void sw_vacuum_defaults(sw_vacuum_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask
 *  another, change the one it came from; a resolved one that was changed is
 *  refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_vacuum_resolve(sw_vacuum_in *in, sw_error *err);

/**
 * What a vacuum plate holds, and the cut at which the part slides, gapes
 * or tips.
 *
 * Example:
 * @code
 * sw_vacuum_in in;
 * sw_vacuum_defaults(&in);
 * in.vacuum_MPa = 0.08;
 * in.seal_length_mm = 150;
 * in.seal_width_mm = 100;
 * sw_vacuum_out out = sw_vacuum(&in, NULL);   // out.held_N is 1200
 * @endcode
 */
SW_API SW_NODISCARD sw_vacuum_out sw_vacuum(const sw_vacuum_in *in,
                                            sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_vacuum_assumed(const sw_vacuum_in *in,
                                                    int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
