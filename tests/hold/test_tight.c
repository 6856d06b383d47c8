/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tight: statics by hand, published friction sums, what must not change or must
 * change one way, remedies carried out, refusals.
 */
#include "../common.h"
#include "../near.h"

typedef struct {
    sw_tight_in in;
    sw_strap_in strap;
    sw_spread_in spread;
} question;

/* A level strap that nothing turns. */
static question ask(double straps, double cut_N)
{
    question q;
    sw_tight_defaults(&q.in);
    sw_strap_defaults(&q.strap);
    sw_spread_defaults(&q.spread);
    SET(q.strap.thread, "M12");
    q.strap.stud_to_toe_mm = 30;
    q.strap.stud_to_heel_mm = 60;
    q.strap.tilt_deg = 0;
    q.strap.stud_length_mm = 80;
    q.strap.nose = SW_NOSE_ROUND;
    q.strap.restraint = SW_RESTRAINT_HELD;
    q.in.straps = straps;
    q.in.cut_N = cut_N;
    q.in.lift_N = 0;
    return q;
}

static sw_tight_out good(const char *what, const question *q)
{
    sw_error err;
    const sw_tight_out t = sw_tight(&q->in, &q->strap, &q->spread, &err);
    check_no_error(what, t.status, &err);
    check_numbers(what, &t, SW_STRUCT_TIGHT_OUT, t.status);
    must(t.sentence[0] && strlen(t.sentence) < sizeof t.sentence - 1, "%s: %s",
         what, t.sentence);
    return t;
}

/* The force with which all toes press, less what the straps themselves use
 * up. */
static double pressing(const sw_tight_out *t)
{
    return t->straps * t->hold_N * (1 - t->pull_share);
}

/* Coulomb friction on one face, S F/mu: 1000 N, S 2, mu 0.2 need 10 000 N; of a
 * pad on each face, as a vice has, N = S F/(2 mu) of lathe-chuck practice
 * (2000 N, mu 0.15, S 2.5: 16 667 N) is half of what one face needs. */
START_TEST(friction_sums)
{
    question q = ask(4, 1000);
    q.in.friction = 0.2;
    q.in.required_margin = 2;
    sw_tight_out t = good("one face", &q);
    near_in("one face", pressing(&t), 10000, 0, 1e-6);
    ck_assert_int_eq(t.governs, SW_GOVERNS_SLIDE);
    q.in.cut_N = 2000;
    q.in.friction = 0.15;
    q.in.required_margin = 2.5;
    t = good("two faces", &q);
    near_in("two faces", pressing(&t) / 2, 16667, 0.5, 0);
}
END_TEST

/* By hand: 400 N at 80 mm beside the middle, straps at 100 mm, is 1.8 times as
 * much; 50 N of weight and a margin of 2: 4 P' = (2 720 N - 0.15 50 N)/0.15. */
START_TEST(slide_by_hand)
{
    question q = ask(4, 400);
    q.in.part_length_mm = 220;
    q.in.part_width_mm = 150;
    q.in.cut_offset_mm = 80;
    q.in.strap_radius_mm = 100;
    q.in.cut_height_mm = 0;
    q.in.weight_N = 50;
    const sw_tight_out t = good("slide", &q);
    ck_assert(t.twist_factor == 1.8);
    near_in("slide", pressing(&t), (2 * 720 - 0.15 * 50) / 0.15, 0, 1e-6);
}
END_TEST

/* By hand, four supports 100 mm from the middle: 300 N of lift at 100 mm is 3/4
 * of it at the support beside it, 200 N at 60 mm over them takes 2 200 60/(4
 * 100) = 60 N from the worst; twice (225 + 60) N less 12.5 N of weight, over
 * what the pull of the straps at that height leaves. */
START_TEST(lift_by_hand)
{
    question q = ask(4, 200);
    q.in.friction = 1.5;
    q.in.part_length_mm = 200;
    q.in.part_width_mm = 150;
    q.in.cut_height_mm = 60;
    q.in.lift_N = 300;
    q.in.weight_N = 50;
    q.in.seat_N = 0;
    sw_tight_out t = good("lift", &q);
    ck_assert_int_eq(t.governs, SW_GOVERNS_LIFT);
    const double left = 1 - 2 * t.pull_share * 1.5 * 60 / 100;
    near_in("lift", t.hold_lift_N, 557.5 / left, 0, 1e-6);
    near_in("lift", t.hold_N, 557.5 / left, 0, 1e-6);
    near_in("margin", t.margin, 2, 0, 5e-3);
    q.in.straps = 1; /* all of it on the one, and no base to tip over */
    t = good("one strap", &q);
    near_in("one strap", t.hold_lift_N, 550, 0, 1e-12);
    ck_assert(t.twist_factor >= 1);
}
END_TEST

