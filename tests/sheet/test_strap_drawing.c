/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap drawing: what a rule and a protractor laid on the sheet read must be
 * what the answer says; words must be readable whatever the strap. Coordinates
 * are read back from the text; two decimals are written, so a length is good to
 * 0.01 px.
 */
#include "../clamp/strap_question.h"
#include "../random.h"
#include "svg_read.h"

#define DIGIT 0.02 /* px: both ends rounded to two decimals */

static char *drawn(const char *what, const sw_strap_in *in,
                   const sw_strap_drawing_in *how)
{
    sw_error err;
    sw_drawing *d = sw_strap_drawing(in, how, &err);
    must(d != NULL, "%s: %s", what, err.message);
    check_no_error(what, 0, &err);
    const char *text = sw_drawing_svg(d);
    char *copy = malloc(strlen(text) + 1);
    strcpy(copy, text);
    sw_drawing_free(d);
    return copy;
}

static sw_strap_drawing_in defaults(void)
{
    sw_strap_drawing_in how;
    sw_strap_drawing_defaults(&how);
    return how;
}

/* Heads stand where the forces press: distances as a and b, heights as the
 * tilt; lengths are as the forces. */
START_TEST(upright)
{
    static const double tilt[] = {-20, -3, -0.4, 0, 1, 3, 12, 20};
    static const double b[] = {60, 15, 200};
    for (size_t i = 0; i < sizeof tilt / sizeof tilt[0]; i++)
        for (size_t k = 0; k < sizeof b / sizeof b[0]; k++) {
            sw_strap_in in = base_strap(9000, tilt[i]);
            in.part_height_mm = 120;
            in.stud_length_mm = 160;
            in.stud_to_heel_mm = b[k];
            const sw_strap_out out = sw_strap(&in, NULL);
            if (out.status)
                continue;
            char *svg = drawn("upright", &in, NULL);
            const arrow toe = read_arrow(svg, "toe-force");
            const arrow heel = read_arrow(svg, "heel-force");
            const arrow stud = read_arrow(svg, "stud-force");
            const double px = (toe.tip.x - heel.tip.x) / (30 + b[k]);
            near(stud.tip.x - heel.tip.x, px * b[k], DIGIT, 1e-4);
            near(toe.tip.y - heel.tip.y,
                 px * (30 + b[k]) * tan(tilt[i] * TO_RAD), 2 * DIGIT, 0);
            /* over the strap: 16 mm above the line of its contacts */
            ck_assert(stud.tip.y <
                      heel.tip.y - 16 * px + px * b[k] * tan(tilt[i] * TO_RAD));
            near(toe.length / stud.length, out.toe_force_N / 9000, 3e-4, 0);
            near(heel.length / stud.length, out.heel_force_N / 9000, 3e-4, 0);
            near(stud.tail.x, stud.tip.x, DIGIT, 0);
            ck_assert(stud.tail.y < stud.tip.y && toe.tail.y < toe.tip.y);
            free(svg);
        }
}
END_TEST

/* The long edge under the strap has the tilt as it is; it falls to the toe
 * when the heel is high. */
START_TEST(slope)
{
    for (double tilt = -19; tilt < 20; tilt += 2) {
        sw_strap_in in = base_strap(9000, tilt);
        in.part_height_mm = 80;
        in.stud_length_mm = 120;
        in.nose = SW_NOSE_FLAT;
        char *svg = drawn("slope", &in, NULL);
        point p[20];
        ck_assert_int_eq(read_points(find_group(svg, "strap", 0), p, 20), 4);
        const double run = p[1].x - p[0].x;
        ck_assert(run > 100);
        near((p[1].y - p[0].y) / run, tan(tilt * TO_RAD), 2 * DIGIT / run, 0);
        /* the bar's thickness, by Pythagoras: 16 mm at the scale of a and b */
        const double px = (read_arrow(svg, "toe-force").tip.x -
                           read_arrow(svg, "heel-force").tip.x) /
                          sw_strap(&in, NULL).toe_place_mm;
        near(hypot(p[3].x - p[0].x, p[3].y - p[0].y), 16 * px, DIGIT, 1e-3);
        free(svg);
    }
}
END_TEST

