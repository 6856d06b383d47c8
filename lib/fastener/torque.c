/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Torque: torque on the nut and tension in its stud.
 *
 * Symbols: T torque, T0 prevailing torque, F stud tension, d nominal, d2 pitch
 * diameter, P pitch, alpha half the thread angle (30 deg), r mean friction
 * radius under the nut, A stress area, d0 = sqrt(4 A/pi), K nut factor, mu
 * friction coefficients.
 *
 *   nut factor   T = K d F + T0               (1) MED 9th ed. eq. 8-27
 *   friction     T = F [P/2pi + mu_thread d2/(2 cos alpha) + mu_seat r] + T0
 *                                             (2) VDI 2230-1; ISO 16047, linear
 *   exact thread T = F (d2/2) tan-form,       (3) MED 9th ed. eq. 8-5
 *                (tan l + f)/(1 - f tan l), f = mu/cos alpha_n,
 *                tan alpha_n = tan alpha cos l, tan l = P/(pi d2)
 *   loosening    T = F [-P/2pi + ...] + T0 and likewise in (3) with -tan l
 *   radius       r = (d_w + d_h)/4, bearing face and clearance hole
 *                                             (4) VDI 2230-1, D_Km/2
 *   friction behind K, the same in thread and seat:
 *                mu = (K d - P/2pi)/(d2/(2 cos alpha) + r)            (5)
 *                with one coefficient given the other carries the rest
 *   stress       sigma^2 + 3 tau^2, sigma = F/A, tau = q Tt/(pi d0^3)
 *                Tt = torque in the thread + T0; q = 12 (fully plastic) as in
 *                VDI 2230-1 since 2003 (its factor 1.5), q = 16 (elastic,
 *                its factor 2 of 1986)                                 (6)
 *   a fraction of yield: (6) = (use Re)^2 solved for F, a quadratic when
 *                T0 > 0                                                (7)
 *   turn         360 F l/(E A P): the stud's own stretch, full stress area (8)
 *
 * MED is Mechanical Engineering Design (Shigley). Form (2) reproduces the VDI
 * tables; (3) differs from it by up to 1 % for ISO threads at mu 0.2,
 * 1.4 % for the smallest at mu 0.3.
 *
 * Not in it: settling, scatter, thread and seat wear.
 */
#include "fastener/torque.h"

#include <string.h>

#define SW__S sw_torque_in
const sw_field sw__torque_in_fields[] = {
    SW__IN_TEXT(thread, ""),
    SW__IN_TEXT(lubrication, "state not given"),
    SW__IN_TEXT(grade, "at least this grade is usual for clamping studs; "
                       "common practice, no source"),
    SW__IN(preload_N, "N", 1e-3, 1e8, 0, 0, ""),
    SW__IN(torque_Nm, "N.m", 1e-6, 1e6, 0, 0, ""),
    SW__IN(use, "", 0.01, 1, 0, 0, ""),
    SW__IN(nut_factor, "", 0.03, 1, 0.12, 0.30,
           "Mechanical Engineering Design (Shigley) 9th ed. table 8-15, by "
           "lubrication"),
    SW__IN(mu_thread, "", 0, 1, 0.08, 0.24,
           "by lubrication; with a nut factor: split evenly from it"),
    SW__IN(mu_seat, "", 0, 1, 0.08, 0.24,
           "by lubrication; with a nut factor: split evenly from it"),
    SW__IN_TIMES(
        friction_radius_mm, "mm", 0.1, 500, 0.9, 1.1,
        "VDI 2230-1: (bearing face + clearance hole)/4, ISO 4014 and ISO "
        "273 medium or their inch counterparts"),
    SW__IN(prevailing_torque_Nm, "N.m", 0, 1e5, 0, 0, "plain nut"),
    SW__IN_TIMES(free_length_mm, "mm", 0.1, 10000, 0.4, 2,
                 "five diameters; no source, measure it"),
    SW__IN_WORD(form, SW_WORDS_FORM, "VDI 2230-1"),
    SW__IN_WORD(torsion, SW_WORDS_TORSION, "VDI 2230-1 since 2003"),
    SW__END,
};
#undef SW__S

