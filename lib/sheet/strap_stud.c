/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap stud: stud, nut and what lies under it, in side view.
 *
 * Below the nut the stud is drawn as the cubic through foot and nut with the
 * slopes it has there: the shape of a beam bent at its end. Above the nut it is
 * straight.
 */
#include "sheet/strap_picture.h"

#include "base/tables.h"

#define STEEL                                                                  \
    "fill=\"#dfe4e8\" stroke=\"#1a1a1a\" stroke-width=\"1.2\" "                \
    "stroke-linejoin=\"round\""

/* The stud's middle at a height, and its slope there. */
static double stud_at(const sw__picture *p, double y, double *slope)
{
    const double l = p->full.in.stud_length_mm, x = p->g.b;
    const double D = p->nut.x - x, top = tan(p->lean);
    const double foot = p->full.in.foot == SW_FOOT_ROCKING
                            ? (3 * D / l - top) / 2 /* no moment there */
                            : 0;
    const double h = 1 - (p->nut.y - y) / l;
    if (h <= 0) {
        *slope = 0;
        return x;
    }
    *slope = D / l * 6 * h * (1 - h) + top * h * (3 * h - 2) +
             foot * (1 - h) * (1 - 3 * h);
    return x + D * h * h * (3 - 2 * h) + top * l * h * h * (h - 1) +
           foot * l * h * (1 - h) * (1 - h);
}

void sw__draw_stud(sw__picture *p)
{
    enum { PARTS = 16 };
    const sw__tslot s = p->tslot;
    const double r = p->full.thread.nominal_mm / 2;
    const double low = p->table_y - s.deep + s.recess_deep - s.head;
    const double end = p->full.above_strap_mm;
    sw__point left[PARTS + 2], right[PARTS + 2], all[2 * PARTS + 4];
    for (int i = 0; i <= PARTS; i++) {
        const double y = low + (p->nut.y - low) * i / PARTS;
        double slope;
        const double x = stud_at(p, y, &slope), c = r / hypot(1, slope);
        left[i] = sw__px(p, x - c, y + c * slope);
        right[i] = sw__px(p, x + c, y - c * slope);
    }
    const double sn = sin(p->lean), cs = cos(p->lean);
    left[PARTS + 1] =
        sw__px(p, p->nut.x + end * sn - r * cs, p->nut.y + end * cs + r * sn);
    right[PARTS + 1] =
        sw__px(p, p->nut.x + end * sn + r * cs, p->nut.y + end * cs - r * sn);
    for (int i = 0; i < PARTS + 2; i++) {
        all[i] = left[i];
        all[2 * PARTS + 3 - i] = right[i];
    }
    sw__svg_group(p->svg, "class=\"stud\" " STEEL);
    sw__svg_polygon(p->svg, all, 2 * PARTS + 4, "");
    sw__svg_group_end(p->svg);
}

/* A point of what stands on the seat: along the nut's axis and across it. */
static sw__point on_nut(const sw__picture *p, double across, double up)
{
    const double s = sin(p->lean), c = cos(p->lean);
    return sw__px(p, p->nut.x + across * c + up * s,
                  p->nut.y - across * s + up * c);
}

/* The same of what lies flat on the strap. */
static sw__point on_slope(const sw__picture *p, double across, double up)
{
    return sw__px(p, p->nut.x + across * p->cos_theta + up * p->sin_theta,
                  p->nut.y - across * p->sin_theta + up * p->cos_theta);
}

static void disc(sw__picture *p, double radius, double from, double to)
{
    const sw__point c[4] = {on_nut(p, -radius, from), on_nut(p, radius, from),
                            on_nut(p, radius, to), on_nut(p, -radius, to)};
    sw__svg_polygon(p->svg, c, 4, "");
}

/* A hexagon seen across its corners: three faces, chamfered on top. */
static void hexagon(sw__picture *p, double from)
{
    const sw_thread_out *t = &p->full.thread;
    const double e = t->across_flats_mm / sqrt(3), h = t->nut_height_mm;
    const double chamfer = 0.12 * h, flat = t->across_flats_mm / 2;
    const sw__point c[6] = {on_nut(p, -e, from),
                            on_nut(p, e, from),
                            on_nut(p, e, from + h - chamfer),
                            on_nut(p, 0.9 * flat, from + h),
                            on_nut(p, -0.9 * flat, from + h),
                            on_nut(p, -e, from + h - chamfer)};
    sw__svg_polygon(p->svg, c, 6, "");
    for (int side = -1; side <= 1; side += 2)
        sw__svg_line(p->svg, on_nut(p, side * e / 2, from),
                     on_nut(p, side * e / 2, from + h - chamfer), "");
}

/* The dished seat goes with the strap, the washer on it with the nut; they
 * meet in a sphere whose middle lies on the stud. */
static void draw_pair(sw__picture *p)
{
    enum { PARTS = 12 };
    const struct sw__spherical_row *row = sw__spherical_of(p->full.thread.size);
    const double d = p->full.thread.nominal_mm, R = p->full.in.sphere_radius_mm;
    const double wide = row ? row->washer_outer_mm / 2 : d;
    const double deep = row ? row->seat_height_mm : 0.4 * d;
    const double low = 0.75 * deep, hole = 0.54 * d;
    sw__point seat[4], c[PARTS + 3];
    for (int i = 0; i < 4; i++)
        seat[i] =
            on_slope(p, i == 0 || i == 3 ? -wide : wide, i > 1 ? deep : 0);
    sw__svg_polygon(p->svg, seat, 4, "");
    int n = 0;
    c[n++] = on_nut(p, -wide, p->under_nut);
    for (int i = 0; i <= PARTS; i++) {
        const double x = wide * (2.0 * i / PARTS - 1);
        const double in = fmin(fmax(fabs(x), hole), 0.98 * R);
        const double up =
            low - sqrt(R * R - in * in) + sqrt(fmax(0, R * R - hole * hole));
        c[n++] = on_nut(p, x, fmin(up, 0.95 * p->under_nut));
    }
    c[n++] = on_nut(p, wide, p->under_nut);
    sw__svg_polygon(p->svg, c, n, "fill=\"#c6d0d8\"");
}

void sw__draw_nut(sw__picture *p)
{
    const sw_strap_in *in = &p->full.in;
    sw__svg_group(p->svg, "class=\"washer\" " STEEL);
    if (in->seat == SW_SEAT_SPHERICAL)
        draw_pair(p);
    else if (in->washer_diameter_mm > 0 && in->washer_thickness_mm > 0)
        disc(p, in->washer_diameter_mm / 2, 0, in->washer_thickness_mm);
    sw__svg_group_end(p->svg);
    sw__svg_group(p->svg, "class=\"nut\" " STEEL);
    hexagon(p, p->under_nut);
    sw__svg_group_end(p->svg);
}
