/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Engine: the library behind the teaching page, compiled to WebAssembly.
 *
 * The page writes its settings into page_given(), calls page_ask() and reads
 * texts: the answer as JSON, with the same numbers to the same digits as
 * "strapwise strap --json", and the drawings. All that the page shows comes
 * from here; it computes nothing itself.
 *
 * One page, one thread: the texts are kept from one call to the next.
 */
#include "answer.h"

#define EXPORT(name) __attribute__((export_name(name)))

static char given[8192];
static page text[PAGE_TEXTS];

EXPORT("page_given") char *page_given(void);
EXPORT("page_room") int page_room(void);
EXPORT("page_ask") int page_ask(void);
EXPORT("page_about") int page_about(void);
EXPORT("page_text") const char *page_text(int which);

/* Where the settings are written, ended by a zero, and how many bytes. */
char *page_given(void) { return given; }
int page_room(void) { return (int)sizeof given; }

static int fresh(void)
{
    for (int i = 0; i < PAGE_TEXTS; i++) {
        text[i].length = 0;
        text[i].failed = 0;
        page_add(&text[i], "");
    }
    return 0;
}

static int whole(void)
{
    int good = 1;
    for (int i = 0; i < PAGE_TEXTS; i++)
        good = good && !text[i].failed;
    return good;
}

/* 1, or 0 when memory ran out. An error of the question is in the answer. */
int page_ask(void)
{
    fresh();
    given[sizeof given - 1] = '\0';
    answer_settings(given, text);
    return whole();
}

/* What there is to choose from, in page_text(PAGE_ANSWER). */
int page_about(void)
{
    fresh();
    answer_about(&text[PAGE_ANSWER]);
    return whole();
}

/* A text of the last call: PAGE_ANSWER, PAGE_SIDE, PAGE_PLAN, PAGE_PLOT. */
const char *page_text(int which)
{
    return which >= 0 && which < PAGE_TEXTS && text[which].text
               ? text[which].text
               : "";
}
