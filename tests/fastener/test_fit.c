/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fit: published limits of size, metric to the micrometre and unified to the
 * ten-thousandth of an inch; the tables against the formulas of their
 * standard; every thread of the table.
 */
#include "../common.h"
#include "../near.h"
#include "../values.h"
#include "base/tables.h"
#include "fastener/fit.h"

#define INCH 25.4

static int is(const values *v, const char *column, const char *text)
{
    return strcmp(values_text(v, column), text) == 0;
}

/* M9x1.25 is in no table of threads. */
static void size_of(const char *thread, double *d, double *P, double *root)
{
    sw_error err;
    const int m9 = strcmp(thread, "M9x1.25") == 0;
    const sw_thread_out t = sw_thread(m9 ? "M10x1.25" : thread, &err);
    check_no_error(thread, t.status, &err);
    *d = t.nominal_mm - m9;
    *P = t.pitch_mm;
    *root = t.root_diameter_mm - m9;
}

/* Published: ISO 965 6g and 6H limits (limits.csv). Three decimals are
 * printed, and three are met. The stud's root lies as far under its basic size
 * as the rest; its least size needs the root's radius, which is not in the
 * fit. */
START_TEST(published_metric)
{
    values v;
    values_open(&v, "tests/values/limits.csv");
    int met = 0;
    while (values_next(&v)) {
        double d, P, root;
        size_of(values_text(&v, "thread"), &d, &P, &root);
        const sw__fit f = sw__fit_of(SW_SYSTEM_METRIC, d, P);
        const int stud = is(&v, "side", "external");
        const struct {
            const char *quantity;
            double value;
        } row[] = {
            {"major_max_mm", f.Ds_max},
            {"major_min_mm", f.Ds_min},
            {"pitch_max_mm", stud ? f.Es_max : f.En_max},
            {"pitch_min_mm", stud ? f.Es_min : f.En_min},
            {"minor_max_mm", stud ? root - f.deviation : f.Kn_max},
            {"minor_min_mm", stud ? NAN : f.Kn_min},
        };
        for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
            if (is(&v, "quantity", row[i].quantity) && !isnan(row[i].value)) {
                near_in(values_text(&v, "id"), row[i].value,
                        values_number(&v, "value"), 0.0005, 0);
                met++;
            }
        must(!f.hearsay, "%s is not in the tables", values_text(&v, "thread"));
    }
    ck_assert_int_eq(met, 6 * 5 + 8 * 4);
}
END_TEST

/* ASME B1.1, 2A and 2B, from memory, inch; four decimals printed, the nut's
 * minor diameter three. */
START_TEST(printed_unified)
{
    static const struct {
        double D, n, Ds_max, Ds_min, Es_max, Es_min, En_min, En_max, Kn_max;
    } row[] = {
        {0.25, 20, 0.2489, 0.2408, 0.2164, 0.2127, 0.2175, 0.2224, 0.207},
        {0.375, 16, 0.3737, 0.3643, 0.3331, 0.3287, 0.3344, 0.3401, 0.321},
        {0.375, 24, 0.3739, 0.3667, 0.3468, 0.3430, 0.3479, 0.3528, 0.340},
        {0.5, 13, 0.4985, 0.4876, 0.4485, 0.4435, 0.4500, 0.4565, 0.434},
        {0.75, 10, 0.7482, 0.7353, 0.6832, 0.6773, 0.6850, 0.6927, 0.663},
    };
    const double digit = 1.001e-4 * INCH; /* one unit of the last digit */
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        char name[40];
        snprintf(name, sizeof name, "%g-%g", row[i].D, row[i].n);
        const sw__fit f =
            sw__fit_of(SW_SYSTEM_UNIFIED, row[i].D * INCH, INCH / row[i].n);
        near_in(name, f.Ds_max, row[i].Ds_max * INCH, digit, 0);
        near_in(name, f.Ds_min, row[i].Ds_min * INCH, digit, 0);
        near_in(name, f.Es_max, row[i].Es_max * INCH, digit, 0);
        near_in(name, f.Es_min, row[i].Es_min * INCH, digit, 0);
        near_in(name, f.En_min, row[i].En_min * INCH, digit, 0);
        near_in(name, f.En_max, row[i].En_max * INCH, digit, 0);
        near_in(name, f.Kn_max, row[i].Kn_max * INCH, 6e-4 * INCH, 0);
    }
}
END_TEST

/* The same standard's largest minor diameters of small nuts, from memory, four
 * decimals below #5 and three above. */
START_TEST(printed_small)
{
    static const struct {
        double D, n, Kn_max, digit;
    } row[] = {{0.060, 80, 0.0514, 1e-4}, {0.086, 56, 0.0737, 1e-4},
               {0.112, 40, 0.0939, 1e-4}, {0.164, 32, 0.139, 6e-4},
               {0.190, 24, 0.156, 6e-4},  {0.190, 32, 0.164, 6e-4}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        char name[40];
        snprintf(name, sizeof name, "%g-%g", row[i].D, row[i].n);
        near_in(name,
                sw__fit_of(SW_SYSTEM_UNIFIED, row[i].D * INCH, INCH / row[i].n)
                    .Kn_max,
                row[i].Kn_max * INCH, 1.001 * row[i].digit * INCH, 0);
    }
}
END_TEST

