/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Values: what stands behind a key, as a number with its unit, a direction, a
 * point, a word or a text.
 *
 * Units are those of base/units.c. A unit that has no kind there, such as
 * "N/mm", is written exactly as it is named.
 */
#include "job/reader.h"

#include <strapwise/units.h>

#include <string.h>

enum { MESSAGE_ROOM = 224 };

static int want_text(sw__reader *r, int node, const char *key)
{
    char message[MESSAGE_ROOM];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, key);
    if (r->tree->node[node].kind != SW__TREE_TEXT) {
        sw__line_add(&line, ": one value is wanted here, not a list");
        return sw__fail_at(r, node, SW_ERR_SYNTAX, key, message);
    }
    if (sw__text_of(r->tree, node)[0])
        return SW_OK;
    sw__line_add(&line, ": the value is missing");
    if (sw__same_key(key, "thread"))
        sw__line_add(&line, " (a # begins a remark: write 10-32, or \"#10-32\" "
                            "in quotes)");
    return sw__fail_at(r, node, SW_ERR_MISSING, key, message);
}

int sw__take_text(sw__reader *r, int node, const char *key, char *to,
                  size_t room)
{
    const int status = want_text(r, node, key);
    if (status)
        return status;
    const char *text = sw__text_of(r->tree, node);
    if (strlen(text) < room) {
        sw__copy(to, room, text);
        return SW_OK;
    }
    char message[MESSAGE_ROOM];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, key);
    sw__line_add(&line, ": ");
    sw__line_add_quoted(&line, text);
    sw__line_add(&line, " is too long; at most ");
    sw__line_add_number(&line, (double)room - 1);
    sw__line_add(&line, " letters");
    return sw__fail_at(r, node, SW_ERR_RANGE, key, message);
}

/* ---- numbers ---- */

static int kind_of(const char *unit)
{
    for (int kind = 1; sw_kind_unit(kind); kind++)
        if (strcmp(sw_kind_unit(kind), unit) == 0)
            return kind;
    return 0;
}

/* Puts the place of a value before an error about it. */
static int at_value(sw__reader *r, int node, const char *key,
                    const sw_error *inner)
{
    const sw_error theirs = *inner;
    sw__fail_at(r, node, theirs.code, key, theirs.message);
    r->err->low = theirs.low;
    r->err->high = theirs.high;
    return theirs.code;
}

/* "5 %" and "5" are both 5; "0.05" could be either. */
static int read_percent(sw__reader *r, int node, const char *key,
                        const char *text, double *value)
{
    sw_error inner;
    const int marked = strchr(text, '%') != NULL;
    const sw_quantity_out q =
        marked ? sw_quantity(text, SW_KIND_RATIO, key, &inner)
               : sw_number(text, key, &inner);
    if (q.status)
        return at_value(r, node, key, &inner);
    *value = marked ? 100 * q.value : q.value;
    if (marked || q.value == 0 || fabs(q.value) >= 1)
        return SW_OK;
    char before[64];
    sw__line line = sw__line_start(before, sizeof before);
    sw__line_add(&line, key);
    sw__line_add(&line, ": ");
    return sw__fail_text(r, node, SW_ERR_UNIT, key, before, text,
                         " could be a part or per cent; write it with %, 25 % "
                         "or 0.25 %");
}

/* A number and a unit that must be this one. */
static int read_literal(sw__reader *r, int node, const char *key,
                        const char *unit, const char *text, double *value)
{
    char number[64], message[MESSAGE_ROOM];
    sw_error inner;
    const size_t n = strlen(text), m = strlen(unit);
    const int good =
        n > m && strcmp(text + n - m, unit) == 0 && n - m < sizeof number;
    if (good) {
        size_t end = n - m;
        while (end && text[end - 1] == ' ')
            end--;
        sw__copy(number, end + 1, text);
        const sw_quantity_out q = sw_number(number, key, &inner);
        *value = q.value;
        return q.status ? at_value(r, node, key, &inner) : SW_OK;
    }
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, key);
    sw__line_add(&line, ": ");
    sw__line_add_quoted(&line, text);
    sw__line_add(&line, " needs its unit; write for example 100 ");
    sw__line_add(&line, unit);
    return sw__fail_at(r, node, SW_ERR_UNIT, key, message);
}

