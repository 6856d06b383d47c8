/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fixtures on standard input, for scripts that compare (tests/reference): lines
 * as in fixture_lines.h, and
 *
 *   points      also answer for every load
 *   time        also say how much of the processor's time the call took
 *   solve       answers, then begins anew
 *
 * Answers: "total NAME=VALUE ..." with every number and word (a_b for "a b"), "point ..." for
 * each load, "time SECONDS", "bad MESSAGE" where it is refused, and "end".
 */
#include "fixture_lines.h"

#include <time.h>

typedef struct {
    sw_fixture *f;
    sw_hold_in in;
    int points, timed;
} state;

static void print_all(const char *what, const void *out, int structure)
{
    fputs(what, stdout);
    for (int i = 0; sw_field_at(structure, i); i++) {
        const sw_field *f = sw_field_at(structure, i);
        const char *at = (const char *)out + f->offset;
        double number;
        int word;
        char text[40];
        if (f->type == SW_FIELD_NUMBER) {
            memcpy(&number, at, sizeof number);
            sw_format(number, 12, text, sizeof text);
            printf(" %s=%s", f->name, number == SW_UNSET ? "none" : text);
        } else if (f->type == SW_FIELD_WORD) {
            memcpy(&word, at, sizeof word);
            snprintf(text, sizeof text, "%s",
                     word ? sw_word(f->words, word) : "none");
            for (char *c = text; *c; c++)
                if (*c == ' ')
                    *c = '_';
            printf(" %s=%s", f->name, text);
        }
    }
    putchar('\n');
}

static void solve(state *s)
{
    sw_error err;
    const clock_t start = clock();
    sw_hold *h = sw_hold_new(s->f, &s->in, NULL, NULL, &err);
    if (s->timed)
        printf("time %.6f\n", (double)(clock() - start) / CLOCKS_PER_SEC);
    if (!h) {
        printf("bad %s\n", err.message);
    } else {
        const sw_hold_out out = sw_hold_total(h, NULL);
        print_all("total", &out, SW_STRUCT_HOLD_OUT);
        for (int i = 0; s->points && i < (int)out.loads; i++) {
            const sw_hold_point_out p = sw_hold_point(h, i, NULL);
            print_all("point", &p, SW_STRUCT_HOLD_POINT_OUT);
        }
    }
    puts("end");
    fflush(stdout);
    sw_hold_free(h);
    sw_fixture_free(s->f);
    s->f = sw_fixture_new(NULL);
    sw_hold_defaults(&s->in);
    s->points = s->timed = 0;
}

int main(void)
{
    static char line[400];
    state s = {sw_fixture_new(NULL), {0}, 0, 0};
    sw_hold_defaults(&s.in);
    while (s.f && fgets(line, sizeof line, stdin)) {
        char kind[16] = "";
        sw_error err;
        err.message[0] = '\0';
        if (sscanf(line, "%15s", kind) != 1)
            continue;
        if (strcmp(kind, "solve") == 0)
            solve(&s);
        else if (strcmp(kind, "points") == 0)
            s.points = 1;
        else if (strcmp(kind, "time") == 0)
            s.timed = 1;
        else if (line_add(s.f, &s.in, &as_it_is, line, &err))
            printf("bad %s %s\n", err.message, line);
    }
    sw_fixture_free(s.f);
    return 0;
}
