/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap lanes: what stands below the side view. The distances of toe and heel
 * from the stud; a rule graduated in mm and inches whose zero is the stud's
 * axis, so that both are read off it; how much force an arrow is.
 */
#include "sheet/lettering.h"
#include "sheet/scale.h"
#include "sheet/strap_picture.h"

#include <strapwise/say.h>
#include <strapwise/units.h>

#define THIN "class=\"dimension\" stroke=\"#5b5b5b\" stroke-width=\"0.8\""

/* How much is written of both distances, from most to least. */
enum { NAMED_BOTH, BOTH, ONE, WORDINGS };

static void word(const sw__picture *p, int wording, const char *name, double mm,
                 char *text, size_t room)
{
    const int us = p->how.show == SW_SHOW_US_FIRST || p->how.show == SW_SHOW_US;
    sw__line line = sw__line_start(text, room);
    if (wording == NAMED_BOTH) {
        sw__line_add(&line, name);
        sw__line_add(&line, " ");
    }
    sw__add_said(&line, mm, SW_KIND_LENGTH,
                 wording == ONE ? (us ? SW_SHOW_US : SW_SHOW_SI) : p->how.show);
}

double sw__draw_distances(sw__picture *p, double y)
{
    char text[2][80];
    double x[2], width[2];
    const double end[3] = {sw__px(p, 0, 0).x, sw__px(p, p->g.b, 0).x,
                           sw__px(p, p->g.L, 0).x};
    const double W = p->how.width_px, edge = 0.3 * p->em, gap = 1.2 * p->em;
    for (int w = W < 520 ? ONE : NAMED_BOTH; w < WORDINGS; w++) {
        word(p, w, "stud to heel", p->g.b, text[0], sizeof text[0]);
        word(p, w, "stud to toe", p->g.a, text[1], sizeof text[1]);
        for (int i = 0; i < 2; i++)
            width[i] = p->em * sw__letters_em(text[i], 0);
        if (width[0] + width[1] + gap <= W - 2 * edge)
            break;
    }
    const double line = y + 0.9 * p->em, tick = 0.3 * p->em;
    sw__svg *s = p->svg;
    sw__svg_group(s, THIN);
    const double from[3] = {0, p->table_y - p->table_deep, p->part_top};
    for (int i = 0; i < 3; i++) {
        sw__svg_line(s, (sw__point){end[i], sw__px(p, 0, from[i]).y},
                     (sw__point){end[i], line + 0.5 * p->em},
                     "stroke-dasharray=\"2 3\"");
        sw__svg_line(s, (sw__point){end[i] - tick, line + tick},
                     (sw__point){end[i] + tick, line - tick}, "");
    }
    sw__svg_line(s, (sw__point){end[0], line}, (sw__point){end[2], line}, "");
    sw__svg_group_end(s);
    for (int i = 0; i < 2; i++)
        x[i] = (end[i] + end[i + 1]) / 2;
    sw__spread_out(x, width, 2, gap, edge, W - edge);
    sw__svg_group(s, "class=\"dimension\"");
    for (int i = 0; i < 2; i++)
        sw__svg_text(s, (sw__point){x[i], line + 1.5 * p->em}, "middle", "",
                     text[i]);
    sw__svg_group_end(s);
    return line + 1.9 * p->em;
}

/* One edge of the rule: marks up or down from its line, figures beyond them,
 * counted from the stud both ways. */
