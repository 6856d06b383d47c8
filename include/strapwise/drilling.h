/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Drilling: torque, thrust, and the pull when the drill breaks through.
 *
 * Theory, sources and limits: lib/cut/drilling.c, lib/cut/kienzle.c.
 */
#ifndef STRAPWISE_DRILLING_H
#define STRAPWISE_DRILLING_H

#include <strapwise/cut_material.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_drilling(). Set by sw_drilling_defaults() first. Required:
 *  material (or kc11_MPa and mc), diameter_mm, feed_mm. A right-hand drill with
 *  two lips, from above. */
typedef struct {
    char material[24];         /**< what is cut: a metal or its group */
    double kc11_MPa;           /**< instead of the material's, 50 .. 2e4 */
    double mc;                 /**< instead of the material's, 0 .. 0.6 */
    double rake_deg;           /**< rake of the lips, -30 .. 45 */
    double reference_rake_deg; /**< rake that kc11_MPa holds for, -30 .. 45 */
    double rake_effect_pct; /**< fall of the force for each degree of rake, 0 ..
                                 2 */
    double wear_factor;     /**< force over that of a sharp tool, 0.8 .. 3 */
    double
        unit_power_MPa;  /**< energy per volume of chips, for a second opinion,
                                10 .. 2e4 */
    double diameter_mm;  /**< of the drill, 0.1 .. 200 */
    double feed_mm;      /**< feed per turn, 1e-4 .. 10 */
    double point_deg;    /**< angle of the point, 60 .. 180 */
    double helix_deg;    /**< of a right-hand helix, 0 .. 60 */
    double chisel_ratio; /**< chisel edge over diameter, 0.03 .. 0.4 */
    double thrust_ratio_low;  /**< thrust of the lips over kc f D/2, 0.1 .. 2 */
    double thrust_ratio_high; /**< the same, upper end, 0.1 .. 2 */
    double work_factor; /**< handbook's Kd of the work, 100 .. 1e6; open: no
                                   second opinion by the handbook */
    double speed_rpm;   /**< of the spindle, 0.01 .. 1e6; open: no power */
    double cutting_speed_m_per_min; /**< instead of speed_rpm, 1e-3 .. 1e5 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default of
                           the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                           question was changed afterwards */
} sw_drilling_in;

/** Answer of sw_drilling(). A double that does not apply is open. On the part:
 *  thrust presses down, torque turns it clockwise seen from above. */
typedef struct {
    int status;           /**< 0 or sw_status */
    uint64_t warnings;    /**< SW_WARN_ bits */
    double torque_Nm;     /**< on the part, clockwise from above */
    double mz_Nm;         /**< the same with its sign: minus torque_Nm */
    double thrust_low_N;  /**< least thrust: of the lips alone */
    double thrust_high_N; /**< largest thrust: lips and chisel edge */
    double lips_high_N;   /**< largest thrust of the lips alone */
    double chisel_N;      /**< what the chisel edge adds */
    double pull_N;   /**< at breakthrough: the most the drill can pull the part
                               up its helix */
    double z_low_N;  /**< on the part, least: minus thrust_high_N */
    double z_high_N; /**< on the part, largest: pull_N */
    double power_W;  /**< at the cut; open without a speed */
    double kc_MPa;   /**< specific force with rake and wear */
    double chip_mm;  /**< thickness of the chip */
    double chip_width_mm;       /**< width of each lip's chip */
    double handbook_thrust_N;   /**< second opinion on thrust_high_N */
    double handbook_torque_Nm;  /**< second opinion on torque_Nm */
    double unit_power_Nm;       /**< second opinion on torque_Nm, by volume */
    double removal_mm3_per_min; /**< chips; open without a speed */
    double speed_rpm;           /**< of the spindle; open without a speed */
    double cutting_speed_m_per_min; /**< on the diameter */
} sw_drilling_out;

/** Sets every field to "left to the library". */
SW_API void sw_drilling_defaults(sw_drilling_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask another,
 *  change the one it came from; a resolved one that was changed is refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_drilling_resolve(sw_drilling_in *in, sw_error *err);

/**
 * Torque and thrust of a drill on the part.
 *
 * Example:
 * @code
 * sw_drilling_in in;
 * sw_drilling_defaults(&in);
 * strcpy(in.material, "6061-T6");
 * in.diameter_mm = 10, in.feed_mm = 0.2;
 * sw_drilling_out out = sw_drilling(&in, NULL);  // out.torque_Nm, out.pull_N
 * @endcode
 */
SW_API SW_NODISCARD sw_drilling_out sw_drilling(const sw_drilling_in *in,
                                                sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_drilling_assumed(const sw_drilling_in *in,
                                                      int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
