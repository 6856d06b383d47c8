/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_HOLD_FIXTURE_H
#define SW_HOLD_FIXTURE_H

#include "base/internal.h"

#include <strapwise/fixture.h>

struct sw_fixture {
    sw_support_in *support;
    sw_clamp_in *clamp;
    sw_stop_in *stop;
    sw_load_in *load;
    int supports, clamps, stops, loads;
    int room[SW_PART_LOAD + 1]; /* by sw_part */
    sw_weight_in weight;        /* weight_N 0 when there is none */
};

#endif
