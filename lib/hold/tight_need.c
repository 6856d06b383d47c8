/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tight need: the force that each of equal straps round a part must press with,
 * by closed forms.
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
double sw__tight_margin(const sw__tight_need *d, double P)
{
    enum { HALVINGS = 60 };
    const sw_tight_in *in = &d->in;
    const double pull = d->pull, push = d->push;
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
int sw__tight_find(sw__tight_need *d, const sw_strap_in *strap,
                   sw_tight_out *out, sw_error *err)
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
