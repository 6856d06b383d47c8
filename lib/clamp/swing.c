/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Swing: the arm between a piston and the part.
 *
 * Symbols: p pressure, A pulling area, e part left by seals and pivot, P = p A
 * e pull, a arm, b the arm on which a pivoted one is pushed, g length over which
 * the rod is guided, mu friction there, F force at the contact, Fr rated force
 * at the rated arm ar and rated pressure pr.
 *
 *   swing arm  the moment F a on the rod is carried by two guide reactions
 *              F a/g, each with friction: F = P/(1 + 2 mu a/g)            (1)
 *   lever      F = P b/a                                                  (2)
 *   allowed    the arm is rated by its moment: Fa = Fr ar/a               (3)
 *   pressure   at which (1) or (2) reaches (3); F being proportional to p,
 *              pr ar/a; pr itself; the lowest of these                    (4)
 *   counted    min(F, Fa), and no more than F at the pressure of (4): what
 *              can be had                                                 (5)
 *   by rating  neither bore nor input force: F = Fr p/pr                  (6)
 *
 * (1) is derived here, from equilibrium; makers' charts fall with the arm in
 * this way but differ in the constants: the maker's chart governs. (2), (3) are
 * textbook moments.
 *
 * Not in it: bending of the arm, which lets the contact walk; the way swung and
 * its time; fingers (they close fast).
 */
#include "base/room.h"

#include <strapwise/swing.h>

#define SW__S sw_swing_in
const sw_field sw__swing_in_fields[] = {
    SW__IN_WORD(arm_kind, SW_WORDS_ARM,
                "an arm that stands out from the piston"),
    SW__IN(arm_mm, "mm", 0.1, 10000, 0, 0, ""),
    SW__IN(input_arm_mm, "mm", 0.1, 10000, 0, 0, ""),
    SW__IN(pressure_MPa, "MPa", 0.0001, 1000, 0, 0, ""),
    SW__IN(bore_mm, "mm", 0.5, 2000, 0, 0, ""),
    SW__IN(
        rod_mm, "mm", 0, 2000, 0.4, 0.7,
        "swing clamp: half the bore; no source, read it in the maker's sheet"),
    SW__IN(input_force_N, "N", 0.001, 1e8, 0, 0, ""),
    SW__IN(efficiency, "", 0.1, 1, 0.85, 0.98,
           "0.9: common practice, no source"),
    SW__IN_TIMES(guide_length_mm, "mm", 0.1, 10000, 0.7, 2,
                 "one bore; no source, the maker's chart governs"),
    SW__IN(mu_guide, "", 0, 0.5, 0.05, 0.15, "common practice, no source"),
    SW__IN(rated_force_N, "N", 0.001, 1e8, 0, 0, ""),
    SW__IN(rated_arm_mm, "mm", 0.1, 10000, 0, 0, ""),
    SW__IN(rated_pressure_MPa, "MPa", 0.0001, 1000, 0, 0, ""),
    SW__END,
};
#undef SW__S

#define SW__S sw_swing_out
const sw_field sw__swing_out_fields[] = {
    SW__OUT(force_N, "N"),
    SW__OUT(available_N, "N"),
    SW__OUT(allowed_N, "N"),
    SW__OUT(moment_Nm, "N.m"),
    SW__OUT(rated_moment_Nm, "N.m"),
    SW__OUT(arm_loss, ""),
    SW__OUT(allowed_pressure_MPa, "MPa"),
    SW__OUT(moment_use, ""),
    SW__OUT(force_ratio, ""),
    SW__END,
};
#undef SW__S

static int fill_input(sw_swing_in *in, const sw__filler *fill, sw_error *err)
{
    const int given = sw__is_set(in->input_force_N);
    const int bore = sw__is_set(in->bore_mm);
    if (given && bore)
        return sw__fail_conflict(err, "input_force_N",
                                 "give it, or pressure and bore, not both");
    if (bore && !sw__is_set(in->pressure_MPa))
        return sw__fail_missing(err, "pressure_MPa", "read it on the gauge");
    if (!given && !bore && !sw__is_set(in->rated_force_N))
        return sw__fail_missing(err, "input_force_N",
                                "give it, or pressure and bore, or the maker's "
                                "rating");
    if (bore) {
        sw__fill_number(fill, "rod_mm",
                        in->arm_kind == SW_ARM_SWING ? in->bore_mm / 2 : 0);
        if (in->rod_mm >= in->bore_mm)
            return sw__fail_conflict(err, "rod_mm",
                                     "not thinner than the bore");
    }
    return SW_OK;
}

