/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Run hold: every operation of a job, or one, judged by the engine.
 */
#include "job.h"

#include <string.h>

#include <stdlib.h>

/* ---- one operation ---- */

verdict judged_verdict(const judged *h)
{
    const sw_hold_out *o = &h->out;
    if (job_worst_fault(h->job, h->operation) >= 0)
        return CLAMP_FAILS;
    if (o->rest != SW_REST_STAYS || o->first_to_go == SW_GOES_REST)
        return NO_REST;
    if (h->rocks >= 0)
        return CAN_ROCK;
    if (o->margin >= o->required_margin)
        return STAYS;
    return o->margin >= 1 ? TOO_LITTLE : GOES;
}

int judged_has_limit_torque(const judged *h)
{
    int turned = 0;
    for (int i = 0;; i++) {
        const sw_job_clamp_out c = sw_job_clamp(h->job, i, NULL);
        if (c.status)
            break;
        if (!sw_job_has_clamp(h->job, h->operation, i))
            continue;
        if (!is_known(c.torque_Nm))
            return 0;
        turned++;
    }
    return turned && is_known(h->out.hold_scale);
}

/* Toe force, side pull and drag go with the stud's tension, and that with what
 * the torque has beyond the prevailing one. */
double judged_limit_torque(const judged *h, int clamp)
{
    const sw_job_clamp_out c = sw_job_clamp(h->job, clamp, NULL);
    if (c.status || !is_known(c.torque_Nm) || !is_known(h->out.hold_scale))
        return SW_UNSET;
    const double lost =
        is_known(c.prevailing_torque_Nm) ? c.prevailing_torque_Nm : 0;
    return lost + (c.torque_Nm - lost) * h->out.hold_scale;
}

int judged_limit_breaks(const judged *h)
{
    int first = -1;
    double worst = 1;
    for (int i = 0;; i++) {
        const sw_job_clamp_out c = sw_job_clamp(h->job, i, NULL);
        if (c.status)
            return first;
        const double Nm = judged_limit_torque(h, i);
        if (!sw_job_has_clamp(h->job, h->operation, i) || !is_known(Nm) ||
            !is_known(c.yield_torque_Nm) || !(Nm > worst * c.yield_torque_Nm))
            continue;
        first = i;
        worst = Nm / c.yield_torque_Nm;
    }
}

int judged_point(const judged *h, int point, sw_hold_point_out *worst)
{
    const int samples = (int)h->about.samples;
    if (point < 0 || point >= (int)h->about.points)
        return 0;
    for (int k = 0; k < samples; k++) {
        const sw_hold_point_out one =
            sw_hold_point(h->hold, point * samples + k, NULL);
        if (one.status)
            return 0;
        if (k == 0 || one.margin < worst->margin)
            *worst = one;
    }
    return 1;
}

static int judge(request *r, const sw_job *job, int operation, judged *h)
{
    sw_error err;
    memset(h, 0, sizeof *h);
    h->job = job;
    h->operation = operation;
    h->us = r->us;
    h->about = sw_job_operation(job, operation, NULL);
    if (sw_job_hold_in(job, operation, &h->in, &err))
        return job_complain(r, &err);
    if (r->required_margin) {
        const sw_quantity_out q = sw_quantity(r->required_margin, SW_KIND_RATIO,
                                              "--required-margin", &err);
        if (q.status)
            return complain_error(r, &err);
        if (!(q.value >= 1 && q.value <= 20))
            return complain(BAD_INPUT, r->command->name,
                            "--required-margin: ", r->required_margin,
                            " is outside of 1 .. 20", (char *)NULL);
        h->in.required_margin = q.value;
    }
    h->fixture = sw_job_fixture(job, operation, &err);
    if (h->fixture)
        h->hold = sw_hold_new(h->fixture, &h->in, NULL, NULL, &err);
    if (!h->hold)
        return complain_error(r, &err);
    h->out = sw_hold_total(h->hold, &err);
    h->rocks = sw_job_rocks(job, operation, NULL);
    return h->out.status ? complain_error(r, &err) : DONE;
}

static void release(judged *h)
{
    sw_hold_free(h->hold);
    sw_fixture_free(h->fixture);
}

/* ---- all that were asked for ---- */

typedef struct {
    judged *of;
    int count, worst;
} judgement;

/* A clamp that fails is worse than no rest, and that than any margin. */
static double rank(const judged *h)
{
    return judged_verdict(h) == CLAMP_FAILS ? -2
           : judged_verdict(h) == NO_REST || judged_verdict(h) == CAN_ROCK
               ? -1
               : h->out.margin / h->out.required_margin;
}

