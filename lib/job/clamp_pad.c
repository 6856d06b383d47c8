/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Clamp pad: whether a clamp at the high end of its spread marks the part
 * (clamp/pad.c).
 */
#include "job/clamp.h"

int sw__clamp_pad(sw__clamp_draft *d)
{
    sw_pad_in in;
    sw_error inner;
    sw_pad_defaults(&in);
    const sw__form form = {SW_STRUCT_PAD_IN, &in, " force_N", NULL};
    const sw__shape shape = {.what = "a pad", .form = &form, .forms = 1};
    int status = sw__read_map(d->r, d->pad, &shape);
    if (status)
        return status;
    in.force_N = d->out->force_high_N;
    if (!in.part_material[0] && !sw__is_set(in.part_limit_MPa))
        sw__copy(in.part_material, sizeof in.part_material,
                 d->job->about.material);
    const sw_pad_out p = sw_pad(&in, &inner);
    if (p.status)
        return sw__fail_inner(d->r, d->pad, &shape, &inner);
    d->out->warnings |= p.warnings;
    d->out->mark = p.mark;
    d->out->pad_MPa = p.pressure_MPa;
    d->out->mark_N = p.mark_N;
    for (int i = 0; !status; i++) {
        sw_assumption a = sw_pad_assumed(&in, i, NULL);
        if (a.status)
            break;
        char name[64];
        sw__line line = sw__line_start(name, sizeof name);
        sw__line_add(&line, "pad_");
        sw__line_add(&line, a.name);
        sw__copy(a.name, sizeof a.name, name);
        status = sw__job_note_as(d->job, d->in.name, &a, d->r->err);
    }
    return status;
}
