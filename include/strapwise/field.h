/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Names, units, allowed ranges and usual ranges of every field of the
 *        input and result structs, for tools that reach them by name.
 */
#ifndef STRAPWISE_FIELD_H
#define STRAPWISE_FIELD_H

#include <strapwise/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/** What a field holds. */
typedef enum {
    SW_FIELD_NUMBER = 1, /**< double */
    SW_FIELD_WORD,       /**< int, enumerator of a list of words */
    SW_FIELD_TEXT        /**< char array, zero-terminated */
} sw_field_type;

/** The structs that have a list of fields. */
typedef enum {
    SW_STRUCT_THREAD_OUT = 1,
    SW_STRUCT_GRADE_OUT,
    SW_STRUCT_LUBRICATION_OUT,
    SW_STRUCT_TORQUE_IN,
    SW_STRUCT_TORQUE_OUT,
    SW_STRUCT_CHART_IN,
    SW_STRUCT_CHART_OUT,
    SW_STRUCT_STRAP_IN,
    SW_STRUCT_STRAP_OUT,
    SW_STRUCT_TILT_OUT,
    SW_STRUCT_PLACE_OUT,
    SW_STRUCT_STRAP_TORQUE_OUT,
    SW_STRUCT_MATTER_OUT,
    SW_STRUCT_METHOD_OUT,
    SW_STRUCT_SPREAD_IN,
    SW_STRUCT_SPREAD_OUT,
    SW_STRUCT_WINDOW_OUT,
    SW_STRUCT_STRAP_SPREAD_OUT,
    SW_STRUCT_TOOL_IN,
    SW_STRUCT_TOOL_OUT,
    SW_STRUCT_SHOP_TOOL_OUT,
    SW_STRUCT_PAIRS_OUT,
    SW_STRUCT_PAIR_OUT,
    SW_STRUCT_CALIBRATE_IN,
    SW_STRUCT_CALIBRATE_OUT,
    SW_STRUCT_MATERIAL_OUT,
    SW_STRUCT_NUT_OUT,
    SW_STRUCT_STRIP_IN,
    SW_STRUCT_STRIP_OUT,
    SW_STRUCT_ENGAGE_IN,
    SW_STRUCT_GIVES_OUT,
    SW_STRUCT_TURN_OUT,
    SW_STRUCT_STRAP_DRAWING_IN,
    SW_STRUCT_SUPPORT_IN,
    SW_STRUCT_CLAMP_IN,
    SW_STRUCT_STOP_IN,
    SW_STRUCT_LOAD_IN,
    SW_STRUCT_WEIGHT_IN,
    SW_STRUCT_CUT_MATERIAL_OUT,
    SW_STRUCT_CUT_LOAD_OUT,
    SW_STRUCT_TURNING_IN,
    SW_STRUCT_TURNING_OUT,
    SW_STRUCT_MILLING_IN,
    SW_STRUCT_MILLING_OUT,
    SW_STRUCT_DRILLING_IN,
    SW_STRUCT_DRILLING_OUT,
    SW_STRUCT_SCREW_IN,
    SW_STRUCT_SCREW_OUT,
    SW_STRUCT_CYLINDER_IN,
    SW_STRUCT_CYLINDER_OUT,
    SW_STRUCT_SWING_IN,
    SW_STRUCT_SWING_OUT,
    SW_STRUCT_VACUUM_IN,
    SW_STRUCT_VACUUM_OUT,
    SW_STRUCT_ADHESIVE_IN,
    SW_STRUCT_ADHESIVE_OUT,
    SW_STRUCT_BAR_IN,
    SW_STRUCT_BAR_OUT,
    SW_STRUCT_CONTACT_IN,
    SW_STRUCT_CONTACT_OUT,
    SW_STRUCT_PAD_IN,
    SW_STRUCT_PAD_OUT,
    SW_STRUCT_DISC_IN,
    SW_STRUCT_DISC_OUT,
    SW_STRUCT_CHUCK_IN,
    SW_STRUCT_CHUCK_OUT,
    SW_STRUCT_SQUEEZE_IN,
    SW_STRUCT_SQUEEZE_OUT,
    SW_STRUCT_JOB_OUT,
    SW_STRUCT_JOB_CORNER_OUT,
    SW_STRUCT_JOB_CLAMP_OUT,
    SW_STRUCT_JOB_OPERATION_OUT,
    SW_STRUCT_HOLD_MAP_IN,
    SW_STRUCT_HOLD_IN,
    SW_STRUCT_HOLD_OUT,
    SW_STRUCT_HOLD_POINT_OUT,
    SW_STRUCT_HOLD_CONTACT_OUT,
    SW_STRUCT_COUPLE_IN,
    SW_STRUCT_COUPLE_OUT,
    SW_STRUCT_TRIPOD_IN,
    SW_STRUCT_TRIPOD_OUT,
    SW_STRUCT_TIGHT_IN,
    SW_STRUCT_TIGHT_OUT,
    SW_STRUCT_REMEDY_OUT,
    SW_STRUCT_COUNT = SW_STRUCT_REMEDY_OUT
} sw_struct;

/** One field of a struct. `status`, `warnings`, `assumed` and `seal`
 *  are not listed. */
typedef struct {
    const char *name;   /**< as in the struct */
    const char *unit;   /**< "N", "mm", ... or "" */
    int type;           /**< sw_field_type */
    int words;          /**< sw_words, for SW_FIELD_WORD */
    size_t offset;      /**< within the struct */
    size_t size;        /**< bytes */
    double min;         /**< inputs: smallest value allowed */
    double max;         /**< inputs: largest value allowed */
    double low;         /**< inputs: usual range of the default, lower end */
    double high;        /**< inputs: usual range of the default, upper end;
                             no range where it is not above low */
    int relative;       /**< inputs: low and high are factors of the default */
    const char *source; /**< inputs: where the default comes from */
} sw_field;

/** The index-th field of a struct, or NULL past the end. Inputs: in the
 *  struct's order, and the index is the field's bit in `assumed`. Results: in
 *  the order of the JSON keys. */
SW_API const sw_field *sw_field_at(int structure, int index);

/** The field with this name, or NULL. */
SW_API const sw_field *sw_field_named(int structure, const char *name);

#ifdef __cplusplus
}
#endif
#endif
