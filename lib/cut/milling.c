/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Milling: the load on the part over one engagement.
 *
 * Symbols: D = 2r diameter, Z teeth, fz feed per tooth, ap depth along the
 * axis, ae width across the feed, o offset of its middle to the left, beta
 * helix, kappa corner angle, kr radial ratio, lambda lift share, mc, kc as in
 * kienzle.c; phi angle of a tooth, phi_s entry, phi_e exit, theta turn of the
 * cutter. Frame of the feed: the cutter moves along +x over the part, y to its
 * left, z up. It turns clockwise seen from above; phi is clockwise from +y, so a
 * tooth stands at r (sin phi, cos phi) and the work in front of the cutter is
 * at phi = 90 deg.
 *
 *   up      phi 0 .. acos(1 - ae/r): the work lies on the left            (1)
 *   climb   phi pi - acos(1 - ae/r) .. pi: on the right; slot 0 .. pi     (2)
 *   face    phi acos((o + ae/2)/r) .. acos((o - ae/2)/r)                  (3)
 *   chip    h = fz sin phi sin kappa, b = dz/sin kappa for dz of depth    (4)
 *   edge    dFt = kc(h) h b, dFr = kr dFt sin kappa                       (5)
 *   part    dFx = dFt cos phi + dFr sin phi
 *           dFy = -dFt sin phi + dFr cos phi                              (6)
 *           dFz = dFt (lambda tan beta - kr cos kappa): the helix lifts, a
 *           corner angle presses down                                     (7)
 *   moment  about the tool point (axis, floor): p x dF, p = (r sin phi,
 *           r cos phi, z); so dMz = -r dFt                                (8)
 *   helix   at z over the floor a tooth lags by 2 z tan(beta)/D           (9)
 *   mean    Z/2pi integral of (5) to (8) over phi: the helix does not
 *           matter to it                                                 (10)
 *   second  hm = fz sin kappa (cos phi_s - cos phi_e)/(phi_e - phi_s),
 *           Ft = kc(hm) hm b Z (phi_e - phi_s)/2pi: 3 to 4 % above (10) for
 *           slots and sides, exact for mc = 0; it knows no peak          (11)
 *   volume  Ft = u Kw ae ap fz Z/(pi D)                                  (12)
 *   power   P = M w, Q = ae ap fz Z n                                    (13)
 *
 * So a slot pushes the part to -y (the tooth in front sweeps to the right),
 * climb milling draws it to -x, under the cutter, and up milling shoves it to
 * +x ahead. Fz acts on the arc where the teeth are, not on the axis: (8) has
 * its moments. At the end all is turned by the direction of the feed.
 *
 * Depth, width and feed per tooth together are a volume: (12) needs D and Z to
 * make a force of them. kc ap ae fz, as web pages have it, is no force.
 *
 * Sources: (1) to (11) geometry and general cutting theory; I-W004 for the
 * mean; (12) as in kienzle.c. kr, lambda: from memory.
 *
 * Not in it: left-hand cutters and helices (turn the signs of y and of the
 * lift), true tooth path (h = fz sin phi holds for fz far below D), runout,
 * teeth at uneven pitch, ball and bull noses, the smaller radius at which a
 * sloping edge cuts, plunging and ramping, bending of the cutter, chatter,
 * force of the edge itself (rubbing).
 */
#include "cut/milling.h"

#include <string.h>

