/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say: one quantity in both systems, rounded to what a bench can use, the
 * wanted system first and the other in brackets.
 *
 * How many digits: a torque wrench, a rule and a friction that nobody knows
 * carry three to four. A length keeps hundredths of a millimetre below 10 mm,
 * where heel heights are set, and tenths above. A pressure below one MPa or ksi
 * is in kPa or psi.
 */
#include "base/internal.h"

#include <strapwise/say.h>
#include <strapwise/units.h>

#include <string.h>

static void digits(sw__line *l, double value, int wanted)
{
    char text[40];
    sw_format(value, wanted, text, sizeof text);
    sw__line_add(l, text);
}

static void fixed(sw__line *l, double value, int decimals)
{
    char text[40];
    sw_format_fixed(value, decimals, text, sizeof text);
    sw__line_add(l, text);
}

static double in_unit(double value, const char *unit, int kind)
{
    return value / sw_unit_factor(unit, kind, "unit", NULL).value;
}

static int is_known(double value)
{
    return isfinite(value) && sw__is_set(value);
}

/* Four digits are enough, and parts of a newton only where they are few. */
static void rounded(sw__line *l, double value, const char *unit)
{
    const double most = fabs(value);
    digits(l,
           most < 99.95    ? round(value * 10) / 10
           : most < 9999.5 ? round(value)
                           : value, /* rounded once is enough */
           4);
    sw__line_add(l, unit);
}

/* Per cent, two digits; less than half a hundredth of one is nothing. */
static void percent(sw__line *l, double ratio)
{
    const double some = fabs(ratio) < 5e-5 ? 0 : 100 * ratio;
    digits(l, some, fabs(ratio) < 1 ? 2 : 3);
    sw__line_add(l, " %");
}

static void angle(sw__line *l, double deg)
{
    fixed(l, deg, fabs(deg) > 0 && fabs(deg) < 0.05 ? 3 : 2);
    sw__line_add(l, " deg");
}

static void force(sw__line *l, int us, double N)
{
    if (us) {
        rounded(l, in_unit(N, "lbf", SW_KIND_FORCE), " lbf");
    } else if (fabs(N) < 9999.5) {
        rounded(l, N, " N");
    } else {
        digits(l, N / 1000, 4);
        sw__line_add(l, " kN");
    }
}

/* Below 20 ft-lbf a wrench is read in inch-pounds. */
static int reads_inches(double Nm)
{
    return fabs(in_unit(Nm, "ft-lbf", SW_KIND_TORQUE)) < 20;
}

static void torque_us(sw__line *l, double Nm, int inches)
{
    const double value =
        in_unit(Nm, inches ? "in-lbf" : "ft-lbf", SW_KIND_TORQUE);
    digits(l, value, inches && fabs(value) < 10 ? 2 : 3);
    sw__line_add(l, inches ? " in-lbf" : " ft-lbf");
}

static void torque_si(sw__line *l, double Nm)
{
    digits(l, Nm, fabs(Nm) < 1 ? 2 : 3);
    sw__line_add(l, " N\xc2\xb7m");
}

static void torque(sw__line *l, int us, double Nm)
{
    if (us)
        torque_us(l, Nm, reads_inches(Nm));
    else
        torque_si(l, Nm);
}

static void length(sw__line *l, int us, double mm)
{
    if (us)
        fixed(l, in_unit(mm, "in", SW_KIND_LENGTH), fabs(mm) < 10 ? 4 : 3);
    else
        fixed(l, mm, fabs(mm) < 10 ? 2 : 1);
    sw__line_add(l, us ? " in" : " mm");
}

static void stress(sw__line *l, int us, double MPa)
{
    const double size = fabs(us ? in_unit(MPa, "ksi", SW_KIND_PRESSURE) : MPa);
    const int small = size > 0 && size < 1; /* air, not steel */
    const char *unit = us ? (small ? "psi" : "ksi") : (small ? "kPa" : "MPa");
    digits(l, in_unit(MPa, unit, SW_KIND_PRESSURE), 3);
    sw__line_add(l, " ");
    sw__line_add(l, unit);
}

/* Two ends with the same step: "7.71 .. 8.06 kN", as fine as the nominal
 * beside it, or that would seem to lie outside. */
static void ends(sw__line *l, double low, double high, int decimals,
                 const char *unit)
{
    fixed(l, low, decimals);
    sw__line_add(l, " .. ");
    fixed(l, high, decimals);
    sw__line_add(l, unit);
}

