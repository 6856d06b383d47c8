/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_FASTENER_WINDOW_H
#define SW_FASTENER_WINDOW_H

#include "base/internal.h"

#include <strapwise/spread.h>

/* The torque between two stud tensions; the limits as the user gave them are
 * in out->hold_N and out->flat_N. Returns 0 or records the error. */
int sw__window_between(const sw_torque_in *in, const sw_spread_in *spread,
                       double hold_preload_N, double flat_preload_N,
                       sw_window_out *out, sw_error *err);

/* Both limits, in range and in order. */
int sw__window_check(double hold_N, double flat_N, double most, sw_error *err);

#endif
