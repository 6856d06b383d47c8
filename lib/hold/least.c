/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Least: least sum of clamp forces, each of its own, that reaches a margin.
 *
 * Symbols: s_c factor on clamp c's force P_c and side pulls, S the margin
 * wanted, W wrenches.
 *
 *   least sum P_c s_c, 0 <= s_c <= (largest force)/P_c, such that
 *   S W1 + normals + friction + stops + sum s_c W_c = -weight            (1)
 *   0    + normals + friction + stops + sum s_c W_c = -weight            (2)
 *   0    + normals            + stops + sum s_c W_c = -weight            (3)
 *
 * (1) for the loads that count, (2) without a cut, (3) without friction, where
 * a stop is to be pressed by the straps alone, with all side pulls at their low
 * ends, at their high ends, and as they are worst at rest: friction would press the part
 * against a stop in any way that helps. Every support that must carry keeps its
 * least load in all of them. Loads are added one by one: the margin of all loads
 * is looked at with the forces found, and the lowest is added, until none is
 * below S.
 *
 * The discs are polygons inside the circle, so the sum is up to half a per cent
 * too large. It is unique; how it is shared among the clamps need not be.
 */
#include "hold/hold.h"

#include <string.h>

enum { BLOCKS = 16 };

typedef struct {
    sw__job *job;
    glp_prob *lp;
    sw__block block[BLOCKS];
    sw__corner corner[BLOCKS];
    int load[BLOCKS]; /* -1: no cut, -2: no cut and no friction */
    int count;
    int first; /* column of the first clamp */
} program;

/* Which supports are counted on: those that may be, or those that carry with
 * the clamps as they are. */
static void counted_on(const program *p, int all, char *on)
{
    const sw__rig *rig = &p->job->h->rig;
    sw__rested r;
    sw__rest_at(&p->job->main, &p->job->h->rest_corner, &r);
    memset(on, 0, SW__MOST);
    for (int i = 0; i < rig->pads; i++)
        on[i] = r.on[i] || (all && rig->pad[i].needed != SW_NEEDED_NO);
}

static void add_block(program *p, int load, const sw__corner *corner,
                      const char *on)
{
    const struct sw_hold *h = p->job->h;
    const sw__block_how how = {
        .sides = p->job->main.sides,
        .turn = p->job->main.turn,
        .friction = 1,
        .frictionless = load == -2,
        .least = h->in.support_least_N / h->rig.force_N,
        .own_seat = load == -2,
        .seat = load == -2 ? h->in.stop_least_N / h->rig.force_N : 0};
    sw__block *b = &p->block[p->count];
    memset(b, 0, sizeof *b);
    b->ray = p->job->ray[p->count];
    sw__block_add(b, p->lp, &h->rig, &how);
    sw__block_on(b, on, on);
    double base[6];
    for (int i = 0; i < 6; i++)
        base[i] = h->rig.weight[i] +
                  (load < 0 ? 0 : h->in.required_margin * h->rig.cut[load][i]);
    sw__block_base(b, base);
    p->corner[p->count] = *corner;
    p->load[p->count++] = load;
}

/* The clamps' columns, over all blocks. */
static void set_clamps(program *p)
{
    const sw__rig *rig = &p->job->h->rig;
    for (int c = 0; c < rig->toes; c++) {
        int index[BLOCKS * 7 + 1], n = 0;
        double entry[BLOCKS * 7 + 1];
        double factor[SW__MOST] = {0};
        factor[c] = 1;
        for (int k = 0; k < p->count; k++) {
            const sw__block *b = &p->block[k];
            double w[6];
            sw__rig_straps(rig, &p->corner[k], factor, 1, w);
            for (int i = 0; i < 6; i++) {
                if (w[i] == 0)
                    continue;
                index[++n] = b->row + i;
                entry[n] = w[i];
            }
            if (b->grip[c]) {
                glp_set_row_bnds(p->lp, b->grip[c], GLP_UP, 0, 0);
                index[++n] = b->grip[c];
                entry[n] = -rig->toe[c].P;
            }
        }
        glp_set_mat_col(p->lp, p->first + c, n, index, entry);
    }
}

