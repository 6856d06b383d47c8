/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Job clamps: clamps that must not be used as they are set, and warnings with
 * the names of those they are about.
 */
#include "job.h"

#include <math.h>
#include <string.h>

/* ---- what must not be ---- */

static int is_faulty(const sw_job *job, int operation, int index,
                     sw_job_clamp_out *c)
{
    *c = sw_job_clamp(job, index, NULL);
    return !c->status && c->clamp_fault > SW_CLAMP_FAULT_NONE &&
           (operation < 0 || sw_job_has_clamp(job, operation, index));
}

static double use_of(const sw_job_clamp_out *c)
{
    return c->clamp_fault == SW_CLAMP_FAULT_YIELDS   ? c->strength_use
           : c->clamp_fault == SW_CLAMP_FAULT_DEVICE ? c->limit_use
                                                     : HUGE_VAL;
}

int job_worst_fault(const sw_job *job, int operation)
{
    sw_job_clamp_out c, worst = {0};
    int found = -1;
    for (int i = 0; !sw_job_clamp(job, i, NULL).status; i++)
        if (is_faulty(job, operation, i, &c) &&
            (found < 0 || use_of(&c) > use_of(&worst))) {
            found = i;
            worst = c;
        }
    return found;
}

/* Never rounded up: a limit is a limit. */
static void say_pressure(page *p, int us, double MPa)
{
    const double bar = floor(MPa * 10 * 10 + 1e-9) / 10;
    const double psi = floor(in_unit(MPa, "psi", SW_KIND_PRESSURE) + 1e-9);
    page_number(p, us ? psi : bar, 6);
    page_add(p, us ? KEEP "psi (" : KEEP "bar (");
    page_number(p, us ? bar : psi, 6);
    page_add(p, us ? KEEP "bar)" : KEEP "psi)");
}

void say_fault(page *p, int us, const sw_job_clamp_out *c)
{
    switch (c->clamp_fault) {
    case SW_CLAMP_FAULT_WALKS:
        page_add(p, "it walks, toe and heel together cannot hold it; bring "
                    "its heel to the height of its toe");
        break;
    case SW_CLAMP_FAULT_YIELDS:
        page_add(p, c->clamp_kind == SW_CLAMP_STRAP ? "its stud is at "
                                                    : "its screw is at ");
        say_percent(p, c->strength_use);
        page_add(p, " of what it stands before it yields");
        if (is_known(c->yield_N)) {
            page_add(p, "; it yields at ");
            if (is_known(c->yield_torque_Nm)) {
                say_torque(p, us, c->yield_torque_Nm);
                page_add(p, ", ");
            }
            say_force(p, us, c->yield_N);
            page_add(p, " of tension");
        }
        break;
    case SW_CLAMP_FAULT_DEVICE:
        page_add(p, "it is at ");
        say_percent(p, c->limit_use);
        page_add(p, " of what its maker allows");
        if (is_known(c->limit_pressure_MPa)) {
            page_add(p, "; lower its pressure to ");
            say_pressure(p, us, c->limit_pressure_MPa);
        }
        break;
    default:
        break;
    }
}

void say_faults(page *p, int us, const sw_job *job, int operation)
{
    sw_job_clamp_out c;
    const int worst = job_worst_fault(job, operation);
    int said = 0;
    if (worst < 0)
        return;
    const sw_job_clamp_out first = sw_job_clamp(job, worst, NULL);
    page_add(p, "clamp ");
    page_add(p, first.name);
    page_add(p, ": ");
    say_fault(p, us, &first);
    for (int i = 0; !sw_job_clamp(job, i, NULL).status; i++) {
        if (i == worst || !is_faulty(job, operation, i, &c))
            continue;
        page_add(p, said++ ? ", " : "; nor may ");
        page_add(p, c.name);
        if (c.clamp_fault == SW_CLAMP_FAULT_WALKS) {
            page_add(p, " (walks)");
        } else {
            page_add(p, " (");
            say_percent(p, use_of(&c));
            page_add(p, ")");
        }
    }
}

