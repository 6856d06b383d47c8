/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Units: every factor against the definition it follows from, and what is
 * refused. test_units_oracle.c compares the same list with another program.
 *
 * Definitions: inch 25.4 mm and pound 0.45359237 kg (international yard and
 * pound agreement, 1959), standard gravity 9.80665 m/s2 (3rd CGPM, 1901),
 * standard atmosphere 101325 Pa (10th CGPM, 1954); conventional inch and
 * millimetre of mercury as in NIST SP 811 (2008), appendix B.8.
 */
#include "../common.h"
#include "../near.h"
#include "../random.h"
#include "../values.h"
#include "units_list.h"

START_TEST(definitions)
{
    for (size_t i = 0; i < UNITS_LISTED; i++) {
        const units_row *u = &units_listed[i];
        sw_error err;
        const sw_quantity_out q = sw_unit_factor(u->name, u->kind, "x", &err);
        check_no_error(u->name, q.status, &err);
        near_in(u->name, q.value, u->top / u->bottom, 0, 1e-15);
    }
}
END_TEST

/* NIST SP 811 (2008), appendix B.8 and B.9: conversion factors as printed,
 * seven digits at most, so 5e-7 relative and a little. */
START_TEST(published)
{
    static const struct {
        const char *name;
        int kind;
        double value;
    } row[] = {
        {"ft-lbf", SW_KIND_TORQUE, 1.355818},
        {"in-lbf", SW_KIND_TORQUE, 1.129848e-1},
        {"ozf-in", SW_KIND_TORQUE, 7.061552e-3},
        {"kgf.m", SW_KIND_TORQUE, 9.80665},
        {"lbf", SW_KIND_FORCE, 4.448222},
        {"kip", SW_KIND_FORCE, 4.448222e3},
        {"ozf", SW_KIND_FORCE, 2.780139e-1},
        {"kgf", SW_KIND_FORCE, 9.80665},
        {"psi", SW_KIND_PRESSURE, 6.894757e-3},
        {"ksi", SW_KIND_PRESSURE, 6.894757},
        {"inHg", SW_KIND_PRESSURE, 3.386389e-3},
        {"mmHg", SW_KIND_PRESSURE, 1.333224e-4},
        {"atm", SW_KIND_PRESSURE, 0.101325},
        {"mil", SW_KIND_LENGTH, 2.54e-2},
        {"rad", SW_KIND_ANGLE, 57.29578},
        {"arcmin", SW_KIND_ANGLE, 1.666667e-2},
        {"arcsec", SW_KIND_ANGLE, 2.777778e-4},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_error err;
        const sw_quantity_out q =
            sw_unit_factor(row[i].name, row[i].kind, "x", &err);
        check_no_error(row[i].name, q.status, &err);
        near_in(row[i].name, q.value, row[i].value, 0, 5.5e-7);
    }
}
END_TEST

/* Level makers give 0.0005 in/ft as 0.042 mm/m, about 8.6 arc seconds; 10 arc
 * seconds are 0.0485 mm/m (arithmetic: 1000 tan of the angle). */
START_TEST(level_makers)
{
    sw_error err;
    sw_quantity_out q = sw_quantity("0.0005 in/ft", SW_KIND_SLOPE, "x", &err);
    near(q.value, 0.5 / 12, 0, 1e-15);
    near(q.value, 0.042, 0.0005, 0);
    q = sw_quantity("0.5 thou/ft", SW_KIND_SLOPE, "x", &err);
    near(q.value, 0.5 / 12, 0, 1e-15);
    q = sw_quantity("10 arcsec", SW_KIND_ANGLE, "x", &err);
    near(1000 * tan(q.value * acos(-1) / 180), 0.0485, 0.00005, 0);
}
END_TEST

/* A unit that the library knows and the list here does not would be untested.
 * The library's list is not public, so its source is read. */
