/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Weakest: each part against an answer of its own (published proof load, the
 * stripping room, the washer's area summed strip by strip, the strap as a
 * beam), the order, and the tension at which a part gives, asked again.
 */
#include "../near.h"
#include "../random.h"
#include "strap_question.h"

enum { PARTS = 6 };

static sw_engage_in open_ends(void)
{
    sw_engage_in engage;
    sw_engage_defaults(&engage);
    return engage;
}

static sw_gives_out at_rank(const char *what, const sw_strap_in *in,
                            const sw_engage_in *engage, int rank)
{
    sw_error err;
    const sw_gives_out g = sw_strap_weakest(in, engage, rank, &err);
    check_no_error(what, g.status, &err);
    check_numbers(what, &g, SW_STRUCT_GIVES_OUT, g.status);
    must(sw_word(SW_WORDS_GIVES, g.part) && g.how[0], "%s", what);
    must(strlen(g.how) + 1 < sizeof g.how, "%s: %s", what, g.how);
    return g;
}

static sw_gives_out part(const sw_strap_in *in, const sw_engage_in *engage,
                         int wanted)
{
    for (int rank = 0; rank < PARTS; rank++) {
        const sw_gives_out g = at_rank("part", in, engage, rank);
        if (g.part == wanted)
            return g;
    }
    ck_abort_msg("no %s", sw_word(SW_WORDS_GIVES, wanted));
    return at_rank("", in, engage, 0);
}

/* A level strap with the measures of M12 in the tables, slot and all. */
static sw_strap_in slotted(double preload_N)
{
    sw_strap_in in = base_strap(preload_N, 0);
    in.slot_width_mm = 14;
    in.rim_radius_mm = SW_UNSET;
    return in;
}

/* Published: proof load of an M12 nut of class 8 and 10, ISO 898-2, 74200 and
 * 88500 N, 0.6 %. */
START_TEST(nut)
{
    const sw_strap_in in = slotted(10000);
    sw_engage_in engage = open_ends();
    sw_gives_out g = part(&in, &engage, SW_GIVES_NUT); /* 8.8: class 8 */
    near(g.limit_N, 74200, 0, 0.006);
    near(g.margin, 7.42, 0, 0.006);
    near(g.load_N, 10000, 0, 0);
    ck_assert(g.load_MPa == SW_UNSET && g.limit_MPa == SW_UNSET);
    SET(engage.nut_class, "10");
    near(part(&in, &engage, SW_GIVES_NUT).limit_N, 88500, 0, 0.006);
    engage.nut_proof_MPa = 100;
    g = part(&in, &engage, SW_GIVES_NUT);
    near(g.limit_N, 8430, 0, 0.006);
    ck_assert_uint_eq(g.warnings, SW_WARN_UNUSED_INPUT | SW_WARN_GIVES);
}
END_TEST

/* Each grade has its nut, which holds more than the stud's proof load: that is
 * what ISO 898-2 and SAE J995 pair them for. Stainless has none, so yield. */
START_TEST(nut_of_each_grade)
{
    static const char *const thread[] = {"M12", "M20", "1/2-13", "1-1/4-7"};
    for (int i = 0; sw_grade_name(i); i++) {
        const char *name = sw_grade_name(i);
        int tried = 0;
        for (int k = 0; k < 4; k++) {
            const sw_thread_out t = sw_thread(thread[k], NULL);
            const sw_grade_out g = sw_grade(name, t.nominal_mm, NULL);
            const int metric = strchr(name, '.') && name[0] != 'g';
            const int stainless = name[0] == 'A' && name[2] == '-';
            if (g.status ||
                (metric || stainless) != (t.system == SW_SYSTEM_METRIC))
                continue;
            sw_strap_in in = slotted(5000);
            SET(in.thread, thread[k]);
            SET(in.grade, name);
            in.slot_width_mm = 1;
            in.strap_width_mm = 90;
            const sw_engage_in engage = open_ends();
            const sw_gives_out n = part(&in, &engage, SW_GIVES_NUT);
            const double stress =
                g.proof_MPa == SW_UNSET ? g.yield_MPa : g.proof_MPa;
            must(n.limit_N > stress * t.stress_area_mm2, "%s %s", name,
                 thread[k]);
            tried++;
        }
        must(tried > 0, "%s", name);
    }
}
END_TEST

