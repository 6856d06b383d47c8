/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Scale: an edge graduated like a steel rule: a long mark with its number at
 * each step, a middle one halfway, short ones at the tenths.
 */
#include "sheet/scale.h"

#include "sheet/lettering.h"

#include <strapwise/units.h>

#include <string.h>

#define NUMBERS 13.0 /* px: the lettering that the measures below are for */
#define LONG 11
#define MIDDLE 7
#define SHORT 4
#define CAPTION 14

double sw__scale_step(double most, int parts)
{
    const double power = pow(10, floor(log10(most / parts)));
    static const double nice[] = {1, 2, 5, 10, 20};
    for (size_t i = 0; i < sizeof nice / sizeof nice[0]; i++)
        if (nice[i] * power * parts >= most * (1 - 1e-9))
            return nice[i] * power;
    return 50 * power;
}

int sw__scale_divisions(double step_px, double text_px)
{
    static const int divisions[] = {10, 5, 2};
    for (size_t i = 0; i < sizeof divisions / sizeof divisions[0]; i++)
        if (step_px >= divisions[i] * 0.3 * text_px)
            return divisions[i];
    return 1;
}

/* The marks from low to high: the index of the first, counted from zero, and
 * of the last. */
static int first_mark(const sw__rule *r)
{
    return (int)ceil(r->divisions * r->low / r->step - 1e-6);
}

static int last_mark(const sw__rule *r)
{
    return (int)floor(r->divisions * r->high / r->step + 1e-6);
}

static double share_of(const sw__rule *r, int mark)
{
    const double value = mark * r->step / r->divisions;
    return r->share ? r->share(value, r->with)
                    : (value - r->low) / (r->high - r->low);
}

static void write_value(const sw__rule *r, int mark, char *text, size_t room)
{
    sw_format(mark / r->divisions * r->step, 6, text, room);
}

double sw__scale_room(const sw__rule *r)
{
    double most = sw__letters_em("0", 0);
    for (int i = first_mark(r); i <= last_mark(r); i++)
        if (i % r->divisions == 0) {
            char text[40];
            write_value(r, i, text, sizeof text);
            most = fmax(most, sw__letters_em(text, 0));
        }
    return r->text_px * ((LONG + 4) / NUMBERS + most);
}

static sw__point at(const sw__box *f, int edge, double share, double out)
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

static void numeral(sw__svg *s, const sw__box *f, const sw__rule *r, int mark)
{
    char text[40];
    const double unit = r->text_px / NUMBERS;
    const int edge = r->edge;
    const int upright = edge == SW__EDGE_LEFT || edge == SW__EDGE_RIGHT;
    sw__point p = at(f, edge, share_of(r, mark), (LONG + 4) * unit);
    if (upright)
        p.y += 4.5 * unit;
    else if (edge == SW__EDGE_BOTTOM)
        p.y += 11 * unit;
    write_value(r, mark, text, sizeof text);
    sw__svg_text(s, p,
                 edge == SW__EDGE_LEFT    ? "end"
                 : edge == SW__EDGE_RIGHT ? "start"
                                          : "middle",
                 "", text);
}

static void font_size(double px, char *look, size_t room)
{
    char text[40];
    sw__line line = sw__line_start(look, room);
    sw_format(px, 4, text, sizeof text);
    sw__line_add(&line, "font-size=\"");
    sw__line_add(&line, text);
    sw__line_add(&line, "\"");
}

static void caption_at(sw__svg *s, const sw__box *f, const sw__rule *r)
{
    char look[60];
    const double unit = r->text_px / NUMBERS;
    const int edge = r->edge;
    const sw__point p =
        at(f, edge, 0.5, (edge == SW__EDGE_BOTTOM ? 46 : 38) * unit);
    font_size(CAPTION * unit, look, sizeof look);
    if (edge == SW__EDGE_LEFT)
        sw__svg_text_turned(s, (sw__point){p.x - 24 * unit, p.y}, -90, look,
                            r->caption);
    else if (edge == SW__EDGE_RIGHT)
        sw__svg_text_turned(s, (sw__point){p.x + 24 * unit, p.y}, 90, look,
                            r->caption);
    else
        sw__svg_text(s, p, "middle", look, r->caption);
}

void sw__scale_grid(sw__svg *s, const sw__box *f, const sw__rule *r)
{
    const int across = r->edge == SW__EDGE_LEFT ? SW__EDGE_RIGHT : SW__EDGE_TOP;
    sw__svg_group(s, "stroke=\"#dcdcdc\" stroke-width=\"1\"");
    for (int i = first_mark(r); i <= last_mark(r); i++) {
        const double share = share_of(r, i);
        if (i % r->divisions == 0 && share > 1e-6)
            sw__svg_line(s, at(f, r->edge, share, 0), at(f, across, share, 0),
                         "");
    }
    sw__svg_group_end(s);
}

void sw__scale_rule(sw__svg *s, const sw__box *f, const sw__rule *r)
{
    char look[60];
    const int edge = r->edge, n = r->divisions;
    const double unit = r->text_px / NUMBERS;
    sw__svg_group(s, "stroke=\"#1a1a1a\" stroke-width=\"1\"");
    sw__svg_line(s, at(f, edge, 0, 0), at(f, edge, 1, 0), "");
    for (int i = first_mark(r); i <= last_mark(r); i++) {
        const double share = share_of(r, i);
        const double length = i % n == 0       ? LONG
                              : 2 * i % n == 0 ? MIDDLE
                                               : SHORT;
        sw__svg_line(s, at(f, edge, share, 0),
                     at(f, edge, share, length * unit), "");
    }
    sw__svg_group_end(s);
    font_size(r->text_px, look, sizeof look);
    sw__svg_group(s, look);
    for (int i = first_mark(r); i <= last_mark(r); i++)
        if (i % n == 0)
            numeral(s, f, r, i);
    sw__svg_group_end(s);
    if (r->caption)
        caption_at(s, f, r);
}

void sw__scale_draw(sw__svg *s, const sw__box *f, int edge, double most,
                    double step, const char *caption, int grid)
{
    const sw__rule r = {edge, 0, most, step, 10, NUMBERS, caption, NULL, NULL};
    if (grid)
        sw__scale_grid(s, f, &r);
    sw__scale_rule(s, f, &r);
}
