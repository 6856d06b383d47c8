/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Vacuum: a part held down by the air.
 *
 * Symbols: p gauge vacuum, A area inside the seal, l and w its length and
 * width, b the shorter, H hold, W weight, N = H + W, mu friction, h height of
 * the side cut S, L lift at the middle, R lift at the rim, k load factor on all
 * three.
 *
 *   hold     H = p A                                                     (1)
 *   air      101325 (1 - 2.25577e-5 z)^5.25588 Pa at z metres            (2)
 *   slide    k S = mu (N - k (L + R))                                    (3)
 *   gap      the resultant leaves the middle third: k (S h + R b/2) =
 *            (N - k (L + R)) b/6; the seal leaks there                   (4)
 *   tip      over the edge of the seal: (4) with b/2                     (5)
 *   lift     k (L + R) = N                                               (6)
 *
 * (1), (3), (6) textbook statics; (2) the international standard atmosphere;
 * (4), (5) derived: pressure between part and plate falls evenly across, as
 * under a rigid part on an even bed. The margin is the least of all four.
 *
 * Not in it: leaks, reserve of the pump and tank, a part that bends or sucks
 * into the grooves, small parts beside one another, the cut that goes through;
 * nothing holds when the vacuum is lost.
 */
#include "base/room.h"

#include <strapwise/vacuum.h>

#define SW__S sw_vacuum_in
const sw_field sw__vacuum_in_fields[] = {
    SW__IN(vacuum_MPa, "MPa", 1e-5, 0.12, 0, 0, ""),
    SW__IN(altitude_m, "m", -500, 9000, 0, 2000, "sea level"),
    SW__IN_TIMES(atmosphere_MPa, "MPa", 0.02, 0.12, 0.96, 1.03,
                 "standard atmosphere at the altitude"),
    SW__IN(seal_length_mm, "mm", 0.001, 100000, 0, 0, ""),
    SW__IN(seal_width_mm, "mm", 0.001, 100000, 0, 0, ""),
    SW__IN(seal_area_mm2, "mm2", 0.1, 1e8, 0, 0, "length times width"),
    SW__IN(mu_face, "", 0, 2, 0.1, 0.2,
           "common practice, no source: coolant-wet smooth faces 0.10 to 0.15; "
           "abrasive sheet more, once tested"),
    SW__IN(weight_N, "N", 0, 1e8, 0, 0, "left out, which is safe"),
    SW__IN(side_cut_N, "N", 0, 1e8, 0, 0, "none given"),
    SW__IN(cut_height_mm, "mm", 0, 100000, 0, 0,
           "at the plate: tipping is not tested without a height"),
    SW__IN(lift_N, "N", 0, 1e8, 0, 0, "none given"),
    SW__IN(rim_lift_N, "N", 0, 1e8, 0, 0, "none given"),
    SW__IN(required_margin, "", 1, 20, 1.5, 4,
           "2.0: VDI 3106 has 1.5 at least; chuck manuals 2.0 and, long "
           "overhang, 4.0"),
    SW__END,
};
#undef SW__S

#define SW__S sw_vacuum_out
const sw_field sw__vacuum_out_fields[] = {
    SW__OUT_WORD(verdict, SW_WORDS_STAYS),
    SW__OUT_WORD(first, SW_WORDS_LOSES),
    SW__OUT(held_N, "N"),
    SW__OUT(atmosphere_MPa, "MPa"),
    SW__OUT(vacuum_share, ""),
    SW__OUT(slide_N, "N"),
    SW__OUT(gap_N, "N"),
    SW__OUT(tip_N, "N"),
    SW__OUT(rim_gap_N, "N"),
    SW__OUT(rim_tip_N, "N"),
    SW__OUT(slide_margin, ""),
    SW__OUT(gap_margin, ""),
    SW__OUT(tip_margin, ""),
    SW__OUT(lift_margin, ""),
    SW__OUT(margin, ""),
    SW__END,
};
#undef SW__S

static double air_MPa(double altitude_m)
{
    return 0.101325 * pow(1 - 2.25577e-5 * altitude_m, 5.25588);
}

