/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Cylinder: force of a piston.
 *
 * Symbols: p pressure over the atmosphere, D bore, d rod, A area, e part left
 * by the friction of seals, Fs return spring, Fmax the maker's limit.
 *
 *   area     A = pi D^2/4 pushing, pi (D^2 - d^2)/4 pulling               (1)
 *   force    F = p A e - Fs, never below zero                             (2)
 *   counted  min(F, Fmax); pressure at which the limit is reached:
 *            (Fmax + Fs)/(A e)                                            (3)
 *   low      (2) at the lowest pressure: what the part is held with when the
 *            supply sags to its interlock                                 (4)
 *
 * Textbook statics; (3) counts no more than the limit, though a limit caps
 * nothing: all of (2) acts, and the device is overloaded (its warning). The efficiency is common practice, no source.
 *
 * Not in it: pressure losses in pipes and valves, speed, side load of the rod
 * (swing.c), leaks, and what happens when the pressure fails.
 */
#include "base/room.h"

#include <strapwise/cylinder.h>

#define SW__S sw_cylinder_in
const sw_field sw__cylinder_in_fields[] = {
    SW__IN(pressure_MPa, "MPa", 0.0001, 1000, 0, 0, ""),
    SW__IN(low_pressure_MPa, "MPa", 0.0001, 1000, 0, 0, "no fall allowed for"),
    SW__IN(bore_mm, "mm", 0.5, 2000, 0, 0, ""),
    SW__IN(rod_mm, "mm", 0, 2000, 0, 0, "no rod on the pressure side"),
    SW__IN(piston_area_mm2, "mm2", 0.1, 1e7, 0, 0, "from bore and rod"),
    SW__IN_WORD(side, SW_WORDS_SIDE, "the full bore pushes"),
    SW__IN(efficiency, "", 0.1, 1, 0.85, 0.98,
           "0.9: common practice, no source"),
    SW__IN(spring_N, "N", 0, 1e7, 0, 0, "none"),
    SW__IN(limit_N, "N", 0.001, 1e8, 0, 0, ""),
    SW__END,
};
#undef SW__S

#define SW__S sw_cylinder_out
const sw_field sw__cylinder_out_fields[] = {
    SW__OUT(force_N, "N"),           SW__OUT(force_low_N, "N"),
    SW__OUT(uncapped_N, "N"),        SW__OUT(theoretical_N, "N"),
    SW__OUT(piston_area_mm2, "mm2"), SW__OUT(pressure_at_limit_MPa, "MPa"),
    SW__OUT(limit_use, ""),          SW__END,
};
#undef SW__S

static int cylinder_fill(sw_cylinder_in *in, const sw__filler *fill,
                         uint64_t *warnings, sw_error *err)
{
    if (!sw__is_set(in->pressure_MPa))
        return sw__fail_missing(err, "pressure_MPa", "read it on the gauge");
    const int bore = sw__is_set(in->bore_mm);
    if (!bore && !sw__is_set(in->piston_area_mm2))
        return sw__fail_missing(err, "bore_mm", "give bore or piston area");
    if (bore && sw__is_set(in->piston_area_mm2))
        return sw__fail_conflict(err, "piston_area_mm2",
                                 "give bore or piston area, not both");
    sw__fill_number(fill, "low_pressure_MPa", in->pressure_MPa);
    if (in->low_pressure_MPa > in->pressure_MPa)
        return sw__fail_conflict(err, "low_pressure_MPa",
                                 "above the pressure itself");
    if (bore) {
        sw__fill_word(fill, "side", SW_SIDE_PUSH);
        sw__fill_number(fill, "rod_mm", 0);
        if (in->rod_mm >= in->bore_mm)
            return sw__fail_conflict(err, "rod_mm",
                                     "not thinner than the bore");
        if (in->side == SW_SIDE_PULL && in->rod_mm == 0)
            return sw__fail_missing(err, "rod_mm",
                                    "a pulling piston loses the rod's area");
        const double d = in->side == SW_SIDE_PULL ? in->rod_mm : 0;
        sw__fill_number(fill, "piston_area_mm2",
                        SW__PI / 4 * (in->bore_mm * in->bore_mm - d * d));
    } else if (in->side || sw__is_set(in->rod_mm)) {
        *warnings |= SW_WARN_UNUSED_INPUT;
    }
    sw__fill_number(fill, "efficiency", 0.9);
    sw__fill_number(fill, "spring_N", 0);
    return SW_OK;
}

static int cylinder_solve(const sw_cylinder_in *in, sw_cylinder_out *out,
                          sw_error *err)
{
    const double A = in->piston_area_mm2, e = in->efficiency;
    (void)err;
    out->piston_area_mm2 = A;
    out->theoretical_N = in->pressure_MPa * A;
    out->uncapped_N = fmax(0, in->pressure_MPa * A * e - in->spring_N);
    out->force_N = out->uncapped_N;
    out->force_low_N = fmax(0, in->low_pressure_MPa * A * e - in->spring_N);
    const double limit = in->limit_N;
    if (!sw__is_set(limit))
        return SW_OK;
    out->pressure_at_limit_MPa = (limit + in->spring_N) / (A * e);
    out->limit_use = out->uncapped_N / limit;
    out->force_N = fmin(out->force_N, limit);
    out->force_low_N = fmin(out->force_low_N, limit);
    if (out->uncapped_N > limit * (1 + 1e-12))
        out->warnings |= SW_WARN_DEVICE_LIMIT;
    return SW_OK;
}

SW__ROOM(cylinder, CYLINDER);
