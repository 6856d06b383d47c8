/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Main: picks the topic, runs it, delivers its page.
 */
#include "cli.h"

#include <stdlib.h>
#include <string.h>

static int show(page *p, const char *who)
{
    const int status = deliver(p, who, NULL, 0);
    page_free(p);
    return status;
}

static int unknown_topic(const char *word)
{
    page line = {0};
    const char *near = NULL;
    int best = 4; /* more edits than this is no likeness */
    for (int i = 0; command_at(i); i++) {
        const int edits = spell_distance(command_at(i)->name, word);
        if (edits < best) {
            best = edits;
            near = command_at(i)->name;
        }
    }
    spell_quoted(&line, word);
    page_add(&line, " is no topic; ");
    if (near) {
        page_add(&line, "nearest: ");
        page_add(&line, near);
    } else {
        page_add(&line, "strapwise alone lists them");
    }
    return complain_page(BAD_INPUT, "", &line);
}

/* Topics of two words start with one of these. */
static int is_family(const char *word)
{
    return strcmp(word, "cut") == 0 || strcmp(word, "clamp") == 0;
}

static int unknown_member(const char *family, const char *word)
{
    page line = {0};
    const size_t n = strlen(family);
    if (word[0])
        spell_quoted(&line, word);
    page_add(&line, word[0] ? " is none of" : "which one?");
    const char *between = " ";
    for (int i = 0; command_at(i); i++) {
        const char *name = command_at(i)->name;
        if (strncmp(name, family, n) != 0 || name[n] != ' ')
            continue;
        page_add(&line, between);
        page_add(&line, name + n + 1);
        between = ", ";
    }
    return complain_page(BAD_INPUT, family, &line);
}

static int run(const command *c, int argc, char **argv)
{
    request *r = malloc(sizeof *r);
    const char **file = malloc(((size_t)argc + 1) * sizeof *file);
    page p = {0};
    int status = NOT_FINISHED;
    if (!r || !file) {
        complain(status, c->name, "out of memory", (char *)NULL);
    } else {
        request_options(r, c);
        r->file = file;
        status = request_read(r, argc, argv);
        if (!status && r->help) {
            help_command(&p, r);
            status = deliver(&p, c->name, NULL, 0);
        } else if (!status) {
            status = c->run(r, &p);
            if (!status && r->strict && r->warnings)
                status = NOT_MET;
            if (status <= NOT_MET) {
                const int sent = deliver(&p, c->name, r->output, r->replace);
                status = sent ? sent : status;
            }
        }
    }
    page_free(&p);
    free((void *)file);
    free(r);
    return status;
}

int main(int argc, char **argv)
{
    page p = {0};
    const char *word = argc > 1 ? argv[1] : "";
    if (strcmp(word, "--version") == 0) {
        page_add(&p, "strapwise ");
        page_add(&p, sw_version());
        page_add(&p, "\n");
        return show(&p, "");
    }
    const int help = strcmp(word, "help") == 0;
    if (!word[0] || strcmp(word, "--help") == 0 || strcmp(word, "-h") == 0 ||
        (help && argc == 2)) {
        help_overview(&p);
        return show(&p, "");
    }
    if (help)
        word = argv[2];
    else if (word[0] == '-')
        return complain(BAD_INPUT, "",
                        "options come after the topic; "
                        "strapwise alone lists the topics",
                        (char *)NULL);
    char two[40];
    int first = help ? 3 : 2; /* of the options */
    if (is_family(word)) {
        const char *which = argc > first ? argv[first] : "";
        if (strcmp(which, "--help") == 0 || strcmp(which, "-h") == 0 ||
            (help && !which[0])) {
            help_family(&p, word);
            return show(&p, word);
        }
        copy_cut(two, sizeof two, word);
        copy_cut(two + strlen(two), sizeof two - strlen(two), " ");
        copy_cut(two + strlen(two), sizeof two - strlen(two), which);
        if (!command_named(two))
            return unknown_member(word, which);
        word = two;
        first++;
    }
    const command *c = command_named(word);
    if (!c)
        return unknown_topic(word);
    char ask[] = "--help";
    char *asked[] = {ask, NULL};
    return help ? run(c, 1, asked) : run(c, argc - first, argv + first);
}