/* Without a limit the low end of the torque is the least that holds: margin as
 * required. With one, the low end holds and the high end keeps it. */
START_TEST(low_end_holds)
{
    for (int n = 2; n <= 8; n++)
        for (int limited = 0; limited < 2; limited++) {
            question q = ask(n, 150 * n);
            q.in.toe_limit_N = limited ? 12000 : SW_UNSET;
            const sw_tight_out t = good("window", &q);
            ck_assert_int_eq(t.verdict, SW_VERDICT_FITS);
            must(t.toe_force_low_N >= t.hold_N * (1 - 1e-6), "%d straps", n);
            must(t.margin >= 2 * (1 - 1e-4), "%d straps: %g", n, t.margin);
            must(t.torque_low_Nm <= t.torque_Nm &&
                     t.torque_Nm <= t.torque_high_Nm,
                 "%d straps", n);
            if (limited)
                must(t.toe_force_high_N <= 12000 * (1 + 1e-6), "%d straps", n);
            else
                near_in("least", t.margin, 2, 0, 2e-3);
        }
}
END_TEST

/* The straps' own pulls: pairs work against each other, all from one side add
 * up; a strap that turns with the nut costs more. */
START_TEST(straps_push)
{
    question q = ask(4, 500);
    q.strap.tilt_deg = 1;
    q.in.friction = 0.3;
    const sw_tight_out pairs = good("pairs", &q);
    q.in.facing = SW_FACING_ALIKE;
    const sw_tight_out alike = good("alike", &q);
    ck_assert(pairs.pull_share < alike.pull_share);
    ck_assert(pairs.hold_N < alike.hold_N);
    q.in.facing = SW_FACING_OPPOSED;
    q.strap.restraint = SW_RESTRAINT_FREE;
    const sw_tight_out dragged = good("dragged", &q);
    ck_assert(pairs.hold_N < dragged.hold_N);
    /* tilted so far that it pushes harder than friction holds */
    q.in.facing = SW_FACING_ALIKE;
    q.strap.tilt_deg = -5;
    q.in.friction = 0.05;
    const sw_tight_out lost = good("lost", &q);
    ck_assert_int_eq(lost.verdict, SW_VERDICT_NONE);
    ck_assert(lost.hold_N == SW_UNSET && lost.torque_Nm == SW_UNSET);
    ck_assert(lost.pull_share >= 1);
    ck_assert_ptr_nonnull(strstr(lost.sentence, "sideways"));
}
END_TEST

/* Each way that makes it harder asks for more. */
START_TEST(directions)
{
    const question q = ask(4, 500);
    const double hold = good("as it is", &q).hold_N;
    question o = q;
    o.in.cut_N *= 2;
    near_in("twice the cut", good("cut", &o).hold_N, 2 * hold, 0, 0.02);
    o = q;
    o.in.friction = 0.075;
    ck_assert(good("half the friction", &o).hold_N > 2 * hold * 0.999);
    o = q;
    o.in.straps = 8;
    near_in("twice the straps", good("straps", &o).hold_N, hold / 2, 0, 0.02);
    o = q;
    o.in.weight_N = 400;
    ck_assert(good("weight", &o).hold_N < hold);
    o = q;
    o.in.lift_N = 200;
    ck_assert(good("lift", &o).hold_N > hold);
    o = q;
    o.spread.scatter_pct = 10; /* surer than any wrench */
    ck_assert(good("spread", &o).torque_Nm < good("as it is", &q).torque_Nm);
}
END_TEST

/* The limit from the face: 6061-T6 has no pressure limit in the table or has
 * one; either way area times MPa, told as assumed. */
