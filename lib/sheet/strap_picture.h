/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap picture: where everything of one strap stands, for those who draw it.
 *
 * Lengths of the strap are in mm with the heel contact at the origin, x toward
 * the toe, y up, as in the strap's own theory; what is on the sheet is in px,
 * y down.
 */
#ifndef SW_SHEET_STRAP_PICTURE_H
#define SW_SHEET_STRAP_PICTURE_H

#include "clamp/strap_geometry.h"
#include "sheet/svg.h"

#include <strapwise/strap_drawing.h>

/* Looks. Every group also has a class. */
#define SW__INK "#1a1a1a"
#define SW__UPRIGHT "#14406b"  /* forces square to the table: solid arrows */
#define SW__SIDEWAYS "#a3201c" /* forces along the table: hollow arrows */

/* T-slot and T-nut, mm: widths and depths. */
typedef struct {
    double throat, deep, recess, recess_deep;
    double nut_wide, nut_high, head;
} sw__tslot;

typedef struct {
    /* the question and its answer */
    sw__strap_full full;
    sw_strap_out out;
    sw__strap_geometry g;
    sw__strap_forces f;
    sw_strap_drawing_in how; /* nothing open */

    /* the strap, mm */
    double sin_theta, cos_theta, tan_theta;
    double strap_left, strap_right; /* ends of its underside, by x */
    double crank_from, crank_to;    /* of a bent strap; the same: straight */
    double nose_x; /* where a round nose leaves the underside */
    double block_left, block_right; /* heel block */
    double table_y, table_deep;     /* its top; depth drawn below */
    double part_edge, part_top;
    sw__point toe;    /* contact as drawn */
    sw__point nut;    /* what lies on the strap under the nut, its middle */
    double lean;      /* of the nut, rad, toward the toe positive */
    double under_nut; /* washers under it, mm */
    double stud_top;
    sw__tslot tslot;

    /* the sheet, px */
    sw__svg *svg;
    double em, line; /* lettering, distance of base lines */
    double left, right;
    double scale; /* px in a mm */
    double zero_x, zero_y;
    double part_end;  /* x where the part is broken off */
    double per_N;     /* px of an upright arrow */
    double head_size; /* of arrows */
    int cut_short;    /* an arrow is shorter than its force */
    int level_drawn;  /* the level lies on the strap already */
} sw__picture;

/* Asks the strap and opens what was left open. 0, or records the error. */
int sw__picture_open(sw__picture *p, const sw_strap_in *in,
                     const sw_strap_drawing_in *how, sw_error *err);

/* Sets all but svg and zero_y (strap_place.c). */
void sw__picture_place(sw__picture *p);

static inline sw__point sw__px(const sw__picture *p, double x, double y)
{
    return (sw__point){p->zero_x + p->scale * x, p->zero_y - p->scale * y};
}

/* A point of the strap: on its underside at x, `up` square to it. A bent
 * strap's step is counted. */
sw__point sw__on_strap(const sw__picture *p, double x, double up);

/* Where the slot begins and ends, by x on the underside. */
void sw__strap_slot(const sw__picture *p, double *low, double *high);

/* Length of an arrow along the table, px, as drawn; *cut: it should be longer.
 */
double sw__sideways_px(const sw__picture *p, double N, int *cut);

/* Parts in side view (strap_fixture.c, strap_bar.c, strap_stud.c). */
void sw__draw_table(sw__picture *p);
void sw__draw_part(sw__picture *p);
void sw__draw_heel(sw__picture *p);
void sw__draw_strap(sw__picture *p);
void sw__draw_stud(sw__picture *p);
void sw__draw_nut(sw__picture *p);

/* Each draws what it is called after from y downwards and returns where the
 * next may start. */
double sw__draw_side(sw__picture *p, double y);
double sw__draw_plan(sw__picture *p, double y);
/* below the side view: distances, rule; scales of the arrows */
double sw__draw_distances(sw__picture *p, double y);
double sw__draw_rule(sw__picture *p, double y);
double sw__draw_scales(sw__picture *p, double y);
/* in words (strap_notes.c) */
double sw__draw_heading(sw__picture *p, double y);
double sw__draw_verdict(sw__picture *p, double y);
double sw__draw_side_notes(sw__picture *p, double y);
double sw__draw_plan_heading(sw__picture *p, double y);
double sw__draw_plan_notes(sw__picture *p, double y);

/* Wraps a text from x to the right edge; `size` times the usual lettering. */
double sw__draw_text(sw__picture *p, double x, double y, const char *text,
                     double size, int bold);

/* Words (strap_words.c): what a reader is told who cannot see it, and one line
 * each on tilt, side pull, its two causes (or nothing), stud, nut drag, arrows
 * of the plan view, friction used at the toe. */
enum { SW__WORDS_ROOM = 400 };
void sw__say_title(const sw__picture *p, char *text, size_t room);
void sw__say_about(const sw__picture *p, char *text, size_t room);
void sw__say_tightened(const sw__picture *p, int show, char *text, size_t room);
void sw__say_tilt(const sw__picture *p, char *text, size_t room);
void sw__say_pull(const sw__picture *p, char *text, size_t room);
void sw__say_causes(const sw__picture *p, char *text, size_t room);
void sw__say_stud(const sw__picture *p, char *text, size_t room);
void sw__say_drag(const sw__picture *p, char *text, size_t room);
void sw__say_arrows(const sw__picture *p, char *text, size_t room);
void sw__say_use(const sw__picture *p, char *text, size_t room);

/* Whether the part is drawn at all, and by a force that is known; whether the
 * nut drags on it. */
int sw__pulls(const sw__picture *p);
int sw__drags(const sw__picture *p);

/* Adds a quantity as sw_say() writes it. */
void sw__add_said(sw__line *line, double value, int kind, int show);

/* Whether the strap leans so that it is worth a word: 1 heel high, -1 heel
 * low, 0 level. */
int sw__leans(const sw__picture *p);

#endif
