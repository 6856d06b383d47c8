/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Climb: the joint program of joint.c for one set of supports that carry, with
 * round discs and without a linear program's library.
 *
 * Symbols as in joint.c; G = sum k g g', the springs. The three equations of
 * vertical equilibrium give the normals, so that three rows and u are gone:
 *
 *   N_i = N0_i + lambda N1_i + sum R_j NR_ij + ..., each from
 *   dN_i = -k_i g_i . G^-1 (dFz, dMx, dMy)                               (1)
 *   lambda w1 + sum mu_i a_ik w(cos, sin at i) + sum R_j w_j = -w0
 *                                        three rows, in the plane        (2)
 *   sum_k a_ik + s_i - (lambda N1_i + sum R_j NR_ij + ...) = N0_i        (3)
 *   sum_k a_ck + s_c = P_c                           each held toe       (4)
 *
 * largest lambda, all variables >= 0. The simplex method on these rows: it
 * begins with the slacks s and three false forces, which are put out first, and
 * then the column that gains most enters. Of the endlessly many directions of a
 * disc it is the one against the present dual motion, so that one square root a
 * contact finds it. It ends when none gains.
 *
 * Not in it: supports of different height, with a least load, or that lift on
 * the way; friction at stops; more than 37 discs: sw__climb() returns 0 or is
 * not asked, and the joint program is.
 */
#include "hold/climb.h"

#include "hold/bed.h"

#include <string.h>

enum { ROWS = 40, STEPS = 400, WRENCH = 3 };
#define DONE 1e-9 /* gain of a column, in parts of the value */
#define ZERO 1e-12

typedef enum { FALSE_FORCE, GOAL, STOP, SLACK, RAY } kind;

typedef struct {
    kind kind;
    int index; /* of the stop or disc */
    double c, s;
} column;

typedef struct {
    const sw__rig *rig;
    int rows, pads, discs; /* discs: pads first, then toes */
    int of[ROWS];          /* support or clamp of a disc */
    double x[ROWS], y[ROWS], mu[ROWS];
    double weight[ROWS];   /* what the disc can carry about now */
    double lever[ROWS][3]; /* supports: k g . G^-1 */
    double goal[ROWS];     /* columns that are dense */
    double stop[SW__MOST][ROWS];
    double toe[ROWS][2][ROWS]; /* a toe's force along x and y */
    column basis[ROWS];
    double value[ROWS], inverse[ROWS][ROWS];
} program;

int sw__can_climb(const sw__rig *rig)
{
    int discs = rig->pads;
    for (int i = 0; i < rig->pads; i++)
        if (rig->pad[i].z != 0 || rig->pad[i].least > 0)
            return 0;
    for (int i = 0; i < rig->posts; i++)
        if (rig->post[i].mu > 0)
            return 0;
    for (int i = 0; i < rig->toes; i++)
        discs += rig->toe[i].mu > 0;
    return discs <= ROWS - WRENCH;
}

/* Rows of a wrench: (2), and by (1) what it takes off the room in (3). */
static void reduce(const program *p, const double w[6], double a[ROWS])
{
    memset(a, 0, ROWS * sizeof *a);
    a[0] = w[0];
    a[1] = w[1];
    a[2] = w[5];
    for (int i = 0; i < p->pads; i++)
        a[WRENCH + i] = p->lever[i][0] * w[2] + p->lever[i][1] * w[3] +
                        p->lever[i][2] * w[4];
}

static sw__touch at_height(const sw__touch *t, int flat)
{
    sw__touch to = *t;
    if (flat)
        to.z = 0;
    return to;
}

