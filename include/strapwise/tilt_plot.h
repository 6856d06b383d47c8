/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief What a strap's tilt does, as a plot.
 */
#ifndef STRAPWISE_TILT_PLOT_H
#define STRAPWISE_TILT_PLOT_H

#include <strapwise/drawing.h>
#include <strapwise/say.h>
#include <strapwise/strap.h>

#ifdef __cplusplus
extern "C" {
#endif

/**
 * Plots side pull and toe force error against tilt, with a flat and with a
 * spherical seat, this strap marked. Only tilt and seat differ along the
 * curves: part, stud and all else stay as they are here, and the heel goes up
 * and down with the tilt. From -6 to 6 degrees; wider, to whole degrees, where
 * this strap lies outside.
 *
 * @param in        as for sw_strap(); the nut must turn
 * @param width_px  width in pixels of 1/96 inch, 300 .. 4000; 0 or SW_UNSET:
 *                  860. The height follows from it.
 * @param text_px   lettering, 9 .. 60; 0 or SW_UNSET: 13. Smaller where the
 *                  width does not hold it.
 * @param show      sw_show; 0: SI units first
 * @param err       error record, may be NULL
 * @return NULL on an error; else to be freed by sw_drawing_free()
 */
SW_API SW_NODISCARD sw_drawing *sw_tilt_plot(const sw_strap_in *in,
                                             double width_px, double text_px,
                                             int show, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
