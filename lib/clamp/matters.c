/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Matters: which of the things nobody measured moves the answer most.
 *
 * One at a time: the strap is solved again with one default at either end of
 * its usual range. Ranges are those printed beside the default. The friction
 * behind an assumed nut factor goes with the factor, so it is not moved alone.
 * Of the words only the stud's foot is tried: whether it is held nobody can
 * see, what seat, nose, heel and nut are everybody can.
 */
#include "base/internal.h"
#include "clamp/strap.h"

#include <strapwise/ask.h>

#include <string.h>

#define SW__S sw_matter_out
const sw_field sw__matter_out_fields[] = {
    SW__OUT_TEXT(name),        SW__OUT(toe_low_N, "N"),
    SW__OUT(toe_high_N, "N"),  SW__OUT(pull_low_N, "N"),
    SW__OUT(pull_high_N, "N"), SW__END,
};
#undef SW__S

static void include_strap(const sw_strap_in *in, sw_matter_out *m)
{
    const sw_strap_out s = sw__strap_bare(in);
    if (s.status) /* that end of the range has no answer of its own */
        return;
    m->toe_low_N = fmin(m->toe_low_N, s.toe_force_N);
    m->toe_high_N = fmax(m->toe_high_N, s.toe_force_N);
    m->pull_low_N = fmin(m->pull_low_N, s.side_pull_N);
    m->pull_high_N = fmax(m->pull_high_N, s.side_pull_N);
}

static void try_number(const sw_strap_in *in, const sw_assumption *a,
                       const sw_field *f, sw_matter_out *m)
{
    const double end[2] = {a->low, a->high};
    if (!(a->low < a->high))
        return;
    for (int i = 0; i < 2; i++) {
        sw_strap_in q = *in;
        memcpy((char *)&q + f->offset, &end[i], sizeof end[i]);
        include_strap(&q, m);
    }
}

static void try_words(const sw_strap_in *in, const sw_field *f,
                      sw_matter_out *m)
{
    for (int word = 1; sw_word(f->words, word); word++) {
        sw_strap_in q = *in;
        memcpy((char *)&q + f->offset, &word, sizeof word);
        include_strap(&q, m);
    }
}

static int moves_with_factor(const sw_strap_in *full, const char *name)
{
    return sw__is_set(full->nut_factor) &&
           (strcmp(name, "mu_thread") == 0 || strcmp(name, "mu_seat") == 0);
}

sw_matter_out sw_strap_matters(const sw_strap_in *in, int index, sw_error *err)
{
    sw_matter_out m;
    memset(&m, 0, sizeof m);
    const sw_assumption a = sw_strap_assumed(in, index, err);
    const sw_strap_out s =
        a.status ? (sw_strap_out){.status = a.status} : sw_strap(in, err);
    if (s.status) {
        sw__spoil(&m, SW_STRUCT_MATTER_OUT, s.status);
        return m;
    }
    sw__copy(m.name, sizeof m.name, a.name);
    m.toe_low_N = m.toe_high_N = s.toe_force_N;
    m.pull_low_N = m.pull_high_N = s.side_pull_N;
    sw_strap_in full = *in;
    const sw_field *f = sw_field_named(SW_STRUCT_STRAP_IN, a.name);
    if (sw_strap_resolve(&full, NULL) || moves_with_factor(&full, a.name))
        return m;
    if (f->type == SW_FIELD_NUMBER)
        try_number(in, &a, f, &m);
    else if (strcmp(a.name, "foot") == 0)
        try_words(in, f, &m);
    return m;
}
