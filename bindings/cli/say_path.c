/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say path: on which side of its path a mill has the part, and which way it
 * pushes it.
 */
#include "job.h"

#include <math.h>

/* Way of the mean push on the part at a point, whole degrees; SW_UNSET past the
 * last. */
static double push_at(const sw_fixture *f, const sw_job_operation_out *o,
                      int point)
{
    sw_load_in l;
    if (point >= (int)o->points ||
        sw_fixture_load(f, point * (int)o->samples, &l, NULL))
        return SW_UNSET;
    const double deg =
        round(atan2(l.force_y_N, l.force_x_N) * 57.29577951308232);
    return deg < 0 ? deg + 360 : deg < 360 ? deg : 0;
}

/* "toward -y from P1, toward +y from P16", or against the feed where it has
 * many ways. */
static void say_pushes(page *p, const sw_fixture *f,
                       const sw_job_operation_out *o)
{
    enum { MOST = 6 };
    int runs = 0;
    for (int i = 0; i < (int)o->points && runs <= MOST; i++)
        runs += i == 0 || push_at(f, o, i) != push_at(f, o, i - 1);
    if (runs > MOST) {
        page_number(p, round(fabs(o->push_deg)), 4);
        page_add(p, KEEP "deg ");
        page_add(p, o->push_deg < 0 ? "to the right of the feed"
                                    : "to the left of the feed");
        return;
    }
    for (int i = 0; i < (int)o->points; i++) {
        if (i && push_at(f, o, i) == push_at(f, o, i - 1))
            continue;
        page_add(p, i ? ", from P" : "");
        if (i)
            page_number(p, i + 1, 6);
        page_add(p, i ? " on toward " : "toward ");
        say_direction(p, push_at(f, o, i));
    }
}

/* Which side the tool is on is told by nothing but the way of the path: said,
 * so that a path the wrong way round is seen. */
void say_job_milling(page *p, const sw_job *job, int index)
{
    const sw_job_operation_out out = sw_job_operation(job, index, NULL);
    const sw_job_operation_out *o = &out;
    static const char *const mode[] = {
        [SW_MILL_SLOT] = "slot: the cutter is in the part on both sides",
        [SW_MILL_FACE] = "face: the cutter goes over the part"};
    sw_fixture *f = sw_job_fixture(job, index, NULL);
    if (!f || !is_known(o->push_deg) || !o->milling_mode) {
        sw_fixture_free(f);
        return;
    }
    if (o->milling_mode == SW_MILL_SIDE)
        page_add(p, o->cut_way == SW_CUT_CLIMB
                        ? "climb: the material lies to the right of the path, "
                          "seen along the feed (a path the other way round "
                          "has it on the other side)"
                        : "up: the material lies to the left of the path, "
                          "seen along the feed (a path the other way round "
                          "has it on the other side)");
    else
        page_add(p, mode[o->milling_mode]);
    page_add(p, "; in the mean the cut pushes the part ");
    say_pushes(p, f, o);
    sw_fixture_free(f);
}
