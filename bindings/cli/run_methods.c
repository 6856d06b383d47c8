/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Run methods: the ways of tightening, what is published on each, and what the
 * figure means.
 */
#include "cli.h"

static void table_json(page *p, request *r)
{
    json j = json_start(p);
    json_open(&j, "rows", '[');
    for (int i = 0; sw_method_name(i); i++) {
        answer a;
        a.out.method = sw_method(sw_method_name(i), NULL);
        json_open(&j, NULL, '{');
        json_fields(&j, r, topic_named("method"), &a);
        json_warnings(&j, "warnings", a.out.method.warnings);
        json_close(&j, '}');
    }
    json_close(&j, ']');
    json_end(&j);
}

static void say_row(page *p, const sw_method_out *m)
{
    enum { SCATTER = 26, RATIO = 35, LABEL = 41, REST = 4 };
    page_add(p, m->method);
    page_tab(p, SCATTER);
    page_add(p, "±");
    page_number(p, m->scatter_pct, 3);
    page_add(p, KEEP "%");
    page_tab(p, RATIO);
    page_fixed(p, m->alpha, 2);
    page_tab(p, LABEL);
    size_t start = p->length;
    page_add(p, m->label);
    page_wrap(p, start, LABEL);
    page_add(p, "\n    ");
    start = p->length;
    page_add(p, m->meaning);
    if (m->scatter_low_pct < m->scatter_high_pct) {
        page_add(p, "; in all ");
        page_number(p, m->scatter_low_pct, 3);
        page_add(p, KEEP ".." KEEP);
        page_number(p, m->scatter_high_pct, 3);
        page_add(p, KEEP "%");
    }
    page_add(p, ". ");
    page_add(p, m->source);
    page_wrap(p, start, REST);
    page_add(p, "\n");
}

int run_methods(request *r, page *p)
{
    if (r->json) {
        table_json(p, r);
        return DONE;
    }
    page_add(p, "Preload from one tightening to the next\n\n"
                "method");
    page_tab(p, 26);
    page_add(p, "scatter");
    page_tab(p, 35);
    page_add(p, "ratio");
    page_tab(p, 41);
    page_add(p, "way of tightening\n");
    for (int i = 0; sw_method_name(i); i++) {
        const sw_method_out m = sw_method(sw_method_name(i), NULL);
        say_row(p, &m);
    }
    page_add(p, "\n");
    const size_t start = p->length;
    page_add(p, "ratio: largest over smallest preload, (1 + s)/(1 - s). No "
                "source says which part of all tightenings lies inside; 95 of "
                "100 is assumed (--published-coverage).");
    page_wrap(p, start, 0);
    page_add(p, "\n");
    return DONE;
}