START_TEST(none_forgotten)
{
    FILE *file = values_file("lib/base/units.c");
    char line[256];
    int found = 0;
    while (fgets(line, sizeof line, file)) {
        char *open = strstr(line, "{\""), *kind = strstr(line, "\", SW_KIND_");
        if (!open || !kind)
            continue;
        found++;
        *kind = '\0';
        const char *spelled = open + 2;
        if (strchr(spelled, '\\')) /* written in escapes; they are counted */
            continue;
        int listed = 0;
        for (size_t i = 0; i < UNITS_LISTED; i++)
            listed |= strcmp(units_listed[i].name, spelled) == 0;
        must(listed, "the unit %s is not in tests/base/units_list.h", spelled);
    }
    fclose(file);
    ck_assert_int_eq(found, (int)UNITS_LISTED);
}
END_TEST

START_TEST(reads)
{
    static const struct {
        const char *text;
        int kind;
        double value;
    } row[] = {
        {"12kN", SW_KIND_FORCE, 12000},
        {"12 kN", SW_KIND_FORCE, 12000},
        {" 12  kN ", SW_KIND_FORCE, 12000},
        {"-3 N", SW_KIND_FORCE, -3},
        {"1e3N", SW_KIND_FORCE, 1000},
        {"+.5 kN", SW_KIND_FORCE, 500},
        {"2 thou", SW_KIND_LENGTH, 0.0508},
        {"2 mil", SW_KIND_LENGTH, 0.0508},
        {"0.002 in", SW_KIND_LENGTH, 0.0508},
        {"1\"", SW_KIND_LENGTH, 25.4},
        {"1 ft", SW_KIND_LENGTH, 304.8},
        {"0 mm", SW_KIND_LENGTH, 0},
        {"3 mm/m", SW_KIND_SLOPE, 3},
        {"1.5deg", SW_KIND_ANGLE, 1.5},
        {"1.5\xc2\xb0", SW_KIND_ANGLE, 1.5},
        {"70 bar", SW_KIND_PRESSURE, 7},
        {"25 N m", SW_KIND_TORQUE, 25},
        {"25 N.m", SW_KIND_TORQUE, 25},
        {"25Nm", SW_KIND_TORQUE, 25},
        {"25 N\xc2\xb7m", SW_KIND_TORQUE, 25},
        {"12 in-lbf", SW_KIND_TORQUE, 1.3558179483314004},
        {"1 ft lb", SW_KIND_TORQUE, 1.3558179483314004},
        {"50%", SW_KIND_RATIO, 0.5},
        {"50 %", SW_KIND_RATIO, 0.5},
        {"0.15", SW_KIND_RATIO, 0.15},
        {"1e-6 mm/N", SW_KIND_COMPLIANCE, 1e-6},
        {"2 um/kN", SW_KIND_COMPLIANCE, 2e-6},
        /* fractions of inches and feet */
        {"1/2 in", SW_KIND_LENGTH, 12.7},
        {"1/2\"", SW_KIND_LENGTH, 12.7},
        {"1-1/4in", SW_KIND_LENGTH, 31.75},
        {"1 1/4 in", SW_KIND_LENGTH, 31.75},
        {"3/64 inch", SW_KIND_LENGTH, 1.190625},
        {"-1/4 in", SW_KIND_LENGTH, -6.35},
        {"5/2 ft", SW_KIND_LENGTH, 762},
        {"0/1 in", SW_KIND_LENGTH, 0},
        {"9/16 in", SW_KIND_LENGTH, 14.2875},
        {"19-9/10 in", SW_KIND_LENGTH, 505.46},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_error err;
        const sw_quantity_out q =
            sw_quantity(row[i].text, row[i].kind, "x", &err);
        check_no_error(row[i].text, q.status, &err);
        near_in(row[i].text, q.value, row[i].value, 0, 1e-15);
    }
}
END_TEST

