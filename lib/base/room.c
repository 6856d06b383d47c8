/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Room: open questions, empty answers, refusals, and margins on a cut.
 *
 * A margin is the factor on the whole cut at which hold is lost. Weight and
 * clamps do not grow with it.
 */
#include "base/room.h"

void sw__leave_open(void *in, size_t size, int structure)
{
    const double open = SW_UNSET;
    memset(in, 0, size);
    for (const sw_field *f = sw__fields_of[structure]; f->name; f++)
        if (f->type == SW_FIELD_NUMBER)
            memcpy((char *)in + f->offset, &open, sizeof open);
}

void sw__start_answer(void *out, size_t size, int structure)
{
    sw__leave_open(out, size, structure);
}

static int fail_with(sw_error *err, int code, const char *field,
                     const char *why)
{
    char message[240];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, field);
    sw__line_add(&line, ": ");
    sw__line_add(&line, why);
    return sw__fail(err, code, field, message);
}

int sw__fail_missing(sw_error *err, const char *field, const char *hint)
{
    char why[200];
    sw__line line = sw__line_start(why, sizeof why);
    sw__line_add(&line, "missing; ");
    sw__line_add(&line, hint);
    return fail_with(err, SW_ERR_MISSING, field, why);
}

int sw__fail_conflict(sw_error *err, const char *field, const char *why)
{
    return fail_with(err, SW_ERR_CONFLICT, field, why);
}

double sw__margin(double capacity, double load, int loses, double *least,
                  int *first)
{
    if (!(load > 0))
        return SW_UNSET;
    double factor = capacity / load;
    if (!(factor < SW__MARGIN_MOST))
        factor = SW__MARGIN_MOST;
    if (factor < 0)
        factor = 0;
    if (!sw__is_set(*least) || factor < *least) {
        *least = factor;
        *first = loses;
    }
    return factor;
}

int sw__stays(double margin, double wanted)
{
    if (!sw__is_set(margin))
        return SW_UNSET_WORD;
    return margin >= wanted ? SW_STAYS_YES
           : margin >= 1    ? SW_STAYS_BARELY
                            : SW_STAYS_NOT;
}
