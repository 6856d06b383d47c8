/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Clamps: each by its kind, with the force it surely gives.
 *
 * Holding counts on the low end of a clamp's spread; what bends and marks the
 * part is its high end. Side pull and nut drag are kept as ranges, and the
 * worst of them is looked for.
 */
#include "job/clamp.h"

#include <string.h>

static const sw__alias plain_alias[] = {
    {"z_mm", "height"}, {"toward_deg", "toward stud"}, {NULL, NULL}};

/* ---- a force that is given ---- */

static int open_force(sw__clamp_draft *d)
{
    (void)d;
    return 0; /* no form of its own */
}

static int solve_force(sw__clamp_draft *d)
{
    sw_error inner;
    sw_clamp_in full = d->in;
    full.x_mm = d->at[0];
    full.y_mm = d->at[1];
    if (sw_clamp_resolve(&full, &inner))
        return sw__clamp_fail(d, &inner);
    sw_job_clamp_out *o = d->out;
    o->force_low_N = o->force_N = o->force_high_N = full.force_N;
    o->pull_low_N = full.pull_low_N;
    o->pull_high_N = full.pull_high_N;
    o->drag_low_N = full.drag_low_N;
    o->drag_high_N = full.drag_high_N;
    const int sideways = o->pull_low_N != 0 || o->pull_high_N != 0 ||
                         o->drag_low_N != 0 || o->drag_high_N != 0;
    if (sideways && !sw__is_set(d->in.toward_deg))
        return sw__fail_key(d->r, d->map, SW_ERR_MISSING, "toward stud",
                            "a clamp that pulls sideways needs the way to its "
                            "stud, such as toward stud: -x");
    return SW_OK;
}

static const sw__clamp_way force_way = {
    SW_CLAMP_FORCE, " x_mm y_mm toward_deg", 0, 0, 1, open_force, solve_force};

/* ---- all kinds ---- */

static const sw__clamp_way *const way[] = {&force_way,
                                           &sw__clamp_strap_way,
                                           &sw__clamp_screw_way,
                                           &sw__clamp_through_way,
                                           &sw__clamp_cylinder_way,
                                           &sw__clamp_swing_way,
                                           &sw__clamp_vacuum_way,
                                           &sw__clamp_bar_way};

static const sw__clamp_way *way_of(int kind)
{
    for (size_t i = 0; i < sizeof way / sizeof way[0]; i++)
        if (way[i]->kind == kind)
            return way[i];
    return NULL;
}

static int take_kind(sw__reader *r, int node, void *with)
{
    (void)r;
    (void)node;
    (void)with;
    return SW_OK; /* read before everything else */
}

static int take_place(sw__reader *r, int node, void *with)
{
    sw__clamp_draft *d = with;
    d->placed = 1;
    return sw__take_point(r, node, "place", d->at, NULL);
}

static int take_toward(sw__reader *r, int node, void *with)
{
    return sw__take_direction(r, node, "toward stud",
                              &((sw__clamp_draft *)with)->in.toward_deg);
}

static int take_tool(sw__reader *r, int node, void *with)
{
    sw__clamp_draft *d = with;
    return sw__take_text(r, node, "tool", d->tool, sizeof d->tool);
}

static int take_second(sw__reader *r, int node, void *with)
{
    sw__clamp_draft *d = with;
    d->second_placed = 1;
    return sw__take_point(r, node, "second place", d->second, NULL);
}

static int keep_pad(sw__reader *r, int node, void *with)
{
    (void)r;
    ((sw__clamp_draft *)with)->pad = node;
    return SW_OK;
}

#define KEYS_OF_ALL                                                            \
    {"kind", take_kind}, {"place", take_place}, {"toward stud", take_toward},  \
    {                                                                          \
        "pad", keep_pad                                                        \
    }
static const sw__special key_turned[] = {
    KEYS_OF_ALL, {"tool", take_tool}, {NULL, NULL}};
static const sw__special key_bar[] = {
    KEYS_OF_ALL, {"second place", take_second}, {NULL, NULL}};
static const sw__special key_plain[] = {KEYS_OF_ALL, {NULL, NULL}};

int sw__clamp_fail(sw__clamp_draft *d, const sw_error *inner)
{
    return sw__fail_inner(d->r, d->map, &d->shape, inner);
}

