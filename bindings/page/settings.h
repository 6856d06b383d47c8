/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Settings: what the page asks, as lines "name=value".
 */
#ifndef STRAPWISE_PAGE_SETTINGS_H
#define STRAPWISE_PAGE_SETTINGS_H

#include <strapwise.h>

typedef struct {
    sw_strap_in strap;
    sw_strap_drawing_in drawing;
    double plot_px; /* width of the plot; SW_UNSET: none */
} settings;

/* Reads lines. A name is a field of sw_strap_in, "draw." and a field of
 * sw_strap_drawing_in, or "plot.width_px". A number is in the library's unit,
 * or has a unit of its own ("15 ft-lbf"); a word is one of the field's words.
 * An empty value leaves the field to the library. Returns 0 or records the
 * first error. */
int settings_read(const char *lines, settings *s, sw_error *err);

#endif
