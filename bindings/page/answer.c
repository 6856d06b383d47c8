/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Answer: what the page is told about one strap.
 *
 *   error     null, or code, field, message
 *   used      every setting as it entered, numbers in the library's units
 *   answer    every field of the result, as "strapwise strap --json" has it
 *   said      each of both that has a unit, as people read it, {si, us}
 *   limit_torque_Nm  torque at three quarters of the stud's proof load, or null
 *   heel      its height when level, and the ends of its slide
 *   remarks, warnings, warning_texts, assumed, not_checked
 */
#include "answer.h"

#include "settings.h"

#include <math.h>
#include <string.h>

static double in_radians(double deg)
{
    return deg / sw_unit_factor("rad", SW_KIND_ANGLE, "unit", NULL).value;
}

static void error_json(json *j, const sw_error *err)
{
    json_open(j, "error", '{');
    json_text(j, "code", sw_status_name(err->code));
    json_text(j, "field", err->field);
    json_text(j, "message", err->message);
    json_close(j, '}');
}

static void fields(json *j, const char *key, int structure, void *base)
{
    json_open(j, key, '{');
    for (int i = 0; sw_field_at(structure, i); i++) {
        const sw_field *f = sw_field_at(structure, i);
        json_slot(j, (slot){f, (char *)base + f->offset});
    }
    json_close(j, '}');
}

static void said_pair(json *j, const char *name, const char *si, const char *us)
{
    json_open(j, name, '{');
    json_text(j, "si", si);
    json_text(j, "us", us);
    json_close(j, '}');
}

static void said_value(json *j, const char *name, int kind, double value)
{
    char si[80], us[80];
    if (sw_say(value, kind, SW_SHOW_SI, si, sizeof si) &&
        sw_say(value, kind, SW_SHOW_US, us, sizeof us))
        said_pair(j, name, si, us);
}

static void said(json *j, int structure, const void *base)
{
    for (int i = 0; sw_field_at(structure, i); i++) {
        const sw_field *f = sw_field_at(structure, i);
        /* what the answer has, too, is told from there */
        if (f->type != SW_FIELD_NUMBER ||
            (structure == SW_STRUCT_STRAP_IN &&
             sw_field_named(SW_STRUCT_STRAP_OUT, f->name)))
            continue;
        double value = slot_number((slot){f, (char *)base + f->offset});
        if (strcmp(f->unit, "%") == 0 && is_known(value))
            value /= 100; /* a ratio is told as per cent */
        said_value(j, f->name, topic_kind(f->name), value);
    }
}

static void said_range(json *j, const char *name, double low, double high)
{
    char si[100], us[100];
    sw_say_range(low, high, SW_KIND_FORCE, SW_SHOW_SI, si, sizeof si);
    sw_say_range(low, high, SW_KIND_FORCE, SW_SHOW_US, us, sizeof us);
    said_pair(j, name, si, us);
}

static void said_all(json *j, const sw_strap_in *full, const sw_strap_out *out)
{
    json_open(j, "said", '{');
    said(j, SW_STRUCT_STRAP_IN, full);
    said(j, SW_STRUCT_STRAP_OUT, out);
    said_value(j, "span", SW_KIND_LENGTH,
               full->stud_to_toe_mm + full->stud_to_heel_mm);
    said_range(j, "toe_force_range", out->toe_force_low_N,
               out->toe_force_high_N);
    said_range(j, "side_pull_range", out->side_pull_low_N,
               out->side_pull_high_N);
    said_range(j, "drag_range", out->drag_low_N, out->drag_high_N);
    json_close(j, '}');
}

/* How far the nut may be turned: the wall chart's tension, and the torque for
 * it with this strap's own friction. SW_UNSET where the grade does not say. */
typedef struct {
    double preload_N, torque_Nm;
} limit;

