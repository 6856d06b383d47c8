/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Run tight: the torque on every nut, from strap, part and cut, in one line;
 * or that there is none, and what would change that.
 */
#include "cli.h"

#include <math.h>
#include <string.h>

enum { REMEDIES_MOST = 8 };

typedef struct {
    sw_tight_out out;
    answer remedy[REMEDIES_MOST];
    int remedies;
} told;

static int solve(request *r, told *t)
{
    answer a;
    int status = calibration_take(r);
    if (status)
        return status;
    r->topic->solve(&r->question, &a);
    if (a.out.status)
        return complain_error(r, &a.err);
    t->out = a.out.tight;
    t->remedies = 0;
    if (t->out.verdict == SW_VERDICT_FITS)
        return DONE;
    const topic *remedy = topic_named("remedy");
    while (t->remedies < REMEDIES_MOST) {
        answer *one = &t->remedy[t->remedies];
        r->question.arguments.rank = t->remedies;
        remedy->solve(&r->question, one);
        if (one->out.status)
            break;
        t->remedies++;
    }
    return DONE;
}

/* A torque that is set, on the side that still holds: three digits of N.m. */
static double set_up(double Nm)
{
    const double step = pow(10, floor(log10(Nm)) - 2);
    return step * ceil(Nm / step - 1e-9);
}

static double set_down(double Nm)
{
    const double step = pow(10, floor(log10(Nm)) - 2);
    return step * floor(Nm / step + 1e-9);
}

static void say_headline(page *p, const request *r, const sw_tight_out *t)
{
    const size_t start = p->length;
    if (t->verdict != SW_VERDICT_FITS) {
        page_add(p, t->sentence);
        page_add(p, ".");
    } else {
        const double least = set_up(t->torque_low_Nm);
        say_torque(p, r->us, fmax(least, t->torque_Nm));
        page_add(p, t->straps > 1 ? " on each of " : " on the nut");
        if (t->straps > 1) {
            page_number(p, t->straps, 3);
            page_add(p, KEEP "nuts");
        }
        if (is_known(t->flat_N) && set_down(t->torque_high_Nm) > least) {
            page_add(p, "; anything within ");
            say_torque_range(p, r->us, least, set_down(t->torque_high_Nm));
            page_add(p, " does");
        } else if (!is_known(t->flat_N)) {
            page_add(p, ": the least that holds, no limit was given");
        }
        page_add(p, ".");
    }
    page_wrap(p, start, 0);
    page_add(p, "\n\n");
}

static void say_hold(page *p, int us, const sw_tight_out *t)
{
    size_t start = say_label(p, "each toe needs");
    say_force(p, us, t->hold_N);
    page_add(p, t->governs == SW_GOVERNS_LIFT
                    ? ", so that the part is not lifted off a support"
                    : ", so that the part does not slide");
    page_add(p, ", ");
    page_number(p, t->required_margin, 3);
    page_add(p, " times the cut");
    say_done(p, start);
    start = say_label(p, "");
    page_add(p, "against sliding ");
    say_force(p, us, t->hold_slide_N);
    page_add(p, ", against lifting ");
    say_force(p, us, t->hold_lift_N);
    say_done(p, start);
}

static void say_loads(page *p, const sw_tight_out *t)
{
    size_t start = say_label(p, "of the friction");
    say_percent(p, t->pull_share);
    page_add(p, " goes to the straps' own side pull and nut drag");
    say_done(p, start);
    if (!(t->twist_factor > 1))
        return;
    start = say_label(p, "turning");
    page_add(p, "a cut beside the middle needs ");
    page_number(p, t->twist_factor, 3);
    page_add(p, " times the friction of one through it");
    say_done(p, start);
}

static void say_result(page *p, int us, const sw_tight_out *t)
{
    size_t start = say_label(p, "each toe gets");
    say_force_range(p, us, t->toe_force_low_N, t->toe_force_high_N);
    page_add(p, " in ");
    say_coverage(p, t->coverage);
    page_add(p, " tightenings, about ");
    say_force(p, us, t->toe_force_N);
    say_done(p, start);
    start = say_label(p, "each stud gets");
    say_force_range(p, us, t->preload_low_N, t->preload_high_N);
    if (is_known(t->yield_use_high)) {
        page_add(p, ", at most ");
        say_percent(p, t->yield_use_high);
        page_add(p, " of its yield");
    }
    say_done(p, start);
    if (!is_known(t->margin))
        return;
    start = say_label(p, "margin on the cut");
    page_number(p, floor(100 * t->margin + 1e-6) / 100, 3);
    page_add(p, " at the low end of that, ");
    page_number(p, t->required_margin, 3);
    page_add(p, " wanted");
    say_done(p, start);
}

