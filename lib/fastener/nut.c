/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Nut: stress under the proof load, by class and diameter.
 *
 *   proof load = proof stress x stress area of the thread                (1)
 *
 * The stress grows with the diameter because the loads of ISO 898-2 do; a nut
 * of the class named by the first number of a bolt's class takes that bolt to
 * its breaking load.
 *
 * Sources: ISO 898-2 (loads published from M5 to M36, divided by the stress
 * area), the rest from memory: SAE J995, ISO 3506-2, as the rows of
 * tables/nuts.csv say. Nothing is interpolated; a diameter outside a row's
 * range is refused.
 *
 * Not in it: thin and all-metal prevailing nuts, fine metric threads (up to
 * 7 % more), T-nuts, which have proof loads of their own.
 */
#include "fastener/nut.h"

#include "base/internal.h"
#include "base/tables.h"

#include <string.h>

#define SW__S sw_nut_out
const sw_field sw__nut_out_fields[] = {
    SW__OUT_TEXT(nut_class),
    SW__OUT(proof_MPa, "MPa"),
    SW__OUT_TEXT(source),
    SW__END,
};
#undef SW__S

static int fail_nut(sw_error *err, const char *nut_class, double d)
{
    char message[240];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "nut_class: ");
    sw__line_add_quoted(&line, nut_class);
    double low = 0, high = 0;
    for (size_t i = 0; i < sw__nuts_count; i++)
        if (strcmp(sw__nuts[i].grade, nut_class) == 0) {
            low = low > 0 ? low : sw__nuts[i].d_min_mm;
            high = sw__nuts[i].d_max_mm;
        }
    if (high > 0) {
        sw__line_add(&line, " is for diameters ");
        sw__line_add_number(&line, low);
        sw__line_add(&line, " to ");
        sw__line_add_number(&line, high);
        sw__line_add(&line, " mm, not ");
        sw__line_add_number(&line, d);
        sw__line_add(&line, " mm");
        return sw__fail(err, SW_ERR_RANGE, "nut_class", message);
    }
    sw__line_add(&line, " is in no table; known are");
    const char *last = "";
    for (size_t i = 0; i < sw__nuts_count; i++)
        if (strcmp(last, sw__nuts[i].grade) != 0) {
            last = sw__nuts[i].grade;
            sw__line_add(&line, " ");
            sw__line_add(&line, last);
        }
    return sw__fail(err, SW_ERR_UNKNOWN, "nut_class", message);
}

sw_nut_out sw_nut_proof(const char *nut_class, double nominal_mm, sw_error *err)
{
    sw_nut_out n;
    memset(&n, 0, sizeof n);
    sw__clear(err);
    int status = SW_OK;
    if (!nut_class)
        status = sw__fail_null(err, "nut_class");
    else if (!(nominal_mm >= 1 && nominal_mm <= 100))
        status = sw__fail_range(err, "nominal_mm", nominal_mm, "mm", 1, 100);
    if (status) {
        sw__spoil(&n, SW_STRUCT_NUT_OUT, status);
        return n;
    }
    for (size_t i = 0; i < sw__nuts_count; i++) {
        const struct sw__nuts_row *row = &sw__nuts[i];
        if (strcmp(row->grade, nut_class) != 0 ||
            nominal_mm < row->d_min_mm - 1e-9 ||
            nominal_mm > row->d_max_mm + 1e-9)
            continue;
        sw__copy(n.nut_class, sizeof n.nut_class, row->grade);
        n.proof_MPa = row->proof_MPa;
        if (sw__is_hearsay(row->status))
            n.warnings |= SW_WARN_TABLE_FROM_MEMORY;
        sw__cite(n.source, sizeof n.source, row->source, row->edition);
        return n;
    }
    sw__spoil(&n, SW_STRUCT_NUT_OUT, fail_nut(err, nut_class, nominal_mm));
    return n;
}

const char *sw_nut_name(int index)
{
    return index >= 0 && (size_t)index < sw__nuts_count ? sw__nuts[index].grade
                                                        : NULL;
}

/* ISO 898-2: the bolt's first number, or the next class made; SAE J995 from
 * memory; stainless: ISO 3506-2, the same class. */
const char *sw__nut_for(const char *grade)
{
    static const struct {
        const char *grade, *nut;
    } row[] = {
        {"4.6", "5"},
        {"4.8", "5"},
        {"5.6", "5"},
        {"5.8", "5"},
        {"6.8", "6"},
        {"8.8", "8"},
        {"9.8", "10"},
        {"10.9", "10"},
        {"12.9", "12"},
        {"grade-1", "grade-2"},
        {"grade-2", "grade-2"},
        {"A307", "grade-2"},
        {"grade-4", "grade-5"},
        {"grade-5", "grade-5"},
        {"grade-5.2", "grade-5"},
        {"A449", "grade-5"},
        {"grade-7", "grade-8"},
        {"grade-8", "grade-8"},
        {"A490", "grade-8"},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
        if (strcmp(row[i].grade, grade) == 0)
            return row[i].nut;
    for (int i = 0; sw_nut_name(i); i++)
        if (strcmp(sw_nut_name(i), grade) == 0)
            return sw_nut_name(i);
    return "";
}
