/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fixture fields: what a fixture is made of, field by field.
 */
#include "base/internal.h"

#include <strapwise/fixture.h>

#define FAR 1e5
#define MOST_N 1e7
#define PLACE(n) SW__IN(n, "mm", -FAR, FAR, 0, 0, "")
#define HEIGHT SW__IN(z_mm, "mm", -FAR, FAR, 0, 0, "the plane of the supports")
#define FORCE(n, source) SW__IN(n, "N", -MOST_N, MOST_N, 0, 0, source)
#define MOMENT(n) SW__IN(n, "N.m", -1e6, 1e6, 0, 0, "none")

#define SW__S sw_support_in
const sw_field sw__support_in_fields[] = {
    SW__IN_TEXT(name, "its number"),
    PLACE(x_mm),
    PLACE(y_mm),
    HEIGHT,
    SW__IN(friction, "", 0, 2, 0.1, 0.2,
           "smooth faces wet with coolant: common practice, no source"),
    SW__IN(stiffness_N_per_mm, "N/mm", 1, 1e9, 0, 0,
           "every support gives alike"),
    SW__IN_WORD(needed, SW_WORDS_NEEDED, "if it carries load before the cut"),
    SW__IN(least_N, "N", 0, MOST_N, 0, 0, "contact is enough"),
    SW__END,
};
#undef SW__S

#define SW__S sw_clamp_in
const sw_field sw__clamp_in_fields[] = {
    SW__IN_TEXT(name, "its number"),
    PLACE(x_mm),
    PLACE(y_mm),
    HEIGHT,
    SW__IN(force_N, "N", 0, MOST_N, 0, 0, ""),
    SW__IN(toward_deg, "deg", -360, 360, 0, 0, "the direction of x"),
    FORCE(pull_low_N, "no side pull"),
    FORCE(pull_high_N, "as the low end"),
    FORCE(drag_low_N, "no nut drag"),
    FORCE(drag_high_N, "as the low end"),
    SW__IN(held_friction, "", 0, 2, 0, 0, "the toe goes with the part"),
    SW__END,
};
#undef SW__S

#define SW__S sw_stop_in
const sw_field sw__stop_in_fields[] = {
    SW__IN_TEXT(name, "its letter"),
    PLACE(x_mm),
    PLACE(y_mm),
    HEIGHT,
    SW__IN(push_deg, "deg", -360, 360, 0, 0, ""),
    SW__IN(friction, "", 0, 2, 0, 0, "not counted on"),
    SW__IN(least_N, "N", 0, MOST_N, 0, 0, "contact is enough"),
    SW__END,
};
#undef SW__S

#define SW__S sw_load_in
const sw_field sw__load_in_fields[] = {
    SW__IN_TEXT(name, "its number"),
    PLACE(x_mm),
    PLACE(y_mm),
    PLACE(z_mm),
    FORCE(force_x_N, "none"),
    FORCE(force_y_N, "none"),
    FORCE(force_z_N, "none"),
    MOMENT(moment_x_Nm),
    MOMENT(moment_y_Nm),
    MOMENT(moment_z_Nm),
    SW__END,
};
#undef SW__S

#define SW__S sw_weight_in
const sw_field sw__weight_in_fields[] = {
    SW__IN(weight_N, "N", 0, MOST_N, 0, 0, ""),
    PLACE(x_mm),
    PLACE(y_mm),
    HEIGHT,
    SW__END,
};
#undef SW__S
