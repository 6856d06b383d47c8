/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_BASE_TOLERANCE_H
#define SW_BASE_TOLERANCE_H

/* Factor k of the two-sided normal tolerance interval, mean +- k s of a sample
 * of n >= 2: with this confidence it holds at least this proportion. Both 0.5
 * .. 0.9999. */
double sw__tolerance_factor(int n, double proportion, double confidence);

#endif
