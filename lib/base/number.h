/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_BASE_NUMBER_H
#define SW_BASE_NUMBER_H

#include "base/internal.h"

/* Reads the longest number at the start of text; returns the bytes used, 0
 * when there is none. A number of more than 40 digits is none. */
size_t sw__scan_number(const char *text, double *value);

/* Records that text is no number, with a hint on a decimal comma. */
int sw__fail_number(sw_error *err, const char *field, const char *text);

#endif