/* A straight bar that a step makes lower at its toe; a pad under the toe; the
 * heights of part and pad at the scale of a and b. */
START_TEST(heights)
{
    sw_strap_in in = base_strap(9000, 0);
    in.step_mm = 12;
    in.pad_thickness_mm = 5;
    in.nose = SW_NOSE_FLAT;
    char *svg = drawn("heights", &in, NULL);
    const arrow toe = read_arrow(svg, "toe-force");
    const arrow heel = read_arrow(svg, "heel-force");
    const double px = (toe.tip.x - heel.tip.x) / 90;
    near(toe.tip.y - heel.tip.y, 12 * px, DIGIT, 0);
    point pad[8], part[10];
    ck_assert_int_eq(read_points(find_group(svg, "pad", 0), pad, 8), 4);
    near(pad[0].y - pad[2].y, 5 * px, DIGIT, 0);
    near(pad[2].y, toe.tip.y, DIGIT, 0);
    const int n = read_points(find_group(svg, "part", 0), part, 10);
    near(part[n - 2].y - part[n - 1].y, 40 * px, DIGIT, 0);
    near(part[n - 1].y, pad[0].y, DIGIT, 0);
    free(svg);
}
END_TEST

static int has_text(const char *svg, const char *text)
{
    return strstr(svg, text) != NULL;
}

/* Toward the stud is to the left, in both views; as long as the force says,
 * `sideways` times the upright ones. */
START_TEST(side_pull)
{
    static const double tilt[] = {-6, -3, 0, 3, 6};
    int toward = 0, away = 0;
    for (size_t i = 0; i < sizeof tilt / sizeof tilt[0]; i++) {
        sw_strap_in in = base_strap(9000, tilt[i]);
        in.heel = SW_HEEL_SCREW;
        in.nose = SW_NOSE_FLAT;
        const sw_strap_out out = sw_strap(&in, NULL);
        sw_strap_drawing_in how = defaults();
        char *svg = drawn("side pull", &in, &how);
        how.sideways = 2.5;
        char *half = drawn("half", &in, &how);
        const arrow a = read_arrow(svg, "side-pull");
        const arrow h = read_arrow(half, "side-pull");
        const arrow stud = read_arrow(svg, "stud-force");
        near(a.length, stud.length / 9000 * 5 * fabs(out.side_pull_N), DIGIT,
             2e-4);
        near(h.length, a.length / 2, DIGIT, 0);
        ck_assert((out.side_pull_N > 0) == (a.tip.x < a.tail.x));
        ck_assert(has_text(svg, out.side_pull_N > 0
                                    ? "part drawn TOWARD the stud"
                                    : "part pushed AWAY from the stud"));
        ck_assert(!has_text(svg, out.side_pull_N > 0 ? "AWAY" : "TOWARD"));
        near(a.tip.y, a.tail.y, DIGIT, 0);
        const char *below = find_group(svg, "side-pull", 1);
        const arrow plan = read_arrow(below, "side-pull");
        near(plan.tip.x - plan.tail.x, a.tip.x - a.tail.x, DIGIT, 0);
        toward += out.side_pull_N > 0;
        away += out.side_pull_N < 0;
        free(svg);
        free(half);
    }
    ck_assert_int_ge(toward, 1);
    ck_assert_int_ge(away, 1);
}
END_TEST

/* A rigid level strap on friction-free contacts draws nothing: no arrow, but
 * words. */
START_TEST(no_side_pull)
{
    sw_strap_in in = base_strap(9000, 0);
    in.strap = SW_STRAP_RIGID;
    in.restraint = SW_RESTRAINT_HELD;
    char *svg = drawn("none", &in, NULL);
    ck_assert_ptr_null(find_group(svg, "side-pull", 0));
    ck_assert_ptr_null(find_group(svg, "nut-drag", 0));
    ck_assert_ptr_null(find_group(svg, "net", 0));
    ck_assert(has_text(svg, "part not drawn either way"));
    ck_assert(has_text(svg, "nut drag none: strap held"));
    ck_assert(has_text(svg, "strap level"));
    ck_assert(!has_text(svg, "high end"));
    free(svg);
}
END_TEST

