/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Status: names of errors and warnings, and the one-line message of an error.
 *
 * A message names field, value and allowed range with unit, and says nothing
 * that the caller knows already.
 */
#include "base/internal.h"

#include <strapwise/units.h>

#include <string.h>

const char *sw_status_name(int code)
{
    switch (code) {
    case SW_OK:
        return "ok";
#define SW_X(sym, num, name)                                                   \
    case sym:                                                                  \
        return name;
        SW_ERROR_LIST(SW_X)
#undef SW_X
    default:
        return "unknown_code";
    }
}

int sw_status_count(void)
{
#define SW_X(sym, num, name) +1
    return 0 SW_ERROR_LIST(SW_X);
#undef SW_X
}

static const struct {
    const char *name, *text;
} warning_row[] = {
#define SW_X(sym, bit, name, text) [bit] = {name, text},
    SW_WARNING_LIST(SW_X)
#undef SW_X
};

/* a bit and its place in the list are the same */
#define SW_X(sym, bit, name, text)                                             \
    _Static_assert(sym == UINT64_C(1) << bit, name);
SW_WARNING_LIST(SW_X)
#undef SW_X

#define WARNINGS ((int)(sizeof warning_row / sizeof warning_row[0]))

const char *sw_warning_name(int bit)
{
    return bit >= 0 && bit < WARNINGS ? warning_row[bit].name : NULL;
}

const char *sw_warning_text(int bit)
{
    return bit >= 0 && bit < WARNINGS ? warning_row[bit].text : NULL;
}

const char *sw_version(void) { return SW__VERSION; }

const char *sw_tables_version(void) { return SW__TABLES_VERSION; }

void sw__copy(char *to, size_t room, const char *from)
{
    size_t n = strlen(from);
    if (n >= room)
        n = room - 1;
    memmove(to, from, n);
    to[n] = '\0';
}

sw__line sw__line_start(char *text, size_t room)
{
    text[0] = '\0';
    return (sw__line){text, room, 0};
}

void sw__line_add(sw__line *line, const char *text)
{
    sw__copy(line->text + line->length, line->room - line->length, text);
    line->length += strlen(line->text + line->length);
}

void sw__line_add_quoted(sw__line *line, const char *text)
{
    enum { SHOWN = 40 };
    char shown[SHOWN + 1];
    size_t n = 0;
    for (; n < SHOWN && text[n]; n++) {
        unsigned char c = (unsigned char)text[n];
        shown[n] = (char)(c < 0x20 || c >= 0x7f ? '?' : c);
    }
    shown[n] = '\0';
    sw__line_add(line, "\"");
    sw__line_add(line, shown);
    sw__line_add(line, text[n] ? "...\"" : "\"");
}

void sw__line_add_number(sw__line *line, double value)
{
    char text[40];
    sw_format(value, 6, text, sizeof text);
    sw__line_add(line, text);
}

void sw__clear(sw_error *err)
{
    if (!err)
        return;
    memset(err, 0, sizeof *err);
    err->low = err->high = NAN;
}

int sw__fail(sw_error *err, int code, const char *field, const char *message)
{
    if (err) {
        sw__clear(err);
        err->code = code;
        sw__copy(err->field, sizeof err->field, field);
        sw__copy(err->message, sizeof err->message, message);
    }
    return code;
}

int sw__fail_null(sw_error *err, const char *field)
{
    char message[80];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, field);
    sw__line_add(&line, ": missing");
    return sw__fail(err, SW_ERR_NULL, field, message);
}

int sw__fail_memory(sw_error *err)
{
    return sw__fail(err, SW_ERR_MEMORY, "memory", "memory: there is none left");
}

int sw__fail_range(sw_error *err, const char *field, double value,
                   const char *unit, double low, double high)
{
    char message[200];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, field);
    sw__line_add(&line, ": ");
    sw__line_add_number(&line, value);
    if (unit[0])
        sw__line_add(&line, " ");
    sw__line_add(&line, unit);
    sw__line_add(&line, isnan(value) ? " is not a number; allowed "
                                     : " is outside the allowed range, ");
    sw__line_add_number(&line, low);
    sw__line_add(&line, " to ");
    sw__line_add_number(&line, high);
    if (unit[0])
        sw__line_add(&line, " ");
    sw__line_add(&line, unit);
    int code = isnan(value) ? SW_ERR_NAN : SW_ERR_RANGE;
    sw__fail(err, code, field, message);
    if (err) {
        err->low = low;
        err->high = high;
    }
    return code;
}

/* Wagner and Fischer's table, one row at a time; long names compare by their
 * first 31 characters. */
int sw__edits(const char *a, const char *b)
{
    enum { LONGEST = 31 };
    int row[LONGEST + 1];
    int n = 0;
    while (n < LONGEST && b[n])
        n++;
    for (int j = 0; j <= n; j++)
        row[j] = j;
    for (int i = 0; i < LONGEST && a[i]; i++) {
        int corner = row[0];
        row[0] = i + 1;
        for (int j = 0; j < n; j++) {
            int ca = a[i] >= 'a' && a[i] <= 'z' ? a[i] - 32 : a[i];
            int cb = b[j] >= 'a' && b[j] <= 'z' ? b[j] - 32 : b[j];
            int change = corner + (ca != cb);
            int best = row[j] < row[j + 1] ? row[j] + 1 : row[j + 1] + 1;
            corner = row[j + 1];
            row[j + 1] = change < best ? change : best;
        }
    }
    return row[n];
}
