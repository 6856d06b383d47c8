/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Questions about a cut with everything given, and the answers that must be
 * good.
 */
#ifndef TESTS_CUT_QUESTION_H
#define TESTS_CUT_QUESTION_H

#include "../common.h"

#define METAL(in, k, m)                                                        \
    ((in).kc11_MPa = (k), (in).mc = (m), (in).wear_factor = 1)

static inline sw_turning_in turning(double kc11, double mc, double f, double ap)
{
    sw_turning_in in;
    sw_turning_defaults(&in);
    METAL(in, kc11, mc);
    in.feed_mm = f;
    in.depth_mm = ap;
    return in;
}

static inline sw_drilling_in drilling(double kc11, double mc, double D,
                                      double f)
{
    sw_drilling_in in;
    sw_drilling_defaults(&in);
    METAL(in, kc11, mc);
    in.diameter_mm = D;
    in.feed_mm = f;
    return in;
}

/* A slot; set mode, way and width for another. */
static inline sw_milling_in milling(double kc11, double mc, double D, double z,
                                    double fz, double ap)
{
    sw_milling_in in;
    sw_milling_defaults(&in);
    METAL(in, kc11, mc);
    in.mode = SW_MILL_SLOT;
    in.diameter_mm = D;
    in.teeth = z;
    in.feed_per_tooth_mm = fz;
    in.depth_mm = ap;
    in.radial_ratio = 0.3;
    in.helix_deg = 30;
    return in;
}

static inline sw_turning_out turn(const char *what, const sw_turning_in *in)
{
    sw_error err;
    const sw_turning_out out = sw_turning(in, &err);
    check_no_error(what, out.status, &err);
    check_numbers(what, &out, SW_STRUCT_TURNING_OUT, out.status);
    return out;
}

static inline sw_drilling_out drill(const char *what, const sw_drilling_in *in)
{
    sw_error err;
    const sw_drilling_out out = sw_drilling(in, &err);
    check_no_error(what, out.status, &err);
    check_numbers(what, &out, SW_STRUCT_DRILLING_OUT, out.status);
    return out;
}

static inline sw_milling_out mill(const char *what, const sw_milling_in *in)
{
    sw_error err;
    const sw_milling_out out = sw_milling(in, &err);
    check_no_error(what, out.status, &err);
    check_numbers(what, &out, SW_STRUCT_MILLING_OUT, out.status);
    return out;
}

#endif
