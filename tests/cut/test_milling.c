/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Milling: a published example, closed forms without an exponent, cases worked
 * by a script of other make, and a cutter that is turned through the work tooth
 * by tooth, slice by slice.
 */
#include "../random.h"
#include "cut_question.h"

#define PI 3.14159265358979323846
#define RAD (PI / 180)

/* ---- a cutter turned through the work ---- */

/* From first principles: where each slice of each tooth stands, whether there
 * is work, how far it has moved into it since the last tooth, and the force it
 * puts on the work: along its own velocity, away from the axis, and up. */
static void slices_at(const sw_milling_in *in, double turn, double F[6])
{
    enum { SLICES = 2000 };
    const double r = in->diameter_mm / 2, kappa = in->corner_deg * RAD;
    const double tan_b = tan(in->helix_deg * RAD);
    const double dz = in->depth_mm / SLICES;
    double right = -r, left = r; /* the strip of work, along y */
    if (in->mode == SW_MILL_FACE) {
        left = in->offset_mm + in->width_mm / 2;
        right = in->offset_mm - in->width_mm / 2;
    } else if (in->mode == SW_MILL_SIDE && in->way == SW_CUT_UP) {
        right = r - in->width_mm;
    } else if (in->mode == SW_MILL_SIDE) {
        left = -r + in->width_mm;
    }
    for (int i = 0; i < 6; i++)
        F[i] = 0;
    for (int tooth = 0; tooth < (int)in->teeth; tooth++)
        for (int k = 0; k < SLICES; k++) {
            const double z = (k + 0.5) * dz;
            /* counterclockwise from x, as mathematics has it; the cutter
             * turns clockwise, and higher slices lag behind */
            const double a =
                PI / 2 - turn - tooth * 2 * PI / in->teeth + z * tan_b / r;
            const double ux = cos(a), uy = sin(a);
            if (ux <= 0 || r * uy > left || r * uy < right)
                continue; /* behind the cutter, or beside the work */
            const double h = in->feed_per_tooth_mm * ux * sin(kappa);
            if (h <= 0)
                continue;
            const double Ft =
                in->kc11_MPa * pow(h, -in->mc) * h * dz / sin(kappa);
            const double Fr = in->radial_ratio * Ft * sin(kappa);
            /* velocity of a clockwise turn: (uy, -ux) */
            const double fx = Ft * uy + Fr * ux, fy = -Ft * ux + Fr * uy;
            const double fz = Ft * tan_b * in->lift_share -
                              in->radial_ratio * Ft * cos(kappa);
            F[0] += fx;
            F[1] += fy;
            F[2] += fz;
            F[3] += (r * uy * fz - z * fy) / 1000;
            F[4] += (z * fx - r * ux * fz) / 1000;
            F[5] += (r * ux * fy - r * uy * fx) / 1000;
        }
}

static void rotate(double F[6], double deg)
{
    const double c = cos(deg * RAD), s = sin(deg * RAD);
    for (int i = 0; i < 6; i += 3) {
        const double x = F[i], y = F[i + 1];
        F[i] = c * x - s * y;
        F[i + 1] = s * x + c * y;
    }
}

static sw_milling_in drawn(randoms *r, int i)
{
    sw_milling_in in =
        milling(random_between(r, 300, 3000), random_between(r, 0, 0.35),
                random_between(r, 4, 60), 1 + i % 7,
                random_between(r, 0.03, 0.3), random_between(r, 0.5, 20));
    in.mode = 1 + i % 3;
    in.way = in.mode == SW_MILL_SIDE ? 1 + i / 3 % 2 : 0;
    if (in.mode != SW_MILL_SLOT)
        in.width_mm = in.diameter_mm * random_between(r, 0.05, 0.9);
    if (in.mode == SW_MILL_FACE)
        in.offset_mm = in.diameter_mm * random_between(r, -0.3, 0.3);
    in.helix_deg = i % 4 ? random_between(r, 1, 50) : 0;
    in.corner_deg = i % 5 ? 90 : random_between(r, 30, 90);
    in.radial_ratio = random_between(r, 0, 0.6);
    in.lift_share = random_between(r, 0.3, 1);
    in.feed_direction_deg = i % 2 ? random_between(r, -180, 180) : 0;
    return in;
}

