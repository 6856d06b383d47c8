/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Json: writes one JSON object, two blanks a level, one key a line.
 */
#include "cli.h"

#include <math.h>
#include <string.h>

#define DIGITS 12

int is_known(double value) { return isfinite(value) && value != SW_UNSET; }

static void indent(json *j)
{
    for (int i = 0; i < j->depth; i++)
        page_add(j->page, "  ");
}

/* Bytes of the UTF-8 character at `c`, 0 when it is none. */
static size_t utf8_length(const unsigned char *c)
{
    size_t n = c[0] < 0x80                    ? 1
               : c[0] >= 0xc2 && c[0] < 0xe0  ? 2
               : c[0] >= 0xe0 && c[0] < 0xf0  ? 3
               : c[0] >= 0xf0 && c[0] <= 0xf4 ? 4
                                              : 0;
    for (size_t i = 1; i < n; i++)
        if ((c[i] & 0xc0) != 0x80)
            return 0;
    /* too long a form, half a pair, past the last character */
    if ((c[0] == 0xe0 && c[1] < 0xa0) || (c[0] == 0xed && c[1] > 0x9f) ||
        (c[0] == 0xf0 && c[1] < 0x90) || (c[0] == 0xf4 && c[1] > 0x8f))
        return 0;
    return n;
}

static void string(json *j, const char *text)
{
    static const char hex[] = "0123456789abcdef";
    page_add(j->page, "\"");
    for (const char *c = text; *c;) {
        const unsigned char byte = (unsigned char)*c;
        const size_t n = utf8_length((const unsigned char *)c);
        if (byte == '"' || byte == '\\') {
            page_add(j->page, "\\");
            page_add_n(j->page, c, 1);
        } else if (byte < 0x20) {
            const char escape[] = {'\\',           'u',           '0', '0',
                                   hex[byte >> 4], hex[byte & 15]};
            page_add_n(j->page, escape, sizeof escape);
        } else if (n) {
            page_add_n(j->page, c, n);
        } else {
            page_add(j->page, "\xef\xbf\xbd"); /* replacement character */
        }
        c += n ? n : 1;
    }
    page_add(j->page, "\"");
}

json json_start(page *p)
{
    json j = {p, 1, 1};
    page_add(p, "{");
    return j;
}

void json_end(json *j) { page_add(j->page, "\n}\n"); }

void json_key(json *j, const char *key)
{
    page_add(j->page, j->first ? "\n" : ",\n");
    j->first = 0;
    indent(j);
    if (key) {
        string(j, key);
        page_add(j->page, ": ");
    }
}

void json_number(json *j, const char *key, double value)
{
    json_key(j, key);
    if (is_known(value))
        page_number(j->page, value, DIGITS);
    else
        page_add(j->page, "null");
}

void json_int(json *j, const char *key, int value)
{
    json_key(j, key);
    page_number(j->page, value, 15);
}

void json_text(json *j, const char *key, const char *text)
{
    json_key(j, key);
    if (text)
        string(j, text);
    else
        page_add(j->page, "null");
}

void json_open(json *j, const char *key, char bracket)
{
    json_key(j, key);
    page_add_n(j->page, &bracket, 1);
    j->first = 1;
    j->depth++;
}

void json_close(json *j, char bracket)
{
    j->depth--;
    if (!j->first) {
        page_add(j->page, "\n");
        indent(j);
    }
    page_add_n(j->page, &bracket, 1);
    j->first = 0;
}
