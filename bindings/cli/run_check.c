/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Run check: what was understood of a job file.
 */
#include "job.h"

#include <string.h>

enum { NAME = 2, VALUE = 18 };

/* ---- text ---- */

static void say_part(page *p, int us, const sw_job_out *a)
{
    const size_t start = p->length;
    page_add(p, a->name[0] ? a->name : "part");
    if (a->material[0]) {
        page_add(p, ", ");
        page_add(p, a->material);
    }
    page_add(p, ": ");
    say_length(p, us, a->length_mm);
    page_add(p, " by ");
    say_length(p, us, a->width_mm);
    if (a->corners != 4) {
        page_add(p, " with ");
        page_number(p, a->corners, 4);
        page_add(p, " corners");
    }
    page_add(p, ", ");
    say_length(p, us, a->thickness_mm);
    page_add(p, " thick, ");
    say_force(p, us, a->weight_N);
    if (a->raised_mm > 0) {
        page_add(p, ", its supports ");
        say_length(p, us, a->raised_mm);
        page_add(p, " over the table");
    }
    page_wrap(p, start, 0);
    page_add(p, "\n");
}

static size_t entry(page *p, const char *name)
{
    page_add(p, "  ");
    const size_t start = p->length;
    page_add(p, name);
    page_add(p, KEEP);
    page_tab(p, VALUE);
    return start;
}

static void entry_done(page *p, size_t start)
{
    page_wrap(p, start, VALUE);
    page_add(p, "\n");
}

/* The places of contacts are asked of a fixture, which has them whole. */
static void say_contacts(page *p, int us, const sw_fixture *f)
{
    sw_support_in s;
    sw_stop_in stop;
    page_add(p, "\nsupports\n");
    for (int i = 0; !sw_fixture_support(f, i, &s, NULL); i++) {
        const size_t start = entry(p, s.name);
        page_add(p, "at ");
        say_place(p, us, s.x_mm, s.y_mm);
        page_add(p, ", friction ");
        page_number(p, s.friction, 4);
        if (s.z_mm != 0) {
            page_add(p, ", height ");
            say_length(p, us, s.z_mm);
        }
        if (s.needed == SW_NEEDED_NO)
            page_add(p, ", the part may lift off it");
        entry_done(p, start);
    }
    page fault = {0};
    if (say_supports_fault(&fault, f)) {
        const size_t start = entry(p, "");
        page_add(p, fault.text ? fault.text : "");
        entry_done(p, start);
    }
    page_free(&fault);
    if (sw_fixture_count(f, SW_PART_STOP))
        page_add(p, "stops\n");
    for (int i = 0; !sw_fixture_stop(f, i, &stop, NULL); i++) {
        const size_t start = entry(p, stop.name);
        page_add(p, "at ");
        say_place(p, us, stop.x_mm, stop.y_mm);
        page_add(p, ", pushes ");
        say_direction(p, stop.push_deg);
        page_add(p, ", height ");
        say_length(p, us, stop.z_mm);
        entry_done(p, start);
    }
}

static void say_torque_of(page *p, int us, const sw_job_clamp_out *c)
{
    say_torque(p, us, c->torque_Nm);
    if (c->tool[0]) {
        page_add(p, " (set ");
        page_number(p, c->setting, 5);
        page_add(p, KEEP);
        page_add(p, sw_word(SW_WORDS_TORQUE_UNIT, c->torque_unit));
        page_add(p, " on ");
        page_add(p, c->tool);
        page_add(p, ")");
    }
}

static void say_pull(page *p, int us, double N)
{
    say_force(p, us, N < 0 ? -N : N);
    page_add(p, N < 0 ? " away from the stud" : " toward it");
}

