/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tilt plot: the curves are read back by the numbers on the scales and
 * compared with the strap's own answer; slope and gap by hand.
 */
#include "../random.h"

#include "../clamp/strap_question.h"
#include "read_svg.h"

enum { PULL, ERROR };

static sw_drawing *good_plot(const sw_strap_in *in, double width, double text,
                             int show)
{
    sw_error err;
    sw_drawing *d = sw_tilt_plot(in, width, text, show, &err);
    must(d != NULL, "%s", err.message);
    check_no_error("plot", SW_OK, &err);
    return d;
}

/* What a place in the drawing means, from two numbers of each scale. */
typedef struct {
    double value[2], at[2];
    int count;
} scale;

typedef struct {
    sw_drawing *made;
    drawing d;
    scale y[2], tilt, heel;
    double parting;  /* between the graphs */
    double heel_row; /* its numbers */
} plot;

static void note(scale *s, double value, double at)
{
    s->value[s->count > 0] = value;
    s->at[s->count > 0] = at;
    s->count++;
}

static double read_at(const scale *s, double at)
{
    return s->value[0] + (at - s->at[0]) / (s->at[1] - s->at[0]) *
                             (s->value[1] - s->value[0]);
}

static double read_back(const scale *s, double value)
{
    return s->at[0] + (value - s->value[0]) / (s->value[1] - s->value[0]) *
                          (s->at[1] - s->at[0]);
}

/* The numbers come scale by scale, each upward. */
static plot read_plot(sw_drawing *made)
{
    plot p;
    memset(&p, 0, sizeof p);
    p.made = made;
    p.d = read_drawing(sw_drawing_svg(made));
    int graph = 0, row = 0;
    double before_left = -INFINITY, before = -INFINITY;
    for (int i = 0; i < p.d.count; i++) {
        const element *e = &p.d.e[i];
        if (!is_a(e, "text") || strcmp(e->class_of, "axis") != 0)
            continue;
        const double v = sw_number(e->text, "number", NULL).value;
        must(isfinite(v), "%s on a scale", e->text);
        if (strcmp(e->anchor, "end") == 0) {
            graph += v < before_left;
            must(graph < 2, "three left edges");
            before_left = v;
            note(&p.y[graph], v, e->at.y - 4.5 * e->size / 13);
        } else if (strcmp(e->anchor, "middle") == 0) {
            row += v < before;
            before = v;
            note(row ? &p.heel : &p.tilt, v, e->at.x);
            p.heel_row = e->at.y;
        }
    }
    ck_assert_int_ge(p.y[PULL].count, 2);
    ck_assert_int_ge(p.y[ERROR].count, 2);
    ck_assert_int_ge(p.tilt.count, 3);
    ck_assert_int_ge(p.heel.count, 2);
    const element *heading = find_text(&p.d, "Toe force, against the level "
                                             "strap");
    must(heading != NULL, "no heading");
    p.parting = heading->at.y;
    return p;
}

static void drop(plot *p)
{
    free(p->d.e);
    sw_drawing_free(p->made);
}

/* Value of a curve at a tilt that is one of its points; NaN in a gap. */
static double curve_at(const plot *p, int graph, const char *class_of,
                       double tilt)
{
    const double x = read_back(&p->tilt, tilt);
    for (int i = 0; i < p->d.count; i++) {
        const element *e = &p->d.e[i];
        if (!is_a(e, "polyline") || strcmp(e->class_of, class_of) != 0 ||
            (e->p[0].y > p->parting) != (graph == ERROR))
            continue;
        for (int k = 0; k < e->points; k++)
            if (fabs(e->p[k].x - x) < 0.05)
                return read_at(&p->y[graph], e->p[k].y);
    }
    return NAN;
}

/* One hundredth of a pixel and the rounding of the numbers' own places. */
static double resolution(const plot *p, int graph)
{
    const scale *s = &p->y[graph];
    return 0.03 * fabs((s->value[1] - s->value[0]) / (s->at[1] - s->at[0]));
}

/* The strap that the curves are about, asked by public calls alone. */
static sw_strap_in tilted(const sw_strap_in *in, int seat, double tilt)
{
    sw_strap_in full = *in, q = *in;
    ck_assert_int_eq(sw_strap_resolve(&full, NULL), 0);
    q.part_height_mm = full.part_height_mm;
    q.stud_length_mm = full.stud_length_mm;
    q.heel_height_mm = SW_UNSET;
    q.tilt_deg = tilt;
    q.seat = seat;
    return q;
}