static int force_decimals(double most, int kilo)
{
    return kilo ? (most < 100 ? 2 : 1) : most < 99.95 ? 1 : 0;
}

static void force_range(sw__line *l, int us, double low, double high)
{
    const double most = fmax(fabs(low), fabs(high));
    if (us) {
        low = in_unit(low, "lbf", SW_KIND_FORCE);
        high = in_unit(high, "lbf", SW_KIND_FORCE);
        ends(l, low, high, force_decimals(fmax(fabs(low), fabs(high)), 0),
             " lbf");
    } else if (most >= 10000) {
        ends(l, low / 1000, high / 1000, force_decimals(most / 1000, 1), " kN");
    } else {
        ends(l, low, high, force_decimals(most, 0), " N");
    }
}

static void torque_range(sw__line *l, int us, double low, double high)
{
    const int inches = reads_inches(high);
    digits(l,
           us ? in_unit(low, inches ? "in-lbf" : "ft-lbf", SW_KIND_TORQUE)
              : low,
           3);
    sw__line_add(l, " .. ");
    if (us)
        torque_us(l, high, inches);
    else
        torque_si(l, high);
}

static void length_range(sw__line *l, int us, double low, double high)
{
    const int fine = fmax(fabs(low), fabs(high)) < 10;
    if (us)
        ends(l, in_unit(low, "in", SW_KIND_LENGTH),
             in_unit(high, "in", SW_KIND_LENGTH), fine ? 4 : 3, " in");
    else
        ends(l, low, high, fine ? 2 : 1, " mm");
}

static void stress_range(sw__line *l, int us, double low, double high)
{
    digits(l, us ? in_unit(low, "ksi", SW_KIND_PRESSURE) : low, 3);
    sw__line_add(l, " .. ");
    stress(l, us, high);
}

/* What is written in two systems: one value, and a range. */
static void (*const one[])(sw__line *, int, double) = {
    [SW_KIND_FORCE] = force,
    [SW_KIND_TORQUE] = torque,
    [SW_KIND_LENGTH] = length,
    [SW_KIND_PRESSURE] = stress,
};
static void (*const two[])(sw__line *, int, double, double) = {
    [SW_KIND_FORCE] = force_range,
    [SW_KIND_TORQUE] = torque_range,
    [SW_KIND_LENGTH] = length_range,
    [SW_KIND_PRESSURE] = stress_range,
};

static void half(sw__line *l, int kind, int us, double low, double high)
{
    if (low == high)
        one[kind](l, us, low);
    else
        two[kind](l, us, low, high);
}

static void in_systems(sw__line *l, int kind, int show, double low, double high)
{
    const int us = show == SW_SHOW_US_FIRST || show == SW_SHOW_US;
    half(l, kind, us, low, high);
    if (show == SW_SHOW_SI || show == SW_SHOW_US)
        return;
    sw__line_add(l, " (");
    half(l, kind, !us, low, high);
    sw__line_add(l, ")");
}

/* In one unit alone. */
static void plainly(sw__line *l, int kind, double low, double high)
{
    void (*const write)(sw__line *, double) =
        kind == SW_KIND_RATIO ? percent : angle;
    write(l, low);
    if (high == low)
        return;
    sw__line_add(l, " .. ");
    write(l, high);
}

static size_t say(double low, double high, int kind, int show, char *text,
                  size_t room)
{
    char made[160];
    sw__line l = sw__line_start(made, sizeof made);
    if (!text || room == 0)
        return 0;
    text[0] = '\0';
    const int alone = kind == SW_KIND_RATIO || kind == SW_KIND_ANGLE;
    if (!alone && !(kind >= SW_KIND_LENGTH && kind <= SW_KIND_PRESSURE))
        return 0;
    if (show < 0 || show > SW_SHOW_US)
        return 0;
    if (!is_known(low) || !is_known(high))
        sw__line_add(&l, "-");
    else if (alone)
        plainly(&l, kind, low, high);
    else
        in_systems(&l, kind, show, low, high);
    const size_t n = strlen(made);
    if (n >= room)
        return 0;
    memcpy(text, made, n + 1);
    return n;
}

size_t sw_say(double value, int kind, int show, char *text, size_t room)
{
    return say(value, value, kind, show, text, room);
}

size_t sw_say_range(double low, double high, int kind, int show, char *text,
                    size_t room)
{
    const double most = fmax(fabs(low), fabs(high));
    if (is_known(low) && is_known(high) && fabs(high - low) <= 1e-6 * most)
        high = low;
    return say(low, high, kind, show, text, room);
}
