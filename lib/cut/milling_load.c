/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Milling load: the force on the part at an instant, and its mean. Symbols and
 * equations: milling.c.
 *
 * The tangential force goes with sin(phi)^(1-mc), which has no derivative where
 * a chip begins at nothing (phi = 0 or pi). So phi runs over the arc by the
 * smooth step t^3 (10 - 15 t + 6 t^2), under which the integrand starts and ends
 * flat, and 24 points of Gauss and Legendre leave an error below 1e-9.
 */
#include "cut/milling.h"

/* Nodes and weights on -1 .. 1, the other half by symmetry. */
static const struct {
    double x, weight;
} gauss[] = {
    {0.06405689286260563, 0.12793819534675221},
    {0.19111886747361631, 0.1258374563468283},
    {0.3150426796961634, 0.12167047292780342},
    {0.43379350762604513, 0.11550566805372561},
    {0.54542147138883956, 0.10744427011596561},
    {0.64809365193697555, 0.097618652104114065},
    {0.74012419157855436, 0.086190161531953288},
    {0.82000198597390295, 0.073346481411080411},
    {0.88641552700440096, 0.059298584915436742},
    {0.9382745520027328, 0.044277438817419551},
    {0.97472855597130947, 0.028531388628933743},
    {0.99518721999702131, 0.012341229799987091},
};
#define HALF ((int)(sizeof gauss / sizeof gauss[0]))

/* One tooth's edge where it stands at phi, `share` mm of it, z over the floor:
 * equations (5) to (8), in the frame of the feed. */
static void add(const sw__milling_full *m, double phi, double share, double z,
                sw__wrench *w)
{
    const double s = sin(phi), c = cos(phi);
    const double Ft = m->force_N_per_mm * share * pow(fmax(s, 0), m->power);
    const double Fr = m->radial * Ft;
    const double r = m->in.diameter_mm / 2, x = r * s, y = r * c;
    const double Fx = Ft * c + Fr * s, Fy = -Ft * s + Fr * c;
    const double Fz = m->axial * Ft;
    w->v[0] += Fx;
    w->v[1] += Fy;
    w->v[2] += Fz;
    w->v[3] += (y * Fz - z * Fy) / 1000;
    w->v[4] += (z * Fx - x * Fz) / 1000;
    w->v[5] += -r * Ft / 1000;
}

/* Integral of add() over phi from low to high, of `density` mm of edge for each
 * radian; z falls with phi from z0 at low by `slope`. */
static void integrate(const sw__milling_full *m, double low, double high,
                      double density, double z0, double slope, sw__wrench *w)
{
    for (int i = 0; i < 2 * HALF; i++) {
        const int k = i < HALF ? i : i - HALF;
        const double t = 0.5 + (i < HALF ? -0.5 : 0.5) * gauss[k].x;
        const double step = t * t * t * (10 + t * (6 * t - 15));
        const double pace = 30 * t * t * (1 - t) * (1 - t);
        const double way = (high - low) * step;
        add(m, low + way, gauss[k].weight / 2 * pace * (high - low) * density,
            z0 - slope * way, w);
    }
}

/* From the frame of the feed into that of the part. */
static void turn(const sw__milling_full *m, sw__wrench *w)
{
    const double c = cos(m->feed), s = sin(m->feed);
    for (int i = 0; i < 6; i += 3) {
        const double x = w->v[i], y = w->v[i + 1];
        w->v[i] = c * x - s * y;
        w->v[i + 1] = s * x + c * y;
    }
}

sw__wrench sw__milling_at(const sw__milling_full *m, double theta)
{
    const double ap = m->in.depth_mm;
    /* a lag this small makes no difference, but a quotient of nothings */
    const int straight = m->lag < 1e-9;
    const double lag = straight ? 0 : m->lag;
    /* a tooth that enters where another leaves: one of the two, whatever the
     * last digit says */
    const double tie = 1e-12;
    sw__wrench w = {{0}};
    /* the edges of one tooth a whole turn of the helix apart are as two */
    const int last = (int)floor((m->end + lag - theta) / m->pitch);
    for (int j = (int)ceil((m->start - theta - tie) / m->pitch); j <= last;
         j++) {
        const double tip = theta + j * m->pitch;
        if (straight) {
            if (tip >= m->start - tie && tip < m->end - tie)
                add(m, tip, ap, ap / 2, &w);
            continue;
        }
        const double low = fmax(m->start, tip - lag);
        const double high = fmin(m->end, tip);
        if (high > low)
            integrate(m, low, high, ap / lag, ap / lag * (tip - low), ap / lag,
                      &w);
    }
    turn(m, &w);
    return w;
}

sw__wrench sw__milling_mean(const sw__milling_full *m, double *tangential_N)
{
    sw__wrench w = {{0}};
    const double ap = m->in.depth_mm;
    integrate(m, m->start, m->end, ap / m->pitch, ap / 2, 0, &w);
    *tangential_N = -w.v[5] * 2000 / m->in.diameter_mm;
    turn(m, &w);
    return w;
}
