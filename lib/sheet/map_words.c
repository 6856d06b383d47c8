/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Map words: heading, legend and scale bar.
 */
#include "sheet/arrow.h"
#include "sheet/hold_map.h"
#include "sheet/lettering.h"
#include "sheet/scale.h"

#include <strapwise/say.h>
#include <strapwise/units.h>

#include <string.h>

/* "skim of yoke plate: margin 2.4 on the cut, 2 wanted" */
static void add_verdict(const sw__map *m, sw__line *line)
{
    char margin[40];
    const sw_hold_out *o = &m->out;
    switch (o->rest) {
    case SW_REST_ROCKS:
        sw__line_add(line, "does not hold: it rocks before the cut");
        return;
    case SW_REST_MOVES:
        sw__line_add(line, "does not hold: the straps move it before the cut");
        return;
    case SW_REST_LIGHT:
        sw__line_add(line,
                     "does not hold: a support carries less than it must");
        return;
    case SW_REST_LOOSE:
        sw__line_add(line, "does not hold: nothing presses it on its supports");
        return;
    default:
        break;
    }
    if (!sw__map_rests(m)) {
        sw__line_add(line, "does not hold: the straps move it before the cut");
        return;
    }
    sw__map_margin(m, o->margin, margin, sizeof margin);
    sw__line_add(line, o->margin >= o->required_margin ? ""
                       : o->margin >= 1 ? "does not hold as safely as wanted: "
                                        : "does not hold: ");
    sw__line_add(line, "margin ");
    sw__line_add(line, margin);
    sw__line_add(line, " on the cut, ");
    sw__line_add_number(line, o->required_margin);
    sw__line_add(line, " wanted");
}

static void add_title(const sw__map *m, sw__line *line)
{
    sw__line_add(line, m->op->out.name);
    sw__line_add(line, m->job->about.name[0] ? " of " : "");
    sw__line_add(line, m->job->about.name);
}

/* Lines of a text within the width; returns where the next begins. */
static double write_lines(sw__map *m, double y, double size, int bold,
                          const char *look, const char *text)
{
    char one[256];
    const double width = m->how.width_px - 2 * m->em;
    size_t n;
    for (const char *at = text, *from = at;
         (n = sw__letters_line(&at, width / size, bold, 0)); from = at) {
        sw__copy(one, n + 1 < sizeof one ? n + 1 : sizeof one, from);
        y += 1.25 * size;
        sw__svg_text(m->svg, (sw__point){m->em, y}, "start", look, one);
    }
    return y;
}

static void font(double px, const char *more, char *look, size_t room)
{
    char number[40];
    sw__line line = sw__line_start(look, room);
    sw_format(px, 4, number, sizeof number);
    sw__line_add(&line, "font-size=\"");
    sw__line_add(&line, number);
    sw__line_add(&line, "\"");
    sw__line_add(&line, more);
}

double sw__map_heading(sw__map *m, double y)
{
    char text[300], look[80];
    sw__line line = sw__line_start(text, sizeof text);
    add_title(m, &line);
    font(1.3 * m->em, " font-weight=\"bold\"", look, sizeof look);
    y = write_lines(m, y, 1.3 * m->em, 1, look, text);
    line = sw__line_start(text, sizeof text);
    add_verdict(m, &line);
    return write_lines(m, y + 0.2 * m->em, m->em, 0, "", text) + 0.4 * m->em;
}

/* ---- legend ---- */

typedef struct {
    sw__map *m;
    double x, y;
} row;

/* Words behind a sign; a new row where they do not fit. */
static sw__point next(row *r, const char *words)
{
    const double em = r->m->em;
    const double need = em * (sw__letters_em(words, 0) + 4);
    if (r->x + need > r->m->how.width_px && r->x > 2 * em) {
        r->x = em;
        r->y += 1.6 * em;
    }
    const sw__point sign = {r->x + 0.9 * em, r->y - 0.35 * em};
    sw__svg_text(r->m->svg, (sw__point){r->x + 2.4 * em, r->y}, "start", "",
                 words);
    r->x += need;
    return sign;
}

static void legend_marks(row *r)
{
    static const char *const words[] = {
        [SW__MARK_HOLDS] = "margin as wanted or more",
        [SW__MARK_LITTLE] = "less than wanted",
        [SW__MARK_GOES] = "below 1: the cut moves it",
        [SW__MARK_NONE] = "path, no margin: the part does not rest before the "
                          "cut"};
    int used[SW__MARK_NONE + 1] = {0};
    for (int i = 0; i < r->m->points; i++)
        used[sw__map_mark_of(r->m, r->m->point[i].margin)] = 1;
    for (int mark = SW__MARK_HOLDS; mark <= SW__MARK_NONE; mark++)
        if (used[mark])
            sw__map_mark(r->m, next(r, words[mark]), (sw__mark)mark,
                         0.3 * r->m->em);
    if (sw__map_rests(r->m))
        sw__svg_circle(r->m->svg, next(r, "worst point"), 0.6 * r->m->em,
                       "fill=\"none\" stroke=\"#1a1a1a\" stroke-width=\"2\"");
}

/* Whether a clamp of the operation has its stud beside the part. */
static int has_studs(const sw__map *m)
{
    for (int i = 0; i < m->job->clamps; i++)
        if (m->op->has[i] && sw__is_set(m->job->clamp[i].out.toward_deg))
            return 1;
    return 0;
}

