/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Kienzle: the specific cutting force, and what else the three cuts share.
 *
 * Symbols: h chip thickness, b chip width, kc specific force, kc11 its value at
 * h = b = 1 mm, mc exponent, gamma rake, gamma0 the rake that the table holds
 * for, u energy per volume of chips, Q chips per time.
 *
 *   specific force  kc = kc11 (h/mm)^-mc Kg Kw                           (1)
 *   cutting force   Fc = kc b h                                          (2)
 *   rake            Kg = 1 - e (gamma - gamma0), e = 1 .. 1.5 % a degree (3)
 *   wear            Kw = 1.0 sharp, 1.3, 1.5 worn                        (4)
 *   second opinion  P = u Kw Q, so u stands for kc Kg^0                  (5)
 *
 * The unit of (2) is N/mm2 times mm times mm. Web pages multiply kc by depth,
 * width and feed per tooth: N/mm2 times mm3 is a moment (N mm), not a force,
 * and no function here takes those three together without the cutter's
 * diameter. By (2) no tooth can push with more than kc ap fz.
 *
 * Sources: (1), (2) general cutting theory, VDI 3323 tables for the constants.
 * (3): tool makers state that the force falls with positive rake; the percents
 * are from memory. (4) common practice, no source. (5) Machinery's Handbook
 * 31st ed. p. 1147, with its feed factor C left at 1. The law was measured down
 * to chips of about 0.02 mm: thinner ones get a warning, since a rounded edge
 * then rubs, and the real force is larger.
 *
 * Not in it: the cutting speed, coolant, chip breakers, the feed factor of (5),
 * the influence of wear on the direction of the force.
 */
#include "cut/kienzle.h"

#include "cut/cut_material.h"

#include <string.h>

static int fail_metal(sw_error *err)
{
    return sw__fail(err, SW_ERR_MISSING, "material",
                    "material: missing; name what is cut, or give kc11_MPa and "
                    "mc");
}

static int fail_exponent(sw_error *err, const char *key)
{
    char message[160];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "mc: missing; no exponent is in print for ");
    sw__line_add(&line, key);
    sw__line_add(&line, " (hardened): give one, 0 to 0.6; others have 0.2 to "
                        "0.3");
    return sw__fail(err, SW_ERR_MISSING, "mc", message);
}

static double rake_factor(const sw__metal *m)
{
    if (*m->rake_deg == *m->reference_rake_deg)
        return 1;
    return 1 -
           *m->rake_effect_pct / 100 * (*m->rake_deg - *m->reference_rake_deg);
}

static int check_rake(const sw__metal *m, sw_error *err)
{
    if (rake_factor(m) >= 0.3)
        return SW_OK;
    return sw__fail(err, SW_ERR_CONFLICT, "rake_deg",
                    "rake_deg: so far from the table's rake that less than 0.3 "
                    "of the force would be left; give kc11_MPa for this tool");
}

int sw__metal_open(const sw__metal *m, const sw__filler *fill,
                   uint64_t *warnings, sw_error *err)
{
    const int known = sw__is_set(*m->kc11_MPa) && sw__is_set(*m->mc);
    const int raked = sw__is_set(*m->rake_deg);
    double rake = 0;
    if (!m->material[0] && !known)
        return fail_metal(err);
    if (m->material[0]) {
        const sw_cut_material_out row = sw_cut_material(m->material, err);
        if (row.status)
            return row.status;
        if (!sw__is_set(row.mc) && !sw__is_set(*m->mc))
            return fail_exponent(err, row.stands_for);
        if (!known)
            *warnings |= row.warnings;
        sw__fill_number(fill, "kc11_MPa", row.kc11_MPa);
        sw__fill_number(fill, "mc", row.mc);
        sw__fill_number(fill, "unit_power_MPa", row.unit_power_MPa);
        rake = row.reference_rake_deg;
    }
    sw__fill_number(fill, "reference_rake_deg", rake);
    sw__fill_number(fill, "rake_deg", *m->reference_rake_deg);
    if (!raked && sw__is_set(*m->rake_effect_pct))
        *warnings |= SW_WARN_UNUSED_INPUT;
    if (*m->rake_deg != *m->reference_rake_deg)
        sw__fill_number(fill, "rake_effect_pct", 1);
    sw__fill_number(fill, "wear_factor", 1.3);
    return check_rake(m, err);
}

double sw__kc(const sw__metal *m, double chip_mm)
{
    return *m->kc11_MPa * pow(chip_mm, -*m->mc) * rake_factor(m) *
           *m->wear_factor;
}

double sw__times(double a, double b)
{
    return sw__is_set(a) && sw__is_set(b) ? a * b : SW_UNSET;
}

double sw__by_volume(const sw__metal *m)
{
    return sw__times(*m->unit_power_MPa, *m->wear_factor);
}

int sw__speed_open(double speed_rpm, double cutting_speed_m_per_min,
                   double diameter_mm, sw__speed *speed, sw_error *err)
{
    const int turns = sw__is_set(speed_rpm);
    const int runs = sw__is_set(cutting_speed_m_per_min);
    if (turns && runs)
        return sw__fail(err, SW_ERR_CONFLICT, "speed_rpm",
                        "speed_rpm: give it or cutting_speed_m_per_min, not "
                        "both");
    speed->rpm = speed_rpm;
    speed->m_per_min = cutting_speed_m_per_min;
    if (!sw__is_set(diameter_mm))
        return SW_OK;
    const double m_per_turn = SW__PI * diameter_mm / 1000;
    if (turns)
        speed->m_per_min = speed_rpm * m_per_turn;
    else if (runs)
        speed->rpm = cutting_speed_m_per_min / m_per_turn;
    return SW_OK;
}

sw_assumption sw__cut_assumed(const void *in, int structure, uint64_t assumed,
                              const char *material, int index, sw_error *err)
{
    sw_assumption a = sw__assumed(in, structure, assumed, index, err);
    if (a.status || !material[0])
        return a;
    const sw_cut_material_out row = sw__cut_row(material);
    const int force = strcmp(a.name, "kc11_MPa") == 0;
    if (strcmp(a.name, "unit_power_MPa") == 0) {
        sw__line line = sw__line_start(a.source, sizeof a.source);
        sw__line_add(&line, "Machinery's Handbook p. 1147: ");
        sw__line_add(&line, row.unit_power);
    } else if (force || strcmp(a.name, "mc") == 0) {
        sw__line line = sw__line_start(a.source, sizeof a.source);
        sw__line_add(&line, row.stands_for);
        sw__line_add(&line, ", ");
        sw__line_add(&line, row.source);
    }
    if (force) {
        a.low = row.kc11_low_MPa;
        a.high = row.kc11_high_MPa;
    }
    return a;
}

int sw__cut_missing(double value, const char *field, const char *what,
                    sw_error *err)
{
    if (sw__is_set(value))
        return SW_OK;
    char message[160];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, field);
    sw__line_add(&line, ": missing; give ");
    sw__line_add(&line, what);
    return sw__fail(err, SW_ERR_MISSING, field, message);
}
