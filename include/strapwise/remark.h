/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief What a strap does to the part, in sentences.
 */
#ifndef STRAPWISE_REMARK_H
#define STRAPWISE_REMARK_H

#include <strapwise/strap.h>

#ifdef __cplusplus
extern "C" {
#endif

/** What a sentence is about. */
typedef enum {
    SW_ABOUT_PART = 1, /**< what the part will do */
    SW_ABOUT_REASON,   /**< why */
    SW_ABOUT_CHANGE    /**< what to change at the bench */
} sw_about;

/** One sentence about a strap. */
typedef struct {
    int status;     /**< 0 or sw_status */
    int about;      /**< sw_about */
    char text[360]; /**< UTF-8, with its full stop */
} sw_remark_out;

/**
 * The index-th sentence, 0 .. : first what the part will do, then why, then
 * what to change.
 *
 * @param in     as for sw_strap()
 * @param index  from 0
 * @param show   sw_show: how quantities are written; 0: SI first
 * @return the sentence; status SW_ERR_RANGE past the end
 */
SW_API SW_NODISCARD sw_remark_out sw_strap_remark(const sw_strap_in *in,
                                                  int index, int show,
                                                  sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