static void say_clamp(page *p, int us, const sw_job_clamp_out *c)
{
    size_t start = entry(p, c->name);
    page_add(p, sw_word(SW_WORDS_CLAMP_KIND, c->clamp_kind));
    if (c->thread[0]) {
        page_add(p, " ");
        page_add(p, c->thread);
    }
    page_add(p, " at ");
    say_place(p, us, c->x_mm, c->y_mm);
    page_add(p, ", height ");
    say_length(p, us, c->z_mm);
    if (is_known(c->toward_deg)) {
        page_add(p, ", its stud toward ");
        say_direction(p, c->toward_deg);
    }
    if (is_known(c->torque_Nm)) {
        page_add(p, ", torque ");
        say_torque_of(p, us, c);
    }
    entry_done(p, start);
    start = entry(p, "");
    page_add(p, "presses with ");
    say_force_range(p, us, c->force_low_N, c->force_high_N);
    if (c->force_low_N < c->force_high_N) {
        page_add(p, ", nominal ");
        say_force(p, us, c->force_N);
        page_add(p, "; holding counts on the low end");
    }
    entry_done(p, start);
    if (c->pull_low_N != 0 || c->pull_high_N != 0 || c->drag_low_N != 0 ||
        c->drag_high_N != 0) {
        start = entry(p, "");
        page_add(p, "pulls the part with ");
        say_pull(p, us, c->pull_low_N);
        page_add(p, " .. ");
        say_pull(p, us, c->pull_high_N);
        page_add(p, "; its nut drags with ");
        say_force_range(p, us, c->drag_low_N, c->drag_high_N);
        page_add(p, " to the right of one who stands at the stud");
        entry_done(p, start);
    }
    if (c->clamp_fault > SW_CLAMP_FAULT_NONE) {
        start = entry(p, "");
        page_add(p, "must not be used: ");
        say_fault(p, us, c);
        entry_done(p, start);
    }
    if (c->mark) {
        start = entry(p, "");
        page_add(p, "marks on the part ");
        page_add(p, sw_word(SW_WORDS_MARK, c->mark));
        page_add(p, ": ");
        say_stress(p, us, c->pad_MPa);
        page_add(p, " under its pad at the high end");
        if (is_known(c->mark_N)) {
            page_add(p, ", the limit is at ");
            say_force(p, us, c->mark_N);
        }
        entry_done(p, start);
    }
}

static void say_operation(page *p, int us, const sw_job *job, int index)
{
    const sw_job_operation_out o = sw_job_operation(job, index, NULL);
    size_t start = entry(p, o.name);
    page_add(p, sw_word(SW_WORDS_CUT_KIND, o.cut_kind));
    page_add(p, " at ");
    page_number(p, o.points, 6);
    page_add(p, o.points > 1 ? " points, " : " point, ");
    page_number(p, o.samples, 6);
    page_add(p, o.samples > 1 ? " loads at each; held by " : " load; held by ");
    say_clamps(p, job, index);
    page_add(p, "; wanted margin ");
    page_number(p, o.required_margin, 4);
    entry_done(p, start);
    start = entry(p, "");
    page_add(p, "up to ");
    say_force(p, us, o.side_most_N);
    page_add(p, " sideways");
    if (o.lift_most_N > 0) {
        page_add(p, ", ");
        say_force(p, us, o.lift_most_N);
        page_add(p, " lifting");
    }
    if (o.press_most_N > 0) {
        page_add(p, ", ");
        say_force(p, us, o.press_most_N);
        page_add(p, " pressing");
    }
    if (o.twist_most_Nm > 0) {
        page_add(p, ", ");
        say_torque(p, us, o.twist_most_Nm);
        page_add(p, " of twist");
    }
    entry_done(p, start);
    page sides = {0};
    say_job_milling(&sides, job, index);
    if (sides.text) {
        start = entry(p, "");
        page_add(p, sides.text);
        entry_done(p, start);
    }
    page_free(&sides);
}

