/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strip: shearing off the threads that hold a stud.
 *
 * Symbols: P pitch, Le engaged length, Ds least major and Es least pitch
 * diameter of the stud, En largest pitch and Kn largest minor diameter of the
 * tapped thread, At stress area, sigma tensile strengths, tau shear strengths
 * (shear ratio times tensile), F load. tan 30 = 1/sqrt 3.
 *
 *   tapped  A_n = pi Ds (Le/P) [P/2 + tan 30 (Ds - En)]                  (1)
 *   stud    A_s = pi Kn (Le/P) [P/2 + tan 30 (Es - Kn)]                  (2)
 *           cylinders of the stud's crest and the nut's crest, times the part
 *           of each pitch that is thread there: the loosest pair of the fit
 *   strips  F_n = tau_n A_n, F_s = tau_s A_s; breaks F_b = sigma_s At    (3)
 *   J       F_s/F_n: above 1 the tapped thread strips first. With equal shear
 *           ratios it is A_s sigma_s/(A_n sigma_n)                       (4)
 *   length  stud breaks first: F_b over the weaker thread's strength per mm;
 *           for the load: factor F over the same                         (5)
 *
 * Sources: (1), (2), (4) FED-STD-H28/2B as in Machinery's Handbook, from
 * memory, checked with a published worked example and a published table of
 * inch stripping areas; their rule of equal materials, Le = 2 At/(pi Kn
 * (1/2 + tan 30 (Es - Kn)/P)), is (5) with a shear ratio of 1/2. Limits: fit.c.
 * Shear ratios are common practice: 0.6 for studs (VDI 2230 has 0.60 to 0.65
 * for classes 12.9 to 8.8, from memory).
 *
 * Not in it: bending of the threads and spreading of a thin nut, which take 10
 * to 25 % more; chamfers and incomplete threads, so Le counts full ones alone;
 * the first threads carry more than their share, so that more than about 1.5
 * diameters add little; fatigue.
 */
#include "fastener/strip.h"

#include <string.h>

#define SW__S sw_strip_out
const sw_field sw__strip_out_fields[] = {
    SW__OUT_WORD(first, SW_WORDS_GIVES),
    SW__OUT(first_N, "N"),
    SW__OUT(stud_break_N, "N"),
    SW__OUT(stud_strip_N, "N"),
    SW__OUT(tapped_strip_N, "N"),
    SW__OUT(stud_margin, ""),
    SW__OUT(stud_strip_margin, ""),
    SW__OUT(tapped_strip_margin, ""),
    SW__OUT(length_full_mm, "mm"),
    SW__OUT(length_needed_mm, "mm"),
    SW__OUT(relative_strength, ""),
    SW__OUT(stud_area_mm2, "mm2"),
    SW__OUT(tapped_area_mm2, "mm2"),
    SW__OUT(stud_area_per_mm_mm2, "mm2"),
    SW__OUT(tapped_area_per_mm_mm2, "mm2"),
    SW__END,
};
#undef SW__S

/* Equation (1) or (2) for 1 mm: `gap` is how much wider the thread is cut
 * through at the crest of the other than at its pitch line. */
static double area_per_mm(double crest, double gap, double P)
{
    return SW__PI * crest * (P / 2 + gap / sqrt(3)) / P;
}

static int set_areas(const sw_strip_in *in, double P, sw_strip_out *out,
                     sw_error *err)
{
    const double outer = in->major_diameter_mm - in->nut_pitch_diameter_mm;
    const double inner = in->pitch_diameter_mm - in->nut_minor_diameter_mm;
    /* a tooth as wide as the pitch or gone: not the diameters of one thread */
    if (!(fabs(outer) < sqrt(3) / 2 * P))
        return sw__fail(err, SW_ERR_CONFLICT, "nut_pitch_diameter_mm",
                        "nut_pitch_diameter_mm: does not fit the stud's major "
                        "diameter and pitch: no thread holds there");
    if (!(fabs(inner) < sqrt(3) / 2 * P))
        return sw__fail(err, SW_ERR_CONFLICT, "nut_minor_diameter_mm",
                        "nut_minor_diameter_mm: does not fit the stud's pitch "
                        "diameter and pitch: no thread holds there");
    const double Le = in->engaged_length_mm;
    out->tapped_area_per_mm_mm2 = area_per_mm(in->major_diameter_mm, outer, P);
    out->stud_area_per_mm_mm2 =
        area_per_mm(in->nut_minor_diameter_mm, inner, P);
    out->tapped_area_mm2 = out->tapped_area_per_mm_mm2 * Le;
    out->stud_area_mm2 = out->stud_area_per_mm_mm2 * Le;
    return SW_OK;
}

/* Equations (3) and (4); a stud of unknown strength leaves them open. */
static void set_forces(const sw_strip_in *in, double area, sw_strip_out *out)
{
    out->tapped_strip_N = in->shear_strength_MPa * out->tapped_area_mm2;
    out->stud_break_N = out->stud_strip_N = SW_UNSET;
    out->relative_strength = SW_UNSET;
    out->first = SW_GIVES_TAPPED_THREAD;
    out->first_N = out->tapped_strip_N;
    if (!sw__is_set(in->stud_tensile_MPa)) {
        out->warnings |= SW_WARN_STUD_STRENGTH_UNKNOWN;
        return;
    }
    out->stud_break_N = in->stud_tensile_MPa * area;
    out->stud_strip_N =
        in->stud_shear_ratio * in->stud_tensile_MPa * out->stud_area_mm2;
    out->relative_strength = out->stud_strip_N / out->tapped_strip_N;
    if (out->stud_strip_N < out->first_N) {
        out->first = SW_GIVES_STUD_THREAD;
        out->first_N = out->stud_strip_N;
    }
    if (out->stud_break_N <= out->first_N) {
        out->first = SW_GIVES_STUD;
        out->first_N = out->stud_break_N;
    } else {
        out->warnings |= SW_WARN_STRIPS_FIRST;
    }
}

/* Equation (5) and the margins. */
static void set_needs(const sw_strip_in *in, sw_strip_out *out)
{
    double weaker = out->tapped_strip_N;
    const int known = sw__is_set(out->stud_strip_N);
    if (known)
        weaker = fmin(weaker, out->stud_strip_N);
    const double per_mm = weaker / in->engaged_length_mm;
    out->length_full_mm = known ? out->stud_break_N / per_mm : SW_UNSET;
    out->stud_margin = out->stud_strip_margin = SW_UNSET;
    out->tapped_strip_margin = out->length_needed_mm = SW_UNSET;
    const double F = in->preload_N;
    if (!sw__is_set(F))
        return;
    out->tapped_strip_margin = out->tapped_strip_N / F;
    if (known) {
        out->stud_margin = out->stud_break_N / F;
        out->stud_strip_margin = out->stud_strip_N / F;
    }
    out->length_needed_mm = in->factor * F / per_mm;
    if (out->length_needed_mm > in->engaged_length_mm)
        out->warnings |= SW_WARN_ENGAGED_SHORT;
}

sw_strip_out sw_strip(const sw_strip_in *in, sw_error *err)
{
    sw_strip_out out;
    sw__strip_full full;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    int status = in ? sw__strip_open(in, &full, err) : sw__fail_null(err, "in");
    if (!status)
        status = set_areas(&full.in, full.thread.pitch_mm, &out, err);
    if (!status) {
        out.warnings = full.warnings;
        set_forces(&full.in, full.thread.stress_area_mm2, &out);
        set_needs(&full.in, &out);
    } else {
        sw__spoil(&out, SW_STRUCT_STRIP_OUT, status);
    }
    return out;
}
