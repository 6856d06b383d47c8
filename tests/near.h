/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Comparing doubles, and running a list of tests.
 *
 * near() holds when got and want differ by no more than the absolute or the
 * relative tolerance. Equal values hold at tolerance 0, infinities included,
 * and a NaN is near a NaN and nothing else: Check's own comparison is strict,
 * so that equal values fail at tolerance 0 there.
 */
#ifndef TESTS_NEAR_H
#define TESTS_NEAR_H

#include <check.h>
#include <locale.h>
#include <math.h>
#include <stdlib.h>

static inline int near_holds(double got, double want, double most_abs,
                             double most_rel)
{
    if (isnan(got) || isnan(want))
        return isnan(got) && isnan(want);
    if (got == want)
        return 1;
    if (isinf(got) || isinf(want))
        return 0;
    const double off = fabs(got - want);
    return off <= most_abs || off <= most_rel * fabs(want);
}

/* Check reports every assertion that it passes through a pipe; this one only
 * speaks when it fails, so that it can stand in long loops. */
#define must(holds, ...)                                                       \
    do {                                                                       \
        if (!(holds))                                                          \
            ck_abort_msg(__VA_ARGS__);                                         \
    } while (0)

/* near() with a text that says which case it was, such as the id of a row. */
#define near_in(what, got, want, most_abs, most_rel)                           \
    do {                                                                       \
        const double near_g = (got), near_w = (want);                          \
        must(near_holds(near_g, near_w, most_abs, most_rel),                   \
             "%s: %s is %.17g, want %.17g: off by %.17g, relative %.17g",      \
             what, #got, near_g, near_w, near_g - near_w,                      \
             (near_g - near_w) / near_w);                                      \
    } while (0)

#define near(got, want, most_abs, most_rel)                                    \
    near_in("value", got, want, most_abs, most_rel)

/* The whole of main(): the locale of the environment, so that a suite can be
 * run again under another one, and the tests one by one. */
static inline int run_tests(const char *name, const TTest *const *tests)
{
    setlocale(LC_ALL, "");
    Suite *suite = suite_create(name);
    for (; *tests; tests++) {
        TCase *one = tcase_create((*tests)->name);
        tcase_add_test(one, *tests);
        suite_add_tcase(suite, one);
    }
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed ? EXIT_FAILURE : EXIT_SUCCESS;
}

#define RUN_TESTS(name, ...)                                                   \
    run_tests(name, (const TTest *const[]){__VA_ARGS__, NULL})

#endif
