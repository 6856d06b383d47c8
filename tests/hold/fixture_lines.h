/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A fixture as lines of text:
 *
 *   in FIELD VALUE                        a field of the question
 *   support x y z friction stiffness needed least
 *   clamp x y z force toward pull_low pull_high drag_low drag_high held
 *   stop x y z push friction least
 *   weight W x y z
 *   load x y z Fx Fy Fz Mx My Mz          moments in N.m
 *
 * Numbers left out at the end of a line are left to the library.
 */
#ifndef TESTS_HOLD_FIXTURE_LINES_H
#define TESTS_HOLD_FIXTURE_LINES_H

#include <strapwise-fixture.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

enum { LINE_NUMBERS = 12 };

/* How a fixture is put elsewhere: larger, stronger, turned, moved. */
typedef struct {
    double length, force, turn_deg, dx, dy, dz;
} placed;

static const placed as_it_is = {1, 1, 0, 0, 0, 0};

static inline void line_numbers(const char *text, double *v)
{
    int n = 0, used = 0;
    char word[64];
    while (n < LINE_NUMBERS && sscanf(text, "%63s%n", word, &used) == 1) {
        const sw_quantity_out q = sw_number(word, "number", NULL);
        v[n++] = q.status ? SW_UNSET : q.value;
        text += used;
    }
    while (n < LINE_NUMBERS)
        v[n++] = SW_UNSET;
}

static inline double times(double v, double factor)
{
    return v == SW_UNSET ? v : v * factor;
}

/* A place or, without the move, a vector. */
static inline void put(const placed *p, double *x, double *y, double factor,
                       int move)
{
    const double a = p->turn_deg * (3.14159265358979323846 / 180);
    const double c = cos(a), s = sin(a);
    const double x0 = *x == SW_UNSET ? 0 : *x, y0 = *y == SW_UNSET ? 0 : *y;
    *x = factor * (c * x0 - s * y0) + (move ? p->dx : 0);
    *y = factor * (s * x0 + c * y0) + (move ? p->dy : 0);
}

static inline int line_in(sw_hold_in *in, const char *text)
{
    char name[40], value[40];
    if (sscanf(text, "%39s %39s", name, value) != 2)
        return SW_ERR_SYNTAX;
    const sw_field *f = sw_field_named(SW_STRUCT_HOLD_IN, name);
    if (!f)
        return SW_ERR_UNKNOWN;
    char *at = (char *)in + f->offset;
    if (f->type == SW_FIELD_WORD) {
        const int w = sw_word_value(f->words, value);
        memcpy(at, &w, sizeof w);
        return w ? SW_OK : SW_ERR_UNKNOWN;
    }
    const sw_quantity_out q = sw_number(value, name, NULL);
    memcpy(at, &q.value, sizeof q.value);
    return q.status;
}

/* One line into the fixture or the question; 0 or sw_status. */
static inline int line_add(sw_fixture *f, sw_hold_in *in, const placed *p,
                           const char *line, sw_error *err)
{
    char kind[16];
    int used = 0;
    double v[LINE_NUMBERS];
    if (sscanf(line, "%15s%n", kind, &used) != 1)
        return SW_OK;
    if (strcmp(kind, "in") == 0)
        return line_in(in, line + used);
    line_numbers(line + used, v);
    const double L = p->length, F = p->force;
    if (strcmp(kind, "weight") == 0) {
        sw_weight_in w;
        sw_weight_defaults(&w);
        put(p, &v[1], &v[2], L, 1);
        w.weight_N = v[0] * F, w.x_mm = v[1], w.y_mm = v[2];
        w.z_mm = times(v[3], L) + p->dz;
        return sw_fixture_set_weight(f, &w, err);
    }
    put(p, &v[0], &v[1], L, 1);
    v[2] = times(v[2], L) + p->dz;
    if (strcmp(kind, "support") == 0) {
        sw_support_in s;
        sw_support_defaults(&s);
        s.x_mm = v[0], s.y_mm = v[1], s.z_mm = v[2], s.friction = v[3];
        s.stiffness_N_per_mm = v[4];
        s.needed = v[5] == SW_UNSET ? 0 : (int)v[5];
        s.least_N = times(v[6], F);
        return sw_fixture_add_support(f, &s, err);
    }
    if (strcmp(kind, "clamp") == 0) {
        sw_clamp_in c;
        sw_clamp_defaults(&c);
        c.x_mm = v[0], c.y_mm = v[1], c.z_mm = v[2];
        c.force_N = times(v[3], F);
        c.toward_deg = (v[4] == SW_UNSET ? 0 : v[4]) + p->turn_deg;
        c.pull_low_N = times(v[5], F), c.pull_high_N = times(v[6], F);
        c.drag_low_N = times(v[7], F), c.drag_high_N = times(v[8], F);
        c.held_friction = v[9];
        return sw_fixture_add_clamp(f, &c, err);
    }
    if (strcmp(kind, "stop") == 0) {
        sw_stop_in s;
        sw_stop_defaults(&s);
        s.x_mm = v[0], s.y_mm = v[1], s.z_mm = v[2];
        s.push_deg = v[3] + p->turn_deg, s.friction = v[4];
        s.least_N = times(v[5], F);
        return sw_fixture_add_stop(f, &s, err);
    }
    if (strcmp(kind, "load") != 0)
        return SW_ERR_SYNTAX;
    sw_load_in load;
    sw_load_defaults(&load);
    put(p, &v[3], &v[4], F, 0);
    put(p, &v[6], &v[7], F * L, 0);
    load.x_mm = v[0], load.y_mm = v[1], load.z_mm = v[2];
    load.force_x_N = v[3], load.force_y_N = v[4];
    load.force_z_N = times(v[5], F);
    load.moment_x_Nm = v[6], load.moment_y_Nm = v[7];
    load.moment_z_Nm = times(v[8], F * L);
    return sw_fixture_add_load(f, &load, err);
}

/* Lines between semicolons. */
static inline int lines_add(sw_fixture *f, sw_hold_in *in, const placed *p,
                            const char *text, sw_error *err)
{
    int status = SW_OK;
    while (*text && !status) {
        char line[200];
        const size_t n = strcspn(text, ";");
        if (n >= sizeof line)
            return SW_ERR_SYNTAX;
        memcpy(line, text, n);
        line[n] = '\0';
        status = line_add(f, in, p, line, err);
        text += n + (text[n] == ';');
    }
    return status;
}

#endif