/* Every instant. Slices are cut off at the ends of the arc as whole ones: the
 * tolerance is one slice of one tooth at its largest force (2000 of them). */
START_TEST(turned_at_instants)
{
    randoms r = {1};
    for (int i = 0; i < 60; i++) {
        const sw_milling_in in = drawn(&r, i);
        const double one = in.kc11_MPa * in.depth_mm *
                           pow(in.feed_per_tooth_mm, 1 - in.mc) / 200;
        for (int k = 0; k < 7; k++) {
            sw_error err;
            const sw_cut_load_out load = sw_milling_load_at(&in, k, 7, &err);
            check_no_error("load", load.status, &err);
            check_numbers("load", &load, SW_STRUCT_CUT_LOAD_OUT, load.status);
            double F[6];
            near(load.turn_deg, 360 / in.teeth * k / 7, 0, 1e-14);
            slices_at(&in, load.turn_deg * RAD, F);
            rotate(F, in.feed_direction_deg);
            char what[32];
            snprintf(what, sizeof what, "%d at %d of 7", i, k);
            const double arm = hypot(in.diameter_mm / 2, in.depth_mm) / 1000;
            near_in(what, load.x_N, F[0], one, 0);
            near_in(what, load.y_N, F[1], one, 0);
            near_in(what, load.z_N, F[2], one, 0);
            near_in(what, load.mx_Nm, F[3], 2 * one * arm, 0);
            near_in(what, load.my_Nm, F[4], 2 * one * arm, 0);
            near_in(what, load.mz_Nm, F[5], one * arm, 0);
        }
    }
}
END_TEST

/* Mean and extremes over a pitch, the same way: 1 % of the peak. */
START_TEST(turned_round)
{
    enum { STEPS = 240 };
    randoms r = {2};
    for (int i = 0; i < 24; i++) {
        const sw_milling_in in = drawn(&r, i);
        const sw_milling_out out = mill("turned", &in);
        double mean[6] = {0}, low[6], high[6], peak = 0;
        for (int k = 0; k < STEPS; k++) {
            double F[6];
            slices_at(&in, 2 * PI / in.teeth * (k + 0.5) / STEPS, F);
            rotate(F, in.feed_direction_deg);
            peak = fmax(peak, hypot(F[0], F[1]));
            for (int c = 0; c < 6; c++) {
                mean[c] += F[c] / STEPS;
                low[c] = k ? fmin(low[c], F[c]) : F[c];
                high[c] = k ? fmax(high[c], F[c]) : F[c];
            }
        }
        const double *m = &out.mean_x_N, *range = &out.x_low_N;
        char what[24];
        snprintf(what, sizeof what, "drawn %d", i);
        near_in(what, out.peak_N, peak, 0, 0.01);
        /* in order, as the struct has them */
        const double arm = hypot(in.diameter_mm / 2, in.depth_mm) / 1000;
        for (int c = 0; c < 6; c++) {
            const double scale = c < 3 ? peak : peak * arm;
            near_in(what, m[c], mean[c], 0.005 * scale, 0);
            near_in(what, range[2 * c], low[c], 0.02 * scale, 0);
            near_in(what, range[2 * c + 1], high[c], 0.02 * scale, 0);
            must(range[2 * c] <= low[c] + 0.003 * scale &&
                     high[c] <= range[2 * c + 1] + 0.003 * scale,
                 "%s: %d beyond the extremes", what, c);
        }
        near(hypot(out.peak_x_N, out.peak_y_N), out.peak_N, 0, 1e-13);
        near(out.peak_x_N, out.peak_N * cos(out.peak_direction_deg * RAD),
             1e-9 * peak, 0);
    }
}
END_TEST

/* ---- worked cases ---- */