static void say_remedy(page *p, int us, const sw_remedy_out *m)
{
    page_add(p, "  ");
    const size_t start = p->length;
    switch (m->remedy) {
    case SW_REMEDY_STRAPS:
        page_number(p, m->value, 3);
        page_add(p, " straps");
        break;
    case SW_REMEDY_CUT:
        page_add(p, "a cut of ");
        say_force(p, us, m->value);
        break;
    case SW_REMEDY_TIGHTENING:
        page_add(p, "a way of tightening with ±");
        page_number(p, m->value, 3);
        page_add(p, KEEP "% (strapwise methods)");
        break;
    case SW_REMEDY_LEVEL:
        page_add(p, "level straps under spherical washers, held while the nut "
                    "turns");
        break;
    default:
        page_add(p, "supports that grip, friction ");
        page_number(p, m->value, 3);
        page_add(p, " by test");
    }
    page_add(p, ": ");
    say_torque(p, us, m->torque_Nm);
    page_wrap(p, start, 4);
    page_add(p, "\n");
}

static void say_remedies(page *p, int us, const told *t)
{
    page_add(p, t->remedies ? "\nEach of these alone opens a window\n"
                            : "\nNo single change that was tried opens a "
                              "window: more straps, tightening, level straps, "
                              "grip, a lighter cut.\n");
    for (int i = 0; i < t->remedies; i++)
        say_remedy(p, us, &t->remedy[i].out.remedy);
}

static void say_notes(page *p, request *r)
{
    page_add(p, "\nnot checked\n");
    for (int i = 0; sw_tight_not_checked(&r->question.tight, i); i++) {
        page_add(p, "  - ");
        const size_t start = p->length;
        page_add(p, sw_tight_not_checked(&r->question.tight, i));
        page_wrap(p, start, 4);
        page_add(p, "\n");
    }
    say_caution(p);
}

/* Friction is what nobody knows; what its usual range does to the answer. */
static void say_friction(page *p, const request *r, const sw_tight_out *t)
{
    const sw_field *f = sw_field_named(SW_STRUCT_TIGHT_IN, "friction");
    if (request_given(r, "--friction") || !is_known(t->hold_N))
        return;
    const size_t start = say_label(p, "matters most");
    const double end[] = {f->low, f->high};
    page_add(p, "friction under the part: ");
    for (int i = 0; i < 2; i++) {
        sw_tight_in other = r->question.tight;
        other.friction = end[i];
        const sw_tight_out o = sw_tight(&other, &r->question.in.strap,
                                        &r->question.beside.spread, NULL);
        page_add(p, i ? "; at " : "at ");
        page_number(p, end[i], 3);
        if (o.status || !is_known(o.hold_N)) {
            page_add(p, " no force holds");
            continue;
        }
        page_add(p, " each toe needs ");
        say_force(p, r->us, o.hold_N);
    }
    say_done(p, start);
}

/* Its own defaults always, those of the strap when they were asked for. */
static void say_defaults(page *p, request *r)
{
    if (r->assumed) {
        say_assumed(p, r->us, r->topic, &r->question, NULL);
        return;
    }
    int lines = 0;
    for (int i = 0;; i++) {
        const sw_assumption a = sw_tight_assumed(
            &r->question.tight, &r->question.in.strap, i, NULL);
        if (a.status)
            break;
        if (!a.word[0] && !is_known(a.value))
            continue;
        if (lines++ == 0)
            page_add(p, "\nassumed (give it to replace it; --assumed lists "
                        "those of strap and stud too)\n");
        say_assumed_one(p, r->us, &a);
    }
}

static void whole_json(request *r, page *p, told *t)
{
    json j = json_start(p);
    answer a;
    a.out.tight = t->out;
    json_fields(&j, r, r->topic, &a);
    json_open(&j, "remedies", '[');
    for (int i = 0; i < t->remedies; i++) {
        json_open(&j, NULL, '{');
        json_fields(&j, r, topic_named("remedy"), &t->remedy[i]);
        json_close(&j, '}');
    }
    json_close(&j, ']');
    json_calibration(&j, r);
    json_assumed(&j, r->topic, &r->question, NULL);
    json_open(&j, "not_checked", '[');
    for (int i = 0; sw_tight_not_checked(&r->question.tight, i); i++)
        json_text(&j, NULL, sw_tight_not_checked(&r->question.tight, i));
    json_close(&j, ']');
    json_warnings(&j, "warnings", r->warnings);
    json_end(&j);
}

int run_tight(request *r, page *p)
{
    told t;
    const int status = solve(r, &t);
    if (status)
        return status;
    r->warnings = t.out.warnings | r->calibration.warnings;
    const int fits = t.out.verdict == SW_VERDICT_FITS;
    if (r->json) {
        whole_json(r, p, &t);
        return fits ? DONE : NOT_MET;
    }
    say_headline(p, r, &t.out);
    if (is_known(t.out.hold_N))
        say_hold(p, r->us, &t.out);
    say_loads(p, &t.out);
    if (fits)
        say_result(p, r->us, &t.out);
    else
        say_remedies(p, r->us, &t);
    say_friction(p, r, &t.out);
    say_calibration(p, r);
    say_warnings(p, r->warnings);
    say_defaults(p, r);
    say_notes(p, r);
    return fits ? DONE : NOT_MET;
}
