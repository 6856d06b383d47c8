/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The questions that the tests of the spread start from.
 */
#ifndef TESTS_SPREAD_QUESTION_H
#define TESTS_SPREAD_QUESTION_H

#include "../common.h"

/* K 0.2 and nothing assumed about friction: torque is K d F exactly. */
static inline sw_torque_in nut_of(const char *thread, double preload_N)
{
    sw_torque_in in;
    sw_torque_defaults(&in);
    SET(in.thread, thread);
    in.preload_N = preload_N;
    in.nut_factor = 0.2;
    return in;
}

static inline sw_spread_in open_spread(void)
{
    sw_spread_in s;
    sw_spread_defaults(&s);
    return s;
}

static inline sw_spread_in whole_spread(double scatter_pct)
{
    sw_spread_in s = open_spread();
    s.scatter_pct = scatter_pct;
    return s;
}

static inline sw_spread_in parts_spread(double tool_pct, double factor_pct)
{
    sw_spread_in s = open_spread();
    s.tool_scatter_pct = tool_pct;
    s.factor_scatter_pct = factor_pct;
    return s;
}

static inline sw_spread_out
good_spread(const char *what, const sw_torque_in *in, const sw_spread_in *s)
{
    sw_error err;
    const sw_spread_out out = sw_spread(in, s, &err);
    check_no_error(what, out.status, &err);
    check_numbers(what, &out, SW_STRUCT_SPREAD_OUT, out.status);
    return out;
}

/* Part of the normal distribution above z. */
static inline double normal_above(double z) { return erfc(z / sqrt(2)) / 2; }

/* Half the width of the part c of the normal distribution, by bisection of
 * the C library's erfc. */
static inline double normal_half_width(double c)
{
    double low = 0, high = 10;
    for (int i = 0; i < 100; i++) {
        const double z = (low + high) / 2;
        *(2 * normal_above(z) > 1 - c ? &low : &high) = z;
    }
    return low;
}

#endif
