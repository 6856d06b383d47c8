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

static int unknown_cut(const char *word)
{
    page line = {0};
    if (word[0])
        spell_quoted(&line, word);
    page_add(&line, word[0] ? " is none of" : "which one?");
    page_add(&line, " turn, mill, drill, materials");
    return complain_page(BAD_INPUT, "cut", &line);
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
    char two[24];
    int used = 2;
    if (strcmp(word, "cut") == 0) {
        const char *which = argc > help + 2 ? argv[help + 2] : "";
        const int asks = strcmp(which, "--help") == 0 ||
                         strcmp(which, "-h") == 0 || (help && !which[0]);
        if (asks) {
            help_family(&p, word);
            return show(&p, word);
        }
        copy_cut(two, sizeof two, "cut ");
        copy_cut(two + 4, sizeof two - 4, which);
        if (!command_named(two))
            return unknown_cut(which);
        word = two;
        used = 3;
    }
    const command *c = command_named(word);
    if (!c)
        return unknown_topic(word);
    char ask[] = "--help";
    char *asked[] = {ask, NULL};
    return help ? run(c, 1, asked) : run(c, argc - used, argv + used);
}