static void check_curves(const char *what, const sw_strap_in *in, double width,
                         double text)
{
    plot p = read_plot(good_plot(in, width, text, SW_SHOW_SI));
    const int kilo = find_text(&p.d, "kN") != NULL;
    for (int k = 0; k < 20; k++) {
        const double tilt = -5.7 + 0.6 * k;
        for (int seat = SW_SEAT_FLAT; seat <= SW_SEAT_SPHERICAL; seat++) {
            const sw_strap_in q = tilted(in, seat, tilt);
            const sw_strap_out s = sw_strap(&q, NULL);
            const char *name = seat == SW_SEAT_FLAT ? "flat" : "dished";
            const double pull = curve_at(&p, PULL, name, tilt);
            near_in(what, pull, s.side_pull_N / (kilo ? 1000 : 1),
                    resolution(&p, PULL), 0);
            near_in(what, curve_at(&p, ERROR, name, tilt),
                    s.toe_force_error_pct, resolution(&p, ERROR), 0);
        }
    }
    drop(&p);
}

static sw_strap_in shop_strap(void)
{
    sw_strap_in in;
    sw_strap_defaults(&in);
    SET(in.thread, "M12");
    in.torque_Nm = 30;
    in.stud_to_toe_mm = 30;
    in.stud_to_heel_mm = 60;
    in.part_height_mm = 40;
    in.heel_height_mm = 42.36;
    return in;
}

START_TEST(curves)
{
    sw_strap_in in = shop_strap();
    check_curves("shop", &in, 0, 0);
    check_curves("narrow", &in, 330, 13);
    in.seat = SW_SEAT_SPHERICAL;
    in.part_height_mm = SW_UNSET;
    in.heel_height_mm = SW_UNSET;
    in.tilt_deg = -2.2;
    check_curves("dished", &in, 860, 13);
    in.heel = SW_HEEL_SCREW;
    in.nose = SW_NOSE_ROUND;
    in.strap = SW_STRAP_FULL;
    in.torque_Nm = 200;
    check_curves("screw", &in, 1600, 24);
}
END_TEST

/* Theory (2): F pi/180 per degree between the caps, where the heel's friction
 * does not change with its share of the force; a pair within its 3 degrees
 * leaves the pull alone but for that share. */
START_TEST(slopes)
{
    sw_strap_in in = base_strap(10000, 1);
    in.mu_heel = 0;
    plot p = read_plot(good_plot(&in, 0, 0, 0));
    for (int k = -30; k < 30; k += 10)
        near(curve_at(&p, PULL, "flat", (k + 10) / 10.0) -
                 curve_at(&p, PULL, "flat", k / 10.0),
             10000 * TO_RAD, 0, 0.02);
    drop(&p);
    in = base_strap(10000, 1);
    p = read_plot(good_plot(&in, 0, 0, 0));
    near(curve_at(&p, PULL, "dished", 2.9), curve_at(&p, PULL, "dished", -2.9),
         0.01 * 10000, 0);
    /* level: both are the level strap, 0.15 of the heel's third */
    near(curve_at(&p, PULL, "flat", 0), -500, resolution(&p, PULL), 0);
    near(curve_at(&p, PULL, "dished", 0), -500, resolution(&p, PULL), 0);
    near(curve_at(&p, ERROR, "flat", 0), 0, resolution(&p, ERROR), 0);
    near(curve_at(&p, ERROR, "dished", 0), 0, resolution(&p, ERROR), 0);
    /* span 90 mm */
    near(read_at(&p.heel, read_back(&p.tilt, 2)), 90 * tan(2 * TO_RAD), 0.02,
         0);
    drop(&p);
}
END_TEST

/* A part of 5 mm, span 90: the heel meets the table at atan(5/90) = 3.18
 * degrees. */
START_TEST(gap)
{
    sw_strap_in in = shop_strap();
    in.part_height_mm = in.heel_height_mm = 5;
    plot p = read_plot(good_plot(&in, 0, 0, 0));
    for (int seat = 0; seat < 2; seat++) {
        const char *name = seat ? "dished" : "flat";
        ck_assert(isfinite(curve_at(&p, PULL, name, -3.1)));
        ck_assert(isnan(curve_at(&p, PULL, name, -3.2)));
        ck_assert(isnan(curve_at(&p, ERROR, name, -6)));
    }
    drop(&p);
}
END_TEST

