/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Joint: equilibrium of the part with the normals tied to the springs below
 * it, as a linear program.
 *
 * Symbols: N normal, g = (1, y, -x), k, u as in bed.c; a_ik >= 0 part of
 * contact i's disc toward its k-th corner; mu friction; R stop; W wrenches;
 * lambda factor on the cut.
 *
 *   lambda W1 + sum k_i (g_i . u) Wz_i + sum mu_i a_ik W(cos, sin at i)
 *       + sum R_j W_j = -W0                              six rows       (1)
 *   sum_k a_ik <= N_i = k_i g_i . u                      each support   (2)
 *   N_i >= least; an idle support: g_i . u <= 0, a = 0                  (3)
 *   sum_k a_ck <= P_c                                    each held toe  (4)
 *
 * largest lambda. The ceiling has N_i >= 0 as columns of their own in the
 * place of u. A scale t on the clamps instead of lambda: (1) has their wrench
 * as the column, (4) is sum a <= t P.
 *
 * The discs are polygons inside the circle: never too much. Polishing adds the
 * corner that the present dual motion wants at each contact, until none would
 * bring more; then the discs are round.
 *
 * Only the column of the cut changes from load to load and only the right side
 * from one corner of the side pulls to the next, so a problem is kept and
 * starts where it ended.
 *
 * Source: limit analysis of a rigid body on dry friction; compared with an
 * incremental simulation of springs with friction (tests/reference).
 *
 * A stop with friction is a cone about its push with corners of its own: there
 * the normal is free, so the answer may be up to a few per cent high.
 */
#include "hold/joint.h"

#include <string.h>

#define FINE 1e-9 /* tolerances of the simplex method */
#define COARSE                                                                 \
    1e-7 /* where that finds no answer: levers of very uneven length */

enum { EXTRA = 12, ROUNDS = 30 }; /* added corners per contact; rounds */

static int has_rays(const sw__block_how *how, const sw__touch *t)
{
    return !how->frictionless && t->mu > 0;
}

int sw__block_rays(const sw__rig *rig, const sw__block_how *how)
{
    int n = 0;
    for (int i = 0; i < rig->pads; i++)
        n += has_rays(how, &rig->pad[i]) ? how->sides + EXTRA : 0;
    for (int i = 0; i < rig->toes; i++)
        n += has_rays(how, &rig->toe[i]) ? how->sides + EXTRA : 0;
    for (int i = 0; i < rig->posts; i++)
        n += has_rays(how, &rig->post[i]) ? how->sides : 1;
    return n;
}

static sw__touch place(const sw__block *b, const sw__ray *r)
{
    sw__touch t = r->part == SW_PART_SUPPORT ? b->rig->pad[r->index]
                  : r->part == SW_PART_CLAMP ? b->rig->toe[r->index]
                                             : b->rig->post[r->index];
    if (b->how.flat && r->part != SW_PART_SUPPORT)
        t.z = 0;
    return t;
}

static void ray_wrench(const sw__block *b, const sw__ray *r, double w[6])
{
    const sw__touch t = place(b, r);
    const double mu = t.mu * b->how.friction;
    if (r->part != SW_PART_STOP)
        sw__push(&t, mu * r->c, mu * r->s, 0, w);
    else
        sw__push(&t, t.nx - mu * r->c * t.ny, t.ny + mu * r->c * t.nx,
                 mu * r->s, w);
}

/* A column of six rows from `row` and one more. */
static void set_column(glp_prob *lp, int col, int row, const double w[6],
                       int other, double value)
{
    int index[8], n = 0;
    double entry[8];
    for (int i = 0; i < 6; i++) {
        if (w[i] == 0)
            continue;
        index[++n] = row + i;
        entry[n] = w[i];
    }
    if (other) {
        index[++n] = other;
        entry[n] = value;
    }
    glp_set_mat_col(lp, col, n, index, entry);
}

static void set_ray(sw__block *b, int k)
{
    const sw__ray *r = &b->ray[k];
    double w[6];
    ray_wrench(b, r, w);
    const int other = r->part == SW_PART_SUPPORT ? b->disc[r->index]
                      : r->part == SW_PART_CLAMP ? b->grip[r->index]
                                                 : 0;
    set_column(b->lp, b->first + k, b->row, w, other, 1);
}