#define SW__S sw_torque_out
const sw_field sw__torque_out_fields[] = {
    SW__OUT(torque_Nm, "N.m"),
    SW__OUT(preload_N, "N"),
    SW__OUT(nut_factor, ""),
    SW__OUT(stretch_share, ""),
    SW__OUT(thread_share, ""),
    SW__OUT(seat_share, ""),
    SW__OUT(loosening_torque_Nm, "N.m"),
    SW__OUT(yield_use, ""),
    SW__OUT(turn_from_snug_deg, "deg"),
    SW__OUT(prevailing_share, ""),
    SW__OUT(seat_torque_Nm, "N.m"),
    SW__OUT(thread_torque_Nm, "N.m"),
    SW__OUT(proof_use, ""),
    SW__OUT(tension_MPa, "MPa"),
    SW__OUT(torsion_MPa, "MPa"),
    SW__OUT(equivalent_MPa, "MPa"),
    SW__OUT(mu_thread, ""),
    SW__OUT(mu_seat, ""),
    SW__OUT(friction_radius_mm, "mm"),
    SW__END,
};
#undef SW__S

#define MODULUS_MPA 205000.0 /* steel stud, for the turn */

/* Lever arms, mm: torque per newton of tension. */
typedef struct {
    double stretch, thread, seat, loosen;
} arms;

static arms arms_of(const sw_torque_in *in, const sw_thread_out *t)
{
    const double d2 = t->pitch_diameter_mm, P = t->pitch_mm;
    const double alpha = SW__RAD(t->flank_angle_deg);
    arms a;
    a.stretch = P / (2 * SW__PI);
    a.seat = in->mu_seat * in->friction_radius_mm;
    if (in->form == SW_FORM_EXACT) {
        const double tl = P / (SW__PI * d2), l = atan(tl);
        const double f = in->mu_thread / cos(atan(tan(alpha) * cos(l)));
        a.thread = d2 / 2 * (tl + f) / (1 - f * tl) - a.stretch;
        a.loosen = d2 / 2 * (f - tl) / (1 + f * tl) + a.seat;
    } else {
        a.thread = in->mu_thread * d2 / (2 * cos(alpha));
        a.loosen = a.thread - a.stretch + a.seat;
    }
    return a;
}

/* q / (pi d0^3) of equation (6), 1/mm3 */
static double twist_factor(const sw_torque_in *in, const sw_thread_out *t)
{
    const double d0 = sqrt(4 * t->stress_area_mm2 / SW__PI);
    const double q = in->torsion == SW_TORSION_ELASTIC ? 16 : 12;
    return q / (SW__PI * d0 * d0 * d0);
}

/* Equation (7): F with (F/A)^2 + 3 w^2 (g F + T0)^2 = (use Re)^2. */
static double preload_at(double stress, double area, double w, double g,
                         double prevailing)
{
    const double a = 1 / (area * area) + 3 * w * w * g * g;
    const double b = 3 * w * w * g * prevailing;
    const double c = 3 * w * w * prevailing * prevailing - stress * stress;
    if (c >= 0)
        return 0; /* the prevailing torque alone takes it all */
    return -c / (b + sqrt(b * b - a * c));
}

static void judge(sw_torque_out *out, const sw_grade_out *g,
                  const sw_thread_out *t)
{
    out->yield_use = out->proof_use = SW_UNSET;
    if (g->status) {
        out->warnings |= SW_WARN_STUD_STRENGTH_UNKNOWN;
        return;
    }
    out->yield_use = out->equivalent_MPa / g->yield_MPa;
    if (out->yield_use > 1)
        out->warnings |= SW_WARN_OVER_YIELD;
    if (sw__is_set(g->proof_MPa)) {
        out->proof_use = out->preload_N / (g->proof_MPa * t->stress_area_mm2);
        if (out->proof_use > SW__PROOF_ADVISED)
            out->warnings |= SW_WARN_OVER_PROOF;
    }
}

static void fill_shares(sw_torque_out *out, const arms *a, double prevailing)
{
    const double F = out->preload_N, T = 1000 * out->torque_Nm;
    out->stretch_share = a->stretch * F / T;
    out->thread_share = a->thread * F / T;
    out->seat_share = a->seat * F / T;
    out->prevailing_share = 1000 * prevailing / T;
    out->seat_torque_Nm = a->seat * F / 1000;
    out->thread_torque_Nm = (a->stretch + a->thread) * F / 1000 + prevailing;
    out->loosening_torque_Nm = a->loosen * F / 1000 + prevailing;
    if (out->loosening_torque_Nm <= 0)
        out->warnings |= SW_WARN_SELF_LOOSENING;
}

