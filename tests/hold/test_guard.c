/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Guard: whatever GLPK does in there, the process goes on, nothing is printed
 * and the caller's own GLPK is as it was.
 */
#include "../common.h"

#include "hold/guard.h"

#include <glpk.h>
#include <stdlib.h>
#include <threads.h>
#include <unistd.h>

static int misuse(sw__guard *g, void *with)
{
    (void)g;
    (void)with;
    glp_prob *lp = glp_create_prob();
    glp_set_obj_coef(lp, 99, 1); /* no such column */
    return SW_OK;
}

static int greedy(sw__guard *g, void *with)
{
    (void)g;
    (void)with;
    glp_mem_limit(1);
    glp_prob *lp = glp_create_prob();
    glp_add_cols(lp, 5000000);
    return SW_OK;
}

static int talk(sw__guard *g, void *with)
{
    (void)g;
    (void)with;
    glp_prob *lp = glp_create_prob();
    glp_add_rows(lp, 1);
    glp_set_row_bnds(lp, 1, GLP_UP, 0, 1);
    glp_add_cols(lp, 1);
    glp_set_col_bnds(lp, 1, GLP_LO, 0, 0);
    glp_set_obj_dir(lp, GLP_MAX);
    glp_set_obj_coef(lp, 1, 1);
    const int index[] = {0, 1};
    const double value[] = {0, 1};
    glp_set_mat_col(lp, 1, 1, index, value);
    glp_simplex(lp, NULL); /* says what it does */
    glp_printf("something\n");
    *(double *)with = glp_get_obj_val(lp);
    return SW_OK;
}

static int said; /* by the caller's own hook */

static int listen(void *info, const char *text)
{
    (void)info;
    (void)text;
    said++;
    return 1;
}

static void never(void *info)
{
    (void)info;
    ck_abort_msg("the caller's error hook was called");
}

START_TEST(no_abort)
{
    sw_error err;
    glp_term_hook(listen, NULL);
    glp_error_hook(never, NULL);
    glp_prob *mine = glp_create_prob();
    glp_add_cols(mine, 3);
    int status = sw__guarded(misuse, NULL, NULL, NULL, &err);
    ck_assert_int_eq(status, SW_ERR_NONE);
    check_refused("misuse", &err, SW_ERR_NONE, "fixture");
    status = sw__guarded(greedy, NULL, NULL, NULL, &err);
    ck_assert_int_eq(status, SW_ERR_MEMORY);
    check_refused("memory", &err, SW_ERR_MEMORY, "memory");
    double value = 0;
    ck_assert_int_eq(sw__guarded(talk, &value, NULL, NULL, &err), SW_OK);
    near(value, 1, 1e-12, 0);
    ck_assert_int_eq(said, 0);
    ck_assert_int_eq(glp_get_num_cols(mine), 3);
    ck_assert_int_eq(glp_at_error(), 0);
    glp_printf("mine\n");
    ck_assert_int_eq(said, 1); /* my hook is still there */
    glp_delete_prob(mine);
    glp_free_env();
}
END_TEST

/* What GLPK prints goes to standard output: into a file here. */
START_TEST(silent)
{
    FILE *file = tmpfile();
    ck_assert_ptr_nonnull(file);
    fflush(stdout);
    fflush(stderr);
    const int out = dup(1), other = dup(2);
    dup2(fileno(file), 1);
    dup2(fileno(file), 2);
    double value = 0;
    const int a = sw__guarded(misuse, NULL, NULL, NULL, NULL);
    const int b = sw__guarded(greedy, NULL, NULL, NULL, NULL);
    const int c = sw__guarded(talk, &value, NULL, NULL, NULL);
    fflush(stdout);
    fflush(stderr);
    dup2(out, 1);
    dup2(other, 2);
    close(out);
    close(other);
    fseek(file, 0, SEEK_END);
    ck_assert_int_eq((int)ftell(file), 0);
    fclose(file);
    ck_assert(a && b && !c);
}
END_TEST

static int ask_until_stopped(sw__guard *g, void *with)
{
    int *asked = with;
    while (!sw__guard_tell(g, 0.5) && *asked < 2000)
        ++*asked, thrd_sleep(&(struct timespec){0, 1000000}, NULL);
    return *asked < 2000 ? SW_ERR_STOPPED : SW_OK;
}

static int second_time(double done, void *with)
{
    int *times = with;
    ck_assert(done >= 0 && done <= 1);
    return ++*times >= 2;
}

static int at_once(double done, void *with)
{
    (void)with;
    return done == 0;
}

START_TEST(stopped)
{
    sw_error err;
    int asked = 0, times = 0;
    int status =
        sw__guarded(ask_until_stopped, &asked, second_time, &times, &err);
    ck_assert_int_eq(status, SW_ERR_STOPPED);
    check_refused("stopped", &err, SW_ERR_STOPPED, "progress");
    ck_assert_int_eq(times, 2);
    asked = 0;
    status = sw__guarded(ask_until_stopped, &asked, at_once, NULL, &err);
    ck_assert_int_eq(status, SW_ERR_STOPPED);
    ck_assert_int_eq(asked, 0);
}
END_TEST

int main(void) { return RUN_TESTS("guard", no_abort, silent, stopped); }
