/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tools: the torque tools of the job, by what the shop calls them.
 */
#include "job/job.h"

#include <string.h>

typedef struct {
    char *name;
    size_t room;
} named;

static int take_name(sw__reader *r, int node, void *with)
{
    const named *n = with;
    return sw__take_text(r, node, "name", n->name, n->room);
}

static int take_tool(sw_job *job, sw__reader *r, int map)
{
    static const sw__special key[] = {{"name", take_name}, {NULL, NULL}};
    static const sw__alias alias[] = {{"tool_kind", "kind"}, {NULL, NULL}};
    sw__job_tool t;
    sw_error inner;
    memset(&t, 0, sizeof t);
    named n = {t.name, sizeof t.name};
    sw_tool_defaults(&t.in);
    const sw__form form = {SW_STRUCT_TOOL_IN, &t.in, " torque_Nm", alias};
    const sw__shape shape = {.what = "a tool",
                             .form = &form,
                             .forms = 1,
                             .special = key,
                             .with = &n};
    int status = sw__read_map(r, map, &shape);
    if (status)
        return status;
    if (!t.name[0] && !t.in.tool[0])
        return sw__fail_key(r, map, SW_ERR_MISSING, "name",
                            "a tool needs a name, by which a clamp can name "
                            "it");
    if (!t.name[0])
        sw__copy(t.name, sizeof t.name, t.in.tool);
    status =
        sw__job_check_name(r, map, t.name, job->tool, sizeof t, job->tools);
    if (status)
        return status;
    /* a torque in the middle of the scale, to see whether the rest stands */
    sw_tool_in probe = t.in;
    probe.torque_Nm = 1;
    if (sw_tool_resolve(&probe, &inner))
        return sw__fail_inner(r, map, &shape, &inner);
    job->tool[job->tools++] = t;
    return SW_OK;
}

int sw__job_tools(sw_job *job, sw__reader *r, int list)
{
    return sw__job_each(job, r, list, "tools", SW__JOB_TOOLS, take_tool);
}