/* Discs, and the columns that do not change. */
static void lay(program *p, double friction, int flat, const char *on,
                double inverse[3][3], const double w1[6])
{
    const sw__rig *rig = p->rig;
    for (int i = 0; i < rig->pads; i++) {
        const sw__touch *t = &rig->pad[i];
        if (!on[i])
            continue;
        const int d = p->discs++;
        p->of[d] = i;
        p->x[d] = t->x;
        p->y[d] = t->y;
        p->mu[d] = t->mu * friction;
        for (int k = 0; k < 3; k++)
            p->lever[d][k] = t->k * (inverse[0][k] + t->y * inverse[1][k] -
                                     t->x * inverse[2][k]);
    }
    p->pads = p->discs;
    for (int i = 0; i < rig->toes; i++) {
        const sw__touch t = at_height(&rig->toe[i], flat);
        if (!(t.mu * friction > 0))
            continue;
        const int d = p->discs++;
        double w[6];
        p->of[d] = i;
        p->mu[d] = t.mu * friction;
        p->weight[d] = t.P;
        sw__push(&t, 1, 0, 0, w);
        reduce(p, w, p->toe[d][0]);
        sw__push(&t, 0, 1, 0, w);
        reduce(p, w, p->toe[d][1]);
    }
    p->rows = WRENCH + p->discs;
    for (int j = 0; j < rig->posts; j++) {
        const sw__touch t = at_height(&rig->post[j], flat);
        double w[6];
        sw__push(&t, t.nx, t.ny, 0, w);
        reduce(p, w, p->stop[j]);
    }
    reduce(p, w1, p->goal);
}

static void fill(const program *p, const column *c, double a[ROWS])
{
    const int d = c->index;
    memset(a, 0, ROWS * sizeof *a);
    switch (c->kind) {
    case GOAL:
        memcpy(a, p->goal, sizeof p->goal);
        break;
    case STOP:
        memcpy(a, p->stop[d], sizeof p->stop[d]);
        break;
    case SLACK:
        a[WRENCH + d] = 1;
        break;
    case RAY:
        if (d < p->pads) {
            a[0] = p->mu[d] * c->c;
            a[1] = p->mu[d] * c->s;
            a[2] = p->x[d] * a[1] - p->y[d] * a[0];
        } else {
            for (int i = 0; i < p->rows; i++)
                a[i] = p->mu[d] *
                       (c->c * p->toe[d][0][i] + c->s * p->toe[d][1][i]);
        }
        a[WRENCH + d] += 1;
        break;
    case FALSE_FORCE:
        break;
    }
}

/* The row that a column leaves, by the least ratio; -1: none limits it. */
static int leaves(const program *p, const double d[ROWS], double *step)
{
    double most = 0;
    int out = -1;
    for (int i = 0; i < p->rows; i++)
        most = fmax(most, fabs(d[i]));
    for (int i = 0; i < p->rows; i++) {
        if (!(d[i] > 1e-11 * most))
            continue;
        const double ratio = fmax(0, p->value[i]) / d[i];
        if (out < 0 || ratio < *step - 1e-13 ||
            (ratio <= *step + 1e-13 && d[i] > d[out])) {
            *step = out < 0 ? ratio : fmin(ratio, *step);
            out = i;
        }
    }
    return out;
}

/* Puts a column into the basis; `out`: in the place of that row, or -1. */
static int enter(program *p, const column *c, int out)
{
    double a[ROWS], d[ROWS], step = 0;
    fill(p, c, a);
    for (int i = 0; i < p->rows; i++) {
        d[i] = 0;
        for (int k = 0; k < p->rows; k++)
            d[i] += p->inverse[i][k] * a[k];
    }
    if (out < 0) {
        out = leaves(p, d, &step);
        if (out < 0)
            return 0;
    }
    step = p->value[out] / d[out];
    for (int i = 0; i < p->rows; i++)
        p->value[i] = i == out ? step : p->value[i] - step * d[i];
    for (int k = 0; k < p->rows; k++)
        p->inverse[out][k] /= d[out];
    for (int i = 0; i < p->rows; i++)
        for (int k = 0; i != out && d[i] != 0 && k < p->rows; k++)
            p->inverse[i][k] -= d[i] * p->inverse[out][k];
    p->basis[out] = *c;
    return 1;
}

