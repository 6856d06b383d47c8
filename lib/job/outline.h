/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_JOB_OUTLINE_H
#define SW_JOB_OUTLINE_H

#include "base/internal.h"

/* A simple polygon, counterclockwise. */
enum { SW__OUTLINE_CORNERS = 200 };

typedef struct {
    double x[SW__OUTLINE_CORNERS], y[SW__OUTLINE_CORNERS];
    int corners;
    double area_mm2, centre_x, centre_y;
    double left, right, front, back; /* box: x low and high, y low and high */
} sw__outline;

/* Two edges that cross or touch, by the index of their first corner. */
typedef struct {
    int first, second;
} sw__crossing;

/* Whether the polygon is simple; else which edges meet. */
int sw__outline_simple(const sw__outline *o, sw__crossing *found);

/* Area, centre and box; turns a clockwise one round. */
void sw__outline_measure(sw__outline *o);

/* Whether a point is inside or on the edge. */
int sw__outline_holds(const sw__outline *o, double x, double y);

/* How far outside a point is; 0 within and on the edge. */
double sw__outline_off(const sw__outline *o, double x, double y);

/* Whether what stands at a point and pushes this way pushes on the part: from
 * within, or into its side at more than a few degrees. */
int sw__outline_pushed(const sw__outline *o, double x, double y, double deg);

#endif
