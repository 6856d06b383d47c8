/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Load: by how much one cut may grow.
 *
 * With a fixed set of supports that carry, the factors at which the part is in
 * equilibrium are one interval (planar.c, joint.c), and 0 is in it when the
 * part rests, so its upper end is the margin. A support that must carry ends it
 * by lifting. One that need not is dropped when its load is gone, and one whose
 * gap has closed is added; then the factor goes on from where it was, until
 * nothing changes or a set comes back. It is never bisected: across such a
 * change the part may be held again at a factor beyond one that it is not
 * (three of 1877 random fixtures), and the first end counts.
 */
#include "hold/engine.h"

#include "hold/bed.h"
#include "hold/climb.h"
#include "hold/planar.h"

#include <string.h>

enum { SETS = 40 };
#define TOUCH 1e-8     /* of the rig's force: no load, no gap */
#define NOTHING 1e-10  /* of a cut as large as the rig's force */
#define NO_PULL 1e-11  /* of the rig's force */
#define ROUNDING 1e-10 /* of the largest part of a wrench */

int sw__rest_at(const sw__engine *e, const sw__corner *corner, sw__rested *r)
{
    const sw__rig *rig = e->rig;
    double w[6];
    r->corner = *corner;
    sw__rig_straps(rig, corner, NULL, 1, r->w0);
    sw__rig_straps(rig, corner, NULL, 0, w);
    for (int i = 0; i < 6; i++) {
        r->w0[i] += rig->weight[i];
        w[i] += rig->weight[i];
    }
    int balanced = 1;
    /* side pulls that tip a part over its supports may be kept by stops */
    if (!sw__bed(rig, r->w0, r->N))
        balanced = sw__bed(rig, w, r->N);
    sw__bed_on(rig, r->N, r->on);
    for (int i = 0; i < rig->pads; i++) {
        const int must = rig->pad[i].needed == SW_NEEDED_YES;
        r->needed[i] =
            must || (rig->pad[i].needed == SW_NEEDED_REST && r->on[i]);
        r->on[i] = must || r->on[i];
    }
    return balanced;
}

/* How the part goes, from the motion and the supports. */
static void classify(const sw__engine *e, const sw__rested *r, double top,
                     sw__held *h)
{
    const sw__rig *rig = e->rig;
    h->part = h->index = 0;
    if (h->value >= top * (1 - 1e-9)) {
        h->goes = SW_GOES_NONE;
        return;
    }
    double rest = 0;
    for (int i = 0; i < rig->pads; i++) {
        const sw__touch *p = &rig->pad[i];
        if (!r->needed[i] || h->N[i] > p->least + TOUCH || r->N[i] < rest)
            continue;
        rest = r->N[i];
        h->goes = SW_GOES_LIFT;
        h->part = SW_PART_SUPPORT;
        h->index = i;
    }
    if (h->part)
        return;
    double fastest = 0, away = 0;
    for (int i = 0; i < rig->pads; i++) {
        const double speed = hypot(h->v[0] - h->v[2] * rig->pad[i].y,
                                   h->v[1] + h->v[2] * rig->pad[i].x);
        if (h->N[i] > 0 && rig->pad[i].mu > 0 && speed > fastest * (1 + 1e-9)) {
            fastest = speed;
            h->part = SW_PART_SUPPORT;
            h->index = i;
        }
    }
    for (int i = 0; i < rig->posts && !h->part; i++) {
        const sw__touch *t = &rig->post[i];
        const double leave = t->nx * (h->v[0] - h->v[2] * t->y) +
                             t->ny * (h->v[1] + h->v[2] * t->x);
        if (leave > away + 1e-9) {
            away = leave;
            h->index = i;
        }
    }
    if (away > 0)
        h->part = SW_PART_STOP;
    const double turning = fabs(h->y[3]) + fabs(h->y[4]);
    const double sliding = fabs(h->v[0]) + fabs(h->v[1]) + fabs(h->v[2]);
    h->goes =
        sliding > 1e-7 * turning && sliding > 0 ? SW_GOES_SLIDE : SW_GOES_TIP;
    if (h->goes == SW_GOES_SLIDE)
        return;
    /* the support that the tipping part leaves fastest */
    double lift = 0;
    h->part = h->index = 0;
    for (int i = 0; i < rig->pads; i++) {
        const double up =
            h->y[2] + rig->pad[i].y * h->y[3] - rig->pad[i].x * h->y[4];
        if (up > lift + 1e-9 * fabs(up)) {
            lift = up;
            h->part = SW_PART_SUPPORT;
            h->index = i;
        }
    }
}

