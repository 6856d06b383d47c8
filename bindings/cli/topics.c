/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Topics: which input, which call, which result goes with a name.
 */
#include "topics.h"

#include <string.h>

static const char *text_or_null(const char *text)
{
    return text[0] == TOPIC_ABSENT[0] ? NULL : text;
}

static void no_defaults(question *q) { (void)q; }
static void torque_defaults(question *q) { sw_torque_defaults(&q->in.torque); }
static void chart_defaults(question *q) { sw_chart_defaults(&q->in.chart); }
static void strap_defaults(question *q) { sw_strap_defaults(&q->in.strap); }
static void strip_defaults(question *q) { sw_strip_defaults(&q->in.strip); }
static void tool_defaults(question *q) { sw_tool_defaults(&q->in.tool); }

static void torque_spread_defaults(question *q)
{
    sw_torque_defaults(&q->in.torque);
    sw_spread_defaults(&q->beside.spread);
}

static void strap_spread_defaults(question *q)
{
    sw_strap_defaults(&q->in.strap);
    sw_spread_defaults(&q->beside.spread);
}

static void calibrate_defaults(question *q)
{
    sw_calibrate_defaults(&q->in.calibrate);
}

static void turning_defaults(question *q)
{
    sw_turning_defaults(&q->in.turning);
}

static void milling_defaults(question *q)
{
    sw_milling_defaults(&q->in.milling);
}

static void drilling_defaults(question *q)
{
    sw_drilling_defaults(&q->in.drilling);
}

static void strap_engage_defaults(question *q)
{
    sw_strap_defaults(&q->in.strap);
    sw_engage_defaults(&q->beside.engage);
}

static void tight_defaults(question *q)
{
    strap_spread_defaults(q);
    sw_tight_defaults(&q->tight);
}

static void solve_thread(const question *q, answer *a)
{
    a->out.thread = sw_thread(text_or_null(q->arguments.designation), &a->err);
}

static void solve_grade(const question *q, answer *a)
{
    a->out.grade = sw_grade(text_or_null(q->arguments.grade),
                            q->arguments.nominal_mm, &a->err);
}

static void solve_lubrication(const question *q, answer *a)
{
    a->out.lubrication =
        sw_lubrication(text_or_null(q->arguments.lubrication), &a->err);
}

static void solve_torque(const question *q, answer *a)
{
    a->out.torque = sw_torque(&q->in.torque, &a->err);
}

static void solve_chart(const question *q, answer *a)
{
    a->out.chart = sw_chart(&q->in.chart, &a->err);
}

static void solve_strap(const question *q, answer *a)
{
    a->out.strap = sw_strap(&q->in.strap, &a->err);
}

static void solve_tilt(const question *q, answer *a)
{
    const topic_arguments *g = &q->arguments;
    a->out.tilt = sw_strap_tilt(&q->in.strap, g->side_pull_N, g->toe_error_pct,
                                g->vial_mm_per_m, g->basis, &a->err);
}

static void solve_place(const question *q, answer *a)
{
    a->out.place =
        sw_strap_place(&q->in.strap, q->arguments.toe_force_N, &a->err);
}

static void solve_strap_torque(const question *q, answer *a)
{
    a->out.strap_torque =
        sw_strap_torque(&q->in.strap, q->arguments.toe_force_N, &a->err);
}

static void solve_method(const question *q, answer *a)
{
    a->out.method = sw_method(text_or_null(q->arguments.method), &a->err);
}

static void solve_spread(const question *q, answer *a)
{
    a->out.spread = sw_spread(&q->in.torque, &q->beside.spread, &a->err);
}

static void solve_window(const question *q, answer *a)
{
    a->out.window =
        sw_window(&q->in.torque, &q->beside.spread, q->arguments.hold_N,
                  q->arguments.flat_N, &a->err);
}

static void solve_strap_spread(const question *q, answer *a)
{
    a->out.strap_spread =
        sw_strap_spread(&q->in.strap, &q->beside.spread, NULL, NULL, &a->err);
}

static void solve_strap_window(const question *q, answer *a)
{
    a->out.window =
        sw_strap_window(&q->in.strap, &q->beside.spread, q->arguments.hold_N,
                        q->arguments.flat_N, &a->err);
}

static void solve_material(const question *q, answer *a)
{
    a->out.material = sw_material(text_or_null(q->arguments.material), &a->err);
}

