/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Calibration: a file of pairs, its K in the place of a nut factor, and its
 * scatter in the place of a published one.
 */
#include "cli.h"

#include <string.h>

/* A fault in a file: its message starts with a file name, in which no field is
 * to be spelled as an option. */
static int complain_file(const char *who, const sw_error *err)
{
    return complain(err->code == SW_ERR_MEMORY ? NOT_FINISHED : BAD_INPUT, who,
                    err->message, (char *)NULL);
}

int calibration_read(const char *who, const char *name, sw_pairs **pairs)
{
    sw_error err;
    page text = {0};
    *pairs = NULL;
    int status = read_file(who, name, &text);
    if (!status) {
        *pairs = sw_pairs_new(&err);
        if (!*pairs ||
            sw_pairs_read(*pairs, text.text ? text.text : "", text.length,
                          strcmp(name, "-") == 0 ? "standard input" : name,
                          &err))
            status = complain_file(who, &err);
    }
    page_free(&text);
    if (status) {
        sw_pairs_free(*pairs);
        *pairs = NULL;
    }
    return status;
}

static int conflict(request *r)
{
    static const char *const other[] = {"--nut-factor", "--mu-thread",
                                        "--mu-seat", "--lubrication"};
    for (size_t i = 0; i < sizeof other / sizeof other[0]; i++)
        if (request_given(r, other[i]))
            return complain(BAD_INPUT, r->command->name,
                            "--nut-factor-from: not together with ", other[i],
                            (char *)NULL);
    return DONE;
}

/* Whether the pairs were taken with another thread than the one asked about;
 * one that does not exist is somebody else's mistake to tell. */
static int thread_differs(const char *of_pairs, const char *asked)
{
    const sw_thread_out t = sw_thread(asked, NULL);
    return of_pairs[0] && !t.status && strcmp(of_pairs, t.designation) != 0;
}

/* What the pairs scatter is the nut factor's part: the tool at the machine may
 * be another. The tolerance interval is used, which counts how few pairs there
 * are; where it is wider than any spread the published one stays. */
static void take_scatter(request *r, const sw_calibrate_in *in)
{
    sw_spread_in *spread = &r->question.beside.spread;
    const sw_calibrate_out *c = &r->calibration.out;
    const sw_field *most =
        sw_field_named(SW_STRUCT_SPREAD_IN, "factor_scatter_pct");
    if (request_given(r, "--method") || request_given(r, "--scatter") ||
        request_given(r, "--factor-scatter") || !is_known(c->tolerance_pct) ||
        c->warnings & SW_WARN_PAIRS_ALIKE || c->tolerance_pct > most->max)
        return;
    r->calibration.scatters = 1;
    /* the place of a second question may hold another one */
    const topic *t = r->with ? r->with : r->topic;
    if (t->beside != SW_STRUCT_SPREAD_IN)
        return;
    spread->factor_scatter_pct = c->tolerance_pct;
    if (!request_given(r, "--published-coverage"))
        spread->published_coverage = in->proportion;
}

