/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tilt names: the words in the graphs of a plot of tilt. Each has several
 * places and takes the one that covers least (tilt_places.c); those with the least
 * choice come first. Where all places are taken it is left out: the lines before
 * the graphs have samples of the curves and say which way the part goes.
 */
#include "sheet/tilt_places.h"

#include <string.h>

#define HALO "stroke=\"#fff\" stroke-width=\"3\" paint-order=\"stroke\""

static const char *ink_of(int seat)
{
    return seat == SW__TILT_FLAT ? "fill=\"" SW__FLAT_INK "\" " HALO
                                 : "fill=\"" SW__DISHED_INK "\" " HALO;
}

static void start_labels(sw__sheet *p, int graph)
{
    /* harm of a pixel under words */
    const double on_curve = 10, on_here = 4, on_level = 1, on_zero = 2;
    const sw__box *f = &p->frame[graph];
    const sw__tilts *t = p->t;
    sw__labels *l = &p->labels;
    const double gap = 0.2 * p->T, y = sw__sheet_y(p, graph, 0);
    const double x = sw__sheet_x(p, t->out.tilt_deg), level = sw__sheet_x(p, 0);
    l->lines = l->boxes = 0;
    l->room =
        (sw__box){f->left + gap, f->top + gap, f->right - gap, f->bottom - gap};
    sw__label_line(l, (sw__point){x, f->top}, (sw__point){x, f->bottom},
                   on_here);
    sw__label_line(l, (sw__point){level, f->top}, (sw__point){level, f->bottom},
                   on_level);
    sw__label_line(l, (sw__point){f->left, y}, (sw__point){f->right, y},
                   on_zero);
    for (int seat = 0; seat < SW__TILT_SEATS; seat++) {
        const sw__tilt_point *q = t->curve[seat];
        for (int i = 1; i < t->points; i++)
            if (q[i - 1].known && q[i].known)
                sw__label_line(l, sw__sheet_place(p, graph, &q[i - 1]),
                               sw__sheet_place(p, graph, &q[i]), on_curve);
        if (t->here[seat].known) {
            const sw__point c = sw__sheet_place(p, graph, &t->here[seat]);
            const double r = 0.5 * p->T;
            const sw__box b = {c.x - r, c.y - r, c.x + r, c.y + r};
            sw__label_take(l, &b);
        }
    }
}

static void write_words(sw__sheet *p, const sw__words *w, const sw__box *b,
                        const char *look)
{
    const double x = (b->left + b->right) / 2, base = 0.28 * p->T;
    const char *broken = strchr(w->text, '\n');
    const double aside = 0.3 * p->T; /* words beside it are not part of it */
    const sw__box kept = {b->left - aside, b->top, b->right + aside, b->bottom};
    sw__label_take(&p->labels, &kept);
    if (broken) {
        char first[60];
        sw__copy(first, sizeof first, w->text);
        first[broken - w->text] = '\0';
        sw__svg_text(&p->svg, (sw__point){x, b->bottom - w->height / 2 - base},
                     "middle", look, first);
        sw__svg_text(&p->svg, (sw__point){x, b->bottom - base}, "middle", look,
                     broken + 1);
    } else {
        sw__svg_text(&p->svg, (sw__point){x, b->bottom - base}, "middle", look,
                     w->text);
    }
}

static void name_curves(sw__sheet *p, int graph)
{
    static const char *const name[SW__TILT_SEATS] = {"flat seat",
                                                     "spherical seat"};
    for (int seat = 0; seat < SW__TILT_SEATS; seat++) {
        const sw__words w = sw__words_of(p, name[seat]);
        sw__box b;
        if (sw__beside_curve(p, graph, seat, 0, p->t->points, &w, &b) >=
            SW__LABEL_COVERED)
            continue;
        sw__sheet_group(
            p, seat == SW__TILT_FLAT ? "class=\"flat\"" : "class=\"dished\"",
            "font-size", 0.92 * p->T);
        write_words(p, &w, &b, ink_of(seat));
        sw__svg_group_end(&p->svg);
    }
}

/* What is said of stretches of a curve; too short ones have no name. */
typedef struct {
    int seat;
    sw__point_test passes;
    const char *text, *class_look;
    int named; /* the stretch that has its name; -1: none */
} stretch_name;

/* The next stretch that is long enough, as sw__sheet_stretch() has it. */
static int next(const sw__sheet *p, const stretch_name *n, int *from, int *end)
{
    while (sw__sheet_stretch(p->t, n->seat, n->passes, from, end)) {
        if (*end - *from >= 2)
            return 1;
        *from = *end;
    }
    return 0;
}

