/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Turning: computed cases of the Kienzle law, published power examples, the
 * edge of a nose integrated piece by piece, and what must hold of vectors.
 */
#include "cut_question.h"

#define LBF 4.4482216152605
#define RAD (3.14159265358979323846 / 180)

/* I-W013, I-W015: VDI 3323 constants and the Kienzle law, printed to four
 * digits. */
START_TEST(kienzle)
{
    sw_turning_in in = turning(1500, 0.22, 0.25, 2);
    sw_turning_out out = turn("I-W013", &in);
    near(out.kc_MPa, 2034.9, 0.1, 0);
    near(out.cutting_N, 1017.5, 0.1, 0);
    in = turning(800, 0.25, 0.15, 3);
    out = turn("I-W015", &in);
    near(out.kc_MPa, 1285.5, 0.1, 0);
    near(out.cutting_N, 578.5, 0.1, 0);
    /* derived by hand: h = 0.25 sin 45 deg, Ff = Fp = Fc/2 cos 45 deg */
    in = turning(1500, 0.22, 0.25, 2);
    in.lead_deg = 45;
    out = turn("45 deg", &in);
    near(out.chip_mm, 0.17678, 1e-5, 0);
    near(out.kc_MPa, 2196.1, 0.1, 0);
    near(out.cutting_N, 1098.1, 0.1, 0);
    near(out.feed_N, 388.2, 0.1, 0);
    near(out.passive_N, 388.2, 0.1, 0);
}
END_TEST

/* I-W006, manufacturing textbook problem: titanium rod 75 to 65 mm, 400 rpm,
 * 200 mm/min, 3.0 to 4.1 W.s/mm3: 94.25 m/min, 10.996 to 15.027 kW, 7.0 to 9.57
 * kN (power over the speed on the outer diameter). Printed digits. */
START_TEST(titanium_rod)
{
    static const double u[] = {3.0, 4.1}, kW[] = {10.996, 15.027};
    static const double kN[] = {7.0, 9.57};
    for (int i = 0; i < 2; i++) {
        sw_turning_in in = turning(1000, 0, 0.5, 5);
        in.unit_power_MPa = 1000 * u[i];
        in.diameter_mm = 75;
        in.speed_rpm = 400;
        const sw_turning_out out = turn("I-W006", &in);
        near(out.cutting_speed_m_per_min, 94.25, 0.005, 0);
        near(out.unit_power_W / 1000, kW[i], 0.0005, 0);
        near(out.unit_power_W / (out.cutting_speed_m_per_min / 60) / 1000,
             kN[i], 0.005, 0);
    }
}
END_TEST

/* I-W009, Manufacturing Engineering and Technology, turning example, from
 * memory: 0.5 in rod of 304 to 0.480 in, 400 rpm, 8 in/min, 1.47 hp.min/in3:
 * 0.123 in3/min, 0.181 hp, 118 lb (rounded on the way: 2 %). */
START_TEST(stainless_rod)
{
    sw_turning_in in = turning(1000, 0, 0.02 * 25.4, 0.01 * 25.4);
    in.unit_power_MPa =
        1.47 * sw_unit_factor("hp.min/in3", SW_KIND_PRESSURE, "u", NULL).value;
    in.diameter_mm = 12.7;
    in.speed_rpm = 400;
    const sw_turning_out out = turn("I-W009", &in);
    near(out.removal_mm3_per_min / (25.4 * 25.4 * 25.4), 0.123, 0.0005, 0);
    near(out.unit_power_W /
             sw_unit_factor("hp", SW_KIND_POWER, "P", NULL).value,
         0.181, 0.0005, 0);
    near(out.unit_power_N / LBF, 118, 0, 0.02);
}
END_TEST

