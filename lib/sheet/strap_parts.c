/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap parts: table, part, heel, stud, nut in side view.
 *
 * The stud below the nut is drawn as the cubic through foot and nut with the
 * slopes they have: the shape of a beam bent at its end. Above the nut it is
 * straight. Table and T-nut are in section.
 */
#include "sheet/strap_picture.h"

#include "base/tables.h"
#include "sheet/hatch.h"

#include <string.h>

#define STEEL                                                                  \
    "fill=\"#dfe4e8\" stroke=\"#1a1a1a\" stroke-width=\"1.2\" "                \
    "stroke-linejoin=\"round\""
#define HATCH "class=\"hatch\" stroke=\"#a9a9a9\" stroke-width=\"0.8\""

static sw__point corner(const sw__picture *p, double x, double y)
{
    return sw__px(p, x, y);
}

static void box(sw__picture *p, double x1, double y1, double x2, double y2,
                const char *look)
{
    const sw__point c[4] = {corner(p, x1, y1), corner(p, x2, y1),
                            corner(p, x2, y2), corner(p, x1, y2)};
    sw__svg_polygon(p->svg, c, 4, look);
}

static void hatch(sw__picture *p, const sw__point *c, int n, int falling)
{
    sw__svg_group(p->svg, HATCH);
    sw__hatch(p->svg, c, n, 0.75 * p->em, falling);
    sw__svg_group_end(p->svg);
}

typedef struct {
    double throat, deep, recess, recess_deep; /* T-slot; widths, depths */
    double nut_wide, nut_high, head;          /* T-nut */
} tslot;

