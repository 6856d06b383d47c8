/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Job file: reads the one that was named. A job written in inches is answered
 * with inches first, unless --units says otherwise.
 */
#include "job.h"

#include <string.h>

int job_complain(const request *r, const sw_error *err)
{
    return complain(err->code == SW_ERR_MEMORY ? NOT_FINISHED : BAD_INPUT,
                    r->command->name, err->message, (char *)NULL);
}

/* How many lengths of a line are written in this unit: a number, blanks, the
 * unit, and no further letter (in-lbf is no length). */
static int lengths_in(const char *line, size_t n, const char *unit)
{
    const size_t m = strlen(unit);
    int found = 0;
    for (size_t i = 0; i < n; i++) {
        if (line[i] < '0' || line[i] > '9')
            continue;
        size_t k = i + 1;
        while (k < n && line[k] == ' ')
            k++;
        if (k + m <= n && memcmp(line + k, unit, m) == 0 &&
            (k + m == n || strchr(" ,]}\"'\r", line[k + m])))
            found++;
    }
    return found;
}

/* Whether most lengths of a job are written in inches. */
static int in_inches(const page *text)
{
    const char *at = text->text ? text->text : "";
    int inch = 0, metric = 0;
    while (*at) {
        const size_t line = strcspn(at, "\n");
        size_t n = 0; /* up to a remark */
        while (n < line && at[n] != '#')
            n++;
        inch += lengths_in(at, n, "in") + lengths_in(at, n, "inch");
        metric += lengths_in(at, n, "mm") + lengths_in(at, n, "cm") +
                  lengths_in(at, n, "m");
        at += line + (at[line] == '\n');
    }
    return inch > metric;
}

int job_read(request *r, sw_job **job)
{
    page text = {0};
    sw_error err;
    *job = NULL;
    if (r->files != 1)
        return complain(BAD_INPUT, r->command->name,
                        r->files ? "one job file at a time"
                                 : "JOB: missing; name the job file",
                        (char *)NULL);
    const char *name = r->file[0];
    int status = read_file(r->command->name, name, &text);
    if (!status) {
        if (!r->units)
            r->us = in_inches(&text);
        *job =
            sw_job_read(text.text ? text.text : "", text.length,
                        strcmp(name, "-") == 0 ? "standard input" : name, &err);
        if (!*job)
            status = job_complain(r, &err);
    }
    page_free(&text);
    return status;
}
