/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap place: where the parts of a strap's picture stand.
 *
 * Contacts, stud and nut are where the answer says. What no question asks for
 * is given plain proportions, for the picture alone: a land that was left at
 * zero (the strap bears somewhere on it), the width of the heel block, how far
 * the part goes on. The tilt is not exaggerated. A contact on a land or a
 * round nose lies beside where the heights were measured; the part then reaches
 * up to it.
 */
#include "sheet/strap_picture.h"

#include "base/tables.h"

#include <string.h>

static double some_land(double land, double room, double t)
{
    return land > 0 ? land : fmin(0.5 * t, 0.6 * room);
}

static void place_toe(sw__picture *p)
{
    const sw_strap_in *in = &p->full.in;
    const sw__strap_geometry *g = &p->g;
    p->toe = (sw__point){g->L, g->y_toe};
    p->part_edge = g->L - some_land(0, g->a, g->t);
    p->strap_right = g->L;
    if (in->nose == SW_NOSE_ROUND) {
        const double r = in->nose_radius_mm;
        p->nose_x = g->L - r * p->sin_theta;
        p->strap_right = p->nose_x;
        p->toe.y =
            -p->nose_x * p->tan_theta - in->step_mm - r * (1 - p->cos_theta);
    } else if (in->nose == SW_NOSE_BALL) {
        p->strap_right = g->L + 0.6 * g->t;
    } else if (g->toe_bears == SW_BEARS_TIP) {
        p->part_edge = g->L - some_land(in->toe_land_mm, g->a, g->t);
    } else {
        p->part_edge = g->L;
        p->strap_right = g->L + some_land(in->toe_land_mm, g->a, g->t);
    }
}

static void place_heel(sw__picture *p)
{
    const sw_strap_in *in = &p->full.in;
    const sw__strap_geometry *g = &p->g;
    const double land = some_land(in->heel_land_mm, g->b, g->t);
    if (in->heel == SW_HEEL_SCREW) {
        const double r = 0.9 * in->heel_screw_diameter_mm;
        p->strap_left = -fmax(0.6 * g->t, 1.2 * r);
        p->block_left = -r;
        p->block_right = r;
    } else if (g->heel_bears == SW_BEARS_TIP) {
        p->strap_left = 0;
        p->block_right = land;
        p->block_left = -0.8 * g->t;
    } else {
        p->strap_left = -land;
        p->block_right = 0;
        p->block_left = -land - 0.5 * g->t;
    }
}

static void place_nut(sw__picture *p)
{
    const sw_strap_in *in = &p->full.in;
    const sw__seat *seat = &p->f.seat;
    const double sign = p->f.theta < 0 ? -1 : 1;
    const double seat_leans = fmax(0, fabs(p->f.theta) - p->g.permitted);
    /* on its edge the nut's middle stands lift = rim sin(phi - alpha)/cos(phi)
     * over the seat (seat.c) */
    const double off =
        seat->on_rim ? asin(fmin(1, seat->lift * cos(seat_leans) / p->g.rim))
                     : 0;
    p->lean = sign * fmax(0, seat_leans - off);
    p->nut = (sw__point){p->f.x_nut, p->f.y_seat};
    p->under_nut =
        p->full.above_strap_mm - p->full.thread.nut_height_mm - in->stud_end_mm;
    /* a stud bent that far leaves its axis, where its arrow stands */
    p->stud_top =
        fmax(p->nut.y + p->full.above_strap_mm,
             p->g.t / p->cos_theta - p->g.b * p->tan_theta + 0.2 * p->g.t);
}

/* From the tables; what they do not have, in proportion to the thread. */
static sw__tslot tslot_of(const sw__picture *p)
{
    const double d = p->full.thread.nominal_mm;
    sw__tslot s = {1.17 * d, 2.1 * d, 0, 0.85 * d, 0, 1.3 * d, 0.65 * d};
    for (size_t i = 0; i < sw__tslots_count; i++) {
        const struct sw__tslots_row *row = &sw__tslots[i];
        if (strcmp(row->size, p->full.thread.size) != 0)
            continue;
        s.throat = row->throat_width_mm;
        if (sw__is_set(row->total_depth_max_mm)) {
            s.deep = row->total_depth_max_mm;
            s.recess_deep = row->recess_depth_max_mm;
        }
        if (sw__is_set(row->tnut_height_mm)) {
            s.nut_high = row->tnut_height_mm;
            s.head = row->tnut_head_mm;
        }
    }
    s.recess = 1.8 * s.throat;
    s.nut_wide = 1.65 * s.throat;
    s.head = fmin(s.head, 0.9 * s.recess_deep);
    return s;
}

