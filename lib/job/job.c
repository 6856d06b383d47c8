/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Job: a job file, read from the outside in.
 *
 * The file is YAML as far as tree.c takes it: keys with values, lists with
 * dashes or in brackets, remarks behind a #. Every quantity has its unit.
 *
 *   strapwise: 1            version of the format, required
 *   part:                   name, material, size or outline, thickness, raised,
 *                           weight or mass or density, center of gravity
 *   friction:               supports, stops, toes: for all that do not say
 *                           their own
 *   supports:               list: place, and the fields of sw_support_in
 *   stops:                  list: place, push, and the fields of sw_stop_in
 *   tools:                  list: name, and the fields of sw_tool_in
 *   clamps:                 list: kind, place, toward stud, tool, pad, and the
 *                           fields of sw_clamp_in and of the kind's struct;
 *                           a screw has a grade, a bar a second place
 *   operations:             list: name, clamps, cut, path, and the fields of
 *                           sw_hold_in
 *
 * Frame: x and y in the table, z up; a part with a size has a corner at 0, 0;
 * heights from the plane of the supports.
 *
 * The sections may stand in any order and are read in the order above, since
 * later ones look into earlier ones.
 */
#include "job/job.h"

#include <stdlib.h>
#include <string.h>

typedef struct {
    const char *key;
    int (*read)(sw_job *job, sw__reader *r, int node);
    const char *missing; /* NULL: may be left out */
} section;

static const section all[] = {
    {"part", sw__job_part,
     "the part is missing: part, with size, thickness and material below it"},
    {"friction", sw__job_friction, NULL},
    {"supports", sw__job_supports,
     "there are no supports; without them nothing carries the part"},
    {"stops", sw__job_stops, NULL},
    {"tools", sw__job_tools, NULL},
    {"clamps", sw__job_clamps, NULL},
    {"operations", sw__job_operations,
     "there are no operations: what is cut, and where"},
};
enum { SECTIONS = sizeof all / sizeof all[0] };

static int keep(sw__reader *r, int node, void *with)
{
    (void)r;
    (void)node;
    (void)with;
    return SW_OK;
}

static int check_version(sw__reader *r)
{
    int status = SW_OK;
    if (r->tree->node[0].kind != SW__TREE_MAP)
        return sw__fail_at(r, 0, SW_ERR_SYNTAX, "strapwise",
                           "this is no job file: it begins with strapwise: 1, "
                           "then part, supports, clamps, operations");
    const int node = sw__child(r, 0, "strapwise");
    if (!node)
        return sw__fail_at(r, 0, SW_ERR_MISSING, "strapwise",
                           "the first line of a job file is strapwise: 1");
    char version[32];
    status = sw__take_text(r, node, "strapwise", version, sizeof version);
    if (status || strcmp(version, "1") == 0)
        return status;
    return sw__fail_text(r, node, SW_ERR_UNKNOWN, "strapwise",
                         "strapwise: this library reads version 1 of the "
                         "format, not ",
                         version, "");
}

static int read_sections(sw_job *job, sw__reader *r)
{
    static const sw__special key[] = {
        {"strapwise", keep}, {"part", keep},       {"friction", keep},
        {"supports", keep},  {"stops", keep},      {"tools", keep},
        {"clamps", keep},    {"operations", keep}, {NULL, NULL}};
    const sw__shape shape = {
        .what = "a job", .special = key, .reserved = "flat,plan,sheet,"};
    int status = check_version(r);
    if (!status)
        status = sw__read_map(r, 0, &shape);
    for (int i = 0; i < SECTIONS && !status; i++) {
        const int node = sw__child(r, 0, all[i].key);
        if (node)
            status = all[i].read(job, r, node);
        else if (all[i].missing)
            status =
                sw__fail_at(r, 0, SW_ERR_MISSING, all[i].key, all[i].missing);
    }
    return status;
}

/* What only the whole tells. */
static int check_whole(sw_job *job, sw__reader *r)
{
    sw_job_out *a = &job->about;
    if (!job->supports)
        return sw__fail_at(r, sw__child(r, 0, "supports"), SW_ERR_MISSING,
                           "supports",
                           "supports: there are none in the list; without "
                           "them nothing carries the part");
    if (!job->operations)
        return sw__fail_at(r, sw__child(r, 0, "operations"), SW_ERR_MISSING,
                           "operations",
                           "operations: there are none in the list");
    for (int i = 0; i < job->operations; i++)
        if (job->operation[i].out.clamps == 0 && a->weight_N == 0)
            return sw__fail_at(r, sw__child(r, 0, "operations"), SW_ERR_MISSING,
                               "clamps",
                               "clamps: an operation without clamps, on a "
                               "part without weight, holds nothing");
    a->supports = job->supports;
    a->stops = job->stops;
    a->clamps = job->clamps;
    a->operations = job->operations;
    return SW_OK;
}

sw_job *sw_job_read(const char *text, size_t length, const char *file,
                    sw_error *err)
{
    sw_error told;
    sw__tree tree;
    sw__clear(err);
    sw__clear(&told);
    if (!text) {
        sw__fail_null(err, "text");
        return NULL;
    }
    sw__reader r = {&tree, file, &told};
    sw_job *job = NULL;
    int status = sw__tree_read(&tree, text, length, file, &told);
    if (!status && !(job = calloc(1, sizeof *job)))
        status = sw__fail_memory(&told);
    if (!status) {
        job->toe_friction = job->support_friction = job->stop_friction =
            SW_UNSET;
        status = read_sections(job, &r);
    }
    if (!status)
        status = check_whole(job, &r);
    sw__tree_free(&tree);
    if (!status)
        return job;
    if (err)
        *err = told;
    sw_job_free(job);
    return NULL;
}

void sw_job_free(sw_job *job)
{
    if (!job)
        return;
    for (int i = 0; i < SW__JOB_OPERATIONS; i++)
        free(job->operation[i].point);
    free(job->assumed);
    free(job->slight);
    free(job->remark);
    free(job);
}
