/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_CLAMP_STRAP_H
#define SW_CLAMP_STRAP_H

#include <strapwise/strap.h>

/* sw_strap() without the band, which stays 0: for trials by the dozen. */
sw_strap_out sw__strap_bare(const sw_strap_in *in);

#endif
