/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Run clamp: clamps other than straps, pads, and the closed forms of holding:
 * the verdict first, then a table of numbers, then what was not checked.
 */
#include "cli.h"

#include <math.h>
#include <string.h>

/* A number of the answer. `as`: NULL by its unit, else "bar" or "inHg"
 * or "psi" (pressures in shop units), "most bar" (a limit: rounded down),
 * "most" (the same, plain), "ratio", "times". Below zero its size stands under
 * the label `minus`, if there is one. */
typedef struct {
    const char *label, *field, *as, *minus;
} row;

static const row screw_rows[] = {
    {"force", "force_N", NULL, NULL},
    {"hold with", "force_low_N", NULL, NULL},
    {"distort with", "force_high_N", NULL, NULL},
    {"torque", "torque_Nm", NULL, NULL},
    {"in the thread", "thread_torque_Nm", NULL, NULL},
    {"under the end", "collar_torque_Nm", NULL, NULL},
    {"loosening", "loosening_torque_Nm", NULL, NULL},
    {"hand force", "hand_force_N", NULL, NULL},
    {"handle", "handle_length_mm", NULL, NULL},
    {"pressure", "pressure_MPa", NULL, NULL},
    {"tension", "tension_MPa", NULL, NULL},
    {"with its twist", "stress_MPa", NULL, NULL},
    {"of proof stress", "proof_use", "ratio", NULL},
    {"of yield", "yield_use", "ratio", NULL},
    {"one turn", "lead_mm", NULL, NULL},
    {"becomes force", "efficiency", "ratio", NULL},
    {NULL, NULL, NULL, NULL}};
static const row cylinder_rows[] = {
    {"force", "force_N", NULL, NULL},
    {"at lowest pressure", "force_low_N", NULL, NULL},
    {"without friction", "theoretical_N", NULL, NULL},
    {"area", "piston_area_mm2", NULL, NULL},
    {"limit reached at", "pressure_at_limit_MPa", "most bar", NULL},
    {NULL, NULL, NULL, NULL}};
static const row swing_rows[] = {
    {"force", "force_N", NULL, NULL},
    {"input would give", "available_N", NULL, NULL},
    {"arm allows", "allowed_N", NULL, NULL},
    {"highest pressure", "allowed_pressure_MPa", "most bar", NULL},
    {"moment", "moment_Nm", NULL, NULL},
    {"rated moment", "rated_moment_Nm", NULL, NULL},
    {"lost to the arm", "arm_loss", "ratio", NULL},
    {NULL, NULL, NULL, NULL}};
static const row vacuum_rows[] = {
    {"hold", "held_N", NULL, NULL},
    {"air there", "atmosphere_MPa", "inHg", NULL},
    {"slides at", "slide_N", NULL, NULL},
    {"first gap at", "gap_N", NULL, NULL},
    {"tips at", "tip_N", NULL, NULL},
    {"rim lift, gap at", "rim_gap_N", NULL, NULL},
    {"rim lift, tips at", "rim_tip_N", NULL, NULL},
    {"margin, sliding", "slide_margin", "times", NULL},
    {"margin, first gap", "gap_margin", "times", NULL},
    {"margin, tipping", "tip_margin", "times", NULL},
    {"margin, lifting", "lift_margin", "times", NULL},
    {NULL, NULL, NULL, NULL}};
static const row adhesive_rows[] = {
    {"holds sideways", "shear_held_N", NULL, NULL},
    {"holds lifted", "tension_held_N", NULL, NULL},
    {"shear in the bond", "shear_stress_MPa", "psi", NULL},
    {"pull at its edge", "peel_stress_MPa", "psi", NULL},
    {"shear used", "shear_use", "ratio", NULL},
    {"pull used", "tension_use", "ratio", NULL},
    {NULL, NULL, NULL, NULL}};
static const row bar_rows[] = {
    {"first pad", "pad1_N", NULL, "first pad pulls"},
    {"second pad", "pad2_N", NULL, "second pad pulls"},
    {"bending moment", "moment_Nm", NULL, NULL},
    {"bending stress", "stress_MPa", NULL, NULL},
    {"yield over it", "yield_margin", "times", NULL},
    {"first stud sinks", "sag1_mm", NULL, NULL},
    {"second stud sinks", "sag2_mm", NULL, NULL},
    {"bows down by", "bow_mm", NULL, "bows up by"},
    {NULL, NULL, NULL, NULL}};
