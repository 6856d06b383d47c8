/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap fields: names, units, allowed and usual ranges of what goes into a
 * strap and what comes out.
 *
 * The allowed ranges are where the closed model stays meaningful or at least
 * finite; the usual ranges stand beside every default that entered.
 */
#include "base/internal.h"

#include <strapwise/strap.h>

#define SW__S sw_strap_in
const sw_field sw__strap_in_fields[] = {
    SW__IN_TEXT(thread, ""),
    SW__IN_TEXT(lubrication, "state not given"),
    SW__IN_TEXT(grade, "at least this grade is usual for clamping studs; "
                       "common practice, no source"),
    SW__IN(preload_N, "N", 1e-3, 1e7, 0, 0, ""),
    SW__IN(torque_Nm, "N.m", 1e-6, 1e6, 0, 0, ""),
    SW__IN(nut_factor, "", 0.03, 1, 0.12, 0.30, "by lubrication"),
    SW__IN(mu_thread, "", 0, 1, 0.08, 0.24,
           "by lubrication; with a nut factor: split evenly from it"),
    SW__IN(mu_seat, "", 0, 1, 0.08, 0.24,
           "by lubrication; with a nut factor: split evenly from it"),
    SW__IN(prevailing_torque_Nm, "N.m", 0, 1e5, 0, 0, "plain nut"),
    SW__IN(stud_to_toe_mm, "mm", 1, 2000, 0, 0, ""),
    SW__IN(stud_to_heel_mm, "mm", 1, 2000, 0, 0, ""),
    SW__IN_TIMES(part_height_mm, "mm", 0, 5000, 0.3, 3,
                 "3.5 diameters; no source, measure it"),
    SW__IN(heel_height_mm, "mm", 0, 5000, 0, 0, "from the tilt given"),
    SW__IN(tilt_deg, "deg", -20, 20, 0, 0, "from the heights given"),
    SW__IN(pad_thickness_mm, "mm", 0, 500, 0, 0, "no pad"),
    SW__IN(step_mm, "mm", -500, 500, 0, 0, "straight strap"),
    SW__IN_TIMES(
        strap_thickness_mm, "mm", 1, 500, 0.75, 1.25,
        "DIN 6314 by stud size (inch sizes in its proportions), from memory; "
        "1.6 diameters where it has none"),
    SW__IN_TIMES(
        strap_width_mm, "mm", 1, 1000, 0.75, 1.25,
        "DIN 6314 by stud size (inch sizes in its proportions), from memory; "
        "3.2 diameters where it has none"),
    SW__IN_TIMES(
        slot_width_mm, "mm", 0, 900, 0.8, 1.2,
        "DIN 6314 by stud size (inch sizes in its proportions), from memory; "
        "1.1 diameters where it has none"),
    SW__IN(strap_modulus_MPa, "MPa", 1000, 1e6, 200000, 210000, "steel"),
    SW__IN(strap_yield_MPa, "MPa", 1, 1e4, 210, 490,
           "1040 steel hot rolled; Materials Science and Engineering: An "
           "Introduction, table B.4"),
    SW__IN_TIMES(nose_radius_mm, "mm", 0, 1000, 0.5, 2,
                 "0.9 strap thicknesses; no source"),
    SW__IN(toe_land_mm, "mm", 0, 1000, 0, 0,
           "the toe distance is taken as where the strap bears"),
    SW__IN(heel_land_mm, "mm", 0, 1000, 0, 0,
           "the heel distance is taken as where the strap bears"),
    SW__IN_TIMES(heel_screw_diameter_mm, "mm", 0.5, 500, 0.8, 1.5,
                 "root of the stud's own thread"),
    SW__IN_TIMES(
        toe_compliance_mm_per_N, "mm/N", 0, 1, 0.3, 3,
        "solid part; planar contact FE of a 40 x 28 x 32 mm steel block, "
        "430 N/um"),
    SW__IN_TIMES(heel_compliance_mm_per_N, "mm/N", 0, 1e6, 0.3, 3,
                 "solid block as at the toe; jack screw h^3/(3 E I)"),
    SW__IN(mu_toe, "", 0, 1, 0.10, 0.20,
           "smooth coolant-wet steel; common practice, no source"),
    SW__IN(mu_heel, "", 0, 1, 0.10, 0.20,
           "smooth coolant-wet steel; common practice, no source"),
    SW__IN(mu_heel_high, "", 0, 1, 0.10, 0.20,
           "upper end of the heel's friction; common practice, no source"),
    SW__IN_TIMES(
        stud_length_mm, "mm", 1, 20000, 0.8, 1.3,
        "part height + pad + step + strap + washers + throat of the T-slot "
        "(BS 2485; 1.2 diameters where it has no such stud)"),
    SW__IN(stud_modulus_MPa, "MPa", 1000, 1e6, 200000, 210000, "steel"),
    SW__IN(washer_diameter_mm, "mm", 0, 1000, 0, 0,
           "ISO 7089 or its inch counterpart, by stud size"),
    SW__IN_TIMES(washer_thickness_mm, "mm", 0, 200, 0.8, 1.2,
                 "ISO 7089 or its inch counterpart, by stud size"),
    SW__IN_TIMES(rim_radius_mm, "mm", 1e-3, 500, 0.8, 1.1,
                 "smaller of washer radius and half the nut's face + washer "
                 "thickness; spherical pair: half the nut's face"),
    SW__IN_TIMES(friction_radius_mm, "mm", 0.1, 500, 0.9, 1.1,
                 "VDI 2230-1: (bearing face + clearance hole)/4"),
    SW__IN(seat_slip, "", 0, 0.5, 0, 0.05,
           "planar contact model: a turning nut keeps little friction along "
           "the slope"),
    SW__IN_TIMES(
        sphere_radius_mm, "mm", 0.5, 500, 0.8, 1.2,
        "DIN 6319 type C by stud size; 1.4 diameters where it has none"),
    SW__IN(mu_sphere, "", 0, 1, 0.08, 0.20,
           "as steel on steel, light oil; common practice, no source"),
    SW__IN(permitted_tilt_deg, "deg", 0, 20, 2, 3,
           "from memory, no source: ask the maker of the pair"),
    SW__IN_TIMES(
        thread_play_deg, "deg", 0, 10, 0, 2,
        "mean clearance of the usual fit over the nut's height: ISO 965-1 "
        "6H/6g, ASME B1.1 2B/2A, from memory"),
    SW__IN(slot_clearance_mm, "mm", 0, 1000, 0, 0,
           "half a diameter; no source, measure it"),
    SW__IN_TIMES(stud_end_mm, "mm", 0, 2000, 0.3, 6,
                 "half a diameter; no source: measure it, studs often stand "
                 "higher"),
    SW__IN_WORD(seat, SW_WORDS_SEAT, "the simplest"),
    SW__IN_WORD(nose, SW_WORDS_NOSE, "the usual plain strap"),
    SW__IN_WORD(heel, SW_WORDS_HEEL, "the usual packing"),
    SW__IN_WORD(foot, SW_WORDS_FOOT,
                "a T-nut lies between held and rocking; "
                "the band has both"),
    SW__IN_WORD(nut, SW_WORDS_NUT, "a nut tightened with a spanner"),
    SW__IN_WORD(strap, SW_WORDS_STRAP, "a steel strap bends"),
    SW__IN_WORD(restraint, SW_WORDS_RESTRAINT,
                "friction at toe and heel; the drag's range has a strap that "
                "is held and one that is free"),
    SW__END,
};
#undef SW__S

