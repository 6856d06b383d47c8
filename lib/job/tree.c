/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tree: the events of libyaml's parser, as far as a job file may use them.
 *
 * YAML can do more than a file of numbers should: anchors and aliases (a small
 * text that unfolds into a huge one), tags, merge keys, several documents,
 * texts over many lines, words that turn into numbers, dates or "no". All of
 * it is refused, or not done: a text stays a text. Depth, length and number
 * are limited before anything grows; the parser takes time that grows with the
 * square of the depth.
 */
#include "job/tree.h"

#include <yaml.h>

#include <stdlib.h>
#include <string.h>

typedef struct {
    int node;
    int last;        /* its last child, 0 for none */
    int key_waiting; /* of a map: the key was read, its value comes */
    size_t key;
    sw__place key_at;
} level;

typedef struct {
    sw__tree *tree;
    const char *file;
    sw_error *err;
    level level[SW__TREE_DEEPEST];
    int depth; /* levels open */
    int documents;
} builder;

static sw__place place_of(const yaml_mark_t *mark)
{
    return (sw__place){(int)mark->line + 1, (int)mark->column + 1};
}

static int fail(const builder *b, sw__place at, int code, const char *message)
{
    return sw__blame(b->err, b->file, at, code, "file", message);
}

int sw__same_key(const char *a, const char *b)
{
    for (;; a++, b++) {
        const char x = *a == '-' || *a == '_' ? ' ' : *a;
        const char y = *b == '-' || *b == '_' ? ' ' : *b;
        if (x != y)
            return 0;
        if (!x)
            return 1;
    }
}

/* ---- growing ---- */

/* A new last child of the innermost level; its index, or -1 with an error. */
static int add_node(builder *b, int kind, sw__place at)
{
    sw__tree *t = b->tree;
    if (t->nodes == SW__TREE_NODES) {
        fail(b, at, SW_ERR_RANGE, "the file has too many entries");
        return -1;
    }
    if (t->nodes == t->room) {
        const int room = t->room ? 2 * t->room : 256;
        sw__node *more = realloc(t->node, (size_t)room * sizeof *more);
        if (!more) {
            sw__fail_memory(b->err);
            return -1;
        }
        t->node = more;
        t->room = room;
    }
    const int made = t->nodes++;
    sw__node *n = &t->node[made];
    memset(n, 0, sizeof *n);
    n->kind = kind;
    n->at = at;
    if (!b->depth)
        return made;
    level *in = &b->level[b->depth - 1];
    if (in->last)
        t->node[in->last].next = made;
    else
        t->node[in->node].first = made;
    in->last = made;
    t->node[in->node].count++;
    n->key = in->key;
    n->key_at = in->key_at;
    in->key_waiting = 0;
    return made;
}

static int add_letters(builder *b, const char *text, size_t length, size_t *at)
{
    sw__tree *t = b->tree;
    if (t->length + length + 1 > t->letters_room) {
        const size_t room = 2 * (t->length + length) + 1024;
        char *more = realloc(t->letters, room);
        if (!more)
            return sw__fail_memory(b->err);
        t->letters = more;
        t->letters_room = room;
    }
    *at = t->length;
    memcpy(t->letters + t->length, text, length);
    t->letters[t->length + length] = '\0';
    t->length += length + 1;
    return SW_OK;
}

/* ---- events ---- */

/* Whether what comes now would be a key. */
static int wants_key(const builder *b)
{
    return b->depth &&
           b->tree->node[b->level[b->depth - 1].node].kind == SW__TREE_MAP &&
           !b->level[b->depth - 1].key_waiting;
}

static int check_key(const builder *b, const char *key, sw__place at)
{
    char message[160];
    sw__line line = sw__line_start(message, sizeof message);
    const sw__tree *t = b->tree;
    const sw__node *map = &t->node[b->level[b->depth - 1].node];
    if (!key[0])
        return fail(b, at, SW_ERR_SYNTAX, "there is no key before the colon");
    if (strcmp(key, "<<") == 0)
        return fail(b, at, SW_ERR_SYNTAX,
                    "merge keys (<<) are not taken; write every value out");
    if (map->count >= SW__TREE_KEYS)
        return fail(b, at, SW_ERR_RANGE, "there are too many keys in one list");
    for (int i = map->first; i; i = t->node[i].next) {
        if (!sw__same_key(sw__key_of(t, i), key))
            continue;
        sw__line_add_quoted(&line, key);
        sw__line_add(&line, " is given twice, first on line ");
        sw__line_add_number(&line, t->node[i].key_at.line);
        return fail(b, at, SW_ERR_CONFLICT, message);
    }
    return SW_OK;
}

