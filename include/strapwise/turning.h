/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Turning: what the tool does to the part.
 *
 * Theory, sources and limits: lib/cut/turning.c, lib/cut/kienzle.c.
 */
#ifndef STRAPWISE_TURNING_H
#define STRAPWISE_TURNING_H

#include <strapwise/cut_material.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_turning(). Set by sw_turning_defaults() first. Required:
 *  material (or kc11_MPa and mc), depth_mm, feed_mm. */
typedef struct {
    char material[24];         /**< what is cut: a metal or its group */
    double kc11_MPa;           /**< instead of the material's, 50 .. 2e4 */
    double mc;                 /**< instead of the material's, 0 .. 0.6 */
    double rake_deg;           /**< rake of the tool, -30 .. 45 */
    double reference_rake_deg; /**< rake that kc11_MPa holds for, -30 .. 45 */
    double rake_effect_pct; /**< fall of the force for each degree of rake, 0 ..
                                 2 */
    double wear_factor;     /**< force over that of a sharp tool, 0.8 .. 3 */
    double
        unit_power_MPa; /**< energy per volume of chips, for a second opinion,
                                10 .. 2e4 */
    int direction;      /**< sw_turning_direction */
    double depth_mm;    /**< depth of cut, square to the feed, 1e-3 .. 100 */
    double feed_mm;     /**< feed per turn, 1e-4 .. 20 */
    double lead_deg;    /**< angle between cutting edge and feed, 5 .. 120;
                                90: square */
    double nose_radius_mm; /**< of the tool, 0 .. 50 */
    double thrust_ratio; /**< force square to the edge over cutting force, 0 ..
                                2 */
    double diameter_mm;  /**< of the work at the tool before the cut, 0.1 ..
                                1e4; open: no torque */
    double speed_rpm;    /**< of the spindle, 0.01 .. 1e6; open: no power */
    double cutting_speed_m_per_min; /**< instead of speed_rpm, 1e-3 .. 1e5 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default of
                           the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                           question was changed afterwards */
} sw_turning_in;

/** Answer of sw_turning(). A double that does not apply is open. All forces
 *  are those on the part. Frame: z is the spindle axis, from the chuck toward
 *  the tailstock; x points from the axis to the tool; y is the way the work's
 *  surface runs at the tool. Moments are about the point of the axis nearest
 *  the tool. */
typedef struct {
    int status;        /**< 0 or sw_status */
    uint64_t warnings; /**< SW_WARN_ bits */
    double cutting_N;  /**< along the work's surface: makes the torque */
    double feed_N;     /**< along the feed */
    double passive_N;  /**< square to feed and surface */
    double x_N;        /**< on the part, away from the axis positive */
    double y_N;        /**< on the part; the tool brakes: negative */
    double z_N;        /**< on the part; toward the chuck: negative */
    double my_Nm;      /**< about y: tips the part; open without a diameter */
    double mz_Nm;      /**< about the axis; open without a diameter */
    double total_N;    /**< all three together */
    double torque_Nm;  /**< on the spindle; open without a diameter */
    double power_W;    /**< at the cut; open without a speed */
    double kc_MPa;     /**< specific force with rake and wear */
    double chip_mm;    /**< thickness of the chip */
    double chip_width_mm;       /**< its width */
    double lead_effective_deg;  /**< with the nose radius */
    double unit_power_N;        /**< second opinion on cutting_N, by volume */
    double unit_power_W;        /**< second opinion on power_W */
    double removal_mm3_per_min; /**< chips */
    double speed_rpm;           /**< of the spindle */
    double cutting_speed_m_per_min; /**< on diameter_mm */
} sw_turning_out;

/** Sets every field to "left to the library". */
SW_API void sw_turning_defaults(sw_turning_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask another,
 *  change the one it came from; a resolved one that was changed is refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_turning_resolve(sw_turning_in *in, sw_error *err);

/**
 * Forces of a turning cut on the part, torque and power.
 *
 * Example:
 * @code
 * sw_turning_in in;
 * sw_turning_defaults(&in);
 * strcpy(in.material, "C45");
 * in.depth_mm = 2, in.feed_mm = 0.25, in.diameter_mm = 80;
 * sw_turning_out out = sw_turning(&in, NULL);   // out.cutting_N, out.x_N
 * @endcode
 */
SW_API SW_NODISCARD sw_turning_out sw_turning(const sw_turning_in *in,
                                              sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_turning_assumed(const sw_turning_in *in,
                                                     int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