static int vacuum_fill(sw_vacuum_in *in, const sw__filler *fill,
                       uint64_t *warnings, sw_error *err)
{
    if (!sw__is_set(in->vacuum_MPa))
        return sw__fail_missing(err, "vacuum_MPa", "read it on the gauge");
    const int l = sw__is_set(in->seal_length_mm),
              w = sw__is_set(in->seal_width_mm);
    if (!(l && w) && !sw__is_set(in->seal_area_mm2))
        return sw__fail_missing(err, l ? "seal_width_mm" : "seal_length_mm",
                                "give length and width inside the seal, or "
                                "the area");
    if (l && w) {
        const double box = in->seal_length_mm * in->seal_width_mm;
        sw__fill_number(fill, "seal_area_mm2", box);
        if (in->seal_area_mm2 > box * (1 + 1e-9))
            return sw__fail_conflict(err, "seal_area_mm2",
                                     "larger than length times width");
    }
    if (sw__is_set(in->atmosphere_MPa) && sw__is_set(in->altitude_m))
        *warnings |= SW_WARN_UNUSED_INPUT;
    if (!sw__is_set(in->atmosphere_MPa))
        sw__fill_number(fill, "altitude_m", 0);
    sw__fill_number(fill, "atmosphere_MPa", air_MPa(in->altitude_m));
    /* 14.7 psi is the rounded atmosphere */
    if (in->vacuum_MPa > 1.001 * in->atmosphere_MPa)
        return sw__fail_range(err, "vacuum_MPa", in->vacuum_MPa, "MPa", 1e-5,
                              in->atmosphere_MPa);
    if (in->vacuum_MPa > 0.9 * in->atmosphere_MPa)
        *warnings |= SW_WARN_VACUUM_DEEP;
    sw__fill_number(fill, "mu_face", 0.15);
    sw__fill_number(fill, "weight_N", 0);
    sw__fill_number(fill, "side_cut_N", 0);
    sw__fill_number(fill, "cut_height_mm", 0);
    sw__fill_number(fill, "lift_N", 0);
    sw__fill_number(fill, "rim_lift_N", 0);
    sw__fill_number(fill, "required_margin", 2);
    if (!(l && w) &&
        (in->rim_lift_N > 0 || (in->side_cut_N > 0 && in->cut_height_mm > 0)))
        return sw__fail_missing(err, "seal_width_mm",
                                "a cut at a height or at the rim needs length "
                                "and width");
    return SW_OK;
}

static void set_moments(const sw_vacuum_in *in, double N, sw_vacuum_out *out)
{
    const double b = fmin(in->seal_length_mm, in->seal_width_mm);
    const double L = in->lift_N, R = in->rim_lift_N, h = in->cut_height_mm;
    const double left = N - L - R;
    out->rim_gap_N = N / 4;
    out->rim_tip_N = N / 2;
    if (h > 0) {
        out->gap_N = fmax(0, (left * b / 6 - R * b / 2) / h);
        out->tip_N = fmax(0, (left * b / 2 - R * b / 2) / h);
    }
    const double M = in->side_cut_N * h + R * b / 2;
    if (!(M > 0))
        return;
    out->gap_margin = sw__margin(N * b / 6, M + (L + R) * b / 6, SW_LOSES_GAP,
                                 &out->margin, &out->first);
    out->tip_margin = sw__margin(N * b / 2, M + (L + R) * b / 2, SW_LOSES_TIP,
                                 &out->margin, &out->first);
}

static int vacuum_solve(const sw_vacuum_in *in, sw_vacuum_out *out,
                        sw_error *err)
{
    const double S = in->side_cut_N, lift = in->lift_N + in->rim_lift_N;
    (void)err;
    out->held_N = in->vacuum_MPa * in->seal_area_mm2;
    const double N = out->held_N + in->weight_N;
    out->atmosphere_MPa = in->atmosphere_MPa;
    out->vacuum_share = in->vacuum_MPa / in->atmosphere_MPa;
    out->slide_N = fmax(0, in->mu_face * (N - lift));
    if (S > 0)
        out->slide_margin =
            sw__margin(in->mu_face * N, S + in->mu_face * lift, SW_LOSES_SLIDE,
                       &out->margin, &out->first);
    out->lift_margin =
        sw__margin(N, lift, SW_LOSES_LIFT, &out->margin, &out->first);
    if (sw__is_set(in->seal_length_mm) && sw__is_set(in->seal_width_mm))
        set_moments(in, N, out);
    if (out->first == SW_LOSES_GAP)
        out->warnings |= SW_WARN_GAP_FIRST;
    out->verdict = sw__stays(out->margin, in->required_margin);
    return SW_OK;
}

SW__ROOM(vacuum, VACUUM);
