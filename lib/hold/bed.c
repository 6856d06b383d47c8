/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Bed: a rigid part on springs that only push.
 *
 * Symbols: g = (1, y, -x) of a support at (x, y), k its stiffness, u = (sink,
 * two tilts), (Fz, Mx, My) of everything else.
 *
 *   N_i = k_i max(0, g_i . u),   sum N_i g_i = -(Fz, Mx, My)             (1)
 *
 * (1) is where the convex energy E(u) = sum k max(0, g . u)^2/2 + (Fz, Mx,
 * My) . u is least: Newton steps on the set that carries, shortened until E
 * falls. No u balances a resultant outside the supports: E falls for ever.
 *
 * Where those that carry stand on one line or point, a direction of u has no
 * stiffness (eigenvalues below 1e-10 of the largest): the step there is as if
 * all supports carried, and doubled while E falls. Where all stand so, a moment about their line stays
 * unbalanced. From statics; no source needed.
 *
 * Not in it: the part's own bending, stiffness of the clamps.
 */
#include "hold/bed.h"

#include <string.h>

enum { STEPS = 200 };
#define BALANCED 1e-9 /* of the resultant */
#define SINGULAR 1e-10

static void lever(const sw__touch *p, double g[3])
{
    g[0] = 1;
    g[1] = p->y;
    g[2] = -p->x;
}