/* I-W004, Fundamentals of Machining Processes 2nd ed. p. 189: D 30, Z 8, depth 4,
 * 0.1 a tooth, 1000 N/mm2, feed 120 mm/min: 150 rpm, 14.13 m/min, mean
 * tangential force 1019 N, 0.24 kW. Printed digits (14.13 with pi 3.14). With
 * four teeth always in the slot the part feels a constant (0, -800, 0). */
START_TEST(published_slot)
{
    sw_milling_in in = milling(1000, 0, 30, 8, 0.1, 4);
    in.radial_ratio = in.helix_deg = 0;
    in.speed_rpm = 150;
    const sw_milling_out out = mill("I-W004", &in);
    near(out.tangential_N, 1019, 0.5, 0);
    near(out.cutting_speed_m_per_min, 14.13, 0.01, 0);
    near(out.power_W / 1000, 0.24, 0.005, 0);
    near(out.feed_rate_mm_per_min, 120, 0, 1e-13);
    near(out.mean_y_N, -800, 0, 1e-9);
    near(out.y_low_N, -800, 0, 1e-9);
    near(out.y_high_N, -800, 0, 1e-9);
    near(out.mean_x_N, 0, 1e-6, 0);
    near(out.peak_N, 800, 0, 1e-9);
    near(out.mean_mz_Nm, -15.279, 0.0005, 0);
    near(out.teeth_mean, 4, 0, 1e-12);
    near(out.teeth_least, 4, 0, 0);
    near(out.teeth_most, 4, 0, 0);
}
END_TEST

/* I-W007 and I-W010, Manufacturing Engineering and Technology: removal, power
 * and torque by volume. 8.44 kW, 7.5 kW, 716 N.m, printed digits. */
START_TEST(published_power)
{
    sw_milling_in in = milling(1000, 0, 150, 8, 0.125, 3);
    in.mode = SW_MILL_FACE;
    in.width_mm = 0.75 * 150;
    in.speed_rpm = 300;
    in.unit_power_MPa = 5000;
    sw_milling_out out = mill("I-W007", &in);
    near(out.removal_mm3_per_min, 101250, 0, 1e-12);
    near(out.unit_power_W / 1000, 8.44, 0.005, 0);
    in = milling(1000, 0, 50, 20, 0.25, 100);
    in.mode = SW_MILL_SIDE;
    in.way = SW_CUT_UP;
    in.width_mm = 3;
    in.speed_rpm = 100;
    in.unit_power_MPa = 3000;
    out = mill("I-W010", &in);
    near(out.removal_mm3_per_min, 150000, 0, 1e-12);
    near(out.unit_power_W / 1000, 7.5, 0.005, 0);
    near(out.unit_power_N * 25 / 1000, 716, 0.5, 0);
}
END_TEST

/* Worked in a prototype of other make (Python), to the digits it printed; its
 * peaks came from slices in steps, so they get 1 %. */
