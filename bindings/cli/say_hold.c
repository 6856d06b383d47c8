/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say hold: the verdict in one sentence, and what stands behind it.
 */
#include "job.h"

#include <math.h>
#include <string.h>

static void say_margin(page *p, double margin, double largest)
{
    if (!is_known(margin)) {
        page_add(p, "-");
        return;
    }
    /* never rounded up to what it is not */
    if (margin >= largest) {
        page_add(p, "over ");
        page_number(p, largest, 6);
        return;
    }
    const double step = margin < 10 ? 100 : 1;
    page_number(p, floor(margin * step + 1e-9) / step, 5);
}

static double largest_of(const judged *h)
{
    sw_hold_in full = h->in;
    return sw_hold_resolve(&full, NULL) ? 1e4 : full.largest_margin;
}

/* Whether the part goes almost straight: the centre it turns about is far off,
 * or nowhere. */
static int goes_straight(const judged *h)
{
    const sw_hold_out *o = &h->out;
    const sw_job_out part = sw_job_about(h->job, NULL);
    return !is_known(o->centre_x_mm) ||
           hypot(o->centre_x_mm - part.centre_x_mm,
                 o->centre_y_mm - part.centre_y_mm) >
               2 * hypot(part.length_mm, part.width_mm);
}

/* The cut moves it, so the part turns the way the cut does. */
static const char *turning(const judged *h)
{
    sw_load_in l;
    const sw_hold_out *o = &h->out;
    if (sw_fixture_load(h->fixture, (int)o->worst_load, &l, NULL))
        return "turning";
    const double Nmm = 1000 * l.moment_z_Nm +
                       (l.x_mm - o->centre_x_mm) * l.force_y_N -
                       (l.y_mm - o->centre_y_mm) * l.force_x_N;
    return Nmm > 0 ? "turning counterclockwise" : "turning clockwise";
}

/* "it slides toward -x", "it lifts off S3" */
static void say_how(page *p, const judged *h)
{
    const sw_hold_out *o = &h->out;
    switch (o->first_to_go) {
    case SW_GOES_LIFT:
        page_add(p, "it lifts off ");
        page_add(p, o->contact[0] ? o->contact : "a support");
        break;
    case SW_GOES_TIP:
        page_add(p, "it tips over its supports");
        break;
    case SW_GOES_SLIDE:
        page_add(p, "it slides");
        if (goes_straight(h) && is_known(o->slide_deg)) {
            page_add(p, " toward ");
            say_direction(p, round(o->slide_deg));
        }
        if (o->contact[0]) {
            page_add(p, ", ");
            page_add(p, sw_word(SW_WORDS_PART, o->contact_part));
            page_add(p, KEEP);
            page_add(p, o->contact);
            page_add(p, " first");
        }
        break;
    case SW_GOES_REST:
        page_add(p, "before the cut");
        break;
    default:
        page_add(p, "nothing: the cut cannot move it");
    }
}

void say_verdict(page *p, const judged *h)
{
    const sw_hold_out *o = &h->out;
    const double largest = largest_of(h);
    switch (judged_verdict(h)) {
    case CLAMP_FAILS:
        page_add(p, "It must not be used: ");
        say_faults(p, h->us, h->job, h->operation);
        page_add(p, ".");
        return;
    case CAN_ROCK: {
        const sw_job_clamp_out c = sw_job_clamp(h->job, h->rocks, NULL);
        page_add(p, "It can rock: with ");
        page_add(p, c.name);
        page_add(p, " at the high end of its spread, ");
        say_force(p, h->us, c.force_high_N);
        page_add(p, ", and the others at their low ends the part tips over its "
                    "supports: move that clamp in, or put a support below "
                    "it.");
        return;
    }
    case STAYS:
        page_add(p, "It holds: margin ");
        break;
    case TOO_LITTLE:
        page_add(p, "It does not hold as safely as wanted: margin ");
        break;
    case GOES:
        page_add(p, "It does not hold: the cut moves it, margin ");
        break;
    default:
        say_no_rest(p, h);
        page_add(p, ".");
        return;
    }
    say_margin(p, o->margin, largest);
    page_add(p, " on the cut, ");
    page_number(p, o->required_margin, 4);
    page_add(p, " wanted");
    if (judged_verdict(h) != STAYS) {
        page_add(p, "; ");
        say_how(p, h);
    }
    page_add(p, ".");
}

/* ---- the rows below ---- */

