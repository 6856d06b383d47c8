/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Run calibrate: one's own nut factor from a file of pairs, and its plot.
 */
#include "cli.h"

#include <string.h>

/* The pairs must outlive what is made of them. */
static int check_input(const request *r)
{
    const char *made[] = {r->output, r->svg};
    for (int i = 0; i < 2; i++)
        if (made[i] && same_file(made[i], r->file[0]))
            return complain(BAD_INPUT, r->command->name,
                            i ? "--svg" : "--output",
                            ": is the file of pairs itself", (char *)NULL);
    return DONE;
}

static int draw(request *r, const sw_pairs *pairs)
{
    sw_error err;
    return r->svg ? picture_deliver(r,
                                    sw_calibrate_plot(&r->question.in.calibrate,
                                                      pairs, &err),
                                    r->svg, &err)
                  : DONE;
}

static void whole_json(page *p, request *r, answer *a, const sw_pairs *pairs)
{
    const sw_pairs_out about = sw_pairs_about(pairs, NULL);
    json j = json_start(p);
    json_fields(&j, r, r->topic, a);
    json_text(&j, "name", about.name);
    json_text(&j, "lubrication", about.lubrication);
    json_assumed(&j, r->topic, &r->question, NULL);
    json_not_checked(&j, r->topic);
    json_warnings(&j, "warnings", r->warnings);
    json_end(&j);
}

static int answer_of(request *r, page *p, const sw_pairs *pairs)
{
    answer a;
    r->question.pairs = pairs;
    r->topic->solve(&r->question, &a);
    if (a.out.status)
        return complain_error(r, &a.err);
    r->warnings = topic_warnings(r->topic, &a);
    if (r->json) {
        whole_json(p, r, &a, pairs);
    } else {
        say_calibrate(p, r, &a.out.calibrate);
        say_warnings(p, r->warnings);
        say_assumed(p, r->us, r->topic, &r->question, NULL);
        say_not_checked(p, r->topic);
        say_caution(p);
    }
    return draw(r, pairs);
}

int run_calibrate(request *r, page *p)
{
    sw_pairs *pairs;
    if (r->files != 1)
        return complain(BAD_INPUT, r->command->name,
                        r->files ? "FILE: one file of pairs at a time"
                                 : "FILE: missing; name the file of pairs",
                        (char *)NULL);
    int status = check_input(r);
    if (!status)
        status = picture_refused(r, "--svg", r->svg);
    if (!status)
        status = calibration_read(r->command->name, r->file[0], &pairs);
    if (status)
        return status;
    status = answer_of(r, p, pairs);
    sw_pairs_free(pairs);
    return status;
}
