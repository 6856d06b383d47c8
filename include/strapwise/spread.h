/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief What the same torque really gives: the spread of the preload, and
 *        the torque that keeps the whole spread between two limits.
 *
 * Theory and sources: lib/fastener/spread.c, lib/fastener/window.c.
 */
#ifndef STRAPWISE_SPREAD_H
#define STRAPWISE_SPREAD_H

#include <strapwise/torque.h>

#ifdef __cplusplus
extern "C" {
#endif

/** How a tightening scatters. Set by sw_spread_defaults() first. Say it in one
 *  of three ways: by method, by one ± of the preload in all, or by the ± of
 *  torque tool and nut factor apart. */
typedef struct {
    char method[32];    /**< key of a way of tightening; "" = by
                             lubrication */
    double scatter_pct; /**< ± of the preload at one torque, in all, 0 .. 95 */
    double tool_scatter_pct;   /**< ± of the torque alone, 0 .. 95 */
    double factor_scatter_pct; /**< ± of the nut factor alone, 0 .. 95 */
    double published_coverage; /**< part of all tightenings that those ±
                                    enclose, two-sided, 0.5 .. 0.9999 */
    double coverage; /**< part of all tightenings that low .. high of the
                          answer enclose, 0.5 .. 0.9999 */
    double height_scatter_mm; /**< trials: ± of heel height over part height,
                                   0 .. 50 */
    double trials;            /**< trials: how many, 100 .. 1e7 */
    double seed;              /**< trials: a whole number, 0 .. 2^53 */
    double threads;   /**< trials: threads at work; does not change the answer,
                           1 .. 64 */
    int vary;         /**< trials: sw_vary */
    uint64_t assumed; /**< set by the library: bit n = field n is a default of
                           the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                           question was changed afterwards */
} sw_spread_in;

/** Answer of sw_spread(). */
typedef struct {
    int status;            /**< 0 or sw_status */
    uint64_t warnings;     /**< SW_WARN_ bits, those of sw_torque() included */
    char method[32];       /**< way of tightening whose published scatter was
                                taken, or "" */
    double torque_Nm;      /**< torque on the nut */
    double preload_low_N;  /**< stud tension, lower end */
    double preload_N;      /**< its median: that of the plain formula */
    double preload_high_N; /**< upper end */
    double coverage;       /**< part of all tightenings between the ends */
    double alpha;          /**< high over low */
    double scatter_pct;    /**< the same as ±: (alpha - 1)/(alpha + 1) */
    double sigma_ln;       /**< standard deviation of ln(preload) */
    double tool_share;     /**< part of that variance from the torque tool;
                                SW_UNSET where only the whole is known */
    double proof_use_high; /**< high end over the proof load */
    double yield_use_high; /**< equivalent stress at the high end over yield */
} sw_spread_out;

/** Sets every field to "left to the library". */
SW_API void sw_spread_defaults(sw_spread_in *spread);

/** Fills every open field in place and sets its bit in `assumed`, as
 *  sw_torque_resolve() does; `in` says which way of tightening fits the nut.
 *  @return 0 or sw_status, `spread` untouched then */
SW_API SW_NODISCARD int
sw_spread_resolve(sw_spread_in *spread, const sw_torque_in *in, sw_error *err);

/** The index-th default of `spread` that entered, 0 .. ; status SW_ERR_RANGE
 *  past the end. Those of `in` are told by sw_torque_assumed(). */
SW_API SW_NODISCARD sw_assumption sw_spread_assumed(const sw_spread_in *spread,
                                                    const sw_torque_in *in,
                                                    int index, sw_error *err);

/**
 * Spread of the preload, in closed form.
 *
 * The ends stand about the median F of the plain formula as F/sqrt(alpha) and
 * F sqrt(alpha), not as F (1 - s) and F (1 + s): for ±25 % that is 0.775 F to
 * 1.291 F.
 *
 * @param in      thread, torque or preload (the median), friction
 * @param spread  how the tightening scatters
 * @param err     error record, may be NULL; SW_ERR_NONE where the prevailing
 *                torque leaves too little of what the tool gives
 *
 * Example:
 * @code
 * sw_torque_in in;
 * sw_spread_in spread;
 * sw_torque_defaults(&in);
 * sw_spread_defaults(&spread);
 * strcpy(in.thread, "M12");
 * in.torque_Nm = 48;
 * in.nut_factor = 0.2;
 * spread.scatter_pct = 25;
 * sw_spread_out out = sw_spread(&in, &spread, NULL); // 15492 .. 25820 N
 * @endcode
 */
SW_API SW_NODISCARD sw_spread_out sw_spread(const sw_torque_in *in,
                                            const sw_spread_in *spread,
                                            sw_error *err);

/** Answer of sw_window() and sw_strap_window(). */
typedef struct {
    int status;           /**< 0 or sw_status */
    uint64_t warnings;    /**< SW_WARN_ bits */
    int verdict;          /**< sw_verdict */
    double hold_N;        /**< force that the low end must reach */
    double flat_N;        /**< force that the high end must not exceed */
    double ratio;         /**< largest over smallest stud tension allowed */
    double alpha;         /**< largest over smallest tension that one torque
                             gives; a torque exists where ratio >= alpha */
    double coverage;      /**< part of all tightenings that keep both limits */
    double fitting_pct;   /**< the ± of the preload, in all and at
                               published_coverage, that would just fit the
                               limits; SW_UNSET where none does */
    double torque_Nm;     /**< torque to aim at; SW_UNSET where there is none */
    double torque_low_Nm; /**< smallest torque that does */
    double torque_high_Nm; /**< largest torque that does */
    double preload_N;      /**< stud tension aimed at */
    double preload_low_N;  /**< its lower end: at least the next but one */
    double preload_high_N; /**< its upper end */
    double hold_preload_N; /**< stud tension that just meets hold_N */
    double flat_preload_N; /**< stud tension that just stays under flat_N, or
                                at which the stud yields */
    double proof_use_high; /**< upper end over the proof load */
    double yield_use_high; /**< equivalent stress there over yield */
    char sentence[240];    /**< the answer in one sentence */
} sw_window_out;

/**
 * Torque whose whole spread lies between two stud tensions, or the sentence
 * that there is none: that is an answer, not an error.
 *
 * @param in      thread, friction, grade; its preload, torque and use are not
 *                used
 * @param spread  how the tightening scatters
 * @param hold_N  least stud tension, 1e-3 .. 1e8
 * @param flat_N  largest stud tension, above hold_N, up to 1e8
 * @param err     error record, may be NULL
 */
SW_API SW_NODISCARD sw_window_out sw_window(const sw_torque_in *in,
                                            const sw_spread_in *spread,
                                            double hold_N, double flat_N,
                                            sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
