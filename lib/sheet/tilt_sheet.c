/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tilt sheet: places in a plot of tilt, stretches of its curves, looks.
 */
#include "sheet/tilt_sheet.h"

#include <strapwise/units.h>

/* name="value" behind what is there */
static void attribute(sw__line *line, const char *name, double value)
{
    char text[40];
    sw_format(value, 4, text, sizeof text);
    sw__line_add(line, " ");
    sw__line_add(line, name);
    sw__line_add(line, "=\"");
    sw__line_add(line, text);
    sw__line_add(line, "\"");
}

void sw__sheet_group(sw__sheet *p, const char *look, const char *name,
                     double value)
{
    char text[200];
    sw__line line = sw__line_start(text, sizeof text);
    sw__line_add(&line, look);
    attribute(&line, name, value);
    sw__svg_group(&p->svg, text);
}

double sw__sheet_x(const sw__sheet *p, double tilt_deg)
{
    const sw__box *f = &p->frame[SW__PULL];
    const sw__tilts *t = p->t;
    return f->left + (tilt_deg - t->low_deg) / (t->high_deg - t->low_deg) *
                         (f->right - f->left);
}

double sw__sheet_value(const sw__sheet *p, int graph, const sw__tilt_point *q)
{
    return graph == SW__PULL ? q->pull_N / p->unit_N : q->error_pct;
}

double sw__sheet_y(const sw__sheet *p, int graph, double value)
{
    const sw__box *f = &p->frame[graph];
    const sw__rule *r = &p->left[graph];
    return f->bottom -
           (value - r->low) / (r->high - r->low) * (f->bottom - f->top);
}

sw__point sw__sheet_place(const sw__sheet *p, int graph,
                          const sw__tilt_point *q)
{
    return (sw__point){sw__sheet_x(p, q->tilt_deg),
                       sw__sheet_y(p, graph, sw__sheet_value(p, graph, q))};
}

int sw__is_known(const sw__tilt_point *q) { return q->known; }
int sw__is_within(const sw__tilt_point *q) { return q->known && !q->past; }
int sw__is_past(const sw__tilt_point *q) { return q->known && q->past; }
int sw__is_sliding(const sw__tilt_point *q) { return q->known && q->slides; }
int sw__is_yielding(const sw__tilt_point *q) { return q->known && q->yields; }

int sw__sheet_stretch(const sw__tilts *t, int seat, sw__point_test passes,
                      int *from, int *end)
{
    const sw__tilt_point *q = t->curve[seat];
    int i = *from;
    while (i < t->points && !passes(&q[i]))
        i++;
    *from = i;
    while (i < t->points && passes(&q[i]))
        i++;
    *end = i;
    return *from < *end;
}

void sw__sheet_dashes(const sw__sheet *p, double on, double off, char *look,
                      size_t room)
{
    sw__line line = sw__line_start(look, room);
    char text[40];
    sw__line_add(&line, "stroke-dasharray=\"");
    sw_format(on * p->T, 4, text, sizeof text);
    sw__line_add(&line, text);
    sw__line_add(&line, " ");
    sw_format(off * p->T, 4, text, sizeof text);
    sw__line_add(&line, text);
    sw__line_add(&line, "\"");
}