/* YAML's escapes can make what the bytes of the file may not hold. */
static int check_letters(const builder *b, const char *text, size_t length,
                         sw__place at)
{
    sw_error inner;
    if (length > SW__TREE_TEXT_LONGEST)
        return fail(b, at, SW_ERR_RANGE,
                    "this text is longer than 200 characters");
    if (sw__letters_check(text, length, "", &inner) ||
        memchr(text, '\n', length))
        return fail(b, at, SW_ERR_SYNTAX,
                    "there is a control or invisible character in this text");
    return SW_OK;
}

static int take_scalar(builder *b, const yaml_event_t *e)
{
    const sw__place at = place_of(&e->start_mark);
    const char *text = (const char *)e->data.scalar.value;
    const size_t length = e->data.scalar.length;
    if (e->data.scalar.anchor)
        return fail(b, at, SW_ERR_SYNTAX,
                    "anchors (&) are not taken; write every value out, or put "
                    "the text in quotes");
    if (e->data.scalar.tag)
        return fail(b, at, SW_ERR_SYNTAX,
                    "tags (!) are not taken; put the text in quotes");
    if (e->data.scalar.style == YAML_LITERAL_SCALAR_STYLE ||
        e->data.scalar.style == YAML_FOLDED_SCALAR_STYLE ||
        e->start_mark.line != e->end_mark.line)
        return fail(b, at, SW_ERR_SYNTAX,
                    "this goes on over several lines: is a colon, a bracket or "
                    "a quote missing? Each value stands on one line");
    int status = check_letters(b, text, length, at);
    if (status)
        return status;
    if (wants_key(b)) {
        level *in = &b->level[b->depth - 1];
        status = check_key(b, text, at);
        if (!status)
            status = add_letters(b, text, length, &in->key);
        in->key_at = at;
        in->key_waiting = 1;
        return status;
    }
    const int made = add_node(b, SW__TREE_TEXT, at);
    if (made < 0)
        return b->err->code;
    size_t place = 0;
    status = add_letters(b, text, length, &place);
    b->tree->node[made].text = place;
    return status;
}

static int open_level(builder *b, const yaml_event_t *e)
{
    const int list = e->type == YAML_SEQUENCE_START_EVENT;
    const sw__place at = place_of(&e->start_mark);
    const yaml_char_t *anchor =
        list ? e->data.sequence_start.anchor : e->data.mapping_start.anchor;
    const yaml_char_t *tag =
        list ? e->data.sequence_start.tag : e->data.mapping_start.tag;
    if (anchor)
        return fail(b, at, SW_ERR_SYNTAX,
                    "anchors (&) are not taken; write every value out");
    if (tag)
        return fail(b, at, SW_ERR_SYNTAX, "tags (!) are not taken");
    if (wants_key(b))
        return fail(b, at, SW_ERR_SYNTAX,
                    "a key is wanted here, a plain word before a colon");
    if (b->depth == SW__TREE_DEEPEST)
        return fail(b, at, SW_ERR_RANGE, "the file is nested too deeply");
    const int made = add_node(b, list ? SW__TREE_LIST : SW__TREE_MAP, at);
    if (made < 0)
        return b->err->code;
    memset(&b->level[b->depth], 0, sizeof b->level[0]);
    b->level[b->depth++].node = made;
    return SW_OK;
}

static int take_event(builder *b, const yaml_event_t *e)
{
    const sw__place at = place_of(&e->start_mark);
    switch (e->type) {
    case YAML_ALIAS_EVENT:
        return fail(b, at, SW_ERR_SYNTAX,
                    "aliases (*) are not taken; write every value out, or put "
                    "the text in quotes");
    case YAML_SCALAR_EVENT:
        return take_scalar(b, e);
    case YAML_SEQUENCE_START_EVENT:
    case YAML_MAPPING_START_EVENT:
        return open_level(b, e);
    case YAML_SEQUENCE_END_EVENT:
    case YAML_MAPPING_END_EVENT:
        b->depth--;
        return SW_OK;
    case YAML_DOCUMENT_START_EVENT:
        if (e->data.document_start.version_directive ||
            e->data.document_start.tag_directives.start !=
                e->data.document_start.tag_directives.end)
            return fail(b, at, SW_ERR_SYNTAX,
                        "directives (%) are not taken; leave the line out");
        if (b->documents++)
            return fail(b, at, SW_ERR_SYNTAX,
                        "a second document begins here; a file holds one job");
        return SW_OK;
    default:
        return SW_OK;
    }
}

