/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Number: plain decimal numbers in and out, whatever the locale of the
 * process.
 *
 * In: the digits are handed to strtod() without their decimal point, as
 * "12345e-2" for "123.45": the locale has no say in that form, and strtod()
 * rounds correctly. Out: snprintf() with "%e" supplies the digits, whose
 * separator (one or more bytes of any kind) is skipped and written anew.
 */
#include "base/number.h"

#include <strapwise/units.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static int is_digit(char c) { return c >= '0' && c <= '9'; }

size_t sw__scan_number(const char *text, double *value)
{
    enum { DIGITS = 40, LARGEST_EXPONENT = 400 };
    char plain[DIGITS + 24];
    size_t n = 0, i = 0;
    int digits = 0, places = 0, exponent = 0;
    if (text[i] == '+' || text[i] == '-')
        plain[n++] = text[i++];
    for (; is_digit(text[i]); i++, digits++)
        if (digits < DIGITS)
            plain[n++] = text[i];
    if (text[i] == '.') {
        i++;
        for (; is_digit(text[i]); i++, digits++, places++)
            if (digits < DIGITS)
                plain[n++] = text[i];
    }
    if (digits == 0 || digits > DIGITS)
        return 0;
    if (text[i] == 'e' || text[i] == 'E') {
        size_t j = i + 1;
        int sign = 1;
        if (text[j] == '+' || text[j] == '-')
            sign = text[j++] == '-' ? -1 : 1;
        if (is_digit(text[j])) {
            for (; is_digit(text[j]); j++)
                if (exponent < LARGEST_EXPONENT)
                    exponent = 10 * exponent + (text[j] - '0');
            exponent *= sign;
            i = j;
        }
    }
    snprintf(plain + n, sizeof plain - n, "e%d", exponent - places);
    *value = strtod(plain, NULL);
    return i;
}

sw_quantity_out sw_number(const char *text, const char *field, sw_error *err)
{
    sw_quantity_out out = {SW_OK, 0};
    sw__clear(err);
    if (!field)
        field = "value";
    if (!text) {
        out.status = sw__fail_null(err, field);
    } else {
        size_t used = sw__scan_number(text, &out.value);
        if (!used || text[used] || !isfinite(out.value))
            out.status = sw__fail_number(err, field, text);
    }
    if (out.status)
        out.value = NAN;
    return out;
}

int sw__fail_number(sw_error *err, const char *field, const char *text)
{
    char message[200];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, field);
    sw__line_add(&line, ": ");
    sw__line_add_quoted(&line, text);
    const char *comma = strchr(text, ',');
    if (!text[0])
        sw__line_add(&line, " is empty; write a number such as 1.5");
    else if (comma && comma != text && is_digit(comma[-1]))
        sw__line_add(&line, " has a comma; write the decimal mark as a point, "
                            "1.5");
    else
        sw__line_add(&line, " is not a plain number such as 1.5");
    return sw__fail(err, SW_ERR_SYNTAX, field, message);
}

/* Digits of |value|, first one not zero, and the decimal exponent of the
 * first. */
static int digits_of(double value, int wanted, char *digits)
{
    char text[64];
    int n = 0;
    snprintf(text, sizeof text, "%.*e", wanted - 1, fabs(value));
    const char *e = strchr(text, 'e');
    for (const char *c = text; c < e; c++)
        if (is_digit(*c))
            digits[n++] = *c;
    while (n > 1 && digits[n - 1] == '0')
        n--;
    digits[n] = '\0';
    return atoi(e + 1);
}

size_t sw_format(double value, int wanted, char *text, size_t room)
{
    char digits[32], made[64];
    size_t n = 0;
    if (!text || room == 0)
        return 0;
    text[0] = '\0';
    wanted = wanted < 1 ? 1 : wanted > 17 ? 17 : wanted;
    if (isnan(value)) {
        strcpy(made, "nan");
    } else if (isinf(value)) {
        strcpy(made, value < 0 ? "-inf" : "inf");
    } else if (value == 0) {
        strcpy(made, "0");
    } else {
        int first = digits_of(value, wanted, digits);
        int count = (int)strlen(digits), scientific = first < -5 || first >= 15;
        int whole = scientific ? 1 : first + 1; /* digits before the point */
        if (value < 0)
            made[n++] = '-';
        if (whole <= 0) {
            made[n++] = '0';
            made[n++] = '.';
            for (int i = whole; i < 0; i++)
                made[n++] = '0';
            whole = -1; /* the point is written */
        }
        for (int i = 0; i < count || i < whole; i++) {
            if (i == whole)
                made[n++] = '.';
            made[n++] = i < count ? digits[i] : '0';
        }
        made[n] = '\0';
        if (scientific)
            snprintf(made + n, sizeof made - n, "e%d", first);
    }
    n = strlen(made);
    if (n >= room)
        return 0;
    memcpy(text, made, n + 1);
    return n;
}

size_t sw_format_fixed(double value, int decimals, char *text, size_t room)
{
    decimals = decimals < 0 ? 0 : decimals > 12 ? 12 : decimals;
    const double scale = pow(10, decimals);
    const double rounded = floor(fabs(value) * scale + 0.5);
    /* beyond 2^53 there are no decimals to fix */
    if (!(rounded < 9e15))
        return sw_format(value, 15, text, room);
    char whole[40], part[40], made[80];
    const double integer = floor(rounded / scale);
    sw_format(integer, 17, whole, sizeof whole);
    const int n =
        (int)sw_format(rounded - integer * scale, 17, part, sizeof part);
    sw__line line = sw__line_start(made, sizeof made);
    sw__line_add(&line, value < 0 && rounded > 0 ? "-" : "");
    sw__line_add(&line, whole);
    sw__line_add(&line, decimals > 0 ? "." : "");
    for (int i = n; i < decimals; i++)
        sw__line_add(&line, "0");
    sw__line_add(&line, decimals > 0 ? part : "");
    if (!text || room == 0)
        return 0;
    text[0] = '\0';
    if (line.length >= room)
        return 0;
    memcpy(text, made, line.length + 1);
    return line.length;
}
