/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Run single: topics that put one question to the library: thread, torque,
 * preload.
 */
#include "cli.h"

#include <string.h>

/* `spread` is NULL where the topic has none */
static void whole_json(page *p, request *r, answer *a, answer *spread)
{
    json j = json_start(p);
    json_fields(&j, r, r->topic, a);
    if (spread) {
        json_open(&j, "spread", '{');
        json_fields(&j, r, r->with, spread);
        json_close(&j, '}');
    }
    json_calibration(&j, r);
    json_assumed(&j, spread ? r->with : r->topic, &r->question, NULL);
    json_not_checked(&j, r->topic);
    json_warnings(&j, "warnings", r->warnings);
    json_end(&j);
}

static int solve(request *r, answer *a)
{
    r->topic->solve(&r->question, a);
    if (a->out.status)
        return complain_error(r, &a->err);
    r->warnings = topic_warnings(r->topic, a) | r->calibration.warnings;
    return DONE;
}

int run_thread(request *r, page *p)
{
    answer a;
    topic_arguments *g = &r->question.arguments;
    if (g->designation[0] == TOPIC_ABSENT[0]) /* missing, not a null pointer */
        g->designation[0] = '\0';
    const int status = solve(r, &a);
    if (status)
        return status;
    if (r->json) {
        whole_json(p, r, &a, NULL);
        return DONE;
    }
    say_thread(p, r->us, &a.out.thread);
    say_warnings(p, r->warnings);
    return DONE;
}

static int run_either(request *r, page *p)
{
    answer a, spread;
    int status = calibration_take(r);
    if (!status)
        status = solve(r, &a);
    if (!status)
        status = spread_torque(r, &spread);
    if (status)
        return status;
    r->warnings |= spread.out.spread.warnings;
    if (r->json) {
        whole_json(p, r, &a, &spread);
        return DONE;
    }
    say_torque_answer(p, r, &a.out.torque, &spread.out.spread);
    say_calibration(p, r);
    say_warnings(p, r->warnings);
    say_assumed(p, r->us, r->with, &r->question, NULL);
    say_not_checked(p, r->topic);
    say_caution(p);
    return DONE;
}

/* The library would offer the other topic's option as well, so what is missing
 * is said here; a missing thread comes first all the same. */
static int missing(request *r, const char *what)
{
    return r->question.in.torque.thread[0]
               ? complain(BAD_INPUT, r->command->name, what, (char *)NULL)
               : complain(BAD_INPUT, r->command->name,
                          "thread: missing; for example M12 or 1/2-13 (to the "
                          "shell an unquoted #10-32 is a comment: write 10-32)",
                          (char *)NULL);
}

int run_torque(request *r, page *p)
{
    if (!request_given(r, "--preload") && !request_given(r, "--use"))
        return missing(r, "--preload: missing; give the clamp force wanted in "
                          "the stud (--preload 20kN) or a fraction of its "
                          "yield (--use 0.9)");
    return run_either(r, p);
}

int run_preload(request *r, page *p)
{
    if (!request_given(r, "--torque"))
        return missing(r, "--torque: missing; give the torque on the nut "
                          "(--torque 40N.m)");
    return run_either(r, p);
}
