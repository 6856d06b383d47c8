/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Letters: what may stand in a job file at all. UTF-8, lines ended by LF or
 * CR LF, no control characters; so a line and a column are what an editor
 * shows, and no message carries anything that moves a cursor.
 */
#include "base/utf8.h"
#include "job/tree.h"

#include <string.h>

/* What is wrong with the character here, NULL for nothing. */
static const char *fault_of(const char *c, size_t bytes, size_t left, int first)
{
    const unsigned char byte = (unsigned char)*c;
    if (bytes == 0)
        return "this is no UTF-8; save the file as UTF-8";
    if (byte == '\t')
        return "there is a tab; use blanks";
    if (byte == '\0')
        return "there is a zero byte; save the file as UTF-8 text";
    if (byte == '\r')
        return left > 1 && c[1] == '\n'
                   ? NULL
                   : "a line ends here with a bare carriage return; save the "
                     "file with line ends of its system";
    if ((byte < 0x20 && byte != '\n') || byte == 0x7f ||
        (byte == 0xc2 && (unsigned char)c[1] < 0xa0))
        return "there is a control character";
    if (bytes == 3 && memcmp(c, "\xef\xbb\xbf", 3) == 0)
        return first ? NULL : "there is an invisible byte order mark";
    if (bytes == 3 && memcmp(c, "\xe2\x80", 2) == 0) {
        const unsigned char last = (unsigned char)c[2];
        if (last == 0xa8 || last == 0xa9)
            return "there is an invisible line separator";
        if ((last >= 0x8b && last <= 0x8f) || (last >= 0xaa && last <= 0xae))
            return "there is an invisible character";
    }
    if (bytes == 2 && memcmp(c, "\xc2\xa0", 2) == 0)
        return "there is a no-break space; use a plain blank";
    return NULL;
}

int sw__letters_check(const char *text, size_t length, const char *file,
                      sw_error *err)
{
    sw__place at = {1, 1};
    if (length > SW__TREE_LONGEST)
        return sw__blame(err, file, at, SW_ERR_RANGE, "file",
                         "the file is longer than 256 KiB");
    for (size_t i = 0; i < length;) {
        const size_t bytes = sw__utf8(text + i, length - i);
        const char *fault = fault_of(text + i, bytes, length - i, i == 0);
        if (fault)
            return sw__blame(err, file, at, SW_ERR_SYNTAX, "file", fault);
        if (text[i] == '\n') {
            at.line++;
            at.column = 1;
        } else {
            at.column++;
        }
        i += bytes;
    }
    return SW_OK;
}
