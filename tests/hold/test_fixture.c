/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fixture: what is added is what is there; what is refused leaves no trace.
 */
#include "../common.h"

#include <stdlib.h>

static sw_support_in support(double x, double y)
{
    sw_support_in s;
    sw_support_defaults(&s);
    s.x_mm = x;
    s.y_mm = y;
    return s;
}

START_TEST(kept)
{
    sw_error err;
    sw_fixture *f = sw_fixture_new(&err);
    ck_assert_ptr_nonnull(f);
    for (int i = 0; i < 40; i++) {
        const sw_support_in s = support(i, 2 * i);
        check_no_error("add", sw_fixture_add_support(f, &s, &err), &err);
    }
    ck_assert_int_eq(sw_fixture_count(f, SW_PART_SUPPORT), 40);
    ck_assert_int_eq(sw_fixture_count(f, SW_PART_STOP), 0);
    ck_assert_int_eq(sw_fixture_count(f, 99), 0);
    ck_assert_int_eq(sw_fixture_count(NULL, SW_PART_SUPPORT), 0);
    for (int i = 0; i < 40; i++) {
        sw_support_in s;
        char name[8];
        snprintf(name, sizeof name, "S%d", i + 1);
        check_no_error("get", sw_fixture_support(f, i, &s, &err), &err);
        ck_assert_str_eq(s.name, name);
        ck_assert(s.x_mm == i && s.y_mm == 2 * i && s.z_mm == 0);
        ck_assert(s.friction == 0.15 && s.needed == SW_NEEDED_REST);
    }
    sw_support_in s = support(1, 2);
    const sw_support_in before = s;
    check_refused("past", &err, sw_fixture_support(f, 40, &s, &err), "index");
    ck_assert_int_eq(err.code, SW_ERR_RANGE);
    ck_assert(s.x_mm == before.x_mm && s.name[0] == '\0');
    sw_fixture_free(f);
    sw_fixture_free(NULL);
}
END_TEST

/* What a fixture tells can be put into another one. */
START_TEST(moved)
{
    sw_error err;
    sw_fixture *f = sw_fixture_new(NULL), *g = sw_fixture_new(NULL);
    sw_support_in s = support(1, 2);
    sw_stop_in stop;
    sw_stop_defaults(&stop);
    stop.x_mm = stop.y_mm = stop.push_deg = 1;
    ck_assert_int_eq(sw_fixture_add_support(f, &s, NULL), 0);
    ck_assert_int_eq(sw_fixture_add_stop(f, &stop, NULL), 0);
    ck_assert_int_eq(sw_fixture_support(f, 0, &s, NULL), 0);
    ck_assert_int_eq(sw_fixture_stop(f, 0, &stop, NULL), 0);
    check_no_error("support", sw_fixture_add_support(g, &s, &err), &err);
    check_no_error("stop", sw_fixture_add_stop(g, &stop, &err), &err);
    ck_assert_int_eq(sw_fixture_support(g, 0, &s, NULL), 0);
    ck_assert_str_eq(s.name, "S1");
    sw_fixture_free(f);
    sw_fixture_free(g);
}
END_TEST

START_TEST(stops_have_letters)
{
    static const struct {
        int index;
        const char *name;
    } row[] = {{0, "A"}, {25, "Z"}, {26, "AA"}, {51, "AZ"}, {52, "BA"}};
    sw_fixture *f = sw_fixture_new(NULL);
    sw_stop_in s;
    sw_stop_defaults(&s);
    s.x_mm = s.y_mm = 1;
    s.push_deg = 90;
    for (int i = 0; i < 53; i++)
        ck_assert_int_eq(sw_fixture_add_stop(f, &s, NULL), 0);
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_stop_in got;
        ck_assert_int_eq(sw_fixture_stop(f, row[i].index, &got, NULL), 0);
        ck_assert_str_eq(got.name, row[i].name);
        ck_assert(got.friction == 0 && got.push_deg == 90);
    }
    sw_fixture_free(f);
}
END_TEST

