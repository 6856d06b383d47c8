/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say rest: why a part does not stay where it is before the cut, and what
 * helps.
 *
 * What the straps do to it is parted by trial: the same fixture without the
 * drag of the nuts, and without the side pull.
 */
#include "job.h"

#include <math.h>
#include <string.h>

#define FULL_TURN 6.283185307179586
#define SAME 1e-6 /* of the length of the line */

/* Whether a place lies outside of all that stand around it: there is a gap of
 * more than half a turn between two of them. */
static int outside_supports(const sw_fixture *f, double x, double y)
{
    double angle[64];
    sw_support_in s;
    int n = 0;
    for (; n < 64 && !sw_fixture_support(f, n, &s, NULL); n++) {
        if (hypot(s.x_mm - x, s.y_mm - y) < 1e-9)
            return 0;
        angle[n] = atan2(s.y_mm - y, s.x_mm - x);
    }
    for (int i = 0; i < n; i++) {
        double next = FULL_TURN;
        for (int k = 0; k < n; k++) {
            double gap = angle[k] - angle[i];
            gap += gap < 0 ? FULL_TURN : 0;
            if (k != i && gap < next)
                next = gap;
        }
        if (n > 1 && next > FULL_TURN / 2 + 1e-9)
            return 1;
    }
    return n < 2;
}

/* "clamps C2 and C3 stand outside of the supports" */
static int say_outside(page *p, const judged *h)
{
    char name[64][32];
    int n = 0;
    sw_clamp_in c;
    for (int i = 0; !sw_fixture_clamp(h->fixture, i, &c, NULL); i++)
        if (n < 64 && outside_supports(h->fixture, c.x_mm, c.y_mm))
            copy_cut(name[n++], sizeof name[0], c.name);
    for (int i = 0; i < n; i++) {
        page_add(p, i == 0       ? n > 1 ? "clamps " : "clamp "
                    : i == n - 1 ? " and "
                                 : ", ");
        page_add(p, name[i]);
    }
    if (n)
        page_add(p, n > 1 ? " stand outside of the supports: put supports "
                            "under them, or move them in"
                          : " stands outside of the supports: put a support "
                            "under it, or move it in");
    return n;
}

/* ---- how the supports stand ---- */

/* Whether all stand in one line, that between the two furthest apart. */
static int in_line(const sw_fixture *f)
{
    sw_support_in a, b, s;
    double far = 0, ux = 0, uy = 0;
    if (sw_fixture_support(f, 0, &a, NULL))
        return 0;
    for (int i = 1; !sw_fixture_support(f, i, &b, NULL); i++) {
        const double d = hypot(b.x_mm - a.x_mm, b.y_mm - a.y_mm);
        if (d > far) {
            far = d;
            ux = (b.x_mm - a.x_mm) / d;
            uy = (b.y_mm - a.y_mm) / d;
        }
    }
    for (int i = 1; !sw_fixture_support(f, i, &s, NULL); i++)
        if (fabs((s.x_mm - a.x_mm) * uy - (s.y_mm - a.y_mm) * ux) >
            SAME * fmax(1, far))
            return 0;
    return 1;
}

int say_supports_fault(page *p, const sw_fixture *f)
{
    const int n = sw_fixture_count(f, SW_PART_SUPPORT);
    if (n >= 3 && !in_line(f))
        return 0;
    page_add(p, n < 3 ? "it stands on fewer than three supports: put three or "
                        "more under it, not in one line"
                      : "all its supports stand in one line: move one of them "
                        "out of it");
    return 1;
}

/* ---- what the straps do ---- */

/* A copy of the fixture with these shares of the straps' pulls, and the load
 * that is worst; NULL where there is no memory for it. */
