/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tree: a job file as a tree of texts, lists and maps, each with its place.
 * Nothing is guessed about what a text means.
 */
#ifndef SW_JOB_TREE_H
#define SW_JOB_TREE_H

#include "job/blame.h"

typedef enum { SW__TREE_TEXT = 1, SW__TREE_LIST, SW__TREE_MAP } sw__tree_kind;

/* Nodes know one another by index; 0 is the root, and as `first` or `next` it
 * is none. */
typedef struct {
    int kind; /* sw__tree_kind */
    sw__place at;
    size_t text;      /* of a text, within the tree's letters */
    size_t key;       /* in a map: likewise */
    sw__place key_at; /* in a map */
    int first, next;
    int count; /* of a list or a map */
} sw__node;

typedef struct {
    sw__node *node;
    int nodes, room;
    char *letters; /* all texts, each ended by a zero */
    size_t length, letters_room;
} sw__tree;

enum {
    SW__TREE_DEEPEST = 32,
    SW__TREE_LONGEST = 256 * 1024, /* bytes of a file */
    SW__TREE_NODES = 50000,
    SW__TREE_TEXT_LONGEST = 200, /* bytes of one text */
    SW__TREE_KEYS = 100          /* of one map */
};

/* Reads a file; 0 or an error with its place, the tree empty then. */
int sw__tree_read(sw__tree *t, const char *text, size_t length,
                  const char *file, sw_error *err);
void sw__tree_free(sw__tree *t);

static inline const char *sw__text_of(const sw__tree *t, int node)
{
    return t->letters + t->node[node].text;
}

static inline const char *sw__key_of(const sw__tree *t, int node)
{
    return t->letters + t->node[node].key;
}

/* Whether two keys are one: dashes and underscores are blanks. */
int sw__same_key(const char *a, const char *b);

/* Checks the bytes before anything is read into them: length, UTF-8, no
 * control characters; 0 or an error. (letters.c) */
int sw__letters_check(const char *text, size_t length, const char *file,
                      sw_error *err);

#endif
