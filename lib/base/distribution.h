/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_BASE_DISTRIBUTION_H
#define SW_BASE_DISTRIBUTION_H

/* Share of Student's t distribution above t >= 0, and between -t and t; each
 * keeps its relative accuracy, 1e-13 up to df 1000, 1e-10 at 1e6. df 0.1 ..
 * 1e6. */
typedef struct {
    double above, between;
} sw__t_shares;

sw__t_shares sw__t_share(double t, double df);

/* Density of Student's t distribution. */
double sw__t_density(double t, double df);

/* Share of the chi-square distribution above x >= 0; df 1 .. 1e5. */
double sw__chi2_above(double x, double df);

#endif
