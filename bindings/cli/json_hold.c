/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Json hold: one operation; first the keys that are promised to stay.
 */
#include "job.h"

#include <string.h>

static const char *const verdict_word[] = {NULL,
                                           "holds",
                                           "too little margin",
                                           "does not hold",
                                           "does not rest",
                                           "clamp fails",
                                           "can rock"};

static void points_json(json *j, const judged *h)
{
    sw_hold_point_out one;
    json_open(j, "points", '[');
    for (int i = 0; judged_point(h, i, &one); i++) {
        json_open(j, NULL, '{');
        json_struct(j, &one, SW_STRUCT_HOLD_POINT_OUT);
        json_close(j, '}');
    }
    json_close(j, ']');
}

static void limit_torques(json *j, const judged *h)
{
    json_open(j, "hold_limit_torques", '[');
    for (int i = 0; judged_has_limit_torque(h); i++) {
        const sw_job_clamp_out c = sw_job_clamp(h->job, i, NULL);
        if (c.status)
            break;
        if (!sw_job_has_clamp(h->job, h->operation, i))
            continue;
        const double Nm = judged_limit_torque(h, i);
        json_open(j, NULL, '{');
        json_text(j, "name", c.name);
        json_number(j, "torque_Nm", Nm);
        json_number(j, "yield_torque_Nm", c.yield_torque_Nm);
        json_text(j, "reachable",
                  !is_known(c.yield_torque_Nm) ? "not known"
                  : Nm <= c.yield_torque_Nm    ? "yes"
                                               : "no");
        json_number(j, "torque_inlbf", in_unit(Nm, "in-lbf", SW_KIND_TORQUE));
        json_number(j, "torque_ftlbf", in_unit(Nm, "ft-lbf", SW_KIND_TORQUE));
        json_close(j, '}');
    }
    json_close(j, ']');
}

/* Every other field of the answer. */
static void others(json *j, const sw_hold_out *o)
{
    static const char said[] = " margin required_margin margin_ceiling "
                               "first_to_go hold_limit_N net_moment_Nm "
                               "worst_x_mm worst_y_mm worst_z_mm";
    const sw_field *f;
    sw_hold_out copy = *o;
    for (int i = 0; (f = sw_field_at(SW_STRUCT_HOLD_OUT, i)); i++) {
        const slot s = {f, (char *)&copy + f->offset};
        if (!listed(said, f->name))
            json_slot(j, s);
    }
}

void json_hold(json *j, const judged *h)
{
    const sw_hold_out *o = &h->out;
    page sentence = {0};
    say_verdict(&sentence, h);
    for (size_t i = 0; i < sentence.length; i++)
        if (sentence.text[i] == KEEP[0])
            sentence.text[i] = ' ';
    if (sentence.failed)
        j->page->failed = 1;
    json_number(j, "margin", o->margin);
    json_number(j, "required_margin", o->required_margin);
    json_number(j, "margin_ceiling", o->margin_ceiling);
    json_open(j, "worst_point_mm", '[');
    json_number(j, NULL, o->worst_x_mm);
    json_number(j, NULL, o->worst_y_mm);
    json_number(j, NULL, o->worst_z_mm);
    json_close(j, ']');
    json_text(j, "first_to_go", sw_word(SW_WORDS_GOES, o->first_to_go));
    json_number(j, "hold_limit_N", o->hold_limit_N);
    json_open(j, "net_force_N", '[');
    json_number(j, NULL, o->net_x_N);
    json_number(j, NULL, o->net_y_N);
    json_number(j, NULL, o->net_z_N);
    json_close(j, ']');
    json_number(j, "net_moment_Nm", o->net_moment_Nm);
    json_text(j, "operation", h->about.name);
    json_text(j, "verdict", verdict_word[judged_verdict(h)]);
    json_text(j, "sentence", sentence.text);
    page_free(&sentence);
    json_faults(j, h->job, h->operation);
    limit_torques(j, h);
    others(j, o);
    points_json(j, h);
}
