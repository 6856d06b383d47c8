/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Field: every struct of the interface as a list of named fields, and what can
 * be done from the list alone: check an input, fill a default and note it,
 * describe what was assumed, spoil a result.
 */
#include "base/internal.h"

#include <string.h>

static int is_listed(int structure)
{
    return structure >= 1 && structure <= SW_STRUCT_COUNT &&
           sw__fields_of[structure];
}

const sw_field *sw_field_at(int structure, int index)
{
    if (!is_listed(structure) || index < 0)
        return NULL;
    const sw_field *f = sw__fields_of[structure];
    for (; f->name && index > 0; f++)
        index--;
    return f->name ? f : NULL;
}

static int index_of(int structure, const char *name)
{
    const sw_field *f = sw__fields_of[structure];
    for (int i = 0; f[i].name; i++)
        if (strcmp(f[i].name, name) == 0)
            return i;
    return -1;
}

const sw_field *sw_field_named(int structure, const char *name)
{
    if (!is_listed(structure) || !name)
        return NULL;
    int i = index_of(structure, name);
    return i < 0 ? NULL : &sw__fields_of[structure][i];
}

void sw__cite(char *text, size_t room, const char *source, const char *edition)
{
    sw__line line = sw__line_start(text, room);
    sw__line_add(&line, source);
    sw__line_add(&line, edition[0] ? " " : "");
    sw__line_add(&line, edition);
}

int sw__is_hearsay(const char *status)
{
    return strcmp(status, "memory") == 0 || strcmp(status, "practice") == 0;
}

static double number_at(const void *base, const sw_field *f)
{
    double value;
    memcpy(&value, (const char *)base + f->offset, sizeof value);
    return value;
}

static int word_at(const void *base, const sw_field *f)
{
    int value;
    memcpy(&value, (const char *)base + f->offset, sizeof value);
    return value;
}

static int check_word(const void *in, const sw_field *f, sw_error *err)
{
    int value = word_at(in, f);
    if (value == SW_UNSET_WORD || sw_word(f->words, value))
        return SW_OK;
    char message[160];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, f->name);
    sw__line_add(&line, ": ");
    sw__line_add_number(&line, value);
    sw__line_add(&line, " is none of");
    for (int v = 1; sw_word(f->words, v); v++) {
        sw__line_add(&line, v > 1 ? ", " : " ");
        sw__line_add(&line, sw_word(f->words, v));
    }
    return sw__fail(err, SW_ERR_RANGE, f->name, message);
}

int sw__check_input(const void *in, int structure, sw_error *err)
{
    for (const sw_field *f = sw__fields_of[structure]; f->name; f++) {
        if (f->type == SW_FIELD_NUMBER) {
            double v = number_at(in, f);
            if (sw__is_set(v) && !(v >= f->min && v <= f->max))
                return sw__fail_range(err, f->name, v, f->unit, f->min, f->max);
        } else if (f->type == SW_FIELD_WORD) {
            int status = check_word(in, f, err);
            if (status)
                return status;
        } else if (!memchr((const char *)in + f->offset, '\0', f->size)) {
            char message[120];
            sw__line line = sw__line_start(message, sizeof message);
            sw__line_add(&line, f->name);
            sw__line_add(&line, ": text is too long");
            return sw__fail(err, SW_ERR_SYNTAX, f->name, message);
        }
    }
    return SW_OK;
}

void sw__spoil(void *out, int structure, int status)
{
    const double nan = NAN;
    for (const sw_field *f = sw__fields_of[structure]; f->name; f++)
        if (f->type == SW_FIELD_NUMBER)
            memcpy((char *)out + f->offset, &nan, sizeof nan);
    memcpy(out, &status, sizeof status);
}

sw_assumption sw__no_assumption(int status)
{
    sw_assumption a;
    memset(&a, 0, sizeof a);
    a.status = status;
    a.value = a.low = a.high = NAN;
    return a;
}

