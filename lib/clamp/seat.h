/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_CLAMP_SEAT_H
#define SW_CLAMP_SEAT_H

#include "base/internal.h"

/* The stud as a beam under tension: what does not hang on the seat. */
typedef struct {
    double k, u; /* sqrt(F/EI), and times the length */
    double tanh_u, sinh_u, cosh_u;
    double stick; /* rho/phi of equation (4) without play */
    double lag;   /* u - tanh u */
} sw__beam;

sw__beam sw__beam_of(double F, double EI, double length);

/* A stud under tension, its nut on a seat that leans by phi. */
typedef struct {
    double F;      /* tension, N */
    double EI;     /* bending stiffness, N mm2 */
    double length; /* foot to nut face, mm */
    double rim;    /* where a tilted nut bears, mm from the axis */
    double phi;    /* lean of the seat, rad, >= 0 */
    double most;   /* friction angle along the slope, atan(slip), rad */
    double play;   /* lean that the thread takes up, rad */
    int rocking;   /* foot free to rotate */
} sw__stud;

typedef struct {
    double lean; /* of the seat's force from vertical, toward the low end */
    double tan_lean;
    double M_nut; /* bending moment at the nut, N mm */
    double M_foot;
    double offset; /* of the force from the nut's axis, toward the high side */
    double travel; /* of the nut, toward the low side, mm */
    double arm;    /* of the force's line from the foot's axis, at the height
                      of the nut's face, toward the low side, mm */
    double lift;   /* of the nut's centre over the seat below it, mm */
    int on_rim;
} sw__seat;

/* beam: of this stud; a strap presses it on many seats */
sw__seat sw__seat_press(const sw__stud *stud, const sw__beam *beam);

#endif
