/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap resolve: from what a person measured to a strap with nothing open.
 *
 * Heights: tan(theta) = (heel - part - pad - step)/L with L = a + b, heel-high
 * positive. Either both heights are given or the tilt.
 *
 * Free stud = part height + pad + step + strap thickness + washers + throat of
 * the T-slot (its depth above the recess, BS 2485 geometry of ISO 299; 1.2
 * diameters where the table has none). The strap's own dimensions come from
 * the standard series for the stud's size.
 */
#include "clamp/strap_resolve.h"

#include "base/tables.h"
#include "fastener/torque.h"

#include <string.h>

#define BLOCK_N_PER_MM 430e3 /* sideways stiffness of a solid block */

void sw_strap_defaults(sw_strap_in *in)
{
    if (!in)
        return;
    memset(in, 0, sizeof *in);
    for (const sw_field *f = sw__strap_in_fields; f->name; f++)
        if (f->type == SW_FIELD_NUMBER) {
            const double open = SW_UNSET;
            memcpy((char *)in + f->offset, &open, sizeof open);
        }
}

static const struct sw__straps_row *strap_row(const char *size)
{
    for (size_t i = 0; i < sw__straps_count; i++)
        if (strcmp(sw__straps[i].size, size) == 0)
            return &sw__straps[i];
    return NULL;
}

const struct sw__spherical_row *sw__spherical_of(const char *size)
{
    for (size_t i = 0; i < sw__spherical_count; i++)
        if (strcmp(sw__spherical[i].size, size) == 0)
            return &sw__spherical[i];
    return NULL;
}

static double throat_mm(const sw_thread_out *t)
{
    for (size_t i = 0; i < sw__tslots_count; i++) {
        const struct sw__tslots_row *row = &sw__tslots[i];
        if (strcmp(row->size, t->size) == 0 &&
            sw__is_set(row->total_depth_min_mm) &&
            sw__is_set(row->recess_depth_min_mm))
            return (row->total_depth_min_mm + row->total_depth_max_mm -
                    row->recess_depth_min_mm - row->recess_depth_max_mm) /
                   2;
    }
    return 1.2 * t->nominal_mm;
}

static int fail_missing(sw_error *err, const char *field, const char *what)
{
    char message[160];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, field);
    sw__line_add(&line, ": missing; ");
    sw__line_add(&line, what);
    return sw__fail(err, SW_ERR_MISSING, field, message);
}

static int assumed(const sw_strap_in *in, const char *field)
{
    return (in->assumed & sw__bit(SW_STRUCT_STRAP_IN, field)) != 0;
}

static int check_choice(const sw_strap_in *in, sw_error *err)
{
    if (!in->thread[0])
        return fail_missing(err, "thread", "for example M12 or 1/2-13");
    if (!sw__is_set(in->preload_N) && !sw__is_set(in->torque_Nm))
        return fail_missing(err, "torque_Nm", "give the torque or the preload");
    if (sw__is_set(in->preload_N) && sw__is_set(in->torque_Nm))
        return sw__fail(err, SW_ERR_CONFLICT, "torque_Nm",
                        "torque_Nm: give the torque or the preload, not both");
    if (in->nut == SW_NUT_STILL && sw__is_set(in->torque_Nm))
        return sw__fail(err, SW_ERR_CONFLICT, "torque_Nm",
                        "torque_Nm: nobody turns this nut; give the preload");
    if (!sw__is_set(in->stud_to_toe_mm))
        return fail_missing(err, "stud_to_toe_mm",
                            "stud axis to where the toe bears");
    if (!sw__is_set(in->stud_to_heel_mm))
        return fail_missing(err, "stud_to_heel_mm",
                            "stud axis to where the heel bears");
    const int tilt = sw__is_set(in->tilt_deg);
    const int heel = sw__is_set(in->heel_height_mm);
    if (!tilt && !heel)
        return fail_missing(err, "heel_height_mm",
                            "give both heights or the tilt");
    if (heel && tilt)
        return sw__fail(err, SW_ERR_CONFLICT, "tilt_deg",
                        "tilt_deg: give the tilt or the heel height, not both");
    if (heel && !sw__is_set(in->part_height_mm))
        return fail_missing(err, "part_height_mm",
                            "give both heights or the tilt");
    return SW_OK;
}

