/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pairs: torque and force as measured, one after the other.
 *
 * A file of pairs is a table as csv.c reads it, with the columns
 *
 *   torque          torque on the nut, prevailing torque included
 *   force           tension in the stud; also preload, tension, clamp force
 *   thread torque   measured apart: the part in the thread (optional)
 *   seat torque     measured apart: the part under the nut; also bearing
 *                   torque (optional)
 *   no, note        whatever helps to find the stud again; not read
 *
 * and before the header, each optional, name, thread, lubrication and
 * prevailing (a torque with its unit). Rows stand in the order of tightening.
 */
#include "fastener/pairs.h"

#include "base/csv.h"

#include <strapwise/thread.h>
#include <strapwise/units.h>

#include <stdlib.h>
#include <string.h>

#define SW__S sw_pairs_out
const sw_field sw__pairs_out_fields[] = {
    SW__OUT_TEXT(name),
    SW__OUT_TEXT(thread),
    SW__OUT_TEXT(lubrication),
    SW__OUT(prevailing_torque_Nm, "N.m"),
    SW__OUT(n, ""),
    SW__END,
};
#undef SW__S

enum { TORQUE, FORCE, THREAD_TORQUE, SEAT_TORQUE, COLUMNS };
enum { NAME, THREAD, LUBRICATION, PREVAILING };

static const sw__csv_column column[] = {
    [TORQUE] = {"torque", "tightening torque", SW_KIND_TORQUE, 1, 1e-6, 1e6},
    [FORCE] = {"force", "preload|tension|clamp force|clamping force",
               SW_KIND_FORCE, 1, 1e-3, 1e8},
    [THREAD_TORQUE] = {"thread torque", "", SW_KIND_TORQUE, 0, 0, 1e6},
    [SEAT_TORQUE] = {"seat torque", "bearing torque", SW_KIND_TORQUE, 0, 0,
                     1e6},
    [COLUMNS] = {"no", "number|stud", 0, 0, 0, 0},
    {"note", "notes|remark|comment", 0, 0, 0, 0},
    {NULL, NULL, 0, 0, 0, 0}};

static const char *const key[] = {[NAME] = "name",
                                  [THREAD] = "thread",
                                  [LUBRICATION] = "lubrication",
                                  [PREVAILING] = "prevailing",
                                  NULL};

static const sw__csv_layout layout = {column, key};

sw_pairs *sw_pairs_new(sw_error *err)
{
    sw__clear(err);
    sw_pairs *made = calloc(1, sizeof *made);
    if (!made)
        sw__fail_memory(err);
    else
        made->prevailing_torque_Nm = SW_UNSET;
    return made;
}

void sw_pairs_free(sw_pairs *pairs)
{
    if (!pairs)
        return;
    free(pairs->pair);
    free(pairs);
}

int sw_pairs_count(const sw_pairs *pairs) { return pairs ? pairs->count : 0; }

sw_pairs_out sw_pairs_about(const sw_pairs *pairs, sw_error *err)
{
    sw_pairs_out out;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    if (!pairs) {
        sw__spoil(&out, SW_STRUCT_PAIRS_OUT, sw__fail_null(err, "pairs"));
        return out;
    }
    sw__copy(out.name, sizeof out.name, pairs->name);
    sw__copy(out.thread, sizeof out.thread, pairs->thread);
    sw__copy(out.lubrication, sizeof out.lubrication, pairs->lubrication);
    out.prevailing_torque_Nm = pairs->prevailing_torque_Nm;
    out.n = pairs->count;
    return out;
}

static int append(sw_pairs *pairs, const sw__pair *pair, sw_error *err)
{
    if (pairs->count == SW__CSV_ROWS)
        return sw__fail(err, SW_ERR_RANGE, "pairs",
                        "pairs: at most 10000 are taken");
    if (pairs->count == pairs->room) {
        const int room = 2 * pairs->room + 16;
        sw__pair *more = realloc(pairs->pair, (size_t)room * sizeof *more);
        if (!more)
            return sw__fail_memory(err);
        pairs->pair = more;
        pairs->room = room;
    }
    pairs->pair[pairs->count++] = *pair;
    return SW_OK;
}

static int check(double value, int which, const char *field, sw_error *err)
{
    const sw__csv_column *c = &column[which];
    if (!c->required && !sw__is_set(value))
        return SW_OK;
    if (value >= c->least && value <= c->most)
        return SW_OK;
    return sw__fail_range(err, field, value, sw_kind_unit(c->kind), c->least,
                          c->most);
}

int sw_pairs_add(sw_pairs *pairs, double torque_Nm, double force_N,
                 double thread_torque_Nm, double seat_torque_Nm, sw_error *err)
{
    sw__clear(err);
    if (!pairs)
        return sw__fail_null(err, "pairs");
    int status = check(torque_Nm, TORQUE, "torque_Nm", err);
    if (!status)
        status = check(force_N, FORCE, "force_N", err);
    if (!status)
        status =
            check(thread_torque_Nm, THREAD_TORQUE, "thread_torque_Nm", err);
    if (!status)
        status = check(seat_torque_Nm, SEAT_TORQUE, "seat_torque_Nm", err);
    const sw__pair pair = {torque_Nm, force_N, thread_torque_Nm,
                           seat_torque_Nm};
    return status ? status : append(pairs, &pair, err);
}

static int take_row(void *with, const sw__csv_row *row, sw_error *err)
{
    const sw__pair pair = {row->number[TORQUE], row->number[FORCE],
                           row->number[THREAD_TORQUE],
                           row->number[SEAT_TORQUE]};
    return append(with, &pair, err);
}

static int take_text(char *to, size_t room, const char *name, const char *value,
                     sw_error *err)
{
    if (strlen(value) < room) {
        sw__copy(to, room, value);
        return SW_OK;
    }
    char message[80];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, name);
    sw__line_add(&line, ": the text is too long");
    return sw__fail(err, SW_ERR_SYNTAX, name, message);
}

static int take_key(void *with, int which, const char *value, sw_error *err)
{
    sw_pairs *into = with;
    if (which == NAME)
        return take_text(into->name, sizeof into->name, key[which], value, err);
    if (which == LUBRICATION)
        return take_text(into->lubrication, sizeof into->lubrication,
                         key[which], value, err);
    if (which == THREAD) {
        const sw_thread_out t = sw_thread(value, err);
        if (t.status)
            return t.status;
        return take_text(into->thread, sizeof into->thread, key[which],
                         t.designation, err);
    }
    const sw_quantity_out q =
        sw_quantity(value, SW_KIND_TORQUE, key[which], err);
    if (q.status)
        return q.status;
    if (!(q.value >= 0 && q.value <= 1e5))
        return sw__fail_range(err, key[which], q.value, "N.m", 0, 1e5);
    into->prevailing_torque_Nm = q.value;
    return SW_OK;
}

int sw_pairs_read(sw_pairs *pairs, const char *text, size_t length,
                  const char *file, sw_error *err)
{
    sw__clear(err);
    if (!pairs || !text)
        return sw__fail_null(err, pairs ? "text" : "pairs");
    sw_pairs read;
    memset(&read, 0, sizeof read);
    read.prevailing_torque_Nm = SW_UNSET;
    const sw__csv_taker to = {&read, take_key, take_row};
    const int status = sw__csv_read(&layout, text, length, file, &to, err);
    if (status) {
        free(read.pair);
        return status;
    }
    free(pairs->pair);
    *pairs = read;
    return SW_OK;
}