START_TEST(refuses)
{
    static const struct {
        const char *text;
        int kind, code; /* code 0: whichever */
        const char *said;
    } row[] = {
        {"12", SW_KIND_FORCE, SW_ERR_UNIT, "missing"},
        {"0", SW_KIND_LENGTH, SW_ERR_UNIT, "missing"},
        {"12 ", SW_KIND_TORQUE, SW_ERR_UNIT, "missing"},
        {"12 lb", SW_KIND_FORCE, SW_ERR_UNIT, "lbf"},
        {"12 lbs", SW_KIND_FORCE, SW_ERR_UNIT, "lbf"},
        {"12 lb", SW_KIND_TORQUE, SW_ERR_UNIT, "ft-lbf"},
        {"5 kg", SW_KIND_FORCE, SW_ERR_UNIT, "mass"},
        {"3 N", SW_KIND_LENGTH, SW_ERR_UNIT, "another kind"},
        {"3 mm", SW_KIND_FORCE, SW_ERR_UNIT, "another kind"},
        {"3 deg", SW_KIND_SLOPE, SW_ERR_UNIT, "another kind"},
        {"3 %", SW_KIND_FORCE, SW_ERR_UNIT, "another kind"},
        {"0.15 mm", SW_KIND_RATIO, SW_ERR_UNIT, "plain number"},
        {"3 Mm", SW_KIND_LENGTH, SW_ERR_UNIT, "mm"},
        {"3 kn", SW_KIND_FORCE, SW_ERR_UNIT, "kN"},
        {"3 KN", SW_KIND_FORCE, SW_ERR_UNIT, "kN"},
        {"3 mN.m", SW_KIND_TORQUE, SW_ERR_UNIT, "unknown"},
        {"3 m.N", SW_KIND_TORQUE, SW_ERR_UNIT, "unknown"},
        {"3 furlong", SW_KIND_LENGTH, SW_ERR_UNIT, "unknown"},
        {"3 mm mm", SW_KIND_LENGTH, SW_ERR_UNIT, "unknown"},
        {"3 4 mm", SW_KIND_LENGTH, SW_ERR_UNIT, "unknown"},
        {"3 mm\n", SW_KIND_LENGTH, SW_ERR_UNIT, "unknown"},
        {"10x", SW_KIND_LENGTH, SW_ERR_UNIT, "unknown"},
        {"0x10 mm", SW_KIND_LENGTH, SW_ERR_UNIT, "unknown"},
        {"1,5 mm", SW_KIND_LENGTH, SW_ERR_SYNTAX, "comma"},
        {"1,5", SW_KIND_RATIO, SW_ERR_SYNTAX, "comma"},
        {"mm", SW_KIND_LENGTH, SW_ERR_SYNTAX, "number"},
        {"lb", SW_KIND_FORCE, SW_ERR_SYNTAX, "number"},
        {"", SW_KIND_LENGTH, SW_ERR_SYNTAX, "empty"},
        {"  ", SW_KIND_LENGTH, SW_ERR_SYNTAX, "empty"},
        {"nan mm", SW_KIND_LENGTH, SW_ERR_SYNTAX, "number"},
        {"inf mm", SW_KIND_LENGTH, SW_ERR_SYNTAX, "number"},
        {"1e999 mm", SW_KIND_LENGTH, SW_ERR_SYNTAX, "number"},
        {"1e308 m", SW_KIND_LENGTH, SW_ERR_SYNTAX, "number"},
        {"mm 3", SW_KIND_LENGTH, SW_ERR_SYNTAX, "number"},
        {"1/0 in", SW_KIND_LENGTH, 0, ""},
        {"1/2 mm", SW_KIND_LENGTH, 0, ""},
        {"1/2", SW_KIND_LENGTH, 0, ""},
        {"/2 in", SW_KIND_LENGTH, 0, ""},
        {"1/ in", SW_KIND_LENGTH, 0, ""},
        {"1/2/3 in", SW_KIND_LENGTH, 0, ""},
        {"1.5/2 in", SW_KIND_LENGTH, 0, ""},
        {"1/2.5 in", SW_KIND_LENGTH, 0, ""},
        {"1-2-1/4 in", SW_KIND_LENGTH, 0, ""},
        {"1--1/4 in", SW_KIND_LENGTH, 0, ""},
        {"--1/4 in", SW_KIND_LENGTH, 0, ""},
        {"-", SW_KIND_LENGTH, 0, ""},
        {"-in", SW_KIND_LENGTH, 0, ""},
        {"1/2 kN", SW_KIND_FORCE, 0, ""},
        {"1/2 in", SW_KIND_FORCE, 0, ""},
        {"1/2 %", SW_KIND_RATIO, 0, ""},
        {"1/2 ft-lbf", SW_KIND_TORQUE, 0, ""},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_error err;
        const sw_quantity_out q =
            sw_quantity(row[i].text, row[i].kind, "reach", &err);
        const int code = row[i].code ? row[i].code : q.status;
        must(q.status != SW_OK && q.status == code, "\"%s\": status %d, %.17g",
             row[i].text, q.status, q.value);
        ck_assert(isnan(q.value));
        check_refused(row[i].text, &err, code, "reach");
        must(strstr(err.message, row[i].said), "\"%s\": %s", row[i].text,
             err.message);
    }
}
END_TEST

