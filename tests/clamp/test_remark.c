/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Remark: what the sentences say against the strap's own answer, asked again
 * by public calls: directions, every number, and what a warning brings.
 */
#include "../random.h"
#include "strap_question.h"

enum { MOST = 16, SAID = 200 };

typedef struct {
    sw_remark_out at[MOST];
    int count;
} remarks;

static remarks all_of(const sw_strap_in *in, int show)
{
    remarks r = {.count = 0};
    sw_error err;
    for (;;) {
        must(r.count < MOST, "no end");
        r.at[r.count] = sw_strap_remark(in, r.count, show, &err);
        if (r.at[r.count].status)
            break;
        check_no_error("remark", SW_OK, &err);
        r.count++;
    }
    check_refused("end", &err, SW_ERR_RANGE, "index");
    ck_assert_int_eq(r.at[r.count].about, 0);
    ck_assert_str_eq(r.at[r.count].text, "");
    return r;
}

static int says(const remarks *r, const char *part)
{
    int n = 0;
    for (int i = 0; i < r->count; i++)
        n += strstr(r->at[i].text, part) != NULL;
    return n;
}

/* ---- the same strap with one thing changed ---- */

static sw_strap_in at_level(sw_strap_in q)
{
    q.heel_height_mm = SW_UNSET;
    q.tilt_deg = 0;
    return q;
}

static sw_strap_in with_pair(sw_strap_in q)
{
    sw_strap_in full = q;
    ck_assert_int_eq(sw_strap_resolve(&full, NULL), 0);
    q.seat = SW_SEAT_SPHERICAL;
    q.stud_length_mm = full.stud_length_mm;
    return q;
}

static sw_strap_in stud_nearer(sw_strap_in q)
{
    const double span = q.stud_to_toe_mm + q.stud_to_heel_mm;
    q.stud_to_toe_mm = span / 3;
    q.stud_to_heel_mm = span - q.stud_to_toe_mm;
    return q;
}

/* ---- every number ---- */

typedef struct {
    char text[SAID][64];
    int count;
} sayings;

static void add_saying(sayings *s, double value, int kind, int show)
{
    must(s->count < SAID, "too many");
    sw_say(fabs(value), kind, show, s->text[s->count++], sizeof s->text[0]);
}

static void add_answer(sayings *s, const sw_strap_out *o, int show)
{
    const double force[] = {o->preload_N,
                            o->toe_force_N,
                            o->toe_force_low_N,
                            o->toe_force_high_N,
                            o->side_pull_N,
                            o->side_pull_low_N,
                            o->side_pull_high_N,
                            o->drag_N,
                            o->drag_high_N,
                            o->unheld_N,
                            o->side_load_on_strap_N,
                            o->heel_side_N};
    const double ratio[] = {o->lever_ratio, o->toe_friction_use};
    if (o->status)
        return;
    for (size_t i = 0; i < sizeof force / sizeof force[0]; i++)
        add_saying(s, force[i], SW_KIND_FORCE, show);
    for (size_t i = 0; i < sizeof ratio / sizeof ratio[0]; i++)
        add_saying(s, ratio[i], SW_KIND_RATIO, show);
    if (o->stud_yield_use != SW_UNSET)
        add_saying(s, o->stud_yield_use, SW_KIND_RATIO, show);
    add_saying(s, o->strap_spread_mm, SW_KIND_LENGTH, show);
    add_saying(s, o->edge_lift_mm, SW_KIND_LENGTH, show);
}

static sayings sayings_of(const sw_strap_in *in, int show)
{
    sayings s = {.count = 0};
    const sw_strap_in other[] = {*in, at_level(*in), with_pair(*in),
                                 stud_nearer(*in)};
    for (size_t i = 0; i < sizeof other / sizeof other[0]; i++) {
        const sw_strap_out o = sw_strap(&other[i], NULL);
        add_answer(&s, &o, show);
    }
    sw_strap_in full = *in;
    ck_assert_int_eq(sw_strap_resolve(&full, NULL), 0);
    add_saying(&s,
               full.heel_height_mm - full.part_height_mm -
                   full.pad_thickness_mm - full.step_mm,
               SW_KIND_LENGTH, show);
    add_saying(&s, (full.stud_to_toe_mm + full.stud_to_heel_mm) / 3,
               SW_KIND_LENGTH, show);
    if (full.permitted_tilt_deg != SW_UNSET)
        add_saying(&s, full.permitted_tilt_deg, SW_KIND_ANGLE, show);
    return s;
}

