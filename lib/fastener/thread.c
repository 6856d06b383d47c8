/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Thread: a designation to its geometry and the hardware of its size.
 *
 * Basic profile, 60 degrees, the same for ISO metric and unified threads:
 *   H  = (sqrt 3 / 2) P                  ISO 68-1, 2
 *   d2 = d - 2 (3/8) H                   ISO 724, 3
 *   D1 = d - 2 (5/8) H                   ISO 724, 3
 *   d3 = d - 2 (17/24) H                 ISO 68-1, rounded root (metric)
 *   dr = d - 2 (3/4) H                   ASME B1.1, as tabled with the unified
 *                                        areas; root of the unified stud here
 *   As = pi/4 ((d2 + d3)/2)^2            ISO 898-1, 9.1.6.1 (metric)
 *   At = pi/4 (d - 0.9743/n)^2           ASME B1.1, appendix B (unified)
 *
 * Play. A nut tilts on its stud until the flanks meet at both ends of the
 * engaged length m: play = atan(clearance / m), clearance on the pitch
 * diameter, by the limits of the usual fits 6g/6H and 2A/2B (fit.c). Mean:
 * half of both tolerances used up.
 */
#include "base/internal.h"
#include "base/tables.h"
#include "fastener/designation.h"
#include "fastener/fit.h"

#include <strapwise/thread.h>

#include <string.h>

#define SW__S sw_thread_out
const sw_field sw__thread_out_fields[] = {
    SW__OUT_TEXT(designation),
    SW__OUT(nominal_mm, "mm"),
    SW__OUT(pitch_mm, "mm"),
    SW__OUT(pitch_diameter_mm, "mm"),
    SW__OUT(root_diameter_mm, "mm"),
    SW__OUT(minor_diameter_mm, "mm"),
    SW__OUT(stress_area_mm2, "mm2"),
    SW__OUT(across_flats_mm, "mm"),
    SW__OUT(clearance_hole_mm, "mm"),
    SW__OUT_TEXT(size),
    SW__OUT_TEXT(series),
    SW__OUT_WORD(system, SW_WORDS_SYSTEM),
    SW__OUT(threads_per_inch, ""),
    SW__OUT(triangle_height_mm, "mm"),
    SW__OUT(flank_angle_deg, "deg"),
    SW__OUT(lead_angle_deg, "deg"),
    SW__OUT(root_area_mm2, "mm2"),
    SW__OUT(minor_area_mm2, "mm2"),
    SW__OUT(nut_height_mm, "mm"),
    SW__OUT(bearing_diameter_mm, "mm"),
    SW__OUT(hole_fine_mm, "mm"),
    SW__OUT(hole_coarse_mm, "mm"),
    SW__OUT(washer_hole_mm, "mm"),
    SW__OUT(washer_diameter_mm, "mm"),
    SW__OUT(washer_thickness_mm, "mm"),
    SW__OUT(play_mean_deg, "deg"),
    SW__OUT(play_max_deg, "deg"),
    SW__END,
};
#undef SW__S

static void geometry(sw_thread_out *t)
{
    const double d = t->nominal_mm, P = t->pitch_mm;
    const double H = sqrt(3) / 2 * P;
    const int metric = t->system == SW_SYSTEM_METRIC;
    const double d2 = d - 0.75 * H, dr = d - 1.5 * H;
    const double d3 = metric ? d - 17.0 / 12 * H : dr;
    const double ds = metric ? (d2 + d3) / 2 : d - 0.9743 * P;
    t->threads_per_inch = 25.4 / P;
    t->pitch_diameter_mm = d2;
    t->root_diameter_mm = d3;
    t->minor_diameter_mm = d - 1.25 * H;
    t->triangle_height_mm = H;
    t->flank_angle_deg = 30;
    t->lead_angle_deg = SW__DEG(atan(P / (SW__PI * d2)));
    t->stress_area_mm2 = SW__PI / 4 * ds * ds;
    t->root_area_mm2 = SW__PI / 4 * d3 * d3;
    t->minor_area_mm2 = SW__PI / 4 * dr * dr;
}

static void play(sw_thread_out *t)
{
    const sw__fit f = sw__fit_of(t->system, t->nominal_mm, t->pitch_mm);
    const double most = f.deviation + f.stud_pitch + f.nut_pitch;
    const double mean = f.deviation + (f.stud_pitch + f.nut_pitch) / 2;
    t->play_mean_deg = SW__DEG(atan(mean / t->nut_height_mm));
    t->play_max_deg = SW__DEG(atan(most / t->nut_height_mm));
}

static void hardware(sw_thread_out *t)
{
    for (size_t i = 0; i < sw__hardware_count; i++) {
        const struct sw__hardware_row *row = &sw__hardware[i];
        if (strcmp(row->size, t->size) != 0)
            continue;
        t->across_flats_mm = row->across_flats_mm;
        t->nut_height_mm = row->nut_height_mm;
        t->bearing_diameter_mm = row->bearing_diameter_mm;
        t->clearance_hole_mm = row->hole_medium_mm;
        t->hole_fine_mm = row->hole_fine_mm;
        t->hole_coarse_mm = row->hole_coarse_mm;
        t->washer_hole_mm = row->washer_hole_mm;
        t->washer_diameter_mm = row->washer_outer_mm;
        t->washer_thickness_mm = row->washer_thickness_mm;
        if (sw__is_hearsay(row->status))
            t->warnings |= SW_WARN_TABLE_FROM_MEMORY;
    }
}

sw_thread_out sw_thread(const char *designation, sw_error *err)
{
    sw_thread_out t;
    memset(&t, 0, sizeof t);
    sw__clear(err);
    if (!designation || !designation[0]) {
        sw__spoil(&t, SW_STRUCT_THREAD_OUT,
                  designation ? sw__fail(err, SW_ERR_MISSING, "thread",
                                         "thread: missing; for example M12 or "
                                         "1/2-13")
                              : sw__fail_null(err, "thread"));
        return t;
    }
    const struct sw__threads_row *row = sw__thread_row(designation);
    if (!row) {
        sw__spoil(&t, SW_STRUCT_THREAD_OUT, sw__fail_thread(err, designation));
        return t;
    }
    sw__copy(t.designation, sizeof t.designation, row->key);
    sw__copy(t.size, sizeof t.size, row->size);
    sw__copy(t.series, sizeof t.series, row->series);
    t.system = sw_word_value(SW_WORDS_SYSTEM, row->system);
    t.nominal_mm = row->nominal_mm;
    t.pitch_mm = row->pitch_mm;
    geometry(&t);
    hardware(&t);
    play(&t);
    return t;
}

int sw_thread_count(void) { return (int)sw__threads_count; }

const char *sw_thread_name(int index)
{
    return index >= 0 && index < sw_thread_count() ? sw__threads[index].key
                                                   : NULL;
}
