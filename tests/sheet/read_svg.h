/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A drawing read back, element by element, as the writer sets them: one a
 * line. Checks on the way that elements close in order and that no number is
 * missing.
 */
#ifndef TESTS_READ_SVG_H
#define TESTS_READ_SVG_H

#include "../common.h"
#include "dejavu_sans.h"

#include <stdlib.h>

typedef struct {
    double x, y;
} point;

enum { MOST_POINTS = 200 };

typedef struct {
    char name[16];     /* "text", "line", "circle", "polyline", ... */
    char class_of[32]; /* of the nearest group that has one */
    int group;         /* its number, from 1 in the order of opening */
    char text[400];    /* of a text */
    char anchor[8];
    char fill[16], dashes[32];
    double size; /* of letters */
    int bold;
    int turn; /* degrees */
    point at; /* text; centre of a circle; start of a line */
    point to; /* end of a line */
    int points;
    point p[MOST_POINTS];
} element;

typedef struct {
    double width, height;
    int count;
    element *e; /* one more with no name is the end; to be freed */
} drawing;

static inline int attribute(const char *line, const char *name, char *value,
                            size_t room)
{
    char key[40];
    snprintf(key, sizeof key, " %s=\"", name);
    const char *at = strstr(line, key);
    value[0] = '\0';
    if (!at)
        return 0;
    at += strlen(key);
    const size_t n = strcspn(at, "\"");
    must(n < room, "long attribute: %.60s", line);
    memcpy(value, at, n);
    value[n] = '\0';
    return 1;
}

static inline double numeric(const char *line, const char *name)
{
    char value[64];
    if (!attribute(line, name, value, sizeof value))
        return 0;
    const sw_quantity_out q = sw_number(value, name, NULL);
    must(q.status == 0 && fabs(q.value) < 1e6, "%s in %.80s", name, line);
    return q.value;
}

static inline void read_points(const char *line, element *e)
{
    const char *at = strstr(line, "points=\"") + 8;
    while (*at != '"') {
        char number[40];
        const size_t n = strcspn(at, ", \"");
        must(n > 0 && n < sizeof number && e->points < MOST_POINTS, "%.80s",
             line);
        memcpy(number, at, n);
        number[n] = '\0';
        const sw_quantity_out q = sw_number(number, "point", NULL);
        must(q.status == 0, "point %s", number);
        if (at[n] == ',')
            e->p[e->points].x = q.value;
        else
            e->p[e->points++].y = q.value;
        at += n + (at[n] != '"');
    }
}

/* What groups hand down. */
typedef struct {
    char class_of[32];
    double size;
    int group, bold, turn;
} nested;

static inline void read_look(const char *line, nested *n)
{
    char turned[64];
    if (strstr(line, " font-size=\""))
        n->size = numeric(line, "font-size");
    n->bold |= strstr(line, "font-weight=\"bold\"") != NULL;
    if (!attribute(line, "transform", turned, sizeof turned))
        return;
    must(strncmp(turned, "rotate(90 ", 10) == 0 ||
             strncmp(turned, "rotate(-90 ", 11) == 0,
         "%s", turned);
    n->turn = turned[7] == '-' ? -90 : 90;
}

static inline void read_element(const char *line, const nested *level,
                                element *e)
{
    nested own = *level;
    const size_t name = strcspn(line + 1, " />");
    memset(e, 0, sizeof *e);
    must(name < sizeof e->name, "%.80s", line);
    memcpy(e->name, line + 1, name);
    read_look(line, &own);
    strcpy(e->class_of, own.class_of);
    e->group = own.group;
    e->size = own.size;
    e->bold = own.bold;
    e->turn = own.turn;
    attribute(line, "text-anchor", e->anchor, sizeof e->anchor);
    attribute(line, "fill", e->fill, sizeof e->fill);
    attribute(line, "stroke-dasharray", e->dashes, sizeof e->dashes);
    const int circle = strcmp(e->name, "circle") == 0;
    const int straight = strcmp(e->name, "line") == 0;
    e->at.x = numeric(line, circle ? "cx" : straight ? "x1" : "x");
    e->at.y = numeric(line, circle ? "cy" : straight ? "y1" : "y");
    e->to.x = numeric(line, "x2");
    e->to.y = numeric(line, "y2");
    if (strcmp(e->name, "text") == 0) {
        const char *from = strchr(line, '>') + 1;
        const size_t length = strcspn(from, "<");
        must(length > 0 && length < sizeof e->text &&
                 strcmp(from + length, "</text>") == 0,
             "%.80s", line);
        memcpy(e->text, from, length);
    } else {
        must(line[strlen(line) - 2] == '/', "%.80s is left open", line);
    }
    if (strstr(line, "points=\""))
        read_points(line, e);
}

