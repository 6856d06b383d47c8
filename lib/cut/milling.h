/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A milling cut with nothing open, its load at an instant and over a pitch.
 */
#ifndef SW_CUT_MILLING_H
#define SW_CUT_MILLING_H

#include "cut/kienzle.h"

#include <strapwise/milling.h>

/* Symbols as in milling.c; angles in radians, lengths in mm. */
typedef struct {
    sw_milling_in in;
    sw__speed speed;
    uint64_t warnings;
    double start, end;     /* phi_s, phi_e */
    double width;          /* what of the strip lies under the cutter */
    double pitch;          /* from tooth to tooth */
    double lag;            /* of the helix over the whole depth */
    double force_N_per_mm; /* tangential, at phi = 90 deg, for 1 mm of depth */
    double power;          /* 1 - mc */
    double radial, axial;  /* over tangential; axial lifts */
    double feed;           /* way of the feed from x */
} sw__milling_full;

/* Returns 0 or records the error. */
int sw__milling_open(const sw_milling_in *in, sw__milling_full *full,
                     sw_error *err);

/* Force and moment on the part; v: x, y, z in N, then about x, y, z in N m. */
typedef struct {
    double v[6];
} sw__wrench;

/* At an instant: tooth 0 stands at the angle theta. */
sw__wrench sw__milling_at(const sw__milling_full *m, double theta);

/* Mean over a turn, and that of the tangential force. */
sw__wrench sw__milling_mean(const sw__milling_full *m, double *tangential_N);

/* What a load swings between while the cutter turns by a pitch. */
typedef struct {
    double low[6], high[6];
    double peak_theta;
    sw__wrench peak; /* where the force in the plane of x and y is largest */
} sw__swing;

sw__swing sw__milling_swing(const sw__milling_full *m);

#endif
