/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Questions asked of a strap backwards: how far may it tilt, where
 *        must the stud stand, how hard must the nut be turned.
 */
#ifndef STRAPWISE_ASK_H
#define STRAPWISE_ASK_H

#include <strapwise/strap.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Answer of sw_strap_tilt(): the tilts that keep the demand. */
typedef struct {
    int status;                 /**< 0 or sw_status */
    uint64_t warnings;          /**< SW_WARN_ bits of the two ends together */
    double tilt_low_deg;        /**< lowest tilt allowed, heel-high positive */
    double tilt_high_deg;       /**< highest tilt allowed */
    double heel_low_mm;         /**< the same as heel height over level */
    double heel_high_mm;        /**< the same as heel height over level */
    double slope_low_mm_per_m;  /**< the same as a slope */
    double slope_high_mm_per_m; /**< the same as a slope */
    double divisions_low;       /**< the same on the level's vial */
    double divisions_high;      /**< the same on the level's vial */
    double side_pull_low_N;     /**< side pull at tilt_low; with the band as
                                     basis its worse end, and so below */
    double side_pull_high_N;    /**< side pull at tilt_high */
    double toe_error_low_pct;   /**< toe force error at tilt_low */
    double toe_error_high_pct;  /**< toe force error at tilt_high */
} sw_tilt_out;

/**
 * Tilts, within 10 degrees of level, at which a strap keeps a limit of side
 * pull, of toe force error, or of both.
 *
 * The tilt and heights of `in` are not used. On a solid heel the side pull is
 * zero at some heel-high tilt, not at level, so the allowed range may leave
 * level out.
 *
 * @param in            the strap
 * @param side_pull_N   largest side pull, either way, 0 .. 1e7; SW_UNSET = no
 *                      limit
 * @param toe_error_pct largest toe force error, either way, 0 .. 100; SW_UNSET
 * = none
 * @param vial_mm_per_m slope for one division of the level, 0.001 .. 50
 * @param basis         sw_basis
 * @param err           error record, may be NULL; SW_ERR_NONE where no tilt
 *                      keeps the demand
 */
SW_API SW_NODISCARD sw_tilt_out sw_strap_tilt(const sw_strap_in *in,
                                              double side_pull_N,
                                              double toe_error_pct,
                                              double vial_mm_per_m, int basis,
                                              sw_error *err);

/** Answer of sw_strap_place(). */
typedef struct {
    int status;             /**< 0 or sw_status */
    uint64_t warnings;      /**< SW_WARN_ bits of the strap there */
    double stud_to_toe_mm;  /**< stud axis to toe contact */
    double stud_to_heel_mm; /**< stud axis to heel contact */
    double toe_force_N;     /**< toe force there */
} sw_place_out;

/**
 * Where the stud must stand between toe and heel (their distance kept) for a
 * wanted toe force at the same preload.
 *
 * @param in          the strap; its two distances give the span
 * @param toe_force_N wanted toe force, 1e-3 .. 1e7
 * @param err         error record, may be NULL; SW_ERR_NONE where no place
 *                    gives it
 */
SW_API SW_NODISCARD sw_place_out sw_strap_place(const sw_strap_in *in,
                                                double toe_force_N,
                                                sw_error *err);

/** Answer of sw_strap_torque(). */
typedef struct {
    int status;         /**< 0 or sw_status */
    uint64_t warnings;  /**< SW_WARN_ bits of the strap there */
    double preload_N;   /**< stud tension that gives the toe force */
    double torque_Nm;   /**< torque for it */
    double toe_force_N; /**< toe force there */
} sw_strap_torque_out;

/**
 * Preload and torque for a wanted toe force, the strap as it stands.
 *
 * @param in          the strap; its preload and torque are not used
 * @param toe_force_N wanted toe force, 1e-3 .. 1e7
 * @param err         error record, may be NULL; SW_ERR_NONE where no preload
 *                    gives it
 */
SW_API SW_NODISCARD sw_strap_torque_out sw_strap_torque(const sw_strap_in *in,
                                                        double toe_force_N,
                                                        sw_error *err);

/** Answer of sw_strap_matters(): what one open value can do. */
typedef struct {
    int status;         /**< 0 or sw_status */
    uint64_t warnings;  /**< none so far */
    char name[40];      /**< the field that was left open */
    double toe_low_N;   /**< smallest toe force over its usual range */
    double toe_high_N;  /**< largest toe force over its usual range */
    double pull_low_N;  /**< smallest side pull over its usual range */
    double pull_high_N; /**< largest side pull over its usual range */
} sw_matter_out;

/**
 * How much the index-th default of sw_strap_assumed() matters: the strap
 * solved again with that field at both ends of its usual range (the stud's
 * foot: held and rocking), everything else as it was. A default without a range
 * gives the nominal answer at both ends.
 *
 * @param in    the strap, not resolved: what depends on the field follows it
 * @param index 0 .. ; status SW_ERR_RANGE past the end
 * @param err   error record, may be NULL
 */
SW_API SW_NODISCARD sw_matter_out sw_strap_matters(const sw_strap_in *in,
                                                   int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
