/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Calibrate resolve: a question about pairs with nothing left open.
 */
#include "fastener/calibrate.h"

#include <string.h>

#define SW__S sw_calibrate_in
const sw_field sw__calibrate_in_fields[] = {
    SW__IN_TEXT(thread, "head of the pairs"),
    SW__IN(prevailing_torque_Nm, "N.m", 0, 1e5, 0, 0, "plain nut"),
    SW__IN_TIMES(
        friction_radius_mm, "mm", 0.1, 500, 0.9, 1.1,
        "VDI 2230-1: (bearing face + clearance hole)/4, ISO 4014 and ISO "
        "273 medium or their inch counterparts"),
    SW__IN(confidence, "", 0.5, 0.9999, 0.9, 0.99,
           "common practice, no source"),
    SW__IN(proportion, "", 0.5, 0.9999, 0.9, 0.99,
           "common practice, no source"),
    SW__END,
};
#undef SW__S

void sw_calibrate_defaults(sw_calibrate_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    in->prevailing_torque_Nm = in->friction_radius_mm = SW_UNSET;
    in->confidence = in->proportion = SW_UNSET;
}

const char *sw_calibrate_not_checked(int index)
{
    static const char *const sentence[] = {
        "whether studs, nuts, washers and lubricant are those of the fixture",
        "load cell and wrench: no interval shows an error that all pairs share",
        "wear: the K of a new stud is not that of a used one",
    };
    const int count = sizeof sentence / sizeof sentence[0];
    return index >= 0 && index < count ? sentence[index] : NULL;
}

int sw__pairs_parted(const sw_pairs *pairs)
{
    for (int i = 0; i < pairs->count; i++)
        if (sw__is_set(pairs->pair[i].thread_torque_Nm) ||
            sw__is_set(pairs->pair[i].seat_torque_Nm))
            return 1;
    return 0;
}

int sw__calibrate_open(sw_calibrate_in *in, const sw_pairs *pairs,
                       sw_thread_out *t, sw_error *err)
{
    sw__clear(err);
    int status = pairs ? SW_OK : sw__fail_null(err, "pairs");
    if (!status)
        status = sw__reopen(in, SW_STRUCT_CALIBRATE_IN, &in->assumed, &in->seal,
                            err);
    if (!status)
        status = sw__check_input(in, SW_STRUCT_CALIBRATE_IN, err);
    if (status)
        return status;
    const sw__filler fill = {(char *)in, SW_STRUCT_CALIBRATE_IN, &in->assumed};
    sw__fill_text(&fill, "thread", pairs->thread);
    if (!in->thread[0])
        return sw__fail(err, SW_ERR_MISSING, "thread",
                        "thread: missing; give it, or write it at the head of "
                        "the pairs");
    *t = sw_thread(in->thread, err);
    if (t->status)
        return t->status;
    sw__fill_number(&fill, "prevailing_torque_Nm",
                    sw__is_set(pairs->prevailing_torque_Nm)
                        ? pairs->prevailing_torque_Nm
                        : 0);
    sw__fill_number(&fill, "confidence", 0.95);
    sw__fill_number(&fill, "proportion", 0.95);
    if (sw__pairs_parted(pairs)) /* else it enters nothing */
        sw__fill_number(&fill, "friction_radius_mm",
                        (t->bearing_diameter_mm + t->clearance_hole_mm) / 4);
    return SW_OK;
}

int sw_calibrate_resolve(sw_calibrate_in *in, const sw_pairs *pairs,
                         sw_error *err)
{
    if (!in)
        return sw__fail_null(err, "in");
    sw_calibrate_in open = *in;
    sw_thread_out t;
    const int status = sw__calibrate_open(&open, pairs, &t, err);
    if (!status) {
        *in = open;
        in->seal = sw__seal(in, SW_STRUCT_CALIBRATE_IN, in->assumed);
    }
    return status;
}

sw_assumption sw_calibrate_assumed(const sw_calibrate_in *in,
                                   const sw_pairs *pairs, int index,
                                   sw_error *err)
{
    sw_calibrate_in full;
    sw_calibrate_defaults(&full);
    if (in)
        full = *in;
    const int status =
        in ? sw_calibrate_resolve(&full, pairs, err) : sw__fail_null(err, "in");
    if (status)
        return sw__no_assumption(status);
    sw_assumption a =
        sw__assumed(&full, SW_STRUCT_CALIBRATE_IN, full.assumed, index, err);
    if (strcmp(a.name, "prevailing_torque_Nm") == 0 &&
        sw__is_set(pairs->prevailing_torque_Nm))
        sw__copy(a.source, sizeof a.source, "head of the pairs");
    return a;
}
