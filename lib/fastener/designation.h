/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_FASTENER_DESIGNATION_H
#define SW_FASTENER_DESIGNATION_H

#include "base/internal.h"
#include "base/tables.h"

/* The row of a thread, or NULL. */
const struct sw__threads_row *sw__thread_row(const char *text);

/* Records that no row fits, and offers the nearest. */
int sw__fail_thread(sw_error *err, const char *text);

#endif
