/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Face turn: torque and sideways push together on a ring that rubs.
 */
#ifndef SW_HOLD_FACE_TURN_H
#define SW_HOLD_FACE_TURN_H

/* A ring from ri to ro; `wear`: pressure falls with the radius, else even. */
typedef struct {
    double ri_mm, ro_mm;
    int wear;
} sw__face;

/* Mean distance of the pressure from a point that lies s off the axis. */
double sw__face_distance(const sw__face *f, double s_mm);

/* Factor on a moment (N mm) and a push (N) in the face at which it turns, for
 * mu times normal force = `friction_N`; `s_mm` (may be NULL): how far off the
 * axis the point lies about which it then turns. One of both loads is above
 * zero. */
double sw__face_turn(const sw__face *f, double friction_N, double moment_Nmm,
                     double push_N, double *s_mm);

#endif
