/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Published preloads at one torque, 90 N.m on M12x1.25, kN: Mechanical
 * Engineering Design (Shigley) 9th ed., tables 8-13 (unlubricated) and 8-14
 * (lubricated, from memory).
 */
#ifndef TESTS_FASTENER_PAIRS_SETS_H
#define TESTS_FASTENER_PAIRS_SETS_H

#include "../common.h"

enum { DRY = 20, OILED = 10 };

static const double dry_kN[DRY] = {23.6, 27.6, 28.0, 29.4, 30.3, 30.7, 32.9,
                                   33.8, 33.8, 33.8, 34.7, 35.6, 35.6, 37.4,
                                   37.8, 37.8, 39.2, 40.0, 40.5, 42.7};
static const double oiled_kN[OILED] = {30.3, 32.5, 32.5, 32.9, 32.9,
                                       33.8, 34.3, 34.7, 37.4, 40.5};

static inline void add_pair(sw_pairs *pairs, double torque_Nm, double force_N)
{
    sw_error err;
    const int status =
        sw_pairs_add(pairs, torque_Nm, force_N, SW_UNSET, SW_UNSET, &err);
    check_no_error("pair", status, &err);
}

static inline sw_pairs *new_pairs(void)
{
    sw_error err;
    sw_pairs *pairs = sw_pairs_new(&err);
    must(pairs != NULL, "%s", err.message);
    return pairs;
}

static inline sw_pairs *preloads(const double *kN, int n)
{
    sw_pairs *pairs = new_pairs();
    for (int i = 0; i < n; i++)
        add_pair(pairs, 90, 1000 * kN[i]);
    return pairs;
}

#endif
