/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Contact and pad: pressures summed, surfaces bent by them, stresses below the
 * surface searched for their largest, coefficients of two handbooks. Published
 * values are in tests/cases/.
 */
#include "../common.h"
#include "../near.h"

#define PI 3.14159265358979323846

static sw_contact_in question(int contact)
{
    sw_contact_in in;
    sw_contact_defaults(&in);
    in.contact = contact;
    in.force_N = 800;
    in.radius1_mm = 9;
    in.radius2_mm = 31;
    in.modulus1_MPa = 205000;
    in.modulus2_MPa = 71000;
    in.poisson1 = 0.29;
    in.poisson2 = 0.34;
    in.yield_MPa = 300;
    if (contact == SW_CONTACT_LINE)
        in.contact_length_mm = 15;
    return in;
}

static sw_contact_out good(const sw_contact_in *in)
{
    sw_error err;
    const sw_contact_out out = sw_contact(in, &err);
    check_no_error("contact", out.status, &err);
    return out;
}

/* The pressure is half an ellipse: it carries the force. */
START_TEST(carries_the_force)
{
    enum { STEPS = 1000000 };
    const sw_contact_in line = question(SW_CONTACT_LINE),
                        point = question(SW_CONTACT_POINT);
    const sw_contact_out l = good(&line), p = good(&point);
    double one = 0, two = 0;
    for (int i = 0; i < STEPS; i++) {
        const double t = (i + 0.5) / STEPS;
        one += 2 * l.peak_MPa * sqrt(1 - t * t) * l.half_width_mm / STEPS;
        two += p.peak_MPa * sqrt(1 - t * t) * 2 * PI * t * p.half_width_mm *
               p.half_width_mm / STEPS;
    }
    near(one * 15, 800, 0, 1e-6);
    near(two, 800, 0, 1e-6);
    near(l.mean_MPa, 800 / (15 * 2 * l.half_width_mm), 0, 1e-12);
    near(p.mean_MPa, p.peak_MPa * 2 / 3, 0, 1e-12);
}
END_TEST

/* Both surfaces, bent by that pressure, fit the gap of the bodies: between
 * middle and edge the gap is x^2 (1/r1 + 1/r2)/2. Flamant's and Boussinesq's
 * half-spaces. */
START_TEST(fits_the_gap)
{
    enum { STEPS = 2000000 };
    const sw_contact_in line = question(SW_CONTACT_LINE),
                        point = question(SW_CONTACT_POINT);
    const sw_contact_out l = good(&line), p = good(&point);
    const double curve = 1 / 9.0 + 1 / 31.0, E = l.reduced_modulus_MPa;
    near(E, 1 / ((1 - 0.29 * 0.29) / 205000 + (1 - 0.34 * 0.34) / 71000), 0,
         1e-12);
    const double b = l.half_width_mm;
    double sunk = 0; /* of the middle against the edge */
    for (int i = 0; i < STEPS; i++) {
        const double s = b * (2 * (i + 0.5) / STEPS - 1);
        const double q = l.peak_MPa * sqrt(1 - s * s / (b * b));
        sunk += 2 * q / (PI * E) * log(fabs((b - s) / s)) * 2 * b / STEPS;
    }
    near(sunk, b * b * curve / 2, 0, 1e-4);
    double middle = 0; /* Boussinesq: p dA/(pi E r) */
    for (int i = 0; i < STEPS; i++) {
        const double t = (i + 0.5) / STEPS;
        middle +=
            2 * p.peak_MPa * sqrt(1 - t * t) * p.half_width_mm / E / STEPS;
    }
    near(middle, p.approach_mm, 0, 1e-6);
    near(p.approach_mm, p.half_width_mm * p.half_width_mm * curve, 0, 1e-12);
}
END_TEST

/* Largest shear stress on the axis below the surface: that of (4), and Tresca's
 * onset of (5) is half the yield over it. Stresses: any book on contact. */
START_TEST(below_the_surface)
{
    double line = 0, point = 0;
    for (int i = 1; i < 40000; i++) {
        const double z = i * 1e-4, root = sqrt(1 + z * z), nu = 0.3;
        line = fmax(line, ((1 + 2 * z * z) / root - 2 * z - 1 / root) / -2);
        const double axial = -1 / (1 + z * z);
        const double radial =
            -(1 + nu) * (1 - z * atan(1 / z)) + 0.5 / (1 + z * z);
        point = fmax(point, fabs(axial - radial) / 2);
    }
    const sw_contact_in a = question(SW_CONTACT_LINE),
                        b = question(SW_CONTACT_POINT);
    const sw_contact_out l = good(&a), p = good(&b);
    near(l.shear_MPa / l.peak_MPa, line, 0, 0.002);
    near(p.shear_MPa / p.peak_MPa, point, 0, 0.002);
    near(l.onset_MPa, 300 * 0.5 / line, 0, 0.005);
    near(p.onset_MPa, 300 * 0.5 / point, 0, 0.01);
}
END_TEST

/* Roark's Formulas, Table 14.1, from memory: 0.798 sqrt(p/(KD CE)), full width
 * 1.60 sqrt(p KD CE). Formulas for Stress, Strain and Structural Matrices,
 * Table 9-2 case 1b: 0.721, 0.918, 1.040. Within their three digits. */
