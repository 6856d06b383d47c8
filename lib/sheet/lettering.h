/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lettering: how much room words take, and how they keep out of one another's
 * way.
 */
#ifndef SW_SHEET_LETTERING_H
#define SW_SHEET_LETTERING_H

#include "sheet/svg.h"

/* Width of one line, em: an estimate on the wide side, since nobody knows which
 * sans the reader has. */
double sw__letters_em(const char *text, int bold);

/* Cuts the words of a text into the next line that fits: returns its bytes,
 * and moves *text to where the line after it starts. A number is not
 * parted from the unit after it; a word that is too long has a line of its own. 0 at the end. */
size_t sw__letters_line(const char **text, double most_em, int bold);

/* Moves centres of things of these widths apart, each as little as it can, so
 * that they stand `gap` apart between low and high, in the order given. */
void sw__spread_out(double *centre, const double *width, int n, double gap,
                    double low, double high);

#endif
