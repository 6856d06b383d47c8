/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A strap drawn and read back. Two decimals are written, so a length is good
 * to 0.01 px.
 */
#ifndef TESTS_DRAWN_STRAP_H
#define TESTS_DRAWN_STRAP_H

#include "read_svg.h"

#define DIGIT 0.02 /* px: both ends rounded to two decimals */

typedef struct {
    sw_drawing *made;
    drawing d;
} sheet;

static inline sheet drawn(const char *what, const sw_strap_in *in,
                          const sw_strap_drawing_in *how)
{
    sw_error err;
    sheet s;
    s.made = sw_strap_drawing(in, how, &err);
    must(s.made != NULL, "%s: %s", what, err.message);
    check_no_error(what, 0, &err);
    s.d = read_drawing(sw_drawing_svg(s.made));
    return s;
}

static inline void drop(sheet *s)
{
    free(s->d.e);
    sw_drawing_free(s->made);
}

static inline int has_text(const sheet *s, const char *text)
{
    return strstr(sw_drawing_svg(s->made), text) != NULL;
}

static inline const element *group_of(const sheet *s, const char *class_of)
{
    return find_group(&s->d, class_of, 0);
}

typedef struct {
    point tip, tail;
    double length;
} arrow;

/* Its point 0 is the tip, 3 and 4 the tail's corners. */
static inline arrow arrow_of(const element *e)
{
    const point *p = e->p;
    ck_assert_int_eq(e->points, 7);
    const point tail = {(p[3].x + p[4].x) / 2, (p[3].y + p[4].y) / 2};
    return (arrow){p[0], tail, hypot(p[0].x - tail.x, p[0].y - tail.y)};
}

/* The arrow of the n-th such group. */
static inline arrow read_arrow(const sheet *s, const char *class_of, int n)
{
    return arrow_of(first(find_group(&s->d, class_of, n), "polygon"));
}

static inline sw_strap_drawing_in defaults(void)
{
    sw_strap_drawing_in how;
    sw_strap_drawing_defaults(&how);
    return how;
}

#endif
