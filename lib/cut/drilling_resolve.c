/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Drilling resolve: a question about drilling with nothing left open. Symbols
 * as in drilling.c.
 */
#include "cut/drilling.h"

#include <string.h>

#define MOST_FEED 1.0 /* a turn, of the diameter: nobody means more */

#define SW__S sw_drilling_in
const sw_field sw__drilling_in_fields[] = {
    SW__METAL_FIELDS,
    SW__IN(diameter_mm, "mm", 0.1, 200, 0, 0, ""),
    SW__IN(feed_mm, "mm", 1e-4, 10, 0, 0, ""),
    SW__IN(point_deg, "deg", 60, 180, 118, 140,
           "the usual twist drill; common practice, no source"),
    SW__IN(helix_deg, "deg", 0, 60, 15, 40,
           "the usual twist drill; common practice, no source"),
    SW__IN(chisel_ratio, "", 0.03, 0.4, 0.03, 0.25,
           "standard drill, Machinery's Handbook p. 1152; 0.03 split point"),
    SW__IN(thrust_ratio_low, "", 0.1, 2, 0.3, 0.5, "from memory"),
    SW__IN(thrust_ratio_high, "", 0.1, 2, 0.5, 0.7,
           "drilling formulas of a tool catalogue"),
    SW__IN(work_factor, "", 100, 1e6, 0, 0, ""),
    SW__IN(speed_rpm, "rpm", 0.01, 1e6, 0, 0, ""),
    SW__IN(cutting_speed_m_per_min, "m/min", 1e-3, 1e5, 0, 0, ""),
    SW__END,
};
#undef SW__S

void sw_drilling_defaults(sw_drilling_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    SW__METAL_OPEN(in);
    in->diameter_mm = in->feed_mm = in->point_deg = in->helix_deg = SW_UNSET;
    in->chisel_ratio = in->thrust_ratio_low = in->thrust_ratio_high = SW_UNSET;
    in->work_factor = SW_UNSET;
    in->speed_rpm = in->cutting_speed_m_per_min = SW_UNSET;
}

static int check_ratios(const sw_drilling_in *in, sw_error *err)
{
    if (in->thrust_ratio_low <= in->thrust_ratio_high)
        return SW_OK;
    return sw__fail(err, SW_ERR_CONFLICT, "thrust_ratio_low",
                    "thrust_ratio_low: is above thrust_ratio_high");
}

int sw__drilling_open(const sw_drilling_in *in, sw__drilling_full *full,
                      sw_error *err)
{
    memset(full, 0, sizeof *full);
    full->in = *in;
    sw_drilling_in *q = &full->in;
    const sw__filler fill = {(char *)q, SW_STRUCT_DRILLING_IN, &q->assumed};
    const sw__metal metal = SW__METAL_OF(q);
    int status =
        sw__reopen(q, SW_STRUCT_DRILLING_IN, &q->assumed, &q->seal, err);
    if (!status)
        status = sw__check_input(q, SW_STRUCT_DRILLING_IN, err);
    if (!status)
        status = sw__metal_open(&metal, &fill, &full->warnings, err);
    if (!status)
        status = sw__cut_missing(q->diameter_mm, "diameter_mm",
                                 "the drill's diameter", err);
    if (!status)
        status =
            sw__cut_missing(q->feed_mm, "feed_mm", "the feed per turn", err);
    if (!status && q->feed_mm > MOST_FEED * q->diameter_mm)
        status = sw__fail(err, SW_ERR_CONFLICT, "feed_mm",
                          "feed_mm: is more than the drill's diameter a turn; "
                          "is it the feed per minute?");
    if (status)
        return status;
    sw__fill_number(&fill, "point_deg", 118);
    sw__fill_number(&fill, "helix_deg", 30);
    sw__fill_number(&fill, "chisel_ratio", 0.18);
    sw__fill_number(&fill, "thrust_ratio_low",
                    sw__is_set(q->thrust_ratio_high)
                        ? fmin(0.5, q->thrust_ratio_high)
                        : 0.5);
    sw__fill_number(&fill, "thrust_ratio_high", fmax(0.7, q->thrust_ratio_low));
    status = check_ratios(q, err);
    if (!status)
        status = sw__speed_open(q->speed_rpm, q->cutting_speed_m_per_min,
                                q->diameter_mm, &full->speed, err);
    return status;
}

int sw_drilling_resolve(sw_drilling_in *in, sw_error *err)
{
    sw__drilling_full full;
    sw__clear(err);
    if (!in)
        return sw__fail_null(err, "in");
    const int status = sw__drilling_open(in, &full, err);
    if (!status) {
        *in = full.in;
        in->seal = sw__seal(in, SW_STRUCT_DRILLING_IN, in->assumed);
    }
    return status;
}

sw_assumption sw_drilling_assumed(const sw_drilling_in *in, int index,
                                  sw_error *err)
{
    sw__drilling_full full;
    sw__clear(err);
    const int status =
        in ? sw__drilling_open(in, &full, err) : sw__fail_null(err, "in");
    if (status)
        return sw__no_assumption(status);
    return sw__cut_assumed(&full.in, SW_STRUCT_DRILLING_IN, full.in.assumed,
                           full.in.material, index, err);
}
