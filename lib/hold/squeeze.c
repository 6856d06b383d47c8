/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Squeeze: how hard a part must be squeezed so that friction holds a cut.
 *
 * Symbols: F cut, S wanted margin, mu friction, f faces, Q squeeze.
 *
 *   normal   S F/mu, of all faces that hold, together                    (1)
 *   squeeze  S F/(mu f)                                                  (2)
 *   margin   mu f Q/F                                                    (3)
 *
 * Coulomb. The trap is f: a vice, or a pad against a fixed toe, has two faces
 * and one squeeze presses both, but a face that can move sideways (a strap
 * that can swing, a cap on a live centre) holds nothing. One face is assumed.
 *
 * Not in it: tipping, turning, a cut off the middle, friction that vibration
 * lowers.
 */
#include "base/room.h"

#include <strapwise/squeeze.h>

#define SW__S sw_squeeze_in
const sw_field sw__squeeze_in_fields[] = {
    SW__IN(cut_N, "N", 0.001, 1e8, 0, 0, ""),
    SW__IN(mu_face, "", 0.001, 2, 0.1, 0.2,
           "common practice, no source: smooth coolant-wet faces 0.10 to 0.15"),
    SW__IN(faces, "", 1, 2, 0, 0,
           "one: the other face may move, which is safe"),
    SW__IN(squeeze_N, "N", 0.001, 1e8, 0, 0, ""),
    SW__IN(required_margin, "", 1, 20, 1.5, 4,
           "2.0: VDI 3106 has 1.5 at least; chuck manuals 2.0 and, long "
           "overhang, 4.0"),
    SW__END,
};
#undef SW__S

#define SW__S sw_squeeze_out
const sw_field sw__squeeze_out_fields[] = {
    SW__OUT_WORD(verdict, SW_WORDS_STAYS),
    SW__OUT(normal_N, "N"),
    SW__OUT(squeeze_needed_N, "N"),
    SW__OUT(faces, ""),
    SW__OUT(margin, ""),
    SW__END,
};
#undef SW__S

static int squeeze_fill(sw_squeeze_in *in, const sw__filler *fill,
                        uint64_t *warnings, sw_error *err)
{
    (void)warnings;
    if (!sw__is_set(in->cut_N))
        return sw__fail_missing(err, "cut_N", "cut in the plane of the faces");
    sw__fill_number(fill, "mu_face", 0.15);
    sw__fill_number(fill, "faces", 1);
    if (in->faces != floor(in->faces))
        return sw__fail_conflict(err, "faces", "1 or 2");
    sw__fill_number(fill, "required_margin", 2);
    return SW_OK;
}

static int squeeze_solve(const sw_squeeze_in *in, sw_squeeze_out *out,
                         sw_error *err)
{
    int first = 0;
    (void)err;
    out->faces = in->faces;
    out->normal_N = in->required_margin * in->cut_N / in->mu_face;
    out->squeeze_needed_N = out->normal_N / in->faces;
    if (sw__is_set(in->squeeze_N))
        sw__margin(in->mu_face * in->faces * in->squeeze_N, in->cut_N,
                   SW_LOSES_SLIDE, &out->margin, &first);
    out->verdict = sw__stays(out->margin, in->required_margin);
    return SW_OK;
}

SW__ROOM(squeeze, SQUEEZE);
