/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Svg: writes SVG 1.1, one element a line.
 *
 * Text stays text, so that it can be searched and read aloud; what the user
 * wrote is escaped, and what XML cannot hold becomes a question mark. Lengths
 * have at most two decimals and a point. Nothing depends on locale, time or
 * place in memory: the same drawing is the same bytes. There are no ids and no
 * style sheet, which would clash where several drawings stand in one page.
 */
#include "sheet/svg.h"

#include "base/utf8.h"

#include <strapwise/units.h>

#include <stdlib.h>
#include <string.h>

struct sw_drawing {
    char *text;
};

static void add_n(sw__svg *s, const char *text, size_t n)
{
    if (s->failed)
        return;
    if (s->length + n + 1 > s->room) {
        const size_t room = 2 * (s->length + n) + 4096;
        char *more = realloc(s->text, room);
        if (!more) {
            s->failed = 1;
            return;
        }
        s->text = more;
        s->room = room;
    }
    memcpy(s->text + s->length, text, n);
    s->length += n;
    s->text[s->length] = '\0';
}

static void add(sw__svg *s, const char *text) { add_n(s, text, strlen(text)); }

static int is_xml(const char *c, size_t bytes)
{
    if (bytes == 1)
        return (unsigned char)*c >= 0x20 && *c != 0x7f;
    return bytes &&
           !(bytes == 2 && c[0] == '\xc2' &&
             (unsigned char)c[1] < 0xa0) /* C1 controls */
           && !(bytes == 3 && memcmp(c, "\xef\xbf", 2) == 0 &&
                (unsigned char)c[2] >= 0xbe); /* U+FFFE, U+FFFF */
}

static void add_escaped(sw__svg *s, const char *text)
{
    for (size_t left = strlen(text); left > 0;) {
        const size_t bytes = sw__utf8(text, left);
        if (!is_xml(text, bytes))
            add(s, "?");
        else if (*text == '&')
            add(s, "&amp;");
        else if (*text == '<')
            add(s, "&lt;");
        else if (*text == '>')
            add(s, "&gt;");
        else if (*text == '"')
            add(s, "&quot;");
        else
            add_n(s, text, bytes);
        text += bytes ? bytes : 1;
        left -= bytes ? bytes : 1;
    }
}

/* name="value" with a blank before it; at most two decimals */
static void number(sw__svg *s, const char *name, double value)
{
    char text[40];
    const double rounded = round(100 * value) / 100;
    sw_format(isfinite(rounded) ? rounded : 0, 12, text, sizeof text);
    add(s, " ");
    add(s, name);
    add(s, "=\"");
    add(s, text);
    add(s, "\"");
}

static void look_at(sw__svg *s, const char *look)
{
    if (look[0]) {
        add(s, " ");
        add(s, look);
    }
}

void sw__svg_start(sw__svg *s, double width, double height, const char *title,
                   const char *about)
{
    char box[80], text[40];
    memset(s, 0, sizeof *s);
    sw__line line = sw__line_start(box, sizeof box);
    sw__line_add(&line, " viewBox=\"0 0 ");
    sw_format(width, 6, text, sizeof text);
    sw__line_add(&line, text);
    sw__line_add(&line, " ");
    sw_format(height, 6, text, sizeof text);
    sw__line_add(&line, text);
    sw__line_add(&line, "\"");
    add(s, "<svg xmlns=\"http://www.w3.org/2000/svg\"");
    number(s, "width", width);
    number(s, "height", height);
    add(s, box);
    add(s, " role=\"img\" font-family=\"Helvetica, Arial, sans-serif\" "
           "fill=\"#1a1a1a\">\n<title>");
    add_escaped(s, title);
    add(s, "</title>\n<desc>");
    add_escaped(s, about);
    add(s, "</desc>\n<rect");
    number(s, "width", width);
    number(s, "height", height);
    add(s, " class=\"paper\" fill=\"#fff\"/>\n");
}

sw_drawing *sw__svg_finish(sw__svg *s, sw_error *err)
{
    add(s, "</svg>\n");
    sw_drawing *made = s->failed ? NULL : malloc(sizeof *made);
    if (!made) {
        free(s->text);
        sw__fail_memory(err);
        return NULL;
    }
    made->text = s->text;
    return made;
}

const char *sw_drawing_svg(const sw_drawing *drawing)
{
    return drawing ? drawing->text : NULL;
}

void sw_drawing_free(sw_drawing *drawing)
{
    if (!drawing)
        return;
    free(drawing->text);
    free(drawing);
}

void sw__svg_line(sw__svg *s, sw__point from, sw__point to, const char *look)
{
    add(s, "<line");
    number(s, "x1", from.x);
    number(s, "y1", from.y);
    number(s, "x2", to.x);
    number(s, "y2", to.y);
    look_at(s, look);
    add(s, "/>\n");
}

static void points_of(sw__svg *s, const sw__point *point, int points,
                      const char *look)
{
    char text[40];
    add(s, " points=\"");
    for (int i = 0; i < points; i++)
        for (int k = 0; k < 2; k++) {
            const double value =
                round(100 * (k ? point[i].y : point[i].x)) / 100;
            add(s, k ? "," : i ? " " : "");
            sw_format(isfinite(value) ? value : 0, 12, text, sizeof text);
            add(s, text);
        }
    add(s, "\"");
    look_at(s, look);
    add(s, "/>\n");
}

void sw__svg_polygon(sw__svg *s, const sw__point *point, int points,
                     const char *look)
{
    add(s, "<polygon");
    points_of(s, point, points, look);
}

void sw__svg_polyline(sw__svg *s, const sw__point *point, int points,
                      const char *look)
{
    add(s, "<polyline fill=\"none\"");
    points_of(s, point, points, look);
}

void sw__svg_circle(sw__svg *s, sw__point centre, double radius,
                    const char *look)
{
    add(s, "<circle");
    number(s, "cx", centre.x);
    number(s, "cy", centre.y);
    number(s, "r", radius);
    look_at(s, look);
    add(s, "/>\n");
}

void sw__svg_text(sw__svg *s, sw__point at, const char *anchor,
                  const char *look, const char *text)
{
    add(s, "<text");
    number(s, "x", at.x);
    number(s, "y", at.y);
    if (strcmp(anchor, "start") != 0) {
        add(s, " text-anchor=\"");
        add(s, anchor);
        add(s, "\"");
    }
    look_at(s, look);
    add(s, ">");
    add_escaped(s, text);
    add(s, "</text>\n");
}

void sw__svg_text_turned(sw__svg *s, sw__point at, int degrees,
                         const char *look, const char *text)
{
    char turn[120], value[40];
    sw__line line = sw__line_start(turn, sizeof turn);
    sw__line_add(&line, "transform=\"rotate(");
    sw__line_add_number(&line, degrees);
    for (int k = 0; k < 2; k++) {
        sw_format(round(100 * (k ? at.y : at.x)) / 100, 12, value,
                  sizeof value);
        sw__line_add(&line, " ");
        sw__line_add(&line, value);
    }
    sw__line_add(&line, ")\"");
    sw__svg_group(s, turn);
    sw__svg_text(s, at, "middle", look, text);
    sw__svg_group_end(s);
}

void sw__svg_group(sw__svg *s, const char *look)
{
    add(s, "<g");
    look_at(s, look);
    add(s, ">\n");
}

void sw__svg_group_end(sw__svg *s) { add(s, "</g>\n"); }
