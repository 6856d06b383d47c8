/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Material: elastic constants and strengths by name.
 *
 * Sources: row by row in tables/materials.csv. Two handbooks differ by 1 to 4 %
 * in the elastic constants. Shear ratios are common practice; 0.58 for steel is
 * von Mises' 1/sqrt(3) applied to the tensile strength. Limiting pressures are
 * those of VDI 2230, the lower one where its editions of 1986 and 2003
 * disagree.
 *
 * A name may stand for the row of the same metal under another name; a wrought
 * aluminium without its temper for the usual one, an alloy steel for the
 * quenched and tempered one: common practice, no source. What has no row is not
 * given another's.
 *
 * Not in it: hardness, fatigue, heat, direction of rolling, thickness.
 */
#include "base/material.h"

#include "base/internal.h"
#include "base/tables.h"

#include <string.h>

#define SW__S sw_material_out
const sw_field sw__material_out_fields[] = {
    SW__OUT_TEXT(material),
    SW__OUT_TEXT(label),
    SW__OUT(modulus_MPa, "MPa"),
    SW__OUT(poisson, ""),
    SW__OUT(density_kg_per_m3, "kg/m3"),
    SW__OUT(yield_MPa, "MPa"),
    SW__OUT(tensile_MPa, "MPa"),
    SW__OUT(shear_ratio, ""),
    SW__OUT(pressure_limit_MPa, "MPa"),
    SW__OUT_TEXT(source),
    SW__END,
};
#undef SW__S

static const struct {
    const char *name, *key;
} also[] = {
    {"St37", "S235"},      {"St-37", "S235"},
    {"St50-2", "E295"},    {"1045", "C45"},
    {"Ck45", "C45"},       {"C45E", "C45"},
    {"4140", "42CrMo4"},   {"4340", "34CrNiMo6"},
    {"5115", "16MnCr5"},   {"X5CrNi18-10", "304"},
    {"GG-15", "GJL-150"},  {"GG-25", "GJL-250"},
    {"6061", "6061-T6"},   {"6061-T651", "6061-T6"},
    {"6082", "6082-T6"},   {"6082-T651", "6082-T6"},
    {"7075", "7075-T6"},   {"7075-T651", "7075-T6"},
    {"2024", "2024-T351"}, {"2024-T3", "2024-T351"},
    {"A380", "AlSi9Cu3"},  {"SAE-660", "C93200"},
};

/* The key of the row that a name stands for. */
static const char *row_key(const char *name)
{
    for (size_t i = 0; i < sizeof also / sizeof also[0]; i++)
        if (sw__edits(also[i].name, name) == 0)
            return also[i].key;
    return name;
}

/* A name that begins as it was written comes first: 6061 is 6061-T6. */
static int strangeness(const char *key, const char *known)
{
    const int starts = key[0] && strncmp(key, known, strlen(key)) == 0;
    return sw__edits(key, known) - (starts ? 100 : 0);
}

static int fail_material(sw_error *err, const char *field, const char *key)
{
    enum { OFFERED = 4 };
    char message[240];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, field);
    sw__line_add(&line, ": ");
    sw__line_add_quoted(&line, key);
    sw__line_add(&line, " is in no table; nearest are ");
    int last = -1000;
    for (int n = 0; n < OFFERED;) {
        int next = 1000; /* the next worse score, and all that have it */
        for (size_t i = 0; i < sw__materials_count; i++) {
            const int s = strangeness(key, sw__materials[i].key);
            if (s > last && s < next)
                next = s;
        }
        for (size_t i = 0; i < sw__materials_count && n < OFFERED; i++)
            if (strangeness(key, sw__materials[i].key) == next) {
                sw__line_add(&line, n++ ? ", " : "");
                sw__line_add(&line, sw__materials[i].key);
            }
        last = next;
    }
    return sw__fail(err, SW_ERR_UNKNOWN, field, message);
}

sw_material_out sw__material(const char *key, const char *field, sw_error *err)
{
    sw_material_out m;
    memset(&m, 0, sizeof m);
    sw__clear(err);
    if (!key) {
        sw__spoil(&m, SW_STRUCT_MATERIAL_OUT, sw__fail_null(err, field));
        return m;
    }
    const char *wanted = row_key(key);
    for (size_t i = 0; i < sw__materials_count; i++) {
        const struct sw__materials_row *row = &sw__materials[i];
        if (sw__edits(row->key, wanted) != 0) /* capitals do not count */
            continue;
        sw__copy(m.material, sizeof m.material, row->key);
        sw__copy(m.label, sizeof m.label, row->label);
        m.modulus_MPa = row->modulus_MPa;
        m.poisson = row->poisson;
        m.density_kg_per_m3 = row->density_kg_per_m3;
        m.yield_MPa = row->yield_MPa;
        m.tensile_MPa = row->tensile_MPa;
        m.shear_ratio = row->shear_ratio;
        m.pressure_limit_MPa = row->pressure_limit_MPa;
        if (sw__is_hearsay(row->status))
            m.warnings |= SW_WARN_TABLE_FROM_MEMORY;
        sw__cite(m.source, sizeof m.source, row->source, row->edition);
        return m;
    }
    sw__spoil(&m, SW_STRUCT_MATERIAL_OUT, fail_material(err, field, key));
    return m;
}

sw_material_out sw_material(const char *key, sw_error *err)
{
    return sw__material(key, "material", err);
}

const char *sw_material_name(int index)
{
    return index >= 0 && (size_t)index < sw__materials_count
               ? sw__materials[index].key
               : NULL;
}