/* The stripping room, asked by itself. */
START_TEST(threads)
{
    const sw_strap_in in = slotted(12000);
    sw_engage_in engage = open_ends();
    for (int i = 0; i < 2; i++) {
        sw_strip_in q;
        sw_error err;
        sw_strip_defaults(&q);
        SET(q.thread, "M12");
        q.preload_N = 12000;
        if (i) {
            SET(q.material, "6061-T6");
            SET(engage.material, "6061-T6");
            q.engaged_length_mm = engage.engaged_length_mm = 9;
            q.stud_tensile_MPa = engage.stud_tensile_MPa = 1040;
        }
        const sw_strip_out s = sw_strip(&q, &err);
        check_no_error("strip", s.status, &err);
        const sw_gives_out stud = part(&in, &engage, SW_GIVES_STUD_THREAD);
        const sw_gives_out hole = part(&in, &engage, SW_GIVES_TAPPED_THREAD);
        near(stud.limit_N, s.stud_strip_N, 0, 0);
        near(hole.limit_N, s.tapped_strip_N, 0, 0);
        near(stud.margin, s.stud_strip_margin, 0, 1e-14);
        near(hole.margin, s.tapped_strip_margin, 0, 1e-14);
        near(hole.preload_at_limit_N, hole.limit_N, 0, 0);
    }
}
END_TEST

/* Independent: the ring less the slot, summed in thin strips along the slot. */
static double summed_area(double R, double r, double slot)
{
    enum { FINE = 2000000 };
    double area = 0;
    for (int i = 0; i < FINE; i++) {
        const double y = R * (i + 0.5) / FINE;
        if (y < slot / 2)
            continue;
        const double hole = y < r ? sqrt(r * r - y * y) : 0;
        area += 4 * (sqrt(R * R - y * y) - hole) * R / FINE;
    }
    return area;
}

START_TEST(bearing)
{
    sw_strap_in in = slotted(10000);
    sw_engage_in engage = open_ends();
    engage.pressure_limit_MPa = 500;
    /* M12: face 16.63, washer 13 x 24 x 2.5, hole 13.5 (ISO 4014, 7089, 273);
     * the washer spreads the face to 16.63 + 1.6 * 2.5 = 20.63 */
    static const double slot[] = {0, 5, 13, 14, 18, 20};
    for (size_t i = 0; i < sizeof slot / sizeof slot[0]; i++) {
        in.slot_width_mm = slot[i];
        const double area = summed_area(20.63 / 2, 6.75, slot[i]);
        const sw_gives_out g = part(&in, &engage, SW_GIVES_WASHER_BEARING);
        near(g.load_MPa, 10000 / area, 0, 1e-5);
        near(g.limit_MPa, 500, 0, 0);
        near(g.preload_at_limit_N, 500 * area, 0, 1e-5);
        ck_assert(g.load_N == SW_UNSET && g.limit_N == SW_UNSET);
    }
    in.slot_width_mm = 14;
    in.washer_diameter_mm = 18; /* a small one bears as a whole */
    in.washer_thickness_mm = 5;
    near(part(&in, &engage, SW_GIVES_WASHER_BEARING).load_MPa,
         10000 / summed_area(9, 6.75, 14), 0, 1e-5);
    in.washer_diameter_mm = 0;
    in.washer_thickness_mm = SW_UNSET;
    near(part(&in, &engage, SW_GIVES_WASHER_BEARING).load_MPa,
         10000 / summed_area(16.63 / 2, 6.75, 14), 0, 1e-5);
    in = slotted(10000); /* DIN 6319 type D for M12: 14.2 x 24 */
    in.seat = SW_SEAT_SPHERICAL;
    near(part(&in, &engage, SW_GIVES_WASHER_BEARING).load_MPa,
         10000 / summed_area(12, 7.1, 14), 0, 1e-5);
    in.slot_width_mm = 25;
    sw_error err;
    const sw_gives_out g = sw_strap_weakest(&in, &engage, 0, &err);
    check_refused("wide slot", &err, SW_ERR_CONFLICT, "slot_width_mm");
    check_numbers("wide slot", &g, SW_STRUCT_GIVES_OUT, g.status);
    /* a plain closed form: no slot, a ring */
    near(summed_area(10, 6, 0), acos(-1) * 64, 0, 1e-5);
}
END_TEST

