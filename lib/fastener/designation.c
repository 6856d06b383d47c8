/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Designation: a thread's name as people write it to its row in the table.
 *
 * Metric: "M12", "m12 x 1.25", "M12-6g". Unified: size, dash, threads per inch,
 * with or without '#', series and class: "1/2-13", "1 1/2-6", "10-32 UNF",
 * "#10-32", "1/2-13UNC-2A". A name that fits no row is refused, with the rows
 * that may have been meant.
 */
#include "fastener/designation.h"

#include "base/number.h"

#include <string.h>

enum { LONGEST = 64 };

/* A designation taken apart. */
typedef struct {
    char core[LONGEST + 1]; /* "M12", "1/2-13", without '#', series, fit */
    char series[8];         /* "UNC", "UNF", "UN" or "" */
    int hash;               /* written with '#' */
    int metric;
    double nominal, pitch; /* metric; pitch 0 = coarse */
} name_parts;

static int is_digit(char c) { return c >= '0' && c <= '9'; }

static int ends_with(const char *text, const char *tail)
{
    size_t n = strlen(text), m = strlen(tail);
    return n > m && strcmp(text + n - m, tail) == 0;
}

/* "-6G", "-6H6G", "-2A", "-3B" at the end say the fit, not the thread. */
static void cut_fit(char *text)
{
    const size_t n = strlen(text);
    if (n > 3 && (text[n - 1] == 'A' || text[n - 1] == 'B') &&
        is_digit(text[n - 2]) && text[n - 3] >= 'A') {
        text[n - 2] = '\0'; /* "UNC2A" */
        return;
    }
    char *dash = strrchr(text, '-');
    if (!dash || !is_digit(dash[1]))
        return;
    const char *p = dash + 1;
    while (is_digit(p[0]) && (p[1] == 'G' || p[1] == 'H' || p[1] == 'E' ||
                              p[1] == 'A' || p[1] == 'B'))
        p += 2;
    if (*p == '\0')
        *dash = '\0';
}

static void cut_series(name_parts *p)
{
    static const struct {
        const char *tail, *series;
    } tail[] = {{"UNRC", "UNC"},
                {"UNRF", "UNF"},
                {"UNC", "UNC"},
                {"UNF", "UNF"},
                {"UN", "8UN"}};
    for (size_t i = 0; i < sizeof tail / sizeof tail[0]; i++)
        if (ends_with(p->core, tail[i].tail)) {
            p->core[strlen(p->core) - strlen(tail[i].tail)] = '\0';
            strcpy(p->series, tail[i].series);
            if (ends_with(p->core, "-")) /* "1/2-13-UNC" */
                p->core[strlen(p->core) - 1] = '\0';
            if (ends_with(p->core, "88")) /* "1-1/2-8 8-UN" */
                p->core[strlen(p->core) - 1] = '\0';
            return;
        }
}

/* Upper case, no blanks; a blank inside a mixed number ("1 1/2") becomes its
 * dash. */
static void squeeze(const char *text, char *core)
{
    size_t n = 0;
    for (const char *c = text; *c && n < LONGEST; c++) {
        if (*c == ' ' || *c == '\t') {
            const char *next = c;
            while (*next == ' ' || *next == '\t')
                next++;
            int mixed = n > 0 && is_digit(core[n - 1]) && is_digit(*next) &&
                        is_digit(next[0]) && next[1] == '/';
            if (mixed)
                core[n++] = '-';
            c = next - 1;
        } else {
            core[n++] = *c >= 'a' && *c <= 'z' ? (char)(*c - 32) : *c;
        }
    }
    core[n] = '\0';
}

static name_parts take_apart(const char *text)
{
    name_parts p;
    memset(&p, 0, sizeof p);
    squeeze(text, p.core);
    if (p.core[0] == '#') {
        p.hash = 1;
        memmove(p.core, p.core + 1, strlen(p.core));
    }
    cut_fit(p.core);
    if (p.core[0] == 'M' && is_digit(p.core[1]) && !strchr(p.core, 'E')) {
        size_t i = 1 + sw__scan_number(p.core + 1, &p.nominal);
        p.metric = p.core[i] == '\0';
        if (p.core[i] == 'X' && is_digit(p.core[i + 1])) {
            size_t used = sw__scan_number(p.core + i + 1, &p.pitch);
            p.metric = used && p.core[i + 1 + used] == '\0' && p.pitch > 0;
        }
    } else {
        cut_series(&p);
    }
    return p;
}