#define SW__S sw_milling_out
const sw_field sw__milling_out_fields[] = {
    SW__OUT(mean_x_N, "N"),
    SW__OUT(mean_y_N, "N"),
    SW__OUT(mean_z_N, "N"),
    SW__OUT(mean_mx_Nm, "N.m"),
    SW__OUT(mean_my_Nm, "N.m"),
    SW__OUT(mean_mz_Nm, "N.m"),
    SW__OUT(peak_N, "N"),
    SW__OUT(peak_direction_deg, "deg"),
    SW__OUT(peak_x_N, "N"),
    SW__OUT(peak_y_N, "N"),
    SW__OUT(peak_z_N, "N"),
    SW__OUT(peak_mx_Nm, "N.m"),
    SW__OUT(peak_my_Nm, "N.m"),
    SW__OUT(peak_mz_Nm, "N.m"),
    SW__OUT(peak_turn_deg, "deg"),
    SW__OUT(x_low_N, "N"),
    SW__OUT(x_high_N, "N"),
    SW__OUT(y_low_N, "N"),
    SW__OUT(y_high_N, "N"),
    SW__OUT(z_low_N, "N"),
    SW__OUT(z_high_N, "N"),
    SW__OUT(mx_low_Nm, "N.m"),
    SW__OUT(mx_high_Nm, "N.m"),
    SW__OUT(my_low_Nm, "N.m"),
    SW__OUT(my_high_Nm, "N.m"),
    SW__OUT(mz_low_Nm, "N.m"),
    SW__OUT(mz_high_Nm, "N.m"),
    SW__OUT(tangential_N, "N"),
    SW__OUT(torque_Nm, "N.m"),
    SW__OUT(torque_peak_Nm, "N.m"),
    SW__OUT(power_W, "W"),
    SW__OUT(mean_chip_N, "N"),
    SW__OUT(unit_power_N, "N"),
    SW__OUT(unit_power_W, "W"),
    SW__OUT(kc_MPa, "MPa"),
    SW__OUT(chip_mean_mm, "mm"),
    SW__OUT(chip_most_mm, "mm"),
    SW__OUT(entry_deg, "deg"),
    SW__OUT(exit_deg, "deg"),
    SW__OUT(teeth_mean, ""),
    SW__OUT(teeth_least, ""),
    SW__OUT(teeth_most, ""),
    SW__OUT(removal_mm3_per_min, "mm3/min"),
    SW__OUT(feed_rate_mm_per_min, "mm/min"),
    SW__OUT(speed_rpm, "rpm"),
    SW__OUT(cutting_speed_m_per_min, "m/min"),
    SW__END,
};
#undef SW__S

#define SW__S sw_cut_load_out
const sw_field sw__cut_load_out_fields[] = {
    SW__OUT(turn_deg, "deg"), SW__OUT(x_N, "N"),
    SW__OUT(y_N, "N"),        SW__OUT(z_N, "N"),
    SW__OUT(mx_Nm, "N.m"),    SW__OUT(my_Nm, "N.m"),
    SW__OUT(mz_Nm, "N.m"),    SW__END,
};
#undef SW__S

static void set_mean(const sw__milling_full *m, sw_milling_out *out)
{
    const sw__wrench w = sw__milling_mean(m, &out->tangential_N);
    out->mean_x_N = w.v[0];
    out->mean_y_N = w.v[1];
    out->mean_z_N = w.v[2];
    out->mean_mx_Nm = w.v[3];
    out->mean_my_Nm = w.v[4];
    out->mean_mz_Nm = w.v[5];
    out->torque_Nm = -w.v[5];
}

static void set_swing(const sw__milling_full *m, sw_milling_out *out)
{
    const sw__swing s = sw__milling_swing(m);
    const double *p = s.peak.v;
    out->peak_N = hypot(p[0], p[1]);
    out->peak_direction_deg = SW__DEG(atan2(p[1], p[0]));
    out->peak_x_N = p[0];
    out->peak_y_N = p[1];
    out->peak_z_N = p[2];
    out->peak_mx_Nm = p[3];
    out->peak_my_Nm = p[4];
    out->peak_mz_Nm = p[5];
    out->peak_turn_deg = SW__DEG(s.peak_theta);
    out->x_low_N = s.low[0];
    out->x_high_N = s.high[0];
    out->y_low_N = s.low[1];
    out->y_high_N = s.high[1];
    out->z_low_N = s.low[2];
    out->z_high_N = s.high[2];
    out->mx_low_Nm = s.low[3];
    out->mx_high_Nm = s.high[3];
    out->my_low_Nm = s.low[4];
    out->my_high_Nm = s.high[4];
    out->mz_low_Nm = s.low[5];
    out->mz_high_Nm = s.high[5];
    out->torque_peak_Nm = -s.low[5];
}

