/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_HOLD_TIGHT_H
#define SW_HOLD_TIGHT_H

#include "base/internal.h"

#include <strapwise/tight.h>

/* Opens, checks and fills; sw_tight_resolve() without the seal. */
int sw__tight_open(sw_tight_in *in, const sw_strap_in *strap, sw_error *err);

/* What tight_need.c finds, its symbols in brackets. */
typedef struct {
    sw_tight_in in;
    double pull, push; /* q, Q */
    double limit_N;    /* of a toe: its own, or where (1) ends; or SW_UNSET */
    int pushed;        /* the straps push the part away whatever the force */
} sw__tight_need;

/* The least toe force, with the strap as it is at that force: hold_N and what
 * it is for go into `out`. 0 or an error. */
int sw__tight_find(sw__tight_need *d, const sw_strap_in *strap,
                   sw_tight_out *out, sw_error *err);

/* The largest margin on the cut that a toe force P leaves. */
double sw__tight_margin(const sw__tight_need *d, double P);

#endif
