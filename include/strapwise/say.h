/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Quantities as text for people: rounded to what a bench can use, in
 *        both systems of units.
 */
#ifndef STRAPWISE_SAY_H
#define STRAPWISE_SAY_H

#include <strapwise/units.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Which units are written. */
typedef enum {
    SW_SHOW_SI_FIRST = 1, /**< "6052 N (1361 lbf)" */
    SW_SHOW_US_FIRST,     /**< "1361 lbf (6052 N)" */
    SW_SHOW_SI,           /**< "6052 N" */
    SW_SHOW_US            /**< "1361 lbf" */
} sw_show;

/**
 * Writes one value: force, torque, length and stress with their unit in the
 * systems asked for; a ratio as per cent, an angle in degrees; "-" where there
 * is no value. From 10 kN on, newtons become kilonewtons; below 20 ft-lbf a
 * torque is told in pound-force inches.
 *
 * @param value  in the library's unit of the kind
 * @param kind   sw_kind: FORCE, TORQUE, LENGTH, PRESSURE, RATIO, ANGLE
 * @param show   sw_show; 0: SI first
 * @param text   receives the text, UTF-8; at least 64 bytes
 * @param room   size of text
 * @return length written; 0, and an empty text, when room is too small, the
 *         kind has no text or there is no such way to show it
 */
SW_API size_t sw_say(double value, int kind, int show, char *text, size_t room);

/** Writes two ends on one scale: "7.71 .. 8.06 kN (1733 .. 1812 lbf)", or one
 *  value where they are the same to a millionth; at least 100 bytes. */
SW_API size_t sw_say_range(double low, double high, int kind, int show,
                           char *text, size_t room);

#ifdef __cplusplus
}
#endif
#endif
