/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Job: what the topics about a job file share.
 */
#ifndef STRAPWISE_CLI_JOB_H
#define STRAPWISE_CLI_JOB_H

#include "cli.h"

#include <strapwise-fixture.h>

/* The job named on the command line; 0 or the exit status, after it has
 * complained. To be freed by sw_job_free(). (job_file.c) */
int job_read(request *r, sw_job **job);
/* a line of the library about the job; the exit status */
int job_complain(const request *r, const sw_error *err);

/* One operation, judged. (run_hold.c) */
typedef struct {
    const sw_job *job;
    int operation;
    sw_fixture *fixture;
    sw_hold *hold;
    sw_hold_in in;
    sw_hold_out out;
    sw_job_operation_out about;
    int rocks; /* clamp that rocks the part at its high end, or -1 */
    int us;    /* US units first, in the verdict */
} judged;

/* What the verdict is. */
typedef enum {
    STAYS = 1,
    TOO_LITTLE,
    GOES,
    NO_REST,
    CLAMP_FAILS,
    CAN_ROCK
} verdict;
verdict judged_verdict(const judged *h);

/* The torque on each clamp at which the hold limit is reached, where all are
 * turned; index as in the job. SW_UNSET: not that way. (run_hold.c) */
double judged_limit_torque(const judged *h, int clamp);
/* whether all clamps of it are turned, and the limit is known */
int judged_has_limit_torque(const judged *h);

/* The worst load at one point of the path; 0 past the last. */
int judged_point(const judged *h, int point, sw_hold_point_out *worst);

/* the first clamp that yields before the hold limit is reached, or -1 */
int judged_limit_breaks(const judged *h);

/* job_clamps.c: clamps that must not be used, and warnings by name; operation
 * -1: of the whole job */
/* index of the clamp that is worst off, or -1 */
int job_worst_fault(const sw_job *job, int operation);
/* "clamp C1: its stud is at 286 % ...; nor may C2 (120 %)" */
void say_faults(page *p, int us, const sw_job *job, int operation);
/* what is wrong with one, without its name */
void say_fault(page *p, int us, const sw_job_clamp_out *c);
void json_faults(json *j, const sw_job *job, int operation);
void say_job_warnings(page *p, const sw_job *job, int operation, uint64_t bits);
void json_job_warnings(json *j, const sw_job *job, uint64_t bits);

/* job_notes.c: defaults of a job, and what is in no list */
/* those of one operation and of no other, or of all (-1) */
void say_job_assumed(page *p, const request *r, const sw_job *job,
                     int operation);
void json_job_assumed(json *j, const sw_job *job, int operation);
void say_job_not_checked(page *p, int hold);
void json_job_not_checked(json *j, int hold);
/* every field of a struct of the library */
void json_struct(json *j, const void *base, int structure);
/* "120, 80 mm (4.724, 3.15 in)", `us` the other way round */
void say_place(page *p, int us, double x_mm, double y_mm);
/* "+x", or "30 deg" */
void say_direction(page *p, double deg);
/* "C1, C2 and C3" of an operation */
void say_clamps(page *p, const sw_job *job, int operation);

/* job_keys.c: what may stand in a job file */
void say_job_keys(page *p);

/* say_path.c: the side of the path on which a mill has the part, and the way of
 * its push; nothing where an operation does not mill */
void say_job_milling(page *p, const sw_job *job, int index);

/* say_rest.c */
/* why it does not stay before the cut, one sentence or two without the last
 * full stop */
void say_no_rest(page *p, const judged *h);
/* "all its supports stand in one line: ..."; 0 where that is not so */
int say_supports_fault(page *p, const sw_fixture *f);

/* say_hold.c, json_hold.c */
void say_verdict(page *p, const judged *h);
/* `alone`: the verdict was said already */
void say_hold(page *p, const request *r, const judged *h, int alone);
void say_hold_points(page *p, const request *r, const judged *h);
void json_hold(json *j, const judged *h);

#endif
