/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Joint, read: what a solved linear program says. Symbols as in joint.c.
 */
#include "hold/joint.h"

double sw__joint_value(const sw__joint *j)
{
    return glp_get_col_prim(j->block.lp, j->goal);
}

void sw__joint_motion(const sw__joint *j, double y[6])
{
    for (int i = 0; i < 6; i++)
        y[i] = glp_get_row_dual(j->block.lp, j->block.row + i);
}

/* k g . u, whatever carries */
static double sink(const sw__block *b, int i)
{
    const sw__touch *p = &b->rig->pad[i];
    return p->k * (glp_get_col_prim(b->lp, b->col) +
                   p->y * glp_get_col_prim(b->lp, b->col + 1) -
                   p->x * glp_get_col_prim(b->lp, b->col + 2));
}

double sw__block_normal(const sw__block *b, int i)
{
    if (b->how.free_normals)
        return glp_get_col_prim(b->lp, b->col + i);
    return b->on[i] ? fmax(0, sink(b, i)) : 0;
}

double sw__block_gap(const sw__block *b, int i)
{
    return b->how.free_normals ? sw__block_normal(b, i) : sink(b, i);
}

double sw__block_stop(const sw__block *b, int stop)
{
    double R = 0;
    for (int k = 0; k < b->count; k++)
        if (b->ray[k].part == SW_PART_STOP && b->ray[k].index == stop)
            R += glp_get_col_prim(b->lp, b->first + k);
    return R;
}

void sw__block_friction(const sw__block *b, int part, int index, double f[2])
{
    f[0] = f[1] = 0;
    for (int k = 0; k < b->count; k++) {
        const sw__ray *r = &b->ray[k];
        if (r->part != part || r->index != index)
            continue;
        const sw__touch *t = part == SW_PART_SUPPORT ? &b->rig->pad[index]
                             : part == SW_PART_CLAMP ? &b->rig->toe[index]
                                                     : &b->rig->post[index];
        const double a =
            glp_get_col_prim(b->lp, b->first + k) * t->mu * b->how.friction;
        f[0] += a * r->c;
        f[1] += a * r->s;
    }
}
