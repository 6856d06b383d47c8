/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Disc: a disc squeezed between a driver in the chuck and a cap on a live
 * centre.
 *
 * Symbols: F thrust, ro ri driver's face, R radius of the cut, T round, Q in
 * plane, A along the axis (positive toward the driver), h height of the cut
 * over the driver's face, rd = ro + what the quill is counted on for, mu
 * friction, n driven faces, k load factor.
 *
 *   normal   N = F + A                                                   (1)
 *   torque   even 2/3 mu N (ro^3 - ri^3)/(ro^2 - ri^2),
 *            wear mu N (ro + ri)/2, never more                           (2)
 *   turn     moment T R and push sqrt(T^2 + Fr^2) together: face_turn.c  (3)
 *            with N = F - k A for a cut away from the driver; a cut toward
 *            it is not credited                                          (4)
 *   tip      the resultant leaves the face: k |M| = (F + k A) rd,
 *            |M|^2 = (|A| R + Fr h)^2 + (T h)^2                          (5)
 *            A toward alone: F rd/(R - rd); away alone: F rd/(R + rd);
 *            Fr alone: F rd/h
 *   gap      (5) with the kern (ro^2 + ri^2)/(4 ro) in the place of rd   (6)
 *   margin   the least of turning (3), tipping (5) and the first gap (6): (2)
 *            and (3) are those of a face that bears all over, so nothing past
 *            the first gap is counted on                                  (7)
 *
 * Derived from equilibrium; (2) textbook. One face drives: a cap on a live
 * centre turns with the disc. (6) a ring gapes later than a full face.
 *
 * Not in it: a live centre whose rating is not given, a thrust that slackens as the disc
 * warms, bending of a thin disc beyond the driver, chatter, what a cut that
 * stops and starts does. A disc that slips comes out of the lathe.
 */
#include "base/room.h"
#include "hold/face_turn.h"

#include <strapwise/disc.h>

#define SW__S sw_disc_in
const sw_field sw__disc_in_fields[] = {
    SW__IN(thrust_N, "N", 0.001, 1e8, 0, 0, ""),
    SW__IN(driver_diameter_mm, "mm", 0.001, 100000, 0, 0, ""),
    SW__IN(driver_bore_mm, "mm", 0, 100000, 0, 0, "solid face"),
    SW__IN(mu_face, "", 0, 2, 0.1, 0.2,
           "common practice, no source: smooth coolant-wet faces 0.10 to 0.15"),
    SW__IN(driven_faces, "", 1, 2, 0, 0, "the cap turns with its live centre"),
    SW__IN_WORD(face_pressure, SW_WORDS_FACE, "run-in face, the lower torque"),
    SW__IN(cut_diameter_mm, "mm", 0.001, 100000, 0, 0, ""),
    SW__IN(tangential_cut_N, "N", 0, 1e8, 0, 0, "none given"),
    SW__IN(radial_cut_N, "N", 0, 1e8, 0, 0, "none given"),
    SW__IN(axial_cut_N, "N", -1e8, 1e8, 0, 0, "none given"),
    SW__IN(cut_height_mm, "mm", 0, 100000, 0, 0, "at the driver's face"),
    SW__IN(cap_radius_mm, "mm", 0, 100000, 0, 0, "the quill is not counted on"),
    SW__IN(center_limit_N, "N", 0.001, 1e8, 0, 0, ""),
    SW__IN(required_margin, "", 1, 20, 1.5, 4,
           "2.0: VDI 3106 has 1.5 at least; chuck manuals 2.0 and, long "
           "overhang, 4.0"),
    SW__END,
};
#undef SW__S

#define SW__S sw_disc_out
const sw_field sw__disc_out_fields[] = {
    SW__OUT_WORD(verdict, SW_WORDS_STAYS),
    SW__OUT_WORD(first, SW_WORDS_LOSES),
    SW__OUT(normal_N, "N"),
    SW__OUT(torque_Nm, "N.m"),
    SW__OUT(torque_wear_Nm, "N.m"),
    SW__OUT(torque_even_Nm, "N.m"),
    SW__OUT(cut_torque_Nm, "N.m"),
    SW__OUT(rim_N, "N"),
    SW__OUT(center_mm, "mm"),
    SW__OUT(tip_toward_N, "N"),
    SW__OUT(tip_away_N, "N"),
    SW__OUT(tip_radial_N, "N"),
    SW__OUT(gap_toward_N, "N"),
    SW__OUT(gap_away_N, "N"),
    SW__OUT(gap_radial_N, "N"),
    SW__OUT(kern_mm, "mm"),
    SW__OUT(turn_margin, ""),
    SW__OUT(gap_margin, ""),
    SW__OUT(tip_margin, ""),
    SW__OUT(margin, ""),
    SW__END,
};
#undef SW__S

