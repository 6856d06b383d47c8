/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief The spread carried through one strap: how toe force and side pull
 *        scatter when the same torque is set again and again.
 *
 * Theory: lib/clamp/strap_spread.c, lib/clamp/strap_window.c.
 */
#ifndef STRAPWISE_STRAP_SPREAD_H
#define STRAPWISE_STRAP_SPREAD_H

#include <strapwise/spread.h>
#include <strapwise/strap.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Answer of sw_strap_spread(). Ends are quantiles of the trials. */
typedef struct {
    int status;              /**< 0 or sw_status */
    uint64_t warnings;       /**< SW_WARN_ bits of the nominal strap, and
                                  trials_failed */
    int band;                /**< sw_band: scatter */
    char method[32];         /**< way of tightening whose published scatter
                                  was taken, or "" */
    double scatter_pct;      /**< ± of the stud tension, in closed form */
    double coverage;         /**< part of the trials between low and high */
    double trials;           /**< trials with an answer */
    double failed;           /**< trials whose strap tips or jams */
    double preload_low_N;    /**< stud tension, lower end */
    double preload_N;        /**< its median */
    double preload_high_N;   /**< upper end */
    double toe_force_low_N;  /**< toe force, lower end */
    double toe_force_N;      /**< its median */
    double toe_force_high_N; /**< upper end */
    double toe_ratio;        /**< high over low toe force */
    double side_pull_low_N;  /**< side pull, lower end; toward the stud + */
    double side_pull_N;      /**< its median */
    double side_pull_high_N; /**< upper end */
    double slides_share; /**< part of the trials with the toe at its friction
                              limit */
    double walks_share;  /**< part of the trials where the strap walks */
} sw_strap_spread_out;

/** Tells how far a long run is, 0 .. 1; returns non-zero to end it. Called
 *  from the calling thread only. */
typedef int (*sw_progress)(double done, void *with);

/**
 * Draws a strap again and again and takes the quantiles.
 *
 * The same question, seed included, gives the same bytes with any number of
 * threads. A nut that does not turn has no torque to scatter: refused.
 *
 * @param in       the strap; its torque or preload is the median
 * @param spread   how the tightening scatters, what else varies, trials, seed
 * @param progress told now and then, may be NULL
 * @param with     handed to `progress`
 * @param err      error record, may be NULL; SW_ERR_STOPPED where `progress`
 *                 ended the run
 */
SW_API SW_NODISCARD sw_strap_spread_out
sw_strap_spread(const sw_strap_in *in, const sw_spread_in *spread,
                sw_progress progress, void *with, sw_error *err);

/** The index-th default of `spread` that entered, 0 .. ; status SW_ERR_RANGE
 *  past the end. Those of the strap are told by sw_strap_assumed(). */
SW_API SW_NODISCARD sw_assumption
sw_strap_spread_assumed(const sw_strap_in *in, const sw_spread_in *spread,
                        int index, sw_error *err);

/**
 * Torque for a strap whose toe force, spread and the strap's own band
 * included, lies between two limits; or the sentence that there is none.
 *
 * @param in      the strap; its preload and torque are not used
 * @param spread  how the tightening scatters
 * @param hold_N  least toe force, 1e-3 .. 1e7
 * @param flat_N  largest toe force, above hold_N, up to 1e7
 * @param err     error record, may be NULL; SW_ERR_NONE where no preload
 *                brings the toe to a limit
 */
SW_API SW_NODISCARD sw_window_out sw_strap_window(const sw_strap_in *in,
                                                  const sw_spread_in *spread,
                                                  double hold_N, double flat_N,
                                                  sw_error *err);

/** The index-th default of `spread` that entered sw_strap_window(), as
 *  sw_strap_spread_assumed(); those of trials are not among them. */
SW_API SW_NODISCARD sw_assumption
sw_strap_window_assumed(const sw_strap_in *in, const sw_spread_in *spread,
                        int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
