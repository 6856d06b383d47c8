/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Torque resolve: a question about torque with nothing left open. Equations as
 * numbered in torque.c.
 */
#include "fastener/torque.h"

#include <string.h>

void sw_torque_defaults(sw_torque_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    in->preload_N = in->torque_Nm = in->use = SW_UNSET;
    in->nut_factor = in->mu_thread = in->mu_seat = SW_UNSET;
    in->friction_radius_mm = in->prevailing_torque_Nm = SW_UNSET;
    in->free_length_mm = SW_UNSET;
}

const char *sw__usual_grade(const sw_thread_out *t)
{
    return t->system == SW_SYSTEM_METRIC ? "8.8" : "grade-5";
}

/* Friction that a nut factor leaves when what is given is taken off, shared
 * evenly by what is open. Equation (5); with one coefficient given the other
 * carries the rest. */
static int fill_rest(const sw__filler *fill, sw_torque_in *in,
                     const sw_thread_out *t, sw_error *err)
{
    const double thread =
        t->pitch_diameter_mm / (2 * cos(SW__RAD(t->flank_angle_deg)));
    const double seat = in->friction_radius_mm;
    double rest = in->nut_factor * t->nominal_mm - t->pitch_mm / (2 * SW__PI);
    double arm = 0;
    if (sw__is_set(in->mu_thread))
        rest -= in->mu_thread * thread;
    else
        arm += thread;
    if (sw__is_set(in->mu_seat))
        rest -= in->mu_seat * seat;
    else
        arm += seat;
    if (rest < 0) {
        char message[200];
        sw__line line = sw__line_start(message, sizeof message);
        sw__line_add(&line, "nut_factor: ");
        sw__line_add_number(&line, in->nut_factor);
        sw__line_add(&line,
                     " is less than stretching the stud and the friction "
                     "given take");
        return sw__fail(err, SW_ERR_RANGE, "nut_factor", message);
    }
    sw__fill_number(fill, "mu_thread", rest / arm);
    sw__fill_number(fill, "mu_seat", rest / arm);
    return SW_OK;
}

/* Nut factor or friction by lubrication where they are not given. */
static int resolve_friction(const sw__filler *fill, sw_torque_in *in,
                            const sw_thread_out *t, sw_error *err)
{
    const int both = sw__is_set(in->mu_thread) && sw__is_set(in->mu_seat);
    if (!sw__is_set(in->nut_factor) && !both) {
        sw__fill_text(fill, "lubrication", "unknown");
        const sw_lubrication_out l = sw_lubrication(in->lubrication, err);
        if (l.status)
            return l.status;
        sw__fill_number(fill, "nut_factor", l.nut_factor);
        sw__fill_number(fill, "mu_thread", l.mu_thread);
        sw__fill_number(fill, "mu_seat", l.mu_seat);
    }
    if (!sw__is_set(in->nut_factor))
        return SW_OK;
    if (in->form == SW_FORM_EXACT)
        return sw__fail(err, SW_ERR_CONFLICT, "form",
                        "form: the exact form needs friction coefficients, "
                        "not a nut factor");
    return fill_rest(fill, in, t, err);
}

static int check_choice(const sw_torque_in *in, sw_error *err)
{
    const int given = sw__is_set(in->preload_N) + sw__is_set(in->torque_Nm) +
                      sw__is_set(in->use);
    if (given == 0)
        return sw__fail(err, SW_ERR_MISSING, "preload_N",
                        "preload_N: missing; give preload, torque or the use "
                        "of yield");
    if (given > 1)
        return sw__fail(err, SW_ERR_CONFLICT, "torque_Nm",
                        "torque_Nm: give only one of preload, torque and the "
                        "use of yield");
    if (sw__is_set(in->nut_factor) && sw__is_set(in->mu_thread) &&
        sw__is_set(in->mu_seat))
        return sw__fail(err, SW_ERR_CONFLICT, "nut_factor",
                        "nut_factor: give either the nut factor or both "
                        "friction coefficients");
    return SW_OK;
}

