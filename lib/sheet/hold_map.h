/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Hold map: what its files share.
 */
#ifndef SW_SHEET_HOLD_MAP_H
#define SW_SHEET_HOLD_MAP_H

#include "job/job.h"
#include "sheet/svg.h"

#include <strapwise/hold_map.h>

/* Where in the picture something is drawn already: cells of a few pixels. */
typedef struct {
    unsigned char *cell;
    int columns, rows;
    sw__box room;
} sw__occupied;

/* 0 or SW_ERR_MEMORY with an error; freed by free(o->cell). */
int sw__occupied_open(sw__occupied *o, const sw__box *room, sw_error *err);
int sw__occupied_free(const sw__occupied *o, const sw__box *b);
void sw__occupied_take(sw__occupied *o, const sw__box *b);
void sw__occupied_line(sw__occupied *o, sw__point from, sw__point to,
                       double half);
/* Puts words of this width about a place, as near as there is room; 0 where
 * there is none within `far`. `b` is where they then stand: up right first and
 * then round, or `over` it first and under it next. */
int sw__occupied_place(sw__occupied *o, sw__point at, int over, double off,
                       double far, double width, double height, sw__box *b);

/* One point of the path. */
typedef struct {
    double x, y; /* mm */
    double margin;
} sw__map_point;

typedef struct {
    const sw_job *job;
    const sw__job_operation *op;
    const sw_hold *hold;
    sw_hold_out out;
    sw_hold_map_in how;
    sw__map_point *point;
    int points, worst;
    double largest; /* margins end here */
    double em;      /* of the lettering */
    int us;         /* inches first */
    sw__box frame;  /* of the drawing, px */
    double left_mm, top_mm, px_per_mm;
    sw__svg *svg;
    sw__occupied occupied;
} sw__map;

static inline sw__point sw__map_at(const sw__map *m, double x, double y)
{
    return (sw__point){m->frame.left + (x - m->left_mm) * m->px_per_mm,
                       m->frame.top + (m->top_mm - y) * m->px_per_mm};
}

/* How a margin is shown. */
typedef enum {
    SW__MARK_HOLDS = 1, /* a ring: the wanted margin is there */
    SW__MARK_LITTLE,    /* a triangle: less than wanted */
    SW__MARK_GOES,      /* a filled square: the cut moves the part */
    SW__MARK_NONE       /* a dot: the part does not rest before the cut */
} sw__mark;

sw__mark sw__map_mark_of(const sw__map *m, double margin);
/* `r`: about half its width, px */
void sw__map_mark(sw__map *m, sw__point at, sw__mark mark, double r);
/* whether the part rests until the cut comes */
int sw__map_rests(const sw__map *m);
void sw__map_margin(const sw__map *m, double margin, char *text, size_t room);

void sw__map_part(sw__map *m);     /* map_contacts.c */
void sw__map_contacts(sw__map *m); /* map_contacts.c */
void sw__map_push(sw__map *m);     /* map_contacts.c */
void sw__map_names(sw__map *m);    /* map_contacts.c */
void sw__map_path(sw__map *m);     /* map_points.c */
void sw__map_numbers(sw__map *m);  /* map_points.c */
/* each returns where the next begins */
double sw__map_heading(sw__map *m, double y); /* map_words.c */
double sw__map_legend(sw__map *m, double y);  /* map_words.c */
void sw__map_about(const sw__map *m, char *text, size_t room);

#endif
