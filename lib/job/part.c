/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Part: its outline, thickness and weight.
 *
 *   (1)  W = rho A t g,   g = 9.80665 m/s2 (standard gravity)
 *
 * A given weight or mass replaces it; a part with pockets is lighter.
 */
#include "job/job.h"

#include <strapwise/material.h>

#include <string.h>

#define GRAVITY 9.80665 /* m/s2, exact by definition */
#define FAR 1e5

/* What the section said; SW_UNSET where it said nothing. */
typedef struct {
    sw_job *job;
    double size[3], thickness, weight, mass, density, raised, centre[3];
    int has_size, has_centre, has_centre_z;
    int outline; /* node */
} draft;

static int take_name(sw__reader *r, int node, void *with)
{
    draft *d = with;
    return sw__take_text(r, node, "name", d->job->about.name,
                         sizeof d->job->about.name);
}

static int take_material(sw__reader *r, int node, void *with)
{
    draft *d = with;
    sw_error inner;
    char *to = d->job->about.material;
    int status =
        sw__take_text(r, node, "material", to, sizeof d->job->about.material);
    if (status)
        return status;
    const sw_material_out m = sw_material(to, &inner);
    if (m.status)
        return sw__fail_at(r, node, m.status, "material", inner.message);
    char named[24];
    sw__copy(named, sizeof named, to);
    sw__copy(to, sizeof d->job->about.material, m.material);
    if (sw__edits(named, m.material) != 0) {
        char source[120];
        sw__line line = sw__line_start(source, sizeof source);
        sw__line_add(&line, "its row stands for ");
        sw__line_add(&line, named);
        sw__line_add(&line, " (");
        sw__line_add(&line, m.label);
        sw__line_add(&line, ")");
        status = sw__job_note_word(d->job, "part", "material", m.material,
                                   source, r->err);
        if (status)
            return status;
    }
    d->job->about.warnings |= m.warnings;
    return SW_OK;
}

static int take_size(sw__reader *r, int node, void *with)
{
    draft *d = with;
    d->has_size = 1;
    const int status = sw__take_point(r, node, "size", d->size, NULL);
    if (!status && !(d->size[0] > 0 && d->size[1] > 0))
        return sw__fail_at(r, node, SW_ERR_RANGE, "size",
                           "size: both lengths must be above 0 mm");
    return status;
}

static int take_outline(sw__reader *r, int node, void *with)
{
    ((draft *)with)->outline = node;
    return sw__want_list(r, node, "outline",
                         "[[0 mm, 0 mm], [90 mm, 0 mm], [0 mm, 60 mm]]");
}

static int take_thickness(sw__reader *r, int node, void *with)
{
    return sw__take_number(r, node, "thickness", "mm", 1e-3, 5000,
                           &((draft *)with)->thickness);
}

static int take_weight(sw__reader *r, int node, void *with)
{
    return sw__take_number(r, node, "weight", "N", 0, 1e7,
                           &((draft *)with)->weight);
}

static int take_mass(sw__reader *r, int node, void *with)
{
    return sw__take_number(r, node, "mass", "kg", 0, 1e6,
                           &((draft *)with)->mass);
}

static int take_density(sw__reader *r, int node, void *with)
{
    return sw__take_number(r, node, "density", "kg/m3", 1, 3e4,
                           &((draft *)with)->density);
}

static int take_raised(sw__reader *r, int node, void *with)
{
    return sw__take_number(r, node, "raised", "mm", 0, 5000,
                           &((draft *)with)->raised);
}

static int take_centre(sw__reader *r, int node, void *with)
{
    draft *d = with;
    d->has_centre = 1;
    return sw__take_point(r, node, "center of gravity", d->centre,
                          &d->has_centre_z);
}

static const sw__special part_key[] = {{"name", take_name},
                                       {"material", take_material},
                                       {"size", take_size},
                                       {"outline", take_outline},
                                       {"thickness", take_thickness},
                                       {"weight", take_weight},
                                       {"mass", take_mass},
                                       {"density", take_density},
                                       {"raised", take_raised},
                                       {"center of gravity", take_centre},
                                       {NULL, NULL}};

static int read_corners(draft *d, sw__reader *r)
{
    sw__outline *o = &d->job->outline;
    const sw__node *list = &r->tree->node[d->outline];
    if (list->count < 3 || list->count > SW__OUTLINE_CORNERS)
        return sw__fail_at(r, d->outline, SW_ERR_RANGE, "outline",
                           "outline: 3 to 200 corners are wanted");
    for (int i = list->first; i; i = r->tree->node[i].next) {
        double at[3];
        const int status = sw__take_point(r, i, "outline", at, NULL);
        if (status)
            return status;
        o->x[o->corners] = at[0];
        o->y[o->corners++] = at[1];
    }
    const int last = o->corners - 1;
    if (last > 2 && hypot(o->x[last] - o->x[0], o->y[last] - o->y[0]) < 1e-6)
        return sw__fail_at(r, d->outline, SW_ERR_CONFLICT, "outline",
                           "outline: its last corner is the first one again; "
                           "leave it out, the outline closes by itself");
    sw__crossing found;
    if (sw__outline_simple(o, &found))
        return SW_OK;
    char message[160];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "outline: the edges after corner ");
    sw__line_add_number(&line, found.first + 1);
    sw__line_add(&line, " and corner ");
    sw__line_add_number(&line, found.second + 1);
    sw__line_add(&line, " cross or touch; list the corners in turn, each once");
    return sw__fail_at(r, d->outline, SW_ERR_CONFLICT, "outline", message);
}

