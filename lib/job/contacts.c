/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Contacts: the supports that carry the part and the stops it is pushed
 * against.
 */
#include "job/job.h"

#include <string.h>

#define STOP_OFF 1.0 /* mm */

static const sw__alias contact_alias[] = {{"z_mm", "height"}, {NULL, NULL}};

/* A place in the plane, and whether it was given. */
typedef struct {
    double at[3];
    int given;
    double push_deg;
} placed;

static int take_place(sw__reader *r, int node, void *with)
{
    placed *p = with;
    p->given = 1;
    return sw__take_point(r, node, "place", p->at, NULL);
}

static int take_push(sw__reader *r, int node, void *with)
{
    return sw__take_direction(r, node, "push", &((placed *)with)->push_deg);
}

static int need_place(sw__reader *r, int map, const placed *p, const char *what)
{
    char message[120];
    if (p->given)
        return SW_OK;
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, what);
    sw__line_add(&line, " needs its place, such as place: [20 mm, 35 mm]");
    return sw__fail_key(r, map, SW_ERR_MISSING, "place", message);
}

/* "S3 stands beside the part ..." */
static int fail_place(sw__reader *r, int map, const char *name, const char *why)
{
    char message[200];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, name);
    sw__line_add(&line, why);
    return sw__fail_at(r, sw__child(r, map, "place"), SW_ERR_CONFLICT, "place",
                       message);
}

static void give_name(char *name, size_t room, const char *letter, int number)
{
    if (name[0])
        return;
    sw__line line = sw__line_start(name, room);
    sw__line_add(&line, letter);
    sw__line_add_number(&line, number);
}

static int take_support(sw_job *job, sw__reader *r, int map)
{
    static const sw__special key[] = {{"place", take_place}, {NULL, NULL}};
    sw_support_in s;
    sw_error inner;
    placed p = {.given = 0};
    sw_support_defaults(&s);
    const sw__form form = {SW_STRUCT_SUPPORT_IN, &s, " x_mm y_mm",
                           contact_alias};
    const sw__shape shape = {.what = "a support",
                             .form = &form,
                             .forms = 1,
                             .special = key,
                             .with = &p};
    int status = sw__read_map(r, map, &shape);
    if (!status)
        status = need_place(r, map, &p, "a support");
    if (status)
        return status;
    s.x_mm = p.at[0];
    s.y_mm = p.at[1];
    if (!sw__is_set(s.friction))
        s.friction = job->support_friction;
    give_name(s.name, sizeof s.name, "S", job->supports + 1);
    status = sw__job_check_name(r, map, s.name, job->support, sizeof s,
                                job->supports);
    if (status)
        return status;
    if (sw_support_resolve(&s, &inner))
        return sw__fail_inner(r, map, &shape, &inner);
    if (!sw__outline_holds(&job->outline, s.x_mm, s.y_mm))
        return fail_place(r, map, s.name,
                          " stands beside the part: a support must lie "
                          "within its outline");
    for (int i = 0; i < job->supports; i++)
        if (hypot(job->support[i].x_mm - s.x_mm,
                  job->support[i].y_mm - s.y_mm) < 1e-6)
            return fail_place(r, map, s.name,
                              " stands where another support stands");
    job->about.warnings |= sw__job_friction_warning(s.friction);
    for (int i = 0; !status; i++) {
        const sw_assumption a = sw_support_assumed(&s, i, NULL);
        if (a.status)
            break;
        status = sw__job_note_as(job, s.name, &a, r->err);
    }
    job->support[job->supports++] = s;
    return status;
}

/* "A" to "Z", then "AA" */
static void give_letter(char *name, int index)
{
    if (name[0])
        return;
    const char last = (char)('A' + index % 26);
    const char first = (char)('A' + index / 26 - 1);
    size_t n = 0;
    if (index >= 26)
        name[n++] = first;
    name[n++] = last;
    name[n] = '\0';
}

/* A stop touches the part's side: not over it, and not in the middle of it
 * unless there is a hole, which the outline does not know. */
static int check_height(sw_job *job, sw__reader *r, int map,
                        const sw_stop_in *s)
{
    char message[160];
    const double t = job->about.thickness_mm;
    const double deg = SW__RAD(s->push_deg);
    if (s->z_mm > t || s->z_mm < 0) {
        sw__line line = sw__line_start(message, sizeof message);
        sw__line_add(&line, s->name);
        sw__line_add(&line, " pushes past the part: its height must be from 0 "
                            "to the thickness, ");
        sw__line_add_number(&line, t);
        sw__line_add(&line, " mm");
        const int node = sw__child(r, map, "height");
        return node ? sw__fail_at(r, node, SW_ERR_CONFLICT, "height", message)
                    : sw__fail_key(r, map, SW_ERR_CONFLICT, "height", message);
    }
    /* within, also where it is a little off the side that it pushes */
    if (!sw__outline_holds(&job->outline, s->x_mm - STOP_OFF * cos(deg),
                           s->y_mm - STOP_OFF * sin(deg)))
        return SW_OK;
    return sw__job_remark(job, s->name,
                          "the stop stands within the part's outline: right "
                          "only for a pin in a hole or pocket of it",
                          r->err);
}

