/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Screw clamps and through-screws: torque and force, with V, trapezoidal,
 *        Acme and square threads.
 *
 * Theory, sources and limits: lib/clamp/screw.c.
 */
#ifndef STRAPWISE_SCREW_H
#define STRAPWISE_SCREW_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_screw(). Set by sw_screw_defaults() first. Required: a
 *  thread, or diameter and pitch; and one of torque, force or hand force
 *  with handle length. */
typedef struct {
    char thread[32]; /**< designation from the thread table; "" where
                          diameter and pitch are given */
    int screw;       /**< presses with its end, or holds with its head */
    int profile;     /**< shape of the thread */
    double screw_diameter_mm; /**< outside diameter of the thread, 0.5 .. 500 */
    double pitch_mm;          /**< pitch, 0.05 .. 100 */
    double starts; /**< threads side by side; the lead is pitch times starts,
                        1 .. 12 */
    double mean_diameter_mm; /**< diameter on which the thread rubs, 0.5 ..
                                  500 */
    double flank_angle_deg;  /**< half the thread angle, 0 .. 45 */
    double mu_thread;        /**< friction in the thread, 0 .. 1 */
    double mu_collar; /**< friction under the end, collar or head, 0 .. 1 */
    double collar_radius_mm; /**< mean radius on which the end, collar or
                                  head rubs, 0 .. 500 */
    double pad_diameter_mm;  /**< outside of pad, collar or head that bears,
                                 0.1 .. 1000 */
    double pad_hole_mm;      /**< hole in it, 0 .. 1000 */
    double torque_Nm;        /**< torque on the screw, 1e-6 .. 1e6 */
    double force_N;          /**< force along the screw, 0.001 .. 1e8 */
    double hand_force_N; /**< force at the end of the handle, 0.001 .. 1e8 */
    double handle_length_mm; /**< screw axis to hand, 0.001 .. 100000 */
    double scatter_pct; /**< force scatters by this much either way, 0 .. 90 */
    char grade[16];     /**< grade of the screw; "" = assumed 8.8 or grade-5 */
    uint64_t assumed;   /**< set by the library: bit n = field n is a default
                           of the library and may change with the others */
    uint64_t seal;      /**< set by resolving, else 0: tells that a resolved
                        question was changed afterwards */
} sw_screw_in;

/** Answer of sw_screw(). A double that does not apply is SW_UNSET. */
typedef struct {
    int status;              /**< 0 or sw_status */
    uint64_t warnings;       /**< SW_WARN_ bits */
    double force_N;          /**< force along the screw */
    double force_low_N;      /**< low end of the scatter: hold with this */
    double force_high_N;     /**< high end of the scatter: distort with this */
    double torque_Nm;        /**< torque on the screw */
    double thread_torque_Nm; /**< part of it in the thread */
    double collar_torque_Nm; /**< part of it under end, collar or head */
    double loosening_torque_Nm; /**< torque to start it back; negative: it
                                     backs off by itself */
    double efficiency;          /**< part of the work that becomes force */
    double hand_force_N;        /**< at the handle given */
    double handle_length_mm;    /**< that the hand force given needs */
    double pressure_MPa;        /**< under pad, collar or head */
    double lead_mm;             /**< advance in one turn */
    double mean_diameter_mm;    /**< that entered */
    double flank_angle_deg;     /**< that entered */
    double tension_MPa;         /**< force over the area of the thread */
    double stress_MPa;          /**< with the twist (von Mises) */
    double proof_use;           /**< tension over proof stress of the grade */
    double yield_use; /**< stress over yield of the grade; above 1 the screw
                             yields */
} sw_screw_out;

/** Sets every field to "left to the library". */
SW_API void sw_screw_defaults(sw_screw_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask
 *  another, change the one it came from; a resolved one that was changed is
 *  refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_screw_resolve(sw_screw_in *in, sw_error *err);

/**
 * Screw clamp or through-screw: force of a torque, or torque for a force.
 *
 * Example:
 * @code
 * sw_screw_in in;
 * sw_screw_defaults(&in);
 * in.screw_diameter_mm = 22;
 * in.pitch_mm = 5;
 * in.profile = SW_PROFILE_SQUARE;
 * in.force_N = 750;
 * sw_screw_out out = sw_screw(&in, NULL);   // out.torque_Nm
 * @endcode
 */
SW_API SW_NODISCARD sw_screw_out sw_screw(const sw_screw_in *in, sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_screw_assumed(const sw_screw_in *in,
                                                   int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
