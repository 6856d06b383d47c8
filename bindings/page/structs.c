/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Structs: the list of fields of each struct that the page's engine has; in
 * the place of lib/base/structs.c.
 */
#include "base/internal.h"

const sw_field *const sw__fields_of[SW_STRUCT_COUNT + 1] = {
    [SW_STRUCT_THREAD_OUT] = sw__thread_out_fields,
    [SW_STRUCT_GRADE_OUT] = sw__grade_out_fields,
    [SW_STRUCT_LUBRICATION_OUT] = sw__lubrication_out_fields,
    [SW_STRUCT_TORQUE_IN] = sw__torque_in_fields,
    [SW_STRUCT_TORQUE_OUT] = sw__torque_out_fields,
    [SW_STRUCT_CHART_IN] = sw__chart_in_fields,
    [SW_STRUCT_CHART_OUT] = sw__chart_out_fields,
    [SW_STRUCT_STRAP_IN] = sw__strap_in_fields,
    [SW_STRUCT_STRAP_OUT] = sw__strap_out_fields,
    [SW_STRUCT_STRAP_DRAWING_IN] = sw__strap_drawing_in_fields,
};
