/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Torque on a nut and preload in its stud, in both directions.
 *
 * Theory and sources: lib/fastener/torque.c.
 */
#ifndef STRAPWISE_TORQUE_H
#define STRAPWISE_TORQUE_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_torque(). Set by sw_torque_defaults() first. */
typedef struct {
    char thread[32];      /**< designation; required */
    char lubrication[24]; /**< "" = assumed "unknown" */
    char grade[16];       /**< "" = assumed 8.8 or grade-5 */
    double preload_N;     /**< give one of preload, torque, use, 1e-3 .. 1e8 */
    double torque_Nm;     /**< prevailing torque included, 1e-6 .. 1e6 */
    double use;           /**< fraction of yield, 0.01 .. 1 */
    double nut_factor;    /**< K; excludes giving both mu, 0.03 ..
                               1 */
    double mu_thread;     /**< friction in the thread, 0 .. 1 */
    double mu_seat;       /**< friction under the nut, 0 .. 1 */
    double friction_radius_mm;   /**< mean radius under the nut, 0.1 .. 500 */
    double prevailing_torque_Nm; /**< torque to turn the unloaded nut, 0 ..
                                      1e5 */
    double free_length_mm; /**< stud between nut and foot, for the turn, 0.1
                                .. 10000 */
    int form;              /**< sw_form */
    int torsion;           /**< sw_torsion */
    uint64_t assumed; /**< set by the library: bit n = field n is a default of
                           the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                           question was changed afterwards */
} sw_torque_in;

/** Answer of sw_torque(). A double that does not apply is SW_UNSET. */
typedef struct {
    int status;           /**< 0 or sw_status */
    uint64_t warnings;    /**< SW_WARN_ bits */
    double preload_N;     /**< stud tension F */
    double torque_Nm;     /**< torque on the nut, prevailing included */
    double nut_factor;    /**< (T - T_prevailing)/(F d) */
    double stretch_share; /**< part of the torque that stretches the stud */
    double thread_share;  /**< part lost in the thread */
    double seat_share; /**< part lost under the nut: tries to spin the strap */
    double prevailing_share;    /**< part that turns the unloaded nut */
    double seat_torque_Nm;      /**< F mu_seat r */
    double thread_torque_Nm;    /**< torque that twists the stud */
    double loosening_torque_Nm; /**< torque to start the nut back; negative:
                                     it turns back by itself */
    double yield_use;           /**< equivalent stress over yield */
    double proof_use;           /**< preload over proof load */
    double tension_MPa;         /**< F / stress area */
    double torsion_MPa;         /**< torsional stress while the nut is turned */
    double equivalent_MPa;      /**< von Mises of both */
    double mu_thread;           /**< friction that entered */
    double mu_seat;             /**< friction that entered */
    double friction_radius_mm;  /**< radius that entered */
    double turn_from_snug_deg;  /**< turn that stretches the stud alone: the
                                     strap and the part give way on top of it */
} sw_torque_out;

/** Sets every field to "left to the library". */
SW_API void sw_torque_defaults(sw_torque_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask another,
 *  change the one it came from; a resolved one that was changed is refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_torque_resolve(sw_torque_in *in, sw_error *err);

/**
 * Torque to preload, preload to torque, or both at a fraction of yield.
 *
 * Example:
 * @code
 * sw_torque_in in;
 * sw_torque_defaults(&in);
 * strcpy(in.thread, "M12");
 * in.preload_N = 20000;
 * in.nut_factor = 0.2;
 * sw_torque_out out = sw_torque(&in, NULL);   // out.torque_Nm is 48
 * @endcode
 */
SW_API SW_NODISCARD sw_torque_out sw_torque(const sw_torque_in *in,
                                            sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_torque_assumed(const sw_torque_in *in,
                                                    int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
