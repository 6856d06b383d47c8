/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Milling resolve: a question about milling with nothing left open, and the
 * arc on which a tooth cuts. Symbols as in milling.c.
 */
#include "cut/milling.h"

#include <string.h>

#define MOST_FEED 0.1 /* per tooth, of the diameter: nobody means more */

#define SW__S sw_milling_in
const sw_field sw__milling_in_fields[] = {
    SW__METAL_FIELDS,
    SW__IN_WORD(mode, SW_WORDS_MILLING,
                "slot without a width, else side milling"),
    SW__IN_WORD(way, SW_WORDS_CUT_WAY,
                "usual where the feed has no play; up pushes the other way"),
    SW__IN(diameter_mm, "mm", 0.1, 2000, 0, 0, ""),
    SW__IN(teeth, "", 1, 200, 0, 0, ""),
    SW__IN(feed_per_tooth_mm, "mm", 1e-4, 10, 0, 0, ""),
    SW__IN(depth_mm, "mm", 1e-3, 500, 0, 0, ""),
    SW__IN(width_mm, "mm", 1e-3, 2000, 0, 0, "a slot is as wide as the cutter"),
    SW__IN(offset_mm, "mm", -1000, 1000, 0, 0, "strip in the middle"),
    SW__IN(helix_deg, "deg", 0, 70, 0, 45,
           "end mills 30, face mills with inserts 0; common practice, no "
           "source"),
    SW__IN(corner_deg, "deg", 5, 90, 45, 90,
           "square corner: nothing presses the part down"),
    SW__IN(radial_ratio, "", 0, 2, 0.3, 0.6,
           "0.3 aluminium and sharp, 0.5 to 0.6 steel and worn; from memory"),
    SW__IN(lift_share, "", 0, 1, 0.4, 1,
           "an upper bound; 0.4 to 0.9 was seen: from memory"),
    SW__IN(feed_direction_deg, "deg", -360, 360, 0, 0,
           "the cutter moves along x"),
    SW__IN(speed_rpm, "rpm", 0.01, 1e6, 0, 0, ""),
    SW__IN(cutting_speed_m_per_min, "m/min", 1e-3, 1e5, 0, 0, ""),
    SW__END,
};
#undef SW__S

void sw_milling_defaults(sw_milling_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    SW__METAL_OPEN(in);
    in->diameter_mm = in->teeth = in->feed_per_tooth_mm = SW_UNSET;
    in->depth_mm = in->width_mm = in->offset_mm = SW_UNSET;
    in->helix_deg = in->corner_deg = in->radial_ratio = SW_UNSET;
    in->lift_share = in->feed_direction_deg = SW_UNSET;
    in->speed_rpm = in->cutting_speed_m_per_min = SW_UNSET;
}

static int fail_teeth(double teeth, sw_error *err)
{
    char message[80];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "teeth: ");
    sw__line_add_number(&line, teeth);
    sw__line_add(&line, " is not a whole number, 1 .. 200");
    return sw__fail(err, SW_ERR_RANGE, "teeth", message);
}

static int require(const sw_milling_in *q, sw_error *err)
{
    int status = sw__cut_missing(q->diameter_mm, "diameter_mm",
                                 "the cutter's diameter", err);
    if (!status)
        status = sw__cut_missing(q->teeth, "teeth", "the number of teeth", err);
    if (!status)
        status = sw__cut_missing(q->feed_per_tooth_mm, "feed_per_tooth_mm",
                                 "the feed per tooth", err);
    if (!status)
        status =
            sw__cut_missing(q->depth_mm, "depth_mm",
                            "the depth of cut along the cutter's axis", err);
    if (!status && (q->mode == SW_MILL_SIDE || q->mode == SW_MILL_FACE))
        status = sw__cut_missing(q->width_mm, "width_mm",
                                 "the width of cut across the feed", err);
    if (!status && q->teeth != floor(q->teeth))
        status = fail_teeth(q->teeth, err);
    if (!status && q->depth_mm > 10 * q->diameter_mm)
        status = sw__fail(err, SW_ERR_CONFLICT, "depth_mm",
                          "depth_mm: is more than ten diameters");
    if (!status && q->feed_per_tooth_mm > MOST_FEED * q->diameter_mm)
        status = sw__fail(err, SW_ERR_CONFLICT, "feed_per_tooth_mm",
                          "feed_per_tooth_mm: is more than a tenth of the "
                          "cutter's diameter; is it the feed per turn or per "
                          "minute?");
    if (!status && q->mode == SW_MILL_SLOT && sw__is_set(q->width_mm) &&
        fabs(q->width_mm - q->diameter_mm) > 1e-6 * q->diameter_mm)
        status = sw__fail(err, SW_ERR_CONFLICT, "width_mm",
                          "width_mm: a slot is as wide as the cutter; for "
                          "another width mill along an edge, mode side");
    return status;
}

/* What was given and has no part in this mode. */
static int unused(const sw_milling_in *q)
{
    return (q->mode != SW_MILL_SIDE && q->way) ||
           (q->mode != SW_MILL_FACE && sw__is_set(q->offset_mm));
}

