/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Label: counts what a box of words would cover. A caller offers its places in
 * the order it likes them and takes the one with the least harm: out of the
 * plot is worse than on other words, and that worse than on lines.
 */
#include "sheet/label.h"

#include "base/utf8.h"

#include <string.h>

double sw__label_width(const char *text, double text_px)
{
    const double per_letter = 0.6; /* of the size */
    double letters = 0;
    for (size_t left = strlen(text); left > 0; letters++) {
        const size_t bytes = sw__utf8(text, left);
        text += bytes ? bytes : 1;
        left -= bytes ? bytes : 1;
    }
    return per_letter * letters * text_px;
}

void sw__label_line(sw__labels *l, sw__point from, sw__point to, double weight)
{
    if (l->lines < SW__LABEL_LINES) {
        l->from[l->lines] = from;
        l->to[l->lines] = to;
        l->weight[l->lines++] = weight;
    }
}

/* Length of a line within a box: what is left of it after each side has cut
 * (Liang and Barsky). */
static double within(sw__point a, sw__point b, const sw__box *box)
{
    const double dx = b.x - a.x, dy = b.y - a.y;
    const double step[4] = {-dx, dx, -dy, dy};
    const double room[4] = {a.x - box->left, box->right - a.x, a.y - box->top,
                            box->bottom - a.y};
    double from = 0, to = 1;
    for (int i = 0; i < 4; i++) {
        if (step[i] == 0) {
            if (room[i] < 0)
                return 0;
        } else if (step[i] < 0) {
            from = fmax(from, room[i] / step[i]);
        } else {
            to = fmin(to, room[i] / step[i]);
        }
    }
    return from < to ? (to - from) * hypot(dx, dy) : 0;
}

double sw__label_harm(const sw__labels *l, const sw__box *b)
{
    double harm = 0;
    if (b->left < l->room.left || b->right > l->room.right ||
        b->top < l->room.top || b->bottom > l->room.bottom)
        harm += 100 * SW__LABEL_COVERED;
    for (int i = 0; i < l->boxes; i++) {
        const sw__box *t = &l->taken[i];
        if (b->left < t->right && t->left < b->right && b->top < t->bottom &&
            t->top < b->bottom)
            harm += SW__LABEL_COVERED;
    }
    for (int i = 0; i < l->lines; i++) {
        const sw__point from = l->from[i], to = l->to[i];
        if ((from.x > b->left || to.x > b->left) &&
            (from.x < b->right || to.x < b->right) &&
            (from.y > b->top || to.y > b->top) &&
            (from.y < b->bottom || to.y < b->bottom))
            harm += l->weight[i] * within(from, to, b);
    }
    return harm;
}

void sw__label_take(sw__labels *l, const sw__box *b)
{
    if (l->boxes < SW__LABEL_BOXES)
        l->taken[l->boxes++] = *b;
}