START_TEST(limit_of_the_face)
{
    sw_error err;
    question q = ask(4, 300);
    q.in.toe_area_mm2 = 150;
    SET(q.in.part_material, "6061-T6");
    const sw_material_out m = sw_material("6061-T6", NULL);
    const double MPa =
        m.pressure_limit_MPa != SW_UNSET ? m.pressure_limit_MPa : m.yield_MPa;
    near_in("limit", good("face", &q).flat_N, 150 * MPa, 0, 1e-12);
    int told = 0;
    for (int i = 0;; i++) {
        const sw_assumption a = sw_tight_assumed(&q.in, &q.strap, i, NULL);
        if (a.status)
            break;
        told |= strcmp(a.name, "toe_limit_N") == 0;
    }
    ck_assert_int_eq(told, 1);
    q.in.toe_limit_N = 5000;
    sw_tight_out t = sw_tight(&q.in, &q.strap, &q.spread, &err);
    check_refused("both", &err, SW_ERR_CONFLICT, "toe_limit_N");
    check_numbers("both", &t, SW_STRUCT_TIGHT_OUT, t.status);
}
END_TEST

/* Each remedy, carried out by hand, opens the window that was shut. */
START_TEST(remedies)
{
    sw_error err;
    question q = ask(2, 600);
    q.in.toe_limit_N = 7000;
    const sw_tight_out shut = good("shut", &q);
    ck_assert_int_eq(shut.verdict, SW_VERDICT_NONE);
    ck_assert(shut.torque_Nm == SW_UNSET && shut.margin == SW_UNSET);
    int found = 0, seen = 0;
    for (int i = 0;; i++) {
        const sw_remedy_out m =
            sw_tight_remedy(&q.in, &q.strap, &q.spread, i, &err);
        if (m.status) {
            ck_assert_int_eq(m.status, SW_ERR_NONE);
            check_numbers("past", &m, SW_STRUCT_REMEDY_OUT, m.status);
            break;
        }
        question o = q;
        switch (m.remedy) {
        case SW_REMEDY_STRAPS:
            ck_assert(m.value > 2 && m.value <= 12);
            o.in.straps = m.value;
            break;
        case SW_REMEDY_CUT:
            ck_assert(m.value < 600);
            o.in.cut_N = m.value;
            break;
        case SW_REMEDY_TIGHTENING:
            o.spread.scatter_pct = m.value;
            break;
        case SW_REMEDY_LEVEL:
            o.strap.tilt_deg = 0;
            o.strap.seat = SW_SEAT_SPHERICAL;
            o.strap.restraint = SW_RESTRAINT_HELD;
            break;
        default:
            ck_assert(m.value > 0.15);
            o.in.friction = m.value;
        }
        const sw_tight_out t = good("open", &o);
        ck_assert_int_eq(t.verdict, SW_VERDICT_FITS);
        near_in("torque", t.torque_Nm, m.torque_Nm, 0, 1e-9);
        seen |= 1 << m.remedy;
        found++;
    }
    ck_assert_int_ge(found, 2);
    ck_assert(seen & 1 << SW_REMEDY_STRAPS);
    ck_assert(seen & 1 << SW_REMEDY_CUT);
}
END_TEST

