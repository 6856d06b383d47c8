/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Hold: its question with nothing left open.
 */
#include "hold/hold.h"

#include <string.h>

void sw_hold_defaults(sw_hold_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    in->required_margin = in->largest_margin = in->disc_sides = SW_UNSET;
    in->support_least_N = in->stop_least_N = in->largest_clamp_N = SW_UNSET;
    in->friction_change = SW_UNSET;
}

int sw__hold_open(const sw_hold_in *in, sw_hold_in *full, sw_error *err)
{
    *full = *in;
    const sw__filler fill = {(char *)full, SW_STRUCT_HOLD_IN, &full->assumed};
    int status =
        sw__reopen(full, SW_STRUCT_HOLD_IN, &full->assumed, &full->seal, err);
    if (!status)
        status = sw__check_input(full, SW_STRUCT_HOLD_IN, err);
    if (status)
        return status;
    sw__fill_word(&fill, "depth", SW_DEPTH_FULL);
    sw__fill_number(&fill, "required_margin", 2);
    sw__fill_number(&fill, "largest_margin", 1e4);
    sw__fill_number(&fill, "disc_sides", 32);
    sw__fill_number(&fill, "support_least_N", 50);
    sw__fill_number(&fill, "stop_least_N", 0);
    sw__fill_number(&fill, "largest_clamp_N", 20000);
    sw__fill_number(&fill, "friction_change", 0.1);
    if (fmod(full->disc_sides, 4) != 0)
        return sw__fail(err, SW_ERR_RANGE, "disc_sides",
                        "disc_sides: must be a multiple of 4, 8 to 128");
    if (full->largest_margin < full->required_margin)
        return sw__fail(err, SW_ERR_CONFLICT, "largest_margin",
                        "largest_margin: must not be below required_margin");
    return SW_OK;
}

int sw_hold_resolve(sw_hold_in *in, sw_error *err)
{
    sw_hold_in full;
    sw__clear(err);
    if (!in)
        return sw__fail_null(err, "in");
    const int status = sw__hold_open(in, &full, err);
    if (!status) {
        *in = full;
        in->seal = sw__seal(in, SW_STRUCT_HOLD_IN, in->assumed);
    }
    return status;
}

sw_assumption sw_hold_assumed(const sw_hold_in *in, int index, sw_error *err)
{
    sw_hold_in full;
    sw__clear(err);
    const int status =
        in ? sw__hold_open(in, &full, err) : sw__fail_null(err, "in");
    if (status)
        return sw__no_assumption(status);
    return sw__assumed(&full, SW_STRUCT_HOLD_IN, full.assumed, index, err);
}