/* Nut drag points to the right of one who looks from the stud to the part:
 * down in the picture; both together is their sum. */
START_TEST(plan)
{
    sw_strap_in in = base_strap(9000, 2);
    in.heel = SW_HEEL_SCREW;
    in.restraint = SW_RESTRAINT_FREE;
    const sw_strap_out out = sw_strap(&in, NULL);
    ck_assert(out.drag_N > 0 && out.side_pull_N != 0);
    sw_strap_drawing_in how = defaults();
    how.views = SW_VIEW_PLAN;
    char *svg = drawn("plan", &in, &how);
    const arrow S = read_arrow(svg, "side-pull"),
                D = read_arrow(svg, "nut-drag");
    const arrow N = read_arrow(svg, "net");
    ck_assert(D.tip.y > D.tail.y);
    near(D.tip.x, D.tail.x, DIGIT, 0);
    near(D.length / S.length, out.drag_N / fabs(out.side_pull_N), 2e-3, 0);
    near(N.tip.x - N.tail.x, S.tip.x - S.tail.x, 2 * DIGIT, 0);
    near(N.tip.y - N.tail.y, D.tip.y - D.tail.y, 2 * DIGIT, 0);
    ck_assert_ptr_null(find_group(svg, "stud-force", 0));
    ck_assert_ptr_nonnull(find_group(svg, "turn", 0));
    ck_assert(has_text(svg, "strap free to turn"));
    free(svg);
    how.views = SW_VIEW_SIDE;
    svg = drawn("side", &in, &how);
    ck_assert_ptr_null(find_group(svg, "turn", 0));
    ck_assert_ptr_null(find_group(svg, "net", 0));
    ck_assert_ptr_nonnull(find_group(svg, "stud-force", 0));
    free(svg);
}
END_TEST

static point middle(const point *p, int n)
{
    double left = INFINITY, right = -INFINITY, top = INFINITY, low = -INFINITY;
    for (int i = 0; i < n; i++) {
        left = fmin(left, p[i].x);
        right = fmax(right, p[i].x);
        top = fmin(top, p[i].y);
        low = fmax(low, p[i].y);
    }
    return (point){(left + right) / 2, (top + low) / 2};
}

/* How far the bubble stands from the vial's middle, in its own divisions, to
 * the right positive: marks are lines, the first at -5, the last at 5. */
static double bubble(const char *svg)
{
    const char *level = find_group(svg, "level", 0);
    must(level != NULL, "no level");
    point p[24];
    const char *second = strstr(strstr(level, "<polygon") + 1, "<polygon");
    const point at = middle(p, read_points(second, p, 24));
    const char *line = strstr(level, "<line"), *end = strstr(level, "</g>");
    double first = 0, last = 0;
    int marks = 0;
    for (; line && line < end; line = strstr(line + 1, "<line")) {
        last = attribute(line, "x1");
        if (marks++ == 0)
            first = last;
    }
    ck_assert_int_eq(marks, 11);
    return (at.x - (first + last) / 2) / ((last - first) / 10);
}

/* tan(tilt) in mm over a metre, by the divisions of the vial; to the heel, on
 * the left, when that is high. */