static int take_stop(sw_job *job, sw__reader *r, int map)
{
    static const sw__special key[] = {
        {"place", take_place}, {"push", take_push}, {NULL, NULL}};
    sw_stop_in s;
    sw_error inner;
    placed p = {.push_deg = SW_UNSET};
    sw_stop_defaults(&s);
    const sw__form form = {SW_STRUCT_STOP_IN, &s, " x_mm y_mm push_deg",
                           contact_alias};
    const sw__shape shape = {.what = "a stop",
                             .form = &form,
                             .forms = 1,
                             .special = key,
                             .with = &p};
    int status = sw__read_map(r, map, &shape);
    if (!status)
        status = need_place(r, map, &p, "a stop");
    if (!status && !sw__is_set(p.push_deg))
        status = sw__fail_key(r, map, SW_ERR_MISSING, "push",
                              "a stop needs the way it pushes the part, such "
                              "as push: +x");
    if (status)
        return status;
    s.x_mm = p.at[0];
    s.y_mm = p.at[1];
    s.push_deg = p.push_deg;
    if (!sw__is_set(s.friction))
        s.friction = job->stop_friction;
    give_letter(s.name, job->stops);
    status =
        sw__job_check_name(r, map, s.name, job->stop, sizeof s, job->stops);
    if (status)
        return status;
    if (sw_stop_resolve(&s, &inner))
        return sw__fail_inner(r, map, &shape, &inner);
    if (!sw__outline_pushed(&job->outline, s.x_mm, s.y_mm, s.push_deg))
        return fail_place(r, map, s.name,
                          " pushes past the part: there is no side of it "
                          "ahead; check place and push");
    status = check_height(job, r, map, &s);
    if (status)
        return status;
    job->about.warnings |= sw__job_friction_warning(s.friction);
    for (int i = 0; !status; i++) {
        const sw_assumption a = sw_stop_assumed(&s, i, NULL);
        if (a.status)
            break;
        status = sw__job_note_as(job, s.name, &a, r->err);
    }
    job->stop[job->stops++] = s;
    return status;
}

int sw__job_each(sw_job *job, sw__reader *r, int list, const char *key,
                 int most, int (*take)(sw_job *, sw__reader *, int map))
{
    char example[80];
    sw__line line = sw__line_start(example, sizeof example);
    sw__line_add(&line, "lines that begin with \"- \" below ");
    sw__line_add(&line, key);
    int status = sw__want_list(r, list, key, example);
    if (status)
        return status;
    int count = 0;
    for (int i = r->tree->node[list].first; i && !status;
         i = r->tree->node[i].next) {
        if (count++ == most) {
            char message[80];
            line = sw__line_start(message, sizeof message);
            sw__line_add(&line, key);
            sw__line_add(&line, ": at most ");
            sw__line_add_number(&line, most);
            sw__line_add(&line, " can be given");
            return sw__fail_at(r, i, SW_ERR_RANGE, key, message);
        }
        status = take(job, r, i);
    }
    return status;
}

int sw__job_check_name(sw__reader *r, int map, const char *name,
                       const void *list, size_t size, int count)
{
    for (int i = 0; i < count; i++) {
        if (strcmp((const char *)list + (size_t)i * size, name) != 0)
            continue;
        char message[120];
        sw__line line = sw__line_start(message, sizeof message);
        sw__line_add(&line, "name: ");
        sw__line_add_quoted(&line, name);
        sw__line_add(&line, " is taken by another of its kind");
        const int node = sw__child(r, map, "name");
        return node ? sw__fail_at(r, node, SW_ERR_CONFLICT, "name", message)
                    : sw__fail_key(r, map, SW_ERR_CONFLICT, "name", message);
    }
    return SW_OK;
}

int sw__job_supports(sw_job *job, sw__reader *r, int list)
{
    return sw__job_each(job, r, list, "supports", SW__JOB_CONTACTS,
                        take_support);
}

int sw__job_stops(sw_job *job, sw__reader *r, int list)
{
    return sw__job_each(job, r, list, "stops", SW__JOB_CONTACTS, take_stop);
}