static void fill_open(sw_milling_in *q, const sw__filler *fill)
{
    const int slot = q->mode == SW_MILL_SLOT, face = q->mode == SW_MILL_FACE;
    if (slot)
        sw__fill_number(fill, "width_mm", q->diameter_mm);
    if (q->mode == SW_MILL_SIDE)
        sw__fill_word(fill, "way", SW_CUT_CLIMB);
    if (face)
        sw__fill_number(fill, "offset_mm", 0);
    sw__fill_number(fill, "helix_deg", face ? 0 : 30);
    sw__fill_number(fill, "corner_deg", 90);
    sw__fill_number(fill, "radial_ratio", 0.5);
    if (q->helix_deg > 0)
        sw__fill_number(fill, "lift_share", 1);
    sw__fill_number(fill, "feed_direction_deg", 0);
}

/* The arc: equations (1) to (3). */
static int set_arc(sw__milling_full *m, sw_error *err)
{
    const sw_milling_in *q = &m->in;
    const double r = q->diameter_mm / 2, ae = q->width_mm;
    m->start = 0;
    m->end = SW__PI;
    m->width = q->diameter_mm;
    if (q->mode == SW_MILL_SLOT)
        return SW_OK;
    if (q->mode == SW_MILL_SIDE) {
        if (ae > q->diameter_mm)
            return sw__fail(err, SW_ERR_CONFLICT, "width_mm",
                            "width_mm: is more than the cutter's diameter");
        const double arc = acos(1 - ae / r);
        m->width = ae;
        if (q->way == SW_CUT_UP)
            m->end = arc;
        else
            m->start = SW__PI - arc;
        return SW_OK;
    }
    const double left = fmin(q->offset_mm + ae / 2, r);
    const double right = fmax(q->offset_mm - ae / 2, -r);
    if (!(left > right))
        return sw__fail(err, SW_ERR_CONFLICT, "offset_mm",
                        "offset_mm: the strip does not lie under the cutter");
    m->width = left - right;
    m->start = acos(left / r);
    m->end = acos(right / r);
    return SW_OK;
}

static void set_law(sw__milling_full *m)
{
    const sw_milling_in *q = &m->in;
    const sw__metal metal = SW__METAL_OF(q);
    const double kappa = SW__RAD(q->corner_deg), beta = SW__RAD(q->helix_deg);
    const double most = q->feed_per_tooth_mm * sin(kappa);
    m->pitch = 2 * SW__PI / q->teeth;
    m->lag = 2 * q->depth_mm * tan(beta) / q->diameter_mm;
    m->force_N_per_mm = sw__kc(&metal, most) * most / sin(kappa);
    m->power = 1 - q->mc;
    m->radial = q->radial_ratio * sin(kappa);
    m->axial = -q->radial_ratio * sw__cos_deg(q->corner_deg);
    if (q->helix_deg > 0)
        m->axial += q->lift_share * tan(beta);
    m->feed = SW__RAD(q->feed_direction_deg);
}

int sw__milling_open(const sw_milling_in *in, sw__milling_full *full,
                     sw_error *err)
{
    memset(full, 0, sizeof *full);
    full->in = *in;
    sw_milling_in *q = &full->in;
    const sw__filler fill = {(char *)q, SW_STRUCT_MILLING_IN, &q->assumed};
    const sw__metal metal = SW__METAL_OF(q);
    int status =
        sw__reopen(q, SW_STRUCT_MILLING_IN, &q->assumed, &q->seal, err);
    if (!status)
        status = sw__check_input(q, SW_STRUCT_MILLING_IN, err);
    if (!status)
        status = sw__metal_open(&metal, &fill, &full->warnings, err);
    if (!status)
        status = require(q, err);
    if (status)
        return status;
    sw__fill_word(&fill, "mode",
                  sw__is_set(q->width_mm) ? SW_MILL_SIDE : SW_MILL_SLOT);
    if (unused(q))
        full->warnings |= SW_WARN_UNUSED_INPUT;
    fill_open(q, &fill);
    status = sw__speed_open(q->speed_rpm, q->cutting_speed_m_per_min,
                            q->diameter_mm, &full->speed, err);
    if (!status)
        status = set_arc(full, err);
    if (!status)
        set_law(full);
    return status;
}

int sw_milling_resolve(sw_milling_in *in, sw_error *err)
{
    sw__milling_full full;
    sw__clear(err);
    if (!in)
        return sw__fail_null(err, "in");
    const int status = sw__milling_open(in, &full, err);
    if (!status) {
        *in = full.in;
        in->seal = sw__seal(in, SW_STRUCT_MILLING_IN, in->assumed);
    }
    return status;
}

sw_assumption sw_milling_assumed(const sw_milling_in *in, int index,
                                 sw_error *err)
{
    sw__milling_full full;
    sw__clear(err);
    const int status =
        in ? sw__milling_open(in, &full, err) : sw__fail_null(err, "in");
    if (status)
        return sw__no_assumption(status);
    return sw__cut_assumed(&full.in, SW_STRUCT_MILLING_IN, full.in.assumed,
                           full.in.material, index, err);
}
