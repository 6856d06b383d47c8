/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_HOLD_JOINT_H
#define SW_HOLD_JOINT_H

#include "hold/rig.h"

#include <glpk.h>

/* Corners of a disc that may be added to its polygon. */
enum { SW__EXTRA = 12 };

/* What a block of equilibrium is like. */
typedef struct {
    int free_normals; /* supports need not act as springs: the ceiling */
    int flat;         /* stops and toes act in the plane of the supports */
    int frictionless; /* nothing rubs: the seating of stops */
    int sides;        /* of the polygon in a friction disc */
    double turn;      /* angle of its first corner */
    double friction;  /* factor on every friction */
    double least;     /* load that every support keeps, beside its own */
    double seat;      /* force that every stop keeps, beside its own */
    int own_seat;     /* whether its own counts */
} sw__block_how;

/* A column of friction or of a stop: its force for the value 1. */
typedef struct {
    int part;  /* sw_part */
    int index; /* of the contact */
    double c, s;
} sw__ray;

/* Equilibrium of the part for one state of load, as rows and columns of a
 * linear program. */
typedef struct {
    glp_prob *lp;
    const sw__rig *rig;
    sw__block_how how;
    int row;                            /* first of six */
    int disc[SW__MOST], keep[SW__MOST]; /* rows by support; 0: none */
    int grip[SW__MOST];                 /* rows by clamp; 0: none */
    int col, normals;                   /* columns that carry */
    int first, count, plain, room;      /* columns with a ray */
    sw__ray *ray;                       /* owned by the block's owner */
    char on[SW__MOST], must[SW__MOST];  /* supports: carry; keep their least */
} sw__block;

/* One block and one goal column: largest factor on the cut, or least scale of
 * the clamping. */
typedef struct {
    sw__block block;
    int goal, minimise;
    int scale;  /* the goal is a factor on the clamps */
    double top; /* upper bound of the goal */
} sw__joint;

/* The simplex method: 1 solved, 0 no solution, -1 trouble. */
int sw__simplex(glp_prob *lp, int method);

/* How many rays a block has at most, those that are added later included. */
int sw__block_rays(const sw__rig *rig, const sw__block_how *how);

/* Adds the block; every support carries. b->ray and b->room are set before. */
void sw__block_add(sw__block *b, glp_prob *lp, const sw__rig *rig,
                   const sw__block_how *how);
/* Says which supports carry, and which of them must keep their least. */
void sw__block_on(sw__block *b, const char *on, const char *must);
/* Where a ray acts, and its column. */
sw__touch sw__block_place(const sw__block *b, const sw__ray *r);
void sw__block_set_ray(sw__block *b, int k);
/* The wrench of everything that has no column. */
void sw__block_base(const sw__block *b, const double w[6]);

void sw__joint_make(sw__joint *j, const sw__rig *rig, const sw__block_how *how,
                    int scale);
void sw__joint_direction(sw__joint *j, int minimise);
void sw__joint_end(sw__joint *j);
/* The goal's column, its bounds, and for a scale what it does to the grips. */
void sw__joint_goal(sw__joint *j, const double w[6], double low, double top);
/* 1 solved, 0 no solution, -1 trouble. `changed_base`: only the base. */
int sw__joint_solve(sw__joint *j, int changed_base);

/* Once more from a basis of its own: a right-hand side of rounding alone can
 * make the simplex method call a factor of 0 the largest. */
int sw__joint_again(sw__joint *j);
/* The same with round discs: adds directions until none is missing. */
int sw__joint_polish(sw__joint *j);

/* Of a solved one. Motion: what a wrench more takes off the goal. */
double sw__joint_value(const sw__joint *j);
void sw__joint_motion(const sw__joint *j, double y[6]);
double sw__block_normal(const sw__block *b, int support);
/* Support: N, or where it is idle its sink, negative where it is open. */
double sw__block_gap(const sw__block *b, int support);
/* Friction of every support, clamp and stop, and the force of every stop. */
void sw__block_rays_read(const sw__block *b, double f[3][SW__MOST][2],
                         double *R);

#endif
