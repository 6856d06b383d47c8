/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Hold map: one operation from above, for the machine: where the part is held,
 * where the cut goes, and how surely it stays there.
 *
 * The margin of a point is the least over the loads of the cut at it. It is
 * told by the mark's shape, by its colour, and as a number where there is room,
 * so that a black print says the same. Names and numbers keep off everything
 * that is drawn (map_places.c); a name that finds no room near has a line to
 * its place, every number has one; a number without room is left out, the worst
 * one never. Where the part does not rest before the cut there are no margins:
 * its path is dots.
 *
 * Laid out from above: heading, drawing with graduated edges in the part's own
 * coordinates, in both systems of units, legend with a scale bar. Everything is
 * to one scale but the signs themselves.
 */
#include "sheet/hold_map.h"
#include "sheet/lettering.h"
#include "sheet/scale.h"

#include <stdlib.h>
#include <string.h>

#define LETTERS_MOST 30.0 /* em in a width, at least */
#define TALLEST 1.15      /* of the drawing over its width */

void sw_hold_map_defaults(sw_hold_map_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    in->width_px = in->text_px = SW_UNSET;
}

static int open_how(sw_hold_map_in *how, sw_error *err)
{
    const int status = sw__check_input(how, SW_STRUCT_HOLD_MAP_IN, err);
    if (status)
        return status;
    how->width_px = sw__is_set(how->width_px) ? how->width_px : 860;
    how->text_px = sw__is_set(how->text_px)
                       ? how->text_px
                       : fmin(13, how->width_px / LETTERS_MOST);
    if (how->text_px * LETTERS_MOST > how->width_px * (1 + 1e-12))
        return sw__fail_range(err, "text_px", how->text_px, "px", 9,
                              how->width_px / LETTERS_MOST);
    if (!how->show)
        how->show = SW_SHOW_SI_FIRST;
    return SW_OK;
}

/* The least margin at each point of the path. */
static int gather(sw__map *m, sw_error *err)
{
    const int samples = m->op->samples;
    m->points = m->op->points;
    m->point = calloc((size_t)m->points, sizeof *m->point);
    if (!m->point)
        return sw__fail_memory(err);
    for (int i = 0; i < m->points; i++) {
        sw__map_point *p = &m->point[i];
        p->x = m->op->point[i].at[0];
        p->y = m->op->point[i].at[1];
        for (int k = 0; k < samples; k++) {
            const sw_hold_point_out one =
                sw_hold_point(m->hold, i * samples + k, err);
            if (one.status || one.x_mm != p->x || one.y_mm != p->y)
                return sw__fail(err, SW_ERR_CONFLICT, "hold",
                                "hold: is not the answer to this operation");
            if (k == 0 || one.margin < p->margin)
                p->margin = one.margin;
        }
        if (p->margin < m->point[m->worst].margin)
            m->worst = i;
    }
    return SW_OK;
}

static void widen(sw__box *b, double x, double y)
{
    b->left = fmin(b->left, x);
    b->right = fmax(b->right, x);
    b->top = fmin(b->top, y);
    b->bottom = fmax(b->bottom, y);
}

/* Everything that is drawn, in millimetres; `top` is the lower end of y. */
static sw__box extent(const sw__map *m)
{
    const sw__outline *o = &m->job->outline;
    sw__box b = {o->left, o->front, o->right, o->back};
    for (int i = 0; i < m->points; i++)
        widen(&b, m->point[i].x, m->point[i].y);
    for (int i = 0; i < m->job->stops; i++)
        widen(&b, m->job->stop[i].x_mm, m->job->stop[i].y_mm);
    for (int i = 0; i < m->job->clamps; i++) {
        const sw_job_clamp_out *c = &m->job->clamp[i].out;
        if (m->op->has[i] && sw__is_set(c->stud_mm))
            widen(&b, c->x_mm + c->stud_mm * cos(SW__RAD(c->toward_deg)),
                  c->y_mm + c->stud_mm * sin(SW__RAD(c->toward_deg)));
    }
    return b;
}

static int labels(const sw__rule *r)
{
    return (int)(floor(r->high / r->step + 1e-6) -
                 ceil(r->low / r->step - 1e-6)) +
           1;
}

/* Left and below in the system that comes first, right and above in the
 * other. */
static sw__rule rule_of(const sw__map *m, int edge)
{
    const int second = edge == SW__EDGE_RIGHT || edge == SW__EDGE_TOP;
    const double unit = m->us != second ? 25.4 : 1;
    const int across = edge == SW__EDGE_BOTTOM || edge == SW__EDGE_TOP;
    const double px = across ? m->frame.right - m->frame.left
                             : m->frame.bottom - m->frame.top;
    const double high_mm = across ? m->left_mm + px / m->px_per_mm : m->top_mm;
    sw__rule r;
    memset(&r, 0, sizeof r);
    r.edge = edge;
    r.low = (across ? m->left_mm : m->top_mm - px / m->px_per_mm) / unit;
    r.high = high_mm / unit;
    r.text_px = 0.85 * m->em;
    /* at least two numbers, as far as there is room for them */
    const double least = fmax(1, floor(px / (5 * m->em)));
    int parts = (int)least;
    do
        r.step = sw__scale_step(r.high - r.low, parts++);
    while (labels(&r) < 2 && parts < 8 * (int)least);
    r.divisions =
        sw__scale_divisions(px * r.step / (r.high - r.low), r.text_px);
    return r;
}

