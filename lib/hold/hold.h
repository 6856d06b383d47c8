/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_HOLD_HOLD_H
#define SW_HOLD_HOLD_H

#include "hold/engine.h"

/* What is kept of one load. */
typedef struct {
    double margin, ceiling, idle; /* SW_UNSET where not asked */
    int goes, part, index;
    double v[3]; /* motion in the plane */
    sw__corner corner;
} sw__verdict;

struct sw_hold {
    sw_hold_in in;
    sw__rig rig;
    sw_fixture *names; /* a copy of the contacts, without loads */
    sw_load_in *load;
    sw__verdict *verdict; /* by load */
    float *kept;          /* by load: force of supports and stops, then use of
                             supports and clamps; NULL: the worst alone */
    double worst_force[2 * SW__MOST], worst_use[2 * SW__MOST];
    double rest_force[2 * SW__MOST];
    double least[SW__MOST]; /* by clamp, of the rig's force; SW_UNSET */
    int rest, light;        /* sw_rest; the support that carries too little */
    int worst;
    sw__corner rest_corner;
    double rest_margin;
    double friction_low, friction_high;
    double scale, scale_high, least_total; /* SW_UNSET: none */
};

/* Up to so many loads every margin is found with round discs. */
enum { SW__ROUND_UP_TO = 64 };

int sw__hold_open(const sw_hold_in *in, sw_hold_in *full, sw_error *err);

/* Engines beside the main one: less friction, more friction, a rig that is
 * changed on trial. */
typedef struct {
    struct sw_hold *h;
    sw__engine main, less, more, trial;
    sw__rig tried;
    sw__ray *ray[16]; /* of the least total's blocks */
    double *rough;    /* by load: margins of a trial, and where they are */
    sw__corner *at;
} sw__job;

/* The state before the cut (sw_rest), the corner that is worst there, the factor
 * on the side pulls (SW_UNSET: none) and a support that carries too little.
 * Inside. */
int sw__rest_state(sw__engine *e, sw__corner *corner, double *factor,
                   int *support);

/* Parts of the work, inside of sw__guarded(); each 0 or sw_status. */
int sw__hold_work(sw__guard *g, void *job);
int sw__hold_scale(sw__guard *g, sw__job *job);
int sw__hold_least(sw__guard *g, sw__job *job);

/* The lowest margin over all loads of the rig on trial with a factor on each
 * clamp's force and side pulls, and the load and corner where it is; 0 where
 * the part does not rest. */
double sw__hold_try(sw__job *job, const double *factor, int *load,
                    sw__corner *corner);

#endif