/* The question about torque inside a question about a strap. */
static sw_torque_in torque_question(const sw_strap_in *in)
{
    sw_torque_in q;
    sw_torque_defaults(&q);
    sw__copy(q.thread, sizeof q.thread, in->thread);
    sw__copy(q.lubrication, sizeof q.lubrication, in->lubrication);
    sw__copy(q.grade, sizeof q.grade, in->grade);
    q.preload_N = in->preload_N;
    q.torque_Nm = in->torque_Nm;
    q.nut_factor = in->nut_factor;
    q.mu_thread = in->mu_thread;
    q.mu_seat = in->mu_seat;
    q.prevailing_torque_Nm = in->prevailing_torque_Nm;
    q.friction_radius_mm = in->friction_radius_mm;
    return q;
}

#define TORN_MPA 2000.0 /* no stud of any grade in the tables holds more */

/* Tension, torque and friction from the torque room. */
static int open_torque(sw__strap_full *full, const sw__filler *fill,
                       sw_error *err)
{
    sw_strap_in *in = &full->in;
    full->question = torque_question(in);
    int status = sw_torque_resolve(&full->question, err);
    if (status)
        return status;
    full->torque = sw_torque(&full->question, err);
    if (full->torque.status)
        return full->torque.status;
    const double most = TORN_MPA * full->thread.stress_area_mm2;
    if (!(full->torque.preload_N <= most))
        return sw__is_set(in->preload_N)
                   ? sw__fail_range(err, "preload_N", in->preload_N, "N", 1e-3,
                                    most)
                   : sw__fail_range(
                         err, "torque_Nm", in->torque_Nm, "N.m", 1e-6,
                         in->torque_Nm * most / full->torque.preload_N);
    sw__fill_text(fill, "lubrication", full->question.lubrication);
    sw__fill_text(fill, "grade", full->question.grade);
    sw__fill_number(fill, "nut_factor", full->question.nut_factor);
    sw__fill_number(fill, "mu_thread", full->question.mu_thread);
    sw__fill_number(fill, "mu_seat", full->question.mu_seat);
    sw__fill_number(fill, "prevailing_torque_Nm",
                    full->question.prevailing_torque_Nm);
    sw__fill_number(fill, "friction_radius_mm",
                    full->question.friction_radius_mm);
    return SW_OK;
}

static void open_heights(sw__strap_full *full, const sw__filler *fill)
{
    sw_strap_in *in = &full->in;
    const double L = in->stud_to_toe_mm + in->stud_to_heel_mm;
    sw__fill_number(fill, "pad_thickness_mm", 0);
    sw__fill_number(fill, "step_mm", 0);
    if (!sw__is_set(in->part_height_mm) && !sw__is_set(in->stud_length_mm))
        full->warnings |= SW_WARN_HEIGHTS_ASSUMED;
    sw__fill_number(fill, "part_height_mm", 3.5 * full->thread.nominal_mm);
    const double level =
        in->part_height_mm + in->pad_thickness_mm + in->step_mm;
    sw__fill_number(fill, "heel_height_mm",
                    level + L * tan(SW__RAD(in->tilt_deg)));
    sw__fill_number(fill, "tilt_deg",
                    SW__DEG(atan((in->heel_height_mm - level) / L)));
}

