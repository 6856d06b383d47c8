/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_CLAMP_STRAP_DRAW_H
#define SW_CLAMP_STRAP_DRAW_H

#include "base/trials.h"
#include "clamp/strap_balance.h"
#include "clamp/strap_resolve.h"
#include "fastener/spread.h"

/* A strap ready to be drawn again and again. */
typedef struct {
    sw__strap_full full;     /* nominal */
    sw__strap_geometry laid; /* without tension and tilt */
    double slope;            /* tan(tilt), nominal */
    sw__strap_choice nominal;
    sw__sigmas sigmas;
    double slope_sigma; /* of tan(tilt), from the heights */
    int all;            /* also what the strap's own band holds */
    int foot_open;      /* nobody said how the foot is held */
} sw__strap_lot;

/* One drawn strap. */
typedef struct {
    double preload, toe, pull;
    int failed, slides, walks;
} sw__strap_drawn;

/* Draws one strap. */
sw__strap_drawn sw__strap_draw(const sw__strap_lot *lot, sw__chance *c);

#endif
