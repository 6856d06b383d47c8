/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Hatch: section lines as lines, since a pattern would need a name that could
 * stand twice in one page. A line x + y = c (or x - y = c) meets the outline
 * an even number of times; between the first and second it is inside, and so
 * on.
 */
#include "sheet/hatch.h"

#define MOST_CORNERS 16
#define MOST_LINES 2000

static double along(sw__point p, int falling)
{
    return falling ? p.x - p.y : p.x + p.y;
}

/* Where the line c meets the outline, by x, sorted. */
static int meet(const sw__point *corner, int corners, double c, int falling,
                double *x)
{
    int n = 0;
    for (int i = 0; i < corners && n < MOST_CORNERS; i++) {
        const sw__point a = corner[i], b = corner[(i + 1) % corners];
        const double ca = along(a, falling), cb = along(b, falling);
        if ((ca < c) == (cb < c))
            continue;
        const double here = a.x + (c - ca) / (cb - ca) * (b.x - a.x);
        int k = n++;
        for (; k > 0 && x[k - 1] > here; k--)
            x[k] = x[k - 1];
        x[k] = here;
    }
    return n;
}

void sw__hatch(sw__svg *s, const sw__point *corner, int corners, double apart,
               int falling)
{
    double low = INFINITY, high = -INFINITY, x[MOST_CORNERS];
    for (int i = 0; i < corners; i++) {
        low = fmin(low, along(corner[i], falling));
        high = fmax(high, along(corner[i], falling));
    }
    if (!(high - low < apart * MOST_LINES))
        return;
    const double sign = falling ? 1 : -1;
    for (double c = ceil(low / apart) * apart; c < high; c += apart) {
        const int n = meet(corner, corners, c, falling, x);
        for (int i = 0; i + 1 < n; i += 2)
            if (x[i + 1] - x[i] > 0.5)
                sw__svg_line(s, (sw__point){x[i], sign * (x[i] - c)},
                             (sw__point){x[i + 1], sign * (x[i + 1] - c)}, "");
    }
}
