/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pairs: the file of pairs and the handle that holds them.
 */
#include "pairs_sets.h"

static sw_calibrate_in question(const char *thread)
{
    sw_calibrate_in in;
    sw_calibrate_defaults(&in);
    SET(in.thread, thread);
    return in;
}

static const char whole[] = "# bench of the tool room\n"
                            "name: oiled studs, spring 2026\n"
                            "Thread: m12 x 1.25\n"
                            "lubrication: slideway oil\n"
                            "prevailing: 20 in-lbf\n"
                            "no;torque [ft-lbf];preload [kN];seat torque [N.m];"
                            "note\n"
                            "1;25;16.9;17.5;new\n"
                            "2;50;34.25;;\"used; twice\"\n";

START_TEST(file)
{
    sw_error err;
    sw_pairs *pairs = new_pairs();
    int status = sw_pairs_read(pairs, whole, strlen(whole), "bench.csv", &err);
    check_no_error("whole", status, &err);
    ck_assert_int_eq(sw_pairs_count(pairs), 2);
    const sw_pairs_out about = sw_pairs_about(pairs, &err);
    check_no_error("about", about.status, &err);
    ck_assert_str_eq(about.name, "oiled studs, spring 2026");
    ck_assert_str_eq(about.thread, "M12x1.25");
    ck_assert_str_eq(about.lubrication, "slideway oil");
    near(about.prevailing_torque_Nm, 20 * 1.3558179483314004 / 12, 0, 1e-14);
    near(about.n, 2, 0, 0);
    const sw_calibrate_in in = question("");
    sw_pair_out p = sw_pairs_at(&in, pairs, 0, &err);
    check_no_error("pair", p.status, &err);
    near(p.torque_Nm, 25 * 1.3558179483314004, 0, 1e-14);
    near(p.force_N, 16900, 0, 0);
    near(p.seat_torque_Nm, 17.5, 0, 0);
    ck_assert(p.thread_torque_Nm == SW_UNSET);
    near(p.nut_factor,
         1000 * (p.torque_Nm - about.prevailing_torque_Nm) / (16900 * 12), 0,
         1e-14);
    p = sw_pairs_at(&in, pairs, 1, &err);
    ck_assert(p.seat_torque_Nm == SW_UNSET);
    near(p.force_N, 34250, 0, 0);
    p = sw_pairs_at(&in, pairs, 2, &err);
    check_refused("past the end", &err, SW_ERR_RANGE, "index");
    check_numbers("pair", &p, SW_STRUCT_PAIR_OUT, p.status);
    p = sw_pairs_at(&in, pairs, -1, &err);
    check_refused("before it", &err, SW_ERR_RANGE, "index");
    sw_pairs_free(pairs);
}
END_TEST

/* Every faulty file is refused with its line and leaves the pairs alone. */
START_TEST(faulty)
{
#define HEAD "torque [N.m],force [kN]\n20,8\n"
    static const struct {
        const char *text;
        int code;
        const char *field, *said;
    } row[] = {
        {"", SW_ERR_MISSING, "file", "p.csv:1: file: there is no header"},
        {"torque [N.m],force [kN]\n", SW_ERR_MISSING, "file", "no row"},
        {"torque,force\n1,2\n", SW_ERR_UNIT, "torque", "unit is missing"},
        {"torque [N.m],force [kg]\n1,2\n", SW_ERR_UNIT, "force",
         "kg is a mass"},
        {"torque [N.m]\n1\n", SW_ERR_MISSING, "force", "no such column"},
        {"force [N]\n1\n", SW_ERR_MISSING, "torque", "no such column"},
        {"torque [N.m],force [N],preload [N]\n1,2,3\n", SW_ERR_CONFLICT,
         "force", "there twice"},
        {"torque [N.m],force [N],speed\n", SW_ERR_UNKNOWN, "header",
         "\"speed\""},
        {HEAD "40\n", SW_ERR_SYNTAX, "row", "p.csv:3: row: 1 cell"},
        {HEAD "40,1,7\n", SW_ERR_SYNTAX, "row", "p.csv:3: row: 3 cells"},
        {HEAD "x,1\n", SW_ERR_SYNTAX, "torque", "p.csv:3: torque: \"x\""},
        {HEAD "40,nan\n", SW_ERR_SYNTAX, "force", "p.csv:3: force: \"nan\""},
        {HEAD "0,16\n", SW_ERR_RANGE, "torque", "p.csv:3: torque: 0 N.m"},
        {HEAD "40,-16\n", SW_ERR_RANGE, "force", "-16000 N is outside"},
        {HEAD "\n40,\n", SW_ERR_MISSING, "force", "p.csv:4: force: the cell"},
        {"thread: M13\n" HEAD, SW_ERR_UNKNOWN, "thread",
         "p.csv:1: thread: \"M13\""},
        {"prevailing: 3\n" HEAD, SW_ERR_UNIT, "prevailing", "unit is missing"},
        {"prevailing: -3 N.m\n" HEAD, SW_ERR_RANGE, "prevailing", "outside"},
        {"prevailing: 1e6 N.m\n" HEAD, SW_ERR_RANGE, "prevailing", "outside"},
        {"torque_Nm,force_N,thread torque [N.m]\n1,2,-1\n", SW_ERR_RANGE,
         "thread torque", "outside"},
        {"name: 12345678901234567890123456789012345678901234567890"
         "123456789012345678901234567890\n" HEAD,
         SW_ERR_SYNTAX, "name", "too long"},
        {"lubrication: 123456789012345678901234567890123456789012345678901234"
         "5678901234\n" HEAD,
         SW_ERR_SYNTAX, "lubrication", "too long"},
    };
    sw_error err;
    sw_pairs *pairs = new_pairs();
    ck_assert_int_eq(sw_pairs_read(pairs, whole, strlen(whole), "p.csv", NULL),
                     SW_OK);
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const int status = sw_pairs_read(pairs, row[i].text,
                                         strlen(row[i].text), "p.csv", &err);
        ck_assert_int_eq(status, row[i].code);
        check_refused(row[i].text, &err, row[i].code, row[i].field);
        must(strstr(err.message, row[i].said), "%s", err.message);
        ck_assert_int_eq(sw_pairs_count(pairs), 2);
        ck_assert_str_eq(sw_pairs_about(pairs, &err).thread, "M12x1.25");
    }
    /* a good one replaces all of it, head included */
    const int status = sw_pairs_read(pairs, HEAD, strlen(HEAD), NULL, &err);
    check_no_error("good", status, &err);
    ck_assert_int_eq(sw_pairs_count(pairs), 1);
    const sw_pairs_out about = sw_pairs_about(pairs, &err);
    ck_assert_str_eq(about.thread, "");
    ck_assert_str_eq(about.name, "");
    ck_assert(about.prevailing_torque_Nm == SW_UNSET);
    sw_pairs_free(pairs);
}
END_TEST