int sw__torque_open(sw_torque_in *in, sw_thread_out *t, sw_error *err)
{
    sw__clear(err);
    int status =
        sw__reopen(in, SW_STRUCT_TORQUE_IN, &in->assumed, &in->seal, err);
    if (!status)
        status = sw__check_input(in, SW_STRUCT_TORQUE_IN, err);
    if (!status)
        status = check_choice(in, err);
    if (status)
        return status;
    *t = sw_thread(in->thread, err);
    if (t->status)
        return t->status;
    const sw__filler fill = {(char *)in, SW_STRUCT_TORQUE_IN, &in->assumed};
    sw__fill_word(&fill, "form", SW_FORM_LINEAR);
    sw__fill_word(&fill, "torsion", SW_TORSION_PLASTIC);
    sw__fill_text(&fill, "grade", sw__usual_grade(t));
    sw__fill_number(&fill, "prevailing_torque_Nm", 0);
    sw__fill_number(&fill, "free_length_mm", 5 * t->nominal_mm);
    sw__fill_number(&fill, "friction_radius_mm",
                    (t->bearing_diameter_mm + t->clearance_hole_mm) / 4);
    return resolve_friction(&fill, in, t, err);
}

int sw_torque_resolve(sw_torque_in *in, sw_error *err)
{
    if (!in)
        return sw__fail_null(err, "in");
    sw_torque_in open = *in;
    sw_thread_out t;
    const int status = sw__torque_open(&open, &t, err);
    if (!status) {
        *in = open;
        in->seal = sw__seal(in, SW_STRUCT_TORQUE_IN, in->assumed);
    }
    return status;
}

sw_assumption sw_torque_assumed(const sw_torque_in *in, int index,
                                sw_error *err)
{
    sw_torque_in full;
    memset(&full, 0, sizeof full);
    sw__clear(err);
    int status = SW_OK;
    if (in)
        full = *in;
    status = in ? sw_torque_resolve(&full, err) : sw__fail_null(err, "in");
    if (status)
        return sw__no_assumption(status);
    sw_assumption a =
        sw__assumed(&full, SW_STRUCT_TORQUE_IN, full.assumed, index, err);
    sw__describe_friction(&a, &full);
    return a;
}

/* Range of a coefficient that carries the rest of an assumed nut factor: it
 * moves by d over its lever arm. */
static void rest_range(sw_assumption *a, const sw_torque_in *full,
                       const sw_lubrication_out *l)
{
    const sw_thread_out t = sw_thread(full->thread, NULL);
    const double thread =
        t.pitch_diameter_mm / (2 * cos(SW__RAD(t.flank_angle_deg)));
    double arm = 0;
    if (full->assumed & sw__bit(SW_STRUCT_TORQUE_IN, "mu_thread"))
        arm += thread;
    if (full->assumed & sw__bit(SW_STRUCT_TORQUE_IN, "mu_seat"))
        arm += full->friction_radius_mm;
    const double per_K = t.nominal_mm / arm;
    a->low = fmax(0, a->value + (l->nut_factor_low - full->nut_factor) * per_K);
    a->high = a->value + (l->nut_factor_high - full->nut_factor) * per_K;
}

void sw__describe_friction(sw_assumption *a, const sw_torque_in *full)
{
    const int is_K = strcmp(a->name, "nut_factor") == 0;
    const int is_mu =
        strcmp(a->name, "mu_thread") == 0 || strcmp(a->name, "mu_seat") == 0;
    if (a->status || !(is_K || is_mu))
        return;
    const int K_assumed =
        (full->assumed & sw__bit(SW_STRUCT_TORQUE_IN, "nut_factor")) != 0;
    if (is_mu && sw__is_set(full->nut_factor))
        sw__copy(a->source, sizeof a->source,
                 "the friction behind the nut factor, evenly in what is open");
    if (is_mu && sw__is_set(full->nut_factor) && !K_assumed) {
        a->low = a->high = a->value; /* follows from what was given */
        return;
    }
    const sw_lubrication_out l = sw_lubrication(full->lubrication, NULL);
    if (l.status)
        return;
    if (is_mu && K_assumed) {
        rest_range(a, full, &l);
        return;
    }
    a->low = is_K ? l.nut_factor_low : l.mu_low;
    a->high = is_K ? l.nut_factor_high : l.mu_high;
    sw__copy(a->source, sizeof a->source, l.source);
}
