/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Help: the list of topics, and the options of one topic with one real
 * example.
 */
#include "job.h"

#include <string.h>

static void say_topics(page *p, const char *start)
{
    enum { PURPOSE = 18 };
    for (int i = 0; command_at(i); i++) {
        if (strncmp(command_at(i)->name, start, strlen(start)) != 0)
            continue;
        page_add(p, "  ");
        page_add(p, command_at(i)->name);
        page_tab(p, PURPOSE);
        page_add(p, command_at(i)->purpose);
        page_add(p, "\n");
    }
    page_add(p, "\nstrapwise TOPIC --help shows the options of a topic.\n"
                "A number takes its unit with it: 30mm, \"1.25 in\", 12kN, "
                "\"25 ft-lbf\".\n");
}

void help_overview(page *p)
{
    page_add(p, "strapwise: clamping with straps, studs and nuts\n\n");
    say_topics(p, "");
}

void help_family(page *p, const char *word)
{
    page_add(p, strcmp(word, "cut") == 0
                    ? "what the cutter does to the part\n\n"
                    : "clamps other than straps\n\n");
    say_topics(p, word);
}

/* What the value looks like. */
static void say_shape(page *p, const option *o)
{
    static const char *const name[SW_KIND_COUNT + 1] = {
        "NUMBER",   "NUMBER", "LENGTH", "FORCE",      "TORQUE",
        "PRESSURE", "ANGLE",  "SLOPE",  "COMPLIANCE", "SPEED",
        "RPM",      "POWER",  "MASS",   "AREA",       "HEIGHT"};
    const sw_field *f = o->slot.field;
    if (o->flag)
        return;
    page_add(p, " ");
    if (o->shape)
        page_add(p, o->shape);
    else if (f->type == SW_FIELD_TEXT)
        page_add(p, strcmp(o->name, "--thread") == 0 ? "THREAD" : "NAME");
    else if (f->type == SW_FIELD_NUMBER)
        page_add(p, name[topic_kind(f->name)]);
    else
        for (int w = 1; sw_word(f->words, w); w++) {
            page_add(p, w > 1 ? "|" : "");
            page_add(p, sw_word(f->words, w));
        }
}

static void say_option(page *p, const option *o)
{
    enum { COLUMN = 36 };
    page_add(p, "  ");
    const size_t start = p->length;
    if (o->also && o->also[1] != '-') {
        page_add(p, o->also);
        page_add(p, ", ");
    }
    page_add(p, o->name);
    say_shape(p, o);
    if (o->what) {
        if (p->length - start + 3 >= COLUMN)
            page_add(p, "\n");
        page_tab(p, COLUMN);
        page_add(p, o->what);
    }
    page_add(p, "\n");
}

/* The names in a table, each once: rows of one name stand together. */
static void say_names(page *p, const char *label,
                      const char *(*name)(int index))
{
    const size_t start = p->length;
    page_add(p, label);
    for (int i = 0; name(i); i++)
        if (i == 0 || strcmp(name(i), name(i - 1)) != 0) {
            page_add(p, " ");
            page_add(p, name(i));
        }
    page_wrap(p, start, 4);
    page_add(p, "\n");
}

void help_command(page *p, request *r)
{
    const command *c = r->command;
    page_add(p, c->purpose);
    page_add(p, "\n\n");
    size_t start = p->length;
    page_add(p, "  strapwise ");
    page_add(p, c->name);
    page_add(p, " ");
    page_add(p, c->usage);
    page_wrap(p, start, 6);
    page_add(p, "\n");
    if (c->text[0]) {
        page_add(p, "\n");
        start = p->length;
        page_add(p, c->text);
        page_wrap(p, start, 0);
    }
    /* on one line, however long, so that it can be pasted */
    page_add(p, "\nFor example\n\n  ");
    page_add(p, c->example);
    page_add(p, "\n\nOptions\n\n");
    for (int i = 0; i < r->options; i++)
        if (!r->option[i].slot.field ||
            strcmp(r->option[i].slot.field->name, c->positional) != 0)
            say_option(p, &r->option[i]);
    if (request_option(r, "--lubrication", strlen("--lubrication"))) {
        page_add(p, "\n");
        say_names(p, "Lubrication:", sw_lubrication_name);
        say_names(p, "Grades:", sw_grade_name);
    }
    if (request_option(r, "--method", strlen("--method")))
        say_names(p, "Methods:", sw_method_name);
    if (request_option(r, "--material", strlen("--material")))
        say_names(p, "Materials:",
                  request_option(r, "--kc11", strlen("--kc11"))
                      ? sw_cut_material_name
                      : sw_material_name);
    if (request_option(r, "--part-material", strlen("--part-material")) ||
        request_option(r, "--bar-material", strlen("--bar-material")))
        say_names(p, "Materials:", sw_material_name);
    if (c->run == run_check || c->run == run_hold)
        say_job_keys(p);
    if (listed(c->more, "tools")) {
        page_add(p, "\n");
        say_names(p, "Tools:", sw_tool_name);
    }
}
