/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tilt curve: asks the same strap (lib/clamp/strap.c) again and again with
 * another tilt and seat; there is no second model.
 *
 * What would follow from the heights by default is fixed first, part height
 * and stud length as they are for this strap. The heel goes with the tilt, and
 * a jack screw's give with the heel.
 */
#include "sheet/tilt_curve.h"

#include "clamp/strap.h"

#include <string.h>

#define USUAL_DEG 6
#define MOST_DEG 20

static sw__tilt_point point_of(const sw_strap_out *s, double tilt_deg)
{
    sw__tilt_point p;
    memset(&p, 0, sizeof p);
    p.tilt_deg = tilt_deg;
    p.known = !s->status;
    if (p.known) {
        p.pull_N = s->side_pull_N;
        p.direction = s->pull_direction;
        p.error_pct = s->toe_force_error_pct;
        p.slides = (s->warnings & SW_WARN_TOE_SLIDES) != 0;
        p.past = (s->warnings & SW_WARN_SEAT_ANGLE) != 0;
        p.yields = (s->warnings & SW_WARN_STUD_YIELDS) != 0;
    }
    return p;
}

static sw__tilt_point ask(sw_strap_in *q, int which, double tilt_deg)
{
    q->seat = which == SW__TILT_FLAT ? SW_SEAT_FLAT : SW_SEAT_SPHERICAL;
    q->tilt_deg = tilt_deg;
    const sw_strap_out s = sw__strap_bare(q);
    return point_of(&s, tilt_deg);
}

static void set_range(sw__tilts *t)
{
    const double tilt = t->out.tilt_deg;
    t->low_deg = fmax(-MOST_DEG, fmin(-USUAL_DEG, floor(tilt + 1e-9)));
    t->high_deg = fmin(MOST_DEG, fmax(USUAL_DEG, ceil(tilt - 1e-9)));
}

int sw__tilts_of(const sw_strap_in *in, sw__tilts *t, sw_error *err)
{
    memset(t, 0, sizeof *t);
    t->out = sw__strap_bare(in);
    if (t->out.status) /* once more, for what it says */
        return sw_strap(in, err).status;
    t->in = *in;
    int status = sw_strap_resolve(&t->in, err);
    if (status)
        return status;
    if (t->in.nut == SW_NUT_STILL)
        return sw__fail(err, SW_ERR_NONE, "nut",
                        "nut: one that does not turn has no nominal answer to "
                        "draw, only a range");
    t->own = t->in.seat == SW_SEAT_FLAT ? SW__TILT_FLAT : SW__TILT_DISHED;
    t->span_mm = t->in.stud_to_toe_mm + t->in.stud_to_heel_mm;
    sw_strap_in q = *in;
    status = sw__reopen(&q, SW_STRUCT_STRAP_IN, &q.assumed, &q.seal, err);
    if (status)
        return status;
    q.part_height_mm = t->in.part_height_mm;
    q.stud_length_mm = t->in.stud_length_mm;
    q.heel_height_mm = SW_UNSET;
    set_range(t);
    const double range = t->high_deg - t->low_deg;
    const int per_deg = range <= 2 * USUAL_DEG ? 10 : 5;
    t->points = (int)round(range * per_deg) + 1;
    for (int which = 0; which < SW__TILT_SEATS; which++) {
        for (int i = 0; i < t->points; i++)
            t->curve[which][i] =
                ask(&q, which, t->low_deg + (double)i / per_deg);
        t->here[which] = which == t->own ? point_of(&t->out, t->out.tilt_deg)
                                         : ask(&q, which, t->out.tilt_deg);
    }
    return SW_OK;
}
