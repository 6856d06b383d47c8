/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Screw, cylinder and arms: the thread's flank with its forces as vectors, and
 * what must hold when a question is turned round or scaled. Published values
 * are in tests/cases/clamp.cases.
 */
#include "../common.h"
#include "../near.h"

static sw_screw_in question(void)
{
    sw_screw_in in;
    sw_screw_defaults(&in);
    in.screw_diameter_mm = 20;
    in.pitch_mm = 4;
    in.torque_Nm = 25;
    return in;
}

static sw_screw_out good(const sw_screw_in *in)
{
    sw_error err;
    const sw_screw_out out = sw_screw(in, &err);
    check_no_error("screw", out.status, &err);
    return out;
}

typedef struct {
    double r, t, z; /* outward, round, along the screw */
} vec;

/* Independent: an element of the flank with a normal force of one and friction
 * against its slip. Torque over axial force, in mm; `up` 1 tightening. */
static double torque_per_newton(double dm, double lead, double alpha, double mu,
                                int up)
{
    const double L = atan(lead / (acos(-1) * dm));
    const vec along = {0, cos(L), sin(L)}, across = {cos(alpha), 0, sin(alpha)};
    vec n = {along.t * across.z - along.z * across.t,
             along.z * across.r - along.r * across.z,
             along.r * across.t - along.t * across.r};
    const double size = sqrt(n.r * n.r + n.t * n.t + n.z * n.z);
    /* on the nut's flank: the force along the screw is positive */
    const double s = (n.z < 0 ? -1 : 1) / size;
    const double slip = up ? 1 : -1;
    const double axial = s * n.z - slip * mu * along.z;
    const double round = -s * n.t + slip * mu * along.t;
    return dm / 2 * round / axial;
}

START_TEST(flank_by_vectors)
{
    static const double angle[] = {0, 14.5, 15, 30, 40},
                        mu[] = {0, 0.05, 0.15, 0.3};
    for (int a = 0; a < 5; a++)
        for (int m = 0; m < 4; m++)
            for (int starts = 1; starts <= 4; starts++) {
                sw_screw_in in = question();
                in.flank_angle_deg = angle[a];
                in.mu_thread = mu[m];
                in.mu_collar = 0;
                in.starts = starts;
                const sw_screw_out out = good(&in);
                const double alpha = angle[a] * acos(-1) / 180;
                near(1000 * out.torque_Nm / out.force_N,
                     torque_per_newton(18, 4 * starts, alpha, mu[m], 1), 0,
                     1e-12);
                near(-1000 * out.loosening_torque_Nm / out.force_N,
                     torque_per_newton(18, 4 * starts, alpha, mu[m], 0), 1e-12,
                     1e-12);
            }
}
END_TEST

/* The V thread of the table: the same as sw_torque() in its exact form. */
START_TEST(as_a_nut)
{
    static const char *const thread[] = {"M6", "M12", "1/2-13", "M20"};
    for (int i = 0; i < 4; i++) {
        sw_screw_in in;
        sw_torque_in nut;
        sw_screw_defaults(&in);
        sw_torque_defaults(&nut);
        SET(in.thread, thread[i]);
        SET(nut.thread, thread[i]);
        in.torque_Nm = nut.torque_Nm = 10;
        in.screw = SW_SCREW_THROUGH;
        in.mu_thread = nut.mu_thread = 0.13;
        in.mu_collar = nut.mu_seat = 0.11;
        nut.form = SW_FORM_EXACT;
        const sw_torque_out as_nut = sw_torque(&nut, NULL);
        const sw_screw_out screw = good(&in);
        near_in(thread[i], screw.force_N, as_nut.preload_N, 0, 1e-10);
        /* and its strength, in the same grade */
        near_in(thread[i], screw.tension_MPa, as_nut.tension_MPa, 0, 1e-10);
        near_in(thread[i], screw.stress_MPa, as_nut.equivalent_MPa, 0, 1e-9);
        near_in(thread[i], screw.yield_use, as_nut.yield_use, 0, 1e-9);
        near_in(thread[i], screw.proof_use, as_nut.proof_use, 0, 1e-9);
        ck_assert_int_eq(!!(screw.warnings & SW_WARN_OVER_YIELD),
                         screw.yield_use > 1);
        ck_assert_int_eq(!!(screw.warnings & SW_WARN_OVER_PROOF),
                         screw.proof_use > 0.75);
    }
}
END_TEST

START_TEST(turned_round)
{
    sw_screw_in in = question();
    in.pad_diameter_mm = 18;
    in.handle_length_mm = 120;
    const sw_screw_out one = good(&in);
    near(one.thread_torque_Nm + one.collar_torque_Nm, one.torque_Nm, 0, 1e-14);
    near(one.torque_Nm, 25, 0, 1e-14);
    in.torque_Nm = SW_UNSET;
    in.force_N = one.force_N;
    near(good(&in).torque_Nm, 25, 0, 1e-13);
    in.force_N = SW_UNSET;
    in.hand_force_N = one.hand_force_N;
    near(good(&in).torque_Nm, 25, 0, 1e-13);
    near(good(&in).force_N, one.force_N, 0, 1e-13);
    near(one.hand_force_N, 25000 / 120.0, 0, 1e-13);
    near(one.pressure_MPa, one.force_N / (acos(-1) * 81), 0, 1e-13);
    near(one.force_low_N + one.force_high_N, 2 * one.force_N, 0, 1e-14);
    /* more friction, less force */
    in = question();
    in.mu_thread = 0.2;
    ck_assert(good(&in).force_N < one.force_N);
    ck_assert(good(&in).efficiency < one.efficiency);
    ck_assert(!(one.warnings & SW_WARN_SELF_LOOSENING));
    in = question();
    in.mu_thread = in.mu_collar = 0.01;
    ck_assert(good(&in).warnings & SW_WARN_SELF_LOOSENING);
}
END_TEST