static double dot3(const double a[3], const double b[3])
{
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/* One Jacobi rotation that clears a[p][q]. */
static void rotate(double a[3][3], double v[3][3], int p, int q)
{
    const double theta = (a[q][q] - a[p][p]) / (2 * a[p][q]);
    const double t =
        (theta >= 0 ? 1 : -1) / (fabs(theta) + sqrt(theta * theta + 1));
    const double c = 1 / sqrt(t * t + 1), s = t * c;
    for (int k = 0; k < 3; k++) {
        const double kp = a[k][p], kq = a[k][q];
        a[k][p] = c * kp - s * kq;
        a[k][q] = s * kp + c * kq;
    }
    for (int k = 0; k < 3; k++) {
        const double pk = a[p][k], qk = a[q][k];
        a[p][k] = c * pk - s * qk;
        a[q][k] = s * pk + c * qk;
        const double kp = v[k][p], kq = v[k][q];
        v[k][p] = c * kp - s * kq;
        v[k][q] = s * kp + c * kq;
    }
}

/* The inverse; returns the number of directions that have stiffness. The others
 * have `otherwise`, where it is above 0. */
static int invert(double a[3][3], double otherwise, double inverse[3][3])
{
    double v[3][3] = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    for (int sweep = 0; sweep < 30; sweep++)
        for (int p = 0; p < 2; p++)
            for (int q = p + 1; q < 3; q++)
                if (fabs(a[p][q]) > 1e-17 * fabs(a[p][p] + a[q][q]))
                    rotate(a, v, p, q);
    const double most = fmax(a[0][0], fmax(a[1][1], a[2][2]));
    int rank = 0;
    memset(inverse, 0, 9 * sizeof(double));
    for (int e = 0; e < 3; e++) {
        const int stiff = a[e][e] > SINGULAR * most;
        if (!stiff && !(otherwise > 0))
            continue;
        rank += stiff;
        const double k = stiff ? a[e][e] : otherwise;
        for (int i = 0; i < 3; i++)
            for (int j = 0; j < 3; j++)
                inverse[i][j] += v[i][e] * v[j][e] / k;
    }
    return rank;
}

static void add_stiffness(const sw__touch *p, double a[3][3])
{
    double g[3];
    lever(p, g);
    for (int i = 0; i < 3; i++)
        for (int j = 0; j < 3; j++)
            a[i][j] += p->k * g[i] * g[j];
}

int sw__bed_inverse(const sw__rig *rig, const char *on, double inverse[3][3])
{
    double a[3][3] = {{0}};
    for (int i = 0; i < rig->pads; i++)
        if (on[i])
            add_stiffness(&rig->pad[i], a);
    return invert(a, 0, inverse) == 3;
}

/* Energy and its slope r = sum N g + f. */
static double energy(const sw__rig *rig, const double f[3], const double u[3],
                     double r[3])
{
    double E = dot3(f, u);
    memcpy(r, f, 3 * sizeof *r);
    for (int i = 0; i < rig->pads; i++) {
        double g[3];
        lever(&rig->pad[i], g);
        const double d = fmax(0, dot3(g, u)), k = rig->pad[i].k;
        E += k * d * d / 2;
        for (int j = 0; j < 3; j++)
            r[j] += k * d * g[j];
    }
    return E;
}

static double slope_along(const sw__rig *rig, const double f[3],
                          const double u[3], const double d[3])
{
    double slope[3];
    energy(rig, f, u, slope);
    return dot3(d, slope);
}

/* Goes along d while the energy falls: at first all of it, then halves, or
 * where `far` doubles; returns the energy there. */
static double go(const sw__rig *rig, const double f[3], double u[3],
                 const double d[3], double E, int far)
{
    double next[3], slope[3], part = 1, best = E;
    const double fall = slope_along(rig, f, u, d);
    for (int half = 0; half < 60; half++, part /= 2) {
        for (int i = 0; i < 3; i++)
            next[i] = u[i] + part * d[i];
        best = energy(rig, f, next, slope);
        /* near the end E falls by less than its rounding */
        if (best <= E + 1e-4 * part * fall + 1e-14 * fabs(E))
            break;
    }
    double at = part;
    for (int twice = 0; far && part == 1 && twice < 60; twice++) {
        double to[3];
        for (int i = 0; i < 3; i++)
            to[i] = u[i] + 2 * at * d[i];
        const double E1 = energy(rig, f, to, slope);
        if (!(E1 < best))
            break;
        best = E1;
        at *= 2;
        memcpy(next, to, sizeof next);
    }
    memcpy(u, next, sizeof next);
    return best;
}

int sw__bed(const sw__rig *rig, const double w[6], double *N)
{
    const double f[3] = {w[2], w[3], w[4]};
    const double size = fabs(f[0]) + fabs(f[1]) + fabs(f[2]);
    double u[3] = {fmax(0, -f[0]), 0, 0}, r[3];
    double E = energy(rig, f, u, r), all = 0;
    for (int i = 0; i < rig->pads; i++)
        all += rig->pad[i].k;
    int balanced = size <= 0;
    for (int step = 0; step < STEPS && !balanced; step++) {
        double a[3][3] = {{0}}, inverse[3][3];
        for (int i = 0; i < rig->pads; i++) {
            double g[3];
            lever(&rig->pad[i], g);
            if (dot3(g, u) > 0)
                add_stiffness(&rig->pad[i], a);
        }
        double full[3][3], d[3], loose[3], open = 0;
        memcpy(full, a, sizeof full);
        invert(a, 0, inverse);
        for (int i = 0; i < 3; i++)
            d[i] = -dot3(inverse[i], r);
        invert(full, all, inverse);
        for (int i = 0; i < 3; i++) {
            loose[i] = -dot3(inverse[i], r) - d[i]; /* without stiffness */
            open += all * fabs(loose[i]);
        }
        const int far = open > BALANCED / 2 * size;
        E = go(rig, f, u, far ? loose : d, E, far);
        energy(rig, f, u, r);
        balanced = fabs(r[0]) + fabs(r[1]) + fabs(r[2]) <= BALANCED * size;
    }
    for (int i = 0; i < rig->pads; i++) {
        double g[3];
        lever(&rig->pad[i], g);
        N[i] = rig->pad[i].k * fmax(0, dot3(g, u));
    }
    return balanced;
}

int sw__bed_on(const sw__rig *rig, const double *N, char *on)
{
    double most = 0;
    int carry = 0;
    for (int i = 0; i < rig->pads; i++)
        most = fmax(most, N[i]);
    for (int i = 0; i < rig->pads; i++)
        carry += on[i] = N[i] > SW__IDLE * most;
    return carry;
}