static void legend_contacts(row *r)
{
    sw__map *m = r->m;
    const double em = m->em;
    const sw__point s = next(r, "support");
    sw__svg_circle(m->svg, s, 0.5 * em,
                   "fill=\"none\" stroke=\"#33507a\" stroke-width=\"1.5\"");
    sw__svg_line(m->svg, (sw__point){s.x - 0.5 * em, s.y},
                 (sw__point){s.x + 0.5 * em, s.y}, "stroke=\"#33507a\"");
    sw__svg_line(m->svg, (sw__point){s.x, s.y - 0.5 * em},
                 (sw__point){s.x, s.y + 0.5 * em}, "stroke=\"#33507a\"");
    if (m->job->stops) {
        const sw__point a = next(r, "stop");
        const sw__point p[3] = {{a.x + 0.6 * em, a.y},
                                {a.x - 0.5 * em, a.y - 0.5 * em},
                                {a.x - 0.5 * em, a.y + 0.5 * em}};
        sw__svg_polygon(m->svg, p, 3, "fill=\"#33507a\"");
    }
    if (m->op->out.clamps > 0) {
        const sw__point c =
            next(r, has_studs(m) ? "clamp, bar to its stud" : "clamp");
        const sw__point p[4] = {{c.x - 0.4 * em, c.y - 0.4 * em},
                                {c.x + 0.4 * em, c.y - 0.4 * em},
                                {c.x + 0.4 * em, c.y + 0.4 * em},
                                {c.x - 0.4 * em, c.y + 0.4 * em}};
        sw__svg_polygon(m->svg, p, 4, "fill=\"#1a1a1a\"");
    }
}

static void legend_push(row *r)
{
    sw__map *m = r->m;
    char text[160], force[100];
    if (!sw__is_set(m->out.net_side_N) || m->out.net_side_N < 0.5)
        return;
    sw_say(m->out.net_side_N, SW_KIND_FORCE, m->how.show, force, sizeof force);
    sw__line line = sw__line_start(text, sizeof text);
    sw__line_add(&line, "all straps together push it, ");
    sw__line_add(&line, force);
    const sw__point at = next(r, text);
    sw__arrow(m->svg, (sw__point){at.x - 0.9 * m->em, at.y},
              (sw__point){at.x + 0.9 * m->em, at.y}, 0.9 * m->em,
              "fill=\"#fff\" stroke=\"#6a1b8a\" stroke-width=\"1.5\" "
              "stroke-dasharray=\"4 2\"");
}

/* A round length of about a fifth of the width. */
static void legend_bar(row *r)
{
    sw__map *m = r->m;
    char text[100], length[100];
    const double unit = m->us ? 25.4 : 1;
    const double wide = (m->frame.right - m->frame.left) / m->px_per_mm / unit;
    const double step = sw__scale_step(wide / 5, 1) * unit;
    const double px = step * m->px_per_mm;
    sw_say(step, SW_KIND_LENGTH, m->how.show, length, sizeof length);
    sw__line line = sw__line_start(text, sizeof text);
    sw__line_add(&line, length);
    const double em = m->em;
    if (r->x > 2 * em) {
        r->x = em;
        r->y += 1.6 * em;
    }
    const double x = r->x + 0.4 * em, y = r->y - 0.35 * em;
    sw__svg_group(m->svg, "class=\"bar\" stroke=\"#1a1a1a\" "
                          "stroke-width=\"1.5\"");
    sw__svg_line(m->svg, (sw__point){x, y}, (sw__point){x + px, y}, "");
    sw__svg_line(m->svg, (sw__point){x, y - 0.4 * em},
                 (sw__point){x, y + 0.4 * em}, "");
    sw__svg_line(m->svg, (sw__point){x + px, y - 0.4 * em},
                 (sw__point){x + px, y + 0.4 * em}, "");
    sw__svg_group_end(m->svg);
    sw__svg_text(m->svg, (sw__point){x + px + 0.6 * em, r->y}, "start", "",
                 text);
    r->x = x + px + em * (sw__letters_em(text, 0) + 2);
}

double sw__map_legend(sw__map *m, double y)
{
    row r = {m, m->em, y + 1.2 * m->em};
    sw__svg_group(m->svg, "class=\"legend\"");
    legend_marks(&r);
    r.x = m->em;
    r.y += 1.6 * m->em;
    legend_contacts(&r);
    legend_push(&r);
    legend_bar(&r);
    sw__svg_group_end(m->svg);
    return r.y + 0.6 * m->em;
}

void sw__map_about(const sw__map *m, char *text, size_t room)
{
    char margin[40];
    int count[SW__MARK_NONE + 1] = {0};
    for (int i = 0; i < m->points; i++)
        count[sw__map_mark_of(m, m->point[i].margin)]++;
    sw__line line = sw__line_start(text, room);
    add_title(m, &line);
    sw__line_add(&line, ": ");
    add_verdict(m, &line);
    sw__line_add(&line, ".");
    if (!sw__map_rests(m))
        return;
    sw__line_add(&line, " Of ");
    sw__line_add_number(&line, m->points);
    sw__line_add(&line, " points ");
    sw__line_add_number(&line, count[SW__MARK_HOLDS]);
    sw__line_add(&line, " have the wanted margin, ");
    sw__line_add_number(&line, count[SW__MARK_LITTLE]);
    sw__line_add(&line, " less, ");
    sw__line_add_number(&line, count[SW__MARK_GOES]);
    sw__line_add(&line, " below 1. The worst is at ");
    sw__line_add_number(&line, m->point[m->worst].x);
    sw__line_add(&line, ", ");
    sw__line_add_number(&line, m->point[m->worst].y);
    sw__map_margin(m, m->point[m->worst].margin, margin, sizeof margin);
    sw__line_add(&line, " mm with ");
    sw__line_add(&line, margin);
    sw__line_add(&line, ".");
}