static int no_operation(const request *r, const sw_job *job)
{
    page line = {0};
    page_add(&line, "--operation: the job has no operation ");
    spell_quoted(&line, r->operation);
    for (int i = 0;; i++) {
        const sw_job_operation_out o = sw_job_operation(job, i, NULL);
        if (o.status)
            break;
        page_add(&line, i ? ", " : "; there is ");
        page_add(&line, o.name);
    }
    return complain_page(BAD_INPUT, r->command->name, &line);
}

static int judge_all(request *r, const sw_job *job, judgement *g)
{
    const int only =
        r->operation ? sw_job_find_operation(job, r->operation) : -1;
    if (r->operation && only < 0)
        return no_operation(r, job);
    const int all = (int)sw_job_about(job, NULL).operations;
    g->of = calloc((size_t)all, sizeof *g->of);
    if (!g->of)
        return complain(NOT_FINISHED, r->command->name, "out of memory",
                        (char *)NULL);
    for (int i = 0; i < all; i++) {
        if (only >= 0 && i != only)
            continue;
        const int status = judge(r, job, i, &g->of[g->count++]);
        if (status)
            return status;
        if (rank(&g->of[g->count - 1]) < rank(&g->of[g->worst]))
            g->worst = g->count - 1;
        r->warnings |= g->of[g->count - 1].out.warnings;
    }
    r->warnings |= sw_job_about(job, NULL).warnings;
    return DONE;
}

/* "map: skim is drawn; bolt holes: --operation" */
static void say_drawn(page *p, const request *r, const judgement *g)
{
    if (!r->map)
        return;
    page_add(p, "\n");
    const size_t start = say_label(p, "map");
    page_add(p, g->of[g->worst].about.name);
    page_add(p, " is drawn");
    int said = 0;
    for (int i = 0; i < g->count; i++) {
        if (i == g->worst)
            continue;
        page_add(p, said++ ? ", " : ", the worst of them; not drawn: ");
        page_add(p, g->of[i].about.name);
    }
    page_add(p, said ? ": name it with --operation" : "");
    say_done(p, start);
}

static void whole_text(request *r, page *p, const judgement *g)
{
    const judged *worst = &g->of[g->worst];
    const size_t start = p->length;
    if (g->count > 1 && judged_verdict(worst) != STAYS) {
        page_add(p, worst->about.name);
        page_add(p, ": ");
    }
    say_verdict(p, worst);
    page_wrap(p, start, 0);
    page_add(p, "\n");
    for (int i = 0; i < g->count; i++)
        say_hold(p, r, &g->of[i], g->count == 1);
    say_drawn(p, r, g);
    say_job_warnings(p, worst->job, r->operation ? worst->operation : -1,
                     r->warnings);
    say_job_assumed(p, r, worst->job, r->operation ? worst->operation : -1);
    say_job_not_checked(p, 1);
    say_caution(p);
}

static void whole_json(request *r, page *p, const judgement *g)
{
    json j = json_start(p);
    json_hold(&j, &g->of[g->worst]);
    json_open(&j, "operations", '[');
    for (int i = 0; i < g->count; i++) {
        json_open(&j, NULL, '{');
        json_hold(&j, &g->of[i]);
        json_close(&j, '}');
    }
    json_close(&j, ']');
    json_job_assumed(&j, g->of[0].job, r->operation ? g->of[0].operation : -1);
    json_job_not_checked(&j, 1);
    json_job_warnings(&j, g->of[0].job, r->warnings);
    json_end(&j);
}

/* The operation that is worst off; the others can be asked for by name. */
static int draw(request *r, const judgement *g)
{
    sw_error err;
    sw_hold_map_in how;
    const judged *h = &g->of[g->worst];
    if (!r->map)
        return DONE;
    sw_hold_map_defaults(&how);
    how.show = r->us ? SW_SHOW_US_FIRST : SW_SHOW_SI_FIRST;
    return picture_deliver(
        r, sw_hold_map(h->job, h->operation, h->hold, &how, &err), r->map,
        &err);
}

int run_hold(request *r, page *p)
{
    sw_job *job;
    judgement g = {NULL, 0, 0};
    int status = picture_refused(r, "--map", r->map);
    if (!status)
        status = job_read(r, &job);
    if (status)
        return status;
    status = judge_all(r, job, &g);
    if (!status)
        status = draw(r, &g);
    if (!status) {
        (r->json ? whole_json : whole_text)(r, p, &g);
        status = judged_verdict(&g.of[g.worst]) == STAYS ? DONE : NOT_MET;
    }
    for (int i = 0; i < g.count; i++)
        release(&g.of[i]);
    free(g.of);
    sw_job_free(job);
    return status;
}