/* The nearest spelling is offered: by hand, the least number of letters put in,
 * left out or exchanged, capitals being no difference; fewer than three, and
 * fewer than would make any short name out of any other. */
START_TEST(nearest)
{
    static const struct {
        const char *name;
        int kind;
        const char *offered; /* NULL: none */
    } row[] = {
        {"mmm", SW_KIND_LENGTH, "mm"},
        {"micrn", SW_KIND_LENGTH, "micron"},
        {"mikron", SW_KIND_LENGTH, "micron"},
        {"MICRON", SW_KIND_LENGTH, "micron"},
        {"mikrn", SW_KIND_LENGTH, "micron"},
        {"furlong", SW_KIND_LENGTH, NULL},
        {"lbft", SW_KIND_FORCE, "lbf"},
        {"klbg", SW_KIND_FORCE, "klbf"},
        {"lfb", SW_KIND_FORCE, NULL},
        {"pa", SW_KIND_PRESSURE, "Pa"},
        {"BAR", SW_KIND_PRESSURE, "bar"},
        {"PSi", SW_KIND_PRESSURE, "psi"},
        {"KN", SW_KIND_FORCE, "kN"},
        {"dgeree", SW_KIND_ANGLE, "degree"},
        {"degreess", SW_KIND_ANGLE, "degrees"},
        {"arcmn", SW_KIND_ANGLE, "arcmin"},
        {"in-lbff", SW_KIND_TORQUE, "in-lbf"},
        {"kgf.cn", SW_KIND_TORQUE, "kgf.cm"},
        {"inhg", SW_KIND_PRESSURE, "inHg"},
        {"N/mm3", SW_KIND_PRESSURE, "N/mm2"},
        {"mm/k", SW_KIND_SLOPE, "mm/m"},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_error err;
        const sw_quantity_out q =
            sw_unit_factor(row[i].name, row[i].kind, "x", &err);
        must(q.status == SW_ERR_UNIT, "%s", row[i].name);
        const char *said = strstr(err.message, "nearest is ");
        if (row[i].offered)
            must(said && strcmp(said + 11, row[i].offered) == 0, "%s: %s",
                 row[i].name, err.message);
        else
            must(!said, "%s: %s", row[i].name, err.message);
    }
}
END_TEST

START_TEST(arguments)
{
    static const int none[] = {0, -1, SW_KIND_COUNT + 1, 1000};
    sw_error err;
    for (size_t i = 0; i < sizeof none / sizeof none[0]; i++) {
        sw_quantity_out q = sw_quantity("1 mm", none[i], "x", &err);
        ck_assert_int_eq(q.status, SW_ERR_RANGE);
        check_refused("kind", &err, SW_ERR_RANGE, "kind");
        near(err.low, 1, 0, 0);
        near(err.high, SW_KIND_COUNT, 0, 0);
        q = sw_unit_factor("mm", none[i], "x", &err);
        check_refused("kind", &err, SW_ERR_RANGE, "kind");
        ck_assert_ptr_null(sw_kind_unit(none[i]));
    }
    sw_quantity_out q = sw_quantity(NULL, SW_KIND_LENGTH, "reach", &err);
    check_refused("NULL", &err, SW_ERR_NULL, "reach");
    q = sw_unit_factor(NULL, SW_KIND_LENGTH, NULL, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "value");
    q = sw_quantity("1 mm", SW_KIND_LENGTH, NULL, NULL);
    near(q.value, 1, 0, 0);
    q = sw_unit_factor("", SW_KIND_RATIO, "x", &err);
    near(q.value, 1, 0, 0);
    q = sw_unit_factor("", SW_KIND_LENGTH, "x", &err);
    check_refused("no unit", &err, SW_ERR_UNIT, "x");
    q = sw_unit_factor("mm ", SW_KIND_LENGTH, "x", &err);
    check_refused("blank", &err, SW_ERR_UNIT, "x");
}
END_TEST

