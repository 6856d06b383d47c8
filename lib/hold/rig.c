/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Rig: a fixture in numbers without units, so that ten times the size or the
 * force asks the same question.
 *
 * Length: the largest distance of a support from their middle (of any contact
 * where there is but one place); force: all clamps and the weight. Heights are
 * taken from the mean height of the supports. A support softer than a hundred
 * thousandth of the stiffest counts as that.
 */
#include "hold/rig.h"

#include <stdlib.h>
#include <string.h>

#define SOFTEST 1e-5

static double reach(double most, double x, double y, double z)
{
    return fmax(most, fmax(hypot(x, y), fabs(z)));
}

/* The frame: where it is, and how long and strong its units are. */
static void measure(const sw_fixture *f, sw__rig *rig)
{
    double length = 0, force = f->weight.weight_N;
    for (int i = 0; i < f->supports; i++) {
        rig->x_mm += f->support[i].x_mm / f->supports;
        rig->y_mm += f->support[i].y_mm / f->supports;
        rig->z_mm += f->support[i].z_mm / f->supports;
    }
    const double x = rig->x_mm, y = rig->y_mm, z = rig->z_mm;
    for (int i = 0; i < f->supports; i++)
        length = reach(length, f->support[i].x_mm - x, f->support[i].y_mm - y,
                       f->support[i].z_mm - z);
    for (int i = 0; i < f->clamps; i++)
        force += f->clamp[i].force_N;
    const int alone = !(length > 0);
    for (int i = 0; alone && i < f->clamps; i++)
        length = reach(length, f->clamp[i].x_mm - x, f->clamp[i].y_mm - y,
                       f->clamp[i].z_mm - z);
    for (int i = 0; alone && i < f->stops; i++)
        length = reach(length, f->stop[i].x_mm - x, f->stop[i].y_mm - y,
                       f->stop[i].z_mm - z);
    rig->length_mm = length > 0 ? length : 1;
    rig->force_N = force > 0 ? force : 1;
}

static sw__touch touch(const sw__rig *rig, double x, double y, double z)
{
    sw__touch t = {0};
    t.x = (x - rig->x_mm) / rig->length_mm;
    t.y = (y - rig->y_mm) / rig->length_mm;
    t.z = (z - rig->z_mm) / rig->length_mm;
    if (fabs(t.z) < 1e-12)
        t.z = 0;
    return t;
}

static void add_pads(const sw_fixture *f, sw__rig *rig)
{
    double mean = 0, most = 0;
    for (int i = 0; i < f->supports; i++) {
        mean += f->support[i].stiffness_N_per_mm / f->supports;
        most = fmax(most, f->support[i].stiffness_N_per_mm);
    }
    rig->pads = f->supports;
    for (int i = 0; i < f->supports; i++) {
        const sw_support_in *s = &f->support[i];
        sw__touch *t = &rig->pad[i];
        *t = touch(rig, s->x_mm, s->y_mm, s->z_mm);
        t->mu = s->friction;
        t->k = fmax(s->stiffness_N_per_mm, SOFTEST * most) / mean;
        t->least = s->needed == SW_NEEDED_NO ? 0 : s->least_N / rig->force_N;
        t->needed = s->needed;
    }
}

static void add_range(sw__rig *rig, int clamp, double width, double dx,
                      double dy)
{
    if (!(width > 0))
        return;
    const sw__touch *t = &rig->toe[clamp];
    sw__push(t, dx * width, dy * width, 0, rig->range[rig->ranges]);
    rig->of[rig->ranges++] = clamp;
}

static void add_toes(const sw_fixture *f, sw__rig *rig)
{
    const double F = rig->force_N;
    rig->toes = f->clamps;
    for (int i = 0; i < f->clamps; i++) {
        const sw_clamp_in *c = &f->clamp[i];
        sw__touch *t = &rig->toe[i];
        *t = touch(rig, c->x_mm, c->y_mm, c->z_mm);
        t->mu = c->held_friction;
        t->P = c->force_N / F;
        t->nx = cos(SW__RAD(c->toward_deg));
        t->ny = sin(SW__RAD(c->toward_deg));
        const double pull = c->pull_low_N / F, drag = c->drag_low_N / F;
        sw__push(t, 0, 0, -t->P, rig->press[i]);
        /* to the right of somebody at the stud who faces the part */
        sw__push(t, pull * t->nx - drag * t->ny, pull * t->ny + drag * t->nx, 0,
                 rig->low[i]);
        add_range(rig, i, (c->pull_high_N - c->pull_low_N) / F, t->nx, t->ny);
        add_range(rig, i, (c->drag_high_N - c->drag_low_N) / F, -t->ny, t->nx);
    }
}

