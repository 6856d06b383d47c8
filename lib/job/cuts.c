/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Cuts: what the cut of an operation does to the part, as loads in a frame
 * whose x is the feed, y to its left, z up.
 *
 * Milling swings while a tooth goes by: the mean over a turn, the peak, and
 * evenly spaced instants between one tooth and the next are loads of their own.
 * What resists is a convex set where the contacts stay, so a load within their
 * hull is resisted with them. Drilling: the largest and the least thrust (which
 * holds the part down) and the pull at breakthrough, each with the torque.
 *
 * Turning: cut_turn.c.
 */
#include "job/cut.h"

#include <string.h>

#define BELOW_PART 2.0 /* mm that a cutter reaches below a part cut through */

enum { INSTANTS = 16 };

typedef struct {
    int kind;
    int structure;
    const char *skip;
    void (*open)(sw__cut_draft *d);
    int (*solve)(sw__cut_draft *d);
} way;

int sw__draft_fail(sw__cut_draft *d, const sw_error *inner)
{
    return sw__fail_inner(d->r, d->map, &d->shape, inner);
}

/* Adds a load unless it is there already. */
void sw__draft_add(sw__cut_draft *d, double x, double y, double z, double mx,
                   double my, double mz)
{
    const sw__job_sample s = {{x, y, z}, {mx, my, mz}, {0, 0}};
    sw__job_operation *op = d->op;
    for (int i = 0; i < op->samples; i++)
        if (memcmp(&op->sample[i], &s, sizeof s) == 0)
            return;
    if (op->samples < SW__JOB_SAMPLES)
        op->sample[op->samples++] = s;
}

/* Notes what the library filled in. */
int sw__draft_note(sw__cut_draft *d, sw_assumption (*ask)(const void *, int))
{
    int status = SW_OK;
    for (int i = 0; !status; i++) {
        const sw_assumption a = ask(&d->of, i);
        if (a.status)
            break;
        char name[64];
        sw_assumption named = a;
        sw__line line = sw__line_start(name, sizeof name);
        sw__line_add(&line, "cut_");
        sw__line_add(&line, a.name);
        sw__copy(named.name, sizeof named.name, name);
        status = sw__job_note_as(d->job, d->name, &named, d->r->err);
    }
    return status;
}

/* The part's own material, where the cut names none. */
int sw__draft_material(sw__cut_draft *d, char *material, size_t room,
                       double kc11, double mc)
{
    sw_error inner;
    const char *of_part = d->job->about.material;
    if (material[0] || (sw__is_set(kc11) && sw__is_set(mc)))
        return SW_OK;
    if (!of_part[0])
        return sw__fail_key(d->r, d->map, SW_ERR_MISSING, "material",
                            "the cut needs a material, or kc11 and mc, or the "
                            "part a material");
    const sw_cut_material_out m = sw_cut_material(of_part, &inner);
    if (m.status)
        return sw__fail_key(d->r, d->map, SW_ERR_UNKNOWN, "material",
                            "the part's material is in no table of metals to "
                            "be cut; give the cut a material, or kc11 and mc");
    sw__copy(material, room, of_part);
    return sw__job_note_word(d->job, d->name, "cut_material", material,
                             "the part's own", d->r->err);
}

/* ---- a force that is given ---- */

static void open_force(sw__cut_draft *d) { sw_load_defaults(&d->of.force); }

static int solve_force(sw__cut_draft *d)
{
    sw_error inner;
    sw_load_in one = d->of.force;
    one.x_mm = one.y_mm = one.z_mm = 0;
    if (sw_load_resolve(&one, &inner))
        return sw__draft_fail(d, &inner);
    const int nothing = one.force_x_N == 0 && one.force_y_N == 0 &&
                        one.force_z_N == 0 && one.moment_x_Nm == 0 &&
                        one.moment_y_Nm == 0 && one.moment_z_Nm == 0;
    if (nothing)
        return sw__fail_key(d->r, d->map, SW_ERR_MISSING, "cut",
                            "the cut has no force; give force x, force y, "
                            "force z (up), such as force x: 400 N");
    sw__draft_add(d, one.force_x_N, one.force_y_N, one.force_z_N,
                  one.moment_x_Nm, one.moment_y_Nm, one.moment_z_Nm);
    return SW_OK;
}

/* ---- milling ---- */

static void open_mill(sw__cut_draft *d) { sw_milling_defaults(&d->of.mill); }

static sw_assumption ask_mill(const void *in, int index)
{
    return sw_milling_assumed(in, index, NULL);
}

static int fail_key(sw__cut_draft *d, const char *key, int code,
                    const char *message)
{
    const int node = sw__child(d->r, d->map, key);
    return node ? sw__fail_at(d->r, node, code, key, message)
                : sw__fail_key(d->r, d->map, code, key, message);
}

/* What no cutter does: slips of the pen. A feed is too large where no chip
 * space would hold it; from memory, well above every table. */
