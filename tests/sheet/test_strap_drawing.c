/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap drawing: what a rule and a protractor laid on the sheet read must be
 * what the answer says; words must be readable whatever the strap. Rules,
 * scales, keys and warnings: test_strap_marks.c.
 */
#include "../clamp/strap_question.h"
#include "../random.h"
#include "drawn_strap.h"

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
            sheet svg = drawn("upright", &in, NULL);
            const arrow toe = read_arrow(&svg, "toe-force", 0);
            const arrow heel = read_arrow(&svg, "heel-force", 0);
            const arrow stud = read_arrow(&svg, "stud-force", 0);
            const double px = (toe.tip.x - heel.tip.x) / (30 + b[k]);
            /* the stud's on the nut, wherever that came to rest */
            near(stud.tip.x - heel.tip.x, px * (b[k] + out.nut_travel_mm),
                 DIGIT, 1e-4);
            near(toe.tip.y - heel.tip.y,
                 px * (30 + b[k]) * tan(tilt[i] * TO_RAD), 2 * DIGIT, 0);
            /* over the strap: 16 mm above the line of its contacts */
            ck_assert(stud.tip.y <
                      heel.tip.y - 16 * px + px * b[k] * tan(tilt[i] * TO_RAD));
            near(toe.length / stud.length, out.toe_force_N / 9000, 3e-4, 0);
            near(heel.length / stud.length, out.heel_force_N / 9000, 3e-4, 0);
            near(stud.tail.x, stud.tip.x, DIGIT, 0);
            ck_assert(stud.tail.y < stud.tip.y && toe.tail.y < toe.tip.y);
            drop(&svg);
        }
}
END_TEST

/* What pushes the strap, stud and heel, adds up to what the part feels, with
 * its sign: x to the right is away from the stud. */
