/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Clamp place: what is beneath a clamp, and where its stud stands.
 *
 * A clamp without a support near it bends the part, which is rigid here. How
 * far away is far: three times the thickness, common practice, no source.
 *
 * Not in it: how far the part bends, holes through it.
 */
#include "job/clamp.h"

#define FAR_THICKNESSES 3
#define FULL_TURN (2 * SW__PI)

/* Whether a place has no supports on more than half a turn around it. */
static int outside_supports(const sw_job *job, double x, double y)
{
    double angle[SW__JOB_CONTACTS];
    const int n = job->supports;
    for (int i = 0; i < n; i++) {
        const sw_support_in *s = &job->support[i];
        if (hypot(s->x_mm - x, s->y_mm - y) < 1e-9)
            return 0;
        angle[i] = atan2(s->y_mm - y, s->x_mm - x);
    }
    for (int i = 0; i < n && n > 1; i++) {
        double next = FULL_TURN;
        for (int k = 0; k < n; k++) {
            const double gap = angle[k] - angle[i];
            if (k != i)
                next = fmin(next, gap < 0 ? gap + FULL_TURN : gap);
        }
        if (next > FULL_TURN / 2 + 1e-9)
            return 1;
    }
    return n < 2;
}

int sw__clamp_place(sw__clamp_draft *d, sw_job_clamp_out *o)
{
    sw_job *job = d->job;
    const double t = job->about.thickness_mm;
    double gap = HUGE_VAL;
    int status = SW_OK;
    for (int i = 0; i < job->supports; i++)
        gap = fmin(gap, hypot(job->support[i].x_mm - o->x_mm,
                              job->support[i].y_mm - o->y_mm));
    if (job->supports)
        o->support_gap_mm = gap;
    if (o->clamp_kind != SW_CLAMP_VACUUM && job->supports &&
        gap > FAR_THICKNESSES * t) {
        char words[SW__JOB_REMARK];
        sw__line line = sw__line_start(words, sizeof words);
        sw__line_add(&line, "no support within ");
        sw__add_length(&line, gap);
        sw__line_add(&line, " of where it presses, ");
        sw__line_add_number(&line, floor(gap / t));
        sw__line_add(&line, " times the part's thickness: the part bends "
                            "under it, and how far is not checked");
        status = sw__job_remark(job, o->name, words, d->r->err);
    }
    if (!status && job->supports && outside_supports(job, o->x_mm, o->y_mm))
        status = sw__job_remark(job, o->name,
                                "it presses outside of the supports: the part "
                                "rocks unless something holds it down",
                                d->r->err);
    if (status || !sw__is_set(o->stud_mm) || !sw__is_set(o->toward_deg))
        return status;
    const double deg = SW__RAD(o->toward_deg);
    if (!sw__outline_holds(&job->outline, o->x_mm + o->stud_mm * cos(deg),
                           o->y_mm + o->stud_mm * sin(deg)))
        return SW_OK;
    return sw__job_remark(job, o->name,
                          "its stud stands within the part's outline: turn "
                          "toward stud round, unless it goes through a hole of "
                          "the part",
                          d->r->err);
}

/* ---- a seal ---- */

/* Whether a box about a place lies within the outline. */
static int box_fits(const sw__outline *o, double x, double y, double length,
                    double width)
{
    enum { STEPS = 32 };
    for (int i = 0; i < STEPS; i++) {
        const double u = length * ((double)i / STEPS - 0.5) * (1 - 1e-9);
        const double v = width * ((double)i / STEPS - 0.5) * (1 - 1e-9);
        const double a = length / 2 * (1 - 1e-9), b = width / 2 * (1 - 1e-9);
        if (!sw__outline_holds(o, x + u, y - b) ||
            !sw__outline_holds(o, x - u, y + b) ||
            !sw__outline_holds(o, x - a, y - v) ||
            !sw__outline_holds(o, x + a, y + v))
            return 0;
    }
    for (int i = 0; i < o->corners; i++)
        if (fabs(o->x[i] - x) < length / 2 - 1e-6 &&
            fabs(o->y[i] - y) < width / 2 - 1e-6)
            return 0;
    return 1;
}

int sw__clamp_seal(sw__clamp_draft *d, const sw_vacuum_in *full)
{
    const sw__outline *o = &d->job->outline;
    const double l = full->seal_length_mm, w = full->seal_width_mm;
    const double x = d->at[0], y = d->at[1];
    const int box = sw__is_set(l) && sw__is_set(w);
    char message[200];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, d->in.name);
    if (full->seal_area_mm2 > o->area_mm2 * (1 + 1e-9)) {
        sw__line_add(&line, " sucks air: the area within its seal is larger "
                            "than the part");
        return sw__fail_key(d->r, d->map, SW_ERR_CONFLICT, "seal area",
                            message);
    }
    if (!box || box_fits(o, x, y, l, w) || box_fits(o, x, y, w, l))
        return SW_OK;
    sw__line_add(&line, " sucks air: its seal, in the middle of its place, "
                        "reaches past the part's outline");
    return sw__fail_at(d->r, sw__child(d->r, d->map, "place"), SW_ERR_CONFLICT,
                       "place", message);
}
