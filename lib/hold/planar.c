/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Planar: sliding of a part whose stops and held toes all lie in the plane of
 * its supports, with round friction discs and without a linear program's
 * polygons.
 *
 * Symbols: lambda factor on the cut, N_i = N0_i + lambda N1_i normals (bed.c,
 * a fixed set carries), r_i = mu_i N_i, v = (vx, vy, omega) motion and v_i the
 * velocity at contact i, K(r) the wrenches that the discs of radii r can give,
 * w planar wrenches, R_j stops.
 *
 *   lambda w1 + f + sum R_j w_j = -w0,  f in K(r(lambda))                (1)
 *   K(r) = K(r0) (1 - lambda/l) + K(rl) lambda/l                         (2)
 *          l: the first support lifts; r0, rl: radii at 0 and there
 *   K(r) = K(r0) + lambda K(r1) where no support gets lighter            (3)
 *   farthest point of K(r) against v: -sum r_i v_i/|v_i|, its reach
 *   sum r_i |v_i|                                                        (4)
 *
 * A point of K is a mixture of points (4), so (1) with (2) or (3) is a linear
 * program with five rows (three of equilibrium, one for each mixture) and
 * endlessly many columns: the one that helps most is (4) for the present dual
 * motion v, one square root a contact. It ends when none helps.
 *
 * By limit analysis (normals given, the friction law of a disc is associated)
 * the answer is exact. Compared with the joint program and with a search over
 * motions (tests/reference).
 *
 * Not in it: supports of different height, friction at stops, supports that
 * may lift: sw__planar() returns 0 and the joint program is asked.
 */
#include "hold/planar.h"

#include "hold/bed.h"

#include <string.h>

enum { ROWS = 5, STEPS = 300, DISCS = 2 * SW__MOST };
#define DONE 1e-11 /* gain of a column, in parts of the value */
#define ZERO 1e-12

typedef enum { FALSE_FORCE, GOAL, STOP, MIX0, MIX1 } kind;

typedef struct {
    kind kind;
    int stop;
    double a[ROWS], v[3];
} column;

typedef struct {
    const sw__rig *rig;
    int discs;
    double x[DISCS], y[DISCS], r0[DISCS], r1[DISCS]; /* the two mixtures */
    column goal;
    column basis[ROWS];
    double value[ROWS], inverse[ROWS][ROWS];
} program;

int sw__is_planar(const sw__rig *rig, int flat)
{
    for (int i = 0; i < rig->pads; i++)
        if (rig->pad[i].z != 0)
            return 0;
    for (int i = 0; i < rig->posts; i++)
        if (rig->post[i].mu > 0 || (!flat && rig->post[i].z != 0))
            return 0;
    for (int i = 0; i < rig->toes; i++)
        if (rig->toe[i].mu > 0 && !flat && rig->toe[i].z != 0)
            return 0;
    return 1;
}

/* Equation (4). */
static double farthest(const program *p, const double *r, const double v[3],
                       double a[3])
{
    double reach = 0;
    a[0] = a[1] = a[2] = 0;
    for (int i = 0; i < p->discs; i++) {
        const double vx = v[0] - v[2] * p->y[i], vy = v[1] + v[2] * p->x[i];
        const double speed = sqrt(vx * vx + vy * vy);
        if (!(speed > 0))
            continue;
        const double fx = -r[i] * vx / speed, fy = -r[i] * vy / speed;
        reach += r[i] * speed;
        a[0] += fx;
        a[1] += fy;
        a[2] += p->x[i] * fy - p->y[i] * fx;
    }
    return reach;
}

static double mixture(const program *p, kind which, const double v[3],
                      column *c)
{
    memset(c, 0, sizeof *c);
    c->kind = which;
    memcpy(c->v, v, sizeof c->v);
    c->a[which == MIX0 ? 3 : 4] = 1;
    return farthest(p, which == MIX0 ? p->r0 : p->r1, v, c->a);
}

static void stop_column(const program *p, int j, column *c)
{
    const sw__touch *t = &p->rig->post[j];
    memset(c, 0, sizeof *c);
    c->kind = STOP;
    c->stop = j;
    c->a[0] = t->nx;
    c->a[1] = t->ny;
    c->a[2] = t->x * t->ny - t->y * t->nx;
}

