/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say chart: the rows as a table to hang on the wall, and what to know below
 * it.
 */
#include "chart.h"

#include <math.h>
#include <string.h>

enum { COLUMNS_MOST = 10, HEAD_LINES = 3, CELL = 24 };

typedef struct {
    const char *head[HEAD_LINES];
    void (*cell)(page *p, const chart_row *row);
    size_t width;
} column;

/* Three digits with their zeros, so that a column reads down evenly. */
static void three(page *p, double value)
{
    if (!is_known(value))
        page_add(p, "-");
    else
        page_fixed(p, value,
                   value < 0.9995  ? 3
                   : value < 9.995 ? 2
                   : value < 99.95 ? 1
                                   : 0);
}

/* As say_torque_us(), with the zeros. */
static void us_torque(page *p, double Nm)
{
    const double ftlbf = in_unit(Nm, "ft-lbf", SW_KIND_TORQUE);
    const int small = ftlbf < 20;
    three(p, small ? in_unit(Nm, "in-lbf", SW_KIND_TORQUE) : ftlbf);
    if (is_known(Nm))
        page_add(p, small ? KEEP "in-lbf" : KEEP "ft-lbf");
}

/* Inch hexagons are sold by the fraction: 3/4 and not 0.750. */
static void flats(page *p, const chart_row *row)
{
    const double mm = row->thread.across_flats_mm;
    double parts = 64;
    double n = in_unit(mm, "in", SW_KIND_LENGTH) * parts;
    if (row->thread.system != SW_SYSTEM_UNIFIED || fabs(n - round(n)) > 0.1) {
        page_number(p, mm, 4);
        page_add(p, KEEP "mm");
        return;
    }
    for (n = round(n); parts > 1 && fmod(n, 2) == 0; parts /= 2)
        n /= 2;
    const double whole = floor(n / parts);
    if (whole > 0)
        page_number(p, whole, 6);
    if (n > whole * parts) {
        page_add(p, whole > 0 ? "-" : "");
        page_number(p, n - whole * parts, 6);
        page_add(p, "/");
        page_number(p, parts, 6);
    }
    page_add(p, KEEP "in");
}

static void thread(page *p, const chart_row *row)
{
    page_add(p, row->thread.designation);
}

static void per_kN(page *p, const chart_row *row)
{
    three(p, row->chart.torque_per_kN_Nm);
}

static void per_klbf(page *p, const chart_row *row)
{
    three(p, row->chart.torque_per_klbf_ftlbf);
}

static void wanted_si(page *p, const chart_row *row)
{
    three(p, row->chart.torque_Nm);
    page_add(p, row->chart.warnings & SW_WARN_OVER_PROOF ? "!" : KEEP);
}

static void wanted_us(page *p, const chart_row *row)
{
    us_torque(p, row->chart.torque_Nm);
    page_add(p, row->chart.warnings & SW_WARN_OVER_PROOF ? "!" : KEEP);
}

static void limit_kN(page *p, const chart_row *row)
{
    const double N = row->chart.limit_preload_N;
    three(p, is_known(N) ? N / 1000 : N);
}

static void limit_lbf(page *p, const chart_row *row)
{
    const double N = row->chart.limit_preload_N;
    if (is_known(N))
        page_number(p, in_unit(N, "lbf", SW_KIND_FORCE), 3);
    else
        page_add(p, "-");
}

static void limit_si(page *p, const chart_row *row)
{
    three(p, row->chart.limit_torque_Nm);
}

static void limit_us(page *p, const chart_row *row)
{
    us_torque(p, row->chart.limit_torque_Nm);
}

static const column all[] = {
    {{"", "", "thread"}, thread, 0},
    {{"across", "flats", ""}, flats, 0},
    {{"torque", "for 1 kN", "N\xc2\xb7m"}, per_kN, 0},
    {{"torque for", "1000 lbf", "ft-lbf"}, per_klbf, 0},
    {{"wanted", "force", "N\xc2\xb7m"}, wanted_si, 0},
    {{"wanted", "force", ""}, wanted_us, 0},
    {{"at most", "force", "kN"}, limit_kN, 0},
    {{"at most", "force", "lbf"}, limit_lbf, 0},
    {{"at most", "torque", "N\xc2\xb7m"}, limit_si, 0},
    {{"at most", "torque", ""}, limit_us, 0},
};

/* Which of them, and in which order. */
static int choose(column *c, int us, int wanted)
{
    static const int si_first[] = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9};
    static const int us_first[] = {0, 1, 3, 2, 5, 4, 7, 6, 9, 8};
    int n = 0;
    for (int i = 0; i < COLUMNS_MOST; i++) {
        const int which = us ? us_first[i] : si_first[i];
        if (wanted || (which != 4 && which != 5))
            c[n++] = all[which];
    }
    return n;
}

