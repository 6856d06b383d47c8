/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tilt plot: what raising or lowering the heel does to the part, with a flat
 * and with a spherical seat.
 *
 * Two graphs on one axis of tilt: the side pull, zero being that the part is
 * left alone, and the toe force against that of the level strap. A curve is
 * told from the other by its dashes and by its name beside it, not by colour
 * alone. Thick: the toe is at its friction limit, which flattens the curve.
 * Barred: the stud is past its yield.
 * Dots: beyond what the spherical pair takes up. A gap: no equilibrium, or the
 * heel would be below the table. The curves: tilt_curve.c; scales: tilt_scales.c;
 * words: tilt_words.c and tilt_names.c.
 *
 * All measures are in sizes of the lettering, so that a narrow drawing keeps
 * its words and loses graduations. Groups have classes (axis, grid, flat,
 * dished, here, slides, yields, caption) beside their looks, for a page that wants
 * others.
 */
#include "sheet/tilt_sheet.h"

#include <strapwise/tilt_plot.h>

#include <string.h>

static const char *class_of(int seat)
{
    return seat == SW__TILT_FLAT
               ? "class=\"flat\" fill=\"none\" stroke=\"" SW__FLAT_INK "\""
               : "class=\"dished\" fill=\"none\" stroke=\"" SW__DISHED_INK "\"";
}
/* ---- curves ---- */

static void stretches(sw__sheet *p, int graph, int seat, sw__point_test passes,
                      int joined, const char *look)
{
    sw__point point[SW__TILT_POINTS];
    const sw__tilts *t = p->t;
    for (int from = 0, end; sw__sheet_stretch(t, seat, passes, &from, &end);
         from = end) {
        int first = from, n = 0;
        /* where the next stretch goes on with another look, no gap */
        if (joined && first > 0 && t->curve[seat][first - 1].known)
            first--;
        const int last = joined && end < t->points && t->curve[seat][end].known
                             ? end + 1
                             : end;
        for (int i = first; i < last; i++)
            point[n++] = sw__sheet_place(p, graph, &t->curve[seat][i]);
        if (n > 1)
            sw__svg_polyline(&p->svg, point, n, look);
    }
}

static void curves(sw__sheet *p, int graph)
{
    char look[80];
    for (int seat = 0; seat < SW__TILT_SEATS; seat++) {
        sw__sheet_group(p, "class=\"yields\" fill=\"none\" stroke=\"#e9b3ab\"",
                        "stroke-width", 0.9 * p->T);
        sw__sheet_dashes(p, 0.2, 0.2, look, sizeof look);
        stretches(p, graph, seat, sw__is_yielding, 0, look);
        sw__svg_group_end(&p->svg);
    }
    if (graph == SW__PULL) {
        for (int seat = 0; seat < SW__TILT_SEATS; seat++) {
            sw__sheet_group(p,
                            "class=\"slides\" fill=\"none\" stroke=\"#c9b458\" "
                            "stroke-linecap=\"round\"",
                            "stroke-width", 0.55 * p->T);
            stretches(p, graph, seat, sw__is_sliding, 0, "");
            sw__svg_group_end(&p->svg);
        }
    }
    sw__sheet_group(p, class_of(SW__TILT_FLAT), "stroke-width", 0.17 * p->T);
    stretches(p, graph, SW__TILT_FLAT, sw__is_known, 0, "");
    sw__svg_group_end(&p->svg);
    sw__sheet_group(p, class_of(SW__TILT_DISHED), "stroke-width", 0.17 * p->T);
    sw__sheet_dashes(p, 0.7, 0.32, look, sizeof look);
    stretches(p, graph, SW__TILT_DISHED, sw__is_within, 0, look);
    sw__sheet_dashes(p, 0.14, 0.32, look, sizeof look);
    stretches(p, graph, SW__TILT_DISHED, sw__is_past, 1, look);
    sw__svg_group_end(&p->svg);
}

/* ---- this strap ---- */

