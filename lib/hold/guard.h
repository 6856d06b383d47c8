/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_HOLD_GUARD_H
#define SW_HOLD_GUARD_H

#include <strapwise/strap_spread.h>

/* What the work may ask now and then: non-zero when it is to end. */
typedef struct sw__guard sw__guard;
int sw__guard_tell(sw__guard *g, double done);

/* Does work that calls GLPK where nothing of it shows: in a thread of its own,
 * whose GLPK is silent and, when it gives up, ends the work and not the
 * process. All of GLPK's memory of that thread is freed. The work must own
 * nothing of its own that is lost when GLPK ends it; what it returns, 0 or
 * sw_status, is returned. SW_ERR_STOPPED where progress ended it,
 * SW_ERR_MEMORY where GLPK or the thread could not have memory, SW_ERR_NONE
 * where GLPK gave up. Progress is called from the calling thread. */
int sw__guarded(int (*work)(sw__guard *g, void *with), void *with,
                sw_progress progress, void *progress_with, sw_error *err);

#endif
