/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Joint, read: what a solved linear program says. Symbols as in joint.c.
 */
#include "hold/joint.h"

#include <string.h>

double sw__joint_value(const sw__joint *j)
{
    return glp_get_col_prim(j->block.lp, j->goal);
}

void sw__joint_motion(const sw__joint *j, double y[6])
{
    for (int i = 0; i < 6; i++)
        y[i] = glp_get_row_dual(j->block.lp, j->block.row + i);
}

/* g . u */
static double sink(const sw__block *b, int i)
{
    const sw__touch *p = &b->rig->pad[i];
    return glp_get_col_prim(b->lp, b->col) +
           p->y * glp_get_col_prim(b->lp, b->col + 1) -
           p->x * glp_get_col_prim(b->lp, b->col + 2);
}

double sw__block_normal(const sw__block *b, int i)
{
    if (b->how.free_normals)
        return glp_get_col_prim(b->lp, b->col + i);
    return b->on[i] ? fmax(0, b->rig->pad[i].k * sink(b, i)) : 0;
}

double sw__block_gap(const sw__block *b, int i)
{
    return b->how.free_normals || b->on[i] ? sw__block_normal(b, i)
                                           : sink(b, i);
}

void sw__block_rays_read(const sw__block *b, double f[3][SW__MOST][2],
                         double *R)
{
    const sw__rig *rig = b->rig;
    memset(f, 0, 3 * sizeof f[0]);
    memset(R, 0, (size_t)rig->posts * sizeof *R);
    for (int k = 0; k < b->count; k++) {
        const double a = glp_get_col_prim(b->lp, b->first + k);
        if (a == 0)
            continue;
        const sw__ray *r = &b->ray[k];
        const sw__touch *t = r->part == SW_PART_SUPPORT ? &rig->pad[r->index]
                             : r->part == SW_PART_CLAMP ? &rig->toe[r->index]
                                                        : &rig->post[r->index];
        const double mu = t->mu * b->how.friction;
        double *to = f[r->part - SW_PART_SUPPORT][r->index];
        to[0] += a * mu * r->c;
        to[1] += a * mu * r->s;
        if (r->part == SW_PART_STOP)
            R[r->index] += a;
    }
}
