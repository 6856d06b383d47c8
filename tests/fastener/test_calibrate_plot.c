/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Calibrate plot: what must be on it, and where.
 */
#include "pairs_sets.h"

static sw_calibrate_in question(const char *thread)
{
    sw_calibrate_in in;
    sw_calibrate_defaults(&in);
    SET(in.thread, thread);
    return in;
}

static int count(const char *text, const char *part)
{
    int n = 0;
    for (const char *at = text; (at = strstr(at, part)); at += strlen(part))
        n++;
    return n;
}

static sw_drawing *plot(const char *thread, const sw_pairs *pairs)
{
    sw_error err;
    const sw_calibrate_in in = question(thread);
    sw_drawing *d = sw_calibrate_plot(&in, pairs, &err);
    must(d != NULL, "%s", err.message);
    check_no_error("plot", SW_OK, &err);
    return d;
}

/* Elements open and close in order, attributes are quoted, no stray byte. */
static void check_xml(const char *text)
{
    const char *open[16];
    size_t length[16];
    int depth = 0;
    for (const char *c = text; (c = strchr(c, '<'));) {
        const char *end = c;
        int quoted = 0;
        for (; *end && (quoted || *end != '>'); end++)
            quoted ^= *end == '"';
        must(*end == '>', "an element without end: %.40s", c);
        const size_t n = strcspn(c + 1, " />");
        if (c[1] == '/') {
            const size_t m = strcspn(c + 2, ">");
            must(depth > 0 && m == length[depth - 1] &&
                     memcmp(c + 2, open[depth - 1], m) == 0,
                 "%.20s closes nothing", c);
            depth--;
        } else if (end[-1] != '/') {
            must(depth < 16, "too deep");
            open[depth] = c + 1;
            length[depth++] = n;
        }
        c = end;
    }
    ck_assert_int_eq(depth, 0);
    for (const char *c = text; *c; c++)
        must((unsigned char)*c >= 0x20 || *c == '\n', "control byte");
    ck_assert_int_eq(count(text, "nan"), 0);
    ck_assert_int_eq(count(text, "inf"), 0);
}

/* The line of K by hand: scales to 100 N.m and 45 kN, frame 92 .. 768 by 574
 * .. 164, K 0.2211; it leaves by the right side. */
START_TEST(unlubricated)
{
    sw_pairs *pairs = preloads(dry_kN, DRY);
    sw_drawing *d = plot("M12x1.25", pairs);
    const char *text = sw_drawing_svg(d);
    check_xml(text);
    ck_assert_int_eq(count(text, "<circle"), DRY + 1); /* and in the legend */
    ck_assert_int_eq(count(text, "stands apart"), 0);
    ck_assert_int_eq(count(text, "<title>M12x1.25: nut factor K 0.221"), 1);
    ck_assert_int_eq(count(text, "20 pairs measured"), 1);
    static const char *const caption[] = {
        ">torque on the nut, N\xc2\xb7m<", ">torque, ft-lbf<",
        ">force in the stud, kN<", ">force, lbf<"};
    for (int i = 0; i < 4; i++)
        ck_assert_int_eq(count(text, caption[i]), 1);
    double mean = 0;
    for (int i = 0; i < DRY; i++)
        mean += log(90 / (12 * dry_kN[i])) / DRY;
    const double y = 574 - 100 / (exp(mean) * 12) / 45 * 410;
    char line[80];
    snprintf(line, sizeof line,
             "<line x1=\"92\" y1=\"574\" x2=\"768\" y2=\"%.0f", floor(y));
    ck_assert_int_ge(count(text, line), 1);
    /* the first pair: 90 N.m, 23.6 kN */
    ck_assert_int_eq(count(text, "<circle cx=\"700.4\" cy=\"358.98\""), 1);
    /* the same question, the same bytes */
    sw_drawing *again = plot("M12x1.25", pairs);
    ck_assert_str_eq(sw_drawing_svg(again), text);
    sw_drawing_free(again);
    sw_drawing_free(d);
    sw_pairs_free(pairs);
}
END_TEST

START_TEST(apart)
{
    sw_pairs *pairs = preloads(oiled_kN, OILED);
    add_pair(pairs, 90, 60000);
    sw_drawing *d = plot("M12", pairs);
    const char *text = sw_drawing_svg(d);
    check_xml(text);
    ck_assert_int_eq(count(text, "<circle"), OILED + 1);
    ck_assert_int_eq(count(text, "stands apart"), 1);
    ck_assert_int_eq(count(text, ">11</text>"), 1); /* its number */
    sw_drawing_free(d);
    sw_pairs_free(pairs);
}
END_TEST

/* Text of the file, however nasty, and few pairs with a band beyond the
 * plot. */
START_TEST(strange)
{
    static const char text[] = "name: </text><script>&\"'\n"
                               "lubrication: \xc3\xb6lig <i>\n"
                               "thread: 1/4-20\nprevailing: 8 in-lbf\n"
                               "torque [in-lbf],force [lbf]\n40,70\n60,150\n";
    sw_pairs *pairs = new_pairs();
    ck_assert_int_eq(sw_pairs_read(pairs, text, strlen(text), NULL, NULL), 0);
    sw_drawing *d = plot("", pairs);
    const char *svg = sw_drawing_svg(d);
    check_xml(svg);
    ck_assert_int_eq(count(svg, "<script"), 0);
    ck_assert_int_eq(count(svg, "&lt;/text&gt;&lt;script&gt;&amp;&quot;'; "
                                "\xc3\xb6lig &lt;i&gt;"),
                     1);
    ck_assert_int_eq(count(svg, "torque, in-lbf"), 1);
    ck_assert_int_eq(count(svg, "force in the stud, N<"), 1);
    sw_drawing_free(d);
    sw_pairs_free(pairs);
    /* the ends of what may be measured */
    pairs = new_pairs();
    add_pair(pairs, 1e6, 1e-3);
    add_pair(pairs, 1e-6, 1e8);
    d = plot("M12", pairs);
    check_xml(sw_drawing_svg(d));
    sw_drawing_free(d);
    sw_pairs_free(pairs);
    pairs = new_pairs();
    add_pair(pairs, 1e-6, 1e-3);
    add_pair(pairs, 1e-6, 1e-3);
    d = plot("M12", pairs);
    check_xml(sw_drawing_svg(d));
    sw_drawing_free(d);
    sw_pairs_free(pairs);
}
END_TEST

START_TEST(bad)
{
    sw_error err;
    sw_calibrate_in in = question("M12");
    sw_pairs *pairs = new_pairs();
    ck_assert_ptr_null(sw_calibrate_plot(&in, pairs, &err));
    check_refused("none", &err, SW_ERR_MISSING, "pairs");
    ck_assert_ptr_null(sw_calibrate_plot(NULL, pairs, &err));
    check_refused("in", &err, SW_ERR_NULL, "in");
    ck_assert_ptr_null(sw_calibrate_plot(&in, NULL, &err));
    check_refused("pairs", &err, SW_ERR_NULL, "pairs");
    ck_assert_ptr_null(sw_calibrate_plot(&in, NULL, NULL));
    sw_pairs_free(pairs);
}
END_TEST

int main(void)
{
    return RUN_TESTS("calibrate_plot", unlubricated, apart, strange, bad);
}
