/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap spread: the scatter of a tightening carried through one strap.
 *
 * Each trial is one strap of strap_draw.c, solved by the balance that
 * sw_strap() uses; low, median and high are quantiles of the trials at
 * (1 - c)/2, 1/2, (1 + c)/2 for the coverage c. With SW_VARY_PRELOAD only the
 * tightening is drawn; the toe force then grows with the preload alone, and its
 * quantiles are the toe forces of the preload's own.
 *
 * The error of a quantile by chance falls with the square root of the number of
 * trials: about 1 % of the width for 20,000.
 */
#include "clamp/strap.h"
#include "clamp/strap_band.h"
#include "clamp/strap_draw.h"
#include "clamp/strap_geometry.h"

#include <strapwise/strap_spread.h>

#include <stdlib.h>
#include <string.h>

#define SW__S sw_strap_spread_out
const sw_field sw__strap_spread_out_fields[] = {
    SW__OUT(preload_low_N, "N"),
    SW__OUT(preload_N, "N"),
    SW__OUT(preload_high_N, "N"),
    SW__OUT(toe_force_low_N, "N"),
    SW__OUT(toe_force_N, "N"),
    SW__OUT(toe_force_high_N, "N"),
    SW__OUT(toe_ratio, ""),
    SW__OUT(side_pull_low_N, "N"),
    SW__OUT(side_pull_N, "N"),
    SW__OUT(side_pull_high_N, "N"),
    SW__OUT(slides_share, ""),
    SW__OUT(walks_share, ""),
    SW__OUT(coverage, ""),
    SW__OUT_TEXT(method),
    SW__OUT(scatter_pct, "%"),
    SW__OUT(trials, ""),
    SW__OUT(failed, ""),
    SW__OUT_WORD(band, SW_WORDS_BAND),
    SW__END,
};
#undef SW__S

enum { FAILED = 1, SLIDES = 2, WALKS = 4 };

/* The trials of one run, one place each. */
typedef struct {
    const sw__strap_lot *lot;
    double *preload, *toe, *pull;
    unsigned char *mark;
} harvest;

static void draw_block(sw__chance *c, size_t first, size_t count, void *with)
{
    const harvest *h = with;
    for (size_t i = first; i < first + count; i++) {
        const sw__strap_drawn d = sw__strap_draw(h->lot, c);
        h->preload[i] = d.preload;
        h->toe[i] = d.toe;
        h->pull[i] = d.pull;
        h->mark[i] =
            (unsigned char)((d.failed ? FAILED : 0) | (d.slides ? SLIDES : 0) |
                            (d.walks ? WALKS : 0));
    }
}

/* Leaves out the trials without an answer; returns how many are left. */
static size_t gather(harvest *h, size_t trials, sw_strap_spread_out *out)
{
    size_t n = 0, slides = 0, walks = 0;
    for (size_t i = 0; i < trials; i++) {
        if (h->mark[i] & FAILED)
            continue;
        h->preload[n] = h->preload[i];
        h->toe[n] = h->toe[i];
        h->pull[n++] = h->pull[i];
        slides += (h->mark[i] & SLIDES) != 0;
        walks += (h->mark[i] & WALKS) != 0;
    }
    out->trials = (double)n;
    out->failed = (double)(trials - n);
    out->slides_share = (double)slides / (double)n;
    out->walks_share = (double)walks / (double)n;
    return n;
}

static void ends(double *value, size_t n, double coverage, double *low,
                 double *median, double *high)
{
    const double p[3] = {(1 - coverage) / 2, 0.5, (1 + coverage) / 2};
    double q[3];
    sw__quantiles(value, n, p, q);
    *low = q[0];
    *median = q[1];
    *high = q[2];
}

static void take_quantiles(harvest *h, size_t n, sw_strap_spread_out *out)
{
    const double c = out->coverage;
    ends(h->preload, n, c, &out->preload_low_N, &out->preload_N,
         &out->preload_high_N);
    ends(h->toe, n, c, &out->toe_force_low_N, &out->toe_force_N,
         &out->toe_force_high_N);
    ends(h->pull, n, c, &out->side_pull_low_N, &out->side_pull_N,
         &out->side_pull_high_N);
    out->toe_ratio = out->toe_force_low_N > 0
                         ? out->toe_force_high_N / out->toe_force_low_N
                         : SW_UNSET;
}

/* The strap as it stands must have an answer, so that a fault of the question
 * is told before trials hide it. */
