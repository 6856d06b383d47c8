/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Hold map: every point has a mark of the right shape, the worst is said, words
 * keep off one another whatever their number, and nothing foreign is drawn.
 */
#include "../job/jobs.h"

typedef struct {
    sw_job *job;
    sw_fixture *fixture;
    sw_hold *hold;
} judged;

static judged judge(const char *text)
{
    judged g;
    sw_error err;
    sw_hold_in in;
    g.job = read_job(text);
    g.fixture = sw_job_fixture(g.job, 0, &err);
    must(g.fixture, "%s", err.message);
    ck_assert_int_eq(sw_job_hold_in(g.job, 0, &in, &err), 0);
    g.hold = sw_hold_new(g.fixture, &in, NULL, NULL, &err);
    must(g.hold, "%s", err.message);
    return g;
}

static void release(judged *g)
{
    sw_hold_free(g->hold);
    sw_fixture_free(g->fixture);
    sw_job_free(g->job);
}

static int count(const char *svg, const char *what)
{
    int n = 0;
    for (const char *at = svg; (at = strstr(at, what)); at += strlen(what))
        n++;
    return n;
}

/* Lines over the whole part: more than 500 points, some of them lost. */
static const char crowded[] =
    "strapwise: 1\n" PART SUPPORTS
    "stops:\n  - {place: [0 mm, 40 mm], push: +x}\n"
    "clamps:\n"
    "  - {name: left & <right>, kind: force, place: [60 mm, 30 mm], force: 900 "
    "N}\n"
    "  - {kind: force, place: [140 mm, 30 mm], force: 800 N}\n"
    "operations:\n  - name: crowd\n    cut: {kind: force, force x: 60 N, force "
    "y: 90 N, force z: 40 N}\n    path:\n      step: 6 mm\n      lines:\n"
    "        - [[10 mm, 10 mm], [190 mm, 10 mm]]\n"
    "        - [[10 mm, 16 mm], [190 mm, 16 mm]]\n"
    "        - [[10 mm, 22 mm], [190 mm, 22 mm]]\n"
    "        - [[10 mm, 28 mm], [190 mm, 28 mm]]\n"
    "        - [[10 mm, 34 mm], [190 mm, 34 mm]]\n"
    "        - [[10 mm, 40 mm], [190 mm, 40 mm]]\n"
    "        - [[10 mm, 46 mm], [190 mm, 46 mm]]\n"
    "        - [[10 mm, 52 mm], [190 mm, 52 mm]]\n"
    "        - [[10 mm, 58 mm], [190 mm, 58 mm]]\n"
    "        - [[10 mm, 64 mm], [190 mm, 64 mm]]\n"
    "        - [[10 mm, 70 mm], [190 mm, 70 mm]]\n"
    "        - [[10 mm, 76 mm], [190 mm, 76 mm]]\n"
    "        - [[10 mm, 82 mm], [190 mm, 82 mm]]\n"
    "        - [[10 mm, 88 mm], [190 mm, 88 mm]]\n"
    "        - [[10 mm, 94 mm], [190 mm, 94 mm]]\n"
    "        - [[10 mm, 100 mm], [190 mm, 100 mm]]\n"
    "        - [[10 mm, 106 mm], [190 mm, 106 mm]]\n";

