/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Svg: the writer behind every drawing, and the graduated edges of a plot. Not
 * exported, so the sources are compiled into this program.
 */
#include "sheet/scale.h"

#include "../common.h"

static char *finished(sw__svg *s)
{
    sw_error err;
    sw_drawing *d = sw__svg_finish(s, &err);
    must(d != NULL, "%s", err.message);
    const char *text = sw_drawing_svg(d);
    char *copy = malloc(strlen(text) + 1);
    strcpy(copy, text);
    sw_drawing_free(d);
    return copy;
}

static int count(const char *text, const char *part)
{
    int n = 0;
    for (const char *at = text; (at = strstr(at, part)); at += strlen(part))
        n++;
    return n;
}

#define HOLDS(text, part)                                                      \
    must(strstr(text, part) != NULL, "\"%s\" is not in\n%s", part, text)

/* What a user wrote cannot leave its element, whatever it is. */
START_TEST(escaped)
{
    sw__svg s;
    sw__svg_start(&s, 100, 50, "<script>&\"x\"", "a\nb\x1b[31m\x7f");
    sw__svg_text(&s, (sw__point){1, 2}, "start", "",
                 "</text><b>\xff\xc3\xa4\xed\xa0\x80\xef\xbf\xbf\xc2\x85'");
    char *text = finished(&s);
    HOLDS(text, "<title>&lt;script&gt;&amp;&quot;x&quot;</title>");
    HOLDS(text, "<desc>a?b?[31m?</desc>");
    HOLDS(text, "<text x=\"1\" y=\"2\">&lt;/text&gt;&lt;b&gt;?\xc3\xa4"
                "?"
                "?"
                "?"
                "?"
                "?"
                "'</text>");
    HOLDS(text, "viewBox=\"0 0 100 50\"");
    ck_assert_str_eq(text + strlen(text) - 7, "</svg>\n");
    free(text);
}
END_TEST

/* Two decimals, a point whatever the locale, never "-0" nor an exponent. */
START_TEST(numbers)
{
    sw__svg s;
    sw__svg_start(&s, 10, 10, "t", "d");
    sw__svg_line(&s, (sw__point){1.2345, -0.001}, (sw__point){1e-9, 123456.789},
                 "stroke=\"#000\"");
    sw__svg_circle(&s, (sw__point){NAN, INFINITY}, 2.005, "");
    const sw__point p[3] = {{1, 2}, {3.999, 4}, {-5.5, 6}};
    sw__svg_polygon(&s, p, 3, "fill=\"none\"");
    sw__svg_polyline(&s, p, 2, "");
    sw__svg_text_turned(&s, (sw__point){7.125, 8}, -90, "", "up");
    char *text = finished(&s);
    HOLDS(text, "<line x1=\"1.23\" y1=\"0\" x2=\"0\" y2=\"123456.79\" "
                "stroke=\"#000\"/>");
    HOLDS(text, "<circle cx=\"0\" cy=\"0\" r=\"2.01\"/>");
    HOLDS(text, "<polygon points=\"1,2 4,4 -5.5,6\" fill=\"none\"/>");
    HOLDS(text, "<polyline fill=\"none\" points=\"1,2 4,4\"/>");
    HOLDS(text, "<g transform=\"rotate(-90 7.13 8)\">\n<text x=\"7.13\" "
                "y=\"8\" text-anchor=\"middle\">up</text>\n</g>");
    free(text);
}
END_TEST

