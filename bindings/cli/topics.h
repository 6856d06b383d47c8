/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Topics: every question of the library by name, so that one piece of code can
 * put any of them from options, from a line of the corpus, or from a test.
 *
 * Only the public interface is used; include this from a test as it stands.
 */
#ifndef STRAPWISE_CLI_TOPICS_H
#define STRAPWISE_CLI_TOPICS_H

#include <strapwise.h>

/* A text argument that nobody gave; the library is then handed NULL. */
#define TOPIC_ABSENT "\1"

/* What functions take beside an input struct, or instead of one. */
typedef struct {
    char designation[160], text[160], kind[16], grade[40], lubrication[40];
    char method[40];
    char material[40], nut_class[40];
    double nominal_mm, side_pull_N, toe_error_pct, vial_mm_per_m, toe_force_N;
    double hold_N, flat_N;
    double p, df;
    double rank;
    double snug_N;
    int basis;
    double index, count;
} topic_arguments;

typedef struct {
    union {
        sw_torque_in torque;
        sw_chart_in chart;
        sw_strap_in strap;
        sw_strip_in strip;
        sw_tool_in tool;
        sw_calibrate_in calibrate;
        sw_screw_in screw;
        sw_cylinder_in cylinder;
        sw_swing_in swing;
        sw_vacuum_in vacuum;
        sw_adhesive_in adhesive;
        sw_bar_in bar;
        sw_contact_in contact;
        sw_pad_in pad;
        sw_disc_in disc;
        sw_chuck_in chuck;
        sw_squeeze_in squeeze;
        sw_couple_in couple;
        sw_tripod_in tripod;
        sw_turning_in turning;
        sw_milling_in milling;
        sw_drilling_in drilling;
    } in;
    union {
        sw_spread_in spread;
        sw_engage_in engage;
    } beside;              /* a second question, of some topics */
    sw_tight_in tight;     /* a third, of one */
    const sw_pairs *pairs; /* what a calibration is put with */
    topic_arguments arguments;
} question;

typedef struct {
    union {
        int status; /* every result starts with it */
        sw_thread_out thread;
        sw_grade_out grade;
        sw_lubrication_out lubrication;
        sw_torque_out torque;
        sw_chart_out chart;
        sw_strap_out strap;
        sw_tilt_out tilt;
        sw_place_out place;
        sw_strap_torque_out strap_torque;
        sw_method_out method;
        sw_spread_out spread;
        sw_window_out window;
        sw_strap_spread_out strap_spread;
        sw_tool_out tool;
        sw_material_out material;
        sw_nut_out nut;
        sw_strip_out strip;
        sw_gives_out gives;
        sw_turn_out turn;
        sw_quantity_out quantity;
        sw_calibrate_out calibrate;
        sw_screw_out screw;
        sw_cylinder_out cylinder;
        sw_swing_out swing;
        sw_vacuum_out vacuum;
        sw_adhesive_out adhesive;
        sw_bar_out bar;
        sw_contact_out contact;
        sw_pad_out pad;
        sw_disc_out disc;
        sw_chuck_out chuck;
        sw_squeeze_out squeeze;
        sw_couple_out couple;
        sw_tripod_out tripod;
        sw_tight_out tight;
        sw_remedy_out remedy;
        sw_cut_material_out cut_material;
        sw_cut_load_out cut_load;
        sw_turning_out turning;
        sw_milling_out milling;
        sw_drilling_out drilling;
    } out;
    sw_error err;
} answer;

typedef struct topic {
    const char *name;
    int in, beside, out;   /* sw_struct, 0 for none */
    const char *arguments; /* names of the plain arguments, blank before each */
    void (*defaults)(question *);
    void (*solve)(const question *, answer *);
    /* or NULL; those of the second question follow those of the first */
    sw_assumption (*assumed)(const question *, int, sw_error *);
    const char *(*not_checked)(int); /* or NULL */
    size_t warnings; /* where `warnings` is in the result, 0 for nowhere */
    int third; /* sw_struct of a third question, which stands first; 0 for none
                */
} topic;

/* Rows of the table in topics_clamp.c, or NULL past the last. */
const topic *topic_clamp_at(int index);

/* The topic with this name, or NULL. */
const topic *topic_named(const char *name);

/* A field and the place of its value in one question or answer. */
typedef struct {
    const sw_field *field; /* NULL: there is no such field */
    char *place;
} slot;

slot topic_input_at(const topic *t, question *q, int index);
slot topic_input(const topic *t, question *q, const char *name);
/* a plain argument, whether or not a topic takes it */
slot topic_argument(question *q, const char *name);
slot topic_output_at(const topic *t, answer *a, int index);
slot topic_output(const topic *t, answer *a, const char *name);

double slot_number(slot s);
int slot_word(slot s);
void slot_set_number(slot s, double value);
void slot_set_word(slot s, int value);
/* 0 when the text is longer than the field holds */
int slot_set_text(slot s, const char *text);

/* Everything open; text arguments absent. */
void topic_clear(const topic *t, question *q);
uint64_t topic_warnings(const topic *t, const answer *a);

/* Kind of quantity that a field's name ends on ("_Nm": SW_KIND_TORQUE). */
int topic_kind(const char *field_name);
/* sw_kind of a word ("force"), 0 for none. */
int topic_kind_named(const char *word);

#endif
