/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap marks: what lies beside the strap in its drawing and says how to read
 * it. Distances, rule and bars are measured against the arrows, whose places
 * and lengths are those of the answer (test_strap_drawing.c); what leans is
 * measured against the strap; warnings stand there exactly when they are given.
 */
#include "../clamp/strap_question.h"
#include "../random.h"
#include "drawn_strap.h"

/* ---- distances and rule ---- */

/* px in a mm, and where the stud stands: a 30, b 60 on a level strap. */
static double mm_of(const sheet *s, double *stud)
{
    const double heel = read_arrow(s, "heel-force", 0).tip.x;
    const double px = (read_arrow(s, "toe-force", 0).tip.x - heel) / 90;
    *stud = heel + 60 * px;
    return px;
}

/* The word of a distance lies under its own half: heel 60 mm to the left, toe
 * 30 mm to the right. */
START_TEST(distances)
{
    static const double width[] = {330, 860, 1600};
    for (int i = 0; i < 3; i++)
        for (int show = SW_SHOW_SI_FIRST; show <= SW_SHOW_US_FIRST; show++) {
            const int us = show == SW_SHOW_US || show == SW_SHOW_US_FIRST;
            const int narrow = width[i] < 500; /* no names, one system */
            const sw_strap_in in = base_strap(9000, 0);
            sw_strap_drawing_in how = defaults();
            how.width_px = width[i];
            how.show = show;
            sheet s = drawn("distances", &in, &how);
            double stud;
            const double px = mm_of(&s, &stud);
            for (int toe = 0; toe < 2; toe++) {
                char said[60], text[100];
                sw_say(toe ? 30 : 60, SW_KIND_LENGTH,
                       !narrow ? show
                       : us    ? SW_SHOW_US
                               : SW_SHOW_SI,
                       said, sizeof said);
                snprintf(text, sizeof text, "%s%s",
                         narrow ? ""
                         : toe  ? "stud to toe "
                                : "stud to heel ",
                         said);
                const element *e = find_text(&s.d, text);
                must(e != NULL, "%g px: no %s", width[i], text);
                const double middle = stud + px * (toe ? 15 : -30);
                must(fabs(e->at.x - middle) <
                         (width[i] > 1000 ? DIGIT : 30 * px),
                     "%g px: \"%s\" at %g, want %g", width[i], text, e->at.x,
                     middle);
            }
            drop(&s);
        }
}
END_TEST

/* Longest mark of the rule at x, over or under its line. */
static double mark_at(const element *line, int inch, double x)
{
    double most = 0;
    for (const element *e = line + 1; e->group == line->group; e++) {
        const double up = e->at.y - e->to.y;
        if (is_a(e, "line") && (up > 0) == inch && fabs(e->at.x - x) <= DIGIT)
            most = fmax(most, fabs(up));
    }
    return most;
}

/* Zero is the stud; a number stands where that many mm or inches end, under or
 * over the longest of marks that all are tenths of a step. */
static void check_edge(const sheet *s, int inch)
{
    double stud, least = INFINITY, longest = 0, before = -INFINITY;
    const double px = mm_of(s, &stud) * (inch ? 25.4 : 1);
    const element *line = first(group_of(s, "scale"), "line");
    int right = 0, left = 0, zero = 0;
    double step = INFINITY;
    for (const element *e = line + 1; e->group == line->group; e++) {
        const double up = is_a(e, "line") ? e->at.y - e->to.y : 0;
        if (up == 0 || (up > 0) != inch)
            continue;
        near(e->at.x, e->to.x, 0, 0);
        least = fmin(least, e->at.x - before);
        longest = fmax(longest, fabs(up));
        before = e->at.x;
    }
    for (const element *e = line; e->group == line->group; e++) {
        if (!is_a(e, "text") || (e->at.y < line->at.y) != inch)
            continue;
        if (strcmp(e->anchor, "middle") != 0) {
            ck_assert_str_eq(e->text, inch ? "in" : "mm");
            continue;
        }
        const double v = sw_number(e->text, "number", NULL).value;
        near(fabs(e->at.x - stud), v * px, 2 * DIGIT, 2e-4);
        near(mark_at(line, inch, e->at.x), longest, DIGIT, 0);
        if (v > 0)
            step = fmin(step, v * px);
        right += e->at.x > stud + 1;
        left += e->at.x < stud - 1;
        zero += v == 0;
    }
    must(zero == 1 && right > 0 && left > 0, "%d, %d, %d", left, zero, right);
    const double tenths = 10 * least / step;
    near(tenths, round(tenths), 0.05, 0);
    ck_assert(tenths < 5.5);
}