/* A number in a text is the start of one of the sayings, which is passed over
 * as a whole. */
static void check_sayings(const char *text, const sayings *s)
{
    for (const char *at = text; *at;) {
        size_t longest = 0;
        if (*at < '0' || *at > '9') {
            at++;
            continue;
        }
        for (int i = 0; i < s->count; i++) {
            const size_t n = strlen(s->text[i]);
            if (strncmp(at, s->text[i], n) == 0 && n > longest)
                longest = n;
        }
        must(longest > 0, "\"%.20s\" is no answer, in: %s", at, text);
        at += longest;
    }
}

/* ---- form ---- */

static void check_utf8(const char *text)
{
    for (const unsigned char *c = (const unsigned char *)text; *c;) {
        const int more = *c < 0x80             ? 0
                         : (*c & 0xe0) == 0xc0 ? 1
                         : (*c & 0xf0) == 0xe0 ? 2
                                               : -1;
        must(more >= 0 && (*c >= 0x20 && *c != 0x7f), "byte %d in %s", *c,
             text);
        c++;
        for (int i = 0; i < more; i++, c++)
            must((*c & 0xc0) == 0x80, "broken UTF-8 in %s", text);
    }
}

static void check_form(const remarks *r)
{
    int about[4] = {0, 0, 0, 0}, before = SW_ABOUT_PART;
    for (int i = 0; i < r->count; i++) {
        const sw_remark_out *m = &r->at[i];
        const size_t n = strlen(m->text);
        must(m->about >= before && m->about <= SW_ABOUT_CHANGE, "order");
        before = m->about;
        about[m->about]++;
        check_utf8(m->text);
        must(n > 20 && n < sizeof m->text - 1, "%zu bytes: %s", n, m->text);
        must(m->text[n - 1] == '.' && m->text[n - 2] != '.', "%s", m->text);
        must(m->text[0] >= 'A' && m->text[0] <= 'Z', "%s", m->text);
        must(!strstr(m->text, "  ") && !strstr(m->text, " - "), "%s", m->text);
        for (int k = 0; k < i; k++)
            must(strcmp(r->at[k].text, m->text) != 0, "twice: %s", m->text);
    }
    ck_assert(about[SW_ABOUT_PART] >= 1 && about[SW_ABOUT_PART] <= 3);
    ck_assert(about[SW_ABOUT_REASON] >= 1 && about[SW_ABOUT_REASON] <= 4);
    ck_assert_int_le(about[SW_ABOUT_CHANGE], 5);
}

/* ---- words against bits ---- */

static const struct {
    uint64_t bit;
    const char *words;
} brought[] = {
    {SW_WARN_HEEL_LOW, "The heel is low by"},
    {SW_WARN_TOE_ON_EDGE, "bears on the part's edge"},
    {SW_WARN_TOE_SLIDES, "the toe slides on the part"},
    {SW_WARN_STRAP_WALKS, "it walks with"},
    {SW_WARN_STUD_YIELDS, "it is past its yield"},
    {SW_WARN_SEAT_ANGLE, "the tilt is past the"},
    {SW_WARN_STUD_NEAR_HEEL, "The stud stands nearer the heel"},
    {SW_WARN_NO_NOMINAL, "only a range can be told"},
};
enum { BROUGHT = sizeof brought / sizeof brought[0] };

/* The ends of a range, each with its own way; the smaller first where both
 * go one way. */