START_TEST(marks)
{
    sw_error err;
    judged g = judge(crowded);
    const int points = (int)sw_job_operation(g.job, 0, NULL).points;
    ck_assert_int_gt(points, 500);
    int want[3] = {0, 0, 0};
    for (int i = 0; i < points; i++) {
        const double m = sw_hold_point(g.hold, i, NULL).margin;
        want[m >= 2 ? 0 : m >= 1 ? 1 : 2]++;
    }
    ck_assert(want[0] > 20 && want[1] > 20);
    sw_drawing *d = sw_hold_map(g.job, 0, g.hold, NULL, &err);
    must(d, "%s", err.message);
    const char *svg = sw_drawing_svg(d);
    /* and in the legend one of each that there is */
    ck_assert_int_eq(count(svg, "class=\"holds\""), want[0] + 1);
    ck_assert_int_eq(count(svg, "class=\"little\""), want[1] + 1);
    ck_assert_int_eq(count(svg, "class=\"goes\""), want[2] + (want[2] > 0));
    ck_assert_int_eq(count(svg, "below 1: the cut moves it"), want[2] > 0);
    ck_assert_int_eq(count(svg, "does not rest"), 0);
    /* every number has a line to its point */
    ck_assert_int_eq(count(svg, "class=\"leader\""),
                     count(svg, "class=\"margin\""));
    ck_assert_int_eq(count(svg, ">x, y mm<"), 1);
    ck_assert_int_eq(count(svg, ">x, y in<"), 1);
    ck_assert_int_eq(count(svg, "class=\"support\""), 3 + 3); /* with names */
    ck_assert_int_eq(count(svg, ">worst: "), 1);
    ck_assert_int_eq(count(svg, "left &amp; &lt;right&gt;"), 1);
    ck_assert_int_ge(count(svg, "class=\"margin\""), 6);
    ck_assert_int_eq(count(svg, "nan"), 0);
    ck_assert_int_ge(count(svg, ">does not hold"), 1);
    sw_drawing *again = sw_hold_map(g.job, 0, g.hold, NULL, &err);
    ck_assert_str_eq(svg, sw_drawing_svg(again));
    sw_drawing_free(again);
    sw_drawing_free(d);
    release(&g);
}
END_TEST

/* Words of the drawing, where they stand; widths as of narrow letters, so that
 * what overlaps here overlaps in any face. */
typedef struct {
    double left, right, top, bottom;
} box;

static double value_of(const char *at, const char *name, double open)
{
    const char *end = strchr(at, '>');
    const char *found = strstr(at, name);
    if (!found || found > end)
        return open;
    char text[40] = "";
    sscanf(found + strlen(name), "%39[-0-9.e]", text);
    return sw_number(text, "number", NULL).value;
}

static int words_of(const char *svg, box *b, int most)
{
    int n = 0;
    for (const char *at = svg; (at = strstr(at, "<text ")); at++) {
        const char *end = strchr(at, '>');
        const int in_map =
            (strstr(at, "class=\"") && strstr(at, "class=\"") < end);
        if (!in_map)
            continue;
        const double size = value_of(at, "font-size=\"", 13);
        const double x = value_of(at, " x=\"", 0), y = value_of(at, " y=\"", 0);
        const size_t letters = strcspn(end + 1, "<");
        const double half = 0.22 * size * (double)letters;
        ck_assert_int_lt(n, most);
        b[n++] = (box){x - half, x + half, y - 0.7 * size, y};
    }
    return n;
}

START_TEST(words)
{
    enum { MOST = 200 };
    box b[MOST];
    judged g = judge(crowded);
    sw_drawing *d = sw_hold_map(g.job, 0, g.hold, NULL, NULL);
    const int n = words_of(sw_drawing_svg(d), b, MOST);
    ck_assert_int_ge(n, 13);
    for (int i = 0; i < n; i++) {
        ck_assert(b[i].left > 0 && b[i].right < 860 && b[i].top > 0);
        for (int k = 0; k < i; k++)
            must(b[i].left >= b[k].right || b[k].left >= b[i].right ||
                     b[i].top >= b[k].bottom || b[k].top >= b[i].bottom,
                 "words %d and %d overlap", i, k);
    }
    sw_drawing_free(d);
    release(&g);
}
END_TEST

