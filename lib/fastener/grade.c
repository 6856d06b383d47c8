/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Grade: strength of a stud by property class or grade and diameter.
 *
 * Sources: ISO 898-1 (classes 4.6 to 12.9), SAE J429 (grades), ISO 3506-1
 * (A2, A4), as the rows of tables/grades.csv say. Nothing is interpolated; a
 * diameter outside a row's range is refused.
 */
#include "base/internal.h"
#include "base/tables.h"

#include <strapwise/grade.h>

#include <string.h>

#define SW__S sw_grade_out
const sw_field sw__grade_out_fields[] = {
    SW__OUT_TEXT(grade),       SW__OUT(proof_MPa, "MPa"),
    SW__OUT(yield_MPa, "MPa"), SW__OUT(tensile_MPa, "MPa"),
    SW__OUT_TEXT(source),      SW__END,
};
#undef SW__S

static int fail_grade(sw_error *err, const char *grade, double d)
{
    char message[240];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "grade: ");
    sw__line_add_quoted(&line, grade);
    int known = 0;
    for (size_t i = 0; i < sw__grades_count; i++)
        if (strcmp(sw__grades[i].grade, grade) == 0) {
            sw__line_add(&line, known++ ? " and " : " is for diameters ");
            sw__line_add_number(&line, sw__grades[i].d_min_mm);
            sw__line_add(&line, " to ");
            sw__line_add_number(&line, sw__grades[i].d_max_mm);
            sw__line_add(&line, " mm");
        }
    if (known) {
        sw__line_add(&line, ", not ");
        sw__line_add_number(&line, d);
        sw__line_add(&line, " mm");
        return sw__fail(err, SW_ERR_RANGE, "grade", message);
    }
    sw__line_add(&line, " is in no table; known are");
    const char *last = "";
    for (size_t i = 0; i < sw__grades_count; i++)
        if (strcmp(last, sw__grades[i].grade) != 0) {
            last = sw__grades[i].grade;
            sw__line_add(&line, " ");
            sw__line_add(&line, last);
        }
    return sw__fail(err, SW_ERR_UNKNOWN, "grade", message);
}

sw_grade_out sw_grade(const char *grade, double nominal_mm, sw_error *err)
{
    sw_grade_out g;
    memset(&g, 0, sizeof g);
    sw__clear(err);
    int status = SW_OK;
    if (!grade)
        status = sw__fail_null(err, "grade");
    else if (!(nominal_mm >= 1 && nominal_mm <= 100))
        status = sw__fail_range(err, "nominal_mm", nominal_mm, "mm", 1, 100);
    if (status) {
        sw__spoil(&g, SW_STRUCT_GRADE_OUT, status);
        return g;
    }
    for (size_t i = 0; i < sw__grades_count; i++) {
        const struct sw__grades_row *row = &sw__grades[i];
        if (strcmp(row->grade, grade) != 0 ||
            nominal_mm < row->d_min_mm - 1e-9 ||
            nominal_mm > row->d_max_mm + 1e-9)
            continue;
        sw__copy(g.grade, sizeof g.grade, row->grade);
        g.proof_MPa = row->proof_MPa;
        g.yield_MPa = row->yield_MPa;
        g.tensile_MPa = row->tensile_MPa;
        if (sw__is_hearsay(row->status))
            g.warnings |= SW_WARN_TABLE_FROM_MEMORY;
        sw__cite(g.source, sizeof g.source, row->source, row->edition);
        return g;
    }
    sw__spoil(&g, SW_STRUCT_GRADE_OUT, fail_grade(err, grade, nominal_mm));
    return g;
}

const char *sw_grade_name(int index)
{
    return index >= 0 && (size_t)index < sw__grades_count
               ? sw__grades[index].grade
               : NULL;
}
