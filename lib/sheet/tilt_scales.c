/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tilt scales: layout and graduated edges of a plot of tilt. The left edge is
 * in the unit that comes first, the right one in the other; under the degrees
 * stands the heel height that they mean, span times tan(tilt).
 */
#include "sheet/tilt_sheet.h"

#include <strapwise/say.h>

static double share_of_heel(double heel, const void *with)
{
    const sw__sheet *p = with;
    const double unit = p->heel.high / tan(SW__RAD(p->t->high_deg));
    return (SW__DEG(atan(heel / unit)) - p->t->low_deg) /
           (p->t->high_deg - p->t->low_deg);
}

/* Ends and step of a left edge that holds all of a graph and some words over
 * and under zero. */
static void set_values(sw__sheet *p, int graph, double height)
{
    const sw__tilts *t = p->t;
    sw__rule *r = &p->left[graph];
    const double none =
        graph == SW__PULL ? 1e-3 * t->out.preload_N / p->unit_N : 1;
    double low = 0, high = 0;
    for (int seat = 0; seat < SW__TILT_SEATS; seat++)
        for (int i = 0; i < t->points; i++)
            if (t->curve[seat][i].known) {
                const double v = sw__sheet_value(p, graph, &t->curve[seat][i]);
                low = fmin(low, v);
                high = fmax(high, v);
            }
    if (high - low < none) {
        low = fmin(low, -none);
        high = fmax(high, none);
    }
    const double side = 2.2 * p->T / height * (high - low) * 1.3;
    low = fmin(low - 0.1 * (high - low), -side);
    high = fmax(high + 0.1 * (high - low), side);
    r->edge = SW__EDGE_LEFT;
    r->text_px = p->T;
    r->step = sw__scale_step(high - low, (int)(height / (2.2 * p->T)));
    r->low = floor(2 * low / r->step) * r->step / 2;
    r->high = ceil(2 * high / r->step) * r->step / 2;
    r->divisions =
        sw__scale_divisions(height * r->step / (r->high - r->low), p->T);
}

/* Newtons and pounds-force, as asked for. */
static void set_units(sw__sheet *p, int show)
{
    double most = 0;
    for (int seat = 0; seat < SW__TILT_SEATS; seat++)
        for (int i = 0; i < p->t->points; i++)
            most = fmax(most, fabs(p->t->curve[seat][i].pull_N));
    const int us = show == SW_SHOW_US_FIRST || show == SW_SHOW_US;
    const int both = show == SW_SHOW_SI_FIRST || show == SW_SHOW_US_FIRST;
    const double newtons = most >= 10000 ? 1000 : 1;
    const char *name = most >= 10000 ? "kN" : "N";
    p->unit_N = us ? SW__LBF_N : newtons;
    p->left_unit = us ? "lbf" : name;
    p->right_unit = !both ? NULL : us ? name : "lbf";
    p->heel_unit = us ? "in" : "mm";
    p->right.high = us ? SW__LBF_N / newtons : newtons / SW__LBF_N;
}

static void set_right(sw__sheet *p, double height)
{
    const double factor = p->right.high; /* right unit in one left unit */
    p->right = p->left[SW__PULL];
    p->right.edge = SW__EDGE_RIGHT;
    p->right.low *= factor;
    p->right.high *= factor;
    p->right.step = sw__scale_step(p->right.high - p->right.low,
                                   (int)(height / (2.2 * p->T)));
    p->right.divisions = sw__scale_divisions(
        height * p->right.step / (p->right.high - p->right.low), p->T);
}

static void set_bottom(sw__sheet *p)
{
    const sw__tilts *t = p->t;
    const double width = p->frame[SW__PULL].right - p->frame[SW__PULL].left;
    const double unit = p->heel_unit[0] == 'i' ? 25.4 : 1;
    const double range = t->high_deg - t->low_deg;
    sw__rule *r = &p->tilt;
    *r = (sw__rule){
        SW__EDGE_BOTTOM, t->low_deg, t->high_deg, 0, 1, p->T, NULL, NULL, NULL};
    r->step = fmax(1, sw__scale_step(range, (int)(width / (2.4 * p->T))));
    r->divisions = sw__scale_divisions(width * r->step / range, p->T);
    r = &p->heel;
    *r = p->tilt;
    r->low = t->span_mm / unit * tan(SW__RAD(t->low_deg));
    r->high = t->span_mm / unit * tan(SW__RAD(t->high_deg));
    const double numeral = unit > 1 ? 3.6 : 2.9; /* -0.35 or -100 */
    r->step = sw__scale_step(r->high - r->low, (int)(width / (numeral * p->T)));
    while (r->step > fmax(r->high, -r->low)) /* zero alone says nothing */
        r->step /= 2;
    r->divisions =
        sw__scale_divisions(width * r->step / (r->high - r->low), p->T);
    r->share = share_of_heel;
    r->with = p;
}