static void disc(sw__sheet *p, sw__point c, int seat)
{
    const char *filled = seat == SW__TILT_FLAT
                             ? "fill=\"" SW__FLAT_INK "\" stroke=\"#fff\""
                             : "fill=\"" SW__DISHED_INK "\" stroke=\"#fff\"";
    const char *open = seat == SW__TILT_FLAT
                           ? "fill=\"#fff\" stroke=\"" SW__FLAT_INK "\""
                           : "fill=\"#fff\" stroke=\"" SW__DISHED_INK "\"";
    sw__svg_circle(&p->svg, c, (seat == p->t->own ? 0.4 : 0.52) * p->T,
                   seat == p->t->own ? filled : open);
}

static void here(sw__sheet *p, int graph)
{
    const sw__box *f = &p->frame[graph];
    const double x = sw__sheet_x(p, p->t->out.tilt_deg);
    sw__sheet_group(p, "class=\"here\" stroke=\"#1a1a1a\"", "stroke-width",
                    0.12 * p->T);
    sw__svg_line(&p->svg, (sw__point){x, f->top - 0.4 * p->T},
                 (sw__point){x, f->bottom}, "");
    for (int i = SW__TILT_SEATS - 1; i >= 0; i--) { /* its own on top */
        const int seat = i == 0 ? p->t->own : 1 - p->t->own;
        if (p->t->here[seat].known)
            disc(p, sw__sheet_place(p, graph, &p->t->here[seat]), seat);
    }
    sw__svg_group_end(&p->svg);
}

/* Over the graph: where level and this strap are. */
static void here_words(sw__sheet *p, int graph)
{
    const double T = p->T, base = p->frame[graph].top - 0.55 * T;
    const double x = sw__sheet_x(p, p->t->out.tilt_deg),
                 level = sw__sheet_x(p, 0);
    const double half = 0.46 * T * sw__letters_em("this strap", 1);
    const double level_half = 0.46 * T * sw__letters_em("level", 0);
    const int is_level = fabs(x - level) < 0.5;
    const double apart = half + level_half + 0.6 * T;
    double at = x, level_at = level;
    if (!is_level && fabs(x - level) < apart) { /* each steps aside */
        const double more = (apart - fabs(x - level)) / 2;
        at += x > level ? more : -more;
        level_at -= x > level ? more : -more;
    }
    const sw__box *f = &p->frame[graph]; /* units stand beside it */
    at = fmin(fmax(at, f->left + half), f->right - half);
    sw__sheet_group(p, "class=\"here\" font-weight=\"bold\"", "font-size",
                    0.92 * T);
    sw__svg_text(&p->svg, (sw__point){at, base}, "middle", "", "this strap");
    sw__svg_group_end(&p->svg);
    if (is_level)
        return;
    sw__sheet_group(p, "class=\"caption\"", "font-size", 0.92 * T);
    sw__svg_text(&p->svg, (sw__point){level_at, base}, "middle",
                 "fill=\"#555\"", "level");
    sw__svg_group_end(&p->svg);
}

/* ---- words before the graphs ---- */

/* Breaks a text into lines; returns how many. */
static int paragraph(sw__sheet *p, int draw, sw__point at, double width,
                     double size, int bold, const char *text)
{
    char line[SW__TILT_TEXT];
    for (int lines = 0;; lines++) {
        const char *start = text;
        const size_t end = sw__letters_line(&text, width / size, bold, 1);
        if (end == 0)
            return lines;
        sw__copy(line, end + 1, start);
        if (draw)
            sw__svg_text(&p->svg, (sw__point){at.x, at.y + 1.35 * size * lines},
                         "start", "", line);
    }
}

/* A seat's line and its disc, as in the graphs. */
static void sample(sw__sheet *p, int seat, sw__point at)
{
    char look[80];
    const double y = at.y - 0.35 * p->T;
    sw__sheet_group(p, class_of(seat), "stroke-width", 0.17 * p->T);
    sw__sheet_dashes(p, 0.7, 0.32, look, sizeof look);
    sw__svg_line(&p->svg, (sw__point){at.x, y},
                 (sw__point){at.x + 2.7 * p->T, y},
                 seat == SW__TILT_DISHED ? look : "");
    sw__svg_group_end(&p->svg);
    sw__sheet_group(p, "class=\"here\"", "stroke-width", 0.12 * p->T);
    disc(p, (sw__point){at.x + 1.35 * p->T, y}, seat);
    sw__svg_group_end(&p->svg);
}

