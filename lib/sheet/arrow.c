/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Arrow: forces as polygons. Tip and tail are where they are said to be, so
 * that the length can be measured with a rule; line width adds a little on
 * both sides.
 */
#include "sheet/arrow.h"

#define HALF_SHAFT 0.21 /* of the head's length */
#define HALF_HEAD 0.5

void sw__arrow(sw__svg *s, sw__point tail, sw__point head, double size,
               const char *look)
{
    const double length = hypot(head.x - tail.x, head.y - tail.y);
    if (!(length > 0))
        return;
    const double ux = (head.x - tail.x) / length;
    const double uy = (head.y - tail.y) / length;
    /* a short one is still longer than wide */
    const double shown = fmin(size, 0.8 * length);
    const double tip = fmin(size, 0.7 * length);
    const double w = HALF_HEAD * shown;
    const double h = HALF_SHAFT * shown;
    const sw__point neck = {head.x - tip * ux, head.y - tip * uy};
    const sw__point p[7] = {head,
                            {neck.x - w * uy, neck.y + w * ux},
                            {neck.x - h * uy, neck.y + h * ux},
                            {tail.x - h * uy, tail.y + h * ux},
                            {tail.x + h * uy, tail.y - h * ux},
                            {neck.x + h * uy, neck.y - h * ux},
                            {neck.x + w * uy, neck.y - w * ux}};
    sw__svg_polygon(s, p, 7, look);
}

void sw__arrow_cut(sw__svg *s, sw__point tail, sw__point head, double size,
                   const char *look)
{
    const double length = hypot(head.x - tail.x, head.y - tail.y);
    if (!(length > 0))
        return;
    const double ux = (head.x - tail.x) / length;
    const double uy = (head.y - tail.y) / length;
    for (int i = 0; i < 2; i++) {
        const double along = length * 0.4 + (i ? 0.15 : -0.15) * size;
        const double w = HALF_HEAD * size;
        const sw__point m = {tail.x + along * ux, tail.y + along * uy};
        const sw__point from = {m.x - w * uy - 0.15 * size * ux,
                                m.y + w * ux - 0.15 * size * uy};
        const sw__point to = {m.x + w * uy + 0.15 * size * ux,
                              m.y - w * ux + 0.15 * size * uy};
        sw__svg_line(s, from, to, look);
    }
}

static sw__point around(sw__point c, double radius, double deg)
{
    return (sw__point){c.x + radius * cos(SW__RAD(deg)),
                       c.y + radius * sin(SW__RAD(deg))};
}

void sw__arrow_round(sw__svg *s, sw__point centre, double radius, double from,
                     double to, double size, const char *look)
{
    enum { PARTS = 16 };
    sw__point p[2 * PARTS + 5];
    int n = 0;
    const double half = HALF_SHAFT * size, wing = HALF_HEAD * size;
    const double neck = fmax(from, to - SW__DEG(size / radius));
    for (int i = 0; i <= PARTS; i++)
        p[n++] =
            around(centre, radius + half, from + (neck - from) * i / PARTS);
    p[n++] = around(centre, radius + wing, neck);
    p[n++] = around(centre, radius, to);
    p[n++] = around(centre, radius - wing, neck);
    for (int i = PARTS; i >= 0; i--)
        p[n++] =
            around(centre, radius - half, from + (neck - from) * i / PARTS);
    sw__svg_polygon(s, p, n, look);
}
