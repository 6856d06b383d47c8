/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lettering: room for words without a font at hand. Letters are taken as wide
 * as in DejaVu Sans, the widest of the faces that a reader without Helvetica or
 * Arial is likely to get; their widths differ too much for a mean: "mm" takes
 * twice the room of "in".
 *
 * Places for labels: what a box of words would cover is counted. A caller
 * offers its places in the order it likes them and takes the one with the least
 * harm: out of the plot is worse than on other words, and that worse than on
 * lines.
 */
#include "sheet/lettering.h"

#include <string.h>

enum { FIRST = ' ', LAST = '~', LETTERS = LAST - FIRST + 1 };

/* Advance widths of DejaVu Sans 2.37 from blank to tilde, hundredths of an em,
 * rounded up. */
static const unsigned char plain[LETTERS] = {
    32,  41, 46, 84, 64, 96, 78, 28, 40, 40, 50, 84, 32, 37, 32, 34,
    64,  64, 64, 64, 64, 64, 64, 64, 64, 64, 34, 34, 84, 84, 84, 54,
    100, 69, 69, 70, 78, 64, 58, 78, 76, 30, 30, 66, 56, 87, 75, 79,
    61,  79, 70, 64, 62, 74, 69, 99, 69, 62, 69, 40, 34, 40, 84, 50,
    50,  62, 64, 55, 64, 62, 36, 64, 64, 28, 28, 58, 28, 98, 64, 62,
    64,  64, 42, 53, 40, 64, 60, 82, 60, 60, 53, 64, 34, 64, 84};
static const unsigned char heavy[LETTERS] = {
    35,  46, 53, 84, 70, 101, 88, 31,  46, 46, 53, 84, 38, 42,  38, 37,
    70,  70, 70, 70, 70, 70,  70, 70,  70, 70, 40, 40, 84, 84,  84, 59,
    100, 78, 77, 74, 84, 69,  69, 83,  84, 38, 38, 78, 64, 100, 84, 86,
    74,  86, 78, 73, 69, 82,  78, 111, 78, 73, 73, 46, 37, 46,  84, 50,
    50,  68, 72, 60, 72, 68,  44, 72,  72, 35, 35, 67, 35, 105, 72, 69,
    72,  72, 50, 60, 48, 72,  66, 93,  65, 66, 59, 72, 37, 72,  84};

/* What is not ASCII: as wide as signs are. */
#define OTHER_EM 0.84

static double width(const char *text, size_t bytes, int bold)
{
    const unsigned char *hundredths = bold ? heavy : plain;
    double em = 0;
    for (size_t i = 0; i < bytes; i++) {
        const unsigned char c = (unsigned char)text[i];
        if (c >= FIRST && c <= LAST)
            em += hundredths[c - FIRST] / 100.0;
        else if ((c & 0xc0) != 0x80) /* characters, not bytes */
            em += OTHER_EM;
    }
    return em;
}

double sw__letters_em(const char *text, int bold)
{
    return width(text, strlen(text), bold);
}

static int is_digit(char c) { return c >= '0' && c <= '9'; }

size_t sw__letters_line(const char **text, double most_em, int bold, int pauses)
{
    const char *start = *text;
    size_t fits = 0, pause = 0, at = 0;
    while (start[at]) {
        size_t word = at + strcspn(start + at, " ");
        /* a number keeps its unit */
        while (word && start[word] && is_digit(start[word - 1]))
            word += 1 + strcspn(start + word + 1, " ");
        if (fits && width(start, word, bold) > most_em) {
            fits = pause ? pause : fits;
            break;
        }
        fits = word;
        const char end = word ? start[word - 1] : ' ';
        if (pauses && (end == ',' || end == ';' || (end == ':' && !pause)))
            pause = word;
        at = word + strspn(start + word, " ");
    }
    *text = start + fits + strspn(start + fits, " ");
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

void sw__label_line(sw__labels *l, sw__point from, sw__point to, double weight)
{
    if (l->lines < SW__LABEL_LINES) {
        l->from[l->lines] = from;
        l->to[l->lines] = to;
        l->weight[l->lines++] = weight;
    }
}

/* Length of a line within a box: what is left of it after each side has cut
 * (Liang and Barsky). */
static double within(sw__point a, sw__point b, const sw__box *box)
{
    const double dx = b.x - a.x, dy = b.y - a.y;
    const double step[4] = {-dx, dx, -dy, dy};
    const double room[4] = {a.x - box->left, box->right - a.x, a.y - box->top,
                            box->bottom - a.y};
    double from = 0, to = 1;
    for (int i = 0; i < 4; i++) {
        if (step[i] == 0) {
            if (room[i] < 0)
                return 0;
        } else if (step[i] < 0) {
            from = fmax(from, room[i] / step[i]);
        } else {
            to = fmin(to, room[i] / step[i]);
        }
    }
    return from < to ? (to - from) * hypot(dx, dy) : 0;
}

double sw__label_harm(const sw__labels *l, const sw__box *b)
{
    double harm = 0;
    if (b->left < l->room.left || b->right > l->room.right ||
        b->top < l->room.top || b->bottom > l->room.bottom)
        harm += 100 * SW__LABEL_COVERED;
    for (int i = 0; i < l->boxes; i++) {
        const sw__box *t = &l->taken[i];
        if (b->left < t->right && t->left < b->right && b->top < t->bottom &&
            t->top < b->bottom)
            harm += SW__LABEL_COVERED;
    }
    for (int i = 0; i < l->lines; i++) {
        const sw__point from = l->from[i], to = l->to[i];
        if ((from.x > b->left || to.x > b->left) &&
            (from.x < b->right || to.x < b->right) &&
            (from.y > b->top || to.y > b->top) &&
            (from.y < b->bottom || to.y < b->bottom))
            harm += l->weight[i] * within(from, to, b);
    }
    return harm;
}

void sw__label_take(sw__labels *l, const sw__box *b)
{
    if (l->boxes < SW__LABEL_BOXES)
        l->taken[l->boxes++] = *b;
}
