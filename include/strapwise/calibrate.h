/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief The shop's own nut factor, from pairs of torque and force measured on
 *        its own studs.
 *
 * Theory and sources: lib/fastener/calibrate.c; the file of pairs:
 * lib/fastener/pairs.c.
 */
#ifndef STRAPWISE_CALIBRATE_H
#define STRAPWISE_CALIBRATE_H

#include <strapwise/drawing.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Pairs of torque and force, in the order they were measured. */
typedef struct sw_pairs sw_pairs;

/** What the head of a file of pairs says. */
typedef struct {
    int status;                  /**< 0 or sw_status */
    uint64_t warnings;           /**< SW_WARN_ bits */
    char name[80];               /**< of the calibration, or "" */
    char thread[32];             /**< designation, or "" */
    char lubrication[64];        /**< in the shop's own words, or "" */
    double prevailing_torque_Nm; /**< of the unloaded nut, or SW_UNSET */
    double n;                    /**< number of pairs */
} sw_pairs_out;

/** One pair, and how far it is from the others. */
typedef struct {
    int status;              /**< 0 or sw_status */
    uint64_t warnings;       /**< SW_WARN_OUTLIER: this is the one */
    double torque_Nm;        /**< torque on the nut, prevailing included */
    double force_N;          /**< tension in the stud */
    double thread_torque_Nm; /**< measured in the thread, or SW_UNSET */
    double seat_torque_Nm;   /**< measured under the nut, or SW_UNSET */
    double nut_factor;       /**< K of this pair */
    double deviation;        /**< of ln K from its mean, in sample standard
                                  deviations */
} sw_pair_out;

/** Question to sw_calibrate(), put with a set of pairs. Set by
 *  sw_calibrate_defaults() first. */
typedef struct {
    char thread[32]; /**< designation; "" = that of the pairs' own head */
    double prevailing_torque_Nm; /**< torque to turn the unloaded nut, 0 ..
                                      1e5 */
    double friction_radius_mm;   /**< mean radius under the nut, 0.1 .. 500 */
    double confidence;           /**< of the intervals, 0.5 .. 0.9999 */
    double proportion; /**< of the studs that a scatter or tolerance interval
                            is to hold, 0.5 .. 0.9999 */
    uint64_t assumed;  /**< set by the library: bit n = field n is a default of
                            the library and may change with the others */
    uint64_t seal;     /**< set by resolving, else 0: tells that a resolved
                            question was changed afterwards */
} sw_calibrate_in;

/** Answer of sw_calibrate(). Torques are net of the prevailing one. A double
 *  that does not apply is SW_UNSET. */
typedef struct {
    int status;              /**< 0 or sw_status */
    uint64_t warnings;       /**< SW_WARN_ bits */
    char thread[24];         /**< as the table spells it */
    double nut_factor;       /**< K: geometric mean of the pairs' own; the one
                                 to use */
    double nut_factor_low;   /**< t-interval of K at `confidence` */
    double nut_factor_high;  /**< t-interval of K at `confidence` */
    double sigma_ln;         /**< sample standard deviation of ln K */
    double scatter_pct;      /**< the +-s a book would print: `proportion` of
                                 forces lie within it, were sigma_ln exact; to
                                 rely on, take tolerance_pct, for
                                 factor_scatter_pct of a spread too */
    double slope;            /**< force on torque through the origin, N/N.m */
    double n;                /**< number of pairs */
    double tolerance_factor; /**< k, exact for normal ln K */
    double tolerance_low;    /**< K: with `confidence`, `proportion` of studs */
    double tolerance_high;   /**< lie between these */
    double tolerance_pct;    /**< the same as +-s of the force */
    double nut_factor_mean;  /**< arithmetic mean of the pairs' own K */
    double nut_factor_sd;    /**< their sample standard deviation */
    double nut_factor_origin;     /**< fit of torque on force through the
                                       origin */
    double nut_factor_mean_force; /**< mean torque over mean force */
    double slope_se;              /**< standard error of slope */
    double line_slope;          /**< force on torque with an intercept, N/N.m */
    double line_slope_se;       /**< its standard error */
    double line_intercept_N;    /**< force at no torque by that line */
    double line_intercept_se_N; /**< its standard error */
    double line_intercept_p;    /**< chance of such an intercept, were it 0 */
    double torque_trend_p;    /**< chance of such a trend of K with torque, were
                                there none */
    double order_trend_p;     /**< the same from row to row */
    double outlier_pair;      /**< number of the pair furthest out, from 1 */
    double outlier_deviation; /**< how far, in standard deviations of ln K */
    double outlier_limit;     /**< what chance allows, Grubbs, 5 % two-sided */
    double mu_thread;         /**< friction in the thread, mean */
    double mu_thread_low;     /**< its t-interval */
    double mu_thread_high;    /**< its t-interval */
    double mu_seat;           /**< friction under the nut, mean */
    double mu_seat_low;       /**< its t-interval */
    double mu_seat_high;      /**< its t-interval */
    double mu_total; /**< the same friction in both, mean over the pairs that
                          have parted torques */
    double mu_total_low;       /**< its t-interval */
    double mu_total_high;      /**< its t-interval */
    double friction_radius_mm; /**< radius that entered */
} sw_calibrate_out;

