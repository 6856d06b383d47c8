/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Cut other: a second cutter beside the first, from the options that start with
 * --other-; all that is not given of it is as the first one has it.
 */
#include "cli.h"

#include <math.h>
#include <string.h>

#define OTHER "--other-"

/* What may differ between two cutters, in any of the three cuts. */
static const char *const differs[] = {"diameter_mm",
                                      "teeth",
                                      "feed_per_tooth_mm",
                                      "feed_mm",
                                      "depth_mm",
                                      "width_mm",
                                      "rake_deg",
                                      "wear_factor",
                                      "way",
                                      "helix_deg",
                                      "corner_deg",
                                      "lead_deg",
                                      "nose_radius_mm",
                                      "radial_ratio",
                                      "thrust_ratio",
                                      "point_deg",
                                      "chisel_ratio",
                                      "speed_rpm",
                                      "cutting_speed_m_per_min"};
enum { DIFFERS = sizeof differs / sizeof differs[0] };

/* Not the diameter that is turned, which is the part's. */
static slot place(request *r, const char *field)
{
    slot none = {NULL, NULL};
    if (r->topic->in == SW_STRUCT_TURNING_IN &&
        strcmp(field, "diameter_mm") == 0)
        return none;
    return topic_input(r->topic, &r->other, field);
}

static void spell(const char *field, char *name, size_t room)
{
    char plain[48];
    spell_option(field, plain, sizeof plain, NULL);
    copy_cut(name, room, OTHER);
    copy_cut(name + strlen(OTHER), room - strlen(OTHER), plain + strlen("--"));
}

int other_at(request *r, int index, slot *s, char *name, size_t room)
{
    if (index < 0 || index >= DIFFERS)
        return 0;
    *s = place(r, differs[index]);
    spell(differs[index], name, room);
    return 1;
}

int other_given(const request *r)
{
    for (int i = 0; i < r->options; i++)
        if (r->option[i].given &&
            strncmp(r->option[i].name, OTHER, strlen(OTHER)) == 0)
            return 1;
    return 0;
}

static int given(const request *r, const char *field)
{
    char name[48];
    spell(field, name, sizeof name);
    return request_given(r, name);
}

/* One speed replaces the other. */
static void drop_speed(request *r)
{
    static const char *const speed[] = {"speed_rpm", "cutting_speed_m_per_min"};
    for (int i = 0; i < 2; i++)
        if (given(r, speed[i]) && !given(r, speed[1 - i]))
            slot_set_number(place(r, speed[1 - i]), SW_UNSET);
}

int other_ask(request *r, answer *a)
{
    for (int i = 0;; i++) {
        const slot from = topic_input_at(r->topic, &r->question, i);
        const slot to = topic_input_at(r->topic, &r->other, i);
        if (!from.field)
            break;
        if (!given(r, from.field->name))
            memcpy(to.place, from.place, from.field->size);
    }
    drop_speed(r);
    r->topic->solve(&r->other, a);
    if (!a->out.status)
        return DONE;
    page line = {0};
    page_add(&line, "the other cutter: ");
    spell_message(&line, r, &a->err);
    return complain_page(BAD_INPUT, r->command->name, &line);
}

/* What is compared: label, field, and the kind of its unit; a torque where no
 * speed gives a power. */
static const struct {
    const char *label, *field;
    int kind;
} row[] = {
    {"peak in the plane", "peak_N", SW_KIND_FORCE},
    {"lift", "z_high_N", SW_KIND_FORCE},
    {"cutting force", "cutting_N", SW_KIND_FORCE},
    {"away from the tool", "passive_N", SW_KIND_FORCE},
    {"thrust", "thrust_high_N", SW_KIND_FORCE},
    {"breakthrough pull", "pull_N", SW_KIND_FORCE},
    {"torque", "torque_Nm", SW_KIND_TORQUE},
    {"power", "power_W", SW_KIND_POWER},
};
enum { ROWS = sizeof row / sizeof row[0] };

