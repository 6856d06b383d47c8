/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Outline: areas and centres of shapes that anybody can reckon, what is inside
 * against a count of crossings along another ray, and what pushes where.
 */
#include "job/outline.h"

#include "../near.h"
#include "../random.h"

#include <math.h>
#include <string.h>

static sw__outline shape(const double *xy, int corners)
{
    sw__outline o;
    memset(&o, 0, sizeof o);
    o.corners = corners;
    for (int i = 0; i < corners; i++) {
        o.x[i] = xy[2 * i];
        o.y[i] = xy[2 * i + 1];
    }
    return o;
}

/* An L of two rectangles, 100 x 40 below and 30 x 60 on its left. */
static const double ell[] = {0, 0, 100, 0, 100, 40, 30, 40, 30, 100, 0, 100};

START_TEST(measures)
{
    sw__outline o = shape(ell, 6);
    sw__outline_measure(&o);
    const double A = 4000 + 1800;
    near(o.area_mm2, A, 0, 1e-12);
    near(o.centre_x, (4000 * 50.0 + 1800 * 15.0) / A, 0, 1e-12);
    near(o.centre_y, (4000 * 20.0 + 1800 * 70.0) / A, 0, 1e-12);
    ck_assert(o.left == 0 && o.right == 100 && o.front == 0 && o.back == 100);
    /* listed the other way round, and far away */
    double back[12];
    for (int i = 0; i < 6; i++) {
        back[2 * i] = ell[2 * (5 - i)] + 50000;
        back[2 * i + 1] = ell[2 * (5 - i) + 1] - 70000;
    }
    sw__outline far_off = shape(back, 6);
    sw__outline_measure(&far_off);
    near(far_off.area_mm2, A, 0, 1e-9);
    near(far_off.centre_x, o.centre_x + 50000, 0, 1e-12);
    near(far_off.centre_y, o.centre_y - 70000, 0, 1e-12);
    double turn = 0; /* counterclockwise now: the left turns add up */
    for (int i = 0; i < 6; i++) {
        const int k = (i + 1) % 6, l = (i + 2) % 6;
        turn += (far_off.x[k] - far_off.x[i]) * (far_off.y[l] - far_off.y[k]) -
                (far_off.y[k] - far_off.y[i]) * (far_off.x[l] - far_off.x[k]);
    }
    ck_assert(turn > 0);
}
END_TEST

START_TEST(simple)
{
    sw__crossing c;
    sw__outline o = shape(ell, 6);
    ck_assert(sw__outline_simple(&o, &c));
    static const double bow[] = {0, 0, 10, 10, 10, 0, 0, 10};
    o = shape(bow, 4);
    ck_assert(!sw__outline_simple(&o, &c));
    ck_assert_int_eq(c.first, 0);
    ck_assert_int_eq(c.second, 2);
    static const double twice[] = {0, 0, 10, 0, 10, 0, 0, 10};
    o = shape(twice, 4);
    ck_assert(!sw__outline_simple(&o, &c));
    static const double spike[] = {0, 0, 10, 0, 5, 0, 5, 10};
    o = shape(spike, 4);
    ck_assert(!sw__outline_simple(&o, &c));
    static const double touch[] = {0, 0, 10, 0, 10, 10, 5, 0, 0, 10};
    o = shape(touch, 5);
    ck_assert(!sw__outline_simple(&o, &c));
}
END_TEST

START_TEST(inside)
{
    sw__outline o = shape(ell, 6);
    sw__outline_measure(&o);
    randoms chance = {7};
    int in = 0;
    for (int i = 0; i < 4000; i++) {
        const double x = random_between(&chance, -20, 120);
        const double y = random_between(&chance, -20, 120);
        const int want =
            (x >= 0 && x <= 100 && y >= 0 && y <= 40) ||
            (x >= 0 && x <= 30 && y >= 40 && y <= 100); /* two rectangles */
        ck_assert_int_eq(sw__outline_holds(&o, x, y), want);
        const double off = sw__outline_off(&o, x, y);
        ck_assert(want ? off == 0 : off > 0);
        in += want;
    }
    ck_assert_int_gt(in, 500);
    for (int i = 0; i < 6; i++) /* corners and the middles of edges */
        ck_assert(
            sw__outline_holds(&o, ell[2 * i], ell[2 * i + 1]) &&
            sw__outline_holds(&o, (ell[2 * i] + ell[(2 * i + 2) % 12]) / 2,
                              (ell[2 * i + 1] + ell[(2 * i + 3) % 12]) / 2));
    near(sw__outline_off(&o, 103, 44), 5, 0, 1e-12);
    near(sw__outline_off(&o, 40, 50), 10, 0, 1e-12);
}
END_TEST

START_TEST(pushed)
{
    sw__outline o = shape(ell, 6);
    sw__outline_measure(&o);
    ck_assert(sw__outline_pushed(&o, 0, 50, 0));    /* on its side, into it */
    ck_assert(!sw__outline_pushed(&o, 0, 50, 180)); /* away from it */
    ck_assert(!sw__outline_pushed(&o, 0, 50, 90));  /* along it */
    ck_assert(sw__outline_pushed(&o, -5, 50, 0));   /* a pin beside it */
    ck_assert(!sw__outline_pushed(&o, -5, 50, 180));
    ck_assert(!sw__outline_pushed(&o, -5, 150, 0)); /* past it */
    ck_assert(sw__outline_pushed(&o, 60, 70, 270)); /* in the corner of the L */
    ck_assert(sw__outline_pushed(&o, 60, 70, 180));
    ck_assert(!sw__outline_pushed(&o, 60, 70, 45));
    ck_assert(sw__outline_pushed(&o, 15, 50, 33)); /* a pin in a hole */
    ck_assert(sw__outline_pushed(&o, -5, 50, 45));
    ck_assert(sw__outline_pushed(&o, -5, 50, -360));
}
END_TEST

int main(void)
{
    return RUN_TESTS("outline", measures, simple, inside, pushed);
}
