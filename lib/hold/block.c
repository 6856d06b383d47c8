/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Block: rows and columns of equilibrium in a linear program, equations (1) to
 * (4) of joint.c.
 */
#include "hold/joint.h"

#include <string.h>

static int has_rays(const sw__block_how *how, const sw__touch *t)
{
    return !how->frictionless && t->mu > 0;
}

int sw__block_rays(const sw__rig *rig, const sw__block_how *how)
{
    int n = 0;
    for (int i = 0; i < rig->pads; i++)
        n += has_rays(how, &rig->pad[i]) ? how->sides + SW__EXTRA : 0;
    for (int i = 0; i < rig->toes; i++)
        n += has_rays(how, &rig->toe[i]) ? how->sides + SW__EXTRA : 0;
    for (int i = 0; i < rig->posts; i++)
        n += has_rays(how, &rig->post[i]) ? how->sides : 1;
    return n;
}

sw__touch sw__block_place(const sw__block *b, const sw__ray *r)
{
    sw__touch t = r->part == SW_PART_SUPPORT ? b->rig->pad[r->index]
                  : r->part == SW_PART_CLAMP ? b->rig->toe[r->index]
                                             : b->rig->post[r->index];
    if (b->how.flat && r->part != SW_PART_SUPPORT)
        t.z = 0;
    return t;
}

static void ray_wrench(const sw__block *b, const sw__ray *r, double w[6])
{
    const sw__touch t = sw__block_place(b, r);
    const double mu = t.mu * b->how.friction;
    if (r->part != SW_PART_STOP)
        sw__push(&t, mu * r->c, mu * r->s, 0, w);
    else
        sw__push(&t, t.nx - mu * r->c * t.ny, t.ny + mu * r->c * t.nx,
                 mu * r->s, w);
}

/* A column of six rows from `row` and one more. */
static void set_column(glp_prob *lp, int col, int row, const double w[6],
                       int other, double value)
{
    int index[8], n = 0;
    double entry[8];
    for (int i = 0; i < 6; i++) {
        if (w[i] == 0)
            continue;
        index[++n] = row + i;
        entry[n] = w[i];
    }
    if (other) {
        index[++n] = other;
        entry[n] = value;
    }
    glp_set_mat_col(lp, col, n, index, entry);
}

void sw__block_set_ray(sw__block *b, int k)
{
    const sw__ray *r = &b->ray[k];
    double w[6];
    ray_wrench(b, r, w);
    const int other = r->part == SW_PART_SUPPORT ? b->disc[r->index]
                      : r->part == SW_PART_CLAMP ? b->grip[r->index]
                                                 : 0;
    set_column(b->lp, b->first + k, b->row, w, other, 1);
}

static double least_of(const sw__block *b, int i)
{
    if (b->rig->pad[i].needed == SW_NEEDED_NO)
        return 0;
    return fmax(b->rig->pad[i].least, b->how.least);
}

/* Bounds of a ray: friction of an idle support is none. */
static void bound_ray(const sw__block *b, int k)
{
    const sw__ray *r = &b->ray[k];
    if (r->part == SW_PART_SUPPORT && !b->on[r->index])
        glp_set_col_bnds(b->lp, b->first + k, GLP_FX, 0, 0);
    else if (r->part == SW_PART_STOP)
        glp_set_col_bnds(
            b->lp, b->first + k, GLP_LO,
            fmax(b->how.own_seat ? b->rig->post[r->index].least : 0,
                 b->how.seat),
            0);
    else
        glp_set_col_bnds(b->lp, b->first + k, GLP_LO, 0, 0);
}

static void add_rows(sw__block *b)
{
    const sw__rig *rig = b->rig;
    int row = glp_get_num_rows(b->lp);
    b->row = row + 1;
    row += 6;
    memset(b->disc, 0, sizeof b->disc);
    memset(b->keep, 0, sizeof b->keep);
    memset(b->grip, 0, sizeof b->grip);
    for (int i = 0; i < rig->pads; i++) {
        const int rubs = has_rays(&b->how, &rig->pad[i]);
        b->disc[i] = rubs ? ++row : 0;
        b->keep[i] =
            !b->how.free_normals && (!rubs || least_of(b, i) > 0) ? ++row : 0;
    }
    for (int i = 0; i < rig->toes; i++)
        b->grip[i] = has_rays(&b->how, &rig->toe[i]) ? ++row : 0;
    glp_add_rows(b->lp, row - b->row + 1);
    for (int i = 0; i < rig->toes; i++)
        if (b->grip[i])
            glp_set_row_bnds(b->lp, b->grip[i], GLP_UP, 0, rig->toe[i].P);
}