static limit limit_of(const sw_strap_in *full)
{
    sw_chart_in chart;
    sw_torque_in q;
    sw_chart_defaults(&chart);
    sw_torque_defaults(&q);
    strcpy(chart.thread, full->thread);
    strcpy(chart.grade, full->grade);
    strcpy(q.thread, full->thread);
    strcpy(q.grade, full->grade);
    const sw_chart_out row = sw_chart(&chart, NULL);
    if (row.status || !is_known(row.limit_preload_N))
        return (limit){SW_UNSET, SW_UNSET};
    q.preload_N = row.limit_preload_N;
    q.mu_thread = full->mu_thread;
    q.mu_seat = full->mu_seat;
    q.friction_radius_mm = full->friction_radius_mm;
    q.prevailing_torque_Nm = full->prevailing_torque_Nm;
    const sw_torque_out t = sw_torque(&q, NULL);
    return (limit){row.limit_preload_N, t.status ? SW_UNSET : t.torque_Nm};
}

/* Arrows keep their scale while the torque is turned, so that they grow with
 * it; half of what the stud may get fills the room. */
static void set_scale(settings *s, const sw_strap_out *out, const limit *most)
{
    if (!is_known(s->drawing.full_force_N) && is_known(most->preload_N))
        s->drawing.full_force_N = fmax(out->preload_N, 0.5 * most->preload_N);
}

/* Where a heel height is level, and how far the page's slide goes either way.
 */
#define HEEL_REACH_DEG 6
static void heel(json *j, const sw_strap_in *full)
{
    const double span = full->stud_to_toe_mm + full->stud_to_heel_mm;
    const double level =
        full->heel_height_mm - span * tan(in_radians(full->tilt_deg));
    const double reach = span * tan(in_radians(HEEL_REACH_DEG));
    json_open(j, "heel", '{');
    json_number(j, "level_mm", level);
    json_number(j, "low_mm", fmax(0, level - reach));
    json_number(j, "high_mm", level + reach);
    json_close(j, '}');
}

static void assumed(json *j, const sw_strap_in *in)
{
    json_open(j, "assumed", '[');
    for (int i = 0;; i++) {
        const sw_assumption a = sw_strap_assumed(in, i, NULL);
        if (a.status)
            break;
        if (a.word[0] || is_known(a.value)) /* else it entered nothing */
            json_assumed_one(j, &a);
    }
    json_close(j, ']');
}

static void warning_texts(json *j, uint64_t bits)
{
    json_open(j, "warning_texts", '[');
    for (int bit = 0; sw_warning_name(bit); bit++)
        if (bits >> bit & 1)
            json_text(j, NULL, sw_warning_text(bit));
    json_close(j, ']');
}

static void not_checked(json *j)
{
    json_open(j, "not_checked", '[');
    for (int i = 0; sw_strap_not_checked(i); i++)
        json_text(j, NULL, sw_strap_not_checked(i));
    json_close(j, ']');
}

static void remarks(json *j, const sw_strap_in *in, int show)
{
    json_open(j, "remarks", '[');
    for (int i = 0;; i++) {
        const sw_remark_out r = sw_strap_remark(in, i, show, NULL);
        if (r.status)
            break;
        json_open(j, NULL, '{');
        json_text(j, "about", sw_word(SW_WORDS_ABOUT, r.about));
        json_text(j, "text", r.text);
        json_close(j, '}');
    }
    json_close(j, ']');
}

static int ask(const char *lines, settings *s, sw_strap_in *full,
               sw_strap_out *out, sw_error *err)
{
    int status = settings_read(lines, s, err);
    if (status)
        return status;
    *full = s->strap;
    status = sw_strap_resolve(full, err);
    if (status)
        return status;
    /* as the table writes it, not as it was typed */
    strcpy(full->thread, sw_thread(full->thread, NULL).designation);
    *out = sw_strap(&s->strap, err);
    return out->status;
}

/* Takes the drawing's text over and frees it. */
static int take(sw_drawing *drawing, page *text)
{
    if (!drawing)
        return 0;
    page_add(text, sw_drawing_svg(drawing));
    sw_drawing_free(drawing);
    return 1;
}

/* The strap where the page says how wide, and the plot likewise. */
static int draw(settings *s, page *text, sw_error *err)
{
    const sw_strap_in *in = &s->strap;
    if (is_known(s->drawing.width_px)) {
        s->drawing.views = SW_VIEW_SIDE;
        if (!take(sw_strap_drawing(in, &s->drawing, err), &text[PAGE_SIDE]))
            return 0;
        s->drawing.views = SW_VIEW_PLAN;
        if (!take(sw_strap_drawing(in, &s->drawing, err), &text[PAGE_PLAN]))
            return 0;
    }
    return !is_known(s->plot_px) ||
           take(sw_tilt_plot(in, s->plot_px, s->drawing.text_px,
                             s->drawing.show, err),
                &text[PAGE_PLOT]);
}

