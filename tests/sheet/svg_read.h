/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reads a drawing back: groups by their class, points, and every text with the
 * box it takes up. Knows the few elements that the library writes.
 */
#ifndef TESTS_SVG_READ_H
#define TESTS_SVG_READ_H

#include "../common.h"

typedef struct {
    double x, y;
} point;

typedef struct {
    double left, top, right, bottom;
    char text[200];
} text_box;

/* Where the n-th group of just this class starts, or NULL. */
static inline const char *find_group(const char *svg, const char *class, int n)
{
    char wanted[80];
    snprintf(wanted, sizeof wanted, "<g class=\"%s\"", class);
    for (; (svg = strstr(svg, wanted)); svg++)
        if (n-- == 0)
            return svg;
    return NULL;
}

/* The points of the first polygon from here on. */
static inline int read_points(const char *from, point *p, int most)
{
    const char *at = strstr(from, "<polygon");
    must(at != NULL, "no polygon");
    at = strstr(at, "points=\"") + 8;
    int n = 0;
    while (*at != '"' && n < most) {
        char *end;
        p[n].x = strtod(at, &end);
        must(*end == ',', "no comma at %.20s", end);
        p[n].y = strtod(end + 1, &end);
        n++;
        at = end + (*end == ' ');
    }
    return n;
}

typedef struct {
    point tip, tail;
    double length;
} arrow;

/* The arrow of a group: its point 0 is the tip, 3 and 4 the tail's corners. */
static inline arrow read_arrow(const char *svg, const char *class)
{
    point p[8];
    const char *group = find_group(svg, class, 0);
    must(group != NULL, "no group %s", class);
    ck_assert_int_eq(read_points(group, p, 8), 7);
    const point tail = {(p[3].x + p[4].x) / 2, (p[3].y + p[4].y) / 2};
    return (arrow){p[0], tail, hypot(p[0].x - tail.x, p[0].y - tail.y)};
}

static inline double attribute(const char *tag, const char *name)
{
    char wanted[40];
    snprintf(wanted, sizeof wanted, " %s=\"", name);
    const char *end = strchr(tag, '>');
    const size_t n = strlen(wanted);
    for (const char *at = tag; at + n < end; at++)
        if (memcmp(at, wanted, n) == 0)
            return strtod(at + n, NULL);
    return NAN;
}

static inline int has(const char *tag, const char *part)
{
    const char *end = strchr(tag, '>');
    const size_t n = strlen(part);
    for (const char *at = tag; at + n <= end; at++)
        if (memcmp(at, part, n) == 0)
            return 1;
    return 0;
}

/* How wide a text is, em: an ordinary sans, measured as the mean over long
 * lines; bold is wider. */
#define PLAIN_EM 0.58
#define BOLD_EM 0.64

enum { MOST_DEPTH = 16, MOST_TEXTS = 400 };

/* Every text with its box; must() holds that the elements are nested well. */
static inline int read_texts(const char *svg, text_box *box)
{
    struct {
        char name[16];
        double size, turn, at_x, at_y;
        int bold;
    } open[MOST_DEPTH] = {{"", 16, 0, 0, 0, 0}};
    int depth = 0, texts = 0;
    for (const char *c = strchr(svg, '<'); c; c = strchr(c + 1, '<')) {
        const char *end = strchr(c, '>');
        must(end != NULL, "a tag without end");
        const size_t n = strcspn(c + 1, " />");
        if (c[1] == '/') {
            const size_t m = strcspn(c + 2, ">");
            must(depth > 0 && strlen(open[depth].name) == m &&
                     memcmp(open[depth].name, c + 2, m) == 0,
                 "%.20s closes %s", c, open[depth].name);
            depth--;
            continue;
        }
        if (end[-1] == '/')
            continue;
        must(depth + 1 < MOST_DEPTH && n < sizeof open[0].name, "%.40s", c);
        open[depth + 1] = open[depth];
        depth++;
        memcpy(open[depth].name, c + 1, n);
        open[depth].name[n] = '\0';
        if (!isnan(attribute(c, "font-size")))
            open[depth].size = attribute(c, "font-size");
        open[depth].bold |= has(c, "font-weight=\"bold\"");
        const char *turn = strstr(c, "rotate(");
        if (turn && turn < end) {
            char *rest;
            open[depth].turn = strtod(turn + 7, &rest);
            open[depth].at_x = strtod(rest, &rest);
            open[depth].at_y = strtod(rest, &rest);
        }
        if (strcmp(open[depth].name, "text") != 0)
            continue;
        must(texts < MOST_TEXTS, "more texts than expected");
        text_box *b = &box[texts++];
        const size_t bytes = strcspn(end + 1, "<");
        must(bytes < sizeof b->text, "long text %.60s", end);
        memcpy(b->text, end + 1, bytes);
        b->text[bytes] = '\0';
        size_t letters = 0;
        for (size_t i = 0; i < bytes; i++)
            letters += ((unsigned char)b->text[i] & 0xc0) != 0x80;
        const double size = open[depth].size;
        const double wide =
            (double)letters * size * (open[depth].bold ? BOLD_EM : PLAIN_EM);
        const double x = attribute(c, "x"), y = attribute(c, "y");
        const double left = has(c, "\"middle\"") ? x - wide / 2
                            : has(c, "\"end\"")  ? x - wide
                                                 : x;
        *b = (text_box){left, y - 0.74 * size, left + wide, y + 0.2 * size, ""};
        memcpy(b->text, end + 1, bytes);
        if (open[depth].turn != 0) { /* by 90 degrees, about its own place */
            const double up = open[depth].turn < 0 ? 0.74 : 0.2;
            const double down = open[depth].turn < 0 ? 0.2 : 0.74;
            near(open[depth].at_x, x, 0.02, 0);
            near(fabs(open[depth].turn), 90, 0, 0);
            b->left = x - up * size;
            b->right = x + down * size;
            b->top = y - wide / 2;
            b->bottom = y + wide / 2;
        }
    }
    must(depth == 0, "%s is left open", open[depth].name);
    return texts;
}

/* Whether a point lies well inside a box. */
static inline int inside(const text_box *b, double x, double y)
{
    const double off = 0.6; /* half of a line's width */
    return x > b->left + off && x < b->right - off && y > b->top + off &&
           y < b->bottom - off;
}

static inline int overlap(const text_box *a, const text_box *b)
{
    const double off = 0.3;
    return a->left < b->right - off && b->left < a->right - off &&
           a->top < b->bottom - off && b->top < a->bottom - off;
}

#endif