static sw_fixture *with_shares(const judged *h, double pull, double drag)
{
    const sw_fixture *f = h->fixture;
    sw_fixture *made = sw_fixture_new(NULL);
    sw_support_in s;
    sw_clamp_in c;
    sw_stop_in stop;
    sw_load_in l;
    sw_weight_in w;
    int bad = !made;
    for (int i = 0; !bad && !sw_fixture_support(f, i, &s, NULL); i++)
        bad = sw_fixture_add_support(made, &s, NULL);
    for (int i = 0; !bad && !sw_fixture_clamp(f, i, &c, NULL); i++) {
        c.pull_low_N *= pull;
        c.pull_high_N *= pull;
        c.drag_low_N *= drag;
        c.drag_high_N *= drag;
        c.assumed = c.seal = 0;
        bad = sw_fixture_add_clamp(made, &c, NULL);
    }
    for (int i = 0; !bad && !sw_fixture_stop(f, i, &stop, NULL); i++)
        bad = sw_fixture_add_stop(made, &stop, NULL);
    if (!bad && !sw_fixture_load(f, 0, &l, NULL))
        bad = sw_fixture_add_load(made, &l, NULL);
    const sw_job_out part = sw_job_about(h->job, NULL);
    sw_weight_defaults(&w);
    w.weight_N = part.weight_N;
    w.x_mm = part.centre_x_mm;
    w.y_mm = part.centre_y_mm;
    w.z_mm = part.centre_z_mm;
    if (!bad)
        bad = sw_fixture_set_weight(made, &w, NULL);
    if (!bad)
        return made;
    sw_fixture_free(made);
    return NULL;
}

static int rests(const judged *h, double pull, double drag)
{
    sw_fixture *f = with_shares(h, pull, drag);
    sw_hold_in in = h->in;
    in.depth = SW_DEPTH_MARGIN;
    in.assumed = in.seal = 0;
    sw_hold *trial = f ? sw_hold_new(f, &in, NULL, NULL, NULL) : NULL;
    const sw_hold_out o = sw_hold_total(trial, NULL);
    sw_hold_free(trial);
    sw_fixture_free(f);
    return !o.status && o.rest != SW_REST_MOVES && o.rest != SW_REST_ROCKS;
}

static void say_moved(page *p, const judged *h)
{
    static const char washers[] = "level the straps, use spherical washers";
    static const char spanner[] =
        "hold each strap with a second spanner while its nut is turned";
    const double held = h->out.rest_margin;
    const int drag = rests(h, 1, 0), pull = rests(h, 0, 1);
    page_add(p, "It does not hold: ");
    page_add(p, drag == pull ? "side pull of the straps and drag of their nuts "
                               "move it"
                : drag ? "the drag of the nuts, which turn their straps with "
                         "them, moves it"
                       : "the side pull of the straps moves it");
    page_add(p, " before the cut");
    if (is_known(held) && held < 1) {
        page_add(p, "; friction and stops resist only ");
        page_number(p, floor(100 * held + 1e-9), 3);
        page_add(p, KEEP "% of it");
    }
    page_add(p, ". ");
    page_add(p, drag && !pull ? "Remedy: " : "Remedies: ");
    if (!drag || pull) {
        page_add(p, washers);
        page_add(p, ", ");
    }
    if (drag || !pull) {
        page_add(p, spanner);
        page_add(p, ", ");
    }
    page_add(p, "or put a stop where they push it");
}

void say_no_rest(page *p, const judged *h)
{
    const sw_hold_out *o = &h->out;
    /* it may rest with the straps' pulls as they are, and not with the worst */
    switch (o->rest == SW_REST_STAYS ? SW_REST_MOVES : o->rest) {
    case SW_REST_ROCKS:
        page_add(p, "It rocks before the cut: ");
        if (!say_supports_fault(p, h->fixture) && !say_outside(p, h)) {
            page_add(p, "the supports cannot carry what presses on it");
            if (o->contact[0]) {
                page_add(p, "; it leaves ");
                page_add(p, o->contact);
            }
        }
        break;
    case SW_REST_MOVES:
        if (is_known(o->rest_margin) && o->rest_margin < 1e-6) {
            page_add(p, "It is on the point of rocking before the cut: ");
            if (!say_supports_fault(p, h->fixture) && !say_outside(p, h))
                page_add(p, "the supports only just carry what presses on it");
            break;
        }
        say_moved(p, h);
        break;
    case SW_REST_LIGHT:
        page_add(p, "It does not hold: support ");
        page_add(p, o->contact);
        page_add(p, " carries less than it must before the cut");
        break;
    default:
        page_add(p, "It does not hold: nothing presses it on its supports");
    }
}
