/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Csv header: names and units of the columns, and "key: value" lines.
 *
 * A column of numbers carries its unit in one of these ways, the unit spelled
 * as anywhere in the library:
 *
 *   torque [N.m]    torque (ft-lbf)    torque_Nm    torque Nm
 *
 * A column of texts, and one of ratios, may go without.
 */
#include "base/csv_reader.h"

#include <strapwise/units.h>

#include <string.h>

static char folded(char c)
{
    if (c >= 'A' && c <= 'Z')
        return (char)(c + 32);
    return (char)(c == '_' || c == '-' ? ' ' : c);
}

/* Whether text starts with this name (n bytes): its length there, else 0. */
static size_t starts_with(const char *text, const char *name, size_t n)
{
    for (size_t i = 0; i < n; i++)
        if (folded(text[i]) != name[i])
            return 0;
    return n;
}

/* Length of the longest name of a column that a text starts with and that ends
 * at a blank, a bracket or the end. */
static size_t named(const sw__csv_column *c, const char *text)
{
    size_t best = 0;
    for (const char *name = c->name; name;) {
        const size_t n = strcspn(name, "|");
        const size_t used = n ? starts_with(text, name, n) : 0;
        const char after = folded(text[used]);
        if (used > best && (!after || strchr(" [(", after)))
            best = used;
        if (name == c->name)
            name = c->also;
        else
            name = name[n] ? name + n + 1 : NULL;
    }
    return best;
}

static int fail_unknown(const sw__csv_reader *r, const char *cell)
{
    char known[200];
    sw__line line = sw__line_start(known, sizeof known);
    for (const sw__csv_column *c = r->layout->column; c->name; c++) {
        sw__line_add(&line, c == r->layout->column ? "; known are " : ", ");
        sw__line_add(&line, c->name);
    }
    return sw__csv_say(r, SW_ERR_UNKNOWN, "header", "no column is called ",
                       cell, known);
}

/* The unit as it stands behind a name, in place; NULL where brackets do not
 * pair. */
static char *unit_in(char *rest)
{
    while (folded(*rest) == ' ')
        rest++;
    const size_t n = strlen(rest);
    if (rest[0] == '[' || rest[0] == '(') {
        if (n < 2 || rest[n - 1] != (rest[0] == '[' ? ']' : ')'))
            return NULL;
        rest[n - 1] = '\0';
        return sw__csv_trim(rest + 1);
    }
    for (char *c = rest; *c; c++) /* torque_in_lbf */
        if (*c == '_')
            *c = ' ';
    return rest;
}

static int fail_unit(const sw__csv_reader *r, const sw__csv_column *c,
                     const sw_error *fault)
{
    sw_error said = *fault;
    char *hint = strstr(said.message, "; write for example");
    if (hint) { /* how a header writes it, not a value */
        *hint = '\0';
        sw__line line = sw__line_start(hint, sizeof said.message -
                                                 (size_t)(hint - said.message));
        sw__line_add(&line, "; write for example ");
        sw__line_add(&line, c->name);
        sw__line_add(&line, " [");
        sw__line_add(&line, sw_kind_unit(c->kind));
        sw__line_add(&line, "]");
    }
    return sw__csv_fail(r, &said);
}

static int take_unit(sw__csv_reader *r, const sw__csv_column *c, char *rest)
{
    sw_error fault;
    const char *unit = unit_in(rest);
    if (!unit)
        return sw__csv_say(r, SW_ERR_UNIT, c->name,
                           "the bracket round the unit does not close", NULL,
                           "");
    if (!c->kind) {
        r->factor[r->columns] = 1;
        return unit[0] ? sw__csv_say(r, SW_ERR_UNIT, c->name,
                                     "a text has no unit, here ", unit, "")
                       : SW_OK;
    }
    const sw_quantity_out q = sw_unit_factor(unit, c->kind, c->name, &fault);
    r->factor[r->columns] = q.value;
    return q.status ? fail_unit(r, c, &fault) : SW_OK;
}

