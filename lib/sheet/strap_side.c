/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap side: the side view. From above: a band of labels, the arrows of the
 * three upright forces with thin lines up to their labels, the strap, the
 * table in section, distances and rule.
 *
 * No word stands among the parts: labels keep to their band, heights to lanes
 * at both edges, so that nothing overlaps whatever the strap looks like.
 */
#include "sheet/arrow.h"
#include "sheet/lettering.h"
#include "sheet/strap_picture.h"
#include "sheet/vial.h"

#include <strapwise/say.h>

#include <string.h>

#define LEADER "stroke-width=\"0.8\""
#define DIMENSION "class=\"dimension\" stroke=\"#5b5b5b\" stroke-width=\"0.8\""
#define HOLLOW                                                                 \
    "class=\"side-pull\" fill=\"#fff\" stroke=\"" SW__SIDEWAYS                 \
    "\" stroke-width=\"1.6\" stroke-linejoin=\"round\""

enum { FORCES = 3, LINES = 4 };

/* One upright force: where it presses, its words. */
typedef struct {
    const char *look;
    double N;
    sw__point head;
    double length; /* px */
    int cut;
    char line[LINES][40];
    int lines;
    double width; /* px */
} upright;

static void add_line(upright *u, const char *text)
{
    sw__copy(u->line[u->lines], sizeof u->line[0], text);
    u->lines++;
}

static void describe(const sw__picture *p, upright *u, const char *name,
                     int share, int high)
{
    char text[80];
    const int show = p->how.show;
    const int us = show == SW_SHOW_US_FIRST || show == SW_SHOW_US;
    sw__line line = sw__line_start(text, sizeof text);
    sw__line_add(&line, name);
    if (share) {
        sw__line_add(&line, " ");
        sw__line_add_number(&line, round(100 * u->N / p->out.preload_N));
        sw__line_add(&line, " %");
    }
    add_line(u, text);
    for (int i = 0; i < 2; i++) {
        if (i && (show == SW_SHOW_SI || show == SW_SHOW_US))
            break;
        sw_say(u->N, SW_KIND_FORCE, us != i ? SW_SHOW_US : SW_SHOW_SI, text,
               sizeof text);
        add_line(u, text);
    }
    if (high)
        add_line(u, "on the high side");
    for (int i = 0; i < u->lines; i++)
        u->width = fmax(u->width, p->em * sw__letters_em(u->line[i], i == 0));
}

/* Heads without the place of the sheet: y is px below the heel contact. */
static void list(const sw__picture *p, upright u[FORCES])
{
    static const char *const look[FORCES] = {
        "class=\"heel-force\" fill=\"" SW__UPRIGHT "\"",
        "class=\"stud-force\" fill=\"" SW__UPRIGHT "\"",
        "class=\"toe-force\" fill=\"" SW__UPRIGHT "\""};
    static const char *const name[FORCES] = {"heel", "stud", "toe"};
    const double N[FORCES] = {p->out.heel_force_N, p->out.preload_N,
                              p->out.toe_force_N};
    /* the nut goes along the strap as it finds its seat */
    const double x[FORCES] = {0, p->g.b + p->out.nut_travel_mm, p->g.L};
    const double y[FORCES] = {0, p->stud_top, p->toe.y};
    const double most = 1.6 * p->per_N * p->how.full_force_N;
    memset(u, 0, FORCES * sizeof u[0]);
    for (int i = 0; i < FORCES; i++) {
        u[i].look = look[i];
        u[i].N = N[i];
        u[i].head = (sw__point){p->zero_x + p->scale * x[i], -p->scale * y[i]};
        u[i].length = fmin(most, N[i] * p->per_N);
        u[i].cut = N[i] * p->per_N > most;
        describe(p, &u[i], name[i], i != 1, i != 1 && i - 1 == -sw__leans(p));
    }
}

static void draw_upright(sw__picture *p, const upright *u, double x,
                         double band, double band_end)
{
    sw__svg *s = p->svg;
    const sw__point head = {u->head.x, u->head.y + p->zero_y};
    const sw__point tail = {head.x, head.y - u->length};
    const double under = band + u->lines * p->line - 0.6 * p->em;
    sw__svg_group(s, u->look);
    sw__arrow(s, tail, head, p->head_size, "");
    sw__svg_group(s,
                  LEADER " stroke=\"" SW__UPRIGHT "\" stroke-opacity=\"0.55\"");
    const sw__point leader[4] = {
        {x, under}, {x, under + 0.2 * p->em}, {tail.x, band_end}, tail};
    sw__svg_polyline(s, leader, 4, "");
    if (u->cut) {
        p->cut_short = 1;
        sw__arrow_cut(s, tail, head, p->head_size, "stroke-opacity=\"1\"");
    }
    sw__svg_group_end(s);
    for (int i = 0; i < u->lines; i++)
        sw__svg_text(s, (sw__point){x, band + i * p->line}, "middle",
                     i == 0 ? "font-weight=\"bold\"" : "", u->line[i]);
    sw__svg_group_end(s);
}

