/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Remark: what a strap does to the part, in sentences for the bench.
 *
 * Everything that is said is read off the strap's answer (strap.c), its
 * warnings, and the resolved question; a change is told by asking the same
 * strap once more with that one thing changed. Nothing is computed here but
 * how far the heel stands over level, which is a difference of heights given.
 * A nut that does not turn has no nominal answer: ranges are told instead.
 *
 * Order: what the part will do, why (remark_reason.c), what to change
 * (remark_change.c).
 */
#include "clamp/remark.h"

#include "clamp/strap.h"

#include <strapwise/say.h>

#include <string.h>

int sw__remark(sw__remarks *r, int about)
{
    if (r->count++ != r->wanted)
        return 0;
    r->made->about = about;
    r->line = sw__line_start(r->made->text, sizeof r->made->text);
    return 1;
}

void sw__remark_add(sw__remarks *r, const char *text)
{
    sw__line_add(&r->line, text);
}

void sw__remark_say(sw__remarks *r, double value, int kind)
{
    char text[100];
    sw_say(value, kind, r->show, text, sizeof text);
    sw__line_add(&r->line, text);
}

void sw__remark_pull(sw__remarks *r, const sw_strap_out *s)
{
    if (s->pull_direction == SW_PULL_NONE) {
        sw__remark_add(r, "none");
        return;
    }
    sw__remark_say(r, fabs(s->side_pull_N), SW_KIND_FORCE);
    sw__remark_add(r, s->pull_direction == SW_PULL_TOWARD
                          ? " toward the stud"
                          : " away from the stud");
}

void sw__remark_pull_range(sw__remarks *r, const sw_strap_out *s)
{
    const double low = s->side_pull_low_N, high = s->side_pull_high_N;
    const int away = high < 0; /* at both ends: the smaller one first */
    sw__remark_add(r, "between ");
    sw__remark_say(r, fabs(away ? high : low), SW_KIND_FORCE);
    if (low < 0 && high >= 0)
        sw__remark_add(r, " away from the stud");
    sw__remark_add(r, " and ");
    sw__remark_say(r, fabs(away ? low : high), SW_KIND_FORCE);
    sw__remark_add(r, away      ? " away from the stud"
                      : low < 0 ? " toward it"
                                : " toward the stud");
}

void sw__remark_toe_range(sw__remarks *r, const sw_strap_out *s)
{
    sw__remark_add(r, "between ");
    sw__remark_say(r, s->toe_force_low_N, SW_KIND_FORCE);
    sw__remark_add(r, " and ");
    sw__remark_say(r, s->toe_force_high_N, SW_KIND_FORCE);
}

int sw__remark_is_bent(const sw__remarks *r)
{
    return r->out.seat_state == SW_STATE_CONFORMED ||
           r->out.seat_state == SW_STATE_RIM;
}

sw_strap_out sw__remark_ask(const sw__remarks *r, const sw_strap_in *q)
{
    return r->still ? sw_strap(q, NULL) : sw__strap_bare(q);
}

/* Which way and how hard. */
static void say_pull(sw__remarks *r)
{
    const sw_strap_out *s = &r->out;
    if (!sw__remark(r, SW_ABOUT_PART))
        return;
    if (r->still) {
        sw__remark_add(r, "The nut does not turn, so only a range can be told: "
                          "the side pull on the part lies ");
        sw__remark_pull_range(r, s);
    } else if (s->pull_direction == SW_PULL_NONE) {
        sw__remark_add(r, "The strap neither draws the part toward the stud "
                          "nor pushes it away");
    } else {
        sw__remark_add(r, s->pull_direction == SW_PULL_TOWARD
                              ? "The part is drawn toward the stud with "
                              : "The part is pushed away from the stud with ");
        sw__remark_say(r, fabs(s->side_pull_N), SW_KIND_FORCE);
    }
    sw__remark_add(r, ".");
}