int sw__take_number(sw__reader *r, int node, const char *key, const char *unit,
                    double low, double high, double *value)
{
    sw_error inner;
    int status = want_text(r, node, key);
    if (status)
        return status;
    const char *text = sw__text_of(r->tree, node);
    const int kind = kind_of(unit);
    double number = 0;
    if (strcmp(unit, "%") == 0) {
        status = read_percent(r, node, key, text, &number);
    } else if (kind) {
        const sw_quantity_out q = sw_quantity(text, kind, key, &inner);
        number = q.value;
        status = q.status ? at_value(r, node, key, &inner) : SW_OK;
    } else {
        status = read_literal(r, node, key, unit, text, &number);
    }
    if (status)
        return status;
    if (!(number >= low && number <= high)) {
        sw__fail_range(&inner, key, number, unit, low, high);
        return at_value(r, node, key, &inner);
    }
    *value = number;
    return SW_OK;
}

/* ---- directions and places ---- */

int sw__take_direction(sw__reader *r, int node, const char *key, double *deg)
{
    static const char *const axis[] = {"+x", "+y", "-x", "-y"};
    const int status = want_text(r, node, key);
    if (status)
        return status;
    const char *text = sw__text_of(r->tree, node);
    for (int i = 0; i < 4; i++)
        if (strcmp(axis[i], text) == 0) {
            *deg = 90.0 * i;
            return SW_OK;
        }
    sw_error inner;
    const sw_quantity_out q = sw_quantity(text, SW_KIND_ANGLE, key, &inner);
    if (!q.status && fabs(q.value) <= 360) {
        *deg = q.value;
        return SW_OK;
    }
    char before[64];
    sw__line line = sw__line_start(before, sizeof before);
    sw__line_add(&line, key);
    sw__line_add(&line, ": ");
    return sw__fail_text(r, node, q.status ? inner.code : SW_ERR_RANGE, key,
                         before, text,
                         " is no direction; write +x, -x, +y, -y or an angle "
                         "from +x toward +y, such as 30 deg");
}

int sw__take_point(sw__reader *r, int node, const char *key, double at[3],
                   int *has_z)
{
    static const char *const name[] = {"x", "y", "z"};
    const int most = has_z ? 3 : 2;
    const sw__node *n = &r->tree->node[node];
    char message[MESSAGE_ROOM];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, key);
    if (n->kind != SW__TREE_LIST || n->count < 2 || n->count > most) {
        sw__line_add(&line, has_z ? ": a point is wanted here, [x, y] or [x, "
                                    "y, z], such as [20 mm, 35 mm]"
                                  : ": two lengths are wanted here, such as "
                                    "[20 mm, 35 mm]");
        return sw__fail_at(r, node, SW_ERR_SYNTAX, key, message);
    }
    int i = 0;
    for (int child = n->first; child; child = r->tree->node[child].next, i++) {
        char one[64];
        line = sw__line_start(one, sizeof one);
        sw__line_add(&line, key);
        sw__line_add(&line, ", ");
        sw__line_add(&line, name[i]);
        const int status =
            sw__take_number(r, child, one, "mm", -1e5, 1e5, &at[i]);
        if (status)
            return status;
    }
    if (has_z)
        *has_z = n->count == 3;
    return SW_OK;
}

/* ---- words and fields ---- */

int sw__take_word(sw__reader *r, int node, const char *key, int list,
                  int *value)
{
    const int status = want_text(r, node, key);
    if (status)
        return status;
    const char *text = sw__text_of(r->tree, node);
    for (*value = 1; sw_word(list, *value); ++*value)
        if (sw__same_key(sw_word(list, *value), text))
            return SW_OK;
    char message[MESSAGE_ROOM];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, key);
    sw__line_add(&line, ": ");
    sw__line_add_quoted(&line, text);
    sw__line_add(&line, " is none of");
    for (int w = 1; sw_word(list, w); w++) {
        sw__line_add(&line, w > 1 ? ", " : " ");
        sw__line_add(&line, sw_word(list, w));
    }
    return sw__fail_at(r, node, SW_ERR_UNKNOWN, key, message);
}

int sw__take_field(sw__reader *r, int node, const char *key, const sw_field *f,
                   void *base)
{
    char *place = (char *)base + f->offset;
    if (f->type == SW_FIELD_TEXT)
        return sw__take_text(r, node, key, place, f->size);
    if (f->type == SW_FIELD_WORD) {
        int word = 0;
        const int status = sw__take_word(r, node, key, f->words, &word);
        memcpy(place, &word, sizeof word);
        return status;
    }
    double value = SW_UNSET;
    const int status =
        sw__take_number(r, node, key, f->unit, f->min, f->max, &value);
    memcpy(place, &value, sizeof value);
    return status;
}