#define SW__S sw_strap_out
const sw_field sw__strap_out_fields[] = {
    SW__OUT(preload_N, "N"),
    SW__OUT(lever_ratio, ""),
    SW__OUT(tilt_deg, "deg"),
    SW__OUT(toe_force_level_N, "N"),
    SW__OUT(toe_force_N, "N"),
    SW__OUT(toe_force_low_N, "N"),
    SW__OUT(toe_force_high_N, "N"),
    SW__OUT(toe_force_error_pct, "%"),
    SW__OUT(side_load_on_strap_N, "N"),
    SW__OUT(heel_side_N, "N"),
    SW__OUT(side_pull_N, "N"),
    SW__OUT(side_pull_low_N, "N"),
    SW__OUT(side_pull_high_N, "N"),
    SW__OUT_WORD(pull_direction, SW_WORDS_PULL),
    SW__OUT(drag_N, "N"),
    SW__OUT(drag_low_N, "N"),
    SW__OUT(drag_high_N, "N"),
    SW__OUT(net_part_force_N, "N"),
    SW__OUT(net_part_angle_deg, "deg"),
    SW__OUT(toe_friction_use, ""),
    SW__OUT(heel_force_N, "N"),
    SW__OUT(unheld_N, "N"),
    SW__OUT(seat_offset_mm, "mm"),
    SW__OUT(nut_travel_mm, "mm"),
    SW__OUT_WORD(seat_state, SW_WORDS_STATE),
    SW__OUT(stud_bending_Nm, "N.m"),
    SW__OUT(foot_bending_Nm, "N.m"),
    SW__OUT(stud_stress_MPa, "MPa"),
    SW__OUT(strap_stress_MPa, "MPa"),
    SW__OUT(strap_sag_mm, "mm"),
    SW__OUT(top_mm, "mm"),
    SW__OUT_WORD(band, SW_WORDS_BAND),
    SW__OUT(torque_Nm, "N.m"),
    SW__OUT(stud_yield_use, ""),
    SW__OUT(strap_spread_mm, "mm"),
    SW__OUT(edge_lift_mm, "mm"),
    SW__OUT_WORD(toe_bears, SW_WORDS_BEARS),
    SW__OUT_WORD(heel_bears, SW_WORDS_BEARS),
    SW__OUT(resultant_mm, "mm"),
    SW__OUT(seat_height_mm, "mm"),
    SW__OUT(toe_height_mm, "mm"),
    SW__OUT(toe_place_mm, "mm"),
    SW__END,
};
#undef SW__S
