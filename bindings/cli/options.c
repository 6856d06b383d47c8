/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Options: which ones a topic has follows from the fields of its input
 * struct; a few are the command's own.
 */
#include "cli.h"

#include <stdlib.h>
#include <string.h>

static option *new_option(request *r, const char *name)
{
    if (r->options == OPTIONS_MOST)
        abort(); /* a struct outgrew the list: raise OPTIONS_MOST */
    option *o = &r->option[r->options++];
    memset(o, 0, sizeof *o);
    copy_cut(o->name, sizeof o->name, name);
    return o;
}

static void add_field(request *r, slot s)
{
    option *o = new_option(r, "");
    spell_option(s.field->name, o->name, sizeof o->name, &o->also);
    o->slot = s;
    o->what = spell_purpose(s.field->name);
    if (r->topic && sw_field_named(r->topic->in, "kc11_MPa") &&
        strcmp(s.field->name, "material") == 0)
        o->what = "what is cut: strapwise cut materials";
}

static void add_text(request *r, const char *name, const char **text,
                     const char *shape, const char *what)
{
    option *o = new_option(r, name);
    o->text = text;
    o->shape = shape;
    o->what = what;
}

static void add_flag(request *r, const char *name, const char *also, int *flag,
                     const char *what)
{
    option *o = new_option(r, name);
    o->also = also;
    o->flag = flag;
    o->what = what;
}

/* Whether a word stands in a list of words with a blank before each. */
int listed(const char *words, const char *word)
{
    const size_t n = strlen(word);
    for (const char *at = words; (at = strstr(at, word)); at += n)
        if (at != words && at[-1] == ' ' && (at[n] == ' ' || !at[n]))
            return 1;
    return 0;
}

/* Plain arguments that a command may offer beside its topic's own. */
static const char *const extra[] = {
    "side_pull_N", "toe_error_pct", "vial_mm_per_m", "basis",
    "toe_force_N", "hold_N",        "flat_N"};

/* The fields of the second question. */
static void add_second(request *r, const command *c)
{
    for (int i = 0;; i++) {
        const slot s = topic_input_at(r->with, &r->question, i);
        if (!s.field)
            return;
        if (!listed(c->hidden, s.field->name) &&
            !topic_input(r->topic, &r->question, s.field->name).field)
            add_field(r, s);
    }
}

/* The second cutter of a cut. */
static void add_other(request *r)
{
    slot s;
    char name[48];
    topic_clear(r->topic, &r->other);
    for (int i = 0; other_at(r, i, &s, name, sizeof name); i++)
        if (s.field) {
            option *o = new_option(r, name);
            o->slot = s;
            o->what = "the same of a second one, to compare";
        }
}

void request_options(request *r, const command *c)
{
    memset(r, 0, sizeof *r);
    r->command = c;
    r->topic = topic_named(c->topic);
    r->with = c->with ? topic_named(c->with) : NULL;
    if (r->topic) {
        topic_clear(r->with ? r->with : r->topic, &r->question);
        for (int i = 0;; i++) {
            const slot s = topic_input_at(r->topic, &r->question, i);
            if (!s.field)
                break;
            if (!listed(c->hidden, s.field->name))
                add_field(r, s);
        }
    }
    if (r->with)
        add_second(r, c);
    if (listed(c->more, "other"))
        add_other(r);
    if (listed(c->more, "nut_factor_from"))
        add_text(r, "--nut-factor-from", &r->nut_factor_from, "FILE",
                 "K from one's own pairs of torque and force");
    if (listed(c->more, "svg"))
        add_text(r, "--svg", &r->svg, "FILE", "draw it into this file");
    if (listed(c->more, "tilt_svg"))
        add_text(r, "--tilt-svg", &r->tilt_svg, "FILE",
                 "plot pull and toe force against tilt into this file");
    if (listed(c->more, "find"))
        add_text(r, "--find", &r->find, "tilt|place|torque|window",
                 "put the question backwards");
    for (size_t i = 0; i < sizeof extra / sizeof extra[0]; i++)
        if (listed(c->more, extra[i]))
            add_field(r, topic_argument(&r->question, extra[i]));
    if (listed(c->more, "series"))
        add_text(r, "--series", &r->series, "coarse|fine|unc|unf|8un|all",
                 "which sizes");
    if (listed(c->more, "tools"))
        add_text(r, "--tools", &r->tools, "FILE",
                 "try the shop's own tools, a CSV table");
    if (listed(c->more, "csv"))
        add_flag(r, "--csv", NULL, &r->csv, "the rows as a CSV table");
    if (listed(c->more, "assumed"))
        add_flag(r, "--assumed", NULL, &r->assumed,
                 "list every default that entered, with its source");
    if (listed(c->more, "operation"))
        add_text(r, "--operation", &r->operation, "NAME",
                 "this operation of the job alone");
    if (listed(c->more, "required_margin"))
        add_text(r, "--required-margin", &r->required_margin, "NUMBER",
                 "wanted on the cut, in place of what the job says");
    if (listed(c->more, "map"))
        add_text(r, "--map", &r->map, "FILE",
                 "draw the margin along the path into this file");
    if (listed(c->more, "points"))
        add_flag(r, "--points", NULL, &r->points,
                 "list every point of the path with its margin");
    add_flag(r, "--json", NULL, &r->json, "one JSON object instead of text");
    add_text(r, "--units", &r->units, "us|si", "which comes first in text");
    add_flag(r, "--strict", NULL, &r->strict,
             "exit status 1 when there is a warning");
    add_text(r, "--output", &r->output, "FILE", "write to this file");
    r->option[r->options - 1].also = "-o";
    add_flag(r, "--replace", NULL, &r->replace,
             "let an existing file be written over");
    add_flag(r, "--help", "-h", &r->help, "this text");
}

option *request_option(request *r, const char *name, size_t n)
{
    for (int i = 0; i < r->options; i++) {
        option *o = &r->option[i];
        if ((strlen(o->name) == n && memcmp(o->name, name, n) == 0) ||
            (o->also && strlen(o->also) == n && memcmp(o->also, name, n) == 0))
            return o;
    }
    return NULL;
}

int request_given(const request *r, const char *name)
{
    for (int i = 0; i < r->options; i++)
        if (strcmp(r->option[i].name, name) == 0)
            return r->option[i].given;
    return 0;
}
