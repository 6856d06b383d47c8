/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fixture parts: a support, clamp, stop, load or weight with nothing left open.
 */
#include "hold/fixture.h"

#include <string.h>

#define FRICTION 0.15 /* a field list tells the range */
#define STIFFNESS_N_PER_MM 1e5

/* What one kind of part is: where it keeps its marks, what fills it. */
typedef struct {
    int structure;
    size_t size, assumed, seal; /* offsets in the struct */
    int (*fill)(void *in, const sw__filler *fill, sw_error *err);
} kind;

typedef union {
    sw_support_in support;
    sw_clamp_in clamp;
    sw_stop_in stop;
    sw_load_in load;
    sw_weight_in weight;
} part;

static int need(double value, const char *field, sw_error *err)
{
    if (sw__is_set(value))
        return SW_OK;
    char message[80];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, field);
    sw__line_add(&line, ": missing");
    return sw__fail(err, SW_ERR_MISSING, field, message);
}

static int need_place(double x, double y, sw_error *err)
{
    const int status = need(x, "x_mm", err);
    return status ? status : need(y, "y_mm", err);
}

static int fill_support(void *in, const sw__filler *fill, sw_error *err)
{
    sw_support_in *s = in;
    sw__fill_number(fill, "z_mm", 0);
    sw__fill_number(fill, "friction", FRICTION);
    sw__fill_number(fill, "stiffness_N_per_mm", STIFFNESS_N_PER_MM);
    sw__fill_word(fill, "needed", SW_NEEDED_REST);
    sw__fill_number(fill, "least_N", 0);
    return need_place(s->x_mm, s->y_mm, err);
}

static int in_order(double low, double high, const char *field, sw_error *err)
{
    if (low <= high)
        return SW_OK;
    char message[100];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, field);
    sw__line_add(&line, ": must not be above its other end, ");
    sw__line_add_number(&line, high);
    sw__line_add(&line, " N");
    return sw__fail(err, SW_ERR_CONFLICT, field, message);
}

static int fill_clamp(void *in, const sw__filler *fill, sw_error *err)
{
    sw_clamp_in *c = in;
    int status = need_place(c->x_mm, c->y_mm, err);
    if (!status)
        status = need(c->force_N, "force_N", err);
    sw__fill_number(fill, "z_mm", 0);
    sw__fill_number(fill, "toward_deg", 0);
    sw__fill_number(fill, "pull_low_N",
                    sw__is_set(c->pull_high_N) ? c->pull_high_N : 0);
    sw__fill_number(fill, "pull_high_N", c->pull_low_N);
    sw__fill_number(fill, "drag_low_N",
                    sw__is_set(c->drag_high_N) ? c->drag_high_N : 0);
    sw__fill_number(fill, "drag_high_N", c->drag_low_N);
    sw__fill_number(fill, "held_friction", 0);
    if (!status)
        status = in_order(c->pull_low_N, c->pull_high_N, "pull_low_N", err);
    if (!status)
        status = in_order(c->drag_low_N, c->drag_high_N, "drag_low_N", err);
    return status;
}

static int fill_stop(void *in, const sw__filler *fill, sw_error *err)
{
    sw_stop_in *s = in;
    sw__fill_number(fill, "z_mm", 0);
    sw__fill_number(fill, "friction", 0);
    sw__fill_number(fill, "least_N", 0);
    const int status = need_place(s->x_mm, s->y_mm, err);
    return status ? status : need(s->push_deg, "push_deg", err);
}

static int fill_load(void *in, const sw__filler *fill, sw_error *err)
{
    static const char *const open[] = {"force_x_N",   "force_y_N",
                                       "force_z_N",   "moment_x_Nm",
                                       "moment_y_Nm", "moment_z_Nm"};
    sw_load_in *p = in;
    for (size_t i = 0; i < sizeof open / sizeof open[0]; i++)
        sw__fill_number(fill, open[i], 0);
    const int status = need_place(p->x_mm, p->y_mm, err);
    return status ? status : need(p->z_mm, "z_mm", err);
}

static int fill_weight(void *in, const sw__filler *fill, sw_error *err)
{
    sw_weight_in *w = in;
    sw__fill_number(fill, "z_mm", 0);
    const int status = need(w->weight_N, "weight_N", err);
    return status ? status : need_place(w->x_mm, w->y_mm, err);
}