static int check_heights(const sw_strap_in *in, sw_error *err)
{
    /* a derived tilt or heel is judged like a given one */
    const sw_field *tilt = sw_field_named(SW_STRUCT_STRAP_IN, "tilt_deg");
    if (!(in->tilt_deg >= tilt->min && in->tilt_deg <= tilt->max)) {
        char message[200];
        sw__line line = sw__line_start(message, sizeof message);
        sw__line_add(&line, "heel_height_mm: ");
        sw__line_add_number(&line, in->heel_height_mm);
        sw__line_add(&line, " mm tilts the strap by ");
        sw__line_add_number(&line, in->tilt_deg);
        sw__line_add(&line, " deg, allowed -20 to 20 deg");
        return sw__fail(err, SW_ERR_RANGE, "heel_height_mm", message);
    }
    if (in->heel_height_mm < 0) {
        char message[200];
        sw__line line = sw__line_start(message, sizeof message);
        sw__line_add(&line, "tilt_deg: ");
        sw__line_add_number(&line, in->tilt_deg);
        sw__line_add(&line, " deg puts the heel ");
        sw__line_add_number(&line, -in->heel_height_mm);
        sw__line_add(&line, " mm below the table");
        return sw__fail(err, SW_ERR_RANGE, "tilt_deg", message);
    }
    const double L = in->stud_to_toe_mm + in->stud_to_heel_mm;
    if (fabs(in->step_mm) > L)
        return sw__fail_range(err, "step_mm", in->step_mm, "mm", -L, L);
    if (in->slot_width_mm >= in->strap_width_mm)
        return sw__fail(err, SW_ERR_CONFLICT, "slot_width_mm",
                        "slot_width_mm: the slot leaves nothing of the strap's "
                        "width");
    return SW_OK;
}

static void open_strap(sw__strap_full *full, const sw__filler *fill)
{
    const double d = full->thread.nominal_mm;
    const struct sw__straps_row *row = strap_row(full->thread.size);
    const int known = row && sw__is_set(row->thickness_mm);
    sw__fill_number(fill, "strap_thickness_mm",
                    known ? row->thickness_mm : 1.6 * d);
    sw__fill_number(fill, "strap_width_mm", known ? row->width_mm : 3.2 * d);
    sw__fill_number(fill, "slot_width_mm", known ? row->slot_mm : 1.1 * d);
    sw__fill_number(fill, "strap_modulus_MPa", 205000);
    sw__fill_number(fill, "strap_yield_MPa", 290);
    sw__fill_number(fill, "slot_clearance_mm", 0.5 * d);
    sw__fill_word(fill, "strap", SW_STRAP_BENDING);
}

static void open_contacts(sw__strap_full *full, const sw__filler *fill)
{
    sw_strap_in *in = &full->in;
    sw__fill_word(fill, "nose", SW_NOSE_FLAT);
    sw__fill_word(fill, "heel", SW_HEEL_BLOCK);
    if (in->nose == SW_NOSE_ROUND)
        sw__fill_number(fill, "nose_radius_mm", 0.9 * in->strap_thickness_mm);
    if (in->nose == SW_NOSE_FLAT)
        sw__fill_number(fill, "toe_land_mm", 0);
    sw__fill_number(fill, "mu_toe", 0.15);
    sw__fill_number(fill, "toe_compliance_mm_per_N", 1 / BLOCK_N_PER_MM);
    double give = 1 / BLOCK_N_PER_MM;
    if (in->heel == SW_HEEL_SCREW) {
        sw__fill_number(fill, "heel_screw_diameter_mm",
                        full->thread.root_diameter_mm);
        const double D = in->heel_screw_diameter_mm, h = in->heel_height_mm;
        const double I = SW__PI * D * D * D * D / 64;
        give = fmax(give, h * h * h / (3 * 205000 * I));
    }
    sw__fill_number(fill, "heel_compliance_mm_per_N", give);
    if (in->heel != SW_HEEL_SCREW)
        sw__fill_number(fill, "heel_land_mm", 0);
    if (in->heel != SW_HEEL_SERRATED) {
        sw__fill_number(fill, "mu_heel", 0.15);
        sw__fill_number(fill, "mu_heel_high", fmax(0.20, in->mu_heel));
    }
}

