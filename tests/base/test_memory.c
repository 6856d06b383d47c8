/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Memory: every allocation of the library fails once, and nothing worse comes
 * of it than an error. The library's sources are compiled into this program
 * with its allocations turned into those below.
 */
#include "../common.h"
#include "../hold/fixture_lines.h"

#include <glpk.h>
#include <pthread.h>

void *failing_malloc(size_t size);
void *failing_calloc(size_t count, size_t size);
void *failing_realloc(void *old, size_t size);
int failing_pthread_create(pthread_t *thread, const pthread_attr_t *how,
                           void *(*run)(void *), void *with);
int failing_glp_simplex(glp_prob *lp, const glp_smcp *how);

static int left = -1; /* allocations that succeed still; negative: all */

static int fails(void) { return left >= 0 && left-- == 0; }

void *failing_malloc(size_t size) { return fails() ? NULL : malloc(size); }

void *failing_calloc(size_t count, size_t size)
{
    return fails() ? NULL : calloc(count, size);
}

void *failing_realloc(void *old, size_t size)
{
    return fails() ? NULL : realloc(old, size);
}

int failing_pthread_create(pthread_t *thread, const pthread_attr_t *how,
                           void *(*run)(void *), void *with)
{
    return fails() ? 11 : pthread_create(thread, how, run, with);
}

/* GLPK runs out of memory in the midst of its work, and would abort. */
int failing_glp_simplex(glp_prob *lp, const glp_smcp *how)
{
    if (fails()) {
        glp_mem_limit(1);
        glp_add_cols(glp_create_prob(), 10000000);
    }
    return glp_simplex(lp, how);
}

static void check_memory(const char *what, const sw_error *err, int status)
{
    ck_assert_int_eq(status, SW_ERR_MEMORY);
    check_refused(what, err, SW_ERR_MEMORY, "memory");
}

static const char text[] = "torque [N.m],force [kN],seat torque [N.m]\n"
                           "20,8.3,9\n40,16.9,19\n60,24.1,30\n";

START_TEST(pairs)
{
    sw_error err;
    left = 0;
    ck_assert_ptr_null(sw_pairs_new(&err));
    check_memory("new", &err, err.code);
    left = 0;
    ck_assert_ptr_null(sw_pairs_new(NULL));
    left = -1;
    sw_pairs *p = sw_pairs_new(&err);
    left = 0;
    int status = sw_pairs_add(p, 20, 8000, SW_UNSET, SW_UNSET, &err);
    check_memory("add", &err, status);
    ck_assert_int_eq(sw_pairs_count(p), 0);
    left = -1;
    status = sw_pairs_add(p, 20, 8000, SW_UNSET, SW_UNSET, &err);
    check_no_error("add", status, &err);
    left = 0;
    status = sw_pairs_read(p, text, strlen(text), "p.csv", &err);
    check_memory("read", &err, status);
    ck_assert_int_eq(sw_pairs_count(p), 1); /* as it was */
    left = -1;
    sw_pairs_free(p);
}
END_TEST

START_TEST(calibrate)
{
    sw_error err;
    sw_pairs *p = sw_pairs_new(&err);
    ck_assert_int_eq(sw_pairs_read(p, text, strlen(text), NULL, &err), 0);
    sw_calibrate_in in;
    sw_calibrate_defaults(&in);
    SET(in.thread, "M12");
    int n = 0;
    for (;; n++) {
        left = n;
        const sw_calibrate_out out = sw_calibrate(&in, p, &err);
        if (!out.status)
            break;
        check_memory("calibrate", &err, out.status);
        check_numbers("calibrate", &out, SW_STRUCT_CALIBRATE_OUT, out.status);
    }
    ck_assert_int_ge(n, 2);
    left = 0;
    const sw_pair_out pair = sw_pairs_at(&in, p, 0, &err);
    check_memory("at", &err, pair.status);
    check_numbers("at", &pair, SW_STRUCT_PAIR_OUT, pair.status);
    left = -1;
    sw_pairs_free(p);
}
END_TEST

START_TEST(plot)
{
    sw_error err;
    sw_pairs *p = sw_pairs_new(&err);
    ck_assert_int_eq(sw_pairs_read(p, text, strlen(text), NULL, &err), 0);
    sw_calibrate_in in;
    sw_calibrate_defaults(&in);
    SET(in.thread, "M12");
    int n = 0;
    sw_drawing *d = NULL;
    for (; !d; n++) {
        left = n;
        d = sw_calibrate_plot(&in, p, &err);
        if (!d)
            check_memory("plot", &err, err.code);
    }
    ck_assert_int_ge(n, 5);
    left = -1;
    sw_drawing_free(d);
    sw_pairs_free(p);
}
END_TEST

/* A drawing of one strap, with one allocation after the other failing. */
static void drawn(const char *what,
                  sw_drawing *(*draw)(const sw_strap_in *, sw_error *))
{
    sw_error err;
    sw_strap_in in;
    sw_strap_defaults(&in);
    SET(in.thread, "M12");
    in.torque_Nm = 20;
    in.stud_to_toe_mm = 30;
    in.stud_to_heel_mm = 60;
    in.part_height_mm = 40;
    in.heel_height_mm = 42;
    int n = 0;
    sw_drawing *d = NULL;
    for (; !d; n++) {
        left = n;
        d = draw(&in, &err);
        if (!d)
            check_memory(what, &err, err.code);
    }
    ck_assert_int_ge(n, 3);
    left = -1;
    sw_drawing_free(d);
}

