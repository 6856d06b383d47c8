/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_SHEET_ARROW_H
#define SW_SHEET_ARROW_H

#include "sheet/svg.h"

/* Draws an arrow of exactly the distance from tail to head as one polygon of
 * seven points: point 0 is the tip, points 3 and 4 are the tail's corners. The
 * head is `size` long and nearly as wide, less on an arrow that is short. */
SW_SIBLING void sw__arrow(sw__svg *s, sw__point tail, sw__point head,
                          double size, const char *look);

/* Two strokes across the middle: this arrow was cut short. */
void sw__arrow_cut(sw__svg *s, sw__point tail, sw__point head, double size,
                   const char *look);

/* An arrow bent around a centre, from one angle to a larger one; degrees,
 * clockwise in the picture, 0 to the right. */
void sw__arrow_round(sw__svg *s, sw__point centre, double radius, double from,
                     double to, double size, const char *look);

#endif