void answer_settings(const char *lines, page *text)
{
    sw_error err;
    settings s;
    sw_strap_in full;
    sw_strap_out out;
    json j = json_start(&text[PAGE_ANSWER]);
    if (ask(lines, &s, &full, &out, &err)) {
        error_json(&j, &err);
        json_end(&j);
        return;
    }
    const limit most = limit_of(&full);
    set_scale(&s, &out, &most);
    if (!draw(&s, text, &err)) {
        for (int i = PAGE_SIDE; i < PAGE_TEXTS; i++)
            text[i].text[text[i].length = 0] = '\0';
        error_json(&j, &err);
        json_end(&j);
        return;
    }
    json_text(&j, "error", NULL);
    fields(&j, "used", SW_STRUCT_STRAP_IN, &full);
    fields(&j, "answer", SW_STRUCT_STRAP_OUT, &out);
    said_all(&j, &full, &out);
    json_number(&j, "limit_torque_Nm", most.torque_Nm);
    heel(&j, &full);
    remarks(&j, &s.strap, s.drawing.show);
    json_warnings(&j, "warnings", out.warnings);
    warning_texts(&j, out.warnings);
    assumed(&j, &s.strap);
    not_checked(&j);
    json_end(&j);
}

static void names(json *j, const char *key, const char *(*name)(int))
{
    json_open(j, key, '[');
    for (int i = 0; name(i); i++)
        json_text(j, NULL, name(i));
    json_close(j, ']');
}

/* Torque at three quarters of the proof load with the usual stud. */
static double usual_limit(const char *thread)
{
    sw_chart_in q;
    sw_chart_defaults(&q);
    strcpy(q.thread, thread);
    strcpy(q.lubrication, "oiled");
    const sw_chart_out row = sw_chart(&q, NULL);
    return row.status ? SW_UNSET : row.limit_torque_Nm;
}

static void threads(json *j)
{
    json_open(j, "threads", '[');
    for (int i = 0; sw_thread_name(i); i++) {
        const sw_thread_out t = sw_thread(sw_thread_name(i), NULL);
        json_open(j, NULL, '{');
        json_text(j, "name", sw_thread_name(i));
        json_text(j, "system", sw_word(SW_WORDS_SYSTEM, t.system));
        json_number(j, "nominal_mm", t.nominal_mm);
        json_number(j, "limit_torque_Nm", usual_limit(sw_thread_name(i)));
        json_close(j, '}');
    }
    json_close(j, ']');
}

static void lubrications(json *j)
{
    json_open(j, "lubrications", '[');
    for (int i = 0; sw_lubrication_name(i); i++) {
        const char *name = sw_lubrication_name(i);
        const sw_lubrication_out l = sw_lubrication(name, NULL);
        json_open(j, NULL, '{');
        json_text(j, "name", name);
        json_text(j, "label", l.label);
        json_number(j, "nut_factor", l.nut_factor);
        json_close(j, '}');
    }
    json_close(j, ']');
}

void answer_about(page *text)
{
    json j = json_start(text);
    json_text(&j, "version", sw_version());
    json_text(&j, "tables", sw_tables_version());
    threads(&j);
    lubrications(&j);
    names(&j, "grades", sw_grade_name);
    json_open(&j, "settings", '{');
    for (int i = 0; sw_field_at(SW_STRUCT_STRAP_IN, i); i++) {
        const sw_field *f = sw_field_at(SW_STRUCT_STRAP_IN, i);
        json_open(&j, f->name, '{');
        json_text(&j, "unit", f->unit);
        if (f->type == SW_FIELD_NUMBER) {
            json_number(&j, "min", f->min);
            json_number(&j, "max", f->max);
        }
        json_open(&j, "words", '[');
        for (int v = 1; f->words && sw_word(f->words, v); v++)
            json_text(&j, NULL, sw_word(f->words, v));
        json_close(&j, ']');
        json_close(&j, '}');
    }
    json_close(&j, '}');
    json_end(&j);
}
