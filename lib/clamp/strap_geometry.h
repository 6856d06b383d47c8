/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_CLAMP_STRAP_GEOMETRY_H
#define SW_CLAMP_STRAP_GEOMETRY_H

#include "clamp/strap_balance.h"
#include "clamp/strap_resolve.h"

/* The strap in numbers, its contacts as they bear; flip: with a flat land
 * bearing on its other edge. */
sw__strap_geometry sw__strap_place(const sw__strap_full *full, int flip_toe,
                                   int flip_heel);

#endif