static void say_worst(page *p, int us, const judged *h)
{
    const sw_hold_out *o = &h->out;
    size_t start = say_label(p, "worst point");
    page_add(p, o->worst_name);
    page_add(p, " at ");
    say_place(p, us, o->worst_x_mm, o->worst_y_mm);
    page_add(p, ", ");
    say_length(p, us, o->worst_z_mm);
    page_add(p, " high");
    say_done(p, start);
    start = say_label(p, "goes first");
    say_how(p, h);
    if (o->first_to_go == SW_GOES_SLIDE && !goes_straight(h)) {
        page_add(p, ", ");
        page_add(p, turning(h));
        page_add(p, " about ");
        say_place(p, us, round(o->centre_x_mm), round(o->centre_y_mm));
    }
    say_done(p, start);
}

static void say_bounds(page *p, const judged *h)
{
    const sw_hold_out *o = &h->out;
    const double largest = largest_of(h);
    size_t start = say_label(p, "ceiling");
    say_margin(p, o->margin_ceiling, largest);
    page_add(p, o->margin_ceiling >= largest
                    ? ", however the supports share it"
                    : " with these clamp forces, however the supports share "
                      "it");
    say_done(p, start);
    if (is_known(o->margin_stops_idle) &&
        fabs(o->margin_stops_idle - o->margin) > 0.1 * o->margin) {
        start = say_label(p, "with idle stops");
        say_margin(p, o->margin_stops_idle, largest);
        page_add(p, ", where the stops do not keep it from tipping");
        say_done(p, start);
    }
    if (is_known(o->margin_friction_low)) {
        sw_hold_in full = h->in;
        const double change =
            sw_hold_resolve(&full, NULL) ? 0.1 : full.friction_change;
        start = say_label(p, "friction counts");
        page_add(p, "margin ");
        say_margin(p, o->margin_friction_low, largest);
        page_add(p, " with ");
        say_percent(p, change);
        page_add(p, " less friction, ");
        say_margin(p, o->margin_friction_high, largest);
        page_add(p, " with as much more");
        say_done(p, start);
    }
}

/* One torque for all where they have one, or clamp by clamp. */
static void say_limit_torque(page *p, int us, const judged *h)
{
    const int breaks = judged_limit_breaks(h);
    if (breaks >= 0) {
        const sw_job_clamp_out c = sw_job_clamp(h->job, breaks, NULL);
        page_add(p, "; no torque reaches it: ");
        page_add(p, c.name);
        page_add(p, " yields at ");
        say_torque(p, us, c.yield_torque_Nm);
        page_add(p, ", ");
        say_force(p, us, c.yield_N);
        page_add(p, " of tension");
        return;
    }
    double first = SW_UNSET;
    int alike = 1;
    for (int i = 0; !sw_job_clamp(h->job, i, NULL).status; i++) {
        if (!sw_job_has_clamp(h->job, h->operation, i))
            continue;
        const double Nm = judged_limit_torque(h, i);
        alike = alike && (!is_known(first) || fabs(Nm - first) < 1e-6 * first);
        first = is_known(first) ? first : Nm;
    }
    if (alike) {
        page_add(p, "; ");
        say_torque(p, us, first);
        page_add(p, " on every nut, in proportion");
        return;
    }
    for (int i = 0; !sw_job_clamp(h->job, i, NULL).status; i++) {
        if (!sw_job_has_clamp(h->job, h->operation, i))
            continue;
        page_add(p, "; ");
        page_add(p, sw_job_clamp(h->job, i, NULL).name);
        page_add(p, KEEP);
        say_torque(p, us, judged_limit_torque(h, i));
    }
}

/* The least of all clamps together, and of each; one that this leaves idle is
 * no clamp to be left loose. */
static void say_least(page *p, int us, const judged *h)
{
    const sw_hold_out *o = &h->out;
    const size_t start = say_label(p, "least clamping");
    say_force(p, us, o->least_total_N);
    page_add(p, " together, where each clamp has its own force");
    int said = 0;
    for (int i = 0;; i++) {
        const sw_hold_contact_out c =
            sw_hold_contact(h->hold, -1, SW_PART_CLAMP, i, NULL);
        if (c.status)
            break;
        if (!is_known(c.least_total_N) || c.least_total_N < 0.5)
            continue;
        page_add(p, said++ ? ", " : ": ");
        page_add(p, c.name);
        page_add(p, KEEP);
        say_force(p, us, c.least_total_N);
    }
    for (int i = 0, slack = 0;; i++) {
        const sw_hold_contact_out c =
            sw_hold_contact(h->hold, -1, SW_PART_CLAMP, i, NULL);
        if (c.status) {
            page_add(p, slack ? " (almost) idle: tighten all alike all the same"
                              : "");
            break;
        }
        if (!is_known(c.least_total_N) ||
            c.least_total_N > 0.1 * o->least_total_N / h->about.clamps)
            continue;
        page_add(p, slack++ ? ", " : "; the sum is least with ");
        page_add(p, c.name);
    }
    say_done(p, start);
}

