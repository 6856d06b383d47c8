/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap bar: the strap itself in side view, cut along its slot, with its nose
 * and, for a bent strap, its crank. Its long edges have the tilt as it is.
 */
#include "sheet/strap_picture.h"

#define STRAP                                                                  \
    "fill=\"#e4dfcf\" stroke=\"#1a1a1a\" stroke-width=\"1.4\" "                \
    "stroke-linejoin=\"round\""
#define SLOT                                                                   \
    "class=\"paper\" fill=\"#fff\" stroke=\"#6d6a5f\" stroke-width=\"0.8\""

enum { MOST = 48 };

typedef struct {
    sw__point p[MOST];
    int n;
} outline;

static void add(outline *o, const sw__picture *p, sw__point mm)
{
    if (o->n < MOST)
        o->p[o->n++] = sw__px(p, mm.x, mm.y);
}

/* A nose of radius r, from a little before it touches the underside's line to
 * the strap's end or its upper face. */
static void add_round_nose(outline *o, const sw__picture *p)
{
    enum { PARTS = 14 };
    const double r = p->full.in.nose_radius_mm, t = p->g.t;
    const double back =
        fmin(SW__RAD(24), asin(fmin(1, 0.4 * p->g.a / fmax(r, 1e-9))));
    const double end = r <= t ? SW__PI / 2 : acos(1 - t / r);
    add(o, p, sw__on_strap(p, p->nose_x - r * sin(back) - 0.1 * t, 0));
    for (int i = 0; i <= PARTS; i++) {
        const double turn = -back + (end + back) * i / PARTS;
        const sw__point foot = sw__on_strap(p, p->nose_x, 0);
        const double u = r * sin(turn), v = r * (1 - cos(turn));
        add(o, p,
            (sw__point){foot.x + u * p->cos_theta + v * p->sin_theta,
                        foot.y - u * p->sin_theta + v * p->cos_theta});
    }
}

/* The upper face goes back to the heel; where a bent strap is cranked, its
 * corners stand off those below by the mitre. */
static void add_top(outline *o, const sw__picture *p)
{
    const double t = p->g.t, step = p->full.in.step_mm;
    double end = p->strap_right;
    if (p->full.in.nose == SW_NOSE_ROUND) {
        const double r = p->full.in.nose_radius_mm;
        end += p->cos_theta * (r <= t ? r : sqrt(t * (2 * r - t)));
    }
    add(o, p, sw__on_strap(p, end, t));
    if (step != 0) {
        const double run = p->crank_to - p->crank_from;
        const double mitre = t * tan(atan2(fabs(step), run) / 2);
        const double room = step > 0 ? 0.9 * (end - p->crank_to)
                                     : 0.9 * (p->crank_from - p->g.b);
        const double off = (step > 0 ? 1 : -1) * fmin(mitre, fmax(0, room));
        const sw__point low = sw__on_strap(p, p->crank_to, t);
        const sw__point high = sw__on_strap(p, p->crank_from, t);
        add(o, p, (sw__point){low.x + off, low.y - off * p->tan_theta});
        add(o, p, (sw__point){high.x + off, high.y - off * p->tan_theta});
    }
    add(o, p, sw__on_strap(p, p->strap_left, t));
}

static void draw_slot(sw__picture *p)
{
    const double b = p->g.b, t = p->g.t;
    double low, high;
    sw__strap_slot(p, &low, &high);
    if (!(high > low))
        return;
    const sw__point a = sw__on_strap(p, low, 0), c = sw__on_strap(p, low, t);
    const sw__point d = sw__on_strap(p, b, 0);
    const double run = high - b; /* straight on, whatever the crank does */
    const sw__point e = {d.x + run, d.y - run * p->tan_theta};
    const sw__point f = {e.x + t * p->sin_theta, e.y + t * p->cos_theta};
    const sw__point corner[4] = {sw__px(p, a.x, a.y), sw__px(p, e.x, e.y),
                                 sw__px(p, f.x, f.y), sw__px(p, c.x, c.y)};
    sw__svg_polygon(p->svg, corner, 4, SLOT);
}

static void draw_ball(sw__picture *p)
{
    const double t = p->g.t, r = 0.4 * t, w = 0.28 * t;
    const sw__point top = sw__on_strap(p, p->g.L, t);
    const sw__point head[4] = {sw__px(p, top.x - w, top.y - w * -p->tan_theta),
                               sw__px(p, top.x + w, top.y - w * p->tan_theta),
                               sw__px(p, top.x + w + 0.35 * t * p->sin_theta,
                                      top.y - w * p->tan_theta + 0.35 * t),
                               sw__px(p, top.x - w + 0.35 * t * p->sin_theta,
                                      top.y + w * p->tan_theta + 0.35 * t)};
    sw__svg_polygon(p->svg, head, 4, "");
    sw__svg_circle(p->svg, sw__px(p, p->toe.x, p->toe.y + r), r * p->scale, "");
}

void sw__draw_strap(sw__picture *p)
{
    outline o = {.n = 0};
    const sw_strap_in *in = &p->full.in;
    add(&o, p, sw__on_strap(p, p->strap_left, 0));
    if (in->step_mm != 0) {
        add(&o, p, sw__on_strap(p, p->crank_from, 0));
        add(&o, p, sw__on_strap(p, p->crank_to, 0));
    }
    if (in->nose == SW_NOSE_ROUND) {
        add_round_nose(&o, p);
    } else if (in->nose == SW_NOSE_BALL) {
        const double from = p->part_edge - 0.05 * p->g.a, up = 0.16 * p->g.t;
        add(&o, p, sw__on_strap(p, from, 0));
        add(&o, p, sw__on_strap(p, from, up));
        add(&o, p, sw__on_strap(p, p->strap_right, up));
    } else {
        add(&o, p, sw__on_strap(p, p->strap_right, 0));
    }
    add_top(&o, p);
    sw__svg_group(p->svg, "class=\"strap\" " STRAP);
    sw__svg_polygon(p->svg, o.p, o.n, "");
    if (in->nose == SW_NOSE_BALL)
        draw_ball(p);
    draw_slot(p);
    sw__svg_group_end(p->svg);
}