static int prepare(const sw_strap_in *in, const sw_spread_in *spread,
                   sw__strap_lot *lot, sw_spread_in *scatter,
                   sw_strap_spread_out *out, sw_error *err)
{
    int status = sw__strap_open(in, &lot->full, err);
    if (status)
        return status;
    if (lot->full.in.nut == SW_NUT_STILL)
        return sw__fail(err, SW_ERR_CONFLICT, "nut",
                        "nut: nobody turns this one, so no torque scatters");
    const sw_strap_out s = sw_strap(in, err);
    if (s.status)
        return s.status;
    *scatter = *spread;
    status = sw__spread_open(scatter, sw__lubrication_used(&lot->full.question),
                             err);
    if (status)
        return status;
    const sw__strap_geometry g = sw__strap_place(&lot->full, 0, 0);
    lot->nominal = sw__strap_nominal(&lot->full.in, &g);
    lot->laid = sw__strap_lay(&lot->full);
    lot->slope = g.tan_theta;
    lot->sigmas = sw__spread_sigmas(scatter);
    lot->all = scatter->vary == SW_VARY_ALL;
    lot->slope_sigma =
        scatter->height_scatter_mm / sw__spread_z(scatter->published_coverage) /
        (lot->full.in.stud_to_toe_mm + lot->full.in.stud_to_heel_mm);
    lot->foot_open =
        (lot->full.in.assumed & sw__bit(SW_STRUCT_STRAP_IN, "foot")) != 0;
    out->warnings = s.warnings | sw__spread_warnings(scatter);
    out->coverage = scatter->coverage;
    sw__copy(out->method, sizeof out->method, scatter->method);
    out->scatter_pct =
        100 * tanh(sw__spread_z(scatter->coverage) *
                   sw__spread_sigma(&lot->sigmas, lot->full.torque.torque_Nm,
                                    lot->full.in.prevailing_torque_Nm));
    out->band = SW_BAND_SCATTER;
    return SW_OK;
}

static int run(harvest *h, const sw_spread_in *scatter, sw_progress progress,
               void *with, sw_strap_spread_out *out, sw_error *err)
{
    const size_t trials = (size_t)scatter->trials;
    if (sw__trials(trials, (uint64_t)scatter->seed, (int)scatter->threads,
                   draw_block, h, progress, with))
        return sw__fail(err, SW_ERR_STOPPED, "progress",
                        "progress: ended the run");
    const size_t n = gather(h, trials, out);
    if (n == 0)
        return sw__fail(
            err, SW_ERR_NONE, "in",
            "in: in none of the trials has the strap an equilibrium");
    if (n < trials)
        out->warnings |= SW_WARN_TRIALS_FAILED;
    const double beyond = 10; /* fewer say little about where an end is */
    if ((double)n * (1 - out->coverage) / 2 < beyond)
        out->warnings |= SW_WARN_FEW_TRIALS;
    take_quantiles(h, n, out);
    return SW_OK;
}

static int solve(const sw_strap_in *in, const sw_spread_in *spread,
                 sw_progress progress, void *with, sw_strap_spread_out *out,
                 sw_error *err)
{
    sw__strap_lot lot;
    sw_spread_in scatter;
    int status = prepare(in, spread, &lot, &scatter, out, err);
    if (status)
        return status;
    const size_t trials = (size_t)scatter.trials;
    double *places = malloc(trials * (3 * sizeof *places + 1));
    if (!places)
        return sw__fail(err, SW_ERR_MEMORY, "trials",
                        "trials: not enough memory for so many");
    harvest h = {&lot, places, places + trials, places + 2 * trials,
                 (unsigned char *)(places + 3 * trials)};
    status = run(&h, &scatter, progress, with, out, err);
    free(places);
    return status;
}

sw_strap_spread_out sw_strap_spread(const sw_strap_in *in,
                                    const sw_spread_in *spread,
                                    sw_progress progress, void *with,
                                    sw_error *err)
{
    sw_strap_spread_out out;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    int status = in ? SW_OK : sw__fail_null(err, "in");
    if (!status && !spread)
        status = sw__fail_null(err, "spread");
    if (!status)
        status = solve(in, spread, progress, with, &out, err);
    if (status)
        sw__spoil(&out, SW_STRUCT_STRAP_SPREAD_OUT, status);
    return out;
}

static sw_assumption assumed(const sw_strap_in *in, const sw_spread_in *spread,
                             int trials, int index, sw_error *err)
{
    sw__strap_full full;
    sw_spread_in scatter;
    sw__clear(err);
    int status = in ? SW_OK : sw__fail_null(err, "in");
    if (!status && !spread)
        status = sw__fail_null(err, "spread");
    if (!status)
        status = sw__strap_open(in, &full, err);
    if (!status) {
        scatter = *spread;
        status = sw__spread_open(&scatter, sw__lubrication_used(&full.question),
                                 err);
    }
    return status ? sw__no_assumption(status)
                  : sw__spread_assumed(&scatter, trials, index, err);
}

sw_assumption sw_strap_spread_assumed(const sw_strap_in *in,
                                      const sw_spread_in *spread, int index,
                                      sw_error *err)
{
    return assumed(in, spread, 1, index, err);
}

sw_assumption sw_strap_window_assumed(const sw_strap_in *in,
                                      const sw_spread_in *spread, int index,
                                      sw_error *err)
{
    return assumed(in, spread, 0, index, err);
}
