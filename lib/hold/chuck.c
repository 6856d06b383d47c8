/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Chuck: jaws at speed.
 *
 * Symbols: F0 force of all z jaws standing, m mass and r centre of gravity of
 * one, n speed, w = 2 pi n/60, mu friction, d grip and dc cut diameter, Fc main
 * cutting force, Ff feed force, S wanted margin, Ssp clamp factor.
 *
 *   centrifugal  C = z m r w^2                                           (1)
 *   at speed     F = F0 - C outside grip, F0 + C inside grip             (2)
 *   need         P = sqrt((Fc dc/d)^2 + Ff^2), along the jaws            (3)
 *   margin       mu F/P                                                  (4)
 *   speeds       C = 0.67 F0 (most of EN 1550); C = F0; F = S P/mu       (5)
 *   needed       Fsp = S P/mu at speed; standing Ssp (Fsp + C) outside,
 *                Ssp (Fsp - C) inside, never below Ssp Fsp               (6)
 *   holds        F >= S P/mu, F0 >= (6) standing, and C not above 0.67 F0;
 *                the highest speed that keeps all three, outside grip:
 *                C = min(0.67 F0, F0/Ssp - S P/mu)                       (7)
 *
 * Sources: (6) VDI 3106 with S and Ssp 1.5 at least, as chuck manuals print it
 * (they print opposite signs for the two grips; jaws outside lose force with
 * speed, that is physics); 67 % EN 1550 as a chuck manual cites it; (1) to (4)
 * textbook mechanics. A chuck gives a part of C back by its own spring, so (2)
 * is safe. F counts every jaw: one face each, and none of them moves with the
 * part. (6) for inside grip does not credit the speed: the lathe must hold
 * before it turns.
 *
 * Not in it: weight and overhang of the part (a long one bends the jaws open:
 * manuals ask a factor of 4), radial cut against one jaw, unbalance, wear and
 * dirt of the chuck, its maker's largest speed.
 */
#include "base/room.h"

#include <strapwise/chuck.h>

#define SW__S sw_chuck_in
const sw_field sw__chuck_in_fields[] = {
    SW__IN(chuck_force_N, "N", 0.001, 1e8, 0, 0, ""),
    SW__IN(jaws, "", 1, 12, 2, 6, "three-jaw chuck"),
    SW__IN(jaw_mass_kg, "kg", 0, 1000, 0, 0,
           "no loss: nothing is said about speed without it"),
    SW__IN(jaw_radius_mm, "mm", 0, 5000, 0, 0, ""),
    SW__IN(speed_rpm, "rpm", 0, 100000, 0, 0, "standing"),
    SW__IN_WORD(grip, SW_WORDS_GRIP, "jaws grip from outside"),
    SW__IN(mu_jaw, "", 0, 2, 0.1, 0.25,
           "common practice, no source: smooth jaws 0.10 to 0.20, serrated "
           "0.30 to 0.40"),
    SW__IN(grip_diameter_mm, "mm", 0.001, 100000, 0, 0, ""),
    SW__IN(cut_diameter_mm, "mm", 0.001, 100000, 0, 0, ""),
    SW__IN(tangential_cut_N, "N", 0, 1e8, 0, 0, "none given"),
    SW__IN(feed_cut_N, "N", 0, 1e8, 0, 0, "none given"),
    SW__IN(required_margin, "", 1, 20, 1.5, 4,
           "2.0: VDI 3106 has 1.5 at least; chuck manuals 2.0 and, long "
           "overhang, 4.0"),
    SW__IN(clamp_factor, "", 1, 10, 1.5, 2, "VDI 3106: 1.5 at least"),
    SW__END,
};
#undef SW__S

#define SW__S sw_chuck_out
const sw_field sw__chuck_out_fields[] = {
    SW__OUT_WORD(verdict, SW_WORDS_STAYS),
    SW__OUT_WORD(first, SW_WORDS_LOSES),
    SW__OUT(grip_N, "N"),
    SW__OUT(loss_N, "N"),
    SW__OUT(loss_share, ""),
    SW__OUT(need_N, "N"),
    SW__OUT(carries_N, "N"),
    SW__OUT(speed_67_rpm, "rpm"),
    SW__OUT(speed_zero_rpm, "rpm"),
    SW__OUT(speed_margin_rpm, "rpm"),
    SW__OUT(speed_limit_rpm, "rpm"),
    SW__OUT(grip_needed_N, "N"),
    SW__OUT(standing_needed_N, "N"),
    SW__OUT(margin, ""),
    SW__END,
};
#undef SW__S

#define LOSS_MOST 0.67 /* EN 1550 */

