/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap notes: the lines of words below the views. A line about an arrow has
 * that arrow before it; a warning worth a mark has a triangle.
 */
#include "sheet/arrow.h"
#include "sheet/lettering.h"
#include "sheet/strap_picture.h"
#include "sheet/vial.h"

#include <strapwise/units.h>

#include <string.h>

double sw__draw_text(sw__picture *p, double x, double y, const char *text,
                     double size, int bold)
{
    const double em = size * p->em;
    const double most = (p->how.width_px - x) / em - 0.4;
    char look[80], number[40];
    sw__line line = sw__line_start(look, sizeof look);
    sw_format(em, 4, number, sizeof number);
    sw__line_add(&line, "font-size=\"");
    sw__line_add(&line, number);
    sw__line_add(&line, bold ? "\" font-weight=\"bold\"" : "\"");
    for (;;) {
        char part[SW__WORDS_ROOM];
        const char *start = text;
        const size_t n = sw__letters_line(&text, most, bold, 0);
        if (n == 0 || n >= sizeof part)
            break;
        memcpy(part, start, n);
        part[n] = '\0';
        sw__svg_text(p->svg, (sw__point){x, y + em}, "start",
                     size == 1 && !bold ? "" : look, part);
        y += 1.3 * em;
    }
    return y;
}

static double note(sw__picture *p, double y, const char *text)
{
    return sw__draw_text(p, p->left, y, text, 1, 0);
}

double sw__draw_heading(sw__picture *p, double y)
{
    char text[160];
    sw__say_tightened(p, p->how.show, text, sizeof text);
    sw__svg_group(p->svg, "class=\"caption\"");
    y = sw__draw_text(p, p->left, y, text, 1.15, 1);
    sw__svg_group_end(p->svg);
    return y;
}

#define KEY "stroke=\"" SW__SIDEWAYS "\" stroke-linejoin=\"round\" "

/* The arrow a line is about stands before its words; returns where they start.
 */
static double draw_key(sw__picture *p, double y, double size, double deg,
                       const char *group)
{
    const double em = size * p->em, half = 0.68 * em;
    const double x = p->left + half;
    const double c = half * cos(SW__RAD(deg)), s = half * sin(SW__RAD(deg));
    const sw__point middle = {x, y + 0.65 * em};
    sw__svg_group(p->svg, group);
    sw__arrow(p->svg, (sw__point){middle.x + c, middle.y - s},
              (sw__point){middle.x - c, middle.y + s}, 0.85 * em, "");
    sw__svg_group_end(p->svg);
    return x + half + 0.5 * em;
}

double sw__draw_verdict(sw__picture *p, double y)
{
    const double size = 1.3;
    char text[SW__WORDS_ROOM];
    double x = p->left;
    sw__say_pull(p, text, sizeof text);
    y += 0.3 * p->em;
    sw__svg_group(p->svg, "class=\"verdict\" fill=\"" SW__SIDEWAYS "\"");
    if (sw__pulls(p)) {
        x = draw_key(p, y, size, p->out.side_pull_N > 0 ? 0 : 180,
                     "class=\"side-pull key\" fill=\"#fff\" "
                     "stroke-width=\"1.6\" " KEY);
    }
    y = sw__draw_text(p, x, y, text, size, 1);
    sw__svg_group_end(p->svg);
    return y + 0.2 * p->em;
}

/* What the level shows; its vial stands before the words. */
static double draw_level(sw__picture *p, double y)
{
    char text[SW__WORDS_ROOM], number[40];
    if (!sw__is_set(p->how.vial_mm_per_m))
        return y;
    const double off = -1000 * p->tan_theta / p->how.vial_mm_per_m;
    sw__line line = sw__line_start(text, sizeof text);
    sw__line_add(&line, "level: ");
    if (fabs(off) < 0.05) {
        sw__line_add(&line, "bubble in the middle");
    } else {
        sw_format_fixed(fabs(off), fabs(off) < 100 ? 1 : 0, number,
                        sizeof number);
        sw__line_add(&line, number);
        sw__line_add(&line, " divisions, ");
        sw__line_add(&line, off < 0 ? "heel high" : "heel low");
        if (fabs(off) > SW__VIAL_DIVISIONS)
            sw__line_add(&line, ": off the scale");
    }
    const double wide = p->level_drawn ? 0 : 6.6 * p->em;
    const double base = y + 1.05 * p->em;
    if (!p->level_drawn)
        sw__vial(p->svg, (sw__point){p->left, base},
                 (sw__point){p->left + wide - 0.6 * p->em, base}, p->em, off);
    sw__svg_group(p->svg, "class=\"level\"");
    y = sw__draw_text(p, p->left + wide, y, text, 1, 0);
    sw__svg_group_end(p->svg);
    return y;
}

