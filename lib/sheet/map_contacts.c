/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Map contacts: the part from above, what carries, stops and presses it, and
 * where the straps push it all together.
 */
#include "sheet/arrow.h"
#include "sheet/hold_map.h"
#include "sheet/lettering.h"

#include <strapwise/say.h>

#include <string.h>

#define STEEL "#33507a"

static void take(sw__map *m, sw__point at, double r)
{
    const sw__box b = {at.x - r, at.y - r, at.x + r, at.y + r};
    sw__occupied_take(&m->occupied, &b);
}

/* The way of an angle in the picture, whose y runs down. */
static sw__point way(double deg)
{
    return (sw__point){cos(SW__RAD(deg)), -sin(SW__RAD(deg))};
}

void sw__map_part(sw__map *m)
{
    sw__point corner[SW__OUTLINE_CORNERS];
    const sw__outline *o = &m->job->outline;
    for (int i = 0; i < o->corners; i++)
        corner[i] = sw__map_at(m, o->x[i], o->y[i]);
    sw__svg_polygon(m->svg, corner, o->corners,
                    "class=\"part\" fill=\"#f0f1f3\" stroke=\"#1a1a1a\" "
                    "stroke-width=\"2\"");
    for (int i = 0; i < o->corners; i++)
        sw__occupied_line(&m->occupied, corner[i], corner[(i + 1) % o->corners],
                          1.5);
}

/* A support: a ring with a cross, as a rest button is drawn. */
static void draw_support(sw__map *m, const sw_support_in *s)
{
    const sw__point at = sw__map_at(m, s->x_mm, s->y_mm);
    const double r = 0.65 * m->em;
    sw__svg_group(m->svg, "class=\"support\" stroke=\"" STEEL
                          "\" stroke-width=\"1.5\" fill=\"none\"");
    sw__svg_circle(m->svg, at, r, "");
    sw__svg_line(m->svg, (sw__point){at.x - r, at.y},
                 (sw__point){at.x + r, at.y}, "");
    sw__svg_line(m->svg, (sw__point){at.x, at.y - r},
                 (sw__point){at.x, at.y + r}, "");
    sw__svg_group_end(m->svg);
    take(m, at, r);
}

/* A stop: a wedge whose edge touches the part. */
static void draw_stop(sw__map *m, const sw_stop_in *s)
{
    const sw__point at = sw__map_at(m, s->x_mm, s->y_mm);
    const sw__point u = way(s->push_deg);
    const double r = 0.7 * m->em, back = 1.3 * m->em;
    const sw__point p[3] = {
        at,
        {at.x - back * u.x - r * u.y, at.y - back * u.y + r * u.x},
        {at.x - back * u.x + r * u.y, at.y - back * u.y - r * u.x}};
    sw__svg_polygon(m->svg, p, 3,
                    "class=\"stop\" fill=\"" STEEL "\" stroke=\"" STEEL "\"");
    const sw__point middle = {at.x - back / 2 * u.x, at.y - back / 2 * u.y};
    take(m, middle, 0.75 * m->em);
}

/* A clamp: a filled square where it presses, and for a strap its bar to the
 * stud. */
static void draw_clamp(sw__map *m, const sw_job_clamp_out *c)
{
    const sw__point at = sw__map_at(m, c->x_mm, c->y_mm);
    const double r = 0.42 * m->em;
    sw__svg_group(m->svg, "class=\"clamp\"");
    if (sw__is_set(c->toward_deg)) {
        const sw__point u = way(c->toward_deg);
        const double length = sw__is_set(c->stud_mm)
                                  ? fmax(1.2 * m->em, c->stud_mm * m->px_per_mm)
                                  : 2.4 * m->em;
        const double w = 0.5 * m->em;
        const sw__point stud = {at.x + length * u.x, at.y + length * u.y};
        const sw__point end = {stud.x + w * u.x, stud.y + w * u.y};
        const sw__point bar[4] = {
            {at.x - w * u.y - w * u.x, at.y + w * u.x - w * u.y},
            {end.x - w * u.y, end.y + w * u.x},
            {end.x + w * u.y, end.y - w * u.x},
            {at.x + w * u.y - w * u.x, at.y - w * u.x - w * u.y}};
        sw__svg_polygon(m->svg, bar, 4,
                        "fill=\"#fff\" stroke=\"#1a1a1a\" "
                        "stroke-width=\"1.2\"");
        sw__svg_circle(m->svg, stud, 0.3 * m->em,
                       "fill=\"none\" stroke=\"#1a1a1a\" "
                       "stroke-width=\"1.2\"");
        sw__occupied_line(&m->occupied, at, end, w);
    }
    const sw__point p[4] = {{at.x - r, at.y - r},
                            {at.x + r, at.y - r},
                            {at.x + r, at.y + r},
                            {at.x - r, at.y + r}};
    sw__svg_polygon(m->svg, p, 4, "fill=\"#1a1a1a\"");
    sw__svg_group_end(m->svg);
    take(m, at, 0.6 * m->em);
}