static int check_mill(sw__cut_draft *d)
{
    char message[160];
    const sw_milling_in *in = &d->of.mill;
    const double t = d->job->about.thickness_mm;
    if (in->mode == SW_MILL_SLOT && sw__is_set(in->width_mm) &&
        sw__is_set(in->diameter_mm) &&
        fabs(in->width_mm - in->diameter_mm) > 1e-3 * in->diameter_mm)
        return fail_key(d, "width", SW_ERR_CONFLICT,
                        "width: a slot is as wide as the cutter; leave width "
                        "out, or take mode: side");
    if (sw__is_set(in->depth_mm) && in->depth_mm > t + BELOW_PART) {
        sw__line line = sw__line_start(message, sizeof message);
        sw__line_add(&line, "depth: ");
        sw__line_add_number(&line, in->depth_mm);
        sw__line_add(&line, " mm is more than the part's thickness, ");
        sw__line_add_number(&line, t);
        sw__line_add(&line, " mm, and ");
        sw__line_add_number(&line, BELOW_PART);
        sw__line_add(&line, " mm below it");
        return fail_key(d, "depth", SW_ERR_CONFLICT, message);
    }
    if (sw__is_set(in->feed_per_tooth_mm) && sw__is_set(in->diameter_mm) &&
        in->feed_per_tooth_mm > in->diameter_mm / 10)
        return fail_key(d, "feed per tooth", SW_ERR_CONFLICT,
                        "feed per tooth: more than a tenth of the cutter's "
                        "diameter, which no cutter stands; mistyped?");
    return SW_OK;
}

static int solve_mill(sw__cut_draft *d)
{
    sw_error inner;
    sw_milling_in *in = &d->of.mill;
    const int possible = check_mill(d);
    if (possible)
        return possible;
    if (!d->path->directed)
        return sw__fail_key(d->r, d->map, SW_ERR_MISSING, "feed",
                            "a mill needs the way it is fed: give the path "
                            "lines, or points with feed: +x");
    int status = sw__draft_material(d, in->material, sizeof in->material,
                                    in->kc11_MPa, in->mc);
    if (status)
        return status;
    in->feed_direction_deg = 0;
    d->reach = in->diameter_mm / 2;
    const sw_milling_out m = sw_milling(in, &inner);
    if (m.status)
        return sw__draft_fail(d, &inner);
    /* the mean is the first: whoever asks for the way of the push finds it */
    sw__draft_add(d, m.mean_x_N, m.mean_y_N, m.mean_z_N, m.mean_mx_Nm,
                  m.mean_my_Nm, m.mean_mz_Nm);
    d->op->out.milling_mode = in->mode;
    d->op->out.cut_way = in->mode == SW_MILL_SIDE ? in->way : 0;
    if (hypot(m.mean_x_N, m.mean_y_N) > 0)
        d->op->out.push_deg = SW__DEG(atan2(m.mean_y_N, m.mean_x_N));
    sw__draft_add(d, m.peak_x_N, m.peak_y_N, m.peak_z_N, m.peak_mx_Nm,
                  m.peak_my_Nm, m.peak_mz_Nm);
    for (int i = 0; i < INSTANTS; i++) {
        const sw_cut_load_out l = sw_milling_load_at(in, i, INSTANTS, &inner);
        if (l.status)
            return sw__draft_fail(d, &inner);
        sw__draft_add(d, l.x_N, l.y_N, l.z_N, l.mx_Nm, l.my_Nm, l.mz_Nm);
    }
    d->op->turned = 1;
    d->op->out.warnings |= m.warnings;
    return sw__draft_note(d, ask_mill);
}

/* ---- drilling ---- */

static void open_drill(sw__cut_draft *d) { sw_drilling_defaults(&d->of.drill); }

static sw_assumption ask_drill(const void *in, int index)
{
    return sw_drilling_assumed(in, index, NULL);
}

static int solve_drill(sw__cut_draft *d)
{
    sw_error inner;
    sw_drilling_in *in = &d->of.drill;
    if (sw__is_set(in->feed_mm) && sw__is_set(in->diameter_mm) &&
        in->feed_mm > in->diameter_mm / 5)
        return fail_key(d, "feed", SW_ERR_CONFLICT,
                        "feed: more than a fifth of the drill's diameter, "
                        "which no drill stands; mistyped?");
    int status = sw__draft_material(d, in->material, sizeof in->material,
                                    in->kc11_MPa, in->mc);
    if (status)
        return status;
    const sw_drilling_out o = sw_drilling(in, &inner);
    if (o.status)
        return sw__draft_fail(d, &inner);
    d->reach = 0;
    sw__draft_add(d, 0, 0, o.z_low_N, 0, 0, o.mz_Nm);
    sw__draft_add(d, 0, 0, -o.thrust_low_N, 0, 0, o.mz_Nm);
    sw__draft_add(d, 0, 0, o.z_high_N, 0, 0, o.mz_Nm);
    d->op->out.warnings |= o.warnings;
    return sw__draft_note(d, ask_drill);
}

