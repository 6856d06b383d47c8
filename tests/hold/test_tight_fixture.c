/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tight against the whole fixture: what the short way calls enough is enough
 * for the linear programs of the long way, which know nothing of it. Straps on
 * a circle, a support under each, the cut anywhere on a circle inside.
 */
#include "../common.h"
#include "../random.h"

static const double pi = 3.14159265358979323846;

typedef struct {
    int straps;
    double r, offset, height; /* mm */
    sw_tight_in in;
    sw_strap_in strap;
} setup;

static setup draw(randoms *chance)
{
    static const int straps[] = {3, 4, 4, 5, 6, 8};
    setup s;
    s.straps = straps[random_below(chance, 6)];
    s.r = random_between(chance, 60, 200);
    s.offset = random_between(chance, 0, 1.4 * s.r);
    s.height = random_between(chance, 0, 1.5 * s.r);
    sw_tight_defaults(&s.in);
    sw_strap_defaults(&s.strap);
    SET(s.strap.thread, "M12");
    s.strap.stud_to_toe_mm = 30;
    s.strap.stud_to_heel_mm = 60;
    s.strap.stud_length_mm = 80;
    s.strap.tilt_deg = random_between(chance, -0.3, 1);
    s.strap.nose = SW_NOSE_ROUND;
    s.strap.seat = SW_SEAT_SPHERICAL;
    s.strap.restraint =
        random_below(chance, 2) ? SW_RESTRAINT_HELD : SW_RESTRAINT_SHARED;
    s.in.straps = s.straps;
    s.in.cut_N = random_between(chance, 100, 800);
    s.in.lift_N = s.in.cut_N * random_between(chance, 0, 0.8);
    s.in.part_length_mm = 2 * s.r;
    s.in.part_width_mm = s.r * random_between(chance, 1, 2);
    s.in.cut_height_mm = s.height;
    s.in.cut_offset_mm = s.offset;
    s.in.strap_radius_mm = s.r;
    s.in.weight_N = random_between(chance, 0, 80);
    s.in.friction = random_between(chance, 0.15, 0.4);
    s.in.required_margin = random_between(chance, 1.5, 3);
    return s;
}

static sw_fixture *build(const setup *s, const sw_strap_out *one)
{
    sw_fixture *f = sw_fixture_new(NULL);
    for (int i = 0; i < s->straps; i++) {
        const double turn = 2 * pi * (i + 0.5) / s->straps;
        sw_support_in under;
        sw_clamp_in clamp;
        sw_support_defaults(&under);
        sw_clamp_defaults(&clamp);
        under.x_mm = clamp.x_mm = s->r * cos(turn);
        under.y_mm = clamp.y_mm = s->r * sin(turn);
        under.friction = s->in.friction;
        clamp.z_mm = s->height; /* the toe stands at the height of the cut */
        clamp.force_N = one->toe_force_low_N;
        clamp.toward_deg = turn * 180 / pi;
        clamp.pull_low_N = one->side_pull_low_N;
        clamp.pull_high_N = one->side_pull_high_N;
        clamp.drag_low_N = 0;
        clamp.drag_high_N = fabs(one->drag_N);
        ck_assert_int_eq(sw_fixture_add_support(f, &under, NULL), 0);
        ck_assert_int_eq(sw_fixture_add_clamp(f, &clamp, NULL), 0);
    }
    sw_weight_in w;
    sw_weight_defaults(&w);
    w.weight_N = s->in.weight_N;
    w.x_mm = w.y_mm = 0;
    ck_assert_int_eq(sw_fixture_set_weight(f, &w, NULL), 0);
    enum { WAYS = 12 };
    for (int i = 0; i < 2 * WAYS; i++) {
        const double turn = 2 * pi * (i / 2) / WAYS;
        const double V = i % 2 ? s->in.cut_N : -s->in.cut_N;
        sw_load_in load;
        sw_load_defaults(&load);
        load.x_mm = s->offset * cos(turn);
        load.y_mm = s->offset * sin(turn);
        load.z_mm = s->height;
        load.force_x_N = -V * sin(turn);
        load.force_y_N = V * cos(turn);
        load.force_z_N = s->in.lift_N;
        ck_assert_int_eq(sw_fixture_add_load(f, &load, NULL), 0);
    }
    return f;
}

START_TEST(enough_is_enough)
{
    randoms chance = {2026};
    sw_spread_in spread;
    sw_spread_defaults(&spread);
    int asked = 0;
    for (int i = 0; i < 300; i++) {
        const setup s = draw(&chance);
        sw_error err;
        const sw_tight_out t = sw_tight(&s.in, &s.strap, &spread, &err);
        check_no_error("tight", t.status, &err);
        if (t.verdict != SW_VERDICT_FITS)
            continue;
        sw_strap_in strap = s.strap;
        strap.preload_N = t.preload_low_N;
        const sw_strap_out one = sw_strap(&strap, &err);
        check_no_error("strap", one.status, &err);
        sw_fixture *f = build(&s, &one);
        sw_hold_in how;
        sw_hold_defaults(&how);
        how.depth = SW_DEPTH_MARGIN;
        sw_hold *h = sw_hold_new(f, &how, NULL, NULL, &err);
        check_no_error("hold", h ? 0 : err.code, &err);
        const sw_hold_out all = sw_hold_total(h, &err);
        /* 32-sided discs lie inside the round ones by half a per cent */
        must(all.margin >= s.in.required_margin * 0.995,
             "%d: %d straps, wanted %g, the fixture has %g", i, s.straps,
             s.in.required_margin, all.margin);
        asked++;
        sw_hold_free(h);
        sw_fixture_free(f);
    }
    ck_assert_int_ge(asked, 100);
}
END_TEST

int main(void) { return RUN_TESTS("tight_fixture", enough_is_enough); }