/* From the tables; what they do not have, in proportion to the thread. */
static tslot tslot_of(const sw__picture *p)
{
    const double d = p->full.thread.nominal_mm;
    tslot s = {1.17 * d, 2.1 * d, 0, 0.85 * d, 0, 1.3 * d, 0.65 * d};
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

static void draw_tnut(sw__picture *p, const tslot *s)
{
    const double x = p->g.b, y = p->table_y - s->deep + s->recess_deep;
    const double neck = 0.46 * s->throat, head = s->nut_wide / 2;
    const double up = fmin(s->nut_high - s->head, s->deep - s->recess_deep);
    const sw__point c[8] = {
        corner(p, x - head, y - s->head), corner(p, x + head, y - s->head),
        corner(p, x + head, y),           corner(p, x + neck, y),
        corner(p, x + neck, y + up),      corner(p, x - neck, y + up),
        corner(p, x - neck, y),           corner(p, x - head, y)};
    sw__svg_polygon(p->svg, c, 8, STEEL);
}

void sw__draw_table(sw__picture *p)
{
    const tslot s = tslot_of(p);
    const double x = p->g.b, y = p->table_y, low = y - p->table_deep;
    const double left = (p->left - p->zero_x) / p->scale;
    const double right = (p->right - p->zero_x) / p->scale;
    const double t = s.throat / 2, r = s.recess / 2,
                 lip = s.deep - s.recess_deep;
    const sw__point c[12] = {
        corner(p, left, y),           corner(p, x - t, y),
        corner(p, x - t, y - lip),    corner(p, x - r, y - lip),
        corner(p, x - r, y - s.deep), corner(p, x + r, y - s.deep),
        corner(p, x + r, y - lip),    corner(p, x + t, y - lip),
        corner(p, x + t, y),          corner(p, right, y),
        corner(p, right, low),        corner(p, left, low)};
    sw__svg_group(p->svg, "class=\"table\"");
    sw__svg_polygon(p->svg, c, 12, "fill=\"#f0f0ee\"");
    hatch(p, c, 12, 0);
    sw__svg_polyline(p->svg, c, 10, "stroke=\"#1a1a1a\" stroke-width=\"1.4\"");
    sw__svg_group_end(p->svg);
    sw__svg_group(p->svg, "class=\"slot\"");
    draw_tnut(p, &s);
    sw__svg_group_end(p->svg);
}

/* A straight edge where nothing ends, broken once. */
static int broken(sw__point *c, double x, double y1, double y2, double size)
{
    const double m = (y1 + y2) / 2, h = fmin(size, fabs(y2 - y1) / 4);
    const double s = y2 > y1 ? 1 : -1;
    c[0] = (sw__point){x, y1};
    c[1] = (sw__point){x, m - s * h};
    c[2] = (sw__point){x + h, m - s * h / 2};
    c[3] = (sw__point){x - h, m + s * h / 2};
    c[4] = (sw__point){x, m + s * h};
    c[5] = (sw__point){x, y2};
    return 6;
}

void sw__draw_part(sw__picture *p)
{
    const double pad = p->full.in.pad_thickness_mm;
    const sw__point top = sw__px(p, p->part_edge, p->part_top);
    const sw__point low = sw__px(p, p->part_edge, p->table_y);
    sw__point c[8];
    int n = broken(c, p->part_end, top.y, low.y, 0.6 * p->em);
    c[n++] = low;
    c[n++] = top;
    sw__svg_group(p->svg, "class=\"part\"");
    sw__svg_polygon(p->svg, c, n, "fill=\"#f7eedb\"");
    hatch(p, c, n, 1);
    const sw__point edge[3] = {c[5], low, top};
    sw__svg_polyline(p->svg, c, 6, "stroke=\"#1a1a1a\" stroke-width=\"0.8\"");
    sw__svg_polyline(p->svg, edge, 3,
                     "stroke=\"#1a1a1a\" stroke-width=\"1.4\"");
    sw__svg_line(p->svg, top, c[0], "stroke=\"#1a1a1a\" stroke-width=\"1.4\"");
    sw__svg_group_end(p->svg);
    if (pad > 0) {
        const double to = fmax(p->strap_right, p->g.L + 0.3 * p->g.t);
        sw__svg_group(p->svg, "class=\"pad\"");
        box(p, p->part_edge, p->part_top, to, p->part_top + pad,
            "fill=\"#cfc6b0\" stroke=\"#1a1a1a\" stroke-width=\"1.2\"");
        sw__svg_group_end(p->svg);
    }
}

/* A block whose face under the strap is cut into teeth. */
static void draw_teeth(sw__picture *p)
{
    enum { TEETH = 7 };
    sw__point c[2 * TEETH + 4];
    const double wide = p->block_right - p->block_left;
    const double deep = fmin(wide / TEETH, 0.5 * -p->table_y);
    int n = 0;
    c[n++] = corner(p, p->block_left, p->table_y);
    for (int i = 0; i < TEETH; i++) {
        const double x = p->block_left + wide * i / TEETH;
        c[n++] = corner(p, x, i ? -deep : 0);
        c[n++] = corner(p, x + wide / TEETH, 0);
    }
    c[n++] = corner(p, p->block_right, p->table_y);
    sw__svg_polygon(p->svg, c, n, "");
}

static void draw_jack(sw__picture *p)
{
    enum { THREADS = 10 };
    const double r = p->full.in.heel_screw_diameter_mm / 2, h = -p->table_y;
    const double foot = fmin(1.1 * r, 0.3 * h), crown = fmin(0.5 * r, 0.2 * h);
    const sw__point c[8] = {
        corner(p, -1.8 * r, -h),      corner(p, 1.8 * r, -h),
        corner(p, 1.8 * r, foot - h), corner(p, r, foot - h),
        corner(p, r, -crown),         corner(p, 0.45 * r, 0),
        corner(p, -0.45 * r, 0),      corner(p, -r, -crown)};
    sw__point all[10];
    memcpy(all, c, sizeof c);
    all[8] = corner(p, -r, foot - h);
    all[9] = corner(p, -1.8 * r, foot - h);
    sw__svg_polygon(p->svg, all, 10, "");
    sw__svg_group(p->svg, "stroke-width=\"0.7\"");
    for (int i = 1; i < THREADS; i++) {
        const double y = foot - h + (h - foot - crown) * i / THREADS;
        sw__svg_line(p->svg, corner(p, -r, y),
                     corner(p, r, y + (h - foot) / THREADS / 2), "");
    }
    sw__svg_group_end(p->svg);
}

void sw__draw_heel(sw__picture *p)
{
    sw__svg_group(p->svg, "class=\"heel\" " STEEL);
    if (p->full.in.heel == SW_HEEL_SCREW)
        draw_jack(p);
    else if (p->full.in.heel == SW_HEEL_SERRATED)
        draw_teeth(p);
    else
        box(p, p->block_left, p->table_y, p->block_right, 0, "");
    sw__svg_group_end(p->svg);
}

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
    const tslot s = tslot_of(p);
    const double r = p->full.thread.nominal_mm / 2;
    const double low = p->table_y - s.deep + s.recess_deep - s.head;
    const double end = p->full.above_strap_mm;
    sw__point left[PARTS + 2], right[PARTS + 2], all[2 * PARTS + 4];
    for (int i = 0; i <= PARTS; i++) {
        const double y = low + (p->nut.y - low) * i / PARTS;
        double slope;
        const double x = stud_at(p, y, &slope), c = r / hypot(1, slope);
        left[i] = corner(p, x - c, y + c * slope);
        right[i] = corner(p, x + c, y - c * slope);
    }
    const double sn = sin(p->lean), cs = cos(p->lean);
    left[PARTS + 1] =
        corner(p, p->nut.x + end * sn - r * cs, p->nut.y + end * cs + r * sn);
    right[PARTS + 1] =
        corner(p, p->nut.x + end * sn + r * cs, p->nut.y + end * cs - r * sn);
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
    return corner(p, p->nut.x + across * c + up * s,
                  p->nut.y - across * s + up * c);
}

/* The same of what lies flat on the strap. */
static sw__point on_slope(const sw__picture *p, double across, double up)
{
    return corner(p, p->nut.x + across * p->cos_theta + up * p->sin_theta,
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