/* VDI 2230 of 1986, St 37: 260 MPa. */
START_TEST(strap_material)
{
    const sw_strap_in in = slotted(10000);
    sw_engage_in engage = open_ends();
    SET(engage.strap_material, "S235");
    near(part(&in, &engage, SW_GIVES_WASHER_BEARING).limit_MPa, 260, 0, 0);
    SET(engage.strap_material, "1040"); /* no edition has it */
    const sw_gives_out g = at_rank("1040", &in, &engage, PARTS - 1);
    ck_assert_int_eq(g.part, SW_GIVES_WASHER_BEARING);
    ck_assert(g.margin == SW_UNSET && g.preload_at_limit_N == SW_UNSET);
    ck_assert(g.load_MPa > 0);
    ck_assert_uint_ne(g.warnings & SW_WARN_STRENGTH_UNKNOWN, 0);
}
END_TEST

/* The strap as a beam on two supports: F a b/(L W), W = (width - slot) t2/6. */
START_TEST(strap_bends)
{
    sw_strap_in in = slotted(10000);
    in.strap_yield_MPa = 300;
    const sw_engage_in engage = open_ends();
    const double stress = 10000.0 * 30 * 60 / 90 / ((32 - 14) * 16.0 * 16 / 6);
    const sw_gives_out g = part(&in, &engage, SW_GIVES_STRAP);
    near(g.load_MPa, stress, 0, 1e-12);
    near(g.margin, 300 / stress, 0, 1e-12);
    near(g.preload_at_limit_N, 10000 * 300 / stress, 0, 1e-11);
    in.strap_yield_MPa = 1e4; /* the stud is torn before */
    ck_assert(part(&in, &engage, SW_GIVES_STRAP).preload_at_limit_N ==
              SW_UNSET);
}
END_TEST

/* A level strap without thread friction: tension on the root and the twist of
 * the pitch alone, worked out here. */
START_TEST(stud_level)
{
    sw_strap_in in = slotted(20000);
    in.mu_thread = 0;
    in.mu_seat = 0.1;
    const sw_engage_in engage = open_ends();
    const double pi = acos(-1), d3 = 12 - 1.226869 * 1.75;
    const double sigma = 20000 / (pi / 4 * d3 * d3);
    const double tau = 16 * 20000 * 1.75 / (2 * pi) / (pi * d3 * d3 * d3);
    const sw_gives_out g = part(&in, &engage, SW_GIVES_STUD);
    near(g.load_MPa, sqrt(sigma * sigma + 3 * tau * tau), 0, 1e-6);
    near(g.limit_MPa, 640, 0, 0);                          /* ISO 898-1 */
    near(g.preload_at_limit_N, 20000 * g.margin, 0, 1e-9); /* linear */
}
END_TEST

static sw_strap_in drawn_strap(randoms *r)
{
    sw_strap_in in;
    sw_strap_defaults(&in);
    static const char *const thread[] = {"M8",     "M12",    "M16", "M20",
                                         "1/2-13", "5/8-11", "M42"};
    SET(in.thread, thread[random_below(r, 7)]);
    in.stud_to_toe_mm = random_between(r, 20, 80);
    in.stud_to_heel_mm = random_between(r, 20, 120);
    in.part_height_mm = random_between(r, 5, 120);
    in.tilt_deg = random_between(r, 0, 1.5);
    in.preload_N = random_between(r, 500, 9000);
    in.nose = SW_NOSE_BALL;
    in.foot = random_below(r, 2) ? SW_FOOT_HELD : SW_FOOT_ROCKING;
    return in;
}

/* Properties over straps drawn by a seed: each part once; margins ascend and
 * unknown ones come last; linear parts have margin 1/F; at its limit a part has
 * the margin 1. */
