/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the fuzz targets demand of every answer. A demand that is not met is
 * said in one line and ends the process, which the fuzzer takes as a finding.
 */
#ifndef TESTS_FUZZ_MUST_H
#define TESTS_FUZZ_MUST_H

#include <strapwise.h>

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define must(holds, ...)                                                       \
    do {                                                                       \
        if (!(holds)) {                                                        \
            fprintf(stderr, "%s:%d: ", __FILE__, __LINE__);                    \
            fprintf(stderr, __VA_ARGS__);                                      \
            fprintf(stderr, "\n");                                             \
            abort();                                                           \
        }                                                                      \
    } while (0)

/* The error record of a call that returned status. */
static inline void check_record(const sw_error *err, int status)
{
    must(err->code == status, "status %d, code %d", status, err->code);
    must(status >= 0 && status <= sw_status_count(), "status %d", status);
    must(memchr(err->message, 0, sizeof err->message) &&
             memchr(err->field, 0, sizeof err->field),
         "text without end");
    if (!status) {
        must(!err->message[0] && !err->field[0], "good, but: %s", err->message);
        return;
    }
    must(err->message[0] && err->field[0], "code %d says nothing", status);
    must(isnan(err->low) == isnan(err->high), "range with one end");
    for (const char *c = err->message; *c; c++)
        must((unsigned char)*c >= 0x20 && *c != 0x7f, "control character %d",
             *c);
}

/* Every double of a good answer is finite, of a bad one NaN. */
static inline void check_result(const void *out, int structure, int status)
{
    for (int i = 0; sw_field_at(structure, i); i++) {
        const sw_field *f = sw_field_at(structure, i);
        if (f->type != SW_FIELD_NUMBER)
            continue;
        double v;
        memcpy(&v, (const char *)out + f->offset, sizeof v);
        must(status ? isnan(v) : isfinite(v), "status %d, %s = %.17g", status,
             f->name, v);
    }
}

#endif