START_TEST(rule)
{
    static const double width[] = {330, 860, 1600};
    for (int i = 0; i < 3; i++) {
        const sw_strap_in in = base_strap(9000, 0);
        sw_strap_drawing_in how = defaults();
        how.width_px = width[i];
        sheet s = drawn("rule", &in, &how);
        check_edge(&s, 0);
        check_edge(&s, 1);
        drop(&s);
    }
}
END_TEST

/* ---- bars ---- */

/* "upright arrows: 4000 N", in SI: the force; *end: behind it. */
static double force_in(const char *text, const char *before, const char **end)
{
    char number[40];
    must(strncmp(text, before, strlen(before)) == 0, "%s", text);
    const char *from = text + strlen(before), *unit = strchr(from, ' ');
    must(unit && (size_t)(unit - from) < sizeof number, "%s", text);
    memcpy(number, from, (size_t)(unit - from));
    number[unit - from] = '\0';
    const int kilo = strncmp(unit, " kN", 3) == 0;
    must(kilo || strncmp(unit, " N", 2) == 0, "%s", text);
    *end = unit + 2 + kilo;
    return (kilo ? 1000 : 1) * sw_number(number, "force", NULL).value;
}

/* px in a newton by a bar and the words beside it. */
static double read_bar(const element *from, const char *before,
                       const char **end)
{
    const rectangle bar = box_of(first(from, "polygon"));
    const element *e = first(from, "text");
    ck_assert(e->at.x > bar.right);
    return (bar.right - bar.left) / force_in(e->text, before, end);
}

/* The bar is as long as an arrow of that force would be: the stud's, or the
 * side pull's, which is so many times longer. */
START_TEST(bars)
{
    static const double sideways[] = {1, 2.5, 5};
    static const double preload[] = {900, 9000, 30000};
    for (int i = 0; i < 9; i++) {
        const double N = preload[i / 3], times = sideways[i % 3];
        sw_strap_in in = base_strap(N, 3);
        in.mu_toe = 0.3;
        sw_strap_drawing_in how = defaults();
        how.sideways = times;
        how.show = SW_SHOW_SI;
        sheet s = drawn("bars", &in, &how);
        const double pull = fabs(sw_strap(&in, NULL).side_pull_N);
        const double px = read_arrow(&s, "stud-force", 0).length / N;
        const double wide = read_arrow(&s, "side-pull", 0).length / pull;
        near(wide, times * px, DIGIT / pull, 1e-3);
        const char *end;
        const element *e = find_group(&s.d, "scale", 1);
        near(read_bar(e, "upright arrows: ", &end), px, 0, 1e-3);
        ck_assert_str_eq(end, "");
        e = first(first(e, "text") + 1, "polygon");
        near(read_bar(e, "along the table: ", &end), times * px, 0, 1e-3);
        ck_assert_str_eq(end, times == 1     ? ""
                              : times == 2.5 ? ", drawn 2.5 times longer"
                                             : ", drawn 5 times longer");
        drop(&s);
        how.views = SW_VIEW_PLAN;
        s = drawn("plan", &in, &how);
        near(read_bar(group_of(&s, "scale"), "along the table: ", &end),
             times * px, 0, 1e-3);
        drop(&s);
    }
}
END_TEST

/* ---- what leans ---- */

