/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tight: equal straps round a part, by closed forms.
 *
 * n straps press with P each, a support with friction mu under every toe; the
 * cut pushes with V in the plane of the table, at height h, its line passing
 * the middle of the straps at a; it lifts with L, at a too; the part weighs W.
 * The toes stand at r from the middle. S is the margin required on the cut.
 *
 * Slide. A part cannot slide where friction forces can be found that balance
 * the loads with none above mu N (the lower bound theorem; friction with given
 * N is associated). Shared out as the normals are, they take the push at the
 * centre of the normals, which overturning and lift have moved by e, and the
 * turning about it:
 *
 *   mu (n P + W - S L) - Q P >= S V (1 + (a + e)/r (1 + e/r))            (1)
 *   e = (S (V h + L a) + q h P)/(n P + W - S L)                          (2)
 *
 * is enough. Q P is what the straps themselves push with, q P their pull alone.
 * With the ends s_l, s_h of one strap's side pull and d of its nut drag, each
 * over its toe force,
 *
 *   pairs across the part   q = floor(n/2) (s_h - s_l) + (n mod 2) max|s|
 *   all from one side       q = n max|s|,           Q = q + n d          (3)
 *
 * since the pulls of a pair cancel but for their scatter, while every nut,
 * turned the same way, drags the part round the same way: n d r is a moment,
 * and friction at r answers it. d is the strap's own answer for how it is kept
 * from turning (restraint), not the high end of its band: what is locked in is
 * elastic, and gives way as soon as the part moves a little.
 *
 * Lift. Of n supports alike on a circle the one worst off loses 2 M/(n r) to an
 * overturning moment M, and L/n and its own share of L a to the lift, at least
 * as much as where the lift stands beside it:
 *
 *   P + W/n >= S (L (1 + 2 max(a, r)/r)/n + 2 V h/(n r)) + 2 q h P/(n r)  (4)
 *   P + W >= S L                            n = 1; n = 2: no overturning
 *
 * r is not above the part's shorter side here, across which the supports stand
 * closer. Two supports carry nothing over the line through them: what keeps the
 * part from tipping there is not looked at, and is told as not checked.
 *
 * (1) and (4) give the least P. One torque must bring the low end of every toe
 * above it, and the high end not above the limit of the toe: strap_window.c.
 * s and d are the strap's own, at that force, so (1) is solved again until P
 * stays where it is.
 *
 * No toe presses with less than what seats it. Without a limit, the torque is
 * the least that holds. Where mu n <= Q pressing harder only pushes the part
 * away: either its weight holds it while the toes but seat, and (1) is then an
 * upper limit of P, or nothing does.
 *
 * Sources: statics; the lower bound theorem of limit analysis. Safe against the
 * whole fixture (hold.c): friction is shared out evenly, not in the best way.
 * Supports that carry unlike loads, and stops, need that one.
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

/* What a strap does beside pressing, over its toe force at the low end. */
typedef struct {
    double low, high, drag; /* s_l, s_h, d */
    double grip;            /* toe force over stud tension */
} strap_share;

static int share_at(const sw_strap_in *strap, double preload_N,
                    strap_share *share, sw_error *err)
{
    sw_strap_in one = *strap;
    one.preload_N = preload_N;
    one.torque_Nm = SW_UNSET;
    const sw_strap_out s = sw_strap(&one, err);
    if (s.status)
        return s.status;
    if (!(s.toe_force_low_N > 0))
        return sw__fail(err, SW_ERR_NONE, "strap",
                        "strap: at the low end of its band its toe does not "
                        "press at all");
    share->low = s.side_pull_low_N / s.toe_force_low_N;
    share->high = s.side_pull_high_N / s.toe_force_low_N;
    share->drag = fabs(s.drag_N) / s.toe_force_low_N;
    share->grip = s.toe_force_low_N / preload_N;
    return SW_OK;
}

/* (3): q */
static double straps_pull(const sw_tight_in *in, const strap_share *s)
{
    const double worst = fmax(fabs(s->low), fabs(s->high));
    if (in->facing == SW_FACING_ALIKE)
        return in->straps * worst;
    const double pairs = floor(in->straps / 2);
    return pairs * (s->high - s->low) + (in->straps - 2 * pairs) * worst;
}

static double or_nothing(double value) { return sw__is_set(value) ? value : 0; }

/* Whether turning and tipping can be looked at: a circle of supports. */
static int has_circle(const sw_tight_in *in)
{
    return in->straps > 1 && sw__is_set(in->strap_radius_mm);
}

static double height(const sw_tight_in *in)
{
    return in->straps > 2 && has_circle(in) ? or_nothing(in->cut_height_mm) : 0;
}

/* The bracket of (1), with e of (2), at a toe force P and a margin S. */
static double twist(const sw_tight_in *in, double pull, double S, double P)
{
    if (!has_circle(in))
        return 1;
    const double a = or_nothing(in->cut_offset_mm), r = in->strap_radius_mm;
    const double h = height(in);
    const double N = in->straps * P + in->weight_N - S * in->lift_N;
    const double lift = in->straps > 2 ? in->lift_N * a : 0;
    const double e =
        (S * (in->cut_N * h + lift) + pull * h * P) / fmax(N, 1e-9);
    return 1 + (a + e) / r * (1 + e / r);
}