static int take_column(sw__csv_reader *r, char *cell)
{
    if (!cell[0])
        return sw__csv_say(r, SW_ERR_MISSING, "header", "a column has no name",
                           NULL, "");
    int best = -1;
    size_t used = 0;
    for (int i = 0; r->layout->column[i].name; i++) {
        const size_t n = named(&r->layout->column[i], cell);
        if (n > used) {
            best = i;
            used = n;
        }
    }
    if (best < 0)
        return fail_unknown(r, cell);
    for (int i = 0; i < r->columns; i++)
        if (r->column[i] == best)
            return sw__csv_say(r, SW_ERR_CONFLICT, r->layout->column[best].name,
                               "the column is there twice", NULL, "");
    r->column[r->columns] = best;
    const int status = take_unit(r, &r->layout->column[best], cell + used);
    r->columns += !status;
    return status;
}

/* The one kind of separator outside quoted cells; 0 when there are several. */
static char separator_of(const char *line)
{
    char found = 0;
    int start = 1; /* of a cell: there a quote opens */
    for (const char *c = line; *c; c++) {
        if (*c == '"' && start) {
            do
                c++;
            while (*c && *c != '"');
            if (!*c)
                break;
        }
        const int parts = strchr(",;\t", *c) != NULL;
        if (parts && found && *c != found)
            return 0;
        if (parts)
            found = *c;
        start = parts || (start && *c == ' ');
    }
    return (char)(found ? found : ',');
}

int sw__csv_take_header(sw__csv_reader *r, char *line)
{
    char *cell[SW__CSV_COLUMNS];
    int cells;
    r->separator = separator_of(line);
    if (!r->separator)
        return sw__csv_say(r, SW_ERR_SYNTAX, "header",
                           "comma, semicolon or tab parts the columns, only "
                           "one of them",
                           NULL, "");
    int status = sw__csv_split(r, line, cell, &cells);
    for (int i = 0; !status && i < cells; i++)
        status = take_column(r, cell[i]);
    for (int c = 0; !status && r->layout->column[c].name; c++) {
        int there = !r->layout->column[c].required;
        for (int i = 0; i < r->columns; i++)
            there |= r->column[i] == c;
        if (!there)
            status = sw__csv_say(r, SW_ERR_MISSING, r->layout->column[c].name,
                                 "there is no such column", NULL, "");
    }
    return status;
}

/* Letters, blanks and dashes up to a colon. */
int sw__csv_is_key(const char *line)
{
    const char *c = line;
    while ((folded(*c) >= 'a' && folded(*c) <= 'z') || folded(*c) == ' ')
        c++;
    return c > line && *c == ':';
}

int sw__csv_take_key(sw__csv_reader *r, char *line)
{
    char *value = strchr(line, ':');
    *value++ = '\0';
    const char *name = sw__csv_trim(line);
    /* the empty cells that a spreadsheet leaves behind it */
    for (size_t n = strlen(value); n > 0 && strchr(" \t,;", value[n - 1]);)
        value[--n] = '\0';
    value = sw__csv_trim(value);
    int key = 0;
    while (r->layout->key[key]) {
        const size_t n = strlen(r->layout->key[key]);
        if (starts_with(name, r->layout->key[key], n) && !name[n])
            break;
        key++;
    }
    if (!r->layout->key[key]) {
        char known[200];
        sw__line said = sw__line_start(known, sizeof known);
        for (int i = 0; r->layout->key[i]; i++) {
            sw__line_add(&said, i ? ", " : "; known are ");
            sw__line_add(&said, r->layout->key[i]);
        }
        return sw__csv_say(r, SW_ERR_UNKNOWN, "header", "nothing is called ",
                           name, known);
    }
    const char *field = r->layout->key[key];
    if (r->keys >> key & 1)
        return sw__csv_say(r, SW_ERR_CONFLICT, field, "is there twice", NULL,
                           "");
    if (!value[0] || strchr(value, '\t'))
        return sw__csv_say(r, SW_ERR_SYNTAX, field,
                           value[0] ? "has a tab in it" : "is empty", NULL, "");
    r->keys |= 1ul << key;
    sw_error fault;
    sw__clear(&fault);
    const int status = r->to->key(r->to->with, key, value, &fault);
    return status ? sw__csv_fail(r, &fault) : SW_OK;
}
