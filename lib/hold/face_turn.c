/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Face turn: a ring pressed on a face, under a moment M about its axis and a
 * push Q along the face.
 *
 * Symbols: ri, ro ring, r radius, p pressure, N its sum, mu friction, s
 * distance of the point about which it turns from the axis, k load factor.
 *
 *   upper bound  turning about any point, friction takes mu p |x - c| on every
 *                element and the load gives M + s Q at most (the point lies
 *                square to the push, on the side where both work together):
 *                k = mu N d(s)/(M + s Q), the least over s is exact       (1)
 *   distance     d(s) = 1/N * integral of p r 4 (r + s) E(m) dr,
 *                m = 4 r s/(r + s)^2, E the complete elliptic integral    (2)
 *   even         p = N/(pi (ro^2 - ri^2)); d(0) = 2/3 (ro^3 - ri^3)/
 *                (ro^2 - ri^2)                                            (3)
 *   wear         p = N/(2 pi r (ro - ri)); d(0) = (ro + ri)/2             (4)
 *
 * (1) is limit analysis with given normal force, exact for friction; (2) is the
 * integral over the angle. d is convex and M + s Q straight, so that (1) has one
 * valley. Torque over radius, M alone, is 10 to 23 % too high for a cut at 1.5
 * to 2.5 ro, and an ellipse through the two simple limits 4 to 8 %; neither is
 * used.
 *
 * Not in it: what the live centre holds sideways (safe), pressure that the cut
 * shifts to one side.
 */
#include "hold/face_turn.h"

#include "base/internal.h"

/* By the arithmetic-geometric mean, Abramowitz and Stegun 17.6. */
static double elliptic_E(double m)
{
    double a = 1, b = sqrt(fmax(0, 1 - m)), sum = m / 2, weight = 0.5;
    if (b < 1e-12)
        return 1;
    for (int i = 0; i < 12 && fabs(a - b) > 1e-16 * a; i++) {
        const double c = (a - b) / 2, mean = (a + b) / 2;
        b = sqrt(a * b);
        a = mean;
        weight *= 2;
        sum += weight * c * c;
    }
    return SW__PI / (2 * a) * (1 - sum);
}

/* What the ring at r adds to N d(s), over 2 pi and but for the even p. */
static double ring(const sw__face *f, double r, double s)
{
    const double both = r + s;
    if (!(both > 0))
        return 0;
    const double around =
        4 * both * elliptic_E(4 * r * s / (both * both)) / (2 * SW__PI);
    return f->wear ? around : around * r;
}

/* Gauss and Legendre's ten points in each of a few panels, which crowd at
 * `near`, where (2) has a logarithm. */
static double piece(const sw__face *f, double s, double near, double far)
{
    static const double x[] = {0.1488743389816312, 0.4333953941292472,
                               0.6794095682990244, 0.8650633666889845,
                               0.9739065285171717};
    static const double w[] = {0.2955242247147529, 0.2692667193099963,
                               0.2190863625159820, 0.1494513491505806,
                               0.0666713443086881};
    enum { PANELS = 3 };
    double sum = 0;
    for (int p = 0; p < PANELS; p++)
        for (int i = 0; i < 10; i++) {
            const double at = i < 5 ? x[i] : -x[i - 5];
            const double t = (p + (1 + at) / 2) / PANELS;
            const double r = near + (far - near) * t * t;
            sum += w[i % 5] / (2 * PANELS) * 2 * t * ring(f, r, s);
        }
    return sum * fabs(far - near);
}

double sw__face_distance(const sw__face *f, double s)
{
    const double ri = f->ri_mm, ro = f->ro_mm;
    double sum;
    if (s >= ro)
        sum = piece(f, s, ro, ri);
    else if (s <= ri)
        sum = piece(f, s, ri, ro);
    else
        sum = piece(f, s, s, ri) + piece(f, s, s, ro);
    return f->wear ? sum / (ro - ri) : 2 * sum / (ro * ro - ri * ri);
}

double sw__face_turn(const sw__face *f, double friction, double M, double Q,
                     double *s_mm)
{
    const double golden = 0.6180339887498949;
    double low = 0, high = 1 - 1e-9; /* of s/(s + ro) */
    double s = 0;
    for (int i = 0; i < 60 && Q > 0; i++) {
        const double width = high - low;
        const double u = high - golden * width, v = low + golden * width;
        const double su = f->ro_mm * u / (1 - u), sv = f->ro_mm * v / (1 - v);
        const double at_u = sw__face_distance(f, su) / (M + su * Q),
                     at_v = sw__face_distance(f, sv) / (M + sv * Q);
        if (at_u < at_v)
            high = v;
        else
            low = u;
        s = f->ro_mm * (low + high) / (2 - low - high);
    }
    double least = sw__face_distance(f, s) / (M + s * Q);
    if (Q > 0 && 1 / Q < least) /* slides away without turning */
        least = 1 / Q;
    if (M > 0 && sw__face_distance(f, 0) / M < least) {
        least = sw__face_distance(f, 0) / M;
        s = 0;
    }
    if (s_mm)
        *s_mm = s;
    return friction * least;
}
