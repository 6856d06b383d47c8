/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A drawing read back, element by element, as the writer sets them: one a
 * line. Checks on the way that elements close in order and that no number is
 * missing.
 */
#ifndef TESTS_READ_SVG_H
#define TESTS_READ_SVG_H

#include "../common.h"

typedef struct {
    char name[16];     /* "text", "line", "circle", "polyline", ... */
    char class_of[32]; /* of the nearest group that has one */
    char text[400];    /* of a text */
    char anchor[8];
    char fill[16], dashes[32];
    double size; /* of letters */
    double x, y; /* text; centre of a circle; start of a line */
    double x2, y2;
    int points;
    double px[200], py[200];
} element;

typedef struct {
    double width, height;
    int count;
    element *at; /* to be freed */
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
        must(n > 0 && n < sizeof number && e->points < 200, "%.80s", line);
        memcpy(number, at, n);
        number[n] = '\0';
        const sw_quantity_out q = sw_number(number, "point", NULL);
        must(q.status == 0, "point %s", number);
        if (at[n] == ',')
            e->px[e->points] = q.value;
        else
            e->py[e->points++] = q.value;
        at += n + (at[n] != '"');
    }
}

typedef struct {
    char class_of[32];
    double size;
} nested;

static inline drawing read_drawing(const char *svg)
{
    drawing d = {0, 0, 0, NULL};
    nested level[16] = {{"", 16}};
    int depth = 0, room = 0;
    must(!strstr(svg, "nan") && !strstr(svg, "inf\""), "no number: %s", svg);
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
        if (strncmp(line, "<svg", 4) == 0) {
            d.width = numeric(line, "width");
            d.height = numeric(line, "height");
        } else if (strncmp(line, "<g", 2) == 0) {
            must(++depth < 16, "too deep");
            level[depth] = level[depth - 1];
            char value[32];
            if (attribute(line, "class", value, sizeof value))
                strcpy(level[depth].class_of, value);
            if (strstr(line, "font-size"))
                level[depth].size = numeric(line, "font-size");
        } else if (strcmp(line, "</g>") == 0) {
            must(depth-- > 0, "</g> closes nothing");
        } else if (line[1] != '/' && strncmp(line, "<title", 6) != 0 &&
                   strncmp(line, "<desc", 5) != 0) {
            if (d.count == room) {
                room = 2 * room + 256;
                d.at = realloc(d.at, (size_t)room * sizeof *d.at);
            }
            element *e = &d.at[d.count++];
            memset(e, 0, sizeof *e);
            const size_t name = strcspn(line + 1, " />");
            memcpy(e->name, line + 1, name);
            strcpy(e->class_of, level[depth].class_of);
            e->size = level[depth].size;
            attribute(line, "text-anchor", e->anchor, sizeof e->anchor);
            attribute(line, "fill", e->fill, sizeof e->fill);
            attribute(line, "stroke-dasharray", e->dashes, sizeof e->dashes);
            const int circle = strcmp(e->name, "circle") == 0;
            const int straight = strcmp(e->name, "line") == 0;
            e->x = numeric(line, circle ? "cx" : straight ? "x1" : "x");
            e->y = numeric(line, circle ? "cy" : straight ? "y1" : "y");
            e->x2 = numeric(line, "x2");
            e->y2 = numeric(line, "y2");
            if (strcmp(e->name, "text") == 0) {
                const char *from = strchr(line, '>') + 1;
                const size_t length = strcspn(from, "<");
                must(length > 0 && length < sizeof e->text &&
                         strcmp(from + length, "</text>") == 0,
                     "%.80s", line);
                memcpy(e->text, from, length);
            } else {
                must(line[n - 2] == '/', "%.80s is left open", line);
            }
            if (strstr(line, "points=\""))
                read_points(line, e);
        }
    }
    must(depth == 0, "%d groups are left open", depth);
    must(strcmp(svg + strlen(svg) - 7, "</svg>\n") == 0, "no end");
    must(d.width > 0 && d.height > 0, "no size");
    return d;
}

static inline const element *find_text(const drawing *d, const char *text)
{
    for (int i = 0; i < d->count; i++)
        if (strcmp(d->at[i].name, "text") == 0 &&
            strcmp(d->at[i].text, text) == 0)
            return &d->at[i];
    return NULL;
}

/* Everything lies within the drawing; letters taken half as wide as high. */
static inline void check_inside(const char *what, const drawing *d)
{
    const double most = 0.02; /* rounding to hundredths */
    for (int i = 0; i < d->count; i++) {
        const element *e = &d->at[i];
        double left = e->x, right = e->x, top = e->y, bottom = e->y;
        if (strcmp(e->name, "text") == 0) {
            const double w = 0.5 * e->size * (double)strlen(e->text);
            left -= strcmp(e->anchor, "end") == 0      ? w
                    : strcmp(e->anchor, "middle") == 0 ? w / 2
                                                       : 0;
            right = left + w;
            top -= 0.75 * e->size;
            bottom += 0.2 * e->size;
        } else if (strcmp(e->name, "line") == 0) {
            left = fmin(e->x, e->x2);
            right = fmax(e->x, e->x2);
            top = fmin(e->y, e->y2);
            bottom = fmax(e->y, e->y2);
        }
        for (int k = 0; k < e->points; k++) {
            left = k ? fmin(left, e->px[k]) : e->px[k];
            right = k ? fmax(right, e->px[k]) : e->px[k];
            top = k ? fmin(top, e->py[k]) : e->py[k];
            bottom = k ? fmax(bottom, e->py[k]) : e->py[k];
        }
        must(left >= -most && right <= d->width + most && top >= -most &&
                 bottom <= d->height + most,
             "%s: %s \"%s\" (%g .. %g, %g .. %g) leaves %g x %g", what, e->name,
             e->text, left, right, top, bottom, d->width, d->height);
    }
}

#endif
