/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the rooms share and nobody outside sees: one-line messages, checks of
 * input structs against their field list, NaN-filling of results.
 */
#ifndef SW_BASE_INTERNAL_H
#define SW_BASE_INTERNAL_H

#include <strapwise/field.h>
#include <strapwise/status.h>
#include <strapwise/words.h>

#include <math.h>

/* What libstrapwise-fixture, built beside it and of the same release, may call.
 * Exported, and yet no interface: tests/sibling-symbols.txt. */
#define SW_SIBLING SW_API

#define SW__PI 3.14159265358979323846
#define SW__RAD(deg) ((deg) * (SW__PI / 180.0))
#define SW__DEG(rad) ((rad) * (180.0 / SW__PI))
#define SW__LBF_N 4.4482216152605 /* exact: 0.45359237 kg * 9.80665 m/s2 */
#define SW__FTLBF_NM (SW__LBF_N * 0.3048) /* exact */

/* A one-line text under construction; what does not fit is cut. */
typedef struct {
    char *text;
    size_t room, length;
} sw__line;

SW_SIBLING sw__line sw__line_start(char *text, size_t room);
SW_SIBLING void sw__line_add(sw__line *line, const char *text);
/* user text: control bytes and broken UTF-8 become '?', long text is cut */
SW_SIBLING void sw__line_add_quoted(sw__line *line, const char *text);
SW_SIBLING void sw__line_add_number(sw__line *line, double value);

/* Each records the error (when err is not NULL) and returns its code. */
SW_SIBLING int sw__fail(sw_error *err, int code, const char *field,
                        const char *message);
SW_SIBLING int sw__fail_range(sw_error *err, const char *field, double value,
                              const char *unit, double low, double high);
SW_SIBLING int sw__fail_null(sw_error *err, const char *field);
SW_SIBLING int sw__fail_memory(sw_error *err);
SW_SIBLING void sw__clear(sw_error *err);

static inline int sw__is_set(double value) { return value != SW_UNSET; }

/* Copies with a cut at room - 1, always terminated. */
SW_SIBLING void sw__copy(char *to, size_t room, const char *from);

/* "source edition" */
SW_SIBLING void sw__cite(char *text, size_t room, const char *source,
                         const char *edition);

/* Whether a table row has no source behind it: "memory", "practice". */
SW_SIBLING int sw__is_hearsay(const char *status);

/* Distance of two names in single-character edits, letter case ignored. */
SW_SIBLING int sw__edits(const char *a, const char *b);

/* Checks every set field of an input struct: numbers for NaN and range, words
 * for membership, texts for termination. Returns 0 or records the error. */
SW_SIBLING int sw__check_input(const void *in, int structure, sw_error *err);

/* Fills every number of a result with NaN and sets its status (first int). */
SW_SIBLING void sw__spoil(void *out, int structure, int status);

/* The index-th bit that is set in `assumed`, described from the fields. */
SW_SIBLING sw_assumption sw__assumed(const void *in, int structure,
                                     uint64_t assumed, int index,
                                     sw_error *err);

/* Opens a question again that was resolved before: every field whose bit is set
 * in `assumed` becomes open. A question that was changed since is refused,
 * since a change of a default would be lost. Returns 0 or records the error. */
SW_SIBLING int sw__reopen(void *in, int structure, uint64_t *assumed,
                          uint64_t *seal, sw_error *err);

/* The seal of a resolved question, never 0. */
SW_SIBLING uint64_t sw__seal(const void *in, int structure, uint64_t assumed);

/* The bit of a field in `assumed`. */
SW_SIBLING uint64_t sw__bit(int structure, const char *name);

SW_SIBLING sw_assumption sw__no_assumption(int status);

/* Takes a default for an open field and notes it; a default that is itself
 * open (SW_UNSET, "") changes nothing. */
typedef struct {
    char *base;
    int structure;
    uint64_t *assumed;
} sw__filler;

SW_SIBLING void sw__fill_number(const sw__filler *f, const char *name,
                                double value);
SW_SIBLING void sw__fill_word(const sw__filler *f, const char *name, int value);
SW_SIBLING void sw__fill_text(const sw__filler *f, const char *name,
                              const char *value);

