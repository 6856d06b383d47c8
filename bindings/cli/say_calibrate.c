/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say calibrate: one's own nut factor in words, and how sure it is.
 */
#include "cli.h"

#include <math.h>

static void say_factor(page *p, double K)
{
    if (K >= 0.01 && K < 10)
        page_fixed(p, K, 3);
    else
        page_number(p, K, 3);
}

static void say_factors(page *p, double low, double high)
{
    if (!is_known(low)) {
        page_add(p, "0" KEEP ".." KEEP "no end");
        return;
    }
    say_factor(p, low);
    page_add(p, KEEP ".." KEEP);
    say_factor(p, high);
}

static void say_share(page *p, double share)
{
    page_number(p, 100 * share, 5);
    page_add(p, KEEP "%");
}

static void head(page *p, const sw_calibrate_out *o, const sw_pairs *pairs)
{
    const sw_pairs_out about = sw_pairs_about(pairs, NULL);
    const size_t start = p->length;
    page_add(p, o->thread);
    page_add(p, ", ");
    page_number(p, o->n, 6);
    page_add(p, " pairs");
    if (about.name[0]) {
        page_add(p, ": ");
        page_add(p, about.name);
    }
    if (about.lubrication[0]) {
        page_add(p, about.name[0] ? "; " : ": ");
        page_add(p, about.lubrication);
    }
    page_wrap(p, start, 0);
    page_add(p, "\n\n");
}

static void factor(page *p, const sw_calibrate_in *full,
                   const sw_calibrate_out *o)
{
    const size_t start = say_label(p, "nut factor K");
    say_factor(p, o->nut_factor);
    page_add(p, o->warnings & SW_WARN_FACTOR_IMPLAUSIBLE
                    ? ", which hardly any nut has: look at units and thread; "
                    : ", the one to use; ");
    say_share(p, full->confidence);
    page_add(p, " sure within ");
    say_factors(p, o->nut_factor_low, o->nut_factor_high);
    say_done(p, start);
}

/* "+-25 %" and what it says: the ends lie about the middle as factors. */
static void plus_minus(page *p, double pct)
{
    const double s = pct / 100, ratio = (1 + s) / (1 - s);
    page_add(p, "\xc2\xb1");
    page_number(p, pct, pct < 10 ? 2 : 3);
    page_add(p, KEEP "%");
    if (!(s < 0.999))
        return;
    page_add(p, ", that is from ");
    page_fixed(p, 1 / sqrt(ratio), 2);
    page_add(p, " to ");
    page_fixed(p, sqrt(ratio), 2);
    page_add(p, " of the force aimed at, the highest ");
    page_number(p, ratio, 3);
    page_add(p, " times the lowest");
}

static void scatter(page *p, const sw_calibrate_in *full,
                    const sw_calibrate_out *o)
{
    size_t start = say_label(p, "scatter of force");
    plus_minus(p, o->scatter_pct);
    page_add(p, "; it would hold ");
    say_share(p, full->proportion);
    page_add(p, " of such studs, were these pairs all there are");
    say_done(p, start);
    start = say_label(p, "to rely on");
    page_add(p, "K within ");
    say_factors(p, o->tolerance_low, o->tolerance_high);
    page_add(p, ": with ");
    say_share(p, full->confidence);
    page_add(p, " confidence at least ");
    say_share(p, full->proportion);
    page_add(p, " of such studs; force ");
    plus_minus(p, o->tolerance_pct);
    say_done(p, start);
}

/* What it comes to at the torque of the tightest pair. */
static void at_torque(page *p, int us, const sw_calibrate_in *full,
                      const sw_calibrate_out *o, const sw_pairs *pairs)
{
    double torque = 0;
    for (int i = 0; i < sw_pairs_count(pairs); i++)
        torque = fmax(torque, sw_pairs_at(full, pairs, i, NULL).torque_Nm);
    const sw_thread_out t = sw_thread(o->thread, NULL);
    const double per_K =
        1000 * (torque - full->prevailing_torque_Nm) / t.nominal_mm;
    const size_t start = say_label(p, "for example");
    say_torque(p, us, torque);
    page_add(p, " gives ");
    say_force(p, us, per_K / o->nut_factor);
    if (is_known(o->tolerance_low) && o->tolerance_low > 0) {
        page_add(p, ", to rely on: ");
        say_force_range(p, us, per_K / o->tolerance_high,
                        per_K / o->tolerance_low);
    }
    say_done(p, start);
}

