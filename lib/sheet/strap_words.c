/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap words: what the picture says in lines below it, and to those who
 * cannot see it. Numbers are written as sw_say() writes them.
 */
#include "sheet/arrow.h"
#include "sheet/lettering.h"
#include "sheet/strap_picture.h"
#include "sheet/vial.h"

#include <strapwise/say.h>
#include <strapwise/units.h>

#include <string.h>

enum { ROOM = 400 };

void sw__add_said(sw__line *line, double value, int kind, int show)
{
    char text[120];
    sw_say(value, kind, show, text, sizeof text);
    sw__line_add(line, text);
}

int sw__leans(const sw__picture *p)
{
    const double seen = 0.005; /* deg: what two decimals show */
    const double tilt = p->out.tilt_deg;
    return tilt >= seen ? 1 : tilt <= -seen ? -1 : 0;
}

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
        char part[ROOM];
        const char *start = text;
        const size_t n = sw__letters_line(&text, most, bold);
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

static int has_nominal(const sw__picture *p)
{
    return !(p->out.warnings & SW_WARN_NO_NOMINAL);
}

static const char *high_end(const sw__picture *p)
{
    return sw__leans(p) > 0 ? "heel high" : "heel low";
}

/* "M12, 20 N·m": what was tightened, and how far. */
static void add_tightened(const sw__picture *p, sw__line *line, int show)
{
    sw__line_add(line, p->full.thread.designation);
    sw__line_add(line, ", ");
    if (p->full.in.nut == SW_NUT_STILL)
        sw__add_said(line, p->out.preload_N, SW_KIND_FORCE, show);
    else
        sw__add_said(line, p->out.torque_Nm, SW_KIND_TORQUE, show);
}

void sw__picture_title(const sw__picture *p, char *text, size_t room)
{
    const int us = p->how.show == SW_SHOW_US || p->how.show == SW_SHOW_US_FIRST;
    sw__line line = sw__line_start(text, room);
    sw__line_add(&line, "Strap clamp, ");
    add_tightened(p, &line, us ? SW_SHOW_US : SW_SHOW_SI);
}

double sw__draw_heading(sw__picture *p, double y)
{
    char text[160];
    sw__line line = sw__line_start(text, sizeof text);
    add_tightened(p, &line, p->how.show);
    sw__svg_group(p->svg, "class=\"caption\"");
    y = sw__draw_text(p, p->left, y, text, 1.15, 1);
    sw__svg_group_end(p->svg);
    return y;
}

/* Where there is no nominal: what it may be, one way or either. */
static void say_range(double low, double high, int show, sw__line *line)
{
    char text[120];
    if (low < 0 && high > 0) {
        sw__line_add(line, "part drawn up to ");
        sw__add_said(line, high, SW_KIND_FORCE, show);
        sw__line_add(line, " TOWARD the stud or pushed up to ");
        sw__add_said(line, -low, SW_KIND_FORCE, show);
        sw__line_add(line, " AWAY: this nut does not turn");
        return;
    }
    const int toward = high > 0;
    sw_say_range(toward ? low : -high, toward ? high : -low, SW_KIND_FORCE,
                 show, text, sizeof text);
    sw__line_add(line, toward ? "part drawn TOWARD the stud, "
                              : "part pushed AWAY from the stud, ");
    sw__line_add(line, text);
}

/* What the side pull does, in one line. */
static void say_pull(const sw__picture *p, char *text, size_t room)
{
    const sw_strap_out *o = &p->out;
    const int show = p->how.show;
    sw__line line = sw__line_start(text, room);
    if (!has_nominal(p)) {
        say_range(o->side_pull_low_N, o->side_pull_high_N, show, &line);
    } else if (o->pull_direction == SW_PULL_NONE) {
        sw__line_add(&line, "part not drawn either way: side pull none");
    } else {
        sw__line_add(&line, o->pull_direction == SW_PULL_TOWARD
                                ? "part drawn TOWARD the stud, "
                                : "part pushed AWAY from the stud, ");
        sw__add_said(&line, fabs(o->side_pull_N), SW_KIND_FORCE, show);
    }
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
    char text[ROOM];
    double x = p->left;
    say_pull(p, text, sizeof text);
    y += 0.3 * p->em;
    sw__svg_group(p->svg, "class=\"verdict\" fill=\"" SW__SIDEWAYS "\"");
    if (has_nominal(p) && p->out.pull_direction != SW_PULL_NONE) {
        x = draw_key(p, y, size, p->out.side_pull_N > 0 ? 0 : 180,
                     "class=\"side-pull key\" fill=\"#fff\" "
                     "stroke-width=\"1.6\" " KEY);
    }
    y = sw__draw_text(p, x, y, text, size, 1);
    sw__svg_group_end(p->svg);
    return y + 0.2 * p->em;
}

static void say_stud(const sw__picture *p, char *text, size_t room)
{
    const sw_strap_out *o = &p->out;
    sw__line line = sw__line_start(text, room);
    if (o->seat_state == SW_STATE_LEVEL) {
        sw__line_add(&line, "stud stays straight");
    } else if (o->seat_state == SW_STATE_SWIVELLED) {
        sw__line_add(&line, "stud stays straight: the dished seat takes the "
                            "tilt up");
    } else {
        sw__line_add(&line, "stud is bent: ");
        sw__add_said(&line, fabs(o->stud_bending_Nm), SW_KIND_TORQUE,
                     p->how.show);
        sw__line_add(&line, o->seat_state == SW_STATE_RIM
                                ? " at a nut that stands on its edge"
                                : " at the nut, which lies flat on the strap");
    }
}

