/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Svg: a drawing under construction.
 *
 * `look` is attributes as they stand in the document, such as
 * "stroke=\"#222\"". Out of memory is remembered: later calls do nothing and
 * sw__svg_finish() tells.
 */
#ifndef SW_SHEET_SVG_H
#define SW_SHEET_SVG_H

#include "base/internal.h"

#include <strapwise/drawing.h>

typedef struct {
    char *text;
    size_t length, room;
    int failed;
} sw__svg;

typedef struct {
    double x, y;
} sw__point;

typedef struct {
    double left, top, right, bottom;
} sw__box;

/* Width and height in pixels of 1/96 inch; the title is what a reader is told
 * who cannot see it, `about` a sentence more. */
SW_SIBLING void sw__svg_start(sw__svg *s, double width, double height,
                              const char *title, const char *about);

/* The drawing, or NULL with SW_ERR_MEMORY; frees what was under
 * construction. */
SW_SIBLING sw_drawing *sw__svg_finish(sw__svg *s, sw_error *err);

SW_SIBLING void sw__svg_line(sw__svg *s, sw__point from, sw__point to,
                             const char *look);
SW_SIBLING void sw__svg_polygon(sw__svg *s, const sw__point *point, int points,
                                const char *look);
/* The same, open and never filled. */
void sw__svg_polyline(sw__svg *s, const sw__point *point, int points,
                      const char *look);
SW_SIBLING void sw__svg_circle(sw__svg *s, sw__point centre, double radius,
                               const char *look);

/* Text at its base line; anchor "start", "middle" or "end". */
SW_SIBLING void sw__svg_text(sw__svg *s, sw__point at, const char *anchor,
                             const char *look, const char *text);
/* The same, turned to be read from the right edge (90) or the left (-90). */
void sw__svg_text_turned(sw__svg *s, sw__point at, int degrees,
                         const char *look, const char *text);

/* A group, to give many the same look, or a class: what a page may give looks
 * of its own. */
SW_SIBLING void sw__svg_group(sw__svg *s, const char *look);
SW_SIBLING void sw__svg_group_end(sw__svg *s);

#endif
