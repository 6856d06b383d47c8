/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Drawings as SVG text.
 */
#ifndef STRAPWISE_DRAWING_H
#define STRAPWISE_DRAWING_H

#include <strapwise/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/** A finished drawing. The same question gives the same bytes. */
typedef struct sw_drawing sw_drawing;

/** The drawing as one SVG document, UTF-8, ended by a zero; it lives as long
 *  as the drawing. NULL for NULL. */
SW_API const char *sw_drawing_svg(const sw_drawing *drawing);

/** NULL is nothing to free. */
SW_API void sw_drawing_free(sw_drawing *drawing);

#ifdef __cplusplus
}
#endif
#endif
