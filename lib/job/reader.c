/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reader: which key of a map goes to which field, and what is said where one
 * goes nowhere.
 */
#include "job/reader.h"

#include <string.h>

enum { KEY_ROOM = 48, KEYS_MOST = 160, MESSAGE_ROOM = 224 };

int sw__listed(const char *words, const char *word)
{
    const size_t n = strlen(word);
    for (const char *at = words; at && (at = strstr(at, word)); at += n)
        if (at != words && at[-1] == ' ' && (at[n] == ' ' || !at[n]))
            return 1;
    return 0;
}

/* "_mm", "_Nm", "_pct", "_N_per_mm": what a field's name ends on */
static void unit_ending(const char *unit, char *ending, size_t room)
{
    sw__line line = sw__line_start(ending, room);
    sw__line_add(&line, unit[0] ? "_" : "");
    for (const char *c = unit; *c; c++) {
        const char one[] = {*c, '\0'};
        sw__line_add(&line, *c == '/'   ? "_per_"
                            : *c == '.' ? ""
                            : *c == '%' ? "pct"
                                        : one);
    }
}

void sw__field_key(const sw_field *f, const sw__alias *alias, char *key,
                   size_t room)
{
    for (; alias && alias->field; alias++)
        if (strcmp(alias->field, f->name) == 0) {
            sw__copy(key, room, alias->key);
            return;
        }
    char ending[24];
    unit_ending(f->unit, ending, sizeof ending);
    sw__copy(key, room, f->name);
    const size_t n = strlen(key), m = strlen(ending);
    if (m && n > m && strcmp(key + n - m, ending) == 0)
        key[n - m] = '\0';
    for (char *c = key; *c; c++)
        if (*c == '_')
            *c = ' ';
}

static int is_key(const sw__form *form, const sw_field *f, char *key,
                  size_t room)
{
    if (sw__listed(form->skip, f->name))
        return 0;
    sw__field_key(f, form->alias, key, room);
    return 1;
}

int sw__child(const sw__reader *r, int map, const char *key)
{
    for (int i = r->tree->node[map].first; i; i = r->tree->node[i].next)
        if (sw__same_key(sw__key_of(r->tree, i), key))
            return i;
    return 0;
}

/* ---- errors ---- */

int sw__fail_at(sw__reader *r, int node, int code, const char *key,
                const char *message)
{
    return sw__blame(r->err, r->file, r->tree->node[node].at, code, key,
                     message);
}

int sw__fail_key(sw__reader *r, int node, int code, const char *key,
                 const char *message)
{
    const sw__node *n = &r->tree->node[node];
    return sw__blame(r->err, r->file, n->key_at.line ? n->key_at : n->at, code,
                     key, message);
}

int sw__fail_text(sw__reader *r, int node, int code, const char *key,
                  const char *before, const char *text, const char *after)
{
    char message[MESSAGE_ROOM];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, before);
    sw__line_add_quoted(&line, text);
    sw__line_add(&line, after);
    return sw__fail_at(r, node, code, key, message);
}

void sw__add_nearest(sw__line *line, const char *text, const char *const *name,
                     int names)
{
    const char *nearest = NULL;
    int best = 1000;
    for (int i = 0; i < names; i++) {
        const int edits = sw__edits(name[i], text);
        if (edits < best) {
            best = edits;
            nearest = name[i];
        }
    }
    /* more changes than this is no likeness */
    if (nearest && best <= (int)(strlen(nearest) + 2) / 3) {
        sw__line_add(line, "; nearest: ");
        sw__line_add(line, nearest);
    }
}

/* All keys of a shape, for the nearest one. */
typedef struct {
    char key[KEYS_MOST][KEY_ROOM];
    const char *name[KEYS_MOST];
    int keys;
} key_list;

static void list_keys(const sw__shape *shape, key_list *list)
{
    list->keys = 0;
    for (const sw__special *s = shape->special; s && s->key; s++)
        sw__copy(list->key[list->keys++], KEY_ROOM, s->key);
    for (int k = 0; k < shape->forms; k++) {
        const sw_field *f;
        for (int i = 0; (f = sw_field_at(shape->form[k].structure, i)); i++)
            if (list->keys < KEYS_MOST &&
                is_key(&shape->form[k], f, list->key[list->keys], KEY_ROOM))
                list->keys++;
    }
    for (int i = 0; i < list->keys; i++)
        list->name[i] = list->key[i];
}

/* Whether a key is one of those kept for later. */
static int is_reserved(const char *reserved, const char *key)
{
    while (reserved && *reserved) {
        char one[KEY_ROOM];
        const size_t n = strcspn(reserved, ",");
        sw__copy(one, n + 1 < sizeof one ? n + 1 : sizeof one, reserved);
        if (sw__same_key(one, key))
            return 1;
        reserved += n + (reserved[n] == ',');
    }
    return 0;
}

