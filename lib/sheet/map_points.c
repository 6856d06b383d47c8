/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Map points: every point of the path by its mark, and numbers at as many as
 * can be read: the worst first, then the least of each stretch, then others.
 */
#include "sheet/hold_map.h"
#include "sheet/lettering.h"

#include <strapwise/units.h>

#include <string.h>

#define GREEN "#1b6e3c"
#define AMBER "#a65600"
#define RED "#a5161d"

enum { NUMBERS_MOST = 60 };

int sw__map_rests(const sw__map *m)
{
    return m->out.rest == SW_REST_STAYS && m->out.first_to_go != SW_GOES_REST;
}

sw__mark sw__map_mark_of(const sw__map *m, double margin)
{
    return !sw__map_rests(m)                  ? SW__MARK_NONE
           : margin >= m->out.required_margin ? SW__MARK_HOLDS
           : margin >= 1                      ? SW__MARK_LITTLE
                                              : SW__MARK_GOES;
}

void sw__map_mark(sw__map *m, sw__point at, sw__mark mark, double r)
{
    if (mark == SW__MARK_HOLDS) {
        sw__svg_circle(m->svg, at, r,
                       "class=\"holds\" fill=\"#fff\" stroke=\"" GREEN
                       "\" stroke-width=\"1.5\"");
    } else if (mark == SW__MARK_LITTLE) {
        const sw__point p[3] = {{at.x, at.y - 1.25 * r},
                                {at.x + 1.15 * r, at.y + 0.8 * r},
                                {at.x - 1.15 * r, at.y + 0.8 * r}};
        sw__svg_polygon(m->svg, p, 3,
                        "class=\"little\" fill=\"#ffe2b8\" stroke=\"" AMBER
                        "\" stroke-width=\"1.5\"");
    } else if (mark == SW__MARK_NONE) {
        sw__svg_circle(m->svg, at, 0.9 * r, "class=\"none\" fill=\"#6b6b6b\"");
    } else {
        const sw__point p[4] = {{at.x - r, at.y - r},
                                {at.x + r, at.y - r},
                                {at.x + r, at.y + r},
                                {at.x - r, at.y + r}};
        sw__svg_polygon(m->svg, p, 4,
                        "class=\"goes\" fill=\"" RED "\" stroke=\"" RED
                        "\" stroke-width=\"1\"");
    }
}

/* Rounded down, never to what it is not, and to the digits of the answer in
 * words. */
void sw__map_margin(const sw__map *m, double margin, char *text, size_t room)
{
    sw__line line = sw__line_start(text, room);
    char number[40];
    const double step = margin < 10 ? 100 : 1;
    const int most = margin >= m->largest;
    sw__line_add(&line, most ? "over " : "");
    sw_format(most ? m->largest : floor(margin * step + 1e-9) / step,
              most ? 6 : 5, number, sizeof number);
    sw__line_add(&line, number);
}

/* Thin lines between neighbours, not where the tool jumps from one line to the
 * next. */
static void draw_lines(sw__map *m)
{
    sw__svg_group(m->svg, "class=\"path\" stroke=\"#8a8a8a\"");
    for (int i = 1; i < m->points; i++) {
        const sw__map_point *a = &m->point[i - 1], *b = &m->point[i];
        const double deg = m->op->point[i - 1].feed_deg;
        const double dx = b->x - a->x, dy = b->y - a->y;
        const double length = hypot(dx, dy);
        if (!sw__is_set(deg) || !(length > 0))
            continue;
        /* along the feed, but for the bend of a circle */
        const double along =
            (dx * cos(SW__RAD(deg)) + dy * sin(SW__RAD(deg))) / length;
        if (!(along > 0.7))
            continue;
        const sw__point from = sw__map_at(m, a->x, a->y);
        const sw__point to = sw__map_at(m, b->x, b->y);
        sw__svg_line(m->svg, from, to, "");
        sw__occupied_line(&m->occupied, from, to, 1);
    }
    sw__svg_group_end(m->svg);
}

/* Marks of a crowded path are small, so that they stay marks. */
static double mark_size(const sw__map *m)
{
    double length = 0;
    for (int i = 1; i < m->points; i++)
        length += hypot(m->point[i].x - m->point[i - 1].x,
                        m->point[i].y - m->point[i - 1].y);
    const double apart =
        m->points > 1 ? length / (m->points - 1) * m->px_per_mm : m->em;
    return m->em * fmin(0.3, fmax(0.13, 0.4 * apart / m->em));
}

