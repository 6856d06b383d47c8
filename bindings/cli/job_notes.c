/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Job notes: what stands below the answers about a job, and how its places and
 * names are written.
 */
#include "job.h"

#include <math.h>
#include <string.h>

/* Three decimals of an inch are as much as two of a millimetre. */
static void say_place_in(page *p, int us, double x_mm, double y_mm)
{
    const double one = us ? 25.4 : 1, step = us ? 1000 : 100;
    page_number(p, round(x_mm / one * step) / step, 7);
    page_add(p, "," KEEP);
    page_number(p, round(y_mm / one * step) / step, 7);
    page_add(p, us ? KEEP "in" : KEEP "mm");
}

void say_place(page *p, int us, double x_mm, double y_mm)
{
    say_place_in(p, us, x_mm, y_mm);
    page_add(p, KEEP "(");
    say_place_in(p, !us, x_mm, y_mm);
    page_add(p, ")");
}

void say_direction(page *p, double deg)
{
    static const char *const axis[] = {"+x", "+y", "-x", "-y"};
    double turned = fmod(deg, 360);
    if (turned < 0)
        turned += 360;
    for (int i = 0; i < 4; i++)
        if (fabs(turned - 90.0 * i) < 1e-9) {
            page_add(p, axis[i]);
            return;
        }
    page_number(p, deg, 4);
    page_add(p, KEEP "deg");
}

void say_clamps(page *p, const sw_job *job, int operation)
{
    int said = 0;
    for (int i = 0;; i++) {
        const sw_job_clamp_out c = sw_job_clamp(job, i, NULL);
        if (c.status)
            break;
        if (!sw_job_has_clamp(job, operation, i))
            continue;
        page_add(p, said++ ? ", " : "");
        page_add(p, c.name);
    }
    if (!said)
        page_add(p, "no clamps");
}

/* ---- assumed ---- */

/* The field in a default's name, behind whom it is of. */
static const char *field_of(const sw_assumption *a)
{
    const char *dot = strrchr(a->name, '.');
    return dot ? dot + 1 : a->name;
}

static int same_default(const sw_assumption *a, const sw_assumption *b)
{
    return strcmp(field_of(a), field_of(b)) == 0 &&
           strcmp(a->word, b->word) == 0 && strcmp(a->source, b->source) == 0 &&
           (a->word[0] || a->value == b->value);
}

static int has_range(const sw_assumption *a)
{
    return is_known(a->low) && is_known(a->high) && a->low < a->high;
}

/* "stud to toe" */
static void say_key(page *p, const char *field)
{
    char name[64];
    spell_option(field, name, sizeof name, NULL);
    for (char *c = name; *c; c++)
        if (*c == '-')
            *c = ' ';
    char *per = strstr(name, " N per"); /* of a unit in two parts */
    if (per)
        *per = '\0';
    page_add(p, name + strlen("--"));
}

/* Whether a default is of another operation than the one asked for. */
static int elsewhere(const sw_job *job, int operation, const sw_assumption *a)
{
    char whose[64];
    const char *dot = strrchr(a->name, '.');
    if (operation < 0 || !dot)
        return 0;
    copy_cut(whose, (size_t)(dot - a->name) + 1, a->name);
    const int of = sw_job_find_operation(job, whose);
    return of >= 0 && of != operation;
}

/* Whom a default is of: all that share it. */
static void say_whose(page *p, const sw_job *job, int operation, int index)
{
    const sw_assumption first = sw_job_assumed(job, index, NULL);
    int said = 0;
    for (int i = index;; i++) {
        const sw_assumption a = sw_job_assumed(job, i, NULL);
        if (a.status)
            break;
        const char *dot = strrchr(a.name, '.');
        if (!dot || !same_default(&first, &a) || elsewhere(job, operation, &a))
            continue;
        page_add(p, said++ ? ", " : "");
        page_add_n(p, a.name, (size_t)(dot - a.name));
    }
}

static void say_one(page *p, const request *r, const sw_job *job, int operation,
                    int index)
{
    const sw_assumption a = sw_job_assumed(job, index, NULL);
    page_add(p, "  ");
    const size_t start = p->length;
    say_whose(p, job, operation, index);
    page_add(p, ": ");
    say_key(p, field_of(&a));
    page_add(p, " ");
    say_assumed_value(p, r->us, &a);
    if (a.source[0]) {
        page_add(p, "; ");
        page_add(p, a.source);
    }
    page_wrap(p, start, 4);
    page_add(p, "\n");
}

void say_job_assumed(page *p, const request *r, const sw_job *job,
                     int operation)
{
    int lines = 0, left = 0;
    for (int i = 0;; i++) {
        const sw_assumption a = sw_job_assumed(job, i, NULL);
        if (a.status)
            break;
        int before = elsewhere(job, operation, &a);
        for (int k = 0; k < i && !before; k++) {
            const sw_assumption b = sw_job_assumed(job, k, NULL);
            before = same_default(&a, &b) && !elsewhere(job, operation, &b);
        }
        if (before)
            continue;
        if (!r->assumed && !(has_range(&a) && sw_job_matters(job, i))) {
            left++;
            continue;
        }
        if (lines++ == 0)
            page_add(p, "\nassumed (usual range; give it to replace it)\n");
        say_one(p, r, job, operation, i);
    }
    if (left) {
        page_add(p, lines ? "  " : "\nassumed\n  ");
        page_number(p, left, 6);
        page_add(p, " other defaults matter little or have no usual range; "
                    "--assumed lists them\n");
    }
}

void json_job_assumed(json *j, const sw_job *job, int operation)
{
    json_open(j, "assumed", '[');
    for (int i = 0;; i++) {
        const sw_assumption a = sw_job_assumed(job, i, NULL);
        if (a.status)
            break;
        if (!elsewhere(job, operation, &a))
            json_assumed_one(j, &a);
    }
    json_close(j, ']');
}

/* ---- not checked ---- */

static const char *not_checked(int index, int hold)
{
    int own = 0;
    while (sw_job_not_checked(own))
        own++;
    if (!hold || index < own)
        return sw_job_not_checked(index);
    return sw_hold_not_checked(index - own);
}

void say_job_not_checked(page *p, int hold)
{
    page_add(p, "\nnot checked\n");
    for (int i = 0; not_checked(i, hold); i++) {
        page_add(p, "  - ");
        const size_t start = p->length;
        page_add(p, not_checked(i, hold));
        page_wrap(p, start, 4);
        page_add(p, "\n");
    }
}

void json_job_not_checked(json *j, int hold)
{
    json_open(j, "not_checked", '[');
    for (int i = 0; not_checked(i, hold); i++)
        json_text(j, NULL, not_checked(i, hold));
    json_close(j, ']');
}

/* ---- structs ---- */

void json_struct(json *j, const void *base, int structure)
{
    const sw_field *f;
    for (int i = 0; (f = sw_field_at(structure, i)); i++) {
        const char *place = (const char *)base + f->offset;
        if (f->type == SW_FIELD_NUMBER) {
            double value;
            memcpy(&value, place, sizeof value);
            json_number(j, f->name, value);
        } else if (f->type == SW_FIELD_WORD) {
            int word;
            memcpy(&word, place, sizeof word);
            json_text(j, f->name, sw_word(f->words, word));
        } else {
            json_text(j, f->name, place);
        }
    }
}