static void check_range(const char *text, const sw_strap_out *s, int show)
{
    char low[64], high[64], all[300];
    sw_say(fabs(s->side_pull_low_N), SW_KIND_FORCE, show, low, sizeof low);
    sw_say(fabs(s->side_pull_high_N), SW_KIND_FORCE, show, high, sizeof high);
    if (s->side_pull_high_N < 0)
        snprintf(all, sizeof all, "between %s and %s away from the stud.", high,
                 low);
    else if (s->side_pull_low_N >= 0)
        snprintf(all, sizeof all, "between %s and %s toward the stud.", low,
                 high);
    else
        snprintf(all, sizeof all,
                 "between %s away from the stud and %s toward it.", low, high);
    must(strstr(text, all) != NULL, "%s is not in %s", all, text);
}

/* What the nut does to the strap, exactly where it is tilted under it. */
static void check_side_load(const remarks *r, const sw_strap_out *s, int show)
{
    char load[64], words[120];
    sw_say(fabs(s->side_load_on_strap_N), SW_KIND_FORCE, show, load,
           sizeof load);
    snprintf(words, sizeof words, "pushes the strap toward its %s with %s",
             s->side_load_on_strap_N > 0 ? "toe" : "heel", load);
    const int bent =
        s->seat_state == SW_STATE_CONFORMED || s->seat_state == SW_STATE_RIM;
    must(says(r, words) == bent, "%s: %d", words, says(r, words));
}

/* What the toe's friction has to hold, in one of its ways. */
static void check_hold(const remarks *r, const sw_strap_in *in,
                       const sw_strap_out *s, int *used_up)
{
    const int slides = (s->warnings & SW_WARN_TOE_SLIDES) != 0;
    const int loaded = !slides && in->mu_toe != 0 && s->net_part_force_N != 0;
    const int all = loaded && s->toe_friction_use > 1 - 1e-9;
    must(says(r, "With the nut's drag beside it, the toe's friction is used "
                 "up") == all,
         "use %.17g, slides: %d", s->toe_friction_use, slides);
    ck_assert_int_eq(says(r, "The toe's friction holds: "), loaded && !all);
    *used_up += all;
}

/* A high heel is to be lowered exactly where level pulls a fifth less; not at
 * all one that has to go up to come off the part's edge. */
static void check_lower(const remarks *r, const sw_strap_in *in,
                        const sw_strap_out *s, int *lowered)
{
    const sw_strap_in q = at_level(*in);
    const sw_strap_out level = sw_strap(&q, NULL);
    const int edge = s->warnings & SW_WARN_TOE_ON_EDGE && s->edge_lift_mm > 0;
    const int helps = s->tilt_deg > 0 && !edge && !level.status &&
                      fabs(level.side_pull_N) < 0.8 * fabs(s->side_pull_N);
    must(says(r, "Lower the heel by") == helps,
         "tilt %g: %g N to %g N, but \"Lower\" is said %d times", s->tilt_deg,
         s->side_pull_N, level.side_pull_N, says(r, "Lower the heel by"));
    *lowered += helps;
}

static void check_words(const remarks *r, const sw_strap_out *s, int show)
{
    const int still = (s->warnings & SW_WARN_NO_NOMINAL) != 0;
    for (int i = 0; i < BROUGHT; i++)
        must(says(r, brought[i].words) == ((s->warnings & brought[i].bit) != 0),
             "\"%s\" is said %d times", brought[i].words,
             says(r, brought[i].words));
    const char *first = r->at[0].text;
    ck_assert_int_eq(strstr(first, "The part is drawn toward the stud with") !=
                         NULL,
                     !still && s->pull_direction == SW_PULL_TOWARD);
    ck_assert_int_eq(
        strstr(first, "The part is pushed away from the stud with") != NULL,
        !still && s->pull_direction == SW_PULL_AWAY);
    ck_assert_int_eq(strstr(first, "neither") != NULL,
                     !still && s->pull_direction == SW_PULL_NONE);
    ck_assert_int_eq(says(r, "Hold the strap while"), s->drag_N > 0);
    if (!still) {
        check_side_load(r, s, show);
        return;
    }
    /* nothing is a prediction that has no nominal */
    check_range(first, s, show);
    ck_assert_int_eq(says(r, "would go from") + says(r, "presses with"), 0);
}

