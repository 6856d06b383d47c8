/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Calibrate plot: force against torque, as it hangs beside the bench.
 *
 * Drawn: every pair; the line of the K to use; the band of K in which, with
 * the confidence asked for, the proportion asked for of all studs lies. A pair
 * that stands apart is a filled diamond with its number. Scales in both
 * systems. Colours are told apart in grey as well; no point is covered by
 * words but its own number.
 */
#include "fastener/calibrate.h"

#include "sheet/scale.h"

#include <strapwise/units.h>

#include <stdlib.h>
#include <string.h>

#define WIDTH 860
#define HEIGHT 640
#define BAND "fill=\"#e6e3d8\""
#define BAND_EDGE                                                              \
    "stroke=\"#6d6a5f\" stroke-width=\"1\" stroke-dasharray=\"5 3\""
#define LINE "stroke=\"#14406b\" stroke-width=\"2\""
#define POINT                                                                  \
    "fill=\"#fff\" fill-opacity=\"0.7\" stroke=\"#1a1a1a\" "                   \
    "stroke-width=\"1.3\""
#define APART "fill=\"#a3201c\" stroke=\"#1a1a1a\" stroke-width=\"1\""

typedef struct {
    sw__svg svg;
    sw__box frame;
    double torque_most, force_most; /* N.m, N: the far ends of the scales */
    double prevailing, d_mm;
    const sw_calibrate_out *out;
} plot;

static sw__point place(const plot *p, double torque, double force)
{
    const sw__box *f = &p->frame;
    return (sw__point){f->left + torque / p->torque_most * (f->right - f->left),
                       f->bottom -
                           force / p->force_most * (f->bottom - f->top)};
}

/* Where the line of a K leaves the plot, by its right side or its top. */
static sw__point line_end(const plot *p, double K, int *by_top)
{
    const double per_Nm = 1000 / (K * p->d_mm);
    const double force = (p->torque_most - p->prevailing) * per_Nm;
    *by_top = force > p->force_most;
    return *by_top
               ? place(p, p->prevailing + p->force_most / per_Nm, p->force_most)
               : place(p, p->torque_most, force);
}

static void band(plot *p)
{
    const sw_calibrate_out *o = p->out;
    const sw__point start = place(p, p->prevailing, 0);
    int low_by_top, high_by_top;
    if (sw__is_set(o->tolerance_low) && o->tolerance_low > 0) {
        sw__point corner[4] = {start};
        int n = 1;
        corner[n++] = line_end(p, o->tolerance_low, &low_by_top);
        const sw__point high = line_end(p, o->tolerance_high, &high_by_top);
        if (low_by_top && !high_by_top)
            corner[n++] = place(p, p->torque_most, p->force_most);
        corner[n++] = high;
        sw__svg_polygon(&p->svg, corner, n, BAND);
        sw__svg_line(&p->svg, start, corner[1], BAND_EDGE);
        sw__svg_line(&p->svg, start, high, BAND_EDGE);
    }
}

static void line_of_factor(plot *p)
{
    int by_top;
    sw__svg_line(&p->svg, place(p, p->prevailing, 0),
                 line_end(p, p->out->nut_factor, &by_top), LINE);
}

static void diamond(sw__svg *s, sw__point c)
{
    const sw__point corner[4] = {
        {c.x, c.y - 7}, {c.x + 7, c.y}, {c.x, c.y + 7}, {c.x - 7, c.y}};
    sw__svg_polygon(s, corner, 4, APART);
}

/* A diamond and its number, which turns away from the right edge. */
static void apart_at(sw__svg *s, const sw__box *f, sw__point c, double number)
{
    char text[40];
    const int left = c.x > f->right - 60;
    sw_format(number, 6, text, sizeof text);
    diamond(s, c);
    sw__svg_text(s, (sw__point){c.x + (left ? -12 : 12), c.y + 5},
                 left ? "end" : "start",
                 "font-size=\"14\" font-weight=\"bold\" stroke=\"#fff\" "
                 "stroke-width=\"3\" paint-order=\"stroke\"",
                 text);
}

