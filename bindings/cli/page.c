/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Page: text that grows until it is whole, with numbers that do not depend on
 * the locale.
 */
#include "cli.h"

#include <stdlib.h>
#include <string.h>

#define LINE_WIDTH 79

void page_add_n(page *p, const char *text, size_t n)
{
    if (p->failed)
        return;
    if (p->length + n + 1 > p->room) {
        size_t room = 2 * (p->length + n) + 256;
        char *more = realloc(p->text, room);
        if (!more) {
            p->failed = 1;
            return;
        }
        p->text = more;
        p->room = room;
    }
    memcpy(p->text + p->length, text, n);
    p->length += n;
    p->text[p->length] = '\0';
}

void page_add(page *p, const char *text) { page_add_n(p, text, strlen(text)); }

void page_number(page *p, double value, int digits)
{
    char text[40];
    page_add_n(p, text, sw_format(value, digits, text, sizeof text));
}

void page_fixed(page *p, double value, int decimals)
{
    char text[80];
    page_add_n(p, text, sw_format_fixed(value, decimals, text, sizeof text));
}

/* Bytes 10xxxxxx continue a character; KEEP counts as the blank it becomes. */
size_t columns(const char *text, size_t bytes)
{
    size_t n = 0;
    for (size_t i = 0; i < bytes; i++)
        n += ((unsigned char)text[i] & 0xc0) != 0x80;
    return n;
}

static size_t line_start(const page *p)
{
    size_t at = p->length;
    while (at > 0 && p->text[at - 1] != '\n')
        at--;
    return at;
}

void page_tab(page *p, size_t column)
{
    if (p->failed || !p->text)
        return;
    const size_t at = line_start(p);
    size_t now = columns(p->text + at, p->length - at);
    if (now >= column) { /* no room left: go on below */
        page_add(p, "\n");
        now = 0;
    }
    while (now++ < column)
        page_add(p, " ");
}

void page_wrap(page *p, size_t start, size_t indent)
{
    if (p->failed || !p->text)
        return;
    size_t line = start; /* where the line began, lead-in included */
    while (line > 0 && p->text[line - 1] != '\n')
        line--;
    size_t blank = 0; /* the last place where the line may break */
    for (size_t i = start; i < p->length; i++) {
        if (p->text[i] == '\n') {
            line = i + 1;
            blank = 0;
        } else if (p->text[i] == ' ' && i > line + indent) {
            blank = i;
        }
        if (blank && i > blank &&
            columns(p->text + line, i + 1 - line) > LINE_WIDTH) {
            const size_t shift = indent; /* the blank becomes the break */
            for (size_t k = 0; k < shift; k++)
                page_add(p, " ");
            if (p->failed)
                return;
            memmove(p->text + blank + 1 + shift, p->text + blank + 1,
                    p->length - shift - blank - 1);
            p->text[blank] = '\n';
            memset(p->text + blank + 1, ' ', shift);
            line = blank + 1;
            i = blank + shift;
            blank = 0;
        }
    }
}

void copy_cut(char *to, size_t room, const char *from)
{
    size_t n = 0;
    for (; from[n] && n + 1 < room; n++)
        to[n] = from[n];
    to[n] = '\0';
}

void page_free(page *p)
{
    free(p->text);
    memset(p, 0, sizeof *p);
}
