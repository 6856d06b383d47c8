/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the strap shares with the torque: the usual grade, the friction behind
 * a nut factor, the words on an assumed friction.
 */
#ifndef SW_FASTENER_TORQUE_H
#define SW_FASTENER_TORQUE_H

#include "base/internal.h"

#include <strapwise/grade.h>
#include <strapwise/lubrication.h>
#include <strapwise/thread.h>
#include <strapwise/torque.h>

/* Grade assumed for a stud of this thread. */
const char *sw__usual_grade(const sw_thread_out *thread);

/* Friction, the same in thread and seat, behind the nut factor; negative when
 * there is none. Needs nut_factor and friction_radius_mm. */
double sw__split_friction(const sw_torque_in *in, const sw_thread_out *thread);

/* Replaces range and source of an assumed K or mu by those of its row. */
void sw__describe_friction(sw_assumption *a, const char *lubrication);

#endif