/* One cell as text; cut at CELL - 1 bytes, which none of them reaches. */
static void cell_text(const column *c, const chart_row *row, char *text)
{
    page one = {0};
    c->cell(&one, row);
    copy_cut(text, CELL, one.text ? one.text : "");
    page_free(&one);
}

static void widen(column *c, const char *text)
{
    const size_t n = columns(text, strlen(text));
    if (n > c->width)
        c->width = n;
}

/* The first column stands left, the others right. */
static void put(page *p, const column *c, int first, const char *text)
{
    const size_t n = columns(text, strlen(text));
    if (first)
        page_add(p, text);
    for (size_t i = n; i < c->width + (first ? 0 : 2); i++)
        page_add(p, " ");
    if (!first)
        page_add(p, text);
}

static void end_line(page *p)
{
    while (p->length && p->text[p->length - 1] == ' ')
        p->text[--p->length] = '\0';
    page_add(p, "\n");
}

static void say_table(page *p, const request *r, const chart_table *t)
{
    column c[COLUMNS_MOST];
    char text[CELL];
    const int n = choose(c, r->us, is_known(r->question.in.chart.preload_N));
    for (int k = 0; k < n; k++) {
        for (int line = 0; line < HEAD_LINES; line++)
            widen(&c[k], c[k].head[line]);
        for (int i = 0; i < t->rows; i++) {
            cell_text(&c[k], &t->row[i], text);
            widen(&c[k], text);
        }
    }
    for (int line = 0; line < HEAD_LINES; line++) {
        for (int k = 0; k < n; k++)
            put(p, &c[k], k == 0, c[k].head[line]);
        end_line(p);
    }
    for (int i = 0; i < t->rows; i++) {
        /* a rule every five rows keeps the eye on its line */
        if (i % 5 == 0)
            page_add(p, "\n");
        for (int k = 0; k < n; k++) {
            cell_text(&c[k], &t->row[i], text);
            put(p, &c[k], k == 0, text);
        }
        end_line(p);
    }
}

static void paragraph(page *p, size_t start)
{
    page_wrap(p, start, 0);
    page_add(p, "\n");
}

static void say_factor(page *p, const request *r, const chart_table *t)
{
    const size_t start = p->length;
    double low = INFINITY, high = -INFINITY;
    for (int i = 0; i < t->rows; i++) {
        low = fmin(low, t->row[i].chart.nut_factor);
        high = fmax(high, t->row[i].chart.nut_factor);
    }
    page_add(p, "Nut factor K ");
    page_number(p, low, 3);
    if (high - low > 0.0005) {
        page_add(p, KEEP ".." KEEP);
        page_number(p, high, 3);
        page_add(p, " by size");
    }
    const sw_lubrication_out l = sw_lubrication(t->lubrication, NULL);
    if (request_given(r, "--nut-factor")) {
        page_add(p, " as given");
    } else if (!l.status) {
        page_add(p, ", ");
        page_add(p, l.label);
        page_add(p, " (");
        page_add(p, l.source);
        page_add(p, ")");
        if (is_known(l.nut_factor_low)) {
            page_add(p, "; usual ");
            page_number(p, l.nut_factor_low, 3);
            page_add(p, KEEP ".." KEEP);
            page_number(p, l.nut_factor_high, 3);
            page_add(p, ". The force goes as 1/K: if K is really ");
            page_number(p, l.nut_factor_low, 3);
            page_add(p, ", the torques above make ");
            page_number(p, low / l.nut_factor_low, 3);
            page_add(p, " times the force, the last column included");
        }
    }
    page_add(p, ".");
    paragraph(p, start);
}

void say_chart(page *p, const request *r, const chart_table *t)
{
    const double wanted = r->question.in.chart.preload_N;
    size_t start = p->length;
    page_add(p, "Torque on clamping nuts, series ");
    page_add(p, t->series);
    page_add(p, ", studs of ");
    say_grade(p, t->grade);
    if (!request_given(r, "--grade"))
        page_add(p, " (assumed)");
    if (is_known(wanted)) {
        page_add(p, "; wanted force in the stud ");
        say_force(p, r->us, wanted);
    }
    paragraph(p, start);
    page_add(p, "\n");
    say_table(p, r, t);
    page_add(p, "\n");
    start = p->length;
    page_add(p, "At most: ");
    say_percent(p, t->proof_fraction);
    page_add(p, " of the proof load (of the yield where a grade has none); do "
                "not exceed it. A dash: the grade does not cover the size.");
    if (r->warnings & SW_WARN_OVER_PROOF)
        page_add(p, " A !: the wanted force is above that.");
    paragraph(p, start);
    say_factor(p, r, t);
    start = p->length;
    page_add(p, "Catalogue maxima are not clamp settings: a thin part wants "
                "far less. The machine maker's limit for the T-slot governs.");
    paragraph(p, start);
    say_not_checked(p, r->topic);
    say_caution(p);
}
