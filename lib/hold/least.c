/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Least: least sum of clamp forces, each of its own, that reaches a margin.
 */
#include "hold/hold.h"

int sw__hold_least(sw__guard *g, sw__job *job)
{
    (void)g;
    (void)job;
    return SW_OK;
}
