/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tool resolve: a question about a tool with nothing left open. Equations as
 * numbered in tool.c.
 */
#include "fastener/tool.h"

#include <string.h>

#define SMALL_SCALE_NM 10.0 /* deviation of up to here ... */
#define SMALL_PCT 6.0
#define LARGE_PCT 4.0 /* ... and above */

void sw_tool_defaults(sw_tool_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    in->torque_Nm = in->range_low_Nm = in->range_high_Nm = SW_UNSET;
    in->resolution_Nm = in->deviation_pct = in->usable_fraction = SW_UNSET;
}

static int fail_tool(sw_error *err, const char *key)
{
    char message[240];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "tool: ");
    sw__line_add_quoted(&line, key);
    sw__line_add(&line, " is in no table; nearest is ");
    const char *nearest = sw_tool_name(0);
    for (int i = 1; sw_tool_name(i); i++)
        if (sw__edits(sw_tool_name(i), key) < sw__edits(nearest, key))
            nearest = sw_tool_name(i);
    sw__line_add(&line, nearest);
    return sw__fail(err, SW_ERR_UNKNOWN, "tool", message);
}

/* What the table says of a tool, converted. */
static int fill_row(const sw__filler *fill, const char *key, sw_error *err)
{
    const struct sw__tools_row *row = sw__tool_row(key);
    if (!row)
        return fail_tool(err, key);
    const int unit = sw_word_value(SW_WORDS_TORQUE_UNIT, row->torque_unit);
    const double Nm = sw__torque_unit_Nm(unit);
    sw__fill_number(fill, "range_low_Nm", row->range_low * Nm);
    sw__fill_number(fill, "range_high_Nm", row->range_high * Nm);
    sw__fill_number(fill, "resolution_Nm", row->resolution * Nm);
    sw__fill_number(fill, "deviation_pct", row->deviation_pct);
    sw__fill_word(fill, "tool_kind",
                  sw_word_value(SW_WORDS_TOOL_KIND, row->tool_kind));
    sw__fill_word(fill, "torque_unit", unit);
    return SW_OK;
}

static int check_required(const sw_tool_in *in, sw_error *err)
{
    if (!sw__is_set(in->torque_Nm))
        return sw__fail(err, SW_ERR_MISSING, "torque_Nm",
                        "torque_Nm: missing; give the torque wanted");
    if (in->tool[0])
        return SW_OK;
    if (!sw__is_set(in->range_high_Nm))
        return sw__fail(err, SW_ERR_MISSING, "tool",
                        "tool: missing; give a tool of the table, or "
                        "range_high_Nm and resolution_Nm of your own");
    if (!sw__is_set(in->resolution_Nm))
        return sw__fail(err, SW_ERR_MISSING, "resolution_Nm",
                        "resolution_Nm: missing; give the step to which the "
                        "tool can be set or read");
    return SW_OK;
}

static int check_scale(const sw_tool_in *in, sw_error *err)
{
    if (!(in->range_low_Nm < in->range_high_Nm))
        return sw__fail(err, SW_ERR_CONFLICT, "range_low_Nm",
                        "range_low_Nm: must be below range_high_Nm");
    double first, last;
    sw__tool_steps(in, &first, &last);
    if (first <= last)
        return SW_OK;
    char message[200];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "resolution_Nm: no multiple of ");
    sw__line_add_number(&line, in->resolution_Nm);
    sw__line_add(&line, " N.m lies in the usable range, ");
    sw__line_add_number(&line, sw__tool_low(in));
    sw__line_add(&line, " to ");
    sw__line_add_number(&line, in->range_high_Nm);
    sw__line_add(&line, " N.m");
    return sw__fail(err, SW_ERR_CONFLICT, "resolution_Nm", message);
}

int sw__tool_open(sw_tool_in *in, sw_error *err)
{
    sw__clear(err);
    int status =
        sw__reopen(in, SW_STRUCT_TOOL_IN, &in->assumed, &in->seal, err);
    if (!status)
        status = sw__check_input(in, SW_STRUCT_TOOL_IN, err);
    if (!status)
        status = check_required(in, err);
    const sw__filler fill = {(char *)in, SW_STRUCT_TOOL_IN, &in->assumed};
    if (!status && in->tool[0])
        status = fill_row(&fill, in->tool, err);
    if (status)
        return status;
    sw__fill_number(&fill, "usable_fraction", SW__USABLE_FRACTION);
    sw__fill_number(&fill, "range_low_Nm",
                    in->usable_fraction * in->range_high_Nm);
    sw__fill_number(&fill, "deviation_pct",
                    sw__below(SMALL_SCALE_NM, in->range_high_Nm) ? LARGE_PCT
                                                                 : SMALL_PCT);
    sw__fill_word(&fill, "tool_kind", SW_TOOL_SETTING);
    sw__fill_word(&fill, "torque_unit", SW_TORQUE_NM);
    return check_scale(in, err);
}

int sw_tool_resolve(sw_tool_in *in, sw_error *err)
{
    if (!in)
        return sw__fail_null(err, "in");
    sw_tool_in open = *in;
    const int status = sw__tool_open(&open, err);
    if (!status) {
        *in = open;
        in->seal = sw__seal(in, SW_STRUCT_TOOL_IN, in->assumed);
    }
    return status;
}

sw_assumption sw_tool_assumed(const sw_tool_in *in, int index, sw_error *err)
{
    sw_tool_in full;
    memset(&full, 0, sizeof full);
    sw__clear(err);
    if (in)
        full = *in;
    const int status =
        in ? sw_tool_resolve(&full, err) : sw__fail_null(err, "in");
    if (status)
        return sw__no_assumption(status);
    sw_assumption a =
        sw__assumed(&full, SW_STRUCT_TOOL_IN, full.assumed, index, err);
    const struct sw__tools_row *row = sw__tool_row(full.tool);
    if (!a.status && row && strcmp(a.name, "usable_fraction") != 0 &&
        strcmp(a.name, "deviation_pct") != 0) {
        sw__line line = sw__line_start(a.source, sizeof a.source);
        sw__line_add(&line, "a usual ");
        sw__line_add(&line, row->label);
        sw__line_add(&line, "; ");
        sw__line_add(&line, row->source);
    }
    return a;
}
