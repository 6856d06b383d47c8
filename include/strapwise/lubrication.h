/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Nut factor and friction by state of lubrication.
 */
#ifndef STRAPWISE_LUBRICATION_H
#define STRAPWISE_LUBRICATION_H

#include <strapwise/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Friction of one state of lubrication. */
typedef struct {
    int status;              /**< 0 or sw_status */
    uint64_t warnings;       /**< SW_WARN_ bits */
    char lubrication[24];    /**< key */
    char label[64];          /**< in words */
    char conflicts_with[24]; /**< key of a row that contradicts it, or "" */
    char method[32];         /**< way of tightening whose scatter fits it */
    double nut_factor;       /**< K, or SW_UNSET where the row gives friction */
    double nut_factor_low;   /**< range of K */
    double nut_factor_high;  /**< range of K */
    double mu_thread;        /**< or SW_UNSET where the row gives K */
    double mu_seat;          /**< or SW_UNSET where the row gives K */
    double mu_low;           /**< range of both coefficients */
    double mu_high;          /**< range of both coefficients */
    char source[120];        /**< source, edition */
} sw_lubrication_out;

/** Looks a state of lubrication up: "unknown", "dry", "oiled", ... */
SW_API SW_NODISCARD sw_lubrication_out sw_lubrication(const char *key,
                                                      sw_error *err);

/** Key of the index-th state of lubrication, or NULL past the end. */
SW_API const char *sw_lubrication_name(int index);

#ifdef __cplusplus
}
#endif
#endif
