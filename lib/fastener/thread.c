/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Thread: a designation to its geometry and the hardware of its size.
 *
 * Basic profile, 60 degrees, the same for ISO metric and unified threads:
 *   H  = (sqrt 3 / 2) P                  ISO 68-1, 2
 *   d2 = d - 2 (3/8) H                   ISO 724, 3
 *   D1 = d - 2 (5/8) H                   ISO 724, 3
 *   d3 = d - 2 (17/24) H                 ISO 68-1, rounded root (metric)
 *   dr = d - 2 (3/4) H                   ASME B1.1, as tabled with the unified
 *                                        areas; root of the unified stud here
 *   As = pi/4 ((d2 + d3)/2)^2            ISO 898-1, 9.1.6.1 (metric)
 *   At = pi/4 (d - 0.9743/n)^2           ASME B1.1, appendix B (unified)
 *
 * Play. A nut tilts on its stud until the flanks meet at both ends of the
 * engaged length m: play = atan(clearance / m), clearance on the pitch
 * diameter. For the usual fits:
 *   6g/6H      es = 15 + 11 P, Td2 = 90 P^0.4 d^0.1, TD2 = 1.32 Td2   (um, mm)
 *              ISO 965-1, formulas for fundamental deviation and tolerance
 *   2A/2B      Td2 = 0.0015 d^(1/3) + 0.0015 d^(1/2) + 0.015 P^(2/3)  (inch)
 *              allowance 0.3 Td2, TD2 = 1.3 Td2
 *              ASME B1.1, section 5, engaged length one diameter
 * Both from memory, tested against published limits. Mean: half of both
 * tolerances used up.
 */
#include "base/internal.h"
#include "base/number.h"
#include "base/tables.h"

#include <strapwise/thread.h>
#include <strapwise/units.h>

#include <string.h>

