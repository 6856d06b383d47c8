/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Remarks under construction, shared by the sources that make them.
 */
#ifndef SW_CLAMP_REMARK_H
#define SW_CLAMP_REMARK_H

#include "base/internal.h"

#include <strapwise/remark.h>

typedef struct {
    sw_strap_in open;  /* the question as it was asked */
    sw_strap_in in;    /* resolved */
    sw_strap_out out;  /* its answer */
    double rise_mm;    /* heel over level */
    int still;         /* no nominal: ranges only */
    int show;          /* sw_show */
    int wanted, count; /* index of the sentence, sentences so far */
    sw__line line;
    sw_remark_out *made;
} sw__remarks;

/* Whether the sentence that comes now is the wanted one; then it is begun. */
int sw__remark(sw__remarks *r, int about);

void sw__remark_add(sw__remarks *r, const char *text);
void sw__remark_say(sw__remarks *r, double value, int kind);
/* "330 N away from the stud" */
void sw__remark_pull(sw__remarks *r, const sw_strap_out *s);
/* "between 330 N away from the stud and 20 N toward it" */
void sw__remark_pull_range(sw__remarks *r, const sw_strap_out *s);
void sw__remark_toe_range(sw__remarks *r, const sw_strap_out *s);

static inline int sw__remark_warns(const sw__remarks *r, uint64_t bit)
{
    return (r->out.warnings & bit) != 0;
}

/* Whether the nut bends the stud. */
int sw__remark_is_bent(const sw__remarks *r);

/* The answer to a question, with its band where only that counts. */
sw_strap_out sw__remark_ask(const sw__remarks *r, const sw_strap_in *q);

void sw__remark_reasons(sw__remarks *r); /* remark_reason.c */
void sw__remark_changes(sw__remarks *r); /* remark_change.c */

#endif
