/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Run strap: one strap clamp, and before it what was to be found.
 */
#include "cli.h"

static void find_json(json *j, request *r, answer *found)
{
    const topic *t = find_topic(r);
    json_open(j, "find", '{');
    json_fields(j, r, t, found);
    json_warnings(j, "warnings", topic_warnings(t, found));
    json_close(j, '}');
}

/* What each open value can do to the answer, in the order of "assumed". */
static void json_matters(json *j, const sw_strap_in *in)
{
    json_open(j, "matters", '[');
    for (int i = 0;; i++) {
        const sw_matter_out m = sw_strap_matters(in, i, NULL);
        if (m.status)
            break;
        json_open(j, NULL, '{');
        json_text(j, "name", m.name);
        json_number(j, "toe_low_N", m.toe_low_N);
        json_number(j, "toe_high_N", m.toe_high_N);
        json_number(j, "pull_low_N", m.pull_low_N);
        json_number(j, "pull_high_N", m.pull_high_N);
        json_close(j, '}');
    }
    json_close(j, ']');
}

int run_strap(request *r, page *p)
{
    answer found, a;
    int status = find_ask(r, &found);
    if (status)
        return status;
    const topic *find = find_topic(r);
    r->topic->solve(&r->question, &a);
    if (a.out.status)
        return complain_error(r, &a.err);
    const uint64_t own = topic_warnings(r->topic, &a);
    r->warnings = own | (find ? topic_warnings(find, &found) : 0);
    if (r->json) {
        json j = json_start(p);
        json_fields(&j, r, r->topic, &a);
        if (find)
            find_json(&j, r, &found);
        json_assumed(&j, r->topic, &r->question, r);
        json_matters(&j, &r->question.in.strap);
        json_not_checked(&j, r->topic);
        json_warnings(&j, "warnings", r->warnings);
        json_end(&j);
        return DONE;
    }
    if (find)
        say_find(p, r, &found);
    say_strap(p, r, &a.out.strap);
    say_warnings(p, own);
    /* what matters is judged by the nominal answer; one that has none gets the
     * plain list */
    if (own & SW_WARN_NO_NOMINAL)
        r->assumed = 1;
    if (!r->assumed)
        say_matters(p, r->us, &r->question.in.strap, a.out.strap.toe_force_N);
    say_assumed(p, r->us, r->assumed ? r->topic : NULL, &r->question, r);
    say_not_checked(p, r->topic);
    say_caution(p);
    return DONE;
}
