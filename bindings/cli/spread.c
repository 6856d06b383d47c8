/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Spread: the second question of torque, preload and strap: how the same
 * torque scatters.
 */
#define _POSIX_C_SOURCE 200809L
#include "cli.h"

#include <math.h>
#include <stdio.h>
#include <string.h>
#include <unistd.h>

/* Whether an option of the second question was given. */
int spread_asked(const request *r)
{
    for (int i = 0; r->with && sw_field_at(r->with->beside, i); i++) {
        char name[48];
        spell_option(sw_field_at(r->with->beside, i)->name, name, sizeof name,
                     NULL);
        if (request_given(r, name))
            return 1;
    }
    return 0;
}

/* Shorter runs are over before anybody reads. */
enum { WORTH_TELLING = 500000 };

static int tell(double done, void *with)
{
    int *last = with;
    const int percent = (int)(100 * done);
    if (percent > *last) {
        *last = percent;
        fprintf(stderr, "\rtrials %3d %%", percent);
        fflush(stderr);
    }
    return 0;
}

static int on_terminal(const sw_spread_in *s)
{
    return is_known(s->trials) && s->trials >= WORTH_TELLING &&
           isatty(STDERR_FILENO);
}

int spread_strap(request *r, answer *a)
{
    int last = -1;
    const question *q = &r->question;
    const int telling = on_terminal(&q->beside.spread);
    a->out.strap_spread = sw_strap_spread(
        &q->in.strap, &q->beside.spread, telling ? tell : NULL, &last, &a->err);
    if (telling) {
        fputs("\r              \r", stderr);
        fflush(stderr);
    }
    return a->out.status ? complain_error(r, &a->err) : DONE;
}

int spread_torque(request *r, answer *a)
{
    a->out.spread =
        sw_spread(&r->question.in.torque, &r->question.beside.spread, &a->err);
    return a->out.status ? complain_error(r, &a->err) : DONE;
}

/* "95 of 100" */
void say_coverage(page *p, double coverage)
{
    double of = 100;
    while (of < 1e4 && fabs(coverage * of - round(coverage * of)) > 1e-6)
        of *= 10;
    page_number(p, round(coverage * of), 6);
    page_add(p, KEEP "of" KEEP);
    page_number(p, of, 6);
}

/* "wrench-oiled, ±25 %" or "±25 %" */
static void say_scatter(page *p, const char *method, double pct)
{
    page_add(p, method);
    page_add(p, method[0] ? ", " : "");
    page_add(p, "±");
    page_number(p, pct, 3);
    page_add(p, KEEP "%");
}

static void say_label_of(page *p, double coverage, size_t *start)
{
    page label = {0};
    say_coverage(&label, coverage);
    page_add(&label, " give");
    *start = say_label(p, label.text ? label.text : "");
    page_free(&label);
}

/* Where K or friction is a table's, all of the spread moves with it. */
static void say_table_factor(page *p, const request *r)
{
    for (int i = 0; r->topic->assumed; i++) {
        const sw_assumption a = r->topic->assumed(&r->question, i, NULL);
        if (a.status)
            return;
        if ((strcmp(a.name, "nut_factor") != 0 &&
             strcmp(a.name, "mu_seat") != 0) ||
            !(a.low < a.high))
            continue;
        page_add(p, "; ");
        page_add(p, a.name[0] == 'n' ? "K itself is a table's, "
                                     : "friction itself is a table's, ");
        page_number(p, a.low, 2);
        page_add(p, KEEP ".." KEEP);
        page_number(p, a.high, 2);
        page_add(p, ", and moves all of this");
        return;
    }
}

void say_spread(page *p, const request *r, const sw_spread_out *s)
{
    size_t start;
    say_label_of(p, s->coverage, &start);
    say_force_range(p, r->us, s->preload_low_N, s->preload_high_N);
    page_add(p, ": ");
    say_scatter(p, s->method, s->scatter_pct);
    page_add(p, ", that is ");
    page_number(p, s->preload_low_N / s->preload_N, 2);
    page_add(p, KEEP "to" KEEP);
    page_number(p, s->preload_high_N / s->preload_N, 3);
    page_add(p, " times the force aimed at");
    if (is_known(s->tool_share)) {
        page_add(p, "; ");
        say_percent(p, s->tool_share);
        page_add(p, " of its variance from the torque tool, the rest from "
                    "friction");
    }
    say_table_factor(p, r);
    say_done(p, start);
}

/* "11.6 .. 24.0 kN (..), median 16.7 kN (..)" */
static void say_quantiles(page *p, int us, const char *label, double low,
                          double median, double high)
{
    const size_t start = say_label(p, label);
    say_force_range(p, us, low, high);
    page_add(p, ", median ");
    say_force(p, us, median);
    say_done(p, start);
}

void say_strap_spread(page *p, request *r, const sw_strap_spread_out *s)
{
    size_t start = p->length;
    page_add(p, "\nThis torque again and again (");
    say_scatter(p, s->method, s->scatter_pct);
    page_add(p, "): ");
    say_coverage(p, s->coverage);
    page_add(p, " lie between\n");
    page_wrap(p, start, 0);
    page_add(p, "\n");
    say_quantiles(p, r->us, "stud tension", s->preload_low_N, s->preload_N,
                  s->preload_high_N);
    say_quantiles(p, r->us, "toe force", s->toe_force_low_N, s->toe_force_N,
                  s->toe_force_high_N);
    start = say_label(p, "");
    page_add(p, "high over low ");
    page_number(p, s->toe_ratio, 3);
    say_done(p, start);
    say_quantiles(p, r->us, "side pull", s->side_pull_low_N, s->side_pull_N,
                  s->side_pull_high_N);
    start = say_label(p, "");
    page_add(p, "toward the stud positive");
    if (s->walks_share > 0) {
        page_add(p, "; the strap walks in ");
        say_percent(p, s->walks_share);
    }
    say_done(p, start);
    start = say_label(p, "drawn");
    page_number(p, s->trials, 9);
    page_add(
        p,
        r->question.beside.spread.vary == SW_VARY_PRELOAD
            ? " trials: the tightening alone"
            : " trials: tightening, heights, and evenly what the strap's own "
              "band holds, which is no count of how often");
    say_done(p, start);
}