void sw__map_path(sw__map *m)
{
    const double r = mark_size(m), room = r + 0.1 * m->em;
    draw_lines(m);
    /* the least margins lie on top */
    for (int mark = SW__MARK_HOLDS; mark <= SW__MARK_NONE; mark++)
        for (int i = 0; i < m->points; i++) {
            const sw__map_point *p = &m->point[i];
            if ((int)sw__map_mark_of(m, p->margin) != mark)
                continue;
            const sw__point at = sw__map_at(m, p->x, p->y);
            const sw__box b = {at.x - room, at.y - room, at.x + room,
                               at.y + room};
            sw__map_mark(m, at, (sw__mark)mark, r);
            sw__occupied_take(&m->occupied, &b);
        }
    if (!sw__map_rests(m))
        return;
    const sw__map_point *w = &m->point[m->worst];
    const sw__point at = sw__map_at(m, w->x, w->y);
    const double ring = 0.75 * m->em;
    const sw__box b = {at.x - ring, at.y - ring, at.x + ring, at.y + ring};
    sw__svg_circle(m->svg, at, ring,
                   "class=\"worst\" fill=\"none\" stroke=\"#1a1a1a\" "
                   "stroke-width=\"2\"");
    sw__occupied_take(&m->occupied, &b);
}

/* From the edge of a mark to the words about it. */
static void leader(sw__map *m, sw__point at, double r, const sw__box *b,
                   const char *look)
{
    const sw__point to = {fmin(fmax(at.x, b->left), b->right),
                          fmin(fmax(at.y, b->top), b->bottom)};
    const double length = hypot(to.x - at.x, to.y - at.y);
    if (!(length > r))
        return;
    const sw__point from = {at.x + r / length * (to.x - at.x),
                            at.y + r / length * (to.y - at.y)};
    sw__svg_line(m->svg, from, to, look);
    sw__occupied_line(&m->occupied, from, to, 1);
}

/* Whether no near neighbour on the path is lower. */
static int is_least(const sw__map *m, int i)
{
    enum { NEAR = 3 };
    for (int k = i - NEAR; k <= i + NEAR; k++)
        if (k >= 0 && k < m->points && k != i &&
            (m->point[k].margin < m->point[i].margin ||
             (m->point[k].margin == m->point[i].margin && k < i)))
            return 0;
    return 1;
}

static int number_at(sw__map *m, int i, double far)
{
    char text[40];
    sw__box b;
    const sw__map_point *p = &m->point[i];
    sw__map_margin(m, p->margin, text, sizeof text);
    const double size = 0.85 * m->em;
    const double width = size * sw__letters_em(text, 0) + 0.2 * m->em;
    const sw__point at = sw__map_at(m, p->x, p->y);
    if (!sw__occupied_place(&m->occupied, at, 1, 0.65 * m->em, far, width, size,
                            &b))
        return 0;
    leader(m, at, mark_size(m), &b,
           "class=\"leader\" stroke=\"#1a1a1a\" stroke-width=\"0.8\"");
    char look[80], number[40];
    sw__line line = sw__line_start(look, sizeof look);
    sw_format(size, 4, number, sizeof number);
    sw__line_add(&line, "class=\"margin\" font-size=\"");
    sw__line_add(&line, number);
    sw__line_add(&line, "\"");
    sw__svg_text(m->svg,
                 (sw__point){(b.left + b.right) / 2, b.bottom - 0.12 * size},
                 "middle", look, text);
    /* air around it, so that it is read with its own mark */
    const double air = 0.35 * m->em;
    const sw__box wide = {b.left - air, b.top - air / 2, b.right + air,
                          b.bottom + air / 2};
    sw__occupied_take(&m->occupied, &wide);
    return 1;
}

static void worst_words(sw__map *m)
{
    char text[80], margin[40];
    sw__box b;
    const sw__map_point *p = &m->point[m->worst];
    sw__map_margin(m, p->margin, margin, sizeof margin);
    sw__line line = sw__line_start(text, sizeof text);
    sw__line_add(&line, "worst: ");
    sw__line_add(&line, margin);
    const double width = m->em * (sw__letters_em(text, 1) + 0.3);
    const sw__point at = sw__map_at(m, p->x, p->y);
    if (!sw__occupied_place(&m->occupied, at, 1, 0.9 * m->em, 12 * m->em, width,
                            1.05 * m->em, &b))
        return;
    leader(m, at, 0.75 * m->em, &b, "stroke=\"#1a1a1a\"");
    sw__svg_text(m->svg,
                 (sw__point){(b.left + b.right) / 2, b.bottom - 0.2 * m->em},
                 "middle", "class=\"worst\" font-weight=\"bold\"", text);
}

void sw__map_numbers(sw__map *m)
{
    int written = 0;
    if (!sw__map_rests(m))
        return; /* all are none */
    worst_words(m);
    for (int i = 0; i < m->points && written < NUMBERS_MOST; i++)
        if (i != m->worst && is_least(m, i))
            written += number_at(m, i, 2.2 * m->em);
    const int skip = m->points / NUMBERS_MOST + 1;
    for (int i = 0; i < m->points && written < NUMBERS_MOST; i += skip)
        if (i != m->worst && !is_least(m, i))
            written += number_at(m, i, 1.5 * m->em);
}
