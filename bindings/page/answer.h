/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef STRAPWISE_PAGE_ANSWER_H
#define STRAPWISE_PAGE_ANSWER_H

#include "../cli/cli.h"

enum { PAGE_ANSWER, PAGE_SIDE, PAGE_PLAN, PAGE_PLOT, PAGE_TEXTS };

/* Answers settings (settings.h): JSON and drawings, one text each. After an
 * error the JSON says which, and the drawings are empty. */
void answer_settings(const char *lines, page *text);

/* JSON: threads, lubrications, grades, words and ranges of every setting. */
void answer_about(page *text);

#endif
