/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tilt sheet: a plot of tilt under construction, shared by the sources that
 * draw it.
 */
#ifndef SW_SHEET_TILT_SHEET_H
#define SW_SHEET_TILT_SHEET_H

#include "sheet/lettering.h"
#include "sheet/scale.h"
#include "sheet/tilt_words.h"

#define SW__FLAT_INK "#14406b"
#define SW__DISHED_INK "#96450f"

enum { SW__PULL, SW__ERROR, SW__GRAPHS };

typedef struct {
    sw__svg svg;
    const sw__tilts *t;
    sw__tilt_words words;
    double W, T; /* width and lettering, px */
    sw__box frame[SW__GRAPHS];
    sw__rule left[SW__GRAPHS], right, tilt, heel;
    const char *left_unit, *right_unit, *heel_unit;
    double unit_N;     /* one unit of the left edge */
    sw__labels labels; /* of the graph at work */
} sw__sheet;

/* Where a tilt, and a value of a graph, stand in the drawing. */
double sw__sheet_x(const sw__sheet *p, double tilt_deg);
double sw__sheet_y(const sw__sheet *p, int graph, double value);
double sw__sheet_value(const sw__sheet *p, int graph, const sw__tilt_point *q);
sw__point sw__sheet_place(const sw__sheet *p, int graph,
                          const sw__tilt_point *q);

/* A group with lines or letters of this size: name is the attribute. */
void sw__sheet_group(sw__sheet *p, const char *look, const char *name,
                     double value);

/* The attribute of dashes, in sizes of the lettering. */
void sw__sheet_dashes(const sw__sheet *p, double on, double off, char *look,
                      size_t room);

typedef int (*sw__point_test)(const sw__tilt_point *q);
int sw__is_known(const sw__tilt_point *q);
int sw__is_within(const sw__tilt_point *q);
int sw__is_past(const sw__tilt_point *q);
int sw__is_sliding(const sw__tilt_point *q);
int sw__is_yielding(const sw__tilt_point *q);

/* The next stretch at or behind `from` of which all points pass, as first and
 * past-the-last index; 0 where there is none. */
int sw__sheet_stretch(const sw__tilts *t, int seat, sw__point_test passes,
                      int *from, int *end);

/* tilt_scales.c: lays both graphs out below `top` and returns the height of
 * the drawing; then draws their scales. */
double sw__sheet_lay_out(sw__sheet *p, int show, double top);
void sw__sheet_scales(sw__sheet *p, int graph);
void sw__sheet_headings(sw__sheet *p, int graph);
void sw__sheet_bottom(sw__sheet *p);

/* tilt_names.c: names curves, stretches and sides of a graph. */
void sw__sheet_names(sw__sheet *p, int graph);

#endif
