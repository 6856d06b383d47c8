/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Scale: least common factor on all clamps that reaches a margin.
 *
 * Symbols: S the margin wanted, t factor on every clamp's force and side pulls
 * (the weight stays), W wrenches as in joint.c.
 *
 *   S W1 + normals + friction + stops + t (clamps) = -weight             (1)
 *   0    + normals + friction + stops + t (clamps) = -weight             (2)
 *
 * Each is a linear program in t, so the t that are good for one load are an
 * interval, and so are those good for all of them: from the largest of the
 * lower ends to the least of the upper ends. With (1) and (2) every factor
 * between 0 and S is held as well. More is not always better: a toe outside
 * the supports or a side pull above mu P gets worse with t, hence the upper
 * end.
 *
 * The programs keep the supports that carry at t = 1 and the corners of the
 * side pulls that are worst there. So the margin is looked at again at the t
 * found: where a load lies below S at another corner, that is added; where
 * supports may lift and the margin is above S, t is lowered by the rule of false
 * position.
 */
#include "hold/hold.h"

#include <string.h>

enum { AGAIN = 8, STEPS = 24 };
#define MOST 1e4      /* a factor that is none */
#define GOOD 1e-6     /* of the margin */
#define TOO_GOOD 2e-4 /* of the margin: worth lowering the factor */

/* One end of the interval of one load (-1: without a cut) at a corner; 0 where
 * no factor is good. */
static int end_of(sw__job *job, int load, const sw__corner *corner, int lower,
                  int round, double *t)
{
    const struct sw_hold *h = job->h;
    sw__joint *j = sw__engine_scale(&job->main);
    sw__rested r;
    double w[6], base[6];
    sw__rest_at(&job->main, corner, &r);
    if (memcmp(r.on, j->block.on, (size_t)h->rig.pads) != 0 ||
        memcmp(r.needed, j->block.must, (size_t)h->rig.pads) != 0)
        sw__block_on(&j->block, r.on, r.needed);
    sw__rig_straps(&h->rig, corner, NULL, 1, w);
    for (int i = 0; i < 6; i++)
        base[i] = h->rig.weight[i] +
                  (load < 0 ? 0 : h->in.required_margin * h->rig.cut[load][i]);
    if (j->minimise != lower)
        sw__joint_direction(j, lower);
    sw__joint_goal(j, w, 0, MOST);
    sw__block_base(&j->block, base);
    if (sw__joint_solve(j, 1) != 1)
        return 0;
    if (round)
        sw__joint_polish(j);
    *t = sw__joint_value(j);
    return 1;
}

/* The ends over all loads; 0 where there is no factor. */
static int ends(sw__guard *g, sw__job *job, double *low, double *high,
                int *status)
{
    const struct sw_hold *h = job->h;
    const int n = h->rig.loads;
    double t;
    *low = 0;
    *high = MOST;
    for (int lower = 1; lower >= 0; lower--)
        for (int i = -1; i < n; i++) {
            const sw__corner *c =
                i < 0 ? &h->rest_corner : &h->verdict[i].corner;
            if (sw__guard_tell(g, 0.8 + 0.05 * i / n)) {
                *status = SW_ERR_STOPPED;
                return 0;
            }
            if (!end_of(job, i, c, lower, 0, &t))
                return 0;
            /* with round discs where it may be the one that counts */
            if (lower ? t > 0.98 * *low : t < 1.02 * *high && t < MOST)
                if (!end_of(job, i, c, lower, 1, &t))
                    return 0;
            if (lower)
                *low = fmax(*low, t);
            else
                *high = fmin(*high, t);
        }
    return *low <= *high * (1 + 1e-9);
}

static double try_factor(sw__job *job, double t, int *load, sw__corner *corner)
{
    double factor[SW__MOST];
    for (int c = 0; c < SW__MOST; c++)
        factor[c] = t;
    return sw__hold_try(job, factor, load, corner);
}

/* Between a factor that is too small and one that is too good. */
static double lower(sw__job *job, double b, double fb)
{
    const double S = job->h->in.required_margin;
    int load;
    sw__corner corner;
    double a = 0, fa = -S;
    fb -= S;
    for (int step = 0; step < STEPS; step++) {
        double t = b - fb * (b - a) / (fb - fa);
        if (step % 3 == 2 || !(t > a && t < b))
            t = (a + b) / 2;
        const double f = try_factor(job, t, &load, &corner) - S;
        if (f < -GOOD * S) {
            a = t;
            fa = f;
        } else {
            b = t;
            fb = f;
        }
        if (fb <= TOO_GOOD * S || b - a < 1e-6 * b)
            break;
    }
    return b;
}

int sw__hold_scale(sw__guard *g, sw__job *job)
{
    struct sw_hold *h = job->h;
    const double S = h->in.required_margin;
    double low, high, t;
    int status = SW_OK, load;
    sw__corner corner;
    if (!h->rig.toes || h->rest == SW_REST_ROCKS || h->rest == SW_REST_LOOSE)
        return SW_OK;
    if (!ends(g, job, &low, &high, &status))
        return status;
    if (low > 1e-9) {
        double m = 0;
        for (int again = 0; again < AGAIN; again++) {
            if (sw__guard_tell(g, 0.85))
                return SW_ERR_STOPPED;
            m = try_factor(job, low, &load, &corner);
            if (m >= S * (1 - GOOD))
                break;
            if (!end_of(job, m > 0 ? load : -1, &corner, 1, 1, &t) ||
                !(t > low * (1 + 1e-9)))
                return SW_OK; /* no common factor that was found reaches it */
            low = t;
        }
        if (m < S * (1 - GOOD) || low > high * (1 + 1e-9))
            return SW_OK;
        if (m > S * (1 + TOO_GOOD) && S < job->main.top)
            low = lower(job, low, m);
    }
    h->scale = low;
    h->scale_high = high >= MOST * (1 - 1e-9) ? SW_UNSET : high;
    return SW_OK;
}
