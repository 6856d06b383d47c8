/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief One strap clamp as a picture: side and plan view to scale, with its
 *        forces.
 *
 * What is drawn is what the strap's answer says; how it is laid out:
 * lib/sheet/strap_drawing.c.
 */
#ifndef STRAPWISE_STRAP_DRAWING_H
#define STRAPWISE_STRAP_DRAWING_H

#include <strapwise/drawing.h>
#include <strapwise/say.h>
#include <strapwise/strap.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Which views are drawn. */
typedef enum {
    SW_VIEW_BOTH = 1, /**< side view, plan view below it */
    SW_VIEW_SIDE,     /**< side view alone */
    SW_VIEW_PLAN      /**< plan view alone */
} sw_view;

/** How a strap is drawn. Set by sw_strap_drawing_defaults() first; nothing is
 *  required. */
typedef struct {
    double width_px;      /**< width in pixels of 1/96 inch, 300 .. 4000; open:
                              860. The height follows from it. */
    double text_px;       /**< lettering, 9 .. 60, at most width_px/22; open: 13
                           */
    double full_force_N;  /**< force of the longest upright arrow, 1e-3 .. 1e8;
                              open: next above the stud's tension of 1, 2, 5,
                              10, ... */
    double sideways;      /**< forces along the table are drawn this many times
                              longer, 1 .. 50; open: 5 */
    double vial_mm_per_m; /**< a level on the strap, mm/m for one division of
                               its vial, 0.01 .. 100; open: no level */
    int views;            /**< sw_view; open: both */
    int show;             /**< sw_show; open: SI units first */
} sw_strap_drawing_in;

/** Sets every field to "left to the library". */
SW_API void sw_strap_drawing_defaults(sw_strap_drawing_in *in);

/**
 * Draws a strap: table, T-slot, stud, nut, strap, heel and part in their true
 * proportions; the tilt is not exaggerated. Upright arrows come from above and
 * end where the force presses: the stud's on the nut, those of toe and heel on
 * part and heel. Open arrows along the table are what the part feels: side
 * pull, nut drag, both together. Every force is also written, as `show` says,
 * and said in words in the description.
 *
 * @param in   as for sw_strap()
 * @param how  NULL: as set by sw_strap_drawing_defaults()
 * @return to be freed by sw_drawing_free(), or NULL with an error
 */
SW_API SW_NODISCARD sw_drawing *sw_strap_drawing(const sw_strap_in *in,
                                                 const sw_strap_drawing_in *how,
                                                 sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