START_TEST(pushes)
{
    static const double tilt[] = {-2, -1, 1, 2, 3.5};
    for (size_t i = 0; i < sizeof tilt / sizeof tilt[0]; i++) {
        sw_strap_in in = base_strap(9000, tilt[i]);
        in.part_height_mm = 60;
        in.mu_toe = 0.5;
        const sw_strap_out out = sw_strap(&in, NULL);
        sw_strap_drawing_in how = defaults();
        how.sideways = 8;
        sheet svg = drawn("pushes", &in, &how);
        const element *e = first(group_of(&svg, "on-strap"), "polygon");
        const arrow stud = arrow_of(e),
                    heel = arrow_of(first(e + 1, "polygon"));
        const arrow part = read_arrow(&svg, "side-pull", 0);
        const arrow down = read_arrow(&svg, "stud-force", 0);
        const double px_N = 8 * down.length / out.preload_N;
        near(stud.tip.x - stud.tail.x, px_N * out.side_load_on_strap_N,
             4 * DIGIT, 1e-3);
        near(heel.tip.x - heel.tail.x, px_N * out.heel_side_N, 4 * DIGIT, 1e-3);
        near(stud.tip.x - stud.tail.x + heel.tip.x - heel.tail.x,
             part.tip.x - part.tail.x, 6 * DIGIT, 0);
        drop(&svg);
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
        sheet svg = drawn("slope", &in, NULL);
        const element *bar = first(group_of(&svg, "strap"), "polygon");
        const point *p = bar->p;
        ck_assert_int_eq(bar->points, 4);
        const double run = p[1].x - p[0].x;
        ck_assert(run > 100);
        near((p[1].y - p[0].y) / run, tan(tilt * TO_RAD), 2 * DIGIT / run, 0);
        /* the bar's thickness, by Pythagoras: 16 mm at the scale of a and b */
        const double px = (read_arrow(&svg, "toe-force", 0).tip.x -
                           read_arrow(&svg, "heel-force", 0).tip.x) /
                          sw_strap(&in, NULL).toe_place_mm;
        near(hypot(p[3].x - p[0].x, p[3].y - p[0].y), 16 * px, DIGIT, 1e-3);
        drop(&svg);
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
    sheet svg = drawn("heights", &in, NULL);
    const arrow toe = read_arrow(&svg, "toe-force", 0);
    const arrow heel = read_arrow(&svg, "heel-force", 0);
    const double px = (toe.tip.x - heel.tip.x) / 90;
    near(toe.tip.y - heel.tip.y, 12 * px, DIGIT, 0);
    const element *under = first(group_of(&svg, "pad"), "polygon");
    const element *held = first(group_of(&svg, "part"), "polygon");
    const point *pad = under->p, *part = held->p;
    ck_assert_int_eq(under->points, 4);
    near(pad[0].y - pad[2].y, 5 * px, DIGIT, 0);
    near(pad[2].y, toe.tip.y, DIGIT, 0);
    const int n = held->points;
    near(part[n - 2].y - part[n - 1].y, 40 * px, DIGIT, 0);
    near(part[n - 1].y, pad[0].y, DIGIT, 0);
    drop(&svg);
}
END_TEST

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
        sheet svg = drawn("side pull", &in, &how);
        how.sideways = 2.5;
        sheet half = drawn("half", &in, &how);
        const arrow a = read_arrow(&svg, "side-pull", 0);
        const arrow h = read_arrow(&half, "side-pull", 0);
        const arrow stud = read_arrow(&svg, "stud-force", 0);
        near(a.length, stud.length / 9000 * 5 * fabs(out.side_pull_N), DIGIT,
             2e-4);
        near(h.length, a.length / 2, DIGIT, 0);
        ck_assert((out.side_pull_N > 0) == (a.tip.x < a.tail.x));
        ck_assert(has_text(&svg, out.side_pull_N > 0
                                     ? "part drawn TOWARD the stud"
                                     : "part pushed AWAY from the stud"));
        ck_assert(!has_text(&svg, out.side_pull_N > 0 ? "AWAY" : "TOWARD"));
        near(a.tip.y, a.tail.y, DIGIT, 0);
        const arrow plan = read_arrow(&svg, "side-pull", 1);
        near(plan.tip.x - plan.tail.x, a.tip.x - a.tail.x, DIGIT, 0);
        toward += out.side_pull_N > 0;
        away += out.side_pull_N < 0;
        drop(&svg);
        drop(&half);
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
    sheet svg = drawn("none", &in, NULL);
    ck_assert_ptr_null(group_of(&svg, "side-pull"));
    ck_assert_ptr_null(group_of(&svg, "nut-drag"));
    ck_assert_ptr_null(group_of(&svg, "net"));
    ck_assert(has_text(&svg, "part not drawn either way"));
    ck_assert(has_text(&svg, "nut drag none: strap held"));
    ck_assert(has_text(&svg, "strap level"));
    ck_assert(!has_text(&svg, "on the high side"));
    drop(&svg);
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
    sheet svg = drawn("plan", &in, &how);
    const arrow S = read_arrow(&svg, "side-pull", 0),
                D = read_arrow(&svg, "nut-drag", 0);
    const arrow N = read_arrow(&svg, "net", 0);
    ck_assert(D.tip.y > D.tail.y);
    near(D.tip.x, D.tail.x, DIGIT, 0);
    near(D.length / S.length, out.drag_N / fabs(out.side_pull_N), 2e-3, 0);
    near(N.tip.x - N.tail.x, S.tip.x - S.tail.x, 2 * DIGIT, 0);
    near(N.tip.y - N.tail.y, D.tip.y - D.tail.y, 2 * DIGIT, 0);
    ck_assert_ptr_null(group_of(&svg, "stud-force"));
    ck_assert_ptr_nonnull(group_of(&svg, "turn"));
    ck_assert(has_text(&svg, "strap free to turn"));
    drop(&svg);
    how.views = SW_VIEW_SIDE;
    svg = drawn("side", &in, &how);
    ck_assert_ptr_null(group_of(&svg, "turn"));
    ck_assert_ptr_null(group_of(&svg, "net"));
    ck_assert_ptr_nonnull(group_of(&svg, "stud-force"));
    drop(&svg);
}
END_TEST

/* How far the bubble stands from the vial's middle, in its own divisions, to
 * the right positive: marks are lines, the first at -5, the last at 5. */
