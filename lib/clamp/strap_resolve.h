/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_CLAMP_STRAP_RESOLVE_H
#define SW_CLAMP_STRAP_RESOLVE_H

#include "base/internal.h"

#include <strapwise/strap.h>
#include <strapwise/thread.h>
#include <strapwise/torque.h>

/* A question with nothing open, and what was looked up on the way. */
typedef struct {
    sw_strap_in in;
    sw_thread_out thread;
    sw_torque_in question; /* about torque, resolved */
    sw_torque_out torque;
    double yield_MPa;      /* of the stud; SW_UNSET where not known */
    double above_strap_mm; /* washers, nut and stud end over the seat */
    uint64_t warnings;
} sw__strap_full;

/* Returns 0 or records the error. */
int sw__strap_open(const sw_strap_in *in, sw__strap_full *full, sw_error *err);

/* Whether a value was given that this kind of strap does not use
 * (strap_unused.c). */
int sw__strap_unused(const sw_strap_in *in);

/* The spherical pair of a stud size, NULL where the table has none. */
struct sw__spherical_row;
const struct sw__spherical_row *sw__spherical_of(const char *size);

#endif