/* A pad that presses evenly rubs at a mean radius of a third of its diameter:
 * by rings. */
START_TEST(collar)
{
    sw_screw_in in = question();
    in.pad_diameter_mm = 30;
    in.pad_hole_mm = 12;
    sw_screw_in full = in;
    ck_assert_int_eq(sw_screw_resolve(&full, NULL), SW_OK);
    double moment = 0, area = 0;
    for (int i = 0; i < 10000; i++) {
        const double r = 6 + 9 * (i + 0.5) / 10000;
        moment += r * r;
        area += r;
    }
    near(full.collar_radius_mm, moment / area, 0, 1e-7);
    in.screw = SW_SCREW_THROUGH;
    ck_assert_int_eq(sw_screw_resolve(&in, NULL), SW_OK);
    near(in.collar_radius_mm, (30 + 12) / 4.0, 0, 0);
}
END_TEST

START_TEST(cylinders)
{
    sw_cylinder_in in;
    sw_cylinder_defaults(&in);
    in.pressure_MPa = 6;
    in.bore_mm = 50;
    const sw_cylinder_out one = sw_cylinder(&in, NULL);
    in.pressure_MPa = 12;
    near(sw_cylinder(&in, NULL).force_N, 2 * one.force_N, 0, 1e-14);
    ck_assert(one.limit_use == SW_UNSET && !one.warnings);
    in.limit_N = one.force_N;
    const sw_cylinder_out capped = sw_cylinder(&in, NULL);
    near(capped.force_N, one.force_N, 0, 0);
    near(capped.limit_use, 2, 0, 1e-14);
    near(capped.pressure_at_limit_MPa, 6, 0, 1e-14);
    ck_assert_uint_eq(capped.warnings, SW_WARN_DEVICE_LIMIT);
    in.pressure_MPa = capped.pressure_at_limit_MPa * (1 - 1e-9);
    ck_assert_uint_eq(sw_cylinder(&in, NULL).warnings, 0);
    in.spring_N = 1e7; /* never pulls */
    near(sw_cylinder(&in, NULL).force_N, 0, 0, 0);
}
END_TEST

/* The rod on two guide points, summed: friction at both against the pull. */
START_TEST(arms)
{
    sw_swing_in in;
    sw_swing_defaults(&in);
    in.arm_mm = 60;
    in.pressure_MPa = 7;
    in.bore_mm = 32;
    in.rated_force_N = 3000;
    in.rated_arm_mm = 50;
    sw_swing_out out = sw_swing(&in, NULL);
    const double pull = 0.9 * 7 * acos(-1) / 4 * (32 * 32 - 16 * 16);
    const double guide = out.available_N * 60 / 32; /* moment over length */
    near(pull - 2 * 0.1 * guide, out.available_N, 0, 1e-12);
    near(out.allowed_N, 2500, 0, 1e-14);
    /* at the allowed pressure the force is just the allowed one */
    in.pressure_MPa = out.allowed_pressure_MPa;
    out = sw_swing(&in, NULL);
    near(out.available_N, 2500, 0, 1e-12);
    near(out.moment_use, 1, 0, 1e-12);
    /* rated at a pressure too: the lower of both */
    const double by_force = out.allowed_pressure_MPa;
    in.rated_pressure_MPa = 2 * by_force;
    near(sw_swing(&in, NULL).allowed_pressure_MPa, by_force, 0, 1e-12);
    in.rated_pressure_MPa = by_force / 2;
    near(sw_swing(&in, NULL).allowed_pressure_MPa, by_force / 2 * 50 / 60, 0,
         1e-12);
    in.rated_pressure_MPa = SW_UNSET;
    /* a longer arm lowers force, allowance and pressure */
    double force = 1e9, allowed = 1e9, pressure = 1e9;
    for (in.arm_mm = 30; in.arm_mm < 150; in.arm_mm += 10) {
        out = sw_swing(&in, NULL);
        must(out.available_N < force && out.allowed_N < allowed &&
                 out.allowed_pressure_MPa < pressure,
             "arm %g", in.arm_mm);
        must(out.force_N <= out.allowed_N, "arm %g", in.arm_mm);
        /* what is counted on can be had: lowering to the highest pressure
         * loses nothing more, and is allowed */
        sw_swing_in lower = in;
        lower.pressure_MPa = fmin(in.pressure_MPa, out.allowed_pressure_MPa);
        near(sw_swing(&lower, NULL).force_N, out.force_N, 0, 1e-12);
        ck_assert(!(sw_swing(&lower, NULL).warnings & SW_WARN_DEVICE_LIMIT));
        lower = in;
        lower.rated_pressure_MPa = 6;
        lower.pressure_MPa = 6;
        const sw_swing_out had = sw_swing(&lower, NULL);
        ck_assert(had.allowed_pressure_MPa <= 6);
        lower.pressure_MPa = had.allowed_pressure_MPa;
        near(sw_swing(&lower, NULL).force_N, had.force_N, 0, 1e-12);
        ck_assert(!(sw_swing(&lower, NULL).warnings & SW_WARN_DEVICE_LIMIT));
        lower.pressure_MPa = 6.001;
        ck_assert(sw_swing(&lower, NULL).warnings & SW_WARN_DEVICE_LIMIT);
        force = out.available_N;
        allowed = out.allowed_N;
        pressure = out.allowed_pressure_MPa;
        near(out.moment_Nm, out.force_N * in.arm_mm / 1000, 0, 1e-14);
    }
}
END_TEST

int main(void)
{
    return RUN_TESTS("screw", flank_by_vectors, as_a_nut, turned_round, collar,
                     cylinders, arms);
}