static int swing_fill(sw_swing_in *in, const sw__filler *fill,
                      uint64_t *warnings, sw_error *err)
{
    if (!sw__is_set(in->arm_mm))
        return sw__fail_missing(err, "arm_mm",
                                "piston axis or pivot to the contact");
    sw__fill_word(fill, "arm_kind", SW_ARM_SWING);
    const int status = fill_input(in, fill, err);
    if (status)
        return status;
    if (sw__is_set(in->rated_force_N) != sw__is_set(in->rated_arm_mm))
        return sw__fail_missing(err,
                                sw__is_set(in->rated_arm_mm) ? "rated_force_N"
                                                             : "rated_arm_mm",
                                "a rating is a force at an arm");
    sw__fill_number(fill, "efficiency", 0.9);
    if (in->arm_kind == SW_ARM_LEVER) {
        if (!sw__is_set(in->input_arm_mm) &&
            (sw__is_set(in->input_force_N) || sw__is_set(in->bore_mm)))
            return sw__fail_missing(err, "input_arm_mm",
                                    "pivot to where the arm is pushed");
        if (sw__is_set(in->guide_length_mm) || sw__is_set(in->mu_guide))
            *warnings |= SW_WARN_UNUSED_INPUT;
        return SW_OK;
    }
    if (sw__is_set(in->input_arm_mm))
        *warnings |= SW_WARN_UNUSED_INPUT;
    sw__fill_number(fill, "mu_guide", 0.1);
    sw__fill_number(fill, "guide_length_mm", in->bore_mm);
    if (!sw__is_set(in->guide_length_mm) && sw__is_set(in->input_force_N))
        return sw__fail_missing(err, "guide_length_mm",
                                "without a bore: length over which the rod is "
                                "guided");
    return SW_OK;
}

/* Force at the contact over the input's, equations (1) and (2). */
static double ratio_of(const sw_swing_in *in)
{
    if (in->arm_kind == SW_ARM_LEVER)
        return sw__is_set(in->input_arm_mm) ? in->input_arm_mm / in->arm_mm
                                            : SW_UNSET;
    if (!sw__is_set(in->guide_length_mm))
        return SW_UNSET;
    return 1 / (1 + 2 * in->mu_guide * in->arm_mm / in->guide_length_mm);
}

/* What the maker's rating allows, equations (3) to (5). */
static void set_allowed(const sw_swing_in *in, double area, sw_swing_out *out)
{
    const double moment = in->rated_force_N * in->rated_arm_mm;
    const double p = in->pressure_MPa, pr = in->rated_pressure_MPa;
    const int pressed = sw__is_set(p);
    out->rated_moment_Nm = moment / 1000;
    out->allowed_N = moment / in->arm_mm;
    if (sw__is_set(pr))
        out->allowed_pressure_MPa = pr * fmin(1, in->rated_arm_mm / in->arm_mm);
    if (sw__is_set(area) && sw__is_set(out->force_ratio)) {
        const double by_force = out->allowed_N / (area * out->force_ratio);
        if (!sw__is_set(out->allowed_pressure_MPa) ||
            by_force < out->allowed_pressure_MPa)
            out->allowed_pressure_MPa = by_force;
    }
    if (pressed && sw__is_set(pr) && !sw__is_set(out->available_N) &&
        !sw__is_set(in->input_force_N) && !sw__is_set(area))
        out->available_N = in->rated_force_N * p / pr;
    const double most = out->allowed_pressure_MPa;
    if (sw__is_set(out->available_N)) {
        out->moment_use = out->available_N / out->allowed_N;
        out->force_N = fmin(out->available_N, out->allowed_N);
    } else {
        out->force_N = out->allowed_N;
    }
    const int deep = pressed && sw__is_set(most) && p > most * (1 + 1e-12);
    if (deep || (sw__is_set(out->moment_use) && out->moment_use > 1 + 1e-12))
        out->warnings |= SW_WARN_DEVICE_LIMIT;
    if (deep && sw__is_set(out->available_N))
        out->force_N = fmin(out->force_N, out->available_N * most / p);
}

static int swing_solve(const sw_swing_in *in, sw_swing_out *out, sw_error *err)
{
    const double ratio = ratio_of(in);
    double input = in->input_force_N, area = SW_UNSET;
    (void)err;
    if (sw__is_set(in->bore_mm)) {
        area =
            SW__PI / 4 * (in->bore_mm * in->bore_mm - in->rod_mm * in->rod_mm);
        input = in->pressure_MPa * area;
    }
    if (sw__is_set(input) && sw__is_set(ratio)) {
        out->force_ratio = ratio * in->efficiency;
        out->available_N = input * out->force_ratio;
        out->force_N = out->available_N;
        if (in->arm_kind == SW_ARM_SWING)
            out->arm_loss = 1 - ratio;
    }
    if (sw__is_set(in->rated_force_N))
        set_allowed(in, area, out);
    out->moment_Nm = out->force_N * in->arm_mm / 1000;
    return SW_OK;
}

SW__ROOM(swing, SWING);