/* Labels in their band over the arrows; they step aside for one another. */
static void draw_forces(sw__picture *p, const upright u[FORCES], double band,
                        double band_end)
{
    double x[FORCES], width[FORCES];
    for (int i = 0; i < FORCES; i++) {
        x[i] = u[i].head.x;
        width[i] = u[i].width;
    }
    sw__spread_out(x, width, FORCES, 0.4 * p->em, 0.3 * p->em,
                   p->how.width_px - 0.3 * p->em);
    for (int i = 0; i < FORCES; i++)
        draw_upright(p, &u[i], x[i], band, band_end);
}

/* On the part, from the toe contact on; a thin part is covered by it. */
static void draw_side_pull(sw__picture *p)
{
    int cut;
    const double S = p->out.side_pull_N;
    const double length = sw__sideways_px(p, S, &cut);
    if (p->out.pull_direction == SW_PULL_NONE || !(length > 0) ||
        p->out.warnings & SW_WARN_NO_NOMINAL)
        return;
    const sw__point contact = sw__px(p, p->g.L, p->part_top);
    const double y = contact.y + 0.6 * p->head_size;
    const sw__point near = {contact.x, y}, far = {contact.x + length, y};
    sw__svg_group(p->svg, HOLLOW);
    sw__arrow(p->svg, S > 0 ? far : near, S > 0 ? near : far, p->head_size, "");
    p->cut_short |= cut;
    if (cut)
        sw__arrow_cut(p->svg, near, far, p->head_size, "");
    sw__svg_group_end(p->svg);
}

/* Along the table on the strap: what pushes it, at stud and heel; the two are
 * what the part feels. */
static void draw_on_strap(sw__picture *p)
{
    const double N[2] = {p->out.side_load_on_strap_N, p->out.heel_side_N};
    const double x[2] = {p->g.b, 0}, up[2] = {0.62, 0.3};
    if (p->out.warnings & SW_WARN_NO_NOMINAL)
        return;
    sw__svg_group(p->svg, "class=\"on-strap\" fill=\"#fff\" stroke=\"#1a1a1a\" "
                          "stroke-width=\"1\"");
    for (int i = 0; i < 2; i++) {
        int cut;
        const double wish = sw__sideways_px(p, N[i], &cut);
        const sw__point at = sw__on_strap(p, x[i], up[i] * p->g.t);
        const sw__point tail = sw__px(p, at.x, at.y);
        /* no farther than the strap goes */
        const double end =
            sw__px(p, N[i] > 0 ? p->strap_right : p->strap_left, 0).x;
        const double long_px = fmin(wish, fabs(end - tail.x));
        if (long_px < 2)
            continue;
        cut |= long_px < wish;
        const sw__point head = {tail.x + (N[i] > 0 ? long_px : -long_px),
                                tail.y};
        sw__arrow(p->svg, tail, head, 0.8 * p->head_size, "");
        p->cut_short |= cut;
        if (cut)
            sw__arrow_cut(p->svg, tail, head, 0.8 * p->head_size, "");
    }
    sw__svg_group_end(p->svg);
}

/* What leans beside what does not: the wedge between a level line from the
 * strap's high end and its upper face. */
static void draw_wedge(sw__picture *p)
{
    if (!sw__leans(p))
        return;
    const int heel = sw__leans(p) > 0;
    const sw__point left = sw__on_strap(p, p->strap_left, p->g.t);
    const double end = p->full.in.step_mm != 0 ? p->crank_from : p->strap_right;
    const sw__point right = sw__on_strap(p, end, p->g.t);
    const sw__point high = heel ? left : right;
    const double rise = (heel ? 1 : -1) * p->tan_theta * (right.x - left.x);
    const double to = heel ? right.x : left.x;
    const sw__point c[3] = {sw__px(p, high.x, high.y), sw__px(p, to, high.y),
                            sw__px(p, to, high.y - rise)};
    sw__svg_group(p->svg, "class=\"tilt\" fill=\"#f3dc9a\"");
    sw__svg_polygon(p->svg, c, 3, "");
    sw__svg_line(p->svg, c[0], c[1],
                 "stroke=\"#5b5b5b\" stroke-dasharray=\"5 4\"");
    sw__svg_group_end(p->svg);
}

/* The stud's axis as it stands in the table: a bent stud leaves it. */
static void draw_axis(sw__picture *p)
{
    const sw__point foot = sw__px(p, p->g.b, p->table_y - p->table_deep);
    const sw__point top = sw__px(p, p->g.b, p->stud_top);
    sw__svg_group(p->svg, DIMENSION);
    sw__svg_line(p->svg, foot, top, "stroke-dasharray=\"12 3 2 3\"");
    sw__svg_group_end(p->svg);
}