sw_assumption sw__assumed(const void *in, int structure, uint64_t assumed,
                          int index, sw_error *err)
{
    sw_assumption a = sw__no_assumption(SW_OK);
    int bit = -1;
    for (int i = 0; index >= 0 && sw__fields_of[structure][i].name && bit < 0;
         i++)
        if (assumed >> i & 1 && index-- == 0)
            bit = i;
    if (bit < 0) {
        a.status = sw__fail(err, SW_ERR_RANGE, "index",
                            "index: past the end of the assumed values");
        return a;
    }
    const sw_field *f = &sw__fields_of[structure][bit];
    sw__copy(a.name, sizeof a.name, f->name);
    sw__copy(a.unit, sizeof a.unit, f->unit);
    sw__copy(a.source, sizeof a.source, f->source);
    if (f->type == SW_FIELD_NUMBER) {
        a.value = number_at(in, f);
        a.low = f->relative ? f->low * a.value : f->low;
        a.high = f->relative ? f->high * a.value : f->high;
    } else if (f->type == SW_FIELD_WORD) {
        sw__copy(a.word, sizeof a.word, sw_word(f->words, word_at(in, f)));
    } else {
        sw__copy(a.word, sizeof a.word, (const char *)in + f->offset);
    }
    return a;
}

/* Fowler, Noll and Vo's hash (FNV-1a), over the fields alone: bytes between
 * them are nobody's. */
uint64_t sw__seal(const void *in, int structure, uint64_t assumed)
{
    uint64_t hash = 14695981039346656037u ^ assumed;
    for (const sw_field *f = sw__fields_of[structure]; f->name; f++) {
        const unsigned char *byte = (const unsigned char *)in + f->offset;
        const int text = f->type == SW_FIELD_TEXT;
        for (size_t i = 0; i < f->size && !(text && !byte[i]); i++)
            hash = (hash ^ byte[i]) * 1099511628211u;
    }
    return hash ? hash : 1;
}

int sw__reopen(void *in, int structure, uint64_t *assumed, uint64_t *seal,
               sw_error *err)
{
    if (*seal && *seal != sw__seal(in, structure, *assumed))
        return sw__fail(err, SW_ERR_CONFLICT, "seal",
                        "seal: this question was resolved and then changed; "
                        "change the question that it came from");
    for (int i = 0; sw__fields_of[structure][i].name; i++) {
        const sw_field *f = &sw__fields_of[structure][i];
        char *at = (char *)in + f->offset;
        if (!(*assumed >> i & 1))
            continue;
        if (f->type == SW_FIELD_NUMBER) {
            const double open = SW_UNSET;
            memcpy(at, &open, sizeof open);
        } else {
            memset(at, 0, f->size);
        }
    }
    *assumed = *seal = 0;
    return SW_OK;
}

uint64_t sw__bit(int structure, const char *name)
{
    return (uint64_t)1 << index_of(structure, name);
}

static void note(const sw__filler *f, int i)
{
    *f->assumed |= (uint64_t)1 << i;
}

void sw__fill_number(const sw__filler *f, const char *name, double value)
{
    int i = index_of(f->structure, name);
    const sw_field *field = &sw__fields_of[f->structure][i];
    if (sw__is_set(number_at(f->base, field)) || !sw__is_set(value))
        return;
    memcpy(f->base + field->offset, &value, sizeof value);
    note(f, i);
}

void sw__fill_word(const sw__filler *f, const char *name, int value)
{
    int i = index_of(f->structure, name);
    const sw_field *field = &sw__fields_of[f->structure][i];
    if (word_at(f->base, field) != SW_UNSET_WORD)
        return;
    memcpy(f->base + field->offset, &value, sizeof value);
    note(f, i);
}

void sw__fill_text(const sw__filler *f, const char *name, const char *value)
{
    int i = index_of(f->structure, name);
    const sw_field *field = &sw__fields_of[f->structure][i];
    if (f->base[field->offset] || !value[0])
        return;
    sw__copy(f->base + field->offset, field->size, value);
    note(f, i);
}
