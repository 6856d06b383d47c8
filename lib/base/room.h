/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Room: what every question with a plain input and a plain answer does alike.
 *
 * A room writes two functions: x_fill(), which fills what is open and refuses
 * what does not fit together, and x_solve(), which finds an answer in which no
 * number applies yet. SW__ROOM makes the public functions of them.
 */
#ifndef SW_BASE_ROOM_H
#define SW_BASE_ROOM_H

#include "base/internal.h"

#include <string.h>

/* Everything open. */
void sw__leave_open(void *in, size_t size, int structure);

/* An answer whose numbers do not apply. */
void sw__start_answer(void *out, size_t size, int structure);

/* Records that a field is missing; `hint` says what would do. */
int sw__fail_missing(sw_error *err, const char *field, const char *hint);

/* "field: " and why. */
int sw__fail_conflict(sw_error *err, const char *field, const char *why);

/* load factors above this are none: the cut cannot move it */
#define SW__MARGIN_MOST 1e4

/* Takes a load factor, and what is lost by it, where it is the lowest yet.
 * `capacity` over `load`; no load, no limit. Returns the factor or SW_UNSET. */
double sw__margin(double capacity, double load, int loses, double *least,
                  int *first);

/* sw_stays of a margin. */
int sw__stays(double margin, double wanted);

#define SW__ROOM(x, X)                                                         \
    static int x##_open(const sw_##x##_in *in, sw_##x##_in *full,              \
                        uint64_t *warnings, sw_error *err)                     \
    {                                                                          \
        *warnings = 0;                                                         \
        if (!in)                                                               \
            return sw__fail_null(err, "in");                                   \
        *full = *in;                                                           \
        const sw__filler fill = {(char *)full, SW_STRUCT_##X##_IN,             \
                                 &full->assumed};                              \
        int status = sw__reopen(full, SW_STRUCT_##X##_IN, &full->assumed,      \
                                &full->seal, err);                             \
        if (!status)                                                           \
            status = sw__check_input(full, SW_STRUCT_##X##_IN, err);           \
        return status ? status : x##_fill(full, &fill, warnings, err);         \
    }                                                                          \
    void sw_##x##_defaults(sw_##x##_in *in)                                    \
    {                                                                          \
        if (in)                                                                \
            sw__leave_open(in, sizeof *in, SW_STRUCT_##X##_IN);                \
    }                                                                          \
    int sw_##x##_resolve(sw_##x##_in *in, sw_error *err)                       \
    {                                                                          \
        sw_##x##_in full;                                                      \
        uint64_t warnings;                                                     \
        sw__clear(err);                                                        \
        const int status = x##_open(in, &full, &warnings, err);                \
        if (!status) {                                                         \
            *in = full;                                                        \
            in->seal = sw__seal(in, SW_STRUCT_##X##_IN, in->assumed);          \
        }                                                                      \
        return status;                                                         \
    }                                                                          \
    sw_##x##_out sw_##x(const sw_##x##_in *in, sw_error *err)                  \
    {                                                                          \
        sw_##x##_in full;                                                      \
        sw_##x##_out out;                                                      \
        uint64_t warnings;                                                     \
        sw__clear(err);                                                        \
        int status = x##_open(in, &full, &warnings, err);                      \
        sw__start_answer(&out, sizeof out, SW_STRUCT_##X##_OUT);               \
        out.warnings = warnings;                                               \
        if (!status)                                                           \
            status = x##_solve(&full, &out, err);                              \
        if (status) {                                                          \
            memset(&out, 0, sizeof out);                                       \
            sw__spoil(&out, SW_STRUCT_##X##_OUT, status);                      \
        }                                                                      \
        return out;                                                            \
    }                                                                          \
    sw_assumption sw_##x##_assumed(const sw_##x##_in *in, int index,           \
                                   sw_error *err)                              \
    {                                                                          \
        sw_##x##_in full;                                                      \
        uint64_t warnings;                                                     \
        sw__clear(err);                                                        \
        const int status = x##_open(in, &full, &warnings, err);                \
        if (status)                                                            \
            return sw__no_assumption(status);                                  \
        return sw__assumed(&full, SW_STRUCT_##X##_IN, full.assumed, index,     \
                           err);                                               \
    }                                                                          \
    typedef int sw__room_##x /* takes the semicolon */

#endif