START_TEST(no_rest)
{
    judged g = judge("strapwise: 1\n" PART SUPPORTS
                     "clamps:\n  - {kind: force, place: [190 mm, 140 mm], "
                     "force: 3 kN}\n" OPERATIONS);
    ck_assert_int_eq(sw_hold_total(g.hold, NULL).rest, SW_REST_ROCKS);
    sw_drawing *d = sw_hold_map(g.job, 0, g.hold, NULL, NULL);
    ck_assert(strstr(sw_drawing_svg(d), "it rocks before the cut"));
    ck_assert_int_eq(count(sw_drawing_svg(d), ">worst: "), 0);
    ck_assert_int_eq(count(sw_drawing_svg(d), "below 1"), 0);
    ck_assert_int_eq(count(sw_drawing_svg(d), ">worst point<"), 0);
    ck_assert_int_eq(count(sw_drawing_svg(d), "class=\"none\""),
                     1 + (int)sw_job_operation(g.job, 0, NULL).points);
    sw_drawing_free(d);
    release(&g);
}
END_TEST

/* A long part: few steps across it, two numbers on its edge all the same. */
START_TEST(edges)
{
    judged g = judge("strapwise: 1\n"
                     "part: {size: [900 mm, 20 mm], thickness: 10 mm, weight: "
                     "9 N}\n"
                     "supports:\n  - place: [0 mm, 0 mm]\n  - place: [900 mm, "
                     "0 mm]\n  - place: [450 mm, 20 mm]\n"
                     "operations:\n  - {cut: {kind: force, force x: 1 N}, "
                     "path: {points: [[450 mm, 9 mm]]}}\n");
    sw_drawing *d = sw_hold_map(g.job, 0, g.hold, NULL, NULL);
    const char *svg = sw_drawing_svg(d);
    int edge[2] = {0, 0}; /* numbers left of the frame, and right */
    for (const char *at = svg; (at = strstr(at, "<text ")); at++) {
        const char *end = strchr(at, '>');
        const double x = value_of(at, " x=\"", 0);
        if (!strchr("-.0123456789", end[1]))
            continue;
        edge[0] += x < 60 && strstr(at, "\"end\"") < end;
        edge[1] += x > 806;
    }
    ck_assert_int_ge(edge[0], 2);
    ck_assert_int_ge(edge[1], 2);
    sw_drawing_free(d);
    release(&g);
}
END_TEST

START_TEST(how)
{
    sw_error err;
    sw_hold_map_in in;
    judged g = judge(JOB);
    sw_hold_map_defaults(&in);
    sw_hold_map_defaults(NULL);
    in.show = SW_SHOW_US_FIRST;
    in.width_px = 600;
    sw_drawing *d = sw_hold_map(g.job, 0, g.hold, &in, &err);
    must(d, "%s", err.message);
    ck_assert(strstr(sw_drawing_svg(d), "x, y in"));
    ck_assert(strstr(sw_drawing_svg(d), "width=\"600\""));
    sw_drawing_free(d);
    in.width_px = 200;
    ck_assert_ptr_null(sw_hold_map(g.job, 0, g.hold, &in, &err));
    check_refused("width", &err, SW_ERR_RANGE, "width_px");
    in.width_px = 300;
    in.text_px = 20;
    ck_assert_ptr_null(sw_hold_map(g.job, 0, g.hold, &in, &err));
    check_refused("text", &err, SW_ERR_RANGE, "text_px");
    ck_assert_ptr_null(sw_hold_map(g.job, 1, g.hold, NULL, &err));
    check_refused("operation", &err, SW_ERR_RANGE, "operation");
    ck_assert_ptr_null(sw_hold_map(NULL, 0, g.hold, NULL, &err));
    check_refused("job", &err, SW_ERR_NULL, "job");
    ck_assert_ptr_null(sw_hold_map(g.job, 0, NULL, NULL, &err));
    check_refused("hold", &err, SW_ERR_NULL, "hold");
    judged other = judge(crowded);
    ck_assert_ptr_null(sw_hold_map(other.job, 0, g.hold, NULL, &err));
    check_refused("other", &err, SW_ERR_CONFLICT, "hold");
    release(&other);
    release(&g);
}
END_TEST

int main(void)
{
    return RUN_TESTS("hold_map", marks, words, no_rest, edges, how);
}
