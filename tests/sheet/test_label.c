/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Label: harm of words by hand, and widths against letters counted. Not
 * exported, so the source is compiled into this program.
 */
#include "sheet/label.h"

#include "../near.h"

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

START_TEST(width)
{
    near(sw__label_width("", 10), 0, 0, 0);
    near(sw__label_width("four", 20), 2 * sw__label_width("to", 20), 1e-12, 0);
    /* one letter, though two bytes */
    near(sw__label_width("\xc3\xa4", 20), sw__label_width("a", 20), 1e-12, 0);
    ck_assert(sw__label_width("\xff\xff", 10) > 0); /* ends */
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

int main(void) { return RUN_TESTS("label", harm, width, full); }