static int fail_no_tool(sw__clamp_draft *d)
{
    char message[200];
    const char *name[SW__JOB_TOOLS];
    for (int i = 0; i < d->job->tools; i++)
        name[i] = d->job->tool[i].name;
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "tool: ");
    sw__line_add_quoted(&line, d->tool);
    sw__line_add(&line, " is neither under tools nor a usual tool (strapwise "
                        "tool TORQUE lists them)");
    sw__add_nearest(&line, d->tool, name, d->job->tools);
    return sw__fail_at(d->r, sw__child(d->r, d->map, "tool"), SW_ERR_UNKNOWN,
                       "tool", message);
}

int sw__clamp_set_tool(sw__clamp_draft *d, double *torque_Nm)
{
    sw_error inner;
    sw_tool_in in;
    int found = 0;
    if (!d->tool[0])
        return SW_OK;
    sw_tool_defaults(&in);
    for (int i = 0; i < d->job->tools && !found; i++)
        if (strcmp(d->job->tool[i].name, d->tool) == 0) {
            in = d->job->tool[i].in;
            found = 1;
        }
    for (int i = 0; sw_tool_name(i) && !found; i++)
        if (strcmp(sw_tool_name(i), d->tool) == 0) {
            sw__copy(in.tool, sizeof in.tool, d->tool);
            found = 1;
        }
    if (!found)
        return fail_no_tool(d);
    in.torque_Nm = *torque_Nm;
    const sw_tool_out t = sw_tool(&in, &inner);
    if (t.status)
        return sw__clamp_fail(d, &inner);
    *torque_Nm = t.set_torque_Nm;
    d->out->setting = t.setting;
    d->out->torque_unit = t.torque_unit;
    d->out->warnings |= t.warnings;
    sw__copy(d->out->tool, sizeof d->out->tool, d->tool);
    return SW_OK;
}

int sw__clamp_note(sw__clamp_draft *d,
                   sw_assumption (*ask)(const sw__clamp_draft *, int))
{
    int status = SW_OK;
    for (int i = 0; !status; i++) {
        const sw_assumption a = ask(d, i);
        if (a.status)
            break;
        status = sw__job_note_as(d->job, d->in.name, &a, d->r->err);
    }
    return status;
}

static void give_name(char *name, size_t room, int number)
{
    if (name[0])
        return;
    sw__line line = sw__line_start(name, room);
    sw__line_add(&line, "C");
    sw__line_add_number(&line, number);
}

static int check_over_part(sw__clamp_draft *d, const double at[3],
                           const char *key)
{
    char message[160];
    if (sw__outline_holds(&d->job->outline, at[0], at[1]))
        return SW_OK;
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, d->in.name);
    sw__line_add(&line, " presses on air: its place lies outside the part's "
                        "outline");
    return sw__fail_at(d->r, sw__child(d->r, d->map, key), SW_ERR_CONFLICT, key,
                       message);
}

/* Place, height, direction and name: what does not depend on the kind. */
static int open_plain(sw__clamp_draft *d, const sw__clamp_way *w)
{
    sw_job *job = d->job;
    sw__reader *r = d->r;
    int status = SW_OK;
    if (!d->placed)
        return sw__fail_key(r, d->map, SW_ERR_MISSING, "place",
                            "a clamp needs its place, where it presses, such "
                            "as place: [15 mm, 80 mm]");
    if (w->stud && !sw__is_set(d->in.toward_deg))
        return sw__fail_key(r, d->map, SW_ERR_MISSING, "toward stud",
                            "a strap needs the way from its toe to its stud, "
                            "such as toward stud: -x");
    give_name(d->in.name, sizeof d->in.name, job->clamps + 1);
    status = sw__job_check_name(r, d->map, d->in.name, job->clamp[0].out.name,
                                sizeof job->clamp[0], job->clamps);
    if (status)
        return status;
    status = check_over_part(d, d->at, "place");
    if (!status && d->second_placed)
        status = check_over_part(d, d->second, "second place");
    if (status)
        return status;
    if (sw__is_set(d->in.z_mm))
        return SW_OK;
    d->in.z_mm = job->about.thickness_mm;
    return sw__job_note(job, d->in.name, "z_mm", "mm", d->in.z_mm, SW_UNSET,
                        SW_UNSET, "the top of the part", r->err);
}