static void open_stud(sw__strap_full *full, const sw__filler *fill)
{
    sw_strap_in *in = &full->in;
    const sw_thread_out *t = &full->thread;
    const struct sw__spherical_row *pair = sw__spherical_of(t->size);
    sw__fill_word(fill, "seat", SW_SEAT_FLAT);
    sw__fill_word(fill, "foot", SW_FOOT_HELD);
    sw__fill_word(fill, "nut", SW_NUT_TURNED);
    if (in->nut == SW_NUT_TURNED)
        sw__fill_word(fill, "restraint", SW_RESTRAINT_SHARED);
    double under_nut;
    if (in->seat == SW_SEAT_SPHERICAL) {
        sw__fill_number(fill, "sphere_radius_mm",
                        pair ? pair->sphere_radius_mm : 1.4 * t->nominal_mm);
        if (!pair && assumed(in, "sphere_radius_mm"))
            full->warnings |= SW_WARN_SEAT_TABLE;
        sw__fill_number(fill, "mu_sphere", 0.12);
        sw__fill_number(fill, "permitted_tilt_deg", 3);
        /* cone and sphere sit in one another by about a quarter */
        under_nut = pair ? pair->washer_height_mm + 0.75 * pair->seat_height_mm
                         : 0.7 * t->nominal_mm;
        sw__fill_number(fill, "rim_radius_mm", t->bearing_diameter_mm / 2);
    } else {
        sw__fill_number(fill, "washer_diameter_mm", t->washer_diameter_mm);
        sw__fill_number(fill, "washer_thickness_mm",
                        in->washer_diameter_mm > 0 ? t->washer_thickness_mm
                                                   : 0);
        under_nut = in->washer_thickness_mm;
        const double bare = t->bearing_diameter_mm / 2;
        sw__fill_number(fill, "rim_radius_mm",
                        in->washer_diameter_mm > 0
                            ? fmin(in->washer_diameter_mm / 2,
                                   bare + in->washer_thickness_mm)
                            : bare);
    }
    sw__fill_number(fill, "stud_modulus_MPa", 205000);
    sw__fill_number(fill, "stud_length_mm",
                    in->part_height_mm + in->pad_thickness_mm + in->step_mm +
                        in->strap_thickness_mm + under_nut + throat_mm(t));
    sw__fill_number(fill, "stud_end_mm", 0.5 * t->nominal_mm);
    sw__fill_number(fill, "seat_slip", 0.05);
    sw__fill_number(fill, "thread_play_deg", t->play_mean_deg);
    full->above_strap_mm = under_nut + t->nut_height_mm + in->stud_end_mm;
}

int sw__strap_open(const sw_strap_in *in, sw__strap_full *full, sw_error *err)
{
    memset(full, 0, sizeof *full);
    full->in = *in;
    const sw__filler fill = {(char *)&full->in, SW_STRUCT_STRAP_IN,
                             &full->in.assumed};
    int status = sw__reopen(&full->in, SW_STRUCT_STRAP_IN, &full->in.assumed,
                            &full->in.seal, err);
    if (!status)
        status = sw__check_input(&full->in, SW_STRUCT_STRAP_IN, err);
    if (!status)
        status = check_choice(&full->in, err);
    if (status)
        return status;
    if (sw__strap_unused(&full->in))
        full->warnings |= SW_WARN_UNUSED_INPUT;
    full->thread = sw_thread(full->in.thread, err);
    status = full->thread.status;
    if (!status)
        status = open_torque(full, &fill, err);
    if (status)
        return status;
    open_heights(full, &fill);
    open_strap(full, &fill);
    status = check_heights(&full->in, err);
    if (status)
        return status;
    open_contacts(full, &fill);
    open_stud(full, &fill);
    const sw_grade_out g =
        sw_grade(full->in.grade, full->thread.nominal_mm, NULL);
    full->yield_MPa = g.status ? SW_UNSET : g.yield_MPa;
    return SW_OK;
}

int sw_strap_resolve(sw_strap_in *in, sw_error *err)
{
    sw__strap_full full;
    sw__clear(err);
    if (!in)
        return sw__fail_null(err, "in");
    const int status = sw__strap_open(in, &full, err);
    if (!status) {
        *in = full.in;
        in->seal = sw__seal(in, SW_STRUCT_STRAP_IN, in->assumed);
    }
    return status;
}

sw_assumption sw_strap_assumed(const sw_strap_in *in, int index, sw_error *err)
{
    sw__strap_full full;
    sw__clear(err);
    const int status =
        in ? sw__strap_open(in, &full, err) : sw__fail_null(err, "in");
    if (status)
        return sw__no_assumption(status);
    sw_assumption a =
        sw__assumed(&full.in, SW_STRUCT_STRAP_IN, full.in.assumed, index, err);
    sw__describe_friction(&a, &full.question);
    return a;
}
