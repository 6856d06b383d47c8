/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Csv: tables that people keep in a spreadsheet or a text editor.
 *
 *   # shaper fixture, oiled studs            comment
 *   thread: M12                              key: value, before the header
 *   torque [N.m]; force [kN]; note           header: name and unit
 *   20; 8.31; new stud                       row
 *
 * UTF-8, with or without byte order mark; lines end with LF or CRLF; blank
 * lines, and rows with nothing but separators, are skipped. The separator,
 * comma, semicolon or tab, is the one that the header has; the header alone
 * decides. A cell may be enclosed in double quotes, a quote in it is written
 * twice. Numbers have a point as decimal mark; the unit stands in the header
 * (csv_header.c). A cell of a column that is not required may be empty.
 *
 * Strict: what is not exactly so is refused with file and line, and nothing is
 * guessed. No line may be longer than SW__CSV_LINE bytes, no file longer than
 * SW__CSV_BYTES or SW__CSV_ROWS rows. Nothing is allocated.
 *
 * Not in it: cells with line breaks in them.
 */
#include "base/csv_reader.h"

#include "base/utf8.h"

#include <strapwise/units.h>

#include <string.h>

char *sw__csv_trim(char *text)
{
    while (*text == ' ')
        text++;
    size_t n = strlen(text);
    while (n > 0 && text[n - 1] == ' ')
        n--;
    text[n] = '\0';
    return text;
}

/* A quoted cell from behind its first quote; NULL when it does not end, or not
 * at a separator. Moves *at to that separator or to the end. */
static char *quoted_cell(char **at, char separator)
{
    char *const start = *at, *to = start, *from = start;
    int closed = 0;
    for (; *from && !closed; from++) {
        if (*from == '"' && from[1] != '"')
            closed = 1;
        else
            *to++ = *from == '"' ? *++from : *from;
    }
    while (*from == ' ')
        from++;
    if (!closed || (*from && *from != separator))
        return NULL;
    *to = '\0';
    *at = from;
    return start;
}

int sw__csv_split(const sw__csv_reader *r, char *line, char **cell, int *cells)
{
    *cells = 0;
    for (char *at = line;;) {
        char *start = at;
        while (*start == ' ')
            start++;
        if (*cells == SW__CSV_COLUMNS)
            return sw__csv_say(r, SW_ERR_SYNTAX, "row", "more than 16 cells",
                               NULL, "");
        if (*start == '"') {
            at = start + 1;
            cell[*cells] = quoted_cell(&at, r->separator);
            if (!cell[*cells])
                return sw__csv_say(r, SW_ERR_SYNTAX, "row",
                                   "a quoted cell does not end at a quote and "
                                   "a separator",
                                   NULL, "");
        } else {
            while (*at && *at != r->separator)
                at++;
            cell[*cells] = start;
        }
        const int last = !*at;
        *at++ = '\0';
        cell[*cells] = sw__csv_trim(cell[*cells]);
        if (strchr(cell[*cells], '\t'))
            return sw__csv_say(r, SW_ERR_SYNTAX, "row",
                               "a tab within a cell: ", cell[*cells], "");
        ++*cells;
        if (last)
            return SW_OK;
    }
}

static int all_empty(char *const *cell, int cells)
{
    for (int i = 0; i < cells; i++)
        if (cell[i][0])
            return 0;
    return 1;
}

static int fail_count(const sw__csv_reader *r, int cells)
{
    char message[160];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add_number(&line, cells);
    sw__line_add(&line, cells == 1 ? " cell where the header has "
                                   : " cells where the header has ");
    sw__line_add_number(&line, r->columns);
    if (cells > r->columns && r->separator == ',')
        sw__line_add(&line, "; write the decimal mark as a point, and a text "
                            "with a comma in quotes");
    return sw__csv_say(r, SW_ERR_SYNTAX, "row", message, NULL, "");
}

static int take_number(sw__csv_reader *r, const sw__csv_column *c,
                       const char *cell, double factor, double *value)
{
    sw_error fault;
    const sw_quantity_out q = sw_number(cell, c->name, &fault);
    if (q.status)
        return sw__csv_fail(r, &fault);
    *value = q.value * factor;
    if (!(*value >= c->least && *value <= c->most)) {
        sw__fail_range(&fault, c->name, *value, sw_kind_unit(c->kind), c->least,
                       c->most);
        return sw__csv_fail(r, &fault);
    }
    return SW_OK;
}

