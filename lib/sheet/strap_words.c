/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap words: what the picture says in lines below it, and to those who
 * cannot see it. Numbers are written as sw_say() writes them.
 */
#include "sheet/strap_picture.h"

#include <strapwise/say.h>

void sw__add_said(sw__line *line, double value, int kind, int show)
{
    char text[120];
    sw_say(value, kind, show, text, sizeof text);
    sw__line_add(line, text);
}

int sw__leans(const sw__picture *p)
{
    const double seen = 0.005; /* deg: what two decimals show */
    const double tilt = p->out.tilt_deg;
    return tilt >= seen ? 1 : tilt <= -seen ? -1 : 0;
}

static int has_nominal(const sw__picture *p)
{
    return !(p->out.warnings & SW_WARN_NO_NOMINAL);
}

static const char *high_end(const sw__picture *p)
{
    return sw__leans(p) > 0 ? "heel high" : "heel low";
}

/* "M12, 20 N·m": what was tightened, and how far. */
void sw__say_tightened(const sw__picture *p, int show, char *text, size_t room)
{
    sw__line line = sw__line_start(text, room);
    sw__line_add(&line, p->full.thread.designation);
    sw__line_add(&line, ", ");
    if (p->full.in.nut == SW_NUT_STILL)
        sw__add_said(&line, p->out.preload_N, SW_KIND_FORCE, show);
    else
        sw__add_said(&line, p->out.torque_Nm, SW_KIND_TORQUE, show);
}

void sw__say_title(const sw__picture *p, char *text, size_t room)
{
    char part[120];
    const int us = p->how.show == SW_SHOW_US || p->how.show == SW_SHOW_US_FIRST;
    sw__say_tightened(p, us ? SW_SHOW_US : SW_SHOW_SI, part, sizeof part);
    sw__line line = sw__line_start(text, room);
    sw__line_add(&line, "Strap clamp, ");
    sw__line_add(&line, part);
}

/* Where there is no nominal: what it may be, one way or either. */
static void say_range(double low, double high, int show, sw__line *line)
{
    char text[120];
    if (low < 0 && high > 0) {
        sw__line_add(line, "part drawn up to ");
        sw__add_said(line, high, SW_KIND_FORCE, show);
        sw__line_add(line, " TOWARD the stud or pushed up to ");
        sw__add_said(line, -low, SW_KIND_FORCE, show);
        sw__line_add(line, " AWAY: this nut does not turn");
        return;
    }
    const int toward = high > 0;
    sw_say_range(toward ? low : -high, toward ? high : -low, SW_KIND_FORCE,
                 show, text, sizeof text);
    sw__line_add(line, toward ? "part drawn TOWARD the stud, "
                              : "part pushed AWAY from the stud, ");
    sw__line_add(line, text);
}

/* What the side pull does, in one line. */
void sw__say_pull(const sw__picture *p, char *text, size_t room)
{
    const sw_strap_out *o = &p->out;
    const int show = p->how.show;
    sw__line line = sw__line_start(text, room);
    if (!has_nominal(p)) {
        say_range(o->side_pull_low_N, o->side_pull_high_N, show, &line);
    } else if (o->pull_direction == SW_PULL_NONE) {
        sw__line_add(&line, "part not drawn either way: side pull none");
    } else {
        sw__line_add(&line, o->pull_direction == SW_PULL_TOWARD
                                ? "part drawn TOWARD the stud, "
                                : "part pushed AWAY from the stud, ");
        sw__add_said(&line, fabs(o->side_pull_N), SW_KIND_FORCE, show);
    }
}

static void add_cause(const sw__picture *p, sw__line *line, const char *cause,
                      double N)
{
    sw__line_add(line, cause);
    sw__line_add(line, N > 0 ? " draws " : " pushes ");
    sw__add_said(line, fabs(N), SW_KIND_FORCE, p->how.show);
    sw__line_add(line, N > 0 ? " toward the stud" : " away");
}

/* What the heel's part comes from: the bending where it alone would do as much
 * and the lean alone would not. */
static const char *heel_cause(const sw__picture *p)
{
    const double T = p->out.heel_side_N * (1 - 1e-9);
    const double bending = p->f.T_spread, lean = p->f.T_lean;
    return !(T > 0) || !(bending > lean) ? "the heel"
           : bending >= T && lean < T    ? "the strap's bending"
                                      : "the heel (mostly the strap's bending)";
}

/* Equation (6): S = (-X) + (-T). */
void sw__say_causes(const sw__picture *p, char *text, size_t room)
{
    const sw_strap_out *o = &p->out;
    const sw_strap_in *in = &p->full.in;
    const double none = 1e-6 * o->preload_N; /* less is rounding */
    const double X = o->side_load_on_strap_N, T = o->heel_side_N;
    const int leans = fabs(X) > none;
    sw__line line = sw__line_start(text, room);
    if (in->nut != SW_NUT_TURNED || o->warnings & SW_WARN_TOE_SLIDES ||
        fabs(T) <= none || (!leans && in->seat != SW_SEAT_SPHERICAL))
        return;
    if (leans) {
        add_cause(p, &line,
                  in->strap == SW_STRAP_FULL ? "the slope under the nut"
                                             : "tilt",
                  -X);
        sw__line_add(&line, ", ");
    }
    add_cause(p, &line, heel_cause(p), -T);
}

