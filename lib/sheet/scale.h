/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Scale: the graduated edges of a plot.
 */
#ifndef SW_SHEET_SCALE_H
#define SW_SHEET_SCALE_H

#include "sheet/svg.h"

typedef enum {
    SW__EDGE_LEFT = 1,
    SW__EDGE_BOTTOM,
    SW__EDGE_RIGHT,
    SW__EDGE_TOP
} sw__edge;

/* An edge graduated from low to high, through zero where that lies between;
 * the ends need not be steps. */
typedef struct {
    int edge;
    double low, high;
    double step;         /* long mark and number at its multiples */
    int divisions;       /* of a step: 10, 5, 2 or 1 */
    double text_px;      /* numbers; marks and caption in proportion */
    const char *caption; /* quantity and unit; NULL: none */
    /* where on the edge, 0 .. 1, a value stands; NULL: in proportion */
    double (*share)(double value, const void *with);
    const void *with;
} sw__rule;

/* The step 1, 2 or 5 times a power of ten that parts 0 .. most into at most
 * this many. */
SW_SIBLING double sw__scale_step(double most, int parts);

/* Divisions of a step that is drawn this long. */
SW_SIBLING int sw__scale_divisions(double step_px, double text_px);

/* Room that the marks and the widest number take beside the edge. */
double sw__scale_room(const sw__rule *r);

SW_SIBLING void sw__scale_rule(sw__svg *s, const sw__box *f, const sw__rule *r);

/* Fine lines across at each step but at the low end. */
SW_SIBLING void sw__scale_grid(sw__svg *s, const sw__box *f, const sw__rule *r);

/* Graduates an edge from 0 to `most`, which are its ends, in steps with ten
 * divisions, like a steel rule; the caption names quantity and unit. `grid`:
 * fine lines across at each step. */
void sw__scale_draw(sw__svg *s, const sw__box *f, int edge, double most,
                    double step, const char *caption, int grid);

#endif
