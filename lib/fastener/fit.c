/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fit: limits of size of stud and nut, 6g in 6H or 2A in 2B.
 *
 * Symbols: d nominal diameter, P pitch; es how far the largest stud lies under
 * the basic profile; tolerances Td, Td2 of the stud's major and pitch
 * diameter, TD2, TD1 of the nut's pitch and minor diameter; basic pitch
 * diameter d2 = d - 0.75 H, minor D1 = d - 1.25 H, H = (sqrt 3/2) P.
 *
 *   stud   Ds_max = d - es,   Ds_min = Ds_max - Td
 *          Es_max = d2 - es,  Es_min = Es_max - Td2                       (1)
 *   nut    En_min = d2,       En_max = d2 + TD2
 *          Kn_min = D1,       Kn_max = D1 + TD1                           (2)
 *
 * Metric, ISO 965-1: the tables fits.csv and fits_pitch.csv; basic diameters
 * to the micrometre, as that standard prints them. Where a table has no row,
 * the formulas the tables were made by (um, mm), grade 6:
 *   es = 15 + 11 P, Td = 180 P^(2/3) - 3.15/sqrt(P)                       (3)
 *   Td2 = 90 P^0.4 d^0.1, TD2 = 1.32 Td2                                  (4)
 *   TD1 = 433 P - 190 P^1.22 below 1 mm, 230 P^0.7 from 1 mm              (5)
 * d is the middle of its range there, sqrt(d_over d_to), here d itself.
 *
 * Unified, ASME B1.1, inch, engaged length one diameter; everything rounded to
 * 0.0001 in, as that standard prints it:
 *   Td2 = 0.0015 d^(1/3) + 0.0015 d^(1/2) + 0.015 P^(2/3)
 *   es = 0.3 Td2, TD2 = 1.3 Td2, Td = 0.06 P^(2/3)                        (6)
 *   TD1 = 0.25 P - 0.4 P^2 from 1/4 in; below
 *         0.05 P^(2/3) + 0.03 P/d - 0.002, within 0.25 P - 0.4 P^2 and
 *         0.394 P                                                         (7)
 *
 * Tables and formulas are from memory. They meet every published limit of
 * tests/values/limits.csv to the micrometre and the published stripping areas
 * of inch threads (lib/fastener/strip.c); the tables follow (3) to (5) within
 * one step of the R40 series.
 *
 * Not in it: other tolerance classes, plated threads, the stud's root.
 */
#include "fastener/fit.h"

#include "base/internal.h"
#include "base/tables.h"

#include <strapwise/thread.h>

#define INCH 25.4

static double rounded(double value, double step)
{
    return floor(value / step + 0.5) * step;
}

static const struct sw__fits_row *row_of_pitch(double P)
{
    for (size_t i = 0; i < sw__fits_count; i++)
        if (fabs(sw__fits[i].pitch_mm - P) < 1e-9)
            return &sw__fits[i];
    return NULL;
}

static const struct sw__fits_pitch_row *row_of_size(double d, double P)
{
    for (size_t i = 0; i < sw__fits_pitch_count; i++) {
        const struct sw__fits_pitch_row *row = &sw__fits_pitch[i];
        if (fabs(row->pitch_mm - P) < 1e-9 && d > row->d_over_mm + 1e-9 &&
            d <= row->d_to_mm + 1e-9)
            return row;
    }
    return NULL;
}

static void tolerances_metric(sw__fit *f, double d, double P)
{
    const double um = 1e-3;
    const struct sw__fits_row *row = row_of_pitch(P);
    const struct sw__fits_pitch_row *pitch_row = row_of_size(d, P);
    if (row) {
        f->deviation = row->deviation_mm;
        f->stud_major = row->stud_major_mm;
        f->nut_minor = row->nut_minor_mm;
    } else {
        f->deviation = um * (15 + 11 * P);
        f->stud_major = um * (180 * pow(P, 2.0 / 3) - 3.15 / sqrt(P));
        f->nut_minor =
            um * (P < 1 ? 433 * P - 190 * pow(P, 1.22) : 230 * pow(P, 0.7));
    }
    if (pitch_row) {
        f->stud_pitch = pitch_row->stud_pitch_mm;
        f->nut_pitch = pitch_row->nut_pitch_mm;
    } else {
        f->stud_pitch = um * 90 * pow(P, 0.4) * pow(d, 0.1);
        f->nut_pitch = 1.32 * f->stud_pitch;
    }
    f->hearsay = !row || !pitch_row;
}

static void tolerances_unified(sw__fit *f, double d, double P)
{
    const double D = d / INCH, p = P / INCH, step = 1e-4;
    const double Td2 =
        0.0015 * cbrt(D) + 0.0015 * sqrt(D) + 0.015 * pow(p, 2.0 / 3);
    const double least = 0.25 * p - 0.4 * p * p, most = 0.394 * p;
    double minor = least;
    if (D < 0.25 - 1e-9) {
        minor = 0.05 * pow(p, 2.0 / 3) + 0.03 * p / D - 0.002;
        minor = fmin(fmax(minor, least), most);
    }
    f->deviation = INCH * rounded(0.3 * Td2, step);
    f->stud_major = INCH * rounded(0.06 * pow(p, 2.0 / 3), step);
    f->stud_pitch = INCH * rounded(Td2, step);
    f->nut_pitch = INCH * rounded(1.3 * Td2, step);
    f->nut_minor = INCH * rounded(minor, step);
}

sw__fit sw__fit_of(int system, double nominal_mm, double pitch_mm)
{
    sw__fit f = {0};
    const int metric = system == SW_SYSTEM_METRIC;
    const double step = metric ? 1e-3 : 1e-4 * INCH;
    const double H = sqrt(3) / 2 * pitch_mm;
    const double d = metric ? nominal_mm : rounded(nominal_mm, step);
    if (metric)
        tolerances_metric(&f, nominal_mm, pitch_mm);
    else
        tolerances_unified(&f, nominal_mm, pitch_mm);
    f.En_min = rounded(nominal_mm - 0.75 * H, step);
    f.Kn_min = rounded(nominal_mm - 1.25 * H, step);
    f.En_max = f.En_min + f.nut_pitch;
    f.Kn_max = f.Kn_min + f.nut_minor;
    f.Ds_max = d - f.deviation;
    f.Ds_min = f.Ds_max - f.stud_major;
    f.Es_max = f.En_min - f.deviation;
    f.Es_min = f.Es_max - f.stud_pitch;
    return f;
}