/* A height as a dimension in the lane at one edge. */
static void draw_height(sw__picture *p, const char *name, double mm, double x,
                        double lane, double y_mm, double top, double bottom)
{
    char text[80];
    const int outward = lane < x ? -1 : 1;
    const double high = sw__px(p, 0, y_mm).y;
    const double low = sw__px(p, 0, p->table_y).y;
    double half = INFINITY;
    for (int show = p->how.show;; show = SW_SHOW_SI) {
        sw__line line = sw__line_start(text, sizeof text);
        sw__line_add(&line, name);
        sw__line_add(&line, " ");
        sw__add_said(&line, mm, SW_KIND_LENGTH, show);
        half = p->em * sw__letters_em(text, 0) / 2;
        if (2 * half <= bottom - top || show == SW_SHOW_SI)
            break;
    }
    if (2 * half > bottom - top)
        return;
    const double middle =
        fmax(top + half, fmin(bottom - half, (high + low) / 2));
    const double dim = lane - outward * 0.9 * p->em;
    sw__svg *s = p->svg;
    sw__svg_group(s, DIMENSION);
    sw__svg_line(s, (sw__point){x, high},
                 (sw__point){dim + outward * 0.3 * p->em, high}, "");
    sw__svg_line(s, (sw__point){x, low},
                 (sw__point){dim + outward * 0.3 * p->em, low}, "");
    sw__svg_line(s, (sw__point){dim, high}, (sw__point){dim, low}, "");
    const double tick = 0.3 * p->em;
    for (int i = 0; i < 2; i++) {
        const double y = i ? low : high;
        sw__svg_line(s, (sw__point){dim - tick, y + tick},
                     (sw__point){dim + tick, y - tick}, "");
    }
    sw__svg_group_end(s);
    sw__svg_group(s, "class=\"dimension\"");
    sw__svg_text_turned(
        s, (sw__point){lane + (outward < 0 ? 0.25 : -0.25) * p->em, middle},
        outward < 0 ? -90 : 90, "", text);
    sw__svg_group_end(s);
}

static void draw_heights(sw__picture *p, double top, double bottom)
{
    if (p->left < 2 * p->em) /* no lanes on a narrow sheet */
        return;
    const int assumed = (p->full.in.assumed &
                         sw__bit(SW_STRUCT_STRAP_IN, "part_height_mm")) != 0;
    draw_height(p, assumed ? "heel, assumed" : "heel",
                p->full.in.heel_height_mm, sw__px(p, p->block_left, 0).x,
                1.6 * p->em, 0, top, bottom);
    draw_height(p, assumed ? "part, assumed" : "part",
                p->full.in.part_height_mm, p->part_end,
                p->how.width_px - 1.6 * p->em, p->part_top, top, bottom);
}

/* Lying on the strap between heel and nut, where there is room. */
static void draw_level(sw__picture *p)
{
    const double wide = fmax(p->full.in.washer_diameter_mm,
                             1.2 * p->full.thread.across_flats_mm);
    const double from = 1.1 * p->em / p->scale;
    const double room = p->g.b - wide / 2 - 0.5 * p->em / p->scale - from;
    if (!sw__is_set(p->how.vial_mm_per_m))
        return;
    const double long_mm = fmin(room, 13 * p->em / p->scale);
    if (long_mm * p->scale < 4.5 * p->em)
        return;
    const double middle = from + room / 2;
    p->level_drawn = 1;
    const sw__point a = sw__on_strap(p, middle - long_mm / 2, p->g.t);
    const sw__point b = sw__on_strap(p, middle + long_mm / 2, p->g.t);
    /* the bubble goes to the high end, which is on the left of a high heel */
    const double off = -1000 * p->tan_theta / p->how.vial_mm_per_m;
    sw__vial(p->svg, sw__px(p, a.x, a.y), sw__px(p, b.x, b.y), 1.3 * p->em,
             off);
}

double sw__draw_side(sw__picture *p, double y)
{
    upright u[FORCES];
    list(p, u);
    const double ends = fmax(sw__on_strap(p, p->strap_left, p->g.t).y,
                             sw__on_strap(p, p->strap_right, p->g.t).y);
    double above = p->scale * fmax(ends, p->stud_top);
    int lines = 0;
    for (int i = 0; i < FORCES; i++) {
        above = fmax(above, u[i].length - u[i].head.y);
        lines = lines > u[i].lines ? lines : u[i].lines;
    }
    if (sw__is_set(p->how.vial_mm_per_m))
        above = fmax(above, p->scale * ends + 1.6 * p->em);
    const double band = y + 1.3 * p->em;
    const double band_end = band + lines * p->line + 0.2 * p->em;
    const double top = band_end + 0.5 * p->em;
    p->zero_y = top + above;
    const double bottom = sw__px(p, 0, p->table_y - p->table_deep).y;
    sw__draw_table(p);
    sw__draw_heel(p);
    sw__draw_part(p);
    draw_wedge(p);
    sw__draw_strap(p);
    sw__draw_stud(p);
    sw__draw_nut(p);
    draw_axis(p);
    draw_level(p);
    draw_heights(p, top, bottom);
    draw_on_strap(p);
    draw_side_pull(p);
    draw_forces(p, u, band, band_end);
    y = sw__draw_distances(p, bottom);
    return sw__draw_rule(p, y);
}