static double dot(const program *p, const double *a, const double *b)
{
    double sum = 0;
    for (int i = 0; i < p->rows; i++)
        sum += a[i] * b[i];
    return sum;
}

/* The direction of a disc that gains most for the prices y; its gain. */
static double best_ray(const program *p, const double *y, int d, column *c)
{
    double vx, vy;
    if (d < p->pads) {
        vx = y[0] - y[2] * p->y[d];
        vy = y[1] + y[2] * p->x[d];
    } else {
        vx = dot(p, y, p->toe[d][0]);
        vy = dot(p, y, p->toe[d][1]);
    }
    const double speed = sqrt(vx * vx + vy * vy);
    *c = (column){RAY, d, 0, 0};
    if (!(p->mu[d] * speed > 0))
        return -1;
    c->c = -vx / speed;
    c->s = -vy / speed;
    return p->mu[d] * speed - y[WRENCH + d];
}

static void take(double gain, const column *c, double *most, column *best)
{
    if (gain > *most) {
        *most = gain;
        *best = *c;
    }
}

/* The column that gains most; its gain, weighted. */
static double choose(const program *p, const double *y, column *best)
{
    double most = 0;
    for (int d = 0; d < p->discs; d++) {
        column c;
        take(best_ray(p, y, d, &c) * p->weight[d], &c, &most, best);
        c = (column){SLACK, d, 0, 0};
        take(-y[WRENCH + d] * p->weight[d], &c, &most, best);
    }
    for (int j = 0; j < p->rig->posts; j++) {
        const column c = {STOP, j, 0, 0};
        take(-dot(p, y, p->stop[j]), &c, &most, best);
    }
    return most;
}

static void begin(program *p, const double w0[6], const double *N0)
{
    const double want[WRENCH] = {-w0[0], -w0[1], -w0[5]};
    double sum = 0;
    for (int d = 0; d < p->pads; d++)
        sum += N0[p->of[d]];
    for (int i = 0; i < p->rows; i++) {
        const int d = i - WRENCH;
        const double sign = i < WRENCH && want[i] < 0 ? -1 : 1;
        p->inverse[i][i] = sign;
        p->basis[i] = (column){i < WRENCH ? FALSE_FORCE : SLACK,
                               i < WRENCH ? i : d, 0, 0};
        if (i >= WRENCH && d < p->pads)
            p->weight[d] = N0[p->of[d]] + 0.01 * sum / p->pads;
        p->value[i] = i < WRENCH    ? fabs(want[i])
                      : d < p->pads ? N0[p->of[d]]
                                    : p->weight[d];
    }
}

/* Any direction in the place of a false force that is zero. */
static int replace(program *p, int row)
{
    column best = {RAY, 0, 0, 0};
    double most = 0;
    for (int d = 0; d < p->discs; d++) {
        double a[ROWS];
        column c;
        best_ray(p, p->inverse[row], d, &c);
        fill(p, &c, a);
        take(fabs(dot(p, p->inverse[row], a)), &c, &most, &best);
    }
    if (most < 1e-6)
        return 0;
    p->value[row] = 0;
    return enter(p, &best, row);
}

static int rest(program *p)
{
    for (int step = 0; step < STEPS; step++) {
        double y[ROWS] = {0}, open = 0;
        for (int i = 0; i < p->rows; i++) {
            if (p->basis[i].kind != FALSE_FORCE)
                continue;
            open += p->value[i];
            for (int k = 0; k < p->rows; k++)
                y[k] -= p->inverse[i][k];
        }
        if (open <= ZERO)
            break;
        column c;
        if (choose(p, y, &c) < ZERO || !enter(p, &c, -1))
            return 0;
    }
    for (int i = 0; i < p->rows; i++)
        if (p->basis[i].kind == FALSE_FORCE &&
            (p->value[i] > ZERO || !replace(p, i)))
            return 0;
    return 1;
}

static int goal_row(const program *p)
{
    for (int i = 0; i < p->rows; i++)
        if (p->basis[i].kind == GOAL)
            return i;
    return -1;
}

