/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Json answer: the keys of each topic, first those that are promised to stay,
 * in their order, then every other field of the result.
 */
#include "cli.h"

#include <string.h>

/* Keys that are a field in another unit, or no field at all. */
static const struct {
    const char *key, *field, *unit;
    int kind;
} derived[] = {
    {"torque_inlbf", "torque_Nm", "in-lbf", SW_KIND_TORQUE},
    {"torque_ftlbf", "torque_Nm", "ft-lbf", SW_KIND_TORQUE},
    {"preload_lbf", "preload_N", "lbf", SW_KIND_FORCE},
};

static const char *const thread_keys[] = {
    "designation",       "nominal_mm",
    "pitch_mm",          "pitch_diameter_mm",
    "root_diameter_mm",  "minor_diameter_mm",
    "stress_area_mm2",   "across_flats_mm",
    "clearance_hole_mm", NULL};

static const char *const torque_keys[] = {"thread",
                                          "torque_Nm",
                                          "torque_inlbf",
                                          "torque_ftlbf",
                                          "preload_N",
                                          "preload_lbf",
                                          "nut_factor",
                                          "stretch_share",
                                          "thread_share",
                                          "seat_share",
                                          "loosening_torque_Nm",
                                          "yield_use",
                                          "turn_from_snug_deg",
                                          NULL};

static const char *const strap_keys[] = {"preload_N",
                                         "lever_ratio",
                                         "tilt_deg",
                                         "toe_force_level_N",
                                         "toe_force_N",
                                         "toe_force_low_N",
                                         "toe_force_high_N",
                                         "toe_force_error_pct",
                                         "side_load_on_strap_N",
                                         "heel_side_N",
                                         "side_pull_N",
                                         "side_pull_low_N",
                                         "side_pull_high_N",
                                         "pull_direction",
                                         "drag_N",
                                         "drag_low_N",
                                         "drag_high_N",
                                         "net_part_force_N",
                                         "net_part_angle_deg",
                                         "toe_friction_use",
                                         "heel_force_N",
                                         "unheld_N",
                                         "seat_offset_mm",
                                         "nut_travel_mm",
                                         "seat_state",
                                         "stud_bending_Nm",
                                         "foot_bending_Nm",
                                         "stud_stress_MPa",
                                         "strap_stress_MPa",
                                         "strap_sag_mm",
                                         "top_mm",
                                         "band",
                                         NULL};

static const char *const tool_keys[] = {"torque_Nm", "torque_inlbf",
                                        "torque_ftlbf", NULL};
static const char *const calibrate_keys[] = {"nut_factor",
                                             "nut_factor_low",
                                             "nut_factor_high",
                                             "sigma_ln",
                                             "scatter_pct",
                                             "slope",
                                             "n",
                                             NULL};

static const char *const no_keys[] = {NULL};

static const char *const *keys_of(const topic *t)
{
    switch (t->out) {
    case SW_STRUCT_THREAD_OUT:
        return thread_keys;
    case SW_STRUCT_TORQUE_OUT:
        return torque_keys;
    case SW_STRUCT_STRAP_OUT:
        return strap_keys;
    case SW_STRUCT_TOOL_OUT:
    case SW_STRUCT_TIGHT_OUT:
        return tool_keys;
    case SW_STRUCT_CALIBRATE_OUT:
        return calibrate_keys;
    default:
        return no_keys;
    }
}

static void key(json *j, request *r, const topic *t, answer *a,
                const char *name)
{
    const slot direct = topic_output(t, a, name);
    if (direct.field) {
        json_slot(j, direct);
        return;
    }
    for (size_t i = 0; i < sizeof derived / sizeof derived[0]; i++)
        if (strcmp(derived[i].key, name) == 0) {
            const slot s = topic_output(t, a, derived[i].field);
            json_number(
                j, name,
                in_unit(slot_number(s), derived[i].unit, derived[i].kind));
            return;
        }
    /* the thread as the table spells it, not as it was typed */
    const sw_thread_out thread = sw_thread(r->question.in.torque.thread, NULL);
    json_text(j, name, thread.status ? NULL : thread.designation);
}

void json_fields(json *j, request *r, const topic *t, answer *a)
{
    const char *const *first = keys_of(t);
    for (int i = 0; first[i]; i++)
        key(j, r, t, a, first[i]);
    for (int i = 0;; i++) {
        const slot s = topic_output_at(t, a, i);
        if (!s.field)
            break;
        int done = 0;
        for (int k = 0; first[k] && !done; k++)
            done = strcmp(first[k], s.field->name) == 0;
        if (!done)
            json_slot(j, s);
    }
}

void json_not_checked(json *j, const topic *t)
{
    json_open(j, "not_checked", '[');
    for (int i = 0; t->not_checked && t->not_checked(i); i++)
        json_text(j, NULL, t->not_checked(i));
    json_close(j, ']');
}

void json_assumed(json *j, const topic *t, const question *q,
                  const request *own)
{
    json_open(j, "assumed", '[');
    for (int i = 0; t->assumed; i++) {
        const sw_assumption a = t->assumed(q, i, NULL);
        if (a.status)
            break;
        if (a.word[0] || is_known(a.value)) /* else it entered nothing */
            json_assumed_one(j, &a);
    }
    for (int i = 0; own; i++) {
        const sw_assumption a = find_assumed(own, i);
        if (a.status)
            break;
        json_assumed_one(j, &a);
    }
    json_close(j, ']');
}
