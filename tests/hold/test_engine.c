/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Engine: the planar method, the climb and the joint program, which share nothing
 * but the fixture, over random fixtures; the springs below the part.
 */
#include "../common.h"
#include "../random.h"

#include "hold/bed.h"
#include "hold/engine.h"

static sw_fixture *random_fixture(randoms *r, double held, int stops, int high)
{
    sw_fixture *f = sw_fixture_new(NULL);
    const int n = 3 + random_below(r, 6);
    for (int i = 0; i < n; i++) {
        sw_support_in s;
        sw_support_defaults(&s);
        s.x_mm = random_between(r, 0, 300);
        s.y_mm = random_between(r, 0, 200);
        s.friction = random_between(r, 0.05, 0.4);
        s.stiffness_N_per_mm = random_log(r, 3e4, 3e5);
        ck_assert_int_eq(sw_fixture_add_support(f, &s, NULL), 0);
    }
    const int clamps = 2 + random_below(r, 3);
    for (int i = 0; i < clamps; i++) {
        sw_clamp_in c;
        sw_clamp_defaults(&c);
        c.x_mm = random_between(r, 80, 220);
        c.y_mm = random_between(r, 60, 140);
        c.z_mm = high ? random_between(r, 5, 30) : 0;
        c.force_N = random_between(r, 500, 4000);
        c.toward_deg = random_between(r, -180, 180);
        c.pull_low_N = random_between(r, 0, 0.04) * c.force_N;
        c.held_friction = held;
        ck_assert_int_eq(sw_fixture_add_clamp(f, &c, NULL), 0);
    }
    for (int i = 0; i < stops; i++) {
        sw_stop_in s;
        sw_stop_defaults(&s);
        s.x_mm = random_between(r, 0, 300);
        s.y_mm = i % 2 ? -5 : 205;
        s.z_mm = high ? random_between(r, 2, 20) : 0;
        s.push_deg = random_between(r, -180, 180);
        ck_assert_int_eq(sw_fixture_add_stop(f, &s, NULL), 0);
    }
    sw_load_in p;
    sw_load_defaults(&p);
    p.x_mm = random_between(r, 0, 300);
    p.y_mm = random_between(r, 0, 200);
    p.z_mm = random_between(r, 0, 40);
    p.force_x_N = random_between(r, -800, 800);
    p.force_y_N = random_between(r, -800, 800);
    p.force_z_N = random_between(r, -200, 200);
    p.moment_z_Nm = random_between(r, -10, 10);
    ck_assert_int_eq(sw_fixture_add_load(f, &p, NULL), 0);
    return f;
}

/* How often the planar method answered, and the polygon was how far low. */
typedef struct {
    int seen, planar, climbs, bounded;
} tally;

static void alike(const char *what, const sw__held *a, const sw__held *b)
{
    near_in(what, a->value, b->value, 1e-7, 1e-6);
    must(a->goes == b->goes, "%s: goes %d and %d", what, a->goes, b->goes);
    double y = 0;
    for (int i = 0; i < 6; i++)
        y = fmax(y, fabs(b->y[i]));
    if (a->goes == SW_GOES_SLIDE)
        for (int i = 0; i < 6; i++)
            near_in(what, a->y[i], b->y[i], 2e-3 * y, 2e-3);
}

static void compare(sw__engine *e, const char *what, tally *t)
{
    const sw__corner corner = {{0, 0}};
    sw__rested r;
    sw__held rest, plane, climb, round, sides;
    sw__held_at_rest(e, &corner, &rest);
    if (!sw__rest_at(e, &corner, &r) || rest.value < 1.02)
        return;
    t->seen++;
    sw__held_under(e, SW__JOINT, &r, e->rig->cut[0], 0, &plane);
    e->no_planar = 1;
    sw__held_under(e, SW__JOINT, &r, e->rig->cut[0], 0, &climb);
    e->no_climb = 1;
    sw__held_under(e, SW__JOINT, &r, e->rig->cut[0], 0, &sides);
    sw__held_under(e, SW__JOINT, &r, e->rig->cut[0], 1, &round);
    e->no_planar = e->no_climb = 0;
    /* side pulls near the friction: a polygon's error is on what is left */
    const double most = 0.005 * (rest.value < 4 ? 6 : 1.4);
    must(sides.value <= round.value * (1 + 1e-7), "%s: polygon above disc",
         what);
    must(sides.value >= round.value * (1 - most), "%s: polygon %g, disc %g",
         what, sides.value, round.value);
    t->bounded += round.value < e->top;
    if (plane.round && e->planar[SW__JOINT])
        alike(what, &plane, &round);
    t->planar += plane.round && e->planar[SW__JOINT];
    if (climb.round)
        alike(what, &climb, &round);
    t->climbs += climb.round;
}

