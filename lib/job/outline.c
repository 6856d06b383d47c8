/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Outline: the part seen from above, a polygon.
 *
 * Symbols: corners (x_i, y_i), i = 0 .. n-1, cyclic; c_i = x_i y_{i+1} - x_{i+1}
 * y_i.
 *
 *   (1)  A = 1/2 sum c_i                         positive: counterclockwise
 *   (2)  x_c = 1/(6 A) sum (x_i + x_{i+1}) c_i   and alike y_c
 *
 * Source: the shoelace formula and Green's theorem, as in any textbook. A point
 * is inside where a ray from it crosses the edges an odd number of times; on
 * the edge (a millionth of a millimetre) counts as inside.
 *
 * Not in it: holes and pockets; what they weigh less, the job says by its
 * weight.
 */
#include "job/outline.h"

#define TOUCH 1e-6   /* mm */
#define GRAZING 0.05 /* sine of the least angle to a side */

static double cross(double ax, double ay, double bx, double by)
{
    return ax * by - ay * bx;
}

/* Distance of a point from an edge. */
static double off_edge(const sw__outline *o, int i, double x, double y)
{
    const int k = (i + 1) % o->corners;
    const double dx = o->x[k] - o->x[i], dy = o->y[k] - o->y[i];
    const double length = dx * dx + dy * dy;
    double t =
        length > 0 ? ((x - o->x[i]) * dx + (y - o->y[i]) * dy) / length : 0;
    t = fmin(1, fmax(0, t));
    return hypot(x - o->x[i] - t * dx, y - o->y[i] - t * dy);
}

static int side(double value) { return (value > 0) - (value < 0); }

static int edges_meet(const sw__outline *o, int a, int b)
{
    const int a1 = (a + 1) % o->corners, b1 = (b + 1) % o->corners;
    const double ax = o->x[a1] - o->x[a], ay = o->y[a1] - o->y[a];
    const double bx = o->x[b1] - o->x[b], by = o->y[b1] - o->y[b];
    const int s1 = side(cross(ax, ay, o->x[b] - o->x[a], o->y[b] - o->y[a]));
    const int s2 = side(cross(ax, ay, o->x[b1] - o->x[a], o->y[b1] - o->y[a]));
    const int s3 = side(cross(bx, by, o->x[a] - o->x[b], o->y[a] - o->y[b]));
    const int s4 = side(cross(bx, by, o->x[a1] - o->x[b], o->y[a1] - o->y[b]));
    if (s1 * s2 < 0 && s3 * s4 < 0)
        return 1;
    return off_edge(o, a, o->x[b], o->y[b]) < TOUCH ||
           off_edge(o, a, o->x[b1], o->y[b1]) < TOUCH ||
           off_edge(o, b, o->x[a], o->y[a]) < TOUCH ||
           off_edge(o, b, o->x[a1], o->y[a1]) < TOUCH;
}

/* Neighbours share a corner; they are wrong where one folds back on the other
 * or has no length. */
static int neighbours_fold(const sw__outline *o, int a)
{
    const int b = (a + 1) % o->corners, c = (a + 2) % o->corners;
    return hypot(o->x[b] - o->x[a], o->y[b] - o->y[a]) < TOUCH ||
           off_edge(o, a, o->x[c], o->y[c]) < TOUCH ||
           off_edge(o, b, o->x[a], o->y[a]) < TOUCH;
}

int sw__outline_simple(const sw__outline *o, sw__crossing *found)
{
    const int n = o->corners;
    for (int a = 0; a < n; a++) {
        *found = (sw__crossing){a, (a + 1) % n};
        if (neighbours_fold(o, a))
            return 0;
        for (int b = a + 2; b < n; b++) {
            *found = (sw__crossing){a, b};
            if ((b + 1) % n != a && edges_meet(o, a, b))
                return 0;
        }
    }
    return 1;
}

void sw__outline_measure(sw__outline *o)
{
    const int n = o->corners;
    /* about a corner, so that a far origin costs no digits */
    const double x0 = o->x[0], y0 = o->y[0];
    double A = 0, X = 0, Y = 0;
    o->left = o->right = x0;
    o->front = o->back = y0;
    for (int i = 0; i < n; i++) {
        const int k = (i + 1) % n;
        const double xi = o->x[i] - x0, yi = o->y[i] - y0;
        const double xk = o->x[k] - x0, yk = o->y[k] - y0;
        const double c = cross(xi, yi, xk, yk);
        A += c / 2;             /* (1) */
        X += (xi + xk) * c / 6; /* (2) */
        Y += (yi + yk) * c / 6;
        o->left = fmin(o->left, o->x[i]);
        o->right = fmax(o->right, o->x[i]);
        o->front = fmin(o->front, o->y[i]);
        o->back = fmax(o->back, o->y[i]);
    }
    o->area_mm2 = fabs(A);
    o->centre_x = x0 + (A != 0 ? X / A : 0);
    o->centre_y = y0 + (A != 0 ? Y / A : 0);
    if (A >= 0)
        return;
    for (int i = 0, k = n - 1; i < k; i++, k--) {
        const double x = o->x[i], y = o->y[i];
        o->x[i] = o->x[k];
        o->y[i] = o->y[k];
        o->x[k] = x;
        o->y[k] = y;
    }
}

int sw__outline_holds(const sw__outline *o, double x, double y)
{
    int inside = 0;
    for (int i = 0; i < o->corners; i++) {
        const int k = (i + 1) % o->corners;
        if (off_edge(o, i, x, y) < TOUCH)
            return 1;
        if ((o->y[i] > y) != (o->y[k] > y) &&
            x < o->x[i] +
                    (y - o->y[i]) / (o->y[k] - o->y[i]) * (o->x[k] - o->x[i]))
            inside = !inside;
    }
    return inside;
}

double sw__outline_off(const sw__outline *o, double x, double y)
{
    double nearest = off_edge(o, 0, x, y);
    for (int i = 1; i < o->corners; i++)
        nearest = fmin(nearest, off_edge(o, i, x, y));
    return sw__outline_holds(o, x, y) ? 0 : nearest;
}

/* Distance along u at which a ray meets an edge from outside; -1 for never. */
static double meets(const sw__outline *o, int i, double x, double y, double ux,
                    double uy)
{
    const int k = (i + 1) % o->corners;
    const double dx = o->x[k] - o->x[i], dy = o->y[k] - o->y[i];
    const double rx = o->x[i] - x, ry = o->y[i] - y;
    const double into = cross(dx, dy, ux, uy); /* the part is on its left */
    if (into < GRAZING * hypot(dx, dy))
        return -1;
    const double t = -cross(rx, ry, dx, dy) / into;
    const double s = -cross(rx, ry, ux, uy) / into;
    return t >= -TOUCH && s >= -1e-9 && s <= 1 + 1e-9 ? fmax(0, t) : -1;
}

int sw__outline_pushed(const sw__outline *o, double x, double y, double deg)
{
    const double ux = cos(SW__RAD(deg)), uy = sin(SW__RAD(deg));
    int on_edge = 0;
    for (int i = 0; i < o->corners; i++) {
        on_edge |= off_edge(o, i, x, y) < TOUCH;
        if (meets(o, i, x, y, ux, uy) >= 0)
            return 1;
    }
    return !on_edge && sw__outline_holds(o, x, y);
}