static int fail_unknown(sw__reader *r, int node, const sw__shape *shape)
{
    char message[MESSAGE_ROOM];
    key_list list;
    const char *key = sw__key_of(r->tree, node);
    sw__line line = sw__line_start(message, sizeof message);
    if (is_reserved(shape->reserved, key)) {
        sw__line_add_quoted(&line, key);
        sw__line_add(&line, " is not read yet: this version judges whether the "
                            "part holds, not its flatness; leave the line out");
        return sw__fail_key(r, node, SW_ERR_UNKNOWN, key, message);
    }
    list_keys(shape, &list);
    sw__line_add(&line, "unknown key ");
    sw__line_add_quoted(&line, key);
    sw__line_add(&line, " in ");
    sw__line_add(&line, shape->what);
    sw__add_nearest(&line, key, list.name, list.keys);
    return sw__fail_key(r, node, SW_ERR_UNKNOWN, key, message);
}

/* ---- reading ---- */

int sw__want_map(sw__reader *r, int node, const char *key, const char *example)
{
    if (r->tree->node[node].kind == SW__TREE_MAP)
        return SW_OK;
    char message[MESSAGE_ROOM];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, key);
    sw__line_add(&line, ": keys with values are wanted here, each on a line of "
                        "its own and indented, such as ");
    sw__line_add(&line, example);
    sw__line_add(&line, ": ...");
    return sw__fail_at(r, node, SW_ERR_SYNTAX, key, message);
}

int sw__want_list(sw__reader *r, int node, const char *key, const char *example)
{
    if (r->tree->node[node].kind == SW__TREE_LIST)
        return SW_OK;
    char message[MESSAGE_ROOM];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, key);
    sw__line_add(&line, ": a list is wanted here, such as ");
    sw__line_add(&line, example);
    return sw__fail_at(r, node, SW_ERR_SYNTAX, key, message);
}

static int read_key(sw__reader *r, int node, const sw__shape *shape)
{
    const char *key = sw__key_of(r->tree, node);
    for (const sw__special *s = shape->special; s && s->key; s++)
        if (sw__same_key(s->key, key))
            return s->take(r, node, shape->with);
    for (int k = 0; k < shape->forms; k++) {
        const sw__form *form = &shape->form[k];
        const sw_field *f;
        char spelled[KEY_ROOM];
        for (int i = 0; (f = sw_field_at(form->structure, i)); i++)
            if (is_key(form, f, spelled, sizeof spelled) &&
                sw__same_key(spelled, key))
                return sw__take_field(r, node, spelled, f, form->base);
    }
    return fail_unknown(r, node, shape);
}

int sw__read_map(sw__reader *r, int map, const sw__shape *shape)
{
    int status = sw__want_map(r, map, shape->what,
                              shape->special ? shape->special->key : "name");
    for (int i = r->tree->node[map].first; i && !status;
         i = r->tree->node[i].next)
        status = read_key(r, i, shape);
    return status;
}

/* ---- errors of the library ---- */

static int is_name(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
           (c >= '0' && c <= '9') || c == '_';
}

/* The key of a field of one of the structs, or 0. */
static int key_of_name(const sw__shape *shape, const char *name, char *key,
                       size_t room)
{
    for (int k = 0; k < shape->forms; k++) {
        const sw_field *f = sw_field_named(shape->form[k].structure, name);
        if (!f)
            continue;
        sw__field_key(f, shape->form[k].alias, key, room);
        return 1;
    }
    return 0;
}

int sw__fail_inner(sw__reader *r, int map, const sw__shape *shape,
                   const sw_error *inner)
{
    char message[MESSAGE_ROOM], key[KEY_ROOM];
    sw__line line = sw__line_start(message, sizeof message);
    const sw_error theirs = *inner; /* may be r->err itself */
    if (theirs.code == SW_ERR_MEMORY) {
        *r->err = theirs;
        return theirs.code;
    }
    for (const char *at = theirs.message; *at;) {
        char name[KEY_ROOM];
        size_t n = 0;
        while (is_name(at[n]))
            n++;
        sw__copy(name, n + 1 < sizeof name ? n + 1 : sizeof name, at);
        /* further on only names with an underscore are surely fields */
        const int field = at == theirs.message ? strcmp(name, theirs.field) == 0
                                               : strchr(name, '_') != NULL;
        if (n && field && key_of_name(shape, name, key, sizeof key)) {
            sw__line_add(&line, key);
        } else {
            char text[2] = {*at, '\0'};
            for (size_t i = 0; i < (n ? n : 1); i++) {
                text[0] = at[i];
                sw__line_add(&line, text);
            }
        }
        at += n ? n : 1;
    }
    const int code = theirs.code == SW_ERR_NONE ? SW_ERR_CONFLICT : theirs.code;
    if (!key_of_name(shape, theirs.field, key, sizeof key))
        sw__copy(key, sizeof key, theirs.field);
    const int node = sw__child(r, map, key);
    const int status = node ? sw__fail_at(r, node, code, key, message)
                            : sw__fail_key(r, map, code, key, message);
    r->err->low = theirs.low;
    r->err->high = theirs.high;
    return status;
}
