/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Turn: how far the nut of one strap turns from snug to its tension.
 *
 * Symbols: F tension, F0 tension when snug, P pitch, d nominal diameter, E
 * moduli, A stress area, A3 root area, A_N = pi d^2/4, l free stud; a, b, L of
 * strap.c; h_t, h_h heights of part and heel, w width of the strap.
 *
 *   turn      360 (sum of what gives)/P, each with F - F0                 (1)
 *   stud      (F - F0) l/(E A)                                            (2)
 *   ends      (F - F0) [2 (0.5 d)/(E A3) + (0.4 d + 0.33 d)/(E A_N)]: what
 *             the engaged threads of stud, nut and T-nut give, VDI 2230-1 (3)
 *   strap     (F - F0) a^2 b^2/(3 E I L)                                  (4)
 *   supports  the strap's middle sinks by b/L of the toe's give and a/L of the
 *             heel's: (F - F0) [(b/L)^2 c_t + (a/L)^2 c_h], c = h/(E w^2), a
 *             steel column as broad and as long as the strap is wide; a jack
 *             screw h/(E A_screw)                                         (5)
 *
 * Band. Low: (2) alone, with a stud that has a plain shank of the nominal
 * diameter and the upper modulus. High: (2) to (4) with the lower moduli, (5)
 * three times (an aluminium part), 3 um of settling in each of seven joints
 * (VDI 2230-1: threads, seats and interfaces of turned surfaces, 2 to 3 um),
 * and the twist of the stud under the spanner, T_thread l/(G J). Snug counts
 * from 0 to 10 % of F where it was not given; common practice, no source.
 *
 * Sources: (2), (4) any text on strength of materials; (3) and the settling
 * VDI 2230-1, from memory; (5) derived here. Most of the turn on a thin part is
 * the strap's and the stud's; a turn tells a seized nut from a tight one, not
 * 10 % of tension.
 *
 * Not in it: a washer that dishes, a T-nut that tips, dirt, a tilted strap that
 * seats itself while the nut goes down.
 */
#include "clamp/strap.h"
#include "clamp/strap_resolve.h"

#include <strapwise/turn.h>

#include <string.h>

#define SW__S sw_turn_out
const sw_field sw__turn_out_fields[] = {
    SW__OUT(turn_deg, "deg"),
    SW__OUT(turn_low_deg, "deg"),
    SW__OUT(turn_high_deg, "deg"),
    SW__OUT(flats, ""),
    SW__OUT(snug_N, "N"),
    SW__OUT(preload_N, "N"),
    SW__OUT(stud_mm, "mm"),
    SW__OUT(ends_mm, "mm"),
    SW__OUT(strap_mm, "mm"),
    SW__OUT(supports_mm, "mm"),
    SW__END,
};
#undef SW__S

#define STEEL_MPA 205000.0
#define SETTLING_MM 0.003
#define JOINTS 7
#define SNUG 0.05
#define SNUG_HIGH 0.10
#define SOFTER 3.0 /* aluminium for steel */

/* Equation (3), mm/N. */
static double give_of_ends(const sw_thread_out *t, double E)
{
    const double d = t->nominal_mm, A_N = SW__PI * d * d / 4;
    return d / (E * t->root_area_mm2) + (0.4 + 0.33) * d / (E * A_N);
}

/* Equation (5), mm/N. */
static double give_of_supports(const sw_strap_in *in)
{
    const double L = in->stud_to_toe_mm + in->stud_to_heel_mm;
    const double toe = in->stud_to_heel_mm / L, heel = in->stud_to_toe_mm / L;
    const double w2 = in->strap_width_mm * in->strap_width_mm;
    const double D = in->heel_screw_diameter_mm;
    const double A_heel = in->heel == SW_HEEL_SCREW ? SW__PI * D * D / 4 : w2;
    return (toe * toe * in->part_height_mm / w2 +
            heel * heel * in->heel_height_mm / A_heel) /
           STEEL_MPA;
}

/* End of the usual range of a modulus that was assumed; a given one has none. */
static double modulus(const sw_strap_in *in, const char *name, double value,
                      int high)
{
    const sw_field *f = sw_field_named(SW_STRUCT_STRAP_IN, name);
    if (!(in->assumed & sw__bit(SW_STRUCT_STRAP_IN, name)))
        return value;
    return high ? f->high : f->low;
}

