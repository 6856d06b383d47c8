/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief The margin along a path as a picture: plan view to scale with
 *        supports, stops and clamps. Of libstrapwise-fixture.
 *
 * How it is laid out: lib/sheet/hold_map.c.
 */
#ifndef STRAPWISE_ROOM_HOLD_MAP_H
#define STRAPWISE_ROOM_HOLD_MAP_H

#include <strapwise/drawing.h>
#include <strapwise/hold.h>
#include <strapwise/job.h>
#include <strapwise/say.h>

#ifdef __cplusplus
extern "C" {
#endif

/** How a map is drawn. Set by sw_hold_map_defaults() first; nothing is
 *  required. */
typedef struct {
    double width_px; /**< width in pixels of 1/96 inch, 300 .. 4000; open:
                          860. The height follows from it. */
    double text_px;  /**< lettering, 9 .. 60, at most width_px/30; open: 13 */
    int show;        /**< sw_show; open: SI units first */
} sw_hold_map_in;

/** Sets every field to "left to the library". */
SW_API void sw_hold_map_defaults(sw_hold_map_in *in);

/**
 * Draws one operation from above: the part's outline, what carries, stops and
 * presses it, and every point of the path with its margin, by shape and colour,
 * and as a number where there is room. The worst point is ringed.
 *
 * @param job        the job
 * @param operation  its index
 * @param hold       the answer to the fixture of that operation, by
 *                   sw_job_fixture() and sw_hold_new()
 * @param how        NULL: as set by sw_hold_map_defaults()
 * @param err        error record, may be NULL; SW_ERR_CONFLICT where `hold` is
 *                   not of that operation
 * @return to be freed by sw_drawing_free(), or NULL with an error
 */
SW_API SW_NODISCARD sw_drawing *sw_hold_map(const sw_job *job, int operation,
                                            const sw_hold *hold,
                                            const sw_hold_map_in *how,
                                            sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
