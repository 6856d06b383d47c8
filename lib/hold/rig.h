/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_HOLD_RIG_H
#define SW_HOLD_RIG_H

#include "hold/fixture.h"

enum { SW__MOST = 64, SW__MOST_RANGES = 2 * SW__MOST };

/* A place where the part is touched. Lengths over the rig's length, from the
 * middle of the supports; forces over the rig's force. */
typedef struct {
    double x, y, z, mu;
    double k;      /* supports: stiffness over the mean */
    double least;  /* supports: load it must keep; stops: seating force */
    double nx, ny; /* stops: direction of the push; clamps: toward the stud */
    double P;      /* clamps: force down */
    int needed;    /* supports: sw_needed */
} sw__touch;

/* Which end of every range of the straps' side pulls: bit r set = high. */
typedef struct {
    uint64_t bit[2];
} sw__corner;

/* A fixture made ready for statics. Wrenches are (Fx Fy Fz Mx My Mz) about the
 * middle of the supports. */
typedef struct {
    int pads, toes, posts, ranges, loads;
    sw__touch pad[SW__MOST], toe[SW__MOST], post[SW__MOST];
    double weight[6];
    double press[SW__MOST][6];        /* by clamp */
    double low[SW__MOST][6];          /* its side pulls, low ends */
    double range[SW__MOST_RANGES][6]; /* from the low to the high end */
    int of[SW__MOST_RANGES];          /* clamp of each range */
    double (*cut)[6];                 /* by load; owned */
    double length_mm, force_N, x_mm, y_mm, z_mm;
} sw__rig;

/* A unit force at a place. */
static inline void sw__push(const sw__touch *at, double fx, double fy,
                            double fz, double w[6])
{
    w[0] = fx;
    w[1] = fy;
    w[2] = fz;
    w[3] = at->y * fz - at->z * fy;
    w[4] = at->z * fx - at->x * fz;
    w[5] = at->x * fy - at->y * fx;
}

static inline double sw__dot6(const double a[6], const double b[6])
{
    double sum = 0;
    for (int i = 0; i < 6; i++)
        sum += a[i] * b[i];
    return sum;
}

static inline int sw__is_high(const sw__corner *c, int range)
{
    return (int)(c->bit[range / 64] >> (range % 64) & 1);
}

/* Returns 0 or records the error; then there is nothing to free. */
int sw__rig_make(const sw_fixture *f, sw__rig *rig, sw_error *err);
void sw__rig_drop(sw__rig *rig);

/* Everything but the cut and the weight: w = sum over the clamps of scale (NULL:
 * 1 each) times press and, where `pulls`, side pulls at a corner. */
void sw__rig_straps(const sw__rig *rig, const sw__corner *corner,
                    const double *scale, int pulls, double w[6]);

/* Whether anything pulls sideways before the cut. */
int sw__rig_pulled(const sw__rig *rig);

#endif
