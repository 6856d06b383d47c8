/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap plan: the strap seen from above, at the side view's scale. Arrows from
 * the toe contact are what the part feels: toward the stud to the left; the
 * nut's drag, to the right of one who stands at the stud and faces the part,
 * points down.
 */
#include "sheet/arrow.h"
#include "sheet/strap_picture.h"

#define STEEL                                                                  \
    "fill=\"#dfe4e8\" stroke=\"#1a1a1a\" stroke-width=\"1.2\" "                \
    "stroke-linejoin=\"round\""
#define PART                                                                   \
    "class=\"part\" fill=\"#f7eedb\" stroke=\"#1a1a1a\" stroke-width=\"1.4\""
#define HIDDEN                                                                 \
    "fill=\"none\" stroke=\"#5b5b5b\" stroke-width=\"0.9\" "                   \
    "stroke-dasharray=\"4 3\""
#define FORCE                                                                  \
    "fill=\"#fff\" stroke=\"" SW__SIDEWAYS                                     \
    "\" stroke-linejoin=\"round\" stroke-width="

typedef struct {
    sw__picture *p;
    double y;      /* middle */
    double half;   /* height to both sides */
    double radius; /* of the arrow around the nut */
} plan;

static sw__point at(const plan *v, double x, double across)
{
    return (sw__point){v->p->zero_x + v->p->scale * x,
                       v->y + v->p->scale * across};
}

static void box(const plan *v, double x1, double x2, double half,
                const char *look)
{
    const sw__point c[4] = {at(v, x1, -half), at(v, x2, -half), at(v, x2, half),
                            at(v, x1, half)};
    sw__svg_polygon(v->p->svg, c, 4, look);
}

static void draw_part(const plan *v)
{
    sw__picture *p = v->p;
    const double x = at(v, p->part_edge, 0).x, h = v->half, z = 0.6 * p->em;
    const sw__point c[8] = {{p->part_end, v->y - h},
                            {p->part_end, v->y - z},
                            {p->part_end + z, v->y - z / 2},
                            {p->part_end - z, v->y + z / 2},
                            {p->part_end, v->y + z},
                            {p->part_end, v->y + h},
                            {x, v->y + h},
                            {x, v->y - h}};
    sw__svg_group(p->svg, PART);
    sw__svg_polygon(p->svg, c, 8, "stroke=\"none\"");
    sw__svg_polyline(p->svg, c, 6, "stroke-width=\"0.8\"");
    sw__svg_line(p->svg, c[6], c[7], "");
    sw__svg_group_end(p->svg);
}

static void hexagon(const plan *v, double x, double radius, const char *look)
{
    sw__point c[6];
    for (int i = 0; i < 6; i++)
        c[i] = at(v, x + radius * cos(SW__RAD(60 * i)),
                  radius * sin(SW__RAD(60 * i)));
    sw__svg_polygon(v->p->svg, c, 6, look);
}

static void draw_heel(const plan *v, const char *group)
{
    sw__picture *p = v->p;
    const double w = p->full.in.strap_width_mm;
    sw__svg_group(p->svg, group);
    if (p->full.in.heel == SW_HEEL_SCREW)
        hexagon(v, 0, 0.9 * p->full.in.heel_screw_diameter_mm, "");
    else
        box(v, p->block_left, p->block_right, 0.6 * w, "");
    sw__svg_group_end(p->svg);
}

static void draw_strap(const plan *v)
{
    sw__picture *p = v->p;
    const sw_strap_in *in = &p->full.in;
    const double r = in->nose == SW_NOSE_ROUND ? in->nose_radius_mm : 0;
    const double t = p->g.t, w = in->strap_width_mm / 2;
    const double nose = r <= t ? r : sqrt(t * (2 * r - t));
    const double end = p->strap_right + nose * p->cos_theta;
    const double d = p->full.thread.nominal_mm;
    const double half = in->slot_width_mm > 0 ? in->slot_width_mm / 2 : d / 2;
    double low, high;
    sw__strap_slot(p, &low, &high);
    sw__svg_group(p->svg, "class=\"strap\" fill=\"#e4dfcf\" "
                          "stroke=\"#1a1a1a\" stroke-width=\"1.4\"");
    box(v, p->strap_left, end, w, "");
    if (high > low)
        box(v, low, high, fmin(half, 0.9 * w),
            "class=\"paper\" fill=\"#fff\" stroke-width=\"0.8\"");
    if (in->step_mm != 0) {
        sw__svg_line(p->svg, at(v, p->crank_from, -w), at(v, p->crank_from, w),
                     "stroke-width=\"0.8\"");
        sw__svg_line(p->svg, at(v, p->crank_to, -w), at(v, p->crank_to, w),
                     "stroke-width=\"0.8\"");
    }
    sw__svg_group_end(p->svg);
}

static double washer_radius(const sw__picture *p)
{
    return fmax(p->full.in.seat == SW_SEAT_FLAT
                    ? p->full.in.washer_diameter_mm / 2
                    : p->full.thread.nominal_mm,
                p->full.thread.across_flats_mm / sqrt(3));
}

