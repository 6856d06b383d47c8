/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Run strip: how far a stud must be screwed in; and the materials it may be
 * screwed into.
 */
#include "cli.h"

static void say_strip(page *p, request *r, const sw_strip_out *s)
{
    sw_strip_in full = r->question.in.strip;
    const int us = r->us;
    if (sw_strip_resolve(&full, NULL)) /* solved before, so it resolves */
        return;
    const sw_material_out m = sw_material(full.material, NULL);
    const size_t head = p->length;
    page_add(p, full.thread);
    page_add(p, ", ");
    say_grade(p, full.grade);
    page_add(p, ", ");
    say_length(p, us, full.engaged_length_mm);
    page_add(p, " of full thread in ");
    page_add(p, m.label);
    page_wrap(p, head, 0);
    page_add(p, "\n\n");
    const struct {
        const char *label;
        double N, margin;
    } row[] = {
        {"stud breaks at", s->stud_break_N, s->stud_margin},
        {"its thread strips", s->stud_strip_N, s->stud_strip_margin},
        {"tapped one strips", s->tapped_strip_N, s->tapped_strip_margin}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const size_t start = say_label(p, row[i].label);
        say_force(p, us, row[i].N);
        if (is_known(row[i].margin)) {
            page_add(p, ", ");
            page_number(p, row[i].margin, 3);
            page_add(p, " times the load");
        }
        say_done(p, start);
    }
    size_t start = say_label(p, "first to give");
    page_add(p, sw_word(SW_WORDS_GIVES, s->first));
    page_add(p, ", at ");
    say_force(p, us, s->first_N);
    say_done(p, start);
    page_add(p, "\n");
    start = say_label(p, "screw it in");
    say_length(p, us, s->length_full_mm);
    page_add(p, " so that the stud breaks before a thread strips");
    if (is_known(s->length_needed_mm)) {
        page_add(p, "; ");
        say_length(p, us, s->length_needed_mm);
        page_add(p, " would hold the load with a factor of ");
        page_number(p, full.factor, 3);
    }
    page_add(p, ". Full threads: chamfers and the first turns come on top");
    say_done(p, start);
    start = say_label(p, "shear area");
    page_number(p, s->tapped_area_mm2, 4);
    page_add(p, KEEP "mm\xc2\xb2 of the tapped thread, ");
    page_number(p, s->stud_area_mm2, 4);
    page_add(p, KEEP "mm\xc2\xb2 of the stud's");
    say_done(p, start);
}

int run_strip(request *r, page *p)
{
    answer a;
    r->topic->solve(&r->question, &a);
    if (a.out.status)
        return complain_error(r, &a.err);
    const sw_strip_out *s = &a.out.strip;
    r->warnings = s->warnings;
    const int gives = is_known(s->stud_margin) &&
                      (s->stud_margin < 1 || s->stud_strip_margin < 1 ||
                       s->tapped_strip_margin < 1);
    const int status = gives ? NOT_MET : DONE;
    if (r->json) {
        json j = json_start(p);
        json_fields(&j, r, r->topic, &a);
        json_assumed(&j, r->topic, &r->question, NULL);
        json_not_checked(&j, r->topic);
        json_warnings(&j, "warnings", r->warnings);
        json_end(&j);
        return status;
    }
    say_strip(p, r, s);
    say_warnings(p, r->warnings);
    say_assumed(p, r->us, r->topic, &r->question, NULL);
    say_not_checked(p, r->topic);
    say_caution(p);
    return status;
}

static void say_number(page *p, double value, int digits, size_t next)
{
    if (is_known(value))
        page_number(p, value, digits);
    else
        page_add(p, "-");
    if (next)
        page_tab(p, next);
}

int run_materials(request *r, page *p)
{
    enum { MODULUS = 15, YIELD = 24, TENSILE = 32, PRESSURE = 40, LABEL = 48 };
    if (r->json) {
        json j = json_start(p);
        json_open(&j, "rows", '[');
        for (int i = 0; sw_material_name(i); i++) {
            answer a;
            a.out.material = sw_material(sw_material_name(i), NULL);
            json_open(&j, NULL, '{');
            json_fields(&j, r, topic_named("material"), &a);
            json_warnings(&j, "warnings", a.out.material.warnings);
            json_close(&j, '}');
        }
        json_close(&j, ']');
        json_end(&j);
        return DONE;
    }
    page_add(p, "material       modulus  yield   tensile pressure\n"
                "               GPa      MPa     MPa     MPa\n");
    for (int i = 0; sw_material_name(i); i++) {
        const sw_material_out m = sw_material(sw_material_name(i), NULL);
        page_add(p, m.material);
        page_tab(p, MODULUS);
        say_number(p, is_known(m.modulus_MPa) ? m.modulus_MPa / 1000 : SW_UNSET,
                   4, YIELD);
        say_number(p, m.yield_MPa, 4, TENSILE);
        say_number(p, m.tensile_MPa, 4, PRESSURE);
        say_number(p, m.pressure_limit_MPa, 4, LABEL);
        const size_t start = p->length;
        page_add(p, m.label);
        page_wrap(p, start, LABEL);
        page_add(p, "\n");
    }
    page_add(p, "\n");
    const size_t start = p->length;
    page_add(p,
             "Least or low typical strengths; pressure: what a nut or washer "
             "may press, VDI 2230, the lower of two editions. --json has "
             "the source of every row; a certificate is better than any.");
    page_wrap(p, start, 0);
    page_add(p, "\n");
    return DONE;
}
