/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Job: what the files of this folder know of a job.
 */
#ifndef SW_JOB_JOB_H
#define SW_JOB_JOB_H

#include "job/outline.h"
#include "job/reader.h"

#include <strapwise/job.h>
#include <strapwise/tool.h>

enum {
    SW__JOB_CONTACTS = 64, /* of each kind, as many as a fixture takes */
    SW__JOB_TOOLS = 32,
    SW__JOB_OPERATIONS = 50,
    SW__JOB_POINTS = 5000,  /* of one path */
    SW__JOB_LOADS = 100000, /* points times samples */
    SW__JOB_SAMPLES = 24,
    SW__JOB_REMARK = 240 /* bytes of a sentence */
};

typedef struct {
    char name[64];
    sw_tool_in in;
} sw__job_tool;

typedef struct {
    sw_job_clamp_out out;
    double held_friction; /* SW_UNSET: the toe goes with the part */
    int second;           /* the second pad of the bar before it */
} sw__job_clamp;

/* A point of a path and the way the tool goes there, from +x toward +y. */
typedef struct {
    double at[3], feed_deg;
} sw__job_point;

/* A load in a frame whose x is the feed and whose z is up. */
typedef struct {
    double N[3], Nm[3];
    double body_N[2]; /* in the middle of the part's mass */
} sw__job_sample;

typedef struct {
    sw_job_operation_out out;
    sw_hold_in hold;
    unsigned char has[SW__JOB_CONTACTS]; /* clamps */
    sw__job_point *point;
    int points;
    sw__job_sample sample[SW__JOB_SAMPLES];
    int samples;
    double spin_N[2]; /* on the part as it turns, in its own frame */
    int turned; /* the samples turn with the feed; else they are of the table */
} sw__job_operation;

struct sw_job {
    sw_job_out about;
    sw__outline outline;
    double toe_friction, support_friction, stop_friction; /* or SW_UNSET */
    sw_support_in support[SW__JOB_CONTACTS];
    sw_stop_in stop[SW__JOB_CONTACTS];
    sw__job_clamp clamp[SW__JOB_CONTACTS];
    sw__job_tool tool[SW__JOB_TOOLS];
    sw__job_operation operation[SW__JOB_OPERATIONS];
    int supports, stops, clamps, tools, operations;
    sw_assumption *assumed;
    int assumptions, assumed_room;
    unsigned char *slight; /* defaults that hardly matter, by index */
    char (*remark)[SW__JOB_REMARK];
    int remarks, remark_room;
};

/* A default of the job's own: value, usual range, source; 0 or SW_ERR_MEMORY
 * with an error. `where` "" is the job itself. */
int sw__job_note(sw_job *job, const char *where, const char *name,
                 const char *unit, double value, double low, double high,
                 const char *source, sw_error *err);
int sw__job_note_word(sw_job *job, const char *where, const char *name,
                      const char *word, const char *source, sw_error *err);
/* one that the library told */
int sw__job_note_as(sw_job *job, const char *where, const sw_assumption *a,
                    sw_error *err);

/* Marks the last default as one that hardly matters. */
void sw__job_slight(sw_job *job);

/* Adds a sentence on what looks doubtful: "NAME: words"; 0 or SW_ERR_MEMORY.
 * The same sentence is kept once. (remarks.c) */
int sw__job_remark(sw_job *job, const char *name, const char *words,
                   sw_error *err);

/* "82 mm (3.23 in)" */
void sw__add_length(sw__line *line, double mm);

/* Sections; each 0 or an error. */
int sw__job_part(sw_job *job, sw__reader *r, int map);
int sw__job_friction(sw_job *job, sw__reader *r, int map);
int sw__job_supports(sw_job *job, sw__reader *r, int list);
int sw__job_stops(sw_job *job, sw__reader *r, int list);
int sw__job_tools(sw_job *job, sw__reader *r, int list);
int sw__job_clamps(sw_job *job, sw__reader *r, int list);
int sw__job_operations(sw_job *job, sw__reader *r, int list);

/* Goes through a list of maps: calls `take` for each; at most `most`. */
int sw__job_each(sw_job *job, sw__reader *r, int list, const char *key,
                 int most, int (*take)(sw_job *, sw__reader *, int map));

/* A name that another has is refused at its place; `list` is the first name of
 * a list, the next `size` bytes on. */
int sw__job_check_name(sw__reader *r, int map, const char *name,
                       const void *list, size_t size, int count);

/* Whether friction is beyond what wet faces give; else 0. */
uint64_t sw__job_friction_warning(double friction);

#endif
