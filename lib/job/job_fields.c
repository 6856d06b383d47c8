/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Job fields: what is told of a job, field by field. They are in libstrapwise,
 * like all lists of fields, so that one function tells every struct.
 */
#include "base/internal.h"

#include <strapwise/hold_map.h>
#include <strapwise/job.h>

#define SW__S sw_job_out
const sw_field sw__job_out_fields[] = {
    SW__OUT_TEXT(name),
    SW__OUT_TEXT(material),
    SW__OUT(length_mm, "mm"),
    SW__OUT(width_mm, "mm"),
    SW__OUT(thickness_mm, "mm"),
    SW__OUT(area_mm2, "mm2"),
    SW__OUT(weight_N, "N"),
    SW__OUT(centre_x_mm, "mm"),
    SW__OUT(centre_y_mm, "mm"),
    SW__OUT(centre_z_mm, "mm"),
    SW__OUT(raised_mm, "mm"),
    SW__OUT(corners, ""),
    SW__OUT(supports, ""),
    SW__OUT(stops, ""),
    SW__OUT(clamps, ""),
    SW__OUT(operations, ""),
    SW__END,
};
#undef SW__S

#define SW__S sw_job_corner_out
const sw_field sw__job_corner_out_fields[] = {
    SW__OUT(x_mm, "mm"),
    SW__OUT(y_mm, "mm"),
    SW__OUT(edge_mm, "mm"),
    SW__END,
};
#undef SW__S

#define SW__S sw_job_clamp_out
const sw_field sw__job_clamp_out_fields[] = {
    SW__OUT_TEXT(name),
    SW__OUT_WORD(clamp_kind, SW_WORDS_CLAMP_KIND),
    SW__OUT(x_mm, "mm"),
    SW__OUT(y_mm, "mm"),
    SW__OUT(z_mm, "mm"),
    SW__OUT(toward_deg, "deg"),
    SW__OUT(stud_mm, "mm"),
    SW__OUT_TEXT(thread),
    SW__OUT_TEXT(tool),
    SW__OUT(torque_Nm, "N.m"),
    SW__OUT(setting, ""),
    SW__OUT_WORD(torque_unit, SW_WORDS_TORQUE_UNIT),
    SW__OUT(prevailing_torque_Nm, "N.m"),
    SW__OUT(scatter_pct, "%"),
    SW__OUT(preload_low_N, "N"),
    SW__OUT(preload_N, "N"),
    SW__OUT(preload_high_N, "N"),
    SW__OUT(force_low_N, "N"),
    SW__OUT(force_N, "N"),
    SW__OUT(force_high_N, "N"),
    SW__OUT(pull_low_N, "N"),
    SW__OUT(pull_high_N, "N"),
    SW__OUT(drag_low_N, "N"),
    SW__OUT(drag_high_N, "N"),
    SW__OUT_WORD(mark, SW_WORDS_MARK),
    SW__OUT(pad_MPa, "MPa"),
    SW__OUT(mark_N, "N"),
    SW__OUT_WORD(clamp_fault, SW_WORDS_CLAMP_FAULT),
    SW__OUT(strength_use, ""),
    SW__OUT(yield_N, "N"),
    SW__OUT(yield_torque_Nm, "N.m"),
    SW__OUT(limit_use, ""),
    SW__OUT(limit_pressure_MPa, "MPa"),
    SW__OUT(support_gap_mm, "mm"),
    SW__END,
};
#undef SW__S

#define SW__S sw_job_operation_out
const sw_field sw__job_operation_out_fields[] = {
    SW__OUT_TEXT(name),
    SW__OUT_WORD(cut_kind, SW_WORDS_CUT_KIND),
    SW__OUT_WORD(milling_mode, SW_WORDS_MILLING),
    SW__OUT_WORD(cut_way, SW_WORDS_CUT_WAY),
    SW__OUT(push_deg, "deg"),
    SW__OUT(clamps, ""),
    SW__OUT(required_margin, ""),
    SW__OUT(points, ""),
    SW__OUT(samples, ""),
    SW__OUT(loads, ""),
    SW__OUT(side_most_N, "N"),
    SW__OUT(lift_most_N, "N"),
    SW__OUT(press_most_N, "N"),
    SW__OUT(twist_most_Nm, "N.m"),
    SW__END,
};
#undef SW__S

#define SW__S sw_hold_map_in
const sw_field sw__hold_map_in_fields[] = {
    SW__IN(width_px, "px", 300, 4000, 0, 0, "a page's column"),
    SW__IN(text_px, "px", 9, 60, 0, 0, "read at arm's length"),
    SW__IN_WORD(show, SW_WORDS_SHOW, "SI units first"),
    SW__END,
};
#undef SW__S