/* Puts a column in the place of one of the basis; 0 where none limits it. */
static int enter(program *p, const column *c, int leaving)
{
    double d[ROWS], most = 0, step = 0;
    for (int i = 0; i < ROWS; i++) {
        d[i] = 0;
        for (int k = 0; k < ROWS; k++)
            d[i] += p->inverse[i][k] * c->a[k];
    }
    for (int i = 0; leaving < 0 && i < ROWS; i++)
        most = fmax(most, fabs(d[i]));
    int out = leaving;
    for (int i = 0; leaving < 0 && i < ROWS; i++) {
        if (!(d[i] > 1e-11 * most))
            continue;
        const double ratio = fmax(0, p->value[i]) / d[i];
        if (out < 0 || ratio < step - 1e-14 ||
            (ratio <= step + 1e-14 && d[i] > d[out])) {
            out = i;
            step = ratio;
        }
    }
    if (out < 0)
        return 0;
    if (leaving >= 0)
        step = p->value[out] / d[out];
    for (int i = 0; i < ROWS; i++)
        p->value[i] = i == out ? step : p->value[i] - step * d[i];
    for (int k = 0; k < ROWS; k++)
        p->inverse[out][k] /= d[out];
    for (int i = 0; i < ROWS; i++)
        for (int k = 0; i != out && k < ROWS; k++)
            p->inverse[i][k] -= d[i] * p->inverse[out][k];
    p->basis[out] = *c;
    return 1;
}

/* A basis that solves all but the three equations of equilibrium, for which
 * false forces stand in. */
static void begin(program *p, const double w0[6], const double v[3])
{
    column mix[2];
    mixture(p, MIX0, v, &mix[0]);
    mixture(p, MIX1, v, &mix[1]);
    memset(p->inverse, 0, sizeof p->inverse);
    const double want[3] = {-w0[0], -w0[1], -w0[5]};
    for (int i = 0; i < 3; i++) {
        const double open = want[i] - mix[0].a[i];
        const double sign = open < 0 ? -1 : 1;
        memset(&p->basis[i], 0, sizeof p->basis[i]);
        p->basis[i].kind = FALSE_FORCE;
        p->basis[i].a[i] = sign;
        p->value[i] = fabs(open);
        p->inverse[i][i] = sign;
        p->inverse[i][3] = -sign * mix[0].a[i];
        p->inverse[i][4] = -sign * mix[1].a[i];
    }
    for (int i = 0; i < 2; i++) {
        p->basis[3 + i] = mix[i];
        p->inverse[3 + i][3 + i] = 1;
        p->value[3 + i] = i == 0;
    }
}

/* The stop or mixture that helps most for the prices y; returns its gain. */
static double best(const program *p, const double y[ROWS], int both, column *c)
{
    column other;
    double gain = mixture(p, MIX0, y, c) - y[3];
    if (both) {
        const double g = mixture(p, MIX1, y, &other) - y[4];
        if (g > gain) {
            gain = g;
            *c = other;
        }
    }
    for (int j = 0; j < p->rig->posts; j++) {
        stop_column(p, j, &other);
        const double g =
            -(y[0] * other.a[0] + y[1] * other.a[1] + y[2] * other.a[2]);
        if (g > gain) {
            gain = g;
            *c = other;
        }
    }
    return gain;
}

/* Puts the false forces out, so that the part is at rest without a cut. */
static int rest(program *p)
{
    for (int step = 0; step < STEPS; step++) {
        double y[ROWS] = {0}, open = 0;
        for (int i = 0; i < ROWS; i++) {
            if (p->basis[i].kind != FALSE_FORCE)
                continue;
            open += p->value[i];
            for (int k = 0; k < ROWS; k++)
                y[k] -= p->inverse[i][k];
        }
        if (open <= ZERO)
            break;
        column c;
        if (best(p, y, 0, &c) < ZERO || !enter(p, &c, -1))
            return 0;
    }
    /* those that are left are zero: anything may take their place */
    for (int i = 0; i < ROWS; i++) {
        if (p->basis[i].kind != FALSE_FORCE)
            continue;
        if (p->value[i] > ZERO)
            return 0;
        column c;
        double entry = 0;
        mixture(p, MIX0, p->inverse[i], &c);
        for (int k = 0; k < ROWS; k++)
            entry += p->inverse[i][k] * c.a[k];
        if (fabs(entry) < 1e-6)
            return 0;
        p->value[i] = 0;
        enter(p, &c, i);
    }
    return 1;
}