/* One step of the R40 series, 10^(1/40), each way. */
static void within_a_step(const char *what, double table, double formula)
{
    const double steps = 40 * fabs(log10(table / formula));
    must(steps < 1, "%s: table %g, formula %g: %g steps", what, table, formula,
         steps);
}

/* Independent: the formulas of ISO 965-1 for the middle of each range, before
 * they are rounded to the R40 series; es is rounded to a micrometre or two. */
START_TEST(metric_formulas)
{
    for (size_t i = 0; i < sw__fits_count; i++) {
        const struct sw__fits_row *row = &sw__fits[i];
        const double P = row->pitch_mm;
        near_in(row->key, 1000 * row->deviation_mm, 15 + 11 * P, 2, 0);
        within_a_step(row->key, 1000 * row->stud_major_mm,
                      180 * cbrt(P * P) - 3.15 / sqrt(P));
        within_a_step(row->key, 1000 * row->nut_minor_mm,
                      P < 1 ? 433 * P - 190 * exp(1.22 * log(P))
                            : 230 * exp(0.7 * log(P)));
    }
    for (size_t i = 0; i < sw__fits_pitch_count; i++) {
        const struct sw__fits_pitch_row *row = &sw__fits_pitch[i];
        const double d = sqrt(row->d_over_mm * row->d_to_mm);
        const double Td2 = 90 * exp(0.4 * log(row->pitch_mm) + 0.1 * log(d));
        within_a_step(row->key, 1000 * row->stud_pitch_mm, Td2);
        within_a_step(row->key, 1000 * row->nut_pitch_mm, 1.32 * Td2);
    }
    ck_assert_uint_ge(sw__fits_count, 20);
    ck_assert_uint_ge(sw__fits_pitch_count, 32);
}
END_TEST

/* Properties: each thread has limits of its own row, in their order; a nut
 * always goes on its stud, and they always overlap. */
START_TEST(every_thread)
{
    for (int i = 0; i < sw_thread_count(); i++) {
        const char *name = sw_thread_name(i);
        const sw_thread_out t = sw_thread(name, NULL);
        const sw__fit f = sw__fit_of(t.system, t.nominal_mm, t.pitch_mm);
        must(!f.hearsay, "%s has no row", name);
        must(f.Ds_min < f.Ds_max && f.Ds_max < t.nominal_mm, "%s: Ds", name);
        must(f.Es_min < f.Es_max && f.Es_max < f.En_min, "%s: Es", name);
        must(f.En_min < f.En_max && f.En_max < f.Ds_min, "%s: En", name);
        must(f.Kn_min < f.Kn_max && f.Kn_max < f.Ds_min, "%s: Kn", name);
        near_in(name, f.En_min, t.pitch_diameter_mm, 0.0013, 0);
        near_in(name, f.Kn_min, t.minor_diameter_mm, 0.0013, 0);
    }
}
END_TEST

/* A size that no table has follows the formulas, close to its neighbours. */
START_TEST(without_a_row)
{
    const sw__fit far = sw__fit_of(SW_SYSTEM_METRIC, 100, 6);
    ck_assert_int_eq(far.hearsay, 1);
    near(far.deviation, 0.080, 0, 0); /* the pitch has its row */
    near(far.stud_pitch, 0.090 * pow(6, 0.4) * pow(100, 0.1), 0, 1e-12);
    near(far.nut_pitch, 1.32 * far.stud_pitch, 0, 1e-12);
    near(far.stud_pitch, 0.280, 0, 0.06); /* up to 90 mm */
    for (double P = 0.65; P < 6; P += 0.7) {
        const sw__fit f = sw__fit_of(SW_SYSTEM_METRIC, 20, P);
        ck_assert_int_eq(f.hearsay, 1);
        const sw__fit finer = sw__fit_of(SW_SYSTEM_METRIC, 20, P * 0.99);
        ck_assert(finer.stud_major < f.stud_major);
        ck_assert(finer.nut_minor < f.nut_minor);
        ck_assert(finer.deviation < f.deviation);
        ck_assert(f.Kn_max < f.Ds_min && f.En_max < f.Ds_min);
    }
    near(sw__fit_of(SW_SYSTEM_METRIC, 20, 0.9999).nut_minor,
         sw__fit_of(SW_SYSTEM_METRIC, 20, 1).nut_minor, 0, 0.06);
}
END_TEST

/* The ranges of diameters: over the lower end, up to and including the
 * upper. */
START_TEST(ends_of_ranges)
{
    near(sw__fit_of(SW_SYSTEM_METRIC, 22.4, 2).stud_pitch, 0.160, 0, 0);
    near(sw__fit_of(SW_SYSTEM_METRIC, 22.5, 2).stud_pitch, 0.170, 0, 0);
    near(sw__fit_of(SW_SYSTEM_METRIC, 45, 3).stud_pitch, 0.200, 0, 0);
    near(sw__fit_of(SW_SYSTEM_METRIC, 48, 3).stud_pitch, 0.212, 0, 0);
}
END_TEST

int main(void)
{
    return RUN_TESTS("fit", published_metric, printed_unified, printed_small,
                     metric_formulas, every_thread, without_a_row,
                     ends_of_ranges);
}