/* The longest stretch; where no place beside it is free, another. */
static void name_one(sw__sheet *p, int graph, stretch_name *n)
{
    const sw__words w = sw__words_of(p, n->text);
    sw__box b, best = {0, 0, 0, 0};
    int most = 0;
    for (int from = 0, end; next(p, n, &from, &end); from = end)
        if (end - from > most && sw__beside_curve(p, graph, n->seat, from, end,
                                                  &w, &b) < SW__LABEL_COVERED) {
            most = end - from;
            n->named = from;
            best = b;
        }
    if (!most)
        return;
    sw__sheet_group(p, n->class_look, "font-size", 0.92 * p->T);
    write_words(p, &w, &best, ink_of(n->seat));
    sw__svg_group_end(&p->svg);
}

/* The other stretches, where there is room. */
static void name_others(sw__sheet *p, int graph, const stretch_name *n)
{
    const sw__words w = sw__words_of(p, n->text);
    sw__box b;
    if (n->named < 0)
        return;
    sw__sheet_group(p, n->class_look, "font-size", 0.92 * p->T);
    for (int from = 0, end; next(p, n, &from, &end); from = end)
        if (from != n->named &&
            sw__beside_curve(p, graph, n->seat, from, end, &w, &b) < 2 * p->T)
            write_words(p, &w, &b, ink_of(n->seat));
    sw__svg_group_end(&p->svg);
}

/* What lies over or under zero means; in two lines if that is better. */
static int name_side(sw__sheet *p, int graph, int under)
{
    static const char *const text[SW__GRAPHS][2][2] = {
        {{"drawn toward the stud", "drawn toward\nthe stud"},
         {"pushed away", "pushed\naway"}},
        {{"part gets more", "part gets\nmore"},
         {"part gets less", "part gets\nless"}}};
    const double broken = 2 * p->T; /* harm of two lines */
    sw__words best_words = {NULL, 0, 0};
    double least = SW__LABEL_COVERED;
    sw__box b, best = {0, 0, 0, 0};
    for (int lines = 0; lines < 2; lines++) {
        const sw__words w = sw__words_of(p, text[graph][under][lines]);
        const double harm =
            lines * broken + sw__beside_zero(p, graph, under, &w, &b);
        if (harm < least) {
            least = harm;
            best = b;
            best_words = w;
        }
    }
    if (best_words.text)
        write_words(p, &best_words, &best, HALO);
    return best_words.text != NULL;
}

/* Returns whether both have their words. */
static int name_sides(sw__sheet *p, int graph)
{
    sw__sheet_group(p, "class=\"caption\" font-style=\"italic\"", "font-size",
                    0.92 * p->T);
    const int over = name_side(p, graph, 0), under = name_side(p, graph, 1);
    sw__svg_group_end(&p->svg);
    return over && under;
}

/* Returns whether the sides have their words. */
static int name_all(sw__sheet *p, int graph, int sides_first)
{
    const int narrow = p->W < 45 * p->T;
    stretch_name stretches[] = {
        {SW__TILT_FLAT, sw__is_sliding, "toe slides", "class=\"slides\"", -1},
        {SW__TILT_DISHED, sw__is_sliding, "toe slides", "class=\"slides\"", -1},
        {SW__TILT_FLAT, sw__is_yielding,
         narrow ? "stud past\nits yield" : "stud past its yield",
         "class=\"yields\"", -1},
        {SW__TILT_DISHED, sw__is_yielding,
         narrow ? "stud past\nits yield" : "stud past its yield",
         "class=\"yields\"", -1},
        {SW__TILT_DISHED, sw__is_past,
         narrow ? "past what the\npair takes up"
                : "past what the pair takes up",
         "class=\"dished\"", -1}};
    const int kinds =
        graph == SW__PULL ? (int)(sizeof stretches / sizeof stretches[0]) : 0;
    start_labels(p, graph);
    int sides = sides_first && name_sides(p, graph);
    for (int i = 0; i < kinds; i++)
        name_one(p, graph, &stretches[i]);
    name_curves(p, graph);
    if (!sides_first)
        sides = name_sides(p, graph);
    for (int i = 0; i < kinds; i++)
        name_others(p, graph, &stretches[i]);
    return sides;
}

/* The sides of zero have most places; only if none is left they come first. */
void sw__sheet_names(sw__sheet *p, int graph)
{
    const sw__svg sheet = p->svg;
    p->svg = (sw__svg){.failed = 1}; /* drawn into nothing */
    const int fits = name_all(p, graph, 0);
    p->svg = sheet;
    name_all(p, graph, !fits);
}
