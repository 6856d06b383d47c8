/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Clamp strength: whether a clamp stands what it is set to.
 *
 * Symbols: F tension of the stud or screw, u(F) its use: the larger of the
 * stress at its worst fibre over the yield stress and of F over the proof
 * load. At the median F
 *
 *   (1)  u(F) > 1              the clamp must not be used
 *   (2)  u(F_y) = 1            tension at which it yields; by bisection for a
 *                              strap, whose stud is bent too; F_y = F/u for a
 *                              screw, whose stress is in proportion
 *
 * A strap that walks at either end of its spread does not stay where it was
 * set. A device over its maker's limit is not safe, whatever it presses with.
 *
 * Not in it: fatigue, what the frame of a screw clamp stands, nuts and T-slots
 * (strapwise weakest); the high end of the tension, which is a warning.
 */
#include "job/clamp.h"

#include <strapwise/torque.h>

enum { HALVINGS = 50 };

/* Keeps the first and worst. */
static void blame(sw__clamp_draft *d, int fault)
{
    sw_job_clamp_out *o = d->out;
    if (o->clamp_fault == SW_CLAMP_FAULT_NONE)
        o->clamp_fault = fault;
}

/* Greater of two of which either may not be known. */
static double worse(double a, double b)
{
    if (!sw__is_set(a) || !sw__is_set(b))
        return sw__is_set(a) ? a : b;
    return fmax(a, b);
}

typedef struct {
    sw_strap_in in;
    double proof_N; /* load at the proof stress, or SW_UNSET */
    sw_strap_out out;
} stud;

/* u(F), SW_UNSET where it is not known. */
static double use_at(stud *s, double F)
{
    s->in.preload_N = F;
    s->in.torque_Nm = SW_UNSET;
    s->out = sw_strap(&s->in, NULL);
    if (s->out.status)
        return SW_UNSET;
    return worse(s->out.stud_yield_use,
                 sw__is_set(s->proof_N) ? F / s->proof_N : SW_UNSET);
}

/* Equation (2), from a tension whose use is known. */
static void find_yield(stud *s, double F, double use, sw_job_clamp_out *o)
{
    double low = F, high = F;
    /* bending grows slower or faster than F, but use with it */
    for (int i = 0; i < HALVINGS && use > 1; i++) {
        low /= 1.5;
        use = use_at(s, low);
    }
    if (!sw__is_set(use) || use > 1)
        return;
    for (int i = 0; i < HALVINGS && sw__is_set(use) && use <= 1; i++) {
        high *= 1.5;
        use = use_at(s, high);
    }
    for (int i = 0; i < HALVINGS; i++) {
        const double middle = (low + high) / 2;
        use = use_at(s, middle);
        if (sw__is_set(use) && use <= 1)
            low = middle;
        else
            high = middle;
    }
    use = use_at(s, low);
    if (!(use > 0.99 && use < 1.01))
        return; /* the strap gives no answer there */
    o->yield_N = low;
    o->yield_torque_Nm = s->out.torque_Nm;
}

void sw__clamp_judge_strap(sw__clamp_draft *d, const sw_strap_out *low,
                           const sw_strap_out *s, const sw_strap_out *high,
                           const sw_torque_in *torque)
{
    sw_job_clamp_out *o = d->out;
    sw_torque_in at = *torque;
    stud one = {.in = d->of.strap.in, .proof_N = SW_UNSET};
    at.preload_N = s->preload_N;
    at.torque_Nm = SW_UNSET;
    const sw_torque_out t = sw_torque(&at, NULL);
    if (!t.status && sw__is_set(t.proof_use) && t.proof_use > 0)
        one.proof_N = s->preload_N / t.proof_use;
    if ((low->warnings | s->warnings | high->warnings) & SW_WARN_STRAP_WALKS)
        blame(d, SW_CLAMP_FAULT_WALKS);
    o->strength_use =
        worse(s->stud_yield_use, t.status ? SW_UNSET : t.proof_use);
    if (!sw__is_set(o->strength_use))
        return;
    if (o->strength_use > 1)
        blame(d, SW_CLAMP_FAULT_YIELDS);
    find_yield(&one, s->preload_N, o->strength_use, o);
    if (!sw__is_set(o->torque_Nm))
        o->yield_torque_Nm = SW_UNSET;
}

int sw__clamp_judge_screw(sw__clamp_draft *d, const sw_screw_in *full,
                          const sw_screw_out *s)
{
    sw_job_clamp_out *o = d->out;
    sw_torque_in in;
    sw_error inner;
    if (!full->thread[0] || full->starts != 1)
        return SW_OK; /* no table knows its strength */
    sw_torque_defaults(&in);
    sw__copy(in.thread, sizeof in.thread, full->thread);
    sw__copy(in.grade, sizeof in.grade, full->grade);
    in.mu_thread = full->mu_thread;
    in.mu_seat = full->mu_collar;
    in.friction_radius_mm = fmax(0.1, full->collar_radius_mm);
    in.preload_N = s->force_N;
    if (sw_torque_resolve(&in, &inner))
        return SW_OK;
    const sw_torque_out t = sw_torque(&in, NULL);
    if (t.status)
        return SW_OK;
    o->strength_use = worse(t.yield_use, t.proof_use);
    o->warnings |= t.warnings & (SW_WARN_OVER_PROOF | SW_WARN_OVER_YIELD |
                                 SW_WARN_STUD_STRENGTH_UNKNOWN);
    if (!sw__is_set(o->strength_use))
        return SW_OK;
    o->yield_N = s->force_N / o->strength_use;
    o->yield_torque_Nm = s->torque_Nm / o->strength_use;
    if (o->strength_use > 1)
        blame(d, SW_CLAMP_FAULT_YIELDS);
    return SW_OK;
}

void sw__clamp_judge_device(sw__clamp_draft *d, double force_N,
                            double allowed_N, double pressure_MPa,
                            double allowed_MPa)
{
    sw_job_clamp_out *o = d->out;
    const int force = sw__is_set(force_N) && sw__is_set(allowed_N);
    const int pressure = sw__is_set(pressure_MPa) && sw__is_set(allowed_MPa);
    o->limit_pressure_MPa = allowed_MPa;
    o->limit_use = worse(force ? force_N / allowed_N : SW_UNSET,
                         pressure ? pressure_MPa / allowed_MPa : SW_UNSET);
    if (sw__is_set(o->limit_use) && o->limit_use > 1 + 1e-9) {
        o->warnings |= SW_WARN_DEVICE_LIMIT;
        blame(d, SW_CLAMP_FAULT_DEVICE);
    }
}
