/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Input: a file that was named on the command line, whole.
 */
#include "cli.h"

#include <errno.h>
#include <stdio.h>
#include <string.h>

static int unreadable(const char *who, const char *name, int why)
{
    page line = {0};
    page_add(&line, "cannot read ");
    spell_quoted(&line, name);
    page_add(&line, ": ");
    page_add(&line, why ? strerror(why) : "input error");
    return complain_page(NOT_FINISHED, who, &line);
}

/* More than any file of pairs, tools or cases; a device has no end. */
enum { LONGEST = 5 << 20 };

int read_file(const char *who, const char *name, page *text)
{
    char piece[4096];
    const int standard = strcmp(name, "-") == 0;
    errno = 0;
    FILE *file = standard ? stdin : fopen(name, "rb");
    if (!file)
        return unreadable(who, name, errno);
    size_t n;
    while (text->length < LONGEST &&
           (n = fread(piece, 1, sizeof piece, file)) > 0)
        page_add_n(text, piece, n);
    const int why = errno, bad = ferror(file);
    if (!standard)
        fclose(file);
    if (bad)
        return unreadable(who, name, why);
    if (text->length >= LONGEST)
        return complain(BAD_INPUT, who, name, ": is longer than 5 MB",
                        (char *)NULL);
    return text->failed
               ? complain(NOT_FINISHED, who, "out of memory", (char *)NULL)
               : DONE;
}
