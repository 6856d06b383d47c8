/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Numbers and quantities as people write them, read without regard to
 *        locale.
 *
 * The rest of the library has one fixed unit per quantity (N, N·m, mm, MPa,
 * degree). Conversion happens here and nowhere else.
 */
#ifndef STRAPWISE_UNITS_H
#define STRAPWISE_UNITS_H

#include <strapwise/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Kinds of quantity that sw_quantity() reads. */
typedef enum {
    SW_KIND_RATIO = 1,  /**< no unit, or "%" */
    SW_KIND_LENGTH,     /**< mm */
    SW_KIND_FORCE,      /**< N */
    SW_KIND_TORQUE,     /**< N·m */
    SW_KIND_PRESSURE,   /**< MPa; stresses too */
    SW_KIND_ANGLE,      /**< degree */
    SW_KIND_SLOPE,      /**< mm/m */
    SW_KIND_COMPLIANCE, /**< mm/N */
    SW_KIND_SPEED,      /**< m/min */
    SW_KIND_ROTATION,   /**< rpm */
    SW_KIND_POWER,      /**< W */
    SW_KIND_MASS,       /**< kg */
    SW_KIND_AREA,       /**< mm2 */
    SW_KIND_ALTITUDE,   /**< m, over the sea */
    SW_KIND_COUNT = SW_KIND_ALTITUDE
} sw_kind;

/** A number read by sw_quantity(). */
typedef struct {
    int status;   /**< 0 or sw_status */
    double value; /**< in the library's unit of the kind */
} sw_quantity_out;

/**
 * Reads "25 ft-lbf", "0.002 in", "1-1/4 in", "2 thou", "12kN", "3 mm/m".
 *
 * The number has a point as decimal mark and no group marks; the unit is one
 * of a closed list and must be there (a zero needs one too), except for
 * ratios. A bare "lb" is refused as a force: it is a mass.
 *
 * @param text   UTF-8 text; at most 64 bytes are looked at
 * @param kind   sw_kind
 * @param field  name used in the error message
 * @param err    error record, may be NULL
 * @return value in the library's unit of that kind
 */
SW_API SW_NODISCARD sw_quantity_out sw_quantity(const char *text, int kind,
                                                const char *field,
                                                sw_error *err);

/** Reads a plain decimal number ("12", "-1.5e3"), to the last character. */
SW_API SW_NODISCARD sw_quantity_out sw_number(const char *text,
                                              const char *field, sw_error *err);

/** Name of the library's unit for a kind ("N", "mm", ...), "" for ratios,
 *  NULL for no kind. */
SW_API const char *sw_kind_unit(int kind);

/** Factor of a named unit: value in the library's unit = factor × number.
 *  @return the factor, or NaN with an error for an unknown unit or another
 *          kind of quantity */
SW_API SW_NODISCARD sw_quantity_out sw_unit_factor(const char *unit, int kind,
                                                   const char *field,
                                                   sw_error *err);

/**
 * Writes a number in a fixed form whatever the locale: `digits` significant
 * digits, no exponent between 1e-4 and 1e15, no trailing zeros, never "-0".
 * NaN and infinities are written "nan", "inf", "-inf".
 *
 * @param value   any double
 * @param digits  1 .. 17
 * @param text    receives the text; at least 32 bytes
 * @param room    size of text
 * @return length written, 0 when room is too small
 */
SW_API size_t sw_format(double value, int digits, char *text, size_t room);

/** The same with a fixed number of decimals, 0 .. 12, halves away from zero:
 *  "3.00"; never "-0.00". A value of more than 15 digits in all has no decimals
 *  to fix and is written as sw_format() does. */
SW_API size_t sw_format_fixed(double value, int decimals, char *text,
                              size_t room);

#ifdef __cplusplus
}
#endif
#endif
