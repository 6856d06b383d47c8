/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Settle: x = g(x), where g hangs on x but little.
 *
 * Each pass evaluates the residual g(x) - x and steps on. The first step is the
 * residual itself, the later ones follow the secant through the last two
 * points, which for a residual of slope near -1 settles in three or four passes
 * where plain steps take many. A slope that says nothing gets a plain step.
 */
#ifndef SW_BASE_SETTLE_H
#define SW_BASE_SETTLE_H

typedef struct {
    double x, residual; /* of the pass before */
    int begun;
} sw__settling;

/* The step from x, where the residual is as told. */
static inline double sw__settle(sw__settling *s, double x, double residual)
{
    double step = residual;
    if (s->begun && x != s->x) {
        const double slope = (residual - s->residual) / (x - s->x);
        if (slope < -0.1 && slope > -100)
            step = -residual / slope;
    }
    s->x = x;
    s->residual = residual;
    s->begun = 1;
    return step;
}

#endif
