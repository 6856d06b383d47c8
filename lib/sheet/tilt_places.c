/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tilt places: every place that words may take in a plot of tilt is tried;
 * lettering.c tells the harm.
 */
#include "sheet/tilt_places.h"

#include <string.h>

sw__words sw__words_of(const sw__sheet *p, const char *text)
{
    const char *broken = strchr(text, '\n');
    const double size = 0.92 * p->T;
    sw__words w = {text, 0, 1.15 * p->T};
    if (broken) {
        char first[60];
        sw__copy(first, sizeof first, text);
        first[broken - text] = '\0';
        w.width = size *
                  fmax(sw__letters_em(first, 0), sw__letters_em(broken + 1, 0));
        w.height *= 2;
    } else {
        w.width = size * sw__letters_em(text, 0);
    }
    return w;
}

/* Highest and lowest place of a curve over a width. */
static void extent(const sw__sheet *p, int graph, int seat, double left,
                   double right, double *top, double *bottom)
{
    const sw__tilts *t = p->t;
    const double step =
        (sw__sheet_x(p, t->high_deg) - sw__sheet_x(p, t->low_deg)) /
        (t->points - 1);
    const double start = p->frame[graph].left;
    const int first = (int)fmax(0, floor((left - start) / step));
    const int last = (int)fmin(t->points - 1, ceil((right - start) / step));
    *top = INFINITY;
    *bottom = -INFINITY;
    for (int i = first; i <= last; i++)
        if (t->curve[seat][i].known) {
            const double y = sw__sheet_place(p, graph, &t->curve[seat][i]).y;
            *top = fmin(*top, y);
            *bottom = fmax(*bottom, y);
        }
}

double sw__beside_curve(const sw__sheet *p, int graph, int seat, int from,
                        int end, const sw__words *w, sw__box *best)
{
    enum { TRIALS = 24 };
    /* lettering sizes */
    static const double gaps[] = {0.3, 0.9, 1.6, 2.4, 3.4, 4.6};
    enum { PLACES = 2 * sizeof gaps / sizeof gaps[0] };
    const double far = 8, aside = 0.2; /* harm of them, per lettering size */
    const sw__box *room = &p->labels.room;
    const sw__tilts *t = p->t;
    const double middle = (sw__sheet_x(p, t->curve[seat][from].tilt_deg) +
                           sw__sheet_x(p, t->curve[seat][end - 1].tilt_deg)) /
                          2;
    double least = INFINITY;
    for (int i = 0; i <= TRIALS; i++) {
        const sw__tilt_point *q =
            &t->curve[seat][from + (end - 1 - from) * i / TRIALS];
        if (!q->known)
            continue;
        const double half = w->width / 2;
        const double x =
            fmin(fmax(sw__sheet_x(p, q->tilt_deg), room->left + half),
                 room->right - half);
        double top, bottom;
        extent(p, graph, seat, x - half, x + half, &top, &bottom);
        for (int k = 0; k < PLACES; k++) {
            const double gap = gaps[k / 2] * p->T;
            const double y = k % 2 ? bottom + gap : top - gap - w->height;
            const sw__box b = {x - half, y, x + half, y + w->height};
            const double off =
                far * (gaps[k / 2] - gaps[0]) + aside * fabs(x - middle) / p->T;
            if (off >= least) /* and the harm comes on top */
                continue;
            const double harm = off + sw__label_harm(&p->labels, &b);
            if (harm < least) {
                least = harm;
                *best = b;
            }
        }
    }
    return least;
}

double sw__beside_zero(const sw__sheet *p, int graph, int under,
                       const sw__words *w, sw__box *best)
{
    enum { ACROSS = 5, DOWN = 8 };
    const sw__box *room = &p->labels.room;
    const double zero = sw__sheet_y(p, graph, 0);
    const double top = under ? zero + 0.2 * p->T : room->top;
    const double bottom = under ? room->bottom : zero - 0.2 * p->T;
    const double way_down = bottom - top - w->height;
    const double way_across = room->right - room->left - w->width;
    double least = INFINITY;
    if (way_down < 0 || way_across < 0)
        return least;
    for (int i = 0; i < ACROSS; i++)
        for (int k = 0; k < DOWN; k++) {
            const double part = (double)k / (DOWN - 1);
            const double y = top + way_down * (under ? 1 - part : part);
            const double x = room->left + way_across * i / (ACROSS - 1);
            const sw__box b = {x, y, x + w->width, y + w->height};
            const double harm = sw__label_harm(&p->labels, &b);
            if (harm < least) {
                least = harm;
                *best = b;
            }
        }
    return least;
}