typedef struct {
    uint64_t seed;
    tally count;
} run;

static int inside(sw__guard *g, void *with)
{
    (void)g;
    run *q = with;
    randoms r = {q->seed};
    sw_hold_in in;
    sw_hold_defaults(&in);
    must(!sw_hold_resolve(&in, NULL), "resolve");
    for (int i = 0; i < 400; i++) {
        char what[40];
        snprintf(what, sizeof what, "fixture %d", i);
        sw_fixture *f = random_fixture(&r, i % 3 ? 0 : 0.1, i % 4, i % 2);
        sw__rig rig;
        sw__engine e;
        must(!sw__rig_make(f, &rig, NULL) &&
                 !sw__engine_make(&e, &rig, &in, 1, NULL),
             "%s", what);
        compare(&e, what, &q->count);
        sw__engine_renew(&e);
        sw__engine_drop(&e);
        sw__rig_drop(&rig);
        sw_fixture_free(f);
    }
    return SW_OK;
}

START_TEST(two_methods)
{
    run q = {.seed = 7};
    sw_error err = {0};
    check_no_error("run", sw__guarded(inside, &q, NULL, NULL, &err), &err);
    /* enough of each to say something */
    ck_assert_int_ge(q.count.seen, 100);
    ck_assert_int_ge(q.count.planar, 80);
    ck_assert_int_ge(q.count.climbs, 150);
    ck_assert_int_ge(q.count.bounded, 150);
}
END_TEST

/* Three supports: barycentric. (3 kN at (100, 60) on (0,0) (200,0) (100,150):
 * 900, 900, 1200; 1 kN at (150, 30): 150, 650, 200; at (120, -10) none.) */
START_TEST(three_supports)
{
    static const struct {
        double x, y, P, N[3];
        int balances;
    } row[] = {{100, 60, 3000, {900, 900, 1200}, 1},
               {150, 30, 1000, {150, 650, 200}, 1},
               {100, 0, 1000, {500, 500, 0}, 1},
               {120, -10, 1000, {0, 0, 0}, 0}};
    for (size_t k = 0; k < sizeof row / sizeof row[0]; k++) {
        sw__rig rig = {.pads = 3};
        static const double x[] = {0, 200, 100}, y[] = {0, 0, 150};
        for (int i = 0; i < 3; i++) {
            rig.pad[i].x = x[i] / 200;
            rig.pad[i].y = y[i] / 200;
            rig.pad[i].k = 1 + i; /* no matter */
        }
        const sw__touch at = {.x = row[k].x / 200, .y = row[k].y / 200};
        double w[6], N[3];
        sw__push(&at, 0, 0, -row[k].P, w);
        const int balances = sw__bed(&rig, w, N);
        ck_assert_int_eq(balances, row[k].balances);
        for (int i = 0; i < 3 && balances; i++)
            near(N[i], row[k].N[i], 1e-6 * row[k].P, 0);
    }
}
END_TEST

/* Equation (1) of bed.c holds, and idle ones are open, over random beds. */
START_TEST(bed_balances)
{
    randoms r = {11};
    int idle = 0;
    for (int k = 0; k < 2000; k++) {
        sw__rig rig = {.pads = 1 + random_below(&r, 12)};
        for (int i = 0; i < rig.pads; i++) {
            rig.pad[i].x = random_between(&r, -1, 1);
            rig.pad[i].y = random_between(&r, -1, 1);
            rig.pad[i].k = random_log(&r, 0.1, 10);
        }
        /* a force at a mixture of the supports balances */
        double w[6] = {0}, N[SW__MOST], sum[3] = {0};
        for (int i = 0; i < rig.pads; i++) {
            double one[6];
            const double share = random_below(&r, 3) ? 0 : 1;
            sw__push(&rig.pad[i], 0, 0, -(share + 0.01), one);
            for (int j = 0; j < 6; j++)
                w[j] += one[j];
        }
        must(sw__bed(&rig, w, N), "bed %d does not balance", k);
        for (int i = 0; i < rig.pads; i++) {
            must(N[i] >= 0, "bed %d pulls", k);
            idle += N[i] == 0;
            sum[0] += N[i];
            sum[1] += N[i] * rig.pad[i].y;
            sum[2] -= N[i] * rig.pad[i].x;
        }
        for (int j = 0; j < 3; j++)
            near(sum[j], -w[2 + j], 1e-8 * fabs(w[2]), 0);
    }
    ck_assert_int_ge(idle, 100);
}
END_TEST

int main(void)
{
    return RUN_TESTS("engine", two_methods, three_supports, bed_balances);
}