/* Both ends of every thick stretch, and what is dotted, against the warnings
 * at those tilts. */
static void check_marks(const sw_strap_in *in)
{
    plot p = read_plot(good_plot(in, 0, 0, 0));
    int thick = 0, dots = 0, slides = 0, past = 0;
    for (int i = 0; i < p.d.count; i++) {
        const element *e = &p.d.e[i];
        if (is_a(e, "polyline")) {
            thick += strcmp(e->class_of, "slides") == 0;
            dots += e->dashes[0] == '1'; /* 1.82 of 13 px */
        }
    }
    for (int k = -60; k <= 60; k++)
        for (int seat = SW_SEAT_FLAT; seat <= SW_SEAT_SPHERICAL; seat++) {
            const sw_strap_in q = tilted(in, seat, k / 10.0);
            const sw_strap_out s = sw_strap(&q, NULL);
            const int slips = (s.warnings & SW_WARN_TOE_SLIDES) != 0;
            slides += slips;
            past += (s.warnings & SW_WARN_SEAT_ANGLE) != 0;
            if (slips && k > -60 && k < 60) {
                const double y = curve_at(&p, PULL, "slides", k / 10.0);
                must(isfinite(y), "%g deg slides and is not thick", k / 10.0);
            }
        }
    if (!slides)
        ck_assert_int_eq(thick, 0);
    ck_assert_int_eq(find_text(&p.d, "toe slides") != NULL, slides > 2);
    ck_assert_int_eq(dots > 0, past > 1);
    ck_assert_int_eq(find_text(&p.d, "past what the pair takes up") != NULL,
                     past > 1);
    drop(&p);
}

START_TEST(marks)
{
    sw_strap_in in = shop_strap();
    check_marks(&in); /* slides when the heel is low */
    in.mu_toe = 0.5;
    in.permitted_tilt_deg = 20;
    in.seat = SW_SEAT_SPHERICAL;
    check_marks(&in); /* neither */
    in.mu_toe = 0.02;
    in.permitted_tilt_deg = 1;
    check_marks(&in); /* all over */
}
END_TEST

static void check_value(const char *text, double value, int kind, int show)
{
    char said[100];
    sw_say(value, kind, show, said, sizeof said);
    must(strstr(text, said) != NULL, "%s is not in %s", said, text);
}

/* Four values in words, and the discs where they belong. */
START_TEST(here)
{
    for (int own = SW_SEAT_FLAT; own <= SW_SEAT_SPHERICAL; own++)
        for (int show = SW_SHOW_SI_FIRST; show <= SW_SHOW_US; show++) {
            sw_strap_in in = shop_strap();
            in.seat = own;
            plot p = read_plot(good_plot(&in, 0, 0, show));
            const char *svg = sw_drawing_svg(p.made);
            const char *desc = strstr(svg, "<desc>");
            const double tilt = atan(2.36 / 90) / TO_RAD;
            int found = 0;
            for (int seat = SW_SEAT_FLAT; seat <= SW_SEAT_SPHERICAL; seat++) {
                const sw_strap_in q = tilted(&in, seat, tilt);
                const sw_strap_out s = sw_strap(&q, NULL);
                check_value(desc, s.side_pull_N, SW_KIND_FORCE, show);
                check_value(desc, s.toe_force_error_pct / 100, SW_KIND_RATIO,
                            show);
                const double unit =
                    show == SW_SHOW_SI_FIRST || show == SW_SHOW_SI
                        ? 1
                        : 4.4482216152605;
                const double x = read_back(&p.tilt, tilt);
                const double y = read_back(&p.y[PULL], s.side_pull_N / unit);
                for (int i = 0; i < p.d.count; i++) {
                    const element *e = &p.d.e[i];
                    if (is_a(e, "circle") && fabs(e->at.x - x) < 0.1 &&
                        fabs(e->at.y - y) < 0.1) {
                        found++;
                        ck_assert_int_eq(strcmp(e->fill, "#fff") != 0,
                                         seat == own);
                    }
                }
            }
            ck_assert_int_eq(found, 2);
            check_value(desc, 2.36, SW_KIND_LENGTH, show);
            /* the other system is not there unless asked for */
            ck_assert_int_eq(find_text(&p.d, "N") == NULL, show == SW_SHOW_US);
            ck_assert_int_eq(find_text(&p.d, "lbf") == NULL,
                             show == SW_SHOW_SI);
            drop(&p);
        }
}
END_TEST