static const row pad_rows[] = {
    {"pressure", "pressure_MPa", NULL, NULL},
    {"mean", "mean_MPa", NULL, NULL},
    {"contact half-width", "half_width_mm", NULL, NULL},
    {"area", "area_mm2", NULL, NULL},
    {"part stands", "part_limit_MPa", NULL, NULL},
    {"reached at", "mark_N", NULL, NULL},
    {"pad stands", "pad_limit_MPa", NULL, NULL},
    {"part used", "part_ratio", "ratio", NULL},
    {"pad used", "pad_ratio", "ratio", NULL},
    {NULL, NULL, NULL, NULL}};
static const row disc_rows[] = {
    {"on the driver", "normal_N", NULL, NULL},
    {"face carries", "torque_Nm", NULL, NULL},
    {"cut wants", "cut_torque_Nm", NULL, NULL},
    {"turns at the rim", "rim_N", NULL, NULL},
    {"tips, toward", "tip_toward_N", NULL, NULL},
    {"tips, away", "tip_away_N", NULL, NULL},
    {"tips, radial", "tip_radial_N", NULL, NULL},
    {"gap, toward", "gap_toward_N", NULL, NULL},
    {"gap, away", "gap_away_N", NULL, NULL},
    {"gap, radial", "gap_radial_N", NULL, NULL},
    {"margin, turning", "turn_margin", "times", NULL},
    {"margin, first gap", "gap_margin", "times", NULL},
    {"margin, tipping", "tip_margin", "times", NULL},
    {NULL, NULL, NULL, NULL}};
static const row chuck_rows[] = {
    {"grip at speed", "grip_N", NULL, NULL},
    {"lost to speed", "loss_N", NULL, "gained by speed"},
    {"of standing grip", "loss_share", "ratio", "of standing grip"},
    {"cut asks", "need_N", NULL, NULL},
    {"jaws carry", "carries_N", NULL, NULL},
    {"never above", "speed_limit_rpm", "most", NULL},
    {"67 % lost at", "speed_67_rpm", "most", NULL},
    {"all lost at", "speed_zero_rpm", "most", NULL},
    {"needed at speed", "grip_needed_N", NULL, NULL},
    {"needed standing", "standing_needed_N", NULL, NULL},
    {NULL, NULL, NULL, NULL}};
static const row squeeze_rows[] = {
    {"normal force, all", "normal_N", NULL, NULL},
    {"squeeze needed", "squeeze_needed_N", NULL, NULL},
    {NULL, NULL, NULL, NULL}};

static const row couple_rows[] = {{"first pad carries", "pad1_N", NULL, NULL},
                                  {"second pad", "pad2_N", NULL, NULL},
                                  {"first pad has", "holds1_N", NULL, NULL},
                                  {"second pad has", "holds2_N", NULL, NULL},
                                  {NULL, NULL, NULL, NULL}};
static const row tripod_rows[] = {
    {"first support", "support1_N", NULL, "first would pull"},
    {"second support", "support2_N", NULL, "second would pull"},
    {"third support", "support3_N", NULL, "third would pull"},
    {"inside the edge by", "inside_mm", NULL, "outside the edge by"},
    {NULL, NULL, NULL, NULL}};

static const struct {
    const char *topic;
    const row *rows;
} table[] = {{"screw", screw_rows},       {"cylinder", cylinder_rows},
             {"swing", swing_rows},       {"vacuum", vacuum_rows},
             {"adhesive", adhesive_rows}, {"bar", bar_rows},
             {"pad", pad_rows},           {"disc", disc_rows},
             {"chuck", chuck_rows},       {"squeeze", squeeze_rows},
             {"couple", couple_rows},     {"tripod", tripod_rows}};

static double number_of(request *r, answer *a, const char *field)
{
    const slot s = topic_output(r->topic, a, field);
    return s.field ? slot_number(s) : SW_UNSET;
}

static int word_of(request *r, answer *a, const char *field)
{
    const slot s = topic_output(r->topic, a, field);
    return s.field ? slot_word(s) : 0;
}

static void say_number(page *p, double value, const char *unit)
{
    page_number(p, value, 4);
    page_add(p, KEEP);
    page_add(p, unit);
}

/* A limit is not rounded up, or keeping to the printed number would break it. */
double rounded_down(double value, int digits)
{
    if (!(value > 0))
        return value;
    const double step = pow(10, floor(log10(value)) + 1 - digits);
    return floor(value / step * (1 + 1e-12)) * step;
}

/* 70 bar (1015 psi), 80 kPa (23.6 inHg), 0.5 MPa (73 psi); `as` may start with
 * "most " */