START_TEST(prototype)
{
    static const struct {
        double fz, ap, ae, x, y, z, mz, hm, peak;
    } climb[] = {
        {0.08, 10, 3, -196.19, -273.48, 192.62, -2.00176, 0.038197, 726.5},
        {0.08, 10, 0.5, -60.67, -37.41, 39.62, 0, 0, 156.7}};
    for (int i = 0; i < 2; i++) {
        sw_milling_in in = milling(800, 0.25, 12, 3, climb[i].fz, climb[i].ap);
        in.mode = SW_MILL_SIDE;
        in.way = SW_CUT_CLIMB;
        in.width_mm = climb[i].ae;
        const sw_milling_out out = mill("climb", &in);
        near(out.mean_x_N, climb[i].x, 0.005, 0);
        near(out.mean_y_N, climb[i].y, 0.005, 0);
        near(out.mean_z_N, climb[i].z, 0.005, 0);
        near(out.peak_N, climb[i].peak, 0, 0.011);
        if (climb[i].hm > 0) {
            near(out.mean_mz_Nm, climb[i].mz, 5e-6, 0);
            near(out.chip_mean_mm, climb[i].hm, 1e-6, 0);
            near(out.peak_x_N, -417.8, 0.5, 0);
            near(out.peak_y_N, -594.3, 3, 0);
            near(out.peak_z_N, 415.0, 2, 0);
        }
    }
    sw_milling_in in = milling(800, 0.25, 12, 3, 0.05, 6);
    sw_milling_out out = mill("slot", &in);
    near(out.mean_x_N, 120.14, 0.005, 0);
    near(out.mean_y_N, -400.45, 0.005, 0);
    near(out.mean_z_N, 303.99, 0.005, 0);
    near(out.mean_mz_Nm, -3.1591, 5e-5, 0);
    near(out.chip_mean_mm, 0.031831, 1e-6, 0);
    near(out.tangential_N, 526.5, 0.05, 0);
    near(out.mean_chip_N, 542.6, 0.05, 0);
    near(out.peak_N, 517.2, 0.1, 0);
    near(out.peak_x_N, 148.7, 0.2, 0);
    near(out.peak_y_N, -495.4, 0.1, 0);
    near(out.x_low_N, -42.9, 0.1, 0);
    near(out.x_high_N, 287.0, 0.1, 0);
    near(out.y_low_N, -507.6, 0.1, 0);
    near(out.y_high_N, -301.1, 0.1, 0);
    near(out.z_low_N, 282.6, 0.1, 0);
    near(out.z_high_N, 342.0, 0.1, 0);
    in = milling(1500, 0.22, 80, 6, 0.15, 2);
    in.mode = SW_MILL_FACE;
    in.width_mm = 60;
    in.corner_deg = 45;
    in.radial_ratio = 0.5;
    in.helix_deg = 0;
    out = mill("face", &in);
    near(out.mean_x_N, 342.36, 0.005, 0);
    near(out.mean_y_N, -968.33, 0.005, 0);
    near(out.mean_z_N, -383.12, 0.005, 0);
    near(out.mean_mz_Nm, -43.345, 5e-4, 0);
    near(out.peak_N, 1210.6, 0.1, 0);
    near(out.tangential_N, 1083.6, 0.05, 0);
}
END_TEST

/* ---- closed forms and properties ---- */

/* Without an exponent the mean has a closed form: integrals of sin cos, sin2.
 * And the mean chip and the volume (u = kc) give the same force exactly. */
START_TEST(closed_form)
{
    randoms r = {3};
    for (int i = 0; i < 200; i++) {
        sw_milling_in in = drawn(&r, i);
        in.mc = 0;
        in.corner_deg = 90;
        in.feed_direction_deg = 0;
        in.unit_power_MPa = in.kc11_MPa;
        const sw_milling_out out = mill("closed", &in);
        const double a = out.entry_deg * RAD, b = out.exit_deg * RAD;
        const double sc = (sin(b) * sin(b) - sin(a) * sin(a)) / 2;
        const double ss = (b - a) / 2 - (sin(2 * b) - sin(2 * a)) / 4;
        const double s = cos(a) - cos(b);
        const double k = in.kc11_MPa * in.feed_per_tooth_mm * in.depth_mm *
                         in.teeth / (2 * PI);
        const double kr = in.radial_ratio, R = in.diameter_mm / 2000;
        const double lift = in.lift_share * tan(in.helix_deg * RAD);
        const double most = k * (b - a) * 1e-9 + 1e-9;
        near(out.mean_x_N, k * (sc + kr * ss), most, 0);
        near(out.mean_y_N, k * (-ss + kr * sc), most, 0);
        near(out.mean_z_N, k * lift * s, most, 0);
        near(out.mean_mz_Nm, -k * R * s, most, 0);
        near(out.tangential_N, k * s, most, 0);
        near(out.mean_chip_N, k * s, most, 0);
        near(out.unit_power_N, k * s, most, 0);
        /* moments: Fz acts where the teeth are, at (r sin, r cos) */
        const double H = in.depth_mm / 2000;
        near(out.mean_mx_Nm, R * k * lift * sc - H * out.mean_y_N, most, 0);
        near(out.mean_my_Nm, H * out.mean_x_N - R * k * lift * ss, most, 0);
    }
}
END_TEST