static void start(sw__clamp_draft *d, const sw__clamp_way *w,
                  sw__job_clamp *clamp)
{
    sw_clamp_defaults(&d->in);
    d->form[0] = (sw__form){SW_STRUCT_CLAMP_IN, &d->in, w->skip, plain_alias};
    d->shape = (sw__shape){.what = "a clamp of this kind",
                           .form = d->form,
                           .forms = 1,
                           .special = w->turned && !w->stud ? key_turned
                                      : w->turned           ? key_turned
                                      : w->pads > 1         ? key_bar
                                                            : key_plain,
                           .with = d};
    d->shape.forms += w->open(d);
    d->out = &clamp->out;
    sw_job_clamp_out *o = d->out;
    memset(o, 0, sizeof *o);
    o->clamp_kind = w->kind;
    for (int i = 0; sw_field_at(SW_STRUCT_JOB_CLAMP_OUT, i); i++) {
        const sw_field *f = sw_field_at(SW_STRUCT_JOB_CLAMP_OUT, i);
        const double open = SW_UNSET;
        if (f->type == SW_FIELD_NUMBER)
            memcpy((char *)o + f->offset, &open, sizeof open);
    }
    o->pull_low_N = o->pull_high_N = o->drag_low_N = o->drag_high_N = 0;
    o->clamp_fault = SW_CLAMP_FAULT_NONE;
}

/* A bond peels from its edge, which a force in its middle cannot show. */
static int is_glue(const sw__reader *r, int node)
{
    return r->tree->node[node].kind == SW__TREE_TEXT &&
           strcmp(sw__text_of(r->tree, node), "adhesive") == 0;
}

static int read_kind(sw__reader *r, int map, int *kind)
{
    int status = sw__want_map(r, map, "clamps", "kind");
    if (status)
        return status;
    const int node = sw__child(r, map, "kind");
    if (!node)
        return sw__fail_key(r, map, SW_ERR_MISSING, "kind",
                            "a clamp needs its kind, such as kind: strap, or "
                            "kind: force for one that is given");
    if (is_glue(r, node))
        return sw__fail_at(r, node, SW_ERR_UNKNOWN, "kind",
                           "kind: a job counts on clamps that press; a bond "
                           "peels from its edge: ask strapwise adhesive");
    return sw__take_word(r, node, "kind", SW_WORDS_CLAMP_KIND, kind);
}

/* The second pad of a bar: a clamp beside the first, "C3 second". */
static int add_second(sw__clamp_draft *d)
{
    sw_job *job = d->job;
    sw__job_clamp *first = &job->clamp[job->clamps - 1];
    sw__job_clamp *clamp = &job->clamp[job->clamps];
    *clamp = *first;
    sw_job_clamp_out *o = &clamp->out;
    sw__line line = sw__line_start(o->name, sizeof o->name);
    sw__line_add(&line, first->out.name);
    sw__line_add(&line, " second");
    o->x_mm = d->second[0];
    o->y_mm = d->second[1];
    o->force_low_N = o->force_N = o->force_high_N = d->second_N;
    clamp->second = 1;
    const int status =
        sw__job_check_name(d->r, d->map, o->name, job->clamp[0].out.name,
                           sizeof *clamp, job->clamps);
    job->clamps++;
    return status ? status : sw__clamp_place(d, o);
}

static int take_clamp(sw_job *job, sw__reader *r, int map)
{
    int kind = 0;
    int status = read_kind(r, map, &kind);
    if (status)
        return status;
    const sw__clamp_way *w = way_of(kind);
    if (job->clamps + w->pads > SW__JOB_CONTACTS)
        return sw__fail_at(r, map, SW_ERR_RANGE, "clamps",
                           "clamps: at most 64 can be given, a bar counting "
                           "twice");
    sw__job_clamp *clamp = &job->clamp[job->clamps];
    sw__clamp_draft d;
    memset(&d, 0, sizeof d);
    d.job = job;
    d.r = r;
    d.map = map;
    start(&d, w, clamp);
    status = sw__read_map(r, map, &d.shape);
    if (!status)
        status = open_plain(&d, w);
    if (status)
        return status;
    sw__copy(clamp->out.name, sizeof clamp->out.name, d.in.name);
    clamp->out.x_mm = d.at[0];
    clamp->out.y_mm = d.at[1];
    clamp->out.z_mm = d.in.z_mm;
    clamp->out.toward_deg = d.in.toward_deg;
    clamp->held_friction = d.in.held_friction;
    status = w->solve(&d);
    if (!status && d.pad)
        status = sw__clamp_pad(&d);
    if (!status)
        status = sw__clamp_place(&d, d.out);
    if (status)
        return status;
    job->about.warnings |= clamp->out.warnings;
    if (sw__is_set(d.in.held_friction))
        job->about.warnings |= sw__job_friction_warning(d.in.held_friction);
    job->clamps++;
    return w->pads > 1 ? add_second(&d) : SW_OK;
}

int sw__job_clamps(sw_job *job, sw__reader *r, int list)
{
    return sw__job_each(job, r, list, "clamps", SW__JOB_CONTACTS, take_clamp);
}
