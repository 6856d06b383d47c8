/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Case expect: the second half of a line of the corpus, compared with the
 * answer.
 *
 *   name=value~tolerance   a number; tolerance absolute or with %
 *   name<value name>value  a bound, the value itself allowed
 *   name=unset             a number that does not apply
 *   name=word              a word or text, exactly
 *   warnings=a,b           exactly these, `none` for none
 *   warnings+=a            this one among others
 *   !code field            an error of this name, blaming this field
 */
#include "case.h"

#include <math.h>
#include <string.h>

/* "file:line: name: wanted ..., got " ready for what was got. */
static page *differs(case_line *c, const char *name, const char *wanted)
{
    page *p = c->report;
    c->differs = 1;
    page_add(p, c->file);
    page_add(p, ":");
    page_number(p, c->line, 9);
    page_add(p, ": ");
    page_add(p, name);
    page_add(p, ": wanted ");
    page_add(p, wanted);
    page_add(p, ", got ");
    return p;
}

static void number_differs(case_line *c, const char *name, const char *wanted,
                           double got, double tolerance)
{
    page *p = differs(c, name, wanted);
    if (got == SW_UNSET)
        page_add(p, "unset");
    else
        page_number(p, got, 9);
    if (tolerance >= 0) {
        page_add(p, ", tolerance ");
        page_number(p, tolerance, 4);
    }
    page_add(p, "\n");
}

static int bound(case_line *c, const char *name, char sign, const char *text,
                 double got)
{
    double limit;
    char wanted[80] = {sign};
    if (!case_number(text, &limit))
        return case_malformed(c, text, "is not a number");
    copy_cut(wanted + 1, sizeof wanted - 1, text);
    const int holds =
        is_known(got) && (sign == '<' ? got <= limit : got >= limit);
    if (!holds)
        number_differs(c, name, wanted, got, -1);
    return DONE;
}

static int equal(case_line *c, const char *name, char *text, double got)
{
    double value, tolerance = 0;
    char *tilde = strchr(text, '~');
    if (strcmp(text, "unset") == 0) {
        if (got != SW_UNSET)
            number_differs(c, name, text, got, -1);
        return DONE;
    }
    if (!tilde)
        return case_malformed(c, text, "has no ~tolerance");
    *tilde = '\0';
    char *percent = strchr(tilde + 1, '%');
    if (percent && !percent[1])
        *percent = '\0';
    const int good =
        case_number(text, &value) && case_number(tilde + 1, &tolerance);
    if (percent)
        tolerance *= fabs(value) / 100;
    if (!good || !(tolerance >= 0))
        return case_malformed(c, text, "or its tolerance is not a number");
    if (!(fabs(got - value) <= tolerance))
        number_differs(c, name, text, got, tolerance);
    return DONE;
}

static int check_warnings(case_line *c, const char *text, int exactly)
{
    const uint64_t got = topic_warnings(c->topic, &c->answer);
    uint64_t wanted = 0;
    for (const char *at = text; *at && strcmp(text, "none") != 0;) {
        const size_t n = strcspn(at, ",");
        int bit = 0;
        while (sw_warning_name(bit) &&
               (strlen(sw_warning_name(bit)) != n ||
                memcmp(sw_warning_name(bit), at, n) != 0))
            bit++;
        if (!sw_warning_name(bit))
            return case_malformed(c, at, "is no warning");
        wanted |= (uint64_t)1 << bit;
        at += n + (at[n] == ',');
    }
    if (exactly ? got == wanted : (got & wanted) == wanted)
        return DONE;
    page *p = differs(c, "warnings", text);
    int any = 0;
    for (int bit = 0; sw_warning_name(bit); bit++)
        if (got >> bit & 1) {
            page_add(p, any++ ? "," : "");
            page_add(p, sw_warning_name(bit));
        }
    page_add(p, any ? "\n" : "none\n");
    return DONE;
}

static int check_part(case_line *c, char *part)
{
    const size_t n = strcspn(part, "=<>+");
    const char sign = part[n];
    char name[48] = "";
    if (!sign || n == 0 || n >= sizeof name)
        return case_malformed(c, part, "is no expectation");
    memcpy(name, part, n);
    char *text = part + n + 1;
    if (strcmp(name, "warnings") == 0) {
        if (sign == '=' || (sign == '+' && text[0] == '='))
            return check_warnings(c, text + (sign == '+'), sign == '=');
        return case_malformed(c, part, "is no expectation");
    }
    const slot s = topic_output(c->topic, &c->answer, name);
    if (!s.field || sign == '+')
        return case_malformed(c, part, "names no result of this topic");
    if (s.field->type == SW_FIELD_NUMBER)
        return sign == '=' ? equal(c, name, text, slot_number(s))
                           : bound(c, name, sign, text, slot_number(s));
    const char *got = s.field->type == SW_FIELD_WORD
                          ? sw_word(s.field->words, slot_word(s))
                          : s.place;
    if (sign != '=')
        return case_malformed(c, part, "compares no number");
    if (!got || strcmp(got, text) != 0) {
        page *p = differs(c, name, text);
        page_add(p, got ? got : "nothing");
        page_add(p, "\n");
    }
    return DONE;
}

/* On an error every number of the result is promised to be NaN. */
static void check_spoiled(case_line *c)
{
    for (int i = 0;; i++) {
        const slot s = topic_output_at(c->topic, &c->answer, i);
        if (!s.field)
            return;
        if (s.field->type == SW_FIELD_NUMBER && !isnan(slot_number(s)))
            number_differs(c, s.field->name, "nan on an error", slot_number(s),
                           -1);
    }
}

static int check_error(case_line *c, const char *wanted)
{
    const sw_error *err = &c->answer.err;
    const char *code = sw_status_name(c->answer.out.status);
    const size_t n = strcspn(wanted, " ");
    int known = 0;
    for (int i = 1; i <= sw_status_count(); i++)
        known |= strlen(sw_status_name(i)) == n &&
                 memcmp(sw_status_name(i), wanted, n) == 0;
    if (!known)
        return case_malformed(c, wanted, "names no error");
    if (strlen(code) != n || memcmp(code, wanted, n) != 0 ||
        err->code != c->answer.out.status ||
        (wanted[n] && strcmp(err->field, wanted + n + 1) != 0)) {
        page *p = differs(c, "error", wanted);
        page_add(p, code);
        page_add(p, " ");
        page_add(p, err->field);
        page_add(p, "\n");
        return DONE;
    }
    check_spoiled(c);
    return DONE;
}

int case_check(case_line *c, int at)
{
    int expectations = 0, status = DONE;
    const int wants_error = at < c->parts && c->part[at][0] == '!';
    const int failed = c->answer.out.status != 0;
    for (; at < c->parts && c->part[at][0] != '#' && !status; at++) {
        expectations++;
        if (wants_error)
            status =
                expectations == 1
                    ? check_error(c, c->part[at] + 1)
                    : case_malformed(c, c->part[at], "stands after an error");
        else if (!failed)
            status = check_part(c, c->part[at]);
    }
    if (status)
        return status;
    if (!expectations)
        return case_malformed(c, NULL, "nothing is expected");
    if (at >= c->parts || strlen(c->part[at]) < 3)
        return case_malformed(c, NULL, "the source after # is missing");
    if (failed && !wants_error) {
        page *p = differs(c, c->part[0], "an answer");
        page_add(p, c->answer.err.message);
        page_add(p, "\n");
    }
    return DONE;
}
