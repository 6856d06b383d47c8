/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tilt places: where words would do least harm in a plot of tilt.
 */
#ifndef SW_SHEET_TILT_PLACES_H
#define SW_SHEET_TILT_PLACES_H

#include "sheet/tilt_sheet.h"

/* One or two lines of words; a two-line text has its break as '\n'. */
typedef struct {
    const char *text;
    double width, height;
} sw__words;

sw__words sw__words_of(const sw__sheet *p, const char *text);

/* Beside a curve's points from .. end - 1, over or under it, near it and near
 * their middle if that does no harm. Returns the harm done; infinite: no place
 * at all. */
double sw__beside_curve(const sw__sheet *p, int graph, int seat, int from,
                        int end, const sw__words *w, sw__box *best);

/* On one side of zero: at the left edge or, where that is taken, elsewhere. */
double sw__beside_zero(const sw__sheet *p, int graph, int under,
                       const sw__words *w, sw__box *best);

#endif