/* Frames of both graphs; returns the height of the drawing. */
double sw__sheet_lay_out(sw__sheet *p, int show, double top)
{
    const double T = p->T, height = fmax(13 * T, 0.23 * p->W);
    set_units(p, show);
    for (int graph = 0; graph < SW__GRAPHS; graph++)
        set_values(p, graph, height);
    if (p->right_unit)
        set_right(p, height);
    const double left = fmax(sw__scale_room(&p->left[SW__PULL]),
                             sw__scale_room(&p->left[SW__ERROR]));
    const double right = p->right_unit ? sw__scale_room(&p->right) : T;
    double y = top;
    for (int graph = 0; graph < SW__GRAPHS; graph++) {
        y += 3.2 * T; /* its heading, and where level is */
        p->frame[graph] =
            (sw__box){0.4 * T + left, y, p->W - 0.4 * T - right, y + height};
        y += height + 0.9 * T;
    }
    set_bottom(p);
    return y + 8.2 * T;
}

void sw__sheet_scales(sw__sheet *p, int graph)
{
    sw__svg *s = &p->svg;
    const sw__box *f = &p->frame[graph];
    sw__svg_group(s, "class=\"grid\"");
    sw__scale_grid(s, f, &p->left[graph]);
    sw__scale_grid(s, f, &p->tilt);
    sw__svg_group_end(s);
    sw__svg_group(s, "class=\"axis\"");
    sw__svg_group(s, "stroke=\"#777\" stroke-width=\"1\"");
    sw__svg_line(s, (sw__point){f->left, sw__sheet_y(p, graph, 0)},
                 (sw__point){f->right, sw__sheet_y(p, graph, 0)}, "");
    sw__svg_line(s, (sw__point){sw__sheet_x(p, 0), f->top - 0.4 * p->T},
                 (sw__point){sw__sheet_x(p, 0), f->bottom}, "");
    sw__svg_group_end(s);
    sw__scale_rule(s, f, &p->left[graph]);
    if (graph == SW__PULL && p->right_unit)
        sw__scale_rule(s, f, &p->right);
    sw__svg_group_end(s);
}

void sw__sheet_headings(sw__sheet *p, int graph)
{
    sw__svg *s = &p->svg;
    const sw__box *f = &p->frame[graph];
    const double T = p->T, row = f->top - 0.75 * T;
    sw__sheet_group(p, "class=\"caption\" font-weight=\"bold\"", "font-size",
                    T);
    sw__svg_text(s, (sw__point){0.7 * T, f->top - 1.9 * T}, "start", "",
                 graph == SW__PULL ? "Side pull on the part"
                                   : "Toe force, against the level strap");
    sw__svg_group_end(s);
    sw__sheet_group(p, "class=\"caption\"", "font-size", T);
    sw__svg_text(s, (sw__point){f->left - 0.3 * T, row}, "end", "",
                 graph == SW__PULL ? p->left_unit : "%");
    if (graph == SW__PULL && p->right_unit)
        sw__svg_text(s, (sw__point){f->right + 0.3 * T, row}, "start", "",
                     p->right_unit);
    sw__svg_group_end(s);
}

/* Degrees, and under them the heel height that they mean. */
void sw__sheet_bottom(sw__sheet *p)
{
    sw__svg *s = &p->svg;
    const double T = p->T;
    sw__box f = p->frame[SW__ERROR];
    sw__svg_group(s, "class=\"axis\"");
    sw__scale_rule(s, &f, &p->tilt);
    sw__svg_group_end(s);
    const double middle = (f.left + f.right) / 2;
    double y = f.bottom + 3.5 * T;
    sw__sheet_group(p, "class=\"caption\"", "font-size", T);
    sw__svg_text(s, (sw__point){f.left, y}, "start", "", "heel low");
    sw__svg_text(s, (sw__point){middle, y}, "middle", "", "tilt, deg");
    sw__svg_text(s, (sw__point){f.right, y}, "end", "", "heel high");
    sw__svg_group_end(s);
    f.bottom = y + 0.7 * T;
    sw__svg_group(s, "class=\"axis\"");
    sw__scale_rule(s, &f, &p->heel);
    sw__svg_group_end(s);
    sw__sheet_group(p, "class=\"caption\"", "font-size", T);
    sw__svg_text(s, (sw__point){middle, f.bottom + 3.4 * T}, "middle", "",
                 p->heel_unit[0] == 'i' ? "heel above level, in"
                                        : "heel above level, mm");
    sw__svg_group_end(s);
}