START_TEST(one_by_one)
{
    sw_error err;
    sw_pairs *pairs = new_pairs();
    ck_assert_int_eq(sw_pairs_count(pairs), 0);
    for (int i = 0; i < 10000; i++)
        ck_assert_int_eq(
            sw_pairs_add(pairs, 1 + i, 100 + i, SW_UNSET, SW_UNSET, NULL), 0);
    ck_assert_int_eq(sw_pairs_add(pairs, 1, 1, SW_UNSET, SW_UNSET, &err),
                     SW_ERR_RANGE);
    check_refused("one too many", &err, SW_ERR_RANGE, "pairs");
    ck_assert_int_eq(sw_pairs_count(pairs), 10000);
    const sw_calibrate_in in = question("M12");
    near(sw_pairs_at(&in, pairs, 9999, &err).torque_Nm, 10000, 0, 0);
    sw_pairs_free(pairs);
}
END_TEST

START_TEST(bad_numbers)
{
    static const char *const name[] = {"torque_Nm", "force_N",
                                       "thread_torque_Nm", "seat_torque_Nm"};
    static const double bad[] = {NAN, INFINITY, -INFINITY, -1, 1e9};
    sw_error err;
    sw_pairs *pairs = new_pairs();
    for (int k = 0; k < 4; k++)
        for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++) {
            double v[4] = {20, 8000, 10, 10};
            v[k] = bad[i];
            const int want = i ? SW_ERR_RANGE : SW_ERR_NAN;
            ck_assert_int_eq(sw_pairs_add(pairs, v[0], v[1], v[2], v[3], &err),
                             want);
            check_refused(name[k], &err, want, name[k]);
            ck_assert_int_eq(sw_pairs_count(pairs), 0);
        }
    /* two are needed, two may be open */
    ck_assert_int_eq(sw_pairs_add(pairs, SW_UNSET, 1, 1, 1, &err),
                     SW_ERR_RANGE);
    ck_assert_int_eq(sw_pairs_add(pairs, 1, SW_UNSET, 1, 1, &err),
                     SW_ERR_RANGE);
    ck_assert_int_eq(sw_pairs_add(pairs, 1, 1, SW_UNSET, SW_UNSET, &err), 0);
    sw_pairs_free(pairs);
}
END_TEST

START_TEST(nothing)
{
    sw_error err;
    sw_pairs *pairs = new_pairs();
    const sw_calibrate_in in = question("M12");
    sw_pairs_free(NULL);
    ck_assert_int_eq(sw_pairs_count(NULL), 0);
    ck_assert_int_eq(sw_pairs_read(NULL, "", 0, NULL, &err), SW_ERR_NULL);
    check_refused("pairs", &err, SW_ERR_NULL, "pairs");
    ck_assert_int_eq(sw_pairs_read(pairs, NULL, 0, NULL, &err), SW_ERR_NULL);
    check_refused("text", &err, SW_ERR_NULL, "text");
    ck_assert_int_eq(sw_pairs_add(NULL, 1, 1, SW_UNSET, SW_UNSET, &err),
                     SW_ERR_NULL);
    const sw_pairs_out about = sw_pairs_about(NULL, &err);
    check_refused("pairs", &err, SW_ERR_NULL, "pairs");
    check_numbers("about", &about, SW_STRUCT_PAIRS_OUT, about.status);
    sw_pair_out p = sw_pairs_at(NULL, pairs, 0, &err);
    check_refused("in", &err, SW_ERR_NULL, "in");
    check_numbers("pair", &p, SW_STRUCT_PAIR_OUT, p.status);
    p = sw_pairs_at(&in, NULL, 0, &err);
    check_refused("pairs", &err, SW_ERR_NULL, "pairs");
    ck_assert_int_eq(sw_pairs_at(&in, NULL, 0, NULL).status, SW_ERR_NULL);
    sw_pairs_free(pairs);
}
END_TEST

int main(void)
{
    return RUN_TESTS("pairs", file, faulty, one_by_one, bad_numbers, nothing);
}
