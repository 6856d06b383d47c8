/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_JOB_BLAME_H
#define SW_JOB_BLAME_H

#include "base/internal.h"

/* A place in a job file; line and column from 1. */
typedef struct {
    int line, column;
} sw__place;

/* Records "FILE:LINE:COLUMN: message" and returns the code; of a long file name
 * its end. */
int sw__blame(sw_error *err, const char *file, sw__place at, int code,
              const char *field, const char *message);

#endif