START_TEST(refused)
{
    static const struct {
        const char *field;
        double value;
        int code;
    } row[] = {
        {"straps", SW_UNSET, SW_ERR_MISSING},
        {"straps", 0, SW_ERR_RANGE},
        {"straps", 2.5, SW_ERR_RANGE},
        {"straps", NAN, SW_ERR_NAN},
        {"cut_N", SW_UNSET, SW_ERR_MISSING},
        {"cut_N", -1, SW_ERR_RANGE},
        {"friction", 0, SW_ERR_RANGE},
        {"required_margin", 0.5, SW_ERR_RANGE},
        {"toe_limit_N", 0, SW_ERR_RANGE},
        {"lift_N", INFINITY, SW_ERR_RANGE},
    };
    sw_error err;
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        question q = ask(4, 500);
        set_field(&q.in, sw_field_named(SW_STRUCT_TIGHT_IN, row[i].field),
                  row[i].value);
        const sw_tight_out t = sw_tight(&q.in, &q.strap, &q.spread, &err);
        check_refused(row[i].field, &err, row[i].code, row[i].field);
        check_numbers(row[i].field, &t, SW_STRUCT_TIGHT_OUT, t.status);
        ck_assert_int_eq(t.verdict, 0);
    }
    question q = ask(4, 500);
    q.in.toe_area_mm2 = 100;
    ck_assert_int_eq(sw_tight(&q.in, &q.strap, &q.spread, &err).status,
                     SW_ERR_MISSING);
    check_refused("area", &err, SW_ERR_MISSING, "part_material");
    q = ask(4, 500);
    q.in.part_width_mm = 100;
    ck_assert_int_ne(sw_tight(&q.in, &q.strap, &q.spread, &err).status, 0);
    check_refused("width", &err, SW_ERR_MISSING, "part_length_mm");
    q.in.part_length_mm = 90;
    ck_assert_int_ne(sw_tight(&q.in, &q.strap, &q.spread, &err).status, 0);
    check_refused("sides", &err, SW_ERR_CONFLICT, "part_width_mm");
    q = ask(4, 500);
    q.strap.thread[0] = '\0';
    ck_assert_int_ne(sw_tight(&q.in, &q.strap, &q.spread, &err).status, 0);
    check_refused("thread", &err, SW_ERR_MISSING, "thread");
    q = ask(4, 500);
    q.spread.scatter_pct = 400;
    ck_assert_int_ne(sw_tight(&q.in, &q.strap, &q.spread, &err).status, 0);
    check_refused("spread", &err, SW_ERR_RANGE, "scatter_pct");
    q.in.toe_limit_N = 1; /* shut, and the spread is refused all the same */
    ck_assert_int_ne(sw_tight(&q.in, &q.strap, &q.spread, &err).status, 0);
    check_refused("spread", &err, SW_ERR_RANGE, "scatter_pct");
    ck_assert_int_eq(sw_tight(NULL, &q.strap, &q.spread, &err).status,
                     SW_ERR_NULL);
    check_refused("NULL", &err, SW_ERR_NULL, "in");
    q = ask(4, 500);
    ck_assert_int_eq(sw_tight_resolve(&q.in, &q.strap, NULL), 0);
    ck_assert(q.in.friction == 0.15 && q.in.facing == SW_FACING_OPPOSED);
    good("resolved", &q);
    q.in.friction = 0.3; /* a default changed after resolving */
    ck_assert_int_eq(sw_tight(&q.in, &q.strap, &q.spread, &err).status,
                     SW_ERR_CONFLICT);
}
END_TEST

/* Straps that push harder than they hold: the weight holds as long as the toes
 * but seat, and pressing harder is what must not be. By hand: 0.15 (20 000 N -
 * 1 000 N) less 200 N leaves 2650 N, to be lost at Q - 0.15 a newton. */
START_TEST(weight_holds)
{
    question q = ask(1, 100);
    q.strap.tilt_deg = -4;
    q.in.lift_N = 500;
    q.in.weight_N = 20000;
    const sw_tight_out t = good("weight", &q);
    ck_assert(t.pull_share > 1);
    ck_assert_int_eq(t.verdict, SW_VERDICT_FITS);
    ck_assert(t.hold_N == 500 && t.hold_slide_N == 0);
    near_in("upper limit", t.flat_N, 2650 / (0.15 * (t.pull_share - 1)), 0,
            1e-9);
    ck_assert(t.margin >= 2);
    q.in.weight_N = 100;
    ck_assert_int_eq(good("light", &q).verdict, SW_VERDICT_NONE);
}
END_TEST

START_TEST(said)
{
    question q = ask(1, 100);
    ck_assert_ptr_nonnull(strstr(sw_tight_not_checked(&q.in, 0), "single"));
    q.in.straps = 4;
    ck_assert_ptr_nonnull(strstr(sw_tight_not_checked(&q.in, 0), "length"));
    q.in.part_length_mm = 100;
    ck_assert_ptr_nonnull(strstr(sw_tight_not_checked(&q.in, 0), "flatness"));
    ck_assert_ptr_null(sw_tight_not_checked(&q.in, 50));
    ck_assert_ptr_null(sw_tight_not_checked(&q.in, -1));
    q.in.part_length_mm = SW_UNSET;
    const sw_tight_out t = good("said", &q);
    ck_assert_ptr_nonnull(strstr(t.sentence, "N·m"));
    q.in.cut_N = 0; /* nothing to hold against: a toe only touches */
    const sw_tight_out idle = good("no cut", &q);
    ck_assert(idle.hold_N == 500 && idle.margin == SW_UNSET);
}
END_TEST

int main(void)
{
    return RUN_TESTS("tight", friction_sums, slide_by_hand, lift_by_hand,
                     low_end_holds, straps_push, directions, limit_of_the_face,
                     remedies, weight_holds, refused, said);
}