/* The methods of our own, where they hold for all of the way. */
static int by_own(const sw__engine *e, int kind, const sw__rested *r,
                  const double w1[6], double top, sw__held *h)
{
    sw__planar_out p;
    const sw__rig *rig = e->rig;
    int found = kind < SW__FREE && e->planar[kind] && !e->no_planar &&
                sw__planar(rig, e->friction, r->on, r->w0, w1, top, &p);
    if (!found)
        found = kind < SW__FREE && e->climbs && !e->no_climb &&
                sw__climb(rig, e->friction, kind == SW__FLAT, r->on, r->w0, w1,
                          top, &p);
    if (!found || (p.lift >= 0 && !r->needed[p.lift]))
        return 0;
    /* one that need not carry is down to nothing, or a gap has closed */
    for (int i = 0; i < rig->pads; i++)
        if (r->on[i] ? !r->needed[i] && p.N[i] <= TOUCH
                     : p.gap[i] > -TOUCH && p.gap[i] != 0)
            return 0;
    h->value = p.value;
    h->round = 1;
    memcpy(h->v, p.v, sizeof h->v);
    memcpy(h->y, p.y, sizeof h->y);
    memcpy(h->N, p.N, sizeof h->N);
    memcpy(h->R, p.R, sizeof h->R);
    memcpy(h->use, p.use, sizeof h->use);
    memcpy(h->grip, p.grip, sizeof h->grip);
    if (p.lift >= 0) {
        h->goes = SW_GOES_LIFT;
        h->part = SW_PART_SUPPORT;
        h->index = p.lift;
    } else {
        classify(e, r, top, h);
    }
    return 1;
}

static double use_of(const double f[2], double most)
{
    return most > 0 ? fmin(1, hypot(f[0], f[1]) / most) : 0;
}

/* The program's answer. */
static void read_joint(const sw__engine *e, const sw__joint *j, sw__held *h)
{
    const sw__rig *rig = e->rig;
    double f[3][SW__MOST][2];
    h->value = sw__joint_value(j);
    sw__joint_motion(j, h->y);
    h->v[0] = h->y[0];
    h->v[1] = h->y[1];
    h->v[2] = h->y[5];
    sw__block_rays_read(&j->block, f, h->R);
    for (int i = 0; i < rig->pads; i++) {
        h->N[i] = sw__block_normal(&j->block, i);
        h->use[i] = use_of(f[0][i], rig->pad[i].mu * e->friction * h->N[i]);
    }
    for (int i = 0; i < rig->toes; i++)
        h->grip[i] = use_of(f[SW_PART_CLAMP - SW_PART_SUPPORT][i],
                            rig->toe[i].mu * e->friction * rig->toe[i].P);
}

/* Supports to drop and to add; returns whether any. */
static int change_set(const sw__engine *e, const sw__rested *r,
                      const sw__joint *j, char *on)
{
    int changed = 0;
    for (int i = 0; i < e->rig->pads; i++) {
        const double gap = sw__block_gap(&j->block, i);
        if (on[i] && !r->needed[i] && gap <= TOUCH) {
            on[i] = 0;
            changed = 1;
        } else if (!on[i] && gap >= -TOUCH) {
            on[i] = 1;
            changed = 1;
        }
    }
    return changed;
}

static uint64_t mask_of(const char *on, int n)
{
    uint64_t mask = 0;
    for (int i = 0; i < n; i++)
        mask |= (uint64_t)(on[i] != 0) << i;
    return mask;
}