static void graduate(sw__picture *p, double y, double unit_mm, int upward,
                     const char *unit)
{
    sw__svg *s = p->svg;
    const double zero = sw__px(p, p->g.b, 0).x, px = p->scale * unit_mm;
    const double sign = upward ? -1 : 1;
    const double step = sw__scale_step(4.2 * p->em / px, 1);
    const double tenth = step / 10 * px;
    const int marks = tenth >= 3 ? 1 : tenth >= 1.5 ? 2 : 5;
    const double clear = p->left + p->em * (sw__letters_em(unit, 0) + 0.6);
    sw__svg_group(s, "stroke=\"#1a1a1a\" stroke-width=\"0.9\"");
    const int first = (int)ceil((p->left - zero) / tenth);
    const int last = (int)floor((p->right - zero) / tenth);
    for (int i = first; i <= last; i++) {
        if (i % marks)
            continue;
        const double length = i % 10 == 0 ? 0.75 : i % 5 == 0 ? 0.5 : 0.3;
        const double x = zero + i * tenth;
        sw__svg_line(s, (sw__point){x, y},
                     (sw__point){x, y + sign * length * p->em}, "");
    }
    sw__svg_group_end(s);
    const double base = upward ? y - 0.95 * p->em : y + 1.75 * p->em;
    sw__svg_text(s, (sw__point){p->left, base}, "start", "", unit);
    for (int i = first; i <= last; i++) {
        char text[40];
        if (i % 10)
            continue;
        sw_format(fabs(i / 10 * step), 6, text, sizeof text);
        const double x = zero + i * tenth;
        const double half = p->em * sw__letters_em(text, 0) / 2;
        if (x - half > clear && x + half < p->how.width_px - 0.3 * p->em)
            sw__svg_text(s, (sw__point){x, base}, "middle", "", text);
    }
}

double sw__draw_rule(sw__picture *p, double y)
{
    const double line = y + 2.1 * p->em;
    sw__svg_group(p->svg, "class=\"scale\"");
    sw__svg_line(p->svg, (sw__point){p->left, line},
                 (sw__point){p->right, line},
                 "stroke=\"#1a1a1a\" stroke-width=\"1.2\"");
    graduate(p, line, 25.4, 1, "in");
    graduate(p, line, 1, 0, "mm");
    sw__svg_group_end(p->svg);
    return line + 2.2 * p->em;
}

/* A bar of a round force, and what it is. */
static double draw_bar(sw__picture *p, double y, double N, double px,
                       const char *before, const char *after, const char *look)
{
    char text[160];
    const double x = p->left, high = y + 0.45 * p->em, low = y + 0.9 * p->em;
    const sw__point c[4] = {{x, high}, {x + px, high}, {x + px, low}, {x, low}};
    sw__svg_polygon(p->svg, c, 4, look);
    sw__line line = sw__line_start(text, sizeof text);
    sw__line_add(&line, before);
    sw__add_said(&line, N, SW_KIND_FORCE, p->how.show);
    sw__line_add(&line, after);
    return sw__draw_text(p, x + px + 0.6 * p->em, y, text, 1, 0);
}

double sw__draw_scales(sw__picture *p, double y)
{
    char after[80];
    /* round forces of about a tenth of the width */
    const double px = p->per_N * p->how.full_force_N / 2.4;
    const double N = sw__scale_step(px / p->per_N, 5) * 2;
    const double side_N = N / p->how.sideways;
    const double side = sw__scale_step(side_N, 4) * 2;
    sw__line line = sw__line_start(after, sizeof after);
    if (p->how.sideways != 1) {
        sw__line_add(&line, ", drawn ");
        sw__line_add_number(&line, p->how.sideways);
        sw__line_add(&line, " times longer");
    }
    sw__svg_group(p->svg, "class=\"scale\"");
    if (p->how.views != SW_VIEW_PLAN)
        y = draw_bar(p, y, N, N * p->per_N, "upright arrows: ", "",
                     "fill=\"" SW__UPRIGHT "\"");
    y = draw_bar(p, y, side, side * p->per_N * p->how.sideways,
                 "along the table: ", after,
                 "fill=\"#fff\" stroke=\"" SW__SIDEWAYS
                 "\" stroke-width=\"1.4\"");
    if (p->cut_short)
        y = sw__draw_text(p, p->left, y,
                          "two strokes: this arrow should be longer", 1, 0);
    sw__svg_group_end(p->svg);
    return y;
}