/* ---- all kinds ---- */

static const way all[] = {
    {SW_CUT_FORCE, SW_STRUCT_LOAD_IN, " name x_mm y_mm z_mm", open_force,
     solve_force},
    {SW_CUT_MILL, SW_STRUCT_MILLING_IN, " feed_direction_deg", open_mill,
     solve_mill},
    {SW_CUT_TURN, SW_STRUCT_TURNING_IN, "", sw__draft_turn_open,
     sw__draft_turn_solve},
    {SW_CUT_DRILL, SW_STRUCT_DRILLING_IN, "", open_drill, solve_drill},
};

static int take_kind(sw__reader *r, int node, void *with)
{
    (void)r;
    (void)node;
    (void)with;
    return SW_OK; /* read before everything else */
}

/* A point of the path where nothing is to be cut is a slip of the pen. */
static int check_reach(sw__cut_draft *d)
{
    char message[160];
    const sw__outline *o = &d->job->outline;
    for (int i = 0; i < d->op->points; i++) {
        const sw__job_point *p = &d->op->point[i];
        if (sw__outline_off(o, p->at[0], p->at[1]) <= d->reach + 1e-6)
            continue;
        sw__line line = sw__line_start(message, sizeof message);
        sw__line_add(&line, "path: at its point ");
        sw__line_add_number(&line, i + 1);
        sw__line_add(&line, ", [");
        sw__line_add_number(&line, p->at[0]);
        sw__line_add(&line, " mm, ");
        sw__line_add_number(&line, p->at[1]);
        sw__line_add(&line, " mm], the tool does not touch the part; leave "
                            "the way there out");
        return sw__fail_at(d->r, d->path->node, SW_ERR_CONFLICT, "path",
                           message);
    }
    return SW_OK;
}

/* What can be meant, but seldom is. */
static int remark_path(sw__cut_draft *d)
{
    const sw__outline *o = &d->job->outline;
    int above = 0, off = 0, status = SW_OK;
    for (int i = 0; i < d->op->points; i++) {
        const double *at = d->op->point[i].at;
        above |= at[2] > d->job->about.thickness_mm + 1e-6;
        off |= sw__outline_off(o, at[0], at[1]) > 1e-6;
    }
    if (above)
        status = sw__job_remark(d->job, d->name,
                                "its path runs higher than the part is thick",
                                d->r->err);
    if (!status && off && d->op->out.cut_kind == SW_CUT_FORCE)
        status = sw__job_remark(d->job, d->name,
                                "its force acts beside the part's outline at "
                                "some points of the path",
                                d->r->err);
    return status;
}

/* The largest of every direction, over all samples. */
static void measure(sw__job_operation *op)
{
    sw_job_operation_out *o = &op->out;
    o->side_most_N = o->lift_most_N = o->press_most_N = o->twist_most_Nm = 0;
    for (int i = 0; i < op->samples; i++) {
        const sw__job_sample *s = &op->sample[i];
        o->side_most_N = fmax(o->side_most_N, hypot(s->N[0], s->N[1]));
        o->lift_most_N = fmax(o->lift_most_N, s->N[2]);
        o->press_most_N = fmax(o->press_most_N, -s->N[2]);
        o->twist_most_Nm = fmax(o->twist_most_Nm, fabs(s->Nm[2]));
    }
}

int sw__job_cut(sw_job *job, sw__reader *r, int map, const char *name,
                sw__job_operation *op, const sw__path_about *path)
{
    static const sw__special key[] = {{"kind", take_kind}, {NULL, NULL}};
    int kind = 0, status = sw__want_map(r, map, "cut", "kind");
    if (status)
        return status;
    const int node = sw__child(r, map, "kind");
    if (!node)
        return sw__fail_key(r, map, SW_ERR_MISSING, "kind",
                            "a cut needs its kind, such as kind: mill, or "
                            "kind: force for one that is given");
    status = sw__take_word(r, node, "kind", SW_WORDS_CUT_KIND, &kind);
    if (status)
        return status;
    sw__cut_draft d;
    memset(&d, 0, sizeof d);
    const way *w = &all[kind - 1];
    d.job = job;
    d.r = r;
    d.map = map;
    d.name = name;
    d.op = op;
    d.path = path;
    d.form = (sw__form){w->structure, &d.of, w->skip, NULL};
    d.shape = (sw__shape){.what = "a cut of this kind",
                          .form = &d.form,
                          .forms = 1,
                          .special = key,
                          .with = &d};
    w->open(&d);
    op->out.cut_kind = kind;
    op->out.push_deg = SW_UNSET;
    status = sw__read_map(r, map, &d.shape);
    /* where nobody says how large the tool is, and on a circle, whose part is
     * a polygon here */
    d.reach = fmax(job->about.length_mm, job->about.width_mm) / 2;
    if (!status)
        status = w->solve(&d);
    if (!status)
        status = check_reach(&d);
    if (!status)
        status = remark_path(&d);
    if (!status)
        measure(op);
    return status;
}