static inline drawing read_drawing(const char *svg)
{
    drawing d = {0, 0, 0, NULL};
    nested level[16] = {{"", 16, 0, 0, 0}};
    int depth = 0, room = 0, groups = 0;
    must(!strstr(svg, "nan") && !strstr(svg, "inf\"") && !strstr(svg, "e+"),
         "no number: %s", svg);
    must(!strstr(svg, " id=") && !strstr(svg, "<style"), "ids or style");
    for (const char *at = svg; *at; at += strcspn(at, "\n") + 1) {
        char line[8000];
        const size_t n = strcspn(at, "\n");
        must(n < sizeof line && at[n] == '\n', "a line without end");
        memcpy(line, at, n);
        line[n] = '\0';
        must(line[0] == '<' && line[n - 1] == '>', "%.80s", line);
        int quotes = 0;
        for (const char *c = line; *c; c++)
            quotes += *c == '"';
        must(quotes % 2 == 0, "quotes: %.80s", line);
        if (d.count + 1 >= room) {
            room = 2 * room + 256;
            d.e = realloc(d.e, (size_t)room * sizeof *d.e);
        }
        if (strncmp(line, "<svg", 4) == 0) {
            d.width = numeric(line, "width");
            d.height = numeric(line, "height");
        } else if (strncmp(line, "<g", 2) == 0) {
            must(++depth < 16, "too deep");
            nested *own = &level[depth];
            *own = level[depth - 1];
            char value[32];
            if (attribute(line, "class", value, sizeof value)) {
                strcpy(own->class_of, value);
                own->group = ++groups;
            }
            read_look(line, own);
        } else if (strcmp(line, "</g>") == 0) {
            must(depth-- > 0, "</g> closes nothing");
        } else if (line[1] != '/' && strncmp(line, "<title", 6) != 0 &&
                   strncmp(line, "<desc", 5) != 0) {
            read_element(line, &level[depth], &d.e[d.count++]);
        }
    }
    must(depth == 0, "%d groups are left open", depth);
    must(strcmp(svg + strlen(svg) - 7, "</svg>\n") == 0, "no end");
    must(d.width > 0 && d.height > 0, "no size");
    memset(&d.e[d.count], 0, sizeof d.e[0]);
    return d;
}

static inline int is_a(const element *e, const char *name)
{
    return strcmp(e->name, name) == 0;
}

/* The first element of the n-th group of just this class, or NULL. */
static inline const element *find_group(const drawing *d, const char *class_of,
                                        int n)
{
    int group = 0;
    for (const element *e = d->e; e->name[0]; e++)
        if (e->group > group && strcmp(e->class_of, class_of) == 0) {
            group = e->group;
            if (n-- == 0)
                return e;
        }
    return NULL;
}

/* The first element of this name from here on. */
static inline const element *first(const element *e, const char *name)
{
    must(e != NULL, "no group for the %s", name);
    while (e->name[0] && !is_a(e, name))
        e++;
    must(e->name[0], "no %s", name);
    return e;
}

static inline const element *find_text(const drawing *d, const char *text)
{
    for (const element *e = d->e; e->name[0]; e++)
        if (is_a(e, "text") && strcmp(e->text, text) == 0)
            return e;
    return NULL;
}

typedef struct {
    double left, top, right, bottom;
} rectangle;

static inline void widen(rectangle *b, point p)
{
    b->left = fmin(b->left, p.x);
    b->right = fmax(b->right, p.x);
    b->top = fmin(b->top, p.y);
    b->bottom = fmax(b->bottom, p.y);
}

/* What a text takes up in DejaVu Sans: its capitals, and most of its
 * descenders. */
static inline rectangle box_of_text(const element *e)
{
    const double up = 0.74 * e->size, down = 0.2 * e->size;
    const double wide = e->size * dejavu_em(e->text, e->bold);
    must(wide > 0, "letters in %s", e->text);
    const double left = strcmp(e->anchor, "middle") == 0 ? -wide / 2
                        : strcmp(e->anchor, "end") == 0  ? -wide
                                                         : 0;
    if (e->turn == 0)
        return (rectangle){e->at.x + left, e->at.y - up, e->at.x + left + wide,
                           e->at.y + down};
    must(left < 0 && left > -wide, "%s turned about an end", e->text);
    return e->turn < 0 ? (rectangle){e->at.x - up, e->at.y - wide / 2,
                                     e->at.x + down, e->at.y + wide / 2}
                       : (rectangle){e->at.x - down, e->at.y - wide / 2,
                                     e->at.x + up, e->at.y + wide / 2};
}

static inline rectangle box_of(const element *e)
{
    if (is_a(e, "text"))
        return box_of_text(e);
    rectangle b = {INFINITY, INFINITY, -INFINITY, -INFINITY};
    for (int i = 0; i < e->points; i++)
        widen(&b, e->p[i]);
    if (e->points == 0)
        widen(&b, e->at);
    if (is_a(e, "line"))
        widen(&b, e->to);
    return b;
}

static inline void check_inside(const char *what, const drawing *d)
{
    const double most = 0.02; /* rounding to hundredths */
    for (const element *e = d->e; e->name[0]; e++) {
        const rectangle b = box_of(e);
        must(b.left >= -most && b.right <= d->width + most && b.top >= -most &&
                 b.bottom <= d->height + most,
             "%s: %s \"%s\" (%g .. %g, %g .. %g) leaves %g x %g", what, e->name,
             e->text, b.left, b.right, b.top, b.bottom, d->width, d->height);
    }
}

static inline int on_another(const rectangle *a, const rectangle *b)
{
    const double touch = 0.3;
    return a->left < b->right - touch && b->left < a->right - touch &&
           a->top < b->bottom - touch && b->top < a->bottom - touch;
}

/* No text lies on another or leaves the sheet. */
static inline void check_texts(const char *what, const drawing *d)
{
    const rectangle sheet = {0, 0, d->width, d->height};
    for (const element *e = d->e; e->name[0]; e++) {
        if (!is_a(e, "text"))
            continue;
        const rectangle b = box_of_text(e);
        must(b.left >= sheet.left && b.right <= sheet.right &&
                 b.top >= sheet.top && b.bottom <= sheet.bottom,
             "%s: \"%s\" (%g .. %g, %g .. %g) leaves %g x %g", what, e->text,
             b.left, b.right, b.top, b.bottom, d->width, d->height);
        for (const element *o = d->e; o < e; o++) {
            if (!is_a(o, "text"))
                continue;
            const rectangle c = box_of_text(o);
            must(!on_another(&b, &c),
                 "%s, %g px wide, letters of %g: \"%s\" on \"%s\"", what,
                 d->width, e->size, e->text, o->text);
        }
    }
}

#endif
