/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What drilling shares with its own resolve step.
 */
#ifndef SW_CUT_DRILLING_H
#define SW_CUT_DRILLING_H

#include "cut/kienzle.h"

#include <strapwise/drilling.h>

typedef struct {
    sw_drilling_in in;
    sw__speed speed;
    uint64_t warnings;
} sw__drilling_full;

/* Returns 0 or records the error. */
int sw__drilling_open(const sw_drilling_in *in, sw__drilling_full *full,
                      sw_error *err);

#endif
