/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Drilling: a handbook example and its tables of factors, a rule of thumb, the
 * lips integrated along the radius, and what must hold of breakthrough.
 */
#include "../values.h"
#include "cut_question.h"

#define LBF 4.4482216152605
#define PI 3.14159265358979323846

/* By hand from (1) to (3) and (5): 800/0.25, D 10, f 0.2, point 118. */
START_TEST(by_hand)
{
    const sw_drilling_in in = drilling(800, 0.25, 10, 0.2);
    const sw_drilling_out out = drill("D 10", &in);
    near(out.chip_mm, 0.085717, 1e-6, 0);
    near(out.kc_MPa, 1478.5, 0.1, 0);
    near(out.torque_Nm, 3.6963, 1e-4, 0);
    near(out.thrust_low_N, 739.3, 0.1, 0);
    near(out.lips_high_N, 1035.0, 0.1, 0);
    near(out.pull_N, 426.8, 0.1, 0);
    near(out.mz_Nm, -out.torque_Nm, 0, 0);
    near(out.z_low_N, -out.thrust_high_N, 0, 0);
    near(out.z_high_N, out.pull_N, 0, 0);
    near(out.thrust_high_N, out.lips_high_N + out.chisel_N, 0, 1e-15);
}
END_TEST

/* I-W001, Machinery's Handbook, drilling example p. 1152: 7/8 in, 200 HB steel,
 * 0.008 in per turn, Kd 24000, W 1.30: 2313 lbf. The factors as printed give
 * it; ours come from powers and from the formula in SI, whose constants have
 * two digits: 0.5 %. */
START_TEST(handbook_example)
{
    const double Kd = 24000, Ff = 0.021, FT = 0.899, B = 1.355, J = 0.030;
    const double W = 1.30, D = 0.875;
    const double lbf = 2 * Kd * Ff * FT * B * W + Kd * D * D * J * W;
    near(lbf, 2313, 0.5, 0);
    sw_drilling_in in = drilling(1000, 0.2, 0.875 * 25.4, 0.008 * 25.4);
    in.work_factor = Kd;
    in.wear_factor = W;
    near(drill("I-W001", &in).handbook_thrust_N / LBF, 2313, 0, 0.005);
}
END_TEST

/* The same page's inch formula for the torque, M = Kd Ff FM A W in in-lbf with
 * factors that are powers of inches, against ours in SI, whose constants are
 * printed with one or two digits: 0.007 is 1.5 % over 0.0069. */
START_TEST(handbook_inches)
{
    for (double D = 0.1; D < 2; D *= 1.4)
        for (double f = 0.002; f < 0.03; f *= 1.6) {
            sw_drilling_in in = drilling(1000, 0.2, D * 25.4, f * 25.4);
            in.work_factor = 20000;
            in.wear_factor = 1.2;
            const sw_drilling_out out = drill("inches", &in);
            const double M = 20000 * pow(f, 0.8) * pow(D, 1.8) * 1.085 * 1.2;
            const double T =
                2 * 20000 * pow(f, 0.8) * pow(D, 0.8) * 1.355 * 1.2 +
                20000 * D * D * 0.030 * 1.2;
            near_in("torque", out.handbook_torque_Nm / (LBF * 0.0254), M, 0,
                    0.015);
            near_in("thrust", out.handbook_thrust_N / LBF, T, 0, 0.015);
        }
}
END_TEST

/* Machinery's Handbook 31st ed. p. 1153 Tables 8 and 9: the powers are the
 * tables within their last digit. */
START_TEST(factors)
{
    values v;
    values_open(&v, "tests/values/drill_factors.csv");
    int rows = 0;
    while (values_next(&v)) {
        const double mm = values_number(&v, "mm");
        const double printed = values_number(&v, "factor");
        near(pow(mm, 0.8), printed, printed < 1 ? 0.0006 : 0.011, 0.0006);
        if (strcmp(values_text(&v, "kind"), "diameter") == 0)
            near(pow(mm, 1.8), values_number(&v, "second"), 0, 0.002);
        rows++;
    }
    ck_assert_int_eq(rows, 22);
}
END_TEST