static void points(plot *p, const sw__sample *sample)
{
    const int judged = (p->out->warnings & SW_WARN_OUTLIER) != 0;
    sw__svg_group(&p->svg, POINT);
    for (int pass = 0; pass < 2; pass++) { /* those apart lie on top */
        for (size_t i = 0; i < sample->n; i++) {
            const double off =
                (sample->ln_factor[i] - sample->mean) / sample->sigma;
            const int apart =
                judged && fabs(off) >= fabs(p->out->outlier_deviation);
            const sw__point c =
                place(p, sample->torque[i] + p->prevailing, sample->force[i]);
            if (apart && pass) {
                apart_at(&p->svg, &p->frame, c, (double)i + 1);
            } else if (!apart && !pass) {
                sw__svg_circle(&p->svg, c, 5, "");
            }
        }
        if (!pass)
            sw__svg_group_end(&p->svg);
    }
}

static void scales(plot *p, double torque_step, double force_step)
{
    const double ftlbf = p->torque_most / SW__FTLBF_NM;
    const int inches = ftlbf < 20; /* below, a wrench is read in inches */
    const double torque_us = inches ? 12 * ftlbf : ftlbf;
    const double lbf = p->force_most / SW__LBF_N;
    const int kilo = p->force_most >= 5000;
    const double unit = kilo ? 1000 : 1;
    sw__svg *s = &p->svg;
    sw__scale_draw(s, &p->frame, SW__EDGE_BOTTOM, p->torque_most, torque_step,
                   "torque on the nut, N\xc2\xb7m", 1);
    sw__scale_draw(s, &p->frame, SW__EDGE_LEFT, p->force_most / unit,
                   force_step / unit,
                   kilo ? "force in the stud, kN" : "force in the stud, N", 1);
    sw__scale_draw(s, &p->frame, SW__EDGE_TOP, torque_us,
                   sw__scale_step(torque_us, 9),
                   inches ? "torque, in-lbf" : "torque, ft-lbf", 0);
    sw__scale_draw(s, &p->frame, SW__EDGE_RIGHT, lbf, sw__scale_step(lbf, 9),
                   "force, lbf", 0);
}

/* "0.190": three decimals, so that ends compare by eye */
static void add_factor(sw__line *line, double K)
{
    char text[40];
    if (K < 0.01 || K >= 10) {
        sw_format(K, 3, text, sizeof text);
    } else {
        const int thousandths = (int)round(1000 * K), rest = thousandths % 1000;
        const size_t n = sw_format(thousandths / 1000, 3, text, sizeof text);
        text[n] = '.';
        text[n + 1] = (char)('0' + rest / 100);
        text[n + 2] = (char)('0' + rest / 10 % 10);
        text[n + 3] = (char)('0' + rest % 10);
        text[n + 4] = '\0';
    }
    sw__line_add(line, text);
}

static void add_range(sw__line *line, double low, double high)
{
    add_factor(line, low);
    sw__line_add(line, " to ");
    add_factor(line, high);
}

