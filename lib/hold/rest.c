/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Rest: whether a part stays where it is before the cut, equation (1) of
 * hold.c.
 */
#include "hold/hold.h"

#include "hold/bed.h"

static int is_pressed(const sw__rig *rig)
{
    double down = -rig->weight[2];
    for (int c = 0; c < rig->toes; c++)
        down += rig->toe[c].P;
    return down > 0;
}

/* Whether a support carries too little at any corner that is looked at. */
static int is_light(sw__engine *e, const sw__corner *first, int *support)
{
    const int n = e->rig->ranges;
    const uint64_t all = n <= 6 ? (uint64_t)1 << n : 12;
    sw__rested r;
    sw__rest_at(e, first, &r);
    if (sw__is_light(e, &r, support))
        return 1;
    for (uint64_t k = 0; k < all && n; k++) {
        sw__corner c = {{k, 0}};
        double y[6] = {0};
        y[k / 2 % 6] = k % 2 ? -1 : 1;
        if (n > 6)
            c = sw__corner_worst(e->rig, y);
        sw__rest_at(e, &c, &r);
        if (sw__is_light(e, &r, support))
            return 1;
    }
    return 0;
}

int sw__rest_state(sw__engine *e, sw__corner *corner, double *factor,
                   int *support)
{
    sw__rested r;
    sw__held held;
    *corner = (sw__corner){{0, 0}};
    *factor = SW_UNSET;
    *support = 0;
    if (!is_pressed(e->rig))
        return SW_REST_LOOSE;
    double w[6];
    sw__rig_straps(e->rig, corner, NULL, 0, w);
    for (int i = 0; i < 6; i++)
        w[i] += e->rig->weight[i];
    if (!sw__bed(e->rig, w, r.N))
        return SW_REST_ROCKS;
    if (sw__rig_pulled(e->rig)) {
        sw__held_worst(e, -1, 1, 1, corner, &held);
        *factor = held.value;
        if (held.value < 1 - 1e-9)
            return SW_REST_MOVES;
    }
    return is_light(e, corner, support) ? SW_REST_LIGHT : SW_REST_STAYS;
}
