/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap unused: values that were given and that this kind of strap does not
 * use. They are no error, but somebody meant something by them.
 */
#include "clamp/strap_resolve.h"

int sw__strap_unused(const sw_strap_in *in)
{
    /* a word left open is flat, block, flat */
    const int sphere = in->seat == SW_SEAT_SPHERICAL;
    const int flat = in->nose == SW_NOSE_FLAT || !in->nose;
    const struct {
        int applies;
        double value;
    } given[] = {
        {in->nose == SW_NOSE_ROUND, in->nose_radius_mm},
        {flat, in->toe_land_mm},
        {in->heel != SW_HEEL_SCREW, in->heel_land_mm},
        {in->heel == SW_HEEL_SCREW, in->heel_screw_diameter_mm},
        {in->heel != SW_HEEL_SERRATED, in->mu_heel},
        {in->heel != SW_HEEL_SERRATED, in->mu_heel_high},
        {sphere, in->sphere_radius_mm},
        {sphere, in->mu_sphere},
        {sphere, in->permitted_tilt_deg},
        {!sphere, in->washer_diameter_mm},
        {!sphere, in->washer_thickness_mm},
        {in->nut != SW_NUT_STILL, in->seat_slip},
        {in->nut != SW_NUT_STILL, in->prevailing_torque_Nm},
        {in->strap != SW_STRAP_RIGID, in->strap_modulus_MPa},
        {!sw__is_set(in->heel_compliance_mm_per_N), in->heel_screw_diameter_mm},
    };
    for (size_t i = 0; i < sizeof given / sizeof given[0]; i++)
        if (!given[i].applies && sw__is_set(given[i].value))
            return 1;
    return in->nut == SW_NUT_STILL && in->restraint;
}
