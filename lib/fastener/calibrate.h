/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the steps of a calibration share.
 */
#ifndef SW_FASTENER_CALIBRATE_H
#define SW_FASTENER_CALIBRATE_H

#include "fastener/pairs.h"

#include <strapwise/thread.h>

/* Fills every open field in place and looks the thread up. Returns 0 or
 * records the error. */
int sw__calibrate_open(sw_calibrate_in *in, const sw_pairs *pairs,
                       sw_thread_out *thread, sw_error *err);

/* ln K of one pair. */
double sw__pair_ln_factor(const sw__pair *p, const sw_calibrate_in *full,
                          const sw_thread_out *t);

/* The pairs as columns, in one piece of memory. */
typedef struct {
    size_t n;
    double *torque;    /* net of the prevailing one, N.m */
    double *force;     /* N */
    double *ln_factor; /* ln K */
    double *ln_torque;
    double *row;        /* 1, 2, ... */
    double mean, sigma; /* of ln K; sigma 0 where only rounding is left */
} sw__sample;

/* Returns 0, SW_ERR_MEMORY, or the error of too few pairs or of one whose
 * torque does not exceed the prevailing one. */
int sw__sample_make(sw__sample *s, const sw_calibrate_in *full,
                    const sw_pairs *pairs, const sw_thread_out *t,
                    sw_error *err);
void sw__sample_free(sw__sample *s);

/* Mean and sample standard deviation (n - 1) of n >= 2 values. */
void sw__moments(const double *value, size_t n, double *mean, double *sd);

/* Half of the t-interval of a mean of n values. */
double sw__mean_margin(double sd, size_t n, double confidence);

/* Outlier and trends, with their warnings. */
void sw__calibrate_judge(const sw__sample *s, sw_calibrate_out *out);

/* Largest deviation, in sample standard deviations, that chance allows among
 * n: Grubbs, 5 % two-sided. SW_UNSET for n < 3. */
double sw__outlier_limit(size_t n);

/* Friction coefficients, where torques were measured apart. Returns 0 or
 * SW_ERR_MEMORY. */
int sw__calibrate_friction(const sw_calibrate_in *full, const sw_pairs *pairs,
                           const sw_thread_out *t, sw_calibrate_out *out,
                           sw_error *err);

/* Whether any torque was measured apart. */
int sw__pairs_parted(const sw_pairs *pairs);

#endif
