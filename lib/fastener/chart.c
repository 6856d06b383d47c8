/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Chart: what one stud size needs, for the wall of the shop.
 *
 * Everything comes from sw_torque(): the torque is proportional to the
 * tension, so 1 kN and 1000 lbf give the two unit columns. "Not to be
 * exceeded" is a fraction of the proof load, 75 % unless given (common
 * practice, no source); for grades without a proof stress (stainless) the
 * same fraction of yield.
 */
#include "fastener/torque.h"

#include <strapwise/chart.h>

#include <string.h>

#define SW__S sw_chart_in
const sw_field sw__chart_in_fields[] = {
    SW__IN_TEXT(thread, ""),
    SW__IN_TEXT(lubrication, "state not given"),
    SW__IN_TEXT(grade, "at least this grade is usual for clamping studs; "
                       "common practice, no source"),
    SW__IN(nut_factor, "", 0.03, 1, 0.12, 0.30,
           "Mechanical Engineering Design (Shigley) 9th ed. table 8-15, by "
           "lubrication"),
    SW__IN(preload_N, "N", 1e-3, 1e8, 0, 0, ""),
    SW__IN(proof_fraction, "", 0.05, 1, 0.6, 0.9, "common practice, no source"),
    SW__END,
};
#undef SW__S

#define SW__S sw_chart_out
const sw_field sw__chart_out_fields[] = {
    SW__OUT(nut_factor, ""),
    SW__OUT(torque_per_kN_Nm, "N.m"),
    SW__OUT(torque_per_klbf_ftlbf, "ft-lbf"),
    SW__OUT(preload_N, "N"),
    SW__OUT(torque_Nm, "N.m"),
    SW__OUT(limit_preload_N, "N"),
    SW__OUT(limit_torque_Nm, "N.m"),
    SW__OUT(preload_over_limit, ""),
    SW__END,
};
#undef SW__S

void sw_chart_defaults(sw_chart_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    in->nut_factor = in->preload_N = in->proof_fraction = SW_UNSET;
}

/* Torque for 1 kN, and the question behind it with nothing open. The grade is
 * judged below: a size that it does not cover still has a torque. */
static int ask_torque(const sw_chart_in *in, sw_torque_in *question,
                      sw_torque_out *answer, sw_error *err)
{
    sw_torque_defaults(question);
    sw__copy(question->thread, sizeof question->thread, in->thread);
    sw__copy(question->lubrication, sizeof question->lubrication,
             in->lubrication);
    question->nut_factor = in->nut_factor;
    question->preload_N = 1000;
    int status = sw_torque_resolve(question, err);
    if (!status) {
        *answer = sw_torque(question, err);
        status = answer->status;
    }
    return status;
}

static void set_limit(const sw_chart_in *full, const sw_thread_out *t,
                      const sw_grade_out *g, sw_chart_out *out)
{
    out->limit_preload_N = out->limit_torque_Nm = SW_UNSET;
    out->preload_over_limit = SW_UNSET;
    if (g->status) {
        out->warnings |= SW_WARN_STUD_STRENGTH_UNKNOWN;
        return;
    }
    const double stress =
        sw__is_set(g->proof_MPa) ? g->proof_MPa : g->yield_MPa;
    out->limit_preload_N = full->proof_fraction * stress * t->stress_area_mm2;
    out->limit_torque_Nm = out->torque_per_kN_Nm * out->limit_preload_N / 1000;
    if (sw__is_set(out->preload_N)) {
        out->preload_over_limit = out->preload_N / out->limit_preload_N;
        if (out->preload_over_limit > 1)
            out->warnings |= SW_WARN_OVER_PROOF;
    }
}

static int solve(const sw_chart_in *in, sw_chart_in *full, sw_chart_out *out,
                 sw_error *err)
{
    *full = *in;
    int status =
        sw__reopen(full, SW_STRUCT_CHART_IN, &full->assumed, &full->seal, err);
    if (!status)
        status = sw__check_input(full, SW_STRUCT_CHART_IN, err);
    if (status)
        return status;
    in = full;
    sw_torque_in question;
    sw_torque_out per_kN;
    status = ask_torque(in, &question, &per_kN, err);
    if (status)
        return status;
    const sw__filler fill = {(char *)full, SW_STRUCT_CHART_IN, &full->assumed};
    sw__fill_number(&fill, "proof_fraction", 0.75);
    sw__fill_number(&fill, "nut_factor", question.nut_factor);
    sw__fill_text(&fill, "lubrication", question.lubrication);
    sw__fill_text(&fill, "grade", question.grade);
    out->nut_factor = per_kN.nut_factor;
    out->torque_per_kN_Nm = per_kN.torque_Nm;
    out->torque_per_klbf_ftlbf = per_kN.torque_Nm * SW__LBF_N / SW__FTLBF_NM;
    out->preload_N = out->torque_Nm = SW_UNSET;
    if (sw__is_set(in->preload_N)) {
        out->preload_N = in->preload_N;
        out->torque_Nm = per_kN.torque_Nm * in->preload_N / 1000;
    }
    out->warnings =
        per_kN.warnings & (SW_WARN_LUBRICATION_CONFLICT |
                           SW_WARN_TABLE_FROM_MEMORY | SW_WARN_UNUSED_INPUT);
    const sw_thread_out t = sw_thread(in->thread, err);
    const sw_grade_out g = sw_grade(full->grade, t.nominal_mm, err);
    if (g.status == SW_ERR_UNKNOWN)
        return g.status;
    sw__clear(err);
    set_limit(full, &t, &g, out);
    return SW_OK;
}

int sw_chart_resolve(sw_chart_in *in, sw_error *err)
{
    sw_chart_in full;
    sw_chart_out out;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    const int status =
        in ? solve(in, &full, &out, err) : sw__fail_null(err, "in");
    if (!status) {
        *in = full;
        in->seal = sw__seal(in, SW_STRUCT_CHART_IN, in->assumed);
    }
    return status;
}

sw_chart_out sw_chart(const sw_chart_in *in, sw_error *err)
{
    sw_chart_out out;
    sw_chart_in full;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    const int status =
        in ? solve(in, &full, &out, err) : sw__fail_null(err, "in");
    if (status)
        sw__spoil(&out, SW_STRUCT_CHART_OUT, status);
    return out;
}

sw_assumption sw_chart_assumed(const sw_chart_in *in, int index, sw_error *err)
{
    sw_chart_in full;
    sw_chart_out out;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    const int status =
        in ? solve(in, &full, &out, err) : sw__fail_null(err, "in");
    if (status)
        return sw__no_assumption(status);
    sw_assumption a =
        sw__assumed(&full, SW_STRUCT_CHART_IN, full.assumed, index, err);
    sw_torque_in question;
    sw_torque_out per_kN;
    if (ask_torque(in, &question, &per_kN, NULL) == SW_OK)
        sw__describe_friction(&a, &question);
    return a;
}
