/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Plain numbers in and out. The C compiler's own reading of a literal and the
 * C library in its "C" locale are the other method.
 */
#include "../common.h"
#include "../near.h"
#include "../random.h"

#include <float.h>

/* Expected values: the literal as the compiler reads it. */
START_TEST(reads)
{
    static const struct {
        const char *text;
        double value;
    } row[] = {
        {"12", 12},
        {"-1.5e3", -1500},
        {"+3", 3},
        {".5", 0.5},
        {"5.", 5},
        {"0", 0},
        {"0.0", 0},
        {"007", 7},
        {"1e0", 1},
        {"1E+2", 100},
        {"1e-2", 0.01},
        {"0.1", 0.1},
        {"0.30000000000000004", 0.30000000000000004},
        {"123456789.123456789", 123456789.123456789},
        /* halfway cases round to even: IEEE 754-2008, 4.3.1 */
        {"9007199254740993", 9007199254740992},
        {"9007199254740995", 9007199254740996},
        {"9007199254740993.1", 9007199254740994},
        {"1.7976931348623157e308", DBL_MAX},
        {"2.2250738585072014e-308", DBL_MIN},
        {"4.9e-324", 0x1p-1074},
        {"2.5e-324", 0x1p-1074},
        {"2.4e-324", 0},
        {"1234567890123456789012345678901234567890",
         1234567890123456789012345678901234567890.0},
        {"0.000000000000000000000000000000000000001", 1e-39},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_error err;
        const sw_quantity_out q = sw_number(row[i].text, "load", &err);
        check_no_error(row[i].text, q.status, &err);
        near_in(row[i].text, q.value, row[i].value, 0, 0);
    }
}
END_TEST

START_TEST(refuses)
{
    static const char *const text[] = {
        "",
        " ",
        "1,5",
        "1.5,",
        "1,000.5",
        ",5",
        "lb",
        "x",
        "10x",
        "1 2",
        " 1",
        "1 ",
        "\t1",
        "1\n",
        "nan",
        "NaN",
        "inf",
        "-inf",
        "infinity",
        "1e999",
        "-1e999",
        "1e4000000000",
        "1.8e308",
        "0x10",
        "0x1p3",
        "1e",
        "1e+",
        "1e-",
        "e5",
        ".",
        "-",
        "+",
        "--1",
        "+-1",
        "- 1",
        "1.2.3",
        "1..2",
        "1_000",
        "1'000",
        "1/2",
        "1d3",
        "1e3.5",
        "1f",
        "1L",
        "1%",
        "$1",
        "\"",
        "\xd9\xa1",
        "1\xc2\xa0",
        "\xff\xfe",
        "1\x01",
        "one",
        "12345678901234567890123456789012345678901", /* 41 digits */
    };
    for (size_t i = 0; i < sizeof text / sizeof text[0]; i++) {
        sw_error err;
        const sw_quantity_out q = sw_number(text[i], "load", &err);
        must(q.status == SW_ERR_SYNTAX, "\"%s\" was taken as %.17g", text[i],
             q.value);
        ck_assert(isnan(q.value));
        check_refused(text[i], &err, SW_ERR_SYNTAX, "load");
        ck_assert_ptr_nonnull(strstr(err.message, "load: "));
    }
}
END_TEST

START_TEST(hints)
{
    sw_error err;
    sw_quantity_out q = sw_number("1,5", "load", &err);
    ck_assert_ptr_nonnull(strstr(err.message, "comma"));
    ck_assert_ptr_nonnull(strstr(err.message, "1,5"));
    q = sw_number("", "load", &err);
    ck_assert_ptr_nonnull(strstr(err.message, "empty"));
    q = sw_number(NULL, "load", &err);
    check_refused("NULL", &err, SW_ERR_NULL, "load");
    q = sw_number(NULL, NULL, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "value");
    q = sw_number("x", "load", NULL);
    ck_assert_int_eq(q.status, SW_ERR_SYNTAX);
    q = sw_number("x", NULL, &err);
    check_refused("x", &err, SW_ERR_SYNTAX, "value");
}
END_TEST

/* An error record left over from before is wiped by a good call. */
START_TEST(clears)
{
    sw_error err;
    sw_quantity_out q = sw_number("x", "load", &err);
    q = sw_number("1", "load", &err);
    check_no_error("1", q.status, &err);
    ck_assert(isnan(err.low) && isnan(err.high));
}
END_TEST

START_TEST(long_text)
{
    enum { LENGTH = 10000 };
    static char text[LENGTH + 1];
    static const char fill[] = "91.,ex \"\n\xff";
    for (const char *c = fill; *c; c++) {
        memset(text, *c, LENGTH);
        sw_error err;
        const sw_quantity_out q = sw_number(text, "load", &err);
        ck_assert_int_eq(q.status, SW_ERR_SYNTAX);
        check_refused("10,000 characters", &err, SW_ERR_SYNTAX, "load");
    }
    memset(text, '9', LENGTH);
    text[0] = '0';
    text[1] = '.';
    sw_error err;
    const sw_quantity_out q = sw_number(text, "load", &err);
    ck_assert_int_eq(q.status, SW_ERR_SYNTAX);
}
END_TEST