START_TEST(level)
{
    static const double width[] = {330, 860};
    for (int w = 0; w < 2; w++)
        for (double tilt = -0.4; tilt < 0.45; tilt += 0.2) {
            sw_strap_in in = base_strap(9000, tilt);
            sw_strap_drawing_in how = defaults();
            how.width_px = width[w];
            how.vial_mm_per_m = 2;
            char *svg = drawn("level", &in, &how);
            /* upright it stands square to a slope of half a degree */
            near(bubble(svg), -1000 * tan(tilt * TO_RAD) / 2, 0.03, 0.01);
            ck_assert(!has_text(svg, "off the scale"));
            ck_assert(has_text(svg, tilt > 0.1    ? "divisions, heel high"
                                    : tilt < -0.1 ? "divisions, heel low"
                                                  : "bubble in the middle"));
            free(svg);
        }
    sw_strap_in in = base_strap(9000, -3);
    sw_strap_drawing_in how = defaults();
    how.vial_mm_per_m = 0.3;
    char *svg = drawn("far", &in, &how);
    near(bubble(svg), 5, 0.2, 0);
    ck_assert(has_text(svg, "off the scale"));
    free(svg);
}
END_TEST

/* A bent stud: its nut leans with the strap. On a dished seat it stands
 * upright. Nut polygon: points 0 and 1 are the ends of its lower face. */
START_TEST(nut_leans)
{
    static const struct {
        double tilt;
        int seat;
        double lean;
    } row[] = {{3, SW_SEAT_FLAT, 3},
               {-3, SW_SEAT_FLAT, -3},
               {2, SW_SEAT_SPHERICAL, 0},
               {0, SW_SEAT_FLAT, 0}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_strap_in in = base_strap(3000, row[i].tilt);
        in.seat = row[i].seat;
        in.rim_radius_mm = 500; /* never on its edge */
        char *svg = drawn("nut", &in, NULL);
        point p[8];
        ck_assert_int_eq(read_points(find_group(svg, "nut", 0), p, 8), 6);
        near(atan2(p[1].y - p[0].y, p[1].x - p[0].x) / TO_RAD, row[i].lean,
             0.05, 0);
        ck_assert(has_text(svg, row[i].lean != 0 ? "stud is bent"
                                                 : "stud stays straight"));
        free(svg);
    }
    /* a foot that rocks lets it lean without bending */
    sw_strap_in rocks = base_strap(3000, 3);
    rocks.foot = SW_FOOT_ROCKING;
    char *leaning = drawn("rocking", &rocks, NULL);
    ck_assert(has_text(leaning, "its foot rocks"));
    ck_assert(!has_text(leaning, "stud is bent"));
    free(leaning);
    /* on its edge it leans less than the strap does */
    sw_strap_in in = base_strap(3000, 6);
    in.rim_radius_mm = 5;
    ck_assert_int_eq(sw_strap(&in, NULL).seat_state, SW_STATE_RIM);
    char *svg = drawn("rim", &in, NULL);
    point p[8];
    read_points(find_group(svg, "nut", 0), p, 8);
    const double lean = atan2(p[1].y - p[0].y, p[1].x - p[0].x) / TO_RAD;
    ck_assert(lean > 0.1 && lean < 5.9);
    ck_assert(has_text(svg, "stands on its edge"));
    free(svg);
}
END_TEST

/* Forces as text are those of the answer, as they are said elsewhere. */
START_TEST(words)
{
    for (int show = SW_SHOW_SI_FIRST; show <= SW_SHOW_US; show++) {
        sw_strap_in in = base_strap(9000, 3);
        in.heel = SW_HEEL_SCREW;
        const sw_strap_out out = sw_strap(&in, NULL);
        sw_strap_drawing_in how = defaults();
        how.show = show;
        char *svg = drawn("words", &in, &how), said[120], line[160];
        const double force[] = {out.preload_N, out.toe_force_N,
                                out.heel_force_N};
        for (int i = 0; i < 3; i++)
            for (int us = 0; us < 2; us++) {
                const int wanted = us ? show != SW_SHOW_SI : show != SW_SHOW_US;
                sw_say(force[i], SW_KIND_FORCE, us ? SW_SHOW_US : SW_SHOW_SI,
                       said, sizeof said);
                snprintf(line, sizeof line, ">%s</text>", said);
                must(has_text(svg, line) == wanted, "%s", line);
            }
        sw_say(fabs(out.side_pull_N), SW_KIND_FORCE, show, said, sizeof said);
        snprintf(line, sizeof line, "the stud, %s</text>", said);
        must(has_text(svg, line), "%s", line);
        sw_say(out.drag_N, SW_KIND_FORCE, show, said, sizeof said);
        snprintf(line, sizeof line, "nut drag %s", said);
        must(has_text(svg, line), "%s", line);
        const char *about = strstr(svg, "<desc>");
        sw_say(out.toe_force_N, SW_KIND_FORCE, show, said, sizeof said);
        must(strstr(about, said) < strstr(svg, "</desc>"), "%s", said);
        free(svg);
    }
}
END_TEST