static void whole_text(request *r, page *p, const sw_job *job,
                       const sw_fixture *f)
{
    const sw_job_out a = sw_job_about(job, NULL);
    say_part(p, r->us, &a);
    say_contacts(p, r->us, f);
    page_add(p, a.clamps > 0 ? "clamps\n" : "");
    for (int i = 0; i < (int)a.clamps; i++) {
        const sw_job_clamp_out c = sw_job_clamp(job, i, NULL);
        say_clamp(p, r->us, &c);
    }
    page_add(p, "operations\n");
    for (int i = 0; i < (int)a.operations; i++)
        say_operation(p, r->us, job, i);
    say_job_warnings(p, job, -1, r->warnings);
    say_job_assumed(p, r, job, -1);
    say_job_not_checked(p, 0);
    say_caution(p);
}

/* ---- json ---- */

static void contacts_json(json *j, const sw_fixture *f)
{
    sw_support_in s;
    sw_stop_in stop;
    json_open(j, "supports", '[');
    for (int i = 0; !sw_fixture_support(f, i, &s, NULL); i++) {
        json_open(j, NULL, '{');
        json_struct(j, &s, SW_STRUCT_SUPPORT_IN);
        json_close(j, '}');
    }
    json_close(j, ']');
    json_open(j, "stops", '[');
    for (int i = 0; !sw_fixture_stop(f, i, &stop, NULL); i++) {
        json_open(j, NULL, '{');
        json_struct(j, &stop, SW_STRUCT_STOP_IN);
        json_close(j, '}');
    }
    json_close(j, ']');
}

static void clamps_json(json *j, const sw_job *job, int operation)
{
    json_open(j, operation < 0 ? "clamps" : "clamp_names", '[');
    for (int i = 0;; i++) {
        const sw_job_clamp_out c = sw_job_clamp(job, i, NULL);
        if (c.status)
            break;
        if (operation >= 0 && !sw_job_has_clamp(job, operation, i))
            continue;
        if (operation >= 0) {
            json_text(j, NULL, c.name);
            continue;
        }
        json_open(j, NULL, '{');
        json_struct(j, &c, SW_STRUCT_JOB_CLAMP_OUT);
        json_number(j, "torque_inlbf",
                    in_unit(c.torque_Nm, "in-lbf", SW_KIND_TORQUE));
        json_number(j, "torque_ftlbf",
                    in_unit(c.torque_Nm, "ft-lbf", SW_KIND_TORQUE));
        json_warnings(j, "warnings", c.warnings);
        json_close(j, '}');
    }
    json_close(j, ']');
}

static void whole_json(request *r, page *p, const sw_job *job,
                       const sw_fixture *f)
{
    const sw_job_out a = sw_job_about(job, NULL);
    json j = json_start(p);
    json_open(&j, "part", '{');
    json_struct(&j, &a, SW_STRUCT_JOB_OUT);
    json_close(&j, '}');
    contacts_json(&j, f);
    clamps_json(&j, job, -1);
    json_open(&j, "operations", '[');
    for (int i = 0; i < (int)a.operations; i++) {
        const sw_job_operation_out o = sw_job_operation(job, i, NULL);
        json_open(&j, NULL, '{');
        json_struct(&j, &o, SW_STRUCT_JOB_OPERATION_OUT);
        clamps_json(&j, job, i);
        json_warnings(&j, "warnings", o.warnings);
        json_close(&j, '}');
    }
    json_close(&j, ']');
    json_job_assumed(&j, job, -1);
    json_job_not_checked(&j, 0);
    json_job_warnings(&j, job, r->warnings);
    json_end(&j);
}

int run_check(request *r, page *p)
{
    sw_error err;
    sw_job *job;
    int status = job_read(r, &job);
    if (status)
        return status;
    sw_fixture *f = sw_job_fixture(job, 0, &err);
    if (!f) {
        status = job_complain(r, &err);
    } else {
        r->warnings = sw_job_about(job, NULL).warnings;
        (r->json ? whole_json : whole_text)(r, p, job, f);
    }
    sw_fixture_free(f);
    sw_job_free(job);
    return status;
}