START_TEST(refused)
{
    sw_error err;
    sw_fixture *f = sw_fixture_new(NULL);
    sw_support_in s = support(1, SW_UNSET);
    int status = sw_fixture_add_support(f, &s, &err);
    ck_assert_int_eq(status, SW_ERR_MISSING);
    check_refused("y", &err, SW_ERR_MISSING, "y_mm");
    s = support(1, 2);
    s.friction = -0.1;
    status = sw_fixture_add_support(f, &s, &err);
    check_refused("friction", &err, SW_ERR_RANGE, "friction");
    s.friction = NAN;
    status = sw_fixture_add_support(f, &s, &err);
    check_refused("friction", &err, SW_ERR_NAN, "friction");
    s = support(1, 2);
    SET(s.name, "rest");
    ck_assert_int_eq(sw_fixture_add_support(f, &s, NULL), 0);
    status = sw_fixture_add_support(f, &s, &err);
    check_refused("twice", &err, SW_ERR_CONFLICT, "name");

    sw_clamp_in c;
    sw_clamp_defaults(&c);
    c.x_mm = c.y_mm = 0;
    status = sw_fixture_add_clamp(f, &c, &err);
    check_refused("force", &err, SW_ERR_MISSING, "force_N");
    c.force_N = -1;
    status = sw_fixture_add_clamp(f, &c, &err);
    check_refused("force", &err, SW_ERR_RANGE, "force_N");
    c.force_N = 1000;
    c.pull_low_N = 5;
    c.pull_high_N = 4;
    status = sw_fixture_add_clamp(f, &c, &err);
    check_refused("pull", &err, SW_ERR_CONFLICT, "pull_low_N");
    c.pull_low_N = SW_UNSET; /* one end alone is both */
    ck_assert_int_eq(sw_fixture_add_clamp(f, &c, NULL), 0);
    sw_clamp_in got;
    ck_assert_int_eq(sw_fixture_clamp(f, 0, &got, NULL), 0);
    ck_assert(got.pull_low_N == 4 && got.pull_high_N == 4);
    ck_assert(got.drag_low_N == 0 && got.drag_high_N == 0);

    sw_stop_in stop;
    sw_stop_defaults(&stop);
    stop.x_mm = stop.y_mm = 0;
    status = sw_fixture_add_stop(f, &stop, &err);
    check_refused("push", &err, SW_ERR_MISSING, "push_deg");
    sw_load_in load;
    sw_load_defaults(&load);
    load.x_mm = load.y_mm = 0;
    status = sw_fixture_add_load(f, &load, &err);
    check_refused("z", &err, SW_ERR_MISSING, "z_mm");
    sw_weight_in w;
    sw_weight_defaults(&w);
    status = sw_fixture_set_weight(f, &w, &err);
    check_refused("weight", &err, SW_ERR_MISSING, "weight_N");
    status = sw_fixture_set_weight(NULL, &w, &err);
    check_refused("fixture", &err, SW_ERR_NULL, "fixture");
    status = sw_fixture_add_load(f, NULL, &err);
    check_refused("in", &err, SW_ERR_NULL, "in");

    ck_assert_int_eq(sw_fixture_count(f, SW_PART_SUPPORT), 1);
    ck_assert_int_eq(sw_fixture_count(f, SW_PART_CLAMP), 1);
    ck_assert_int_eq(sw_fixture_count(f, SW_PART_STOP), 0);
    ck_assert_int_eq(sw_fixture_count(f, SW_PART_LOAD), 0);
    (void)status;
    sw_fixture_free(f);
}
END_TEST

START_TEST(most)
{
    sw_error err;
    sw_fixture *f = sw_fixture_new(NULL);
    const sw_support_in s = support(0, 0);
    for (int i = 0; i < 64; i++)
        ck_assert_int_eq(sw_fixture_add_support(f, &s, NULL), 0);
    ck_assert_int_eq(sw_fixture_add_support(f, &s, &err), SW_ERR_RANGE);
    check_refused("65th", &err, SW_ERR_RANGE, "support");
    ck_assert_int_eq(sw_fixture_count(f, SW_PART_SUPPORT), 64);
    sw_fixture_free(f);
}
END_TEST

START_TEST(assumed)
{
    sw_error err;
    sw_support_in s = support(1, 2);
    SET(s.name, "pad");
    s.z_mm = 0;
    const sw_assumption a = sw_support_assumed(&s, 0, &err);
    check_no_error("first", a.status, &err);
    ck_assert_str_eq(a.name, "friction");
    ck_assert(a.value == 0.15 && a.low == 0.1 && a.high == 0.2);
    int n = 0;
    while (sw_support_assumed(&s, n, NULL).status == SW_OK)
        n++;
    ck_assert_int_eq(n, 4); /* friction, stiffness, needed, least */
    ck_assert_int_eq(sw_support_resolve(&s, NULL), 0);
    s.friction = 0.3; /* a default changed after resolving */
    ck_assert_int_eq(sw_support_resolve(&s, &err), SW_ERR_CONFLICT);
}
END_TEST

int main(void)
{
    return RUN_TESTS("fixture", kept, moved, stops_have_letters, refused, most,
                     assumed);
}
