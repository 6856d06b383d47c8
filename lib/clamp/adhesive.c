/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Adhesive: a part held by tape or glue.
 *
 * Symbols: ts, ss shear and tension strength of the data sheet, n its factor,
 * v scatter, A bonded area, l longer and b shorter side, S side cut at height
 * h, L lift.
 *
 *   allowed  ta = ts (1 - v)/n, sa = ss (1 - v)/n                        (1)
 *   shear    t = S/A                                                     (2)
 *   tension  s = L/A + 6 S h/(l b^2): at the edge that the cut lifts     (3)
 *   margin   1/(t/ta + s/sa)                                             (4)
 *
 * (2), (3) textbook statics of a rigid part; (4) adds shear and tension
 * straight, which no measured bond falls below by much: common practice, no
 * source. No strength of tape per area is published that one could rely on, so
 * the data sheet's is demanded with its factor, and nothing is assumed.
 *
 * Not in it: peel of a part that bends, heat of the cut, oil on the face, age
 * and creep of the bond, how it is released (structural glue: about 120 C).
 */
#include "base/room.h"

#include <strapwise/adhesive.h>

#define SW__S sw_adhesive_in
const sw_field sw__adhesive_in_fields[] = {
    SW__IN(shear_MPa, "MPa", 1e-5, 200, 0, 0, ""),
    SW__IN(tension_MPa, "MPa", 1e-5, 200, 0, 0, ""),
    SW__IN(sheet_factor, "", 1, 100, 0, 0, ""),
    SW__IN(bond_scatter_pct, "%", 0, 90, 10, 30,
           "within 20 %: abstract in IJAMT, 2020"),
    SW__IN(bond_length_mm, "mm", 0.001, 100000, 0, 0, ""),
    SW__IN(bond_width_mm, "mm", 0.001, 100000, 0, 0, ""),
    SW__IN(bond_area_mm2, "mm2", 0.1, 1e8, 0, 0, "length times width"),
    SW__IN(side_cut_N, "N", 0, 1e8, 0, 0, "none given"),
    SW__IN(cut_height_mm, "mm", 0, 100000, 0, 0,
           "at the plate: tipping is not tested without a height"),
    SW__IN(lift_N, "N", 0, 1e8, 0, 0, "none given"),
    SW__IN(required_margin, "", 1, 20, 1.5, 4,
           "2.0: VDI 3106 has 1.5 at least; chuck manuals 2.0 and, long "
           "overhang, 4.0"),
    SW__END,
};
#undef SW__S

#define SW__S sw_adhesive_out
const sw_field sw__adhesive_out_fields[] = {
    SW__OUT_WORD(verdict, SW_WORDS_STAYS),
    SW__OUT_WORD(first, SW_WORDS_LOSES),
    SW__OUT(shear_held_N, "N"),
    SW__OUT(tension_held_N, "N"),
    SW__OUT(shear_stress_MPa, "MPa"),
    SW__OUT(peel_stress_MPa, "MPa"),
    SW__OUT(shear_use, ""),
    SW__OUT(tension_use, ""),
    SW__OUT(margin, ""),
    SW__END,
};
#undef SW__S

static int adhesive_fill(sw_adhesive_in *in, const sw__filler *fill,
                         uint64_t *warnings, sw_error *err)
{
    const char *sheet = "no adhesive is calculated without its data sheet";
    (void)warnings;
    if (!sw__is_set(in->shear_MPa) && !sw__is_set(in->tension_MPa))
        return sw__fail_missing(err, "shear_MPa", sheet);
    if (!sw__is_set(in->sheet_factor))
        return sw__fail_missing(err, "sheet_factor",
                                "the factor that the data sheet or its maker "
                                "wants on the strength");
    const int l = sw__is_set(in->bond_length_mm),
              w = sw__is_set(in->bond_width_mm);
    if (!(l && w) && !sw__is_set(in->bond_area_mm2))
        return sw__fail_missing(err, l ? "bond_width_mm" : "bond_length_mm",
                                "give length and width of the bond, or its "
                                "area");
    if (l && w) {
        const double box = in->bond_length_mm * in->bond_width_mm;
        sw__fill_number(fill, "bond_area_mm2", box);
        if (in->bond_area_mm2 > box * (1 + 1e-9))
            return sw__fail_conflict(err, "bond_area_mm2",
                                     "larger than length times width");
    }
    sw__fill_number(fill, "bond_scatter_pct", 20);
    sw__fill_number(fill, "side_cut_N", 0);
    sw__fill_number(fill, "cut_height_mm", 0);
    sw__fill_number(fill, "lift_N", 0);
    sw__fill_number(fill, "required_margin", 2);
    const int tips = in->side_cut_N > 0 && in->cut_height_mm > 0;
    if (in->side_cut_N > 0 && !sw__is_set(in->shear_MPa))
        return sw__fail_missing(err, "shear_MPa", sheet);
    if ((tips || in->lift_N > 0) && !sw__is_set(in->tension_MPa))
        return sw__fail_missing(err, "tension_MPa",
                                "this cut pulls at the bond; its data sheet "
                                "must have a tension strength");
    if (tips && !(l && w))
        return sw__fail_missing(err, "bond_width_mm",
                                "a cut at a height needs length and width");
    return SW_OK;
}

static int adhesive_solve(const sw_adhesive_in *in, sw_adhesive_out *out,
                          sw_error *err)
{
    const double left = (1 - in->bond_scatter_pct / 100) / in->sheet_factor;
    const double A = in->bond_area_mm2, S = in->side_cut_N;
    double use = 0;
    (void)err;
    out->shear_stress_MPa = S / A;
    out->peel_stress_MPa = in->lift_N / A;
    if (S > 0 && in->cut_height_mm > 0) {
        const double b = fmin(in->bond_length_mm, in->bond_width_mm),
                     l = fmax(in->bond_length_mm, in->bond_width_mm);
        /* a bond with holes in it: as much weaker as it is smaller */
        out->peel_stress_MPa +=
            6 * S * in->cut_height_mm / (l * b * b) * (l * b / A);
    }
    if (sw__is_set(in->shear_MPa)) {
        out->shear_held_N = in->shear_MPa * left * A;
        out->shear_use = out->shear_stress_MPa / (in->shear_MPa * left);
        use += out->shear_use;
    }
    if (sw__is_set(in->tension_MPa)) {
        out->tension_held_N = in->tension_MPa * left * A;
        out->tension_use = out->peel_stress_MPa / (in->tension_MPa * left);
        use += out->tension_use;
    }
    sw__margin(1, use, SW_LOSES_BOND, &out->margin, &out->first);
    out->verdict = sw__stays(out->margin, in->required_margin);
    return SW_OK;
}

SW__ROOM(adhesive, ADHESIVE);
