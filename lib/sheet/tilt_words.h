/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tilt words: what a plot of tilt says in words.
 */
#ifndef SW_SHEET_TILT_WORDS_H
#define SW_SHEET_TILT_WORDS_H

#include "sheet/tilt_curve.h"

enum { SW__TILT_TEXT = 320 };

typedef struct {
    char title[SW__TILT_TEXT];
    char here[SW__TILT_TEXT];                 /* where this strap is */
    char seat[SW__TILT_SEATS][SW__TILT_TEXT]; /* what it does with each seat */
    char about[3 * SW__TILT_TEXT];            /* for one who cannot see it */
} sw__tilt_words;

void sw__tilt_say(const sw__tilts *t, int show, sw__tilt_words *w);

#endif