/* The chord of the edge, and that the area of the chip is f ap. */
START_TEST(nose)
{
    const double r = 0.8;
    for (double lead = 30; lead <= 95; lead += 13)
        for (double ap = 0.05; ap < 4; ap *= 1.7) {
            sw_turning_in in = turning(1500, 0.22, 0.2, ap);
            in.lead_deg = lead;
            in.nose_radius_mm = r;
            const sw_turning_out out = turn("nose", &in);
            /* walk along the edge in small steps of its angle to the feed */
            double along = 0, deep = 0;
            const int n = 20000;
            for (int i = 0; i < n && deep < ap; i++) {
                const double a = lead * RAD * (i + 0.5) / n;
                const double ds = r * lead * RAD / n;
                along += ds * cos(a);
                deep += ds * sin(a);
            }
            if (deep < ap)
                along += (ap - deep) / tan(lead * RAD);
            near_in("chord", tan(out.lead_effective_deg * RAD), ap / along, 0,
                    2e-3);
            near(out.chip_mm * out.chip_width_mm, 0.2 * ap, 0, 1e-13);
        }
    /* shallower than the nose: acos(1 - ap/r)/2; no nose: the edge's angle */
    sw_turning_in in = turning(1500, 0.22, 0.2, 0.3);
    in.nose_radius_mm = r;
    near(turn("shallow", &in).lead_effective_deg, acos(1 - 0.3 / r) / 2 / RAD,
         0, 1e-12);
    in.nose_radius_mm = 0;
    in.lead_deg = 75;
    near(turn("sharp", &in).lead_effective_deg, 75, 0, 1e-13);
    /* a nose turns the thrust from the feed to the radius */
    in.lead_deg = 95;
    const double sharp = turn("sharp", &in).passive_N;
    in.nose_radius_mm = r;
    ck_assert_double_lt(sharp, 0);
    ck_assert_double_gt(turn("nose", &in).passive_N, 50);
}
END_TEST

/* Signs: the tool brakes the surface, pushes away from itself, and takes the
 * part along with its feed. */
START_TEST(vectors)
{
    sw_turning_in in = turning(1500, 0.22, 0.25, 2);
    in.lead_deg = 60;
    in.diameter_mm = 82;
    const sw_turning_out along = turn("along", &in);
    near(along.x_N, -along.passive_N, 0, 0);
    near(along.y_N, -along.cutting_N, 0, 0);
    near(along.z_N, -along.feed_N, 0, 0);
    near(along.mz_Nm, -along.cutting_N * 0.040, 0, 1e-14);
    near(along.my_Nm, along.feed_N * 0.040, 0, 1e-14);
    near(along.torque_Nm, along.cutting_N * 0.040, 0, 1e-14);
    near(along.total_N,
         sqrt(along.x_N * along.x_N + along.y_N * along.y_N +
              along.z_N * along.z_N),
         0, 1e-14);
    near(hypot(along.feed_N, along.passive_N), 0.5 * along.cutting_N, 0, 1e-14);
    in.direction = SW_TURNING_BORING;
    const sw_turning_out bore = turn("boring", &in);
    near(bore.x_N, bore.passive_N, 0, 0);
    near(bore.z_N, -bore.feed_N, 0, 0);
    near(bore.torque_Nm, bore.cutting_N * 0.042, 0, 1e-14);
    in.direction = SW_TURNING_FACING;
    const sw_turning_out face = turn("facing", &in);
    near(face.x_N, -face.feed_N, 0, 0);
    near(face.z_N, -face.passive_N, 0, 0);
    near(face.torque_Nm, face.cutting_N * 0.041, 0, 1e-14);
}
END_TEST

/* Rake: 1 % a degree above the table's; wear multiplies; both leave the second
 * opinion by volume to wear alone. */
START_TEST(rake_and_wear)
{
    sw_turning_in in = turning(1500, 0.22, 0.25, 2);
    const double plain = turn("plain", &in).cutting_N;
    in.rake_deg = 12;
    near(turn("12 deg", &in).cutting_N, 0.88 * plain, 0, 1e-14);
    in.rake_effect_pct = 1.5;
    near(turn("1.5 %", &in).cutting_N, 0.82 * plain, 0, 1e-14);
    in.rake_deg = -6;
    near(turn("-6 deg", &in).cutting_N, 1.09 * plain, 0, 1e-14);
    in.wear_factor = SW_UNSET;
    near(turn("worn", &in).cutting_N, 1.3 * 1.09 * plain, 0, 1e-14);
    SET(in.material, "C45"); /* its table holds at 6 degrees */
    in.kc11_MPa = in.mc = SW_UNSET;
    in.rake_deg = 6;
    in.rake_effect_pct = SW_UNSET;
    in.wear_factor = 1;
    near(turn("C45", &in).kc_MPa, 2220 * pow(0.25, -0.14), 0, 1e-14);
    in.rake_deg = 45;
    in.rake_effect_pct = 2;
    sw_error err;
    ck_assert_int_eq(sw_turning(&in, &err).status, SW_ERR_CONFLICT);
    check_refused("rake", &err, SW_ERR_CONFLICT, "rake_deg");
    in.rake_deg = SW_UNSET;
    ck_assert(turn("effect alone", &in).warnings & SW_WARN_UNUSED_INPUT);
}
END_TEST