/* What the tables behind the answer are worth. */
static void warn_of_tables(const sw_torque_in *in, const sw_thread_out *t,
                           const sw_grade_out *g, sw_torque_out *out)
{
    const uint64_t by_lubrication =
        sw__bit(SW_STRUCT_TORQUE_IN, "nut_factor") |
        (sw__is_set(in->nut_factor)
             ? 0
             : sw__bit(SW_STRUCT_TORQUE_IN, "mu_thread") |
                   sw__bit(SW_STRUCT_TORQUE_IN, "mu_seat"));
    if (in->assumed & by_lubrication) {
        const sw_lubrication_out l = sw_lubrication(in->lubrication, NULL);
        if (l.conflicts_with[0])
            out->warnings |= SW_WARN_LUBRICATION_CONFLICT;
        out->warnings |= l.warnings;
    } else if (in->lubrication[0]) {
        out->warnings |= SW_WARN_UNUSED_INPUT;
    }
    if (in->assumed & sw__bit(SW_STRUCT_TORQUE_IN, "friction_radius_mm"))
        out->warnings |= t->warnings;
    out->warnings |= g->warnings;
}

static int solve(const sw_torque_in *in, const sw_thread_out *t,
                 sw_torque_out *out, sw_error *err)
{
    const arms a = arms_of(in, t);
    const double arm = a.stretch + a.thread + a.seat; /* T - T0 = arm F */
    const double A = t->stress_area_mm2, w = twist_factor(in, t);
    const double T0 = in->prevailing_torque_Nm;
    const sw_grade_out g = sw_grade(in->grade, t->nominal_mm, err);
    const int assumed_grade =
        (in->assumed & sw__bit(SW_STRUCT_TORQUE_IN, "grade")) != 0;
    if (g.status && (!assumed_grade || sw__is_set(in->use)))
        return g.status;
    sw__clear(err);
    if (sw__is_set(in->use)) {
        out->preload_N = preload_at(in->use * g.yield_MPa, A, w,
                                    a.stretch + a.thread, 1000 * T0);
        if (!(out->preload_N > 0))
            return sw__fail(err, SW_ERR_NONE, "prevailing_torque_Nm",
                            "prevailing_torque_Nm: it alone twists the stud "
                            "to that use of its yield");
    } else if (sw__is_set(in->torque_Nm)) {
        out->preload_N = 1000 * (in->torque_Nm - T0) / arm;
        if (!(out->preload_N > 0))
            return sw__fail(err, SW_ERR_NONE, "torque_Nm",
                            "torque_Nm: does not exceed the prevailing "
                            "torque, so no preload is left");
    } else {
        out->preload_N = in->preload_N;
    }
    const double F = out->preload_N;
    out->torque_Nm =
        sw__is_set(in->torque_Nm) ? in->torque_Nm : arm * F / 1000 + T0;
    out->nut_factor = arm / t->nominal_mm;
    fill_shares(out, &a, T0);
    out->tension_MPa = F / A;
    out->torsion_MPa = w * 1000 * out->thread_torque_Nm;
    out->equivalent_MPa = sqrt(out->tension_MPa * out->tension_MPa +
                               3 * out->torsion_MPa * out->torsion_MPa);
    out->mu_thread = in->mu_thread;
    out->mu_seat = in->mu_seat;
    out->friction_radius_mm = in->friction_radius_mm;
    out->turn_from_snug_deg =
        360 * F * in->free_length_mm / (MODULUS_MPA * A * t->pitch_mm);
    judge(out, &g, t);
    warn_of_tables(in, t, &g, out);
    return SW_OK;
}

sw_torque_out sw_torque(const sw_torque_in *in, sw_error *err)
{
    sw_torque_out out;
    sw_thread_out t;
    memset(&out, 0, sizeof out);
    if (!in) {
        sw__spoil(&out, SW_STRUCT_TORQUE_OUT, sw__fail_null(err, "in"));
        return out;
    }
    sw_torque_in full = *in;
    int status = sw__torque_open(&full, &t, err);
    if (!status)
        status = solve(&full, &t, &out, err);
    if (status)
        sw__spoil(&out, SW_STRUCT_TORQUE_OUT, status);
    return out;
}
