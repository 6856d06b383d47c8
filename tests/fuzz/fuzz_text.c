/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fuzz target: everything that reads text. The first byte says what reads the
 * rest: n number, 1..8 quantity of that kind, t thread, g grade, l
 * lubrication, u unit; any other byte gives the rest to all of them.
 *
 * Built and run by run.sh.
 */
#include "must.h"

#include <float.h>
#include <stddef.h>
#include <stdint.h>

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

/* Written with 17 digits and read again, a number is the same. */
static void check_round_trip(double value)
{
    char text[32];
    sw_error err;
    must(sw_format(value, 17, text, sizeof text) > 0, "%.17g has no text",
         value);
    const sw_quantity_out back = sw_number(text, "back", &err);
    check_record(&err, back.status);
    must(back.value == value, "%.17g was written %s and read %.17g", value,
         text, back.value);
    for (int digits = 1; digits < 17; digits++) {
        must(sw_format(value, digits, text, sizeof text) > 0,
             "%.17g has no text of %d digits", value, digits);
        const sw_quantity_out near = sw_number(text, "near", &err);
        if (near.status) { /* rounded up past the largest double */
            must(fabs(value) > 1e307, "%s cannot be read", text);
            continue;
        }
        /* half a step of the last digit, and what reading it rounds */
        must(fabs(near.value - value) <=
                 (0.5000001 * pow(10, 1 - digits) + DBL_EPSILON) * fabs(value) +
                     1e-323,
             "%.17g was rounded to %s", value, text);
    }
}

static void read_number(const char *text)
{
    sw_error err;
    const sw_quantity_out q = sw_number(text, "field", &err);
    check_record(&err, q.status);
    must(q.status ? isnan(q.value) : isfinite(q.value), "%d %.17g", q.status,
         q.value);
    if (!q.status)
        check_round_trip(q.value);
}

static void read_quantity(const char *text, int kind)
{
    sw_error err;
    const sw_quantity_out q = sw_quantity(text, kind, "field", &err);
    check_record(&err, q.status);
    must(q.status ? isnan(q.value) : isfinite(q.value), "%d %.17g", q.status,
         q.value);
    must(sw_quantity(text, kind, "field", NULL).status == q.status,
         "another answer without an error record");
}

static void read_unit(const char *text)
{
    for (int kind = 0; kind <= SW_KIND_COUNT + 1; kind++) {
        sw_error err;
        const sw_quantity_out q = sw_unit_factor(text, kind, "field", &err);
        check_record(&err, q.status);
        must(q.status ? isnan(q.value) : q.value > 0 && isfinite(q.value),
             "%d %.17g", q.status, q.value);
    }
}

static void read_thread(const char *text)
{
    sw_error err;
    const sw_thread_out t = sw_thread(text, &err);
    check_record(&err, t.status);
    check_result(&t, SW_STRUCT_THREAD_OUT, t.status);
    if (t.status)
        return;
    const sw_thread_out again = sw_thread(t.designation, &err);
    must(again.status == 0 && strcmp(again.designation, t.designation) == 0 &&
             again.pitch_mm == t.pitch_mm && again.nominal_mm == t.nominal_mm,
         "%s is not found by its own name", t.designation);
}

static void read_grade(const char *text)
{
    static const double d[] = {1, 6, 12, 16, 25.4, 39, 100};
    for (size_t i = 0; i < sizeof d / sizeof d[0]; i++) {
        sw_error err;
        const sw_grade_out g = sw_grade(text, d[i], &err);
        check_record(&err, g.status);
        check_result(&g, SW_STRUCT_GRADE_OUT, g.status);
        must(g.status || strcmp(g.grade, text) == 0, "%s for %s", g.grade,
             text);
    }
}

static void read_lubrication(const char *text)
{
    sw_error err;
    const sw_lubrication_out l = sw_lubrication(text, &err);
    check_record(&err, l.status);
    check_result(&l, SW_STRUCT_LUBRICATION_OUT, l.status);
    must(l.status || strcmp(l.lubrication, text) == 0, "%s for %s",
         l.lubrication, text);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    if (size == 0)
        return 0;
    /* no larger than the text, so that a read past its end is seen */
    char *text = malloc(size);
    if (!text)
        return 0;
    memcpy(text, data + 1, size - 1);
    text[size - 1] = '\0';
    const char what = (char)data[0];
    const int all = !strchr("n12345678tglu", what) || !what;
    if (all || what == 'n')
        read_number(text);
    for (int kind = 1; kind <= SW_KIND_COUNT; kind++)
        if (all || what == '0' + kind)
            read_quantity(text, kind);
    if (all)
        read_quantity(text, SW_KIND_COUNT + 1);
    if (all || what == 'u')
        read_unit(text);
    if (all || what == 't')
        read_thread(text);
    if (all || what == 'g')
        read_grade(text);
    if (all || what == 'l')
        read_lubrication(text);
    for (int list = 1; all && list <= SW_WORDS_COUNT; list++) {
        const int value = sw_word_value(list, text);
        must(!value || strcmp(sw_word(list, value), text) == 0, "%s", text);
    }
    free(text);
    return 0;
}
