/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say matters: which of the things nobody measured moves the answer most, the
 * largest first, and how many do not.
 */
#include "cli.h"

#include <math.h>
#include <string.h>

#define WORTH_SAYING 0.01 /* of the toe force */
#define SHOWN_MOST 8

typedef struct {
    sw_assumption assumed;
    sw_matter_out effect;
    double size; /* of the effect, over the toe force */
} matter;

static int rank(const sw_strap_in *in, double toe_N, matter *most, int *all)
{
    int shown = 0;
    for (*all = 0;; (*all)++) {
        matter m;
        m.assumed = sw_strap_assumed(in, *all, NULL);
        if (m.assumed.status)
            return shown;
        m.effect = sw_strap_matters(in, *all, NULL);
        if (m.effect.status)
            continue;
        m.size = fmax(m.effect.toe_high_N - m.effect.toe_low_N,
                      m.effect.pull_high_N - m.effect.pull_low_N) /
                 toe_N;
        if (m.size < WORTH_SAYING)
            continue;
        int at = shown < SHOWN_MOST ? shown : SHOWN_MOST;
        while (at > 0 && most[at - 1].size < m.size)
            at--;
        if (at == SHOWN_MOST)
            continue;
        shown += shown < SHOWN_MOST;
        memmove(&most[at + 1], &most[at],
                (size_t)(shown - at - 1) * sizeof *most);
        most[at] = m;
    }
}

static void say_span(page *p, int us, double low, double high)
{
    page_number(p, us ? in_unit(low, "lbf", SW_KIND_FORCE) : low, 3);
    page_add(p, " .. ");
    page_number(p, us ? in_unit(high, "lbf", SW_KIND_FORCE) : high, 3);
}

static void say_one(page *p, int us, const matter *m)
{
    enum { VALUE = 20, TOE = 44, PULL = 60 };
    char name[48];
    spell_option(m->assumed.name, name, sizeof name, NULL);
    page_add(p, "  ");
    page_add(p, name);
    page_tab(p, VALUE);
    say_assumed_value(p, us, &m->assumed);
    page_tab(p, TOE);
    say_span(p, us, m->effect.toe_low_N, m->effect.toe_high_N);
    page_tab(p, PULL);
    say_span(p, us, m->effect.pull_low_N, m->effect.pull_high_N);
    page_add(p, "\n");
}

void say_matters(page *p, int us, const sw_strap_in *in, double toe_N)
{
    matter most[SHOWN_MOST];
    int all = 0;
    const int shown = rank(in, toe_N, most, &all);
    if (all == 0)
        return;
    page_add(p, "\nassumed, what matters most first (give it to replace it)\n"
                "  option            value (usual range)     ");
    page_add(p, us ? "toe, lbf        side pull, lbf\n"
                   : "toe, N          side pull, N\n");
    for (int i = 0; i < shown; i++)
        say_one(p, us, &most[i]);
    char count[16];
    sw_format(all - shown, 6, count, sizeof count);
    page_add(p, "  ");
    const size_t start = p->length;
    page_add(p, count);
    page_add(p, " other defaults entered that move both by less than 1 % of "
                "the toe force, or have no usual range; --assumed lists all "
                "with their sources");
    page_wrap(p, start, 2);
    page_add(p, "\n");
}
