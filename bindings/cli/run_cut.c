/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Run cut: turning, milling and drilling, one cutter or two beside each other;
 * and the metals that can be cut.
 */
#include "cli.h"

#include <string.h>

/* The load while a tooth goes by, so that a reader need not ask again. */
static void json_pitch(json *j, request *r)
{
    enum { COUNT = 24 };
    const topic *t = topic_named("milling_load");
    json_open(j, "over_a_pitch", '[');
    for (int i = 0; i < COUNT; i++) {
        answer a;
        a.out.cut_load =
            sw_milling_load_at(&r->question.in.milling, i, COUNT, NULL);
        json_open(j, NULL, '{');
        json_fields(j, r, t, &a);
        json_close(j, '}');
    }
    json_close(j, ']');
}

static void json_metal(json *j, request *r)
{
    const slot s = topic_input(r->topic, &r->question, "material");
    answer a;
    a.out.cut_material = sw_cut_material(s.place, NULL);
    if (a.out.status)
        return; /* constants were given instead */
    json_open(j, "metal", '{');
    json_fields(j, r, topic_named("cut_material"), &a);
    json_close(j, '}');
}

static void say_answer(page *p, request *r, const answer *a)
{
    switch (r->topic->out) {
    case SW_STRUCT_MILLING_OUT:
        say_milling(p, r, &a->out.milling);
        break;
    case SW_STRUCT_TURNING_OUT:
        say_turning(p, r, &a->out.turning);
        break;
    default:
        say_drilling(p, r, &a->out.drilling);
    }
}

int run_cut(request *r, page *p)
{
    answer a, b;
    const int two = other_given(r);
    r->topic->solve(&r->question, &a);
    if (a.out.status)
        return complain_error(r, &a.err);
    if (two) {
        const int status = other_ask(r, &b);
        if (status)
            return status;
    }
    r->warnings = topic_warnings(r->topic, &a);
    if (r->json) {
        json j = json_start(p);
        json_fields(&j, r, r->topic, &a);
        json_metal(&j, r);
        if (r->topic->out == SW_STRUCT_MILLING_OUT)
            json_pitch(&j, r);
        if (two)
            json_other(&j, r, &a, &b);
        json_assumed(&j, r->topic, &r->question, NULL);
        json_not_checked(&j, r->topic);
        json_warnings(&j, "warnings", r->warnings);
        json_end(&j);
        return DONE;
    }
    say_answer(p, r, &a);
    if (two)
        say_other(p, r, &a, &b);
    say_warnings(p, r->warnings);
    if (two)
        say_warnings_as(p, "of the other cutter alone",
                        topic_warnings(r->topic, &b) & ~r->warnings);
    say_assumed(p, r->us, r->topic, &r->question, NULL);
    say_not_checked(p, r->topic);
    say_caution(p);
    return DONE;
}

static void metals_json(page *p, request *r)
{
    json j = json_start(p);
    json_open(&j, "rows", '[');
    for (int i = 0; sw_cut_material_name(i); i++) {
        answer a;
        a.out.cut_material = sw_cut_material(sw_cut_material_name(i), NULL);
        json_open(&j, NULL, '{');
        json_fields(&j, r, topic_named("cut_material"), &a);
        json_warnings(&j, "warnings", a.out.cut_material.warnings);
        json_close(&j, '}');
    }
    json_close(&j, ']');
    json_end(&j);
}

int run_cut_materials(request *r, page *p)
{
    enum { FORCE = 15, RANGE = 22, EXPONENT = 35, LABEL = 41 };
    if (r->json) {
        metals_json(p, r);
        return DONE;
    }
    page_add(p, "name           kc1.1  usual       mc\n"
                "               MPa    MPa\n");
    int i = 0;
    for (; sw_cut_material_name(i); i++) {
        const sw_cut_material_out m =
            sw_cut_material(sw_cut_material_name(i), NULL);
        if (strcmp(m.material, m.stands_for) != 0)
            break;
        page_add(p, m.material);
        page_tab(p, FORCE);
        page_number(p, m.kc11_MPa, 4);
        page_tab(p, RANGE);
        page_number(p, m.kc11_low_MPa, 3);
        page_add(p, KEEP ".." KEEP);
        page_number(p, m.kc11_high_MPa, 3);
        page_tab(p, EXPONENT);
        if (is_known(m.mc))
            page_fixed(p, m.mc, 2);
        else
            page_add(p, "-");
        page_tab(p, LABEL);
        const size_t start = p->length;
        page_add(p, m.label);
        page_wrap(p, start, LABEL);
        page_add(p, "\n");
    }
    page_add(p, "\nOther names, and the row that stands for them\n");
    size_t start = p->length;
    for (; sw_cut_material_name(i); i++) {
        const sw_cut_material_out m =
            sw_cut_material(sw_cut_material_name(i), NULL);
        page_add(p, p->length > start ? ", " : "  ");
        page_add(p, m.material);
        page_add(p, KEEP "=" KEEP);
        page_add(p, m.stands_for);
    }
    page_wrap(p, start, 2);
    page_add(p, "\n\n");
    start = p->length;
    page_add(p, "Force per chip area: kc = kc1.1 x (thickness in mm)^-mc. A "
                "group holds many alloys; published tables differ by 15 % "
                "either way, for titanium by 70 %. --json has the source of "
                "every row.");
    page_wrap(p, start, 0);
    page_add(p, "\n");
    return DONE;
}