/* The way the part is pushed: slot to the right of the feed, climb back under
 * the cutter, up ahead of it. */
START_TEST(signs)
{
    for (double ae = 0.5; ae < 6; ae += 0.5) {
        sw_milling_in in = milling(800, 0.25, 12, 3, 0.08, 10);
        ck_assert_double_lt(mill("slot", &in).mean_y_N, 0);
        in.mode = SW_MILL_SIDE;
        in.width_mm = ae;
        in.radial_ratio = 0.2;
        in.way = SW_CUT_CLIMB;
        ck_assert_double_lt(mill("climb", &in).mean_x_N, 0);
        in.way = SW_CUT_UP;
        const sw_milling_out up = mill("up", &in);
        ck_assert_double_gt(up.mean_x_N, 0);
        ck_assert_double_lt(up.mean_mz_Nm, 0);
        ck_assert_double_gt(up.mean_z_N, 0); /* the helix lifts */
    }
}
END_TEST

/* Side milling over the whole diameter is a slot, and so is a face as wide. Up
 * and climb of a straight cutter without radial force are mirror images. */
START_TEST(limits)
{
    sw_milling_in in = milling(800, 0.25, 12, 3, 0.08, 5);
    const sw_milling_out slot = mill("slot", &in);
    in.width_mm = 12;
    for (int mode = SW_MILL_SIDE; mode <= SW_MILL_FACE; mode++) {
        in.mode = mode;
        const sw_milling_out other = mill("as wide", &in);
        near(other.mean_x_N, slot.mean_x_N, 0, 1e-9);
        near(other.mean_y_N, slot.mean_y_N, 0, 1e-9);
        near(other.peak_N, slot.peak_N, 0, 1e-7);
    }
    in.mode = SW_MILL_SIDE;
    in.width_mm = 4;
    in.helix_deg = in.radial_ratio = 0;
    in.way = SW_CUT_UP;
    const sw_milling_out up = mill("up", &in);
    in.way = SW_CUT_CLIMB;
    const sw_milling_out climb = mill("climb", &in);
    near(up.mean_x_N, -climb.mean_x_N, 0, 1e-9);
    near(up.mean_y_N, climb.mean_y_N, 0, 1e-9);
    near(up.peak_N, climb.peak_N, 0, 1e-7);
    near(up.entry_deg, 180 - climb.exit_deg, 1e-9, 0);
    near(up.exit_deg, 180 - climb.entry_deg, 0, 1e-12);
    /* a strip at the edge of the cutter is side milling */
    in.mode = SW_MILL_FACE;
    in.offset_mm = 6 - 2;
    near(mill("left", &in).mean_x_N, up.mean_x_N, 0, 1e-9);
    in.offset_mm = -4;
    near(mill("right", &in).mean_x_N, climb.mean_x_N, 0, 1e-9);
    /* and one that hangs over is cut off there */
    in.offset_mm = 5;
    in.width_mm = 6;
    near(mill("over", &in).mean_x_N, up.mean_x_N, 0, 1e-9);
}
END_TEST

/* A helix so small that it makes no difference, and the straight edge: the
 * mean is the same for every helix; the swing goes over without a step. */
START_TEST(helices)
{
    sw_milling_in in = milling(800, 0.25, 12, 3, 0.08, 5);
    in.mode = SW_MILL_SIDE;
    in.way = SW_CUT_CLIMB;
    in.width_mm = 4;
    in.lift_share = 0;
    in.helix_deg = 0;
    const sw_milling_out straight = mill("straight", &in);
    for (double helix = 1e-6; helix < 60; helix *= 10) {
        in.helix_deg = helix;
        const sw_milling_out out = mill("helix", &in);
        near(out.mean_x_N, straight.mean_x_N, 0, 1e-9);
        near(out.mean_mx_Nm, straight.mean_mx_Nm, 1e-9, 1e-8);
        ck_assert_double_le(out.peak_N, straight.peak_N * (1 + 1e-7));
        if (helix < 1e-3)
            near(out.peak_N, straight.peak_N, 0, 1e-4);
    }
    /* a lag of whole pitches: always as many teeth, at the same places */
    in = milling(800, 0.25, 12, 3, 0.08, 5);
    in.depth_mm = 12 * PI / 3 / tan(30 * RAD);
    const sw_milling_out even = mill("even", &in);
    near(even.x_low_N, even.x_high_N, 0, 1e-7);
    near(even.y_low_N, even.mean_y_N, 0, 1e-7);
    near(even.peak_N, hypot(even.mean_x_N, even.mean_y_N), 0, 1e-7);
}
END_TEST

