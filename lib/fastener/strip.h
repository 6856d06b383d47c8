/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What stripping shares with its own resolve step.
 */
#ifndef SW_FASTENER_STRIP_H
#define SW_FASTENER_STRIP_H

#include "base/internal.h"

#include <strapwise/strip.h>
#include <strapwise/thread.h>

/* A question with nothing open but what nobody knows, the thread, and what the
 * tables behind it are worth. */
typedef struct {
    sw_strip_in in;
    sw_thread_out thread;
    uint64_t warnings;
} sw__strip_full;

/* Returns 0 or records the error. */
int sw__strip_open(const sw_strip_in *in, sw__strip_full *full, sw_error *err);

#endif
