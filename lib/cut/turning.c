/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Turning: the tool's force on the part.
 *
 * Symbols: f feed per turn, ap depth of cut, kappa angle between edge and feed,
 * r nose radius, d diameter at the tool before the cut, rho thrust ratio, vc
 * cutting speed, n turns per minute; the rest as in kienzle.c.
 *
 *   edge     kappa_e = atan(ap/l), l = r sin kappa + (ap - r + r cos kappa)
 *            / tan kappa; below the end of the nose, ap < r (1 - cos kappa),
 *            l = sqrt(2 r ap - ap^2): the chord of what cuts              (1)
 *   chip     h = f sin kappa_e, b = ap / sin kappa_e                      (2)
 *   forces   Fc = kc(h) b h; Ff = rho Fc sin kappa_e, along the feed;
 *            Fp = rho Fc cos kappa_e, square to it                        (3)
 *   torque   M = Fc dm/2, dm = d - ap outside, d + ap in a bore, d facing (4)
 *   power    P = Fc vc dm/d, removal Q = f ap vc dm/d                     (5)
 *
 * For r = 0 (1) is kappa itself; below the end of the nose it is
 * acos(1 - ap/r)/2, and it changes without a step between. The chord keeps the
 * area f ap of the chip.
 *
 * On the part (z spindle axis from the chuck to the tailstock, x from the axis
 * to the tool, y the way the surface runs there): the tool brakes the surface,
 * Fy = -Fc. Along: Fx = -Fp (away from the tool), Fz = -Ff (the tool runs
 * toward the chuck and takes the part with it). Boring: Fx = +Fp. Facing, toward
 * the axis: Fx = -Ff, Fz = -Fp. About the point of the axis nearest the tool,
 * whose arm is R = dm/2 along x: My = -R Fz, Mz = R Fy. A tool that feeds away
 * from the chuck turns the sign of Fz (along, boring).
 *
 * Sources: (1) the chord rule, from memory; (2) I-D062; rho 0.5, 0.3 to 0.7:
 * from memory. Thrust falls with rake more than (3) says.
 *
 * Not in it: parting and threading, the front edge, bending of slender work,
 * chatter, interrupted cuts (they knock: reckon with twice).
 */
#include "cut/turning.h"

#include <string.h>

#define SW__S sw_turning_out
const sw_field sw__turning_out_fields[] = {
    SW__OUT(cutting_N, "N"),
    SW__OUT(feed_N, "N"),
    SW__OUT(passive_N, "N"),
    SW__OUT(x_N, "N"),
    SW__OUT(y_N, "N"),
    SW__OUT(z_N, "N"),
    SW__OUT(my_Nm, "N.m"),
    SW__OUT(mz_Nm, "N.m"),
    SW__OUT(total_N, "N"),
    SW__OUT(torque_Nm, "N.m"),
    SW__OUT(power_W, "W"),
    SW__OUT(kc_MPa, "MPa"),
    SW__OUT(chip_mm, "mm"),
    SW__OUT(chip_width_mm, "mm"),
    SW__OUT(lead_effective_deg, "deg"),
    SW__OUT(unit_power_N, "N"),
    SW__OUT(unit_power_W, "W"),
    SW__OUT(removal_mm3_per_min, "mm3/min"),
    SW__OUT(speed_rpm, "rpm"),
    SW__OUT(cutting_speed_m_per_min, "m/min"),
    SW__END,
};
#undef SW__S

/* Equation (1): depth and length of the chord, over the chord itself. */
typedef struct {
    double sine, cosine;
} chord;

static chord edge(const sw_turning_in *in)
{
    const double s = sin(SW__RAD(in->lead_deg)), c = sw__cos_deg(in->lead_deg);
    const double r = in->nose_radius_mm, ap = in->depth_mm;
    const double straight = ap - r * (1 - c);
    const double l =
        straight < 0 ? sqrt(ap * (2 * r - ap)) : r * s + straight * c / s;
    return (chord){ap / hypot(ap, l), l / hypot(ap, l)};
}

/* Equation (4): the diameter in the middle of the chip. */
static double mean_diameter(const sw_turning_in *in)
{
    if (!sw__is_set(in->diameter_mm))
        return SW_UNSET;
    switch (in->direction) {
    case SW_TURNING_ALONG:
        return in->diameter_mm - in->depth_mm;
    case SW_TURNING_BORING:
        return in->diameter_mm + in->depth_mm;
    default:
        return in->diameter_mm;
    }
}

static void set_vector(const sw_turning_in *in, double dm, sw_turning_out *out)
{
    const int facing = in->direction == SW_TURNING_FACING;
    const double away = in->direction == SW_TURNING_BORING ? 1 : -1;
    out->x_N = facing ? -out->feed_N : away * out->passive_N;
    out->y_N = -out->cutting_N;
    out->z_N = facing ? -out->passive_N : -out->feed_N;
    out->total_N = hypot(hypot(out->x_N, out->y_N), out->z_N);
    const double arm_m = sw__times(dm, 0.5e-3);
    out->my_Nm = sw__times(arm_m, -out->z_N);
    out->mz_Nm = sw__times(arm_m, out->y_N);
    out->torque_Nm = sw__times(arm_m, out->cutting_N);
}

static void set_power(const sw__turning_full *full, double dm,
                      sw_turning_out *out)
{
    const sw_turning_in *in = &full->in;
    const sw__metal metal = SW__METAL_OF(in);
    const double area = in->feed_mm * in->depth_mm;
    const double slower = sw__is_set(dm) ? dm / in->diameter_mm : 1;
    const double v_m_per_min = sw__times(full->speed.m_per_min, slower);
    out->speed_rpm = full->speed.rpm;
    out->cutting_speed_m_per_min = full->speed.m_per_min;
    out->removal_mm3_per_min = sw__times(v_m_per_min, 1000 * area);
    out->power_W = sw__times(v_m_per_min, out->cutting_N / 60);
    out->unit_power_N = sw__times(sw__by_volume(&metal), area);
    out->unit_power_W =
        sw__times(out->unit_power_N, sw__times(v_m_per_min, 1 / 60.0));
}

sw_turning_out sw_turning(const sw_turning_in *in, sw_error *err)
{
    sw_turning_out out;
    sw__turning_full full;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    const int status =
        in ? sw__turning_open(in, &full, err) : sw__fail_null(err, "in");
    if (status) {
        sw__spoil(&out, SW_STRUCT_TURNING_OUT, status);
        return out;
    }
    const sw_turning_in *q = &full.in;
    const sw__metal metal = SW__METAL_OF(q);
    const chord e = edge(q);
    const double dm = mean_diameter(q);
    out.warnings = full.warnings;
    out.lead_effective_deg = SW__DEG(atan2(e.sine, e.cosine));
    out.chip_mm = q->feed_mm * e.sine;
    out.chip_width_mm = q->depth_mm / e.sine;
    if (out.chip_mm < SW__CHIP_THIN_MM)
        out.warnings |= SW_WARN_CHIP_THIN;
    out.kc_MPa = sw__kc(&metal, out.chip_mm);
    out.cutting_N = out.kc_MPa * out.chip_mm * out.chip_width_mm;
    out.feed_N = q->thrust_ratio * out.cutting_N * e.sine;
    out.passive_N = q->thrust_ratio * out.cutting_N * e.cosine;
    set_vector(q, dm, &out);
    set_power(&full, dm, &out);
    return out;
}
