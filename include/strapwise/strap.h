/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief One strap clamp, one nut: from stud tension to the force at the toe
 *        and the pull on the part.
 *
 * Side view: heel contact at the origin, x toward the toe, y up. Theory,
 * sources and limits: lib/clamp/strap.c (balance) and lib/clamp/seat.c (nut
 * and stud).
 */
#ifndef STRAPWISE_STRAP_H
#define STRAPWISE_STRAP_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_strap(). Set by sw_strap_defaults() first. Only thread,
 *  preload or torque, and the two distances are required. */
typedef struct {
    char thread[32];             /**< designation of the stud; required */
    char lubrication[24];        /**< "" = assumed "unknown" */
    char grade[16];              /**< "" = assumed 8.8 or grade-5 */
    double preload_N;            /**< stud tension; or torque_Nm, 1e-3 .. 1e7 */
    double torque_Nm;            /**< torque on the nut, 1e-6 .. 1e6 */
    double nut_factor;           /**< K, 0.03 .. 1; not beside both mu */
    double mu_thread;            /**< friction in the thread, 0 .. 1 */
    double mu_seat;              /**< friction under the nut, 0 .. 1 */
    double prevailing_torque_Nm; /**< torque to turn the unloaded nut, 0 ..
                                      1e5 */
    double stud_to_toe_mm;       /**< a: stud axis to toe contact of the level
                                      strap; required, 1 .. 2000 */
    double stud_to_heel_mm;      /**< b: stud axis to heel contact of the level
                                      strap; required, 1 .. 2000 */
    double part_height_mm;       /**< part over the table, 0 .. 5000 */
    double heel_height_mm;       /**< heel support over the table, 0 .. 5000 */
    double tilt_deg; /**< instead of the heights; heel-high +, -20 .. 20 */
    double pad_thickness_mm; /**< pad between toe and part, 0 .. 500 */
    double step_mm; /**< bent strap: its toe sits this much lower than its
                         heel when the strap is level, -500 .. 500 */
    double strap_thickness_mm; /**< t, 1 .. 500 */
    double strap_width_mm;     /**< full width, 1 .. 1000 */
    double slot_width_mm;      /**< width lost to the slot, 0 .. 900 */
    double strap_modulus_MPa;  /**< Young's modulus of the strap, 1000 .. 1e6
                                */
    double strap_yield_MPa;    /**< yield of the strap, 1 .. 1e4 */
    double nose_radius_mm;     /**< radius of a round nose, 0 .. 1000 */
    double toe_land_mm;  /**< strap lying on the part, flat nose, 0 .. 1000 */
    double heel_land_mm; /**< strap lying on the block, flat block, 0 .. 1000
                          */
    double heel_screw_diameter_mm;   /**< root diameter of a jack screw, 0.5 ..
                                          500 */
    double toe_compliance_mm_per_N;  /**< sideways give of the part, 0 .. 1 */
    double heel_compliance_mm_per_N; /**< sideways give of the heel support, 0
                                          .. 1e6 */
    double mu_toe;                   /**< friction toe on part, 0 .. 1 */
    double mu_heel;                  /**< friction strap on heel, 0 .. 1 */
    double mu_heel_high;     /**< upper end of mu_heel, for the band, 0 .. 1 */
    double stud_length_mm;   /**< free stud, foot to nut face, 1 .. 20000 */
    double stud_modulus_MPa; /**< Young's modulus of the stud, 1000 .. 1e6 */
    double washer_diameter_mm;  /**< plain washer under the nut; 0 = none, 0 ..
                                     1000 */
    double washer_thickness_mm; /**< its thickness, 0 .. 200 */
    double rim_radius_mm;       /**< where a tilted nut bears, 1e-3 .. 500 */
    double friction_radius_mm;  /**< mean radius under the nut, 0.1 .. 500 */
    double seat_slip; /**< friction along the slope while the nut turns, upper
                           end for the band, 0 .. 0.5 */
    double sphere_radius_mm;   /**< of a spherical washer, 0.5 .. 500 */
    double mu_sphere;          /**< friction in the spherical pair, 0 .. 1 */
    double permitted_tilt_deg; /**< what the spherical pair takes up, 0 .. 20
                                */
    double thread_play_deg;    /**< tilt of the nut on its thread, for the band,
                                    0 .. 10 */
    double slot_clearance_mm;  /**< way the nut can move along the strap, 0 ..
                                    1000 */
    double stud_end_mm;        /**< stud standing out over the nut, 0 .. 2000 */
    int seat;                  /**< sw_seat */
    int nose;                  /**< sw_nose */
    int heel;                  /**< sw_heel */
    int foot;                  /**< sw_foot */
    int nut;                   /**< sw_nut */
    int strap;                 /**< sw_strap_kind */
    int restraint;             /**< sw_restraint */
    uint64_t assumed; /**< set by the library: bit n = field n is a default of
                           the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                           question was changed afterwards */
} sw_strap_in;