/* Power is torque times turns, removal is what the diameters differ by. */
START_TEST(power)
{
    sw_turning_in in = turning(1500, 0.22, 0.25, 2);
    in.diameter_mm = 60;
    in.speed_rpm = 500;
    const double w = 500 * 2 * 3.14159265358979323846 / 60;
    for (int d = SW_TURNING_ALONG; d <= SW_TURNING_BORING; d++) {
        in.direction = d;
        const sw_turning_out out = turn("power", &in);
        near(out.power_W, out.torque_Nm * w, 0, 1e-13);
    }
    in.direction = SW_TURNING_ALONG;
    const sw_turning_out a = turn("rpm", &in);
    near(a.removal_mm3_per_min,
         3.14159265358979323846 / 4 * (60 * 60 - 56 * 56) * 0.25 * 500, 0,
         1e-13);
    in.speed_rpm = SW_UNSET;
    in.cutting_speed_m_per_min = a.cutting_speed_m_per_min;
    const sw_turning_out b = turn("m/min", &in);
    near(b.speed_rpm, 500, 0, 1e-13);
    near(b.power_W, a.power_W, 0, 1e-13);
    in.diameter_mm = SW_UNSET; /* the speed is then taken as that of the chip */
    const sw_turning_out c = turn("no diameter", &in);
    near(c.power_W, a.cutting_N * a.cutting_speed_m_per_min / 60, 0, 1e-13);
    near(c.torque_Nm, SW_UNSET, 0, 0);
    near(c.speed_rpm, SW_UNSET, 0, 0);
    in.cutting_speed_m_per_min = SW_UNSET;
    near(turn("no speed", &in).power_W, SW_UNSET, 0, 0);
}
END_TEST

START_TEST(refused)
{
    sw_error err;
    sw_turning_in in = turning(1500, 0.22, 0.25, 2);
    in.mc = SW_UNSET;
    (void)!sw_turning(&in, &err).status;
    check_refused("mc", &err, SW_ERR_MISSING, "material");
    in = turning(1500, 0.22, SW_UNSET, 2);
    (void)!sw_turning(&in, &err).status;
    check_refused("feed", &err, SW_ERR_MISSING, "feed_mm");
    in = turning(1500, 0.22, 0.2, SW_UNSET);
    (void)!sw_turning(&in, &err).status;
    check_refused("depth", &err, SW_ERR_MISSING, "depth_mm");
    in = turning(1500, 0.22, 0.2, 5);
    in.diameter_mm = 9.9;
    (void)!sw_turning(&in, &err).status;
    check_refused("deep", &err, SW_ERR_CONFLICT, "depth_mm");
    in.diameter_mm = 20;
    in.speed_rpm = in.cutting_speed_m_per_min = 100;
    (void)!sw_turning(&in, &err).status;
    check_refused("speeds", &err, SW_ERR_CONFLICT, "speed_rpm");
    /* thin chips: from 0.02 mm on */
    in = turning(1500, 0.22, 0.02, 2);
    ck_assert(!(turn("0.02", &in).warnings & SW_WARN_CHIP_THIN));
    in.feed_mm = 0.0199;
    ck_assert(turn("0.0199", &in).warnings & SW_WARN_CHIP_THIN);
}
END_TEST

/* The range and the source of what was assumed of the metal are its row's. */
START_TEST(assumed_of_the_metal)
{
    sw_turning_in in;
    sw_turning_defaults(&in);
    SET(in.material, "Ti-6Al-4V");
    in.feed_mm = 0.2;
    in.depth_mm = 1;
    const sw_assumption a = sw_turning_assumed(&in, 0, NULL);
    ck_assert_str_eq(a.name, "kc11_MPa");
    near(a.value, 2110, 0, 0);
    near(a.low, 1245, 0, 0);
    ck_assert_ptr_nonnull(strstr(a.source, "vdi-37"));
    SET(in.material, "vdi-6");
    int seen = 0;
    for (int i = 0;; i++) {
        const sw_assumption b = sw_turning_assumed(&in, i, NULL);
        if (b.status)
            break;
        if (strcmp(b.name, "unit_power_MPa") == 0)
            seen += strstr(b.source, "4140") != NULL;
    }
    ck_assert_int_eq(seen, 1);
}
END_TEST

int main(void)
{
    return RUN_TESTS("turning", kienzle, titanium_rod, stainless_rod, nose,
                     vectors, rake_and_wear, power, refused,
                     assumed_of_the_metal);
}