void sw__say_stud(const sw__picture *p, char *text, size_t room)
{
    const sw_strap_out *o = &p->out;
    sw__line line = sw__line_start(text, room);
    if (o->seat_state == SW_STATE_LEVEL) {
        sw__line_add(&line, "stud stays straight");
    } else if (o->seat_state == SW_STATE_SWIVELLED) {
        sw__line_add(&line, "stud stays straight: the spherical seat takes the "
                            "tilt up");
    } else if (p->full.in.foot == SW_FOOT_ROCKING &&
               fabs(o->stud_bending_Nm) < 0.005) { /* said as 0 */
        sw__line_add(&line, "stud leans with the strap: its foot rocks");
    } else {
        sw__line_add(&line, "stud is bent: ");
        sw__add_said(&line, fabs(o->stud_bending_Nm), SW_KIND_TORQUE,
                     p->how.show);
        sw__line_add(&line, o->seat_state == SW_STATE_RIM
                                ? " at a nut that stands on its edge"
                                : " at the nut, which lies flat on the strap");
    }
}

void sw__say_tilt(const sw__picture *p, char *text, size_t room)
{
    sw__line line = sw__line_start(text, room);
    if (!sw__leans(p)) {
        sw__line_add(&line, "strap level");
        return;
    }
    sw__line_add(&line, "tilt ");
    sw__add_said(&line, fabs(p->out.tilt_deg), SW_KIND_ANGLE, p->how.show);
    sw__line_add(&line, ", ");
    sw__line_add(&line, high_end(p));
}

/* as in strap.c: but for rounding */
static int slides(const sw__picture *p)
{
    return p->out.toe_friction_use >= 1 - 1e-9;
}

int sw__drags(const sw__picture *p)
{
    return p->full.in.nut == SW_NUT_TURNED && p->out.drag_N != 0;
}

void sw__say_drag(const sw__picture *p, char *text, size_t room)
{
    const sw_strap_in *in = &p->full.in;
    sw__line line = sw__line_start(text, room);
    if (!sw__drags(p)) {
        sw__line_add(&line, "nut drag none: ");
        sw__line_add(&line, in->nut == SW_NUT_STILL ? "the nut does not turn"
                            : in->restraint == SW_RESTRAINT_HELD ? "strap held"
                            : slides(p) ? "the toe slides already"
                                        : "no friction under the nut");
        return;
    }
    sw__line_add(&line, "nut drag ");
    sw__add_said(&line, fabs(p->out.drag_N), SW_KIND_FORCE, p->how.show);
    sw__line_add(&line, in->restraint == SW_RESTRAINT_FREE
                            ? ": strap free to turn"
                            : ": shared by toe and heel");
}

int sw__pulls(const sw__picture *p)
{
    return has_nominal(p) && p->out.pull_direction != SW_PULL_NONE;
}

/* Which arrow of the plan view is which. */
void sw__say_arrows(const sw__picture *p, char *text, size_t room)
{
    const sw_strap_out *o = &p->out;
    const int pulls = sw__pulls(p), drags = sw__drags(p);
    const double most =
        fmax(pulls ? fabs(o->side_pull_N) : 0, drags ? fabs(o->drag_N) : 0);
    sw__line line = sw__line_start(text, room);
    sw__line_add(&line, "from above:");
    if (!(most > 0))
        return;
    if (pulls)
        sw__line_add(&line, " hollow arrow side pull");
    if (drags)
        sw__line_add(&line,
                     pulls ? ", dashed nut drag" : " dashed arrow nut drag");
    if (pulls && drags)
        sw__line_add(&line, ", filled both together");
    if (sw__sideways_px(p, most, NULL) < p->em)
        sw__line_add(&line, pulls && drags ? "; too short to tell apart"
                                           : "; too short to see");
}

/* How much of the toe's friction is used up, and by what. */
void sw__say_use(const sw__picture *p, char *text, size_t room)
{
    const sw_strap_out *o = &p->out;
    sw__line line = sw__line_start(text, room);
    if (sw__pulls(p) && sw__drags(p)) {
        sw__line_add(&line, "both together ");
        sw__add_said(&line, o->net_part_force_N, SW_KIND_FORCE, p->how.show);
        sw__line_add(&line, ", ");
    } else {
        sw__line_add(&line, sw__pulls(p) ? "side pull: " : "nut drag: ");
    }
    sw__add_said(&line, o->toe_friction_use, SW_KIND_RATIO, p->how.show);
    sw__line_add(&line, " of what friction holds");
    if (slides(p))
        sw__line_add(&line, ": the toe slides");
}

static void add_force(const sw__picture *p, sw__line *line, const char *before,
                      double N, const char *after)
{
    sw__line_add(line, before);
    sw__add_said(line, N, SW_KIND_FORCE, p->how.show);
    sw__line_add(line, after);
}

void sw__say_about(const sw__picture *p, char *text, size_t room)
{
    char part[SW__WORDS_ROOM];
    sw__line line = sw__line_start(text, room);
    add_force(p, &line, "Stud tension ", p->out.preload_N, "; ");
    add_force(p, &line, "toe on the part ", p->out.toe_force_N, "; ");
    add_force(p, &line, "heel on its support ", p->out.heel_force_N, ". ");
    sw__say_tilt(p, part, sizeof part);
    sw__line_add(&line, part);
    sw__line_add(&line, "; ");
    sw__say_pull(p, part, sizeof part);
    sw__line_add(&line, part);
    sw__line_add(&line, "; ");
    sw__say_drag(p, part, sizeof part);
    sw__line_add(&line, part);
    sw__line_add(&line, "; ");
    sw__say_stud(p, part, sizeof part);
    sw__line_add(&line, part);
    sw__line_add(&line, ".");
}
