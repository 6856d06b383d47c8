/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Whether a torque can be set on a torque tool, what is set then, and
 *        which usual tool would do.
 *
 * Theory and sources: lib/fastener/tool.c.
 */
#ifndef STRAPWISE_TOOL_H
#define STRAPWISE_TOOL_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_tool(). Set by sw_tool_defaults() first. Give `tool`, or
 *  range and resolution of one of your own; what is given beside `tool`
 *  replaces what the table says. */
typedef struct {
    double torque_Nm;       /**< torque wanted; required, 1e-6 .. 1e6 */
    char tool[24];          /**< key of the table; "" = one of your own */
    double range_low_Nm;    /**< lowest mark of the scale, 0 .. 1e6; open: the
                                 lowest usable torque */
    double range_high_Nm;   /**< end of the scale, 1e-6 .. 1e6 */
    double resolution_Nm;   /**< step to which it is set or read, 1e-9 .. 1e6 */
    double deviation_pct;   /**< permitted deviation, 0.1 .. 50 */
    double usable_fraction; /**< lowest usable part of the end of the scale, 0
                                 .. 0.9 */
    int tool_kind;          /**< sw_tool_kind */
    int torque_unit;        /**< sw_torque_unit of its scale */
    uint64_t assumed; /**< set by the library: bit n = field n is a default of
                           the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                           question was changed afterwards */
} sw_tool_in;

/** Answer of sw_tool(). */
typedef struct {
    int status;              /**< 0 or sw_status */
    uint64_t warnings;       /**< SW_WARN_ bits */
    char tool[24];           /**< key, or "" for one of your own */
    char label[32];          /**< the kind of tool in words, or "" */
    double torque_Nm;        /**< torque wanted */
    double set_torque_Nm;    /**< torque to set, or to read */
    double set_torque_inlbf; /**< the same */
    double set_torque_ftlbf; /**< the same */
    double setting;          /**< the same as a number of the tool's own unit */
    double rounding_pct;     /**< torque set over torque wanted, less 1 */
    double deviation_pct;    /**< permitted deviation of one reading */
    double torque_low_Nm;    /**< least true torque the deviation permits */
    double torque_high_Nm;   /**< largest true torque */
    double usable_low_Nm;    /**< lowest torque the tool is good for */
    double usable_high_Nm;   /**< end of its scale */
    double resolution_Nm;    /**< step */
    int tool_kind;           /**< sw_tool_kind */
    int torque_unit;         /**< sw_torque_unit of its scale */
} sw_tool_out;

/** One tool of a shop's own file, from sw_shop_tool(). */
typedef struct {
    int status;           /**< 0 or sw_status */
    uint64_t warnings;    /**< SW_WARN_ bits */
    char name[64];        /**< what the shop calls it */
    double range_low_Nm;  /**< lowest mark, or SW_UNSET */
    double range_high_Nm; /**< end of the scale */
    double resolution_Nm; /**< step */
    double deviation_pct; /**< permitted deviation, or SW_UNSET */
    int tool_kind;        /**< sw_tool_kind, or 0 */
    int torque_unit;      /**< sw_torque_unit of the column `to` */
} sw_shop_tool_out;

/** Sets every field to "left to the library". */
SW_API void sw_tool_defaults(sw_tool_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing; a resolved question that was changed is refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_tool_resolve(sw_tool_in *in, sw_error *err);

/**
 * Rounds a torque to what a tool can be set to. A torque outside the usable
 * range is refused (SW_ERR_NONE) with the range in the error record and the
 * tool of the table that would do in its message.
 *
 * Example:
 * @code
 * sw_tool_in in;
 * sw_tool_defaults(&in);
 * in.torque_Nm = 8.3;
 * strcpy(in.tool, "click-25Nm");
 * sw_tool_out out = sw_tool(&in, NULL);   // out.set_torque_Nm is 8.5
 * @endcode
 */
SW_API SW_NODISCARD sw_tool_out sw_tool(const sw_tool_in *in, sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_tool_assumed(const sw_tool_in *in,
                                                  int index, sw_error *err);

/**
 * The index-th tool of the table that would do for a torque, with what is set
 * on it. The best comes first: the one whose usable range has the torque
 * nearest its middle.
 *
 * @param torque_Nm    torque wanted, 1e-6 .. 1e6
 * @param torque_unit  sw_torque_unit: tools of its system (N·m, or inch and
 *                     foot) come first; 0: whichever fits best
 * @param index        0 ..
 * @param err          error record, may be NULL
 * @return status SW_ERR_RANGE past the end; SW_ERR_NONE where none would do
 */
SW_API SW_NODISCARD sw_tool_out sw_tool_for(double torque_Nm, int torque_unit,
                                            int index, sw_error *err);

/** Key of the index-th tool of the table, or NULL past the end. */
SW_API const char *sw_tool_name(int index);

/**
 * The index-th tool of a shop's own list, held in memory as a CSV table:
 * columns name, kind, from, to, step, deviation, in any order, units in the
 * header; name, to and step are needed.
 *
 *     name, kind, from [ft-lbf], to [ft-lbf], step [ft-lbf], deviation [%]
 *     big clicker, setting, 30, 150, 1, 4
 *
 * The whole list is checked whichever row is asked for; at most 200 rows.
 *
 * @param text   the file, zero-terminated UTF-8
 * @param file   its name, for messages ("file:line: ..."); may be NULL
 * @param index  0 ..
 * @param err    error record, may be NULL
 * @return status SW_ERR_RANGE past the end
 */
SW_API SW_NODISCARD sw_shop_tool_out sw_shop_tool(const char *text,
                                                  const char *file, int index,
                                                  sw_error *err);

/** Puts one's own tool into a question, in place of one of the table. */
SW_API void sw_tool_use(sw_tool_in *in, const sw_shop_tool_out *tool);

#ifdef __cplusplus
}
#endif
#endif