/** No pairs yet; to be freed by sw_pairs_free().
 *  @return NULL where there is no memory */
SW_API SW_NODISCARD sw_pairs *sw_pairs_new(sw_error *err);

/** NULL is nothing to free. */
SW_API void sw_pairs_free(sw_pairs *pairs);

/**
 * Adds one pair, at most 10000.
 *
 * @param pairs            where to
 * @param torque_Nm        torque on the nut, prevailing included, 1e-6 .. 1e6
 * @param force_N          tension in the stud, 1e-3 .. 1e8
 * @param thread_torque_Nm part of it measured in the thread, 0 .. 1e6, or
 *                         SW_UNSET
 * @param seat_torque_Nm   part of it measured under the nut, 0 .. 1e6, or
 *                         SW_UNSET
 * @param err              error record, may be NULL
 * @return 0 or sw_status, `pairs` untouched then
 */
SW_API SW_NODISCARD int sw_pairs_add(sw_pairs *pairs, double torque_Nm,
                                     double force_N, double thread_torque_Nm,
                                     double seat_torque_Nm, sw_error *err);

/**
 * Replaces everything by what a file of pairs holds, such as
 *
 *     name: oiled studs, spring 2026
 *     thread: M12
 *     torque [N.m]; force [kN]
 *     20; 8.31
 *     40; 16.9
 *
 * Columns: torque, force (also preload, tension, clamp force), thread torque,
 * seat torque, no, note. Nothing is guessed: an error names file and line.
 *
 * @param pairs   where to
 * @param text    UTF-8, the whole file; need not end with a zero
 * @param length  bytes of it, at most 4 MB
 * @param file    name for the messages, may be NULL
 * @param err     error record, may be NULL
 * @return 0 or sw_status, `pairs` untouched then
 */
SW_API SW_NODISCARD int sw_pairs_read(sw_pairs *pairs, const char *text,
                                      size_t length, const char *file,
                                      sw_error *err);

/** Number of pairs. */
SW_API int sw_pairs_count(const sw_pairs *pairs);

/** What the head of the file said. */
SW_API SW_NODISCARD sw_pairs_out sw_pairs_about(const sw_pairs *pairs,
                                                sw_error *err);

/** The index-th pair, 0 .. ; status SW_ERR_RANGE past the end. */
SW_API SW_NODISCARD sw_pair_out sw_pairs_at(const sw_calibrate_in *in,
                                            const sw_pairs *pairs, int index,
                                            sw_error *err);

/** Sets every field to "left to the library". */
SW_API void sw_calibrate_defaults(sw_calibrate_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask another,
 *  change the one it came from; a resolved one that was changed is refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int
sw_calibrate_resolve(sw_calibrate_in *in, const sw_pairs *pairs, sw_error *err);

/**
 * Nut factor, its interval and scatter, from at least two pairs.
 *
 * Example:
 * @code
 * sw_error err;
 * sw_pairs *pairs = sw_pairs_new(&err);
 * if (pairs && !sw_pairs_add(pairs, 20, 8310, SW_UNSET, SW_UNSET, &err) &&
 *     !sw_pairs_add(pairs, 40, 16900, SW_UNSET, SW_UNSET, &err)) {
 *     sw_calibrate_in in;
 *     sw_calibrate_defaults(&in);
 *     strcpy(in.thread, "M12");
 *     sw_calibrate_out out = sw_calibrate(&in, pairs, &err);
 *     // out.nut_factor is 0.199
 * }
 * sw_pairs_free(pairs);
 * @endcode
 */
SW_API SW_NODISCARD sw_calibrate_out sw_calibrate(const sw_calibrate_in *in,
                                                  const sw_pairs *pairs,
                                                  sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_calibrate_assumed(
    const sw_calibrate_in *in, const sw_pairs *pairs, int index, sw_error *err);

/**
 * Plot of force against torque: the pairs, the line of K, the band of the
 * tolerance interval, both unit systems.
 *
 * @return NULL on an error; else to be freed by sw_drawing_free()
 */
SW_API SW_NODISCARD sw_drawing *sw_calibrate_plot(const sw_calibrate_in *in,
                                                  const sw_pairs *pairs,
                                                  sw_error *err);

/** The index-th sentence on what a calibration does not check, or NULL past
 *  the end. */
SW_API const char *sw_calibrate_not_checked(int index);

#ifdef __cplusplus
}
#endif
#endif