/* Where all straps together push the part; from its centre of gravity. */
void sw__map_push(sw__map *m)
{
    if (!sw__is_set(m->out.net_side_N) || m->out.net_side_N < 0.5)
        return;
    const sw_job_out *a = &m->job->about;
    const sw__point from = sw__map_at(m, a->centre_x_mm, a->centre_y_mm);
    const sw__point u = way(m->out.net_toward_deg);
    const double length = 4 * m->em;
    const sw__point to = {from.x + length * u.x, from.y + length * u.y};
    sw__arrow(
        m->svg, from, to, 1.2 * m->em,
        "class=\"push\" fill=\"#fff\" fill-opacity=\"0.7\" stroke=\"#6a1b8a\" "
        "stroke-width=\"1.5\" stroke-dasharray=\"4 2\"");
    sw__occupied_line(&m->occupied, from, to, 0.6 * m->em);
}

void sw__map_contacts(sw__map *m)
{
    for (int i = 0; i < m->job->clamps; i++)
        if (m->op->has[i])
            draw_clamp(m, &m->job->clamp[i].out);
    for (int i = 0; i < m->job->supports; i++)
        draw_support(m, &m->job->support[i]);
    for (int i = 0; i < m->job->stops; i++)
        draw_stop(m, &m->job->stop[i]);
}

/* A name as near as there is room, with a line to its place where that is not
 * near. */
static void name_at(sw__map *m, double x, double y, const char *name,
                    const char *look)
{
    sw__box b;
    const sw__point at = sw__map_at(m, x, y);
    const double width = m->em * (sw__letters_em(name, 1) + 0.2);
    if (!sw__occupied_place(&m->occupied, at, 0, 0.75 * m->em, 9 * m->em, width,
                            m->em, &b))
        return;
    const sw__point to = {fmin(fmax(at.x, b.left), b.right),
                          fmin(fmax(at.y, b.top), b.bottom)};
    if (hypot(to.x - at.x, to.y - at.y) > 2 * m->em)
        sw__svg_line(m->svg, at, to, "stroke=\"#8a8a8a\"");
    sw__svg_text(m->svg,
                 (sw__point){(b.left + b.right) / 2, b.bottom - 0.15 * m->em},
                 "middle", look, name);
}

void sw__map_names(sw__map *m)
{
    for (int i = 0; i < m->job->clamps; i++)
        if (m->op->has[i])
            name_at(m, m->job->clamp[i].out.x_mm, m->job->clamp[i].out.y_mm,
                    m->job->clamp[i].out.name,
                    "class=\"clamp\" font-weight=\"bold\"");
    for (int i = 0; i < m->job->stops; i++) {
        const sw_stop_in *s = &m->job->stop[i];
        const sw__point u = way(s->push_deg);
        const double back = 0.7 * m->em / m->px_per_mm;
        name_at(m, s->x_mm - back * u.x, s->y_mm + back * u.y, s->name,
                "class=\"stop\" font-weight=\"bold\" fill=\"" STEEL "\"");
    }
    for (int i = 0; i < m->job->supports; i++)
        name_at(m, m->job->support[i].x_mm, m->job->support[i].y_mm,
                m->job->support[i].name,
                "class=\"support\" fill=\"" STEEL "\"");
}