/* Whether the toe holds that. */
static void say_hold(sw__remarks *r)
{
    const sw_strap_out *s = &r->out;
    if (!sw__remark(r, SW_ABOUT_PART))
        return;
    if (r->still) {
        sw__remark_add(r, "The toe presses on the part with ");
        sw__remark_toe_range(r, s);
    } else if (sw__remark_warns(r, SW_WARN_TOE_SLIDES)) {
        sw__remark_add(r, "More than that the toe's friction cannot pass on: "
                          "the toe slides on the part as the nut goes down");
    } else if (r->in.mu_toe == 0) {
        sw__remark_add(r, "With no friction at the toe, nothing holds the part "
                          "sideways");
    } else if (s->net_part_force_N == 0) {
        sw__remark_add(r, "The toe's friction has nothing to hold");
    } else if (s->toe_friction_use > 1 - 1e-9) {
        sw__remark_add(r, "With the nut's drag beside it, the toe's friction "
                          "is used up");
    } else {
        sw__remark_add(r, "The toe's friction holds: ");
        sw__remark_add(r, s->drag_N > 0
                              ? "side pull and the nut's drag together take "
                              : "the side pull takes ");
        sw__remark_say(r, s->toe_friction_use, SW_KIND_RATIO);
        sw__remark_add(r, " of it");
    }
    if (sw__remark_warns(r, SW_WARN_STRAP_WALKS)) {
        sw__remark_add(r, "; toe and heel together cannot hold the strap, and "
                          "it walks with ");
        sw__remark_say(r, fabs(s->unheld_N), SW_KIND_FORCE);
        sw__remark_add(r, " left over");
    }
    sw__remark_add(r, ".");
}

/* What the turning nut adds. */
static void say_drag(sw__remarks *r)
{
    static const char right[] = "to the right, as seen from the stud, with ";
    const sw_strap_out *s = &r->out;
    const int held = r->in.restraint == SW_RESTRAINT_HELD;
    if (r->still || (!held && !(s->drag_high_N > 0)) ||
        !sw__remark(r, SW_ABOUT_PART))
        return;
    if (held) {
        sw__remark_add(r, "The strap is held while the nut is turned, so the "
                          "nut does not drag the part sideways");
    } else if (r->in.restraint == SW_RESTRAINT_FREE || !(s->drag_N > 0)) {
        sw__remark_add(r, "While the nut is turned, a strap that is free to "
                          "turn drags the part ");
        sw__remark_add(r, right);
        if (s->drag_N > 0) {
            sw__remark_say(r, s->drag_N, SW_KIND_FORCE);
        } else {
            sw__remark_add(r, "up to ");
            sw__remark_say(r, s->drag_high_N, SW_KIND_FORCE);
        }
    } else {
        sw__remark_add(r, "While the nut is turned it also drags the part ");
        sw__remark_add(r, right);
        sw__remark_say(r, s->drag_N, SW_KIND_FORCE);
        sw__remark_add(r, "; with up to ");
        sw__remark_say(r, s->drag_high_N, SW_KIND_FORCE);
        sw__remark_add(r, " if the strap is free to turn, not at all if it is "
                          "held");
    }
    sw__remark_add(r, ".");
}

static int open_question(const sw_strap_in *in, sw__remarks *r, sw_error *err)
{
    r->open = r->in = *in;
    int status = sw_strap_resolve(&r->in, err);
    if (!status)
        status = sw__reopen(&r->open, SW_STRUCT_STRAP_IN, &r->open.assumed,
                            &r->open.seal, err);
    if (status)
        return status;
    r->still = r->in.nut == SW_NUT_STILL;
    r->out = sw__remark_ask(r, in);
    if (r->out.status) /* once more, for what it says */
        return sw_strap(in, err).status;
    r->rise_mm = r->in.heel_height_mm - r->in.part_height_mm -
                 r->in.pad_thickness_mm - r->in.step_mm;
    return SW_OK;
}

static int make(const sw_strap_in *in, int index, int show, sw_remark_out *made,
                sw_error *err)
{
    sw__remarks r;
    memset(&r, 0, sizeof r);
    if (!in)
        return sw__fail_null(err, "in");
    if (show && !sw_word(SW_WORDS_SHOW, show))
        return sw__fail_range(err, "show", show, "", 0, SW_SHOW_US);
    const int status = open_question(in, &r, err);
    if (status)
        return status;
    r.made = made;
    r.wanted = index;
    r.show = show ? show : SW_SHOW_SI_FIRST;
    say_pull(&r);
    say_hold(&r);
    say_drag(&r);
    sw__remark_reasons(&r);
    sw__remark_changes(&r);
    return made->about
               ? SW_OK
               : sw__fail_range(err, "index", index, "", 0, r.count - 1);
}

sw_remark_out sw_strap_remark(const sw_strap_in *in, int index, int show,
                              sw_error *err)
{
    sw_remark_out made;
    memset(&made, 0, sizeof made);
    sw__clear(err);
    made.status = make(in, index, show, &made, err);
    return made;
}
