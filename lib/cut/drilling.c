/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Drilling: a twist drill's torque and thrust on the part.
 *
 * Symbols: D diameter, f feed per turn, sigma point angle, beta helix, c chisel
 * edge, q thrust ratio, n turns per minute; the rest as in kienzle.c. Two lips.
 *
 *   chip      h = (f/2) sin(sigma/2), b = (D/2)/sin(sigma/2) for each lip (1)
 *   torque    M = kc(h) f D^2/8                                           (2)
 *   thrust    lips T = q (D/2) f kc, q = 0.5 .. 0.7                       (3)
 *   chisel    T_c = T_high 0.14 (J/B) D^1.2 f^-0.8: the share that the
 *             handbook's two terms have in (6)                            (4)
 *   breakthrough  pull <= 2 M tan(beta)/D: what a screw of the drill's helix
 *             without friction can pull, its torque at the rim            (5)
 *   handbook  T = 0.05 Kd Ff FT B W + 0.007 Kd D^2 J W,
 *             M = 2.5e-5 Kd Ff FM A W, with Ff = f^0.8, FT = D^0.8,
 *             FM = D^1.8                                                  (6)
 *   power     P = 2 pi n M                                                (7)
 *
 * On the part, drilled from above: Fz = -thrust, Mz = -M (the drill turns
 * clockwise and takes the part with it). The thrust holds a part down that lies
 * on supports, so its low end is that of the lips alone and its high end has the
 * chisel edge in it. At the breakthrough the thrust falls to nothing, the
 * torque stays, and the drill may screw itself in: Fz = +pull.
 *
 * Sources: (1), (2), (3) I-D063, I-D102, drilling formulas of a tool catalogue
 * (q = 0.7; 0.5 from memory). (4), (6) Machinery's Handbook 31st ed. p. 1152
 * and 1153; its tables of factors are those powers within rounding, so that no
 * table is looked up; A, B, J are interpolated in c/D. (5) statics, derived.
 * (6) needs Kd, of which only one value is known here: 24000 for steel of 200
 * HB, so it is asked for and has no default. For 10 mm at 0.3 mm in such steel
 * (6) has 15.7 N m, a shop's rule of thumb 15, and (2) with sharp lips and
 * constants from turning 8.8: where a part is held against the torque, ask the
 * handbook too.
 *
 * Not in it: runout, spot drilling, pilot holes (with one the thrust falls to
 * about the lips' share), step drills, taps, peck cycles, chip packing.
 */
#include "cut/drilling.h"

#include "base/tables.h"

#include <string.h>

#define SW__S sw_drilling_out
const sw_field sw__drilling_out_fields[] = {
    SW__OUT(torque_Nm, "N.m"),
    SW__OUT(mz_Nm, "N.m"),
    SW__OUT(thrust_low_N, "N"),
    SW__OUT(thrust_high_N, "N"),
    SW__OUT(lips_high_N, "N"),
    SW__OUT(chisel_N, "N"),
    SW__OUT(pull_N, "N"),
    SW__OUT(z_low_N, "N"),
    SW__OUT(z_high_N, "N"),
    SW__OUT(power_W, "W"),
    SW__OUT(kc_MPa, "MPa"),
    SW__OUT(chip_mm, "mm"),
    SW__OUT(chip_width_mm, "mm"),
    SW__OUT(handbook_thrust_N, "N"),
    SW__OUT(handbook_torque_Nm, "N.m"),
    SW__OUT(unit_power_Nm, "N.m"),
    SW__OUT(removal_mm3_per_min, "mm3/min"),
    SW__OUT(speed_rpm, "rpm"),
    SW__OUT(cutting_speed_m_per_min, "m/min"),
    SW__END,
};
#undef SW__S

/* The chisel edge's factors, interpolated between the rows of the table. */
typedef struct {
    double A, B, J;
} chisel;

static chisel chisel_of(double ratio)
{
    size_t i = 1;
    while (i + 1 < sw__chisel_count && sw__chisel[i].chisel_ratio < ratio)
        i++;
    const struct sw__chisel_row *a = &sw__chisel[i - 1], *b = &sw__chisel[i];
    const double t =
        (ratio - a->chisel_ratio) / (b->chisel_ratio - a->chisel_ratio);
    return (chisel){a->factor_a + t * (b->factor_a - a->factor_a),
                    a->factor_b + t * (b->factor_b - a->factor_b),
                    a->factor_j + t * (b->factor_j - a->factor_j)};
}

/* Equation (6). */
static void set_handbook(const sw_drilling_in *in, const chisel *c,
                         sw_drilling_out *out)
{
    const double D = in->diameter_mm, Ff = pow(in->feed_mm, 0.8);
    const double KdW = sw__times(in->work_factor, in->wear_factor);
    out->handbook_thrust_N =
        sw__times(KdW, 0.05 * Ff * pow(D, 0.8) * c->B + 0.007 * D * D * c->J);
    out->handbook_torque_Nm = sw__times(KdW, 2.5e-5 * Ff * pow(D, 1.8) * c->A);
}

sw_drilling_out sw_drilling(const sw_drilling_in *in, sw_error *err)
{
    sw_drilling_out out;
    sw__drilling_full full;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    const int status =
        in ? sw__drilling_open(in, &full, err) : sw__fail_null(err, "in");
    if (status) {
        sw__spoil(&out, SW_STRUCT_DRILLING_OUT, status);
        return out;
    }
    const sw_drilling_in *q = &full.in;
    const sw__metal metal = SW__METAL_OF(q);
    const double half = SW__RAD(q->point_deg) / 2;
    const double D = q->diameter_mm, f = q->feed_mm;
    const double to_Nm = f * D * D / 8 / 1000;
    const chisel c = chisel_of(q->chisel_ratio);
    out.warnings = full.warnings;
    out.chip_mm = f / 2 * sin(half);
    out.chip_width_mm = D / 2 / sin(half);
    if (out.chip_mm < SW__CHIP_THIN_MM)
        out.warnings |= SW_WARN_CHIP_THIN;
    out.kc_MPa = sw__kc(&metal, out.chip_mm);
    out.torque_Nm = out.kc_MPa * to_Nm;
    out.mz_Nm = -out.torque_Nm;
    const double push_N = D / 2 * f * out.kc_MPa;
    out.lips_high_N = q->thrust_ratio_high * push_N;
    out.chisel_N =
        out.lips_high_N * 0.14 * c.J / c.B * pow(D, 1.2) / pow(f, 0.8);
    out.thrust_low_N = q->thrust_ratio_low * push_N;
    out.thrust_high_N = out.lips_high_N + out.chisel_N;
    out.pull_N = 2000 * out.torque_Nm * tan(SW__RAD(q->helix_deg)) / D;
    out.z_low_N = -out.thrust_high_N;
    out.z_high_N = out.pull_N;
    set_handbook(q, &c, &out);
    out.unit_power_Nm = sw__times(sw__by_volume(&metal), to_Nm);
    out.speed_rpm = full.speed.rpm;
    out.cutting_speed_m_per_min = full.speed.m_per_min;
    out.power_W = sw__times(full.speed.rpm, SW__PI / 30 * out.torque_Nm);
    out.removal_mm3_per_min = sw__times(full.speed.rpm, SW__PI / 4 * D * D * f);
    return out;
}
