/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Topic fields: every value of a question or an answer by its name, whether it
 * is in one of the topic's structs or a plain argument.
 */
#include "topics.h"

#include <string.h>

/* The plain arguments, described as the library describes its own fields. */
#define ARG(n, unit, type, words)                                              \
    {                                                                          \
#n, unit, type, words, offsetof(topic_arguments, n),                   \
            sizeof(((topic_arguments *)0)->n), 0, 0, 0, 0, 0, ""               \
    }
static const sw_field argument[] = {
    ARG(designation, "", SW_FIELD_TEXT, 0),
    ARG(text, "", SW_FIELD_TEXT, 0),
    ARG(kind, "", SW_FIELD_TEXT, 0),
    ARG(grade, "", SW_FIELD_TEXT, 0),
    ARG(lubrication, "", SW_FIELD_TEXT, 0),
    ARG(material, "", SW_FIELD_TEXT, 0),
    ARG(nut_class, "", SW_FIELD_TEXT, 0),
    ARG(nominal_mm, "mm", SW_FIELD_NUMBER, 0),
    ARG(side_pull_N, "N", SW_FIELD_NUMBER, 0),
    ARG(toe_error_pct, "%", SW_FIELD_NUMBER, 0),
    ARG(vial_mm_per_m, "mm/m", SW_FIELD_NUMBER, 0),
    ARG(toe_force_N, "N", SW_FIELD_NUMBER, 0),
    ARG(snug_N, "N", SW_FIELD_NUMBER, 0),
    ARG(rank, "", SW_FIELD_NUMBER, 0),
    ARG(method, "", SW_FIELD_TEXT, 0),
    ARG(hold_N, "N", SW_FIELD_NUMBER, 0),
    ARG(flat_N, "N", SW_FIELD_NUMBER, 0),
    ARG(index, "", SW_FIELD_NUMBER, 0),
    ARG(count, "", SW_FIELD_NUMBER, 0),
    ARG(p, "", SW_FIELD_NUMBER, 0),
    ARG(df, "", SW_FIELD_NUMBER, 0),
    ARG(basis, "", SW_FIELD_WORD, SW_WORDS_BASIS),
};
#undef ARG
#define ARGUMENTS ((int)(sizeof argument / sizeof argument[0]))

/* A single number as an answer has no list of its own. */
static const sw_field quantity_value = {"value",
                                        "",
                                        SW_FIELD_NUMBER,
                                        0,
                                        offsetof(sw_quantity_out, value),
                                        sizeof(double),
                                        0,
                                        0,
                                        0,
                                        0,
                                        0,
                                        ""};

/* Whether " a b c" has the word b. */
static int has_word(const char *words, const char *word)
{
    size_t n = strlen(word);
    for (const char *at = words; (at = strstr(at, word)); at++)
        if (at[-1] == ' ' && (at[n] == ' ' || !at[n]))
            return 1;
    return 0;
}

/* The index-th field of a struct; past its end, takes the number of its fields
 * off the index. */
static slot field_at(int structure, void *place, int *index)
{
    slot s = {sw_field_at(structure, *index), NULL};
    if (s.field)
        s.place = (char *)place + s.field->offset;
    for (int i = 0; !s.field && sw_field_at(structure, i); i++)
        --*index;
    return s;
}

slot topic_input_at(const topic *t, question *q, int index)
{
    slot s = field_at(t->third, &q->tight, &index);
    if (!s.field)
        s = field_at(t->in, &q->in, &index);
    if (!s.field)
        s = field_at(t->beside, &q->beside, &index);
    for (int i = 0, left = index; i < ARGUMENTS && !s.field; i++)
        if (has_word(t->arguments, argument[i].name) && left-- == 0) {
            s.field = &argument[i];
            s.place = (char *)&q->arguments + argument[i].offset;
            break;
        }
    return s;
}

slot topic_argument(question *q, const char *name)
{
    slot s = {NULL, NULL};
    for (int i = 0; i < ARGUMENTS && !s.field; i++)
        if (strcmp(argument[i].name, name) == 0) {
            s.field = &argument[i];
            s.place = (char *)&q->arguments + argument[i].offset;
        }
    return s;
}

slot topic_input(const topic *t, question *q, const char *name)
{
    for (int i = 0;; i++) {
        slot s = topic_input_at(t, q, i);
        if (!s.field || strcmp(s.field->name, name) == 0)
            return s;
    }
}

slot topic_output_at(const topic *t, answer *a, int index)
{
    slot s = {t->out ? sw_field_at(t->out, index) : NULL, NULL};
    if (!t->out && index == 0)
        s.field = &quantity_value;
    if (s.field)
        s.place = (char *)&a->out + s.field->offset;
    return s;
}

slot topic_output(const topic *t, answer *a, const char *name)
{
    for (int i = 0;; i++) {
        slot s = topic_output_at(t, a, i);
        if (!s.field || strcmp(s.field->name, name) == 0)
            return s;
    }
}

void topic_clear(const topic *t, question *q)
{
    memset(q, 0, sizeof *q);
    for (int i = 0; i < ARGUMENTS; i++) {
        slot s = {&argument[i], (char *)&q->arguments + argument[i].offset};
        if (argument[i].type == SW_FIELD_NUMBER)
            slot_set_number(s, SW_UNSET);
        else if (argument[i].type == SW_FIELD_TEXT)
            slot_set_text(s, TOPIC_ABSENT);
    }
    t->defaults(q);
}

uint64_t topic_warnings(const topic *t, const answer *a)
{
    uint64_t bits = 0;
    if (t->warnings)
        memcpy(&bits, (const char *)&a->out + t->warnings, sizeof bits);
    return bits;
}