/* Field lists; ended by a row without a name. */
extern const sw_field sw__thread_out_fields[], sw__grade_out_fields[],
    sw__lubrication_out_fields[], sw__torque_in_fields[],
    sw__torque_out_fields[], sw__chart_in_fields[], sw__chart_out_fields[],
    sw__strap_in_fields[], sw__strap_out_fields[], sw__tilt_out_fields[],
    sw__place_out_fields[], sw__strap_torque_out_fields[],
    sw__matter_out_fields[], sw__method_out_fields[], sw__spread_in_fields[],
    sw__spread_out_fields[], sw__window_out_fields[],
    sw__strap_spread_out_fields[], sw__tool_in_fields[], sw__tool_out_fields[],
    sw__shop_tool_out_fields[], sw__pairs_out_fields[], sw__pair_out_fields[],
    sw__calibrate_in_fields[], sw__calibrate_out_fields[],
    sw__material_out_fields[], sw__nut_out_fields[], sw__strip_in_fields[],
    sw__strip_out_fields[], sw__engage_in_fields[], sw__gives_out_fields[],
    sw__turn_out_fields[], sw__strap_drawing_in_fields[],
    sw__support_in_fields[], sw__clamp_in_fields[], sw__stop_in_fields[],
    sw__load_in_fields[], sw__weight_in_fields[], sw__cut_material_out_fields[],
    sw__cut_load_out_fields[], sw__turning_in_fields[],
    sw__turning_out_fields[], sw__milling_in_fields[], sw__milling_out_fields[],
    sw__drilling_in_fields[], sw__drilling_out_fields[], sw__screw_in_fields[],
    sw__screw_out_fields[], sw__cylinder_in_fields[], sw__cylinder_out_fields[],
    sw__swing_in_fields[], sw__swing_out_fields[], sw__vacuum_in_fields[],
    sw__vacuum_out_fields[], sw__adhesive_in_fields[],
    sw__adhesive_out_fields[], sw__bar_in_fields[], sw__bar_out_fields[],
    sw__contact_in_fields[], sw__contact_out_fields[], sw__pad_in_fields[],
    sw__pad_out_fields[], sw__disc_in_fields[], sw__disc_out_fields[],
    sw__chuck_in_fields[], sw__chuck_out_fields[], sw__squeeze_in_fields[],
    sw__squeeze_out_fields[], sw__job_out_fields[], sw__job_corner_out_fields[],
    sw__job_clamp_out_fields[], sw__job_operation_out_fields[],
    sw__hold_map_in_fields[], sw__hold_in_fields[], sw__hold_out_fields[],
    sw__hold_point_out_fields[], sw__hold_contact_out_fields[],
    sw__couple_in_fields[], sw__couple_out_fields[], sw__tripod_in_fields[],
    sw__tripod_out_fields[], sw__tight_in_fields[], sw__tight_out_fields[],
    sw__remedy_out_fields[];

/* The list of each struct, by sw_struct (structs.c). */
extern const sw_field *const sw__fields_of[SW_STRUCT_COUNT + 1];

/* Rows of the field lists; the struct type is the macro SW__S. SW__IN_TIMES:
 * the usual range as factors of the default. */
#define SW__AT(n) offsetof(SW__S, n), sizeof(((SW__S *)0)->n)
#define SW__OUT(n, u)                                                          \
    {                                                                          \
#n, u, SW_FIELD_NUMBER, 0, SW__AT(n), 0, 0, 0, 0, 0, ""                \
    }
#define SW__OUT_WORD(n, w)                                                     \
    {                                                                          \
#n, "", SW_FIELD_WORD, w, SW__AT(n), 0, 0, 0, 0, 0, ""                 \
    }
#define SW__OUT_TEXT(n)                                                        \
    {                                                                          \
#n, "", SW_FIELD_TEXT, 0, SW__AT(n), 0, 0, 0, 0, 0, ""                 \
    }
#define SW__IN(n, u, min, max, low, high, source)                              \
    {                                                                          \
#n, u, SW_FIELD_NUMBER, 0, SW__AT(n), min, max, low, high, 0, source   \
    }
#define SW__IN_TIMES(n, u, min, max, low, high, source)                        \
    {                                                                          \
#n, u, SW_FIELD_NUMBER, 0, SW__AT(n), min, max, low, high, 1, source   \
    }
#define SW__IN_WORD(n, w, source)                                              \
    {                                                                          \
#n, "", SW_FIELD_WORD, w, SW__AT(n), 0, 0, 0, 0, 0, source             \
    }
#define SW__IN_TEXT(n, source)                                                 \
    {                                                                          \
#n, "", SW_FIELD_TEXT, 0, SW__AT(n), 0, 0, 0, 0, 0, source             \
    }
#define SW__END                                                                \
    {                                                                          \
        NULL, NULL, 0, 0, 0, 0, 0, 0, 0, 0, 0, NULL                            \
    }

#endif
