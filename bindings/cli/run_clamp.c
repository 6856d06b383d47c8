/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Run clamp: clamps other than straps, pads, and the closed forms of holding:
 * the verdict first, then a table of numbers, then what was not checked.
 */
#include "cli.h"

#include <string.h>

/* A number of the answer. `as`: NULL by its unit, else "bar" or "inHg"
 * or "psi" (pressures in shop units), "ratio", "times". */
typedef struct {
    const char *label, *field, *as;
} row;

static const row screw_rows[] = {{"force", "force_N", NULL},
                                 {"hold with", "force_low_N", NULL},
                                 {"distort with", "force_high_N", NULL},
                                 {"torque", "torque_Nm", NULL},
                                 {"in the thread", "thread_torque_Nm", NULL},
                                 {"under the end", "collar_torque_Nm", NULL},
                                 {"loosening", "loosening_torque_Nm", NULL},
                                 {"hand force", "hand_force_N", NULL},
                                 {"handle", "handle_length_mm", NULL},
                                 {"pressure", "pressure_MPa", NULL},
                                 {"one turn", "lead_mm", NULL},
                                 {"becomes force", "efficiency", "ratio"},
                                 {NULL, NULL, NULL}};
static const row cylinder_rows[] = {
    {"force", "force_N", NULL},
    {"at lowest pressure", "force_low_N", NULL},
    {"without friction", "theoretical_N", NULL},
    {"area", "piston_area_mm2", NULL},
    {"limit reached at", "pressure_at_limit_MPa", "bar"},
    {NULL, NULL, NULL}};
static const row swing_rows[] = {
    {"force", "force_N", NULL},
    {"input would give", "available_N", NULL},
    {"arm allows", "allowed_N", NULL},
    {"highest pressure", "allowed_pressure_MPa", "bar"},
    {"moment", "moment_Nm", NULL},
    {"rated moment", "rated_moment_Nm", NULL},
    {"lost to the arm", "arm_loss", "ratio"},
    {NULL, NULL, NULL}};
static const row vacuum_rows[] = {{"hold", "held_N", NULL},
                                  {"air there", "atmosphere_MPa", "inHg"},
                                  {"slides at", "slide_N", NULL},
                                  {"first gap at", "gap_N", NULL},
                                  {"tips at", "tip_N", NULL},
                                  {"rim lift, gap at", "rim_gap_N", NULL},
                                  {"rim lift, tips at", "rim_tip_N", NULL},
                                  {"margin, sliding", "slide_margin", "times"},
                                  {"margin, first gap", "gap_margin", "times"},
                                  {"margin, tipping", "tip_margin", "times"},
                                  {"margin, lifting", "lift_margin", "times"},
                                  {NULL, NULL, NULL}};
static const row adhesive_rows[] = {
    {"holds sideways", "shear_held_N", NULL},
    {"holds lifted", "tension_held_N", NULL},
    {"shear in the bond", "shear_stress_MPa", "psi"},
    {"pull at its edge", "peel_stress_MPa", "psi"},
    {"shear used", "shear_use", "ratio"},
    {"pull used", "tension_use", "ratio"},
    {NULL, NULL, NULL}};
static const row bar_rows[] = {{"first pad", "pad1_N", NULL},
                               {"second pad", "pad2_N", NULL},
                               {"bending moment", "moment_Nm", NULL},
                               {"bending stress", "stress_MPa", NULL},
                               {"yield over it", "yield_margin", "times"},
                               {"first stud sinks", "sag1_mm", NULL},
                               {"second stud sinks", "sag2_mm", NULL},
                               {"bow between pads", "bow_mm", NULL},
                               {NULL, NULL, NULL}};
static const row pad_rows[] = {{"pressure", "pressure_MPa", NULL},
                               {"mean", "mean_MPa", NULL},
                               {"half-width", "half_width_mm", NULL},
                               {"area", "area_mm2", NULL},
                               {"part stands", "part_limit_MPa", NULL},
                               {"reached at", "mark_N", NULL},
                               {"pad stands", "pad_limit_MPa", NULL},
                               {"pad used", "pad_ratio", "ratio"},
                               {NULL, NULL, NULL}};