/* 1 largest value found, 2 as large as wanted, 0 lost. */
static int climb(program *p, double top)
{
    const column goal = {GOAL, 0, 0, 0};
    if (!enter(p, &goal, -1))
        return 2;
    for (int step = 0; step < STEPS; step++) {
        const int row = goal_row(p);
        column c;
        if (row < 0)
            return 0;
        if (p->value[row] >= top)
            return 2;
        if (choose(p, p->inverse[row], &c) <= DONE * fmax(1e-3, p->value[row]))
            return 1;
        if (!enter(p, &c, -1))
            return 2;
    }
    return 0;
}

static void read_out(const program *p, sw__planar_out *out)
{
    const int row = goal_row(p);
    const double *y = p->inverse[row];
    double f[ROWS][2] = {{0}}, room[ROWS] = {0};
    out->value = p->value[row];
    out->lift = -1;
    memcpy(out->v, y, sizeof out->v);
    out->y[0] = y[0];
    out->y[1] = y[1];
    out->y[5] = y[2];
    for (int d = 0; d < p->pads; d++)
        for (int k = 0; k < 3; k++)
            out->y[2 + k] += y[WRENCH + d] * p->lever[d][k];
    for (int i = 0; i < p->rows; i++) {
        const column *c = &p->basis[i];
        if (c->kind == STOP)
            out->R[c->index] = p->value[i];
        if (c->kind == SLACK || c->kind == RAY)
            room[c->index] += p->value[i];
        if (c->kind == RAY) {
            f[c->index][0] += p->value[i] * c->c;
            f[c->index][1] += p->value[i] * c->s;
        }
    }
    for (int d = 0; d < p->discs; d++) {
        const double use =
            room[d] > 0 ? fmin(1, hypot(f[d][0], f[d][1]) / room[d]) : 0;
        if (d < p->pads) {
            out->N[p->of[d]] = room[d];
            out->use[p->of[d]] = p->mu[d] > 0 ? use : 0;
        } else {
            out->grip[p->of[d]] = use;
        }
    }
}

/* g . u of every support, from the load of those that carry. */
static void set_gaps(const program *p, double inverse[3][3],
                     sw__planar_out *out)
{
    double f[3] = {0}, u[3];
    const sw__rig *rig = p->rig;
    for (int i = 0; i < rig->pads; i++) {
        f[0] += out->N[i];
        f[1] += out->N[i] * rig->pad[i].y;
        f[2] -= out->N[i] * rig->pad[i].x;
    }
    for (int k = 0; k < 3; k++)
        u[k] =
            inverse[k][0] * f[0] + inverse[k][1] * f[1] + inverse[k][2] * f[2];
    for (int i = 0; i < rig->pads; i++)
        out->gap[i] = u[0] + rig->pad[i].y * u[1] - rig->pad[i].x * u[2];
}

int sw__climb(const sw__rig *rig, double friction, int flat, const char *on,
              const double w0[6], const double w1[6], double top,
              sw__planar_out *out)
{
    double inverse[3][3], N0[SW__MOST] = {0};
    program p;
    if (!sw__bed_inverse(rig, on, inverse))
        return 0;
    p.rig = rig;
    p.pads = p.discs = 0;
    memset(p.inverse, 0, sizeof p.inverse);
    lay(&p, friction, flat, on, inverse, w1);
    for (int d = 0; d < p.pads; d++) {
        N0[p.of[d]] = -(p.lever[d][0] * w0[2] + p.lever[d][1] * w0[3] +
                        p.lever[d][2] * w0[4]);
        if (N0[p.of[d]] < 0)
            return 0;
    }
    begin(&p, w0, N0);
    if (!rest(&p))
        return 0;
    const int how = climb(&p, top);
    if (!how || goal_row(&p) < 0)
        return 0;
    memset(out, 0, sizeof *out);
    read_out(&p, out);
    set_gaps(&p, inverse, out);
    if (how == 2)
        out->value = top;
    return 1;
}
