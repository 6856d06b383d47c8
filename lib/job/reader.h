/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reader: maps of a job file into structs of the library, by their field
 * lists.
 *
 * A key is a field's name without its unit, with blanks or dashes: "stud to
 * toe" is stud_to_toe_mm. So a new field of a struct is a new key, with its
 * unit, range and words.
 */
#ifndef SW_JOB_READER_H
#define SW_JOB_READER_H

#include "job/tree.h"

typedef struct {
    const sw__tree *tree;
    const char *file;
    sw_error *err; /* never NULL */
} sw__reader;

/* A key that is not spelled as its field. */
typedef struct {
    const char *field, *key;
} sw__alias;

/* A struct that a map may fill. */
typedef struct {
    int structure;
    void *base;
    const char *skip;       /* fields that are no keys, a blank before each */
    const sw__alias *alias; /* ended by a row without a field; or NULL */
} sw__form;

/* A key with a reader of its own. */
typedef struct {
    const char *key;
    int (*take)(sw__reader *r, int node, void *with);
} sw__special;

/* What the keys of one map may be. */
typedef struct {
    const char *what; /* "a clamp": for messages */
    const sw__form *form;
    int forms;
    const sw__special *special; /* ended by a row without a key; or NULL */
    void *with;                 /* handed to the specials */
    const char *reserved; /* keys for later, a comma after each; or NULL */
} sw__shape;

/* Reads every key of a map to its place. */
int sw__read_map(sw__reader *r, int map, const sw__shape *shape);

/* The child of a map with this key, or 0. */
int sw__child(const sw__reader *r, int map, const char *key);

/* Each records the error with its place and returns its code; at a node's
 * value, or at its key where it has one. */
int sw__fail_at(sw__reader *r, int node, int code, const char *key,
                const char *message);
int sw__fail_key(sw__reader *r, int node, int code, const char *key,
                 const char *message);
/* the same, with a text of the file in quotes between two parts */
int sw__fail_text(sw__reader *r, int node, int code, const char *key,
                  const char *before, const char *text, const char *after);

/* An error of the library about one of the shape's structs: its fields become
 * keys and it gets the place of the value, or of the map where the value is
 * missing. "No answer" becomes a conflict: what cannot be is bad input. */
int sw__fail_inner(sw__reader *r, int map, const sw__shape *shape,
                   const sw_error *inner);

/* The key of a field. */
void sw__field_key(const sw_field *f, const sw__alias *alias, char *key,
                   size_t room);

/* ---- one value (values.c); 0 or an error with its place ---- */

/* Any text that is not empty. */
int sw__take_text(sw__reader *r, int node, const char *key, char *to,
                  size_t room);
/* A number with the unit of a field list: "mm", "N.m", "%", "". */
int sw__take_number(sw__reader *r, int node, const char *key, const char *unit,
                    double low, double high, double *value);
/* +x, -y or an angle */
int sw__take_direction(sw__reader *r, int node, const char *key, double *deg);
/* [x, y] or [x, y, z], each a length; *has_z NULL where there is none. */
int sw__take_point(sw__reader *r, int node, const char *key, double at[3],
                   int *has_z);
/* one of a list of words */
int sw__take_word(sw__reader *r, int node, const char *key, int list,
                  int *value);
/* a field of a struct */
int sw__take_field(sw__reader *r, int node, const char *key, const sw_field *f,
                   void *base);
/* that a node is a list or a map */
int sw__want_list(sw__reader *r, int node, const char *key,
                  const char *example);
int sw__want_map(sw__reader *r, int node, const char *key, const char *example);

/* Adds to a message the one of these names that is most like a text, if any
 * is; names ended by NULL. */
void sw__add_nearest(sw__line *line, const char *text, const char *const *name,
                     int names);

/* Whether a word stands in a list of words with a blank before each. */
int sw__listed(const char *words, const char *word);

#endif