static double low_end(const sw__strap_full *full, double force)
{
    const double d = full->thread.nominal_mm;
    const double E =
        modulus(&full->in, "stud_modulus_MPa", full->in.stud_modulus_MPa, 1);
    return force * full->in.stud_length_mm / (E * SW__PI * d * d / 4);
}

/* Without the twist, which is no way along the thread. */
static double high_end(const sw__strap_full *full, const sw_strap_out *s,
                       double force)
{
    const sw_strap_in *in = &full->in;
    const double E = modulus(in, "stud_modulus_MPa", in->stud_modulus_MPa, 0);
    const double E_strap =
        modulus(in, "strap_modulus_MPa", in->strap_modulus_MPa, 0);
    return force * (in->stud_length_mm / (E * full->thread.stress_area_mm2) +
                    give_of_ends(&full->thread, E) +
                    s->strap_sag_mm / s->preload_N * in->strap_modulus_MPa /
                        E_strap +
                    SOFTER * give_of_supports(in)) +
           JOINTS * SETTLING_MM;
}

static double twist_deg(const sw__strap_full *full)
{
    const double d3 = full->thread.root_diameter_mm;
    const double J = SW__PI * d3 * d3 * d3 * d3 / 32;
    const double G = full->in.stud_modulus_MPa / (2 * (1 + 0.3));
    return SW__DEG(1000 * full->torque.thread_torque_Nm *
                   full->in.stud_length_mm / (G * J));
}

static int check_snug(const sw__strap_full *full, double snug_N, sw_error *err)
{
    const double F = full->torque.preload_N;
    if (full->in.nut == SW_NUT_STILL)
        return sw__fail(err, SW_ERR_CONFLICT, "nut",
                        "nut: nobody turns this nut");
    if (sw__is_set(snug_N) && !(snug_N >= 0 && snug_N < F))
        return sw__fail_range(err, "snug_N", snug_N, "N", 0, F);
    return SW_OK;
}

static void set_turn(const sw__strap_full *full, const sw_strap_out *s,
                     double snug_N, sw_turn_out *out)
{
    const sw_strap_in *in = &full->in;
    const sw_thread_out *t = &full->thread;
    const double F = s->preload_N, per_mm = 360 / t->pitch_mm;
    const int given = sw__is_set(snug_N);
    out->preload_N = F;
    out->snug_N = given ? snug_N : SNUG * F;
    const double way = F - out->snug_N, E = in->stud_modulus_MPa;
    out->stud_mm = way * in->stud_length_mm / (E * t->stress_area_mm2);
    out->ends_mm = way * give_of_ends(t, E);
    out->strap_mm = way * s->strap_sag_mm / F;
    out->supports_mm = way * give_of_supports(in);
    out->turn_deg = per_mm * (out->stud_mm + out->ends_mm + out->strap_mm +
                              out->supports_mm);
    out->flats = out->turn_deg / 60;
    out->turn_low_deg = per_mm * low_end(full, given ? way : F - SNUG_HIGH * F);
    const double longest = given ? way : F;
    out->turn_high_deg =
        per_mm * high_end(full, s, longest) + twist_deg(full) * longest / F;
    out->warnings =
        s->warnings &
        (SW_WARN_STUD_YIELDS | SW_WARN_STRAP_YIELDS | SW_WARN_HEIGHTS_ASSUMED |
         SW_WARN_MEASURES | SW_WARN_UNUSED_INPUT | SW_WARN_TABLE_FROM_MEMORY);
}

sw_turn_out sw_strap_turn(const sw_strap_in *in, double snug_N, sw_error *err)
{
    sw_turn_out out;
    sw__strap_full full;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    int status = in ? sw__strap_open(in, &full, err) : sw__fail_null(err, "in");
    if (!status)
        status = check_snug(&full, snug_N, err);
    sw_strap_out s;
    if (!status) {
        s = sw_strap(in, err);
        status = s.status;
    }
    if (!status)
        set_turn(&full, &s, snug_N, &out);
    else
        sw__spoil(&out, SW_STRUCT_TURN_OUT, status);
    return out;
}
