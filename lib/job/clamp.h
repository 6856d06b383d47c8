/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Clamp: one clamp of a job while it is read.
 */
#ifndef SW_JOB_CLAMP_H
#define SW_JOB_CLAMP_H

#include "job/job.h"

#include <strapwise/ask.h>
#include <strapwise/bar.h>
#include <strapwise/cylinder.h>
#include <strapwise/pad.h>
#include <strapwise/screw.h>
#include <strapwise/spread.h>
#include <strapwise/strap.h>
#include <strapwise/swing.h>
#include <strapwise/vacuum.h>

enum { SW__CLAMP_FORMS = 3 };

/* What every clamp has, and room for what one kind has. */
typedef struct {
    sw_job *job;
    sw__reader *r;
    int map;
    sw__shape shape; /* as it was read, for errors */
    sw__form form[SW__CLAMP_FORMS];
    sw_clamp_in in; /* name, height, direction, and forces where given */
    double at[3];
    int placed;
    char tool[64];
    union {
        struct {
            sw_strap_in in;
            sw_spread_in spread;
        } strap;
        sw_screw_in screw;
        sw_cylinder_in cylinder;
        sw_swing_in swing;
        sw_vacuum_in vacuum;
        sw_bar_in bar;
    } of;
    double second[3]; /* a bar: place of its second pad */
    int second_placed;
    double second_N; /* and its force */
    int pad;         /* node, 0 for none */
    sw_job_clamp_out *out;
} sw__clamp_draft;

/* What a kind of clamp adds: the structs its keys are of, and how its force
 * follows. */
typedef struct {
    int kind;         /* sw_clamp_kind */
    const char *skip; /* fields of the plain clamp that are no keys of it */
    int stud;         /* it has a stud beside the part */
    int turned;       /* it is set with a torque tool */
    int pads;         /* on how many it presses */
    int (*open)(sw__clamp_draft *d); /* defaults, and its forms */
    int (*solve)(sw__clamp_draft *d);
} sw__clamp_way;

extern const sw__clamp_way sw__clamp_strap_way; /* clamp_strap.c */
/* clamp_others.c */
extern const sw__clamp_way sw__clamp_screw_way, sw__clamp_through_way,
    sw__clamp_cylinder_way, sw__clamp_swing_way, sw__clamp_vacuum_way,
    sw__clamp_bar_way;

/* Fields of a plain clamp that are no keys of one whose force follows. */
#define SW__CLAMP_SKIP                                                         \
    " x_mm y_mm force_N toward_deg pull_low_N pull_high_N drag_low_N "         \
    "drag_high_N"

/* Notes what the library filled in. */
int sw__clamp_note(sw__clamp_draft *d,
                   sw_assumption (*ask)(const sw__clamp_draft *, int));

/* Judges the pad under a clamp. (clamp_pad.c) */
int sw__clamp_pad(sw__clamp_draft *d);

/* Judges the stud of a strap, from what it does at the low end, the median and
 * the high end of its tension. (clamp_strength.c) */
void sw__clamp_judge_strap(sw__clamp_draft *d, const sw_strap_out *low,
                           const sw_strap_out *s, const sw_strap_out *high,
                           const sw_torque_in *torque);

/* Judges a screw by its grade. 0 or an error. */
int sw__clamp_judge_screw(sw__clamp_draft *d, const sw_screw_in *full,
                          const sw_screw_out *s);

/* Judges pressure and force by what the maker allows; SW_UNSET: not said. */
void sw__clamp_judge_device(sw__clamp_draft *d, double force_N,
                            double allowed_N, double pressure_MPa,
                            double allowed_MPa);

/* Looks what is beneath a clamp, and where its stud stands; `o` the draft's
 * own, or the second pad of a bar. (clamp_place.c) */
int sw__clamp_place(sw__clamp_draft *d, sw_job_clamp_out *o);

/* Refuses a seal that reaches past the part. */
int sw__clamp_seal(sw__clamp_draft *d, const sw_vacuum_in *full);

/* Sets the tool that the clamp names to the torque, which becomes what the tool
 * can be set to. Nothing where it names none. (clamps.c) */
int sw__clamp_set_tool(sw__clamp_draft *d, double *torque_Nm);

/* Records an error of the library about this clamp. */
int sw__clamp_fail(sw__clamp_draft *d, const sw_error *inner);

#endif
