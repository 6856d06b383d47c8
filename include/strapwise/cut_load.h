/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief A load of the cut, as the part feels it.
 */
#ifndef STRAPWISE_CUT_LOAD_H
#define STRAPWISE_CUT_LOAD_H

#include <strapwise/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Force and moment of the cutter on the part. Milling and drilling: z is the
 *  tool axis, up and away from the table; seen from above, y lies a quarter
 *  turn counterclockwise of x. The moment is about the tool point: where the
 *  tool axis meets the floor of the cut. Moments are right-handed, so a cutter
 *  that turns clockwise has a negative one about z. */
typedef struct {
    int status;        /**< 0 or sw_status */
    uint64_t warnings; /**< SW_WARN_ bits */
    double turn_deg;   /**< how far the cutter has turned, clockwise */
    double x_N;        /**< along x */
    double y_N;        /**< along y */
    double z_N;        /**< along z: positive lifts the part */
    double mx_Nm;      /**< about x */
    double my_Nm;      /**< about y */
    double mz_Nm;      /**< about z */
} sw_cut_load_out;

#ifdef __cplusplus
}
#endif
#endif