static int disc_fill(sw_disc_in *in, const sw__filler *fill, uint64_t *warnings,
                     sw_error *err)
{
    (void)warnings;
    if (!sw__is_set(in->thrust_N))
        return sw__fail_missing(err, "thrust_N", "thrust of the tailstock");
    if (!sw__is_set(in->driver_diameter_mm))
        return sw__fail_missing(err, "driver_diameter_mm",
                                "outside of the face that drives");
    sw__fill_number(fill, "driver_bore_mm", 0);
    if (in->driver_bore_mm >= in->driver_diameter_mm)
        return sw__fail_conflict(err, "driver_bore_mm",
                                 "not smaller than the driver");
    sw__fill_number(fill, "mu_face", 0.15);
    sw__fill_number(fill, "driven_faces", 1);
    if (in->driven_faces != floor(in->driven_faces))
        return sw__fail_conflict(err, "driven_faces", "1 or 2");
    sw__fill_word(fill, "face_pressure", SW_FACE_WEAR);
    sw__fill_number(fill, "tangential_cut_N", 0);
    sw__fill_number(fill, "radial_cut_N", 0);
    sw__fill_number(fill, "axial_cut_N", 0);
    sw__fill_number(fill, "cut_height_mm", 0);
    sw__fill_number(fill, "cap_radius_mm", 0);
    sw__fill_number(fill, "required_margin", 2);
    if (!sw__is_set(in->cut_diameter_mm) &&
        (in->tangential_cut_N > 0 || in->axial_cut_N != 0))
        return sw__fail_missing(err, "cut_diameter_mm",
                                "diameter at which the tool cuts");
    return SW_OK;
}

static sw__face face_of(const sw_disc_in *in)
{
    const sw__face f = {in->driver_bore_mm / 2, in->driver_diameter_mm / 2,
                        in->face_pressure == SW_FACE_WEAR};
    return f;
}

static void set_turn(const sw_disc_in *in, sw_disc_out *out)
{
    const sw__face f = face_of(in);
    const double ro = f.ro_mm, ri = f.ri_mm, F = in->thrust_N;
    const double grip = in->mu_face * in->driven_faces; /* N per newton */
    const double T = in->tangential_cut_N, A = in->axial_cut_N;
    const double push = hypot(T, in->radial_cut_N);
    out->normal_N = fmax(0, F + A);
    out->torque_even_Nm = grip * out->normal_N / 1000 * 2 / 3 *
                          (ro * ro + ro * ri + ri * ri) / (ro + ri);
    out->torque_wear_Nm = grip * out->normal_N / 1000 * (ro + ri) / 2;
    out->torque_Nm = f.wear ? out->torque_wear_Nm : out->torque_even_Nm;
    double R = 0;
    if (sw__is_set(in->cut_diameter_mm)) {
        R = in->cut_diameter_mm / 2;
        out->cut_torque_Nm = T * R / 1000;
        out->rim_N =
            sw__face_turn(&f, grip * out->normal_N, R, 1, &out->center_mm);
    }
    if (!(push > 0))
        return;
    double k = sw__face_turn(&f, grip * F, T * R, push, NULL);
    if (A < 0)
        k /= 1 - k * A / F;
    out->turn_margin =
        sw__margin(k, 1, SW_LOSES_TURN, &out->margin, &out->first);
}

/* Load whose unit tips a face of half-width `rim`, equation (5). */
static double tipping(const sw_disc_in *in, double rim)
{
    const double R =
        sw__is_set(in->cut_diameter_mm) ? in->cut_diameter_mm / 2 : 0;
    const double h = in->cut_height_mm, A = in->axial_cut_N;
    const double round = in->tangential_cut_N * h,
                 in_plane = in->radial_cut_N * h;
    const double with_axial = hypot(fabs(A) * R + in_plane, round) - A * rim;
    return fmax(with_axial, hypot(in_plane, round));
}

static void set_tips(const sw_disc_in *in, sw_disc_out *out)
{
    const sw__face f = face_of(in);
    const double F = in->thrust_N, rd = f.ro_mm + in->cap_radius_mm;
    const double kern = (f.ro_mm * f.ro_mm + f.ri_mm * f.ri_mm) / (4 * f.ro_mm);
    out->kern_mm = kern;
    if (sw__is_set(in->cut_diameter_mm)) {
        const double R = in->cut_diameter_mm / 2;
        if (R > rd)
            out->tip_toward_N = F * rd / (R - rd);
        if (R > kern)
            out->gap_toward_N = F * kern / (R - kern);
        out->tip_away_N = F * rd / (R + rd);
        out->gap_away_N = F * kern / (R + kern);
    }
    if (in->cut_height_mm > 0) {
        out->tip_radial_N = F * rd / in->cut_height_mm;
        out->gap_radial_N = F * kern / in->cut_height_mm;
    }
    out->tip_margin = sw__margin(F * rd, tipping(in, rd), SW_LOSES_TIP,
                                 &out->margin, &out->first);
    out->gap_margin = sw__margin(F * kern, tipping(in, kern), SW_LOSES_GAP,
                                 &out->margin, &out->first);
}

static int disc_solve(const sw_disc_in *in, sw_disc_out *out, sw_error *err)
{
    (void)err;
    set_turn(in, out);
    set_tips(in, out);
    /* a cut away from the driver comes on top of the thrust */
    if (sw__is_set(in->center_limit_N) &&
        in->thrust_N + fmax(0, -in->axial_cut_N) > in->center_limit_N)
        out->warnings |= SW_WARN_DEVICE_LIMIT;
    if (out->first == SW_LOSES_GAP)
        out->warnings |= SW_WARN_GAP_FIRST;
    out->verdict = sw__stays(out->margin, in->required_margin);
    return SW_OK;
}

SW__ROOM(disc, DISC);
