/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tripod: three supports under one force.
 *
 *   support i carries F times the area of the triangle of the force and the
 *   other two supports, over the area of the whole (barycentric place)   (1)
 *
 * Statics; whatever the stiffness of supports and part. A force outside the
 * triangle rocks the part: the support that would have to pull has a force
 * below zero, and the answer says that it rocks.
 *
 * Not in it: forces along the table at a height (move the place of the force
 * by height times side force over force), a fourth support.
 */
#include "base/room.h"

#include <strapwise/tripod.h>

#define SW__S sw_tripod_in
const sw_field sw__tripod_in_fields[] = {
    SW__IN(x1_mm, "mm", -100000, 100000, 0, 0, ""),
    SW__IN(y1_mm, "mm", -100000, 100000, 0, 0, ""),
    SW__IN(x2_mm, "mm", -100000, 100000, 0, 0, ""),
    SW__IN(y2_mm, "mm", -100000, 100000, 0, 0, ""),
    SW__IN(x3_mm, "mm", -100000, 100000, 0, 0, ""),
    SW__IN(y3_mm, "mm", -100000, 100000, 0, 0, ""),
    SW__IN(force_N, "N", 0.001, 1e8, 0, 0, ""),
    SW__IN(x_mm, "mm", -100000, 100000, 0, 0, ""),
    SW__IN(y_mm, "mm", -100000, 100000, 0, 0, ""),
    SW__END,
};
#undef SW__S

#define SW__S sw_tripod_out
const sw_field sw__tripod_out_fields[] = {
    SW__OUT_WORD(rest, SW_WORDS_REST),
    SW__OUT(support1_N, "N"),
    SW__OUT(support2_N, "N"),
    SW__OUT(support3_N, "N"),
    SW__OUT(inside_mm, "mm"),
    SW__OUT(least_share, ""),
    SW__END,
};
#undef SW__S

static int tripod_fill(sw_tripod_in *in, const sw__filler *fill,
                       uint64_t *warnings, sw_error *err)
{
    (void)fill;
    (void)warnings;
    for (int i = 0; sw__tripod_in_fields[i].name; i++) {
        double value;
        memcpy(&value, (const char *)in + sw__tripod_in_fields[i].offset,
               sizeof value);
        if (!sw__is_set(value))
            return sw__fail_missing(err, sw__tripod_in_fields[i].name,
                                    "three supports, a force and its place are "
                                    "needed");
    }
    return SW_OK;
}

typedef struct {
    double x, y;
} place;

/* Twice the area, positive when a, b, c go round to the left. */
static double area(place a, place b, place c)
{
    return (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y);
}

static int tripod_solve(const sw_tripod_in *in, sw_tripod_out *out,
                        sw_error *err)
{
    const place at[3] = {
        {in->x1_mm, in->y1_mm}, {in->x2_mm, in->y2_mm}, {in->x3_mm, in->y3_mm}};
    const place force = {in->x_mm, in->y_mm};
    const double whole = area(at[0], at[1], at[2]);
    double share[3], size = 0, inside = INFINITY;
    for (int i = 0; i < 3; i++) {
        const place a = at[(i + 1) % 3], b = at[(i + 2) % 3];
        size = fmax(size, hypot(b.x - a.x, b.y - a.y));
    }
    if (!(fabs(whole) > 1e-9 * size * size))
        return sw__fail_conflict(err, "x3_mm",
                                 "the three supports stand in one line");
    for (int i = 0; i < 3; i++) {
        const place a = at[(i + 1) % 3], b = at[(i + 2) % 3];
        share[i] = area(force, a, b) / whole;
        inside =
            fmin(inside, share[i] * fabs(whole) / hypot(b.x - a.x, b.y - a.y));
    }
    const double least = fmin(share[0], fmin(share[1], share[2]));
    const int rocks = least < -1e-12; /* on an edge: zero, not a rounding */
    const double floor = rocks ? -INFINITY : 0;
    out->rest = rocks ? SW_REST_ROCKS : SW_REST_STAYS;
    out->support1_N = in->force_N * fmax(floor, share[0]);
    out->support2_N = in->force_N * fmax(floor, share[1]);
    out->support3_N = in->force_N * fmax(floor, share[2]);
    out->inside_mm = fmax(floor, inside);
    out->least_share = fmax(floor, least);
    return SW_OK;
}

SW__ROOM(tripod, TRIPOD);
