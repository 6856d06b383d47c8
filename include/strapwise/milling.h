/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Milling: the load on the part while a tooth goes by.
 *
 * Theory, sources and limits: lib/cut/milling.c, lib/cut/kienzle.c.
 */
#ifndef STRAPWISE_MILLING_H
#define STRAPWISE_MILLING_H

#include <strapwise/cut_load.h>
#include <strapwise/cut_material.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_milling(). Set by sw_milling_defaults() first. Required:
 *  material (or kc11_MPa and mc), diameter_mm, teeth, feed_per_tooth_mm,
 *  depth_mm, and width_mm unless it is a slot. A right-hand cutter: clockwise
 *  seen from above. */
typedef struct {
    char material[24];         /**< what is cut: a metal or its group */
    double kc11_MPa;           /**< instead of the material's, 50 .. 2e4 */
    double mc;                 /**< instead of the material's, 0 .. 0.6 */
    double rake_deg;           /**< rake of the tooth, -30 .. 45 */
    double reference_rake_deg; /**< rake that kc11_MPa holds for, -30 .. 45 */
    double rake_effect_pct; /**< fall of the force for each degree of rake, 0 ..
                                 2 */
    double wear_factor;     /**< force over that of a sharp tool, 0.8 .. 3 */
    double
        unit_power_MPa; /**< energy per volume of chips, for a second opinion,
                                10 .. 2e4 */
    int mode;           /**< sw_milling_mode */
    int way;            /**< sw_cut_way; side milling alone */
    double diameter_mm; /**< of the cutter, 0.1 .. 2000 */
    double teeth;       /**< number of teeth, 1 .. 200, whole */
    double feed_per_tooth_mm; /**< 1e-4 .. 10 */
    double depth_mm;          /**< of cut, along the axis, 1e-3 .. 500 */
    double width_mm;          /**< of cut, square to axis and feed, 1e-3 ..
                                         2000 */
    double
        offset_mm; /**< face: middle of the cut left of the cutter's axis, seen
                                         along the feed, -1000 .. 1000 */
    double helix_deg;  /**< of a right-hand helix, 0 .. 70 */
    double corner_deg; /**< angle of the edge to the floor, 5 .. 90; 90: square
                                         corner */
    double radial_ratio; /**< force square to the edge over the tangential, 0
                                         .. 2 */
    double lift_share;   /**< part of the helix's full lift, 0 .. 1 */
    double feed_direction_deg; /**< way the cutter moves over the part,
                                         counterclockwise from x, -360 .. 360 */
    double speed_rpm; /**< of the spindle, 0.01 .. 1e6; open: no power */
    double cutting_speed_m_per_min; /**< instead of speed_rpm, 1e-3 .. 1e5 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default of
                           the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                           question was changed afterwards */
} sw_milling_in;

/** Answer of sw_milling(). A double that does not apply is open. Forces and
 *  moments are those on the part, in the frame of sw_cut_load_out. */
typedef struct {
    int status;                /**< 0 or sw_status */
    uint64_t warnings;         /**< SW_WARN_ bits */
    double mean_x_N;           /**< mean over a turn */
    double mean_y_N;           /**< mean over a turn */
    double mean_z_N;           /**< mean over a turn; positive lifts */
    double mean_mx_Nm;         /**< mean over a turn, about the tool point */
    double mean_my_Nm;         /**< mean over a turn, about the tool point */
    double mean_mz_Nm;         /**< mean over a turn: minus the torque */
    double peak_N;             /**< largest force in the plane of x and y */
    double peak_direction_deg; /**< where it points, counterclockwise from x */
    double peak_x_N;           /**< at that instant */
    double peak_y_N;           /**< at that instant */
    double peak_z_N;           /**< at that instant */
    double peak_mx_Nm;         /**< at that instant */
    double peak_my_Nm;         /**< at that instant */
    double peak_mz_Nm;         /**< at that instant */
    double peak_turn_deg;      /**< how far the cutter has turned then */
    double x_low_N;            /**< least of x over a pitch */
    double x_high_N;           /**< largest of x over a pitch */
    double y_low_N;            /**< least of y over a pitch */
    double y_high_N;           /**< largest of y over a pitch */
    double z_low_N;            /**< least of z over a pitch: presses down */
    double z_high_N;           /**< largest of z over a pitch: lifts */
    double mx_low_Nm;          /**< least about x over a pitch */
    double mx_high_Nm;         /**< largest about x over a pitch */
    double my_low_Nm;          /**< least about y over a pitch */
    double my_high_Nm;         /**< largest about y over a pitch */
    double mz_low_Nm;          /**< least about z over a pitch */
    double mz_high_Nm;         /**< largest about z over a pitch */
    double tangential_N;       /**< along the cutter's rim, mean over a turn */
    double torque_Nm;          /**< on the spindle, mean */
    double torque_peak_Nm;     /**< on the spindle, largest */
    double power_W;            /**< at the cut, mean; open without a speed */
    double mean_chip_N; /**< second opinion on tangential_N, by the mean chip */
    double unit_power_N; /**< second opinion on tangential_N, by volume */
    double unit_power_W; /**< second opinion on power_W */
    double kc_MPa; /**< specific force at the mean chip, rake and wear in */
    double chip_mean_mm; /**< mean thickness of the chip */
    double chip_most_mm; /**< largest thickness of the chip */
    double entry_deg;  /**< where a tooth enters, clockwise from the left of the
                                   feed */
    double exit_deg;   /**< where it leaves */
    double teeth_mean; /**< teeth in the cut, mean */
    double teeth_least;             /**< teeth in the cut, least */
    double teeth_most;              /**< teeth in the cut, most */
    double removal_mm3_per_min;     /**< chips; open without a speed */
    double feed_rate_mm_per_min;    /**< of the table; open without a speed */
    double speed_rpm;               /**< of the spindle; open without a speed */
    double cutting_speed_m_per_min; /**< open without a speed */
} sw_milling_out;

/** Sets every field to "left to the library". */
SW_API void sw_milling_defaults(sw_milling_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask another,
 *  change the one it came from; a resolved one that was changed is refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_milling_resolve(sw_milling_in *in, sw_error *err);

/**
 * Mean load on the part, its peak, and how far each component swings while a
 * tooth goes by.
 *
 * Example:
 * @code
 * sw_milling_in in;
 * sw_milling_defaults(&in);
 * strcpy(in.material, "6061-T6");
 * in.mode = SW_MILL_SIDE, in.way = SW_CUT_CLIMB;
 * in.diameter_mm = 12, in.teeth = 3, in.feed_per_tooth_mm = 0.08;
 * in.depth_mm = 10, in.width_mm = 3;
 * sw_milling_out out = sw_milling(&in, NULL);   // out.mean_x_N is below 0
 * @endcode
 */
SW_API SW_NODISCARD sw_milling_out sw_milling(const sw_milling_in *in,
                                              sw_error *err);

/**
 * The load at one of `count` instants, evenly over the turn from one tooth to
 * the next; 12 to 24 of them show how the load swings. None of them need be the
 * very peak: that is in sw_milling().
 *
 * @param in     may be resolved or not
 * @param index  0 .. count - 1
 * @param count  1 .. 3600
 * @param err    error record, may be NULL
 */
SW_API SW_NODISCARD sw_cut_load_out sw_milling_load_at(const sw_milling_in *in,
                                                       int index, int count,
                                                       sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_milling_assumed(const sw_milling_in *in,
                                                     int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
