/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tool: a torque on the scale of a torque tool.
 *
 * Symbols: T torque wanted, R lowest mark and H end of the scale, r resolution,
 * f lowest usable part of the scale, S torque set, n a whole number, a
 * permitted deviation, Tt true torque.
 *
 *   usable       max(R, f H) <= T <= H                                    (1)
 *   setting      S = n r, counted from zero, n nearest T/r; a torque just
 *                between two settings goes to the lower one; where S leaves
 *                (1), the next n inside                                   (2)
 *   deviation    a = (S - Tt)/Tt of one reading, a limit, so
 *                S/(1 + a) <= Tt <= S/(1 - a)                             (3)
 *
 * f = 0.2 because ISO 6789-1 tests a tool at 20, 60 and 100 % of its scale and
 * so permits its deviation there alone. Permitted are 4 %, 6 % for a scale that
 * ends at 10 N.m or below and for screwdrivers and beams of any size. (3), the
 * test points and the deviations: ISO 6789-1:2017, from memory.
 *
 * The ratio of the ends of (3) is (1 + a)/(1 - a), the same as that of a
 * published scatter of +-a: the limit of (3) may stand for the tool's scatter.
 *
 * Rounding is no scatter: it is known, and what follows should be computed
 * again with S. It is warned of when it exceeds a/4: up to there both together,
 * as the root of the sum of squares, exceed a by 3 % of it at most.
 *
 * Not in it: how the tool is pulled, wear since its last test, adapters that
 * change its length. A click wrench is exercised (five times at its end) before
 * use and is let click once, slowly.
 */
#include "fastener/tool.h"

#include <string.h>

#define SW__S sw_tool_in
const sw_field sw__tool_in_fields[] = {
    SW__IN(torque_Nm, "N.m", 1e-6, 1e6, 0, 0, ""),
    SW__IN_TEXT(tool, ""),
    SW__IN(range_low_Nm, "N.m", 0, 1e6, 0, 0,
           "no lowest mark was given: the lowest usable torque"),
    SW__IN(range_high_Nm, "N.m", 1e-6, 1e6, 0, 0, ""),
    SW__IN(resolution_Nm, "N.m", 1e-9, 1e6, 0, 0, ""),
    SW__IN(deviation_pct, "%", 0.1, 50, 4, 6,
           "ISO 6789-1:2017, from memory: 4 %; 6 % for a scale up to 10 N.m, "
           "a screwdriver or a beam"),
    SW__IN(usable_fraction, "", 0, 0.9, 0.05, 0.25,
           "ISO 6789-1:2017, from memory: a tool is tested at 20, 60 and 100 % "
           "of its scale"),
    SW__IN_WORD(tool_kind, SW_WORDS_TOOL_KIND,
                "most torque wrenches of a shop are set; common practice, no "
                "source"),
    SW__IN_WORD(torque_unit, SW_WORDS_TORQUE_UNIT, "the library's own unit"),
    SW__END,
};
#undef SW__S

#define SW__S sw_tool_out
const sw_field sw__tool_out_fields[] = {
    SW__OUT_TEXT(tool),
    SW__OUT_TEXT(label),
    SW__OUT(torque_Nm, "N.m"),
    SW__OUT(set_torque_Nm, "N.m"),
    SW__OUT(set_torque_inlbf, "in-lbf"),
    SW__OUT(set_torque_ftlbf, "ft-lbf"),
    SW__OUT(setting, ""),
    SW__OUT_WORD(torque_unit, SW_WORDS_TORQUE_UNIT),
    SW__OUT(rounding_pct, "%"),
    SW__OUT(deviation_pct, "%"),
    SW__OUT(torque_low_Nm, "N.m"),
    SW__OUT(torque_high_Nm, "N.m"),
    SW__OUT(usable_low_Nm, "N.m"),
    SW__OUT(usable_high_Nm, "N.m"),
    SW__OUT(resolution_Nm, "N.m"),
    SW__OUT_WORD(tool_kind, SW_WORDS_TOOL_KIND),
    SW__END,
};
#undef SW__S

#define ROUNDING_PART 0.25 /* of the deviation; more is warned of */

double sw__torque_unit_Nm(int torque_unit)
{
    return torque_unit == SW_TORQUE_FTLBF   ? SW__FTLBF_NM
           : torque_unit == SW_TORQUE_INLBF ? SW__FTLBF_NM / 12
                                            : 1;
}

double sw__tool_low(const sw_tool_in *in)
{
    return sw__usable_low(in->range_low_Nm, in->range_high_Nm,
                          in->usable_fraction);
}