void json_faults(json *j, const sw_job *job, int operation)
{
    sw_job_clamp_out c;
    json_open(j, "clamp_faults", '[');
    for (int i = 0; !sw_job_clamp(job, i, NULL).status; i++) {
        page words = {0};
        if (!is_faulty(job, operation, i, &c))
            continue;
        say_fault(&words, 0, &c);
        for (size_t k = 0; k < words.length; k++)
            if (words.text[k] == KEEP[0])
                words.text[k] = ' ';
        if (words.failed)
            j->page->failed = 1;
        json_open(j, NULL, '{');
        json_text(j, "name", c.name);
        json_text(j, "fault", sw_word(SW_WORDS_CLAMP_FAULT, c.clamp_fault));
        json_number(j, "strength_use", c.strength_use);
        json_number(j, "yield_torque_Nm", c.yield_torque_Nm);
        json_number(j, "limit_use", c.limit_use);
        json_text(j, "sentence", words.failed ? NULL : words.text);
        json_close(j, '}');
        page_free(&words);
    }
    json_close(j, ']');
}

/* ---- warnings by name ---- */

/* "C1, C2" that have this warning; how many. */
static int say_who(page *p, const sw_job *job, int operation, uint64_t bit)
{
    int said = 0;
    for (int i = 0;; i++) {
        const sw_job_clamp_out c = sw_job_clamp(job, i, NULL);
        if (c.status)
            break;
        if (!(c.warnings & bit) ||
            (operation >= 0 && !sw_job_has_clamp(job, operation, i)))
            continue;
        page_add(p, said++ ? ", " : "");
        page_add(p, c.name);
    }
    for (int i = 0;; i++) {
        const sw_job_operation_out o = sw_job_operation(job, i, NULL);
        if (o.status)
            break;
        if (!(o.warnings & bit) || (operation >= 0 && i != operation))
            continue;
        page_add(p, said++ ? ", " : "");
        page_add(p, o.name);
    }
    return said;
}

static int begins_with(const char *text, const char *name)
{
    const size_t n = strlen(name);
    return strncmp(text, name, n) == 0 && text[n] == ':';
}

/* Whether a remark is about a clamp or an operation that was not asked for. */
static int is_elsewhere(const sw_job *job, int operation, const char *remark)
{
    for (int i = 0; operation >= 0; i++) {
        const sw_job_operation_out o = sw_job_operation(job, i, NULL);
        if (o.status)
            break;
        if (i != operation && begins_with(remark, o.name))
            return 1;
    }
    for (int i = 0; operation >= 0; i++) {
        const sw_job_clamp_out c = sw_job_clamp(job, i, NULL);
        if (c.status)
            break;
        if (!sw_job_has_clamp(job, operation, i) && begins_with(remark, c.name))
            return 1;
    }
    return 0;
}

void say_job_warnings(page *p, const sw_job *job, int operation, uint64_t bits)
{
    int lines = 0;
    for (int bit = 0; sw_warning_name(bit); bit++) {
        if (!(bits >> bit & 1))
            continue;
        page_add(p, lines++ ? "  - " : "\nwarnings\n  - ");
        const size_t start = p->length;
        if (say_who(p, job, operation, 1ULL << bit))
            page_add(p, ": ");
        page_add(p, sw_warning_text(bit));
        page_wrap(p, start, 4);
        page_add(p, "\n");
    }
    for (int i = 0; sw_job_remark(job, i); i++) {
        if (is_elsewhere(job, operation, sw_job_remark(job, i)))
            continue;
        page_add(p, lines++ ? "  - " : "\nwarnings\n  - ");
        const size_t start = p->length;
        page_add(p, sw_job_remark(job, i));
        page_wrap(p, start, 4);
        page_add(p, "\n");
    }
}

void json_job_warnings(json *j, const sw_job *job, uint64_t bits)
{
    json_warnings(j, "warnings", bits);
    json_open(j, "clamp_warnings", '[');
    for (int i = 0;; i++) {
        const sw_job_clamp_out c = sw_job_clamp(job, i, NULL);
        if (c.status)
            break;
        if (!c.warnings)
            continue;
        json_open(j, NULL, '{');
        json_text(j, "name", c.name);
        json_warnings(j, "warnings", c.warnings);
        json_close(j, '}');
    }
    json_close(j, ']');
    json_open(j, "remarks", '[');
    for (int i = 0; sw_job_remark(job, i); i++)
        json_text(j, NULL, sw_job_remark(job, i));
    json_close(j, ']');
}