static sw_strap_in random_strap(randoms *r)
{
    static const char *const thread[] = {"M6", "M12", "M16", "1/2-13", "M30"};
    sw_strap_in in;
    sw_strap_defaults(&in);
    SET(in.thread, thread[random_below(r, 5)]);
    in.nut = random_below(r, 6) == 0 ? SW_NUT_STILL : SW_NUT_TURNED;
    in.preload_N = random_log(r, 10, 40000);
    in.stud_to_toe_mm = random_log(r, 10, 200);
    in.stud_to_heel_mm = random_log(r, 10, 200);
    in.part_height_mm = random_log(r, 20, 200);
    in.tilt_deg = random_below(r, 6) ? random_between(r, -7, 7) : 0;
    in.seat = random_below(r, 3);
    in.nose = random_below(r, 4);
    in.heel = random_below(r, 4);
    in.strap = random_below(r, 4);
    if (in.nut == SW_NUT_TURNED)
        in.restraint = random_below(r, 4);
    if (random_below(r, 3) == 0)
        in.mu_toe = random_below(r, 3) ? random_between(r, 0, 0.4) : 0;
    if (in.heel != SW_HEEL_SERRATED && random_below(r, 3) == 0)
        in.mu_heel = random_below(r, 3) ? random_between(r, 0, 0.3) : 0;
    if (random_below(r, 4) == 0)
        in.step_mm = random_between(r, -10, 10);
    if (in.nose == SW_NOSE_FLAT && random_below(r, 2))
        in.toe_land_mm = random_between(r, 0, 15);
    return in;
}

START_TEST(any_strap)
{
    randoms r = {4711};
    int seen[BROUGHT] = {0}, direction[4] = {0}, answered = 0;
    int used_up = 0, lowered = 0;
    for (int i = 0; answered < 500; i++) {
        must(i < 2000, "too few straps stand");
        const sw_strap_in in = random_strap(&r);
        const int show = random_below(&r, 5);
        const sw_strap_out s = sw_strap(&in, NULL);
        if (s.status)
            continue;
        answered++;
        const remarks said = all_of(&in, show);
        check_form(&said);
        check_words(&said, &s, show);
        if (in.nut == SW_NUT_TURNED) {
            check_hold(&said, &in, &s, &used_up);
            check_lower(&said, &in, &s, &lowered);
        }
        const sayings numbers = sayings_of(&in, show);
        for (int k = 0; k < said.count; k++)
            check_sayings(said.at[k].text, &numbers);
        for (int k = 0; k < BROUGHT; k++)
            seen[k] += (s.warnings & brought[k].bit) != 0;
        direction[s.pull_direction]++;
    }
    for (int k = 0; k < BROUGHT; k++)
        must(seen[k] >= 3 && seen[k] <= answered - 3, "\"%s\": %d of %d",
             brought[k].words, seen[k], answered);
    for (int k = SW_PULL_TOWARD; k <= SW_PULL_NONE; k++)
        ck_assert_int_ge(direction[k], 3);
    must(used_up >= 3 && lowered >= 20, "%d, %d", used_up, lowered);
}
END_TEST

/* A nut that does not turn, on a steep strap that does not bend: both ends of
 * the range go one way, and not by the same force. */
START_TEST(ranges)
{
    static const double preload[] = {30, 100, 1000, 10000};
    int toward = 0, away = 0, both = 0;
    for (double tilt = -10; tilt <= 10; tilt += 0.5)
        for (int i = 0; i < 4; i++)
            for (int show = SW_SHOW_SI_FIRST; show <= SW_SHOW_US; show++) {
                sw_strap_in in = base_strap(preload[i], tilt);
                in.nut = SW_NUT_STILL;
                in.strap = SW_STRAP_RIGID;
                in.mu_toe = 0.4;
                in.part_height_mm = 60;
                in.stud_length_mm = 90;
                const sw_strap_out s = sw_strap(&in, NULL);
                if (s.status)
                    continue;
                const remarks said = all_of(&in, show);
                check_range(said.at[0].text, &s, show);
                const double low = s.side_pull_low_N, high = s.side_pull_high_N;
                const int differ =
                    fabs(high - low) > 0.1 * fmax(fabs(low), fabs(high));
                away += differ && high < 0;
                toward += differ && low > 0;
                both += low < 0 && high > 0;
            }
    must(away >= 3 && toward >= 3 && both >= 3, "%d, %d, %d", away, toward,
         both);
}
END_TEST

