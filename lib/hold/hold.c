/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Hold: whether a part stays put on its fixture while it is cut.
 *
 * The part is rigid. Supports are springs that only push (bed.c) and rub;
 * clamps press with a force that does not change while the part gives way;
 * stops only push; straps also pull and drag sideways, within ranges, the worse
 * end of which counts (corner.c); the cut is a force at a point, all of which
 * grows by the same factor lambda, while the weight does not.
 *
 *   at rest   the supports balance clamps and weight, and friction and stops
 *             hold the side pulls: else the margin is 0                   (1)
 *   margin    largest lambda such that for every factor from 0 to it forces
 *             exist that keep the part in equilibrium, with normals on the
 *             springs, friction within mu N, and every support that must carry
 *             carrying (joint.c; planar.c and climb.c are faster ways where
 *             they apply; load.c where supports may lift)            (2)
 *   ceiling   the same with normals that need no springs: what no stiffness of
 *             the supports can better                                     (3)
 *   idle      the same with stops and held toes that act in the plane of the
 *             supports: they keep nothing from tipping                    (4)
 *   limit     least factor on all clamps that reaches a margin (scale.c), and
 *             least sum of clamp forces of their own (least.c)            (5)
 *
 * Of side pulls with ranges, (3) and (4) are told at the corner where (2) is
 * least. With friction less or more, the loads nearest to going (64 at most) are
 * looked at again.
 *
 * Source: statics and limit analysis. Compared with an incremental simulation
 * of springs with Coulomb friction (tests/reference/compare_hold.py): the
 * median difference is some hundredths of a per cent, with friction at held
 * toes up to some per cent high.
 *
 * Not in it: see sw_hold_not_checked().
 */
#include "hold/hold.h"

#include <string.h>

enum { CLOSE = 16, FRICTION_LOADS = 64, CORNERS = 4096 };
#define NEAR 1.01 /* of the least margin: looked at closely */

/* ---- under the cut ---- */

static void record(struct sw_hold *h, int load, const sw__corner *corner,
                   const sw__held *held)
{
    sw__verdict *v = &h->verdict[load];
    v->margin = held->value;
    v->goes = held->goes;
    v->part = held->part;
    v->index = held->index;
    v->corner = *corner;
    memcpy(v->v, held->v, sizeof v->v);
    if (held->goes == SW_GOES_REST)
        v->margin = 0;
    if (!h->kept)
        return;
    const sw__rig *rig = &h->rig;
    float *f = h->kept +
               (size_t)load * (size_t)(2 * rig->pads + rig->posts + rig->toes);
    for (int i = 0; i < rig->pads; i++)
        *f++ = (float)held->N[i];
    for (int i = 0; i < rig->posts; i++)
        *f++ = (float)held->R[i];
    for (int i = 0; i < rig->pads; i++)
        *f++ = (float)held->use[i];
    for (int i = 0; i < rig->toes; i++)
        *f++ = (float)held->grip[i];
}

static int lowest(const struct sw_hold *h)
{
    int at = 0;
    for (int i = 1; i < h->rig.loads; i++)
        if (h->verdict[i].margin < h->verdict[at].margin * (1 - 1e-9))
            at = i;
    return at;
}

/* The margin that n loads are not above. */
static double among(const struct sw_hold *h, int n)
{
    double list[FRICTION_LOADS];
    int count = 0;
    for (int i = 0; i < h->rig.loads; i++) {
        const double m = h->verdict[i].margin;
        int at = count < n ? count++ : n;
        if (at == n && !(m < list[n - 1]))
            continue;
        at = at == n ? n - 1 : at;
        for (; at > 0 && list[at - 1] > m; at--)
            list[at] = list[at - 1];
        list[at] = m;
    }
    return list[count - 1];
}

static int look(sw__guard *g, sw__job *job)
{
    struct sw_hold *h = job->h;
    sw__engine *e = &job->main;
    sw__corner corner = h->rest_corner;
    const int n = e->rig->loads;
    const int few = e->rig->ranges <= 6 && (n << e->rig->ranges) <= CORNERS;
    sw__held held;
    for (int i = 0; i < n; i++) {
        if (sw__guard_tell(g, 0.4 * i / n))
            return SW_ERR_STOPPED;
        sw__held_worst(e, i, few, n <= SW__ROUND_UP_TO, &corner, &held);
        record(h, i, &corner, &held);
    }
    const double least = h->verdict[lowest(h)].margin;
    const double close = fmax(NEAR * least, among(h, CLOSE));
    if (n > SW__ROUND_UP_TO || !few)
        for (int i = 0; i < n; i++) {
            if (!(h->verdict[i].margin <= close) ||
                h->verdict[i].goes == SW_GOES_NONE)
                continue;
            if (sw__guard_tell(g, 0.4))
                return SW_ERR_STOPPED;
            corner = h->verdict[i].corner;
            sw__held_worst(e, i, 1, 1, &corner, &held);
            record(h, i, &corner, &held);
        }
    h->worst = lowest(h);
    return SW_OK;
}

