/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Calibrate friction: thread and seat told apart.
 *
 * Symbols as in calibrate.c; T_th torque in the thread, prevailing torque
 * taken off, T_b torque under the nut, T = T_th + T_b, P pitch, d2 pitch
 * diameter, alpha half the thread angle, r friction radius.
 *
 *   mu_thread = (T_th/F - P/2pi)/(d2/(2 cos alpha))                    (1)
 *   mu_seat   = T_b/(r F)                                              (2)
 *   mu_total  = (T/F - P/2pi)/(d2/(2 cos alpha) + r)                   (3)
 *
 * Source: the definitions of ISO 16047 (from memory: 0.577 d2 there, r is half
 * its D_b), which are (2) of torque.c solved for friction. Where one of the two
 * torques was measured the other is the rest; where both were and miss the
 * whole by more than a tenth, that is warned of.
 *
 * Intervals are t-intervals of the mean, over the pairs that have parted
 * torques.
 */
#include "fastener/calibrate.h"

#include <stdlib.h>

#define MISS 0.1 /* of the torque; common practice, no source */

typedef struct {
    double thread, seat, total;
} friction;

static friction of_pair(const sw__pair *p, const sw_calibrate_in *full,
                        const sw_thread_out *t, sw_calibrate_out *out)
{
    const double T0 = full->prevailing_torque_Nm;
    const double arm =
        t->pitch_diameter_mm / (2 * cos(SW__RAD(t->flank_angle_deg)));
    const double stretch = t->pitch_mm / (2 * SW__PI);
    double thread = p->thread_torque_Nm, seat = p->seat_torque_Nm;
    if (!sw__is_set(thread))
        thread = p->torque_Nm - seat;
    if (!sw__is_set(seat))
        seat = p->torque_Nm - thread;
    if (fabs(thread + seat - p->torque_Nm) > MISS * p->torque_Nm)
        out->warnings |= SW_WARN_FACTOR_IMPLAUSIBLE;
    const double per_N = 1000 / p->force_N;
    return (friction){((thread - T0) * per_N - stretch) / arm,
                      seat * per_N / full->friction_radius_mm,
                      ((p->torque_Nm - T0) * per_N - stretch) /
                          (arm + full->friction_radius_mm)};
}

static void interval(const double *mu, size_t n, double confidence,
                     double *mean, double *low, double *high)
{
    double sd;
    if (n == 1) {
        *mean = mu[0];
        return;
    }
    sw__moments(mu, n, mean, &sd);
    const double margin = sw__mean_margin(sd, n, confidence);
    *low = *mean - margin;
    *high = *mean + margin;
}

int sw__calibrate_friction(const sw_calibrate_in *full, const sw_pairs *pairs,
                           const sw_thread_out *t, sw_calibrate_out *out,
                           sw_error *err)
{
    const size_t most = (size_t)pairs->count;
    size_t n = 0;
    out->mu_thread = out->mu_thread_low = out->mu_thread_high = SW_UNSET;
    out->mu_seat = out->mu_seat_low = out->mu_seat_high = SW_UNSET;
    out->mu_total = out->mu_total_low = out->mu_total_high = SW_UNSET;
    out->friction_radius_mm = SW_UNSET;
    if (!sw__pairs_parted(pairs))
        return SW_OK;
    double *mu = malloc(3 * most * sizeof *mu);
    if (!mu)
        return sw__fail_memory(err);
    for (int i = 0; i < pairs->count; i++) {
        const sw__pair *p = &pairs->pair[i];
        if (!sw__is_set(p->thread_torque_Nm) && !sw__is_set(p->seat_torque_Nm))
            continue;
        const friction f = of_pair(p, full, t, out);
        mu[n] = f.thread;
        mu[most + n] = f.seat;
        mu[2 * most + n++] = f.total;
    }
    const double c = full->confidence;
    interval(mu, n, c, &out->mu_thread, &out->mu_thread_low,
             &out->mu_thread_high);
    interval(mu + most, n, c, &out->mu_seat, &out->mu_seat_low,
             &out->mu_seat_high);
    interval(mu + 2 * most, n, c, &out->mu_total, &out->mu_total_low,
             &out->mu_total_high);
    out->friction_radius_mm = full->friction_radius_mm;
    free(mu);
    return SW_OK;
}
