/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Job answers: what was read, for whoever asks.
 */
#include "job/job.h"

#include <string.h>

static int check_index(const sw_job *job, int index, int count, sw_error *err)
{
    sw__clear(err);
    if (!job)
        return sw__fail_null(err, "job");
    return index >= 0 && index < count
               ? SW_OK
               : sw__fail_range(err, "index", index, "", 0, count - 1);
}

sw_job_out sw_job_about(const sw_job *job, sw_error *err)
{
    sw_job_out out;
    sw__clear(err);
    if (job)
        return job->about;
    memset(&out, 0, sizeof out);
    sw__spoil(&out, SW_STRUCT_JOB_OUT, sw__fail_null(err, "job"));
    return out;
}

sw_job_corner_out sw_job_corner(const sw_job *job, int index, sw_error *err)
{
    sw_job_corner_out out;
    memset(&out, 0, sizeof out);
    const int status =
        check_index(job, index, job ? job->outline.corners : 0, err);
    if (status) {
        sw__spoil(&out, SW_STRUCT_JOB_CORNER_OUT, status);
        return out;
    }
    out.x_mm = job->outline.x[index];
    out.y_mm = job->outline.y[index];
    const int next = (index + 1) % job->outline.corners;
    out.edge_mm =
        hypot(job->outline.x[next] - out.x_mm, job->outline.y[next] - out.y_mm);
    return out;
}

sw_job_clamp_out sw_job_clamp(const sw_job *job, int index, sw_error *err)
{
    sw_job_clamp_out out;
    const int status = check_index(job, index, job ? job->clamps : 0, err);
    if (!status)
        return job->clamp[index].out;
    memset(&out, 0, sizeof out);
    sw__spoil(&out, SW_STRUCT_JOB_CLAMP_OUT, status);
    return out;
}

sw_job_operation_out sw_job_operation(const sw_job *job, int index,
                                      sw_error *err)
{
    sw_job_operation_out out;
    const int status = check_index(job, index, job ? job->operations : 0, err);
    if (!status)
        return job->operation[index].out;
    memset(&out, 0, sizeof out);
    sw__spoil(&out, SW_STRUCT_JOB_OPERATION_OUT, status);
    return out;
}

int sw_job_find_operation(const sw_job *job, const char *name)
{
    for (int i = 0; job && name && i < job->operations; i++)
        if (strcmp(job->operation[i].out.name, name) == 0)
            return i;
    return -1;
}

int sw_job_has_clamp(const sw_job *job, int operation, int clamp)
{
    return job && operation >= 0 && operation < job->operations && clamp >= 0 &&
           clamp < job->clamps && job->operation[operation].has[clamp];
}

int sw_job_hold_in(const sw_job *job, int operation, sw_hold_in *in,
                   sw_error *err)
{
    int status = check_index(job, operation, job ? job->operations : 0, err);
    if (!status && !in)
        status = sw__fail_null(err, "in");
    if (!status)
        *in = job->operation[operation].hold;
    return status;
}

sw_assumption sw_job_assumed(const sw_job *job, int index, sw_error *err)
{
    const int status = check_index(job, index, job ? job->assumptions : 0, err);
    return status ? sw__no_assumption(status) : job->assumed[index];
}

int sw_job_matters(const sw_job *job, int index)
{
    return job && index >= 0 && index < job->assumptions && !job->slight[index];
}

const char *sw_job_remark(const sw_job *job, int index)
{
    return job && index >= 0 && index < job->remarks ? job->remark[index]
                                                     : NULL;
}

const char *sw_job_not_checked(int index)
{
    static const char *const sentence[] = {
        "flatness: whether the part comes off as flat as it must",
        "what gives first on stud, strap and T-slot: ask strapwise weakest",
        "whether clamps, studs and cutter run into one another",
        "whether the tool's path is where the program takes it",
        "where it turns: the balance of faceplate, clamps and weights; the "
        "part's "
        "own pull is counted where a speed is given",
    };
    const int count = sizeof sentence / sizeof sentence[0];
    return index >= 0 && index < count ? sentence[index] : NULL;
}
