/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Grade: published loads of bolts (tests/values/proof_loads.csv), published
 * stresses, the limits of diameter, what is refused.
 */
#include "../common.h"
#include "../near.h"
#include "../values.h"

static sw_grade_out good(const char *name, double d)
{
    sw_error err;
    const sw_grade_out g = sw_grade(name, d, &err);
    check_no_error(name, g.status, &err);
    check_numbers(name, &g, SW_STRUCT_GRADE_OUT, g.status);
    return g;
}

/* Published: ISO 898-1 tables of proof and ultimate loads, to 0.65 %: three
 * digits are printed and some are cut, M6 8.8 as 11600 N for 580 * 20.1 =
 * 11658. */
START_TEST(loads)
{
    values v;
    values_open(&v, "tests/values/proof_loads.csv");
    int rows = 0;
    while (values_next(&v)) {
        sw_error err;
        const sw_thread_out t = sw_thread(values_text(&v, "thread"), &err);
        check_no_error(values_text(&v, "id"), t.status, &err);
        const sw_grade_out g = good(values_text(&v, "grade"), t.nominal_mm);
        const char *kind = values_text(&v, "kind");
        const double stress =
            strcmp(kind, "proof") == 0 ? g.proof_MPa : g.tensile_MPa;
        must(strcmp(kind, "proof") == 0 || strcmp(kind, "ultimate") == 0, "%s",
             kind);
        near_in(values_text(&v, "id"), stress * t.stress_area_mm2,
                values_number(&v, "load_N"), 0, 0.0065);
        rows++;
    }
    ck_assert_int_ge(rows, 40);
}
END_TEST

/* Published: ISO 898-1 (2013) table 3, MPa; SAE J429, ksi (in Mechanical
 * Engineering Design), one part in 1000 for the conversion of the table. */
START_TEST(stresses)
{
    static const struct {
        const char *grade;
        double d, proof, yield, tensile, unit;
    } row[] = {
        {"4.6", 12, 225, 240, 400, 1},
        {"5.8", 12, 380, 420, 520, 1},
        {"8.8", 12, 580, 640, 800, 1},
        {"8.8", 16, 580, 640, 800, 1},
        {"8.8", 18, 600, 660, 830, 1},
        {"9.8", 12, 650, 720, 900, 1},
        {"10.9", 12, 830, 940, 1040, 1},
        {"12.9", 12, 970, 1100, 1220, 1},
        {"grade-1", 12.7, 33, 36, 60, 6.894757},
        {"grade-2", 12.7, 55, 57, 74, 6.894757},
        {"grade-2", 25.4, 33, 36, 60, 6.894757},
        {"grade-5", 12.7, 85, 92, 120, 6.894757},
        {"grade-5", 31.75, 74, 81, 105, 6.894757},
        {"grade-8", 12.7, 120, 130, 150, 6.894757},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const sw_grade_out g = good(row[i].grade, row[i].d);
        ck_assert_str_eq(g.grade, row[i].grade);
        near_in(row[i].grade, g.proof_MPa, row[i].proof * row[i].unit, 0, 1e-3);
        near_in(row[i].grade, g.yield_MPa, row[i].yield * row[i].unit, 0, 1e-3);
        near_in(row[i].grade, g.tensile_MPa, row[i].tensile * row[i].unit, 0,
                1e-3);
    }
}
END_TEST

/* A class of ISO 898-1 says its strength: a.b is a hundredth of the nominal
 * tensile strength and ten times the ratio of yield to it; the least values
 * may exceed the nominal ones by at most 6 %. */
START_TEST(class_names)
{
    static const char *const name[] = {"4.6", "4.8", "5.6",  "5.8", "6.8",
                                       "8.8", "9.8", "10.9", "12.9"};
    for (size_t i = 0; i < sizeof name / sizeof name[0]; i++) {
        int hundreds, tenths;
        ck_assert_int_eq(sscanf(name[i], "%d.%d", &hundreds, &tenths), 2);
        const sw_grade_out g = good(name[i], 12);
        const double tensile = 100.0 * hundreds;
        must(g.tensile_MPa >= tensile && g.tensile_MPa <= 1.06 * tensile, "%s",
             name[i]);
        const double yield = tensile * tenths / 10;
        must(g.yield_MPa >= yield && g.yield_MPa <= 1.07 * yield, "%s",
             name[i]);
    }
}
END_TEST

/* Stainless: ISO 3506-1 gives no proof stress; yield 210, 450, 600 MPa as in
 * the tables of tests/values/vdi_values.csv. */