static double bubble(const sheet *s)
{
    const element *vial = first(group_of(s, "level"), "polygon");
    const rectangle b = box_of(first(vial + 1, "polygon"));
    double from = 0, to = 0;
    int marks = 0;
    for (const element *e = vial; e->group == vial->group; e++) {
        if (!is_a(e, "line"))
            continue;
        to = e->at.x;
        if (marks++ == 0)
            from = to;
    }
    ck_assert_int_eq(marks, 11);
    return ((b.left + b.right) / 2 - (from + to) / 2) / ((to - from) / 10);
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
            sheet svg = drawn("level", &in, &how);
            /* upright it stands square to a slope of half a degree */
            near(bubble(&svg), -1000 * tan(tilt * TO_RAD) / 2, 0.03, 0.01);
            ck_assert(!has_text(&svg, "off the scale"));
            ck_assert(has_text(&svg, tilt > 0.1    ? "divisions, heel high"
                                     : tilt < -0.1 ? "divisions, heel low"
                                                   : "bubble in the middle"));
            drop(&svg);
        }
    sw_strap_in in = base_strap(9000, -3);
    sw_strap_drawing_in how = defaults();
    how.vial_mm_per_m = 0.3;
    sheet svg = drawn("far", &in, &how);
    near(bubble(&svg), 5, 0.2, 0);
    ck_assert(has_text(&svg, "off the scale"));
    drop(&svg);
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
        sheet svg = drawn("nut", &in, NULL);
        const element *nut = first(group_of(&svg, "nut"), "polygon");
        const point *p = nut->p;
        ck_assert_int_eq(nut->points, 6);
        near(atan2(p[1].y - p[0].y, p[1].x - p[0].x) / TO_RAD, row[i].lean,
             0.05, 0);
        ck_assert(has_text(&svg, row[i].lean != 0 ? "stud is bent"
                                                  : "stud stays straight"));
        drop(&svg);
    }
    /* a foot that rocks lets it lean without bending */
    sw_strap_in rocks = base_strap(3000, 3);
    rocks.foot = SW_FOOT_ROCKING;
    sheet leaning = drawn("rocking", &rocks, NULL);
    ck_assert(has_text(&leaning, "its foot rocks"));
    ck_assert(!has_text(&leaning, "stud is bent"));
    drop(&leaning);
    /* on its edge it leans less than the strap does */
    sw_strap_in in = base_strap(3000, 6);
    in.rim_radius_mm = 5;
    ck_assert_int_eq(sw_strap(&in, NULL).seat_state, SW_STATE_RIM);
    sheet svg = drawn("rim", &in, NULL);
    const point *p = first(group_of(&svg, "nut"), "polygon")->p;
    const double lean = atan2(p[1].y - p[0].y, p[1].x - p[0].x) / TO_RAD;
    ck_assert(lean > 0.1 && lean < 5.9);
    ck_assert(has_text(&svg, "stands on its edge"));
    drop(&svg);
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
        sheet svg = drawn("words", &in, &how);
        char said[120], line[160];
        const double force[] = {out.preload_N, out.toe_force_N,
                                out.heel_force_N};
        for (int i = 0; i < 3; i++)
            for (int us = 0; us < 2; us++) {
                const int wanted = us ? show != SW_SHOW_SI : show != SW_SHOW_US;
                sw_say(force[i], SW_KIND_FORCE, us ? SW_SHOW_US : SW_SHOW_SI,
                       said, sizeof said);
                snprintf(line, sizeof line, ">%s</text>", said);
                must(has_text(&svg, line) == wanted, "%s", line);
            }
        sw_say(fabs(out.side_pull_N), SW_KIND_FORCE, show, said, sizeof said);
        snprintf(line, sizeof line, "the stud, %s</text>", said);
        must(has_text(&svg, line), "%s", line);
        sw_say(out.drag_N, SW_KIND_FORCE, show, said, sizeof said);
        snprintf(line, sizeof line, "nut drag %s", said);
        must(has_text(&svg, line), "%s", line);
        const char *about = strstr(sw_drawing_svg(svg.made), "<desc>");
        sw_say(out.toe_force_N, SW_KIND_FORCE, show, said, sizeof said);
        must(strstr(about, said) < strstr(about, "</desc>"), "%s", said);
        drop(&svg);
    }
}
END_TEST

