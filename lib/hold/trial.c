/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Trial: the margin with other clamp forces.
 */
#include "hold/hold.h"

#define NEAR 1.01 /* of the least margin: looked at closely */

/* The lowest margin of the rig on trial. Polygons first, which are at most half
 * a per cent low where no side pull is near the friction; then round discs for
 * those that may be the lowest. */
static double lowest_of(sw__job *job, int *load, sw__corner *corner)
{
    sw__engine *e = &job->trial;
    const sw__rig *rig = e->rig;
    const int n = rig->loads, few = n <= SW__ROUND_UP_TO;
    sw__corner at = *corner;
    sw__held held;
    double least = e->top, rough = e->top;
    for (int i = 0; i < n; i++) {
        if (job->h->rest == SW_REST_STAYS)
            at = job->h->verdict[i].corner;
        sw__held_worst(e, i, few && rig->ranges <= 6, few, &at, &held);
        job->rough[i] = held.value;
        job->at[i] = at;
        rough = fmin(rough, held.value);
    }
    for (int i = 0; i < n; i++) {
        at = job->at[i];
        held.value = job->rough[i];
        if ((!few || rig->ranges > 6) && held.value <= rough * NEAR)
            sw__held_worst(e, i, 1, 1, &at, &held);
        if (held.value < least * (1 - 1e-12)) {
            least = held.value;
            *load = i;
            *corner = at;
        }
    }
    return least;
}

double sw__hold_try(sw__job *job, const double *factor, int *load,
                    sw__corner *corner)
{
    sw__rig *rig = &job->tried;
    const sw__rig *was = &job->h->rig;
    *rig = *was;
    for (int c = 0; c < rig->toes; c++) {
        rig->toe[c].P *= factor[c];
        for (int i = 0; i < 6; i++) {
            rig->press[c][i] *= factor[c];
            rig->low[c][i] *= factor[c];
        }
    }
    for (int r = 0; r < rig->ranges; r++)
        for (int i = 0; i < 6; i++)
            rig->range[r][i] *= factor[rig->of[r]];
    sw__engine *e = &job->trial;
    sw__engine_renew(e);
    double f;
    int support;
    *load = job->h->worst;
    if (sw__rest_state(e, corner, &f, &support) != SW_REST_STAYS)
        return 0;
    return lowest_of(job, load, corner);
}
