/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Hold, answer: what the handle is asked.
 */
#include "hold/hold.h"

#include <string.h>

#define NO_TURN 1e4 /* a centre further off, in lengths of the rig: none */

static const char *const not_checked[] = {
    "The part is rigid: a thin one bends between its supports and leaves one "
    "earlier.",
    "All supports are taken as springs of the stiffness given, equal where "
    "none is given: uneven heights of some hundredths of a millimetre shift "
    "load from one to another and can cost a tenth of the margin and more.",
    "A margin says when all contacts together give way. The first support "
    "slips "
    "a little much earlier, at about a third of it.",
    "Cuts that come back can move the part a little each time (ratcheting) "
    "though each alone is held.",
    "Vibration, shock and chatter.",
    "The straps' own springiness: a cut that presses down takes force from "
    "them.",
    "How much a toe that is held sideways takes before a support lifts: look "
    "at the margin with idle stops.",
    "Friction at stops counts in every direction that helps: it may be some "
    "per cent too good.",
    "Supports, stops and clamps do not yield, wear or sink in.",
    "Heat.",
};

const char *sw_hold_not_checked(int index)
{
    const int count = sizeof not_checked / sizeof not_checked[0];
    return index >= 0 && index < count ? not_checked[index] : NULL;
}

const char *sw_hold_rest_text(int rest)
{
    switch (rest) {
    case SW_REST_STAYS:
        return "the part rests until the cut comes";
    case SW_REST_ROCKS:
        return "the part rocks under its own clamps: together they press "
               "outside of its supports";
    case SW_REST_MOVES:
        return "side pull of the straps or drag of their nuts moves the part "
               "before the cut: level the straps, use spherical washers, hold "
               "each strap with a second spanner while its nut is turned, or "
               "put a stop where they push it";
    case SW_REST_LIGHT:
        return "a support that must carry does not, or less than it must";
    case SW_REST_LOOSE:
        return "nothing presses the part on its supports";
    default:
        return NULL;
    }
}

static const char *name_of(const sw_hold *h, int part, int index)
{
    const sw_fixture *f = h->names;
    return part == SW_PART_SUPPORT ? f->support[index].name
           : part == SW_PART_CLAMP ? f->clamp[index].name
           : part == SW_PART_STOP  ? f->stop[index].name
                                   : "";
}

/* Centre of a sliding motion, where it turns. */
static void set_centre(const sw_hold *h, const sw__verdict *v, double *x,
                       double *y)
{
    *x = *y = SW_UNSET;
    if (v->goes != SW_GOES_SLIDE || v->v[2] == 0)
        return;
    const double cx = -v->v[1] / v->v[2], cy = v->v[0] / v->v[2];
    if (!(hypot(cx, cy) < NO_TURN))
        return;
    *x = h->rig.x_mm + cx * h->rig.length_mm;
    *y = h->rig.y_mm + cy * h->rig.length_mm;
}

sw_hold_point_out sw_hold_point(const sw_hold *h, int load, sw_error *err)
{
    sw_hold_point_out out;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    int status = SW_OK;
    if (!h)
        status = sw__fail_null(err, "hold");
    else if (load < 0 || load >= h->rig.loads)
        status = sw__fail_range(err, "load", load, "", 0, h->rig.loads - 1);
    if (status) {
        sw__spoil(&out, SW_STRUCT_HOLD_POINT_OUT, status);
        return out;
    }
    const sw__verdict *v = &h->verdict[load];
    const sw_load_in *p = &h->load[load];
    sw__copy(out.name, sizeof out.name, p->name);
    out.x_mm = p->x_mm;
    out.y_mm = p->y_mm;
    out.z_mm = p->z_mm;
    out.margin = v->margin;
    out.margin_ceiling = v->ceiling;
    out.margin_stops_idle = v->idle;
    out.first_to_go = v->goes;
    out.contact_part = v->part;
    sw__copy(out.contact, sizeof out.contact, name_of(h, v->part, v->index));
    set_centre(h, v, &out.centre_x_mm, &out.centre_y_mm);
    return out;
}

