/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Turning resolve: a question about turning with nothing left open. Symbols as
 * in turning.c.
 */
#include "cut/turning.h"

#include <string.h>

#define SW__S sw_turning_in
const sw_field sw__turning_in_fields[] = {
    SW__METAL_FIELDS,
    SW__IN_WORD(direction, SW_WORDS_TURNING,
                "along the work toward the chuck is usual"),
    SW__IN(depth_mm, "mm", 1e-3, 100, 0, 0, ""),
    SW__IN(feed_mm, "mm", 1e-4, 20, 0, 0, ""),
    SW__IN(lead_deg, "deg", 5, 120, 45, 95,
           "an edge square to the feed; common practice, no source"),
    SW__IN(nose_radius_mm, "mm", 0, 50, 0, 1.6,
           "a sharp corner; inserts have 0.4 to 1.2: common practice, no "
           "source"),
    SW__IN(thrust_ratio, "", 0, 2, 0.3, 0.7, "from memory"),
    SW__IN(diameter_mm, "mm", 0.1, 1e4, 0, 0, ""),
    SW__IN(speed_rpm, "rpm", 0.01, 1e6, 0, 0, ""),
    SW__IN(cutting_speed_m_per_min, "m/min", 1e-3, 1e5, 0, 0, ""),
    SW__END,
};
#undef SW__S

void sw_turning_defaults(sw_turning_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    SW__METAL_OPEN(in);
    in->depth_mm = in->feed_mm = in->lead_deg = in->nose_radius_mm = SW_UNSET;
    in->thrust_ratio = in->diameter_mm = SW_UNSET;
    in->speed_rpm = in->cutting_speed_m_per_min = SW_UNSET;
}

static int check_diameter(const sw_turning_in *in, sw_error *err)
{
    const int along = in->direction == SW_TURNING_ALONG;
    if (!along || !sw__is_set(in->diameter_mm) ||
        in->depth_mm <= in->diameter_mm / 2)
        return SW_OK;
    return sw__fail(err, SW_ERR_CONFLICT, "depth_mm",
                    "depth_mm: is more than half of the work's diameter");
}

int sw__turning_open(const sw_turning_in *in, sw__turning_full *full,
                     sw_error *err)
{
    memset(full, 0, sizeof *full);
    full->in = *in;
    sw_turning_in *q = &full->in;
    const sw__filler fill = {(char *)q, SW_STRUCT_TURNING_IN, &q->assumed};
    const sw__metal metal = SW__METAL_OF(q);
    int status =
        sw__reopen(q, SW_STRUCT_TURNING_IN, &q->assumed, &q->seal, err);
    if (!status)
        status = sw__check_input(q, SW_STRUCT_TURNING_IN, err);
    if (!status)
        status = sw__metal_open(&metal, &fill, &full->warnings, err);
    if (!status)
        status =
            sw__cut_missing(q->depth_mm, "depth_mm", "the depth of cut", err);
    if (!status)
        status =
            sw__cut_missing(q->feed_mm, "feed_mm", "the feed per turn", err);
    if (status)
        return status;
    sw__fill_word(&fill, "direction", SW_TURNING_ALONG);
    sw__fill_number(&fill, "lead_deg", 90);
    sw__fill_number(&fill, "nose_radius_mm", 0);
    sw__fill_number(&fill, "thrust_ratio", 0.5);
    status = check_diameter(q, err);
    if (!status)
        status = sw__speed_open(q->speed_rpm, q->cutting_speed_m_per_min,
                                q->diameter_mm, &full->speed, err);
    return status;
}

int sw_turning_resolve(sw_turning_in *in, sw_error *err)
{
    sw__turning_full full;
    sw__clear(err);
    if (!in)
        return sw__fail_null(err, "in");
    const int status = sw__turning_open(in, &full, err);
    if (!status) {
        *in = full.in;
        in->seal = sw__seal(in, SW_STRUCT_TURNING_IN, in->assumed);
    }
    return status;
}

sw_assumption sw_turning_assumed(const sw_turning_in *in, int index,
                                 sw_error *err)
{
    sw__turning_full full;
    sw__clear(err);
    const int status =
        in ? sw__turning_open(in, &full, err) : sw__fail_null(err, "in");
    if (status)
        return sw__no_assumption(status);
    return sw__cut_assumed(&full.in, SW_STRUCT_TURNING_IN, full.in.assumed,
                           full.in.material, index, err);
}
