/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_BASE_TRIALS_H
#define SW_BASE_TRIALS_H

#include <stddef.h>
#include <stdint.h>

/* A source of chance for one block of trials; nothing to free. */
typedef struct sw__chance sw__chance;

double sw__uniform(sw__chance *c); /* [0, 1) */
unsigned sw__coins(sw__chance *c); /* 16 even bits */
double sw__normal(sw__chance *c);  /* mean 0, deviation 1 */

/* Does the trials first .. first + count - 1. Runs in any thread, so it only
 * reads `with` and only writes results of its own trials. */
typedef void (*sw__trial_block)(sw__chance *c, size_t first, size_t count,
                                void *with);

/* Runs `trials` in fixed blocks, each with chance from (seed, block): the
 * answer does not depend on `threads`. Returns 0, or the value that `progress`
 * (which may be NULL) ended the run with. */
int sw__trials(size_t trials, uint64_t seed, int threads, sw__trial_block block,
               void *with, int (*progress)(double done, void *with),
               void *progress_with);

/* Quantiles at p, p ascending, of n values, which are put in another order:
 * between the order statistics around 1 + (n - 1) p, linearly. n >= 1. */
void sw__quantiles(double *value, size_t n, const double p[3], double q[3]);

#endif
