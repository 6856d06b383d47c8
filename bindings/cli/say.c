/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say: one quantity on the page, as the library writes it for people, kept
 * together where lines are broken.
 */
#include "cli.h"

#include <string.h>

double in_unit(double value, const char *unit, int kind)
{
    const sw_quantity_out q = sw_unit_factor(unit, kind, "unit", NULL);
    return q.status || !is_known(value) ? SW_UNSET : value / q.value;
}

/* No line is broken inside a quantity. */
static void add_kept(page *p, const char *text)
{
    for (; *text; text++)
        if (*text == ' ')
            page_add(p, KEEP);
        else
            page_add_n(p, text, 1);
}

static void say_kind(page *p, int us, int kind, double value)
{
    char text[80];
    sw_say(value, kind, us ? SW_SHOW_US_FIRST : SW_SHOW_SI_FIRST, text,
           sizeof text);
    add_kept(p, text);
}

static void say_kind_range(page *p, int us, int kind, double low, double high)
{
    char text[160];
    sw_say_range(low, high, kind, us ? SW_SHOW_US_FIRST : SW_SHOW_SI_FIRST,
                 text, sizeof text);
    add_kept(p, text);
}

void say_force(page *p, int us, double N) { say_kind(p, us, SW_KIND_FORCE, N); }

void say_force_range(page *p, int us, double low, double high)
{
    say_kind_range(p, us, SW_KIND_FORCE, low, high);
}

void say_torque(page *p, int us, double Nm)
{
    say_kind(p, us, SW_KIND_TORQUE, Nm);
}

void say_torque_range(page *p, int us, double low, double high)
{
    say_kind_range(p, us, SW_KIND_TORQUE, low, high);
}

void say_torque_us(page *p, double Nm)
{
    char text[80];
    sw_say(Nm, SW_KIND_TORQUE, SW_SHOW_US, text, sizeof text);
    add_kept(p, text);
}

void say_length(page *p, int us, double mm)
{
    say_kind(p, us, SW_KIND_LENGTH, mm);
}

void say_length_range(page *p, int us, double low, double high)
{
    say_kind_range(p, us, SW_KIND_LENGTH, low, high);
}

void say_stress(page *p, int us, double MPa)
{
    say_kind(p, us, SW_KIND_PRESSURE, MPa);
}

void say_percent(page *p, double ratio)
{
    say_kind(p, 0, SW_KIND_RATIO, ratio);
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