/* An arc of exactly two pitches, straight edges: when one tooth enters another
 * leaves, so there are two, never three. By hand: sin a + sin(a + 60 deg), a =
 * 30 .. 90 deg, is between 1.5 and sqrt 3; three at 30, 90, 150 would be 2. */
START_TEST(one_in_one_out)
{
    sw_milling_in in = milling(1000, 0, 80, 6, 0.1, 2);
    in.mode = SW_MILL_FACE;
    in.width_mm = 80 * cos(30 * RAD);
    in.radial_ratio = in.helix_deg = 0;
    const sw_milling_out out = mill("two", &in);
    near(out.teeth_mean, 2, 1e-12, 0);
    near(out.teeth_least, 2, 0, 0);
    near(out.teeth_most, 2, 0, 0);
    near(out.torque_peak_Nm, 200 * sqrt(3) * 0.04, 0, 1e-9);
    near(-out.mz_high_Nm, 200 * 1.5 * 0.04, 0, 1e-7);
    for (int i = 0; i < 12; i++) {
        sw_error err;
        const sw_cut_load_out load = sw_milling_load_at(&in, i, 12, &err);
        const double a = fmod(load.turn_deg + 30, 60) + 30;
        near(load.mz_Nm, -8 * (sin(a * RAD) + sin((a + 60) * RAD)), 0, 1e-9);
    }
}
END_TEST

/* A narrow strip in front of a cutter with one tooth and a long helix: the edge
 * comes in on the left, where it pushes ahead, and goes out on the right, where
 * it pulls as hard back. */
START_TEST(in_and_out)
{
    sw_milling_in in = milling(1000, 0, 40, 1, 0.1, 10);
    in.mode = SW_MILL_FACE;
    in.width_mm = 0.2;
    in.radial_ratio = 0;
    const sw_milling_out out = mill("strip", &in);
    ck_assert_double_gt(out.x_high_N, 1e-3);
    near(out.x_low_N, -out.x_high_N, 0, 1e-6);
    near(out.mean_x_N, 0, 1e-9, 0);
    /* from where its tip enters to where its top leaves */
    const double arc = 2 * asin(0.005), lag = 20 * tan(30 * RAD) / 40;
    near(out.teeth_mean, (arc + lag) / (2 * PI), 0, 1e-12);
    near(out.teeth_least, 0, 0, 0);
    near(out.teeth_most, 1, 0, 0);
}
END_TEST

/* The feed's direction turns every vector about z; a quarter turn is exact. */
START_TEST(directions)
{
    sw_milling_in in = milling(800, 0.25, 12, 3, 0.08, 5);
    in.mode = SW_MILL_SIDE;
    in.way = SW_CUT_CLIMB;
    in.width_mm = 4;
    const sw_milling_out a = mill("along x", &in);
    in.feed_direction_deg = 90;
    const sw_milling_out b = mill("along y", &in);
    near(b.mean_x_N, -a.mean_y_N, 0, 1e-12);
    near(b.mean_y_N, a.mean_x_N, 0, 1e-12);
    near(b.x_low_N, -a.y_high_N, 1e-9, 1e-12);
    near(b.y_high_N, a.x_high_N, 1e-9, 1e-12);
    near(b.mean_mx_Nm, -a.mean_my_Nm, 0, 1e-12);
    near(b.mean_mz_Nm, a.mean_mz_Nm, 0, 1e-14);
    near(b.peak_N, a.peak_N, 0, 1e-9);
}
END_TEST