static int goal_row(const program *p)
{
    for (int i = 0; i < ROWS; i++)
        if (p->basis[i].kind == GOAL)
            return i;
    return -1;
}

/* 1 largest value found, 2 unbounded, 0 lost. */
static int climb(program *p, double top)
{
    if (!enter(p, &p->goal, -1))
        return 2;
    for (int step = 0; step < STEPS; step++) {
        const int row = goal_row(p);
        if (row < 0)
            return 0;
        if (p->value[row] >= top)
            return 2;
        column c;
        const double gain = best(p, p->inverse[row], 1, &c);
        if (gain <= DONE * fmax(1e-3, p->value[row]))
            return 1;
        if (!enter(p, &c, -1))
            return 2;
    }
    return 0;
}

/* Normals of a fixed set under a wrench. */
static void springs(const sw__rig *rig, double inverse[3][3], const double w[6],
                    double *gap)
{
    double u[3];
    for (int i = 0; i < 3; i++)
        u[i] = -(inverse[i][0] * w[2] + inverse[i][1] * w[3] +
                 inverse[i][2] * w[4]);
    for (int i = 0; i < rig->pads; i++)
        gap[i] = rig->pad[i].k *
                 (u[0] + rig->pad[i].y * u[1] - rig->pad[i].x * u[2]);
}

/* Where the first support is down to what it must keep. */
static double lift(const sw__rig *rig, const char *on, const double *N0,
                   const double *N1, double top, int *which)
{
    *which = -1;
    for (int i = 0; i < rig->pads; i++) {
        if (!on[i] || !(N1[i] < -ZERO))
            continue;
        const double at = (N0[i] - rig->pad[i].least) / -N1[i];
        if (at < top) {
            top = at;
            *which = i;
        }
    }
    return top;
}

static int has_falling(const sw__rig *rig, const char *on, const double *N1)
{
    for (int i = 0; i < rig->pads; i++)
        if (on[i] && N1[i] < 0)
            return 1;
    return 0;
}

/* The discs, and the goal's column by (2) or (3). */
static void lay(program *p, double friction, const char *on, const double *N0,
                const double *N1, double l, int falling, const double w1[6])
{
    const sw__rig *rig = p->rig;
    p->discs = 0;
    for (int i = 0; i < rig->pads; i++) {
        const double mu = rig->pad[i].mu * friction;
        if (!on[i] || !(mu > 0))
            continue;
        p->x[p->discs] = rig->pad[i].x;
        p->y[p->discs] = rig->pad[i].y;
        p->r0[p->discs] = mu * N0[i];
        p->r1[p->discs++] = mu * fmax(0, falling ? N0[i] + l * N1[i] : N1[i]);
    }
    for (int i = 0; i < rig->toes; i++) {
        const double r = rig->toe[i].mu * friction * rig->toe[i].P;
        if (!(r > 0))
            continue;
        p->x[p->discs] = rig->toe[i].x;
        p->y[p->discs] = rig->toe[i].y;
        p->r0[p->discs] = r;
        p->r1[p->discs++] = falling ? r : 0;
    }
    memset(&p->goal, 0, sizeof p->goal);
    p->goal.kind = GOAL;
    p->goal.a[0] = w1[0];
    p->goal.a[1] = w1[1];
    p->goal.a[2] = w1[5];
    p->goal.a[3] = falling ? 1 / l : 0;
    p->goal.a[4] = falling ? -1 / l : -1;
}

