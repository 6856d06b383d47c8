/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Job fixture: one operation of a job as a part on its fixture.
 *
 * A load of the path is a sample of the cut turned by the feed,
 *
 *   (1)  (F_x, F_y) = R(feed) (N_0, N_1),  R(a) = [cos a, -sin a; sin a, cos a]
 *
 * and its moments alike. What acts in the middle of the part's mass, r from the
 * tool point, is moved there with its moment r x F.
 */
#include "job/job.h"

#include <string.h>

static int add_contacts(const sw_job *job, sw_fixture *f, sw_error *err)
{
    int status = SW_OK;
    for (int i = 0; i < job->supports && !status; i++)
        status = sw_fixture_add_support(f, &job->support[i], err);
    for (int i = 0; i < job->stops && !status; i++)
        status = sw_fixture_add_stop(f, &job->stop[i], err);
    return status;
}

static int add_clamp(const sw__job_clamp *clamp, sw_fixture *f, sw_error *err)
{
    const sw_job_clamp_out *o = &clamp->out;
    sw_clamp_in in;
    sw_clamp_defaults(&in);
    sw__copy(in.name, sizeof in.name, o->name);
    in.x_mm = o->x_mm;
    in.y_mm = o->y_mm;
    in.z_mm = o->z_mm;
    in.force_N = o->force_low_N;
    in.toward_deg = o->toward_deg;
    in.pull_low_N = o->pull_low_N;
    in.pull_high_N = o->pull_high_N;
    in.drag_low_N = o->drag_low_N;
    in.drag_high_N = o->drag_high_N;
    in.held_friction = clamp->held_friction;
    return sw_fixture_add_clamp(f, &in, err);
}

/* Equation (1). */
static void turn(const double from[3], double deg, double to[3])
{
    const double c = cos(SW__RAD(deg)), s = sin(SW__RAD(deg));
    to[0] = c * from[0] - s * from[1];
    to[1] = s * from[0] + c * from[1];
    to[2] = from[2];
}

/* What acts in the middle of the part's mass, moved to the tool point. */
static void add_body(const sw_job *job, const sw__job_operation *op,
                     const sw__job_point *p, const sw__job_sample *s,
                     double N[3], double Nm[3])
{
    const double from[3] = {s->body_N[0], s->body_N[1], 0};
    const double x = (job->about.centre_x_mm - p->at[0]) / 1000;
    const double y = (job->about.centre_y_mm - p->at[1]) / 1000;
    const double z = (job->about.centre_z_mm - p->at[2]) / 1000;
    double F[3];
    turn(from, op->turned ? p->feed_deg : 0, F);
    F[0] += op->spin_N[0];
    F[1] += op->spin_N[1];
    N[0] += F[0];
    N[1] += F[1];
    Nm[0] -= z * F[1];
    Nm[1] += z * F[0];
    Nm[2] += x * F[1] - y * F[0];
}

static int add_load(const sw_job *job, const sw__job_operation *op, int point,
                    int sample, sw_fixture *f, sw_error *err)
{
    const sw__job_point *p = &op->point[point];
    double N[3], Nm[3];
    sw_load_in in;
    sw_load_defaults(&in);
    sw__line line = sw__line_start(in.name, sizeof in.name);
    sw__line_add(&line, "P");
    sw__line_add_number(&line, point + 1);
    turn(op->sample[sample].N, op->turned ? p->feed_deg : 0, N);
    turn(op->sample[sample].Nm, op->turned ? p->feed_deg : 0, Nm);
    add_body(job, op, p, &op->sample[sample], N, Nm);
    in.x_mm = p->at[0];
    in.y_mm = p->at[1];
    in.z_mm = p->at[2];
    in.force_x_N = N[0];
    in.force_y_N = N[1];
    in.force_z_N = N[2];
    in.moment_x_Nm = Nm[0];
    in.moment_y_Nm = Nm[1];
    in.moment_z_Nm = Nm[2];
    return sw_fixture_add_load(f, &in, err);
}

static int add_all(const sw_job *job, const sw__job_operation *op,
                   sw_fixture *f, sw_error *err)
{
    int status = add_contacts(job, f, err);
    for (int i = 0; i < job->clamps && !status; i++)
        if (op->has[i])
            status = add_clamp(&job->clamp[i], f, err);
    for (int i = 0; i < op->points && !status; i++)
        for (int k = 0; k < op->samples && !status; k++)
            status = add_load(job, op, i, k, f, err);
    if (status)
        return status;
    sw_weight_in w;
    sw_weight_defaults(&w);
    /* on a faceplate it lies in the face, and is in the loads */
    w.weight_N = op->out.cut_kind == SW_CUT_TURN ? 0 : job->about.weight_N;
    w.x_mm = job->about.centre_x_mm;
    w.y_mm = job->about.centre_y_mm;
    w.z_mm = job->about.centre_z_mm;
    return sw_fixture_set_weight(f, &w, err);
}

sw_fixture *sw_job_fixture(const sw_job *job, int operation, sw_error *err)
{
    sw__clear(err);
    if (!job) {
        sw__fail_null(err, "job");
        return NULL;
    }
    if (operation < 0 || operation >= job->operations) {
        sw__fail_range(err, "operation", operation, "", 0, job->operations - 1);
        return NULL;
    }
    sw_fixture *f = sw_fixture_new(err);
    if (f && add_all(job, &job->operation[operation], f, err)) {
        sw_fixture_free(f);
        f = NULL;
    }
    return f;
}