static sw_drawing *views_of(const sw_strap_in *in, sw_error *err)
{
    return sw_strap_drawing(in, NULL, err);
}

static sw_drawing *plot_of(const sw_strap_in *in, sw_error *err)
{
    return sw_tilt_plot(in, 0, 0, 0, err);
}

START_TEST(strap_drawings)
{
    drawn("strap drawing", views_of);
    drawn("tilt plot", plot_of);
}
END_TEST

static const char fixture_lines[] =
    "support 0 0 0 0.15;support 200 0 0 0.15;support 200 120 0 0.15;"
    "support 0 120 0 0.15;clamp 40 60 20 2500 0 0 40 0 30;"
    "clamp 160 60 20 2500 0 0 0 0 0 0.1;stop 205 60 8 180;"
    "weight 40 100 60 12;load 100 110 25 500 300 100 0 0 5;"
    "load 20 110 25 -200 300 100 0 0 5";

START_TEST(hold)
{
    sw_error err;
    sw_hold_in in;
    sw_hold_defaults(&in);
    left = -1;
    sw_fixture *f = sw_fixture_new(&err);
    ck_assert_int_eq(lines_add(f, &in, &as_it_is, fixture_lines, &err), 0);
    int n = 0;
    sw_hold *h = NULL;
    for (; !h; n++) {
        left = n;
        h = sw_hold_new(f, &in, NULL, NULL, &err);
        if (!h)
            check_memory("hold", &err, err.code);
    }
    ck_assert_int_ge(n, 40); /* memory, the thread, and every program */
    left = -1;
    ck_assert(sw_hold_total(h, NULL).margin > 0.5);
    sw_hold_free(h);
    sw_fixture_free(f);
}
END_TEST

START_TEST(fixture)
{
    sw_error err;
    sw_support_in s;
    sw_support_defaults(&s);
    s.x_mm = s.y_mm = 0;
    left = 0;
    ck_assert_ptr_null(sw_fixture_new(&err));
    check_memory("new", &err, err.code);
    left = -1;
    sw_fixture *f = sw_fixture_new(&err);
    left = 0;
    const int status = sw_fixture_add_support(f, &s, &err);
    check_memory("add", &err, status);
    left = -1;
    ck_assert_int_eq(sw_fixture_count(f, SW_PART_SUPPORT), 0);
    sw_fixture_free(f);
}
END_TEST

static const char a_job[] =
    "strapwise: 1\n"
    "part: {material: 6061-T6, size: [90 mm, 60 mm], thickness: 9 mm}\n"
    "supports:\n  - place: [10 mm, 10 mm]\n  - place: [80 mm, 10 mm]\n"
    "  - place: [45 mm, 50 mm]\n"
    "stops:\n  - {place: [0 mm, 20 mm], push: +x}\n"
    "clamps:\n  - {kind: strap, place: [45 mm, 30 mm], toward stud: +y, "
    "thread: M8, torque: 5 N.m, stud to toe: 20 mm, stud to heel: 40 mm, heel "
    "height: 9 mm}\n"
    "operations:\n  - cut: {kind: force, force x: 10 N}\n"
    "    path: {lines: [[[20 mm, 20 mm], [70 mm, 20 mm]]]}\n";

START_TEST(job)
{
    sw_error err;
    sw_job *j = NULL;
    int n = 0;
    for (; !j; n++) {
        left = n;
        j = sw_job_read(a_job, strlen(a_job), "j.yaml", &err);
        left = -1;
        if (!j)
            check_memory("job", &err, err.code);
    }
    ck_assert_int_ge(n, 8); /* tree, letters, job, defaults, points */
    sw_fixture *f = NULL;
    for (n = 0; !f; n++) {
        left = n;
        f = sw_job_fixture(j, 0, &err);
        left = -1;
        if (!f)
            check_memory("fixture", &err, err.code);
    }
    ck_assert_int_ge(n, 5);
    sw_hold *h = sw_hold_new(f, NULL, NULL, NULL, &err);
    must(h || err.code == SW_ERR_NULL, "%s", err.message);
    if (!h) { /* it wants its question */
        sw_hold_in in;
        ck_assert_int_eq(sw_job_hold_in(j, 0, &in, &err), 0);
        h = sw_hold_new(f, &in, NULL, NULL, &err);
    }
    sw_drawing *d = NULL;
    for (n = 0; !d; n++) {
        left = n;
        d = sw_hold_map(j, 0, h, NULL, &err);
        left = -1;
        if (!d)
            check_memory("map", &err, err.code);
    }
    ck_assert_int_ge(n, 5);
    sw_drawing_free(d);
    sw_hold_free(h);
    sw_fixture_free(f);
    sw_job_free(j);
}
END_TEST

int main(void)
{
    return RUN_TESTS("memory", pairs, calibrate, plot, strap_drawings, fixture,
                     hold, job);
}