/* ---- what a change brings ---- */

static void put(char *text, size_t room, const char *form, double a, double b,
                int kind)
{
    char from[64], to[64];
    sw_say(fabs(a), kind, SW_SHOW_SI, from, sizeof from);
    sw_say(fabs(b), kind, SW_SHOW_SI, to, sizeof to);
    snprintf(text, room, form, from, to);
}

/* Heel 4 mm low, stud two thirds back. */
START_TEST(changes)
{
    char text[400];
    sw_strap_in in = base_strap(10000, SW_UNSET);
    in.heel_height_mm = 36;
    in.stud_to_toe_mm = 60;
    in.stud_to_heel_mm = 30;
    const sw_strap_out now = good_strap("now", &in);
    const remarks r = all_of(&in, SW_SHOW_SI);
    sw_strap_in q = at_level(in);
    sw_strap_out then = good_strap("level", &q);
    put(text, sizeof text,
        "Raise the heel by 4.00 mm to level: the side pull would go from %s "
        "away from the stud to %s away from the stud, and",
        now.side_pull_N, then.side_pull_N, SW_KIND_FORCE);
    must(says(&r, text) == 1, "%s", text);
    put(text, sizeof text, "the toe force from %s to %s.", now.toe_force_N,
        then.toe_force_N, SW_KIND_FORCE);
    must(says(&r, text) == 1, "%s", text);
    q = with_pair(in);
    then = good_strap("pair", &q);
    put(text, sizeof text,
        "would go from %s away from the stud to %s away from the stud.",
        now.side_pull_N, then.side_pull_N, SW_KIND_FORCE);
    must(says(&r, text) == 1, "%s", text);
    q = stud_nearer(in);
    then = good_strap("nearer", &q);
    put(text, sizeof text,
        "to 30.0 mm from the toe, a third of the way to the heel: with the "
        "same pull in the stud the toe force would go from %s to %s.",
        now.toe_force_N, then.toe_force_N, SW_KIND_FORCE);
    must(says(&r, text) == 1, "%s", text);
    ck_assert_int_eq(says(&r, "By the lever the toe gets"), 0);
    /* a strap as it should be has little to change */
    in = base_strap(10000, 0);
    in.restraint = SW_RESTRAINT_HELD;
    const remarks good = all_of(&in, 0);
    ck_assert_int_eq(good.at[good.count - 1].about, SW_ABOUT_REASON);
    ck_assert_int_eq(says(&good, "By the lever the toe gets 67 % of"), 1);
    ck_assert_int_eq(says(&good, "the nut does not drag the part"), 1);
}
END_TEST

/* Heights that differ by rounding only are level: a heel that is lower by less
 * than that is neither raised nor lowered. */
START_TEST(rounding)
{
    sw_strap_in in = base_strap(10000, SW_UNSET);
    in.part_height_mm = 40;
    in.heel_height_mm = 40 - 5e-8;
    const sw_strap_out s = good_strap("level", &in);
    ck_assert(!(s.warnings & SW_WARN_HEEL_LOW));
    ck_assert(s.side_pull_N < -500); /* level: 0.15 of a third of 10 kN */
    remarks r = all_of(&in, 0);
    ck_assert_int_eq(says(&r, "Lower the heel") + says(&r, "Raise the heel"),
                     0);
    /* all of the side pull is from a tilt of no account */
    in.heel_height_mm = 40 + 5e-8;
    in.strap = SW_STRAP_RIGID;
    r = all_of(&in, 0);
    ck_assert_int_eq(says(&r, "Lower the heel") + says(&r, "0.00 mm to level"),
                     0);
}
END_TEST

