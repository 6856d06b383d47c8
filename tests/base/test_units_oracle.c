/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every unit factor against GNU units, which keeps its own definitions.
 * Skipped (status 77) where that program is missing.
 *
 * GNU units knows inHg and mmHg with a density of mercury of its own: it gives
 * 3386.3886 Pa and 133.32239 Pa where NIST SP 811 prints 3386.389 and
 * 133.3224; hence the wider tolerance there.
 */
#define _POSIX_C_SOURCE 200809L

#include "../common.h"
#include "../near.h"
#include "units_list.h"

/* Value of `1 what` in `unit` as GNU units sees it; NaN where it does not. */
static double ask_units(const char *what, const char *unit)
{
    char command[256], answer[128] = "";
    snprintf(command, sizeof command,
             "LC_ALL=C units -t -o '%%.17g' '%s' '%s' 2>/dev/null", what, unit);
    FILE *pipe = popen(command, "r");
    if (!pipe)
        return NAN;
    const char *got = fgets(answer, sizeof answer, pipe);
    const int status = pclose(pipe);
    char *end;
    const double value = got ? strtod(answer, &end) : NAN;
    return status == 0 && got && (*end == '\n' || *end == '\0') ? value : NAN;
}

START_TEST(factors)
{
    static const char *const own[SW_KIND_COUNT + 1] = {"",
                                                       "1",
                                                       "millimeter",
                                                       "newton",
                                                       "newton meter",
                                                       "megapascal",
                                                       "degree",
                                                       "millimeter / meter",
                                                       "millimeter / newton",
                                                       "meter / minute",
                                                       "1 / minute",
                                                       "watt",
                                                       "kilogram",
                                                       "millimeter^2",
                                                       "meter"};
    for (size_t i = 0; i < UNITS_LISTED; i++) {
        const units_row *u = &units_listed[i];
        sw_error err;
        const sw_quantity_out q = sw_unit_factor(u->name, u->kind, "x", &err);
        check_no_error(u->name, q.status, &err);
        const double other = ask_units(u->gnu, own[u->kind]);
        must(isfinite(other), "GNU units does not know %s", u->gnu);
        const int mercury = strstr(u->name, "Hg") != NULL;
        near_in(u->name, q.value, other, 0, mercury ? 2e-7 : 1e-14);
    }
}
END_TEST

int main(void)
{
    if (!near_holds(ask_units("inch", "millimeter"), 25.4, 0, 1e-12)) {
        printf("SKIP: GNU units is not installed\n");
        return 77;
    }
    setlocale(LC_ALL, "C"); /* strtod() reads what units wrote */
    Suite *suite = suite_create("units against GNU units");
    TCase *one = tcase_create("factors");
    tcase_add_test(one, factors);
    suite_add_tcase(suite, one);
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_ENV);
    const int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed ? EXIT_FAILURE : EXIT_SUCCESS;
}