/* Machinery's Handbook p. 1152 Table 7: A, B, J by the chisel's length. With one
 * of thrust and torque each, Kd W = 1, D = f = 1: M = 2.5e-5 A, T = 0.05 B +
 * 0.007 J. */
START_TEST(chisel)
{
    static const double row[][4] = {
        {0.03, 1.000, 1.100, 0.001}, {0.10, 1.020, 1.235, 0.010},
        {0.18, 1.085, 1.355, 0.030}, {0.25, 1.155, 1.445, 0.065},
        {0.30, 1.235, 1.500, 0.090}, {0.40, 1.395, 1.620, 0.160}};
    double before = 0;
    for (int i = 0; i < 6; i++) {
        sw_drilling_in in = drilling(1000, 0.2, 1, 1);
        in.chisel_ratio = row[i][0];
        in.work_factor = 1000;
        sw_drilling_out out = drill("chisel", &in);
        near(out.handbook_torque_Nm, 0.025 * row[i][1], 0, 1e-12);
        near(out.handbook_thrust_N, 50 * row[i][2] + 7 * row[i][3], 0, 1e-12);
        near(out.chisel_N, out.lips_high_N * 0.14 * row[i][3] / row[i][2], 0,
             1e-12);
        if (i) { /* half way between two rows */
            in.chisel_ratio = (row[i][0] + row[i - 1][0]) / 2;
            near(drill("between", &in).handbook_torque_Nm,
                 (out.handbook_torque_Nm + before) / 2, 0, 1e-12);
        }
        before = out.handbook_torque_Nm;
    }
}
END_TEST

/* I-W003, basic drilling training course, a ballpark: 10 mm drill in steel, 0.3
 * mm per turn, 15 N.m and 2500 N; the handbook's formula at Kd 24000, W 1 gives
 * 15.7 N.m and 4.4 kN. Kienzle's law with constants from turning is well below
 * both: within half. */
START_TEST(rule_of_thumb)
{
    sw_drilling_in in = drilling(1500, 0.22, 10, 0.3);
    in.work_factor = 24000;
    const sw_drilling_out out = drill("I-W003", &in);
    near(out.handbook_torque_Nm, 15.7, 0.05, 0);
    near(out.handbook_thrust_N, 4400, 50, 0);
    near(out.torque_Nm, 15, 0, 0.5);
    ck_assert_double_lt(out.thrust_low_N, 2500);
    ck_assert_double_gt(out.thrust_high_N, 2500);
}
END_TEST

/* The lips cut in pieces along the radius. */
START_TEST(lips_in_pieces)
{
    const sw_drilling_in in = drilling(1500, 0.22, 12, 0.25);
    const sw_drilling_out out = drill("pieces", &in);
    const int n = 1000;
    double M = 0, F = 0;
    const double half = 59 * PI / 180, h = 0.125 * sin(half);
    for (int i = 0; i < n; i++) {
        const double r = 6 * (i + 0.5) / n;
        const double db = 6.0 / n / sin(half);
        const double dF = 1500 * pow(h, -0.22) * h * db;
        M += 2 * dF * r / 1000;
        F += 2 * dF;
    }
    near(out.torque_Nm, M, 0, 1e-5);
    near(out.thrust_low_N, 0.5 * F, 0, 1e-12); /* (D/2) f kc: both lips */
    near(out.chip_width_mm, 6 / sin(half), 0, 1e-13);
}
END_TEST

/* A screw of the drill's helix that gives back all the work put in: pull times
 * lead is torque times a turn. */
START_TEST(breakthrough)
{
    for (double helix = 10; helix <= 45; helix += 7) {
        sw_drilling_in in = drilling(1500, 0.22, 12, 0.25);
        in.helix_deg = helix;
        const sw_drilling_out out = drill("screw", &in);
        /* the lead falls with the helix angle: pi D / tan(beta) */
        const double lead_m = PI * 0.012 / tan(helix * PI / 180);
        near(out.pull_N * lead_m, out.torque_Nm * 2 * PI, 0, 1e-13);
    }
    sw_drilling_in in = drilling(1500, 0.22, 12, 0.25);
    in.helix_deg = 0;
    near(drill("straight", &in).pull_N, 0, 0, 0);
}
END_TEST

