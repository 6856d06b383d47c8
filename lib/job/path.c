/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Path: where the tool goes, as points with the way it is fed.
 *
 * Three ways to say it: points one by one, lines from corner to corner with a
 * step, or a circle with a step. On lines and circles the feed follows the
 * path. A corner belongs to both its lines and is taken with both feeds.
 */
#include "job/operation.h"

#include <stdlib.h>
#include <string.h>

#define PARTS 20.0 /* of the larger measure of the part, where no step is */
#define LEAST_TURN 1e-9 /* deg: the same direction */

typedef struct {
    int points, lines, circle; /* nodes */
    double step, height, feed_deg;
    int height_given;
} draft;

/* ---- growing ---- */

static int add_point(sw__reader *r, int node, sw__job_operation *op,
                     const double at[3], double feed_deg)
{
    if (op->points == SW__JOB_POINTS)
        return sw__fail_at(r, node, SW_ERR_RANGE, "path",
                           "path: more than 5000 points; take a larger step");
    if (!(op->points & (op->points - 1))) { /* a power of two: room is full */
        const size_t room = op->points ? 2 * (size_t)op->points : 1;
        sw__job_point *more = realloc(op->point, room * sizeof *more);
        if (!more)
            return sw__fail_memory(r->err);
        op->point = more;
    }
    sw__job_point *p = &op->point[op->points++];
    memcpy(p->at, at, sizeof p->at);
    p->feed_deg = feed_deg;
    return SW_OK;
}

static int take_at(sw__reader *r, int node, const draft *d, const char *key,
                   double at[3])
{
    int has_z = 0;
    const int status = sw__take_point(r, node, key, at, &has_z);
    if (!has_z)
        at[2] = d->height;
    return status;
}

/* ---- points ---- */

static int take_points(sw__reader *r, const draft *d, sw__job_operation *op)
{
    int status = sw__want_list(r, d->points, "points",
                               "[[20 mm, 35 mm], [40 mm, 35 mm]]");
    if (!status && !r->tree->node[d->points].count)
        status = sw__fail_at(r, d->points, SW_ERR_MISSING, "points",
                             "points: there are none in the list");
    for (int i = r->tree->node[d->points].first; i && !status;
         i = r->tree->node[i].next) {
        double at[3];
        status = take_at(r, i, d, "points", at);
        if (!status)
            status = add_point(r, i, op, at, d->feed_deg);
    }
    return status;
}

/* ---- lines ---- */

/* From one corner to the next, both ends included; the first is left out where
 * the line before came the same way. */
static int add_line(sw__reader *r, int node, const draft *d,
                    sw__job_operation *op, const double from[3],
                    const double to[3], int first)
{
    const double dx = to[0] - from[0], dy = to[1] - from[1];
    const double length = hypot(dx, dy);
    if (!(length > 0))
        return sw__fail_at(r, node, SW_ERR_CONFLICT, "lines",
                           "lines: this corner is the one before it");
    const double deg = SW__DEG(atan2(dy, dx));
    const double parts = ceil(length / d->step - 1e-9);
    if (!(parts <= SW__JOB_POINTS))
        return sw__fail_at(r, node, SW_ERR_RANGE, "path",
                           "path: more than 5000 points; take a larger step");
    const int n = parts < 1 ? 1 : (int)parts;
    const int straight =
        !first && op->points &&
        fabs(op->point[op->points - 1].feed_deg - deg) < LEAST_TURN;
    int status = SW_OK;
    for (int i = straight ? 1 : 0; i <= n && !status; i++) {
        const double t = (double)i / n;
        const double at[3] = {from[0] + t * dx, from[1] + t * dy,
                              from[2] + t * (to[2] - from[2])};
        status = add_point(r, node, op, at, deg);
    }
    return status;
}

