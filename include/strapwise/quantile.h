/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Quantiles: the value that a share of a distribution lies below.
 *
 * Theory and sources: lib/base/quantile.c.
 */
#ifndef STRAPWISE_QUANTILE_H
#define STRAPWISE_QUANTILE_H

#include <strapwise/units.h>

#ifdef __cplusplus
extern "C" {
#endif

/**
 * Quantile of the standard normal distribution: what a share p of it lies
 * below.
 *
 * Example:
 * @code
 * double z = sw_normal_quantile(0.975, NULL).value;   // 1.96
 * @endcode
 *
 * @param p    share, above 0 and below 1
 * @param err  error record, may be NULL
 */
SW_API SW_NODISCARD sw_quantity_out sw_normal_quantile(double p, sw_error *err);

/**
 * Quantile of Student's t distribution.
 *
 * Example:
 * @code
 * double t = sw_t_quantile(0.975, 9, NULL).value;   // 2.262
 * @endcode
 *
 * @param p    share, 1e-30 .. below 1
 * @param df   degrees of freedom, 0.1 .. 1e6, not only whole ones
 * @param err  error record, may be NULL
 */
SW_API SW_NODISCARD sw_quantity_out sw_t_quantile(double p, double df,
                                                  sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
