/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Chuck and squeeze: what must hold when a question is turned round. Values
 * worked by hand and published factors are in tests/cases/.
 */
#include "../common.h"
#include "../near.h"
#include "../random.h"

static sw_chuck_in drawn(randoms *r)
{
    sw_chuck_in in;
    sw_chuck_defaults(&in);
    in.chuck_force_N = random_between(r, 20000, 90000);
    in.jaws = 2 + random_below(r, 5);
    in.jaw_mass_kg = random_between(r, 0.5, 4);
    in.jaw_radius_mm = random_between(r, 40, 120);
    in.speed_rpm = random_between(r, 0, 1500);
    in.mu_jaw = random_between(r, 0.1, 0.4);
    in.grip_diameter_mm = random_between(r, 50, 200);
    in.cut_diameter_mm = random_between(r, 20, 200);
    in.tangential_cut_N = random_between(r, 100, 900);
    in.feed_cut_N = random_between(r, 0, 500);
    return in;
}

static sw_chuck_out good(const sw_chuck_in *in)
{
    sw_error err;
    const sw_chuck_out out = sw_chuck(in, &err);
    check_no_error("chuck", out.status, &err);
    return out;
}

/* The answers put back as questions. */
START_TEST(turned_round)
{
    randoms some = {21};
    int moving = 0, limited = 0;
    for (int n = 0; n < 500; n++) {
        const sw_chuck_in in = drawn(&some);
        const sw_chuck_out out = good(&in);
        sw_chuck_in q = in;
        q.speed_rpm = out.speed_67_rpm;
        near(good(&q).loss_share, 0.67, 0, 1e-12);
        ck_assert(!(good(&q).warnings & SW_WARN_GRIP_LOST) ||
                  good(&q).loss_share > 0.67);
        q.speed_rpm = out.speed_67_rpm * 1.0001;
        ck_assert(good(&q).warnings & SW_WARN_GRIP_LOST);
        q.speed_rpm = out.speed_zero_rpm * (1 + 1e-12);
        near(good(&q).grip_N, 0, 1e-6 * in.chuck_force_N, 0);
        if (out.speed_margin_rpm > 0) {
            q.speed_rpm = out.speed_margin_rpm;
            near(good(&q).margin, 2, 0, 1e-9);
            moving++;
        }
        /* the limit keeps all rules, and a little above breaks one */
        q.speed_rpm = out.speed_limit_rpm * (1 - 1e-9);
        if (out.speed_limit_rpm > 0) {
            ck_assert_int_eq(good(&q).verdict, SW_STAYS_YES);
            ck_assert(out.speed_limit_rpm <= out.speed_67_rpm &&
                      out.speed_limit_rpm <= out.speed_margin_rpm);
            q.speed_rpm = out.speed_limit_rpm * (1 + 1e-9);
            ck_assert_int_ne(good(&q).verdict, SW_STAYS_YES);
            limited++;
        } else {
            ck_assert_int_ne(good(&q).verdict, SW_STAYS_YES);
        }
        q = in;
        q.chuck_force_N = out.standing_needed_N;
        if (good(&q).loss_share <= 0.67)
            ck_assert_int_eq(good(&q).verdict, SW_STAYS_YES);
        q.chuck_force_N = out.standing_needed_N * (1 - 1e-9);
        ck_assert_int_ne(good(&q).verdict, SW_STAYS_YES);
        q = in;
        q.chuck_force_N = out.grip_needed_N + out.loss_N;
        near(good(&q).margin, 2, 0, 1e-9);
        near(out.standing_needed_N, 1.5 * q.chuck_force_N, 0, 1e-12);
        near(out.carries_N, out.margin * out.need_N, 0, 1e-12);
    }
    ck_assert_int_gt(moving, 300);
    ck_assert_int_gt(limited, 200);
}
END_TEST

/* Half the speed, a quarter of the loss; inside grip gains what outside loses;
 * a cut at the jaws' own circle counts as it is. */
START_TEST(scaling)
{
    randoms some = {22};
    for (int n = 0; n < 200; n++) {
        sw_chuck_in in = drawn(&some);
        const sw_chuck_out one = good(&in);
        in.grip = SW_GRIP_INSIDE;
        const sw_chuck_out inside = good(&in);
        near(inside.loss_N, -one.loss_N, 0, 0);
        near(inside.grip_N + one.grip_N, 2 * in.chuck_force_N, 0, 1e-12);
        ck_assert(inside.speed_67_rpm == SW_UNSET);
        ck_assert(inside.speed_margin_rpm == SW_UNSET);
        in.grip = SW_GRIP_OUTSIDE;
        in.speed_rpm /= 2;
        near(good(&in).loss_N, one.loss_N / 4, 0, 1e-12);
        in.cut_diameter_mm = in.grip_diameter_mm;
        near(good(&in).need_N, hypot(in.tangential_cut_N, in.feed_cut_N), 0,
             1e-12);
    }
}
END_TEST

/* The jaw's pull by its path: change of velocity over a small angle. */
START_TEST(centrifugal)
{
    randoms some = {23};
    const sw_chuck_in in = drawn(&some);
    const double w = in.speed_rpm * 2 * acos(-1) / 60, dt = 1e-4 / w;
    const double v = w * in.jaw_radius_mm / 1000;
    const double change = 2 * v * sin(w * dt / 2) / dt;
    near(good(&in).loss_N, in.jaws * in.jaw_mass_kg * change, 0, 1e-8);
}
END_TEST

START_TEST(squeezes)
{
    sw_squeeze_in in;
    sw_squeeze_defaults(&in);
    in.cut_N = 730;
    const sw_squeeze_out one = sw_squeeze(&in, NULL);
    ck_assert(one.margin == SW_UNSET && !one.verdict);
    near(one.faces, 1, 0, 0);
    near(one.squeeze_needed_N, one.normal_N, 0, 0);
    in.faces = 2;
    const sw_squeeze_out two = sw_squeeze(&in, NULL);
    near(two.normal_N, one.normal_N, 0, 0);
    near(two.squeeze_needed_N, one.normal_N / 2, 0, 1e-14);
    in.squeeze_N = two.squeeze_needed_N;
    near(sw_squeeze(&in, NULL).margin, 2, 0, 1e-14);
    in.faces = 1; /* the same squeeze on one face: half */
    near(sw_squeeze(&in, NULL).margin, 1, 0, 1e-14);
}
END_TEST

int main(void)
{
    return RUN_TESTS("chuck", turned_round, scaling, centrifugal, squeezes);
}
