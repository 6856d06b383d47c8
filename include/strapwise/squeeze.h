/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Squeeze for a cut held by friction, on one face or two.
 *
 * Theory, sources and limits: lib/hold/squeeze.c.
 */
#ifndef STRAPWISE_SQUEEZE_H
#define STRAPWISE_SQUEEZE_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_squeeze(). Set by sw_squeeze_defaults() first. Required:
 *  cut. */
typedef struct {
    double cut_N;     /**< cut in the plane of the faces, 0.001 .. 1e8 */
    double mu_face;   /**< friction of part and face, 0.001 .. 2 */
    double faces;     /**< faces that cannot move: 2 only where both can take a
                       side force, 1 .. 2 */
    double squeeze_N; /**< squeeze that is there, 0.001 .. 1e8 */
    double required_margin; /**< wanted margin on the cut, 1 .. 20 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default
                           of the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                        question was changed afterwards */
} sw_squeeze_in;

/** Answer of sw_squeeze(). A double that does not apply is SW_UNSET. */
typedef struct {
    int status;        /**< 0 or sw_status */
    uint64_t warnings; /**< SW_WARN_ bits */
    int verdict;     /**< whether it holds with the wanted margin; open: no cut
                      given */
    double normal_N; /**< friction normal of all faces together */
    double squeeze_needed_N; /**< squeeze for it */
    double faces;            /**< that were counted on */
    double margin; /**< load factor at which it stops holding; open: no cut
                        given */
} sw_squeeze_out;

/** Sets every field to "left to the library". */
SW_API void sw_squeeze_defaults(sw_squeeze_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask
 *  another, change the one it came from; a resolved one that was changed is
 *  refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_squeeze_resolve(sw_squeeze_in *in, sw_error *err);

/**
 * Squeeze that holds a cut by friction, and which faces were counted on.
 *
 * Example:
 * @code
 * sw_squeeze_in in;
 * sw_squeeze_defaults(&in);
 * in.cut_N = 1000;
 * in.mu_face = 0.2;
 * sw_squeeze_out out = sw_squeeze(&in, NULL);   // out.normal_N is 10000
 * @endcode
 */
SW_API SW_NODISCARD sw_squeeze_out sw_squeeze(const sw_squeeze_in *in,
                                              sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_squeeze_assumed(const sw_squeeze_in *in,
                                                     int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
