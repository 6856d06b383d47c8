/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Csv fault: the one line that says where a file is wrong and how,
 * "pairs.csv:7: force: ...".
 */
#include "base/csv_reader.h"

#include "base/utf8.h"

#include <string.h>

/* The last part of a long file name, control bytes and broken text as '?'. */
static void add_file(sw__line *line, const char *file)
{
    enum { SHOWN = 60 };
    size_t n = strlen(file), at = 0;
    if (n > SHOWN) {
        at = n - SHOWN;
        while (at < n && ((unsigned char)file[at] & 0xc0) == 0x80)
            at++;
        sw__line_add(line, "...");
    }
    while (at < n) {
        char shown[5] = "?";
        const size_t bytes = sw__utf8(file + at, n - at);
        if (bytes > 1 || (bytes == 1 && file[at] >= 0x20 && file[at] != 0x7f)) {
            memcpy(shown, file + at, bytes);
            shown[bytes] = '\0';
        }
        sw__line_add(line, shown);
        at += bytes ? bytes : 1;
    }
}

int sw__csv_fail(const sw__csv_reader *r, const sw_error *fault)
{
    char message[sizeof fault->message];
    sw__line line = sw__line_start(message, sizeof message);
    if (r->file && r->file[0])
        add_file(&line, r->file);
    else
        sw__line_add(&line, "line ");
    if (r->file && r->file[0])
        sw__line_add(&line, ":");
    sw__line_add_number(&line, r->line);
    sw__line_add(&line, ": ");
    sw__line_add(&line, fault->message);
    sw__fail(r->err, fault->code, fault->field, message);
    if (r->err) {
        r->err->low = fault->low;
        r->err->high = fault->high;
    }
    return fault->code;
}

int sw__csv_say(const sw__csv_reader *r, int code, const char *field,
                const char *before, const char *quoted, const char *after)
{
    sw_error fault;
    char message[240];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, field);
    sw__line_add(&line, ": ");
    sw__line_add(&line, before);
    if (quoted)
        sw__line_add_quoted(&line, quoted);
    sw__line_add(&line, after);
    sw__fail(&fault, code, field, message);
    return sw__csv_fail(r, &fault);
}
