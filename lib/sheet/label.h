/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Label: where words go in a plot, so that they cover neither lines nor one
 * another.
 */
#ifndef SW_SHEET_LABEL_H
#define SW_SHEET_LABEL_H

#include "sheet/scale.h"

typedef struct {
    double left, top, right, bottom;
} sw__box;

enum { SW__LABEL_LINES = 700, SW__LABEL_BOXES = 16 };

/* What is there already. */
typedef struct {
    sw__box room; /* where labels may stand */
    sw__point from[SW__LABEL_LINES], to[SW__LABEL_LINES];
    double weight[SW__LABEL_LINES];
    int lines;
    sw__box taken[SW__LABEL_BOXES];
    int boxes;
} sw__labels;

/* Width of a text at this size, on the safe side for common typefaces. */
double sw__label_width(const char *text, double text_px);

/* A line that labels keep off; what does not fit in is forgotten. Weight: harm
 * of a pixel of it under words. */
void sw__label_line(sw__labels *l, sw__point from, sw__point to, double weight);

/* How bad a box of words would be here: 0 is free, less than
 * SW__LABEL_COVERED harms lines alone. */
#define SW__LABEL_COVERED 1e5
double sw__label_harm(const sw__labels *l, const sw__box *b);

void sw__label_take(sw__labels *l, const sw__box *b);

#endif
