/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What torque shares with its own resolve step and with the strap.
 */
#ifndef SW_FASTENER_TORQUE_H
#define SW_FASTENER_TORQUE_H

#include "base/internal.h"

#include <strapwise/grade.h>
#include <strapwise/lubrication.h>
#include <strapwise/thread.h>
#include <strapwise/torque.h>

#define SW__PROOF_ADVISED 0.75 /* of the proof load; common practice, no source \
                                */

/* Fills every open field in place and looks the thread up. Returns 0 or
 * records the error. */
int sw__torque_open(sw_torque_in *in, sw_thread_out *thread, sw_error *err);

/* The grade that is assumed for a stud. */
const char *sw__usual_grade(const sw_thread_out *thread);

/* Replaces range and source of an assumed K or mu by those of its row. */
void sw__describe_friction(sw_assumption *a, const sw_torque_in *resolved);

#endif