static void set_net(const sw_hold *h, sw_hold_out *out)
{
    const sw__rig *rig = &h->rig;
    const sw__corner low = {{0, 0}};
    double w[6];
    sw__rig_straps(rig, &low, NULL, 1, w);
    for (int r = 0; r < rig->ranges; r++)
        for (int i = 0; i < 6; i++)
            w[i] += rig->range[r][i] / 2;
    const double F = rig->force_N;
    out->net_x_N = w[0] * F;
    out->net_y_N = w[1] * F;
    out->net_z_N = w[2] * F;
    out->net_moment_Nm = w[5] * F * rig->length_mm / 1000;
    out->net_side_N = hypot(out->net_x_N, out->net_y_N);
    out->net_toward_deg = SW_UNSET;
    out->pushed = SW_PUSHED_NOT;
    const double side = hypot(w[0], w[1]);
    if (!(side > 1e-9))
        return;
    out->net_toward_deg = SW__DEG(atan2(w[1], w[0]));
    double into = 0, off = 0;
    for (int i = 0; i < rig->posts; i++) {
        const double along =
            (rig->post[i].nx * w[0] + rig->post[i].ny * w[1]) / side;
        into = fmax(into, -along);
        off = fmax(off, along);
    }
    /* more away from a stop than along its face */
    const double steep = 0.5;
    out->pushed = off > steep    ? SW_PUSHED_OFF
                  : into > steep ? SW_PUSHED_INTO
                                 : SW_PUSHED_FREE;
}

static void set_limits(const sw_hold *h, sw_hold_out *out)
{
    const double F = h->rig.force_N;
    double total = 0;
    for (int c = 0; c < h->rig.toes; c++)
        total += h->rig.toe[c].P * F;
    out->clamp_total_N = total;
    out->hold_scale = h->scale;
    out->hold_scale_high = h->scale_high;
    out->hold_limit_N = h->scale == SW_UNSET ? SW_UNSET : h->scale * total;
    out->least_total_N =
        h->least_total == SW_UNSET ? SW_UNSET : h->least_total * F;
    sw__line line = sw__line_start(out->switched_off, sizeof out->switched_off);
    int off = 0;
    for (int c = 0; c < h->rig.toes; c++) {
        if (h->least[c] == SW_UNSET || h->least[c] > 1e-6 ||
            !(h->rig.toe[c].P > 0))
            continue;
        sw__line_add(&line, off++ ? ", " : "");
        sw__line_add(&line, name_of(h, SW_PART_CLAMP, c));
    }
}

/* Over all loads: it need not be the worst one's. */
static double least_idle(const sw_hold *h)
{
    double least = SW_UNSET;
    for (int i = 0; i < h->rig.loads; i++) {
        const double idle = h->verdict[i].idle;
        if (idle != SW_UNSET && (least == SW_UNSET || idle < least))
            least = idle;
    }
    return least;
}

sw_hold_out sw_hold_total(const sw_hold *h, sw_error *err)
{
    sw_hold_out out;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    if (!h) {
        sw__spoil(&out, SW_STRUCT_HOLD_OUT, sw__fail_null(err, "hold"));
        return out;
    }
    const sw_hold_point_out p = sw_hold_point(h, h->worst, err);
    out.rest = h->rest;
    out.first_to_go = p.first_to_go;
    out.contact_part = p.contact_part;
    memcpy(out.contact, p.contact, sizeof out.contact);
    out.margin = p.margin;
    out.required_margin = h->in.required_margin;
    out.margin_ceiling = p.margin_ceiling;
    out.margin_stops_idle = least_idle(h);
    out.margin_friction_low = h->friction_low;
    out.margin_friction_high = h->friction_high;
    out.rest_margin = h->rest_margin;
    out.worst_load = h->worst;
    memcpy(out.worst_name, p.name, sizeof out.worst_name);
    out.worst_x_mm = p.x_mm;
    out.worst_y_mm = p.y_mm;
    out.worst_z_mm = p.z_mm;
    out.centre_x_mm = p.centre_x_mm;
    out.centre_y_mm = p.centre_y_mm;
    const sw__verdict *v = &h->verdict[h->worst];
    out.slide_deg = v->goes == SW_GOES_SLIDE && hypot(v->v[0], v->v[1]) > 0
                        ? SW__DEG(atan2(v->v[1], v->v[0]))
                        : SW_UNSET;
    out.loads = h->rig.loads;
    out.corners = h->rig.ranges == 0   ? SW_CORNERS_NONE
                  : h->rig.ranges <= 6 ? SW_CORNERS_ALL
                                       : SW_CORNERS_SEARCH;
    set_limits(h, &out);
    set_net(h, &out);
    return out;
}

