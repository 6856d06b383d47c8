/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tight: the torque on every nut of equal straps round a part, the short way.
 *
 * tight_need.c says with what force each toe must press, strap_window.c which
 * torque brings the low end of every toe above it and the high end not above
 * the limit of the toe.
 */
#include "hold/tight.h"

#include "clamp/strap_resolve.h"

#include <strapwise/say.h>

#include <string.h>

#define SW__S sw_tight_out
const sw_field sw__tight_out_fields[] = {
    SW__OUT_WORD(verdict, SW_WORDS_VERDICT),
    SW__OUT_WORD(governs, SW_WORDS_GOVERNS),
    SW__OUT(straps, ""),
    SW__OUT(torque_Nm, "N.m"),
    SW__OUT(torque_low_Nm, "N.m"),
    SW__OUT(torque_high_Nm, "N.m"),
    SW__OUT(hold_N, "N"),
    SW__OUT(hold_slide_N, "N"),
    SW__OUT(hold_lift_N, "N"),
    SW__OUT(flat_N, "N"),
    SW__OUT(margin, ""),
    SW__OUT(required_margin, ""),
    SW__OUT(toe_force_low_N, "N"),
    SW__OUT(toe_force_N, "N"),
    SW__OUT(toe_force_high_N, "N"),
    SW__OUT(preload_low_N, "N"),
    SW__OUT(preload_N, "N"),
    SW__OUT(preload_high_N, "N"),
    SW__OUT(pull_share, ""),
    SW__OUT(twist_factor, ""),
    SW__OUT(alpha, ""),
    SW__OUT(coverage, ""),
    SW__OUT(yield_use_high, ""),
    SW__OUT_TEXT(sentence),
    SW__END,
};
#undef SW__S

/* Between hold_N and the limit; without one, up to where the stud yields, if
 * the strap brings it there. */
static sw_window_out window(const sw_strap_in *strap,
                            const sw_spread_in *spread, double hold_N,
                            double toe_limit_N, sw_error *err)
{
    enum { MOST_TIMES = 1 << 10 };
    if (sw__is_set(toe_limit_N))
        return sw_strap_window(strap, spread, hold_N, toe_limit_N, err);
    sw_window_out best =
        sw_strap_window(strap, spread, hold_N, 2 * hold_N, err);
    best.torque_high_Nm = best.status ? best.torque_high_Nm : SW_UNSET;
    for (double times = 4; times <= MOST_TIMES && !best.status; times *= 2) {
        const sw_window_out more =
            sw_strap_window(strap, spread, hold_N, times * hold_N, NULL);
        if (more.status)
            break;
        best = more;
        if (more.warnings & SW_WARN_STUD_ENDS_WINDOW)
            break;
        best.torque_high_Nm = SW_UNSET;
    }
    if (best.verdict == SW_VERDICT_FITS)
        best.warnings &= ~(uint64_t)SW_WARN_STUD_ENDS_WINDOW;
    return best;
}

static void add_N(sw__line *line, double N)
{
    char text[64];
    sw_say(N, SW_KIND_FORCE, 0, text, sizeof text);
    sw__line_add(line, text);
}

static void say(const sw__tight_need *d, sw_tight_out *out)
{
    sw__line line = sw__line_start(out->sentence, sizeof out->sentence);
    if (d->pushed) {
        sw__line_add(&line, "No torque works: the straps push the part "
                            "sideways harder than its friction holds it, "
                            "however tight; hold them while the nuts turn, "
                            "and set them level");
        return;
    }
    char text[100];
    if (out->verdict == SW_VERDICT_FITS) {
        sw_say(out->torque_Nm, SW_KIND_TORQUE, 0, text, sizeof text);
        sw__line_add(&line, text);
        sw__line_add(&line, out->straps > 1 ? " on each nut" : " on the nut");
        sw__line_add(&line, ": every toe presses with at least ");
        add_N(&line, out->toe_force_low_N);
        if (sw__is_set(out->margin)) {
            sw__line_add(&line, ", margin ");
            sw_format_fixed(out->margin, 1, text, sizeof text);
            sw__line_add(&line, text);
            sw__line_add(&line, " on the cut");
        }
        return;
    }
    sw__line_add(&line, "No torque works: each toe must press with at least ");
    add_N(&line, out->hold_N);
    if (sw__is_set(out->flat_N)) {
        sw__line_add(&line, " and must not exceed ");
        add_N(&line, out->flat_N);
    }
    if (sw__is_set(out->flat_N) && !(out->flat_N > out->hold_N))
        return;
    sw__line_add(&line, ", but one torque spreads the force ");
    sw_format(out->alpha, 3, text, sizeof text);
    sw__line_add(&line, text);
    sw__line_add(&line, out->warnings & SW_WARN_STUD_ENDS_WINDOW
                            ? "-fold, and its high end takes the stud past "
                              "its yield"
                            : "-fold, which does not fit between");
}

static int toes(const sw_strap_in *strap, sw_tight_out *out, sw_error *err)
{
    const double preload[] = {out->preload_low_N, out->preload_N,
                              out->preload_high_N};
    for (int i = 0; i < 3; i++) {
        sw_strap_in one = *strap;
        one.preload_N = preload[i];
        one.torque_Nm = SW_UNSET;
        const sw_strap_out s = sw_strap(&one, err);
        if (s.status)
            return s.status;
        if (i == 0)
            out->toe_force_low_N = s.toe_force_low_N;
        else if (i == 1)
            out->toe_force_N = s.toe_force_N;
        else
            out->toe_force_high_N = s.toe_force_high_N;
    }
    return SW_OK;
}