START_TEST(steps)
{
    static const double row[][3] = {
        {10, 10, 1},  {10, 9, 2},      {100, 5, 20},
        {7, 9, 1},    {0.7, 9, 0.1},   {46, 9, 10},
        {44.4, 9, 5}, {1e-6, 9, 2e-7}, {9.1e7, 9, 2e7}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
        near(sw__scale_step(row[i][0], (int)row[i][1]), row[i][2], 0, 1e-12);
    for (double most = 1e-6; most < 1e9; most *= 1.07) {
        const double step = sw__scale_step(most, 9);
        ck_assert(step * 9 >= most * (1 - 1e-9) && step * 9 < 2.6 * most);
    }
}
END_TEST

/* Ten divisions to a step, numbers at the steps, grid lines but at zero. */
START_TEST(scale)
{
    const sw__box f = {100, 100, 300, 200};
    sw__svg s;
    sw__svg_start(&s, 400, 300, "t", "d");
    sw__scale_draw(&s, &f, SW__EDGE_BOTTOM, 40, 10, "torque, N.m", 1);
    char *text = finished(&s);
    ck_assert_int_eq(count(text, "<line"), 1 + 4 + 41);
    ck_assert_int_eq(count(text, "<text"), 5 + 1);
    HOLDS(text, "<text x=\"200\" y=\"226\" text-anchor=\"middle\">20</text>");
    HOLDS(text, "<line x1=\"200\" y1=\"200\" x2=\"200\" y2=\"211\"/>");
    HOLDS(text, "<line x1=\"225\" y1=\"200\" x2=\"225\" y2=\"207\"/>");
    HOLDS(text, "<line x1=\"205\" y1=\"200\" x2=\"205\" y2=\"204\"/>");
    HOLDS(text, ">torque, N.m</text>");
    free(text);
    sw__svg_start(&s, 400, 300, "t", "d");
    sw__scale_draw(&s, &f, SW__EDGE_RIGHT, 45, 10, "force", 0);
    text = finished(&s);
    ck_assert_int_eq(count(text, "<line"), 1 + 46);
    ck_assert_int_eq(count(text, "<text"), 5 + 1);
    free(text);
}
END_TEST

/* From -30 to 12.5 in steps of 10 with two divisions: marks at -30, -25 ..
 * 10, numbers at -30 .. 10; a place of one's own for the values. */
static double halfway_squared(double value, const void *with)
{
    const double low = *(const double *)with;
    return (value - low) * (value - low) / ((12.5 - low) * (12.5 - low));
}

START_TEST(through_zero)
{
    const sw__box f = {100, 100, 300, 185};
    sw__rule r = {SW__EDGE_LEFT, -30, 12.5, 10, 2, 26, NULL, NULL, NULL};
    sw__svg s;
    sw__svg_start(&s, 400, 300, "t", "d");
    sw__scale_rule(&s, &f, &r);
    char *text = finished(&s);
    ck_assert_int_eq(count(text, "<line"), 1 + 9);
    ck_assert_int_eq(count(text, "<text"), 5);
    /* zero: 30 of 42.5 up, that is 60 of 85 px; the marks twice as long as
     * for 13 px */
    HOLDS(text, "<line x1=\"100\" y1=\"125\" x2=\"78\" y2=\"125\"/>");
    HOLDS(text, "<line x1=\"100\" y1=\"135\" x2=\"86\" y2=\"135\"/>");
    HOLDS(text, "y=\"134\" text-anchor=\"end\">0</text>");
    HOLDS(text, ">-30</text>");
    free(text);
    sw__svg_start(&s, 400, 300, "t", "d");
    sw__scale_grid(&s, &f, &r); /* not at the low end */
    text = finished(&s);
    ck_assert_int_eq(count(text, "<line"), 4);
    HOLDS(text, "<line x1=\"100\" y1=\"125\" x2=\"300\" y2=\"125\"/>");
    free(text);
    ck_assert(sw__scale_room(&r) > 2 * 15 + 26);
    r.share = halfway_squared;
    r.with = &r.low;
    sw__svg_start(&s, 400, 300, "t", "d");
    sw__scale_rule(&s, &f, &r);
    text = finished(&s);
    /* 185 - 85 (30/42.5)^2 */
    HOLDS(text, "<line x1=\"100\" y1=\"142.65\" x2=\"78\" y2=\"142.65\"/>");
    free(text);
    static const int divisions[][2] = {{60, 10}, {25, 5}, {10, 2}, {5, 1}};
    for (int i = 0; i < 4; i++)
        ck_assert_int_eq(sw__scale_divisions(divisions[i][0], 13),
                         divisions[i][1]);
}
END_TEST

START_TEST(nothing)
{
    ck_assert_ptr_null(sw_drawing_svg(NULL));
    sw_drawing_free(NULL);
}
END_TEST

int main(void)
{
    return RUN_TESTS("svg", escaped, numbers, steps, scale, through_zero,
                     nothing);
}
