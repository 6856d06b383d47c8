/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Screw: a screw that presses with its end, or holds a part with its head.
 *
 * Symbols: T torque, F force along the screw, d outside and dm mean diameter
 * of the thread, p pitch, n starts, l = n p lead, alpha half the thread angle,
 * mu friction in the thread and under the collar, rc mean radius there, H hand
 * force, s length of the handle, D and Dh outside and hole of what bears.
 *
 *   thread   T = F (dm/2) (tan L + f)/(1 - f tan L) + F mu_c rc         (1)
 *            f = mu/cos alpha_n, tan alpha_n = tan alpha cos L,
 *            tan L = l/(pi dm)                  MED 9th ed. eq. 8-5, 8-6
 *   back     T' = F (dm/2) (f - tan L)/(1 + f tan L) + F mu_c rc        (2)
 *   work     efficiency = F l/(2 pi T)                                   (3)
 *   handle   T = H s                                                     (4)
 *   pressure F/(pi (D^2 - Dh^2)/4)                                       (5)
 *   radius   of a pad that presses evenly D/3; of a head (D + Dh)/4      (6)
 *   mean     dm = d - p/2 for trapezoidal, Acme and square threads       (7)
 *   scatter  F (1 - s) to F (1 + s)                                      (8)
 *   strength sigma = F/A, tau = q Tw/(pi d0^3), sqrt(sigma^2 + 3 tau^2)
 *            against the yield, sigma against the proof stress of the grade;
 *            V thread: A its stress area, d0 = sqrt(4 A/pi), q = 12 (VDI
 *            2230-1 since 2003, as torque.c); others: d0 = d - p, A of it,
 *            q = 16                          MED 9th ed. eq. 8-7, 8-8   (9)
 *            Tw: through, what the thread takes; pressing, all of T: the
 *            length between handle and nut, a textbook's safe sum
 *
 * MED is Mechanical Engineering Design (Shigley); (1) is the exact form of
 * torque.c for any flank angle. alpha: 30 degrees V, 15 trapezoidal (ISO 2904),
 * 14.5 Acme (ASME B1.5), 0 square.
 *
 * Not in it: bending of frame and handle, buckling of the screw, wear of the
 * nut, tilting of the pad, stripping (strip.c), a neck or hole thinner than the
 * thread.
 */
#include "base/room.h"
#include "fastener/torque.h"

#include <strapwise/grade.h>
#include <strapwise/screw.h>
#include <strapwise/thread.h>

#define SW__S sw_screw_in
const sw_field sw__screw_in_fields[] = {
    SW__IN_TEXT(thread, ""),
    SW__IN_WORD(screw, SW_WORDS_SCREW, "a screw that presses with its end"),
    SW__IN_WORD(profile, SW_WORDS_PROFILE, "by the thread; else trapezoidal"),
    SW__IN(screw_diameter_mm, "mm", 0.5, 500, 0, 0, "by the thread"),
    SW__IN(pitch_mm, "mm", 0.05, 100, 0, 0, "by the thread"),
    SW__IN(starts, "", 1, 12, 0, 0, "single start"),
    SW__IN_TIMES(mean_diameter_mm, "mm", 0.5, 500, 0.97, 1.03,
                 "pitch diameter of the thread; outside diameter less half the "
                 "pitch for trapezoidal, Acme and square"),
    SW__IN(flank_angle_deg, "deg", 0, 45, 0, 0,
           "30 V, 15 trapezoidal, 14.5 Acme, 0 square"),
    SW__IN(mu_thread, "", 0, 1, 0.1, 0.2, "common practice, no source"),
    SW__IN(mu_collar, "", 0, 1, 0.1, 0.2, "common practice, no source"),
    SW__IN_TIMES(
        collar_radius_mm, "mm", 0, 500, 0.7, 1.3,
        "pressing: a third of its pad's diameter, a quarter of the screw's "
        "without one; through: (bearing face + hole)/4, VDI 2230-1"),
    SW__IN(pad_diameter_mm, "mm", 0.1, 1000, 0, 0,
           "through: bearing face of the head"),
    SW__IN(pad_hole_mm, "mm", 0, 1000, 0, 0,
           "through: clearance hole; else none"),
    SW__IN(torque_Nm, "N.m", 1e-6, 1e6, 0, 0, ""),
    SW__IN(force_N, "N", 0.001, 1e8, 0, 0, ""),
    SW__IN(hand_force_N, "N", 0.001, 1e8, 0, 0, ""),
    SW__IN(handle_length_mm, "mm", 0.001, 100000, 0, 0, ""),
    SW__IN(scatter_pct, "%", 0, 90, 25, 43,
           "by feel, 35 %: handbook; torque wrench dry, 35 %: NASA NSTS 08307 "
           "class"),
    SW__IN_TEXT(grade, "at least this grade is usual for clamping screws; "
                       "common practice, no source"),
    SW__END,
};
#undef SW__S

