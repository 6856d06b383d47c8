/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Job rocks: whether one clamp rocks the part when it presses harder than the
 * others.
 *
 * Holding is judged with every clamp at the low end of its spread. A clamp that
 * unloads a support, because it stands outside of them, is worse at its high
 * end while the others are at their low ones: each clamp is tried so. Several
 * at once are not; two clamps outside the same side of the supports add up.
 */
#include "hold/fixture.h"
#include "job/job.h"

#include <strapwise/hold.h>

#include <string.h>

/* Whether the part rocks as the fixture stands; on an error too, which the
 * judgement of the whole fixture tells. */
static int rocks(const sw_fixture *f)
{
    sw_hold_in how;
    sw_hold_defaults(&how);
    how.depth = SW_DEPTH_MARGIN;
    sw_hold *h = sw_hold_new(f, &how, NULL, NULL, NULL);
    if (!h)
        return 0;
    const int rest = sw_hold_total(h, NULL).rest;
    sw_hold_free(h);
    return rest == SW_REST_ROCKS;
}

int sw_job_rocks(const sw_job *job, int operation, sw_error *err)
{
    sw_fixture *f = sw_job_fixture(job, operation, err);
    int found = -1;
    if (!f)
        return -1;
    const int loads = f->loads;
    f->loads = loads > 1 ? 1 : loads; /* the state at rest alone is asked */
    for (int i = 0; i < f->clamps && found < 0; i++) {
        for (int k = 0; found < 0; k++) {
            const sw_job_clamp_out c = sw_job_clamp(job, k, NULL);
            if (c.status)
                break;
            if (strcmp(c.name, f->clamp[i].name) != 0 ||
                !(c.force_high_N > f->clamp[i].force_N))
                continue;
            const double low = f->clamp[i].force_N;
            f->clamp[i].force_N = c.force_high_N;
            if (rocks(f))
                found = k;
            f->clamp[i].force_N = low;
        }
    }
    f->loads = loads;
    sw_fixture_free(f);
    return found;
}