/* The load at instants comes back after a pitch, stays within the extremes, and
 * its mean is the mean. */
START_TEST(instants)
{
    sw_milling_in in = milling(800, 0.25, 12, 3, 0.08, 10);
    in.mode = SW_MILL_SIDE;
    in.way = SW_CUT_CLIMB;
    in.width_mm = 3;
    const sw_milling_out out = mill("climb", &in);
    double x = 0, mz = 0, most = 0;
    for (int i = 0; i < 720; i++) {
        sw_error err;
        const sw_cut_load_out load = sw_milling_load_at(&in, i, 720, &err);
        x += load.x_N / 720;
        mz += load.mz_Nm / 720;
        most = fmax(most, hypot(load.x_N, load.y_N));
        ck_assert(load.x_N >= out.x_low_N - 1e-6 &&
                  load.x_N <= out.x_high_N + 1e-6);
        ck_assert(load.mx_Nm >= out.mx_low_Nm - 1e-6 &&
                  load.mx_Nm <= out.mx_high_Nm + 1e-6);
    }
    near(x, out.mean_x_N, 0, 1e-4);
    near(mz, out.mean_mz_Nm, 0, 1e-4);
    near(most, out.peak_N, 0, 1e-3); /* the peak is a kink */
    ck_assert_double_le(most, out.peak_N * (1 + 1e-9));
    sw_error err;
    static const int bad[][2] = {{-1, 12}, {12, 12}, {0, 0}, {0, 3601}};
    for (int i = 0; i < 4; i++) {
        const sw_cut_load_out load =
            sw_milling_load_at(&in, bad[i][0], bad[i][1], &err);
        check_refused("index", &err, SW_ERR_RANGE, i < 2 ? "index" : "count");
        check_numbers("index", &load, SW_STRUCT_CUT_LOAD_OUT, load.status);
    }
}
END_TEST

/* No tooth pushes with more than kc ap fz: the whole product with the width is
 * no force at all. Scaling: forces go with kc, and with the depth as they do. */
START_TEST(bounds)
{
    sw_milling_in in = milling(800, 0, 12, 1, 0.05, 10);
    in.radial_ratio = in.helix_deg = 0;
    near(mill("one tooth", &in).peak_N, 400, 0, 1e-9);
    randoms r = {4};
    for (int i = 0; i < 40; i++) {
        sw_milling_in one = drawn(&r, i);
        const sw_milling_out a = mill("one", &one);
        one.kc11_MPa *= 3;
        const sw_milling_out b = mill("three", &one);
        near(b.mean_x_N, 3 * a.mean_x_N, 1e-9, 1e-12);
        near(b.peak_N, 3 * a.peak_N, 0, 1e-9);
        near(b.z_high_N, 3 * a.z_high_N, 1e-9, 1e-9);
        one.kc11_MPa /= 3;
        one.helix_deg = 0;
        const sw_milling_out c = mill("straight", &one);
        one.depth_mm /= 2;
        const sw_milling_out d = mill("half as deep", &one);
        near(c.mean_y_N, 2 * d.mean_y_N, 1e-9, 1e-12);
        near(c.peak_N, 2 * d.peak_N, 0, 1e-9);
        near(c.torque_peak_Nm, -c.mz_low_Nm, 0, 0);
    }
}
END_TEST

/* The second opinion by the mean chip: 3 to 4 % over the integral at mc 0.25
 * for slots and sides, 0.1 to 0.3 % for a face in the middle. */
START_TEST(mean_chip)
{
    sw_milling_in in = milling(800, 0.25, 12, 3, 0.05, 6);
    sw_milling_out out = mill("slot", &in);
    near(out.mean_chip_N / out.tangential_N, 1.035, 0.006, 0);
    in.mode = SW_MILL_SIDE;
    in.width_mm = 3;
    out = mill("side", &in);
    near(out.mean_chip_N / out.tangential_N, 1.035, 0.006, 0);
    in = milling(1500, 0.22, 80, 6, 0.15, 2);
    in.mode = SW_MILL_FACE;
    in.width_mm = 60;
    out = mill("face", &in);
    near(out.mean_chip_N / out.tangential_N, 1.002, 0.0015, 0);
}
END_TEST

