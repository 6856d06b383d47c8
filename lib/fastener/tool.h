/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the tool check shares with its own resolve step and with the choice of a
 * tool.
 */
#ifndef SW_FASTENER_TOOL_H
#define SW_FASTENER_TOOL_H

#include "base/internal.h"
#include "base/tables.h"

#include <strapwise/tool.h>

#define SW__USABLE_FRACTION 0.2 /* of a scale, where none was given */

/* N.m in one sw_torque_unit. */
double sw__torque_unit_Nm(int torque_unit);

/* Whether a torque is below a limit by more than a conversion of units is
 * off. */
static inline int sw__below(double torque, double limit)
{
    return torque < limit * (1 - 1e-9);
}

/* Equation (1), in any unit. */
static inline double sw__usable_low(double range_low, double range_high,
                                    double fraction)
{
    return fmax(range_low, fraction * range_high);
}

/* Fills every open field in place. Returns 0 or records the error. */
int sw__tool_open(sw_tool_in *in, sw_error *err);

/* Lowest usable torque of a resolved question. */
double sw__tool_low(const sw_tool_in *resolved);

/* Whole numbers of steps inside the usable range; the last is below the first
 * where there are none. What a conversion of units is off counts as inside. */
void sw__tool_steps(const sw_tool_in *resolved, double *first, double *last);

/* The row of a key, or NULL. */
const struct sw__tools_row *sw__tool_row(const char *key);

/* The index-th row that would do for a torque, best first; tools of the
 * system of `torque_unit` before the others, 0 for no preference. NULL past
 * the end. */
const struct sw__tools_row *sw__tool_fit(double torque_Nm, int torque_unit,
                                         int index);

/* "small click wrench, 5 to 25 N.m, would do (click-25Nm)", or that none
 * would. */
void sw__tool_advise(sw__line *line, double torque_Nm, int torque_unit);

#endif
