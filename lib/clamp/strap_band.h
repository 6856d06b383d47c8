/* SPDX-License-Identifier: GPL-3.0-or-later
 */
#ifndef SW_CLAMP_STRAP_BAND_H
#define SW_CLAMP_STRAP_BAND_H

#include "clamp/strap_balance.h"
#include "clamp/strap_resolve.h"

/* side load that a spherical pair keeps at most, per unit of tension */
#define SW__SPHERE_LOAD 0.01

/* What the nominal answer takes for what is uncertain. */
sw__strap_choice sw__strap_nominal(const sw_strap_in *in,
                                   const sw__strap_geometry *g);

/* Fills low and high of toe force and side pull around the nominal forces. */
void sw__strap_band(const sw__strap_full *full, const sw__strap_geometry *g,
                    const sw__strap_choice *nominal, const sw__strap_forces *f,
                    sw_strap_out *out);

/* A nut that does not turn: the largest bending of the stud between a seat
 * that slips and one that holds. */
double sw__strap_worst_bending(const sw__strap_full *full,
                               const sw__strap_geometry *g);

#endif