static double least_of(const sw__block *b, int i)
{
    if (b->rig->pad[i].needed == SW_NEEDED_NO)
        return 0;
    return fmax(b->rig->pad[i].least, b->how.least);
}

/* Bounds of a ray: friction of an idle support is none. */
static void bound_ray(const sw__block *b, int k)
{
    const sw__ray *r = &b->ray[k];
    if (r->part == SW_PART_SUPPORT && !b->on[r->index])
        glp_set_col_bnds(b->lp, b->first + k, GLP_FX, 0, 0);
    else if (r->part == SW_PART_STOP)
        glp_set_col_bnds(
            b->lp, b->first + k, GLP_LO,
            fmax(b->how.own_seat ? b->rig->post[r->index].least : 0,
                 b->how.seat),
            0);
    else
        glp_set_col_bnds(b->lp, b->first + k, GLP_LO, 0, 0);
}

static void add_rows(sw__block *b)
{
    const sw__rig *rig = b->rig;
    int row = glp_get_num_rows(b->lp);
    b->row = row + 1;
    row += 6;
    memset(b->disc, 0, sizeof b->disc);
    memset(b->keep, 0, sizeof b->keep);
    memset(b->grip, 0, sizeof b->grip);
    for (int i = 0; i < rig->pads; i++) {
        const int rubs = has_rays(&b->how, &rig->pad[i]);
        b->disc[i] = rubs ? ++row : 0;
        b->keep[i] =
            !b->how.free_normals && (!rubs || least_of(b, i) > 0) ? ++row : 0;
    }
    for (int i = 0; i < rig->toes; i++)
        b->grip[i] = has_rays(&b->how, &rig->toe[i]) ? ++row : 0;
    glp_add_rows(b->lp, row - b->row + 1);
    for (int i = 0; i < rig->toes; i++)
        if (b->grip[i])
            glp_set_row_bnds(b->lp, b->grip[i], GLP_UP, 0, rig->toe[i].P);
}

static void add_disc(sw__block *b, int part, int index)
{
    for (int k = 0; k < b->how.sides; k++) {
        /* a stop's cone has its own frame */
        const double turn = part == SW_PART_STOP ? 0 : b->how.turn;
        const double a = turn + 2 * SW__PI * k / b->how.sides;
        b->ray[b->count++] = (sw__ray){part, index, cos(a), sin(a)};
    }
}

void sw__block_add(sw__block *b, glp_prob *lp, const sw__rig *rig,
                   const sw__block_how *how)
{
    b->lp = lp;
    b->rig = rig;
    b->how = *how;
    add_rows(b);
    b->normals = how->free_normals ? rig->pads : 3;
    b->col = glp_add_cols(lp, b->normals);
    b->count = 0;
    for (int i = 0; i < rig->pads; i++)
        if (b->disc[i])
            add_disc(b, SW_PART_SUPPORT, i);
    for (int i = 0; i < rig->toes; i++)
        if (b->grip[i])
            add_disc(b, SW_PART_CLAMP, i);
    for (int i = 0; i < rig->posts; i++) {
        if (has_rays(how, &rig->post[i]))
            add_disc(b, SW_PART_STOP, i);
        else
            b->ray[b->count++] = (sw__ray){SW_PART_STOP, i, 0, 0};
    }
    b->plain = b->count;
    b->first = b->col + b->normals;
    if (b->count)
        glp_add_cols(lp, b->count);
    for (int k = 0; k < b->count; k++)
        set_ray(b, k);
    char all[SW__MOST];
    memset(all, 1, sizeof all);
    sw__block_on(b, all, all);
}

