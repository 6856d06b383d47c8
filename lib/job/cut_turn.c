/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Cut turn: what a turning cut of an operation does to the part.
 *
 * Turning on a faceplate: the part turns and the tool goes round it, in the
 * part's frame. On a circle about the spindle's axis the surface runs with the
 * circle: with x, y, z of the turning room (x from the axis to the tool, y as
 * the surface runs)
 *
 *   (1)  along the feed y;  to its left -x where the circle runs
 *        counterclockwise, +x where clockwise;  up z
 *
 * The part's mass m, its middle r off the axis, pulls outward, and its weight
 * W lies in the face and goes round in the part's frame, in every direction (a
 * spindle that lies; eight of them, on an octagon about the circle):
 *
 *   (2)  F = m r w^2,  w = 2 pi n,  m = W/g
 *   (3)  W_k = W/cos(pi/8) (cos(k pi/4), sin(k pi/4))
 *
 * both with the cut and without it.
 *
 * Not in it: faceplate, clamps and balancing weights, which turn too; a spindle
 * that stands, whose part is pressed on the supports by its weight.
 */
#include "job/cut.h"

#include <string.h>

#define GRAVITY 9.80665 /* m/s2, exact by definition */

void sw__draft_turn_open(sw__cut_draft *d) { sw_turning_defaults(&d->of.turn); }

static sw_assumption ask_turn(const void *in, int index)
{
    return sw_turning_assumed(in, index, NULL);
}

/* Turns per minute, by the cutting speed where that was given. */
static double speed_of(const sw__cut_draft *d)
{
    const sw_turning_in *in = &d->of.turn;
    const double v = in->cutting_speed_m_per_min;
    const double D =
        sw__is_set(in->diameter_mm) ? in->diameter_mm : d->path->diameter_mm;
    if (sw__is_set(in->speed_rpm) || !sw__is_set(v))
        return in->speed_rpm;
    return 1000 * v / (SW__PI * D);
}

/* Equation (2), and what is said of it. */
static int add_spin(sw__cut_draft *d)
{
    char words[SW__JOB_REMARK];
    const sw_job_out *a = &d->job->about;
    const double rpm = speed_of(d);
    const double x = a->centre_x_mm - d->path->axis[0];
    const double y = a->centre_y_mm - d->path->axis[1];
    const double off = hypot(x, y);
    if (off < 1e-3)
        return SW_OK;
    sw__line line = sw__line_start(words, sizeof words);
    sw__line_add(&line, "the part's center of gravity is ");
    sw__add_length(&line, off);
    sw__line_add(&line, " off the spindle's axis; ");
    if (!sw__is_set(rpm)) {
        sw__line_add(&line, "without a speed, what it pulls by turning is left "
                            "out: give speed");
        return sw__job_remark(d->job, d->name, words, d->r->err);
    }
    const double w = rpm * SW__PI / 30;
    const double k = a->weight_N / GRAVITY * w * w / 1000; /* N per mm */
    d->op->spin_N[0] = k * x;
    d->op->spin_N[1] = k * y;
    sw__line_add(&line, "at ");
    sw__line_add_number(&line, round(rpm));
    sw__line_add(&line, " rpm it pulls outward with ");
    sw__line_add_number(&line, round(k * off));
    sw__line_add(&line, " N, which is counted; balance of faceplate and clamps "
                        "is not checked");
    return sw__job_remark(d->job, d->name, words, d->r->err);
}

/* Equation (3): every sample so far, and none, with the weight all round. */
static int add_weight(sw__cut_draft *d)
{
    enum { WAYS = 8 };
    sw__job_operation *op = d->op;
    const double W = d->job->about.weight_N / cos(SW__PI / WAYS);
    sw__job_sample with = op->sample[0];
    op->samples = 0;
    for (int cut = 1; cut >= 0; cut--)
        for (int i = 0; i < WAYS; i++) {
            sw__job_sample *s = &op->sample[op->samples++];
            if (!cut)
                memset(&with, 0, sizeof with);
            *s = with;
            s->body_N[0] = W * cos(2 * SW__PI * i / WAYS);
            s->body_N[1] = W * sin(2 * SW__PI * i / WAYS);
        }
    return sw__job_note_word(
        d->job, d->name, "spindle", "lies",
        "the weight lies in the face and turns; it presses "
        "on no support",
        d->r->err);
}

int sw__draft_turn_solve(sw__cut_draft *d)
{
    sw_error inner;
    sw_turning_in *in = &d->of.turn;
    if (!d->path->circle)
        return sw__fail_key(d->r, d->map, SW_ERR_MISSING, "circle",
                            "turning needs a path that is a circle about the "
                            "spindle's axis: circle, with center and diameter");
    int status = sw__draft_material(d, in->material, sizeof in->material,
                                    in->kc11_MPa, in->mc);
    if (status)
        return status;
    const sw_turning_out t = sw_turning(in, &inner);
    if (t.status)
        return sw__draft_fail(d, &inner);
    sw__draft_add(d, t.y_N, d->path->clockwise ? t.x_N : -t.x_N, t.z_N, 0, 0,
                  0); /* (1) */
    d->op->turned = 1;
    d->op->out.warnings |= t.warnings;
    status = add_spin(d);
    if (!status)
        status = add_weight(d);
    return status ? status : sw__draft_note(d, ask_turn);
}
