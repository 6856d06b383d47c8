/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Window: the torque between two limits, or that there is none.
 */
#include "cli.h"

#include <math.h>

static void say_entry(page *p, int us, const char *label, double N,
                      const char *what)
{
    const size_t start = say_label(p, label);
    say_force(p, us, N);
    page_add(p, what);
    say_done(p, start);
}

static void say_none(page *p, const sw_window_out *w)
{
    const size_t start = p->length;
    page_add(p, "No torque works: the limits are ");
    page_number(p, w->ratio, 3);
    page_add(p, " apart, one torque spreads the force by ");
    page_number(p, w->alpha, 3);
    page_add(p, ". ");
    const int stud = (w->warnings & SW_WARN_STUD_ENDS_WINDOW) != 0;
    if (stud && !(w->ratio > 1)) {
        page_add(p, "The stud yields below the lower limit: a larger one, or a "
                    "better grade.");
    } else if (w->fitting_pct > 0) {
        page_add(p, "A way of tightening with ±");
        page_number(p, floor(10 * w->fitting_pct) / 10, 3);
        page_add(p, KEEP "% or better would fit; else the limits must come "
                         "farther apart.");
    } else {
        page_add(p, "The strap's own band alone is wider than the limits.");
    }
    page_wrap(p, start, 0);
    page_add(p, "\n");
}

static void say_fits(page *p, int us, const sw_window_out *w)
{
    size_t start = say_label(p, "torque on the nut");
    say_torque(p, us, w->torque_Nm);
    say_done(p, start);
    start = say_label(p, "");
    page_add(p, "anything within ");
    say_torque_range(p, us, w->torque_low_Nm, w->torque_high_Nm);
    page_add(p, " does");
    say_done(p, start);
    start = say_label(p, "stud tension");
    say_force_range(p, us, w->preload_low_N, w->preload_high_N);
    page_add(p, " in ");
    say_coverage(p, w->coverage);
    page_add(p, " tightenings, about ");
    say_force(p, us, w->preload_N);
    say_done(p, start);
    if (is_known(w->yield_use_high)) {
        start = say_label(p, "strength");
        say_percent(p, w->yield_use_high);
        page_add(p, " of the stud's yield at the high end");
        say_done(p, start);
    }
}

void say_window(page *p, int us, const sw_window_out *w, const char *where)
{
    say_entry(p, us, "at least", w->hold_N, where);
    say_entry(p, us, "at most", w->flat_N, where);
    const int stud = (w->warnings & SW_WARN_STUD_ENDS_WINDOW) != 0;
    const int band = w->hold_preload_N != w->hold_N;
    if (stud || band) {
        const size_t start = say_label(p, "so in the stud");
        if (w->hold_preload_N < w->flat_preload_N) {
            say_force_range(p, us, w->hold_preload_N, w->flat_preload_N);
        } else {
            page_add(p, "at least ");
            say_force(p, us, w->hold_preload_N);
            page_add(p, ", at most ");
            say_force(p, us, w->flat_preload_N);
        }
        page_add(p, band ? ", the strap's own band counted" : "");
        page_add(p, stud ? ", up to where the stud may yield at the high end"
                         : "");
        say_done(p, start);
    }
    page_add(p, "\n");
    if (w->verdict == SW_VERDICT_FITS)
        say_fits(p, us, w);
    else
        say_none(p, w);
}

static int missing(const request *r, const char *name, const char *what)
{
    return complain(BAD_INPUT, r->command->name, name, what, (char *)NULL);
}

int run_window(request *r, page *p)
{
    answer a;
    if (!request_given(r, "--hold"))
        return missing(r, "--hold",
                       ": missing; give the least force that "
                       "holds (--hold 8kN)");
    if (!request_given(r, "--flat"))
        return missing(r, "--flat",
                       ": missing; give the force not to be "
                       "exceeded (--flat 18kN)");
    const int status = calibration_take(r);
    if (status)
        return status;
    r->topic->solve(&r->question, &a);
    if (a.out.status)
        return complain_error(r, &a.err);
    const sw_window_out *w = &a.out.window;
    r->warnings = w->warnings | r->calibration.warnings;
    if (r->json) {
        json j = json_start(p);
        json_fields(&j, r, r->topic, &a);
        json_calibration(&j, r);
        json_assumed(&j, r->topic, &r->question, NULL);
        json_not_checked(&j, r->topic);
        json_warnings(&j, "warnings", r->warnings);
        json_end(&j);
    } else {
        say_window(p, r->us, w, " in the stud");
        say_calibration(p, r);
        say_warnings(p, r->warnings);
        say_assumed(p, r->us, r->topic, &r->question, NULL);
        say_not_checked(p, r->topic);
        say_caution(p);
    }
    return w->verdict == SW_VERDICT_FITS ? DONE : NOT_MET;
}