START_TEST(power)
{
    sw_drilling_in in = drilling(1500, 0.22, 12, 0.25);
    in.speed_rpm = 800;
    in.unit_power_MPa = 2240;
    const sw_drilling_out out = drill("power", &in);
    near(out.power_W, out.torque_Nm * 800 * 2 * PI / 60, 0, 1e-13);
    near(out.removal_mm3_per_min, PI * 36 * 0.25 * 800, 0, 1e-13);
    near(out.cutting_speed_m_per_min, PI * 12 * 0.8, 0, 1e-13);
    /* drilling formulas of a tool catalogue: P = (D/4) f vc kc */
    near(out.power_W, out.kc_MPa * 3 * 0.25 * out.cutting_speed_m_per_min / 60,
         0, 1e-13);
    /* energy per volume */
    near(out.unit_power_Nm * 2 * PI * 800 / (out.removal_mm3_per_min / 1000),
         2240, 0, 1e-12);
    in.speed_rpm = SW_UNSET;
    near(drill("no speed", &in).power_W, SW_UNSET, 0, 0);
    ck_assert(drill("thick", &in).warnings == 0);
    in.feed_mm = 0.03;
    ck_assert(drill("thin", &in).warnings & SW_WARN_CHIP_THIN);
}
END_TEST

/* Exponents: course page on drilling M = C D^1.9 f^0.8, T = C D f^0.7;
 * Machinery's Handbook D^1.8 f^0.8. The law has D^2 f^(1 - mc) and D f^(1 - mc):
 * within 0.2. */
START_TEST(exponents)
{
    const sw_drilling_in in = drilling(1500, 0.22, 12, 0.25);
    sw_drilling_in wide = in, fast = in;
    wide.diameter_mm *= 1.01;
    fast.feed_mm *= 1.01;
    const sw_drilling_out a = drill("a", &in), b = drill("wide", &wide);
    const sw_drilling_out c = drill("fast", &fast);
    const double step = log(1.01);
    near(log(b.torque_Nm / a.torque_Nm) / step, 1.9, 0.2, 0);
    near(log(b.torque_Nm / a.torque_Nm) / step, 2, 1e-9, 0);
    near(log(c.torque_Nm / a.torque_Nm) / step, 0.8, 0.05, 0);
    near(log(c.thrust_low_N / a.thrust_low_N) / step, 0.7, 0.1, 0);
    near(log(b.thrust_low_N / a.thrust_low_N) / step, 1, 1e-9, 0);
}
END_TEST

START_TEST(refused)
{
    sw_error err;
    sw_drilling_in in = drilling(1500, 0.22, SW_UNSET, 0.2);
    (void)!sw_drilling(&in, &err).status;
    check_refused("D", &err, SW_ERR_MISSING, "diameter_mm");
    in = drilling(1500, 0.22, 10, SW_UNSET);
    (void)!sw_drilling(&in, &err).status;
    check_refused("f", &err, SW_ERR_MISSING, "feed_mm");
    in = drilling(1500, 0.22, 10, 0.2);
    in.thrust_ratio_low = 0.8;
    const sw_drilling_out out = drill("low alone", &in);
    near(out.lips_high_N, out.thrust_low_N, 0, 0);
    in.thrust_ratio_high = 0.7;
    (void)!sw_drilling(&in, &err).status;
    check_refused("ratios", &err, SW_ERR_CONFLICT, "thrust_ratio_low");
}
END_TEST

int main(void)
{
    return RUN_TESTS("drilling", by_hand, handbook_example, handbook_inches,
                     factors, chisel, rule_of_thumb, lips_in_pieces,
                     breakthrough, power, exponents, refused);
}