static int matches(const name_parts *wanted, const struct sw__threads_row *row)
{
    if (wanted->metric)
        return strcmp(row->system, "metric") == 0 &&
               fabs(row->nominal_mm - wanted->nominal) < 1e-9 &&
               (wanted->pitch > 0 ? fabs(row->pitch_mm - wanted->pitch) < 1e-9
                                  : strcmp(row->series, "coarse") == 0);
    if (strcmp(row->system, "unified") != 0)
        return 0;
    name_parts have = take_apart(row->key);
    return strcmp(have.core, wanted->core) == 0 &&
           (!wanted->hash || have.hash) &&
           (!wanted->series[0] || strcmp(have.series, wanted->series) == 0);
}

/* How many characters of the wanted name are the row's size: "1/2-19" and
 * "1/2" share "1/2" with 1/2-13; 0 for another size. */
static size_t same_size(const name_parts *wanted, const name_parts *have)
{
    char size[LONGEST + 1];
    sw__copy(size, sizeof size, wanted->core);
    for (;;) { /* "1-1/2-7" is 1-1/2 or nothing; "10-33" is 10 */
        const size_t n = strlen(size);
        if (n && strncmp(have->core, size, n) == 0 && have->core[n] == '-')
            return strchr(have->core + n + 1, '/') == NULL ? n : 0;
        char *dash = strrchr(size, '-');
        if (!dash)
            return 0;
        *dash = '\0';
    }
}

enum { SAME_SIZE = -1000 };

/* Small for a row that may have been meant: same size first, then the next
 * metric sizes, then likeness of spelling. */
static int strangeness(const char *text, const name_parts *wanted,
                       const struct sw__threads_row *row)
{
    const name_parts have = take_apart(row->key);
    if (wanted->metric && have.metric) {
        const double step = fabs(row->nominal_mm - wanted->nominal);
        if (step == 0)
            return SAME_SIZE - 1;
        return (int)fmin(1000 * step / wanted->nominal, 1000) - 500 +
               (have.pitch > 0 ? 400 : 0);
    }
    const size_t shared =
        wanted->metric || have.metric ? 0 : same_size(wanted, &have);
    if (shared) /* "1-1/2" is rather 1-1/2 than 1 */
        return SAME_SIZE - 2 * (int)shared - (have.hash == wanted->hash);
    return sw__edits(row->key, text) + (wanted->metric ? 1000 : 0);
}

const struct sw__threads_row *sw__thread_row(const char *text)
{
    const name_parts wanted = take_apart(text);
    if (strlen(text) <= LONGEST)
        for (size_t i = 0; i < sw__threads_count; i++)
            if (matches(&wanted, &sw__threads[i]))
                return &sw__threads[i];
    return NULL;
}

int sw__fail_thread(sw_error *err, const char *text)
{
    const name_parts wanted = take_apart(text);
    enum { OFFERED = 4 };
    const char *offer[OFFERED] = {NULL};
    int score[OFFERED];
    for (size_t i = 0; i < sw__threads_count; i++) {
        int s = strangeness(text, &wanted, &sw__threads[i]), at = OFFERED;
        while (at > 0 && (!offer[at - 1] || s < score[at - 1]))
            at--;
        if (at == OFFERED)
            continue;
        for (int j = OFFERED - 1; j > at; j--) {
            offer[j] = offer[j - 1];
            score[j] = score[j - 1];
        }
        offer[at] = sw__threads[i].key;
        score[at] = s;
    }
    char message[240];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, "thread: ");
    sw__line_add_quoted(&line, text);
    sw__line_add(&line, " is in no table; nearest are ");
    const int sizes_only = offer[0] && score[0] < SAME_SIZE;
    for (int i = 0; i < OFFERED && offer[i]; i++) {
        if (sizes_only && score[i] != score[0])
            break;
        sw__line_add(&line, i ? ", " : "");
        sw__line_add(&line, offer[i]);
    }
    return sw__fail(err, SW_ERR_UNKNOWN, "thread", message);
}