static int take_line(sw__reader *r, int line, const draft *d,
                     sw__job_operation *op)
{
    int status =
        sw__want_list(r, line, "lines", "[[20 mm, 35 mm], [200 mm, 35 mm]]");
    if (!status && r->tree->node[line].count < 2)
        return sw__fail_at(r, line, SW_ERR_MISSING, "lines",
                           "lines: a line needs two points or more");
    double from[3] = {0, 0, 0};
    int n = 0;
    for (int i = r->tree->node[line].first; i && !status;
         i = r->tree->node[i].next) {
        double to[3];
        status = take_at(r, i, d, "lines", to);
        if (!status && n++)
            status = add_line(r, i, d, op, from, to, n == 2);
        memcpy(from, to, sizeof from);
    }
    return status;
}

static int take_lines(sw__reader *r, const draft *d, sw__job_operation *op)
{
    int status =
        sw__want_list(r, d->lines, "lines",
                      "- [[20 mm, 35 mm], [200 mm, 35 mm]], one line each");
    if (!status && !r->tree->node[d->lines].count)
        status = sw__fail_at(r, d->lines, SW_ERR_MISSING, "lines",
                             "lines: there are none in the list");
    for (int i = r->tree->node[d->lines].first; i && !status;
         i = r->tree->node[i].next)
        status = take_line(r, i, d, op);
    return status;
}

/* ---- circle ---- */

typedef struct {
    double centre[3], diameter;
    int placed, clockwise, said;
} circle;

static int take_centre(sw__reader *r, int node, void *with)
{
    circle *c = with;
    c->placed = 1;
    return sw__take_point(r, node, "center", c->centre, NULL);
}

static int take_diameter(sw__reader *r, int node, void *with)
{
    return sw__take_number(r, node, "diameter", "mm", 1e-3, 1e4,
                           &((circle *)with)->diameter);
}

static int take_turns(sw__reader *r, int node, void *with)
{
    char word[32];
    circle *c = with;
    const int status = sw__take_text(r, node, "turns", word, sizeof word);
    if (status)
        return status;
    c->said = 1;
    c->clockwise = strcmp(word, "clockwise") == 0;
    if (c->clockwise || strcmp(word, "counterclockwise") == 0)
        return SW_OK;
    return sw__fail_text(r, node, SW_ERR_UNKNOWN, "turns", "turns: ", word,
                         " is none of clockwise, counterclockwise, seen from "
                         "above");
}

static int take_circle(sw_job *job, sw__reader *r, const draft *d,
                       const char *name, sw__job_operation *op,
                       sw__path_about *about)
{
    static const sw__special key[] = {{"center", take_centre},
                                      {"diameter", take_diameter},
                                      {"turns", take_turns},
                                      {NULL, NULL}};
    circle c = {.diameter = SW_UNSET};
    const sw__shape shape = {.what = "a circle", .special = key, .with = &c};
    int status = sw__read_map(r, d->circle, &shape);
    if (!status && (!c.placed || !sw__is_set(c.diameter)))
        status = sw__fail_key(r, d->circle, SW_ERR_MISSING, "circle",
                              "a circle needs its center, such as center: [80 "
                              "mm, 60 mm], and its diameter");
    if (!status && !c.said)
        status = sw__job_note_word(job, name, "turns", "counterclockwise",
                                   "as a spindle runs forward, seen from above",
                                   r->err);
    about->circle = 1;
    about->axis[0] = c.centre[0];
    about->axis[1] = c.centre[1];
    about->diameter_mm = c.diameter;
    about->clockwise = c.clockwise;
    const double around = SW__PI * c.diameter;
    const double parts = fmax(8, ceil(around / d->step));
    if (!status && !(parts <= SW__JOB_POINTS))
        status = sw__fail_at(r, d->circle, SW_ERR_RANGE, "path",
                             "path: more than 5000 points; take a larger step");
    for (int i = 0; !status && i < (int)parts; i++) {
        const double deg = (c.clockwise ? -360.0 : 360.0) * i / parts;
        const double at[3] = {c.centre[0] + c.diameter / 2 * cos(SW__RAD(deg)),
                              c.centre[1] + c.diameter / 2 * sin(SW__RAD(deg)),
                              d->height};
        status =
            add_point(r, d->circle, op, at, deg + (c.clockwise ? -90 : 90));
    }
    return status;
}

