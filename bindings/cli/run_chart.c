/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Run chart: one row for every stud size of a series.
 */
#include "chart.h"

#include <stdlib.h>
#include <string.h>

/* Whether a series is in the thread table, or stands for all of them. */
static int series_known(const char *series)
{
    if (strcmp(series, "all") == 0)
        return 1;
    for (int i = 0; i < sw_thread_count(); i++)
        if (strcmp(sw_thread(sw_thread_name(i), NULL).series, series) == 0)
            return 1;
    return 0;
}

static int check(request *r, const char *series)
{
    if (!series_known(series)) {
        page line = {0};
        page_add(&line, "--series: ");
        spell_quoted(&line, series);
        page_add(&line, " is none of coarse, fine, unc, unf, 8un, all");
        return complain_page(BAD_INPUT, r->command->name, &line);
    }
    /* a size that a grade leaves out is a dash, an unknown grade a mistake */
    if (request_given(r, "--grade")) {
        sw_error err;
        const sw_grade_out g = sw_grade(r->question.in.chart.grade, 12, &err);
        if (g.status == SW_ERR_UNKNOWN)
            return complain_error(r, &err);
    }
    return DONE;
}

static int same(const sw_assumption *a, const sw_assumption *b)
{
    return strcmp(a->name, b->name) == 0 && strcmp(a->word, b->word) == 0 &&
           (a->word[0] || a->value == b->value);
}

static void note(chart_table *t, const sw_assumption *a)
{
    for (int i = 0; i < t->assumptions; i++)
        if (same(&t->assumed[i], a))
            return;
    t->assumed[t->assumptions++] = *a;
    if (strcmp(a->name, "lubrication") == 0) {
        copy_cut(t->lubrication, sizeof t->lubrication, a->word);
    } else if (strcmp(a->name, "grade") == 0) {
        const size_t n = strlen(t->grade);
        copy_cut(t->grade + n, sizeof t->grade - n, n ? " or " : "");
        const size_t m = strlen(t->grade);
        copy_cut(t->grade + m, sizeof t->grade - m, a->word);
    } else if (strcmp(a->name, "proof_fraction") == 0) {
        t->proof_fraction = a->value;
    }
}

/* A few different ones at most in each row. */
enum { ASSUMED_MOST = 8 };

static int add_row(request *r, chart_table *t, const sw_thread_out *thread)
{
    sw_chart_in *in = &r->question.in.chart;
    answer a;
    copy_cut(in->thread, sizeof in->thread, thread->designation);
    r->topic->solve(&r->question, &a);
    if (a.out.status)
        return complain_error(r, &a.err);
    for (int i = 0; i < ASSUMED_MOST; i++) {
        const sw_assumption one = r->topic->assumed(&r->question, i, NULL);
        if (one.status)
            break;
        note(t, &one);
    }
    t->row[t->rows].thread = *thread;
    t->row[t->rows++].chart = a.out.chart;
    r->warnings |= a.out.chart.warnings;
    return DONE;
}

static int fill(request *r, chart_table *t)
{
    const sw_chart_in *in = &r->question.in.chart;
    copy_cut(t->lubrication, sizeof t->lubrication, in->lubrication);
    copy_cut(t->grade, sizeof t->grade, in->grade);
    t->proof_fraction = in->proof_fraction;
    for (int i = 0; i < sw_thread_count(); i++) {
        const sw_thread_out thread = sw_thread(sw_thread_name(i), NULL);
        if (strcmp(t->series, "all") != 0 &&
            strcmp(t->series, thread.series) != 0)
            continue;
        const int status = add_row(r, t, &thread);
        if (status)
            return status;
    }
    return DONE;
}

static void row_json(json *j, request *r, const chart_row *row)
{
    answer a;
    a.out.chart = row->chart;
    json_open(j, NULL, '{');
    json_text(j, "thread", row->thread.designation);
    json_number(j, "across_flats_mm", row->thread.across_flats_mm);
    json_fields(j, r, r->topic, &a);
    json_warnings(j, "warnings", row->chart.warnings);
    json_close(j, '}');
}

static void table_json(page *p, request *r, const chart_table *t)
{
    json j = json_start(p);
    json_open(&j, "rows", '[');
    for (int i = 0; i < t->rows; i++)
        row_json(&j, r, &t->row[i]);
    json_close(&j, ']');
    json_open(&j, "assumed", '[');
    for (int i = 0; i < t->assumptions; i++)
        json_assumed_one(&j, &t->assumed[i]);
    json_close(&j, ']');
    json_not_checked(&j, r->topic);
    json_warnings(&j, "warnings", r->warnings);
    json_end(&j);
}

static void table_csv(page *p, const request *r, const chart_table *t)
{
    page_add(p, "thread,across_flats_mm");
    for (int f = 0; sw_field_at(r->topic->out, f); f++) {
        page_add(p, ",");
        page_add(p, sw_field_at(r->topic->out, f)->name);
    }
    page_add(p, "\n");
    for (int i = 0; i < t->rows; i++) {
        answer a;
        a.out.chart = t->row[i].chart;
        page_add(p, t->row[i].thread.designation);
        page_add(p, ",");
        page_number(p, t->row[i].thread.across_flats_mm, 9);
        for (int f = 0;; f++) {
            const slot s = topic_output_at(r->topic, &a, f);
            if (!s.field)
                break;
            page_add(p, ",");
            if (is_known(slot_number(s)))
                page_number(p, slot_number(s), 9);
        }
        page_add(p, "\n");
    }
}

int run_chart(request *r, page *p)
{
    chart_table t = {.series = r->series ? r->series : "coarse"};
    int status = check(r, t.series);
    if (!status && r->csv && r->json)
        status = complain(BAD_INPUT, r->command->name,
                          "--csv: not together with --json", (char *)NULL);
    if (status)
        return status;
    const size_t most = (size_t)sw_thread_count();
    t.row = calloc(most, sizeof *t.row);
    t.assumed = calloc(most * ASSUMED_MOST, sizeof *t.assumed);
    if (!t.row || !t.assumed)
        status = complain(NOT_FINISHED, r->command->name, "out of memory",
                          (char *)NULL);
    else
        status = fill(r, &t);
    if (!status && r->json)
        table_json(p, r, &t);
    else if (!status && r->csv)
        table_csv(p, r, &t);
    else if (!status)
        say_chart(p, r, &t);
    free(t.row);
    free(t.assumed);
    return status;
}