/* The axis holds this strap, to whole degrees. */
START_TEST(range)
{
    static const double row[][3] = {
        {0, -6, 6},      {6, -6, 6},   {6.01, -6, 7}, {8.4, -6, 9},
        {-15.2, -16, 6}, {20, -6, 20}, {-20, -20, 6}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_strap_in in = base_strap(5000, row[i][0]);
        plot p = read_plot(good_plot(&in, 0, 0, 0));
        double low = INFINITY, high = -INFINITY;
        for (int k = 0; k < p.d.count; k++) /* the edge itself */
            if (strcmp(p.d.e[k].name, "line") == 0 &&
                strcmp(p.d.e[k].class_of, "axis") == 0 &&
                p.d.e[k].at.y > p.parting &&
                fabs(p.d.e[k].at.y - p.d.e[k].to.y) < 1e-9) {
                low = fmin(low, read_at(&p.tilt, p.d.e[k].at.x));
                high = fmax(high, read_at(&p.tilt, p.d.e[k].to.x));
            }
        for (int k = 0; k < p.d.count; k++) { /* span 90 mm */
            const element *e = &p.d.e[k];
            if (is_a(e, "text") && e->at.y == p.heel_row &&
                strcmp(e->class_of, "axis") == 0) {
                const double heel = sw_number(e->text, "heel", NULL).value;
                near(read_at(&p.tilt, e->at.x), atan(heel / 90) / TO_RAD, 2e-3,
                     0);
            }
        }
        /* left and right edges have marks outside: a degree at most */
        ck_assert(low <= row[i][1] + 1e-3 && low > row[i][1] - 1);
        ck_assert(high >= row[i][2] - 1e-3 && high < row[i][2] + 1);
        drop(&p);
    }
}
END_TEST

/* Numbers on a scale keep apart, whatever the width. */
START_TEST(sizes)
{
    static const double row[][2] = {{330, 13},  {300, 9},  {300, 60},
                                    {1600, 24}, {4000, 9}, {4000, 60}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_strap_in in = shop_strap();
        plot p = read_plot(good_plot(&in, row[i][0], row[i][1], 0));
        check_inside("size", &p.d);
        check_texts("size", &p.d);
        ck_assert(p.d.width == row[i][0]);
        const element *before = NULL;
        for (int k = 0; k < p.d.count; k++) {
            const element *e = &p.d.e[k];
            if (!is_a(e, "text") || strcmp(e->class_of, "axis") != 0)
                continue;
            if (before && before->at.y == e->at.y)
                must(e->at.x - before->at.x >
                         0.3 * e->size *
                             (double)(strlen(e->text) + strlen(before->text)),
                     "%s touches %s", e->text, before->text);
            if (before && before->at.x == e->at.x && before->at.y > e->at.y)
                must(before->at.y - e->at.y > e->size, "%s on %s", e->text,
                     before->text);
            before = e;
        }
        drop(&p);
    }
}
END_TEST

/* ---- edges in other units ---- */

#define LBF_N 4.4482216152605 /* exact */

/* The unit over an edge: words at the left one end there, at the right one start,
 * which goes without saying. */
static double unit_of(const drawing *d, const char *anchor, const char **name)
{
    static const char *const unit[] = {"N", "kN", "lbf"};
    static const double N[] = {1, 1000, LBF_N};
    double found = NAN;
    for (const element *e = d->e; e->name[0]; e++)
        for (int k = 0; k < 3; k++)
            if (is_a(e, "text") && strcmp(e->text, unit[k]) == 0 &&
                strcmp(e->anchor, anchor) == 0) {
                must(isnan(found), "two units at the %s", anchor);
                found = N[k];
                *name = unit[k];
            }
    return found;
}

