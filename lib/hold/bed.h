/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_HOLD_BED_H
#define SW_HOLD_BED_H

#include "hold/rig.h"

/* The share of the largest support below which another counts as idle. */
#define SW__IDLE 1e-6

/* Supports as springs that only push, under the wrench of everything else: N by
 * support. Returns whether they balance it. */
int sw__bed(const sw__rig *rig, const double w[6], double *N);

/* Which supports carry (N above SW__IDLE of the largest); returns how many. */
int sw__bed_on(const sw__rig *rig, const double *N, char *on);

/* The springs of a fixed set: u = -inverse (Fz Mx My), N = k (u0 + y u1 - x u2).
 * Returns 0 where they stand on a line or a point. */
int sw__bed_inverse(const sw__rig *rig, const char *on, double inverse[3][3]);

#endif