/* A nut that does not turn has no nominal: both ends, no arrow. */
START_TEST(still)
{
    sw_strap_in in = base_strap(9000, 2);
    in.nut = SW_NUT_STILL;
    const sw_strap_out out = sw_strap(&in, NULL);
    sheet svg = drawn("still", &in, NULL);
    char said[120];
    ck_assert_ptr_null(group_of(&svg, "side-pull"));
    ck_assert_ptr_null(group_of(&svg, "turn"));
    sw_say(fabs(out.side_pull_high_N), SW_KIND_FORCE, SW_SHOW_SI, said,
           sizeof said);
    ck_assert(has_text(&svg, said));
    sw_say(fabs(out.side_pull_low_N), SW_KIND_FORCE, SW_SHOW_SI, said,
           sizeof said);
    ck_assert(has_text(&svg, said));
    ck_assert(has_text(&svg, "<title>Strap clamp, M12, 9000 N</title>"));
    drop(&svg);
}
END_TEST

/* An arrow that has no room says so. */
START_TEST(cut)
{
    sw_strap_in in = base_strap(9000, 3);
    sw_strap_drawing_in how = defaults();
    sheet svg = drawn("whole", &in, &how);
    ck_assert(!has_text(&svg, "should be longer"));
    drop(&svg);
    how.full_force_N = 900;
    svg = drawn("cut", &in, &how);
    ck_assert(has_text(&svg, "should be longer"));
    drop(&svg);
}
END_TEST

static void check_same(const sheet *a, sheet b)
{
    ck_assert_str_eq(sw_drawing_svg(a->made), sw_drawing_svg(b.made));
    drop(&b);
}

START_TEST(same)
{
    sw_strap_in in = base_strap(9000, 3), full = in;
    sheet a = drawn("a", &in, NULL);
    check_same(&a, drawn("b", &in, NULL));
    const sw_strap_drawing_in how = defaults();
    check_same(&a, drawn("c", &in, &how));
    ck_assert_int_eq(sw_strap_resolve(&full, NULL), 0);
    check_same(&a, drawn("d", &full, NULL));
    drop(&a);
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

/* Whether a point lies well inside a box. */
static int inside(const rectangle *b, point p)
{
    const double off = 0.6; /* half of a line's width */
    return p.x > b->left + off && p.x < b->right - off && p.y > b->top + off &&
           p.y < b->bottom - off;
}

/* Nothing that is drawn begins, ends or has its corner inside a word. */
static void check_clear(const char *what, const drawing *d)
{
    for (const element *t = d->e; t->name[0]; t++) {
        if (!is_a(t, "text"))
            continue;
        const rectangle b = box_of_text(t);
        for (const element *e = d->e; e->name[0]; e++) {
            for (int k = 0; k < e->points; k++)
                must(!inside(&b, e->p[k]), "%s: (%g, %g) in \"%s\"", what,
                     e->p[k].x, e->p[k].y, t->text);
            for (int k = 0; is_a(e, "line") && k <= 10; k++) {
                const point p = {e->at.x + (e->to.x - e->at.x) * k / 10,
                                 e->at.y + (e->to.y - e->at.y) * k / 10};
                must(!inside(&b, p), "%s: line in \"%s\"", what, t->text);
            }
        }
    }
}

static void check_sheet(int i, const sw_drawing *made,
                        const sw_strap_drawing_in *how)
{
    char what[60];
    drawing d = read_drawing(sw_drawing_svg(made));
    snprintf(what, sizeof what, "strap %d", i);
    near_in(what, d.width, how->width_px, 0, 0);
    ck_assert(d.height > 50 && d.height < 6 * d.width);
    ck_assert(!strstr(sw_drawing_svg(made), "NaN"));
    check_texts(what, &d);
    check_clear(what, &d);
    free(d.e);
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
        check_sheet(i, d, &how);
        sw_drawing_free(d);
        good++;
    }
}
END_TEST

