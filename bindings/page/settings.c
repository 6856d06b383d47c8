/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Settings: lines "name=value" into a question, by the library's own list of
 * fields.
 */
#include "settings.h"

#include "../cli/topics.h"

#include <stdio.h>
#include <string.h>

static int fail(sw_error *err, int code, const char *field, const char *what)
{
    memset(err, 0, sizeof *err);
    err->code = code;
    snprintf(err->field, sizeof err->field, "%s", field);
    snprintf(err->message, sizeof err->message, "%s: %s", field, what);
    return code;
}

/* A plain number is in the library's unit. */
static sw_quantity_out number_of(const sw_field *f, const char *text,
                                 sw_error *err)
{
    const sw_quantity_out plain = sw_number(text, f->name, err);
    return plain.status ? sw_quantity(text, topic_kind(f->name), f->name, err)
                        : plain;
}

static int set(slot s, const char *text, sw_error *err)
{
    const sw_field *f = s.field;
    if (f->type == SW_FIELD_NUMBER) {
        const sw_quantity_out q = number_of(f, text, err);
        slot_set_number(s, q.value);
        return q.status;
    }
    if (f->type == SW_FIELD_WORD) {
        const int value = sw_word_value(f->words, text);
        slot_set_word(s, value);
        return value == SW_UNSET_WORD
                   ? fail(err, SW_ERR_UNKNOWN, f->name, "no such word")
                   : SW_OK;
    }
    return slot_set_text(s, text)
               ? SW_OK
               : fail(err, SW_ERR_SYNTAX, f->name, "text is too long");
}

static slot slot_of(settings *to, const char *name)
{
    static const sw_field plot = {"plot.width_px",
                                  "px",
                                  SW_FIELD_NUMBER,
                                  0,
                                  offsetof(settings, plot_px),
                                  sizeof(double),
                                  0,
                                  0,
                                  0,
                                  0,
                                  0,
                                  ""};
    if (strcmp(name, plot.name) == 0)
        return (slot){&plot, (char *)&to->plot_px};
    const int draws = strncmp(name, "draw.", 5) == 0;
    const sw_field *f =
        draws ? sw_field_named(SW_STRUCT_STRAP_DRAWING_IN, name + 5)
              : sw_field_named(SW_STRUCT_STRAP_IN, name);
    char *base = draws ? (char *)&to->drawing : (char *)&to->strap;
    return (slot){f, f ? base + f->offset : NULL};
}

static int read_line(const char *line, settings *to, sw_error *err)
{
    char name[48], value[200];
    const char *is = strchr(line, '=');
    if (!is || is == line || (size_t)(is - line) >= sizeof name ||
        strlen(is + 1) >= sizeof value)
        return fail(err, SW_ERR_SYNTAX, "settings", "name=value is wanted");
    memcpy(name, line, (size_t)(is - line));
    name[is - line] = '\0';
    strcpy(value, is + 1);
    const slot place = slot_of(to, name);
    if (!place.field)
        return fail(err, SW_ERR_UNKNOWN, name, "is no setting of a strap");
    return value[0] ? set(place, value, err) : SW_OK;
}

int settings_read(const char *lines, settings *to, sw_error *err)
{
    sw_strap_defaults(&to->strap);
    sw_strap_drawing_defaults(&to->drawing);
    to->plot_px = SW_UNSET;
    while (*lines) {
        char line[256];
        const size_t n = strcspn(lines, "\n");
        if (n >= sizeof line)
            return fail(err, SW_ERR_SYNTAX, "settings", "a line is too long");
        memcpy(line, lines, n);
        line[n] = '\0';
        const int status = n ? read_line(line, to, err) : SW_OK;
        if (status)
            return status;
        lines += n + (lines[n] == '\n');
    }
    return SW_OK;
}
