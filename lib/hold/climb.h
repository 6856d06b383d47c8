/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_HOLD_CLIMB_H
#define SW_HOLD_CLIMB_H

#include "hold/planar.h"

/* Whether the method applies to the fixture. */
int sw__can_climb(const sw__rig *rig);

/* As sw__planar(), with stops and held toes at any height; `flat`: in the plane
 * of the supports all the same. Returns 0 where it cannot tell: ask the joint
 * program. `lift` is not told. */
int sw__climb(const sw__rig *rig, double friction, int flat, const char *on,
              const double w0[6], const double w1[6], double top,
              sw__planar_out *out);

#endif