/* A nut that does not turn has no nominal: both ends, no arrow. */
START_TEST(still)
{
    sw_strap_in in = base_strap(9000, 2);
    in.nut = SW_NUT_STILL;
    const sw_strap_out out = sw_strap(&in, NULL);
    char *svg = drawn("still", &in, NULL), said[120];
    ck_assert_ptr_null(find_group(svg, "side-pull", 0));
    ck_assert_ptr_null(find_group(svg, "turn", 0));
    sw_say(fabs(out.side_pull_high_N), SW_KIND_FORCE, SW_SHOW_SI, said,
           sizeof said);
    ck_assert(has_text(svg, said));
    sw_say(fabs(out.side_pull_low_N), SW_KIND_FORCE, SW_SHOW_SI, said,
           sizeof said);
    ck_assert(has_text(svg, said));
    ck_assert(has_text(svg, "<title>Strap clamp, M12, 9000 N</title>"));
    free(svg);
}
END_TEST

/* An arrow that has no room says so. */
START_TEST(cut)
{
    sw_strap_in in = base_strap(9000, 3);
    sw_strap_drawing_in how = defaults();
    char *svg = drawn("whole", &in, &how);
    ck_assert(!has_text(svg, "should be longer"));
    free(svg);
    how.full_force_N = 900;
    svg = drawn("cut", &in, &how);
    ck_assert(has_text(svg, "should be longer"));
    free(svg);
}
END_TEST

START_TEST(same)
{
    sw_strap_in in = base_strap(9000, 3), full = in;
    char *a = drawn("a", &in, NULL), *b = drawn("b", &in, NULL);
    ck_assert_str_eq(a, b);
    free(b);
    sw_strap_drawing_in how = defaults();
    b = drawn("c", &in, &how);
    ck_assert_str_eq(a, b);
    free(b);
    ck_assert_int_eq(sw_strap_resolve(&full, NULL), 0);
    b = drawn("d", &full, NULL);
    ck_assert_str_eq(a, b);
    free(a);
    free(b);
    sw_strap_drawing_defaults(NULL);
}
END_TEST

START_TEST(refused)
{
    static const struct {
        const char *field;
        double value;
        int code;
    } row[] = {{"width_px", 299, SW_ERR_RANGE},
               {"width_px", 4001, SW_ERR_RANGE},
               {"width_px", NAN, SW_ERR_NAN},
               {"text_px", 8.9, SW_ERR_RANGE},
               {"text_px", 40, SW_ERR_RANGE}, /* 40 * 22 = 880 > 860 */
               {"text_px", NAN, SW_ERR_NAN},
               {"full_force_N", 0, SW_ERR_RANGE},
               {"full_force_N", -5, SW_ERR_RANGE},
               {"sideways", 0.9, SW_ERR_RANGE},
               {"sideways", INFINITY, SW_ERR_RANGE},
               {"vial_mm_per_m", 0, SW_ERR_RANGE}};
    sw_error err;
    const sw_strap_in in = base_strap(9000, 1);
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_strap_drawing_in how = defaults();
        set_field(&how,
                  sw_field_named(SW_STRUCT_STRAP_DRAWING_IN, row[i].field),
                  row[i].value);
        ck_assert_ptr_null(sw_strap_drawing(&in, &how, &err));
        check_refused(row[i].field, &err, row[i].code, row[i].field);
    }
    sw_strap_drawing_in how = defaults();
    how.views = 4;
    ck_assert_ptr_null(sw_strap_drawing(&in, &how, &err));
    check_refused("views", &err, SW_ERR_RANGE, "views");
    how = defaults();
    how.show = -1;
    ck_assert_ptr_null(sw_strap_drawing(&in, &how, &err));
    check_refused("show", &err, SW_ERR_RANGE, "show");
    ck_assert_ptr_null(sw_strap_drawing(NULL, NULL, &err));
    check_refused("in", &err, SW_ERR_NULL, "in");
    sw_strap_in open;
    sw_strap_defaults(&open);
    ck_assert_ptr_null(sw_strap_drawing(&open, NULL, &err));
    check_refused("thread", &err, SW_ERR_MISSING, "thread");
    ck_assert_ptr_null(sw_strap_drawing(&open, NULL, NULL));
}
END_TEST

