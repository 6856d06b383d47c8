/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Cut material: the constants of Kienzle's law by name.
 *
 * A name is either a row of tables/cutting.csv (a material group of VDI 3323,
 * `vdi-22`, or a single metal, `C45`) or one of tables/cutting_names.csv, which
 * says what row stands for it. Where that row is a group, the answer carries a
 * warning: a group holds many alloys.
 *
 * Sources: row by row in the tables. Two editions of the group table agree but
 * for titanium (1700 and 1160, 2110 and 1245 N/mm2): both are rows, and the
 * plain key is the larger, since whoever holds a part wants to know the most.
 * Groups 38 to 41 (hardened) are printed without an exponent: it is left open,
 * and a cut then has to be told one. Ranges: 15 % either way is the spread
 * between published tables; it is common practice, no source.
 *
 * Not in it: plastics, wood, composites (groups 29 and 30); coatings, coolant,
 * cutting speed (the tables hold for carbide at usual speeds; below about 80
 * m/min forces are some 10 to 25 % higher: from memory).
 */
#include "cut/cut_material.h"

#include "base/tables.h"

#include <string.h>

#define SW__S sw_cut_material_out
const sw_field sw__cut_material_out_fields[] = {
    SW__OUT_TEXT(material),
    SW__OUT_TEXT(stands_for),
    SW__OUT_TEXT(label),
    SW__OUT(kc11_MPa, "MPa"),
    SW__OUT(kc11_low_MPa, "MPa"),
    SW__OUT(kc11_high_MPa, "MPa"),
    SW__OUT(mc, ""),
    SW__OUT(reference_rake_deg, "deg"),
    SW__OUT(unit_power_MPa, "MPa"),
    SW__OUT_TEXT(unit_power),
    SW__OUT_TEXT(source),
    SW__END,
};
#undef SW__S

static const char *name_at(size_t i)
{
    if (i < sw__cutting_count)
        return sw__cutting[i].key;
    i -= sw__cutting_count;
    return i < sw__cutting_names_count ? sw__cutting_names[i].key : NULL;
}

const char *sw_cut_material_name(int index)
{
    return index >= 0 ? name_at((size_t)index) : NULL;
}

/* A name that begins as it was written comes first: 6061 before 6082. */
static int strangeness(const char *name, const char *known)
{
    const int starts = name[0] && strncmp(name, known, strlen(name)) == 0;
    return sw__edits(name, known) - (starts ? 100 : 0);
}

static int fail_name(sw_error *err, const char *name)
{
    enum { OFFERED = 4 };
    char message[240];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "material: ");
    sw__line_add_quoted(&line, name);
    sw__line_add(&line,
                 " has no cutting constants in the tables; nearest are ");
    int last = -1000;
    for (int n = 0; n < OFFERED;) {
        int next = 1000; /* the next worse score, and all that have it */
        for (size_t i = 0; name_at(i); i++) {
            const int s = strangeness(name, name_at(i));
            if (s > last && s < next)
                next = s;
        }
        for (size_t i = 0; name_at(i) && n < OFFERED; i++)
            if (strangeness(name, name_at(i)) == next) {
                sw__line_add(&line, n++ ? ", " : "");
                sw__line_add(&line, name_at(i));
            }
        last = next;
    }
    return sw__fail(err, SW_ERR_UNKNOWN, "material", message);
}

static const struct sw__cutting_row *row_of(const char *key)
{
    for (size_t i = 0; i < sw__cutting_count; i++)
        if (sw__edits(sw__cutting[i].key, key) == 0) /* capitals do not count */
            return &sw__cutting[i];
    return NULL;
}

static void take_unit_power(sw_cut_material_out *m, const char *key)
{
    m->unit_power_MPa = SW_UNSET;
    for (size_t i = 0; i < sw__unit_power_count; i++)
        if (strcmp(sw__unit_power[i].key, key) == 0) {
            /* kW per cm3/s to N/mm2 */
            m->unit_power_MPa = 1000 * sw__unit_power[i].kp_si;
            sw__copy(m->unit_power, sizeof m->unit_power,
                     sw__unit_power[i].label);
        }
}

static void take_row(sw_cut_material_out *m, const struct sw__cutting_row *row)
{
    sw__copy(m->stands_for, sizeof m->stands_for, row->key);
    sw__copy(m->label, sizeof m->label, row->label);
    m->kc11_MPa = row->kc11_MPa;
    m->kc11_low_MPa = row->kc11_low_MPa;
    m->kc11_high_MPa = row->kc11_high_MPa;
    m->mc = row->mc;
    m->reference_rake_deg = row->reference_rake_deg;
    if (sw__is_hearsay(row->status))
        m->warnings |= SW_WARN_TABLE_FROM_MEMORY;
    if (strstr(row->source, "editions disagree"))
        m->warnings |= SW_WARN_CUT_EDITIONS;
    sw__cite(m->source, sizeof m->source, row->source, row->edition);
}

sw_cut_material_out sw_cut_material(const char *name, sw_error *err)
{
    sw_cut_material_out m;
    memset(&m, 0, sizeof m);
    sw__clear(err);
    if (!name) {
        sw__spoil(&m, SW_STRUCT_CUT_MATERIAL_OUT,
                  sw__fail_null(err, "material"));
        return m;
    }
    const struct sw__cutting_row *row = row_of(name);
    if (row)
        sw__copy(m.material, sizeof m.material, row->key);
    const char *unit_power = row ? row->unit_power : "";
    for (size_t i = 0; i < sw__cutting_names_count && !row; i++)
        if (sw__edits(sw__cutting_names[i].key, name) == 0) {
            row = row_of(sw__cutting_names[i].stands_for);
            unit_power = sw__cutting_names[i].unit_power;
            if (row && !unit_power[0])
                unit_power = row->unit_power;
            sw__copy(m.material, sizeof m.material, sw__cutting_names[i].key);
            if (row && strncmp(row->key, "vdi-", 4) == 0)
                m.warnings |= SW_WARN_CUT_GROUP;
        }
    if (!row) {
        sw__spoil(&m, SW_STRUCT_CUT_MATERIAL_OUT, fail_name(err, name));
        return m;
    }
    take_row(&m, row);
    take_unit_power(&m, unit_power);
    return m;
}

sw_cut_material_out sw__cut_row(const char *name)
{
    return sw_cut_material(name, NULL);
}