static void solve_nut(const question *q, answer *a)
{
    a->out.nut = sw_nut_proof(text_or_null(q->arguments.nut_class),
                              q->arguments.nominal_mm, &a->err);
}

static void solve_strip(const question *q, answer *a)
{
    a->out.strip = sw_strip(&q->in.strip, &a->err);
}

static void solve_weakest(const question *q, answer *a)
{
    const double rank = q->arguments.rank;
    a->out.gives =
        sw_strap_weakest(&q->in.strap, &q->beside.engage,
                         rank >= 0 && rank < 1000 ? (int)rank : -1, &a->err);
}

static void solve_turn(const question *q, answer *a)
{
    a->out.turn = sw_strap_turn(&q->in.strap, q->arguments.snug_N, &a->err);
}

static void solve_tight(const question *q, answer *a)
{
    a->out.tight =
        sw_tight(&q->tight, &q->in.strap, &q->beside.spread, &a->err);
}

static void solve_remedy(const question *q, answer *a)
{
    const double rank = q->arguments.rank;
    a->out.remedy =
        sw_tight_remedy(&q->tight, &q->in.strap, &q->beside.spread,
                        rank >= 0 && rank < 1000 ? (int)rank : -1, &a->err);
}

static void solve_quantity(const question *q, answer *a)
{
    const char *text = text_or_null(q->arguments.text);
    const char *kind = text_or_null(q->arguments.kind);
    a->out.quantity =
        kind && strcmp(kind, "number") == 0
            ? sw_number(text, "text", &a->err)
            : sw_quantity(text, topic_kind_named(kind), "text", &a->err);
}

static void solve_tool(const question *q, answer *a)
{
    a->out.tool = sw_tool(&q->in.tool, &a->err);
}

static void solve_normal(const question *q, answer *a)
{
    a->out.quantity = sw_normal_quantile(q->arguments.p, &a->err);
}

static void solve_t(const question *q, answer *a)
{
    a->out.quantity = sw_t_quantile(q->arguments.p, q->arguments.df, &a->err);
}

static void solve_calibrate(const question *q, answer *a)
{
    a->out.calibrate = sw_calibrate(&q->in.calibrate, q->pairs, &a->err);
}

static void solve_cut_material(const question *q, answer *a)
{
    a->out.cut_material =
        sw_cut_material(text_or_null(q->arguments.material), &a->err);
}

static void solve_turning(const question *q, answer *a)
{
    a->out.turning = sw_turning(&q->in.turning, &a->err);
}

static void solve_milling(const question *q, answer *a)
{
    a->out.milling = sw_milling(&q->in.milling, &a->err);
}

/* A number that is no index is one past the end. */
static int whole(double value)
{
    return value >= 0 && value < 1e6 ? (int)value : -1;
}

static void solve_milling_load(const question *q, answer *a)
{
    a->out.cut_load =
        sw_milling_load_at(&q->in.milling, whole(q->arguments.index),
                           whole(q->arguments.count), &a->err);
}

static void solve_drilling(const question *q, answer *a)
{
    a->out.drilling = sw_drilling(&q->in.drilling, &a->err);
}

static sw_assumption turning_assumed(const question *q, int i, sw_error *err)
{
    return sw_turning_assumed(&q->in.turning, i, err);
}

static sw_assumption milling_assumed(const question *q, int i, sw_error *err)
{
    return sw_milling_assumed(&q->in.milling, i, err);
}

static sw_assumption drilling_assumed(const question *q, int i, sw_error *err)
{
    return sw_drilling_assumed(&q->in.drilling, i, err);
}

/* One list for the three: what no formula of theirs knows. */
static const char *cut_not_checked(int index)
{
    static const char *const sentence[] = {
        "whether the part stays put under this load",
        "chatter, runout, a tooth or lip that is chipped or packed with chips",
        "moments of entry, exit and breakthrough, interrupted cuts, plunging",
        "cutting speed and coolant: the tables hold for carbide at usual "
        "speeds",
        "whether machine, holder and tool stand it: their makers' limits "
        "govern",
    };
    const int count = sizeof sentence / sizeof sentence[0];
    return index >= 0 && index < count ? sentence[index] : NULL;
}

static sw_assumption torque_assumed(const question *q, int i, sw_error *err)
{
    return sw_torque_assumed(&q->in.torque, i, err);
}

static sw_assumption chart_assumed(const question *q, int i, sw_error *err)
{
    return sw_chart_assumed(&q->in.chart, i, err);
}

