/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Strap: one strap clamp, from stud tension to what the part feels.
 *
 * Side view. Heel contact at the origin, x toward the toe, y up. a, b: stud
 * axis to toe and heel contact, L = a + b; theta tilt, heel-high positive;
 * F stud tension (vertical); t strap thickness, EI_s its bending stiffness,
 * slot deducted; N normal forces; X, T, S along the table: X stud on strap and
 * T heel on strap toward the toe positive, S toe on part toward the stud
 * positive (the part's answer drives the strap toward the toe).
 *
 *   level       N_toe = F b/L, N_heel = F a/L              lever law      (1)
 *   tilt        X = -F tan(lean) toward the high side; lean and the place x_s
 *               of the resultant from seat.c; a nut that turns: lean = theta
 *                                                                         (2)
 *   moments     N_toe L = F x_s + X y_s + S y_toe, N_heel = F - N_toe     (3)
 *               y_s = t/cos(theta) - (b + nut's travel) tan(theta): the nut's
 *               face where it came to rest; y_toe = -L tan(theta) - step
 *   spread      a bent strap's underside grows between its contacts by
 *               u = F a' b' t/(4 EI_s): end slopes of a simply supported beam
 *               times t/2, loaded by the resultant: b' = x_s, a' = L - x_s (4)
 *   heel        T wants (u - X c_t)/(c_h + c_t), at most mu_heel N_heel;
 *               c_t, c_h: sideways give of toe and heel, mm/N, with the strap's
 *               own, 4 a/(EA_s) and 4 b/(EA_s) (stretch, and the bending by a
 *               force t/2 off the axis). On solid supports u is so large that
 *               the heel slides and holds its full friction to the toe    (5)
 *   side pull   S = -X - T, at most mu_toe N_toe; then T = -X - S, at most
 *               mu_heel N_heel; what is left over is unheld and taken at the
 *               heel contact (a stop behind the strap)                    (6)
 *   rigid       u = 0: textbook statics
 *   full        theta at the nut less the strap's own slope under the
 *               nut: the chord between its edges, of a simply supported beam
 *               loaded by the resultant; about F a b (b - a)/(3 EI_s L)   (7)
 *   spherical   the pair takes up the permitted tilt: x_s = b, X = 0; the rest
 *               acts as on a flat seat
 *   edge        a flat nose bears on the part's inner edge until the tilt
 *               exceeds the strap's end slope F a b (L + b)/(6 EI_s L), a flat
 *               block on its inner edge until -F a b (L + a)/(6 EI_s L)   (8)
 *   nut drag    seat torque F mu_seat r shared by toe and heel as a couple:
 *               drag = T_seat/L; held strap: 0; free strap: T_seat/a, or the
 *               off-centre friction mu_seat F (e/rim) x_s/L; side pull and drag
 *               together at most mu_toe N_toe                             (9)
 *   strap       M = F a b/L at the stud; sag F a^2 b^2/(3 EI_s L)        (10)
 *   stud        sigma = F/A_root + 32 M/(pi d_root^3); while the nut is turned
 *               also tau = 16 T_thread/(pi d_root^3): sqrt(sigma^2 + 3 tau^2)
 *               against the yield                                        (11)
 *
 * Band: strap_band.c.
 *
 * Sources: lever law and edge: any text on statics and beams, checked with the
 * exact example in tests/cases; (2) to (9): derived here, compared with a
 * planar contact finite element run (16 states, in tests/cases/strap.cases,
 * within 1 % of toe force and 0.003 F of side pull for a turned nut) and with
 * tests/reference/strap_planar.py. Beyond 5 degrees nothing was compared.
 */
#include "clamp/strap.h"

#include "clamp/strap_band.h"
#include "clamp/strap_geometry.h"

#include <string.h>

#define COMPARED_TO_DEG 5.0

static const char *const not_checked[] = {
    "T-slot lips, T-nut, thread engagement: the machine maker's limit governs",
    "whether the part stays put under the cut and comes off flat",
    "chatter, coolant and settling, which change friction and preload",
    "marks on the part under the toe",
    "across the strap: the model is planar, only nut drag is out of plane",
    "buckling of a slender jack screw, tipping of tall packing",
    "scatter of torque and friction is not in the model's own band",
};

const char *sw_strap_not_checked(int index)
{
    const int count = sizeof not_checked / sizeof not_checked[0];
    return index >= 0 && index < count ? not_checked[index] : NULL;
}

/* Equation (9). */
static void set_drag(const sw__strap_full *full, const sw__strap_geometry *g,
                     const sw__strap_forces *f, sw_strap_out *out)
{
    const sw_strap_in *in = &full->in;
    const double cap = g->mu_toe * f->N_toe;
    out->drag_N = out->drag_low_N = out->drag_high_N = 0;
    if (in->nut == SW_NUT_TURNED && in->restraint != SW_RESTRAINT_HELD) {
        const double T_seat = in->mu_seat * in->friction_radius_mm * g->F;
        const double off_centre = in->mu_seat * g->F *
                                  (fabs(out->seat_offset_mm) / g->rim) *
                                  fabs(f->x_seat) / g->L;
        const double room = sqrt(fmax(0, cap * cap - f->S * f->S));
        const double shared = fmin(T_seat / g->L, room);
        const double most = fmax(T_seat / g->a, off_centre);
        if (in->restraint == SW_RESTRAINT_FREE) {
            out->drag_N = fmin(most, room);
            out->drag_low_N = shared;
        } else {
            out->drag_N = shared;
        }
        out->drag_high_N = fmax(out->drag_N, fmin(cap, most));
    }
    out->net_part_force_N = hypot(f->S, out->drag_N);
    out->net_part_angle_deg =
        out->net_part_force_N > 0 ? SW__DEG(atan2(out->drag_N, f->S)) : 0;
    out->toe_friction_use = cap > 0 ? out->net_part_force_N / cap : 0;
}

/* Equations (10) and (11), heights. */
static void set_strength(const sw__strap_full *full,
                         const sw__strap_geometry *g, const sw__strap_forces *f,
                         sw_strap_out *out)
{
    const sw_strap_in *in = &full->in;
    const double d3 = full->thread.root_diameter_mm, t = g->t;
    const double M = full->in.nut == SW_NUT_STILL
                         ? sw__strap_worst_bending(full, g)
                         : fmax(f->seat.M_nut, fabs(f->seat.M_foot));
    out->stud_bending_Nm = f->seat.M_nut / 1000;
    out->foot_bending_Nm = f->seat.M_foot / 1000;
    out->stud_stress_MPa =
        g->F / full->thread.root_area_mm2 + 32 * M / (SW__PI * d3 * d3 * d3);
    out->stud_yield_use = SW_UNSET;
    const double tau =
        in->nut == SW_NUT_TURNED
            ? 16000 * full->torque.thread_torque_Nm / (SW__PI * d3 * d3 * d3)
            : 0;
    if (sw__is_set(full->yield_MPa)) {
        out->stud_yield_use =
            hypot(out->stud_stress_MPa, sqrt(3) * tau) / full->yield_MPa;
        if (out->stud_yield_use > 1)
            out->warnings |= SW_WARN_STUD_YIELDS;
    } else {
        out->warnings |= SW_WARN_STUD_STRENGTH_UNKNOWN;
    }
    const double W = (in->strap_width_mm - in->slot_width_mm) * t * t / 6;
    out->strap_stress_MPa = g->F * g->a * g->b / (g->L * W);
    if (out->strap_stress_MPa > in->strap_yield_MPa)
        out->warnings |= SW_WARN_STRAP_YIELDS;
    out->strap_sag_mm =
        in->strap == SW_STRAP_RIGID
            ? 0
            : g->F * g->a * g->a * g->b * g->b / (3 * g->EI_strap * g->L);
    const double upright = t / g->cos_theta;
    out->top_mm =
        fmax(in->heel_height_mm + g->y_seat + full->above_strap_mm,
             in->heel_height_mm + upright + fmax(0, -g->L * g->tan_theta));
    out->edge_lift_mm = 0;
    if (in->nose == SW_NOSE_FLAT && in->strap != SW_STRAP_RIGID)
        out->edge_lift_mm = g->L * sw__strap_toe_slope(g);
}

static void set_warnings(const sw__strap_full *full,
                         const sw__strap_geometry *g, const sw__strap_forces *f,
                         sw_strap_out *out)
{
    const sw_strap_in *in = &full->in;
    const double level = 1e-9; /* rad: the heights differ by rounding only */
    uint64_t w = full->warnings;
    if (g->theta < -level)
        w |= SW_WARN_HEEL_LOW;
    if (g->toe_bears == SW_BEARS_EDGE &&
        (g->theta < -level || in->strap != SW_STRAP_RIGID))
        w |= SW_WARN_TOE_ON_EDGE;
    if (in->nut == SW_NUT_TURNED && f->S != 0 &&
        fabs(f->S) >= g->mu_toe * f->N_toe * (1 - 1e-9))
        w |= SW_WARN_TOE_SLIDES;
    if (in->stud_length_mm < in->part_height_mm + in->pad_thickness_mm +
                                 in->step_mm + in->strap_thickness_mm ||
        g->a < in->rim_radius_mm || g->b < in->rim_radius_mm)
        w |= SW_WARN_MEASURES;
    if (g->toe_near || g->heel_near)
        w |= SW_WARN_BETWEEN_EDGES;
    if (f->U != 0)
        w |= SW_WARN_STRAP_WALKS;
    if (in->seat == SW_SEAT_SPHERICAL && fabs(g->theta) > g->permitted)
        w |= SW_WARN_SEAT_ANGLE;
    if (in->seat == SW_SEAT_SPHERICAL && fabs(g->theta) > level &&
        in->assumed & sw__bit(SW_STRUCT_STRAP_IN, "permitted_tilt_deg"))
        w |= SW_WARN_SEAT_TILT_ASSUMED;
    if (fabs(in->tilt_deg) > COMPARED_TO_DEG)
        w |= SW_WARN_TILT_LARGE;
    if (f->seat.on_rim)
        w |= SW_WARN_ON_RIM;
    if (fabs(out->nut_travel_mm) > in->slot_clearance_mm)
        w |= SW_WARN_NUT_TRAVEL;
    if (g->a > g->b)
        w |= SW_WARN_STUD_NEAR_HEEL;
    if (in->nut == SW_NUT_STILL)
        w |= SW_WARN_NO_NOMINAL;
    if (in->seat == SW_SEAT_FLAT && fabs(g->theta) > level &&
        fabs(in->tilt_deg) >= 0.05 && fabs(in->tilt_deg) <= in->thread_play_deg)
        w |= SW_WARN_PLAY_COVERS_TILT;
    w |= full->torque.warnings &
         (SW_WARN_UNUSED_INPUT | SW_WARN_OVER_PROOF | SW_WARN_OVER_YIELD |
          SW_WARN_SELF_LOOSENING | SW_WARN_LUBRICATION_CONFLICT |
          SW_WARN_TABLE_FROM_MEMORY);
    out->warnings |= w;
}

static int state_of(const sw__strap_geometry *g, const sw__strap_forces *f)
{
    if (f->seat.on_rim)
        return SW_STATE_RIM;
    if (fabs(f->theta) <= 1e-9)
        return SW_STATE_LEVEL;
    return g->permitted > 0 && fabs(f->theta) <= g->permitted
               ? SW_STATE_SWIVELLED
               : SW_STATE_CONFORMED;
}

static int fail_tips(sw_error *err, int over_toe)
{
    return over_toe
               ? sw__fail(err, SW_ERR_NONE, "stud_to_toe_mm",
                          "stud_to_toe_mm: the stud's pull falls outside the "
                          "strap: it tips over its toe and lifts off the heel")
               : sw__fail(err, SW_ERR_NONE, "stud_to_heel_mm",
                          "stud_to_heel_mm: the stud's pull falls outside the "
                          "strap: it tips over its heel and lifts off the "
                          "part");
}

static int solve(const sw_strap_in *in, int with_band, sw_strap_out *out,
                 sw_error *err)
{
    sw__strap_full full;
    const int status = sw__strap_open(in, &full, err);
    if (status)
        return status;
    const sw__strap_geometry g = sw__strap_place(&full, 0, 0);
    if (!(g.a > 0))
        return fail_tips(err, 1);
    const sw__strap_choice nominal = sw__strap_nominal(&full.in, &g);
    const sw__strap_forces f = sw__strap_balance(&g, &nominal);
    if (!(f.N_toe > 0) || !(f.N_heel > 0))
        return fail_tips(err, !(f.N_heel > 0));
    if (f.jammed)
        return sw__fail(err, SW_ERR_NONE, "step_mm",
                        "step_mm: with so deep a step and so much friction "
                        "the strap jams; the model has no answer");
    const double sign = f.theta < 0 ? -1 : 1; /* as the nut sees it */
    out->preload_N = g.F;
    out->torque_Nm = full.torque.torque_Nm;
    const double L = full.in.stud_to_toe_mm + full.in.stud_to_heel_mm;
    out->lever_ratio = full.in.stud_to_heel_mm / L;
    out->tilt_deg = full.in.tilt_deg;
    out->toe_force_level_N = g.F * out->lever_ratio;
    out->toe_force_N = f.N_toe;
    out->toe_force_error_pct = 100 * (f.N_toe / out->toe_force_level_N - 1);
    out->side_load_on_strap_N = f.X;
    out->heel_side_N = f.T_heel;
    out->side_pull_N = f.S;
    out->heel_force_N = f.N_heel;
    out->unheld_N = f.U;
    out->seat_offset_mm = -sign * f.seat.offset + 0.0;
    out->nut_travel_mm = sign * f.seat.travel + 0.0;
    out->resultant_mm = f.x_seat;
    out->seat_height_mm = f.y_seat;
    out->toe_height_mm = g.y_toe + 0.0;
    out->toe_place_mm = g.L;
    out->strap_spread_mm = f.spread;
    out->toe_bears = g.toe_bears;
    out->heel_bears = g.heel_bears;
    out->seat_state = state_of(&g, &f);
    const double none = 1e-6 * g.F; /* less is rounding */
    out->pull_direction = fabs(f.S) <= none ? SW_PULL_NONE
                          : f.S > 0         ? SW_PULL_TOWARD
                                            : SW_PULL_AWAY;
    if (with_band)
        sw__strap_band(&full, &g, &nominal, &f, out);
    set_drag(&full, &g, &f, out);
    set_strength(&full, &g, &f, out);
    set_warnings(&full, &g, &f, out);
    return SW_OK;
}

sw_strap_out sw_strap(const sw_strap_in *in, sw_error *err)
{
    sw_strap_out out;
    memset(&out, 0, sizeof out);
    sw__clear(err);
    const int status = in ? solve(in, 1, &out, err) : sw__fail_null(err, "in");
    if (status)
        sw__spoil(&out, SW_STRUCT_STRAP_OUT, status);
    return out;
}

sw_strap_out sw__strap_bare(const sw_strap_in *in)
{
    sw_strap_out out;
    memset(&out, 0, sizeof out);
    const int status = solve(in, 0, &out, NULL);
    if (status)
        sw__spoil(&out, SW_STRUCT_STRAP_OUT, status);
    return out;
}
