/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Ways of tightening a nut and how much the preload scatters with each.
 */
#ifndef STRAPWISE_METHOD_H
#define STRAPWISE_METHOD_H

#include <strapwise/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/** One way of tightening. */
typedef struct {
    int status;              /**< 0 or sw_status */
    uint64_t warnings;       /**< SW_WARN_ bits */
    char method[32];         /**< key */
    char label[64];          /**< in words */
    char reads[16];          /**< what is set or watched: torque, feel, turn,
                                  yield, pressure, force, length */
    char meaning[160];       /**< what the source says its figure is */
    double scatter_low_pct;  /**< lower end of the source's range, ±% */
    double scatter_pct;      /**< ±% that is used */
    double scatter_high_pct; /**< upper end of the source's range, ±% */
    double alpha;            /**< largest over smallest preload of that ±:
                                  (1 + s)/(1 - s) */
    char source[120];        /**< source, edition */
} sw_method_out;

/** Looks a way of tightening up: "by-feel", "wrench-oiled", ... */
SW_API SW_NODISCARD sw_method_out sw_method(const char *key, sw_error *err);

/** Key of the index-th way of tightening, or NULL past the end. */
SW_API const char *sw_method_name(int index);

#ifdef __cplusplus
}
#endif
#endif
