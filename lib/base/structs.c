/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Structs: which list of fields belongs to which struct. What is built from
 * some of the library's sources alone has a shorter list in this file's place.
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
    [SW_STRUCT_TILT_OUT] = sw__tilt_out_fields,
    [SW_STRUCT_PLACE_OUT] = sw__place_out_fields,
    [SW_STRUCT_STRAP_TORQUE_OUT] = sw__strap_torque_out_fields,
    [SW_STRUCT_MATTER_OUT] = sw__matter_out_fields,
    [SW_STRUCT_METHOD_OUT] = sw__method_out_fields,
    [SW_STRUCT_SPREAD_IN] = sw__spread_in_fields,
    [SW_STRUCT_SPREAD_OUT] = sw__spread_out_fields,
    [SW_STRUCT_WINDOW_OUT] = sw__window_out_fields,
    [SW_STRUCT_STRAP_SPREAD_OUT] = sw__strap_spread_out_fields,
    [SW_STRUCT_TOOL_IN] = sw__tool_in_fields,
    [SW_STRUCT_TOOL_OUT] = sw__tool_out_fields,
    [SW_STRUCT_SHOP_TOOL_OUT] = sw__shop_tool_out_fields,
    [SW_STRUCT_PAIRS_OUT] = sw__pairs_out_fields,
    [SW_STRUCT_PAIR_OUT] = sw__pair_out_fields,
    [SW_STRUCT_CALIBRATE_IN] = sw__calibrate_in_fields,
    [SW_STRUCT_CALIBRATE_OUT] = sw__calibrate_out_fields,
    [SW_STRUCT_MATERIAL_OUT] = sw__material_out_fields,
    [SW_STRUCT_NUT_OUT] = sw__nut_out_fields,
    [SW_STRUCT_STRIP_IN] = sw__strip_in_fields,
    [SW_STRUCT_STRIP_OUT] = sw__strip_out_fields,
    [SW_STRUCT_ENGAGE_IN] = sw__engage_in_fields,
    [SW_STRUCT_GIVES_OUT] = sw__gives_out_fields,
    [SW_STRUCT_TURN_OUT] = sw__turn_out_fields,
    [SW_STRUCT_STRAP_DRAWING_IN] = sw__strap_drawing_in_fields,
    [SW_STRUCT_SUPPORT_IN] = sw__support_in_fields,
    [SW_STRUCT_CLAMP_IN] = sw__clamp_in_fields,
    [SW_STRUCT_STOP_IN] = sw__stop_in_fields,
    [SW_STRUCT_LOAD_IN] = sw__load_in_fields,
    [SW_STRUCT_WEIGHT_IN] = sw__weight_in_fields,
};
