/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Chart: lines checked by T = K d F by hand, and against sw_torque().
 */
#include "../common.h"
#include "../near.h"

#define LBF 4.4482216152605
#define FTLBF (LBF * 0.3048)

static sw_chart_in question(const char *thread)
{
    sw_chart_in in;
    sw_chart_defaults(&in);
    SET(in.thread, thread);
    return in;
}

static sw_chart_out good(const char *what, const sw_chart_in *in)
{
    sw_error err;
    const sw_chart_out out = sw_chart(in, &err);
    check_no_error(what, out.status, &err);
    check_numbers(what, &out, SW_STRUCT_CHART_OUT, out.status);
    return out;
}

/* By hand: T = K d F (Mechanical Engineering Design 9th ed., eq. 8-27).
 * 1/2 in at K = 0.2: 0.2 * 0.5 in * 1000 lbf = 100 in-lbf = 8.3333 ft-lbf;
 * M12: 0.2 * 12 mm * 1 kN = 2.4 N.m. */
START_TEST(by_hand)
{
    sw_chart_in in = question("1/2-13");
    near(good("1/2-13", &in).torque_per_klbf_ftlbf, 100.0 / 12, 0, 1e-12);
    in = question("1/2-20");
    near(good("1/2-20", &in).torque_per_klbf_ftlbf, 100.0 / 12, 0, 1e-12);
    in = question("M12");
    const sw_chart_out m12 = good("M12", &in);
    near(m12.torque_per_kN_Nm, 2.4, 0, 1e-12);
    near(m12.nut_factor, 0.2, 0, 1e-12);
    /* 75 % of the published proof load 48900 N (M12 8.8: 580 MPa on 84.3 mm2,
     * ISO 898-1), so 36.7 kN and 88 N.m; tables round to 0.6 % */
    near(m12.limit_preload_N, 0.75 * 48900, 0, 0.006);
    near(m12.limit_torque_Nm, 88, 0, 0.006);
    in = question("3/4-16");
    SET(in.lubrication, "oiled");
    /* 0.18 * 0.75 in * 1000 lbf / 12 */
    near(good("3/4-16", &in).torque_per_klbf_ftlbf, 11.25, 0, 1e-12);
}
END_TEST

/* The unit columns say the same thing. */
START_TEST(columns)
{
    for (int i = 0; i < sw_thread_count(); i++) {
        sw_chart_in in = question(sw_thread_name(i));
        in.preload_N = 5000;
        const sw_chart_out c = good(in.thread, &in);
        near_in(in.thread, c.torque_per_klbf_ftlbf * FTLBF / (1000 * LBF),
                c.torque_per_kN_Nm / 1000, 0, 1e-13);
        near_in(in.thread, c.torque_Nm, 5 * c.torque_per_kN_Nm, 0, 1e-13);
        sw_torque_in t;
        sw_torque_defaults(&t);
        SET(t.thread, in.thread);
        t.preload_N = 5000;
        near_in(in.thread, c.torque_Nm, sw_torque(&t, NULL).torque_Nm, 0,
                1e-13);
        if (c.warnings & SW_WARN_STUD_STRENGTH_UNKNOWN) {
            ck_assert(c.limit_preload_N == SW_UNSET);
            ck_assert(c.limit_torque_Nm == SW_UNSET);
            ck_assert(c.preload_over_limit == SW_UNSET);
            continue;
        }
        near_in(in.thread, c.preload_over_limit * c.limit_preload_N, 5000, 0,
                1e-13);
        must(((c.warnings & SW_WARN_OVER_PROOF) != 0) ==
                 (c.limit_preload_N < 5000),
             "%s", in.thread);
        t.preload_N = c.limit_preload_N;
        near_in(in.thread, sw_torque(&t, NULL).proof_use, 0.75, 0, 1e-12);
        near_in(in.thread, sw_torque(&t, NULL).torque_Nm, c.limit_torque_Nm, 0,
                1e-12);
    }
}
END_TEST

START_TEST(options)
{
    sw_chart_in in = question("M12");
    const sw_chart_out plain = good("plain", &in);
    ck_assert(plain.preload_N == SW_UNSET && plain.torque_Nm == SW_UNSET &&
              plain.preload_over_limit == SW_UNSET);
    in.proof_fraction = 0.375;
    near(good("half", &in).limit_preload_N, plain.limit_preload_N / 2, 0,
         1e-13);
    in.nut_factor = 0.1;
    near(good("K", &in).torque_per_kN_Nm, 1.2, 0, 1e-12);
    near(good("K", &in).limit_torque_Nm, plain.limit_torque_Nm / 4, 0, 1e-12);
    in = question("M12");
    SET(in.grade, "A2-70"); /* no proof stress: the same fraction of yield */
    const double area = sw_thread("M12", NULL).stress_area_mm2;
    near(good("A2-70", &in).limit_preload_N, 0.75 * 450 * area, 0, 1e-13);
    SET(in.thread, "M42"); /* the class ends at M39: no limit, but a torque */
    SET(in.grade, "8.8");
    const sw_chart_out m42 = good("M42", &in);
    ck_assert(m42.warnings & SW_WARN_STUD_STRENGTH_UNKNOWN);
    ck_assert(m42.limit_torque_Nm == SW_UNSET);
    near(m42.torque_per_kN_Nm, 0.2 * 42, 0, 1e-12);
    in = question("M12");
    SET(in.lubrication, "mu-class-b"); /* friction instead of K */
    const sw_chart_out b = good("class B", &in);
    near(b.torque_per_kN_Nm, b.nut_factor * 12, 0, 1e-13);
}
END_TEST

START_TEST(refused)
{
    static const struct {
        const char *thread, *lubrication, *grade;
        int code;
        const char *field;
    } row[] = {
        {"", "", "", SW_ERR_MISSING, "thread"},
        {"M13", "", "", SW_ERR_UNKNOWN, "thread"},
        {"M12", "soap", "", SW_ERR_UNKNOWN, "lubrication"},
        {"M12", "", "8.9", SW_ERR_UNKNOWN, "grade"},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_chart_in in = question(row[i].thread);
        SET(in.lubrication, row[i].lubrication);
        SET(in.grade, row[i].grade);
        sw_error err;
        const sw_chart_out c = sw_chart(&in, &err);
        check_refused(row[i].thread, &err, row[i].code, row[i].field);
        check_numbers(row[i].thread, &c, SW_STRUCT_CHART_OUT, c.status);
    }
    sw_chart_in in = question("M1.6");
    in.nut_factor = 0.034; /* stretching alone takes 0.0348 */
    sw_error err;
    ck_assert_int_eq(sw_chart(&in, &err).status, SW_ERR_RANGE);
    check_refused("K too low", &err, SW_ERR_RANGE, "nut_factor");
}
END_TEST

int main(void)
{
    return RUN_TESTS("chart", by_hand, columns, options, refused);
}
