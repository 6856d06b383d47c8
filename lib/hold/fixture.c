/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fixture: the handle, and what is added to it.
 */
#include "hold/fixture.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { MOST_CONTACTS = 64, MOST_LOADS = 100000, LETTERS = 26 };

sw_fixture *sw_fixture_new(sw_error *err)
{
    sw__clear(err);
    sw_fixture *f = calloc(1, sizeof *f);
    if (!f)
        sw__fail_memory(err);
    return f;
}

void sw_fixture_free(sw_fixture *f)
{
    if (!f)
        return;
    free(f->support);
    free(f->clamp);
    free(f->stop);
    free(f->load);
    free(f);
}

int sw_fixture_count(const sw_fixture *f, int part)
{
    if (!f)
        return 0;
    switch (part) {
    case SW_PART_SUPPORT:
        return f->supports;
    case SW_PART_CLAMP:
        return f->clamps;
    case SW_PART_STOP:
        return f->stops;
    case SW_PART_LOAD:
        return f->loads;
    default:
        return 0;
    }
}

/* Room for one more in a list, or an error. */
static int make_room(sw_fixture *f, int part, void **list, size_t size,
                     int most, sw_error *err)
{
    const int count = sw_fixture_count(f, part);
    if (count >= most) {
        char message[80];
        sw__line line = sw__line_start(message, sizeof message);
        sw__line_add(&line, sw_word(SW_WORDS_PART, part));
        sw__line_add(&line, ": at most ");
        sw__line_add_number(&line, most);
        sw__line_add(&line, " can be added");
        return sw__fail(err, SW_ERR_RANGE, sw_word(SW_WORDS_PART, part),
                        message);
    }
    if (count < f->room[part])
        return SW_OK;
    const int room = count ? 2 * count : 8;
    void *more = realloc(*list, (size_t)room * size);
    if (!more)
        return sw__fail_memory(err);
    *list = more;
    f->room[part] = room;
    return SW_OK;
}

/* "S1", and for stops "A" to "Z", then "AA". */
static void give_name(char *name, size_t room, int part, int index)
{
    static const char *const initial[] = {
        [SW_PART_SUPPORT] = "S", [SW_PART_CLAMP] = "C", [SW_PART_LOAD] = "P"};
    if (name[0])
        return;
    if (part != SW_PART_STOP) {
        snprintf(name, room, "%s%d", initial[part], index + 1);
        return;
    }
    const char last[] = {(char)('A' + index % LETTERS), '\0'};
    const char first[] = {(char)('A' + index / LETTERS - 1), '\0'};
    snprintf(name, room, "%s%s", index < LETTERS ? "" : first, last);
}

/* Every list's elements begin with their name. */
static int check_name(const char *name, const void *list, size_t size,
                      int count, sw_error *err)
{
    for (int i = 0; i < count; i++) {
        if (strcmp((const char *)list + (size_t)i * size, name) != 0)
            continue;
        char message[120];
        sw__line line = sw__line_start(message, sizeof message);
        sw__line_add(&line, "name: ");
        sw__line_add_quoted(&line, name);
        sw__line_add(&line, " is taken by another of its kind");
        return sw__fail(err, SW_ERR_CONFLICT, "name", message);
    }
    return SW_OK;
}

static int fail_null(const sw_fixture *f, const void *in, sw_error *err)
{
    sw__clear(err);
    return f && in ? SW_OK : sw__fail_null(err, f ? "in" : "fixture");
}

int sw_fixture_add_support(sw_fixture *f, const sw_support_in *in,
                           sw_error *err)
{
    int status = fail_null(f, in, err);
    if (status)
        return status;
    sw_support_in one = *in;
    void *list = f->support;
    if (!(status = sw_support_resolve(&one, err)))
        status = make_room(f, SW_PART_SUPPORT, &list, sizeof one, MOST_CONTACTS,
                           err);
    f->support = list;
    if (!status) {
        give_name(one.name, sizeof one.name, SW_PART_SUPPORT, f->supports);
        one.seal = sw__seal(&one, SW_STRUCT_SUPPORT_IN, one.assumed);
        status = check_name(one.name, list, sizeof one, f->supports, err);
    }
    if (!status)
        f->support[f->supports++] = one;
    return status;
}