static void draw_nut(const plan *v)
{
    sw__picture *p = v->p;
    const sw_thread_out *t = &p->full.thread;
    const sw__point c = at(v, p->nut.x, 0);
    sw__svg_group(p->svg, "class=\"washer\" " STEEL);
    sw__svg_circle(p->svg, c, p->scale * washer_radius(p), "");
    sw__svg_group_end(p->svg);
    sw__svg_group(p->svg, "class=\"nut\" " STEEL);
    hexagon(v, p->nut.x, t->across_flats_mm / sqrt(3), "");
    sw__svg_group_end(p->svg);
    sw__svg_group(p->svg, "class=\"stud\" " STEEL);
    sw__svg_circle(p->svg, c, p->scale * t->nominal_mm / 2, "");
    sw__svg_group_end(p->svg);
    if (p->full.in.nut == SW_NUT_TURNED) {
        sw__svg_group(p->svg, "class=\"turn\" fill=\"" SW__INK "\"");
        sw__arrow_round(p->svg, c, v->radius, -160, 20, 0.9 * p->em, "");
        sw__svg_group_end(p->svg);
    }
}

/* An arrow that starts at the toe contact; right and down in px of a newton.
 */
static void draw_force(const plan *v, double N, double right, double down,
                       double size, const char *look)
{
    int cut;
    sw__picture *p = v->p;
    const double length = sw__sideways_px(p, N, &cut);
    if (!(length > 0))
        return;
    const sw__point tail = at(v, p->g.L, 0);
    const double head_size = fmin(size * p->em, 0.5 * length);
    const sw__point head = {tail.x + length * right, tail.y + length * down};
    sw__svg_group(p->svg, look);
    sw__arrow(p->svg, tail, head, head_size, "");
    p->cut_short |= cut;
    if (cut)
        sw__arrow_cut(p->svg, tail, head, head_size, "");
    sw__svg_group_end(p->svg);
}

static void draw_forces(const plan *v)
{
    const sw_strap_out *o = &v->p->out;
    const double angle = SW__RAD(o->net_part_angle_deg);
    const double toward = o->side_pull_N > 0 ? -1 : 1;
    const double down = o->drag_N > 0 ? 1 : -1;
    const int pulls = o->pull_direction != SW_PULL_NONE &&
                      !(o->warnings & SW_WARN_NO_NOMINAL);
    const int drags = o->drag_N != 0;
    if (pulls && drags)
        draw_force(v, o->net_part_force_N, -cos(angle), sin(angle), 1.1,
                   "class=\"net\" "
                   "fill=\"#f2d9d5\" stroke=\"" SW__SIDEWAYS
                   "\" stroke-width=\"2.2\" stroke-linejoin=\"round\"");
    if (drags)
        draw_force(v, o->drag_N, 0, down, 1.3,
                   "class=\"nut-drag\" " FORCE
                   "\"1.4\" stroke-dasharray=\"3 2\"");
    if (pulls)
        draw_force(v, o->side_pull_N, toward, 0, 1.3,
                   "class=\"side-pull\" " FORCE "\"1.6\"");
}

/* How far the arrows reach up or down from the middle, px. */
static double reach(const sw__picture *p)
{
    return sw__sideways_px(p, p->out.drag_N, NULL) + p->em;
}

double sw__draw_plan(sw__picture *p, double y)
{
    plan v = {p, 0, 0, 0};
    const double w = p->scale * p->full.in.strap_width_mm;
    v.radius = fmax(p->scale * washer_radius(p) + 0.5 * p->em, 1.2 * p->em);
    v.half = fmax(fmax(0.68 * w, v.radius + 0.6 * p->em), reach(p));
    v.y = y + v.half + 0.3 * p->em;
    const double throat = 0.58 * p->full.thread.nominal_mm;
    sw__svg_group(p->svg, "class=\"table\" stroke=\"#1a1a1a\" "
                          "stroke-width=\"0.8\"");
    for (int side = -1; side <= 1; side += 2) {
        const double x = at(&v, p->g.b + side * throat, 0).x;
        sw__svg_line(p->svg, (sw__point){x, v.y - v.half},
                     (sw__point){x, v.y + v.half}, "");
    }
    sw__svg_group_end(p->svg);
    draw_heel(&v, "class=\"heel\" " STEEL);
    draw_part(&v);
    draw_strap(&v);
    draw_heel(&v, "class=\"hidden\" " HIDDEN);
    sw__svg_group(p->svg, "class=\"hidden\" " HIDDEN);
    sw__svg_line(p->svg, at(&v, p->part_edge, -p->full.in.strap_width_mm / 2),
                 at(&v, p->part_edge, p->full.in.strap_width_mm / 2), "");
    sw__svg_group_end(p->svg);
    draw_nut(&v);
    draw_forces(&v);
    return v.y + v.half + 0.3 * p->em;
}