/* What stands at the right edge is the same force as at the left. */
START_TEST(right_edge)
{
    static const double torque[] = {5, 30, 200};
    for (int i = 0; i < 3; i++)
        for (int show = SW_SHOW_SI_FIRST; show <= SW_SHOW_US; show++) {
            sw_strap_in in = shop_strap();
            in.torque_Nm = torque[i];
            in.mu_toe = 0.4;
            plot p = read_plot(good_plot(&in, 1600, 13, show));
            const char *left = "", *right = "";
            const double left_N = unit_of(&p.d, "end", &left);
            const double right_N = unit_of(&p.d, "", &right);
            const int us = show == SW_SHOW_US_FIRST || show == SW_SHOW_US;
            ck_assert_int_eq(strcmp(left, "lbf") == 0, us);
            if (show == SW_SHOW_SI || show == SW_SHOW_US)
                ck_assert(isnan(right_N));
            else
                ck_assert_int_eq(strcmp(right, "lbf") == 0, !us);
            int count = 0, under = 0;
            for (const element *e = p.d.e; e->name[0]; e++) {
                if (!is_a(e, "text") || strcmp(e->class_of, "axis") != 0 ||
                    e->anchor[0] != '\0')
                    continue;
                const double v = sw_number(e->text, "number", NULL).value;
                const double at = e->at.y - 4.5 * e->size / 13;
                ck_assert(at < p.parting);
                near(v * right_N, left_N * read_at(&p.y[PULL], at),
                     left_N * resolution(&p, PULL), 0);
                count++;
                under += v < 0;
            }
            must(isnan(right_N) ? count == 0 : count >= 3 && under > 0,
                 "%d numbers at the right, %d under zero", count, under);
            drop(&p);
        }
}
END_TEST

/* Span 90 mm: under a tilt stands 90 mm tan(tilt), in the unit beside it. */
START_TEST(heel_scale)
{
    static const double width[] = {330, 860, 1600};
    for (int i = 0; i < 3; i++)
        for (int show = SW_SHOW_SI_FIRST; show <= SW_SHOW_US; show++) {
            const sw_strap_in in = shop_strap();
            plot p = read_plot(good_plot(&in, width[i], 13, show));
            const int us = show == SW_SHOW_US_FIRST || show == SW_SHOW_US;
            ck_assert_int_eq(find_text(&p.d, "heel above level, in") != NULL,
                             us);
            ck_assert_int_eq(find_text(&p.d, "heel above level, mm") != NULL,
                             !us);
            int numbers = 0;
            for (const element *e = p.d.e; e->name[0]; e++) {
                if (!is_a(e, "text") || strcmp(e->class_of, "axis") != 0 ||
                    e->at.y != p.heel_row)
                    continue;
                const double heel = sw_number(e->text, "heel", NULL).value;
                near(read_at(&p.tilt, e->at.x),
                     atan(heel * (us ? 25.4 : 1) / 90) / TO_RAD, 2e-3, 0);
                numbers++;
            }
            ck_assert_int_ge(numbers, 3);
            drop(&p);
        }
}
END_TEST

/* Above level is where the heel is high. */
START_TEST(above)
{
    static const double heel[] = {38.5, 40, 42.36};
    for (int i = 0; i < 3; i++)
        for (int show = SW_SHOW_SI_FIRST; show <= SW_SHOW_US; show++) {
            sw_strap_in in = shop_strap();
            in.heel_height_mm = heel[i];
            sw_drawing *made = good_plot(&in, 1600, 13, show);
            const char *svg = sw_drawing_svg(made);
            const double rise = heel[i] - 40;
            char said[60], text[100];
            sw_say(fabs(rise), SW_KIND_LENGTH, show, said, sizeof said);
            snprintf(text, sizeof text, "heel %s %s level", said,
                     rise > 0 ? "above" : "below");
            ck_assert_int_eq(strstr(svg, text) != NULL, rise != 0);
            ck_assert_int_eq(strstr(svg, "this strap: level") != NULL,
                             rise == 0);
            /* the captions of scale and line apart */
            ck_assert(
                !strstr(svg, rise > 0 ? " below level" : " above level<"));
            sw_drawing_free(made);
        }
}
END_TEST

/* A part of 5 mm with the heel of this strap at 9: the part stays as it is
 * while the heel goes down to the table, at atan(5/90) and not at atan(9/90).
 */
START_TEST(part_stays)
{
    sw_strap_in in = shop_strap();
    in.part_height_mm = 5;
    in.heel_height_mm = 9;
    plot p = read_plot(good_plot(&in, 0, 0, 0));
    for (int seat = 0; seat < 2; seat++) {
        const char *name = seat ? "dished" : "flat";
        ck_assert(isfinite(curve_at(&p, PULL, name, -3.1)));
        ck_assert(isnan(curve_at(&p, PULL, name, -3.2)));
    }
    drop(&p);
    /* a jack screw's give goes with the heel's height over the table */
    in = shop_strap();
    in.heel = SW_HEEL_SCREW;
    in.part_height_mm = 60;
    in.heel_height_mm = 68;
    check_curves("screw", &in, 860, 13);
}
END_TEST