sw__point sw__on_strap(const sw__picture *p, double x, double up)
{
    const double step = p->full.in.step_mm;
    double down = 0;
    if (step != 0 && x > p->crank_from)
        down = x < p->crank_to
                   ? step * (x - p->crank_from) / (p->crank_to - p->crank_from)
                   : step;
    return (sw__point){x + up * p->sin_theta,
                       -x * p->tan_theta - down + up * p->cos_theta};
}

void sw__strap_slot(const sw__picture *p, double *low, double *high)
{
    const double b = p->g.b, t = p->g.t, r = p->full.thread.nominal_mm / 2;
    const double half = r + fmax(p->full.in.slot_clearance_mm, 1);
    const double foot = p->nut.x - t * p->sin_theta; /* under the nut */
    *low = fmax(b - half, p->strap_left + 0.3 * t);
    *high = fmin(b + half, fmax(p->crank_from, b) + 0.1 * t);
    /* a stud that bends further than its slot is drawn as the answer has it */
    *low = fmin(*low, foot - r);
    *high = fmax(*high, fmin(foot + r, p->strap_right));
}

double sw__sideways_px(const sw__picture *p, double N, int *cut)
{
    const double most = p->part_end - sw__px(p, p->g.L, 0).x - p->em;
    const double wish = fabs(N) * p->per_N * p->how.sideways;
    if (cut)
        *cut = wish > most;
    return fmin(wish, most);
}

static void place_sheet(sw__picture *p)
{
    const sw__strap_geometry *g = &p->g;
    const double W = p->how.width_px;
    const int heights = W >= 520; /* lanes for the heights beside it */
    p->em = p->how.text_px;
    p->line = 1.25 * p->em;
    p->left = heights ? 3.2 * p->em : 0.5 * p->em;
    p->right = W - p->left;
    p->head_size = 1.5 * p->em;
    p->per_N = fmin(0.22 * W, 18 * p->em) / p->how.full_force_N;
    const double span = p->right - p->left, part = 0.26 * span;
    const double from = fmin(p->strap_left, p->block_left) - 0.25 * g->t;
    const double nose =
        p->full.in.nose == SW_NOSE_ROUND ? p->full.in.nose_radius_mm : 0;
    const double to =
        fmax(p->strap_right + nose, sw__on_strap(p, p->strap_right, g->t).x);
    const double bottom = p->table_y - p->table_deep;
    const double top =
        fmax(p->stud_top, fmax(sw__on_strap(p, p->strap_left, g->t).y,
                               sw__on_strap(p, p->strap_right, g->t).y));
    p->scale = fmin((span - part) / (to - from),
                    (heights ? 0.52 : 0.8) * W / (top - bottom));
    p->scale = fmin(p->scale, 0.7 * W / p->full.in.strap_width_mm);
    const double used = p->scale * (to - from) + part;
    p->zero_x = p->left + (span - used) / 2 - p->scale * from;
    p->part_end = p->zero_x + p->scale * to + part - 0.5 * p->em;
}

void sw__picture_place(sw__picture *p)
{
    const sw_strap_in *in = &p->full.in;
    p->tan_theta = p->g.tan_theta;
    p->cos_theta = p->g.cos_theta;
    p->sin_theta = p->tan_theta * p->cos_theta;
    place_toe(p);
    place_heel(p);
    place_nut(p);
    p->crank_from = p->crank_to = p->part_edge;
    if (in->step_mm != 0) {
        const double room = p->part_edge - p->g.b;
        p->crank_from = p->g.b + 0.45 * room;
        p->crank_to = p->g.b + 0.85 * room;
    }
    p->table_y = -in->heel_height_mm;
    p->tslot = tslot_of(p);
    p->table_deep = p->tslot.deep + 0.45 * p->full.thread.nominal_mm;
    p->part_top = fmax(p->table_y, p->toe.y - in->pad_thickness_mm);
    place_sheet(p);
}
