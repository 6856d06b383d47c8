/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fixtures as lines of text, for scripts that compare (tests/reference):
 *
 *   in FIELD VALUE                        a field of the question
 *   support x y z friction stiffness needed least
 *   clamp x y z force toward pull_low pull_high drag_low drag_high held
 *   stop x y z push friction least
 *   weight W x y z
 *   load x y z Fx Fy Fz Mx My Mz          moments in N.m
 *   solve                                 answers, then begins anew
 *
 * Answers: "total NAME=VALUE ..." with every number and word, "point margin
 * ceiling idle goes" for each load with "points 1" before, "end". "bad MESSAGE"
 * where it is refused. "time" before solve: "time SECONDS" of the call.
 */
#include <strapwise-fixture.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

enum { NUMBERS = 12 };

typedef struct {
    sw_fixture *f;
    sw_hold_in in;
    int points, timed;
} state;

/* Up to NUMBERS numbers, whatever the locale. */
static int numbers(const char *text, double *v)
{
    int n = 0;
    char word[64];
    int used = 0;
    while (n < NUMBERS && sscanf(text, "%63s%n", word, &used) == 1) {
        const sw_quantity_out q = sw_number(word, "number", NULL);
        v[n++] = q.status ? SW_UNSET : q.value;
        text += used;
    }
    for (int i = n; i < NUMBERS; i++)
        v[i] = SW_UNSET;
    return n;
}

static int set_in(sw_hold_in *in, const char *text)
{
    char name[40], value[40];
    if (sscanf(text, "%39s %39s", name, value) != 2)
        return 1;
    const sw_field *f = sw_field_named(SW_STRUCT_HOLD_IN, name);
    if (!f)
        return 1;
    if (f->type == SW_FIELD_WORD) {
        const int w = sw_word_value(f->words, value);
        memcpy((char *)in + f->offset, &w, sizeof w);
        return w == 0;
    }
    const sw_quantity_out q = sw_number(value, name, NULL);
    memcpy((char *)in + f->offset, &q.value, sizeof q.value);
    return q.status;
}

static int add(state *s, const char *kind, const char *rest, sw_error *err)
{
    double v[NUMBERS];
    numbers(rest, v);
    if (strcmp(kind, "support") == 0) {
        sw_support_in in;
        sw_support_defaults(&in);
        in.x_mm = v[0], in.y_mm = v[1], in.z_mm = v[2], in.friction = v[3];
        in.stiffness_N_per_mm = v[4];
        in.needed = v[5] == SW_UNSET ? 0 : (int)v[5];
        in.least_N = v[6];
        return sw_fixture_add_support(s->f, &in, err);
    }
    if (strcmp(kind, "clamp") == 0) {
        sw_clamp_in in;
        sw_clamp_defaults(&in);
        in.x_mm = v[0], in.y_mm = v[1], in.z_mm = v[2], in.force_N = v[3];
        in.toward_deg = v[4], in.pull_low_N = v[5], in.pull_high_N = v[6];
        in.drag_low_N = v[7], in.drag_high_N = v[8], in.held_friction = v[9];
        return sw_fixture_add_clamp(s->f, &in, err);
    }
    if (strcmp(kind, "stop") == 0) {
        sw_stop_in in;
        sw_stop_defaults(&in);
        in.x_mm = v[0], in.y_mm = v[1], in.z_mm = v[2], in.push_deg = v[3];
        in.friction = v[4], in.least_N = v[5];
        return sw_fixture_add_stop(s->f, &in, err);
    }
    if (strcmp(kind, "weight") == 0) {
        sw_weight_in in;
        sw_weight_defaults(&in);
        in.weight_N = v[0], in.x_mm = v[1], in.y_mm = v[2], in.z_mm = v[3];
        return sw_fixture_set_weight(s->f, &in, err);
    }
    sw_load_in in;
    sw_load_defaults(&in);
    in.x_mm = v[0], in.y_mm = v[1], in.z_mm = v[2], in.force_x_N = v[3];
    in.force_y_N = v[4], in.force_z_N = v[5], in.moment_x_Nm = v[6];
    in.moment_y_Nm = v[7], in.moment_z_Nm = v[8];
    return sw_fixture_add_load(s->f, &in, err);
}

static void print_all(const char *what, const void *out, int structure)
{
    fputs(what, stdout);
    for (int i = 0; sw_field_at(structure, i); i++) {
        const sw_field *f = sw_field_at(structure, i);
        const char *at = (const char *)out + f->offset;
        double number;
        int word;
        char text[40];
        if (f->type == SW_FIELD_NUMBER) {
            memcpy(&number, at, sizeof number);
            sw_format(number, 12, text, sizeof text);
            printf(" %s=%s", f->name, number == SW_UNSET ? "none" : text);
        } else if (f->type == SW_FIELD_WORD) {
            memcpy(&word, at, sizeof word);
            printf(" %s=%s", f->name, word ? sw_word(f->words, word) : "none");
        }
    }
    putchar('\n');
}

static double now(void)
{
    struct timespec t;
    timespec_get(&t, TIME_UTC);
    return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

static void solve(state *s)
{
    sw_error err;
    const double start = now();
    sw_hold *h = sw_hold_new(s->f, &s->in, NULL, NULL, &err);
    if (s->timed)
        printf("time %.9f\n", now() - start);
    if (!h) {
        printf("bad %s\n", err.message);
    } else {
        const sw_hold_out out = sw_hold_total(h, NULL);
        print_all("total", &out, SW_STRUCT_HOLD_OUT);
        for (int i = 0; s->points && i < (int)out.loads; i++) {
            const sw_hold_point_out p = sw_hold_point(h, i, NULL);
            print_all("point", &p, SW_STRUCT_HOLD_POINT_OUT);
        }
    }
    puts("end");
    fflush(stdout);
    sw_hold_free(h);
    sw_fixture_free(s->f);
    s->f = sw_fixture_new(NULL);
    sw_hold_defaults(&s->in);
    s->points = s->timed = 0;
}

int main(void)
{
    static char line[400];
    state s = {sw_fixture_new(NULL), {0}, 0, 0};
    sw_hold_defaults(&s.in);
    while (s.f && fgets(line, sizeof line, stdin)) {
        char kind[16];
        int used = 0;
        sw_error err;
        if (sscanf(line, "%15s%n", kind, &used) != 1)
            continue;
        if (strcmp(kind, "solve") == 0)
            solve(&s);
        else if (strcmp(kind, "points") == 0)
            s.points = 1;
        else if (strcmp(kind, "time") == 0)
            s.timed = 1;
        else if (strcmp(kind, "in") == 0) {
            if (set_in(&s.in, line + used))
                printf("bad %s", line);
        } else if (add(&s, kind, line + used, &err))
            printf("bad %s\n", err.message);
    }
    sw_fixture_free(s.f);
    return 0;
}
