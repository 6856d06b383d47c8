/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Job file: reads the one that was named.
 */
#include "job.h"

#include <string.h>

int job_complain(const request *r, const sw_error *err)
{
    return complain(err->code == SW_ERR_MEMORY ? NOT_FINISHED : BAD_INPUT,
                    r->command->name, err->message, (char *)NULL);
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
        *job =
            sw_job_read(text.text ? text.text : "", text.length,
                        strcmp(name, "-") == 0 ? "standard input" : name, &err);
        if (!*job)
            status = job_complain(r, &err);
    }
    page_free(&text);
    return status;
}
