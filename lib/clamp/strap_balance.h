/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One strap in equilibrium, for one choice of what is uncertain.
 */
#ifndef SW_CLAMP_STRAP_BALANCE_H
#define SW_CLAMP_STRAP_BALANCE_H

#include "clamp/seat.h"

#include <strapwise/strap.h>
#include <strapwise/thread.h>

/* The strap in numbers. Lengths mm, angles rad, forces N. */
typedef struct {
    double F, a, b, L; /* a, b: contacts as they bear */
    double theta, tan_theta, cos_theta;
    double toe_edge, heel_edge;   /* tilts where a land changes its edge */
    double y_seat, y_toe;         /* over the heel contact */
    double t, EI_strap, EA_strap; /* strap */
    double EI_stud, length, rim;  /* stud and nut */
    sw__beam beam;                /* the stud under F */
    double mu_toe, mu_heel;       /* mu_heel very large: serrated */
    double c_toe, c_heel;         /* sideways give, mm/N */
    double permitted;             /* tilt that the seat takes up */
    int toe_bears, heel_bears;    /* sw_bears */
    int toe_near, heel_near;      /* about to change their edge */
} sw__strap_geometry;

/* What is uncertain. */
typedef struct {
    double slip;        /* friction along the slope at the seat */
    double play;        /* thread play, rad */
    double extra_load;  /* added to the side load, per unit of F */
    double extra_place; /* added to the resultant's place, mm */
    double heel_share;  /* part of the heel's hold that is there: 0 relaxed */
    double mu_heel;     /* friction at the heel */
    int rocking;        /* foot */
    int slope;          /* the strap's own slope at the stud counts */
    int rigid;          /* no strap bending at all */
    int firm;           /* heel support taken as firm sideways */
} sw__strap_choice;

typedef struct {
    sw__seat seat;
    double X;      /* stud on strap, toward the toe */
    double T_heel; /* heel on strap, toward the toe */
    double S;      /* toe on part toward the stud = part on strap to the toe */
    double S_free; /* S if the toe's friction had no limit */
    double U;      /* what neither can hold */
    double N_toe, N_heel;
    double x_seat; /* where the resultant passes the height of the nut's face */
    double y_seat; /* that height */
    double x_nut;  /* where the nut came to rest */
    double theta;  /* tilt that the nut sees, the strap's own slope off */
    double spread; /* lengthening of the underside */
    /* what the heel would hold if it were for the spread, or the lean, alone and
     * had no limit; toward the toe */
    double T_spread, T_lean;
    int jammed; /* no side pull agrees with both friction limits */
} sw__strap_forces;

sw__strap_forces sw__strap_balance(const sw__strap_geometry *g,
                                   const sw__strap_choice *choice);

/* End slopes of the loaded strap (simply supported beam, point load). */
double sw__strap_toe_slope(const sw__strap_geometry *g);
double sw__strap_heel_slope(const sw__strap_geometry *g);

#endif
