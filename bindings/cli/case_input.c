/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Case input: the first half of a line of the corpus, `topic name=value ...`,
 * put into a question.
 */
#include "case.h"

#include <math.h>
#include <string.h>

int case_malformed(const case_line *c, const char *part, const char *why)
{
    page line = {0};
    page_add(&line, c->file);
    page_add(&line, ":");
    page_number(&line, c->line, 9);
    page_add(&line, ": ");
    if (part) {
        spell_quoted(&line, part);
        page_add(&line, " ");
    }
    page_add(&line, why);
    return complain_page(BAD_INPUT, "cases", &line);
}

int case_number(const char *text, double *value)
{
    static const struct {
        const char *word;
        double value;
    } row[] = {{"nan", NAN},
               {"inf", INFINITY},
               {"-inf", -INFINITY},
               {"unset", SW_UNSET}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
        if (strcmp(row[i].word, text) == 0) {
            *value = row[i].value;
            return 1;
        }
    const sw_quantity_out q = sw_number(text, "value", NULL);
    *value = q.value;
    return q.status == 0;
}

static int take(case_line *c, char *part)
{
    char *equals = strchr(part, '=');
    if (!equals)
        return case_malformed(c, part, "is not name=value");
    *equals = '\0';
    const slot s = topic_input(c->topic, &c->question, part);
    const int known = s.field != NULL;
    *equals = '=';
    const char *text = equals + 1;
    if (!known)
        return case_malformed(c, part, "names no input of this topic");
    if (s.field->type == SW_FIELD_TEXT)
        return slot_set_text(s, text) ? DONE
                                      : case_malformed(c, part, "is too long");
    if (s.field->type == SW_FIELD_WORD) {
        const int word = sw_word_value(s.field->words, text);
        double number = 0;
        /* a number is taken as it is, to ask for what is no word at all */
        if (!word && !case_number(text, &number))
            return case_malformed(c, part, "has no such word");
        slot_set_word(s, word ? word : (int)number);
        return DONE;
    }
    double value;
    if (!case_number(text, &value))
        return case_malformed(c, part, "is not a number");
    slot_set_number(s, value);
    return DONE;
}

int case_read_input(case_line *c, int *at)
{
    c->topic = topic_named(c->part[0]);
    if (!c->topic)
        return case_malformed(c, c->part[0], "is no topic");
    topic_clear(c->topic, &c->question);
    int i = 1;
    for (; i < c->parts && strcmp(c->part[i], "=>") != 0; i++) {
        const int status = take(c, c->part[i]);
        if (status)
            return status;
    }
    if (i == c->parts)
        return case_malformed(c, NULL, "there is no =>");
    *at = i + 1;
    return DONE;
}
