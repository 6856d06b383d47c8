/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What turning shares with its own resolve step.
 */
#ifndef SW_CUT_TURNING_H
#define SW_CUT_TURNING_H

#include "cut/kienzle.h"

#include <strapwise/turning.h>

typedef struct {
    sw_turning_in in;
    sw__speed speed;
    uint64_t warnings;
} sw__turning_full;

/* Returns 0 or records the error. */
int sw__turning_open(const sw_turning_in *in, sw__turning_full *full,
                     sw_error *err);

#endif
