/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Clamp strap: a strap on its stud, from the torque to what the part feels.
 *
 * Symbols: T torque that is set, F_lo, F, F_hi stud tension at the ends and the
 * median of its spread (fastener/spread.c); N toe force, S side pull, D nut
 * drag, each with the low and high end of the strap's own band (clamp/strap.c).
 *
 *   (1)  N_lo = N_low(F_lo),  N_hi = N_high(F_hi)
 *   (2)  S from S_low(F_lo) to S_high(F_lo)
 *   (3)  D from 0 to D(F_lo) of the strap as it is kept from turning
 *
 * A strap that presses harder than N_lo pulls harder too. What it pulls more is
 * less than the friction it adds below its own toe, as long as its pull is less
 * than friction times force, so that the low end of every strap is the worst
 * of all (a support under every toe); the whole band of its own pull at that
 * force is looked through. Nut drag is what is locked in when the nut has been
 * turned: an elastic force, which goes as soon as the part moves a little, so
 * the high end of its band, a strap that turns freely with its nut, counts only
 * where that is how it is kept (restraint free).
 *
 * A nut that nobody turns has no torque that scatters: F_lo = F_hi = F, and
 * only the band is left.
 */
#include "job/clamp.h"

#include <string.h>

enum { FIELDS_MOST = 64 };

static int open_strap(sw__clamp_draft *d)
{
    sw_strap_defaults(&d->of.strap.in);
    sw_spread_defaults(&d->of.strap.spread);
    d->form[1] = (sw__form){SW_STRUCT_STRAP_IN, &d->of.strap.in, "", NULL};
    d->form[2] =
        (sw__form){SW_STRUCT_SPREAD_IN, &d->of.strap.spread,
                   " height_scatter_mm trials seed threads vary", NULL};
    return 2;
}

/* The question about torque behind a strap: the fields that both have. */
static void torque_of(const sw_strap_in *strap, sw_torque_in *torque)
{
    sw_torque_defaults(torque);
    for (int i = 0; i < FIELDS_MOST; i++) {
        const sw_field *to = sw_field_at(SW_STRUCT_TORQUE_IN, i);
        if (!to)
            return;
        const sw_field *from = sw_field_named(SW_STRUCT_STRAP_IN, to->name);
        if (from && from->type == to->type && from->size == to->size)
            memcpy((char *)torque + to->offset,
                   (const char *)strap + from->offset, to->size);
    }
}

static sw_strap_out at_tension(const sw_strap_in *in, double preload_N,
                               sw_error *err)
{
    sw_strap_in one = *in;
    one.preload_N = preload_N;
    one.torque_Nm = SW_UNSET;
    return sw_strap(&one, err);
}

/* Equations (1) to (3). */
static void take_ends(sw_job_clamp_out *o, const sw_strap_out *low,
                      const sw_strap_out *high)
{
    o->force_low_N = low->toe_force_low_N;
    o->force_high_N = high->toe_force_high_N;
    o->pull_low_N = low->side_pull_low_N;
    o->pull_high_N = low->side_pull_high_N;
    o->drag_low_N = fmin(0, low->drag_N);
    o->drag_high_N = fmax(0, low->drag_N);
}

static sw_assumption ask_strap(const sw__clamp_draft *d, int index)
{
    return sw_strap_assumed(&d->of.strap.in, index, NULL);
}

#define SLIGHT 0.01 /* of the toe force */

/* The defaults of the strap, and which of them hardly matter. */
static int note_strap(sw__clamp_draft *d, double toe_N)
{
    int status = SW_OK;
    for (int i = 0; !status; i++) {
        const sw_assumption a = ask_strap(d, i);
        if (a.status)
            break;
        const int before = d->job->assumptions;
        status = sw__job_note_as(d->job, d->in.name, &a, d->r->err);
        const sw_matter_out m = sw_strap_matters(&d->of.strap.in, i, NULL);
        const double most =
            fmax(m.toe_high_N - m.toe_low_N, m.pull_high_N - m.pull_low_N);
        if (d->job->assumptions > before && !(most > SLIGHT * toe_N))
            sw__job_slight(d->job);
    }
    return status;
}

static sw_assumption ask_spread(const sw__clamp_draft *d, int index)
{
    sw_torque_in torque;
    torque_of(&d->of.strap.in, &torque);
    sw_assumption a =
        sw_spread_assumed(&d->of.strap.spread, &torque, index, NULL);
    if (!a.status && sw__listed(d->form[2].skip, a.name))
        a.value = SW_UNSET; /* what only trials use did not enter */
    return a;
}

