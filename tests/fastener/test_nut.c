/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Nut: published proof loads (tests/values/nut_proof_loads.csv), the limits of
 * diameter, what is refused.
 */
#include "../common.h"
#include "../near.h"
#include "../values.h"

static sw_nut_out good(const char *name, double d)
{
    sw_error err;
    const sw_nut_out n = sw_nut_proof(name, d, &err);
    check_no_error(name, n.status, &err);
    check_numbers(name, &n, SW_STRUCT_NUT_OUT, n.status);
    return n;
}

/* Published: ISO 898-2, to 0.6 %: three or four digits are printed. The loads
 * of the withdrawn DIN 267-4 are 800 and 1000 MPa times the area, and lower. */
START_TEST(loads)
{
    values v;
    values_open(&v, "tests/values/nut_proof_loads.csv");
    int rows = 0, withdrawn = 0;
    while (values_next(&v)) {
        sw_error err;
        const char *id = values_text(&v, "id");
        const sw_thread_out t = sw_thread(values_text(&v, "thread"), &err);
        check_no_error(id, t.status, &err);
        const char *name = values_text(&v, "grade");
        const double load =
            good(name, t.nominal_mm).proof_MPa * t.stress_area_mm2;
        const double published = values_number(&v, "load_N");
        if (strstr(values_text(&v, "source"), "DIN 267-4")) {
            withdrawn++;
            /* printed in steps of 500 or 1000 N */
            near_in(id, 100 * strtod(name, NULL) * t.stress_area_mm2, published,
                    700, 0);
            must(load > 1.03 * published, "%s", id);
        } else {
            rows++;
            near_in(id, load, published, 0, 0.006);
        }
    }
    ck_assert_int_ge(rows, 31);
    ck_assert_int_eq(withdrawn, 10);
}
END_TEST

/* Property: a nut of the class named by the first number of the bolt's takes
 * the bolt to its proof load and beyond its nominal tensile strength. */
START_TEST(stronger_than_the_bolt)
{
    static const struct {
        const char *grade, *nut;
    } row[] = {{"8.8", "8"}, {"10.9", "10"}, {"4.8", "5"}, {"6.8", "6"}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
        for (double d = 5; d <= 39; d += 0.5) {
            const sw_grade_out g = sw_grade(row[i].grade, d, NULL);
            const double proof = good(row[i].nut, d).proof_MPa;
            must(proof > g.proof_MPa && proof >= g.tensile_MPa, "%s at %g",
                 row[i].grade, d);
        }
}
END_TEST

START_TEST(every_row)
{
    int i = 0;
    for (; sw_nut_name(i); i++) {
        const char *name = sw_nut_name(i);
        int answers = 0;
        double last = 0;
        for (double d = 1; d <= 100; d += 0.25) {
            sw_error err;
            const sw_nut_out n = sw_nut_proof(name, d, &err);
            check_numbers(name, &n, SW_STRUCT_NUT_OUT, n.status);
            if (n.status) {
                check_refused(name, &err, SW_ERR_RANGE, "nut_class");
                continue;
            }
            answers++;
            ck_assert_str_eq(n.nut_class, name);
            must(n.source[0], "%s", name);
            /* ISO 898-2: the stress never falls with the diameter */
            must(n.proof_MPa >= last || strncmp(name, "grade", 5) == 0,
                 "%s at %g", name, d);
            last = n.proof_MPa;
        }
        must(answers > 0, "%s", name);
    }
    ck_assert_int_ge(i, 30);
    ck_assert_ptr_null(sw_nut_name(i + 1));
    ck_assert_ptr_null(sw_nut_name(-1));
}
END_TEST

START_TEST(refused)
{
    sw_error err;
    near(good("8", 7).proof_MPa, 855, 0, 0);
    near(good("8", 7.001).proof_MPa, 870, 0, 0);
    near(good("8", 16).proof_MPa, 880, 0, 0);
    near(good("8", 39).proof_MPa, 920, 0, 0);
    ck_assert_uint_eq(good("8", 12).warnings, 0);
    ck_assert_uint_eq(good("8", 3).warnings, SW_WARN_TABLE_FROM_MEMORY);
    sw_nut_out n = sw_nut_proof("8", 42, &err);
    check_refused("8 at 42", &err, SW_ERR_RANGE, "nut_class");
    ck_assert_ptr_nonnull(strstr(err.message, "1.6 to 39 mm"));
    n = sw_nut_proof("grade-5", 26, &err); /* between its two rows */
    check_refused("between", &err, SW_ERR_RANGE, "nut_class");
    static const double bad[] = {0.999, 100.001, 0, -12, 1e300, INFINITY};
    for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++) {
        n = sw_nut_proof("8", bad[i], &err);
        check_refused("diameter", &err, SW_ERR_RANGE, "nominal_mm");
    }
    n = sw_nut_proof("8", NAN, &err);
    check_refused("diameter", &err, SW_ERR_NAN, "nominal_mm");
    static const char *const text[] = {"",  "8.8",     " 8", "8 ",
                                       "9", "grade-1", "\n", "\xff"};
    for (size_t i = 0; i < sizeof text / sizeof text[0]; i++) {
        n = sw_nut_proof(text[i], 12, &err);
        ck_assert_int_eq(n.status, SW_ERR_UNKNOWN);
        check_refused(text[i], &err, SW_ERR_UNKNOWN, "nut_class");
        check_numbers(text[i], &n, SW_STRUCT_NUT_OUT, n.status);
        ck_assert_ptr_nonnull(strstr(err.message, "grade-8"));
    }
    n = sw_nut_proof(NULL, 12, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "nut_class");
    check_numbers("NULL", &n, SW_STRUCT_NUT_OUT, n.status);
    ck_assert_int_eq(sw_nut_proof("9", 12, NULL).status, SW_ERR_UNKNOWN);
}
END_TEST

int main(void)
{
    return RUN_TESTS("nut", loads, stronger_than_the_bolt, every_row, refused);
}
