/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Remarks: sentences on what looks doubtful in a job and can be meant all the
 * same. What cannot be is refused where it is read.
 */
#include "job/job.h"

#include <stdlib.h>
#include <string.h>

int sw__job_remark(sw_job *job, const char *name, const char *words,
                   sw_error *err)
{
    char text[SW__JOB_REMARK];
    sw__line line = sw__line_start(text, sizeof text);
    sw__line_add(&line, name);
    sw__line_add(&line, ": ");
    sw__line_add(&line, words);
    for (int i = 0; i < job->remarks; i++)
        if (strcmp(job->remark[i], text) == 0)
            return SW_OK;
    if (job->remarks == job->remark_room) {
        const int room = job->remark_room ? 2 * job->remark_room : 8;
        void *more = realloc(job->remark, (size_t)room * sizeof *job->remark);
        if (!more)
            return sw__fail_memory(err);
        job->remark = more;
        job->remark_room = room;
    }
    memcpy(job->remark[job->remarks++], text, sizeof text);
    return SW_OK;
}

/* As many digits as somebody reads off a rule. */
static double read_off(double value, double step)
{
    return round(value / step) * step;
}

void sw__add_length(sw__line *line, double mm)
{
    sw__line_add_number(line, read_off(mm, mm < 10 ? 0.1 : 1));
    sw__line_add(line, " mm (");
    sw__line_add_number(line, read_off(mm / 25.4, mm < 10 ? 0.001 : 0.01));
    sw__line_add(line, " in)");
}