/* The median tension and its ends. */
static int spread_out(sw__clamp_draft *d, const sw_strap_out *s,
                      const sw_torque_in *torque)
{
    sw_error inner;
    sw_job_clamp_out *o = d->out;
    o->preload_low_N = o->preload_high_N = o->preload_N = s->preload_N;
    o->scatter_pct = 0;
    if (!torque)
        return SW_OK;
    const sw_spread_out spread = sw_spread(torque, &d->of.strap.spread, &inner);
    if (spread.status)
        return sw__clamp_fail(d, &inner);
    o->preload_low_N = spread.preload_low_N;
    o->preload_high_N = spread.preload_high_N;
    o->scatter_pct = spread.scatter_pct;
    o->warnings |= spread.warnings;
    return SW_OK;
}

/* What the job says for all straps. */
static int take_common(sw__clamp_draft *d)
{
    sw_strap_in *in = &d->of.strap.in;
    if (!sw__is_set(in->part_height_mm))
        in->part_height_mm = d->job->about.raised_mm + d->in.z_mm;
    if (!sw__is_set(in->mu_toe) && sw__is_set(d->job->toe_friction))
        in->mu_toe = d->job->toe_friction;
    if (!d->tool[0])
        return SW_OK;
    sw_error inner;
    /* as it was given: the tool must not hide what contradicts itself */
    const sw_strap_out s = sw_strap(in, &inner);
    if (s.status)
        return sw__clamp_fail(d, &inner);
    double torque_Nm = s.torque_Nm;
    const int status = sw__clamp_set_tool(d, &torque_Nm);
    if (status)
        return status;
    in->torque_Nm = torque_Nm;
    in->preload_N = SW_UNSET;
    return SW_OK;
}

/* No answer at the high end of what a torque gives: the torque is to blame. */
static int fail_high(sw__clamp_draft *d, int by_torque, const sw_error *inner)
{
    char message[200];
    if (!by_torque || inner->code != SW_ERR_RANGE ||
        strcmp(inner->field, "preload_N") != 0)
        return sw__clamp_fail(d, inner);
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "torque: at the high end of its spread it stretches "
                        "the stud with ");
    sw__line_add_number(&line, round(d->out->preload_high_N));
    sw__line_add(&line, " N; it cannot stand more than ");
    sw__line_add_number(&line, floor(inner->high));
    sw__line_add(&line, " N");
    const int node = sw__child(d->r, d->map, "torque");
    return node ? sw__fail_at(d->r, node, SW_ERR_RANGE, "torque", message)
                : sw__fail_key(d->r, d->map, SW_ERR_RANGE, "torque", message);
}

static int solve_strap(sw__clamp_draft *d)
{
    sw_error inner;
    sw_strap_in *in = &d->of.strap.in;
    sw_job_clamp_out *o = d->out;
    int status = take_common(d);
    if (status)
        return status;
    const sw_strap_out s = sw_strap(in, &inner);
    if (s.status)
        return sw__clamp_fail(d, &inner);
    sw_torque_in torque;
    torque_of(in, &torque);
    const int turned = in->nut != SW_NUT_STILL;
    status = spread_out(d, &s, turned ? &torque : NULL);
    if (status)
        return status;
    const sw_strap_out low = at_tension(in, o->preload_low_N, &inner);
    if (low.status)
        return sw__clamp_fail(d, &inner);
    const sw_strap_out high = at_tension(in, o->preload_high_N, &inner);
    if (high.status)
        return fail_high(d, sw__is_set(in->torque_Nm), &inner);
    sw_strap_in full = *in;
    if (sw_strap_resolve(&full, &inner))
        return sw__clamp_fail(d, &inner);
    sw__copy(o->thread, sizeof o->thread, full.thread);
    o->stud_mm = full.stud_to_toe_mm;
    o->torque_Nm = turned ? s.torque_Nm : SW_UNSET;
    o->prevailing_torque_Nm = full.prevailing_torque_Nm;
    o->force_N = s.toe_force_N;
    take_ends(o, &low, &high);
    o->warnings |= s.warnings | low.warnings | high.warnings;
    sw__clamp_judge_strap(d, &low, &s, &high, &torque);
    if (o->force_low_N > 0)
        status = note_strap(d, o->force_N);
    if (o->force_low_N > 0)
        return status || !turned ? status : sw__clamp_note(d, ask_spread);
    return sw__fail_key(d->r, d->map, SW_ERR_CONFLICT, "torque",
                        "at the low end of its spread this strap does not "
                        "press on the part at all");
}

const sw__clamp_way sw__clamp_strap_way = {
    SW_CLAMP_STRAP, SW__CLAMP_SKIP, 1, 1, 1, open_strap, solve_strap};
