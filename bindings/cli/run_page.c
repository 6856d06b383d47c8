/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Run page: the teaching page as a file, opened at the strap that was asked
 * for.
 */
#include "../page/document.h"
#include "cli.h"

#include <math.h>
#include <string.h>

/* A round number near a size, never 0. */
static double round_near(double value)
{
    double step = 1;
    while (value / step < 4)
        step /= 10;
    while (value / step > 40)
        step *= 10;
    step *= value / step >= 20 ? 5 : value / step >= 8 ? 2 : 1;
    return step * floor(value / step + 0.5);
}

/* A fifth of the proof load is usual on such straps and bends no stud. */
static double usual_torque(const char *thread, double nominal_mm)
{
    sw_chart_in q;
    sw_chart_defaults(&q);
    strcpy(q.thread, thread);
    q.proof_fraction = 0.2;
    const sw_chart_out row = sw_chart(&q, NULL);
    if (!row.status && is_known(row.limit_torque_Nm))
        return round_near(row.limit_torque_Nm);
    const double ratio = nominal_mm / 12; /* as M12, whose is 25 N.m */
    return round_near(25 * ratio * ratio * ratio);
}

/* What is not said is a strap on a bench of ours, its heel a little high. */
static void complete(sw_strap_in *in)
{
    if (!in->thread[0])
        strcpy(in->thread, "M12");
    const sw_thread_out t = sw_thread(in->thread, NULL);
    const double d = t.status ? 12 : t.nominal_mm;
    if (!t.status) /* as the page's menu has it */
        strcpy(in->thread, t.designation);
    if (!in->lubrication[0] && !is_known(in->nut_factor) &&
        !is_known(in->mu_thread) && !is_known(in->mu_seat))
        strcpy(in->lubrication, "oiled");
    if (!is_known(in->torque_Nm) && !is_known(in->preload_N))
        in->torque_Nm = usual_torque(in->thread, d);
    if (!is_known(in->stud_to_toe_mm))
        in->stud_to_toe_mm = floor(2.5 * d + 0.5);
    if (!is_known(in->stud_to_heel_mm))
        in->stud_to_heel_mm = floor(5 * d + 0.5);
    if (!is_known(in->part_height_mm))
        in->part_height_mm = floor(4 * d + 0.5);
    if (!in->nose) /* its contact does not jump when the heel passes level */
        in->nose = SW_NOSE_ROUND;
    if (!is_known(in->heel_height_mm) && !is_known(in->tilt_deg))
        in->heel_height_mm =
            in->part_height_mm + floor(d / 6 + 0.5) +
            (is_known(in->pad_thickness_mm) ? in->pad_thickness_mm : 0) +
            (is_known(in->step_mm) ? in->step_mm : 0);
}

/* The page has a torque and two heights; a preload and a tilt become such. */
static int settle(request *r, sw_strap_in *in)
{
    sw_error err;
    sw_strap_in full = *in;
    complete(&full);
    *in = full;
    if (sw_strap_resolve(&full, &err))
        return complain_error(r, &err);
    const sw_strap_out out = sw_strap(in, &err);
    if (out.status)
        return complain_error(r, &err);
    in->torque_Nm = out.torque_Nm;
    in->preload_N = in->tilt_deg = SW_UNSET;
    in->part_height_mm = full.part_height_mm;
    in->heel_height_mm = full.heel_height_mm;
    r->warnings = out.warnings;
    return DONE;
}

static void settings_json(page *p, sw_strap_in *in, int us)
{
    json j = json_start(p);
    if (us)
        json_text(&j, "look_show", sw_word(SW_WORDS_SHOW, SW_SHOW_US_FIRST));
    for (int i = 0; sw_field_at(SW_STRUCT_STRAP_IN, i); i++) {
        const sw_field *f = sw_field_at(SW_STRUCT_STRAP_IN, i);
        const slot s = {f, (char *)in + f->offset};
        if (f->type == SW_FIELD_NUMBER ? is_known(slot_number(s))
            : f->type == SW_FIELD_WORD ? slot_word(s) != SW_UNSET_WORD
                                       : s.place[0] != '\0')
            json_slot(&j, s);
    }
    json_end(&j);
}

/* Text inside a script element: a "<" could end it. */
static void add_guarded(page *p, const page *text)
{
    for (size_t i = 0; i < text->length; i++)
        if (text->text[i] == '<')
            page_add(p, "\\u003c");
        else
            page_add_n(p, text->text + i, 1);
}

int run_page(request *r, page *p)
{
    const char *document = (const char *)page_document;
    const char *place =
        page_document_size ? strstr(document, PAGE_SETTINGS) : NULL;
    if (!place)
        return complain(NOT_FINISHED, r->command->name,
                        "this strapwise was built without the page; its "
                        "configure says what was missing",
                        (char *)NULL);
    if (r->json)
        return complain(BAD_INPUT, r->command->name,
                        "--json: a page is HTML and nothing else",
                        (char *)NULL);
    sw_strap_in *in = &r->question.in.strap;
    const int status = settle(r, in);
    if (status)
        return status;
    page settings = {0};
    settings_json(&settings, in, r->us);
    page_add_n(p, document, (size_t)(place - document));
    add_guarded(p, &settings);
    page_add(p, place + strlen(PAGE_SETTINGS));
    p->failed |= settings.failed;
    page_free(&settings);
    return DONE;
}
