/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief A disc squeezed between a driver and a live-centre cap.
 *
 * Theory, sources and limits: lib/hold/disc.c.
 */
#ifndef STRAPWISE_DISC_H
#define STRAPWISE_DISC_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_disc(). Set by sw_disc_defaults() first. Required: thrust
 *  and driver diameter; and the cut's diameter where there is a cut. */
typedef struct {
    double thrust_N;           /**< thrust of the tailstock, 0.001 .. 1e8 */
    double driver_diameter_mm; /**< outside of the driver's face, 0.001 ..
                                    100000 */
    double driver_bore_mm;     /**< hole or recess in it, 0 .. 100000 */
    double mu_face;          /**< friction of the disc on the driver, 0 .. 2 */
    double driven_faces;     /**< 2 only where the cap drives too: a live
                              centre's turns free, 1 .. 2 */
    int face_pressure;       /**< how the pressure lies on the face */
    double cut_diameter_mm;  /**< diameter at which the tool cuts, 0.001 ..
                                 100000 */
    double tangential_cut_N; /**< cut round the disc, 0 .. 1e8 */
    double radial_cut_N;     /**< cut toward or from the axis, 0 .. 1e8 */
    double axial_cut_N;    /**< cut along the axis; positive: toward the driver,
                             -1e8 .. 1e8 */
    double cut_height_mm;  /**< driver's face to the cut, along the axis, 0 ..
                               100000 */
    double cap_radius_mm;  /**< radius of the cap, only where its quill
                               resists tilting, 0 .. 100000 */
    double center_limit_N; /**< largest axial load the live centre is made
                                for, 0.001 .. 1e8 */
    double required_margin; /**< wanted margin on the cut, 1 .. 20 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default
                           of the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                        question was changed afterwards */
} sw_disc_in;

/** Answer of sw_disc(). A double that does not apply is SW_UNSET. */
typedef struct {
    int status;        /**< 0 or sw_status */
    uint64_t warnings; /**< SW_WARN_ bits */
    int verdict;      /**< whether it holds with the wanted margin; open: no cut
                      given */
    int first;        /**< what would be lost first; open: no cut given */
    double normal_N;  /**< on the driver's face, the axial cut included */
    double torque_Nm; /**< that the face carries while it bears all over, by
                           the pressure chosen */
    double torque_wear_Nm; /**< for a run-in face */
    double torque_even_Nm; /**< for even pressure */
    double cut_torque_Nm;  /**< of the cut */
    double rim_N;          /**< cut round the disc that turns it, its side push
                       included */
    double center_mm;    /**< axis to the point about which it would turn, away
                           from the cut */
    double tip_toward_N; /**< axial cut toward the driver that tips it */
    double tip_away_N;   /**< axial cut away from the driver that tips it */
    double tip_radial_N; /**< radial cut at its height that tips it */
    double gap_toward_N; /**< axial cut toward the driver that opens the
                              first gap */
    double gap_away_N;   /**< axial cut away from the driver that opens the
                            first gap */
    double gap_radial_N; /**< radial cut at its height that opens the first
                              gap */
    double kern_mm; /**< how far off the axis the resultant may lie without a
                         gap */
    double turn_margin; /**< load factor of turning on the driver */
    double gap_margin;  /**< load factor of the first gap */
    double tip_margin;  /**< load factor of tipping off */
    double margin; /**< load factor at which it turns, gapes or tips; open: no
                        cut given */
} sw_disc_out;

/** Sets every field to "left to the library". */
SW_API void sw_disc_defaults(sw_disc_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask
 *  another, change the one it came from; a resolved one that was changed is
 *  refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_disc_resolve(sw_disc_in *in, sw_error *err);

/**
 * Whether the driver's face carries a disc round, and whether the cut tips
 * it off.
 *
 * Example:
 * @code
 * sw_disc_in in;
 * sw_disc_defaults(&in);
 * in.thrust_N = 5000;
 * in.driver_diameter_mm = 80;
 * in.driver_bore_mm = 50;
 * in.mu_face = 0.2;
 * in.cut_diameter_mm = 120;
 * in.tangential_cut_N = 200;
 * sw_disc_out out = sw_disc(&in, NULL);   // out.rim_N is 448.4
 * @endcode
 */
SW_API SW_NODISCARD sw_disc_out sw_disc(const sw_disc_in *in, sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_disc_assumed(const sw_disc_in *in,
                                                  int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
