/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Memory: every allocation of the library fails once, and nothing worse comes
 * of it than an error. The library's sources are compiled into this program
 * with its allocations turned into those below.
 */
#include "../common.h"

void *failing_malloc(size_t size);
void *failing_calloc(size_t count, size_t size);
void *failing_realloc(void *old, size_t size);

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

int main(void)
{
    return RUN_TESTS("memory", pairs, calibrate, plot, strap_drawings);
}