/* The columns of u: rows (1), (2) and (3) of the supports that carry. */
static void set_sinks(sw__block *b)
{
    const sw__rig *rig = b->rig;
    int index[3 + 2 * SW__MOST + 1];
    double entry[3 + 2 * SW__MOST + 1];
    for (int j = 0; j < 3; j++) {
        double sum[3] = {0, 0, 0};
        int n = 3;
        for (int i = 0; i < rig->pads; i++) {
            const sw__touch *p = &rig->pad[i];
            const double g[3] = {1, p->y, -p->x};
            /* an idle one only tells its gap, however soft it is */
            const double k = b->on[i] ? p->k : 1;
            for (int r = 0; b->on[i] && r < 3; r++)
                sum[r] += p->k * g[j] * g[r];
            if (g[j] != 0 && b->disc[i]) {
                index[++n] = b->disc[i];
                entry[n] = -k * g[j];
            }
            if (g[j] != 0 && b->keep[i]) {
                index[++n] = b->keep[i];
                entry[n] = k * g[j];
            }
        }
        for (int r = 0; r < 3; r++) {
            index[r + 1] = b->row + 2 + r;
            entry[r + 1] = sum[r];
        }
        glp_set_mat_col(b->lp, b->col + j, n, index, entry);
        glp_set_col_bnds(b->lp, b->col + j, GLP_FR, 0, 0);
    }
}

static void set_normals(sw__block *b)
{
    for (int i = 0; i < b->normals; i++) {
        double w[6];
        sw__push(&b->rig->pad[i], 0, 0, 1, w);
        set_column(b->lp, b->col + i, b->row, w, b->disc[i], -1);
        glp_set_col_bnds(b->lp, b->col + i, GLP_LO,
                         b->must[i] ? least_of(b, i) : 0, 0);
    }
}

void sw__block_on(sw__block *b, const char *on, const char *must)
{
    memcpy(b->on, on, (size_t)b->rig->pads);
    memcpy(b->must, must, (size_t)b->rig->pads);
    if (b->how.free_normals)
        set_normals(b);
    else
        set_sinks(b);
    for (int k = 0; k < b->count; k++)
        bound_ray(b, k);
    for (int i = 0; i < b->rig->pads; i++) {
        const int carries = b->on[i];
        if (b->disc[i] && carries)
            glp_set_row_bnds(b->lp, b->disc[i], GLP_UP, 0, 0);
        else if (b->disc[i]) /* -g . u >= 0 */
            glp_set_row_bnds(b->lp, b->disc[i], GLP_LO, 0, 0);
        if (b->keep[i] && carries)
            glp_set_row_bnds(b->lp, b->keep[i], GLP_LO,
                             b->must[i] ? least_of(b, i) : 0, 0);
        else if (b->keep[i])
            glp_set_row_bnds(b->lp, b->keep[i], GLP_UP, 0, 0);
    }
}

void sw__block_base(const sw__block *b, const double w[6])
{
    for (int i = 0; i < 6; i++)
        glp_set_row_bnds(b->lp, b->row + i, GLP_FX, -w[i], -w[i]);
}

void sw__joint_make(sw__joint *j, const sw__rig *rig, const sw__block_how *how,
                    int scale)
{
    glp_prob *lp = glp_create_prob();
    j->block.lp = lp;
    j->scale = scale;
    sw__joint_direction(j, scale);
    j->goal = glp_add_cols(lp, 1);
    glp_set_obj_coef(lp, j->goal, 1);
    glp_set_col_bnds(lp, j->goal, GLP_FX, 0, 0);
    sw__block_add(&j->block, lp, rig, how);
    glp_adv_basis(lp, 0);
}

void sw__joint_direction(sw__joint *j, int minimise)
{
    j->minimise = minimise;
    glp_set_obj_dir(j->block.lp, minimise ? GLP_MIN : GLP_MAX);
}

void sw__joint_end(sw__joint *j)
{
    if (j->block.lp)
        glp_delete_prob(j->block.lp);
    j->block.lp = NULL;
}

void sw__joint_goal(sw__joint *j, const double w[6], double low, double top)
{
    sw__block *b = &j->block;
    int index[7 + SW__MOST], n = 0;
    double entry[7 + SW__MOST];
    for (int i = 0; i < 6; i++) {
        if (w[i] == 0)
            continue;
        index[++n] = b->row + i;
        entry[n] = w[i];
    }
    for (int c = 0; j->scale && c < b->rig->toes; c++) {
        if (!b->grip[c])
            continue;
        index[++n] = b->grip[c];
        entry[n] = -b->rig->toe[c].P;
        glp_set_row_bnds(b->lp, b->grip[c], GLP_UP, 0, 0);
    }
    glp_set_mat_col(b->lp, j->goal, n, index, entry);
    glp_set_col_bnds(b->lp, j->goal, low < top ? GLP_DB : GLP_FX, low, top);
    j->top = top;
}