static void add_posts(const sw_fixture *f, sw__rig *rig)
{
    rig->posts = f->stops;
    for (int i = 0; i < f->stops; i++) {
        const sw_stop_in *s = &f->stop[i];
        sw__touch *t = &rig->post[i];
        *t = touch(rig, s->x_mm, s->y_mm, s->z_mm);
        t->mu = s->friction;
        t->least = s->least_N / rig->force_N;
        t->nx = cos(SW__RAD(s->push_deg));
        t->ny = sin(SW__RAD(s->push_deg));
    }
}

static void add_loads(const sw_fixture *f, sw__rig *rig)
{
    const double F = rig->force_N;
    const double M = F * rig->length_mm / 1000; /* N.m */
    rig->loads = f->loads;
    for (int i = 0; i < f->loads; i++) {
        const sw_load_in *p = &f->load[i];
        const sw__touch at = touch(rig, p->x_mm, p->y_mm, p->z_mm);
        double *w = rig->cut[i];
        sw__push(&at, p->force_x_N / F, p->force_y_N / F, p->force_z_N / F, w);
        w[3] += p->moment_x_Nm / M;
        w[4] += p->moment_y_Nm / M;
        w[5] += p->moment_z_Nm / M;
    }
}

int sw__rig_make(const sw_fixture *f, sw__rig *rig, sw_error *err)
{
    memset(rig, 0, sizeof *rig);
    if (!f->supports)
        return sw__fail(err, SW_ERR_MISSING, "support",
                        "support: the part stands on none; give at least one");
    if (!f->loads)
        return sw__fail(err, SW_ERR_MISSING, "load",
                        "load: no cut is given; give at least one load");
    if (!f->clamps && !(f->weight.weight_N > 0))
        return sw__fail(err, SW_ERR_MISSING, "clamp",
                        "clamp: nothing presses the part down; give a clamp or "
                        "the weight");
    rig->cut = malloc((size_t)f->loads * sizeof *rig->cut);
    if (!rig->cut)
        return sw__fail_memory(err);
    measure(f, rig);
    add_pads(f, rig);
    add_toes(f, rig);
    add_posts(f, rig);
    add_loads(f, rig);
    if (f->weight.weight_N > 0) {
        const sw_weight_in *w = &f->weight;
        const sw__touch at = touch(rig, w->x_mm, w->y_mm, w->z_mm);
        sw__push(&at, 0, 0, -w->weight_N / rig->force_N, rig->weight);
    }
    return SW_OK;
}

void sw__rig_drop(sw__rig *rig)
{
    free(rig->cut);
    rig->cut = NULL;
}

void sw__rig_straps(const sw__rig *rig, const sw__corner *corner,
                    const double *scale, int pulls, double w[6])
{
    memset(w, 0, 6 * sizeof *w);
    for (int c = 0; c < rig->toes; c++) {
        const double s = scale ? scale[c] : 1;
        for (int i = 0; i < 6; i++)
            w[i] += s * (rig->press[c][i] + (pulls ? rig->low[c][i] : 0));
    }
    for (int r = 0; pulls && r < rig->ranges; r++) {
        const double s = scale ? scale[rig->of[r]] : 1;
        if (sw__is_high(corner, r))
            for (int i = 0; i < 6; i++)
                w[i] += s * rig->range[r][i];
    }
}

int sw__rig_pulled(const sw__rig *rig)
{
    for (int c = 0; c < rig->toes; c++)
        if (rig->low[c][0] != 0 || rig->low[c][1] != 0)
            return 1;
    return rig->ranges > 0;
}