static void begin(program *p)
{
    const struct sw_hold *h = p->job->h;
    const sw__rig *rig = &h->rig;
    const int guessed =
        (h->in.assumed & sw__bit(SW_STRUCT_HOLD_IN, "largest_clamp_N")) != 0;
    const double largest = h->in.largest_clamp_N / rig->force_N;
    p->lp = glp_create_prob();
    glp_set_obj_dir(p->lp, GLP_MIN);
    p->first = glp_add_cols(p->lp, rig->toes);
    for (int c = 0; c < rig->toes; c++) {
        const double P = rig->toe[c].P;
        glp_set_obj_coef(p->lp, p->first + c, P);
        if (P > 0)
            glp_set_col_bnds(p->lp, p->first + c, GLP_DB, 0,
                             (guessed ? fmax(largest, P) : largest) / P);
        else /* nothing to scale: its side pulls stay */
            glp_set_col_bnds(p->lp, p->first + c, GLP_FX, 1, 1);
    }
}

static int is_seated(const struct sw_hold *h)
{
    double most = h->in.stop_least_N;
    for (int i = 0; i < h->rig.posts; i++)
        most = fmax(most, h->rig.post[i].least);
    return h->rig.posts > 0 && most > 0;
}

static int is_known(const program *p, int load, const sw__corner *corner)
{
    for (int k = 0; k < p->count; k++)
        if (p->load[k] == load && sw__corner_same(&p->corner[k], corner))
            return 1;
    return 0;
}

/* 1 found, 0 none, -1 stopped. */
static int solve(sw__guard *g, program *p, int all)
{
    sw__job *job = p->job;
    struct sw_hold *h = job->h;
    char on[SW__MOST];
    double factor[SW__MOST];
    counted_on(p, all, on);
    p->count = 0;
    begin(p);
    const sw__corner end[3] = {
        h->rest_corner, {{0, 0}}, {{UINT64_MAX, UINT64_MAX}}};
    for (int i = 0; i < 3 && is_seated(h); i++)
        if (!is_known(p, -2, &end[i]) && (i == 0 || h->rig.ranges))
            add_block(p, -2, &end[i], on);
    add_block(p, -1, &h->rest_corner, on);
    add_block(p, h->worst, &h->verdict[h->worst].corner, on);
    for (;;) {
        if (sw__guard_tell(g, 0.9))
            return -1;
        set_clamps(p);
        glp_adv_basis(p->lp, 0);
        if (sw__simplex(p->lp, GLP_PRIMAL) != 1)
            return 0;
        for (int c = 0; c < h->rig.toes; c++)
            factor[c] = glp_get_col_prim(p->lp, p->first + c);
        int load;
        sw__corner corner;
        if (glp_get_obj_val(p->lp) < 1e-9 && !(h->rig.weight[2] < 0))
            break; /* held by form alone, and no weight to rest with */
        const double m = sw__hold_try(job, factor, &load, &corner);
        if (m >= h->in.required_margin * (1 - 1e-6))
            break;
        if (m <= 0 && !is_known(p, -1, &corner))
            load = -1;
        if (p->count == BLOCKS || is_known(p, load, &corner))
            return 0;
        add_block(p, load, &corner, on);
    }
    h->least_total = 0;
    for (int c = 0; c < h->rig.toes; c++) {
        h->least[c] = factor[c] * h->rig.toe[c].P;
        h->least_total += h->least[c];
    }
    return 1;
}

int sw__hold_least(sw__guard *g, sw__job *job)
{
    if (!job->h->rig.toes)
        return SW_OK;
    program p = {.job = job};
    for (int all = 1; all >= 0; all--) {
        const int found = solve(g, &p, all);
        glp_delete_prob(p.lp);
        if (found < 0)
            return SW_ERR_STOPPED;
        if (found)
            return SW_OK;
    }
    return SW_OK;
}