START_TEST(drawn)
{
    randoms r = {20261125};
    int limits = 0, unknown = 0;
    for (int n = 0; n < 60; n++) {
        sw_strap_in in = drawn_strap(&r);
        const sw_engage_in engage = open_ends();
        if (sw_strap(&in, NULL).status)
            continue;
        int seen = 0;
        double last = 0;
        for (int rank = 0; rank < PARTS; rank++) {
            const sw_gives_out g = at_rank("drawn", &in, &engage, rank);
            must(!(seen >> g.part & 1), "part %d twice", g.part);
            seen |= 1 << g.part;
            if (g.margin == SW_UNSET) {
                unknown++;
                last = INFINITY;
                ck_assert_uint_ne(g.warnings & SW_WARN_STRENGTH_UNKNOWN, 0);
                continue;
            }
            must(g.margin >= last, "%s: %g after %g", g.how, g.margin, last);
            last = g.margin;
            must(!(g.warnings & SW_WARN_GIVES) == (g.margin >= 1), "%s", g.how);
            if (g.preload_at_limit_N == SW_UNSET)
                continue;
            sw_strap_in there = in;
            there.preload_N = g.preload_at_limit_N;
            if (sw_strap(&there, NULL).status)
                continue; /* beyond what the strap room answers */
            near_in(g.how, part(&there, &engage, g.part).margin, 1, 0, 1e-9);
            limits++;
            sw_strap_in half = in;
            half.preload_N = in.preload_N / 2;
            if (g.part != SW_GIVES_STUD && !sw_strap(&half, NULL).status)
                near_in(g.how, part(&half, &engage, g.part).margin,
                        2 * g.margin, 0, 1e-12);
        }
        ck_assert_int_eq(seen, (2 << PARTS) - 2);
    }
    ck_assert_int_ge(limits, 200);
    ck_assert_int_ge(unknown, 5);
}
END_TEST

/* A torque, a resolved question and the plain one are the same strap. */
START_TEST(ways_of_asking)
{
    sw_strap_in by_force = slotted(15000);
    const sw_engage_in engage = open_ends();
    sw_strap_in by_torque = by_force, resolved;
    by_torque.preload_N = SW_UNSET;
    by_torque.torque_Nm = good_strap("force", &by_force).torque_Nm;
    resolved = by_torque;
    ck_assert_int_eq(sw_strap_resolve(&resolved, NULL), SW_OK);
    for (int rank = 0; rank < PARTS; rank++) {
        const sw_gives_out a = at_rank("force", &by_force, &engage, rank);
        const sw_gives_out b = at_rank("torque", &by_torque, &engage, rank);
        const sw_gives_out c = at_rank("resolved", &resolved, &engage, rank);
        ck_assert_int_eq(a.part, b.part);
        ck_assert_int_eq(a.part, c.part);
        near(a.margin, b.margin, 0, 1e-12);
        near(b.margin, c.margin, 0, 0);
        near(a.preload_at_limit_N, b.preload_at_limit_N, 0, 1e-9);
        near(b.preload_at_limit_N, c.preload_at_limit_N, 0, 0);
    }
}
END_TEST

START_TEST(refused)
{
    sw_strap_in in = slotted(10000);
    sw_engage_in engage = open_ends();
    sw_error err;
    sw_gives_out g = sw_strap_weakest(&in, &engage, PARTS, &err);
    check_refused("past the end", &err, SW_ERR_RANGE, "rank");
    check_numbers("past the end", &g, SW_STRUCT_GIVES_OUT, g.status);
    g = sw_strap_weakest(&in, &engage, -1, &err);
    check_refused("before it", &err, SW_ERR_RANGE, "rank");
    g = sw_strap_weakest(NULL, &engage, 0, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "in");
    g = sw_strap_weakest(&in, NULL, 0, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "engage");
    check_numbers("NULL", &g, SW_STRUCT_GIVES_OUT, g.status);
    sw_assumption a = sw_strap_weakest_assumed(NULL, &engage, 0, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "in");
    a = sw_strap_weakest_assumed(&in, NULL, 0, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "engage");
    ck_assert_int_eq(a.status, SW_ERR_NULL);
    SET(engage.strap_material, "wood");
    g = sw_strap_weakest(&in, &engage, 0, &err);
    check_refused("wood", &err, SW_ERR_UNKNOWN, "strap_material");
    engage = open_ends();
    SET(engage.nut_class, "8.8");
    g = sw_strap_weakest(&in, &engage, 0, &err);
    check_refused("class", &err, SW_ERR_UNKNOWN, "nut_class");
    engage = open_ends();
    in.preload_N = NAN;
    g = sw_strap_weakest(&in, &engage, 0, &err);
    check_refused("strap", &err, SW_ERR_NAN, "preload_N");
    in = slotted(10000);
    SET(in.thread, "M42");
    SET(engage.nut_class, "8"); /* given, and not made */
    g = sw_strap_weakest(&in, &engage, 0, &err);
    check_refused("M42", &err, SW_ERR_RANGE, "nut_class");
}
END_TEST

int main(void)
{
    return RUN_TESTS("weakest", nut, nut_of_each_grade, threads, bearing,
                     strap_material, strap_bends, stud_level, drawn,
                     ways_of_asking, refused);
}
