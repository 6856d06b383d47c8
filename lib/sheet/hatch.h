/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_SHEET_HATCH_H
#define SW_SHEET_HATCH_H

#include "sheet/svg.h"

/* Hatches a simple polygon with lines at 45 degrees, `apart` from one another
 * along the x axis; rising to the right, or falling. */
void sw__hatch(sw__svg *s, const sw__point *corner, int corners, double apart,
               int falling);

#endif
