/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_BASE_ROOT_H
#define SW_BASE_ROOT_H

/* Narrows [*low, *high], whose ends give values of opposite sign, until it is
 * no wider than `width` or cannot get narrower. Returns 0, or 1 when the ends
 * do not straddle zero or a value in between is not finite. */
int sw__root(double (*value)(double x, void *with), void *with, double *low,
             double *high, double width);

#endif