int sw_fixture_add_clamp(sw_fixture *f, const sw_clamp_in *in, sw_error *err)
{
    int status = fail_null(f, in, err);
    if (status)
        return status;
    sw_clamp_in one = *in;
    void *list = f->clamp;
    if (!(status = sw_clamp_resolve(&one, err)))
        status =
            make_room(f, SW_PART_CLAMP, &list, sizeof one, MOST_CONTACTS, err);
    f->clamp = list;
    if (!status) {
        give_name(one.name, sizeof one.name, SW_PART_CLAMP, f->clamps);
        one.seal = sw__seal(&one, SW_STRUCT_CLAMP_IN, one.assumed);
        status = check_name(one.name, list, sizeof one, f->clamps, err);
    }
    if (!status)
        f->clamp[f->clamps++] = one;
    return status;
}

int sw_fixture_add_stop(sw_fixture *f, const sw_stop_in *in, sw_error *err)
{
    int status = fail_null(f, in, err);
    if (status)
        return status;
    sw_stop_in one = *in;
    void *list = f->stop;
    if (!(status = sw_stop_resolve(&one, err)))
        status =
            make_room(f, SW_PART_STOP, &list, sizeof one, MOST_CONTACTS, err);
    f->stop = list;
    if (!status) {
        give_name(one.name, sizeof one.name, SW_PART_STOP, f->stops);
        one.seal = sw__seal(&one, SW_STRUCT_STOP_IN, one.assumed);
        status = check_name(one.name, list, sizeof one, f->stops, err);
    }
    if (!status)
        f->stop[f->stops++] = one;
    return status;
}

int sw_fixture_add_load(sw_fixture *f, const sw_load_in *in, sw_error *err)
{
    int status = fail_null(f, in, err);
    if (status)
        return status;
    sw_load_in one = *in;
    void *list = f->load;
    if (!(status = sw_load_resolve(&one, err)))
        status = make_room(f, SW_PART_LOAD, &list, sizeof one, MOST_LOADS, err);
    f->load = list;
    if (!status) {
        give_name(one.name, sizeof one.name, SW_PART_LOAD, f->loads);
        one.seal = sw__seal(&one, SW_STRUCT_LOAD_IN, one.assumed);
        f->load[f->loads++] = one;
    }
    return status;
}

int sw_fixture_set_weight(sw_fixture *f, const sw_weight_in *in, sw_error *err)
{
    int status = fail_null(f, in, err);
    if (status)
        return status;
    sw_weight_in one = *in;
    if (!(status = sw_weight_resolve(&one, err)))
        f->weight = one;
    return status;
}

static int check_index(const sw_fixture *f, int part, int index,
                       const void *out, sw_error *err)
{
    const int status = fail_null(f, out, err);
    if (status)
        return status;
    const int count = sw_fixture_count(f, part);
    return index >= 0 && index < count
               ? SW_OK
               : sw__fail_range(err, "index", index, "", 0, count - 1);
}

int sw_fixture_support(const sw_fixture *f, int index, sw_support_in *in,
                       sw_error *err)
{
    const int status = check_index(f, SW_PART_SUPPORT, index, in, err);
    if (!status)
        *in = f->support[index];
    return status;
}

int sw_fixture_clamp(const sw_fixture *f, int index, sw_clamp_in *in,
                     sw_error *err)
{
    const int status = check_index(f, SW_PART_CLAMP, index, in, err);
    if (!status)
        *in = f->clamp[index];
    return status;
}

int sw_fixture_stop(const sw_fixture *f, int index, sw_stop_in *in,
                    sw_error *err)
{
    const int status = check_index(f, SW_PART_STOP, index, in, err);
    if (!status)
        *in = f->stop[index];
    return status;
}

int sw_fixture_load(const sw_fixture *f, int index, sw_load_in *in,
                    sw_error *err)
{
    const int status = check_index(f, SW_PART_LOAD, index, in, err);
    if (!status)
        *in = f->load[index];
    return status;
}
