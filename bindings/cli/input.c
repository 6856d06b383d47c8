/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Input: a file that was named on the command line, whole.
 */
#include "cli.h"

#include <errno.h>
#include <stdio.h>
#include <string.h>

static int unreadable(const char *who, const char *name)
{
    const int why = errno;
    page line = {0};
    page_add(&line, name);
    page_add(&line, ": ");
    page_add(&line, why ? strerror(why) : "cannot be read");
    return complain_page(BAD_INPUT, who, &line);
}

int read_file(const char *who, const char *name, page *text)
{
    char piece[4096];
    errno = 0;
    FILE *file = fopen(name, "rb");
    if (!file)
        return unreadable(who, name);
    size_t n;
    while ((n = fread(piece, 1, sizeof piece, file)) > 0)
        page_add_n(text, piece, n);
    const int bad = ferror(file);
    fclose(file);
    return bad ? unreadable(who, name) : DONE;
}
