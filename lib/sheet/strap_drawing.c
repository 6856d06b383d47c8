/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap drawing: one strap clamp with its forces, for the bench, the printed
 * sheet and the projector.
 *
 * Nothing is computed here that the answer does not hold; where the parts
 * stand: strap_place.c. Laid out from above in rows, each of which says where
 * the next starts: heading, side view (strap_side.c), its distances and rule
 * (strap_lanes.c), the verdict and notes (strap_notes.c), plan view
 * (strap_plan.c). The first run draws into nothing, for the height.
 *
 * What pulls in which way is told by shape as well as by colour: solid arrows
 * press, hollow ones pull sideways, the nut's drag is dashed. Every group has
 * a class by which a page can give it other colours.
 */
#include "sheet/scale.h"
#include "sheet/strap_picture.h"

#include "clamp/strap_band.h"

#include <strapwise/units.h>

#include <string.h>

#define SW__S sw_strap_drawing_in
const sw_field sw__strap_drawing_in_fields[] = {
    SW__IN(width_px, "px", 300, 4000, 0, 0, "a page's column"),
    SW__IN(text_px, "px", 9, 60, 0, 0, "read at arm's length"),
    SW__IN(full_force_N, "N", 1e-3, 1e8, 0, 0,
           "next of 1, 2, 5, 10, ... above the stud's tension"),
    SW__IN(sideways, "", 1, 50, 0, 0, "so that a usual side pull is seen"),
    SW__IN(vial_mm_per_m, "mm/m", 0.01, 100, 0, 0, "no level"),
    SW__IN_WORD(views, SW_WORDS_VIEW, "both"),
    SW__IN_WORD(show, SW_WORDS_SHOW, "SI units first"),
    SW__END,
};
#undef SW__S

#define LETTERS_MOST 22.0 /* em in a width: three labels side by side */

void sw_strap_drawing_defaults(sw_strap_drawing_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    in->width_px = in->text_px = in->full_force_N = SW_UNSET;
    in->sideways = in->vial_mm_per_m = SW_UNSET;
}

static double or_else(double value, double open)
{
    return sw__is_set(value) ? value : open;
}

static int open_how(sw_strap_drawing_in *how, double preload_N, sw_error *err)
{
    const int status = sw__check_input(how, SW_STRUCT_STRAP_DRAWING_IN, err);
    if (status)
        return status;
    how->width_px = or_else(how->width_px, 860);
    how->text_px = or_else(how->text_px, 13);
    if (how->text_px * LETTERS_MOST > how->width_px)
        return sw__fail_range(err, "text_px", how->text_px, "px", 9,
                              how->width_px / LETTERS_MOST);
    how->full_force_N =
        or_else(how->full_force_N, sw__scale_step(preload_N, 1));
    how->sideways = or_else(how->sideways, 5);
    if (!how->views)
        how->views = SW_VIEW_BOTH;
    if (!how->show)
        how->show = SW_SHOW_SI_FIRST;
    return SW_OK;
}

int sw__picture_open(sw__picture *p, const sw_strap_in *in,
                     const sw_strap_drawing_in *how, sw_error *err)
{
    memset(p, 0, sizeof *p);
    p->out = sw_strap(in, err);
    if (p->out.status)
        return p->out.status;
    int status = sw__strap_open(in, &p->full, err);
    if (status)
        return status;
    if (how)
        p->how = *how;
    else
        sw_strap_drawing_defaults(&p->how);
    status = open_how(&p->how, p->out.preload_N, err);
    if (status)
        return status;
    p->g = sw__strap_place(&p->full, 0, 0);
    const sw__strap_choice nominal = sw__strap_nominal(&p->full.in, &p->g);
    p->f = sw__strap_balance(&p->g, &nominal);
    return SW_OK;
}

/* Draws all rows and returns the height they take. */
static double draw(sw__picture *p, sw__svg *s)
{
    char look[80], number[40];
    sw__line line = sw__line_start(look, sizeof look);
    const int views = p->how.views;
    p->svg = s;
    sw_format(p->em, 4, number, sizeof number);
    sw__line_add(&line, "class=\"strap-drawing\" font-size=\"");
    sw__line_add(&line, number);
    sw__line_add(&line, "\"");
    sw__svg_group(s, look);
    double y = sw__draw_heading(p, 0.5 * p->em);
    if (views != SW_VIEW_PLAN)
        y = sw__draw_side(p, y);
    y = sw__draw_verdict(p, y);
    if (views != SW_VIEW_PLAN)
        y = sw__draw_side_notes(p, y);
    if (views != SW_VIEW_SIDE) {
        y = sw__draw_plan_heading(p, y + 0.2 * p->em);
        y = sw__draw_plan(p, y + 0.4 * p->em);
        y = sw__draw_plan_notes(p, y);
    }
    y = sw__draw_scales(p, y + 0.2 * p->em);
    sw__svg_group_end(s);
    return ceil(y + 0.5 * p->em);
}

sw_drawing *sw_strap_drawing(const sw_strap_in *in,
                             const sw_strap_drawing_in *how, sw_error *err)
{
    sw__picture p;
    char title[120], about[1600];
    sw__clear(err);
    if (!in) {
        sw__fail_null(err, "in");
        return NULL;
    }
    if (sw__picture_open(&p, in, how, err))
        return NULL;
    sw__picture_place(&p);
    sw__svg nothing = {.failed = 1}, s;
    const double height = draw(&p, &nothing);
    sw__say_title(&p, title, sizeof title);
    sw__say_about(&p, about, sizeof about);
    sw__svg_start(&s, p.how.width_px, height, title, about);
    draw(&p, &s);
    return sw__svg_finish(&s, err);
}