/* ---- past the yield ---- */

/* Of the tilts of one seat: whether the stud yields there, and its value. */
typedef struct {
    double value;
    int yields;
} yielding;

static yielding ask_yield(const sw_strap_in *in, int seat, int tenths,
                          int graph, double unit)
{
    const sw_strap_in q = tilted(in, seat, tenths / 10.0);
    const sw_strap_out s = sw_strap(&q, NULL);
    if (s.status || tenths < -60 || tenths > 60)
        return (yielding){NAN, 0};
    return (yielding){graph == PULL ? s.side_pull_N / unit
                                    : s.toe_force_error_pct,
                      (s.warnings & SW_WARN_STUD_YIELDS) != 0};
}

/* Whether a point of a barred stretch is at this tilt and value. */
static int is_barred(const plot *p, int graph, int tenths, double value)
{
    const double x = read_back(&p->tilt, tenths / 10.0);
    for (const element *e = p->d.e; e->name[0]; e++) {
        if (!is_a(e, "polyline") || strcmp(e->class_of, "yields") != 0 ||
            (e->p[0].y > p->parting) != (graph == ERROR))
            continue;
        for (int k = 0; k < e->points; k++)
            if (fabs(e->p[k].x - x) < 0.05 &&
                fabs(read_at(&p->y[graph], e->p[k].y) - value) <=
                    resolution(p, graph))
                return 1;
    }
    return 0;
}

/* Barred is every tilt at which the strap says that its stud yields, and no
 * other; a single one makes no line. Returns how many points are barred. */
static int check_yields(const char *what, const sw_strap_in *in)
{
    plot p = read_plot(good_plot(in, 860, 13, SW_SHOW_SI));
    const double unit = find_text(&p.d, "kN") ? 1000 : 1;
    int points = 0, wanted = 0, longest = 0;
    for (const element *e = p.d.e; e->name[0]; e++)
        if (is_a(e, "polyline") && strcmp(e->class_of, "yields") == 0) {
            points += e->points;
            ck_assert(e->dashes[0] != '\0');
        }
    for (int graph = PULL; graph <= ERROR; graph++)
        for (int seat = SW_SEAT_FLAT; seat <= SW_SEAT_SPHERICAL; seat++)
            for (int k = -60, run = 0; k <= 60; k++) {
                const yielding y = ask_yield(in, seat, k, graph, unit);
                const int beside =
                    ask_yield(in, seat, k - 1, graph, unit).yields ||
                    ask_yield(in, seat, k + 1, graph, unit).yields;
                run = y.yields ? run + 1 : 0;
                longest = run > longest ? run : longest;
                if (!y.yields || !beside)
                    continue;
                wanted++;
                must(is_barred(&p, graph, k, y.value),
                     "%s, seat %d, graph %d: yields at %g deg, not barred",
                     what, seat, graph, k / 10.0);
            }
    must(points == wanted, "%s: %d points are barred, want %d", what, points,
         wanted);
    const int named = find_text(&p.d, "stud past its yield") != NULL;
    must(named == (longest > 1), "%s: longest %d, named: %d", what, longest,
         named);
    drop(&p);
    return points;
}

START_TEST(yields)
{
    static const double preload[] = {2000, 8000, 15000, 30000, 60000};
    int some = 0, none = 0, all = 0;
    for (int i = 0; i < 5; i++)
        for (int own = SW_SEAT_FLAT; own <= SW_SEAT_SPHERICAL; own++) {
            char what[40];
            sw_strap_in in = base_strap(preload[i], 1);
            in.seat = own;
            in.mu_toe = 0.5;
            snprintf(what, sizeof what, "%g N, seat %d", preload[i], own);
            const int points = check_yields(what, &in);
            none += points == 0;
            all += points == 4 * 121;
            some += points > 0 && points < 4 * 121;
        }
    must(some > 0 && none > 0 && all > 0, "%d, %d, %d", some, none, all);
    sw_strap_in in = base_strap(8000, 2);
    SET(in.grade, "10.9");
    in.nose = SW_NOSE_FLAT;
    in.strap = SW_STRAP_FULL;
    ck_assert_int_gt(check_yields("10.9", &in), 0);
}
END_TEST

