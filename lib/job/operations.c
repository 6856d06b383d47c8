/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Operations: which clamps hold while which cut goes along which path.
 */
#include "job/operation.h"

#include <string.h>

typedef struct {
    sw_job *job;
    sw__job_operation *op;
    int clamps, cut, path; /* nodes */
} draft;

static int take_name(sw__reader *r, int node, void *with)
{
    sw_job_operation_out *o = &((draft *)with)->op->out;
    return sw__take_text(r, node, "name", o->name, sizeof o->name);
}

static int keep_clamps(sw__reader *r, int node, void *with)
{
    (void)r;
    ((draft *)with)->clamps = node;
    return SW_OK;
}

static int keep_cut(sw__reader *r, int node, void *with)
{
    (void)r;
    ((draft *)with)->cut = node;
    return SW_OK;
}

static int keep_path(sw__reader *r, int node, void *with)
{
    (void)r;
    ((draft *)with)->path = node;
    return SW_OK;
}

static int fail_clamp(sw__reader *r, int node, const sw_job *job,
                      const char *name)
{
    char message[200];
    const char *known[SW__JOB_CONTACTS];
    for (int i = 0; i < job->clamps; i++)
        known[i] = job->clamp[i].out.name;
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "clamps: there is no clamp ");
    sw__line_add_quoted(&line, name);
    sw__add_nearest(&line, name, known, job->clamps);
    return sw__fail_at(r, node, SW_ERR_UNKNOWN, "clamps", message);
}

static int take_clamp(sw__reader *r, int node, draft *d)
{
    char name[32];
    const int status = sw__take_text(r, node, "clamps", name, sizeof name);
    if (status)
        return status;
    for (int i = 0; i < d->job->clamps; i++) {
        if (strcmp(d->job->clamp[i].out.name, name) != 0)
            continue;
        if (d->op->has[i])
            return sw__fail_text(r, node, SW_ERR_CONFLICT, "clamps",
                                 "clamps: ", name, " is in the list twice");
        d->op->has[i] = 1;
        d->op->out.clamps++;
        if (i + 1 < d->job->clamps && d->job->clamp[i + 1].second) {
            d->op->has[i + 1] = 1;
            d->op->out.clamps++;
        }
        return SW_OK;
    }
    return fail_clamp(r, node, d->job, name);
}

static int take_all(draft *d)
{
    for (int i = 0; i < d->job->clamps; i++)
        d->op->has[i] = 1;
    d->op->out.clamps = d->job->clamps;
    return SW_OK;
}

static int take_clamps(sw__reader *r, draft *d)
{
    const sw__tree *t = r->tree;
    if (!d->clamps)
        return take_all(d);
    if (t->node[d->clamps].kind == SW__TREE_TEXT &&
        strcmp(sw__text_of(t, d->clamps), "all") == 0)
        return take_all(d);
    int status = sw__want_list(r, d->clamps, "clamps", "[C1, C2], or all");
    for (int i = t->node[d->clamps].first; i && !status; i = t->node[i].next)
        status = take_clamp(r, i, d);
    return status;
}

static int open_hold(sw__reader *r, int map, draft *d, const sw__shape *shape)
{
    sw_error inner;
    sw_hold_in full = d->op->hold;
    if (sw_hold_resolve(&full, &inner))
        return sw__fail_inner(r, map, shape, &inner);
    d->op->out.required_margin = full.required_margin;
    int status = SW_OK;
    for (int i = 0; !status; i++) {
        const sw_assumption a = sw_hold_assumed(&d->op->hold, i, NULL);
        if (a.status)
            break;
        status = sw__job_note_as(d->job, d->op->out.name, &a, r->err);
        if (!status && strcmp(a.name, "required_margin") != 0)
            sw__job_slight(d->job);
    }
    return status;
}

static int check_name(sw__reader *r, int map, draft *d)
{
    sw_job *job = d->job;
    char *name = d->op->out.name;
    if (!name[0]) {
        sw__line line = sw__line_start(name, sizeof d->op->out.name);
        sw__line_add(&line, "operation ");
        sw__line_add_number(&line, job->operations + 1);
    }
    const int before = sw_job_find_operation(job, name);
    if (before < 0)
        return SW_OK;
    return sw__fail_text(r, sw__child(r, map, "name"), SW_ERR_CONFLICT, "name",
                         "name: ", name, " is taken by another operation");
}

static int check_parts(sw__reader *r, int map, const draft *d)
{
    if (!d->cut)
        return sw__fail_key(r, map, SW_ERR_MISSING, "cut",
                            "an operation needs its cut: cut, with its kind "
                            "below it");
    if (!d->path)
        return sw__fail_key(r, map, SW_ERR_MISSING, "path",
                            "an operation needs its path: path, with points, "
                            "lines or a circle below it");
    return SW_OK;
}

static int take_operation(sw_job *job, sw__reader *r, int map)
{
    static const sw__special key[] = {{"name", take_name},
                                      {"clamps", keep_clamps},
                                      {"cut", keep_cut},
                                      {"path", keep_path},
                                      {NULL, NULL}};
    sw__job_operation *op = &job->operation[job->operations];
    draft d = {.job = job, .op = op};
    sw_hold_defaults(&op->hold);
    const sw__form form = {SW_STRUCT_HOLD_IN, &op->hold,
                           " depth largest_margin disc_sides", NULL};
    const sw__shape shape = {.what = "an operation",
                             .form = &form,
                             .forms = 1,
                             .special = key,
                             .with = &d,
                             .reserved = "release,re clamp,reclamp,stage,"
                                         "stages,leave on,torque,"};
    sw__path_about about = {.node = 0};
    int status = sw__read_map(r, map, &shape);
    if (!status)
        status = check_parts(r, map, &d);
    if (!status)
        status = check_name(r, map, &d);
    if (!status)
        status = take_clamps(r, &d);
    if (!status)
        status = sw__job_path(job, r, d.path, op->out.name, op, &about);
    if (!status)
        status = sw__job_cut(job, r, d.cut, op->out.name, op, &about);
    if (!status && (double)op->points * op->samples > SW__JOB_LOADS)
        status = sw__fail_at(r, d.path, SW_ERR_RANGE, "path",
                             "path: points times instants of the cut exceed "
                             "100000; take a larger step");
    if (!status)
        status = open_hold(r, map, &d, &shape);
    op->out.points = op->points;
    op->out.samples = op->samples;
    op->out.loads = (double)op->points * op->samples;
    job->about.warnings |= op->out.warnings;
    job->operations++; /* its points are freed with the job in any case */
    return status;
}

int sw__job_operations(sw_job *job, sw__reader *r, int list)
{
    return sw__job_each(job, r, list, "operations", SW__JOB_OPERATIONS,
                        take_operation);
}