static int open_outline(draft *d, sw__reader *r, int map)
{
    sw__outline *o = &d->job->outline;
    int status = SW_OK;
    if (d->has_size == (d->outline != 0))
        return sw__fail_key(
            r, map, d->has_size ? SW_ERR_CONFLICT : SW_ERR_MISSING, "outline",
            d->has_size ? "the part has a size and an outline; give one of them"
                        : "the part needs its size, such as size: [240 mm, 160 "
                          "mm], or an outline");
    if (d->has_size) {
        const double x[] = {0, d->size[0], d->size[0], 0};
        const double y[] = {0, 0, d->size[1], d->size[1]};
        memcpy(o->x, x, sizeof x);
        memcpy(o->y, y, sizeof y);
        o->corners = 4;
    } else {
        status = read_corners(d, r);
    }
    if (!status)
        sw__outline_measure(o);
    return status;
}

/* Weight given, from a mass, or by equation (1). */
static int open_weight(draft *d, sw__reader *r, int map)
{
    sw_job_out *a = &d->job->about;
    const int weight = sw__is_set(d->weight), mass = sw__is_set(d->mass);
    if (weight && mass)
        return sw__fail_key(r, map, SW_ERR_CONFLICT, "weight",
                            "the part has a weight and a mass; give one of "
                            "them");
    if (weight || mass) {
        a->weight_N = weight ? d->weight : d->mass * GRAVITY;
        return SW_OK;
    }
    double density = d->density;
    const char *source = "the density given, times outline and thickness";
    char from[160];
    if (!sw__is_set(density) && a->material[0]) {
        const sw_material_out m = sw_material(a->material, NULL);
        density = m.status ? SW_UNSET : m.density_kg_per_m3;
        sw__line line = sw__line_start(from, sizeof from);
        sw__line_add(&line, "density of ");
        sw__line_add(&line, m.label);
        sw__line_add(&line, " times outline and thickness");
        source = from;
    }
    if (!sw__is_set(density))
        return sw__fail_key(r, map, SW_ERR_MISSING, "material",
                            "the part needs a material of the table (strapwise "
                            "materials), a density, a mass or a weight");
    a->weight_N = density * 1e-9 * a->area_mm2 * a->thickness_mm * GRAVITY;
    return sw__job_note(d->job, "part", "weight_N", "N", a->weight_N, SW_UNSET,
                        SW_UNSET, source, r->err);
}

static int finish(draft *d, sw__reader *r, int map)
{
    sw_job_out *a = &d->job->about;
    const sw__outline *o = &d->job->outline;
    int status = open_outline(d, r, map);
    if (status)
        return status;
    if (!sw__is_set(d->thickness))
        return sw__fail_key(r, map, SW_ERR_MISSING, "thickness",
                            "the part needs its thickness, such as thickness: "
                            "12 mm");
    a->thickness_mm = d->thickness;
    a->length_mm = o->right - o->left;
    a->width_mm = o->back - o->front;
    a->area_mm2 = o->area_mm2;
    a->corners = o->corners;
    status = open_weight(d, r, map);
    a->raised_mm = sw__is_set(d->raised) ? d->raised : 0;
    if (!status && !sw__is_set(d->raised))
        status = sw__job_note(d->job, "part", "raised_mm", "mm", 0, SW_UNSET,
                              SW_UNSET,
                              "the supports stand on the table, or "
                              "are the table",
                              r->err);
    a->centre_x_mm = d->has_centre ? d->centre[0] : o->centre_x;
    a->centre_y_mm = d->has_centre ? d->centre[1] : o->centre_y;
    a->centre_z_mm = d->has_centre_z ? d->centre[2] : a->thickness_mm / 2;
    return status;
}

int sw__job_part(sw_job *job, sw__reader *r, int map)
{
    draft d;
    memset(&d, 0, sizeof d);
    d.job = job;
    d.thickness = d.weight = d.mass = d.density = d.raised = SW_UNSET;
    const sw__shape shape = {
        .what = "the part",
        .special = part_key,
        .with = &d,
        .reserved = "tolerance,flatness,free shape,free flatness,bow,twist,"
                    "restraint,stock,stages,"};
    int status = sw__read_map(r, map, &shape);
    return status ? status : finish(&d, r, map);
}

/* ---- friction ---- */

static int take_friction(sw__reader *r, int node, const char *key, double *to)
{
    return sw__take_number(r, node, key, "", 0, 2, to);
}

static int take_support_friction(sw__reader *r, int node, void *with)
{
    return take_friction(r, node, "supports",
                         &((sw_job *)with)->support_friction);
}

static int take_stop_friction(sw__reader *r, int node, void *with)
{
    return take_friction(r, node, "stops", &((sw_job *)with)->stop_friction);
}

static int take_toe_friction(sw__reader *r, int node, void *with)
{
    return sw__take_number(r, node, "toes", "", 0, 1,
                           &((sw_job *)with)->toe_friction);
}

int sw__job_friction(sw_job *job, sw__reader *r, int map)
{
    static const sw__special key[] = {{"supports", take_support_friction},
                                      {"stops", take_stop_friction},
                                      {"toes", take_toe_friction},
                                      {NULL, NULL}};
    const sw__shape shape = {.what = "friction", .special = key, .with = job};
    return sw__read_map(r, map, &shape);
}

uint64_t sw__job_friction_warning(double friction)
{
    return friction > 0.3 ? SW_WARN_FRICTION_HIGH : 0;
}
