/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Cli: what the files of the command-line program share.
 *
 * A run goes: options.c reads the arguments into a `request`, a topic's run
 * function composes its whole answer on a `page`, output.c delivers the page.
 * So nothing is half printed when something goes wrong.
 */
#ifndef STRAPWISE_CLI_H
#define STRAPWISE_CLI_H

#include "topics.h"

/* Exit status of the program. */
enum {
    DONE = 0,
    NOT_MET = 1,     /* computed, and it does not hold */
    BAD_INPUT = 2,   /* wrong usage or bad input */
    NOT_FINISHED = 3 /* file or memory trouble */
};

/* ---- page.c: text under composition ---- */

typedef struct {
    char *text;
    size_t length, room;
    int failed; /* out of memory; every later call does nothing */
} page;

/* A blank where a line must not be broken; output.c prints it as a blank. */
#define KEEP "\x1f"

void page_add(page *p, const char *text);
void page_add_n(page *p, const char *text, size_t n);
/* significant digits; the shortest way to write them */
void page_number(page *p, double value, int digits);
/* a fixed number of decimals */
void page_fixed(page *p, double value, int decimals);
/* blanks up to a column of this line, or of a new one when it is past it */
void page_tab(page *p, size_t column);
/* breaks the text since `start` into lines, the later ones indented */
void page_wrap(page *p, size_t start, size_t indent);
void page_free(page *p);
/* copies what fits, always terminated */
void copy_cut(char *to, size_t room, const char *from);
/* columns that a UTF-8 text takes */
size_t columns(const char *text, size_t bytes);

/* ---- options.c, arguments.c, spell.c: command line to request ---- */

typedef struct command command;

typedef struct {
    char name[48];     /* "--stud-to-toe" */
    const char *also;  /* another spelling, or NULL */
    slot slot;         /* where the value goes, or ... */
    const char **text; /* ... a text that is kept as it is, or ... */
    int *flag;         /* ... no value at all */
    const char *shape; /* what the value looks like, for --help */
    const char *what;  /* one line for --help */
    int given;
} option;

#define OPTIONS_MOST 140

/* Whence a nut factor came; file NULL: from no calibration. */
typedef struct {
    const char *file;
    sw_pairs_out about;
    sw_calibrate_out out;
    int scatters; /* its scatter was put in the place of a published one */
    uint64_t warnings;
} calibration;

typedef struct {
    const command *command;
    const topic *topic; /* NULL where the command asks no single question */
    const topic *with;  /* that with a second question beside it, or NULL */
    question question;
    question other; /* of a cut: the second cutter's */
    option option[OPTIONS_MOST];
    int options;
    int json, strict, replace, help, csv, assumed;
    const char *units, *output, *find, *series, *tools;
    const char *svg, *tilt_svg, *nut_factor_from;
    const char *operation, *required_margin, *map;
    int points;
    calibration calibration;
    int us;            /* from units: US units first */
    const char **file; /* words without dashes, where they are file names */
    int files;
    uint64_t warnings; /* of the answer, for --strict */
} request;

void request_options(request *r, const command *c);
/* 0 or the exit status, after it has complained */
int request_read(request *r, int argc, char **argv);
int request_given(const request *r, const char *option_name);
/* the option whose name is the first n bytes, or NULL */
option *request_option(request *r, const char *name, size_t n);
/* whether a word stands in a list of words with a blank before each */
int listed(const char *words, const char *word);

/* "stud_to_toe_mm" to "--stud-to-toe"; `also` may be NULL */
void spell_option(const char *field_name, char *name, size_t room,
                  const char **also);
/* what an option is for; NULL where nobody wrote it down */
const char *spell_purpose(const char *field_name);
/* single-character edits between two words */
int spell_distance(const char *a, const char *b);
/* quotes a word of the user, control bytes out, long ones cut */
void spell_quoted(page *p, const char *word);
/* a message of the library with field names turned into options */
void spell_message(page *p, request *r, const sw_error *err);

/* ---- input.c: files that are read ---- */

/* Adds the whole file to a page; 0 or the exit status, after it has
 * complained. What does not fit in memory leaves the page failed. */
int read_file(const char *who, const char *name, page *text);

/* ---- output.c: errors to stderr, the page to its place ---- */

