/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Joint, polish: round discs. Each round adds the corner that the present dual
 * motion wants at every contact, until none would bring more.
 */
#include "hold/joint.h"

enum { ROUNDS = 30 };

/* Drops the corners that were added for earlier questions. */
static void prune(sw__block *b)
{
    const int extra = b->count - b->plain;
    if (extra <= 0)
        return;
    int list[1 + SW__MOST * 2 * SW__EXTRA];
    for (int k = 0; k < extra; k++)
        list[k + 1] = b->first + b->plain + k;
    glp_del_cols(b->lp, extra, list);
    b->count = b->plain;
    glp_adv_basis(b->lp, 0);
}

/* Adds the corner that the motion wants at one contact, if it brings more. */
static int add_corner(sw__block *b, int part, int index, int row, double most,
                      double sign, const double y[6], double floor)
{
    sw__ray r = {part, index, 0, 0};
    const sw__touch t = sw__block_place(b, &r);
    const double vx = y[0] + t.z * y[4] - t.y * y[5];
    const double vy = y[1] - t.z * y[3] + t.x * y[5];
    const double speed = hypot(vx, vy);
    const double price = sign * glp_get_row_dual(b->lp, row);
    const double gain = t.mu * b->how.friction * speed - price;
    if (!(gain * most > floor) || b->count >= b->room)
        return 0;
    r.c = -vx / speed;
    r.s = -vy / speed;
    const int col = glp_add_cols(b->lp, 1);
    b->ray[b->count] = r;
    sw__block_set_ray(b, b->count);
    b->count++;
    glp_set_col_bnds(b->lp, col, GLP_LO, 0, 0);
    return 1;
}

int sw__joint_polish(sw__joint *j)
{
    sw__block *b = &j->block;
    const sw__rig *rig = b->rig;
    const double sign = j->minimise ? -1 : 1;
    if (b->count - b->plain > (b->room - b->plain) / 2) {
        prune(b);
        if (sw__joint_solve(j, 0) != 1)
            return 0;
    }
    for (int round = 0; round < ROUNDS; round++) {
        double y[6];
        int added = 0;
        sw__joint_motion(j, y);
        for (int i = 0; i < 6; i++)
            y[i] *= j->minimise ? -1 : 1;
        const double floor = 1e-9 * fmax(sw__joint_value(j), 1e-3);
        for (int i = 0; i < rig->pads; i++)
            if (b->disc[i] && b->on[i])
                added += add_corner(b, SW_PART_SUPPORT, i, b->disc[i],
                                    sw__block_normal(b, i), sign, y, floor);
        for (int c = 0; c < rig->toes; c++)
            if (b->grip[c])
                added += add_corner(b, SW_PART_CLAMP, c, b->grip[c],
                                    rig->toe[c].P *
                                        (j->scale ? sw__joint_value(j) : 1),
                                    sign, y, floor);
        if (!added)
            return 1;
        if (sw__joint_solve(j, 0) != 1)
            return 0;
    }
    return 1;
}
