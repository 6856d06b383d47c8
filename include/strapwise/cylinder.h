/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Hydraulic and pneumatic cylinders.
 *
 * Theory, sources and limits: lib/clamp/cylinder.c.
 */
#ifndef STRAPWISE_CYLINDER_H
#define STRAPWISE_CYLINDER_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_cylinder(). Set by sw_cylinder_defaults() first.
 *  Required: pressure; and bore or piston area. */
typedef struct {
    double pressure_MPa;     /**< supply pressure over the atmosphere, 0.0001 ..
                              1000 */
    double low_pressure_MPa; /**< pressure it may fall to: the interlock's,
                                  0.0001 .. 1000 */
    double bore_mm;          /**< bore, 0.5 .. 2000 */
    double rod_mm; /**< rod diameter, which a pulling piston loses, 0 .. 2000 */
    double piston_area_mm2; /**< effective area, instead of bore and rod, 0.1
                                 .. 1e7 */
    int side;               /**< which side the pressure acts on */
    double efficiency;      /**< part left by the friction of seals, 0.1 .. 1 */
    double spring_N;  /**< return spring that is to be overcome, 0 .. 1e7 */
    double limit_N;   /**< largest force the maker allows, 0.001 .. 1e8 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default
                           of the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                        question was changed afterwards */
} sw_cylinder_in;

/** Answer of sw_cylinder(). A double that does not apply is SW_UNSET. */
typedef struct {
    int status;         /**< 0 or sw_status */
    uint64_t warnings;  /**< SW_WARN_ bits */
    double force_N;     /**< force it may be counted on for, the maker's limit
                         kept */
    double force_low_N; /**< the same at the lowest pressure */
    double uncapped_N;  /**< what acts at this pressure: a limit caps nothing */
    double theoretical_N;         /**< pressure times area */
    double piston_area_mm2;       /**< that entered */
    double pressure_at_limit_MPa; /**< pressure at which the maker's limit is
                                       reached */
    double limit_use; /**< what the pressure would give over the maker's
                           limit */
} sw_cylinder_out;

/** Sets every field to "left to the library". */
SW_API void sw_cylinder_defaults(sw_cylinder_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask
 *  another, change the one it came from; a resolved one that was changed is
 *  refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_cylinder_resolve(sw_cylinder_in *in, sw_error *err);

/**
 * Force of a hydraulic or pneumatic cylinder that may be counted on, never
 * more than its maker's limit; a warning where more than that acts.
 *
 * Example:
 * @code
 * sw_cylinder_in in;
 * sw_cylinder_defaults(&in);
 * in.pressure_MPa = 2.5;
 * in.piston_area_mm2 = 3200;
 * in.efficiency = 1;
 * in.limit_N = 7000;
 * sw_cylinder_out out = sw_cylinder(&in, NULL);   // out.force_N is 7000
 * @endcode
 */
SW_API SW_NODISCARD sw_cylinder_out sw_cylinder(const sw_cylinder_in *in,
                                                sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_cylinder_assumed(const sw_cylinder_in *in,
                                                      int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