#define SW__S sw_screw_out
const sw_field sw__screw_out_fields[] = {
    SW__OUT(force_N, "N"),
    SW__OUT(force_low_N, "N"),
    SW__OUT(force_high_N, "N"),
    SW__OUT(torque_Nm, "N.m"),
    SW__OUT(thread_torque_Nm, "N.m"),
    SW__OUT(collar_torque_Nm, "N.m"),
    SW__OUT(loosening_torque_Nm, "N.m"),
    SW__OUT(efficiency, ""),
    SW__OUT(hand_force_N, "N"),
    SW__OUT(handle_length_mm, "mm"),
    SW__OUT(pressure_MPa, "MPa"),
    SW__OUT(lead_mm, "mm"),
    SW__OUT(mean_diameter_mm, "mm"),
    SW__OUT(flank_angle_deg, "deg"),
    SW__OUT(tension_MPa, "MPa"),
    SW__OUT(stress_MPa, "MPa"),
    SW__OUT(proof_use, ""),
    SW__OUT(yield_use, ""),
    SW__END,
};
#undef SW__S

static const double flank_deg[] = {0, 30, 15, 14.5, 0}; /* by profile */

static int fill_thread(sw_screw_in *in, const sw__filler *fill, sw_error *err)
{
    const int through = in->screw == SW_SCREW_THROUGH;
    if (in->thread[0]) {
        const sw_thread_out t = sw_thread(in->thread, err);
        if (t.status)
            return t.status;
        if (in->profile && in->profile != SW_PROFILE_V)
            return sw__fail_conflict(err, "profile",
                                     "the thread is a V; leave the thread out "
                                     "and give diameter and pitch");
        sw__fill_word(fill, "profile", SW_PROFILE_V);
        sw__fill_text(fill, "grade", sw__usual_grade(&t));
        sw__fill_number(fill, "screw_diameter_mm", t.nominal_mm);
        sw__fill_number(fill, "pitch_mm", t.pitch_mm);
        sw__fill_number(fill, "mean_diameter_mm", t.pitch_diameter_mm);
        if (through) {
            sw__fill_number(fill, "pad_diameter_mm", t.bearing_diameter_mm);
            sw__fill_number(fill, "pad_hole_mm", t.clearance_hole_mm);
        }
    }
    if (!sw__is_set(in->screw_diameter_mm))
        return sw__fail_missing(err, "screw_diameter_mm",
                                "give a thread, or diameter and pitch");
    if (!sw__is_set(in->pitch_mm))
        return sw__fail_missing(err, "pitch_mm",
                                "give a thread, or diameter and pitch");
    sw__fill_word(fill, "profile", SW_PROFILE_TRAPEZOIDAL);
    const double cut = in->profile == SW_PROFILE_V ? 0.6495 : 0.5;
    sw__fill_number(fill, "mean_diameter_mm",
                    in->screw_diameter_mm - cut * in->pitch_mm);
    sw__fill_number(fill, "flank_angle_deg", flank_deg[in->profile]);
    sw__fill_text(fill, "grade", "8.8");
    if (!(in->mean_diameter_mm > 0 &&
          in->mean_diameter_mm <= in->screw_diameter_mm &&
          in->pitch_mm < in->screw_diameter_mm))
        return sw__fail_conflict(err, "pitch_mm",
                                 "diameter, mean diameter and pitch are not "
                                 "those of one thread");
    return SW_OK;
}

static int fill_collar(sw_screw_in *in, const sw__filler *fill, sw_error *err)
{
    sw__fill_number(fill, "pad_hole_mm", 0);
    const double D = in->pad_diameter_mm, hole = in->pad_hole_mm;
    const int known = sw__is_set(D);
    if (known && hole >= D)
        return sw__fail_conflict(err, "pad_hole_mm",
                                 "not smaller than what bears around it");
    if (known && in->screw == SW_SCREW_THROUGH)
        sw__fill_number(fill, "collar_radius_mm", (D + hole) / 4);
    else if (known) /* an even ring; a third of the diameter without a hole */
        sw__fill_number(fill, "collar_radius_mm",
                        (D * D * D - hole * hole * hole) /
                            (3 * (D * D - hole * hole)));
    sw__fill_number(fill, "collar_radius_mm", in->screw_diameter_mm / 4);
    return SW_OK;
}

static int screw_fill(sw_screw_in *in, const sw__filler *fill,
                      uint64_t *warnings, sw_error *err)
{
    const int hand = sw__is_set(in->hand_force_N),
              handle = sw__is_set(in->handle_length_mm);
    const int asked =
        sw__is_set(in->torque_Nm) + sw__is_set(in->force_N) + (hand && handle);
    if (asked > 1)
        return sw__fail_conflict(err, "force_N",
                                 "give one: force, torque, or hand force with "
                                 "handle length");
    if (!asked)
        return sw__fail_missing(err, "torque_Nm",
                                "give a torque, a force, or hand force and "
                                "handle length");
    sw__fill_word(fill, "screw", SW_SCREW_PRESSING);
    sw__fill_number(fill, "starts", 1);
    if (in->starts != floor(in->starts))
        return sw__fail_conflict(err, "starts", "a whole number is wanted");
    int status = fill_thread(in, fill, err);
    if (!status)
        status = fill_collar(in, fill, err);
    sw__fill_number(fill, "mu_thread", 0.15);
    sw__fill_number(fill, "mu_collar", 0.15);
    sw__fill_number(fill, "scatter_pct", 35);
    (void)warnings;
    return status;
}

