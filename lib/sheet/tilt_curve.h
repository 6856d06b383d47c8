/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tilt curve: one strap at many tilts, with both kinds of seat.
 */
#ifndef SW_SHEET_TILT_CURVE_H
#define SW_SHEET_TILT_CURVE_H

#include "base/internal.h"

#include <strapwise/strap.h>

enum {
    SW__TILT_FLAT,
    SW__TILT_DISHED,
    SW__TILT_SEATS,
    SW__TILT_POINTS = 141 /* room: -6 .. 20 degrees in fifths */
};

typedef struct {
    double tilt_deg, pull_N, error_pct;
    int direction; /* sw_pull */
    int known;     /* else there is no equilibrium, or no such heel */
    int slides;    /* the toe is at its friction limit */
    int past;      /* beyond what the spherical pair takes up */
    int yields;    /* the stud is past its yield */
} sw__tilt_point;

typedef struct {
    sw_strap_in in;   /* this strap, resolved */
    sw_strap_out out; /* its answer, without the band */
    int own;          /* its seat: SW__TILT_FLAT or SW__TILT_DISHED */
    double span_mm;   /* toe to heel as given */
    double low_deg, high_deg;
    int points;
    sw__tilt_point curve[SW__TILT_SEATS][SW__TILT_POINTS];
    sw__tilt_point here[SW__TILT_SEATS];
} sw__tilts;

/* Returns 0 or records the error. */
int sw__tilts_of(const sw_strap_in *in, sw__tilts *t, sw_error *err);

#endif