static sw_assumption strap_assumed(const question *q, int i, sw_error *err)
{
    return sw_strap_assumed(&q->in.strap, i, err);
}

/* What a second question assumes stands after what the first does. */
static sw_assumption spread_assumed(const question *q, int i, sw_error *err)
{
    int first = 0;
    while (!sw_torque_assumed(&q->in.torque, first, NULL).status)
        first++;
    return i < first ? sw_torque_assumed(&q->in.torque, i, err)
                     : sw_spread_assumed(&q->beside.spread, &q->in.torque,
                                         i - first, err);
}

static sw_assumption strap_and(sw_assumption (*second)(const sw_strap_in *,
                                                       const sw_spread_in *,
                                                       int, sw_error *),
                               const question *q, int i, sw_error *err)
{
    int first = 0;
    while (!sw_strap_assumed(&q->in.strap, first, NULL).status)
        first++;
    return i < first ? sw_strap_assumed(&q->in.strap, i, err)
                     : second(&q->in.strap, &q->beside.spread, i - first, err);
}

static sw_assumption strap_spread_assumed(const question *q, int i,
                                          sw_error *err)
{
    return strap_and(sw_strap_spread_assumed, q, i, err);
}

/* A window finds the preload; its least one will do to fill in the rest. */
static sw_assumption window_assumed(const question *q, int i, sw_error *err)
{
    question with_preload = *q;
    with_preload.in.torque.preload_N = q->arguments.hold_N;
    with_preload.in.torque.torque_Nm = with_preload.in.torque.use = SW_UNSET;
    return spread_assumed(&with_preload, i, err);
}

static sw_assumption strap_window_assumed(const question *q, int i,
                                          sw_error *err)
{
    question with_preload = *q;
    with_preload.in.strap.preload_N = q->arguments.hold_N;
    with_preload.in.strap.torque_Nm = SW_UNSET;
    return strap_and(sw_strap_window_assumed, &with_preload, i, err);
}

/* Its own, then those of the strap and of the spread. */
static sw_assumption tight_assumed(const question *q, int i, sw_error *err)
{
    int first = 0;
    while (!sw_tight_assumed(&q->tight, &q->in.strap, first, NULL).status)
        first++;
    if (i < first)
        return sw_tight_assumed(&q->tight, &q->in.strap, i, err);
    question window = *q;
    window.arguments.hold_N = 1;
    return strap_window_assumed(&window, i - first, err);
}

static sw_assumption tool_assumed(const question *q, int i, sw_error *err)
{
    return sw_tool_assumed(&q->in.tool, i, err);
}

static const char *tool_not_checked(int index)
{
    static const char *const sentence[] = {
        "how the tool is held and pulled, and adapters that change its length",
        "when it was last tested; a click wrench is exercised before use",
        "what the torque gives: friction scatters more than any tool",
    };
    const int count = sizeof sentence / sizeof sentence[0];
    return index >= 0 && index < count ? sentence[index] : NULL;
}

static sw_assumption calibrate_assumed(const question *q, int i, sw_error *err)
{
    return sw_calibrate_assumed(&q->in.calibrate, q->pairs, i, err);
}

static sw_assumption strip_assumed(const question *q, int i, sw_error *err)
{
    return sw_strip_assumed(&q->in.strip, i, err);
}

static sw_assumption weakest_assumed(const question *q, int i, sw_error *err)
{
    int first = 0;
    while (!sw_strap_assumed(&q->in.strap, first, NULL).status)
        first++;
    return i < first ? sw_strap_assumed(&q->in.strap, i, err)
                     : sw_strap_weakest_assumed(&q->in.strap, &q->beside.engage,
                                                i - first, err);
}

/* A torque says nothing about what the stud is screwed into. */
static const char *torque_not_checked(int index)
{
    static const char *const sentence[] = {
        "thread engagement, and stripping of the thread in nut or T-nut",
        "T-nut and T-slot: the machine maker's limit governs",
        "settling and loosening after the nut was tightened",
    };
    const int count = sizeof sentence / sizeof sentence[0];
    return index >= 0 && index < count ? sentence[index] : NULL;
}

static const char *strip_not_checked(int index)
{
    static const char *const sentence[] = {
        "bending and spreading of the threads, which take 10 to 25 % off",
        "chamfers, incomplete and worn threads, a blind hole's bottom",
        "T-nut and T-slot lips: the machine maker's limit governs",
        "wear of a tapped hole that is used again and again",
    };
    const int count = sizeof sentence / sizeof sentence[0];
    return index >= 0 && index < count ? sentence[index] : NULL;
}