static int is_high(const sheet *s, const char *class_of)
{
    int high = 0;
    for (const element *e = s->d.e; e->name[0]; e++)
        high += is_a(e, "text") && strcmp(e->class_of, class_of) == 0 &&
                strcmp(e->text, "on the high side") == 0;
    return high;
}

/* The end whose contact stands higher on the sheet. */
START_TEST(high_side)
{
    static const double tilt[] = {-8, -0.3, 0, 0.3, 8};
    for (int i = 0; i < 5; i++) {
        sw_strap_in in = base_strap(9000, tilt[i]);
        sheet s = drawn("high side", &in, NULL);
        const double drop_px = read_arrow(&s, "toe-force", 0).tip.y -
                               read_arrow(&s, "heel-force", 0).tip.y;
        must(fabs(drop_px) > 0.5 || tilt[i] == 0, "%g", drop_px);
        ck_assert_int_eq(is_high(&s, "heel-force"), drop_px > 0.5);
        ck_assert_int_eq(is_high(&s, "toe-force"), drop_px < -0.5);
        ck_assert_int_eq(is_high(&s, "stud-force"), 0);
        drop(&s);
    }
}
END_TEST

static double off_line(point p, point a, point b)
{
    return fabs((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) /
           hypot(b.x - a.x, b.y - a.y);
}

/* A level line from the high end of the strap's upper face, and that face: the
 * strap falls away under the line. */
START_TEST(wedge)
{
    for (double tilt = -17; tilt < 18; tilt += 2) {
        sw_strap_in in = base_strap(9000, tilt);
        in.part_height_mm = 80;
        in.stud_length_mm = 120;
        in.nose = SW_NOSE_FLAT;
        sheet s = drawn("wedge", &in, NULL);
        const element *e = first(group_of(&s, "tilt"), "polygon");
        const point *p = e->p;
        const point *bar = first(group_of(&s, "strap"), "polygon")->p;
        ck_assert_int_eq(e->points, 3);
        near(p[1].y, p[0].y, DIGIT, 0);
        near(p[2].x, p[1].x, DIGIT, 0);
        ck_assert(p[2].y > p[1].y + 1);
        must((p[1].x > p[0].x) == (tilt > 0), "%g deg: at the low end", tilt);
        const double run = p[2].x - p[0].x;
        near((p[2].y - p[0].y) / run, tan(tilt * TO_RAD), 0,
             4 * DIGIT / fabs(run * tan(tilt * TO_RAD)));
        /* bar: 0 and 1 below, 2 and 3 above */
        ck_assert(off_line(p[0], bar[2], bar[3]) < 2 * DIGIT);
        ck_assert(off_line(p[2], bar[2], bar[3]) < 2 * DIGIT);
        /* the dashed line is the level one */
        const element *line = first(e, "line");
        near(line->at.y, p[0].y, DIGIT, 0);
        near(line->to.y, p[0].y, DIGIT, 0);
        drop(&s);
    }
    const sw_strap_in in = base_strap(9000, 0);
    sheet s = drawn("level", &in, NULL);
    ck_assert_ptr_null(group_of(&s, "tilt"));
    drop(&s);
}
END_TEST

/* The stud's middle is a beam: a cubic, flat at a foot that is held; without
 * moment, so without a square term, at one that rocks. x across, h up from the
 * foot, both over the free length; at the nut it has the nut's place and lean.
 */
START_TEST(stud)
{
    enum { PARTS = 16 };
    static const struct {
        double tilt, rim;
        int foot;
    } row[] = {{3, 500, SW_FOOT_HELD},     {-3, 500, SW_FOOT_HELD},
               {6, 5, SW_FOOT_HELD},       {3, 500, SW_FOOT_ROCKING},
               {-3, 500, SW_FOOT_ROCKING}, {6, 5, SW_FOOT_ROCKING},
               {-6, 5, SW_FOOT_ROCKING}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_strap_in in = base_strap(3000, row[i].tilt);
        in.rim_radius_mm = row[i].rim;
        in.foot = row[i].foot;
        in.restraint = SW_RESTRAINT_HELD;
        sheet s = drawn("stud", &in, NULL);
        const arrow toe = read_arrow(&s, "toe-force", 0);
        const arrow heel = read_arrow(&s, "heel-force", 0);
        const double px = (toe.tip.x - heel.tip.x) / 90, l = 80 * px;
        const element *e = first(group_of(&s, "stud"), "polygon");
        const point *nut = first(group_of(&s, "nut"), "polygon")->p;
        ck_assert_int_eq(e->points, 2 * PARTS + 4);
        const point *p = e->p, *q = e->p + e->points - 1;
        const double axis = heel.tip.x + 60 * px;
        const point top = {(p[PARTS].x + q[-PARTS].x) / 2,
                           (p[PARTS].y + q[-PARTS].y) / 2};
        const double D = (top.x - axis) / l;
        near(D * 80, sw_strap(&in, NULL).nut_travel_mm, 0.02, 0);
        /* toward the toe for a nut whose toe side is low */
        const double lean = atan2(nut[1].y - nut[0].y, nut[1].x - nut[0].x);
        const double T = tan(lean);
        const int rocks = row[i].foot == SW_FOOT_ROCKING;
        const double one = rocks ? (3 * D - T) / 2 : 0;
        const double two = rocks ? 0 : 3 * D - T;
        const double three = rocks ? (T - D) / 2 : T - 2 * D;
        for (int k = 0; k <= PARTS; k++) {
            const point left = p[k], right = q[-k];
            const double h = 1 - ((left.y + right.y) / 2 - top.y) / l;
            if (h <= 0.01)
                continue;
            const double x = h * (one + h * (two + h * three));
            const double slope = one + h * (2 * two + h * 3 * three);
            near((left.x + right.x) / 2 - axis, l * x, 3 * DIGIT, 0);
            near((right.y - left.y) / (right.x - left.x), slope, 2e-3, 0);
            near(hypot(right.x - left.x, right.y - left.y), 12 * px, DIGIT, 0);
        }
        drop(&s);
    }
}
END_TEST

/* ---- keys ---- */

/* A key lies as the arrow that it stands for, in the plan and in the answer. */
static void check_key(const sheet *s, const char *class_of, double right,
                      double down)
{
    char key[40];
    snprintf(key, sizeof key, "%s key", class_of);
    const arrow a = read_arrow(s, class_of, 0), k = read_arrow(s, key, 0);
    const double most = 4 * DIGIT / fmin(k.length, a.length);
    near_in(key, (k.tip.x - k.tail.x) / k.length, right, most, 0);
    near_in(key, (k.tip.y - k.tail.y) / k.length, down, most, 0);
    near_in(class_of, (a.tip.x - a.tail.x) / a.length, right, most, 0);
    near_in(class_of, (a.tip.y - a.tail.y) / a.length, down, most, 0);
}

/* In the plan the part lies to the right of the stud, so its right hand, seen
 * from the stud, is down. */
START_TEST(keys)
{
    static const double tilt[] = {-2, -1, 1, 2, 3};
    int toward = 0, away = 0;
    for (int i = 0; i < 5; i++) {
        sw_strap_in in = base_strap(9000, tilt[i]);
        in.mu_toe = 0.5;
        in.heel = SW_HEEL_SCREW;
        in.restraint = SW_RESTRAINT_FREE;
        const sw_strap_out out = sw_strap(&in, NULL);
        ck_assert(out.drag_N > 0);
        const double net = hypot(out.drag_N, out.side_pull_N);
        sw_strap_drawing_in how = defaults();
        how.views = SW_VIEW_PLAN;
        how.sideways = 3;
        sheet s = drawn("keys", &in, &how);
        ck_assert(!has_text(&s, "should be longer"));
        check_key(&s, "nut-drag", 0, 1);
        check_key(&s, "side-pull", out.side_pull_N > 0 ? -1 : 1, 0);
        check_key(&s, "net", -out.side_pull_N / net, out.drag_N / net);
        toward += out.side_pull_N > 0;
        away += out.side_pull_N < 0;
        drop(&s);
        in.restraint = SW_RESTRAINT_HELD;
        s = drawn("held", &in, &how);
        ck_assert_ptr_null(group_of(&s, "nut-drag key"));
        ck_assert_ptr_null(group_of(&s, "net key"));
        drop(&s);
    }
    ck_assert(toward > 0 && away > 0);
}
END_TEST

/* ---- warnings ---- */

static const struct {
    uint64_t bit;
    const char *text;
} mark[] = {
    {SW_WARN_TOE_SLIDES, "the toe slides on the part"},
    {SW_WARN_STRAP_WALKS, "the strap walks: toe and heel cannot hold it"},
    {SW_WARN_STUD_YIELDS, "the stud is past its yield"},
    {SW_WARN_STRAP_YIELDS, "the strap is past its yield"},
    {SW_WARN_HEEL_LOW, "heel low: raise it above the toe"},
    {SW_WARN_SEAT_ANGLE, "the tilt is more than the spherical seat takes up"},
    {SW_WARN_NUT_TRAVEL, "the nut meets the end of its slot"},
    {SW_WARN_MEASURES, "the measures do not fit together"},
};
enum { MARKS = sizeof mark / sizeof mark[0] };

static sw_strap_in troubled(randoms *r)
{
    sw_strap_in in =
        base_strap(random_log(r, 500, 60000), random_between(r, -5, 5));
    in.stud_to_toe_mm = random_log(r, 8, 150);
    in.stud_to_heel_mm = random_log(r, 8, 150);
    in.part_height_mm = 60;
    in.stud_length_mm = random_between(r, 70, 130);
    in.seat = 1 + random_below(r, 2);
    in.heel = 1 + random_below(r, 3);
    in.mu_toe = random_between(r, 0, 0.4);
    if (in.heel != SW_HEEL_SERRATED)
        in.mu_heel = random_between(r, 0, 0.2);
    else
        in.mu_heel = SW_UNSET;
    in.slot_clearance_mm = random_between(r, 0, 3);
    in.foot = 1 + random_below(r, 2);
    return in;
}

/* A triangle and bold words for each, where the bit is set and only there. */
START_TEST(marks)
{
    randoms r = {20250321};
    int seen[MARKS] = {0}, answered = 0;
    for (int i = 0; answered < 300; i++) {
        must(i < 1500, "too few straps stand");
        const sw_strap_in in = troubled(&r);
        const sw_strap_out out = sw_strap(&in, NULL);
        if (out.status)
            continue;
        answered++;
        sw_strap_drawing_in how = defaults();
        how.width_px = 2000; /* each in one line */
        sheet s = drawn("marks", &in, &how);
        int wanted = 0, triangles = 0;
        for (int k = 0; k < MARKS; k++) {
            const int bit = (out.warnings & mark[k].bit) != 0;
            const element *e = find_text(&s.d, mark[k].text);
            must((e != NULL) == bit, "strap %d: \"%s\" is %s", i, mark[k].text,
                 e ? "said" : "missing");
            must(!e || (e->bold && is_a(e - 1, "polygon") &&
                        e[-1].points == 3 && box_of(e - 1).right < e->at.x),
                 "strap %d: \"%s\" has no triangle", i, mark[k].text);
            wanted += bit;
            seen[k] += bit;
        }
        for (const element *e = s.d.e; e->name[0]; e++)
            triangles += is_a(e, "polygon") && e->points == 3 &&
                         strcmp(e->class_of, "caption") == 0;
        ck_assert_int_eq(triangles, wanted);
        drop(&s);
    }
    for (int k = 0; k < MARKS; k++)
        must(seen[k] >= 3 && seen[k] <= answered - 3, "\"%s\": %d of %d",
             mark[k].text, seen[k], answered);
}
END_TEST

int main(void)
{
    return RUN_TESTS("strap marks", distances, rule, bars, high_side, wedge,
                     stud, keys, marks);
}
