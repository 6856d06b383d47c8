/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say: quantities as people read them.
 *
 * The two halves are compared with the definitions of pound-force and inch
 * (0.45359237 kg * 9.80665 m/s2, 25.4 mm), to the digits that are printed; how
 * many those are is a choice of ours and stated in the head of say.c.
 */
#include "../common.h"
#include "../near.h"
#include "../random.h"

#define LBF (0.45359237 * 9.80665)

static const char *said(double value, int kind, int show)
{
    static char text[8][80];
    static int next;
    char *mine = text[next++ % 8];
    const size_t n = sw_say(value, kind, show, mine, sizeof text[0]);
    ck_assert_uint_eq(n, strlen(mine));
    return mine;
}

static const char *both(double low, double high, int kind, int show)
{
    static char text[160];
    sw_say_range(low, high, kind, show, text, sizeof text);
    return text;
}

/* 6052 N / 4.4482216 = 1360.5 lbf; 20 N.m / (LBF * 0.0254) = 177.0 in-lbf;
 * 40 N.m / (LBF * 0.3048) = 29.50 ft-lbf; 100 mm / 25.4 = 3.937 in;
 * 100 MPa / 6.894757 = 14.50 ksi. */
START_TEST(by_hand)
{
    ck_assert_str_eq(said(6052.3, SW_KIND_FORCE, SW_SHOW_SI_FIRST),
                     "6052 N (1361 lbf)");
    ck_assert_str_eq(said(6052.3, SW_KIND_FORCE, SW_SHOW_US_FIRST),
                     "1361 lbf (6052 N)");
    ck_assert_str_eq(said(6052.3, SW_KIND_FORCE, SW_SHOW_SI), "6052 N");
    ck_assert_str_eq(said(6052.3, SW_KIND_FORCE, SW_SHOW_US), "1361 lbf");
    ck_assert_str_eq(said(12345, SW_KIND_FORCE, SW_SHOW_SI), "12.35 kN");
    ck_assert_str_eq(said(-86.24, SW_KIND_FORCE, SW_SHOW_SI), "-86.2 N");
    ck_assert_str_eq(said(20, SW_KIND_TORQUE, SW_SHOW_SI_FIRST),
                     "20 N\xc2\xb7m (177 in-lbf)");
    ck_assert_str_eq(said(40, SW_KIND_TORQUE, SW_SHOW_US), "29.5 ft-lbf");
    ck_assert_str_eq(said(100, SW_KIND_LENGTH, SW_SHOW_SI_FIRST),
                     "100.0 mm (3.937 in)");
    ck_assert_str_eq(said(0.5, SW_KIND_LENGTH, SW_SHOW_SI_FIRST),
                     "0.50 mm (0.0197 in)");
    ck_assert_str_eq(said(100, SW_KIND_PRESSURE, SW_SHOW_SI_FIRST),
                     "100 MPa (14.5 ksi)");
    /* air: 0.101325/0.006894757 = 14.70 psi; 5 MPa = 725 psi */
    ck_assert_str_eq(said(0.101325, SW_KIND_PRESSURE, SW_SHOW_SI_FIRST),
                     "101 kPa (14.7 psi)");
    ck_assert_str_eq(said(5, SW_KIND_PRESSURE, SW_SHOW_US_FIRST),
                     "725 psi (5 MPa)");
    ck_assert_str_eq(said(0, SW_KIND_PRESSURE, SW_SHOW_SI), "0 MPa");
    ck_assert_str_eq(said(0.43, SW_KIND_RATIO, SW_SHOW_US), "43 %");
    ck_assert_str_eq(said(2e-16, SW_KIND_RATIO, SW_SHOW_SI), "0 %");
    ck_assert_str_eq(said(0.565024, SW_KIND_RATIO, SW_SHOW_SI), "57 %");
    ck_assert_str_eq(said(0.00123, SW_KIND_RATIO, SW_SHOW_SI), "0.12 %");
    ck_assert_str_eq(said(-1.364, SW_KIND_RATIO, SW_SHOW_SI), "-136 %");
    /* 13645.01 lbf: rounded once, not to 13645 and then down */
    ck_assert_str_eq(said(13645.01 * LBF, SW_KIND_FORCE, SW_SHOW_US),
                     "13650 lbf");
    ck_assert_str_eq(said(0.638, SW_KIND_ANGLE, SW_SHOW_SI), "0.64 deg");
    ck_assert_str_eq(both(7710, 8064, SW_KIND_FORCE, SW_SHOW_SI_FIRST),
                     "7710 .. 8064 N (1733 .. 1813 lbf)");
    ck_assert_str_eq(both(7, 7, SW_KIND_LENGTH, SW_SHOW_SI), "7.00 mm");
    ck_assert_str_eq(both(20, 27, SW_KIND_TORQUE, SW_SHOW_US),
                     "177 .. 239 in-lbf");
    ck_assert_str_eq(both(-20, 5, SW_KIND_LENGTH, SW_SHOW_SI),
                     "-20.0 .. 5.0 mm");
    /* 0.02 / 25.4 = 0.0008 in, 0.04 / 25.4 = 0.0016 in */
    ck_assert_str_eq(both(0.02, 0.04, SW_KIND_LENGTH, SW_SHOW_SI_FIRST),
                     "0.02 .. 0.04 mm (0.0008 .. 0.0016 in)");
    /* 100 MPa = 14.5 ksi, 200 MPa = 29.0 ksi */
    ck_assert_str_eq(both(100, 200, SW_KIND_PRESSURE, SW_SHOW_SI_FIRST),
                     "100 .. 200 MPa (14.5 .. 29 ksi)");
    ck_assert_str_eq(both(0.1, 0.2, SW_KIND_RATIO, SW_SHOW_SI), "10 % .. 20 %");
    ck_assert_str_eq(both(0.5, 1, SW_KIND_ANGLE, SW_SHOW_US),
                     "0.50 deg .. 1.00 deg");
    ck_assert_str_eq(both(8000, 12000, SW_KIND_FORCE, SW_SHOW_SI),
                     "8.00 .. 12.00 kN");
    ck_assert_str_eq(said(0.456, SW_KIND_TORQUE, SW_SHOW_SI),
                     "0.46 N\xc2\xb7m");
    ck_assert_str_eq(said(0.0123, SW_KIND_ANGLE, SW_SHOW_SI), "0.012 deg");
}
END_TEST

