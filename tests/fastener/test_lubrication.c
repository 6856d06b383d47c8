/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lubrication: published nut factors and friction classes, and that a row
 * gives the one or the other.
 */
#include "../common.h"
#include "../near.h"

static sw_lubrication_out good(const char *key)
{
    sw_error err;
    const sw_lubrication_out l = sw_lubrication(key, &err);
    check_no_error(key, l.status, &err);
    check_numbers(key, &l, SW_STRUCT_LUBRICATION_OUT, l.status);
    return l;
}

/* Published: Mechanical Engineering Design 9th ed. (Shigley), table 8-15, and
 * 0.20 where the condition is not stated (section 8-8); VDI 2230-1 (2003),
 * table A5, ranges of the friction classes. */
START_TEST(published)
{
    static const struct {
        const char *key;
        double K;
    } factor[] = {{"dry", 0.30},     {"zinc", 0.20},       {"oiled", 0.18},
                  {"cadmium", 0.16}, {"anti-seize", 0.12}, {"unknown", 0.20}};
    for (size_t i = 0; i < sizeof factor / sizeof factor[0]; i++)
        near_in(factor[i].key, good(factor[i].key).nut_factor, factor[i].K, 0,
                0);
    static const struct {
        const char *key;
        double low, high;
    } friction[] = {{"mu-class-a", 0.04, 0.10},
                    {"mu-class-b", 0.08, 0.16},
                    {"mu-class-c", 0.14, 0.24},
                    {"mu-class-d", 0.20, 0.35}};
    for (size_t i = 0; i < sizeof friction / sizeof friction[0]; i++) {
        const sw_lubrication_out l = good(friction[i].key);
        near_in(friction[i].key, l.mu_low, friction[i].low, 0, 0);
        near_in(friction[i].key, l.mu_high, friction[i].high, 0, 0);
        /* the middle of the range */
        near_in(friction[i].key, l.mu_thread,
                (friction[i].low + friction[i].high) / 2, 0, 1e-12);
        near_in(friction[i].key, l.mu_seat, l.mu_thread, 0, 0);
    }
}
END_TEST

START_TEST(every_row)
{
    int i = 0, factors = 0, frictions = 0;
    for (; sw_lubrication_name(i); i++) {
        const char *key = sw_lubrication_name(i);
        const sw_lubrication_out l = good(key);
        ck_assert_str_eq(l.lubrication, key);
        must(l.label[0] && l.source[0], "%s", key);
        if (l.nut_factor != SW_UNSET) {
            factors++;
            must(0.03 <= l.nut_factor_low && l.nut_factor_low <= l.nut_factor &&
                     l.nut_factor <= l.nut_factor_high &&
                     l.nut_factor_high <= 1,
                 "%s", key);
            must(l.mu_thread == SW_UNSET && l.mu_seat == SW_UNSET &&
                     l.mu_low == SW_UNSET && l.mu_high == SW_UNSET,
                 "%s gives both", key);
        } else {
            frictions++;
            must(l.nut_factor_low == SW_UNSET && l.nut_factor_high == SW_UNSET,
                 "%s", key);
            must(0 < l.mu_low && l.mu_low <= l.mu_thread &&
                     l.mu_thread <= l.mu_high && l.mu_high <= 1 &&
                     l.mu_low <= l.mu_seat && l.mu_seat <= l.mu_high,
                 "%s", key);
        }
        for (int j = 0; j < i; j++)
            ck_assert_str_ne(sw_lubrication_name(j), key);
    }
    ck_assert_int_ge(factors, 7);
    ck_assert_int_ge(frictions, 4);
    ck_assert_ptr_null(sw_lubrication_name(i + 1));
    ck_assert_ptr_null(sw_lubrication_name(-1));
}
END_TEST

START_TEST(unknown)
{
    static const char *const text[] = {"",     "oil",        "Oiled", "oiled ",
                                       "0.15", "mu-class-z", "\n",    "\xff"};
    for (size_t i = 0; i < sizeof text / sizeof text[0]; i++) {
        sw_error err;
        const sw_lubrication_out l = sw_lubrication(text[i], &err);
        ck_assert_int_eq(l.status, SW_ERR_UNKNOWN);
        check_refused(text[i], &err, SW_ERR_UNKNOWN, "lubrication");
        check_numbers(text[i], &l, SW_STRUCT_LUBRICATION_OUT, l.status);
        ck_assert_ptr_nonnull(strstr(err.message, "oiled"));
    }
    sw_error err;
    const sw_lubrication_out l = sw_lubrication(NULL, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "lubrication");
    check_numbers("NULL", &l, SW_STRUCT_LUBRICATION_OUT, l.status);
    ck_assert_int_eq(sw_lubrication("oil", NULL).status, SW_ERR_UNKNOWN);
}
END_TEST

int main(void)
{
    return RUN_TESTS("lubrication", published, every_row, unknown);
}