static int use(request *r, const sw_pairs *pairs)
{
    sw_error err;
    calibration *c = &r->calibration;
    sw_calibrate_in in;
    const slot thread = topic_input(r->topic, &r->question, "thread");
    const slot K = topic_input(r->topic, &r->question, "nut_factor");
    const slot prevailing =
        topic_input(r->topic, &r->question, "prevailing_torque_Nm");
    c->about = sw_pairs_about(pairs, &err);
    sw_calibrate_defaults(&in);
    /* K hangs on the diameter: another thread's pairs would give another K */
    if (!c->about.thread[0])
        return complain(BAD_INPUT, r->command->name, r->nut_factor_from,
                        ": does not say on which thread the pairs were taken; "
                        "put a line such as \"thread: M12\" at its head",
                        (char *)NULL);
    c->out = sw_calibrate(&in, pairs, &err);
    if (c->out.status)
        return complain_error(r, &err);
    const sw_field *f = sw_field_named(r->topic->in, "nut_factor");
    if (!(c->out.nut_factor >= f->min && c->out.nut_factor <= f->max)) {
        page line = {0};
        page_add(&line, r->nut_factor_from);
        page_add(&line, ": its K is ");
        page_number(&line, c->out.nut_factor, 3);
        page_add(&line, ", which no nut has: wrong unit, column or thread?");
        return complain_page(BAD_INPUT, r->command->name, &line);
    }
    c->file = r->nut_factor_from;
    c->warnings = c->out.warnings;
    if (thread_differs(c->about.thread, thread.place))
        c->warnings |= SW_WARN_THREAD_DIFFERS;
    slot_set_number(K, c->out.nut_factor);
    /* measured apart: what is under the nut turns the strap; the thread
     * carries the rest of K */
    const slot seat = topic_input(r->topic, &r->question, "mu_seat");
    if (is_known(c->out.mu_seat))
        slot_set_number(seat, c->out.mu_seat);
    sw_calibrate_in full = in;
    if (!sw_calibrate_resolve(&full, pairs, &err)) /* it was, a moment ago */
        take_scatter(r, &full);
    /* K is what is left of the torque without it */
    if (is_known(c->about.prevailing_torque_Nm) &&
        !request_given(r, "--prevailing-torque"))
        slot_set_number(prevailing, c->about.prevailing_torque_Nm);
    return DONE;
}

int calibration_take(request *r)
{
    sw_pairs *pairs;
    if (!r->nut_factor_from)
        return DONE;
    int status = conflict(r);
    if (!status)
        status = calibration_read(r->command->name, r->nut_factor_from, &pairs);
    if (status)
        return status;
    status = use(r, pairs);
    sw_pairs_free(pairs);
    return status;
}

void say_calibration(page *p, const request *r)
{
    const calibration *c = &r->calibration;
    if (!c->file)
        return;
    const size_t start = say_label(p, "K comes from");
    const char *slash = strrchr(c->file, '/');
    if (strcmp(c->file, "-") == 0)
        page_add(p, "standard input");
    else
        spell_quoted(p, slash ? slash + 1 : c->file);
    if (c->about.name[0]) {
        page_add(p, ", ");
        page_add(p, c->about.name);
    }
    page_add(p, ": ");
    page_number(p, c->out.n, 6);
    page_add(p, " pairs on ");
    page_add(p, c->out.thread);
    page_add(p, ", K ");
    page_fixed(p, c->out.nut_factor, 3);
    if (is_known(c->out.nut_factor_low)) {
        page_add(p, " (");
        page_fixed(p, c->out.nut_factor_low, 3);
        page_add(p, KEEP ".." KEEP);
        page_fixed(p, c->out.nut_factor_high, 3);
        page_add(p, " with 95" KEEP "% confidence)");
    }
    if (is_known(c->about.prevailing_torque_Nm) &&
        !request_given(r, "--prevailing-torque")) {
        page_add(p, ", and the prevailing torque of ");
        say_torque(p, r->us, c->about.prevailing_torque_Nm);
    }
    if (c->scatters) {
        page_add(p, "; scatter to rely on ±");
        page_number(p, c->out.tolerance_pct, 3);
        page_add(p, KEEP "%");
    }
    say_done(p, start);
}

void json_calibration(json *j, const request *r)
{
    const calibration *c = &r->calibration;
    if (!c->file)
        return;
    json_open(j, "calibration", '{');
    json_text(j, "file", c->file);
    json_text(j, "name", c->about.name);
    json_text(j, "thread", c->out.thread);
    json_text(j, "lubrication", c->about.lubrication);
    json_number(j, "n", c->out.n);
    json_number(j, "nut_factor", c->out.nut_factor);
    json_number(j, "nut_factor_low", c->out.nut_factor_low);
    json_number(j, "nut_factor_high", c->out.nut_factor_high);
    json_number(j, "sigma_ln", c->out.sigma_ln);
    json_number(j, "tolerance_pct", c->out.tolerance_pct);
    json_number(j, "prevailing_torque_Nm", c->about.prevailing_torque_Nm);
    json_warnings(j, "warnings", c->warnings);
    json_close(j, '}');
}
