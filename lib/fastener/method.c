/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Method: ways of tightening and the scatter of the preload that is published
 * for each.
 *
 * Sources print either a ± about the nominal preload or a tightening factor
 * alpha = largest/smallest preload (VDI 2230-1). Both say the same:
 *
 *   alpha = (1 + s)/(1 - s), s = (alpha - 1)/(alpha + 1)                 (1)
 *
 * Where sources differ the wider figure is used and the others are in
 * `meaning`. None says which part of all tightenings lies inside; that is
 * assumed where it is needed (spread.c).
 */
#include "base/internal.h"
#include "base/tables.h"

#include <strapwise/method.h>

#include <string.h>

#define SW__S sw_method_out
const sw_field sw__method_out_fields[] = {
    SW__OUT_TEXT(method),
    SW__OUT_TEXT(label),
    SW__OUT_TEXT(reads),
    SW__OUT(scatter_pct, "%"),
    SW__OUT(scatter_low_pct, "%"),
    SW__OUT(scatter_high_pct, "%"),
    SW__OUT(alpha, ""),
    SW__OUT_TEXT(meaning),
    SW__OUT_TEXT(source),
    SW__END,
};
#undef SW__S

static int fail_method(sw_error *err, const char *key)
{
    char message[256];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "method: ");
    sw__line_add_quoted(&line, key);
    size_t near = 0;
    for (size_t i = 1; i < sw__methods_count; i++)
        if (sw__edits(key, sw__methods[i].key) <
            sw__edits(key, sw__methods[near].key))
            near = i;
    sw__line_add(&line, " is in no table; nearest is ");
    sw__line_add(&line, sw__methods[near].key);
    return sw__fail(err, SW_ERR_UNKNOWN, "method", message);
}

sw_method_out sw_method(const char *key, sw_error *err)
{
    sw_method_out m;
    memset(&m, 0, sizeof m);
    sw__clear(err);
    if (!key) {
        sw__spoil(&m, SW_STRUCT_METHOD_OUT, sw__fail_null(err, "method"));
        return m;
    }
    for (size_t i = 0; i < sw__methods_count; i++) {
        const struct sw__methods_row *row = &sw__methods[i];
        if (strcmp(row->key, key) != 0)
            continue;
        sw__copy(m.method, sizeof m.method, row->key);
        sw__copy(m.label, sizeof m.label, row->label);
        sw__copy(m.reads, sizeof m.reads, row->reads);
        sw__copy(m.meaning, sizeof m.meaning, row->meaning);
        m.scatter_low_pct = row->scatter_low_pct;
        m.scatter_pct = row->scatter_pct;
        m.scatter_high_pct = row->scatter_high_pct;
        m.alpha = (100 + m.scatter_pct) / (100 - m.scatter_pct);
        if (sw__is_hearsay(row->status))
            m.warnings |= SW_WARN_TABLE_FROM_MEMORY;
        sw__cite(m.source, sizeof m.source, row->source, row->edition);
        return m;
    }
    sw__spoil(&m, SW_STRUCT_METHOD_OUT, fail_method(err, key));
    return m;
}

const char *sw_method_name(int index)
{
    return index >= 0 && (size_t)index < sw__methods_count
               ? sw__methods[index].key
               : NULL;
}
