/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Case: one line of the corpus, between cases.c, which reads files, and
 * case_input.c and case_expect.c, which know what a line says.
 */
#ifndef STRAPWISE_CLI_CASE_H
#define STRAPWISE_CLI_CASE_H

#include "cli.h"

enum { PARTS_MOST = 64 };

typedef struct {
    const char *file;
    int line;
    char *part[PARTS_MOST]; /* what stands between the tabs */
    int parts;
    const topic *topic;
    question question;
    answer answer;
    page *report; /* one line for each thing that differs */
    int differs;
} case_line;

/* 0, or BAD_INPUT when the line is malformed, after it has complained */
int case_read_input(case_line *c, int *at);
int case_check(case_line *c, int at);
int case_malformed(const case_line *c, const char *part, const char *why);
/* a number, or the words nan, inf, -inf, unset; 0 when it is none */
int case_number(const char *text, double *value);

#endif