/* parts of one line, ended by NULL; returns `status` */
int complain(int status, const char *who, ...);
int complain_page(int status, const char *who, page *line);
/* reports an error of the library: BAD_INPUT, NOT_MET for "no answer", or
 * NOT_FINISHED for no memory */
int complain_error(request *r, const sw_error *err);
/* DONE or NOT_FINISHED; `output` NULL is standard output */
int deliver(page *p, const char *who, const char *output, int replace);
/* whether two names are one file that exists */
int same_file(const char *a, const char *b);
/* 0 when a file may be written there; else complains */
int output_refused(const char *who, const char *output, int replace);
/* the same, blaming another option */
int file_refused(const char *who, const char *option_name, const char *output,
                 int replace);

/* ---- picture.c: a drawing beside the answer ---- */

/* 0 when a drawing may be written there, or none is wanted; else complains */
int picture_refused(const request *r, const char *option_name,
                    const char *file);
/* Writes and frees a drawing; NULL: reports why there is none. */
int picture_deliver(request *r, sw_drawing *drawing, const char *file,
                    const sw_error *err);

/* ---- commands.c, help.c ---- */

struct command {
    const char *name;
    const char *purpose;    /* one line */
    const char *usage;      /* after "strapwise NAME" */
    const char *text;       /* a few lines more, or "" */
    const char *example;    /* one real command */
    const char *topic;      /* library topic whose fields are the options */
    const char *with;       /* topic that adds a second question, or NULL */
    const char *more;       /* plain arguments that are options too */
    const char *hidden;     /* fields that are no options here */
    const char *positional; /* "thread": field filled from words without
                               dashes, "file": file names, "": none */
    int (*run)(request *r, page *p);
};

const command *command_named(const char *name);
const command *command_at(int index);
void help_overview(page *p);
/* the topics whose names start with that word */
void help_family(page *p, const char *word);
void help_command(page *p, request *r);

int run_thread(request *r, page *p);
int run_torque(request *r, page *p);
int run_preload(request *r, page *p);
int run_chart(request *r, page *p);
int run_strap(request *r, page *p);
int run_window(request *r, page *p);
int run_tight(request *r, page *p);
int run_methods(request *r, page *p);
int run_strip(request *r, page *p);
int run_weakest(request *r, page *p);
int run_materials(request *r, page *p);
int run_cut(request *r, page *p);
int run_cut_materials(request *r, page *p);
int run_tool(request *r, page *p);
int run_calibrate(request *r, page *p);
int run_clamp(request *r, page *p);
int run_page(request *r, page *p);
int run_cases(request *r, page *p);
int run_check(request *r, page *p);
int run_hold(request *r, page *p);

/* ---- json.c: the writer; json_parts.c, json_answer.c: results ---- */

typedef struct {
    page *page;
    int first; /* nothing written yet at this level */
    int depth;
} json;

json json_start(page *p);
void json_end(json *j);
void json_key(json *j, const char *key); /* NULL inside a list */
void json_number(json *j, const char *key, double value);
void json_int(json *j, const char *key, int value);
void json_text(json *j, const char *key, const char *text);
void json_open(json *j, const char *key, char bracket);
void json_close(json *j, char bracket);

void json_slot(json *j, slot s);
/* what an answer holds: keys in the order promised, then all others */
void json_fields(json *j, request *r, const topic *t, answer *a);
void json_assumed_one(json *j, const sw_assumption *a);
void json_warnings(json *j, const char *key, uint64_t bits);
void json_not_checked(json *j, const topic *t);
/* the library's, and those of the command itself unless `own` is NULL */
void json_assumed(json *j, const topic *t, const question *q,
                  const request *own);

/* ---- say.c: quantities in words, say_notes.c: what comes below ---- */

/* each with both systems, `us` first or SI first */
void say_force(page *p, int us, double N);
void say_force_range(page *p, int us, double low, double high);
void say_torque(page *p, int us, double Nm);
void say_torque_range(page *p, int us, double low, double high);
void say_length(page *p, int us, double mm);
void say_length_range(page *p, int us, double low, double high);
void say_stress(page *p, int us, double MPa);
void say_torque_us(page *p, double Nm); /* the US half alone */
void say_percent(page *p, double ratio);
void say_grade(page *p, const char *grade); /* "class 8.8", "grade-5" */
double in_unit(double value, const char *unit, int kind);
int is_known(double value); /* neither SW_UNSET nor NaN */