START_TEST(defaults)
{
    sw_error err;
    sw_milling_in in = milling(800, 0.25, 12, 3, 0.05, 6);
    in.mode = 0;
    ck_assert_int_eq(sw_milling_resolve(&in, &err), SW_OK);
    ck_assert_int_eq(in.mode, SW_MILL_SLOT);
    near(in.width_mm, 12, 0, 0);
    in = milling(800, 0.25, 12, 3, 0.05, 6);
    in.mode = 0;
    in.width_mm = 3;
    ck_assert_int_eq(sw_milling_resolve(&in, &err), SW_OK);
    ck_assert_int_eq(in.mode, SW_MILL_SIDE);
    ck_assert_int_eq(in.way, SW_CUT_CLIMB);
    /* what has no part in the mode */
    in = milling(800, 0.25, 12, 3, 0.05, 6);
    in.way = SW_CUT_UP;
    ck_assert(mill("way", &in).warnings & SW_WARN_UNUSED_INPUT);
    in.way = 0;
    in.offset_mm = 1;
    ck_assert(mill("offset", &in).warnings & SW_WARN_UNUSED_INPUT);
    in.offset_mm = SW_UNSET;
    ck_assert(mill("plain", &in).warnings == 0);
    in.feed_per_tooth_mm = 0.02;
    ck_assert(mill("thin", &in).warnings & SW_WARN_CHIP_THIN);
}
END_TEST

START_TEST(refused)
{
    static const char *const field[] = {"diameter_mm", "teeth",
                                        "feed_per_tooth_mm", "depth_mm"};
    sw_error err;
    for (int i = 0; i < 4; i++) {
        sw_milling_in in = milling(800, 0.25, 12, 3, 0.05, 6);
        set_field(&in, sw_field_named(SW_STRUCT_MILLING_IN, field[i]),
                  SW_UNSET);
        const sw_milling_out out = sw_milling(&in, &err);
        check_refused(field[i], &err, SW_ERR_MISSING, field[i]);
        check_numbers(field[i], &out, SW_STRUCT_MILLING_OUT, out.status);
    }
    sw_milling_in in = milling(800, 0.25, 12, 3, 0.05, 6);
    in.mode = SW_MILL_FACE;
    (void)!sw_milling(&in, &err).status;
    check_refused("width", &err, SW_ERR_MISSING, "width_mm");
    in.width_mm = 3;
    in.offset_mm = 7.6;
    (void)!sw_milling(&in, &err).status;
    check_refused("beside", &err, SW_ERR_CONFLICT, "offset_mm");
    in.mode = SW_MILL_SIDE;
    in.width_mm = 13;
    (void)!sw_milling(&in, &err).status;
    check_refused("wide", &err, SW_ERR_CONFLICT, "width_mm");
    in = milling(800, 0.25, 12, 2.5, 0.05, 6);
    (void)!sw_milling(&in, &err).status;
    check_refused("teeth", &err, SW_ERR_RANGE, "teeth");
    in = milling(800, 0.25, 12, 3, 0.05, 121);
    (void)!sw_milling(&in, &err).status;
    check_refused("deep", &err, SW_ERR_CONFLICT, "depth_mm");
    in = milling(800, 0.25, 12, 3, 0.05, 6);
    in.speed_rpm = in.cutting_speed_m_per_min = 100;
    (void)!sw_milling(&in, &err).status;
    check_refused("speeds", &err, SW_ERR_CONFLICT, "speed_rpm");
}
END_TEST

int main(void)
{
    return RUN_TESTS("milling", turned_at_instants, turned_round,
                     published_slot, published_power, prototype, closed_form,
                     signs, limits, helices, one_in_one_out, in_and_out,
                     directions, instants, bounds, mean_chip, defaults,
                     refused);
}
