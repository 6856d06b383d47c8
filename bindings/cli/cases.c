/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Cases: recomputes the lines of corpus files and counts what differs.
 *
 * A corpus is UTF-8, one case a line, its parts parted by tabs: the topic,
 * name=value in the library's units, =>, what is expected (case_expect.c), and
 * # with the source. Blank lines and lines that start with # are skipped.
 */
#include "case.h"

#include <stdlib.h>
#include <string.h>

typedef struct {
    int passed, failed;
} tally;

/* The corpus says topic, so a line cut off by a zero byte is no line. */
static int split(case_line *c, char *line)
{
    c->parts = 0;
    for (char *at = line; at;) {
        char *tab = strchr(at, '\t');
        if (c->parts == PARTS_MOST)
            return case_malformed(c, NULL, "has too many parts");
        c->part[c->parts++] = at;
        if (tab)
            *tab++ = '\0';
        at = tab;
    }
    return DONE;
}

static int run_line(case_line *c, char *line, tally *count)
{
    int at = 0;
    c->differs = 0;
    int status = split(c, line);
    if (!status)
        status = case_read_input(c, &at);
    if (status)
        return status;
    c->topic->solve(&c->question, &c->answer);
    status = case_check(c, at);
    if (!status)
        *(c->differs ? &count->failed : &count->passed) += 1;
    return status;
}

static int run_text(case_line *c, page *text, tally *count)
{
    int status = DONE;
    char *line = text->text;
    char *const end = text->text + text->length;
    for (c->line = 1; line < end && !status; c->line++) {
        char *stop = memchr(line, '\n', (size_t)(end - line));
        if (!stop)
            stop = end; /* the page keeps a zero there */
        *stop = '\0';
        if (stop > line && stop[-1] == '\r')
            stop[-1] = '\0';
        if (strlen(line) + 1 < (size_t)(stop - line))
            status = case_malformed(c, NULL, "has a zero byte in it");
        else if (line[0] && line[0] != '#')
            status = run_line(c, line, count);
        line = stop + 1;
    }
    return status;
}

static int run_file(const char *name, page *report, tally *count)
{
    page text = {0};
    int status = read_file("cases", name, &text);
    case_line *c = calloc(1, sizeof *c);
    const tally before = *count;
    if (!status && !c)
        status = complain(NOT_FINISHED, "cases", "out of memory", (char *)NULL);
    if (!status) {
        c->file = name;
        c->report = report;
        if (text.text)
            status = run_text(c, &text, count);
        if (!status &&
            count->passed + count->failed == before.passed + before.failed) {
            c->line = 1;
            status = case_malformed(c, NULL, "there is no case in this file");
        }
    }
    free(c);
    page_free(&text);
    return status;
}

static void count_json(page *p, const page *report, tally count)
{
    json j = json_start(p);
    json_int(&j, "passed", count.passed);
    json_int(&j, "failed", count.failed);
    json_open(&j, "failures", '[');
    for (const char *at = report->text; at && *at;) {
        const size_t n = strcspn(at, "\n");
        page line = {0};
        page_add_n(&line, at, n);
        json_text(&j, NULL, line.text);
        page_free(&line);
        at += n + (at[n] == '\n');
    }
    json_close(&j, ']');
    json_end(&j);
}

int run_cases(request *r, page *p)
{
    page report = {0};
    tally count = {0, 0};
    int status = DONE;
    if (!r->files)
        return complain(BAD_INPUT, "cases",
                        "FILE: missing; name the files to "
                        "recompute",
                        (char *)NULL);
    for (int i = 0; i < r->files && !status; i++)
        status = run_file(r->file[i], &report, &count);
    if (!status && report.failed)
        status = complain(NOT_FINISHED, "cases", "out of memory", (char *)NULL);
    if (!status && r->json) {
        count_json(p, &report, count);
    } else if (!status) {
        page_add(p, report.text ? report.text : "");
        page_number(p, count.passed, 9);
        page_add(p, " passed, ");
        page_number(p, count.failed, 9);
        page_add(p, " failed\n");
    }
    page_free(&report);
    return status ? status : count.failed ? NOT_MET : DONE;
}
