/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What every result and every error of the library must keep.
 */
#ifndef TESTS_COMMON_H
#define TESTS_COMMON_H

#include <strapwise-fixture.h>

#include "near.h"
#include <math.h>
#include <stdio.h>
#include <string.h>

static inline double field_number(const void *base, const sw_field *f)
{
    double value;
    memcpy(&value, (const char *)base + f->offset, sizeof value);
    return value;
}

static inline int field_word(const void *base, const sw_field *f)
{
    int value;
    memcpy(&value, (const char *)base + f->offset, sizeof value);
    return value;
}

static inline void set_field(void *base, const sw_field *f, double value)
{
    memcpy((char *)base + f->offset, &value, sizeof value);
}

static inline void set_text(char *to, size_t room, const char *text)
{
    snprintf(to, room, "%s", text);
}
#define SET(member, text) set_text(member, sizeof(member), text)

/* Good results have finite doubles, bad ones NaN in all of them. */
static inline void check_numbers(const char *what, const void *out,
                                 int structure, int status)
{
    for (int i = 0; sw_field_at(structure, i); i++) {
        const sw_field *f = sw_field_at(structure, i);
        if (f->type != SW_FIELD_NUMBER)
            continue;
        const double v = field_number(out, f);
        must(status ? isnan(v) : isfinite(v),
             "%s: status %d (%s), but %s is %.17g", what, status,
             sw_status_name(status), f->name, v);
    }
}

/* One line, printable, with a code that exists. */
static inline void check_error(const char *what, const sw_error *err, int code)
{
    must(err->code == code, "%s: code %d (%s), want %d (%s): %s", what,
         err->code, sw_status_name(err->code), code, sw_status_name(code),
         err->message);
    must(code >= 1 && code <= sw_status_count(), "%s: code %d", what, code);
    must(memchr(err->message, 0, sizeof err->message) &&
             memchr(err->field, 0, sizeof err->field),
         "%s: text without end", what);
    must(err->message[0] && err->field[0], "%s: nothing said", what);
    for (const char *c = err->message; *c; c++)
        must((unsigned char)*c >= 0x20 && *c != 0x7f,
             "%s: control character %d in \"%s\"", what, *c, err->message);
    must(isnan(err->low) == isnan(err->high), "%s: range with one end", what);
}

/* The same, and which field it is about. */
#define check_refused(what, err, want_code, want_field)                        \
    do {                                                                       \
        check_error(what, err, want_code);                                     \
        must(strcmp((err)->field, want_field) == 0,                            \
             "%s: field is %s, want %s: %s", what, (err)->field, want_field,   \
             (err)->message);                                                  \
    } while (0)

static inline void check_no_error(const char *what, int status,
                                  const sw_error *err)
{
    must(status == SW_OK && err->code == SW_OK && err->message[0] == '\0' &&
             err->field[0] == '\0',
         "%s: %d (%s) %s", what, status, sw_status_name(err->code),
         err->message);
}

#endif
