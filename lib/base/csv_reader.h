/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What csv.c and csv_header.c share.
 */
#ifndef SW_BASE_CSV_READER_H
#define SW_BASE_CSV_READER_H

#include "base/csv.h"

typedef struct {
    const sw__csv_layout *layout;
    const sw__csv_taker *to;
    const char *file;
    sw_error *err;
    int line;                       /* the one being read, from 1 */
    char separator;                 /* 0: no header yet */
    int columns;                    /* of the file */
    int column[SW__CSV_COLUMNS];    /* in the layout, by column of the file */
    double factor[SW__CSV_COLUMNS]; /* to the library's unit, likewise */
    unsigned long keys;             /* bit n: key n was there */
    int rows;
} sw__csv_reader;

/* Records "file:line: " and the message of `fault`; returns its code. */
int sw__csv_fail(const sw__csv_reader *r, const sw_error *fault);

/* The same for "field: " and the parts of a message; a part that is the
 * user's is quoted. `quoted` may be NULL. */
int sw__csv_say(const sw__csv_reader *r, int code, const char *field,
                const char *before, const char *quoted, const char *after);

/* Takes blanks off both ends, in place. */
char *sw__csv_trim(char *text);

/* Parts a line into cells, in place; returns 0 or records the error. */
int sw__csv_split(const sw__csv_reader *r, char *line, char **cell, int *cells);

/* A line before the rows: "key: value" or the header. */
int sw__csv_take_key(sw__csv_reader *r, char *line);
int sw__csv_take_header(sw__csv_reader *r, char *line);
/* Whether a line is written like "key: value". */
int sw__csv_is_key(const char *line);

#endif
