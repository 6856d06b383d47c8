/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Spread resolve: how a tightening scatters, with nothing left open.
 */
#include "fastener/spread.h"

#include <strapwise/lubrication.h>
#include <strapwise/method.h>

#include <string.h>

#define SW__S sw_spread_in
const sw_field sw__spread_in_fields[] = {
    SW__IN_TEXT(method, "the way of tightening that fits the lubrication"),
    SW__IN(scatter_pct, "%", 0, 95, 0, 0, "of the method"),
    SW__IN(tool_scatter_pct, "%", 0, 95, 4, 6,
           "ISO 6789: permitted deviation of a torque tool above 10 N.m, from "
           "memory"),
    SW__IN(factor_scatter_pct, "%", 0, 95, 0, 0, ""),
    SW__IN(published_coverage, "", 0.5, 0.9999, 0.9, 0.997,
           "no source of the scatter says it; taken as two-sided"),
    SW__IN(coverage, "", 0.5, 0.9999, 0, 0, "95 of 100 tightenings"),
    SW__IN(height_scatter_mm, "mm", 0, 50, 0.1, 1,
           "heights taken with a rule; common practice, no source"),
    SW__IN(trials, "", 100, 1e7, 0, 0, "enough for the third digit"),
    SW__IN(seed, "", 0, 9007199254740992, 0, 0, "any number will do"),
    SW__IN(threads, "", 1, 64, 0, 0, "does not change the answer"),
    SW__IN_WORD(vary, SW_WORDS_VARY,
                "all that is not known, evenly between its ends"),
    SW__END,
};
#undef SW__S

void sw_spread_defaults(sw_spread_in *spread)
{
    if (!spread)
        return;
    memset(spread, 0, sizeof *spread);
    for (const sw_field *f = sw__spread_in_fields; f->name; f++)
        if (f->type == SW_FIELD_NUMBER) {
            const double open = SW_UNSET;
            memcpy((char *)spread + f->offset, &open, sizeof open);
        }
}

static int check_whole(const char *field, double value, sw_error *err)
{
    if (!sw__is_set(value) || value == floor(value))
        return SW_OK;
    char message[120];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, field);
    sw__line_add(&line, ": ");
    sw__line_add_number(&line, value);
    sw__line_add(&line, " is not a whole number");
    return sw__fail(err, SW_ERR_SYNTAX, field, message);
}

static int check_choice(const sw_spread_in *s, sw_error *err)
{
    const int whole = sw__is_set(s->scatter_pct);
    const int parts =
        sw__is_set(s->tool_scatter_pct) || sw__is_set(s->factor_scatter_pct);
    if (whole && parts)
        return sw__fail(err, SW_ERR_CONFLICT, "scatter_pct",
                        "scatter_pct: is the whole; give either it or the "
                        "scatter of tool and nut factor apart");
    if (s->method[0] && (whole || parts))
        return sw__fail(err, SW_ERR_CONFLICT, "method",
                        "method: stands for its published scatter; give "
                        "either the method or a scatter");
    if (parts && !sw__is_set(s->factor_scatter_pct))
        return sw__fail(err, SW_ERR_MISSING, "factor_scatter_pct",
                        "factor_scatter_pct: missing beside tool_scatter_pct; "
                        "the torque tool is the smaller part");
    int status = check_whole("trials", s->trials, err);
    if (!status)
        status = check_whole("seed", s->seed, err);
    return status ? status : check_whole("threads", s->threads, err);
}

const char *sw__lubrication_used(const sw_torque_in *in)
{
    const int K = sw__is_set(in->nut_factor);
    const uint64_t by_row = K ? sw__bit(SW_STRUCT_TORQUE_IN, "nut_factor")
                              : sw__bit(SW_STRUCT_TORQUE_IN, "mu_thread") |
                                    sw__bit(SW_STRUCT_TORQUE_IN, "mu_seat");
    return in->assumed & by_row ? in->lubrication : "";
}

/* The method that fits a lubrication; with friction or K given by hand nothing
 * is known but that a table or a guess stood behind it. */