START_TEST(nothing)
{
    char text[8] = "abc";
    ck_assert_str_eq(said(SW_UNSET, SW_KIND_FORCE, SW_SHOW_SI), "-");
    ck_assert_str_eq(said(NAN, SW_KIND_TORQUE, SW_SHOW_SI_FIRST), "-");
    ck_assert_str_eq(both(1, NAN, SW_KIND_FORCE, SW_SHOW_SI), "-");
    ck_assert_uint_eq(sw_say(6052, SW_KIND_FORCE, SW_SHOW_SI, text, 6), 0);
    ck_assert_str_eq(text, "");
    ck_assert_uint_eq(sw_say(1, SW_KIND_SLOPE, SW_SHOW_SI, text, 8), 0);
    ck_assert_uint_eq(sw_say(1, 0, SW_SHOW_SI, text, 8), 0);
    ck_assert_uint_eq(sw_say(NAN, 99, SW_SHOW_SI, text, 8), 0);
    ck_assert_uint_eq(sw_say(1, SW_KIND_FORCE, 77, text, 8), 0);
    ck_assert_uint_eq(sw_say(1, SW_KIND_FORCE, -1, text, 8), 0);
    ck_assert_str_eq(said(1, SW_KIND_FORCE, 0), "1 N (0.2 lbf)");
    ck_assert_uint_eq(sw_say(1, SW_KIND_FORCE, SW_SHOW_SI, NULL, 8), 0);
    ck_assert_uint_eq(sw_say(1, SW_KIND_FORCE, SW_SHOW_SI, text, 0), 0);
}
END_TEST

/* The number before the unit, with a point whatever the locale. */
static double number_of(const char *text)
{
    char plain[40];
    snprintf(plain, sizeof plain, "%.*s", (int)strcspn(text, " "), text);
    const sw_quantity_out q = sw_number(plain, "number", NULL);
    ck_assert_int_eq(q.status, SW_OK);
    return q.value;
}

/* Half a step of what is printed: tenths below 100, then whole ones, then four
 * digits. */
static double half_step(double shown)
{
    return shown < 100 ? 0.05 : fmax(0.5, 0.0005 * shown);
}

/* Whatever the force, both halves say it. */
START_TEST(halves_agree)
{
    randoms r = {11};
    for (int i = 0; i < 2000; i++) {
        const double N = random_log(&r, 1, 1e6);
        const char *text = said(N, SW_KIND_FORCE, SW_SHOW_SI);
        const double si = number_of(text) * (strstr(text, "kN") ? 1000 : 1);
        const double us = number_of(said(N, SW_KIND_FORCE, SW_SHOW_US));
        near(si, N, half_step(N) * 1.0001, 0);
        near(us * LBF, N, half_step(us) * 1.0001 * LBF, 0);
    }
}
END_TEST

/* Fixed decimals: halves go away from zero, never "-0.0". */
START_TEST(fixed)
{
    char text[40];
    static const struct {
        double value;
        int decimals;
        const char *text;
    } row[] = {
        {1.25, 1, "1.3"},    {-1.25, 1, "-1.3"},
        {-0.04, 1, "0.0"},   {3, 2, "3.00"},
        {0.001, 3, "0.001"}, {99.999, 2, "100.00"},
        {12, 0, "12"},       {1e17, 2, "100000000000000000"},
        {2.5, -4, "3"},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const size_t n =
            sw_format_fixed(row[i].value, row[i].decimals, text, sizeof text);
        ck_assert_uint_eq(n, strlen(text));
        if (row[i].value < 1e16)
            ck_assert_str_eq(text, row[i].text);
        else
            near(number_of(text), row[i].value, 0, 0);
    }
    ck_assert_uint_eq(sw_format_fixed(3, 2, text, 4), 0);
    ck_assert_str_eq(text, "");
    ck_assert_uint_eq(sw_format_fixed(3, 2, text, 5), 4);
}
END_TEST

int main(void)
{
    return RUN_TESTS("say", by_hand, nothing, halves_agree, fixed);
}
