/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap fixture: what the strap and its stud stand on, in side view: table
 * with T-slot and T-nut in section, part, pad, heel support.
 */
#include "sheet/hatch.h"
#include "sheet/strap_picture.h"

#include <string.h>

#define STEEL                                                                  \
    "fill=\"#dfe4e8\" stroke=\"#1a1a1a\" stroke-width=\"1.2\" "                \
    "stroke-linejoin=\"round\""
#define INK "stroke=\"#1a1a1a\" stroke-width=\"1.4\""
#define HATCH "class=\"hatch\" stroke=\"#a9a9a9\" stroke-width=\"0.8\""

static void box(sw__picture *p, double x1, double y1, double x2, double y2,
                const char *look)
{
    const sw__point c[4] = {sw__px(p, x1, y1), sw__px(p, x2, y1),
                            sw__px(p, x2, y2), sw__px(p, x1, y2)};
    sw__svg_polygon(p->svg, c, 4, look);
}

static void hatch(sw__picture *p, const sw__point *c, int n, int falling)
{
    sw__svg_group(p->svg, HATCH);
    sw__hatch(p->svg, c, n, 0.75 * p->em, falling);
    sw__svg_group_end(p->svg);
}

static void draw_tnut(sw__picture *p, const sw__tslot *s)
{
    const double x = p->g.b, y = p->table_y - s->deep + s->recess_deep;
    const double neck = 0.46 * s->throat, head = s->nut_wide / 2;
    const double up = fmin(s->nut_high - s->head, s->deep - s->recess_deep);
    const sw__point c[8] = {
        sw__px(p, x - head, y - s->head), sw__px(p, x + head, y - s->head),
        sw__px(p, x + head, y),           sw__px(p, x + neck, y),
        sw__px(p, x + neck, y + up),      sw__px(p, x - neck, y + up),
        sw__px(p, x - neck, y),           sw__px(p, x - head, y)};
    sw__svg_polygon(p->svg, c, 8, STEEL);
}

void sw__draw_table(sw__picture *p)
{
    const sw__tslot s = p->tslot;
    const double x = p->g.b, y = p->table_y, low = y - p->table_deep;
    const double left = (p->left - p->zero_x) / p->scale;
    const double right = (p->right - p->zero_x) / p->scale;
    const double t = s.throat / 2, r = s.recess / 2,
                 lip = s.deep - s.recess_deep;
    const sw__point c[12] = {
        sw__px(p, left, y),           sw__px(p, x - t, y),
        sw__px(p, x - t, y - lip),    sw__px(p, x - r, y - lip),
        sw__px(p, x - r, y - s.deep), sw__px(p, x + r, y - s.deep),
        sw__px(p, x + r, y - lip),    sw__px(p, x + t, y - lip),
        sw__px(p, x + t, y),          sw__px(p, right, y),
        sw__px(p, right, low),        sw__px(p, left, low)};
    sw__svg_group(p->svg, "class=\"table\" fill=\"#f0f0ee\" " INK);
    sw__svg_polygon(p->svg, c, 12, "stroke=\"none\"");
    hatch(p, c, 12, 0);
    sw__svg_polyline(p->svg, c, 10, "");
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
    sw__svg_group(p->svg, "class=\"part\" fill=\"#f7eedb\" " INK);
    sw__svg_polygon(p->svg, c, n, "stroke=\"none\"");
    hatch(p, c, n, 1);
    const sw__point edge[3] = {c[5], low, top};
    sw__svg_polyline(p->svg, c, 6, "stroke-width=\"0.8\"");
    sw__svg_polyline(p->svg, edge, 3, "");
    sw__svg_line(p->svg, top, c[0], "");
    sw__svg_group_end(p->svg);
    if (pad > 0) {
        const double to = fmax(p->strap_right, p->g.L + 0.3 * p->g.t);
        sw__svg_group(p->svg, "class=\"pad\" fill=\"#cfc6b0\" " INK);
        box(p, p->part_edge, p->part_top, to, p->part_top + pad, "");
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
    c[n++] = sw__px(p, p->block_left, p->table_y);
    for (int i = 0; i < TEETH; i++) {
        const double x = p->block_left + wide * i / TEETH;
        c[n++] = sw__px(p, x, i ? -deep : 0);
        c[n++] = sw__px(p, x + wide / TEETH, 0);
    }
    c[n++] = sw__px(p, p->block_right, p->table_y);
    sw__svg_polygon(p->svg, c, n, "");
}

static void draw_jack(sw__picture *p)
{
    enum { THREADS = 10 };
    const double r = p->full.in.heel_screw_diameter_mm / 2, h = -p->table_y;
    const double foot = fmin(1.1 * r, 0.3 * h), crown = fmin(0.5 * r, 0.2 * h);
    const sw__point c[8] = {
        sw__px(p, -1.8 * r, -h),      sw__px(p, 1.8 * r, -h),
        sw__px(p, 1.8 * r, foot - h), sw__px(p, r, foot - h),
        sw__px(p, r, -crown),         sw__px(p, 0.45 * r, 0),
        sw__px(p, -0.45 * r, 0),      sw__px(p, -r, -crown)};
    sw__point all[10];
    memcpy(all, c, sizeof c);
    all[8] = sw__px(p, -r, foot - h);
    all[9] = sw__px(p, -1.8 * r, foot - h);
    sw__svg_polygon(p->svg, all, 10, "");
    sw__svg_group(p->svg, "stroke-width=\"0.7\"");
    for (int i = 1; i < THREADS; i++) {
        const double y = foot - h + (h - foot - crown) * i / THREADS;
        sw__svg_line(p->svg, sw__px(p, -r, y),
                     sw__px(p, r, y + (h - foot) / THREADS / 2), "");
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
