/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lettering and hatch: what every drawing leans on. Not exported, so the
 * sources are compiled into this program.
 */
#include "sheet/hatch.h"
#include "sheet/lettering.h"

#include "../random.h"
#include "svg_read.h"

/* Lines joined by '|'. */
static void broken(const char *text, double most_em, char *joined)
{
    joined[0] = '\0';
    for (;;) {
        const char *start = text;
        const size_t n = sw__letters_line(&text, most_em, 0);
        if (n == 0)
            break;
        strncat(joined, start, n);
        strcat(joined, "|");
    }
}

/* 0.62 em a character: ten take 6.2 em. */
START_TEST(lines)
{
    static const struct {
        const char *text;
        double most_em;
        const char *lines;
    } row[] = {
        {"", 10, ""},
        {"one", 10, "one|"},
        {"one two three", 6.2, "one two|three|"},
        {"one two three", 4.4, "one two|three|"}, /* 7 characters: 4.34 */
        {"one two three", 4.3, "one|two|three|"},
        {"unbreakable a", 2, "unbreakable|a|"},
        {"pull 59.3 N (13.3 lbf)", 7, "pull 59.3 N|(13.3 lbf)|"},
        {"pull 59.3 N (13.3 lbf)", 6, "pull|59.3 N|(13.3 lbf)|"},
        {"a  b", 0.7, "a|b|"},
        {"\xc2\xb7\xc2\xb7\xc2\xb7 \xc2\xb7", 3.2,
         "\xc2\xb7\xc2\xb7\xc2\xb7 "
         "\xc2\xb7|"},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        char joined[80];
        broken(row[i].text, row[i].most_em, joined);
        ck_assert_str_eq(joined, row[i].lines);
    }
    near(sw__letters_em("N\xc2\xb7m", 0), 3 * 0.62, 0, 1e-12);
    ck_assert(sw__letters_em("ab", 1) > sw__letters_em("ab", 0));
}
END_TEST

/* In order, apart, within the ends, and unmoved where there is room. */
START_TEST(spread)
{
    randoms r = {7};
    for (int i = 0; i < 2000; i++) {
        double c[4], want[4], width[4], sum = 0;
        const int n = 1 + random_below(&r, 4);
        for (int k = 0; k < n; k++) {
            width[k] = random_between(&r, 1, 20);
            sum += width[k];
            want[k] = random_between(&r, -10, 110);
            for (int m = k; m > 0 && want[m] < want[m - 1]; m--) {
                const double other = want[m];
                want[m] = want[m - 1];
                want[m - 1] = other;
            }
        }
        memcpy(c, want, sizeof c);
        ck_assert(sum + 6 < 100);
        sw__spread_out(c, width, n, 2, 0, 100);
        int free = 1;
        for (int k = 0; k < n; k++) {
            ck_assert(c[k] - width[k] / 2 > -1e-9);
            ck_assert(c[k] + width[k] / 2 < 100 + 1e-9);
            if (k > 0)
                ck_assert(c[k] - c[k - 1] >
                          (width[k] + width[k - 1]) / 2 + 2 - 1e-9);
            free &= want[k] - width[k] / 2 > 0 && want[k] + width[k] / 2 < 100;
            if (k > 0)
                free &=
                    want[k] - want[k - 1] > (width[k] + width[k - 1]) / 2 + 2;
        }
        for (int k = 0; free && k < n; k++)
            near(c[k], want[k], 1e-9, 0);
    }
}
END_TEST

/* A square with a notch from above. Lines run at 45 degrees, end on its
 * outline, and their lengths times the distance between them make its area:
 * sum of lengths * apart/sqrt(2) = 100*100 - 40*60. */
START_TEST(hatched)
{
    static const sw__point c[8] = {{0, 0},  {30, 0},  {30, 60},   {70, 60},
                                   {70, 0}, {100, 0}, {100, 100}, {0, 100}};
    for (int falling = 0; falling < 2; falling++) {
        sw__svg s;
        sw__svg_start(&s, 100, 100, "t", "d");
        sw__hatch(&s, c, 8, 1, falling);
        sw_drawing *d = sw__svg_finish(&s, NULL);
        double sum = 0;
        int drawn = 0;
        for (const char *at = strstr(sw_drawing_svg(d), "<line"); at;
             at = strstr(at + 1, "<line")) {
            const double x1 = attribute(at, "x1"), x2 = attribute(at, "x2");
            const double y1 = attribute(at, "y1"), y2 = attribute(at, "y2");
            const double x = (x1 + x2) / 2, y = (y1 + y2) / 2;
            near(y2 - y1, falling ? x2 - x1 : x1 - x2, 0.03, 0);
            ck_assert(x > 0 && x < 100 && y > 0 && y < 100);
            ck_assert(!(x > 30.1 && x < 69.9 && y < 59.9));
            sum += hypot(x2 - x1, y2 - y1);
            drawn++;
        }
        ck_assert_int_gt(drawn, 150);
        near(sum / sqrt(2), 7600, 0, 0.01);
        sw_drawing_free(d);
    }
}
END_TEST

int main(void) { return RUN_TESTS("lettering", lines, spread, hatched); }
