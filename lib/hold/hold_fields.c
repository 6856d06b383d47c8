/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Hold: fields of its question and answers. They are in libstrapwise, like all
 * lists of fields, so that one function tells every struct.
 */
#include "base/internal.h"

#include <strapwise/hold.h>

#define SW__S sw_hold_in
const sw_field sw__hold_in_fields[] = {
    SW__IN_WORD(depth, SW_WORDS_DEPTH, "everything"),
    SW__IN(required_margin, "", 1, 20, 1.5, 4,
           "VDI 3106 has 1.5, a long overhang wants 4; the first support slips "
           "locally at about a third of the margin"),
    SW__IN(largest_margin, "", 10, 1e6, 0, 0,
           "as good as infinite: common practice, no source"),
    SW__IN(disc_sides, "", 8, 128, 24, 64,
           "at most 0.5 % below the round disc where no side pull is near the "
           "friction"),
    SW__IN(support_least_N, "N", 0, 1e6, 20, 200,
           "a seated support: common practice, no source"),
    SW__IN(stop_least_N, "N", 0, 1e6, 0, 50,
           "the part is pushed home by hand before the nuts are turned"),
    SW__IN(largest_clamp_N, "N", 1, 1e7, 10000, 30000,
           "toe force of a strap with an M12 stud: common practice, no "
           "source"),
    SW__IN(friction_change, "", 0, 0.5, 0.05, 0.3,
           "how well friction is known at best: common practice, no source"),
    SW__END,
};
#undef SW__S

#define SW__S sw_hold_out
const sw_field sw__hold_out_fields[] = {
    SW__OUT(margin, ""),
    SW__OUT(required_margin, ""),
    SW__OUT(margin_ceiling, ""),
    SW__OUT(margin_stops_idle, ""),
    SW__OUT(margin_friction_low, ""),
    SW__OUT(margin_friction_high, ""),
    SW__OUT(rest_margin, ""),
    SW__OUT_WORD(rest, SW_WORDS_REST),
    SW__OUT_WORD(first_to_go, SW_WORDS_GOES),
    SW__OUT_WORD(contact_part, SW_WORDS_PART),
    SW__OUT_TEXT(contact),
    SW__OUT(worst_load, ""),
    SW__OUT_TEXT(worst_name),
    SW__OUT(worst_x_mm, "mm"),
    SW__OUT(worst_y_mm, "mm"),
    SW__OUT(worst_z_mm, "mm"),
    SW__OUT(centre_x_mm, "mm"),
    SW__OUT(centre_y_mm, "mm"),
    SW__OUT(slide_deg, "deg"),
    SW__OUT(loads, ""),
    SW__OUT_WORD(corners, SW_WORDS_CORNERS),
    SW__OUT(clamp_total_N, "N"),
    SW__OUT(hold_limit_N, "N"),
    SW__OUT(hold_scale, ""),
    SW__OUT(hold_scale_high, ""),
    SW__OUT(least_total_N, "N"),
    SW__OUT_TEXT(switched_off),
    SW__OUT(net_x_N, "N"),
    SW__OUT(net_y_N, "N"),
    SW__OUT(net_z_N, "N"),
    SW__OUT(net_moment_Nm, "N.m"),
    SW__OUT(net_side_N, "N"),
    SW__OUT(net_toward_deg, "deg"),
    SW__OUT_WORD(pushed, SW_WORDS_PUSHED),
    SW__END,
};
#undef SW__S

#define SW__S sw_hold_point_out
const sw_field sw__hold_point_out_fields[] = {
    SW__OUT_TEXT(name),
    SW__OUT(x_mm, "mm"),
    SW__OUT(y_mm, "mm"),
    SW__OUT(z_mm, "mm"),
    SW__OUT(margin, ""),
    SW__OUT(margin_ceiling, ""),
    SW__OUT(margin_stops_idle, ""),
    SW__OUT_WORD(first_to_go, SW_WORDS_GOES),
    SW__OUT_WORD(contact_part, SW_WORDS_PART),
    SW__OUT_TEXT(contact),
    SW__OUT(centre_x_mm, "mm"),
    SW__OUT(centre_y_mm, "mm"),
    SW__END,
};
#undef SW__S

#define SW__S sw_hold_contact_out
const sw_field sw__hold_contact_out_fields[] = {
    SW__OUT_TEXT(name),
    SW__OUT(force_rest_N, "N"),
    SW__OUT(force_margin_N, "N"),
    SW__OUT(friction_use, ""),
    SW__OUT(least_total_N, "N"),
    SW__OUT_WORD(idle, SW_WORDS_IDLE),
    SW__END,
};
#undef SW__S
