/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Job files for tests: a good one in pieces, each of which can be replaced.
 */
#ifndef TESTS_JOB_JOBS_H
#define TESTS_JOB_JOBS_H

#include "../common.h"

#include <stdlib.h>

#define PART                                                                   \
    "part:\n"                                                                  \
    "  name: fork tine\n"                                                      \
    "  material: 6061-T6\n"                                                    \
    "  size: [200 mm, 150 mm]\n"                                               \
    "  thickness: 10 mm\n"

/* The triangle of the reference fixtures. */
#define SUPPORTS                                                               \
    "supports:\n"                                                              \
    "  - {place: [0 mm, 0 mm], friction: 0.15}\n"                              \
    "  - {place: [200 mm, 0 mm], friction: 0.15}\n"                            \
    "  - {place: [100 mm, 150 mm], friction: 0.15}\n"

#define CLAMPS                                                                 \
    "clamps:\n"                                                                \
    "  - kind: force\n"                                                        \
    "    place: [100 mm, 60 mm]\n"                                             \
    "    height: 0 mm\n"                                                       \
    "    force: 3 kN\n"

#define OPERATIONS                                                             \
    "operations:\n"                                                            \
    "  - name: push\n"                                                         \
    "    cut: {kind: force, force x: 100 N}\n"                                 \
    "    path: {height: 0 mm, points: [[100 mm, 60 mm]]}\n"

#define JOB "strapwise: 1\n" PART SUPPORTS CLAMPS OPERATIONS

static inline sw_job *read_job(const char *text)
{
    sw_error err;
    sw_job *job = sw_job_read(text, strlen(text), "t.yaml", &err);
    must(job, "%s", err.message);
    must(err.code == 0 && !err.message[0], "good, but: %s", err.message);
    return job;
}

/* Refused with this message behind the file's name. */
static inline void refuse_n(const char *text, size_t length, int code,
                            const char *message)
{
    sw_error err;
    sw_job *job = sw_job_read(text, length, "t.yaml", &err);
    must(!job, "not refused: %s", message);
    check_error(message, &err, code);
    must(strncmp(err.message, "t.yaml:", 7) == 0 &&
             strcmp(err.message + 7, message) == 0,
         "said \"%s\", wanted \"%s\"", err.message, message);
    ck_assert_ptr_null(sw_job_read(text, length, NULL, NULL));
}

static inline void refuse(const char *text, int code, const char *message)
{
    refuse_n(text, strlen(text), code, message);
}

#endif