static const row disc_rows[] = {{"on the driver", "normal_N", NULL},
                                {"face carries", "torque_Nm", NULL},
                                {"cut wants", "cut_torque_Nm", NULL},
                                {"turns at the rim", "rim_N", NULL},
                                {"tips, toward", "tip_toward_N", NULL},
                                {"tips, away", "tip_away_N", NULL},
                                {"tips, radial", "tip_radial_N", NULL},
                                {"gap, toward", "gap_toward_N", NULL},
                                {"gap, away", "gap_away_N", NULL},
                                {"gap, radial", "gap_radial_N", NULL},
                                {"margin, turning", "turn_margin", "times"},
                                {"margin, first gap", "gap_margin", "times"},
                                {"margin, tipping", "tip_margin", "times"},
                                {NULL, NULL, NULL}};
static const row chuck_rows[] = {{"grip at speed", "grip_N", NULL},
                                 {"lost to speed", "loss_N", NULL},
                                 {"of the force", "loss_share", "ratio"},
                                 {"cut asks", "need_N", NULL},
                                 {"jaws carry", "carries_N", NULL},
                                 {"67 % lost at", "speed_67_rpm", NULL},
                                 {"all lost at", "speed_zero_rpm", NULL},
                                 {"margin ends at", "speed_margin_rpm", NULL},
                                 {"needed at speed", "grip_needed_N", NULL},
                                 {"needed standing", "standing_needed_N", NULL},
                                 {NULL, NULL, NULL}};
static const row squeeze_rows[] = {{"normal force, all", "normal_N", NULL},
                                   {"squeeze needed", "squeeze_needed_N", NULL},
                                   {NULL, NULL, NULL}};

static const row couple_rows[] = {{"first pad carries", "pad1_N", NULL},
                                  {"second pad", "pad2_N", NULL},
                                  {"first pad has", "holds1_N", NULL},
                                  {"second pad has", "holds2_N", NULL},
                                  {NULL, NULL, NULL}};
static const row tripod_rows[] = {{"first support", "support1_N", NULL},
                                  {"second support", "support2_N", NULL},
                                  {"third support", "support3_N", NULL},
                                  {"inside the edge by", "inside_mm", NULL},
                                  {NULL, NULL, NULL}};

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

/* 70 bar (1015 psi), 80 kPa (23.6 inHg), 0.5 MPa (73 psi) */
void say_shop_pressure(page *p, int us, double MPa, const char *as)
{
    const char *si = strcmp(as, "bar") == 0    ? "bar"
                     : strcmp(as, "inHg") == 0 ? "kPa"
                                               : "MPa";
    const char *inch = strcmp(as, "inHg") == 0 ? "inHg" : "psi";
    for (int i = 0; i < 2; i++) {
        const char *unit = us == i ? si : inch;
        page_add(p, i ? " (" : "");
        say_number(p, in_unit(MPa, unit, SW_KIND_PRESSURE), unit);
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
        say_number(p, value, "mm\xc2\xb2");
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
        const size_t start = say_label(p, l->label);
        say_value(p, r->us, l, s.field, value);
        say_done(p, start);
    }
}

static int over(double value, double limit)
{
    return is_known(value) && value > limit;
}

/* Exit 1: the cut moves it or nearly, a pad gives, a chuck is too fast. */
static int judged(request *r, answer *a)
{
    const double yield = number_of(r, a, "yield_margin");
    const int stays = word_of(r, a, "verdict");
    const int bad = (stays && stays != SW_STAYS_YES) ||
                    word_of(r, a, "mark") == SW_MARK_LIKELY ||
                    over(number_of(r, a, "pad_ratio"), 1) ||
                    (is_known(yield) && yield < 1) ||
                    (r->warnings & SW_WARN_GRIP_LOST);
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
