/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lettering: room for words without a font at hand. 0.62 em a character is
 * more than the mean of the usual sans faces, for figures and lower case as
 * for a few capitals; bold takes 0.06 more.
 */
#include "sheet/lettering.h"

#include <string.h>

#define PLAIN_EM 0.62
#define BOLD_EM 0.68

/* characters, not bytes */
static size_t characters(const char *text, size_t bytes)
{
    size_t n = 0;
    for (size_t i = 0; i < bytes; i++)
        n += ((unsigned char)text[i] & 0xc0) != 0x80;
    return n;
}

static double width(const char *text, size_t bytes, int bold)
{
    return (double)characters(text, bytes) * (bold ? BOLD_EM : PLAIN_EM);
}

double sw__letters_em(const char *text, int bold)
{
    return width(text, strlen(text), bold);
}

static int is_digit(char c) { return c >= '0' && c <= '9'; }

size_t sw__letters_line(const char **text, double most_em, int bold)
{
    const char *start = *text;
    size_t fits = 0, at = 0;
    while (start[at]) {
        size_t word = at + strcspn(start + at, " ");
        /* a number keeps its unit */
        while (start[word] && is_digit(start[word - 1]))
            word += 1 + strcspn(start + word + 1, " ");
        if (fits && width(start, word, bold) > most_em)
            break;
        fits = word;
        at = word + strspn(start + word, " ");
    }
    *text = start + (start[at] && at > fits ? at : fits);
    *text += strspn(*text, " ");
    return fits;
}

void sw__spread_out(double *centre, const double *width, int n, double gap,
                    double low, double high)
{
    enum { PASSES = 40 };
    for (int pass = 0; pass < PASSES; pass++)
        for (int i = 1; i < n; i++) {
            const double need = (width[i - 1] + width[i]) / 2 + gap;
            const double lack = need - (centre[i] - centre[i - 1]);
            if (lack > 0) {
                centre[i - 1] -= lack / 2;
                centre[i] += lack / 2;
            }
        }
    for (int i = 0; i < n; i++) {
        const double least =
            i ? centre[i - 1] + (width[i - 1] + width[i]) / 2 + gap
              : low + width[0] / 2;
        centre[i] = fmax(centre[i], least);
    }
    for (int i = n - 1; i >= 0; i--) {
        const double most =
            i < n - 1 ? centre[i + 1] - (width[i + 1] + width[i]) / 2 - gap
                      : high - width[i] / 2;
        centre[i] = fmin(centre[i], most);
    }
}