static const char *weakest_not_checked(int index)
{
    static const char *const sentence[] = {
        "T-slot lips, T-nut: the machine maker's limit governs",
        "bending, spreading and wear of threads, which take 10 to 25 % off",
        "heel, packing, part and pad under the strap",
        "fatigue: studs that are tightened every day",
        "whether the part stays put under the cut and comes off flat",
    };
    const int count = sizeof sentence / sizeof sentence[0];
    return index >= 0 && index < count ? sentence[index] : NULL;
}

#define TILT " side_pull_N toe_error_pct vial_mm_per_m basis"
#define TOE " toe_force_N"
#define LIMITS " hold_N flat_N"
#define WARN(type) offsetof(type, warnings)
static const topic list[] = {
    {"thread", 0, 0, SW_STRUCT_THREAD_OUT, " designation", no_defaults,
     solve_thread, NULL, NULL, WARN(sw_thread_out), 0},
    {"grade", 0, 0, SW_STRUCT_GRADE_OUT, " grade nominal_mm", no_defaults,
     solve_grade, NULL, NULL, 0, 0},
    {"lubrication", 0, 0, SW_STRUCT_LUBRICATION_OUT, " lubrication",
     no_defaults, solve_lubrication, NULL, NULL, 0, 0},
    {"torque", SW_STRUCT_TORQUE_IN, 0, SW_STRUCT_TORQUE_OUT, "",
     torque_defaults, solve_torque, torque_assumed, torque_not_checked,
     WARN(sw_torque_out), 0},
    {"preload", SW_STRUCT_TORQUE_IN, 0, SW_STRUCT_TORQUE_OUT, "",
     torque_defaults, solve_torque, torque_assumed, torque_not_checked,
     WARN(sw_torque_out), 0},
    {"chart", SW_STRUCT_CHART_IN, 0, SW_STRUCT_CHART_OUT, "", chart_defaults,
     solve_chart, chart_assumed, torque_not_checked, WARN(sw_chart_out), 0},
    {"strap", SW_STRUCT_STRAP_IN, 0, SW_STRUCT_STRAP_OUT, "", strap_defaults,
     solve_strap, strap_assumed, sw_strap_not_checked, WARN(sw_strap_out), 0},
    {"tilt", SW_STRUCT_STRAP_IN, 0, SW_STRUCT_TILT_OUT, TILT, strap_defaults,
     solve_tilt, strap_assumed, sw_strap_not_checked, WARN(sw_tilt_out), 0},
    {"place", SW_STRUCT_STRAP_IN, 0, SW_STRUCT_PLACE_OUT, TOE, strap_defaults,
     solve_place, strap_assumed, sw_strap_not_checked, WARN(sw_place_out), 0},
    {"strap_torque", SW_STRUCT_STRAP_IN, 0, SW_STRUCT_STRAP_TORQUE_OUT, TOE,
     strap_defaults, solve_strap_torque, strap_assumed, sw_strap_not_checked,
     WARN(sw_strap_torque_out), 0},
    {"method", 0, 0, SW_STRUCT_METHOD_OUT, " method", no_defaults, solve_method,
     NULL, NULL, WARN(sw_method_out), 0},
    {"spread", SW_STRUCT_TORQUE_IN, SW_STRUCT_SPREAD_IN, SW_STRUCT_SPREAD_OUT,
     "", torque_spread_defaults, solve_spread, spread_assumed,
     torque_not_checked, WARN(sw_spread_out), 0},
    {"window", SW_STRUCT_TORQUE_IN, SW_STRUCT_SPREAD_IN, SW_STRUCT_WINDOW_OUT,
     LIMITS, torque_spread_defaults, solve_window, window_assumed,
     torque_not_checked, WARN(sw_window_out), 0},
    {"strap_spread", SW_STRUCT_STRAP_IN, SW_STRUCT_SPREAD_IN,
     SW_STRUCT_STRAP_SPREAD_OUT, "", strap_spread_defaults, solve_strap_spread,
     strap_spread_assumed, sw_strap_not_checked, WARN(sw_strap_spread_out), 0},
    {"strap_window", SW_STRUCT_STRAP_IN, SW_STRUCT_SPREAD_IN,
     SW_STRUCT_WINDOW_OUT, LIMITS, strap_spread_defaults, solve_strap_window,
     strap_window_assumed, sw_strap_not_checked, WARN(sw_window_out), 0},
    {"tool", SW_STRUCT_TOOL_IN, 0, SW_STRUCT_TOOL_OUT, "", tool_defaults,
     solve_tool, tool_assumed, tool_not_checked, WARN(sw_tool_out), 0},
    {"calibrate", SW_STRUCT_CALIBRATE_IN, 0, SW_STRUCT_CALIBRATE_OUT, "",
     calibrate_defaults, solve_calibrate, calibrate_assumed,
     sw_calibrate_not_checked, WARN(sw_calibrate_out), 0},
    {"material", 0, 0, SW_STRUCT_MATERIAL_OUT, " material", no_defaults,
     solve_material, NULL, NULL, WARN(sw_material_out), 0},
    {"nut", 0, 0, SW_STRUCT_NUT_OUT, " nut_class nominal_mm", no_defaults,
     solve_nut, NULL, NULL, WARN(sw_nut_out), 0},
    {"strip", SW_STRUCT_STRIP_IN, 0, SW_STRUCT_STRIP_OUT, "", strip_defaults,
     solve_strip, strip_assumed, strip_not_checked, WARN(sw_strip_out), 0},
    {"weakest", SW_STRUCT_STRAP_IN, SW_STRUCT_ENGAGE_IN, SW_STRUCT_GIVES_OUT,
     " rank", strap_engage_defaults, solve_weakest, weakest_assumed,
     weakest_not_checked, WARN(sw_gives_out), 0},
    {"turn", SW_STRUCT_STRAP_IN, 0, SW_STRUCT_TURN_OUT, " snug_N",
     strap_defaults, solve_turn, strap_assumed, sw_strap_not_checked,
     WARN(sw_turn_out), 0},
    {"tight", SW_STRUCT_STRAP_IN, SW_STRUCT_SPREAD_IN, SW_STRUCT_TIGHT_OUT, "",
     tight_defaults, solve_tight, tight_assumed, NULL, WARN(sw_tight_out),
     SW_STRUCT_TIGHT_IN},
    {"remedy", SW_STRUCT_STRAP_IN, SW_STRUCT_SPREAD_IN, SW_STRUCT_REMEDY_OUT,
     " rank", tight_defaults, solve_remedy, tight_assumed, NULL,
     WARN(sw_remedy_out), SW_STRUCT_TIGHT_IN},
    {"cut_material", 0, 0, SW_STRUCT_CUT_MATERIAL_OUT, " material", no_defaults,
     solve_cut_material, NULL, NULL, WARN(sw_cut_material_out), 0},
    {"turning", SW_STRUCT_TURNING_IN, 0, SW_STRUCT_TURNING_OUT, "",
     turning_defaults, solve_turning, turning_assumed, cut_not_checked,
     WARN(sw_turning_out), 0},
    {"milling", SW_STRUCT_MILLING_IN, 0, SW_STRUCT_MILLING_OUT, "",
     milling_defaults, solve_milling, milling_assumed, cut_not_checked,
     WARN(sw_milling_out), 0},
    {"milling_load", SW_STRUCT_MILLING_IN, 0, SW_STRUCT_CUT_LOAD_OUT,
     " index count", milling_defaults, solve_milling_load, milling_assumed,
     cut_not_checked, WARN(sw_cut_load_out), 0},
    {"drilling", SW_STRUCT_DRILLING_IN, 0, SW_STRUCT_DRILLING_OUT, "",
     drilling_defaults, solve_drilling, drilling_assumed, cut_not_checked,
     WARN(sw_drilling_out), 0},
    {"quantity", 0, 0, 0, " text kind", no_defaults, solve_quantity, NULL, NULL,
     0, 0},
    {"normal_quantile", 0, 0, 0, " p", no_defaults, solve_normal, NULL, NULL, 0,
     0},
    {"t_quantile", 0, 0, 0, " p df", no_defaults, solve_t, NULL, NULL, 0, 0},
};
#undef WARN
#define TOPICS ((int)(sizeof list / sizeof list[0]))

const topic *topic_named(const char *name)
{
    for (int i = 0; i < TOPICS; i++)
        if (strcmp(list[i].name, name) == 0)
            return &list[i];
    for (int i = 0; topic_clamp_at(i); i++)
        if (strcmp(topic_clamp_at(i)->name, name) == 0)
            return topic_clamp_at(i);
    return NULL;
}
