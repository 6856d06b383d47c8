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

/* Tolerances of the simplex method; the second where the first finds no answer,
 * with levers of very uneven length. */
#define FINE 1e-9
#define COARSE 1e-7

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

int sw__joint_again(sw__joint *j)
{
    glp_adv_basis(j->block.lp, 0);
    return simplex(j->block.lp, GLP_DUALP, FINE) == 1 ||
           sw__simplex(j->block.lp, GLP_PRIMAL) == 1;
}

int sw__joint_solve(sw__joint *j, int changed_base)
{
    return sw__simplex(j->block.lp, changed_base ? GLP_DUALP : GLP_PRIMAL);
}
