/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say notes: what stands below every answer: warnings, what was assumed, what
 * was not checked.
 */
#include "cli.h"

#include <math.h>
#include <string.h>

void say_warnings(page *p, uint64_t bits)
{
    say_warnings_as(p, "warnings", bits);
}

void say_warnings_as(page *p, const char *title, uint64_t bits)
{
    if (!bits)
        return;
    page_add(p, "\n");
    page_add(p, title);
    page_add(p, "\n");
    for (int bit = 0; sw_warning_name(bit); bit++) {
        if (!(bits >> bit & 1))
            continue;
        page_add(p, "  - ");
        const size_t start = p->length;
        page_add(p, sw_warning_text(bit));
        page_wrap(p, start, 4);
        page_add(p, "\n");
    }
}

/* A default in the wanted system alone: there is one column for it. */
static void in_system(page *p, int us, double value, const char *unit,
                      int with_unit)
{
    static const struct {
        const char *si, *shown, *us, *us_unit; /* as shown, as read */
        int kind;
    } row[] = {
        {"mm", "mm", "in", "in", SW_KIND_LENGTH},
        {"N", "N", "lbf", "lbf", SW_KIND_FORCE},
        {"N.m", "N\xc2\xb7m", "in-lbf", "in-lbf", SW_KIND_TORQUE},
        {"MPa", "MPa", "ksi", "ksi", SW_KIND_PRESSURE},
        {"mm2", "mm\xc2\xb2", "in\xc2\xb2", "in2", SW_KIND_AREA},
    };
    const char *shown = unit;
    if (strcmp(unit, "MPa") == 0 && fabs(value) > 0 && fabs(value) < 1) {
        shown = us ? "psi" : "kPa"; /* air, not steel */
        value = in_unit(value, shown, SW_KIND_PRESSURE);
        unit = "";
    }
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
        if (strcmp(row[i].si, unit) == 0) {
            shown = us ? row[i].us : row[i].shown;
            value = us ? in_unit(value, row[i].us_unit, row[i].kind) : value;
        }
    page_number(p, value, 4);
    if (with_unit && shown[0]) {
        page_add(p, KEEP);
        page_add(p, shown);
    }
}

/* "0.2 (0.12 .. 0.3)", "held" */
void say_assumed_value(page *p, int us, const sw_assumption *a)
{
    if (a->word[0]) {
        page_add(p, a->word);
        return;
    }
    in_system(p, us, a->value, a->unit, 1);
    if (!(a->low < a->high))
        return;
    page_add(p, " (");
    in_system(p, us, a->low, a->unit, 0);
    page_add(p, KEEP ".." KEEP);
    in_system(p, us, a->high, a->unit, 0);
    page_add(p, ")");
}

void say_assumed_one(page *p, int us, const sw_assumption *a)
{
    enum { VALUE = 22, REST = 42 };
    char name[48];
    spell_option(a->name, name, sizeof name, NULL);
    page_add(p, "  ");
    page_add(p, name);
    page_tab(p, VALUE);
    say_assumed_value(p, us, a);
    if (a->source[0])
        page_tab(p, REST);
    const size_t start = p->length;
    page_add(p, a->source);
    page_wrap(p, start, REST);
    page_add(p, "\n");
}

void say_assumed_second(page *p, int us, const request *r)
{
    int lines = 0;
    for (int i = 0;; i++) {
        const sw_assumption a = r->with->assumed(&r->question, i, NULL);
        if (a.status)
            break;
        if (!sw_field_named(r->with->beside, a.name) ||
            sw_field_named(r->with->in, a.name) ||
            (!a.word[0] && !is_known(a.value)))
            continue;
        if (lines++ == 0)
            page_add(p, "\nassumed (give it to replace it; --assumed lists the "
                        "strap's too)\n");
        say_assumed_one(p, us, &a);
    }
}

void say_assumed(page *p, int us, const topic *t, const question *q,
                 const request *own)
{
    int lines = 0;
    for (int list = 0; list < 2; list++)
        for (int i = 0; list ? own != NULL : t && t->assumed; i++) {
            const sw_assumption a =
                list ? find_assumed(own, i) : t->assumed(q, i, NULL);
            if (a.status)
                break;
            if (!a.word[0] && !is_known(a.value))
                continue; /* it entered nothing */
            if (lines++ == 0)
                page_add(p, "\nassumed (usual range; give it to replace it)\n");
            say_assumed_one(p, us, &a);
        }
}

void say_not_checked(page *p, const topic *t)
{
    if (!t->not_checked || !t->not_checked(0))
        return;
    page_add(p, "\nnot checked\n");
    for (int i = 0; t->not_checked(i); i++) {
        page_add(p, "  - ");
        const size_t start = p->length;
        page_add(p, t->not_checked(i));
        page_wrap(p, start, 4);
        page_add(p, "\n");
    }
}

void say_caution(page *p)
{
    page_add(p, "\n");
    const size_t start = p->length;
    page_add(p, "Planning aid: a qualified person decides, the limits of the "
                "machine and clamp makers govern; keep guards closed and start "
                "at low feed.");
    page_wrap(p, start, 0);
    page_add(p, "\n");
}
