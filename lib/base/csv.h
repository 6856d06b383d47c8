/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Csv: a small table of the user's own, told row by row to whoever asked for
 * it. What a file looks like is written in csv.c.
 */
#ifndef SW_BASE_CSV_H
#define SW_BASE_CSV_H

#include "base/internal.h"

enum {
    SW__CSV_COLUMNS = 16,       /* columns that a layout or a file may have */
    SW__CSV_LINE = 1000,        /* bytes of a line */
    SW__CSV_ROWS = 10000,       /* rows of a file */
    SW__CSV_BYTES = 4 * 1048576 /* bytes of a file */
};

/* A column that a file may have. Names are lower case with single blanks; a
 * file may write capitals, and '_' or '-' for a blank. */
typedef struct {
    const char *name; /* also the field that an error blames */
    const char *also; /* other names, parted by '|'; "" for none */
    int kind;         /* sw_kind of a number, 0: text */
    int required;     /* the column must be there and no cell of it empty */
    double least;     /* allowed range of a number, in the library's unit */
    double most;
} sw__csv_column;

/* Both lists end with a row without a name. */
typedef struct {
    const sw__csv_column *column;
    const char *const *key; /* names of "key: value" lines, ended by NULL */
} sw__csv_layout;

/* One row; by column of the layout, not of the file. */
typedef struct {
    int line;                          /* of the file, from 1 */
    double number[SW__CSV_COLUMNS];    /* the library's unit; SW_UNSET where
                                          column or cell is missing */
    const char *text[SW__CSV_COLUMNS]; /* "" where it is missing */
    double factor[SW__CSV_COLUMNS];    /* of the header's unit; 0 where there
                                          is no such column */
} sw__csv_row;

/* Who takes what is read. A return that is not 0 ends the reading with that
 * status; what was said in `err` then gets file and line in front. A text is
 * gone after the call. */
typedef struct {
    void *with;
    int (*key)(void *with, int key, const char *value, sw_error *err);
    int (*row)(void *with, const sw__csv_row *row, sw_error *err);
} sw__csv_taker;

/* Reads a whole file held in memory. Returns 0, or records the error as
 * "file:line: field: ..."; rows before the fault were handed out then, so a
 * taker keeps them apart until it knows. `file` may be NULL. */
int sw__csv_read(const sw__csv_layout *layout, const char *text, size_t length,
                 const char *file, const sw__csv_taker *to, sw_error *err);

#endif
