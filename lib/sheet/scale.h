/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Scale: the graduated edges of a plot.
 */
#ifndef SW_SHEET_SCALE_H
#define SW_SHEET_SCALE_H

#include "sheet/svg.h"

/* Where a plot lies in its drawing. */
typedef struct {
    double left, top, right, bottom;
} sw__frame;

typedef enum {
    SW__EDGE_LEFT = 1,
    SW__EDGE_BOTTOM,
    SW__EDGE_RIGHT,
    SW__EDGE_TOP
} sw__edge;

/* The step 1, 2 or 5 times a power of ten that parts 0 .. most into at most
 * this many. */
double sw__scale_step(double most, int parts);

/* Graduates an edge from 0 to `most`, which are its ends, in steps with ten
 * divisions, like a steel rule; the caption names quantity and unit. `grid`:
 * fine lines across at each step. */
void sw__scale_draw(sw__svg *s, const sw__frame *f, int edge, double most,
                    double step, const char *caption, int grid);

#endif
