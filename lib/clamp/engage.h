/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What stands at both ends of a strap's stud, looked up.
 */
#ifndef SW_CLAMP_ENGAGE_H
#define SW_CLAMP_ENGAGE_H

#include "clamp/strap_resolve.h"

#include <strapwise/strip.h>
#include <strapwise/weakest.h>

typedef struct {
    sw_engage_in in; /* nothing open but what nobody knows */
    sw_strip_out strip;
    /* what the tables behind nut and strap material are worth */
    uint64_t nut_warnings, bearing_warnings;
} sw__engage_full;

/* `strap` is open. Returns 0 or records the error. */
int sw__engage_open(const sw__strap_full *strap, const sw_engage_in *in,
                    sw__engage_full *full, sw_error *err);

#endif
