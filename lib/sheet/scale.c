/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Scale: an edge graduated like a steel rule: a long mark with its number at
 * each step, a middle one halfway, short ones at the tenths.
 */
#include "sheet/scale.h"

#include <strapwise/units.h>

#include <string.h>

#define LONG 11
#define MIDDLE 7
#define SHORT 4

double sw__scale_step(double most, int parts)
{
    const double power = pow(10, floor(log10(most / parts)));
    static const double nice[] = {1, 2, 5, 10, 20};
    for (size_t i = 0; i < sizeof nice / sizeof nice[0]; i++)
        if (nice[i] * power * parts >= most * (1 - 1e-9))
            return nice[i] * power;
    return 50 * power;
}

static sw__point at(const sw__frame *f, int edge, double share, double out)
{
    const double x = f->left + share * (f->right - f->left);
    const double y = f->bottom - share * (f->bottom - f->top);
    switch (edge) {
    case SW__EDGE_LEFT:
        return (sw__point){f->left - out, y};
    case SW__EDGE_RIGHT:
        return (sw__point){f->right + out, y};
    case SW__EDGE_TOP:
        return (sw__point){x, f->top - out};
    default:
        return (sw__point){x, f->bottom + out};
    }
}

static void numeral(sw__svg *s, const sw__frame *f, int edge, double share,
                    double value)
{
    char text[40];
    const int upright = edge == SW__EDGE_LEFT || edge == SW__EDGE_RIGHT;
    sw__point p = at(f, edge, share, LONG + 4);
    if (upright)
        p.y += 4.5;
    else if (edge == SW__EDGE_BOTTOM)
        p.y += 11;
    sw_format(value, 6, text, sizeof text);
    sw__svg_text(s, p,
                 edge == SW__EDGE_LEFT    ? "end"
                 : edge == SW__EDGE_RIGHT ? "start"
                                          : "middle",
                 "", text);
}

static void caption_at(sw__svg *s, const sw__frame *f, int edge,
                       const char *caption)
{
    const char *look = "font-size=\"14\"";
    const sw__point p = at(f, edge, 0.5, edge == SW__EDGE_BOTTOM ? 46 : 38);
    if (edge == SW__EDGE_LEFT)
        sw__svg_text_turned(s, (sw__point){p.x - 24, p.y}, -90, look, caption);
    else if (edge == SW__EDGE_RIGHT)
        sw__svg_text_turned(s, (sw__point){p.x + 24, p.y}, 90, look, caption);
    else
        sw__svg_text(s, p, "middle", look, caption);
}

void sw__scale_draw(sw__svg *s, const sw__frame *f, int edge, double most,
                    double step, const char *caption, int grid)
{
    const int tenths = (int)floor(10 * most / step + 1e-6);
    if (grid) {
        const int across =
            edge == SW__EDGE_LEFT ? SW__EDGE_RIGHT : SW__EDGE_TOP;
        sw__svg_group(s, "stroke=\"#dcdcdc\" stroke-width=\"1\"");
        for (int i = 10; i <= tenths; i += 10) {
            const double share = i * step / 10 / most;
            sw__svg_line(s, at(f, edge, share, 0), at(f, across, share, 0), "");
        }
        sw__svg_group_end(s);
    }
    sw__svg_group(s, "stroke=\"#1a1a1a\" stroke-width=\"1\"");
    sw__svg_line(s, at(f, edge, 0, 0), at(f, edge, 1, 0), "");
    for (int i = 0; i <= tenths; i++)
        sw__svg_line(s, at(f, edge, i * step / 10 / most, 0),
                     at(f, edge, i * step / 10 / most,
                        i % 10 == 0  ? LONG
                        : i % 5 == 0 ? MIDDLE
                                     : SHORT),
                     "");
    sw__svg_group_end(s);
    sw__svg_group(s, "font-size=\"13\"");
    for (int i = 0; i <= tenths; i += 10)
        numeral(s, f, edge, i * step / 10 / most, i / 10 * step);
    sw__svg_group_end(s);
    caption_at(s, f, edge, caption);
}
