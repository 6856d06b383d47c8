/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_HOLD_ENGINE_H
#define SW_HOLD_ENGINE_H

#include "hold/guard.h"
#include "hold/joint.h"

#include <strapwise/hold.h>

/* Which statics: normals on springs; the same with stops that keep nothing
 * from tipping; normals free; the same with polygons outside of the discs, so
 * that it is no less even where they are not made round. */
enum { SW__JOINT, SW__FLAT, SW__FREE, SW__OUTSIDE, SW__KINDS };

/* The part before the cut, at one corner of the straps' side pulls. */
typedef struct {
    sw__corner corner;
    double w0[6]; /* everything but the cut */
    double N[SW__MOST];
    char on[SW__MOST], needed[SW__MOST]; /* by support */
} sw__rested;

/* The part under one cut, where it goes. */
typedef struct {
    double value;    /* largest factor on the cut */
    int goes;        /* sw_goes */
    int part, index; /* sw_part and number of the contact that goes, or 0 */
    int round;       /* the discs were round */
    double v[3];     /* motion in the plane: vx vy omega */
    double y[6];     /* what a wrench more takes off the value */
    double N[SW__MOST], use[SW__MOST]; /* by support */
    double R[SW__MOST];                /* by stop */
    double grip[SW__MOST];             /* by clamp */
} sw__held;

/* A rig under study: linear programs that are kept from cut to cut. Made and
 * dropped outside, used inside of sw__guarded(). */
typedef struct {
    const sw__rig *rig;
    double friction, top; /* factor on friction; largest value */
    int sides;
    double turn;
    int planar[SW__KINDS], climbs; /* own methods that apply */
    int no_planar, no_climb;       /* for comparison */
    sw__joint joint[SW__KINDS];
    sw__joint scale; /* least clamping */
    sw__ray *ray[SW__KINDS + 1];
} sw__engine;

int sw__engine_make(sw__engine *e, const sw__rig *rig, const sw_hold_in *in,
                    double friction, sw_error *err);
void sw__engine_drop(sw__engine *e);
/* Forgets the linear programs, where the rig has changed. Inside. */
void sw__engine_renew(sw__engine *e);

/* The statics of one kind, made when first asked for; `scale`: the program for
 * the least clamping. Inside. */
sw__joint *sw__engine_joint(sw__engine *e, int kind);
sw__joint *sw__engine_scale(sw__engine *e);

/* Returns whether the supports balance the clamps and the weight. */
int sw__rest_at(const sw__engine *e, const sw__corner *corner, sw__rested *r);

/* Largest factor on the cut w1. `round`: with round discs. Inside. */
void sw__held_under(sw__engine *e, int kind, const sw__rested *r,
                    const double w1[6], int round, sw__held *h);

/* Least factor on the straps' side pulls at a corner that moves the part
 * before the cut, and whether needed supports carry what they must there
 * (else goes is SW_GOES_LIFT). Inside. */
void sw__held_at_rest(sw__engine *e, const sw__corner *corner, sw__held *h);
int sw__is_light(sw__engine *e, const sw__rested *r, int *support);

/* ---- corners ---- */

/* The corner next to go to: every range at the end that takes most off. */
sw__corner sw__corner_worst(const sw__rig *rig, const double y[6]);
int sw__corner_same(const sw__corner *a, const sw__corner *b);

/* The worst corner for a load (-1: for the part at rest). `start`: where to
 * begin, and where it ended. effort 0: from start alone; 1: from several
 * starts, or all corners where they are at most 64. Inside. */
void sw__held_worst(sw__engine *e, int load, int effort, int round,
                    sw__corner *start, sw__held *h);

#endif
