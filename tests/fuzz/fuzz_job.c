/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fuzz target: a job file, everything that is told of it, and its fixtures.
 *
 * Built and run by run.sh.
 */
#include "must.h"

#include <strapwise-fixture.h>

#include <stddef.h>
#include <stdint.h>

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

static void check_clamps(const sw_job *job)
{
    for (int i = 0; i < (int)sw_job_about(job, NULL).clamps; i++) {
        sw_error err;
        const sw_job_clamp_out c = sw_job_clamp(job, i, &err);
        check_record(&err, c.status);
        check_result(&c, SW_STRUCT_JOB_CLAMP_OUT, c.status);
        must(c.force_low_N >= 0 && c.force_low_N <= c.force_high_N &&
                 c.pull_low_N <= c.pull_high_N && c.drag_low_N <= c.drag_high_N,
             "%s: an end on the wrong side", c.name);
    }
}

static void check_operation(const sw_job *job, int index)
{
    sw_error err;
    const sw_job_operation_out o = sw_job_operation(job, index, &err);
    check_result(&o, SW_STRUCT_JOB_OPERATION_OUT, o.status);
    must(o.points >= 1 && o.samples >= 1 && o.loads <= 100000,
         "%g points, %g samples", o.points, o.samples);
    must(sw_job_find_operation(job, o.name) == index, "\"%s\" is lost", o.name);
    sw_fixture *f = sw_job_fixture(job, index, &err);
    must(f, "no fixture: %s", err.message);
    must(sw_fixture_count(f, SW_PART_LOAD) == (int)o.loads, "loads are lost");
    sw_fixture_free(f);
}

static void check_job(const sw_job *job)
{
    const sw_job_out a = sw_job_about(job, NULL);
    check_result(&a, SW_STRUCT_JOB_OUT, a.status);
    must(a.area_mm2 > 0 && a.supports >= 1 && a.operations >= 1, "nothing");
    check_clamps(job);
    for (int i = 0; i < (int)a.operations; i++)
        check_operation(job, i);
    for (int i = 0;; i++) {
        const sw_assumption d = sw_job_assumed(job, i, NULL);
        if (d.status)
            break;
        must(d.name[0] && (d.word[0] || isfinite(d.value)), "default %d", i);
    }
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    sw_error err;
    /* no larger than the text, so that a read past its end is seen */
    char *text = malloc(size ? size : 1);
    if (!text)
        return 0;
    if (size)
        memcpy(text, data, size);
    sw_job *job = sw_job_read(text, size, "job.yaml", &err);
    check_record(&err, job ? SW_OK : err.code);
    if (job)
        check_job(job);
    else
        must(err.code && (strncmp(err.message, "job.yaml:", 9) == 0 ||
                          err.code == SW_ERR_MEMORY),
             "%s", err.message);
    sw_job_free(job);
    free(text);
    return 0;
}