/* ---- what the parser complains about, in other words ---- */

static const struct {
    const char *theirs, *ours;
} sentence[] = {
    {"mapping values are not allowed",
     "there is a colon too many on this line, or the line is indented too far"},
    {"could not find expected ':'", "a colon is missing after the key"},
    {"did not find expected key",
     "this line does not fit the lines above: check how far it is indented, "
     "and quotes and brackets before it"},
    {"did not find expected '-' indicator",
     "this line does not fit the list above it: check how far it is indented "
     "and whether a dash is missing"},
    {"did not find expected ',' or ']'",
     "a comma or the closing ] is missing before this"},
    {"did not find expected ',' or '}'",
     "a comma or the closing } is missing before this"},
    {"did not find expected node content", "a value is missing here"},
    {"block sequence entries are not allowed",
     "a dash cannot stand here; a list begins on a line of its own"},
    {"found character that cannot start any token",
     "a value cannot begin with this character; put it in quotes"},
    {"unknown escape",
     "unknown \\ in a text in double quotes; use single ones"},
    {"escape", "unknown \\ in a text in double quotes; use single ones"},
    {"unexpected end of stream", "a closing quote is missing"},
    {"unexpected document indicator", "a closing quote is missing"},
    {"expected <document start>",
     "this line is not indented like the others, or does not belong to them"},
    {"directive", "a line cannot begin with %; put the text in quotes"},
    {"expected alphabetic or numeric",
     "anchors (&) and aliases (*) are not taken; put the text in quotes"},
    {"tag", "tags (!) are not taken; put the text in quotes"},
};

static int fail_parser(const builder *b, const yaml_parser_t *p)
{
    /* where a key or a quoted text began says more than where it broke */
    const int began = p->context && strstr(p->context, "scanning a") &&
                      (strstr(p->context, "simple key") ||
                       strstr(p->context, "quoted scalar"));
    const sw__place at = place_of(began ? &p->context_mark : &p->problem_mark);
    const char *ours = "the file cannot be read from here: check colons, "
                       "indentation and quotes";
    if (p->error == YAML_MEMORY_ERROR)
        return sw__fail_memory(b->err);
    for (size_t i = sizeof sentence / sizeof sentence[0]; i-- > 0;)
        if (p->problem && strstr(p->problem, sentence[i].theirs))
            ours = sentence[i].ours;
    return fail(b, at, SW_ERR_SYNTAX, ours);
}

static int parse(builder *b, yaml_parser_t *p)
{
    for (int over = 0; !over;) {
        yaml_event_t event;
        if (!yaml_parser_parse(p, &event))
            return fail_parser(b, p);
        const int status = take_event(b, &event);
        over = event.type == YAML_STREAM_END_EVENT;
        yaml_event_delete(&event);
        if (status)
            return status;
    }
    if (b->tree->nodes)
        return SW_OK;
    return fail(b, (sw__place){1, 1}, SW_ERR_MISSING, "the file is empty");
}

int sw__tree_read(sw__tree *t, const char *text, size_t length,
                  const char *file, sw_error *err)
{
    builder b = {.tree = t, .file = file, .err = err};
    memset(t, 0, sizeof *t);
    int status = sw__letters_check(text, length, file, err);
    if (status)
        return status;
    yaml_parser_t parser;
    if (!yaml_parser_initialize(&parser))
        return sw__fail_memory(err);
    yaml_parser_set_encoding(&parser, YAML_UTF8_ENCODING);
    yaml_parser_set_input_string(&parser, (const unsigned char *)text, length);
    status = parse(&b, &parser);
    yaml_parser_delete(&parser);
    if (status)
        sw__tree_free(t);
    return status;
}

void sw__tree_free(sw__tree *t)
{
    free(t->node);
    free(t->letters);
    memset(t, 0, sizeof *t);
}
