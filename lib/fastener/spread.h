/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the rooms of the spread share.
 */
#ifndef SW_FASTENER_SPREAD_H
#define SW_FASTENER_SPREAD_H

#include "base/internal.h"

#include <strapwise/spread.h>

/* Standard deviations of the logarithm; of torque and of what divides it. */
typedef struct {
    double tool, factor;
    int apart; /* both are known; else `factor` holds the whole */
} sw__sigmas;

/* Fills every open field in place. Returns 0 or records the error. */
int sw__spread_open(sw_spread_in *spread, const char *lubrication,
                    sw_error *err);

/* The lubrication that a resolved question about torque really used, "" where
 * a nut factor or friction was given. */
const char *sw__lubrication_used(const sw_torque_in *resolved);

/* The index-th default of an open question, with or without those that only
 * trials use. */
sw_assumption sw__spread_assumed(const sw_spread_in *full, int trials,
                                 int index, sw_error *err);

/* Of an open question. Equation (2) of spread.c. */
sw__sigmas sw__spread_sigmas(const sw_spread_in *full);

/* Standard deviation of ln(preload) at a torque of which `lost` does not
 * stretch anything. Equation (3). */
double sw__spread_sigma(const sw__sigmas *s, double torque_Nm, double lost_Nm);

/* What the method behind an open question is worth. */
uint64_t sw__spread_warnings(const sw_spread_in *full);

/* Least torque at which equation (3) holds. */
double sw__spread_least(const sw__sigmas *s, double z, double lost_Nm);

/* Half the width of the part `coverage` of the normal distribution. */
double sw__spread_z(double coverage);

/* Uses of proof and yield at the high end `high_N`, and their warnings. */
void sw__spread_judge(const sw_torque_out *t, double high_N, double *proof_use,
                      double *yield_use, uint64_t *warnings);

#endif
