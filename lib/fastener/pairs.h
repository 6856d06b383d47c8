/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What pairs shares with the calibration.
 */
#ifndef SW_FASTENER_PAIRS_H
#define SW_FASTENER_PAIRS_H

#include "base/internal.h"

#include <strapwise/calibrate.h>

typedef struct {
    double torque_Nm, force_N;
    double thread_torque_Nm, seat_torque_Nm; /* or SW_UNSET */
} sw__pair;

struct sw_pairs {
    sw__pair *pair;
    int count, room;
    char name[80], thread[32], lubrication[64];
    double prevailing_torque_Nm; /* or SW_UNSET */
};

#endif