/* Area of the thread and the diameter that is twisted, equation (9). */
static double area_of(const sw_screw_in *in, double *twisted)
{
    double A;
    if (in->profile == SW_PROFILE_V) {
        const double core = in->screw_diameter_mm - 1.2269 * in->pitch_mm;
        const double mean = (in->mean_diameter_mm + core) / 2; /* ISO 898-1 */
        const sw_thread_out t = sw_thread(in->thread, NULL);
        A = in->thread[0] && !t.status ? t.stress_area_mm2
                                       : SW__PI / 4 * mean * mean;
        *twisted = sqrt(4 * A / SW__PI);
    } else {
        *twisted = in->screw_diameter_mm - in->pitch_mm;
        A = SW__PI / 4 * *twisted * *twisted;
    }
    return A;
}

static int set_strength(const sw_screw_in *in, sw_screw_out *out, sw_error *err)
{
    double d0;
    const double A = area_of(in, &d0);
    const double twist =
        in->screw == SW_SCREW_THROUGH ? out->thread_torque_Nm : out->torque_Nm;
    const double q = in->profile == SW_PROFILE_V ? 12 : 16;
    out->tension_MPa = out->force_N / A;
    out->stress_MPa = hypot(out->tension_MPa, sqrt(3.0) * q * 1000 * twist /
                                                  (SW__PI * d0 * d0 * d0));
    const sw_grade_out g = sw_grade(in->grade, in->screw_diameter_mm, err);
    if (g.status) { /* only a grade that was asked for is refused */
        if (!(in->assumed & sw__bit(SW_STRUCT_SCREW_IN, "grade")))
            return g.status;
        sw__clear(err);
        out->warnings |= SW_WARN_STUD_STRENGTH_UNKNOWN;
        return SW_OK;
    }
    out->yield_use = out->stress_MPa / g.yield_MPa;
    if (out->yield_use > 1)
        out->warnings |= SW_WARN_OVER_YIELD;
    if (sw__is_set(g.proof_MPa)) {
        out->proof_use = out->tension_MPa / g.proof_MPa;
        if (out->proof_use > SW__PROOF_ADVISED)
            out->warnings |= SW_WARN_OVER_PROOF;
    }
    return SW_OK;
}

static int screw_solve(const sw_screw_in *in, sw_screw_out *out, sw_error *err)
{
    const double dm = in->mean_diameter_mm, lead = in->starts * in->pitch_mm;
    const double tl = lead / (SW__PI * dm), L = atan(tl);
    const double alpha = SW__RAD(in->flank_angle_deg);
    const double f = in->mu_thread / cos(atan(tan(alpha) * cos(L)));
    if (f * tl >= 1)
        return sw__fail_conflict(err, "mu_thread",
                                 "this thread locks: no torque gives a force");
    const double thread = dm / 2 * (tl + f) / (1 - f * tl);
    const double collar = in->mu_collar * in->collar_radius_mm;
    const double arm = thread + collar; /* mm: torque per newton */
    const int by_hand =
        sw__is_set(in->hand_force_N) && sw__is_set(in->handle_length_mm);
    if (sw__is_set(in->force_N))
        out->force_N = in->force_N;
    else if (by_hand)
        out->force_N = in->hand_force_N * in->handle_length_mm / arm;
    else
        out->force_N = 1000 * in->torque_Nm / arm;
    const double F = out->force_N;
    out->torque_Nm = F * arm / 1000;
    out->thread_torque_Nm = F * thread / 1000;
    out->collar_torque_Nm = F * collar / 1000;
    out->loosening_torque_Nm =
        F * (dm / 2 * (f - tl) / (1 + f * tl) + collar) / 1000;
    if (out->loosening_torque_Nm <= 0)
        out->warnings |= SW_WARN_SELF_LOOSENING;
    out->efficiency = lead / (2 * SW__PI * arm);
    out->force_low_N = F * (1 - in->scatter_pct / 100);
    out->force_high_N = F * (1 + in->scatter_pct / 100);
    if (sw__is_set(in->handle_length_mm))
        out->hand_force_N = 1000 * out->torque_Nm / in->handle_length_mm;
    if (sw__is_set(in->hand_force_N))
        out->handle_length_mm = 1000 * out->torque_Nm / in->hand_force_N;
    if (sw__is_set(in->pad_diameter_mm)) {
        const double D = in->pad_diameter_mm, h = in->pad_hole_mm;
        out->pressure_MPa = F / (SW__PI / 4 * (D * D - h * h));
    }
    out->lead_mm = lead;
    out->mean_diameter_mm = dm;
    out->flank_angle_deg = in->flank_angle_deg;
    return set_strength(in, out, err);
}

SW__ROOM(screw, SCREW);
