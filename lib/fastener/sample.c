/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Sample: pairs as columns of numbers, and one pair among the others.
 */
#include "fastener/calibrate.h"

#include <stdlib.h>
#include <string.h>

double sw__pair_ln_factor(const sw__pair *p, const sw_calibrate_in *full,
                          const sw_thread_out *t)
{
    return log(1000 * (p->torque_Nm - full->prevailing_torque_Nm) /
               (p->force_N * t->nominal_mm));
}

static int check(const sw_calibrate_in *full, const sw_pairs *pairs,
                 sw_error *err)
{
    if (pairs->count < 2)
        return sw__fail(err, SW_ERR_MISSING, "pairs",
                        "pairs: at least 2 are needed to tell a scatter");
    for (int i = 0; i < pairs->count; i++) {
        if (pairs->pair[i].torque_Nm > full->prevailing_torque_Nm)
            continue;
        char message[200];
        sw__line line = sw__line_start(message, sizeof message);
        sw__line_add(&line, "prevailing_torque_Nm: ");
        sw__line_add_number(&line, full->prevailing_torque_Nm);
        sw__line_add(&line, " N.m is not below the torque of pair ");
        sw__line_add_number(&line, i + 1);
        sw__line_add(&line, ", ");
        sw__line_add_number(&line, pairs->pair[i].torque_Nm);
        sw__line_add(&line, " N.m");
        return sw__fail(err, SW_ERR_CONFLICT, "prevailing_torque_Nm", message);
    }
    return SW_OK;
}

void sw__moments(const double *value, size_t n, double *mean, double *sd)
{
    double sum = 0, square = 0;
    for (size_t i = 0; i < n; i++)
        sum += value[i];
    *mean = sum / (double)n;
    for (size_t i = 0; i < n; i++)
        square += (value[i] - *mean) * (value[i] - *mean);
    *sd = sqrt(square / ((double)n - 1));
}

#define ROUNDING 1e-12 /* of ln K: less than this is no scatter */

int sw__sample_make(sw__sample *s, const sw_calibrate_in *full,
                    const sw_pairs *pairs, const sw_thread_out *t,
                    sw_error *err)
{
    enum { COLUMNS = 5 };
    memset(s, 0, sizeof *s);
    const int status = check(full, pairs, err);
    if (status)
        return status;
    const size_t n = (size_t)pairs->count;
    double *all = malloc(COLUMNS * n * sizeof *all);
    if (!all)
        return sw__fail_memory(err);
    *s = (sw__sample){.n = n,
                      .torque = all,
                      .force = all + n,
                      .ln_factor = all + 2 * n,
                      .ln_torque = all + 3 * n,
                      .row = all + 4 * n};
    for (size_t i = 0; i < n; i++) {
        const sw__pair *p = &pairs->pair[i];
        s->torque[i] = p->torque_Nm - full->prevailing_torque_Nm;
        s->force[i] = p->force_N;
        s->ln_factor[i] = sw__pair_ln_factor(p, full, t);
        s->ln_torque[i] = log(s->torque[i]);
        s->row[i] = (double)i + 1;
    }
    sw__moments(s->ln_factor, n, &s->mean, &s->sigma);
    if (s->sigma < ROUNDING)
        s->sigma = 0;
    return SW_OK;
}

void sw__sample_free(sw__sample *s) { free(s->torque); }

static int pick(const sw_calibrate_in *full, const sw_pairs *pairs, int index,
                const sw_thread_out *t, sw_pair_out *out, sw_error *err)
{
    sw__sample s;
    if (index < 0 || index >= pairs->count)
        return sw__fail(err, SW_ERR_RANGE, "index",
                        "index: past the end of the pairs");
    const int status = sw__sample_make(&s, full, pairs, t, err);
    if (status)
        return status;
    double furthest = 0;
    for (size_t i = 0; i < s.n && s.sigma > 0; i++)
        furthest = fmax(furthest, fabs(s.ln_factor[i] - s.mean) / s.sigma);
    const sw__pair *p = &pairs->pair[index];
    out->torque_Nm = p->torque_Nm;
    out->force_N = p->force_N;
    out->thread_torque_Nm = p->thread_torque_Nm;
    out->seat_torque_Nm = p->seat_torque_Nm;
    out->nut_factor = exp(s.ln_factor[index]);
    out->deviation = s.sigma > 0 ? (s.ln_factor[index] - s.mean) / s.sigma : 0;
    const double limit = sw__outlier_limit(s.n);
    if (sw__is_set(limit) && furthest > limit &&
        fabs(out->deviation) == furthest)
        out->warnings |= SW_WARN_OUTLIER;
    sw__sample_free(&s);
    return SW_OK;
}

sw_pair_out sw_pairs_at(const sw_calibrate_in *in, const sw_pairs *pairs,
                        int index, sw_error *err)
{
    sw_pair_out out;
    sw_thread_out t;
    sw_calibrate_in full;
    memset(&out, 0, sizeof out);
    int status = in ? SW_OK : sw__fail_null(err, "in");
    if (!status) {
        full = *in;
        status = sw__calibrate_open(&full, pairs, &t, err);
    }
    if (!status)
        status = pick(&full, pairs, index, &t, &out, err);
    if (status)
        sw__spoil(&out, SW_STRUCT_PAIR_OUT, status);
    return out;
}
