/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Hertz: what contact and pad share.
 */
#ifndef SW_CLAMP_HERTZ_H
#define SW_CLAMP_HERTZ_H

/* Peak pressure over yield at which a metal (Poisson's ratio 0.3) starts to
 * yield below the surface, by Tresca. Contact Mechanics (Johnson), from memory;
 * tests/clamp/test_contact.c searches the stresses below the surface. */
#define SW__LINE_ONSET 1.67
#define SW__POINT_ONSET 1.60
/* largest shear stress over the peak pressure, same place */
#define SW__LINE_SHEAR 0.300
#define SW__POINT_SHEAR 0.310

typedef struct {
    double half_width_mm, peak_MPa, mean_MPa, approach_mm;
} sw__spot;

/* 1/E = (1 - n1^2)/E1 + (1 - n2^2)/E2 */
double sw__reduced_modulus(double E1, double n1, double E2, double n2);

/* `length` 0 for a ball. R is the reduced radius, E the reduced modulus. */
sw__spot sw__hertz(double force_N, double length_mm, double R, double E);

#endif
