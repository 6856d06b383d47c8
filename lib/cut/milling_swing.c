/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Milling swing: how far each component of the load swings while the cutter
 * turns by one pitch, and where the force in the plane is largest.
 *
 * The load is smooth but where an end of a tooth's edge enters or leaves the
 * arc: there it bends, or jumps when the edge is straight. So each stretch
 * between two such angles is searched by itself, just inside of its ends, and
 * the best sample is refined between its neighbours by golden sections.
 */
#include "cut/milling.h"

enum { ENDS = 4, SAMPLES = 24, SECTIONS = 22, KINDS = 13 };

/* What is sought, each as something to be made large: the force in the plane,
 * then low and high of each component. */
static double score(const sw__wrench *w, int kind)
{
    if (kind == 0)
        return hypot(w->v[0], w->v[1]);
    return kind % 2 ? -w->v[(kind - 1) / 2] : w->v[(kind - 1) / 2];
}

typedef struct {
    double score[KINDS], theta[KINDS];
    double before[KINDS], after[KINDS]; /* neighbours of the best sample */
} search;

/* Ends of stretches, in order, within one pitch. */
static void set_ends(const sw__milling_full *m, double end[ENDS + 1])
{
    const double at[ENDS] = {m->start, m->end, m->start + m->lag,
                             m->end + m->lag};
    for (int i = 0; i < ENDS; i++) {
        double a = fmod(at[i], m->pitch);
        int k = i;
        for (; k > 0 && end[k - 1] > a; k--)
            end[k] = end[k - 1];
        end[k] = a;
    }
    end[ENDS] = end[0] + m->pitch;
}

static void sample(const sw__milling_full *m, double low, double high,
                   search *s)
{
    const double step = (high - low) / SAMPLES;
    for (int i = 0; i <= SAMPLES; i++) {
        const double theta = low + i * step;
        const sw__wrench w = sw__milling_at(m, theta);
        for (int k = 0; k < KINDS; k++) {
            const double value = score(&w, k);
            if (!(value > s->score[k]))
                continue;
            s->score[k] = value;
            s->theta[k] = theta;
            s->before[k] = fmax(low, theta - step);
            s->after[k] = fmin(high, theta + step);
        }
    }
}

static void refine(const sw__milling_full *m, search *s, int kind)
{
    const double golden = 0.6180339887498949;
    double low = s->before[kind], high = s->after[kind];
    double a = high - golden * (high - low), b = low + golden * (high - low);
    double at[2], value[2];
    for (int i = 0; i < SECTIONS; i++) {
        at[0] = a, at[1] = b;
        for (int k = 0; k < 2; k++) {
            const sw__wrench w = sw__milling_at(m, at[k]);
            value[k] = score(&w, kind);
            if (value[k] > s->score[kind]) {
                s->score[kind] = value[k];
                s->theta[kind] = at[k];
            }
        }
        if (value[0] > value[1])
            high = b;
        else
            low = a;
        a = high - golden * (high - low);
        b = low + golden * (high - low);
    }
}

sw__swing sw__milling_swing(const sw__milling_full *m)
{
    double end[ENDS + 1];
    search s;
    for (int k = 0; k < KINDS; k++)
        s.score[k] = -INFINITY, s.theta[k] = 0;
    set_ends(m, end);
    for (int i = 0; i < ENDS; i++) {
        const double inside = 1e-9 * m->pitch;
        if (end[i + 1] - end[i] > 1e-6 * m->pitch)
            sample(m, end[i] + inside, end[i + 1] - inside, &s);
    }
    for (int k = 0; k < KINDS; k++)
        refine(m, &s, k);
    sw__swing out;
    out.peak_theta = s.theta[0];
    out.peak = sw__milling_at(m, s.theta[0]);
    for (int i = 0; i < 6; i++) {
        out.low[i] = -s.score[1 + 2 * i];
        out.high[i] = s.score[2 + 2 * i];
    }
    return out;
}
