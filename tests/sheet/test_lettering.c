/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lettering and hatch: what every drawing leans on. Not exported, so the
 * sources are compiled into this program.
 */
#include "sheet/hatch.h"
#include "sheet/lettering.h"

#include "../random.h"
#include "read_svg.h"

/* Lines joined by '|'. */
static void broken(const char *text, double most_em, int pauses, char *joined)
{
    joined[0] = '\0';
    for (;;) {
        const char *start = text;
        const size_t n = sw__letters_line(&text, most_em, 0, pauses);
        if (n == 0)
            break;
        strncat(joined, start, n);
        strcat(joined, "|");
    }
}

/* Widths in DejaVu Sans: abc 1.80 em, blank 0.32, mm 1.95, ab 1.25, cd 1.19. */
START_TEST(lines)
{
    static const struct {
        const char *text;
        double most_em;
        int pauses;
        const char *lines;
    } row[] = {
        {"", 10, 0, ""},
        {"one", 10, 0, "one|"},
        {"abc abc abc", 4.2, 0, "abc abc|abc|"}, /* 3.92 em */
        {"abc abc abc", 3.8, 0, "abc|abc|abc|"},
        {"mm mm", 4.3, 0, "mm mm|"}, /* 4.21 em */
        {"mm mm", 4.1, 0, "mm|mm|"},
        {"unbreakable a", 2, 0, "unbreakable|a|"},
        {"pull 59.3 N (13.3 lbf)", 7, 0, "pull 59.3 N|(13.3 lbf)|"},
        {"pull 59.3 N (13.3 lbf)", 5, 0, "pull|59.3 N|(13.3 lbf)|"},
        {"a  b", 0.7, 0, "a|b|"},
        {"ab, cd ef", 4, 0, "ab, cd|ef|"},
        {"ab, cd ef", 4, 1, "ab,|cd ef|"},
        {"ab, cd ef", 9, 1, "ab, cd ef|"},
        {"ab cd ef", 3.5, 1, "ab cd|ef|"},
        {"ab: cd ef", 4, 1, "ab:|cd ef|"},
        {"ab; c: ef", 4, 1, "ab;|c: ef|"},
        {" a", 9, 1, " a|"},
        {"N\xc2\xb7m m", 4.5, 0, "N\xc2\xb7m m|"},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        char joined[80];
        broken(row[i].text, row[i].most_em, row[i].pauses, joined);
        must(strcmp(joined, row[i].lines) == 0, "%s for %s", joined,
             row[i].lines);
    }
}
END_TEST

/* At least the letters' own widths, and at most two hundredths more each. */
START_TEST(widths)
{
    randoms r = {31};
    for (int i = 0; i < 500; i++) {
        char text[40];
        const int n = random_below(&r, 39), bold = i % 2;
        for (int k = 0; k < n; k++)
            text[k] = (char)(' ' + random_below(&r, 95));
        text[n] = '\0';
        const double em = sw__letters_em(text, bold);
        const double own = dejavu_em(text, bold);
        must(em >= own - 1e-9 && em <= own + 0.02 * n + 1e-9, "%s: %g for %g",
             text, em, own);
    }
    /* one letter, though two bytes; the dot is not as wide as a capital W */
    const double dot = sw__letters_em("\xc2\xb7", 0);
    ck_assert(dot >= dejavu_em("\xc2\xb7", 0) && dot < 1);
    ck_assert(sw__letters_em("\xff\xff", 0) > 0); /* ends */
}
END_TEST

START_TEST(harm)
{
    sw__labels l;
    l.lines = l.boxes = 0;
    l.room = (sw__box){0, 0, 100, 50};
    const sw__box free = {10, 10, 30, 20};
    ck_assert(sw__label_harm(&l, &free) == 0);
    /* 20 px level through it, of a line far longer */
    sw__label_line(&l, (sw__point){-500, 15}, (sw__point){900, 15}, 3);
    near(sw__label_harm(&l, &free), 60, 1e-9, 0);
    /* the diagonal: 10 by 10 of it */
    sw__label_line(&l, (sw__point){0, 0}, (sw__point){50, 50}, 1);
    near(sw__label_harm(&l, &free), 60 + 10 * sqrt(2), 1e-9, 0);
    /* ends within */
    sw__label_line(&l, (sw__point){20, 12}, (sw__point){20, 16}, 100);
    near(sw__label_harm(&l, &free), 460 + 10 * sqrt(2), 1e-9, 0);
    /* beside it */
    sw__label_line(&l, (sw__point){31, 0}, (sw__point){31, 50}, 1000);
    sw__label_line(&l, (sw__point){0, 40}, (sw__point){40, 21}, 1000);
    near(sw__label_harm(&l, &free), 460 + 10 * sqrt(2), 1e-9, 0);
    const sw__box below = {10, 20, 30, 30}, across = {25, 15, 40, 25};
    sw__label_take(&l, &below); /* touching is free */
    ck_assert(sw__label_harm(&l, &free) < SW__LABEL_COVERED);
    ck_assert(sw__label_harm(&l, &across) >= SW__LABEL_COVERED);
    /* out of the room is worst */
    const sw__box out = {90, 0, 101, 5};
    ck_assert(sw__label_harm(&l, &out) > 10 * SW__LABEL_COVERED);
}
END_TEST

/* What does not fit in is forgotten and nothing is overwritten. */
START_TEST(full)
{
    sw__labels l;
    l.lines = l.boxes = 0;
    l.room = (sw__box){0, 0, 10, 10};
    const sw__box box = {1, 1, 2, 2};
    for (int i = 0; i < 2000; i++) {
        sw__label_line(&l, (sw__point){0, 1.5}, (sw__point){10, 1.5}, 1);
        sw__label_take(&l, &box);
    }
    ck_assert_int_eq(l.lines, SW__LABEL_LINES);
    ck_assert_int_eq(l.boxes, SW__LABEL_BOXES);
    near(sw__label_harm(&l, &box),
         SW__LABEL_LINES + SW__LABEL_BOXES * SW__LABEL_COVERED, 1e-6, 0);
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
        drawing read = read_drawing(sw_drawing_svg(d));
        for (const element *e = read.e; e->name[0]; e++) {
            if (!is_a(e, "line"))
                continue;
            const double dx = e->to.x - e->at.x, dy = e->to.y - e->at.y;
            const double x = e->at.x + dx / 2, y = e->at.y + dy / 2;
            near(dy, falling ? dx : -dx, 0.03, 0);
            ck_assert(x > 0 && x < 100 && y > 0 && y < 100);
            ck_assert(!(x > 30.1 && x < 69.9 && y < 59.9));
            sum += hypot(dx, dy);
            drawn++;
        }
        free(read.e);
        ck_assert_int_gt(drawn, 150);
        near(sum / sqrt(2), 7600, 0, 0.01);
        sw_drawing_free(d);
    }
}
END_TEST

int main(void)
{
    return RUN_TESTS("lettering", lines, widths, harm, full, spread, hatched);
}
