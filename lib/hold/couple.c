/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Couple: two pads, a push through the middle between them, and a couple.
 *
 * Symbols: d distance, N1 N2 normal forces, mu friction, f faces, V across and
 * H along the line of the pads, M couple, k load factor.
 *
 *   across   q1 = V/2 + M/d, q2 = V/2 - M/d: statics alone               (1)
 *   along    shared as friction allows: k H = sum of
 *            sqrt((mu f Ni)^2 - (k qi)^2)                                (2)
 *   H = 0    k = mu f N/(V/2 + M/d) with equal pads                      (3)
 *   V = 0    k = mu f N/sqrt((H/2)^2 + (M/d)^2)                          (4)
 *
 * Derived from equilibrium; exact for rigid parts with given normal forces:
 * (2) is the largest k for which any forces in the friction discs balance.
 * V and M count with the worse sign.
 *
 * Not in it: more than two pads, a push off the middle (add its couple),
 * lifting and tipping, normal forces that the cut changes.
 */
#include "base/room.h"

#include <strapwise/couple.h>

#define SW__S sw_couple_in
const sw_field sw__couple_in_fields[] = {
    SW__IN(normal1_N, "N", 0.001, 1e8, 0, 0, ""),
    SW__IN(normal2_N, "N", 0.001, 1e8, 0, 0, "as the first"),
    SW__IN(distance_mm, "mm", 0.001, 100000, 0, 0, ""),
    SW__IN(mu_face, "", 0, 2, 0.1, 0.2,
           "common practice, no source: smooth coolant-wet faces 0.10 to 0.15"),
    SW__IN(faces, "", 1, 2, 0, 0, "one: the toe may move, which is safe"),
    SW__IN(across_N, "N", 0, 1e8, 0, 0, "none given"),
    SW__IN(along_N, "N", 0, 1e8, 0, 0, "none given"),
    SW__IN(couple_Nm, "N.m", 0, 1e6, 0, 0, "none given"),
    SW__IN(required_margin, "", 1, 20, 1.5, 4,
           "2.0: VDI 3106 has 1.5 at least; chuck manuals 2.0 and, long "
           "overhang, 4.0"),
    SW__END,
};
#undef SW__S

#define SW__S sw_couple_out
const sw_field sw__couple_out_fields[] = {
    SW__OUT_WORD(verdict, SW_WORDS_STAYS),
    SW__OUT(pad1_N, "N"),
    SW__OUT(pad2_N, "N"),
    SW__OUT(holds1_N, "N"),
    SW__OUT(holds2_N, "N"),
    SW__OUT(margin, ""),
    SW__END,
};
#undef SW__S

static int couple_fill(sw_couple_in *in, const sw__filler *fill,
                       uint64_t *warnings, sw_error *err)
{
    (void)warnings;
    if (!sw__is_set(in->normal1_N))
        return sw__fail_missing(err, "normal1_N",
                                "normal force on the first pad");
    if (!sw__is_set(in->distance_mm))
        return sw__fail_missing(err, "distance_mm", "first pad to second");
    sw__fill_number(fill, "normal2_N", in->normal1_N);
    sw__fill_number(fill, "mu_face", 0.15);
    sw__fill_number(fill, "faces", 1);
    if (in->faces != floor(in->faces))
        return sw__fail_conflict(err, "faces", "1 or 2");
    sw__fill_number(fill, "across_N", 0);
    sw__fill_number(fill, "along_N", 0);
    sw__fill_number(fill, "couple_Nm", 0);
    sw__fill_number(fill, "required_margin", 2);
    return SW_OK;
}

/* What is left of a pad's friction along the line. */
static double left(double holds, double across)
{
    return sqrt(fmax(0, holds * holds - across * across));
}

static double factor_of(double c1, double c2, double q1, double q2, double H)
{
    double low = 0, high = SW__MARGIN_MOST;
    if (fabs(q1) > 0)
        high = fmin(high, c1 / fabs(q1));
    if (fabs(q2) > 0)
        high = fmin(high, c2 / fabs(q2));
    if (left(c1, high * q1) + left(c2, high * q2) >= high * H)
        return high;
    for (int i = 0; i < 200 && low < high; i++) {
        const double k = (low + high) / 2;
        if (left(c1, k * q1) + left(c2, k * q2) >= k * H)
            low = k;
        else
            high = k;
    }
    return low;
}

static int couple_solve(const sw_couple_in *in, sw_couple_out *out,
                        sw_error *err)
{
    const double turn = 1000 * in->couple_Nm / in->distance_mm;
    const double V = in->across_N / 2, H = in->along_N;
    (void)err;
    out->holds1_N = in->mu_face * in->faces * in->normal1_N;
    out->holds2_N = in->mu_face * in->faces * in->normal2_N;
    /* the couple may turn either way: the weaker pad gets both */
    const int swap = out->holds2_N < out->holds1_N;
    out->pad1_N = swap ? V - turn : V + turn;
    out->pad2_N = swap ? V + turn : V - turn;
    if (!(in->across_N > 0 || H > 0 || turn > 0))
        return SW_OK;
    const double k1 = factor_of(out->holds1_N, out->holds2_N, V + turn,
                                V - turn, H),
                 k2 = factor_of(out->holds1_N, out->holds2_N, V - turn,
                                V + turn, H);
    int first = 0;
    sw__margin(fmin(k1, k2), 1, SW_LOSES_SLIDE, &out->margin, &first);
    out->verdict = sw__stays(out->margin, in->required_margin);
    return SW_OK;
}

SW__ROOM(couple, COUPLE);