/* "label               " ready for its value; say_done ends the entry */
size_t say_label(page *p, const char *label);
void say_done(page *p, size_t start);
#define LABEL_WIDTH 20

void say_warnings(page *p, uint64_t bits);
void say_warnings_as(page *p, const char *title, uint64_t bits);
/* the library's unless `t` is NULL, and those of the command itself unless
 * `own` is NULL */
void say_assumed(page *p, int us, const topic *t, const question *q,
                 const request *own);
/* those of the second question alone */
void say_assumed_second(page *p, int us, const request *r);
void say_assumed_value(page *p, int us, const sw_assumption *a);
void say_assumed_one(page *p, int us, const sw_assumption *a);
/* the defaults of a strap that matter, the largest first */
void say_matters(page *p, int us, const sw_strap_in *in, double toe_N);
void say_not_checked(page *p, const topic *t);
void say_caution(page *p);

/* ---- spread.c: the second question of torque, preload and strap ---- */

/* whether one of its options was given */
int spread_asked(const request *r);
/* 0 or the exit status, after it has complained; long runs tell a terminal how
 * far they are */
int spread_torque(request *r, answer *a);
int spread_strap(request *r, answer *a);
void say_coverage(page *p, double coverage);
void say_spread(page *p, const request *r, const sw_spread_out *s);
void say_strap_spread(page *p, request *r, const sw_strap_spread_out *s);

/* ---- cut_other.c, say_cut.c: a cut, and a second cutter beside it ---- */

/* The index-th option of the second cutter: its slot (without a field where the
 * topic has none) and name; 0 past the last. */
int other_at(request *r, int index, slot *s, char *name, size_t room);
/* whether one of them was given */
int other_given(const request *r);
/* Puts the second question; 0 or the exit status, after it has complained. */
int other_ask(request *r, answer *a);
void say_other(page *p, request *r, answer *a, answer *b);
void json_other(json *j, request *r, answer *a, answer *b);
void say_turning(page *p, request *r, const sw_turning_out *t);
void say_milling(page *p, request *r, const sw_milling_out *m);
void say_drilling(page *p, request *r, const sw_drilling_out *d);
void say_power(page *p, int us, double W);

/* ---- window.c: the torque between two limits ---- */

void say_window(page *p, int us, const sw_window_out *w, const char *where);

/* ---- one file per topic ---- */

/* The index-th default that --find, not the library, supplied; its status is
 * not 0 past the last. */
sw_assumption find_assumed(const request *r, int index);
/* Puts the backward question and leaves in `r` the strap it found; 0 or the
 * exit status, after it has complained. */
int find_ask(request *r, answer *found);
/* NULL when nothing is to be found */
const topic *find_topic(const request *r);
void say_find(page *p, const request *r, const answer *found);

void say_thread(page *p, int us, const sw_thread_out *t);
void say_torque_answer(page *p, request *r, const sw_torque_out *t,
                       const sw_spread_out *spread);
void say_strap(page *p, request *r, const sw_strap_out *s);
void say_turn(page *p, const sw_turn_out *t);
void say_tool(page *p, request *r, const sw_tool_out *t);
/* the rows of a list of tools: its head, one that would do, one that would
 * not */
void say_tools_head(page *p);
void say_tools_one(page *p, const char *name, const sw_tool_out *t);
void say_tools_not(page *p, const char *name, const sw_error *err,
                   double torque_Nm, int torque_unit);
void say_calibrate(page *p, request *r, const sw_calibrate_out *o);
/* the first sentence on a clamp or a closed form of holding */
void say_clamp_lead(page *p, request *r, const answer *a);
/* `as` "bar": bar and psi; "inHg": kPa and inHg; "psi": MPa and psi */
void say_shop_pressure(page *p, int us, double MPa, const char *as);
double rounded_down(double value, int digits);

/* ---- calibration.c: a file of pairs, and its K as a nut factor ---- */

/* 0 or the exit status, after it has complained; to be freed then by
 * sw_pairs_free(). "-" is standard input. */
int calibration_read(const char *who, const char *name, sw_pairs **pairs);
/* Puts the K of --nut-factor-from into the question; 0 or the exit status,
 * after it has complained. Nothing where the option was not given. */
int calibration_take(request *r);
/* whence K came; nothing without a calibration */
void say_calibration(page *p, const request *r);
void json_calibration(json *j, const request *r);

#endif