/* A stud past its yield comes first among the changes: level spares one that is
 * bent, and nothing but less torque one that is pulled too hard. */
START_TEST(yields)
{
    char text[400];
    sw_strap_in in = base_strap(10000, 4);
    const sw_strap_out now = good_strap("now", &in);
    ck_assert(now.warnings & SW_WARN_STUD_YIELDS);
    const sw_strap_in q = at_level(in);
    const sw_strap_out then = good_strap("level", &q);
    ck_assert(then.stud_yield_use < 1);
    put(text, sizeof text,
        "level it would be loaded to %s of its yield instead of %s.",
        then.stud_yield_use, now.stud_yield_use, SW_KIND_RATIO);
    remarks r = all_of(&in, SW_SHOW_SI);
    must(says(&r, text) == 1, "%s", text);
    int first = 0;
    while (r.at[first].about != SW_ABOUT_CHANGE)
        first++;
    ck_assert(strstr(r.at[first].text, "Spare the stud") != NULL);
    in = base_strap(60000, 1);
    r = all_of(&in, SW_SHOW_SI);
    ck_assert_int_eq(says(&r, "Turn the nut less"), 1);
    in = base_strap(5000, 0);
    r = all_of(&in, SW_SHOW_SI);
    ck_assert_int_eq(says(&r, "Turn the nut less") + says(&r, "Spare the stud"),
                     0);
}
END_TEST

START_TEST(shown)
{
    sw_strap_in in = base_strap(10000, 2);
    const remarks si = all_of(&in, SW_SHOW_SI), us = all_of(&in, SW_SHOW_US);
    const remarks both = all_of(&in, 0), first = all_of(&in, SW_SHOW_SI_FIRST);
    ck_assert_int_eq(says(&si, "lbf") + says(&si, " in "), 0);
    ck_assert_int_eq(says(&us, " N ") + says(&us, "kN") + says(&us, " mm"), 0);
    ck_assert_int_gt(says(&us, "lbf"), 0);
    for (int i = 0; i < both.count; i++)
        ck_assert_str_eq(both.at[i].text, first.at[i].text);
    /* resolved or not, the same */
    ck_assert_int_eq(sw_strap_resolve(&in, NULL), 0);
    const remarks resolved = all_of(&in, 0);
    ck_assert_int_eq(resolved.count, both.count);
    for (int i = 0; i < both.count; i++)
        ck_assert_str_eq(both.at[i].text, resolved.at[i].text);
}
END_TEST

START_TEST(bad)
{
    sw_error err;
    sw_strap_in in = base_strap(10000, 2);
    static const struct {
        int index, show;
        const char *field;
    } row[] = {
        {-1, 0, "index"}, {99, 0, "index"}, {0, 5, "show"}, {0, -1, "show"}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const sw_remark_out r =
            sw_strap_remark(&in, row[i].index, row[i].show, &err);
        ck_assert_int_eq(r.status, SW_ERR_RANGE);
        check_refused(row[i].field, &err, SW_ERR_RANGE, row[i].field);
        ck_assert_str_eq(r.text, "");
        ck_assert_int_eq(r.about, 0);
    }
    ck_assert_int_eq(sw_strap_remark(NULL, 0, 0, &err).status, SW_ERR_NULL);
    check_refused("in", &err, SW_ERR_NULL, "in");
    ck_assert_int_eq(sw_strap_remark(NULL, 0, 0, NULL).status, SW_ERR_NULL);
    in.stud_to_heel_mm = NAN;
    ck_assert_int_eq(sw_strap_remark(&in, 0, 0, &err).status, SW_ERR_NAN);
    check_refused("nan", &err, SW_ERR_NAN, "stud_to_heel_mm");
}
END_TEST

int main(void)
{
    return RUN_TESTS("remark", any_strap, ranges, changes, rounding, yields,
                     shown, bad);
}