static int fill_method(const sw__filler *fill, const char *lubrication,
                       sw_error *err)
{
    if (!lubrication[0]) {
        sw__fill_text(fill, "method", "wrench-friction-guessed");
        return SW_OK;
    }
    const sw_lubrication_out l = sw_lubrication(lubrication, err);
    if (!l.status)
        sw__fill_text(fill, "method", l.method);
    return l.status;
}

static int resolve_scatter(const sw__filler *fill, sw_spread_in *s,
                           const char *lubrication, sw_error *err)
{
    if (sw__is_set(s->scatter_pct))
        return SW_OK;
    if (sw__is_set(s->factor_scatter_pct)) {
        sw__fill_number(fill, "tool_scatter_pct", 4);
        return SW_OK;
    }
    int status = s->method[0] ? SW_OK : fill_method(fill, lubrication, err);
    if (status)
        return status;
    const sw_method_out m = sw_method(s->method, err);
    if (!m.status)
        sw__fill_number(fill, "scatter_pct", m.scatter_pct);
    return m.status;
}

int sw__spread_open(sw_spread_in *s, const char *lubrication, sw_error *err)
{
    sw__clear(err);
    int status = sw__reopen(s, SW_STRUCT_SPREAD_IN, &s->assumed, &s->seal, err);
    if (!status)
        status = sw__check_input(s, SW_STRUCT_SPREAD_IN, err);
    if (!status)
        status = check_choice(s, err);
    if (status)
        return status;
    const sw__filler fill = {(char *)s, SW_STRUCT_SPREAD_IN, &s->assumed};
    sw__fill_number(&fill, "published_coverage", 0.95);
    sw__fill_number(&fill, "coverage", 0.95);
    sw__fill_number(&fill, "height_scatter_mm", 0.5);
    sw__fill_number(&fill, "trials", 20000);
    sw__fill_number(&fill, "seed", 1);
    sw__fill_number(&fill, "threads", 1);
    sw__fill_word(&fill, "vary", SW_VARY_ALL);
    return resolve_scatter(&fill, s, lubrication, err);
}

/* Opens a copy; `q` is the nut's question as it came. */
static int open_copy(const sw_spread_in *spread, const sw_torque_in *q,
                     sw_spread_in *full, sw_error *err)
{
    if (!spread)
        return sw__fail_null(err, "spread");
    if (!q)
        return sw__fail_null(err, "in");
    sw_torque_in nut = *q;
    int status = sw_torque_resolve(&nut, err);
    *full = *spread;
    if (!status)
        status = sw__spread_open(full, sw__lubrication_used(&nut), err);
    return status;
}

int sw_spread_resolve(sw_spread_in *spread, const sw_torque_in *in,
                      sw_error *err)
{
    sw_spread_in full;
    sw__clear(err);
    const int status = open_copy(spread, in, &full, err);
    if (!status) {
        *spread = full;
        spread->seal = sw__seal(spread, SW_STRUCT_SPREAD_IN, spread->assumed);
    }
    return status;
}

/* Fields that only trials use. */
static uint64_t trial_bits(void)
{
    static const char *const name[] = {"height_scatter_mm", "trials", "seed",
                                       "threads", "vary"};
    uint64_t bits = 0;
    for (size_t i = 0; i < sizeof name / sizeof name[0]; i++)
        bits |= sw__bit(SW_STRUCT_SPREAD_IN, name[i]);
    return bits;
}

sw_assumption sw__spread_assumed(const sw_spread_in *full, int trials,
                                 int index, sw_error *err)
{
    sw_assumption a =
        sw__assumed(full, SW_STRUCT_SPREAD_IN,
                    full->assumed & ~(trials ? 0 : trial_bits()), index, err);
    if (strcmp(a.name, "scatter_pct") == 0) { /* range and source of its row */
        const sw_method_out m = sw_method(full->method, NULL);
        a.low = m.scatter_low_pct;
        a.high = m.scatter_high_pct;
        sw__copy(a.source, sizeof a.source, m.source);
    }
    return a;
}

sw_assumption sw_spread_assumed(const sw_spread_in *spread,
                                const sw_torque_in *in, int index,
                                sw_error *err)
{
    sw_spread_in full;
    sw__clear(err);
    const int status = open_copy(spread, in, &full, err);
    return status ? sw__no_assumption(status)
                  : sw__spread_assumed(&full, 0, index, err);
}
