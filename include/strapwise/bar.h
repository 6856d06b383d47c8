/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief A bar over the part, pulled down by two studs, on two pads.
 *
 * Theory, sources and limits: lib/clamp/bar.c.
 */
#ifndef STRAPWISE_BAR_H
#define STRAPWISE_BAR_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_bar(). Set by sw_bar_defaults() first. Required: both
 *  tensions, span, both pads, width and thickness. */
typedef struct {
    double stud1_N; /**< tension of the first stud, 0 .. 1e8 */
    double stud2_N; /**< tension of the second stud, 0 .. 1e8 */
    double span_mm; /**< first stud to second stud, 0.001 .. 100000 */
    double pad1_mm; /**< first stud to first pad, along the bar, -100000 ..
                         100000 */
    double pad2_mm; /**< first stud to second pad, along the bar, -100000 ..
                         100000 */
    double bar_width_mm;     /**< width of the bar, 0.001 .. 100000 */
    double bar_thickness_mm; /**< thickness of the bar, 0.001 .. 100000 */
    double hole_mm;          /**< hole or slot for a stud, 0 .. 10000 */
    char bar_material[24]; /**< material of the bar, by its key; "" = assumed */
    double bar_modulus_MPa; /**< Young's modulus, 1 .. 1e6 */
    double bar_yield_MPa;   /**< yield, 1 .. 10000 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default
                           of the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                        question was changed afterwards */
} sw_bar_in;

/** Answer of sw_bar(). A double that does not apply is SW_UNSET. */
typedef struct {
    int status;          /**< 0 or sw_status */
    uint64_t warnings;   /**< SW_WARN_ bits */
    int rest;            /**< stays, or rocks: a pad carries nothing; moment,
                              stress and deflections do not apply then */
    double pad1_N;       /**< force on the first pad; below zero: it would have
                              to pull */
    double pad2_N;       /**< force on the second pad; below zero likewise */
    double moment_Nm;    /**< largest bending moment */
    double stress_MPa;   /**< largest bending stress, holes deducted */
    double yield_margin; /**< yield over it */
    double sag1_mm; /**< first stud's place sinks by this, against the pads */
    double sag2_mm; /**< second stud's place sinks by this, against the pads */
    double bow_mm;  /**< largest deflection between the pads; negative: away
                        from the part */
} sw_bar_out;

/** Sets every field to "left to the library". */
SW_API void sw_bar_defaults(sw_bar_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask
 *  another, change the one it came from; a resolved one that was changed is
 *  refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_bar_resolve(sw_bar_in *in, sw_error *err);

/**
 * Forces at two pads under a bar that two studs pull down, with its
 * bending.
 *
 * Example:
 * @code
 * sw_bar_in in;
 * sw_bar_defaults(&in);
 * in.stud1_N = in.stud2_N = 6000;
 * in.span_mm = 200;
 * in.pad1_mm = 50;
 * in.pad2_mm = 150;
 * in.bar_width_mm = 40;
 * in.bar_thickness_mm = 20;
 * sw_bar_out out = sw_bar(&in, NULL);   // out.pad1_N
 * @endcode
 */
SW_API SW_NODISCARD sw_bar_out sw_bar(const sw_bar_in *in, sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_bar_assumed(const sw_bar_in *in, int index,
                                                 sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
