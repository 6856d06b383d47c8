/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_CLAMP_STRAP_GEOMETRY_H
#define SW_CLAMP_STRAP_GEOMETRY_H

#include "clamp/strap_balance.h"
#include "clamp/strap_resolve.h"

/* What a strap is whatever its tension and tilt: the distances as given. */
sw__strap_geometry sw__strap_lay(const sw__strap_full *full);

/* Puts it under tension at a tilt. */
void sw__strap_load(sw__strap_geometry *g, const sw_strap_in *in, double F,
                    double theta, double tan_theta);

/* Moves the contacts to where a loaded strap bears. */
void sw__strap_bear(sw__strap_geometry *g, const sw_strap_in *in, int flip_toe,
                    int flip_heel);

/* All three, in numbers as given; flip: with a flat land
 * bearing on its other edge. */
sw__strap_geometry sw__strap_place(const sw__strap_full *full, int flip_toe,
                                   int flip_heel);

#endif
