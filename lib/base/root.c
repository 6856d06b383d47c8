/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Root: bisection by GSL, kept away from GSL's error handler.
 *
 * The handler aborts the process by default and belongs to the caller. So the
 * bracket is checked before GSL sees it, values that are not finite never
 * reach it (a trial without an answer inside the bracket ends the search), and
 * the solver's few bytes of state live on our stack: GSL would call the handler
 * when its own allocation fails. Bisection, because the
 * questions asked here jump where a contact changes its edge.
 */
#include "base/root.h"

#include <gsl/gsl_errno.h>
#include <gsl/gsl_roots.h>

#include <math.h>

typedef struct {
    double (*value)(double x, void *with);
    void *with;
    int gap; /* a trial had no answer */
} guarded;

static double guard(double x, void *with)
{
    guarded *g = with;
    const double value = g->gap ? 0 : g->value(x, g->with);
    if (isfinite(value))
        return value;
    g->gap = 1;
    return 0;
}

int sw__root(double (*value)(double x, void *with), void *with, double *low,
             double *high, double width)
{
    enum { MOST_STEPS = 200 };
    double state[32];
    const double at_low = value(*low, with), at_high = value(*high, with);
    if (!isfinite(at_low) || !isfinite(at_high) ||
        (at_low > 0) == (at_high > 0) ||
        gsl_root_fsolver_bisection->size > sizeof state)
        return 1;
    guarded g = {value, with, 0};
    gsl_function f = {guard, &g};
    gsl_root_fsolver solver = {.type = gsl_root_fsolver_bisection,
                               .function = &f,
                               .root = 0,
                               .x_lower = *low,
                               .x_upper = *high,
                               .state = state};
    if (gsl_root_fsolver_set(&solver, &f, *low, *high) != GSL_SUCCESS)
        return 1;
    for (int i = 0; i < MOST_STEPS; i++) {
        if (gsl_root_fsolver_iterate(&solver) != GSL_SUCCESS)
            break;
        if (g.gap)
            return 1;
        if (solver.x_upper - solver.x_lower <= width)
            break;
    }
    *low = solver.x_lower;
    *high = solver.x_upper;
    return 0;
}
