/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Arguments: the words of the command line into a request, each mistake as one
 * clear line.
 */
#include "cli.h"

#include <math.h>
#include <string.h>

/* Whether the name is a field that this topic answers instead of taking. */
static int is_hidden(request *r, const char *name)
{
    for (int i = 0; r->topic; i++) {
        char spelled[48];
        const slot s = topic_input_at(r->topic, &r->question, i);
        if (!s.field)
            break;
        spell_option(s.field->name, spelled, sizeof spelled, NULL);
        if (listed(r->command->hidden, s.field->name) &&
            strcmp(spelled, name) == 0)
            return 1;
    }
    return 0;
}

static int unknown_option(request *r, const char *name)
{
    if (is_hidden(r, name))
        return complain(BAD_INPUT, r->command->name, name,
                        ": no option of this topic; strapwise help tells "
                        "which topic asks what",
                        (char *)NULL);

    page line = {0};
    /* typed with the dashes of an option, so quotes would only be in the way;
     * but not at any length, nor with control bytes */
    page quoted = {0};
    spell_quoted(&quoted, name);
    if (!quoted.failed)
        page_add_n(&line, quoted.text + 1, quoted.length - 2);
    page_free(&quoted);
    const option *near = NULL;
    int best = 1000;
    for (int i = 0; i < r->options; i++) {
        const int edits = spell_distance(r->option[i].name, name);
        if (edits < best) {
            best = edits;
            near = &r->option[i];
        }
    }
    page_add(&line, ": unknown option");
    if (near && best <= (int)strlen(near->name) / 2) {
        page_add(&line, "; nearest: ");
        page_add(&line, near->name);
    } else {
        page_add(&line, "; strapwise ");
        page_add(&line, r->command->name);
        page_add(&line, " --help lists them");
    }
    return complain_page(BAD_INPUT, r->command->name, &line);
}

static int bad_value(request *r, const char *name, const char *value,
                     const char *why)
{
    page line = {0};
    page_add(&line, name);
    page_add(&line, ": ");
    spell_quoted(&line, value);
    page_add(&line, why);
    return complain_page(BAD_INPUT, r->command->name, &line);
}

static int read_number(request *r, const char *name, slot s, const char *value)
{
    sw_error err;
    sw_quantity_out q;
    if (strcmp(s.field->unit, "%") == 0 && !strchr(value, '%')) {
        q = sw_number(value, name, &err); /* "5" is 5 percent */
        if (!q.status && q.value != 0 && fabs(q.value) < 1)
            return bad_value(r, name, value,
                             " could be a part or percent; write it with %, "
                             "25% or 0.25%");
    } else {
        q = sw_quantity(value, topic_kind(s.field->name), name, &err);
        if (strcmp(s.field->unit, "%") == 0)
            q.value *= 100;
    }
    if (q.status)
        return complain_error(r, &err);
    if (q.value == SW_UNSET)
        return bad_value(r, name, value, " is out of all range");
    slot_set_number(s, q.value);
    return DONE;
}

static int read_word(request *r, const char *name, slot s, const char *value)
{
    const int word = sw_word_value(s.field->words, value);
    if (word) {
        slot_set_word(s, word);
        return DONE;
    }
    page line = {0};
    page_add(&line, name);
    page_add(&line, ": ");
    spell_quoted(&line, value);
    page_add(&line, " is none of");
    for (int w = 1; sw_word(s.field->words, w); w++) {
        page_add(&line, w > 1 ? ", " : " ");
        page_add(&line, sw_word(s.field->words, w));
    }
    return complain_page(BAD_INPUT, r->command->name, &line);
}

static int read_text(request *r, const char *name, slot s, const char *value)
{
    if (!value[0])
        return complain(BAD_INPUT, r->command->name, name, ": is empty",
                        (char *)NULL);
    if (slot_set_text(s, value))
        return DONE;
    return bad_value(r, name, value, " is too long");
}