static void say_tilt(const sw__picture *p, char *text, size_t room)
{
    sw__line line = sw__line_start(text, room);
    if (!sw__leans(p)) {
        sw__line_add(&line, "strap level");
        return;
    }
    sw__line_add(&line, "tilt ");
    sw__add_said(&line, fabs(p->out.tilt_deg), SW_KIND_ANGLE, p->how.show);
    sw__line_add(&line, ", ");
    sw__line_add(&line, high_end(p));
}

/* What the level shows; its vial stands before the words. */
static double draw_level(sw__picture *p, double y)
{
    char text[ROOM], number[40];
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
    {SW_WARN_SEAT_ANGLE, "the tilt is more than the dished seat takes up"},
    {SW_WARN_NUT_TRAVEL, "the nut meets the end of its slot"},
    {SW_WARN_MEASURES, "the measures do not fit together"},
};

double sw__draw_side_notes(sw__picture *p, double y)
{
    char text[ROOM];
    sw__svg_group(p->svg, "class=\"caption\"");
    say_tilt(p, text, sizeof text);
    y = note(p, y, text);
    y = draw_level(p, y);
    say_stud(p, text, sizeof text);
    y = note(p, y, text);
    for (size_t i = 0; i < sizeof marks / sizeof marks[0]; i++)
        if (p->out.warnings & marks[i].bit)
            y = draw_mark(p, y, marks[i].text);
    sw__svg_group_end(p->svg);
    return y;
}

static int drags(const sw__picture *p)
{
    return p->full.in.nut == SW_NUT_TURNED && p->out.drag_N != 0;
}

static void say_drag(const sw__picture *p, char *text, size_t room)
{
    const sw_strap_in *in = &p->full.in;
    sw__line line = sw__line_start(text, room);
    if (!drags(p)) {
        sw__line_add(&line, "nut drag none: ");
        sw__line_add(&line, in->nut == SW_NUT_STILL ? "the nut does not turn"
                            : in->restraint == SW_RESTRAINT_HELD
                                ? "strap held"
                                : "the toe slides already");
        return;
    }
    sw__line_add(&line, "nut drag ");
    sw__add_said(&line, fabs(p->out.drag_N), SW_KIND_FORCE, p->how.show);
    sw__line_add(&line, in->restraint == SW_RESTRAINT_FREE
                            ? ": strap free to turn"
                            : ": shared by toe and heel");
}

static int pulls(const sw__picture *p)
{
    return has_nominal(p) && p->out.pull_direction != SW_PULL_NONE;
}

/* How much of the toe's friction is used up, and by what. */
static void say_use(const sw__picture *p, char *text, size_t room)
{
    const sw_strap_out *o = &p->out;
    sw__line line = sw__line_start(text, room);
    if (pulls(p) && drags(p)) {
        sw__line_add(&line, "both together ");
        sw__add_said(&line, o->net_part_force_N, SW_KIND_FORCE, p->how.show);
        sw__line_add(&line, ", ");
    } else {
        sw__line_add(&line, pulls(p) ? "side pull: " : "nut drag: ");
    }
    sw__add_said(&line, o->toe_friction_use, SW_KIND_RATIO, p->how.show);
    sw__line_add(&line, " of what friction holds");
    if (o->toe_friction_use >= 1)
        sw__line_add(&line, ": the toe slides");
}

double sw__draw_plan_heading(sw__picture *p, double y)
{
    sw__svg_group(p->svg, "class=\"caption\"");
    y = note(p, y, "from above:");
    sw__svg_group_end(p->svg);
    return y;
}

double sw__draw_plan_notes(sw__picture *p, double y)
{
    char text[ROOM];
    double x = p->left;
    sw__svg_group(p->svg, "class=\"caption\"");
    say_drag(p, text, sizeof text);
    if (drags(p))
        x = draw_key(p, y, 1, p->out.drag_N > 0 ? 90 : -90,
                     "class=\"nut-drag key\" fill=\"#fff\" "
                     "stroke-width=\"1.3\" stroke-dasharray=\"3 2\" " KEY);
    y = sw__draw_text(p, x, y, text, 1, 0) + 0.2 * p->em;
    if (pulls(p) || drags(p)) {
        x = p->left;
        say_use(p, text, sizeof text);
        if (pulls(p) && drags(p))
            x = draw_key(p, y, 1, p->out.net_part_angle_deg,
                         "class=\"net key\" fill=\"#f2d9d5\" "
                         "stroke-width=\"1.8\" " KEY);
        y = sw__draw_text(p, x, y, text, 1, 0);
    }
    sw__svg_group_end(p->svg);
    return y;
}

static void add_force(const sw__picture *p, sw__line *line, const char *before,
                      double N, const char *after)
{
    sw__line_add(line, before);
    sw__add_said(line, N, SW_KIND_FORCE, p->how.show);
    sw__line_add(line, after);
}

void sw__picture_about(const sw__picture *p, char *text, size_t room)
{
    char part[ROOM];
    sw__line line = sw__line_start(text, room);
    add_force(p, &line, "Stud tension ", p->out.preload_N, "; ");
    add_force(p, &line, "toe on the part ", p->out.toe_force_N, "; ");
    add_force(p, &line, "heel on its support ", p->out.heel_force_N, ". ");
    say_tilt(p, part, sizeof part);
    sw__line_add(&line, part);
    sw__line_add(&line, "; ");
    say_pull(p, part, sizeof part);
    sw__line_add(&line, part);
    sw__line_add(&line, "; ");
    say_drag(p, part, sizeof part);
    sw__line_add(&line, part);
    sw__line_add(&line, "; ");
    say_stud(p, part, sizeof part);
    sw__line_add(&line, part);
    sw__line_add(&line, ".");
}