/* A warning worth a mark: a triangle and few words. */
static double draw_mark(sw__picture *p, double y, const char *text)
{
    const double x = p->left, em = p->em;
    const sw__point c[3] = {
        {x + 0.45 * em, y + 0.2 * em}, {x + 0.9 * em, y + em}, {x, y + em}};
    sw__svg_polygon(p->svg, c, 3,
                    "fill=\"none\" stroke=\"" SW__SIDEWAYS
                    "\" stroke-width=\"1.4\"");
    return sw__draw_text(p, x + 1.4 * em, y, text, 1, 1);
}

static const struct {
    uint64_t bit;
    const char *text;
} marks[] = {
    {SW_WARN_TOE_SLIDES, "the toe slides on the part"},
    {SW_WARN_STRAP_WALKS, "the strap walks: toe and heel cannot hold it"},
    {SW_WARN_STUD_YIELDS, "the stud is past its yield"},
    {SW_WARN_STRAP_YIELDS, "the strap is past its yield"},
    {SW_WARN_HEEL_LOW, "heel low: raise it above the toe"},
    {SW_WARN_SEAT_ANGLE, "the tilt is more than the spherical seat takes up"},
    {SW_WARN_NUT_TRAVEL, "the nut meets the end of its slot"},
    {SW_WARN_MEASURES, "the measures do not fit together"},
};

double sw__draw_side_notes(sw__picture *p, double y)
{
    char text[SW__WORDS_ROOM];
    sw__svg_group(p->svg, "class=\"caption\"");
    sw__say_causes(p, text, sizeof text);
    y = note(p, y, text);
    sw__say_tilt(p, text, sizeof text);
    y = note(p, y, text);
    y = draw_level(p, y);
    sw__say_stud(p, text, sizeof text);
    y = note(p, y, text);
    for (size_t i = 0; i < sizeof marks / sizeof marks[0]; i++)
        if (p->out.warnings & marks[i].bit)
            y = draw_mark(p, y, marks[i].text);
    sw__svg_group_end(p->svg);
    return y;
}

double sw__draw_plan_heading(sw__picture *p, double y)
{
    char text[SW__WORDS_ROOM];
    sw__say_arrows(p, text, sizeof text);
    sw__svg_group(p->svg, "class=\"caption\"");
    y = note(p, y, text);
    sw__svg_group_end(p->svg);
    return y;
}

double sw__draw_plan_notes(sw__picture *p, double y)
{
    char text[SW__WORDS_ROOM];
    double x = p->left;
    sw__svg_group(p->svg, "class=\"caption\"");
    sw__say_drag(p, text, sizeof text);
    if (sw__drags(p))
        x = draw_key(p, y, 1, p->out.drag_N > 0 ? 90 : -90,
                     "class=\"nut-drag key\" fill=\"#fff\" "
                     "stroke-width=\"1.3\" stroke-dasharray=\"3 2\" " KEY);
    y = sw__draw_text(p, x, y, text, 1, 0) + 0.2 * p->em;
    if (sw__pulls(p) || sw__drags(p)) {
        x = p->left;
        sw__say_use(p, text, sizeof text);
        if (sw__pulls(p) && sw__drags(p))
            x = draw_key(p, y, 1, p->out.net_part_angle_deg,
                         "class=\"net key\" fill=\"#f2d9d5\" "
                         "stroke-width=\"1.8\" " KEY);
        y = sw__draw_text(p, x, y, text, 1, 0);
    }
    sw__svg_group_end(p->svg);
    return y;
}