static void legend(plot *p, const sw_calibrate_in *full)
{
    enum { LEFT = 84, SECOND = 448, ROW = 82 };
    const sw_calibrate_out *o = p->out;
    char text[160];
    sw__svg *s = &p->svg;
    sw__svg_group(s, "font-size=\"13\"");
    sw__svg_line(s, (sw__point){LEFT, ROW - 4}, (sw__point){LEFT + 26, ROW - 4},
                 LINE);
    sw__line line = sw__line_start(text, sizeof text);
    sw__line_add(&line, "the K to use");
    if (sw__is_set(o->nut_factor_low)) {
        sw__line_add(&line, "; ");
        sw__line_add_number(&line, 100 * full->confidence);
        sw__line_add(&line, " % sure within ");
        add_range(&line, o->nut_factor_low, o->nut_factor_high);
    }
    sw__svg_text(s, (sw__point){LEFT + 34, ROW}, "start", "", text);
    if (sw__is_set(o->tolerance_low)) {
        const sw__point box[4] = {{SECOND, ROW - 10},
                                  {SECOND + 26, ROW - 10},
                                  {SECOND + 26, ROW + 2},
                                  {SECOND, ROW + 2}};
        sw__svg_polygon(s, box, 4, BAND " " BAND_EDGE);
        line = sw__line_start(text, sizeof text);
        sw__line_add_number(&line, 100 * full->proportion);
        sw__line_add(&line, " % of such studs: K ");
        add_range(&line, o->tolerance_low, o->tolerance_high);
        sw__line_add(&line, " (");
        sw__line_add_number(&line, 100 * full->confidence);
        sw__line_add(&line, " % sure)");
        sw__svg_text(s, (sw__point){SECOND + 34, ROW}, "start", "", text);
    }
    sw__svg_circle(s, (sw__point){LEFT + 13, ROW + 17}, 5, POINT);
    line = sw__line_start(text, sizeof text);
    sw__line_add_number(&line, o->n);
    sw__line_add(&line, " pairs measured");
    sw__svg_text(s, (sw__point){LEFT + 34, ROW + 22}, "start", "", text);
    if (o->warnings & SW_WARN_OUTLIER) {
        diamond(s, (sw__point){SECOND + 13, ROW + 17});
        sw__svg_text(s, (sw__point){SECOND + 34, ROW + 22}, "start", "",
                     "stands apart: look at this stud and reading");
    }
    sw__svg_group_end(s);
}

static void heading(plot *p, const sw_pairs *pairs, const char *title)
{
    sw__svg *s = &p->svg;
    sw__svg_text(s, (sw__point){84, 36}, "start",
                 "font-size=\"22\" font-weight=\"bold\"", title);
    char text[160];
    sw__line line = sw__line_start(text, sizeof text);
    sw__line_add(&line, pairs->name);
    if (pairs->name[0] && pairs->lubrication[0])
        sw__line_add(&line, "; ");
    sw__line_add(&line, pairs->lubrication);
    if (text[0])
        sw__svg_text(s, (sw__point){84, 58}, "start", "font-size=\"14\"", text);
}

static sw_drawing *draw(const sw_calibrate_in *full, const sw_pairs *pairs,
                        const sw_thread_out *t, const sw_calibrate_out *out,
                        const sw__sample *sample, sw_error *err)
{
    plot p = {.frame = {92, 164, WIDTH - 92, HEIGHT - 66},
              .prevailing = full->prevailing_torque_Nm,
              .d_mm = t->nominal_mm,
              .out = out};
    for (size_t i = 0; i < sample->n; i++) {
        p.torque_most = fmax(p.torque_most, sample->torque[i] + p.prevailing);
        p.force_most = fmax(p.force_most, sample->force[i]);
    }
    const double torque_step = sw__scale_step(1.04 * p.torque_most, 9);
    const double force_step = sw__scale_step(1.04 * p.force_most, 9);
    p.torque_most = ceil(1.04 * p.torque_most / torque_step) * torque_step;
    p.force_most = ceil(1.04 * p.force_most / force_step) * force_step;
    char title[80];
    sw__line line = sw__line_start(title, sizeof title);
    sw__line_add(&line, t->designation);
    sw__line_add(&line, ": nut factor K ");
    add_factor(&line, out->nut_factor);
    sw__svg_start(&p.svg, WIDTH, HEIGHT, title,
                  "Force in the stud against torque on the nut, as measured, "
                  "with the line of K and the band that most studs lie in.");
    heading(&p, pairs, title);
    legend(&p, full);
    band(&p);
    scales(&p, torque_step, force_step);
    line_of_factor(&p);
    points(&p, sample);
    return sw__svg_finish(&p.svg, err);
}

sw_drawing *sw_calibrate_plot(const sw_calibrate_in *in, const sw_pairs *pairs,
                              sw_error *err)
{
    sw_thread_out t;
    sw__sample sample;
    const sw_calibrate_out out = sw_calibrate(in, pairs, err);
    if (out.status)
        return NULL;
    sw_calibrate_in full = *in;
    if (sw__calibrate_open(&full, pairs, &t, err) ||
        sw__sample_make(&sample, &full, pairs, &t, err))
        return NULL;
    sw_drawing *made = draw(&full, pairs, &t, &out, &sample, err);
    sw__sample_free(&sample);
    return made;
}