START_TEST(same)
{
    sw_strap_in in = shop_strap();
    sw_drawing *a = good_plot(&in, 0, 0, 0);
    sw_drawing *b = good_plot(&in, 860, 13, SW_SHOW_SI_FIRST);
    ck_assert_str_eq(sw_drawing_svg(a), sw_drawing_svg(b));
    sw_drawing_free(b);
    b = good_plot(&in, SW_UNSET, SW_UNSET, 0);
    ck_assert_str_eq(sw_drawing_svg(a), sw_drawing_svg(b));
    sw_drawing_free(b);
    ck_assert_int_eq(sw_strap_resolve(&in, NULL), 0);
    b = good_plot(&in, 0, 0, 0);
    ck_assert_str_eq(sw_drawing_svg(a), sw_drawing_svg(b));
    sw_drawing_free(b);
    sw_drawing_free(a);
}
END_TEST

static sw_strap_in random_strap(randoms *r)
{
    static const char *const thread[] = {"M6", "M12", "M16", "1/2-13", "M64"};
    sw_strap_in in;
    sw_strap_defaults(&in);
    SET(in.thread, thread[random_below(r, 5)]);
    in.torque_Nm = random_log(r, 1e-3, 500);
    in.stud_to_toe_mm = random_log(r, 1, 2000);
    in.stud_to_heel_mm = random_log(r, 1, 2000);
    if (random_below(r, 2))
        in.part_height_mm = random_log(r, 1, 500);
    in.tilt_deg = random_between(r, -12, 12);
    in.seat = random_below(r, 3);
    in.nose = random_below(r, 4);
    in.heel = random_below(r, 4);
    in.strap = random_below(r, 4);
    if (random_below(r, 3) == 0)
        in.mu_toe = random_between(r, 0, 1);
    if (random_below(r, 3) == 0)
        in.step_mm = random_between(r, -20, 20);
    return in;
}

START_TEST(any_strap)
{
    randoms r = {20261125};
    int drawn = 0;
    for (int i = 0; i < 300; i++) {
        sw_error err;
        const sw_strap_in in = random_strap(&r);
        const double width = random_log(&r, 300, 4000);
        const double text = random_log(&r, 9, 60);
        const int show = random_below(&r, 5);
        sw_drawing *made = sw_tilt_plot(&in, width, text, show, &err);
        const sw_strap_out s = sw_strap(&in, NULL);
        ck_assert_int_eq(made == NULL, s.status != 0);
        if (!made) {
            check_error("refused", &err, s.status);
            continue;
        }
        char what[40];
        snprintf(what, sizeof what, "strap %d", i);
        drawing d = read_drawing(sw_drawing_svg(made));
        check_inside(what, &d);
        check_texts(what, &d);
        free(d.e);
        sw_drawing_free(made);
        drawn++;
    }
    ck_assert_int_ge(drawn, 150);
}
END_TEST

/* Straps whose words lay on one another when widths were guessed from a
 * mean. */
static sw_strap_in crowded(int i)
{
    static const struct {
        const char *thread, *lubrication;
        double torque, a, b, part, heel;
        int seat, nose, support, restraint;
    } row[] = {{"M12x1.25", "coolant", 43.3, 191.1, 26.6, 85.4, 85.61,
                SW_SEAT_FLAT, SW_NOSE_BALL, SW_HEEL_SCREW, 0},
               {"M10", "anti-seize", 43.1, 150.8, 48.8, 81.2, 81.01,
                SW_SEAT_SPHERICAL, SW_NOSE_FLAT, SW_HEEL_SCREW,
                SW_RESTRAINT_HELD},
               {"3/8-16 UNC", "dry", 10.1, 96.5, 29.8, 32.6, 37.786,
                SW_SEAT_SPHERICAL, SW_NOSE_ROUND, SW_HEEL_BLOCK, 0}};
    sw_strap_in in;
    sw_strap_defaults(&in);
    SET(in.thread, row[i].thread);
    SET(in.lubrication, row[i].lubrication);
    in.torque_Nm = row[i].torque;
    in.stud_to_toe_mm = row[i].a;
    in.stud_to_heel_mm = row[i].b;
    in.part_height_mm = row[i].part;
    in.heel_height_mm = row[i].heel;
    in.seat = row[i].seat;
    in.nose = row[i].nose;
    in.heel = row[i].support;
    in.restraint = row[i].restraint;
    return in;
}