/* "257 N toward the stud" behind the verb: signed as a side pull is. */
static double said_force(const char **at)
{
    const int draws = strncmp(*at, "draws ", 6) == 0;
    must(draws || strncmp(*at, "pushes ", 7) == 0, "%s", *at);
    const char *number = *at + (draws ? 6 : 7);
    const char *unit = strchr(number, ' ') + 1;
    char text[40];
    const size_t n = (size_t)(unit - number - 1);
    must(n < sizeof text, "%s", *at);
    memcpy(text, number, n);
    text[n] = '\0';
    const double kilo = strncmp(unit, "kN ", 3) == 0 ? 1000 : 1;
    must(kilo > 1 || strncmp(unit, "N ", 2) == 0, "%s", *at);
    *at = strchr(unit, ' ') + 1;
    const char *way = draws ? "toward the stud" : "away";
    must(strncmp(*at, way, strlen(way)) == 0, "%s", *at);
    *at += strlen(way);
    return (draws ? 1 : -1) * kilo * sw_number(text, "force", NULL).value;
}

static const char *causes_of(const drawing *d)
{
    for (const element *e = d->e; e->name[0]; e++)
        if (is_a(e, "text") &&
            (strstr(e->text, " draws ") || strstr(e->text, " pushes ")))
            return e->text;
    return NULL;
}

/* Half of the last digit that is said: 99.9, 999, 9999 N, 99.99 kN. */
static double said_to(double N)
{
    const double more = 1.001, size = fabs(N);
    return more * (size < 100 ? 0.05 : size < 10000 ? 0.5 : 5e-4 * size);
}

/* What is said of the causes of a side pull is true of the answer: each is its
 * force, their sum the pull; "bending" is no less than a strap that does not
 * bend would do. */
static int check_causes(int i, const sw_strap_in *in, const sw_strap_out *out,
                        const char *text)
{
    sw_strap_in rigid = *in;
    rigid.strap = SW_STRAP_RIGID;
    const char *under = "the slope under the nut ";
    const int underd = strncmp(text, under, strlen(under)) == 0;
    double lean = 0;
    int parts = 1;
    ck_assert(in->strap == SW_STRAP_FULL || !underd);
    if (underd || strncmp(text, "tilt ", 5) == 0) {
        text += underd ? strlen(under) : 5;
        lean = said_force(&text);
        must(strncmp(text, ", ", 2) == 0, "strap %d: %s", i, text);
        text += 2;
        parts++;
    }
    const int bending = strncmp(text, "the strap's bending ", 20) == 0;
    must(bending || strncmp(text, "the heel ", 9) == 0, "strap %d: %s", i,
         text);
    if (bending)
        must(out->heel_side_N > 0 && sw_strap(&rigid, NULL).heel_side_N <=
                                         out->heel_side_N * (1 + 1e-9),
             "strap %d", i);
    text += bending                                ? 20
            : strncmp(text, "the heel (", 10) == 0 ? strcspn(text, ")") + 2
                                                   : 9;
    const double heel = said_force(&text);
    must(*text == '\0', "strap %d: %s", i, text);
    near(lean, -out->side_load_on_strap_N, said_to(lean), 0);
    near(heel, -out->heel_side_N, said_to(heel), 0);
    near(lean + heel, out->side_pull_N, said_to(lean) + said_to(heel), 0);
    return parts;
}

START_TEST(causes)
{
    randoms r = {20240930};
    int drawn_at_all = 0, said[3] = {0, 0, 0};
    while (drawn_at_all < 500) {
        sw_strap_in in = some_strap(&r);
        in.mu_toe = random_between(&r, 0.1, 0.9);
        sw_strap_drawing_in how = defaults();
        how.width_px = 4000;
        how.text_px = 9;
        how.show = SW_SHOW_SI;
        const sw_strap_out out = sw_strap(&in, NULL);
        if (out.status)
            continue;
        const int i = drawn_at_all++;
        sheet s = drawn("causes", &in, &how);
        const char *text = causes_of(&s.d);
        const double none = 1e-6 * out.preload_N;
        const int wanted = in.nut == SW_NUT_TURNED &&
                           !(out.warnings & SW_WARN_TOE_SLIDES) &&
                           fabs(out.heel_side_N) > none &&
                           (in.seat == SW_SEAT_SPHERICAL ||
                            fabs(out.side_load_on_strap_N) > none);
        must((text != NULL) == wanted, "strap %d: %s", i, text ? text : "-");
        said[text ? check_causes(i, &in, &out, text) : 0]++;
        drop(&s);
    }
    must(said[0] > 50 && said[1] > 25 && said[2] > 100, "%d, %d, %d", said[0],
         said[1], said[2]);
}
END_TEST