/* z_high_N of a drill is its pull, which has a row. */
static int shown(const request *r, answer *a, answer *b, int i, double *one,
                 double *two)
{
    const slot s = topic_output(r->topic, a, row[i].field);
    const slot t = topic_output(r->topic, b, row[i].field);
    if (!s.field || (r->topic->out == SW_STRUCT_DRILLING_OUT &&
                     strcmp(row[i].field, "z_high_N") == 0))
        return 0;
    *one = slot_number(s);
    *two = slot_number(t);
    return is_known(*one) && is_known(*two) && (*one > 0 || *two > 0);
}

/* How much less the other one has, percent; open where there was nothing. */
static double saved(double one, double two)
{
    return one > 0 ? 100 * (1 - fmax(two, 0) / one) : SW_UNSET;
}

void json_other(json *j, request *r, answer *a, answer *b)
{
    double one, two;
    json_open(j, "other", '{');
    json_fields(j, r, r->topic, b);
    json_warnings(j, "warnings", topic_warnings(r->topic, b));
    json_close(j, '}');
    json_open(j, "other_saves_pct", '{');
    for (int i = 0; i < ROWS; i++)
        if (shown(r, a, b, i, &one, &two))
            json_number(j, row[i].field, saved(one, two));
    json_close(j, '}');
}

static void say_value(page *p, int us, int kind, double value)
{
    if (kind == SW_KIND_POWER)
        say_power(p, us, value);
    else if (kind == SW_KIND_TORQUE)
        say_torque(p, us, value);
    else
        say_force(p, us, value);
}

/* What the other one is: the options that were given of it. */
static void say_which(page *p, request *r)
{
    const char *between = "the other: ";
    const size_t start = p->length;
    for (int i = 0; i < DIFFERS; i++) {
        char name[48];
        slot s;
        if (!other_at(r, i, &s, name, sizeof name) || !s.field ||
            !request_given(r, name))
            continue;
        page_add(p, between);
        page_add(p, name + strlen(OTHER));
        page_add(p, " ");
        if (s.field->type == SW_FIELD_WORD) {
            page_add(p, sw_word(s.field->words, slot_word(s)));
        } else if (topic_kind(s.field->name) == SW_KIND_LENGTH) {
            say_length(p, r->us, slot_number(s));
        } else {
            page_number(p, slot_number(s), 4);
            page_add(p, s.field->unit[0] ? KEEP : "");
            page_add(p, s.field->unit);
        }
        between = ", ";
    }
    page_wrap(p, start, LABEL_WIDTH);
    page_add(p, "\n");
}

/* Which way it pushes the part, along the feed and across it. */
static void say_push(page *p, request *r, answer *b)
{
    const slot x = topic_output(r->topic, b, "mean_x_N");
    const slot y = topic_output(r->topic, b, "mean_y_N");
    const slot z = topic_output(r->topic, b, "mean_z_N");
    if (!x.field || !y.field || !z.field)
        return;
    const size_t start = say_label(p, "the other, mean");
    page_add(p, "x ");
    say_force(p, r->us, slot_number(x));
    page_add(p, ", y ");
    say_force(p, r->us, slot_number(y));
    page_add(p, ", z ");
    say_force(p, r->us, slot_number(z));
    say_done(p, start);
}

void say_other(page *p, request *r, answer *a, answer *b)
{
    enum { TWO = 45, SAVED = 68 };
    double one, two;
    page_add(p, "\n");
    say_which(p, r);
    say_push(p, r, b);
    page_tab(p, LABEL_WIDTH);
    page_add(p, "this one");
    page_tab(p, TWO);
    page_add(p, "the other\n");
    for (int i = 0; i < ROWS; i++) {
        if (!shown(r, a, b, i, &one, &two))
            continue;
        page_add(p, row[i].label);
        page_tab(p, LABEL_WIDTH);
        say_value(p, r->us, row[i].kind, one);
        page_tab(p, TWO);
        say_value(p, r->us, row[i].kind, two);
        const double less = saved(one, two);
        if (is_known(less) && fabs(less) >= 0.5) {
            page_tab(p, SAVED);
            page_number(p, fabs(less), 2);
            page_add(p, less > 0 ? KEEP "%" KEEP "less" : KEEP "%" KEEP "more");
        }
        page_add(p, "\n");
    }
}