/* Returns where the words end. */
static double header(sw__sheet *p, int draw)
{
    const double T = p->T, left = 0.7 * T, indent = left + 3.4 * T;
    const double width = p->W - 1.4 * T;
    double y = 1.7 * T;
    if (draw)
        sw__sheet_group(p, "class=\"caption\" font-weight=\"bold\"",
                        "font-size", 1.35 * T);
    y += 1.35 * 1.35 * T *
         paragraph(p, draw, (sw__point){left, y}, width, 1.35 * T, 1,
                   p->words.title);
    if (draw) {
        sw__svg_group_end(&p->svg);
        sw__sheet_group(p, "class=\"caption\"", "font-size", T);
    }
    y += 1.35 * T *
         paragraph(p, draw, (sw__point){left, y}, width, T, 0, p->words.here);
    for (int seat = 0; seat < SW__TILT_SEATS; seat++)
        y += 1.35 * T *
             paragraph(p, draw, (sw__point){indent, y}, width - 3.4 * T, T, 0,
                       p->words.seat[seat]);
    if (!draw)
        return y;
    sw__svg_group_end(&p->svg);
    return y;
}

static void samples(sw__sheet *p)
{
    const double T = p->T, left = 0.7 * T, width = p->W - 1.4 * T;
    double y = 1.7 * T;
    y += 1.35 * 1.35 * T *
         paragraph(p, 0, (sw__point){0, 0}, width, 1.35 * T, 1, p->words.title);
    y += 1.35 * T *
         paragraph(p, 0, (sw__point){0, 0}, width, T, 0, p->words.here);
    for (int seat = 0; seat < SW__TILT_SEATS; seat++) {
        sample(p, seat, (sw__point){left, y});
        y += 1.35 * T *
             paragraph(p, 0, (sw__point){0, 0}, width - 3.4 * T, T, 0,
                       p->words.seat[seat]);
    }
}

static sw_drawing *draw(sw__sheet *p, int show, sw_error *err)
{
    const double words_end = header(p, 0);
    const double height = sw__sheet_lay_out(p, show, words_end - 0.6 * p->T);
    sw__svg_start(&p->svg, p->W, ceil(height), p->words.title, p->words.about);
    header(p, 1);
    samples(p);
    for (int graph = 0; graph < SW__GRAPHS; graph++) {
        sw__sheet_scales(p, graph);
        sw__sheet_headings(p, graph);
        curves(p, graph);
        here_words(p, graph);
        sw__sheet_names(p, graph);
        here(p, graph);
    }
    sw__sheet_bottom(p);
    return sw__svg_finish(&p->svg, err);
}

static int take(double *value, const char *field, double low, double high,
                double usual, sw_error *err)
{
    if (*value == 0 || !sw__is_set(*value))
        *value = usual;
    return *value >= low && *value <= high
               ? SW_OK
               : sw__fail_range(err, field, *value, "px", low, high);
}

sw_drawing *sw_tilt_plot(const sw_strap_in *in, double width_px, double text_px,
                         int show, sw_error *err)
{
    enum { NARROWEST = 25 }; /* in sizes of the lettering */
    sw__tilts t;
    sw__sheet p;
    memset(&p, 0, sizeof p);
    sw__clear(err);
    int status = in ? SW_OK : sw__fail_null(err, "in");
    if (!status)
        status = take(&width_px, "width_px", 300, 4000, 860, err);
    if (!status)
        status = take(&text_px, "text_px", 9, 60, 13, err);
    if (!status && show && !sw_word(SW_WORDS_SHOW, show))
        status = sw__fail_range(err, "show", show, "", 0, SW_SHOW_US);
    if (!status)
        status = sw__tilts_of(in, &t, err);
    if (status)
        return NULL;
    show = show ? show : SW_SHOW_SI_FIRST;
    p.t = &t;
    p.W = width_px;
    p.T = fmin(text_px, width_px / NARROWEST);
    sw__tilt_say(&t, show, &p.words);
    return draw(&p, show, err);
}
