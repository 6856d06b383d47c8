/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Hertz: elastic contact of two round bodies; equations (1) to (3) of
 * contact.c.
 */
#include "clamp/hertz.h"

#include "base/internal.h"

double sw__reduced_modulus(double E1, double n1, double E2, double n2)
{
    return 1 / ((1 - n1 * n1) / E1 + (1 - n2 * n2) / E2);
}

sw__spot sw__hertz(double F, double length, double R, double E)
{
    sw__spot s;
    if (length > 0) {
        const double w = F / length, b = sqrt(4 * w * R / (SW__PI * E));
        s.half_width_mm = b;
        s.peak_MPa = 2 * w / (SW__PI * b);
        s.mean_MPa = w / (2 * b);
        s.approach_mm = SW_UNSET; /* depends on the bodies' far ends */
    } else {
        const double a = cbrt(3 * F * R / (4 * E));
        s.half_width_mm = a;
        s.peak_MPa = 3 * F / (2 * SW__PI * a * a);
        s.mean_MPa = F / (SW__PI * a * a);
        s.approach_mm = a * a / R;
    }
    return s;
}