/* Equations (4) and (11). */
static void set_chip(const sw__milling_full *m, sw_milling_out *out)
{
    const sw_milling_in *in = &m->in;
    const sw__metal metal = SW__METAL_OF(in);
    const double kappa = SW__RAD(in->corner_deg), arc = m->end - m->start;
    const double most = in->feed_per_tooth_mm * sin(kappa);
    const double middle = fmin(fmax(SW__PI / 2, m->start), m->end);
    const double teeth = arc / m->pitch;
    out->chip_mean_mm = most * (cos(m->start) - cos(m->end)) / arc;
    out->chip_most_mm = most * sin(middle);
    out->kc_MPa = sw__kc(&metal, out->chip_mean_mm);
    out->mean_chip_N =
        out->kc_MPa * out->chip_mean_mm * in->depth_mm / sin(kappa) * teeth;
    if (out->chip_mean_mm < SW__CHIP_THIN_MM)
        out->warnings |= SW_WARN_CHIP_THIN;
    out->entry_deg = SW__DEG(m->start);
    out->exit_deg = SW__DEG(m->end);
    /* a tooth is in from where its tip enters to where its top leaves */
    out->teeth_mean = fmin((arc + m->lag) / m->pitch, in->teeth);
    out->teeth_least = floor(out->teeth_mean * (1 + 1e-12));
    out->teeth_most = ceil(out->teeth_mean * (1 - 1e-12));
}

static void set_power(const sw__milling_full *m, sw_milling_out *out)
{
    const sw_milling_in *in = &m->in;
    const sw__metal metal = SW__METAL_OF(in);
    const double per_turn = in->feed_per_tooth_mm * in->teeth;
    const double volume = m->width * in->depth_mm * per_turn;
    const double turns = m->speed.rpm;
    out->speed_rpm = turns;
    out->cutting_speed_m_per_min = m->speed.m_per_min;
    out->feed_rate_mm_per_min = sw__times(turns, per_turn);
    out->removal_mm3_per_min = sw__times(turns, volume);
    out->power_W = sw__times(turns, SW__PI / 30 * out->torque_Nm);
    out->unit_power_N =
        sw__times(sw__by_volume(&metal), volume / (SW__PI * in->diameter_mm));
    out->unit_power_W = sw__times(
        out->unit_power_N, sw__times(turns, SW__PI / 60000 * in->diameter_mm));
}

sw_milling_out sw_milling(const sw_milling_in *in, sw_error *err)
{
    sw_milling_out out;
    sw__milling_full m;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    const int status =
        in ? sw__milling_open(in, &m, err) : sw__fail_null(err, "in");
    if (status) {
        sw__spoil(&out, SW_STRUCT_MILLING_OUT, status);
        return out;
    }
    out.warnings = m.warnings;
    set_mean(&m, &out);
    set_swing(&m, &out);
    set_chip(&m, &out);
    set_power(&m, &out);
    return out;
}

sw_cut_load_out sw_milling_load_at(const sw_milling_in *in, int index,
                                   int count, sw_error *err)
{
    enum { MOST = 3600 };
    sw_cut_load_out out;
    sw__milling_full m;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    int status = in ? sw__milling_open(in, &m, err) : sw__fail_null(err, "in");
    if (!status && (count < 1 || count > MOST))
        status = sw__fail_range(err, "count", count, "", 1, MOST);
    if (!status && (index < 0 || index >= count))
        status = sw__fail_range(err, "index", index, "", 0, count - 1);
    if (status) {
        sw__spoil(&out, SW_STRUCT_CUT_LOAD_OUT, status);
        return out;
    }
    const double theta = m.pitch * index / count;
    const sw__wrench w = sw__milling_at(&m, theta);
    out.warnings = m.warnings;
    out.turn_deg = SW__DEG(theta);
    out.x_N = w.v[0];
    out.y_N = w.v[1];
    out.z_N = w.v[2];
    out.mx_Nm = w.v[3];
    out.my_Nm = w.v[4];
    out.mz_Nm = w.v[5];
    return out;
}