/* ---- a sweep over straps that look different ---- */

static sw_strap_in some_strap(randoms *r)
{
    static const char *const thread[] = {"M6",  "M8",  "M10",    "M12",
                                         "M16", "M24", "M36",    "M48",
                                         "M14", "M33", "1/2-13", "3/8-16"};
    sw_strap_in in;
    sw_strap_defaults(&in);
    SET(in.thread, thread[random_below(r, 12)]);
    in.nut = 1 + random_below(r, 8) / 7;
    if (in.nut == SW_NUT_STILL)
        in.preload_N = random_log(r, 10, 50000);
    else
        in.torque_Nm = random_log(r, 0.5, 500);
    in.stud_to_toe_mm = random_log(r, 10, 200);
    in.stud_to_heel_mm = random_log(r, 10, 200);
    in.part_height_mm = random_log(r, 3, 200);
    in.tilt_deg = random_below(r, 4) ? random_between(r, -4, 4)
                                     : random_between(r, -20, 20);
    if (random_below(r, 6) == 0)
        in.tilt_deg = 0;
    if (random_below(r, 3) == 0)
        in.pad_thickness_mm = random_between(r, 0, 10);
    if (random_below(r, 3) == 0)
        in.step_mm = random_between(r, -30, 60);
    in.heel = 1 + random_below(r, 3);
    in.nose = 1 + random_below(r, 3);
    in.seat = 1 + random_below(r, 2);
    in.strap = 1 + random_below(r, 3);
    in.foot = 1 + random_below(r, 2);
    if (in.nut == SW_NUT_TURNED)
        in.restraint = 1 + random_below(r, 3);
    if (in.nose == SW_NOSE_FLAT && random_below(r, 2))
        in.toe_land_mm = random_between(r, 0, 30);
    if (in.heel != SW_HEEL_SCREW && random_below(r, 2))
        in.heel_land_mm = random_between(r, 0, 30);
    if (in.nose == SW_NOSE_ROUND && random_below(r, 2))
        in.nose_radius_mm = random_between(r, 0, 100);
    return in;
}

static sw_strap_drawing_in some_way(randoms *r)
{
    static const double width[] = {330, 700, 860, 1600};
    sw_strap_drawing_in how = defaults();
    how.width_px = width[random_below(r, 4)];
    how.text_px = random_between(r, 9, fmin(30, how.width_px / 22));
    how.views = random_below(r, 4);
    how.show = random_below(r, 5);
    if (random_below(r, 2))
        how.vial_mm_per_m = random_log(r, 0.02, 50);
    if (random_below(r, 4) == 0)
        how.full_force_N = random_log(r, 1, 1e6);
    if (random_below(r, 4) == 0)
        how.sideways = random_between(r, 1, 50);
    return how;
}

