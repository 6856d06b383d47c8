/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tool file: the shop's own torque tools, one a row.
 *
 *   name; kind; from [ft-lbf]; to [ft-lbf]; step [ft-lbf]; deviation [%]
 *   big clicker; setting; 30; 150; 1; 4
 *
 * Required are name, to and step. The scale is marked in the unit of the column
 * `to`; N.m where that is none of sw_torque_unit. Tools in two units are two
 * files. How a file is written and refused: base/csv.c.
 *
 * One row is handed out for each call, and the whole file is read each time:
 * nothing is kept between calls and nothing allocated, so a file may have 200
 * tools and no more.
 */
#include "base/csv.h"
#include "fastener/tool.h"

#include <strapwise/units.h>

#include <string.h>

#define SW__S sw_shop_tool_out
const sw_field sw__shop_tool_out_fields[] = {
    SW__OUT_TEXT(name),
    SW__OUT(range_low_Nm, "N.m"),
    SW__OUT(range_high_Nm, "N.m"),
    SW__OUT(resolution_Nm, "N.m"),
    SW__OUT(deviation_pct, "%"),
    SW__OUT_WORD(tool_kind, SW_WORDS_TOOL_KIND),
    SW__OUT_WORD(torque_unit, SW_WORDS_TORQUE_UNIT),
    SW__END,
};
#undef SW__S

enum { NAME, KIND, FROM, TO, STEP, DEVIATION };
enum { TOOLS_MOST = 200 };

static const sw__csv_column column[] = {
    [NAME] = {"name", "tool", 0, 1, 0, 0},
    [KIND] = {"kind", "", 0, 0, 0, 0},
    [FROM] = {"from", "range low", SW_KIND_TORQUE, 0, 0, 1e6},
    [TO] = {"to", "range high", SW_KIND_TORQUE, 1, 1e-6, 1e6},
    [STEP] = {"step", "resolution", SW_KIND_TORQUE, 1, 1e-9, 1e6},
    [DEVIATION] = {"deviation", "", SW_KIND_RATIO, 0, 0.001, 0.5},
    {NULL, NULL, 0, 0, 0, 0}};
static const char *const no_key[] = {NULL};
static const sw__csv_layout layout = {column, no_key};

typedef struct {
    sw_shop_tool_out *out;
    int left; /* rows before the wanted one */
    int rows;
} search;

static int unit_of(double factor)
{
    for (int unit = SW_TORQUE_NM; unit <= SW_TORQUE_FTLBF; unit++)
        if (fabs(factor / sw__torque_unit_Nm(unit) - 1) < 1e-12)
            return unit;
    return SW_TORQUE_NM;
}

static int take_texts(const sw__csv_row *row, sw_shop_tool_out *tool,
                      sw_error *err)
{
    if (strlen(row->text[NAME]) >= sizeof tool->name)
        return sw__fail(err, SW_ERR_RANGE, "name",
                        "name: is longer than 63 bytes");
    sw__copy(tool->name, sizeof tool->name, row->text[NAME]);
    tool->tool_kind = sw_word_value(SW_WORDS_TOOL_KIND, row->text[KIND]);
    if (tool->tool_kind || !row->text[KIND][0])
        return SW_OK;
    char message[120];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "kind: ");
    sw__line_add_quoted(&line, row->text[KIND]);
    sw__line_add(&line, " is none of setting, indicating");
    return sw__fail(err, SW_ERR_UNKNOWN, "kind", message);
}

/* What sw_tool() would refuse in any case, in words of the file. */
static int check_tool(const sw_shop_tool_out *tool, sw_error *err)
{
    sw_tool_in in;
    sw_tool_defaults(&in);
    sw_tool_use(&in, tool);
    in.torque_Nm = in.range_high_Nm;
    const int status = sw__tool_open(&in, err);
    if (!status)
        return SW_OK;
    if (!(tool->range_low_Nm < tool->range_high_Nm))
        return sw__fail(err, status, "from", "from: must be below to");
    return sw__fail(err, status, "step",
                    "step: no multiple of it lies in the usable range");
}

static int take_row(void *with, const sw__csv_row *row, sw_error *err)
{
    search *s = with;
    sw_shop_tool_out tool;
    memset(&tool, 0, sizeof tool);
    if (s->rows++ == TOOLS_MOST)
        return sw__fail(err, SW_ERR_RANGE, "row",
                        "row: more than 200 tools are not read");
    int status = take_texts(row, &tool, err);
    tool.range_low_Nm = row->number[FROM];
    tool.range_high_Nm = row->number[TO];
    tool.resolution_Nm = row->number[STEP];
    tool.deviation_pct = row->number[DEVIATION];
    if (sw__is_set(tool.deviation_pct))
        tool.deviation_pct *= 100;
    else
        tool.warnings |= SW_WARN_TOOL_ASSUMED;
    tool.torque_unit = unit_of(row->factor[TO]);
    if (!status)
        status = check_tool(&tool, err);
    if (!status && s->left-- == 0)
        *s->out = tool;
    return status;
}

void sw_tool_use(sw_tool_in *in, const sw_shop_tool_out *tool)
{
    if (!in || !tool)
        return;
    in->tool[0] = '\0';
    in->range_low_Nm = tool->range_low_Nm;
    in->range_high_Nm = tool->range_high_Nm;
    in->resolution_Nm = tool->resolution_Nm;
    in->deviation_pct = tool->deviation_pct;
    in->tool_kind = tool->tool_kind;
    in->torque_unit = tool->torque_unit;
}

sw_shop_tool_out sw_shop_tool(const char *text, const char *file, int index,
                              sw_error *err)
{
    sw_shop_tool_out out;
    memset(&out, 0, sizeof out);
    search s = {&out, index, 0};
    const sw__csv_taker to = {&s, NULL, take_row};
    sw__clear(err);
    int status = text
                     ? sw__csv_read(&layout, text, strlen(text), file, &to, err)
                     : sw__fail_null(err, "text");
    if (!status && (index < 0 || index >= s.rows))
        status = sw__fail(err, SW_ERR_RANGE, "index",
                          "index: past the end of the tools in the file");
    if (status)
        sw__spoil(&out, SW_STRUCT_SHOP_TOOL_OUT, status);
    return out;
}