static int read_value(request *r, option *o, const char *name,
                      const char *value)
{
    if (o->text) {
        *o->text = value;
        return DONE;
    }
    if (o->slot.field->type == SW_FIELD_NUMBER)
        return read_number(r, name, o->slot, value);
    if (o->slot.field->type == SW_FIELD_WORD)
        return read_word(r, name, o->slot, value);
    return read_text(r, name, o->slot, value);
}

/* One option at argv[*at]; moves *at on when the value is a word of its own. */
static int read_option(request *r, int argc, char **argv, int *at)
{
    const char *word = argv[*at];
    const char *equals = word[1] == '-' ? strchr(word, '=') : NULL;
    const size_t n = equals ? (size_t)(equals - word) : strlen(word);
    option *o = request_option(r, word, n);
    if (!o)
        return unknown_option(r, word);
    const char *name = o->name;
    if (o->also && strlen(o->also) == n && memcmp(o->also, word, n) == 0)
        name = o->also;
    if (o->given++)
        return complain(BAD_INPUT, r->command->name, name, ": given twice",
                        (char *)NULL);
    if (o->flag) {
        if (equals)
            return complain(BAD_INPUT, r->command->name, name,
                            ": takes no value", (char *)NULL);
        *o->flag = 1;
        return DONE;
    }
    if (equals)
        return read_value(r, o, name, equals + 1);
    /* a value may start with one dash (-3deg), an option has two */
    if (*at + 1 >= argc || strncmp(argv[*at + 1], "--", 2) == 0)
        return complain(BAD_INPUT, r->command->name, name,
                        ": the value is missing", (char *)NULL);
    return read_value(r, o, name, argv[++*at]);
}

/* A word without dashes: a piece of the thread or torque, a file name, or a
 * mistake. */
static int read_word_alone(request *r, const char *word, page *words)
{
    const char *kind = r->command->positional;
    if (strcmp(kind, "file") == 0) {
        r->file[r->files++] = word;
        return DONE;
    }
    if (kind[0]) {
        if (words->length)
            page_add(words, " ");
        page_add(words, word);
        return DONE;
    }
    return bad_value(r, "value", word,
                     " belongs to no option; put quotes round a value with a "
                     "blank in it: --torque \"25 N.m\"");
}

/* The words without dashes together: "1/2-13 UNC", "6 ft-lbf". */
static int take_positional(request *r, page *words)
{
    if (!words->length)
        return DONE;
    char name[48];
    const slot s = topic_input(r->topic, &r->question, r->command->positional);
    spell_option(s.field->name, name, sizeof name, NULL);
    option *o = request_option(r, name, strlen(name));
    const char *bare = name + strlen("--");
    if (o && o->given++)
        return complain(BAD_INPUT, r->command->name, bare, ": given twice",
                        (char *)NULL);
    return s.field->type == SW_FIELD_NUMBER
               ? read_number(r, bare, s, words->text)
               : read_text(r, bare, s, words->text);
}

static int check_common(request *r)
{
    if (r->units && strcmp(r->units, "us") != 0 && strcmp(r->units, "si") != 0)
        return bad_value(r, "--units", r->units, " is none of us, si");
    r->us = r->units && strcmp(r->units, "us") == 0;
    if (r->output && !r->output[0])
        return complain(BAD_INPUT, r->command->name, "--output: is empty",
                        (char *)NULL);
    return output_refused(r->command->name, r->output, r->replace);
}

int request_read(request *r, int argc, char **argv)
{
    page words = {0};
    int status = DONE, options_over = 0;
    for (int i = 0; i < argc && !status && !r->help; i++) {
        if (!options_over && strcmp(argv[i], "--") == 0)
            options_over = 1;
        else if (!options_over && argv[i][0] == '-' && argv[i][1])
            status = read_option(r, argc, argv, &i);
        else
            status = read_word_alone(r, argv[i], &words);
    }
    if (words.failed)
        status = complain(NOT_FINISHED, r->command->name, "out of memory",
                          (char *)NULL);
    if (!status && !r->help)
        status = take_positional(r, &words);
    if (!status && !r->help)
        status = check_common(r);
    page_free(&words);
    return status;
}
