/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_CLAMP_SEAT_H
#define SW_CLAMP_SEAT_H

#include "base/internal.h"

/* A stud under tension, its nut on a seat that leans by phi. */
typedef struct {
    double F;       /* tension, N */
    double EI;      /* bending stiffness, N mm2 */
    double length;  /* foot to nut face, mm */
    double rim;     /* where a tilted nut bears, mm from the axis */
    double phi;     /* lean of the seat, rad, >= 0 */
    double slip;    /* largest friction along the slope, >= 0 */
    double play;    /* lean that the thread takes up, rad */
    int rocking;    /* foot free to rotate */
} sw__stud;

typedef struct {
    double lean;  /* of the seat's force from vertical, toward the low end */
    double M_nut; /* bending moment at the nut, N mm */
    double M_foot;
    double offset; /* of the force from the nut's axis, toward the high side */
    double travel; /* of the nut, toward the low side, mm */
    double arm;    /* of the force's line from the foot's axis, at the height
                      of the nut's face, toward the low side, mm */
    double lift;   /* of the nut's centre over the seat below it, mm */
    int on_rim;
} sw__seat;

sw__seat sw__seat_solve(const sw__stud *stud);

#endif
