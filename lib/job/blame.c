/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Blame: where in a job file something is wrong, and what.
 */
#include "job/blame.h"

#include "base/utf8.h"

#include <string.h>

enum { FILE_SHOWN = 60 };

/* User's file names may hold anything; a message is one line of text. */
static void add_file(sw__line *line, const char *file)
{
    char shown[FILE_SHOWN + 4];
    size_t n = strlen(file), at = 0;
    if (n > FILE_SHOWN) {
        at = n - FILE_SHOWN + 3;
        sw__line_add(line, "...");
        while (((unsigned char)file[at] & 0xc0) == 0x80)
            at++; /* not into the middle of a character */
    }
    size_t m = 0;
    while (file[at]) {
        const size_t bytes = sw__utf8(file + at, n - at);
        const unsigned char c = (unsigned char)file[at];
        if (bytes == 0 || c < 0x20 || c == 0x7f) {
            shown[m++] = '?';
            at++;
        } else {
            memcpy(shown + m, file + at, bytes);
            m += bytes;
            at += bytes;
        }
    }
    shown[m] = '\0';
    sw__line_add(line, shown);
}

int sw__blame(sw_error *err, const char *file, sw__place at, int code,
              const char *field, const char *message)
{
    char text[256];
    sw__line line = sw__line_start(text, sizeof text);
    add_file(&line, file && file[0] ? file : "job");
    sw__line_add(&line, ":");
    sw__line_add_number(&line, at.line);
    sw__line_add(&line, ":");
    sw__line_add_number(&line, at.column);
    sw__line_add(&line, ": ");
    sw__line_add(&line, message);
    return sw__fail(err, code, field, text);
}
