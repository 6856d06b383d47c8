/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lubrication: nut factor or friction coefficients by the state of thread and
 * nut face.
 *
 * A row gives either K (handbook tables of T = K d F) or a range of friction
 * coefficients (VDI 2230, table A5), never both: the two kinds were measured
 * on different joints. Handbooks disagree on zinc against bare steel; both
 * rows are kept, each under its own key. `method` names the way of tightening
 * whose published scatter fits the state.
 */
#include "base/internal.h"
#include "base/tables.h"

#include <strapwise/lubrication.h>

#include <string.h>

#define SW__S sw_lubrication_out
const sw_field sw__lubrication_out_fields[] = {
    SW__OUT_TEXT(lubrication),
    SW__OUT_TEXT(label),
    SW__OUT_TEXT(conflicts_with),
    SW__OUT_TEXT(method),
    SW__OUT(nut_factor, ""),
    SW__OUT(nut_factor_low, ""),
    SW__OUT(nut_factor_high, ""),
    SW__OUT(mu_thread, ""),
    SW__OUT(mu_seat, ""),
    SW__OUT(mu_low, ""),
    SW__OUT(mu_high, ""),
    SW__OUT_TEXT(source),
    SW__END,
};
#undef SW__S

static int fail_lubrication(sw_error *err, const char *key)
{
    char message[240];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "lubrication: ");
    sw__line_add_quoted(&line, key);
    sw__line_add(&line, " is in no table; known are");
    for (size_t i = 0; i < sw__lubrication_count; i++) {
        sw__line_add(&line, " ");
        sw__line_add(&line, sw__lubrication[i].key);
    }
    return sw__fail(err, SW_ERR_UNKNOWN, "lubrication", message);
}

sw_lubrication_out sw_lubrication(const char *key, sw_error *err)
{
    sw_lubrication_out l;
    memset(&l, 0, sizeof l);
    sw__clear(err);
    if (!key) {
        sw__spoil(&l, SW_STRUCT_LUBRICATION_OUT,
                  sw__fail_null(err, "lubrication"));
        return l;
    }
    for (size_t i = 0; i < sw__lubrication_count; i++) {
        const struct sw__lubrication_row *row = &sw__lubrication[i];
        if (strcmp(row->key, key) != 0)
            continue;
        sw__copy(l.lubrication, sizeof l.lubrication, row->key);
        sw__copy(l.label, sizeof l.label, row->label);
        sw__copy(l.conflicts_with, sizeof l.conflicts_with,
                 row->conflicts_with);
        sw__copy(l.method, sizeof l.method, row->method);
        l.nut_factor = row->nut_factor;
        l.nut_factor_low = row->nut_factor_low;
        l.nut_factor_high = row->nut_factor_high;
        l.mu_thread = row->mu_thread;
        l.mu_seat = row->mu_seat;
        l.mu_low = row->mu_low;
        l.mu_high = row->mu_high;
        if (sw__is_hearsay(row->status))
            l.warnings |= SW_WARN_TABLE_FROM_MEMORY;
        sw__cite(l.source, sizeof l.source, row->source, row->edition);
        return l;
    }
    sw__spoil(&l, SW_STRUCT_LUBRICATION_OUT, fail_lubrication(err, key));
    return l;
}

const char *sw_lubrication_name(int index)
{
    return index >= 0 && (size_t)index < sw__lubrication_count
               ? sw__lubrication[index].key
               : NULL;
}