static void others(page *p, const sw_calibrate_out *o)
{
    const size_t start = say_label(p, "K otherwise");
    say_factor(p, o->nut_factor_mean);
    page_add(p, " mean of the pairs' own K (standard deviation ");
    say_factor(p, o->nut_factor_sd);
    page_add(p, "); ");
    say_factor(p, o->nut_factor_origin);
    page_add(p, " torque fitted on force through zero; ");
    say_factor(p, o->nut_factor_mean_force);
    page_add(p, " mean torque over mean force");
    say_done(p, start);
}

/* One newton per N.m in lbf per ft-lbf: a foot in metres. */
#define FOOT 0.3048

static void say_slope(page *p, int us, double slope, double se)
{
    for (int half = 0; half < 2; half++) {
        const int american = half ? !us : us;
        page_add(p, half ? KEEP "(" : "");
        page_number(p, slope * (american ? FOOT : 1), 4);
        if (is_known(se)) {
            page_add(p, KEEP "\xc2\xb1" KEEP);
            page_number(p, se * (american ? FOOT : 1), 2);
        }
        page_add(p, american ? KEEP "lbf per ft-lbf" : KEEP "N per N\xc2\xb7m");
    }
    page_add(p, ")");
}

static void say_chance(page *p, double chance)
{
    if (!is_known(chance))
        return;
    page_add(p, chance < 0.05 ? ", hardly chance (p = "
                              : ", which may be chance (p = ");
    page_number(p, chance, 2);
    page_add(p, ")");
}

static void lines(page *p, int us, const sw_calibrate_out *o)
{
    size_t start = say_label(p, "fitted lines");
    page_add(p, "through zero ");
    say_slope(p, us, o->slope, o->slope_se);
    if (is_known(o->line_slope)) {
        page_add(p, "; free ");
        say_slope(p, us, o->line_slope, o->line_slope_se);
        page_add(p, " with ");
        say_force(p, us, o->line_intercept_N);
        page_add(p, " at no torque");
        say_chance(p, o->line_intercept_p);
    }
    say_done(p, start);
    if (is_known(o->order_trend_p)) {
        start = say_label(p, "K from row to row");
        page_add(p, "changes");
        say_chance(p, o->order_trend_p);
        if (is_known(o->torque_trend_p)) {
            page_add(p, "; with the torque it changes");
            say_chance(p, o->torque_trend_p);
        }
        say_done(p, start);
    }
}

static void furthest(page *p, const sw_calibrate_out *o)
{
    if (!is_known(o->outlier_pair))
        return;
    const size_t start = say_label(p, "furthest out");
    page_add(p, "pair ");
    page_number(p, o->outlier_pair, 6);
    page_add(p, ", K ");
    page_add(p, o->outlier_deviation < 0 ? "low" : "high");
    page_add(p, " by ");
    page_number(p, fabs(o->outlier_deviation), 3);
    page_add(p, " standard deviations; chance allows ");
    page_number(p, o->outlier_limit, 3);
    say_done(p, start);
}

static void say_mu(page *p, double mu, double low, double high,
                   const char *where)
{
    page_fixed(p, mu, 3);
    if (is_known(low)) {
        page_add(p, " (");
        page_fixed(p, low, 3);
        page_add(p, KEEP ".." KEEP);
        page_fixed(p, high, 3);
        page_add(p, ")");
    }
    page_add(p, where);
}

static void friction(page *p, const sw_calibrate_out *o)
{
    if (!is_known(o->mu_total))
        return;
    const size_t start = say_label(p, "friction");
    say_mu(p, o->mu_thread, o->mu_thread_low, o->mu_thread_high,
           " in the thread, ");
    say_mu(p, o->mu_seat, o->mu_seat_low, o->mu_seat_high, " under the nut; ");
    say_mu(p, o->mu_total, o->mu_total_low, o->mu_total_high,
           " were it the same in both");
    say_done(p, start);
}

void say_calibrate(page *p, request *r, const sw_calibrate_out *o)
{
    sw_calibrate_in full = r->question.in.calibrate;
    const sw_pairs *pairs = r->question.pairs;
    if (sw_calibrate_resolve(&full, pairs, NULL))
        return; /* solved before, so it resolves */
    head(p, o, pairs);
    factor(p, &full, o);
    scatter(p, &full, o);
    at_torque(p, r->us, &full, o, pairs);
    page_add(p, "\n");
    others(p, o);
    lines(p, r->us, o);
    furthest(p, o);
    friction(p, o);
}