/* ---- the section ---- */

static int keep_points(sw__reader *r, int node, void *with)
{
    (void)r;
    ((draft *)with)->points = node;
    return SW_OK;
}

static int keep_lines(sw__reader *r, int node, void *with)
{
    (void)r;
    ((draft *)with)->lines = node;
    return SW_OK;
}

static int keep_circle(sw__reader *r, int node, void *with)
{
    (void)r;
    ((draft *)with)->circle = node;
    return SW_OK;
}

static int take_step(sw__reader *r, int node, void *with)
{
    return sw__take_number(r, node, "step", "mm", 1e-3, 1e4,
                           &((draft *)with)->step);
}

static int take_height(sw__reader *r, int node, void *with)
{
    draft *d = with;
    d->height_given = 1;
    return sw__take_number(r, node, "height", "mm", -1e5, 1e5, &d->height);
}

static int take_feed(sw__reader *r, int node, void *with)
{
    return sw__take_direction(r, node, "feed", &((draft *)with)->feed_deg);
}

static const sw__special path_key[] = {{"points", keep_points},
                                       {"lines", keep_lines},
                                       {"circle", keep_circle},
                                       {"step", take_step},
                                       {"height", take_height},
                                       {"feed", take_feed},
                                       {NULL, NULL}};

/* Exactly one way to say where, and nothing that it does not use. */
static int check(sw__reader *r, int map, const draft *d)
{
    const int ways = (d->points != 0) + (d->lines != 0) + (d->circle != 0);
    if (ways != 1)
        return sw__fail_key(r, map, ways ? SW_ERR_CONFLICT : SW_ERR_MISSING,
                            "path",
                            "a path needs points, lines or a circle: one of "
                            "them");
    if (d->points && sw__is_set(d->step))
        return sw__fail_key(r, sw__child(r, map, "step"), SW_ERR_CONFLICT,
                            "step", "step: points have none; give lines");
    if (!d->points && sw__is_set(d->feed_deg))
        return sw__fail_key(r, sw__child(r, map, "feed"), SW_ERR_CONFLICT,
                            "feed",
                            "feed: lines and circles are their own; "
                            "leave it out");
    return SW_OK;
}

int sw__job_path(sw_job *job, sw__reader *r, int map, const char *name,
                 sw__job_operation *op, sw__path_about *about)
{
    const sw_job_out *a = &job->about;
    draft d = {.step = SW_UNSET, .feed_deg = SW_UNSET};
    const sw__shape shape = {.what = "a path", .special = path_key, .with = &d};
    int status = sw__read_map(r, map, &shape);
    if (!status)
        status = check(r, map, &d);
    if (status)
        return status;
    if (!d.height_given) {
        d.height = a->thickness_mm;
        status =
            sw__job_note(job, name, "path_height_mm", "mm", d.height, SW_UNSET,
                         SW_UNSET, "the top of the part", r->err);
    }
    if (!status && !d.points && !sw__is_set(d.step)) {
        d.step = fmax(a->length_mm, a->width_mm) / PARTS;
        status = sw__job_note(
            job, name, "path_step_mm", "mm", d.step, SW_UNSET, SW_UNSET,
            "a twentieth of the part's larger measure", r->err);
    }
    if (status)
        return status;
    about->node = d.points ? d.points : d.lines ? d.lines : d.circle;
    about->directed = !d.points || sw__is_set(d.feed_deg);
    if (d.points)
        return take_points(r, &d, op);
    if (d.lines)
        return take_lines(r, &d, op);
    return take_circle(job, r, &d, name, op, about);
}
