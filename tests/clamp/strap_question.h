/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The strap that most tests start from: the base case of the contact runs.
 */
#ifndef TESTS_STRAP_QUESTION_H
#define TESTS_STRAP_QUESTION_H

#include "../common.h"

#define TO_RAD 0.017453292519943295

/* Strap 16 x 32 mm without a slot, a 30, b 60, part 40 mm, M12 stud of 80 mm,
 * rim 9.5 mm, contacts that stay where they are, friction 0.15. */
static inline sw_strap_in base_strap(double preload_N, double tilt_deg)
{
    sw_strap_in in;
    sw_strap_defaults(&in);
    SET(in.thread, "M12");
    in.preload_N = preload_N;
    in.tilt_deg = tilt_deg;
    in.stud_to_toe_mm = 30;
    in.stud_to_heel_mm = 60;
    in.part_height_mm = 40;
    in.strap_thickness_mm = 16;
    in.strap_width_mm = 32;
    in.slot_width_mm = 0;
    in.rim_radius_mm = 9.5;
    in.stud_length_mm = 80;
    in.mu_toe = in.mu_heel = 0.15;
    in.nose = SW_NOSE_BALL;
    return in;
}

static inline sw_strap_out good_strap(const char *what, const sw_strap_in *in)
{
    sw_error err;
    const sw_strap_out out = sw_strap(in, &err);
    check_no_error(what, out.status, &err);
    check_numbers(what, &out, SW_STRUCT_STRAP_OUT, out.status);
    return out;
}

#endif