static int chuck_fill(sw_chuck_in *in, const sw__filler *fill,
                      uint64_t *warnings, sw_error *err)
{
    (void)warnings;
    if (!sw__is_set(in->chuck_force_N))
        return sw__fail_missing(err, "chuck_force_N",
                                "force of all jaws, measured or from the "
                                "chuck's own data");
    sw__fill_number(fill, "jaws", 3);
    if (in->jaws != floor(in->jaws))
        return sw__fail_conflict(err, "jaws", "a whole number is wanted");
    sw__fill_word(fill, "grip", SW_GRIP_OUTSIDE);
    sw__fill_number(fill, "speed_rpm", 0);
    if (in->speed_rpm > 0 && !sw__is_set(in->jaw_mass_kg))
        return sw__fail_missing(err, "jaw_mass_kg",
                                "at speed the mass of one jaw is needed: weigh "
                                "it with its base jaw");
    if (sw__is_set(in->jaw_mass_kg) && in->jaw_mass_kg > 0 &&
        !sw__is_set(in->jaw_radius_mm))
        return sw__fail_missing(err, "jaw_radius_mm",
                                "axis to the jaw's centre of gravity");
    sw__fill_number(fill, "mu_jaw", 0.15);
    sw__fill_number(fill, "tangential_cut_N", 0);
    sw__fill_number(fill, "feed_cut_N", 0);
    sw__fill_number(fill, "required_margin", 2);
    sw__fill_number(fill, "clamp_factor", 1.5);
    if (in->tangential_cut_N > 0 &&
        !(sw__is_set(in->grip_diameter_mm) && sw__is_set(in->cut_diameter_mm)))
        return sw__fail_missing(err,
                                sw__is_set(in->grip_diameter_mm)
                                    ? "cut_diameter_mm"
                                    : "grip_diameter_mm",
                                "grip and cut diameter turn a cut into a "
                                "torque");
    return SW_OK;
}

static double rpm_of(double force_N, double pull) /* pull: N s2 */
{
    return sqrt(force_N / pull) * 60 / (2 * SW__PI);
}

static void set_need(const sw_chuck_in *in, double C, double pull,
                     sw_chuck_out *out)
{
    const int outside = in->grip == SW_GRIP_OUTSIDE;
    const double turn =
        in->tangential_cut_N > 0
            ? in->tangential_cut_N * in->cut_diameter_mm / in->grip_diameter_mm
            : 0;
    const double P = hypot(turn, in->feed_cut_N);
    if (!(P > 0))
        return;
    out->need_N = P;
    sw__margin(out->carries_N, P,
               out->grip_N > 0 ? SW_LOSES_SLIDE : SW_LOSES_SPEED, &out->margin,
               &out->first);
    if (!(in->mu_jaw > 0))
        return;
    const double wanted = in->required_margin * P / in->mu_jaw;
    out->grip_needed_N = wanted;
    out->standing_needed_N = in->clamp_factor * (outside ? wanted + C : wanted);
    if (!outside || !(pull > 0))
        return;
    out->speed_margin_rpm = rpm_of(fmax(0, in->chuck_force_N - wanted), pull);
    out->speed_limit_rpm = fmin(
        out->speed_limit_rpm,
        rpm_of(fmax(0, in->chuck_force_N / in->clamp_factor - wanted), pull));
}

/* Equation (7). The jaws let go with speed whether there is a cut or not. */
static void set_verdict(const sw_chuck_in *in, sw_chuck_out *out)
{
    out->verdict = sw__stays(out->margin, in->required_margin);
    if (out->verdict == SW_STAYS_YES && sw__is_set(out->standing_needed_N) &&
        in->chuck_force_N < out->standing_needed_N * (1 - 1e-12))
        out->verdict = SW_STAYS_BARELY;
    if (!(out->loss_share > LOSS_MOST))
        return;
    out->warnings |= SW_WARN_GRIP_LOST;
    out->verdict = SW_STAYS_NOT;
    out->first = SW_LOSES_SPEED;
}

static int chuck_solve(const sw_chuck_in *in, sw_chuck_out *out, sw_error *err)
{
    const double w = 2 * SW__PI * in->speed_rpm / 60, F0 = in->chuck_force_N;
    const int outside = in->grip == SW_GRIP_OUTSIDE;
    (void)err;
    double pull = 0; /* centrifugal force over w^2 */
    if (sw__is_set(in->jaw_mass_kg) && in->jaw_mass_kg > 0)
        pull = in->jaws * in->jaw_mass_kg * in->jaw_radius_mm / 1000;
    const double C = pull * w * w;
    out->loss_N = outside ? C : -C;
    out->loss_share = out->loss_N / F0;
    out->grip_N = fmax(0, F0 - out->loss_N);
    out->carries_N = in->mu_jaw * out->grip_N;
    if (outside && pull > 0) {
        out->speed_67_rpm = rpm_of(LOSS_MOST * F0, pull);
        out->speed_limit_rpm = out->speed_67_rpm;
        out->speed_zero_rpm = rpm_of(F0, pull);
    }
    set_need(in, C, pull, out);
    set_verdict(in, out);
    return SW_OK;
}

SW__ROOM(chuck, CHUCK);
