/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Two pads that hold a push and a couple by friction.
 *
 * Theory, sources and limits: lib/hold/couple.c.
 */
#ifndef STRAPWISE_COUPLE_H
#define STRAPWISE_COUPLE_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_couple(). Set by sw_couple_defaults() first. Required:
 *  first normal force, distance; and a load. */
typedef struct {
    double normal1_N;   /**< normal force on the first pad, 0.001 .. 1e8 */
    double normal2_N;   /**< normal force on the second pad, 0.001 .. 1e8 */
    double distance_mm; /**< first pad to second, 0.001 .. 100000 */
    double mu_face;     /**< friction of part and pad, 0 .. 2 */
    double faces;    /**< faces of each clamp that cannot move: 2 only where the
                       toe is held sideways too, 1 .. 2 */
    double across_N; /**< push across the line of the pads, through its
                          middle, 0 .. 1e8 */
    double along_N;  /**< push along the line, 0 .. 1e8 */
    double couple_Nm;       /**< couple of the cut, 0 .. 1e6 */
    double required_margin; /**< wanted margin on the cut, 1 .. 20 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default
                           of the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                        question was changed afterwards */
} sw_couple_in;

/** Answer of sw_couple(). A double that does not apply is SW_UNSET. */
typedef struct {
    int status;        /**< 0 or sw_status */
    uint64_t warnings; /**< SW_WARN_ bits */
    int verdict;   /**< whether it holds with the wanted margin; open: no cut
                      given */
    double pad1_N; /**< friction of the first pad at the cut, across the line */
    double pad2_N; /**< of the second, positive where it works with the first */
    double holds1_N; /**< friction that the first pad has */
    double holds2_N; /**< friction that the second pad has */
    double margin;   /**< load factor at which it stops holding; open: no cut
                        given */
} sw_couple_out;

/** Sets every field to "left to the library". */
SW_API void sw_couple_defaults(sw_couple_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask
 *  another, change the one it came from; a resolved one that was changed is
 *  refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_couple_resolve(sw_couple_in *in, sw_error *err);

/**
 * Margin of two pads against a push along the table and a couple, by
 * friction.
 *
 * Example:
 * @code
 * sw_couple_in in;
 * sw_couple_defaults(&in);
 * in.normal1_N = 4000;
 * in.distance_mm = 200;
 * in.across_N = 500;
 * in.couple_Nm = 30;
 * sw_couple_out out = sw_couple(&in, NULL);   // out.margin is 1.5
 * @endcode
 */
SW_API SW_NODISCARD sw_couple_out sw_couple(const sw_couple_in *in,
                                            sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_couple_assumed(const sw_couple_in *in,
                                                    int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
