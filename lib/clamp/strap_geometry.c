/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap geometry: where the strap bears, and the strap in numbers. Equation
 * (8) of strap.c, and the shift of a round nose, r sin(theta) toward the toe.
 */
#include "clamp/strap_geometry.h"

#include <string.h>

#define SERRATED 1e6 /* friction of teeth: more than any side load */

static double strap_inertia(const sw_strap_in *in)
{
    const double t = in->strap_thickness_mm;
    return (in->strap_width_mm - in->slot_width_mm) * t * t * t / 12;
}

/* The contact moves from one edge of a land to the other over a small range of
 * tilt, in which both bear; the planar solver of the tests shows a tenth of a
 * degree. */
static int near(double theta, double edge)
{
    return fabs(theta - edge) <= SW__RAD(0.1) + 0.2 * fabs(edge);
}

static void place_toe(const sw_strap_in *in, double edge, int flip,
                      sw__strap_geometry *g)
{
    g->toe_bears = SW_BEARS_NOSE;
    if (in->nose == SW_NOSE_ROUND)
        g->a += in->nose_radius_mm * g->tan_theta * g->cos_theta;
    if (in->nose != SW_NOSE_FLAT)
        return;
    const int outer = (g->theta > edge) != flip;
    g->toe_bears = outer ? SW_BEARS_TIP : SW_BEARS_EDGE;
    g->toe_near = in->toe_land_mm > 0 && near(g->theta, edge);
    g->a += outer ? in->toe_land_mm : 0;
}

static void place_heel(const sw_strap_in *in, double edge, int flip,
                       sw__strap_geometry *g)
{
    g->heel_bears = SW_BEARS_NOSE;
    if (in->heel == SW_HEEL_SCREW)
        return;
    const int outer = (g->theta < edge) != flip;
    g->heel_bears = outer ? SW_BEARS_TIP : SW_BEARS_EDGE;
    g->heel_near = in->heel_land_mm > 0 && near(g->theta, edge);
    g->b += outer ? in->heel_land_mm : 0;
}

sw__strap_geometry sw__strap_lay(const sw__strap_full *full)
{
    const sw_strap_in *in = &full->in;
    const double d3 = full->thread.root_diameter_mm;
    sw__strap_geometry g;
    memset(&g, 0, sizeof g);
    g.a = in->stud_to_toe_mm;
    g.b = in->stud_to_heel_mm;
    g.L = g.a + g.b;
    g.t = in->strap_thickness_mm;
    g.EI_strap = in->strap_modulus_MPa * strap_inertia(in);
    g.EA_strap = 12 * g.EI_strap / (g.t * g.t);
    g.EI_stud = in->stud_modulus_MPa * SW__PI * d3 * d3 * d3 * d3 / 64;
    g.length = in->stud_length_mm;
    g.rim = in->rim_radius_mm;
    g.mu_toe = in->mu_toe;
    g.mu_heel = in->heel == SW_HEEL_SERRATED ? SERRATED : in->mu_heel;
    g.c_toe = in->toe_compliance_mm_per_N;
    g.c_heel = in->heel_compliance_mm_per_N;
    g.permitted =
        in->seat == SW_SEAT_SPHERICAL ? SW__RAD(in->permitted_tilt_deg) : 0;
    return g;
}

void sw__strap_load(sw__strap_geometry *g, const sw_strap_in *in, double F,
                    double theta, double tan_theta)
{
    g->F = F;
    g->beam = sw__beam_of(F, g->EI_stud, g->length);
    g->theta = theta;
    g->tan_theta = tan_theta;
    g->cos_theta = 1 / sqrt(1 + tan_theta * tan_theta);
    /* tilts at which the lands change their edge, by the distances as given */
    const int rigid = in->strap == SW_STRAP_RIGID;
    g->toe_edge = rigid ? 0 : sw__strap_toe_slope(g);
    g->heel_edge = rigid ? 0 : -sw__strap_heel_slope(g);
}

void sw__strap_bear(sw__strap_geometry *g, const sw_strap_in *in, int flip_toe,
                    int flip_heel)
{
    place_toe(in, g->toe_edge, flip_toe, g);
    place_heel(in, g->heel_edge, flip_heel, g);
    g->L = g->a + g->b;
    g->y_toe = -g->L * g->tan_theta - in->step_mm;
    g->y_seat = g->t / g->cos_theta - g->b * g->tan_theta;
}

sw__strap_geometry sw__strap_place(const sw__strap_full *full, int flip_toe,
                                   int flip_heel)
{
    const double theta = SW__RAD(full->in.tilt_deg);
    sw__strap_geometry g = sw__strap_lay(full);
    sw__strap_load(&g, &full->in, full->torque.preload_N, theta, tan(theta));
    sw__strap_bear(&g, &full->in, flip_toe, flip_heel);
    return g;
}