void say_shop_pressure(page *p, int us, double MPa, const char *as)
{
    const int most = strncmp(as, "most ", 5) == 0;
    as += most ? 5 : 0;
    const char *si = strcmp(as, "bar") == 0    ? "bar"
                     : strcmp(as, "inHg") == 0 ? "kPa"
                                               : "MPa";
    const char *inch = strcmp(as, "inHg") == 0 ? "inHg" : "psi";
    for (int i = 0; i < 2; i++) {
        const char *unit = us == i ? si : inch;
        page_add(p, i ? " (" : "");
        const double value = in_unit(MPa, unit, SW_KIND_PRESSURE);
        say_number(p, most ? rounded_down(value, 4) : value, unit);
        page_add(p, i ? ")" : "");
    }
}

/* 942.5 mm2 (1.461 in2) */
static void say_area(page *p, int us, double mm2)
{
    for (int i = 0; i < 2; i++) {
        const int inch = us != i;
        page_add(p, i ? " (" : "");
        say_number(p, inch ? in_unit(mm2, "in2", SW_KIND_AREA) : mm2,
                   inch ? "in\xc2\xb2" : "mm\xc2\xb2");
        page_add(p, i ? ")" : "");
    }
}

static void say_value(page *p, int us, const row *l, const sw_field *f,
                      double value)
{
    if (l->as && strcmp(l->as, "ratio") == 0)
        say_percent(p, value);
    else if (l->as && strcmp(l->as, "times") == 0)
        page_number(p, value, 3);
    else if (l->as && strcmp(l->as, "most") == 0)
        say_number(p, rounded_down(value, 4), f->unit);
    else if (l->as)
        say_shop_pressure(p, us, value, l->as);
    else if (strcmp(f->unit, "N") == 0)
        say_force(p, us, value);
    else if (strcmp(f->unit, "N.m") == 0)
        say_torque(p, us, value);
    else if (strcmp(f->unit, "mm") == 0)
        say_length(p, us, value);
    else if (strcmp(f->unit, "MPa") == 0)
        say_stress(p, us, value);
    else if (strcmp(f->unit, "mm2") == 0)
        say_area(p, us, value);
    else
        say_number(p, value, f->unit);
}

static void say_rows(page *p, request *r, answer *a)
{
    const row *l = NULL;
    for (size_t i = 0; i < sizeof table / sizeof table[0]; i++)
        if (strcmp(table[i].topic, r->topic->name) == 0)
            l = table[i].rows;
    for (; l && l->label; l++) {
        const slot s = topic_output(r->topic, a, l->field);
        const double value = slot_number(s);
        if (!is_known(value))
            continue;
        const int minus = l->minus && value < 0;
        const char *label = minus ? l->minus : l->label;
        if (strcmp(l->field, "half_width_mm") == 0 &&
            r->question.in.pad.nose == SW_NOSE_BALL)
            label = "contact radius";
        const size_t start = say_label(p, label);
        say_value(p, r->us, l, s.field, minus ? -value : value);
        say_done(p, start);
    }
}

static int over(double value, double limit)
{
    return is_known(value) && value > limit;
}

/* Exit 1: the cut moves it or nearly, a pad gives, a device or screw is
 * overloaded, a support or pad would have to pull. */
static int judged(request *r, answer *a)
{
    const double yield = number_of(r, a, "yield_margin");
    const int stays = word_of(r, a, "verdict");
    const int rest = word_of(r, a, "rest");
    const int bad = (stays && stays != SW_STAYS_YES) ||
                    word_of(r, a, "mark") == SW_MARK_LIKELY ||
                    over(number_of(r, a, "pad_ratio"), 1) ||
                    (is_known(yield) && yield < 1) ||
                    (r->warnings & (SW_WARN_GRIP_LOST | SW_WARN_DEVICE_LIMIT |
                                    SW_WARN_OVER_YIELD)) ||
                    rest == SW_REST_ROCKS;
    return bad ? NOT_MET : DONE;
}

int run_clamp(request *r, page *p)
{
    answer a;
    r->topic->solve(&r->question, &a);
    if (a.out.status)
        return complain_error(r, &a.err);
    r->warnings = topic_warnings(r->topic, &a);
    const int status = judged(r, &a);
    if (r->json) {
        json j = json_start(p);
        json_fields(&j, r, r->topic, &a);
        json_assumed(&j, r->topic, &r->question, NULL);
        json_not_checked(&j, r->topic);
        json_warnings(&j, "warnings", r->warnings);
        json_end(&j);
        return status;
    }
    const size_t start = p->length;
    say_clamp_lead(p, r, &a);
    page_wrap(p, start, 0);
    page_add(p, "\n\n");
    say_rows(p, r, &a);
    say_warnings(p, r->warnings);
    say_assumed(p, r->us, r->topic, &r->question, NULL);
    say_not_checked(p, r->topic);
    say_caution(p);
    return status;
}
