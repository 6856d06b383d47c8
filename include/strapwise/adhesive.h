/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Adhesive and tape holding, by the data sheet alone.
 *
 * Theory, sources and limits: lib/clamp/adhesive.c.
 */
#ifndef STRAPWISE_ADHESIVE_H
#define STRAPWISE_ADHESIVE_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_adhesive(). Set by sw_adhesive_defaults() first.
 *  Required: shear strength of the data sheet with its factor, tension
 *  strength where anything pulls; and length and width, or area. */
typedef struct {
    double shear_MPa;    /**< shear strength by the data sheet, 1e-5 .. 200 */
    double tension_MPa;  /**< tension strength, across the joint, by the data
                             sheet, 1e-5 .. 200 */
    double sheet_factor; /**< factor that the data sheet or its maker wants
                              on them, 1 .. 100 */
    double bond_scatter_pct; /**< scatter of a bond either way, 0 .. 90 */
    double bond_length_mm;   /**< length of the bond, 0.001 .. 100000 */
    double bond_width_mm;    /**< width of the bond: the cut is taken across the
                               shorter of both, 0.001 .. 100000 */
    double bond_area_mm2;    /**< area that is bonded, 0.1 .. 1e8 */
    double side_cut_N;       /**< cut sideways, along the plate, 0 .. 1e8 */
    double cut_height_mm;    /**< its height over the plate, 0 .. 100000 */
    double lift_N;           /**< cut that lifts, at the middle, 0 .. 1e8 */
    double required_margin;  /**< wanted margin on the cut, 1 .. 20 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default
                           of the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                        question was changed afterwards */
} sw_adhesive_in;

/** Answer of sw_adhesive(). A double that does not apply is SW_UNSET. */
typedef struct {
    int status;        /**< 0 or sw_status */
    uint64_t warnings; /**< SW_WARN_ bits */
    int verdict; /**< whether it holds with the wanted margin; open: no cut
                      given */
    int first;   /**< what would be lost first; open: no cut given */
    double shear_held_N;     /**< side cut alone that it holds, factor and
                              scatter taken off */
    double tension_held_N;   /**< even lift alone that it holds, the same taken
                                off */
    double shear_stress_MPa; /**< shear in the bond */
    double peel_stress_MPa;  /**< largest tension in the bond, at the edge the
                                 cut lifts */
    double shear_use;        /**< shear over what is allowed */
    double tension_use;      /**< tension over what is allowed */
    double margin; /**< load factor at which it stops holding; open: no cut
                        given */
} sw_adhesive_out;

/** Sets every field to "left to the library". */
SW_API void sw_adhesive_defaults(sw_adhesive_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask
 *  another, change the one it came from; a resolved one that was changed is
 *  refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_adhesive_resolve(sw_adhesive_in *in, sw_error *err);

/**
 * What a bond holds by its maker's data sheet; nothing without one.
 *
 * Example:
 * @code
 * sw_adhesive_in in;
 * sw_adhesive_defaults(&in);
 * in.shear_MPa = 0.5;
 * in.tension_MPa = 0.4;
 * in.sheet_factor = 3;
 * in.bond_length_mm = 100;
 * in.bond_width_mm = 60;
 * in.side_cut_N = 150;
 * sw_adhesive_out out = sw_adhesive(&in, NULL);   // out.margin
 * @endcode
 */
SW_API SW_NODISCARD sw_adhesive_out sw_adhesive(const sw_adhesive_in *in,
                                                sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_adhesive_assumed(const sw_adhesive_in *in,
                                                      int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
