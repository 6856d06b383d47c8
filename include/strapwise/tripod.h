/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Three supports under one force.
 *
 * Theory, sources and limits: lib/hold/tripod.c.
 */
#ifndef STRAPWISE_TRIPOD_H
#define STRAPWISE_TRIPOD_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_tripod(). Set by sw_tripod_defaults() first. Required:
 *  all three places, the force and its place. */
typedef struct {
    double x1_mm;     /**< support 1, x, -100000 .. 100000 */
    double y1_mm;     /**< support 1, y, -100000 .. 100000 */
    double x2_mm;     /**< support 2, x, -100000 .. 100000 */
    double y2_mm;     /**< support 2, y, -100000 .. 100000 */
    double x3_mm;     /**< support 3, x, -100000 .. 100000 */
    double y3_mm;     /**< support 3, y, -100000 .. 100000 */
    double force_N;   /**< force down, of clamps, weight and cut together,
                         0.001 .. 1e8 */
    double x_mm;      /**< its place, x, -100000 .. 100000 */
    double y_mm;      /**< its place, y, -100000 .. 100000 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default
                           of the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                        question was changed afterwards */
} sw_tripod_in;

/** Answer of sw_tripod(). A double that does not apply is SW_UNSET. */
typedef struct {
    int status;         /**< 0 or sw_status */
    uint64_t warnings;  /**< SW_WARN_ bits */
    int rest;           /**< stays, or rocks: the force lies outside the
                            triangle */
    double support1_N;  /**< on the first support; below zero: it would have to
                            pull */
    double support2_N;  /**< on the second support; likewise */
    double support3_N;  /**< on the third support; likewise */
    double inside_mm;   /**< from the force to the nearest edge of the triangle;
                            below zero: outside, square to the line of the
                            edge that it is furthest beyond */
    double least_share; /**< least support over the force; below zero: rocks */
} sw_tripod_out;

/** Sets every field to "left to the library". */
SW_API void sw_tripod_defaults(sw_tripod_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask
 *  another, change the one it came from; a resolved one that was changed is
 *  refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_tripod_resolve(sw_tripod_in *in, sw_error *err);

/**
 * What each of three supports carries of a force, or that the part rocks.
 *
 * Example:
 * @code
 * sw_tripod_in in;
 * sw_tripod_defaults(&in);
 * in.x1_mm = in.y1_mm = in.y2_mm = 0;
 * in.x2_mm = 200;
 * in.x3_mm = 100;
 * in.y3_mm = 150;
 * in.force_N = 3000;
 * in.x_mm = 100;
 * in.y_mm = 60;
 * sw_tripod_out out = sw_tripod(&in, NULL);   // 900, 900, 1200
 * @endcode
 */
SW_API SW_NODISCARD sw_tripod_out sw_tripod(const sw_tripod_in *in,
                                            sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_tripod_assumed(const sw_tripod_in *in,
                                                    int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
