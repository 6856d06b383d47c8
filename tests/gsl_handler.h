/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * GSL's error handler is the caller's and is never reached: between
 * count_gsl_errors() and gsl_errors() each call of it is counted.
 */
#ifndef TESTS_GSL_HANDLER_H
#define TESTS_GSL_HANDLER_H

#include <gsl/gsl_errno.h>

static int gsl_handled;

static void count_gsl_error(const char *reason, const char *file, int line,
                            int code)
{
    (void)reason;
    (void)file;
    (void)line;
    (void)code;
    gsl_handled++;
}

static void count_gsl_errors(void)
{
    gsl_handled = 0;
    gsl_set_error_handler(count_gsl_error);
}

/* How many there were; -1 when somebody has put another handler in its
 * place. */
static int gsl_errors(void)
{
    return gsl_set_error_handler(NULL) == count_gsl_error ? gsl_handled : -1;
}

#endif
