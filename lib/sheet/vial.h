/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_SHEET_VIAL_H
#define SW_SHEET_VIAL_H

#include "sheet/svg.h"

/* Divisions on each side of the middle. */
#define SW__VIAL_DIVISIONS 5

/* Draws a level's vial lying on a slope: `from` and `to` are the ends of its
 * foot, left and right. The bubble stands `divisions` off the middle, to the
 * right when positive; it stops at the end of the glass. */
void sw__vial(sw__svg *s, sw__point from, sw__point to, double height,
              double divisions);

#endif