/* Which arrow is which, in words; arrows that do not stand in a view have no
 * scale below it. */
START_TEST(arrows)
{
    sw_strap_in in = base_strap(9000, 2);
    sw_strap_drawing_in how = defaults();
    how.views = SW_VIEW_PLAN;
    sheet s = drawn("free", &in, &how);
    ck_assert(has_text(&s, "from above: hollow arrow side pull, dashed nut "
                           "drag, filled both together</text>"));
    ck_assert(!has_text(&s, "upright arrows"));
    drop(&s);
    how.sideways = 1;
    how.full_force_N = 1e6; /* 9000 N: a hundredth of a fifth of 860 px */
    s = drawn("short", &in, &how);
    ck_assert(has_text(&s, "; too short to tell apart"));
    drop(&s);
    how = defaults();
    in.restraint = SW_RESTRAINT_HELD;
    s = drawn("held", &in, &how);
    ck_assert(has_text(&s, "from above: hollow arrow side pull</text>"));
    ck_assert(has_text(&s, "upright arrows"));
    drop(&s);
    in.strap = SW_STRAP_RIGID;
    in.tilt_deg = 0;
    s = drawn("none", &in, &how);
    ck_assert(has_text(&s, "from above:</text>"));
    drop(&s);
}
END_TEST

/* At the sizes of a telephone, a window and a projector, straps whose units
 * lay on the first number of the rule. */
START_TEST(rule)
{
    static const struct {
        const char *thread, *lubrication;
        double torque, a, b, part, heel;
        int nose, support, show;
    } row[] = {{"5/8-11 UNC", "mu-class-b", 66.3, 95.8, 86.2, 47.4, 48.274,
                SW_NOSE_FLAT, SW_HEEL_SERRATED, SW_SHOW_SI_FIRST},
               {"M24", "cadmium", 581.8, 291.7, 37, 149.8, 122.395,
                SW_NOSE_BALL, SW_HEEL_SCREW, SW_SHOW_US_FIRST}};
    static const double size[][2] = {
        {330, 13}, {700, 13}, {860, 13}, {1600, 20}};
    for (int i = 0; i < 8; i++) {
        sw_strap_in in;
        sw_strap_defaults(&in);
        SET(in.thread, row[i & 1].thread);
        SET(in.lubrication, row[i & 1].lubrication);
        in.torque_Nm = row[i & 1].torque;
        in.stud_to_toe_mm = row[i & 1].a;
        in.stud_to_heel_mm = row[i & 1].b;
        in.part_height_mm = row[i & 1].part;
        in.heel_height_mm = row[i & 1].heel;
        in.seat = SW_SEAT_SPHERICAL;
        in.nose = row[i & 1].nose;
        in.heel = row[i & 1].support;
        sw_strap_drawing_in how = defaults();
        how.width_px = size[i >> 1][0];
        how.text_px = size[i >> 1][1];
        how.vial_mm_per_m = 20;
        how.sideways = 10;
        how.show = row[i & 1].show;
        sheet s = drawn("rule", &in, &how);
        check_sheet(i, s.made, &how);
        drop(&s);
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
            check_sheet(i, d, &how);
        else
            check_error("extreme", &err, err.code);
        sw_drawing_free(d);
    }
}
END_TEST

int main(void)
{
    return RUN_TESTS("strap drawing", upright, pushes, slope, heights,
                     side_pull, no_side_pull, plan, level, nut_leans, words,
                     still, cut, same, refused, sweep, causes, arrows, rule,
                     extremes);
}