static int take_cells(sw__csv_reader *r, char *const *cell)
{
    sw__csv_row row = {.line = r->line};
    for (int i = 0; i < SW__CSV_COLUMNS; i++) {
        row.number[i] = SW_UNSET;
        row.text[i] = "";
        row.factor[i] = 0;
    }
    for (int i = 0; i < r->columns; i++) {
        const sw__csv_column *c = &r->layout->column[r->column[i]];
        int status = SW_OK;
        row.factor[r->column[i]] = r->factor[i];
        if (!cell[i][0] && c->required)
            return sw__csv_say(r, SW_ERR_MISSING, c->name, "the cell is empty",
                               NULL, "");
        if (cell[i][0] && c->kind)
            status = take_number(r, c, cell[i], r->factor[i],
                                 &row.number[r->column[i]]);
        else
            row.text[r->column[i]] = cell[i];
        if (status)
            return status;
    }
    sw_error fault;
    sw__clear(&fault);
    const int status = r->to->row(r->to->with, &row, &fault);
    return status ? sw__csv_fail(r, &fault) : SW_OK;
}

static int take_row(sw__csv_reader *r, char *line)
{
    char *cell[SW__CSV_COLUMNS];
    int cells;
    const int status = sw__csv_split(r, line, cell, &cells);
    if (status || all_empty(cell, cells))
        return status;
    if (cells != r->columns)
        return fail_count(r, cells);
    if (r->rows == SW__CSV_ROWS)
        return sw__csv_say(r, SW_ERR_RANGE, "row",
                           "more than 10000 rows are not read", NULL, "");
    r->rows++;
    return take_cells(r, cell);
}

/* Only text, in UTF-8. */
static int check_bytes(const sw__csv_reader *r, const char *line, size_t n)
{
    for (size_t i = 0; i < n;) {
        const size_t bytes = sw__utf8(line + i, n - i);
        const unsigned char c = (unsigned char)line[i];
        if (!bytes)
            return sw__csv_say(r, SW_ERR_SYNTAX, "line",
                               "is not UTF-8; save the file as UTF-8", NULL,
                               "");
        if ((c < 0x20 && c != '\t') || c == 0x7f)
            return sw__csv_say(r, SW_ERR_SYNTAX, "line",
                               "has a control byte in it", NULL, "");
        i += bytes;
    }
    return SW_OK;
}

static int take_line(sw__csv_reader *r, const char *from, size_t n)
{
    char line[SW__CSV_LINE + 1];
    if (n > 0 && from[n - 1] == '\r')
        n--;
    if (n > SW__CSV_LINE)
        return sw__csv_say(r, SW_ERR_RANGE, "line",
                           "longer than 1000 bytes is not read", NULL, "");
    const int status = check_bytes(r, from, n);
    if (status)
        return status;
    memcpy(line, from, n);
    line[n] = '\0';
    const char *first = line + strspn(line, " \t");
    if (!*first || *first == '#')
        return SW_OK;
    if (r->separator)
        return take_row(r, line);
    if (!first[strspn(first, " \t,;")])
        return SW_OK; /* a blank row of a spreadsheet */
    return sw__csv_is_key(line) ? sw__csv_take_key(r, line)
                                : sw__csv_take_header(r, line);
}

int sw__csv_read(const sw__csv_layout *layout, const char *text, size_t length,
                 const char *file, const sw__csv_taker *to, sw_error *err)
{
    sw__csv_reader r = {
        .layout = layout, .to = to, .file = file, .err = err, .line = 1};
    sw__clear(err);
    if (length > SW__CSV_BYTES)
        return sw__csv_say(&r, SW_ERR_RANGE, "file",
                           "larger than 4 MB is not read", NULL, "");
    const char *at = text, *const end = text + length;
    if (length >= 3 && memcmp(text, "\xef\xbb\xbf", 3) == 0)
        at += 3;
    for (; at < end; r.line++) {
        const char *stop = memchr(at, '\n', (size_t)(end - at));
        const char *next = stop ? stop + 1 : end;
        const int status =
            take_line(&r, at, (size_t)((stop ? stop : end) - at));
        if (status)
            return status;
        at = next;
    }
    if (r.line > 1)
        r.line--; /* the last one */
    if (!r.separator)
        return sw__csv_say(&r, SW_ERR_MISSING, "file", "there is no header",
                           NULL, "");
    if (!r.rows)
        return sw__csv_say(&r, SW_ERR_MISSING, "file",
                           "there is no row below the header", NULL, "");
    return SW_OK;
}
