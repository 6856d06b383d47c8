/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Pads, noses and buttons: pressure on the part, and whether it marks.
 *
 * Theory, sources and limits: lib/clamp/pad.c.
 */
#ifndef STRAPWISE_PAD_H
#define STRAPWISE_PAD_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_pad(). Set by sw_pad_defaults() first. Required: force,
 *  part material or its limit; area of a flat pad, or radius (and width) of
 *  a nose. */
typedef struct {
    double force_N;       /**< force on the pad, 0.001 .. 1e8 */
    int nose;             /**< flat pad, round nose across the strap, or ball */
    double pad_length_mm; /**< flat pad: its length, 0.001 .. 100000 */
    double pad_width_mm;  /**< flat pad, or round nose along its line: its
                              width, 0.001 .. 100000 */
    double pad_diameter_mm; /**< flat round pad: its diameter, 0.001 ..
                                 100000 */
    double pad_area_mm2;    /**< flat pad: area that bears, 0.001 .. 1e8 */
    double nose_radius_mm;  /**< radius of round nose or ball, 0.05 .. 100000 */
    char pad_material[24];  /**< material of pad or nose, by its key; "" =
                                assumed C45 */
    char part_material[24]; /**< material of the part, by its key */
    double part_limit_MPa;  /**< pressure that the part stands, instead of the
                                table's, 0.1 .. 100000 */
    double pad_limit_MPa;   /**< pressure that the pad stands, instead of the
                               table's, 0.1 .. 100000 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default
                           of the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                        question was changed afterwards */
} sw_pad_in;

/** Answer of sw_pad(). A double that does not apply is SW_UNSET. */
typedef struct {
    int status;            /**< 0 or sw_status */
    uint64_t warnings;     /**< SW_WARN_ bits */
    int mark;              /**< whether the part is marked */
    int part_limit_kind;   /**< which limit of the part was used */
    int pad_limit_kind;    /**< which limit of the pad was used */
    double pressure_MPa;   /**< on a flat pad; in the middle under a nose or
                              ball */
    double mean_MPa;       /**< force over area */
    double area_mm2;       /**< area that bears */
    double half_width_mm;  /**< half-width under a nose, radius of the spot
                               under a ball */
    double part_limit_MPa; /**< pressure at which the part gives */
    double part_ratio;     /**< pressure over it */
    double mark_N;         /**< force at which it is reached */
    double pad_limit_MPa;  /**< pressure at which the pad gives */
    double pad_ratio;      /**< pressure over it */
} sw_pad_out;

/** Sets every field to "left to the library". */
SW_API void sw_pad_defaults(sw_pad_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask
 *  another, change the one it came from; a resolved one that was changed is
 *  refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_pad_resolve(sw_pad_in *in, sw_error *err);

/**
 * Pressure under a pad, a round nose or a ball, and whether it marks the
 * part.
 *
 * Example:
 * @code
 * sw_pad_in in;
 * sw_pad_defaults(&in);
 * in.force_N = 4000;
 * in.pad_diameter_mm = 16;
 * strcpy(in.pad_material, "C11000");
 * strcpy(in.part_material, "6061-T6");
 * sw_pad_out out = sw_pad(&in, NULL);   // out.mark
 * @endcode
 */
SW_API SW_NODISCARD sw_pad_out sw_pad(const sw_pad_in *in, sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_pad_assumed(const sw_pad_in *in, int index,
                                                 sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