/* The contacts under the worst load, in full. */
static void keep_worst(sw__job *job)
{
    struct sw_hold *h = job->h;
    sw__held held;
    sw__rested r;
    sw__rest_at(&job->main, &h->verdict[h->worst].corner, &r);
    sw__held_under(&job->main, SW__JOINT, &r, h->rig.cut[h->worst], 1, &held);
    for (int i = 0; i < h->rig.pads; i++) {
        h->rest_force[i] = r.N[i];
        h->worst_force[i] = held.N[i];
        h->worst_use[i] = held.use[i];
    }
    for (int i = 0; i < h->rig.posts; i++)
        h->worst_force[h->rig.pads + i] = held.R[i];
    for (int i = 0; i < h->rig.toes; i++)
        h->worst_use[h->rig.pads + i] = held.grip[i];
}

/* Equations (3) and (4). */
static int look_beside(sw__guard *g, sw__job *job)
{
    struct sw_hold *h = job->h;
    const sw__rig *rig = &h->rig;
    const double close =
        fmax(NEAR * h->verdict[h->worst].margin, among(h, CLOSE));
    int high = 0;
    for (int i = 0; i < rig->posts; i++)
        high |= rig->post[i].z != 0;
    for (int i = 0; i < rig->toes; i++)
        high |= rig->toe[i].mu > 0 && rig->toe[i].z != 0;
    for (int i = 0; i < rig->loads; i++) {
        sw__verdict *v = &h->verdict[i];
        sw__held held;
        sw__rested r;
        if (sw__guard_tell(g, 0.4 + 0.3 * i / rig->loads))
            return SW_ERR_STOPPED;
        sw__rest_at(&job->main, &v->corner, &r);
        const int round = rig->loads <= SW__ROUND_UP_TO || v->margin <= close;
        sw__held_under(&job->main, round ? SW__FREE : SW__OUTSIDE, &r,
                       rig->cut[i], round, &held);
        v->ceiling = held.value;
        if (v->ceiling < v->margin && v->ceiling > v->margin * (1 - 1e-6))
            v->ceiling = v->margin; /* the same, but for rounding */
        if (high) {
            sw__held_under(&job->main, SW__FLAT, &r, rig->cut[i], round, &held);
            v->idle = held.value;
        }
    }
    return SW_OK;
}

/* The lowest margin with another friction, over the loads nearest to going. */
static int with_friction(sw__guard *g, sw__job *job, sw__engine *e,
                         double *margin)
{
    struct sw_hold *h = job->h;
    const double close = among(h, FRICTION_LOADS);
    double factor;
    int support;
    sw__corner corner;
    *margin = 0;
    if (sw__rest_state(e, &corner, &factor, &support) != SW_REST_STAYS)
        return SW_OK;
    *margin = e->top;
    for (int i = 0; i < h->rig.loads; i++) {
        if (!(h->verdict[i].margin <= close))
            continue;
        sw__held held;
        if (sw__guard_tell(g, 0.75))
            return SW_ERR_STOPPED;
        corner = h->verdict[i].corner;
        sw__held_worst(e, i, 1, 1, &corner, &held);
        *margin = fmin(*margin, held.value);
    }
    return SW_OK;
}

/* The worst load at rest moves or rocks: nothing is held. The ceiling is that
 * of its program all the same, which a cut that pushes the part back can
 * satisfy: it says what is impossible, never what holds. */
static void nothing_held(sw__job *job, const sw__rested *r)
{
    struct sw_hold *h = job->h;
    for (int i = 0; i < h->rig.loads; i++) {
        sw__verdict *v = &h->verdict[i];
        v->goes = SW_GOES_REST;
        v->corner = h->rest_corner;
        v->part = h->rest == SW_REST_LIGHT ? SW_PART_SUPPORT : 0;
        v->index = h->light;
        if (h->in.depth != SW_DEPTH_FULL)
            continue;
        sw__held held = {.value = 0};
        if (h->rest != SW_REST_LOOSE)
            sw__held_under(&job->main, SW__FREE, r, h->rig.cut[i], 1, &held);
        v->ceiling = held.value;
    }
    h->worst = 0;
    if (h->in.depth == SW_DEPTH_FULL)
        h->friction_low = h->friction_high = 0;
}

int sw__hold_work(sw__guard *g, void *with)
{
    sw__job *job = with;
    struct sw_hold *h = job->h;
    sw__rested r;
    h->rest =
        sw__rest_state(&job->main, &h->rest_corner, &h->rest_margin, &h->light);
    for (int i = 0; i < h->rig.loads; i++)
        h->verdict[i] = (sw__verdict){.ceiling = SW_UNSET, .idle = SW_UNSET};
    sw__rest_at(&job->main, &h->rest_corner, &r);
    for (int i = 0; i < h->rig.pads; i++)
        h->rest_force[i] = r.N[i];
    int status = SW_OK;
    if (h->rest != SW_REST_STAYS) {
        nothing_held(job, &r);
    } else {
        status = look(g, job);
        if (!status)
            keep_worst(job);
    }
    if (status || h->in.depth != SW_DEPTH_FULL)
        return status;
    if (h->rest == SW_REST_STAYS) {
        status = look_beside(g, job);
        if (!status)
            status = with_friction(g, job, &job->less, &h->friction_low);
        if (!status)
            status = with_friction(g, job, &job->more, &h->friction_high);
    }
    if (!status)
        status = sw__hold_scale(g, job);
    if (!status)
        status = sw__hold_least(g, job);
    return status;
}