static int simplex(glp_prob *lp, int method, double tolerance)
{
    glp_smcp how;
    glp_init_smcp(&how);
    how.msg_lev = GLP_MSG_OFF;
    how.meth = method;
    /* so few pivots that steepest edges cost more than they save */
    how.pricing = GLP_PT_STD;
    how.tol_bnd = how.tol_dj = tolerance;
    how.it_lim = 2000;
    if (glp_simplex(lp, &how))
        return -1;
    const int status = glp_get_status(lp);
    return status == GLP_OPT                              ? 1
           : status == GLP_NOFEAS || status == GLP_INFEAS ? 0
                                                          : -1;
}

int sw__simplex(glp_prob *lp, int method)
{
    int status = simplex(lp, method, FINE);
    if (status == 1)
        return 1;
    /* once more from the beginning: an old basis may be singular by now */
    glp_adv_basis(lp, 0);
    status = simplex(lp, GLP_PRIMAL, FINE);
    if (status == 1)
        return 1;
    glp_std_basis(lp);
    return simplex(lp, GLP_DUALP, COARSE);
}

int sw__joint_solve(sw__joint *j, int changed_base)
{
    return sw__simplex(j->block.lp, changed_base ? GLP_DUALP : GLP_PRIMAL);
}

/* Drops the corners that were added for earlier questions. */
static void prune(sw__block *b)
{
    const int extra = b->count - b->plain;
    if (extra <= 0)
        return;
    int list[1 + SW__MOST * 2 * EXTRA];
    for (int k = 0; k < extra; k++)
        list[k + 1] = b->first + b->plain + k;
    glp_del_cols(b->lp, extra, list);
    b->count = b->plain;
    glp_adv_basis(b->lp, 0);
}

/* Adds the corner that the motion wants at one contact, if it brings more. */
static int add_corner(sw__block *b, int part, int index, int row, double most,
                      double sign, const double y[6], double floor)
{
    sw__ray r = {part, index, 0, 0};
    const sw__touch t = place(b, &r);
    const double vx = y[0] + t.z * y[4] - t.y * y[5];
    const double vy = y[1] - t.z * y[3] + t.x * y[5];
    const double speed = hypot(vx, vy);
    const double price = sign * glp_get_row_dual(b->lp, row);
    const double gain = t.mu * b->how.friction * speed - price;
    if (!(gain * most > floor) || b->count >= b->room)
        return 0;
    r.c = -vx / speed;
    r.s = -vy / speed;
    const int col = glp_add_cols(b->lp, 1);
    b->ray[b->count] = r;
    set_ray(b, b->count);
    b->count++;
    glp_set_col_bnds(b->lp, col, GLP_LO, 0, 0);
    return 1;
}

int sw__joint_polish(sw__joint *j)
{
    sw__block *b = &j->block;
    const sw__rig *rig = b->rig;
    const double sign = j->minimise ? -1 : 1;
    if (b->count - b->plain > (b->room - b->plain) / 2) {
        prune(b);
        if (sw__joint_solve(j, 0) != 1)
            return 0;
    }
    for (int round = 0; round < ROUNDS; round++) {
        double y[6];
        int added = 0;
        sw__joint_motion(j, y);
        for (int i = 0; i < 6; i++)
            y[i] *= j->minimise ? -1 : 1;
        const double floor = 1e-9 * fmax(sw__joint_value(j), 1e-3);
        for (int i = 0; i < rig->pads; i++)
            if (b->disc[i] && b->on[i])
                added += add_corner(b, SW_PART_SUPPORT, i, b->disc[i],
                                    sw__block_normal(b, i), sign, y, floor);
        for (int c = 0; c < rig->toes; c++)
            if (b->grip[c])
                added += add_corner(b, SW_PART_CLAMP, c, b->grip[c],
                                    rig->toe[c].P *
                                        (j->scale ? sw__joint_value(j) : 1),
                                    sign, y, floor);
        if (!added)
            return 1;
        if (sw__joint_solve(j, 0) != 1)
            return 0;
    }
    return 1;
}