START_TEST(long_text)
{
    enum { LENGTH = 10000 };
    static char text[LENGTH + 1];
    for (const char *c = "91 mx.-/\"\n\xff"; *c; c++)
        for (int kind = 1; kind <= SW_KIND_COUNT; kind++) {
            memset(text, *c, LENGTH);
            sw_error err;
            sw_quantity_out q = sw_quantity(text, kind, "reach", &err);
            ck_assert_int_ne(q.status, SW_OK);
            check_error("10,000 characters", &err, q.status);
            text[0] = '1';
            q = sw_quantity(text, kind, "reach", &err);
            ck_assert_int_ne(q.status, SW_OK);
            check_error("10,000 characters", &err, q.status);
            q = sw_unit_factor(text, kind, "reach", &err);
            check_error("10,000 characters", &err, SW_ERR_UNIT);
        }
}
END_TEST

/* A megabyte of one character is refused like anything else. */
START_TEST(very_long_text)
{
    enum { LENGTH = 1 << 20 };
    char *text = malloc(LENGTH + 1);
    ck_assert_ptr_nonnull(text);
    text[LENGTH] = '\0';
    for (const char *c = "-+1/. m"; *c; c++)
        for (int kind = 1; kind <= SW_KIND_COUNT; kind++) {
            memset(text, *c, LENGTH);
            sw_error err;
            const sw_quantity_out q = sw_quantity(text, kind, "reach", &err);
            ck_assert_int_ne(q.status, SW_OK);
            check_error("a megabyte", &err, q.status);
        }
    free(text);
}
END_TEST

/* number times factor, for any number; and back again */
START_TEST(proportional)
{
    randoms r = {4711};
    char number[32], text[80];
    for (int pass = 0; pass < 50; pass++)
        for (size_t i = 0; i < UNITS_LISTED; i++) {
            const units_row *u = &units_listed[i];
            const double x = random_log(&r, 1e-6, 1e6);
            sw_format(x, 17, number, sizeof number);
            snprintf(text, sizeof text, "%s%s%s", number, pass % 2 ? " " : "",
                     u->name);
            sw_error err;
            const sw_quantity_out q = sw_quantity(text, u->kind, "x", &err);
            check_no_error(text, q.status, &err);
            near_in(text, q.value / (u->top / u->bottom), x, 0, 2e-15);
        }
}
END_TEST

/* The library's own unit of a kind has the factor 1 there and no other kind
 * takes it for its own. */
START_TEST(own_units)
{
    static const char *const want[] = {"",    "mm",   "N",    "N.m",   "MPa",
                                       "deg", "mm/m", "mm/N", "m/min", "rpm",
                                       "W",   "kg",   "mm2",  "m"};
    for (int kind = 1; kind <= SW_KIND_COUNT; kind++) {
        ck_assert_str_eq(sw_kind_unit(kind), want[kind - 1]);
        for (int other = 1; other <= SW_KIND_COUNT; other++) {
            sw_error err;
            const sw_quantity_out q =
                sw_unit_factor(want[kind - 1], other, "x", &err);
            if (other == SW_KIND_LENGTH && kind == SW_KIND_ALTITUDE)
                near(q.value, 1000, 0, 0); /* both are told in metres */
            else if (other == kind)
                near(q.value, 1, 0, 0);
            else
                ck_assert_int_eq(q.status, SW_ERR_UNIT);
        }
    }
}
END_TEST

int main(void)
{
    return RUN_TESTS("units", definitions, published, level_makers,
                     none_forgotten, reads, refuses, nearest, arguments,
                     long_text, very_long_text, proportional, own_units);
}