/* Share of each disc that is used: its part of the mixtures. */
static void read_use(const program *p, double friction, const char *on,
                     sw__planar_out *out)
{
    const sw__rig *rig = p->rig;
    double f[DISCS][2] = {{0}};
    for (int b = 0; b < ROWS; b++) {
        const column *c = &p->basis[b];
        if (c->kind != MIX0 && c->kind != MIX1)
            continue;
        const double *r = c->kind == MIX0 ? p->r0 : p->r1;
        for (int i = 0; i < p->discs; i++) {
            const double vx = c->v[0] - c->v[2] * p->y[i];
            const double vy = c->v[1] + c->v[2] * p->x[i];
            const double speed = hypot(vx, vy);
            if (!(speed > 0))
                continue;
            f[i][0] += p->value[b] * r[i] * vx / speed;
            f[i][1] += p->value[b] * r[i] * vy / speed;
        }
    }
    int d = 0;
    for (int i = 0; i < rig->pads; i++) {
        const double mu = rig->pad[i].mu * friction;
        if (!on[i] || !(mu > 0))
            continue;
        const double r = mu * out->N[i];
        out->use[i] = r > 0 ? fmin(1, hypot(f[d][0], f[d][1]) / r) : 0;
        d++;
    }
    for (int i = 0; i < rig->toes; i++) {
        const double r = rig->toe[i].mu * friction * rig->toe[i].P;
        if (!(r > 0))
            continue;
        out->grip[i] = fmin(1, hypot(f[d][0], f[d][1]) / r);
        d++;
    }
}

/* What one more of each force of a wrench takes off the value. */
static void price(const program *p, double friction, const char *on,
                  double inverse[3][3], const double *N1, sw__planar_out *out)
{
    const sw__rig *rig = p->rig;
    out->y[0] = out->y[1] = out->y[2] = out->y[3] = out->y[4] = out->y[5] = 0;
    if (out->lift < 0) {
        out->y[0] = out->v[0];
        out->y[1] = out->v[1];
        out->y[5] = out->v[2];
    }
    for (int i = 0; i < rig->pads; i++) {
        const sw__touch *t = &rig->pad[i];
        if (!on[i])
            continue;
        double weight = 0;
        if (out->lift >= 0)
            weight = i == out->lift ? 1 / -N1[i] : 0;
        else
            weight = t->mu * friction *
                     hypot(out->v[0] - out->v[2] * t->y,
                           out->v[1] + out->v[2] * t->x);
        for (int k = 0; k < 3; k++)
            out->y[2 + k] +=
                weight * t->k *
                (inverse[0][k] + t->y * inverse[1][k] - t->x * inverse[2][k]);
    }
}

int sw__planar(const sw__rig *rig, double friction, const char *on,
               const double w0[6], const double w1[6], double top,
               sw__planar_out *out)
{
    double inverse[3][3], N0[SW__MOST], N1[SW__MOST];
    program p;
    if (!sw__bed_inverse(rig, on, inverse))
        return 0;
    springs(rig, inverse, w0, N0);
    springs(rig, inverse, w1, N1);
    for (int i = 0; i < rig->pads; i++)
        if (on[i] && N0[i] < rig->pad[i].least)
            return 0;
    int lifts;
    const double l = lift(rig, on, N0, N1, top, &lifts);
    if (!(l > 0))
        return 0;
    p.rig = rig;
    lay(&p, friction, on, N0, N1, l, has_falling(rig, on, N1), w1);
    const double v[3] = {w1[0], w1[1], w1[5]};
    begin(&p, w0, v);
    if (!rest(&p))
        return 0;
    const int how = climb(&p, l);
    if (!how)
        return 0;
    memset(out, 0, sizeof *out);
    const int row = goal_row(&p);
    const int ended = how == 2 || p.value[row] >= l * (1 - 1e-9);
    out->value = ended ? l : p.value[row];
    out->lift = ended ? lifts : -1;
    if (!ended)
        memcpy(out->v, p.inverse[row], sizeof out->v);
    for (int i = 0; i < rig->pads; i++) {
        const double N = N0[i] + out->value * N1[i];
        out->gap[i] = N / rig->pad[i].k;
        out->N[i] = on[i] ? fmax(0, N) : 0;
    }
    for (int b = 0; b < ROWS; b++)
        if (p.basis[b].kind == STOP)
            out->R[p.basis[b].stop] = p.value[b];
    read_use(&p, friction, on, out);
    price(&p, friction, on, inverse, N1, out);
    return 1;
}