/** Answer of sw_strap(). A double that does not apply is SW_UNSET. */
typedef struct {
    int status;                  /**< 0 or sw_status */
    uint64_t warnings;           /**< SW_WARN_ bits */
    int pull_direction;          /**< sw_pull, of side_pull_N */
    int seat_state;              /**< sw_state */
    int band;                    /**< sw_band */
    int toe_bears;               /**< sw_bears */
    int heel_bears;              /**< sw_bears */
    double preload_N;            /**< stud tension F */
    double torque_Nm;            /**< torque on the nut for it */
    double lever_ratio;          /**< b/(a+b) of the level strap */
    double tilt_deg;             /**< of the strap, heel-high positive */
    double toe_force_level_N;    /**< F b/(a+b): the level strap */
    double toe_force_N;          /**< force on the part, square to the table */
    double toe_force_low_N;      /**< band, lower end */
    double toe_force_high_N;     /**< band, upper end */
    double toe_force_error_pct;  /**< against the level strap */
    double side_load_on_strap_N; /**< stud on strap, along the table, toward
                                      the toe positive */
    double heel_side_N;          /**< heel on strap, toward the toe positive */
    double side_pull_N;          /**< toe on part: positive draws it toward the
                                      stud */
    double side_pull_low_N;      /**< band, lower end */
    double side_pull_high_N;     /**< band, upper end */
    double drag_N;               /**< nut's drag on the part: positive is to the
                                      right of one who stands at the stud and
                                       faces the part, nut tightened */
    double drag_low_N;           /**< strap held while the nut is turned, unless
                                      it is said to be free */
    double drag_high_N;          /**< strap free to turn, unless it is said to
                                      be held */
    double net_part_force_N;     /**< side pull and drag together */
    double net_part_angle_deg; /**< its direction: 0 toward the stud, 90 to the
                                    right, 180 away */
    double toe_friction_use;   /**< net part force over toe friction */
    double heel_force_N;       /**< force on the heel support */
    double unheld_N;        /**< what neither contact can hold: a force that the
                                 strap would need along the table at its heel,
                                 toward the toe positive */
    double seat_offset_mm;  /**< resultant under the nut, from the nut's axis:
                                 positive toward the toe; it lies on the high
                                 side, so heel-high gives a negative one */
    double resultant_mm;    /**< x where the resultant passes the nut's face */
    double seat_height_mm;  /**< y of the nut's face, where it came to rest */
    double toe_height_mm;   /**< y of the toe contact */
    double toe_place_mm;    /**< x of the toe contact */
    double nut_travel_mm;   /**< nut's way along the table, toe positive */
    double stud_bending_Nm; /**< at the nut */
    double foot_bending_Nm; /**< at the foot */
    double stud_stress_MPa; /**< tension and bending, largest */
    double stud_yield_use;  /**< that with the twist of tightening, over the
                                 grade's yield */
    double strap_stress_MPa; /**< bending at the stud */
    double strap_sag_mm;     /**< under the stud, from its own bending */
    double strap_spread_mm;  /**< lengthening of the underside */
    double edge_lift_mm;     /**< heel height that brings a flat nose off the
                                  part's edge; 0 for other noses */
    double top_mm;           /**< highest point over the table */
} sw_strap_out;

/** Sets every field to "left to the library". */
SW_API void sw_strap_defaults(sw_strap_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask another,
 *  change the one it came from; a resolved one that was changed is refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_strap_resolve(sw_strap_in *in, sw_error *err);

/**
 * Solves one strap.
 *
 * Example:
 * @code
 * sw_strap_in in;
 * sw_strap_defaults(&in);
 * strcpy(in.thread, "M12");
 * in.preload_N = 12000;
 * in.stud_to_toe_mm = 30;
 * in.stud_to_heel_mm = 60;
 * in.part_height_mm = in.heel_height_mm = 40;
 * sw_strap_out out = sw_strap(&in, NULL);   // toe 8000 N, heel 4000 N
 * @endcode
 */
SW_API SW_NODISCARD sw_strap_out sw_strap(const sw_strap_in *in, sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_strap_assumed(const sw_strap_in *in,
                                                   int index, sw_error *err);

/** Index-th sentence on what sw_strap() does not check, or NULL past the
 *  end. */
SW_API const char *sw_strap_not_checked(int index);

#ifdef __cplusplus
}
#endif
#endif