void sw__tool_steps(const sw_tool_in *in, double *first, double *last)
{
    *first = fmax(1, ceil(sw__tool_low(in) / in->resolution_Nm - 1e-9));
    *last = floor(in->range_high_Nm / in->resolution_Nm + 1e-9);
}

/* "8.13491 N.m (6 ft-lbf) is below the usable 20 to 100 ft-lbf of this tool;
 * small click wrench, 40 to 200 in-lbf, would do (click-200inlbf)" */
static int refuse(const sw_tool_in *in, sw_error *err)
{
    const double Nm = sw__torque_unit_Nm(in->torque_unit);
    const char *unit = sw_word(SW_WORDS_TORQUE_UNIT, in->torque_unit);
    char message[240];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "torque_Nm: ");
    sw__line_add_number(&line, in->torque_Nm);
    sw__line_add(&line, " N.m");
    if (in->torque_unit != SW_TORQUE_NM) {
        sw__line_add(&line, " (");
        sw__line_add_number(&line, in->torque_Nm / Nm);
        sw__line_add(&line, " ");
        sw__line_add(&line, unit);
        sw__line_add(&line, ")");
    }
    sw__line_add(&line, in->torque_Nm < sw__tool_low(in)
                            ? " is below the usable "
                            : " is above the usable ");
    sw__line_add_number(&line, sw__tool_low(in) / Nm);
    sw__line_add(&line, " to ");
    sw__line_add_number(&line, in->range_high_Nm / Nm);
    sw__line_add(&line, " ");
    sw__line_add(&line, unit);
    sw__line_add(&line, " of this tool; ");
    sw__tool_advise(&line, in->torque_Nm, in->torque_unit);
    sw__fail(err, SW_ERR_NONE, "torque_Nm", message);
    if (err) {
        err->low = sw__tool_low(in);
        err->high = in->range_high_Nm;
    }
    return SW_ERR_NONE;
}

/* Equation (2). */
static double set_on(const sw_tool_in *in)
{
    double first, last;
    sw__tool_steps(in, &first, &last);
    const double n = ceil(in->torque_Nm / in->resolution_Nm - 0.5 - 1e-9);
    return fmin(last, fmax(first, n)) * in->resolution_Nm;
}

static int solve(const sw_tool_in *in, sw_tool_out *out, sw_error *err)
{
    if (sw__below(in->torque_Nm, sw__tool_low(in)) ||
        sw__below(in->range_high_Nm, in->torque_Nm))
        return refuse(in, err);
    const struct sw__tools_row *row = sw__tool_row(in->tool);
    if (row) {
        sw__copy(out->tool, sizeof out->tool, row->key);
        sw__copy(out->label, sizeof out->label, row->label);
    }
    const double a = in->deviation_pct / 100;
    out->torque_Nm = in->torque_Nm;
    out->set_torque_Nm = set_on(in);
    out->set_torque_inlbf = out->set_torque_Nm * 12 / SW__FTLBF_NM;
    out->set_torque_ftlbf = out->set_torque_Nm / SW__FTLBF_NM;
    out->setting = out->set_torque_Nm / sw__torque_unit_Nm(in->torque_unit);
    out->rounding_pct =
        100 * (out->set_torque_Nm - in->torque_Nm) / in->torque_Nm;
    out->deviation_pct = in->deviation_pct;
    out->torque_low_Nm = out->set_torque_Nm / (1 + a);
    out->torque_high_Nm = out->set_torque_Nm / (1 - a);
    out->usable_low_Nm = sw__tool_low(in);
    out->usable_high_Nm = in->range_high_Nm;
    out->resolution_Nm = in->resolution_Nm;
    out->tool_kind = in->tool_kind;
    out->torque_unit = in->torque_unit;
    if (fabs(out->rounding_pct) > ROUNDING_PART * in->deviation_pct)
        out->warnings |= SW_WARN_TOOL_ROUNDING;
    if (in->assumed & (sw__bit(SW_STRUCT_TOOL_IN, "range_high_Nm") |
                       sw__bit(SW_STRUCT_TOOL_IN, "resolution_Nm") |
                       sw__bit(SW_STRUCT_TOOL_IN, "deviation_pct")))
        out->warnings |= SW_WARN_TOOL_ASSUMED;
    return SW_OK;
}

sw_tool_out sw_tool(const sw_tool_in *in, sw_error *err)
{
    sw_tool_out out;
    memset(&out, 0, sizeof out);
    if (!in) {
        sw__spoil(&out, SW_STRUCT_TOOL_OUT, sw__fail_null(err, "in"));
        return out;
    }
    sw_tool_in full = *in;
    int status = sw__tool_open(&full, err);
    if (!status)
        status = solve(&full, &out, err);
    if (status)
        sw__spoil(&out, SW_STRUCT_TOOL_OUT, status);
    return out;
}
