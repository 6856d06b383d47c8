/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say: one quantity in both systems, rounded to what a bench can use, the
 * wanted system first and the other in brackets.
 */
#include "cli.h"

#include <math.h>
#include <string.h>

double in_unit(double value, const char *unit, int kind)
{
    const sw_quantity_out q = sw_unit_factor(unit, kind, "unit", NULL);
    return q.status || !is_known(value) ? SW_UNSET : value / q.value;
}

/* Four digits are enough, and parts of a newton only where they are few. */
static void rounded(page *p, double value, const char *unit)
{
    page_number(p, fabs(value) < 99.95 ? round(value * 10) / 10 : round(value),
                4);
    page_add(p, KEEP);
    page_add(p, unit);
}

static void between(page *p, int us, void (*si_half)(page *, double),
                    void (*us_half)(page *, double), double value)
{
    if (!is_known(value)) {
        page_add(p, "-");
        return;
    }
    (us ? us_half : si_half)(p, value);
    page_add(p, KEEP "(");
    (us ? si_half : us_half)(p, value);
    page_add(p, ")");
}

static void force_si(page *p, double N)
{
    if (fabs(N) < 9999.5) {
        rounded(p, N, "N");
    } else {
        page_number(p, N / 1000, 4);
        page_add(p, KEEP "kN");
    }
}

static void force_us(page *p, double N)
{
    rounded(p, in_unit(N, "lbf", SW_KIND_FORCE), "lbf");
}

void say_force(page *p, int us, double N)
{
    between(p, us, force_si, force_us, N);
}

/* Two ends with the same step: "7.71 .. 8.06 kN". */
static void ends(page *p, double low, double high, const char *unit)
{
    const double most = fmax(fabs(low), fabs(high));
    /* as fine as the nominal beside it, or it would seem to lie outside */
    const int kilo = unit[0] == 'k';
    const int decimals = kilo ? (most < 100 ? 2 : 1) : most < 99.95 ? 1 : 0;
    page_fixed(p, low, decimals);
    page_add(p, KEEP ".." KEEP);
    page_fixed(p, high, decimals);
    page_add(p, KEEP);
    page_add(p, unit);
}

void say_force_range(page *p, int us, double low, double high)
{
    if (!is_known(low) || !is_known(high)) {
        page_add(p, "-");
        return;
    }
    const double most = fmax(fabs(low), fabs(high));
    if (fabs(high - low) <= 1e-6 * most) {
        say_force(p, us, low);
        return;
    }
    const int kilo = most >= 10000;
    for (int half = 0; half < 2; half++) {
        page_add(p, half ? KEEP "(" : "");
        if ((half != 0) == (us != 0))
            ends(p, low / (kilo ? 1000 : 1), high / (kilo ? 1000 : 1),
                 kilo ? "kN" : "N");
        else
            ends(p, in_unit(low, "lbf", SW_KIND_FORCE),
                 in_unit(high, "lbf", SW_KIND_FORCE), "lbf");
    }
    page_add(p, ")");
}

static void torque_si(page *p, double Nm)
{
    page_number(p, Nm, fabs(Nm) < 1 ? 2 : 3);
    page_add(p, KEEP "N\xc2\xb7m");
}

/* Below 20 ft-lbf a wrench is read in inch-pounds. */
static int reads_inches(double Nm)
{
    return fabs(in_unit(Nm, "ft-lbf", SW_KIND_TORQUE)) < 20;
}

static void torque_in(page *p, double Nm, int inches)
{
    const double value =
        in_unit(Nm, inches ? "in-lbf" : "ft-lbf", SW_KIND_TORQUE);
    page_number(p, value, inches && fabs(value) < 10 ? 2 : 3);
    page_add(p, inches ? KEEP "in-lbf" : KEEP "ft-lbf");
}

void say_torque_us(page *p, double Nm) { torque_in(p, Nm, reads_inches(Nm)); }

/* "22.3 .. 30.1 N·m (16.4 .. 22.2 ft-lbf)": both ends on one scale */
void say_torque_range(page *p, int us, double low, double high)
{
    const int inches = reads_inches(high);
    const char *unit = inches ? "in-lbf" : "ft-lbf";
    for (int half = 0; half < 2; half++) {
        page_add(p, half ? KEEP "(" : "");
        if ((half != 0) == (us != 0)) {
            page_number(p, low, 3);
            page_add(p, KEEP ".." KEEP);
            torque_si(p, high);
        } else {
            page_number(p, in_unit(low, unit, SW_KIND_TORQUE), 3);
            page_add(p, KEEP ".." KEEP);
            torque_in(p, high, inches);
        }
    }
    page_add(p, ")");
}

void say_torque(page *p, int us, double Nm)
{
    between(p, us, torque_si, say_torque_us, Nm);
}

static void length_si(page *p, double mm)
{
    page_fixed(p, mm, fabs(mm) < 10 ? 2 : 1);
    page_add(p, KEEP "mm");
}

static void length_us(page *p, double mm)
{
    page_fixed(p, in_unit(mm, "in", SW_KIND_LENGTH), fabs(mm) < 10 ? 4 : 3);
    page_add(p, KEEP "in");
}

void say_length(page *p, int us, double mm)
{
    between(p, us, length_si, length_us, mm);
}

void say_length_range(page *p, int us, double low, double high)
{
    for (int half = 0; half < 2; half++) {
        page_add(p, half ? KEEP "(" : "");
        if ((half != 0) == (us != 0))
            ends(p, low, high, "mm");
        else {
            page_fixed(p, in_unit(low, "in", SW_KIND_LENGTH), 3);
            page_add(p, KEEP ".." KEEP);
            page_fixed(p, in_unit(high, "in", SW_KIND_LENGTH), 3);
            page_add(p, KEEP "in");
        }
    }
    page_add(p, ")");
}

static void stress_si(page *p, double MPa)
{
    page_number(p, MPa, 3);
    page_add(p, KEEP "MPa");
}

static void stress_us(page *p, double MPa)
{
    page_number(p, in_unit(MPa, "ksi", SW_KIND_PRESSURE), 3);
    page_add(p, KEEP "ksi");
}

void say_stress(page *p, int us, double MPa)
{
    between(p, us, stress_si, stress_us, MPa);
}

void say_percent(page *p, double ratio)
{
    if (!is_known(ratio)) {
        page_add(p, "-");
        return;
    }
    page_number(p, 100 * ratio, fabs(ratio) < 1 ? 2 : 3);
    page_add(p, KEEP "%");
}

void say_grade(page *p, const char *grade)
{
    page_add(p, grade[0] >= '0' && grade[0] <= '9' ? "class" KEEP : "");
    page_add(p, grade);
}

size_t say_label(page *p, const char *label)
{
    const size_t start = p->length;
    page_add(p, label);
    page_tab(p, LABEL_WIDTH);
    return start;
}

void say_done(page *p, size_t start)
{
    page_wrap(p, start, LABEL_WIDTH);
    page_add(p, "\n");
}
