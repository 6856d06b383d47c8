/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lettering: how much room words take, where their lines break, and how they
 * keep off lines and one another.
 */
#ifndef SW_SHEET_LETTERING_H
#define SW_SHEET_LETTERING_H

#include "sheet/svg.h"

/* Width of one line, em: an estimate on the wide side, since nobody knows which
 * sans the reader has. */
SW_SIBLING double sw__letters_em(const char *text, int bold);

/* Cuts the words of a text into the next line that fits: returns its bytes,
 * and moves *text to where the line after it starts. A number is not parted
 * from the unit after it; a word that is too long has a line of its own.
 * `pauses`: rather behind a comma or semicolon, or else a colon, than at
 * the last blank that fits. 0 at the end. */
SW_SIBLING size_t sw__letters_line(const char **text, double most_em, int bold,
                                   int pauses);

/* Moves centres of things of these widths apart, each as little as it can, so
 * that they stand `gap` apart between low and high, in the order given. */
void sw__spread_out(double *centre, const double *width, int n, double gap,
                    double low, double high);

enum { SW__LABEL_LINES = 700, SW__LABEL_BOXES = 32 };

/* What is there already, for words that have several places to choose from. */
typedef struct {
    sw__box room; /* where labels may stand */
    sw__point from[SW__LABEL_LINES], to[SW__LABEL_LINES];
    double weight[SW__LABEL_LINES];
    int lines;
    sw__box taken[SW__LABEL_BOXES];
    int boxes;
} sw__labels;

/* A line that labels keep off; what does not fit in is forgotten. Weight: harm
 * of a pixel of it under words. */
void sw__label_line(sw__labels *l, sw__point from, sw__point to, double weight);

/* How bad a box of words would be here: 0 is free, less than
 * SW__LABEL_COVERED harms lines alone. */
#define SW__LABEL_COVERED 1e5
double sw__label_harm(const sw__labels *l, const sw__box *b);

void sw__label_take(sw__labels *l, const sw__box *b);

#endif