#define SW__S sw_thread_out
const sw_field sw__thread_out_fields[] = {
    SW__OUT_TEXT(designation),
    SW__OUT(nominal_mm, "mm"),
    SW__OUT(pitch_mm, "mm"),
    SW__OUT(pitch_diameter_mm, "mm"),
    SW__OUT(root_diameter_mm, "mm"),
    SW__OUT(minor_diameter_mm, "mm"),
    SW__OUT(stress_area_mm2, "mm2"),
    SW__OUT(across_flats_mm, "mm"),
    SW__OUT(clearance_hole_mm, "mm"),
    SW__OUT_TEXT(size),
    SW__OUT_TEXT(series),
    SW__OUT_WORD(system, SW_WORDS_SYSTEM),
    SW__OUT(threads_per_inch, ""),
    SW__OUT(triangle_height_mm, "mm"),
    SW__OUT(flank_angle_deg, "deg"),
    SW__OUT(lead_angle_deg, "deg"),
    SW__OUT(root_area_mm2, "mm2"),
    SW__OUT(minor_area_mm2, "mm2"),
    SW__OUT(nut_height_mm, "mm"),
    SW__OUT(bearing_diameter_mm, "mm"),
    SW__OUT(hole_fine_mm, "mm"),
    SW__OUT(hole_coarse_mm, "mm"),
    SW__OUT(washer_hole_mm, "mm"),
    SW__OUT(washer_diameter_mm, "mm"),
    SW__OUT(washer_thickness_mm, "mm"),
    SW__OUT(play_mean_deg, "deg"),
    SW__OUT(play_max_deg, "deg"),
    SW__END,
};
#undef SW__S

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
    } tail[] = {{"8-UN", "8UN"}, {"8UN", "8UN"}, {"UNRC", "UNC"},
                {"UNRF", "UNF"}, {"UNC", "UNC"}, {"UNF", "UNF"},
                {"UN", "8UN"}};
    for (size_t i = 0; i < sizeof tail / sizeof tail[0]; i++)
        if (ends_with(p->core, tail[i].tail)) {
            p->core[strlen(p->core) - strlen(tail[i].tail)] = '\0';
            strcpy(p->series, tail[i].series);
            if (ends_with(p->core, "-")) /* "1/2-13-UNC" */
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
    if (p.core[0] == 'M' && is_digit(p.core[1])) {
        size_t i = 1 + sw__scan_number(p.core + 1, &p.nominal);
        p.metric = p.core[i] == '\0';
        if (p.core[i] == 'X' && is_digit(p.core[i + 1])) {
            size_t used = sw__scan_number(p.core + i + 1, &p.pitch);
            p.metric = used && p.core[i + 1 + used] == '\0';
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

/* Sizes first (their pitches are what is wanted), then likeness of spelling. */
static int strangeness(const char *text, const name_parts *wanted,
                       const struct sw__threads_row *row)
{
    int edits = sw__edits(row->key, text);
    name_parts have = take_apart(row->key);
    if (wanted->metric && have.metric && have.nominal == wanted->nominal)
        edits -= 100;
    size_t n = strlen(wanted->core);
    char size[LONGEST + 2];
    sw__copy(size, sizeof size, wanted->core);
    char *dash = strrchr(size, '-');
    if (dash && strchr(size, '/') < dash)
        *dash = '\0';
    n = strlen(size);
    if (!wanted->metric && n && strncmp(have.core, size, n) == 0 &&
        have.core[n] == '-')
        edits -= 100;
    return edits;
}

static int fail_unknown(sw_error *err, const char *text,
                        const name_parts *wanted)
{
    enum { OFFERED = 4 };
    const char *offer[OFFERED] = {NULL};
    int score[OFFERED];
    for (size_t i = 0; i < sw__threads_count; i++) {
        int s = strangeness(text, wanted, &sw__threads[i]), at = OFFERED;
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
    for (int i = 0; i < OFFERED && offer[i]; i++) {
        sw__line_add(&line, i ? ", " : "");
        sw__line_add(&line, offer[i]);
    }
    return sw__fail(err, SW_ERR_UNKNOWN, "thread", message);
}

static void geometry(sw_thread_out *t)
{
    const double d = t->nominal_mm, P = t->pitch_mm;
    const double H = sqrt(3) / 2 * P;
    const int metric = t->system == SW_SYSTEM_METRIC;
    const double d2 = d - 0.75 * H, dr = d - 1.5 * H;
    const double d3 = metric ? d - 17.0 / 12 * H : dr;
    const double ds = metric ? (d2 + d3) / 2 : d - 0.9743 * P;
    t->threads_per_inch = 25.4 / P;
    t->pitch_diameter_mm = d2;
    t->root_diameter_mm = d3;
    t->minor_diameter_mm = d - 1.25 * H;
    t->triangle_height_mm = H;
    t->flank_angle_deg = 30;
    t->lead_angle_deg = SW__DEG(atan(P / (SW__PI * d2)));
    t->stress_area_mm2 = SW__PI / 4 * ds * ds;
    t->root_area_mm2 = SW__PI / 4 * d3 * d3;
    t->minor_area_mm2 = SW__PI / 4 * dr * dr;
}

static void play(sw_thread_out *t)
{
    const double d = t->nominal_mm, P = t->pitch_mm;
    double allowance, bolt, nut; /* mm on the pitch diameter */
    if (t->system == SW_SYSTEM_METRIC) {
        allowance = (15 + 11 * P) / 1000;
        bolt = 90 * pow(P, 0.4) * pow(d, 0.1) / 1000;
        nut = 1.32 * bolt;
    } else {
        const double D = d / 25.4, p = P / 25.4;
        bolt = 25.4 * (0.0015 * cbrt(D) + 0.0015 * sqrt(D) +
                       0.015 * pow(p, 2.0 / 3));
        allowance = 0.3 * bolt;
        nut = 1.3 * bolt;
    }
    t->play_mean_deg =
        SW__DEG(atan((allowance + (bolt + nut) / 2) / t->nut_height_mm));
    t->play_max_deg = SW__DEG(atan((allowance + bolt + nut) / t->nut_height_mm));
}

static void hardware(sw_thread_out *t)
{
    for (size_t i = 0; i < sw__hardware_count; i++) {
        const struct sw__hardware_row *row = &sw__hardware[i];
        if (strcmp(row->size, t->size) != 0)
            continue;
        t->across_flats_mm = row->across_flats_mm;
        t->nut_height_mm = row->nut_height_mm;
        t->bearing_diameter_mm = row->bearing_diameter_mm;
        t->clearance_hole_mm = row->hole_medium_mm;
        t->hole_fine_mm = row->hole_fine_mm;
        t->hole_coarse_mm = row->hole_coarse_mm;
        t->washer_hole_mm = row->washer_hole_mm;
        t->washer_diameter_mm = row->washer_outer_mm;
        t->washer_thickness_mm = row->washer_thickness_mm;
        if (strcmp(row->status, "memory") == 0)
            t->warnings |= SW_WARN_TABLE_FROM_MEMORY;
    }
}

sw_thread_out sw_thread(const char *designation, sw_error *err)
{
    sw_thread_out t;
    memset(&t, 0, sizeof t);
    sw__clear(err);
    if (!designation || !designation[0]) {
        sw__spoil(&t, SW_STRUCT_THREAD_OUT,
                  designation ? sw__fail(err, SW_ERR_MISSING, "thread",
                                         "thread: missing; for example M12 or "
                                         "1/2-13")
                              : sw__fail_null(err, "thread"));
        return t;
    }
    const name_parts wanted = take_apart(designation);
    const struct sw__threads_row *row = NULL;
    if (strlen(designation) <= LONGEST)
        for (size_t i = 0; i < sw__threads_count && !row; i++)
            if (matches(&wanted, &sw__threads[i]))
                row = &sw__threads[i];
    if (!row) {
        sw__spoil(&t, SW_STRUCT_THREAD_OUT,
                  fail_unknown(err, designation, &wanted));
        return t;
    }
    sw__copy(t.designation, sizeof t.designation, row->key);
    sw__copy(t.size, sizeof t.size, row->size);
    sw__copy(t.series, sizeof t.series, row->series);
    t.system = sw_word_value(SW_WORDS_SYSTEM, row->system);
    t.nominal_mm = row->nominal_mm;
    t.pitch_mm = row->pitch_mm;
    geometry(&t);
    hardware(&t);
    play(&t);
    return t;
}

int sw_thread_count(void) { return (int)sw__threads_count; }

const char *sw_thread_name(int index)
{
    return index >= 0 && index < sw_thread_count() ? sw__threads[index].key
                                                   : NULL;
}