#define KIND(type, number, fill)                                               \
    {                                                                          \
        number, sizeof(type), offsetof(type, assumed), offsetof(type, seal),   \
            fill                                                               \
    }
static const kind support_kind =
    KIND(sw_support_in, SW_STRUCT_SUPPORT_IN, fill_support);
static const kind clamp_kind =
    KIND(sw_clamp_in, SW_STRUCT_CLAMP_IN, fill_clamp);
static const kind stop_kind = KIND(sw_stop_in, SW_STRUCT_STOP_IN, fill_stop);
static const kind load_kind = KIND(sw_load_in, SW_STRUCT_LOAD_IN, fill_load);
static const kind weight_kind =
    KIND(sw_weight_in, SW_STRUCT_WEIGHT_IN, fill_weight);

static int resolve(void *in, const kind *k, sw_error *err)
{
    sw__clear(err);
    if (!in)
        return sw__fail_null(err, "in");
    part open;
    memcpy(&open, in, k->size);
    char *base = (char *)&open;
    uint64_t *assumed = (uint64_t *)(void *)(base + k->assumed);
    uint64_t *seal = (uint64_t *)(void *)(base + k->seal);
    const sw__filler fill = {base, k->structure, assumed};
    int status = sw__reopen(&open, k->structure, assumed, seal, err);
    if (!status)
        status = sw__check_input(&open, k->structure, err);
    if (!status)
        status = k->fill(&open, &fill, err);
    if (status)
        return status;
    *seal = sw__seal(&open, k->structure, *assumed);
    memcpy(in, &open, k->size);
    return SW_OK;
}

static sw_assumption describe(const void *in, const kind *k, int index,
                              sw_error *err)
{
    part full;
    sw__clear(err);
    if (!in)
        return sw__no_assumption(sw__fail_null(err, "in"));
    memcpy(&full, in, k->size);
    const int status = resolve(&full, k, err);
    if (status)
        return sw__no_assumption(status);
    const uint64_t *assumed =
        (const uint64_t *)(const void *)((const char *)&full + k->assumed);
    return sw__assumed(&full, k->structure, *assumed, index, err);
}

int sw_support_resolve(sw_support_in *in, sw_error *err)
{
    return resolve(in, &support_kind, err);
}

int sw_clamp_resolve(sw_clamp_in *in, sw_error *err)
{
    return resolve(in, &clamp_kind, err);
}

int sw_stop_resolve(sw_stop_in *in, sw_error *err)
{
    return resolve(in, &stop_kind, err);
}

int sw_load_resolve(sw_load_in *in, sw_error *err)
{
    return resolve(in, &load_kind, err);
}

int sw_weight_resolve(sw_weight_in *in, sw_error *err)
{
    return resolve(in, &weight_kind, err);
}

sw_assumption sw_support_assumed(const sw_support_in *in, int index,
                                 sw_error *err)
{
    return describe(in, &support_kind, index, err);
}

sw_assumption sw_clamp_assumed(const sw_clamp_in *in, int index, sw_error *err)
{
    return describe(in, &clamp_kind, index, err);
}

sw_assumption sw_stop_assumed(const sw_stop_in *in, int index, sw_error *err)
{
    return describe(in, &stop_kind, index, err);
}

void sw_support_defaults(sw_support_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    in->x_mm = in->y_mm = in->z_mm = SW_UNSET;
    in->friction = in->stiffness_N_per_mm = in->least_N = SW_UNSET;
}

void sw_clamp_defaults(sw_clamp_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    in->x_mm = in->y_mm = in->z_mm = in->force_N = in->toward_deg = SW_UNSET;
    in->pull_low_N = in->pull_high_N = SW_UNSET;
    in->drag_low_N = in->drag_high_N = in->held_friction = SW_UNSET;
}

void sw_stop_defaults(sw_stop_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    in->x_mm = in->y_mm = in->z_mm = in->push_deg = SW_UNSET;
    in->friction = in->least_N = SW_UNSET;
}

void sw_load_defaults(sw_load_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    in->x_mm = in->y_mm = in->z_mm = SW_UNSET;
    in->force_x_N = in->force_y_N = in->force_z_N = SW_UNSET;
    in->moment_x_Nm = in->moment_y_Nm = in->moment_z_Nm = SW_UNSET;
}

void sw_weight_defaults(sw_weight_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    in->weight_N = in->x_mm = in->y_mm = in->z_mm = SW_UNSET;
}