static void add_disc(sw__block *b, int part, int index)
{
    for (int k = 0; k < b->how.sides; k++) {
        /* a stop's cone has its own frame */
        const double turn = part == SW_PART_STOP ? 0 : b->how.turn;
        const double a = turn + 2 * SW__PI * k / b->how.sides;
        b->ray[b->count++] = (sw__ray){part, index, cos(a), sin(a)};
    }
}

void sw__block_add(sw__block *b, glp_prob *lp, const sw__rig *rig,
                   const sw__block_how *how)
{
    b->lp = lp;
    b->rig = rig;
    b->how = *how;
    add_rows(b);
    b->normals = how->free_normals ? rig->pads : 3;
    b->col = glp_add_cols(lp, b->normals);
    b->count = 0;
    for (int i = 0; i < rig->pads; i++)
        if (b->disc[i])
            add_disc(b, SW_PART_SUPPORT, i);
    for (int i = 0; i < rig->toes; i++)
        if (b->grip[i])
            add_disc(b, SW_PART_CLAMP, i);
    for (int i = 0; i < rig->posts; i++) {
        if (has_rays(how, &rig->post[i]))
            add_disc(b, SW_PART_STOP, i);
        else
            b->ray[b->count++] = (sw__ray){SW_PART_STOP, i, 0, 0};
    }
    b->plain = b->count;
    b->first = b->col + b->normals;
    if (b->count)
        glp_add_cols(lp, b->count);
    for (int k = 0; k < b->count; k++)
        sw__block_set_ray(b, k);
    char all[SW__MOST];
    memset(all, 1, sizeof all);
    sw__block_on(b, all, all);
}

/* The columns of u: rows (1), (2) and (3) of the supports that carry. */
static void set_sinks(sw__block *b)
{
    const sw__rig *rig = b->rig;
    int index[3 + 2 * SW__MOST + 1];
    double entry[3 + 2 * SW__MOST + 1];
    for (int j = 0; j < 3; j++) {
        double sum[3] = {0, 0, 0};
        int n = 3;
        for (int i = 0; i < rig->pads; i++) {
            const sw__touch *p = &rig->pad[i];
            const double g[3] = {1, p->y, -p->x};
            /* an idle one only tells its gap, however soft it is */
            const double k = b->on[i] ? p->k : 1;
            for (int r = 0; b->on[i] && r < 3; r++)
                sum[r] += p->k * g[j] * g[r];
            if (g[j] != 0 && b->disc[i]) {
                index[++n] = b->disc[i];
                entry[n] = -k * g[j];
            }
            if (g[j] != 0 && b->keep[i]) {
                index[++n] = b->keep[i];
                entry[n] = k * g[j];
            }
        }
        for (int r = 0; r < 3; r++) {
            index[r + 1] = b->row + 2 + r;
            entry[r + 1] = sum[r];
        }
        glp_set_mat_col(b->lp, b->col + j, n, index, entry);
        glp_set_col_bnds(b->lp, b->col + j, GLP_FR, 0, 0);
    }
}

static void set_normals(sw__block *b)
{
    for (int i = 0; i < b->normals; i++) {
        double w[6];
        sw__push(&b->rig->pad[i], 0, 0, 1, w);
        set_column(b->lp, b->col + i, b->row, w, b->disc[i], -1);
        glp_set_col_bnds(b->lp, b->col + i, GLP_LO,
                         b->must[i] ? least_of(b, i) : 0, 0);
    }
}

void sw__block_on(sw__block *b, const char *on, const char *must)
{
    memcpy(b->on, on, (size_t)b->rig->pads);
    memcpy(b->must, must, (size_t)b->rig->pads);
    if (b->how.free_normals)
        set_normals(b);
    else
        set_sinks(b);
    for (int k = 0; k < b->count; k++)
        bound_ray(b, k);
    for (int i = 0; i < b->rig->pads; i++) {
        const int carries = b->on[i];
        if (b->disc[i] && carries)
            glp_set_row_bnds(b->lp, b->disc[i], GLP_UP, 0, 0);
        else if (b->disc[i]) /* -g . u >= 0 */
            glp_set_row_bnds(b->lp, b->disc[i], GLP_LO, 0, 0);
        if (b->keep[i] && carries)
            glp_set_row_bnds(b->lp, b->keep[i], GLP_LO,
                             b->must[i] ? least_of(b, i) : 0, 0);
        else if (b->keep[i])
            glp_set_row_bnds(b->lp, b->keep[i], GLP_UP, 0, 0);
    }
}

void sw__block_base(const sw__block *b, const double w[6])
{
    for (int i = 0; i < 6; i++)
        glp_set_row_bnds(b->lp, b->row + i, GLP_FX, -w[i], -w[i]);
}
