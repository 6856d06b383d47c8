/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_JOB_OPERATION_H
#define SW_JOB_OPERATION_H

#include "job/job.h"

/* What a path says of itself, beside its points. */
typedef struct {
    int circle; /* it is one, with its centre as the spindle's axis */
    double axis[2], diameter_mm;
    int clockwise; /* it, or the spindle over it, runs clockwise */
    int directed;  /* every point has a way of feed */
    int node;      /* of the points */
} sw__path_about;

/* Reads a path into the operation's points. `name` is whom defaults are noted
 * for. (path.c) */
int sw__job_path(sw_job *job, sw__reader *r, int map, const char *name,
                 sw__job_operation *op, sw__path_about *about);

/* Reads a cut into the operation's samples. (cuts.c) */
int sw__job_cut(sw_job *job, sw__reader *r, int map, const char *name,
                sw__job_operation *op, const sw__path_about *path);

#endif