static int shows_both(const sw__map *m)
{
    return m->how.show == SW_SHOW_SI_FIRST || m->how.show == SW_SHOW_US_FIRST;
}

static void draw_rules(sw__map *m)
{
    const double em = m->em;
    const char *const unit[] = {"x, y mm", "x, y in"};
    for (int edge = SW__EDGE_LEFT; edge <= SW__EDGE_TOP; edge++) {
        const sw__rule r = rule_of(m, edge);
        const int second = edge > SW__EDGE_BOTTOM;
        if (second && !shows_both(m))
            continue;
        if (!second)
            sw__scale_grid(m->svg, &m->frame, &r);
        sw__scale_rule(m->svg, &m->frame, &r);
    }
    sw__svg_text(m->svg, (sw__point){0.3 * em, m->frame.bottom + 1.9 * em},
                 "start", "", unit[m->us]);
    if (shows_both(m))
        sw__svg_text(
            m->svg,
            (sw__point){m->how.width_px - 0.3 * em, m->frame.top - 1.2 * em},
            "end", "", unit[!m->us]);
}

/* The frame below y: as wide as the page allows, everything in it to scale,
 * with room for straps and names around. */
static void lay(sw__map *m, double y)
{
    const sw__box b = extent(m);
    const double around = 4.2 * m->em, edge = 4.2 * m->em;
    const double wide =
        m->how.width_px - edge - (shows_both(m) ? edge : 1.5 * m->em);
    y += shows_both(m) ? 2.2 * m->em : 0;
    const double across = fmax(1e-6, b.right - b.left);
    const double along = fmax(1e-6, b.bottom - b.top);
    m->px_per_mm = fmin((wide - 2 * around) / across,
                        (TALLEST * wide - 2 * around) / along);
    m->frame.left = edge;
    m->frame.top = y;
    m->frame.right = edge + wide;
    m->frame.bottom = y + along * m->px_per_mm + 2 * around;
    /* what the width leaves over goes to both sides */
    m->left_mm = (b.left + b.right) / 2 - wide / 2 / m->px_per_mm;
    m->top_mm = b.bottom + around / m->px_per_mm;
}

static double draw(sw__map *m, sw__svg *s, sw_error *err, int *status)
{
    char look[80], number[40];
    m->svg = s;
    sw__line line = sw__line_start(look, sizeof look);
    sw_format(m->em, 4, number, sizeof number);
    sw__line_add(&line, "class=\"hold-map\" font-size=\"");
    sw__line_add(&line, number);
    sw__line_add(&line, "\"");
    sw__svg_group(s, look);
    lay(m, sw__map_heading(m, 0.2 * m->em) + 0.4 * m->em);
    *status = sw__occupied_open(&m->occupied, &m->frame, err);
    if (*status)
        return 0;
    draw_rules(m);
    sw__map_part(m);
    sw__map_contacts(m);
    sw__map_path(m);
    sw__map_push(m);
    sw__map_names(m);
    sw__map_numbers(m);
    const double y = sw__map_legend(m, m->frame.bottom + 2.4 * m->em);
    sw__svg_group_end(s);
    free(m->occupied.cell);
    m->occupied.cell = NULL;
    return ceil(y + 0.5 * m->em);
}

static sw_drawing *draw_all(sw__map *m, sw_error *err)
{
    char about[700], title[160];
    int status = SW_OK;
    sw__svg nothing = {.failed = 1}, s;
    const double height = draw(m, &nothing, err, &status);
    if (status)
        return NULL;
    sw__map_about(m, about, sizeof about);
    sw__line line = sw__line_start(title, sizeof title);
    sw__line_add(&line, "Margin along the path: ");
    sw__line_add(&line, m->op->out.name);
    sw__svg_start(&s, m->how.width_px, height, title, about);
    draw(m, &s, err, &status);
    if (status)
        s.failed = 1;
    return sw__svg_finish(&s, err);
}

sw_drawing *sw_hold_map(const sw_job *job, int operation, const sw_hold *hold,
                        const sw_hold_map_in *how, sw_error *err)
{
    sw__map m;
    memset(&m, 0, sizeof m);
    sw__clear(err);
    if (!job || !hold) {
        sw__fail_null(err, job ? "hold" : "job");
        return NULL;
    }
    if (operation < 0 || operation >= job->operations) {
        sw__fail_range(err, "operation", operation, "", 0, job->operations - 1);
        return NULL;
    }
    m.job = job;
    m.op = &job->operation[operation];
    m.hold = hold;
    m.out = sw_hold_total(hold, err);
    if (m.out.status)
        return NULL;
    if (how)
        m.how = *how;
    else
        sw_hold_map_defaults(&m.how);
    if (open_how(&m.how, err))
        return NULL;
    sw_hold_in full = m.op->hold;
    m.largest = sw_hold_resolve(&full, NULL) ? 1e4 : full.largest_margin;
    m.em = m.how.text_px;
    m.us = m.how.show == SW_SHOW_US_FIRST || m.how.show == SW_SHOW_US;
    sw_drawing *made = gather(&m, err) ? NULL : draw_all(&m, err);
    free(m.point);
    return made;
}