START_TEST(handbooks)
{
    sw_contact_in in = question(SW_CONTACT_LINE);
    in.radius2_mm = SW_UNSET;
    const sw_contact_out l = good(&in);
    const double CE = (1 - 0.29 * 0.29) / 205000 + (1 - 0.34 * 0.34) / 71000;
    const double p = 800 / 15.0, D = 18;
    near(l.peak_MPa, 0.798 * sqrt(p / (D * CE)), 0, 0.0007);
    near(2 * l.half_width_mm, 1.60 * sqrt(p * D * CE), 0, 0.004);
    in = question(SW_CONTACT_POINT);
    in.radius2_mm = SW_UNSET;
    const sw_contact_out b = good(&in);
    near(b.half_width_mm, 0.721 * cbrt(800 * D * CE), 0, 0.0007);
    near(b.peak_MPa, 0.918 * cbrt(800 / (D * D * CE * CE)), 0, 0.0006);
    near(b.approach_mm, 1.040 * cbrt(800.0 * 800 * CE * CE / D), 0, 0.0006);
}
END_TEST

START_TEST(scaling)
{
    for (int contact = SW_CONTACT_LINE; contact <= SW_CONTACT_POINT;
         contact++) {
        sw_contact_in in = question(contact);
        const int line = contact == SW_CONTACT_LINE;
        const sw_contact_out one = good(&in);
        in.force_N *= line ? 4 : 8; /* twice the pressure */
        near(good(&in).peak_MPa, 2 * one.peak_MPa, 0, 1e-12);
        in.force_N = one.onset_N;
        near(good(&in).onset_ratio, 1, 0, 1e-12);
        in = question(contact);
        in.radius1_mm = 31; /* the bodies change places */
        in.radius2_mm = 9;
        near(good(&in).peak_MPa, one.peak_MPa, 0, 1e-12);
        in.radius2_mm = -32; /* in a hollow: far less */
        in.force_N = 10;
        const double hollow = good(&in).peak_MPa;
        in.radius2_mm = SW_UNSET;
        ck_assert(hollow < good(&in).peak_MPa / 2);
    }
}
END_TEST

/* A nose is the contact of the same bodies; its mark follows the ratio, and the
 * force of the mark is where it changes. */
START_TEST(pads)
{
    for (int nose = SW_NOSE_FLAT; nose <= SW_NOSE_BALL; nose++) {
        sw_pad_in in;
        sw_pad_defaults(&in);
        in.nose = nose;
        in.force_N = 500;
        SET(in.pad_material, "C11000");
        SET(in.part_material, "7075-T6");
        if (nose != SW_NOSE_FLAT)
            in.nose_radius_mm = 12;
        if (nose == SW_NOSE_ROUND)
            in.pad_width_mm = 20;
        if (nose == SW_NOSE_FLAT)
            in.pad_diameter_mm = 10;
        sw_pad_out out = sw_pad(&in, NULL);
        ck_assert_int_eq(out.status, SW_OK);
        if (nose != SW_NOSE_FLAT) {
            sw_contact_in c;
            sw_contact_defaults(&c);
            c.contact =
                nose == SW_NOSE_ROUND ? SW_CONTACT_LINE : SW_CONTACT_POINT;
            c.force_N = 500;
            c.radius1_mm = 12;
            c.contact_length_mm = nose == SW_NOSE_ROUND ? 20 : SW_UNSET;
            SET(c.material1, "C11000");
            SET(c.material2, "7075-T6");
            const sw_contact_out same = good(&c);
            near(out.pressure_MPa, same.peak_MPa, 0, 1e-12);
            near(out.half_width_mm, same.half_width_mm, 0, 1e-12);
            near(out.mean_MPa * out.area_mm2, 500, 0, 1e-12);
        }
        in.force_N = out.mark_N * 1.0001;
        ck_assert_int_eq(sw_pad(&in, NULL).mark, SW_MARK_LIKELY);
        in.force_N = out.mark_N * 0.9999;
        ck_assert_int_eq(sw_pad(&in, NULL).mark, SW_MARK_POSSIBLE);
        in.force_N = out.mark_N * pow(0.6, nose) * 0.999;
        ck_assert_int_eq(sw_pad(&in, NULL).mark, SW_MARK_UNLIKELY);
        ck_assert(!(out.warnings & SW_WARN_PAD_CREEPS));
        ck_assert(out.part_limit_kind ==
                  (nose == SW_NOSE_FLAT ? SW_LIMIT_PRESSURE : SW_LIMIT_ONSET));
    }
}
END_TEST

/* Every material of the table as a pad and as a part: an answer that names its
 * limit; plastics creep, metals do not. */
START_TEST(every_material)
{
    int plastics = 0;
    for (int i = 0; sw_material_name(i); i++) {
        sw_pad_in in;
        sw_pad_defaults(&in);
        in.force_N = 100;
        in.pad_area_mm2 = 100;
        SET(in.pad_material, sw_material_name(i));
        SET(in.part_material, sw_material_name(i));
        const sw_pad_out out = sw_pad(&in, NULL);
        ck_assert_int_eq(out.status, SW_OK);
        must(out.part_limit_kind >= SW_LIMIT_YIELD &&
                 out.part_limit_kind <= SW_LIMIT_TENSILE,
             "%s", in.part_material);
        near(out.part_limit_MPa, out.pad_limit_MPa, 0, 0);
        const sw_material_out m = sw_material(sw_material_name(i), NULL);
        if (m.yield_MPa != SW_UNSET)
            must(out.part_limit_MPa <= m.yield_MPa, "%s", in.part_material);
        plastics += (out.warnings & SW_WARN_PAD_CREEPS) != 0;
    }
    ck_assert_int_eq(plastics, 3); /* nylon, acetal, polycarbonate */
}
END_TEST

int main(void)
{
    return RUN_TESTS("contact", carries_the_force, fits_the_gap,
                     below_the_surface, handbooks, scaling, pads,
                     every_material);
}
