/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reads the published values in tests/values/, whatever the locale.
 */
#ifndef TESTS_VALUES_H
#define TESTS_VALUES_H

#include "near.h"
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { VALUES_COLUMNS = 12, VALUES_LINE = 512 };

typedef struct {
    FILE *file;
    char names[VALUES_LINE], line[VALUES_LINE];
    char *name[VALUES_COLUMNS], *cell[VALUES_COLUMNS];
    int columns;
} values;

static inline int values_split(char *line, char **cell)
{
    int n = 0;
    line[strcspn(line, "\r\n")] = '\0';
    for (char *at = line; at && n < VALUES_COLUMNS; n++) {
        cell[n] = at;
        at = strchr(at, ',');
        if (at)
            *at++ = '\0';
    }
    return n;
}

static inline int values_read(values *v, char *line)
{
    while (fgets(line, VALUES_LINE, v->file))
        if (line[0] != '#')
            return 1;
    return 0;
}

/* srcdir is the top of the source tree, set by make check. */
static inline FILE *values_file(const char *name)
{
    const char *top = getenv("srcdir");
    char path[1024];
    snprintf(path, sizeof path, "%s/%s", top ? top : ".", name);
    FILE *file = fopen(path, "r");
    must(file != NULL, "%s: cannot be opened; set srcdir", path);
    return file;
}

static inline void values_open(values *v, const char *name)
{
    memset(v, 0, sizeof *v);
    v->file = values_file(name);
    must(values_read(v, v->names), "%s: no head", name);
    v->columns = values_split(v->names, v->name);
}

/* 0 at the end of the table, which is closed then. */
static inline int values_next(values *v)
{
    if (!values_read(v, v->line)) {
        fclose(v->file);
        return 0;
    }
    const int n = values_split(v->line, v->cell);
    must(n == v->columns, "%s: %d cells, want %d", v->line, n, v->columns);
    return 1;
}

static inline const char *values_text(const values *v, const char *name)
{
    for (int i = 0; i < v->columns; i++)
        if (strcmp(v->name[i], name) == 0)
            return v->cell[i];
    ck_abort_msg("no column %s", name);
    return NULL;
}

/* Plain decimals of at most 15 digits: exact up to one rounding. */
static inline double values_number(const values *v, const char *name)
{
    const char *text = values_text(v, name);
    double digits = 0, scale = 1;
    int point = 0;
    for (const char *c = text; *c; c++) {
        must((*c >= '0' && *c <= '9') || (*c == '.' && !point),
             "%s is no plain number", text);
        if (*c == '.') {
            point = 1;
        } else {
            digits = 10 * digits + (*c - '0');
            scale *= point ? 10 : 1;
        }
    }
    return digits / scale;
}

/* One unit of the last printed digit. */
static inline double values_last_digit(const values *v, const char *name)
{
    const char *text = values_text(v, name), *point = strchr(text, '.');
    return point ? pow(10, -(double)strlen(point + 1)) : 1;
}

#endif
