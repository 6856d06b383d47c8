/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief The wall chart: one line per stud size.
 */
#ifndef STRAPWISE_CHART_H
#define STRAPWISE_CHART_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_chart(): one stud size. */
typedef struct {
    char thread[32];      /**< designation; required */
    char lubrication[24]; /**< "" = assumed "unknown" */
    char grade[16];       /**< "" = assumed 8.8 or grade-5 */
    double nut_factor;    /**< K, or SW_UNSET: by lubrication, 0.03 .. 1 */
    double preload_N; /**< wanted clamp force, or SW_UNSET: no column, 1e-3 ..
                           1e8 */
    double proof_fraction; /**< fraction of proof load not to be exceeded,
                                0.05 .. 1 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default of
                           the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                           question was changed afterwards */
} sw_chart_in;

/** One line of the chart. A double that does not apply is SW_UNSET. */
typedef struct {
    int status;                   /**< 0 or sw_status */
    uint64_t warnings;            /**< SW_WARN_ bits */
    double nut_factor;            /**< K that entered */
    double torque_per_kN_Nm;      /**< N·m for each kN of stud tension */
    double torque_per_klbf_ftlbf; /**< ft-lbf for each 1000 lbf */
    double preload_N;             /**< the wanted clamp force */
    double torque_Nm;             /**< torque for it */
    double limit_preload_N;       /**< proof_fraction of the proof load */
    double limit_torque_Nm;       /**< torque there: not to be exceeded */
    double preload_over_limit;    /**< preload_N / limit_preload_N */
} sw_chart_out;

/** Sets every field to "left to the library". */
SW_API void sw_chart_defaults(sw_chart_in *in);

/** Fills every open field in place and sets its bit in `assumed`, as
 *  sw_torque_resolve() does. @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_chart_resolve(sw_chart_in *in, sw_error *err);

/** One line of the chart. A grade that does not cover the size leaves the limit
 *  open; a grade that is in no table is an error. */
SW_API SW_NODISCARD sw_chart_out sw_chart(const sw_chart_in *in, sw_error *err);

/** The index-th default that entered; status SW_ERR_RANGE past the end. */
SW_API SW_NODISCARD sw_assumption sw_chart_assumed(const sw_chart_in *in,
                                                   int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