/* The stud tensions that one setting brings about. Asked even where no torque
 * works, so that a wrong question about the spread is refused all the same. */
static int tensions(const sw_strap_in *strap, const sw_spread_in *spread,
                    double torque_Nm, sw_spread_out *out, sw_error *err)
{
    sw_strap_in one = *strap;
    int status =
        sw__reopen(&one, SW_STRUCT_STRAP_IN, &one.assumed, &one.seal, err);
    if (status)
        return status;
    one.torque_Nm = torque_Nm;
    one.preload_N = sw__is_set(torque_Nm) ? SW_UNSET : 1;
    sw__strap_full full;
    status = sw__strap_open(&one, &full, err);
    if (status)
        return status;
    *out = sw_spread(&full.question, spread, err);
    return out->status;
}

/* With a limit the torque stands in the middle of the window, without one it
 * is the least that holds. */
static int take_window(sw__tight_need *d, const sw_strap_in *strap,
                       const sw_spread_in *spread, const sw_window_out *w,
                       sw_tight_out *out, sw_error *err)
{
    out->warnings |= w->warnings;
    out->verdict = w->verdict;
    out->alpha = w->alpha;
    out->coverage = w->coverage;
    if (w->verdict != SW_VERDICT_FITS)
        return SW_OK;
    out->torque_low_Nm = w->torque_low_Nm;
    out->torque_high_Nm = w->torque_high_Nm;
    out->torque_Nm = sw__is_set(out->flat_N) ? w->torque_Nm : w->torque_low_Nm;
    sw_spread_out s;
    int status = tensions(strap, spread, out->torque_Nm, &s, err);
    if (status)
        return status;
    out->preload_low_N = s.preload_low_N;
    out->preload_N = s.preload_N;
    out->preload_high_N = s.preload_high_N;
    out->yield_use_high = s.yield_use_high;
    out->alpha = s.alpha;
    status = toes(strap, out, err);
    if (!status)
        out->margin = sw__tight_margin(d, out->toe_force_low_N);
    return status;
}

static void start(const sw_tight_in *in, sw_tight_out *out)
{
    for (const sw_field *f = sw__tight_out_fields; f->name; f++)
        if (f->type == SW_FIELD_NUMBER)
            memcpy((char *)out + f->offset, &(double){SW_UNSET},
                   sizeof(double));
    out->verdict = SW_VERDICT_NONE;
    out->governs = SW_GOVERNS_SLIDE;
    out->straps = in->straps;
    out->required_margin = in->required_margin;
    out->flat_N = in->toe_limit_N;
    out->twist_factor = 1;
}

static int solve(const sw_tight_in *in, const sw_strap_in *strap,
                 const sw_spread_in *spread, sw_tight_out *out, sw_error *err)
{
    sw__tight_need d = {*in, 0, 0, SW_UNSET, 0};
    int status = sw__tight_open(&d.in, strap, err);
    if (status)
        return status;
    start(&d.in, out);
    status = sw__tight_find(&d, strap, out, err);
    if (status)
        return status;
    out->pull_share = d.push / (d.in.friction * d.in.straps);
    out->flat_N = d.limit_N;
    const int limited = sw__is_set(d.limit_N);
    const int apart = !limited || d.limit_N > out->hold_N;
    if (!d.pushed && apart) {
        const sw_window_out w =
            window(strap, spread, out->hold_N, d.limit_N, err);
        if (w.status)
            return w.status;
        status = take_window(&d, strap, spread, &w, out, err);
    } else {
        sw_spread_out asked;
        status = tensions(strap, spread, SW_UNSET, &asked, err);
        out->alpha = asked.alpha;
        out->coverage = asked.coverage;
    }
    if (!status)
        say(&d, out);
    return status;
}

sw_tight_out sw_tight(const sw_tight_in *in, const sw_strap_in *strap,
                      const sw_spread_in *spread, sw_error *err)
{
    sw_tight_out out;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    int status = SW_OK;
    if (!in || !strap || !spread)
        status = sw__fail_null(err, !in ? "in" : !strap ? "strap" : "spread");
    if (!status)
        status = solve(in, strap, spread, &out, err);
    if (status) {
        memset(&out, 0, sizeof out);
        sw__spoil(&out, SW_STRUCT_TIGHT_OUT, status);
    }
    return out;
}

const char *sw_tight_not_checked(const sw_tight_in *in, int index)
{
    static const char *const always[] = {
        "flatness after release: a thin part between its supports bends under "
        "far less",
        "the part itself: it is taken as rigid, with a support under every toe",
        "local slip, chatter and a dull or broken tool",
        "T-slot lips, T-nut, thread engagement: the machine maker's limit "
        "governs",
        "settling after tightening; check the torque after the first pass",
    };
    static const char *const no_size =
        "turning and tipping: give the part's length and width";
    static const char *const two_straps =
        "tipping over the line through the two straps: the part must lie on "
        "more than the points below them";
    static const char *const one_strap =
        "turning and tipping about a single strap: use two, or a stop";
    const int count = sizeof always / sizeof always[0];
    if (in && in->straps == 1 && index-- == 0)
        return one_strap;
    if (in && in->straps == 2 && index-- == 0)
        return two_straps;
    if (in && in->straps != 1 && !sw__is_set(in->part_length_mm) &&
        index-- == 0)
        return no_size;
    return index >= 0 && index < count ? always[index] : NULL;
}
