/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Engine: a rig under study, with the linear programs that are kept from cut to
 * cut.
 */
#include "hold/engine.h"

#include "hold/climb.h"
#include "hold/planar.h"

#include <stdlib.h>
#include <string.h>

int sw__engine_make(sw__engine *e, const sw__rig *rig, const sw_hold_in *in,
                    double friction, sw_error *err)
{
    memset(e, 0, sizeof *e);
    e->rig = rig;
    e->friction = friction;
    e->top = in->largest_margin;
    e->sides = (int)in->disc_sides;
    e->planar[SW__JOINT] = sw__is_planar(rig, 0);
    e->planar[SW__FLAT] = sw__is_planar(rig, 1);
    e->climbs = sw__can_climb(rig);
    /* a corner of the discs toward the largest cut: turns with the fixture */
    double most = 0;
    for (int i = 0; i < rig->loads; i++) {
        const double size = hypot(rig->cut[i][0], rig->cut[i][1]);
        if (size > most * (1 + 1e-9)) {
            most = size;
            e->turn = atan2(rig->cut[i][1], rig->cut[i][0]);
        }
    }
    for (int k = 0; k <= SW__KINDS; k++) {
        const sw__block_how how = {.sides = e->sides, .friction = friction};
        const int rays = sw__block_rays(rig, &how);
        e->ray[k] = malloc((size_t)(rays + 1) * sizeof *e->ray[k]);
        if (!e->ray[k]) {
            sw__engine_drop(e);
            return sw__fail_memory(err);
        }
        sw__joint *j = k < SW__KINDS ? &e->joint[k] : &e->scale;
        j->block.ray = e->ray[k];
        j->block.room = rays;
    }
    return SW_OK;
}

void sw__engine_drop(sw__engine *e)
{
    for (int k = 0; k <= SW__KINDS; k++)
        free(e->ray[k]);
    memset(e, 0, sizeof *e);
}

void sw__engine_renew(sw__engine *e)
{
    for (int k = 0; k < SW__KINDS; k++)
        sw__joint_end(&e->joint[k]);
    sw__joint_end(&e->scale);
}

sw__joint *sw__engine_joint(sw__engine *e, int kind)
{
    sw__joint *j = &e->joint[kind];
    const double outside = kind == SW__OUTSIDE ? cos(SW__PI / e->sides) : 1;
    const sw__block_how how = {.free_normals = kind >= SW__FREE,
                               .flat = kind == SW__FLAT,
                               .sides = e->sides,
                               .turn = e->turn,
                               .friction = e->friction / outside};
    if (!j->block.lp)
        sw__joint_make(j, e->rig, &how, 0);
    return j;
}

sw__joint *sw__engine_scale(sw__engine *e)
{
    const sw__block_how how = {
        .sides = e->sides, .turn = e->turn, .friction = e->friction};
    if (!e->scale.block.lp)
        sw__joint_make(&e->scale, e->rig, &how, 1);
    return &e->scale;
}