/* What the worst support loses to the cut, (4) over S. */
static double lifting(const sw_tight_in *in)
{
    const double n = in->straps;
    if (!has_circle(in) || n < 3)
        return in->lift_N;
    const double r = fmin(in->strap_radius_mm, sw__is_set(in->part_width_mm)
                                                   ? in->part_width_mm
                                                   : in->strap_radius_mm);
    const double out = fmax(or_nothing(in->cut_offset_mm), r);
    return in->lift_N * (1 + 2 * out / r) / n +
           2 * in->cut_N * height(in) / (n * r);
}

/* What is left of P at the worst support, of the pull at a toe's height. */
static double left(const sw_tight_in *in, double pull)
{
    return 1 - (height(in) > 0
                    ? 2 * pull * height(in) / (in->straps * in->strap_radius_mm)
                    : 0);
}

static double slide_N(const sw_tight_in *in, double push, double factor)
{
    const double mu = in->friction, S = in->required_margin;
    const double needs =
        S * in->cut_N * factor - mu * (in->weight_N - S * in->lift_N);
    return fmax(0, needs / (mu * in->straps - push));
}

static double lift_N(const sw_tight_in *in, double pull)
{
    return fmax(
        0, (in->required_margin * lifting(in) - in->weight_N / in->straps) /
               left(in, pull));
}

/* The largest S that (1) and (4) allow at a toe force P. */
static double margin_at(const sw_tight_in *in, double pull, double push,
                        double P)
{
    enum { HALVINGS = 60 };
    const double mu = in->friction, W = in->weight_N, n = in->straps;
    if (!(in->cut_N > 0 || in->lift_N > 0))
        return SW_UNSET;
    double low = 0, high = 1e6;
    for (int i = 0; i < HALVINGS; i++) {
        const double S = low > 0 ? sqrt(low * high) : 1e-6;
        const int slides = mu * (n * P + W - S * in->lift_N) - push * P <
                           S * in->cut_N * twist(in, pull, S, P);
        const int lifts = P * left(in, pull) + W / n < S * lifting(in);
        if (slides || lifts)
            high = S;
        else
            low = S;
        if (low == 0)
            return 0;
    }
    return low;
}

typedef struct {
    sw_tight_in in;
    double pull, push; /* q, Q */
    double limit_N;    /* of a toe: its own, or where (1) ends; or SW_UNSET */
    int pushed;        /* the straps push the part away whatever the force */
} need;

/* Where mu n <= Q: the toe force at which the weight no longer holds. */
static double most_N(const sw_tight_in *in, double push, double factor)
{
    const double mu = in->friction, S = in->required_margin;
    const double spare =
        mu * (in->weight_N - S * in->lift_N) - S * in->cut_N * factor;
    const double loss = push - mu * in->straps;
    return spare <= 0 ? 0 : loss > 0 ? spare / loss : 1e7;
}

/* The least toe force, with the strap as it is at that force. */
static int find_hold(need *d, const sw_strap_in *strap, sw_tight_out *out,
                     sw_error *err)
{
    enum { ROUNDS = 200 };
    const sw_tight_in *in = &d->in;
    const double a = strap->stud_to_toe_mm, b = strap->stud_to_heel_mm;
    strap_share s = {0, 0, 0, 1};
    if (sw__is_set(a) && sw__is_set(b) && a > 0 && b > 0)
        s.grip = b / (a + b);
    out->hold_lift_N = lift_N(in, 0);
    d->limit_N = in->toe_limit_N;
    double P = fmax(in->seat_N, fmax(out->hold_lift_N, slide_N(in, 0, 1)));
    for (int i = 0; i < ROUNDS; i++) {
        const int status = share_at(strap, P / s.grip, &s, err);
        if (status)
            return status;
        d->pull = straps_pull(in, &s);
        d->push = d->pull + in->straps * s.drag;
        if (!(left(in, d->pull) > 0)) {
            d->pushed = 1;
            out->hold_slide_N = out->hold_lift_N = SW_UNSET;
            return SW_OK;
        }
        out->hold_lift_N = lift_N(in, d->pull);
        out->twist_factor = twist(in, d->pull, in->required_margin, P);
        const double seated = fmax(in->seat_N, out->hold_lift_N);
        if (!(d->push < in->friction * in->straps)) {
            const double most = most_N(in, d->push, out->twist_factor);
            if (most <= seated) {
                d->pushed = 1;
                out->hold_slide_N = SW_UNSET;
                return SW_OK;
            }
            d->limit_N = sw__is_set(in->toe_limit_N)
                             ? fmin(in->toe_limit_N, most)
                             : most;
            out->hold_slide_N = 0;
        } else {
            d->limit_N = in->toe_limit_N;
            out->hold_slide_N = slide_N(in, d->push, out->twist_factor);
        }
        const double next = fmax(seated, out->hold_slide_N);
        if (fabs(next - P) <= 1e-9 * P) {
            P = next;
            break;
        }
        P = next;
    }
    out->hold_N = P;
    out->governs = out->hold_lift_N > out->hold_slide_N ? SW_GOVERNS_LIFT
                                                        : SW_GOVERNS_SLIDE;
    return SW_OK;
}

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

static void say(const need *d, sw_tight_out *out)
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
static int take_window(need *d, const sw_strap_in *strap,
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
        out->margin = margin_at(&d->in, d->pull, d->push, out->toe_force_low_N);
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
    need d = {*in, 0, 0, SW_UNSET, 0};
    int status = sw__tight_open(&d.in, strap, err);
    if (status)
        return status;
    start(&d.in, out);
    status = find_hold(&d, strap, out, err);
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
