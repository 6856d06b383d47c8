/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say tool: what is set on a torque tool, its own unit first; and lists of
 * tools.
 */
#include "cli.h"

#include <math.h>
#include <string.h>

static double in_own(double Nm, int unit)
{
    return in_unit(Nm, sw_word(SW_WORDS_TORQUE_UNIT, unit), SW_KIND_TORQUE);
}

static void unit_name(page *p, int unit)
{
    page_add(p, KEEP);
    page_add(p, unit == SW_TORQUE_NM ? "N\xc2\xb7m"
                                     : sw_word(SW_WORDS_TORQUE_UNIT, unit));
}

static void own_half(page *p, double Nm, int unit, int digits)
{
    page_number(p, in_own(Nm, unit), digits);
    unit_name(p, unit);
}

static void other_half(page *p, double Nm, int unit)
{
    if (unit == SW_TORQUE_NM)
        say_torque_us(p, Nm);
    else
        own_half(p, Nm, SW_TORQUE_NM, 3);
}

static void range(page *p, double low, double high, int unit, int digits)
{
    page_number(p, in_own(low, unit), digits);
    page_add(p, KEEP ".." KEEP);
    own_half(p, high, unit, digits);
}

/* What no wrench shows is none. */
static int is_off(double pct) { return fabs(pct) >= 0.005; }

/* Signed, so that it is seen which way. */
static void rounding(page *p, double pct)
{
    if (!is_off(pct)) {
        page_add(p, "0" KEEP "%");
        return;
    }
    page_add(p, pct > 0 ? "+" : "");
    page_number(p, pct, 2);
    page_add(p, KEEP "%");
}

static void name_tool(page *p, const sw_tool_out *t)
{
    if (t->tool[0]) {
        page_add(p, strchr("aeiou", t->label[0]) ? "an " : "a ");
        page_add(p, t->label);
        page_add(p, ", ");
        page_add(p, t->tool);
    } else {
        page_add(p, "a tool of your own");
    }
}

void say_tool(page *p, request *r, const sw_tool_out *t)
{
    const int unit = t->torque_unit;
    say_torque(p, r->us, t->torque_Nm);
    page_add(p, " on ");
    name_tool(p, t);
    page_add(p, "\n\n");
    size_t start = say_label(
        p, t->tool_kind == SW_TOOL_INDICATING ? "pull until" : "set it to");
    own_half(p, t->set_torque_Nm, unit, 6);
    page_add(p, KEEP "(");
    other_half(p, t->set_torque_Nm, unit);
    page_add(p, "), ");
    if (!is_off(t->rounding_pct)) {
        page_add(p, "the torque wanted");
    } else {
        rounding(p, t->rounding_pct);
        page_add(p, " from the torque wanted");
    }
    say_done(p, start);
    start = say_label(p, "true torque");
    range(p, t->torque_low_Nm, t->torque_high_Nm, unit, 3);
    page_add(p, " (");
    other_half(p, t->torque_low_Nm, unit);
    page_add(p, KEEP ".." KEEP);
    other_half(p, t->torque_high_Nm, unit);
    page_add(p, "): one reading may be off by \xc2\xb1");
    page_number(p, t->deviation_pct, 3);
    page_add(p, KEEP "%");
    say_done(p, start);
    start = say_label(p, "usable range");
    range(p, t->usable_low_Nm, t->usable_high_Nm, unit, 4);
    page_add(p, " in steps of ");
    own_half(p, t->resolution_Nm, unit, 4);
    say_done(p, start);
}

enum { NAME = 2, USABLE = 24, SET = 43, THAT_IS = 57, OFF = 70 };

void say_tools_head(page *p)
{
    page_add(p, "  tool");
    page_tab(p, USABLE);
    page_add(p, "usable");
    page_tab(p, SET);
    page_add(p, "set or read");
    page_tab(p, THAT_IS);
    page_add(p, "that is");
    page_tab(p, OFF);
    page_add(p, "off by\n");
}

static void row_start(page *p, const char *name, double low, double high,
                      int unit)
{
    page_add(p, "  ");
    page_add(p, name);
    page_tab(p, USABLE);
    range(p, low, high, unit, 4);
    page_tab(p, SET);
}

void say_tools_one(page *p, const char *name, const sw_tool_out *t)
{
    row_start(p, name, t->usable_low_Nm, t->usable_high_Nm, t->torque_unit);
    own_half(p, t->set_torque_Nm, t->torque_unit, 6);
    page_tab(p, THAT_IS);
    other_half(p, t->set_torque_Nm, t->torque_unit);
    page_tab(p, OFF);
    rounding(p, t->rounding_pct);
    page_add(p, "\n");
}

void say_tools_not(page *p, const char *name, const sw_error *err,
                   double torque_Nm, int torque_unit)
{
    row_start(p, name, err->low, err->high, torque_unit);
    page_add(p, torque_Nm < err->low ? "no: below its range"
                                     : "no: above its range");
    page_add(p, "\n");
}
