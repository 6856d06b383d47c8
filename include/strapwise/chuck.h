/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Chuck jaws at speed.
 *
 * Theory, sources and limits: lib/hold/chuck.c.
 */
#ifndef STRAPWISE_CHUCK_H
#define STRAPWISE_CHUCK_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_chuck(). Set by sw_chuck_defaults() first. Required:
 *  chuck force. */
typedef struct {
    double chuck_force_N; /**< force of all jaws together, standing, 0.001 ..
                               1e8 */
    double jaws;          /**< number of jaws, 1 .. 12 */
    double jaw_mass_kg;   /**< one jaw with its base jaw, 0 .. 1000 */
    double jaw_radius_mm; /**< axis to the jaw's centre of gravity, 0 .. 5000 */
    double speed_rpm;     /**< speed of the spindle, 0 .. 100000 */
    int grip;             /**< jaws grip from outside or inside */
    double mu_jaw;        /**< friction of jaw on part, 0 .. 2 */
    double grip_diameter_mm; /**< diameter at the jaws, 0.001 .. 100000 */
    double cut_diameter_mm;  /**< diameter at which the tool cuts, 0.001 ..
                                 100000 */
    double tangential_cut_N; /**< main cutting force, 0 .. 1e8 */
    double feed_cut_N;       /**< cut along the axis, 0 .. 1e8 */
    double required_margin;  /**< wanted margin on the cut, 1 .. 20 */
    double clamp_factor;     /**< factor on the force the chuck must have
                              standing, 1 .. 10 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default
                           of the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                        question was changed afterwards */
} sw_chuck_in;

/** Answer of sw_chuck(). A double that does not apply is SW_UNSET. */
typedef struct {
    int status;        /**< 0 or sw_status */
    uint64_t warnings; /**< SW_WARN_ bits */
    int verdict;   /**< whether it holds with the wanted margin at speed, the
                      clamp factor standing, and no more than 67 % lost; open:
                      no cut given and not too fast */
    int first;     /**< what would be lost first; open: as the verdict */
    double grip_N; /**< of all jaws, at speed */
    double loss_N; /**< centrifugal force of all jaws */
    double loss_share;        /**< of it over the standing force */
    double need_N;            /**< friction that the cut asks of the jaws */
    double carries_N;         /**< friction that the jaws have */
    double speed_67_rpm;      /**< speed at which 67 % is lost, the most of EN
                              1550 */
    double speed_zero_rpm;    /**< speed at which all is lost */
    double speed_margin_rpm;  /**< highest speed that keeps the wanted margin
                                 alone */
    double speed_limit_rpm;   /**< highest speed at which the verdict can be
                                 that it holds: wanted margin, clamp factor and
                                 67 %; 0: at none */
    double grip_needed_N;     /**< at speed, for the wanted margin */
    double standing_needed_N; /**< standing, with the clamp factor */
    double margin; /**< load factor at which it stops holding; open: no cut
                        given */
} sw_chuck_out;

/** Sets every field to "left to the library". */
SW_API void sw_chuck_defaults(sw_chuck_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask
 *  another, change the one it came from; a resolved one that was changed is
 *  refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_chuck_resolve(sw_chuck_in *in, sw_error *err);

/**
 * Grip of a lathe chuck at speed, its margin on the cut, and the force it
 * needs standing.
 *
 * Example:
 * @code
 * sw_chuck_in in;
 * sw_chuck_defaults(&in);
 * in.chuck_force_N = 40000;
 * in.jaw_mass_kg = 2;
 * in.jaw_radius_mm = 80;
 * in.speed_rpm = 2000;
 * sw_chuck_out out = sw_chuck(&in, NULL);   // out.grip_N is 18945
 * @endcode
 */
SW_API SW_NODISCARD sw_chuck_out sw_chuck(const sw_chuck_in *in, sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_chuck_assumed(const sw_chuck_in *in,
                                                   int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