static void say_limit(page *p, int us, const judged *h)
{
    const sw_hold_out *o = &h->out;
    size_t start = say_label(p, "hold limit");
    if (!is_known(o->hold_limit_N)) {
        page_add(p, "no clamp force of this layout reaches the wanted margin");
        say_done(p, start);
        return;
    }
    say_force(p, us, o->hold_limit_N);
    page_add(p, " of all clamps together reach the wanted margin; there are ");
    say_force(p, us, o->clamp_total_N);
    if (judged_has_limit_torque(h) && o->hold_scale > 0)
        say_limit_torque(p, us, h);
    if (is_known(o->hold_scale_high)) {
        page_add(p, "; more than ");
        page_number(p, o->hold_scale_high, 3);
        page_add(p, " times the clamping holds less again");
    }
    say_done(p, start);
    if (is_known(o->least_total_N))
        say_least(p, us, h);
}

static void say_push(page *p, int us, const judged *h)
{
    static const char *const where[] = {
        [SW_PUSHED_NOT] = "",
        [SW_PUSHED_INTO] = ": against a stop, as it should",
        [SW_PUSHED_OFF] = ": away from a stop; turn or level the straps",
        [SW_PUSHED_FREE] = ": where no stop is",
    };
    const sw_hold_out *o = &h->out;
    const int turns =
        is_known(o->net_moment_Nm) && fabs(o->net_moment_Nm) > 0.05;
    if (o->corners == SW_CORNERS_NONE && !turns &&
        !(is_known(o->net_side_N) && o->net_side_N >= 0.5))
        return; /* no clamp that pulls */
    const size_t start = say_label(p, "straps push it");
    if (!is_known(o->net_side_N) || o->net_side_N < 0.5) {
        page_add(p, "nowhere, all together");
    } else {
        page_add(p, "with ");
        say_force(p, us, o->net_side_N);
        page_add(p, " toward ");
        say_direction(p, round(o->net_toward_deg));
        if (o->pushed >= SW_PUSHED_NOT && o->pushed <= SW_PUSHED_FREE)
            page_add(p, where[o->pushed]);
    }
    if (turns) {
        page_add(p, "; they turn it with ");
        say_torque(p, us, fabs(o->net_moment_Nm));
        page_add(p, o->net_moment_Nm > 0 ? " counterclockwise" : " clockwise");
    }
    say_done(p, start);
}

void say_hold_points(page *p, const request *r, const judged *h)
{
    enum { AT = 9, MARGIN = 44, HOW = 54 };
    sw_hold_point_out one;
    page_add(p, "\n  point");
    page_tab(p, AT);
    page_add(p, "at");
    page_tab(p, MARGIN);
    page_add(p, "margin");
    page_tab(p, HOW);
    page_add(p, "goes first\n");
    for (int i = 0; judged_point(h, i, &one); i++) {
        page_add(p, "  ");
        page_add(p, one.name);
        page_tab(p, AT);
        say_place(p, r->us, one.x_mm, one.y_mm);
        page_tab(p, MARGIN);
        say_margin(p, one.margin, largest_of(h));
        page_tab(p, HOW);
        const char *goes = sw_word(SW_WORDS_GOES, one.first_to_go);
        page_add(p, goes ? goes : "-");
        if (one.contact[0]) {
            page_add(p, " ");
            page_add(p, one.contact);
        }
        page_add(p, "\n");
    }
}

void say_hold(page *p, const request *r, const judged *h, int alone)
{
    const sw_hold_out *o = &h->out;
    page_add(p, "\n");
    size_t start = p->length;
    page_add(p, h->about.name);
    if (!alone) {
        page_add(p, ": ");
        say_verdict(p, h);
        page_wrap(p, start, 2);
        page_add(p, "\n");
    }
    page_add(p, "\n");
    start = say_label(p, "held by");
    say_clamps(p, h->job, h->operation);
    if (o->clamp_total_N > 0) {
        page_add(p, ", together ");
        say_force(p, r->us, o->clamp_total_N);
        page_add(p, " at the low end of their spread");
    }
    say_done(p, start);
    if (o->rest == SW_REST_STAYS && o->first_to_go != SW_GOES_REST) {
        say_worst(p, r->us, h);
        say_bounds(p, h);
    }
    say_limit(p, r->us, h);
    say_push(p, r->us, h);
    if (r->points)
        say_hold_points(p, r, h);
}
