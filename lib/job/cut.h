/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_JOB_CUT_H
#define SW_JOB_CUT_H

#include "job/operation.h"

#include <strapwise/drilling.h>
#include <strapwise/milling.h>
#include <strapwise/turning.h>

/* The cut of one operation while it is read. */
typedef struct {
    sw_job *job;
    sw__reader *r;
    int map;
    const char *name;
    sw__job_operation *op;
    const sw__path_about *path;
    sw__shape shape;
    sw__form form;
    double reach; /* how far off the part a point of the path may be */
    union {
        sw_load_in force;
        sw_milling_in mill;
        sw_turning_in turn;
        sw_drilling_in drill;
    } of;
} sw__cut_draft;

/* An error of the library about the cut, at its place in the file. */
int sw__draft_fail(sw__cut_draft *d, const sw_error *inner);

/* Adds a load in the frame of the feed, unless it is there already. */
void sw__draft_add(sw__cut_draft *d, double x, double y, double z, double mx,
                   double my, double mz);

/* Notes what the library filled in. */
int sw__draft_note(sw__cut_draft *d, sw_assumption (*ask)(const void *, int));

/* The part's own material, where the cut names none. */
int sw__draft_material(sw__cut_draft *d, char *material, size_t room,
                       double kc11, double mc);

/* Turning (cut_turn.c). */
void sw__draft_turn_open(sw__cut_draft *d);
int sw__draft_turn_solve(sw__cut_draft *d);

#endif