/* Nothing that is drawn begins, ends or has its corner inside a word. */
static void check_clear(int i, const char *svg, const text_box *box, int texts)
{
    for (const char *c = strstr(svg, "points=\""); c;
         c = strstr(c, "points=\"")) {
        for (c += 8; *c != '"';) {
            char *end;
            const double x = strtod(c, &end), y = strtod(end + 1, &end);
            for (int k = 0; k < texts; k++)
                must(!inside(&box[k], x, y), "strap %d: (%g, %g) in \"%s\"", i,
                     x, y, box[k].text);
            c = end + (*end == ' ');
        }
    }
    for (const char *c = strstr(svg, "<line"); c; c = strstr(c + 1, "<line")) {
        const double x1 = attribute(c, "x1"), x2 = attribute(c, "x2");
        const double y1 = attribute(c, "y1"), y2 = attribute(c, "y2");
        for (int k = 0; k < texts; k++)
            for (int part = 0; part <= 10; part++)
                must(!inside(&box[k], x1 + (x2 - x1) * part / 10,
                             y1 + (y2 - y1) * part / 10),
                     "strap %d: line in \"%s\"", i, box[k].text);
    }
}

static void check_sheet(int i, const char *svg, const sw_strap_drawing_in *how)
{
    static text_box box[MOST_TEXTS];
    const int texts = read_texts(svg, box);
    const double W = attribute(svg, "width"), H = attribute(svg, "height");
    near(W, how->width_px, 0, 0);
    ck_assert(H > 50 && H < 6 * W);
    must(!has_text(svg, "nan") && !has_text(svg, "inf") &&
             !has_text(svg, "NaN") && !has_text(svg, "e+"),
         "strap %d: a number is none", i);
    must(!has_text(svg, " id=") && !has_text(svg, "<style"), "strap %d", i);
    ck_assert_int_ge(texts, 5);
    for (int k = 0; k < texts; k++) {
        must(box[k].left >= 0 && box[k].right <= W && box[k].top >= 0 &&
                 box[k].bottom <= H,
             "strap %d (%g px, text %g): \"%s\" leaves the sheet: %g .. %g of "
             "%g, %g .. %g of %g",
             i, W, how->text_px, box[k].text, box[k].left, box[k].right, W,
             box[k].top, box[k].bottom, H);
        for (int m = 0; m < k; m++)
            must(!overlap(&box[k], &box[m]),
                 "strap %d (%g px, text %g): \"%s\" on \"%s\"", i, W,
                 how->text_px, box[k].text, box[m].text);
    }
    check_clear(i, svg, box, texts);
}

START_TEST(sweep)
{
    randoms r = {20240611};
    int good = 0;
    for (int i = 0; good < 500; i++) {
        ck_assert_int_lt(i, 2000);
        const sw_strap_in in = some_strap(&r);
        const sw_strap_drawing_in how = some_way(&r);
        sw_error err;
        sw_drawing *d = sw_strap_drawing(&in, &how, &err);
        if (!d) {
            check_error("sweep", &err, err.code);
            ck_assert_int_ne(sw_strap(&in, NULL).status, 0);
            continue;
        }
        check_sheet(i, sw_drawing_svg(d), &how);
        sw_drawing_free(d);
        good++;
    }
}
END_TEST

/* The ends of what may be asked for at all. */
START_TEST(extremes)
{
    static const double a[] = {1, 2000}, width[] = {300, 4000};
    for (int i = 0; i < 32; i++) {
        sw_strap_in in = base_strap(i & 1 ? 1e-3 : 20000, 0);
        in.stud_to_toe_mm = a[i >> 1 & 1];
        in.stud_to_heel_mm = a[i >> 2 & 1];
        in.part_height_mm = i & 8 ? 5000 : 0;
        in.stud_length_mm = i & 8 ? 20000 : 1;
        sw_strap_drawing_in how = defaults();
        how.width_px = width[i >> 4 & 1];
        sw_error err;
        sw_drawing *d = sw_strap_drawing(&in, &how, &err);
        if (d)
            check_sheet(i, sw_drawing_svg(d), &how);
        else
            check_error("extreme", &err, err.code);
        sw_drawing_free(d);
    }
}
END_TEST

int main(void)
{
    return RUN_TESTS("strap drawing", upright, slope, heights, side_pull,
                     no_side_pull, plan, level, nut_leans, words, still, cut,
                     same, refused, sweep, extremes);
}