/* Force and use of a contact, from what was kept of a load. */
static void read_contact(const sw_hold *h, int load, int part, int index,
                         sw_hold_contact_out *out)
{
    const sw__rig *rig = &h->rig;
    const int pads = rig->pads, posts = rig->posts;
    const float *k =
        h->kept
            ? h->kept + (size_t)load * (size_t)(2 * pads + posts + rig->toes)
            : NULL;
    const int worst = load == h->worst;
    double force = 0, use = SW_UNSET;
    if (part == SW_PART_CLAMP)
        force = rig->toe[index].P;
    else if (worst || !k)
        force = h->worst_force[part == SW_PART_STOP ? pads + index : index];
    else
        force = (double)k[part == SW_PART_STOP ? pads + index : index];
    if (part == SW_PART_SUPPORT)
        use =
            worst || !k ? h->worst_use[index] : (double)k[pads + posts + index];
    else if (part == SW_PART_CLAMP && rig->toe[index].mu > 0)
        use = worst || !k ? h->worst_use[pads + index]
                          : (double)k[2 * pads + posts + index];
    out->force_margin_N = force * rig->force_N;
    out->friction_use = use;
}

sw_hold_contact_out sw_hold_contact(const sw_hold *h, int load, int part,
                                    int index, sw_error *err)
{
    sw_hold_contact_out out;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    int status = SW_OK;
    const int count =
        part == SW_PART_LOAD ? 0 : sw_fixture_count(h ? h->names : NULL, part);
    if (!h)
        status = sw__fail_null(err, "hold");
    else if (load < -1 || load >= h->rig.loads)
        status = sw__fail_range(err, "load", load, "", -1, h->rig.loads - 1);
    else if (load >= 0 && load != h->worst && !h->kept)
        status = sw__fail(err, SW_ERR_RANGE, "load",
                          "load: contacts were kept for the worst load alone, "
                          "since there are so many");
    else if (count == 0)
        status = sw__fail(err, SW_ERR_RANGE, "part",
                          "part: no support, clamp or stop of this fixture");
    else if (index < 0 || index >= count)
        status = sw__fail_range(err, "index", index, "", 0, count - 1);
    if (status) {
        sw__spoil(&out, SW_STRUCT_HOLD_CONTACT_OUT, status);
        return out;
    }
    const double F = h->rig.force_N;
    sw__copy(out.name, sizeof out.name, name_of(h, part, index));
    out.force_rest_N = SW_UNSET;
    out.least_total_N = SW_UNSET;
    out.idle = SW_IDLE_NO;
    if (part == SW_PART_SUPPORT) {
        out.force_rest_N = h->rest_force[index] * F;
        out.idle = h->rest_force[index] > 0 ? SW_IDLE_NO : SW_IDLE_YES;
    } else if (part == SW_PART_CLAMP) {
        out.force_rest_N = h->rig.toe[index].P * F;
        out.idle = h->rig.toe[index].P > 0 ? SW_IDLE_NO : SW_IDLE_YES;
        if (h->least[index] != SW_UNSET)
            out.least_total_N = h->least[index] * F;
    }
    if (h->verdict[load < 0 ? h->worst : load].goes != SW_GOES_REST &&
        h->verdict[load < 0 ? h->worst : load].goes != SW_GOES_NONE) {
        read_contact(h, load < 0 ? h->worst : load, part, index, &out);
        if (part == SW_PART_STOP)
            out.idle = out.force_margin_N > 0 ? SW_IDLE_NO : SW_IDLE_YES;
    } else {
        out.force_margin_N = out.friction_use = SW_UNSET;
    }
    return out;
}