static int says(const drawing *d, const char *text)
{
    for (const element *e = d->e; e->name[0]; e++)
        if (is_a(e, "text") && strcmp(e->class_of, "caption") == 0 &&
            strncmp(e->text, text, strlen(text)) == 0)
            return 1;
    return 0;
}

static void check_named(const char *what, const drawing *d,
                        const char *class_of, const char *name)
{
    int drawn = 0;
    for (const element *e = d->e; e->name[0]; e++)
        drawn |= is_a(e, "polyline") && strcmp(e->class_of, class_of) == 0;
    must(!drawn || find_text(d, name), "%s, %g px: no %s", what, d->width,
         name);
}

/* At the sizes of a telephone, a window and a projector: no words on others,
 * and nothing left out that says what the sides of zero and the curves are. */
START_TEST(words)
{
    static const double size[][2] = {{330, 13}, {700, 13}, {1600, 20}};
    randoms r = {20270118};
    for (int i = 0; i < 120; i++) {
        sw_strap_in in = i < 3 ? crowded(i) : random_strap(&r);
        if (i >= 3) {
            in.stud_to_toe_mm = random_log(&r, 15, 300);
            in.stud_to_heel_mm = random_log(&r, 15, 200);
        }
        for (int k = 0; k < 3; k++)
            for (int show = SW_SHOW_SI_FIRST; show <= SW_SHOW_US_FIRST;
                 show++) {
                char what[40];
                sw_drawing *made =
                    sw_tilt_plot(&in, size[k][0], size[k][1], show, NULL);
                if (!made)
                    continue;
                snprintf(what, sizeof what, "strap %d", i);
                drawing d = read_drawing(sw_drawing_svg(made));
                check_texts(what, &d);
                must(says(&d, "drawn toward") && says(&d, "pushed"),
                     "%s, %g px: a side without words", what, size[k][0]);
                check_named(what, &d, "flat", "flat seat");
                check_named(what, &d, "dished", "spherical seat");
                free(d.e);
                sw_drawing_free(made);
            }
    }
}
END_TEST

START_TEST(bad)
{
    sw_error err;
    sw_strap_in in = shop_strap();
    static const struct {
        double width, text;
        int show;
        const char *field;
    } row[] = {{299, 13, 0, "width_px"}, {4001, 13, 0, "width_px"},
               {NAN, 13, 0, "width_px"}, {-1, 13, 0, "width_px"},
               {860, 8.9, 0, "text_px"}, {860, 61, 0, "text_px"},
               {860, NAN, 0, "text_px"}, {860, 13, 5, "show"},
               {860, 13, -1, "show"}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        ck_assert_ptr_null(
            sw_tilt_plot(&in, row[i].width, row[i].text, row[i].show, &err));
        const int nan = isnan(row[i].width) || isnan(row[i].text);
        check_refused(row[i].field, &err, nan ? SW_ERR_NAN : SW_ERR_RANGE,
                      row[i].field);
    }
    ck_assert_ptr_null(sw_tilt_plot(NULL, 0, 0, 0, &err));
    check_refused("in", &err, SW_ERR_NULL, "in");
    ck_assert_ptr_null(sw_tilt_plot(NULL, 0, 0, 0, NULL));
    in.stud_to_toe_mm = SW_UNSET;
    ck_assert_ptr_null(sw_tilt_plot(&in, 0, 0, 0, &err));
    check_refused("toe", &err, SW_ERR_MISSING, "stud_to_toe_mm");
    in = base_strap(10000, 2);
    in.nut = SW_NUT_STILL;
    ck_assert_ptr_null(sw_tilt_plot(&in, 0, 0, 0, &err));
    check_refused("still", &err, SW_ERR_NONE, "nut");
    in = base_strap(10000, -19); /* 31 mm below the part's 40: fits */
    in.part_height_mm = 20;
    ck_assert_ptr_null(sw_tilt_plot(&in, 0, 0, 0, &err));
    check_refused("table", &err, SW_ERR_RANGE, "tilt_deg");
}
END_TEST

int main(void)
{
    return RUN_TESTS("tilt_plot", curves, slopes, gap, marks, here, range,
                     right_edge, heel_scale, above, part_stays, yields, sizes,
                     same, any_strap, words, bad);
}
