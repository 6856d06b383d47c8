/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Corner: side pulls and drags of the straps that are known as ranges.
 *
 * On a fixed set of supports the margin is the value of a linear program and
 * so concave in its right side: over a box of side pulls it is least at a
 * corner. Up to 64 corners are tried one by one. Beyond, a search: the dual
 * motion y bounds the margin at any other corner from above, by what it is here
 * less y . dW, so the corner where that is least comes next, until it is the
 * same; from several starts. That is a search: it ends at a corner which no
 * single prediction betters, and could miss the very worst.
 */
#include "hold/engine.h"

#include <string.h>

enum { ALL_UP_TO = 6, MOVES = 12 };

sw__corner sw__corner_worst(const sw__rig *rig, const double y[6])
{
    sw__corner c = {{0, 0}};
    for (int r = 0; r < rig->ranges; r++)
        if (sw__dot6(y, rig->range[r]) > 0)
            c.bit[r / 64] |= (uint64_t)1 << (r % 64);
    return c;
}

int sw__corner_same(const sw__corner *a, const sw__corner *b)
{
    return a->bit[0] == b->bit[0] && a->bit[1] == b->bit[1];
}

static void look(sw__engine *e, int load, const sw__corner *c, int round,
                 sw__held *h)
{
    sw__rested r;
    if (load < 0) {
        sw__held_at_rest(e, c, h);
        return;
    }
    sw__rest_at(e, c, &r);
    sw__held_under(e, SW__JOINT, &r, e->rig->cut[load], round, h);
}

/* From one corner to the next as the motion says. */
static void descend(sw__engine *e, int load, int round, sw__corner *at,
                    sw__held *h)
{
    sw__held next;
    look(e, load, at, round, h);
    for (int move = 0; move < MOVES; move++) {
        const sw__corner to = sw__corner_worst(e->rig, h->y);
        if (sw__corner_same(&to, at))
            return;
        look(e, load, &to, round, &next);
        if (!(next.value < h->value))
            return;
        *at = to;
        *h = next;
    }
}

static void take(const sw__held *h, const sw__corner *c, sw__held *best,
                 sw__corner *at)
{
    if (h->value < best->value) {
        *best = *h;
        *at = *c;
    }
}

/* A motion to start the search from: along, across, turning, tipping, the
 * cut's own. */
static void motion(const sw__rig *rig, int load, int k, double y[6])
{
    memset(y, 0, 6 * sizeof *y);
    if (k < 12)
        y[k / 2] = k % 2 ? -1 : 1;
    else if (load >= 0)
        memcpy(y, rig->cut[load], 6 * sizeof *y);
}

void sw__held_worst(sw__engine *e, int load, int effort, int round,
                    sw__corner *start, sw__held *h)
{
    const sw__rig *rig = e->rig;
    sw__corner at = *start;
    sw__held other;
    if (!rig->ranges) {
        look(e, load, start, round, h);
        return;
    }
    descend(e, load, round, &at, h);
    *start = at;
    if (!effort)
        return;
    if (rig->ranges <= ALL_UP_TO) {
        for (uint64_t c = 0; c < (uint64_t)1 << rig->ranges; c++) {
            at = (sw__corner){{c, 0}};
            look(e, load, &at, round, &other);
            take(&other, &at, h, start);
        }
        return;
    }
    for (int k = 0; k < 13; k++) {
        double y[6];
        motion(rig, load, k, y);
        at = sw__corner_worst(rig, y);
        descend(e, load, round, &at, &other);
        take(&other, &at, h, start);
    }
}
