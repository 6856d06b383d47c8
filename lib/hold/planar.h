/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_HOLD_PLANAR_H
#define SW_HOLD_PLANAR_H

#include "hold/rig.h"

/* Largest factor on a cut where everything that pushes sideways lies in the
 * plane of the supports. */
typedef struct {
    double value;
    int lift;    /* support that ends it by lifting, or -1 */
    double v[3]; /* motion: vx vy omega; zero where nothing slides */
    double y[6]; /* what a wrench more takes off the value */
    double N[SW__MOST], R[SW__MOST];
    double use[SW__MOST], grip[SW__MOST]; /* share of friction used */
    double gap[SW__MOST];                 /* g . u of every support */
} sw__planar_out;

/* Whether the method applies to the fixture; with `flat`, stops and toes are
 * taken to the plane. */
int sw__is_planar(const sw__rig *rig, int flat);

/* Under w0 and value times w1, at most `top`; `on`: what carries. Returns 0
 * where it cannot tell: ask the joint program. */
int sw__planar(const sw__rig *rig, double friction, const char *on,
               const double w0[6], const double w1[6], double top,
               sw__planar_out *out);

#endif