/* Expected texts: written down by hand from the rule in units.h. */
START_TEST(writes)
{
    static const struct {
        double value;
        int digits;
        const char *text;
    } row[] = {
        {0, 6, "0"},
        {-0.0, 6, "0"},
        {1, 6, "1"},
        {-1.5, 6, "-1.5"},
        {0.1, 17, "0.10000000000000001"},
        {0.1, 16, "0.1"},
        {100, 1, "100"},
        {123456, 3, "123000"},
        {123456, 6, "123456"},
        {999.96, 4, "1000"},
        {999.94, 4, "999.9"},
        {0.00012, 6, "0.00012"},
        {0.0001, 6, "0.0001"},
        {1e-7, 6, "1e-7"},
        {-1.25e-7, 6, "-1.25e-7"},
        {1e15, 6, "1e15"},
        {1.5e15, 6, "1.5e15"},
        {1e14, 6, "100000000000000"},
        {9.999999e14, 3, "1e15"},
        {123456789012345, 15, "123456789012345"},
        {1e300, 3, "1e300"},
        {2.0 / 3, 3, "0.667"},
        {2.0 / 3, 1, "0.7"},
        {20000, 3, "20000"},
        {1.0005, 3, "1"},
        {1e-300, 3, "1e-300"},
        {DBL_MAX, 17, "1.7976931348623157e308"},
        {0x1p-1074, 17, "4.9406564584124654e-324"},
        {NAN, 6, "nan"},
        {-NAN, 6, "nan"},
        {INFINITY, 6, "inf"},
        {-INFINITY, 6, "-inf"},
        {12.345, 0, "10"},
        {12.345, -5, "10"},
        {0.5, 99, "0.5"},
        {1.0 / 3, 99, "0.33333333333333331"},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        char text[32];
        const size_t n =
            sw_format(row[i].value, row[i].digits, text, sizeof text);
        ck_assert_str_eq(text, row[i].text);
        ck_assert_uint_eq(n, strlen(row[i].text));
    }
}
END_TEST

START_TEST(room)
{
    char text[32];
    memset(text, 'z', sizeof text);
    ck_assert_uint_eq(sw_format(1234.5, 6, text, 7), 6);
    ck_assert_str_eq(text, "1234.5");
    ck_assert_uint_eq(sw_format(1234.5, 6, text, 6), 0);
    ck_assert_str_eq(text, "");
    memset(text, 'z', sizeof text);
    ck_assert_uint_eq(sw_format(1234.5, 6, text, 1), 0);
    ck_assert_int_eq(text[0], '\0');
    ck_assert_int_eq(text[1], 'z');
    ck_assert_uint_eq(sw_format(1, 6, text, 0), 0);
    ck_assert_uint_eq(sw_format(1, 6, NULL, 32), 0);
    ck_assert_uint_eq(sw_format(NAN, 6, text, 3), 0);
}
END_TEST

static double read_back(const char *text)
{
    sw_error err;
    const sw_quantity_out q = sw_number(text, "back", &err);
    must(!q.status, "%s: %s", text, err.message);
    return q.value;
}

/* 17 digits name a double uniquely: IEEE 754-2008, 5.12.2. */
START_TEST(round_trip)
{
    randoms r = {20260101};
    char text[32];
    for (int i = 0; i < 100000; i++) {
        const double v =
            i % 2 ? random_double(&r) : random_between(&r, -1e6, 1e6);
        must(sw_format(v, 17, text, sizeof text) > 0,
             "%.17g does not fit into 32 bytes", v);
        const double back = read_back(text);
        must(back == v, "%.17g was written %s and read %.17g", v, text, back);
    }
}
END_TEST

/* Fewer digits: off by no more than half a unit of the last one, and the same
 * number as the C library's own rounding gives; no superfluous character. */
START_TEST(rounding)
{
    randoms r = {77};
    char text[32], other[64];
    for (int i = 0; i < 50000; i++) {
        const double v = random_double(&r) * (i % 3 ? 1 : 0) +
                         random_between(&r, -1, 1) * pow(10, i % 19 - 6);
        const int digits = 1 + random_below(&r, 15);
        if (fabs(v) > 1e300 || fabs(v) < 1e-300)
            continue;
        sw_format(v, digits, text, sizeof text);
        const double back = read_back(text);
        near_in(text, back, v, 0, 0.5 * pow(10, 1 - digits) * (1 + 1e-12));
        snprintf(other, sizeof other, "%.*e", digits - 1, v);
        near_in(text, back, strtod(other, NULL), 0, 0);
        const char *e = strchr(text, 'e'), *point = strchr(text, '.');
        must(!e || fabs(back) < 1e-4 || fabs(back) >= 1e15,
             "%s has an exponent", text);
        const size_t end = e ? (size_t)(e - text) : strlen(text);
        must(!point || (text[end - 1] != '0' && text[end - 1] != '.'),
             "%s ends in zeros", text);
        must(strspn(text, "-0123456789.e") == strlen(text), "%s", text);
    }
}
END_TEST

/* Under a locale with a decimal comma, where there is one. The script
 * locale.sh makes one and runs this whole suite under it. */
START_TEST(comma_locale)
{
    static const char *const name[] = {"de_DE.UTF-8", "de_DE.utf8", "de_DE",
                                       "fr_FR.UTF-8", "nl_NL.UTF-8"};
    const char *found = NULL;
    for (size_t i = 0; i < sizeof name / sizeof name[0] && !found; i++)
        found = setlocale(LC_ALL, name[i]);
    if (!found) {
        printf("no comma locale here: see locale.sh\n");
        return;
    }
    char text[32];
    sw_format(-1234.5, 6, text, sizeof text);
    ck_assert_str_eq(text, "-1234.5");
    near(read_back("1.5e-3"), 1.5e-3, 0, 0);
    near(read_back("0.1"), 0.1, 0, 0);
    sw_error err;
    const sw_quantity_out q = sw_number("1,5", "load", &err);
    ck_assert_int_eq(q.status, SW_ERR_SYNTAX);
    ck_assert_str_eq(localeconv()->decimal_point, ",");
}
END_TEST

int main(void)
{
    return RUN_TESTS("number", reads, refuses, hints, clears, long_text, writes,
                     room, round_trip, rounding, comma_locale);
}