START_TEST(stainless)
{
    static const struct {
        const char *name;
        double yield, tensile;
    } row[] = {{"A2-50", 210, 500}, {"A2-70", 450, 700}, {"A2-80", 600, 800},
               {"A4-50", 210, 500}, {"A4-70", 450, 700}, {"A4-80", 600, 800}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const sw_grade_out g = good(row[i].name, 10);
        ck_assert(g.proof_MPa == SW_UNSET);
        near_in(row[i].name, g.yield_MPa, row[i].yield, 0, 0);
        near_in(row[i].name, g.tensile_MPa, row[i].tensile, 0, 0);
    }
}
END_TEST

/* Every row of the table answers for some diameter, in order proof < yield <
 * tensile, and says where it comes from. */
START_TEST(every_row)
{
    int i = 0;
    for (; sw_grade_name(i); i++) {
        const char *name = sw_grade_name(i);
        int answers = 0;
        for (double d = 1; d <= 100; d += 0.25) {
            sw_error err;
            const sw_grade_out g = sw_grade(name, d, &err);
            check_numbers(name, &g, SW_STRUCT_GRADE_OUT, g.status);
            if (g.status) {
                check_refused(name, &err, SW_ERR_RANGE, "grade");
                continue;
            }
            answers++;
            ck_assert_str_eq(g.grade, name);
            must(g.source[0], "%s", name);
            must(g.proof_MPa < g.yield_MPa && g.yield_MPa < g.tensile_MPa,
                 "%s at %g", name, d);
        }
        must(answers > 0, "%s", name);
    }
    ck_assert_int_ge(i, 25);
    ck_assert_ptr_null(sw_grade_name(i + 1));
    ck_assert_ptr_null(sw_grade_name(-1));
}
END_TEST

START_TEST(ends_of_range)
{
    sw_error err;
    good("8.8", 1.6); /* ISO 898-1 goes from M1.6 to M39, both included */
    good("8.8", 39);
    good("grade-5", 6.35); /* SAE J429: 1/4 to 1 in, over 1 to 1-1/2 */
    good("grade-5", 25.4);
    good("grade-5", 28.575);
    good("grade-5", 38.1);
    sw_grade_out g = sw_grade("8.8", 42, &err);
    check_refused("8.8 at 42", &err, SW_ERR_RANGE, "grade");
    ck_assert_ptr_nonnull(strstr(err.message, "39 mm"));
    ck_assert_ptr_nonnull(strstr(err.message, "not 42 mm"));
    near(good("8.8", 16).yield_MPa, 640, 0, 0);
    near(good("8.8", 16.001).yield_MPa, 660, 0, 0);
    g = sw_grade("grade-5", 26, &err); /* between its two rows */
    check_refused("between", &err, SW_ERR_RANGE, "grade");
    static const double bad[] = {0.999, 100.001, 0, -12, 1e300, INFINITY};
    for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++) {
        g = sw_grade("8.8", bad[i], &err);
        check_refused("diameter", &err, SW_ERR_RANGE, "nominal_mm");
        near(err.low, 1, 0, 0);
        near(err.high, 100, 0, 0);
        check_numbers("diameter", &g, SW_STRUCT_GRADE_OUT, g.status);
    }
    g = sw_grade("8.8", NAN, &err);
    check_refused("diameter", &err, SW_ERR_NAN, "nominal_mm");
}
END_TEST

START_TEST(unknown)
{
    static const char *const text[] = {
        "",        " ",     "8.9", "8,8", "8.8 ", " 8.8", "88",  "grade 5",
        "Grade-5", "a2-70", "A2",  "nan", "8.80", "\n",   "\xff"};
    for (size_t i = 0; i < sizeof text / sizeof text[0]; i++) {
        sw_error err;
        const sw_grade_out g = sw_grade(text[i], 12, &err);
        ck_assert_int_eq(g.status, SW_ERR_UNKNOWN);
        check_refused(text[i], &err, SW_ERR_UNKNOWN, "grade");
        ck_assert_ptr_nonnull(strstr(err.message, "10.9"));
    }
    static char longest[10001];
    memset(longest, '8', 10000);
    sw_error err;
    sw_grade_out g = sw_grade(longest, 12, &err);
    check_refused("10,000 characters", &err, SW_ERR_UNKNOWN, "grade");
    g = sw_grade(NULL, 12, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "grade");
    check_numbers("NULL", &g, SW_STRUCT_GRADE_OUT, g.status);
    ck_assert_int_eq(sw_grade("8.9", 12, NULL).status, SW_ERR_UNKNOWN);
}
END_TEST

int main(void)
{
    return RUN_TESTS("grade", loads, stresses, class_names, stainless,
                     every_row, ends_of_range, unknown);
}