/* From set to set; 0 where the part is not at rest without the cut. */
static int march(sw__engine *e, int kind, const sw__rested *r,
                 const double w1[6], double top, int round, sw__held *h)
{
    sw__joint *j = sw__engine_joint(e, kind);
    uint64_t seen[SETS];
    char on[SW__MOST] = {0};
    const size_t pads = (size_t)e->rig->pads;
    double low = 0;
    memcpy(on, r->on, pads);
    if (kind >= SW__FREE)
        memset(on, 1, pads);
    double w0[6], largest = 0;
    for (int i = 0; i < 6; i++)
        largest = fmax(largest, fabs(r->w0[i]));
    for (int i = 0; i < 6; i++)
        w0[i] = fabs(r->w0[i]) > ROUNDING * largest ? r->w0[i] : 0;
    sw__block_base(&j->block, w0);
    int found = 0;
    for (int set = 0; set < SETS; set++) {
        if (memcmp(on, j->block.on, pads) != 0 ||
            memcmp(r->needed, j->block.must, pads) != 0)
            sw__block_on(&j->block, on, r->needed);
        sw__joint_goal(j, w1, low, top);
        if (sw__joint_solve(j, 0) != 1)
            break;
        /* a margin of nothing is asked twice: see sw__joint_again() */
        if (sw__joint_value(j) <= low + NOTHING && !sw__joint_again(j))
            break;
        if (round)
            h->round = sw__joint_polish(j);
        if (found && sw__joint_value(j) < h->value)
            break;
        read_joint(e, j, h);
        found = 1;
        seen[set] = mask_of(on, e->rig->pads);
        if (kind >= SW__FREE || !change_set(e, r, j, on))
            break;
        const uint64_t next = mask_of(on, e->rig->pads);
        int known = 0;
        for (int s = 0; s <= set; s++)
            known |= seen[s] == next;
        if (known)
            break;
        low = h->value * (1 - 1e-9);
    }
    return found;
}

void sw__held_under(sw__engine *e, int kind, const sw__rested *r,
                    const double w1[6], int round, sw__held *h)
{
    double unit = 0, cut[6];
    memset(h, 0, sizeof *h);
    for (int i = 0; i < 6; i++)
        unit = fmax(unit, fabs(w1[i]));
    if (!(unit > 0)) {
        h->value = e->top;
        h->goes = SW_GOES_NONE;
        memcpy(h->N, r->N, sizeof h->N);
        return;
    }
    /* what rounding left of parts that cancel would be a column of its own to
     * the program, and the simplex method may stop in it */
    for (int i = 0; i < 6; i++)
        cut[i] = fabs(w1[i]) > ROUNDING * unit ? w1[i] / unit : 0;
    const double top = e->top * unit;
    if (!by_own(e, kind, r, cut, top, h)) {
        memset(h, 0, sizeof *h);
        if (march(e, kind, r, cut, top, round, h)) {
            classify(e, r, top, h);
        } else {
            h->goes = SW_GOES_REST;
        }
    }
    /* what is left of rounding is nothing */
    h->value = h->goes == SW_GOES_NONE ? e->top
               : h->value > NOTHING    ? h->value / unit
                                       : 0;
    for (int i = 0; i < 6; i++)
        h->y[i] /= unit;
}

void sw__held_at_rest(sw__engine *e, const sw__corner *corner, sw__held *h)
{
    const sw__rig *rig = e->rig;
    sw__rested r;
    double pulls[6];
    sw__rig_straps(rig, corner, NULL, 0, r.w0);
    sw__rig_straps(rig, corner, NULL, 1, pulls);
    for (int i = 0; i < 6; i++) {
        pulls[i] -= r.w0[i];
        if (fabs(pulls[i]) < NO_PULL)
            pulls[i] = 0; /* straps that cancel, but for rounding */
        r.w0[i] += rig->weight[i];
    }
    r.corner = *corner;
    sw__bed(rig, r.w0, r.N);
    sw__bed_on(rig, r.N, r.on);
    memset(r.needed, 0, sizeof r.needed);
    sw__held_under(e, SW__JOINT, &r, pulls, 1, h);
}

int sw__is_light(sw__engine *e, const sw__rested *r, int *support)
{
    const sw__rig *rig = e->rig;
    int asked = 0;
    double worst = 0;
    *support = 0;
    for (int i = 0; i < rig->pads; i++) {
        if (!r->needed[i])
            continue;
        asked |= rig->pad[i].least > 0 || rig->pad[i].needed == SW_NEEDED_YES;
        const double lack = rig->pad[i].least - r->N[i];
        if (lack > worst || (r->N[i] <= 0 && worst == 0)) {
            worst = lack;
            *support = i;
        }
    }
    if (!asked)
        return 0;
    static const double nothing[6] = {0};
    sw__joint *j = sw__engine_joint(e, SW__JOINT);
    sw__block_on(&j->block, r->on, r->needed);
    sw__block_base(&j->block, r->w0);
    sw__joint_goal(j, nothing, 0, 0);
    return sw__joint_solve(j, 1) != 1;
}
