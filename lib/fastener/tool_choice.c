/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tool choice: which tools of the table would do for a torque.
 *
 * A tool would do when the torque lies in its usable range, equation (1) of
 * tool.c with f = 0.2. The best is the one with the torque nearest the middle
 * of that range: far from the low end, where one step is a large part of the
 * torque, and from the end of the scale.
 *
 * Not in it: access, drive size, what the shop owns.
 */
#include "fastener/tool.h"

#include <string.h>

const struct sw__tools_row *sw__tool_row(const char *key)
{
    for (size_t i = 0; i < sw__tools_count; i++)
        if (strcmp(sw__tools[i].key, key) == 0)
            return &sw__tools[i];
    return NULL;
}

const char *sw_tool_name(int index)
{
    return index >= 0 && (size_t)index < sw__tools_count ? sw__tools[index].key
                                                         : NULL;
}

/* Distance from the middle of the usable range in halves of that range, 10
 * more for a tool of the other system; negative where it would not do. */
static double demerit(const struct sw__tools_row *row, double torque_Nm,
                      int torque_unit)
{
    const int unit = sw_word_value(SW_WORDS_TORQUE_UNIT, row->torque_unit);
    const double torque = torque_Nm / sw__torque_unit_Nm(unit);
    const double low =
        sw__usable_low(row->range_low, row->range_high, SW__USABLE_FRACTION);
    if (sw__below(torque, low) || sw__below(row->range_high, torque))
        return -1;
    const int other =
        torque_unit && (torque_unit == SW_TORQUE_NM) != (unit == SW_TORQUE_NM);
    const double half = (row->range_high - low) / 2;
    return fabs(torque - low - half) / half + (other ? 10 : 0);
}

const struct sw__tools_row *sw__tool_fit(double torque_Nm, int torque_unit,
                                         int index)
{
    for (size_t i = 0; i < sw__tools_count; i++) {
        const double mine = demerit(&sw__tools[i], torque_Nm, torque_unit);
        int better = 0;
        for (size_t k = 0; k < sw__tools_count; k++) {
            const double its = demerit(&sw__tools[k], torque_Nm, torque_unit);
            better += its >= 0 && (its < mine || (its == mine && k < i));
        }
        if (mine >= 0 && better == index)
            return &sw__tools[i];
    }
    return NULL;
}

void sw__tool_advise(sw__line *line, double torque_Nm, int torque_unit)
{
    const struct sw__tools_row *row = sw__tool_fit(torque_Nm, torque_unit, 0);
    if (!row) {
        sw__line_add(line, "no usual tool would do: count flats of nut turn "
                           "from snug (60 deg each) as a cross-check");
        return;
    }
    sw__line_add(line, row->label);
    sw__line_add(line, ", ");
    sw__line_add_number(line, sw__usable_low(row->range_low, row->range_high,
                                             SW__USABLE_FRACTION));
    sw__line_add(line, " to ");
    sw__line_add_number(line, row->range_high);
    sw__line_add(line, " ");
    sw__line_add(line, row->torque_unit);
    sw__line_add(line, ", would do (");
    sw__line_add(line, row->key);
    sw__line_add(line, ")");
}

static int check(double torque_Nm, int torque_unit, int index, sw_error *err)
{
    const sw_field *f = sw_field_named(SW_STRUCT_TOOL_IN, "torque_Nm");
    if (!(torque_Nm >= f->min && torque_Nm <= f->max))
        return sw__fail_range(err, f->name, torque_Nm, f->unit, f->min, f->max);
    if (torque_unit != SW_UNSET_WORD &&
        !sw_word(SW_WORDS_TORQUE_UNIT, torque_unit))
        return sw__fail_range(err, "torque_unit", torque_unit, "", 0,
                              SW_TORQUE_FTLBF);
    if (sw__tool_fit(torque_Nm, torque_unit, index))
        return SW_OK;
    if (sw__tool_fit(torque_Nm, torque_unit, 0))
        return sw__fail(err, SW_ERR_RANGE, "index",
                        "index: past the end of the tools that would do");
    char message[160];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "torque_Nm: ");
    sw__line_add_number(&line, torque_Nm);
    sw__line_add(&line, " N.m: ");
    sw__tool_advise(&line, torque_Nm, torque_unit);
    return sw__fail(err, SW_ERR_NONE, "torque_Nm", message);
}

sw_tool_out sw_tool_for(double torque_Nm, int torque_unit, int index,
                        sw_error *err)
{
    sw_tool_out out;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    const int status = check(torque_Nm, torque_unit, index, err);
    if (status) {
        sw__spoil(&out, SW_STRUCT_TOOL_OUT, status);
        return out;
    }
    sw_tool_in in;
    sw_tool_defaults(&in);
    in.torque_Nm = torque_Nm;
    sw__copy(in.tool, sizeof in.tool,
             sw__tool_fit(torque_Nm, torque_unit, index)->key);
    return sw_tool(&in, err);
}
