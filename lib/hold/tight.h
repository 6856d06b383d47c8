/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_HOLD_TIGHT_H
#define SW_HOLD_TIGHT_H

#include "base/internal.h"

#include <strapwise/tight.h>

/* Opens, checks and fills; sw_tight_resolve() without the seal. */
int sw__tight_open(sw_tight_in *in, const sw_strap_in *strap, sw_error *err);

#endif
