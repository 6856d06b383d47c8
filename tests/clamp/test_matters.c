/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Matters: what one open value can do, against the same strap solved here at
 * both ends of the range that stands beside the default.
 */
#include "../near.h"
#include "strap_question.h"

static sw_strap_in open_strap(void)
{
    sw_strap_in in;
    sw_strap_defaults(&in);
    SET(in.thread, "M12");
    in.preload_N = 12000;
    in.stud_to_toe_mm = 30;
    in.stud_to_heel_mm = 60;
    in.part_height_mm = 40;
    in.tilt_deg = 1;
    in.nose = SW_NOSE_BALL;
    return in;
}

static int same_field(const char *a, const char *b) { return !strcmp(a, b); }

/* The friction behind an assumed nut factor goes with the factor. */
static int moves_alone(const char *name)
{
    return !same_field(name, "mu_thread") && !same_field(name, "mu_seat");
}

START_TEST(both_ends)
{
    const sw_strap_in in = open_strap();
    const sw_strap_out nominal = good_strap("nominal", &in);
    int n = 0, moving = 0;
    sw_error err;
    for (;; n++) {
        const sw_assumption a = sw_strap_assumed(&in, n, &err);
        const sw_matter_out m = sw_strap_matters(&in, n, &err);
        if (a.status)
            break;
        check_no_error(a.name, m.status, &err);
        check_numbers(a.name, &m, SW_STRUCT_MATTER_OUT, m.status);
        ck_assert_str_eq(m.name, a.name);
        double toe_low = nominal.toe_force_N, toe_high = toe_low;
        double pull_low = nominal.side_pull_N, pull_high = pull_low;
        const sw_field *f = sw_field_named(SW_STRUCT_STRAP_IN, a.name);
        for (int end = 0; end < 2; end++) {
            sw_strap_in q = in;
            if (f->type == SW_FIELD_NUMBER && a.low < a.high &&
                moves_alone(a.name)) {
                set_field(&q, f, end ? a.high : a.low);
            } else if (same_field(a.name, "foot")) {
                q.foot = end ? SW_FOOT_ROCKING : SW_FOOT_HELD;
            }
            const sw_strap_out s = sw_strap(&q, &err);
            if (s.status)
                continue;
            toe_low = fmin(toe_low, s.toe_force_N);
            toe_high = fmax(toe_high, s.toe_force_N);
            pull_low = fmin(pull_low, s.side_pull_N);
            pull_high = fmax(pull_high, s.side_pull_N);
        }
        near_in(a.name, m.toe_low_N, toe_low, 0, 1e-13);
        near_in(a.name, m.toe_high_N, toe_high, 0, 1e-13);
        near_in(a.name, m.pull_low_N, pull_low, 1e-9, 1e-13);
        near_in(a.name, m.pull_high_N, pull_high, 1e-9, 1e-13);
        moving += m.toe_low_N < m.toe_high_N || m.pull_low_N < m.pull_high_N;
    }
    ck_assert_int_ge(n, 20);
    ck_assert_int_ge(moving, 4);
    const sw_matter_out past = sw_strap_matters(&in, n, &err);
    check_refused("past the end", &err, SW_ERR_RANGE, "index");
    check_numbers("past the end", &past, SW_STRUCT_MATTER_OUT, past.status);
}
END_TEST

/* What is known to decide: on a solid heel the heel's friction moves the side
 * pull, 0.10 to 0.20 of about 4000 N; held or rocking moves the toe force. */
START_TEST(known)
{
    const sw_strap_in in = open_strap();
    sw_error err;
    int heel = 0, foot = 0;
    for (int i = 0;; i++) {
        const sw_matter_out m = sw_strap_matters(&in, i, &err);
        if (m.status)
            break;
        if (same_field(m.name, "mu_heel")) {
            heel = 1;
            near(m.pull_high_N - m.pull_low_N, 0.1 * 4000, 0, 0.1);
        } else if (same_field(m.name, "foot")) {
            foot = 1;
            must(m.toe_high_N > m.toe_low_N, "the foot moves nothing");
        } else if (same_field(m.name, "strap_yield_MPa")) {
            near(m.toe_high_N, m.toe_low_N, 0, 0);
            near(m.pull_high_N, m.pull_low_N, 0, 0);
        }
    }
    ck_assert(heel && foot);
}
END_TEST

START_TEST(refused)
{
    sw_error err;
    sw_matter_out m = sw_strap_matters(NULL, 0, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "in");
    check_numbers("NULL", &m, SW_STRUCT_MATTER_OUT, m.status);
    sw_strap_in in = open_strap();
    m = sw_strap_matters(&in, -1, &err);
    check_refused("-1", &err, SW_ERR_RANGE, "index");
    in.preload_N = NAN;
    m = sw_strap_matters(&in, 0, &err);
    check_refused("NaN", &err, SW_ERR_NAN, "preload_N");
    check_numbers("NaN", &m, SW_STRUCT_MATTER_OUT, m.status);
    in = open_strap();
    in.tilt_deg = 15; /* the pull falls outside the strap */
    in.part_height_mm = 500;
    in.stud_length_mm = 80;
    in.stud_to_heel_mm = 5;
    m = sw_strap_matters(&in, 0, &err);
    check_refused("tips", &err, SW_ERR_NONE, "stud_to_heel_mm");
    check_numbers("tips", &m, SW_STRUCT_MATTER_OUT, m.status);
    ck_assert_int_eq(sw_strap_matters(NULL, 0, NULL).status, SW_ERR_NULL);
}
END_TEST

int main(void) { return RUN_TESTS("matters", both_ends, known, refused); }
