/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the tests of strap spread and strap window start from.
 */
#ifndef TESTS_STRAP_SPREAD_QUESTION_H
#define TESTS_STRAP_SPREAD_QUESTION_H

#include "../random.h"
#include "strap_question.h"

static inline sw_spread_in spread_of(double scatter_pct, int vary)
{
    sw_spread_in s;
    sw_spread_defaults(&s);
    s.scatter_pct = scatter_pct;
    s.vary = vary;
    return s;
}

static inline sw_strap_in random_strap(randoms *r)
{
    static const char *const thread[] = {"M8", "M10", "M12", "M16", "1/2-13"};
    sw_strap_in in;
    sw_strap_defaults(&in);
    SET(in.thread, thread[random_below(r, 5)]);
    const sw_thread_out t = sw_thread(in.thread, NULL);
    in.preload_N = t.stress_area_mm2 * random_log(r, 10, 250);
    in.part_height_mm = random_between(r, 20, 80);
    in.tilt_deg = random_between(r, -4, 5);
    if (in.part_height_mm < 30)
        in.tilt_deg = fabs(in.tilt_deg);
    in.stud_to_toe_mm = random_between(r, 25, 70);
    in.stud_to_heel_mm = random_between(r, 25, 100);
    in.seat = 1 + random_below(r, 2);
    in.nose = 1 + random_below(r, 3);
    in.heel = 1 + random_below(r, 3);
    in.strap = 1 + random_below(r, 3);
    in.foot = random_below(r, 3);
    if (in.nose == SW_NOSE_FLAT)
        in.toe_land_mm = random_below(r, 2) ? random_between(r, 0, 12) : 0;
    if (in.heel != SW_HEEL_SCREW)
        in.heel_land_mm = random_below(r, 2) ? random_between(r, 0, 12) : 0;
    in.mu_toe = random_between(r, 0.05, 0.3);
    if (in.heel != SW_HEEL_SERRATED)
        in.mu_heel = random_between(r, 0.05, 0.3);
    return in;
}

/* The next strap that has an answer. */
static inline sw_strap_in next_strap(randoms *r, sw_strap_out *nominal)
{
    for (;;) {
        const sw_strap_in in = random_strap(r);
        *nominal = sw_strap(&in, NULL);
        if (!nominal->status)
            return in;
    }
}

typedef void change(sw_strap_in *in, sw_spread_in *s);

static inline void still(sw_strap_in *in, sw_spread_in *s)
{
    (void)s;
    in->nut = SW_NUT_STILL;
}
static inline void no_toe(sw_strap_in *in, sw_spread_in *s)
{
    (void)s;
    in->stud_to_toe_mm = SW_UNSET;
}
static inline void nan_tilt(sw_strap_in *in, sw_spread_in *s)
{
    (void)s;
    in->tilt_deg = NAN;
}
static inline void nan_scatter(sw_strap_in *in, sw_spread_in *s)
{
    (void)in;
    s->scatter_pct = NAN;
}
static inline void nan_height(sw_strap_in *in, sw_spread_in *s)
{
    (void)in;
    s->height_scatter_mm = NAN;
}
static inline void few_trials(sw_strap_in *in, sw_spread_in *s)
{
    (void)in;
    s->trials = 99;
}
static inline void part_trial(sw_strap_in *in, sw_spread_in *s)
{
    (void)in;
    s->trials = 100.5;
}
static inline void two_ways(sw_strap_in *in, sw_spread_in *s)
{
    (void)in;
    s->factor_scatter_pct = 10;
}
static inline void odd_thread(sw_strap_in *in, sw_spread_in *s)
{
    (void)s;
    SET(in->thread, "M13");
}
static inline void changed_strap(sw_strap_in *in, sw_spread_in *s)
{
    (void)s;
    ck_assert_int_eq(sw_strap_resolve(in, NULL), SW_OK);
    in->tilt_deg = 1;
}
static inline void changed_spread(sw_strap_in *in, sw_spread_in *s)
{
    sw_torque_in nut;
    sw_torque_defaults(&nut);
    SET(nut.thread, in->thread);
    nut.preload_N = in->preload_N;
    ck_assert_int_eq(sw_spread_resolve(s, &nut, NULL), SW_OK);
    s->seed = 3;
}

/* Of both questions, by trials and by window alike. */
static const struct {
    const char *what;
    change *make;
    int code;
    const char *field;
} bad[] = {
    {"still nut", still, SW_ERR_CONFLICT, "nut"},
    {"no toe", no_toe, SW_ERR_MISSING, "stud_to_toe_mm"},
    {"NaN tilt", nan_tilt, SW_ERR_NAN, "tilt_deg"},
    {"NaN scatter", nan_scatter, SW_ERR_NAN, "scatter_pct"},
    {"NaN height", nan_height, SW_ERR_NAN, "height_scatter_mm"},
    {"few trials", few_trials, SW_ERR_RANGE, "trials"},
    {"part of a trial", part_trial, SW_ERR_SYNTAX, "trials"},
    {"two ways", two_ways, SW_ERR_CONFLICT, "scatter_pct"},
    {"unknown thread", odd_thread, SW_ERR_UNKNOWN, "thread"},
    {"changed strap", changed_strap, SW_ERR_CONFLICT, "seal"},
    {"changed spread", changed_spread, SW_ERR_CONFLICT, "seal"},
};

#endif
