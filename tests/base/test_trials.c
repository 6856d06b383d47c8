/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Trials: the same draws with any number of threads, and draws that are as
 * they should be. It is not exported, so its source is compiled into this
 * program.
 */
#include "base/trials.h"

#include "../gsl_handler.h"
#include "../near.h"
#include "../random.h"

#include <pthread.h>
#include <stdatomic.h>
#include <stdio.h>

enum { BLOCK = 4096 }; /* as in trials.c; blocks_of() finds out */

/* Three numbers of each trial. */
typedef struct {
    double *value;
    pthread_t caller;
    atomic_int others; /* blocks that another thread did */
} harvest;

static void draw(sw__chance *c, size_t first, size_t count, void *with)
{
    harvest *h = with;
    for (size_t i = first; i < first + count; i++) {
        h->value[3 * i] = sw__uniform(c);
        h->value[3 * i + 1] = sw__normal(c);
        h->value[3 * i + 2] = sw__uniform(c);
    }
    if (!pthread_equal(h->caller, pthread_self()))
        atomic_fetch_add(&h->others, 1);
}

static double *drawn(size_t trials, uint64_t seed, int threads, int *others)
{
    harvest h = {malloc(trials * 3 * sizeof(double)), pthread_self(), 0};
    must(h.value != NULL, "memory");
    for (size_t i = 0; i < 3 * trials; i++)
        h.value[i] = NAN;
    ck_assert_int_eq(sw__trials(trials, seed, threads, draw, &h, NULL, NULL),
                     0);
    for (size_t i = 0; i < 3 * trials; i++)
        must(isfinite(h.value[i]), "trial %d was left out", (int)(i / 3));
    if (others)
        *others = atomic_load(&h.others);
    return h.value;
}

START_TEST(threads_alike)
{
    enum { TRIALS = 200000 };
    static const int threads[] = {2, 3, 8, 64, 1000};
    double *one = drawn(TRIALS, 7, 1, NULL);
    int helped = 0;
    for (size_t i = 0; i < sizeof threads / sizeof threads[0]; i++) {
        int others;
        double *many = drawn(TRIALS, 7, threads[i], &others);
        must(memcmp(one, many, 3 * TRIALS * sizeof *one) == 0, "%d threads",
             threads[i]);
        helped += others;
        free(many);
    }
    must(helped > 0, "no other thread ever did a block");
    free(one);
}
END_TEST

START_TEST(seeds_differ)
{
    static const uint64_t seed[] = {0,          1,          2,
                                    3,          1u << 31,   0xffffffffu,
                                    1ull << 32, 1ull << 52, (1ull << 53) - 1,
                                    1ull << 53};
    enum { SEEDS = sizeof seed / sizeof seed[0], TRIALS = 5000 };
    double *value[SEEDS];
    for (int i = 0; i < SEEDS; i++) {
        value[i] = drawn(TRIALS, seed[i], 2, NULL);
        double *again = drawn(TRIALS, seed[i], 1, NULL);
        must(memcmp(value[i], again, 3 * TRIALS * sizeof *again) == 0, "seed");
        free(again);
        for (int k = 0; k < i; k++) { /* anywhere in step */
            int same = 0;
            for (int n = 0; n < 3 * TRIALS; n++)
                same += value[i][n] == value[k][n];
            must(same < 10, "seeds %d and %d agree in %d draws", i, k, same);
        }
    }
    for (int i = 0; i < SEEDS; i++)
        free(value[i]);
}
END_TEST

/* Where a block ends: fewer trials are the first of more, each is done once,
 * and the next block does not go on where the last one ended. */
typedef struct {
    size_t first[8], count[8];
    int blocks;
} ledger;

static void note(sw__chance *c, size_t first, size_t count, void *with)
{
    ledger *l = with;
    (void)c;
    must(l->blocks < 8, "too many blocks");
    l->first[l->blocks] = first;
    l->count[l->blocks++] = count;
}

START_TEST(block_edges)
{
    static const struct {
        size_t trials, last;
        int blocks;
    } row[] = {{1, 1, 1},    {2, 2, 1},       {4095, 4095, 1}, {4096, 4096, 1},
               {4097, 1, 2}, {8192, 4096, 2}, {8193, 1, 3}};
    double *many = drawn(3 * BLOCK, 9, 1, NULL);
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        ledger l = {{0}, {0}, 0};
        ck_assert_int_eq(sw__trials(row[i].trials, 9, 1, note, &l, NULL, NULL),
                         0);
        ck_assert_int_eq(l.blocks, row[i].blocks);
        size_t next = 0;
        for (int b = 0; b < l.blocks; b++) {
            ck_assert_uint_eq(l.first[b], next);
            next += l.count[b];
        }
        ck_assert_uint_eq(next, row[i].trials);
        ck_assert_uint_eq(l.count[l.blocks - 1], row[i].last);
        double *few = drawn(row[i].trials, 9, 4, NULL);
        must(memcmp(few, many, 3 * row[i].trials * sizeof *few) == 0, "%d",
             (int)row[i].trials);
        free(few);
    }
    free(many);
}
END_TEST

/* The first draws of block after block: no two blocks of a run have the same,
 * as they would if their generators started alike. Three uniforms are 96 bits;
 * two alike by chance: 1e-21. */
typedef struct {
    double first[3];
    size_t block;
} opening;

static int by_value(const void *a, const void *b)
{
    return memcmp(((const opening *)a)->first, ((const opening *)b)->first,
                  sizeof((opening *)0)->first);
}

static void open_block(sw__chance *c, size_t first, size_t count, void *with)
{
    opening *o = (opening *)with + first / BLOCK;
    (void)count;
    for (int i = 0; i < 3; i++)
        o->first[i] = sw__uniform(c);
    o->block = first / BLOCK;
}

static int twins(uint64_t seed, size_t blocks)
{
    opening *o = malloc(blocks * sizeof *o);
    must(o != NULL, "memory");
    ck_assert_int_eq(
        sw__trials(blocks * BLOCK, seed, 2, open_block, o, NULL, NULL), 0);
    qsort(o, blocks, sizeof *o, by_value);
    int alike = 0;
    for (size_t i = 1; i < blocks; i++)
        alike += by_value(&o[i - 1], &o[i]) == 0;
    free(o);
    return alike;
}

START_TEST(blocks_differ)
{
    enum { BLOCKS = 10000 };
    for (uint64_t seed = 0; seed < 500; seed++)
        must(twins(seed, BLOCKS) == 0, "seed %d: blocks with the same draws",
             (int)seed);
}
END_TEST

static int ascending(const void *a, const void *b)
{
    const double x = *(const double *)a, y = *(const double *)b;
    return (x > y) - (x < y);
}

/* Independent: sorted, between the order statistics around 1 + (n - 1) p. */
static double by_sorting(const double *sorted, size_t n, double p)
{
    const double place = p * (double)(n - 1);
    const size_t k = (size_t)floor(place);
    const double part = place - (double)k;
    return k + 1 < n ? sorted[k] + part * (sorted[k + 1] - sorted[k])
                     : sorted[n - 1];
}

/* One quantile of three; the others stand at its sides or on it. */
static double one_quantile(double *value, size_t n, double p)
{
    const double all[3] = {p / 2, p, (1 + p) / 2};
    double got[3];
    sw__quantiles(value, n, all, got);
    return got[1];
}

START_TEST(quantiles)
{
    enum { MOST = 3000 };
    static const double fixed[] = {0, 1, 0.5, 0.025, 0.975, 1e-9, 1 - 1e-9};
    static double value[MOST], sorted[MOST];
    randoms r = {51};
    for (int i = 0; i < 2000; i++) {
        const size_t n =
            i < 200 ? 1 + (size_t)i % 20 : 1 + (size_t)random_below(&r, MOST);
        const int kinds = i % 3; /* all different, few values, in order */
        for (size_t k = 0; k < n; k++)
            value[k] = kinds == 0   ? random_double(&r) / 4
                       : kinds == 1 ? random_below(&r, 5)
                                    : (double)k * (i % 2 ? 1 : -1);
        memcpy(sorted, value, n * sizeof *value);
        qsort(sorted, n, sizeof *sorted, ascending);
        for (int q = 0; q < 10; q++) { /* one after the other, same array */
            const double p = q < 7 ? fixed[q] : random_between(&r, 0, 1);
            const double all[3] = {q % 2 ? p / 2 : p, p,
                                   q % 3 ? (1 + p) / 2 : p};
            double got[3];
            sw__quantiles(value, n, all, got);
            for (int k = 0; k < 3; k++)
                near(got[k], by_sorting(sorted, n, all[k]), 0, 0);
        }
        qsort(value, n, sizeof *value, ascending);
        must(memcmp(value, sorted, n * sizeof *value) == 0,
             "values were changed, not only their order");
    }
    double single = 3;
    for (double p = 0; p <= 1; p += 0.25)
        near(one_quantile(&single, 1, p), 3, 0, 0);
    double pair[] = {4, 2};
    near(one_quantile(pair, 2, 0.25), 2.5, 0, 0);
    double infinite[] = {INFINITY, 1, -INFINITY};
    near(one_quantile(infinite, 3, 0.5), 1, 0, 0);
}
END_TEST

/* Largest distance of the drawn distribution from the wanted one, times the
 * square root of n: Kolmogorov and Smirnov. Beyond 1.949 in one of a thousand
 * samples (2 exp(-2 x^2) = 0.001). */
static double smirnov(double *value, size_t n, double (*part_under)(double))
{
    qsort(value, n, sizeof *value, ascending);
    double most = 0;
    for (size_t i = 0; i < n; i++) {
        const double F = part_under(value[i]);
        most = fmax(most, fmax(F - (double)i / (double)n,
                               (double)(i + 1) / (double)n - F));
    }
    return most * sqrt((double)n);
}

static double uniform_part(double x) { return x < 0 ? 0 : x > 1 ? 1 : x; }
static double normal_part(double x) { return erfc(-x / sqrt(2)) / 2; }

/* Each check at one in a thousand or less (3.3 standard errors), seed 1 as it
 * stands; none was chosen. */
START_TEST(distributions)
{
    enum { TRIALS = 400000 };
    double *all = drawn(TRIALS, 1, 2, NULL);
    double *one = malloc(TRIALS * sizeof *one);
    must(one != NULL, "memory");
    const double root = sqrt(TRIALS);
    for (int kind = 0; kind < 3; kind++) {
        const int normal = kind == 1;
        double sum = 0, square = 0, fourth = 0, neighbour = 0;
        const double mean = normal ? 0 : 0.5;
        const double sigma = normal ? 1 : sqrt(1 / 12.0);
        for (int i = 0; i < TRIALS; i++) {
            const double v = all[3 * i + kind], z = (v - mean) / sigma;
            must(normal || (v >= 0 && v < 1), "%g", v);
            one[i] = v;
            sum += z;
            square += z * z;
            fourth += z * z * z * z;
            if (i)
                neighbour += z * (all[3 * i - 3 + kind] - mean) / sigma;
        }
        /* standard errors: variance of z^2 is the fourth moment less 1: 2 and
         * 0.8; of z^4 of a normal: 105 - 9 */
        near(sum / TRIALS, 0, 3.3 / root, 0);
        near(square / TRIALS, 1, 3.3 * sqrt(normal ? 2 : 0.8) / root, 0);
        if (normal)
            near(fourth / TRIALS, 3, 3.3 * sqrt(96) / root, 0);
        near(neighbour / TRIALS, 0, 3.3 / root, 0);
        const double far =
            smirnov(one, TRIALS, normal ? normal_part : uniform_part);
        must(far < 1.949, "kind %d: Kolmogorov-Smirnov %g", kind, far);
        must(far > 0.3, "kind %d: too even, %g", kind, far); /* one in 1e5 */
    }
    double cross = 0; /* of one trial's normal and uniform */
    for (int i = 0; i < TRIALS; i++)
        cross += all[3 * i + 1] * (all[3 * i + 2] - 0.5) * sqrt(12);
    near(cross / TRIALS, 0, 3.3 / root, 0);
    free(one);
    free(all);
}
END_TEST

/* First draws of the blocks are as random as those inside one, and not
 * alike from one block, nor from one seed, to the next. */
START_TEST(first_draws)
{
    enum { BLOCKS = 20000 };
    static opening o[BLOCKS];
    static double value[BLOCKS];
    ck_assert_int_eq(
        sw__trials((size_t)BLOCKS * BLOCK, 1, 2, open_block, o, NULL, NULL), 0);
    double neighbour = 0;
    for (int b = 0; b < BLOCKS; b++) {
        value[b] = o[b].first[0];
        if (b)
            neighbour += 12 * (o[b].first[0] - 0.5) * (o[b - 1].first[0] - 0.5);
    }
    near(neighbour / BLOCKS, 0, 3.3 / sqrt(BLOCKS), 0);
    must(smirnov(value, BLOCKS, uniform_part) < 1.949, "first of each block");
    neighbour = 0;
    for (int seed = 0; seed < BLOCKS; seed++) {
        ck_assert_int_eq(
            sw__trials(1, (uint64_t)seed, 1, open_block, o, NULL, NULL), 0);
        value[seed] = o[0].first[0];
        if (seed)
            neighbour += 12 * (value[seed] - 0.5) * (value[seed - 1] - 0.5);
    }
    near(neighbour / BLOCKS, 0, 3.3 / sqrt(BLOCKS), 0);
    must(smirnov(value, BLOCKS, uniform_part) < 1.949, "first of each seed");
}
END_TEST

typedef struct {
    double last;
    int calls, end_at, foreign;
    pthread_t caller;
} told;

static int listen(double done, void *with)
{
    told *t = with;
    must(done > 0 && done <= 1, "progress %g", done);
    must(done >= t->last, "progress fell from %g to %g", t->last, done);
    t->last = done;
    t->calls++;
    t->foreign += !pthread_equal(t->caller, pthread_self());
    return t->calls == t->end_at ? 77 : 0;
}

START_TEST(progress)
{
    enum { TRIALS = 30 * BLOCK + 1 };
    static const int threads[] = {1, 2, 3, 8, 64};
    for (size_t i = 0; i < sizeof threads / sizeof threads[0]; i++)
        for (int again = 0; again < 5; again++) {
            harvest h = {malloc(TRIALS * 3 * sizeof(double)), pthread_self(),
                         0};
            must(h.value != NULL, "memory");
            told t = {0, 0, 0, 0, pthread_self()};
            ck_assert_int_eq(
                sw__trials(TRIALS, 1, threads[i], draw, &h, listen, &t), 0);
            near(t.last, 1, 0, 0);
            must(t.calls >= 1 && t.calls <= 31 + 1, "%d calls", t.calls);
            must(threads[i] > 1 || t.calls == 31, "%d calls", t.calls);
            ck_assert_int_eq(t.foreign, 0);
            free(h.value);
        }
}
END_TEST

/* The run ends with the value that progress gave, and soon. */
START_TEST(ended)
{
    enum { TRIALS = 400 * BLOCK };
    for (int threads = 1; threads <= 8; threads *= 2) {
        ledger l = {{0}, {0}, 0};
        told t = {0, 0, 3, 0, pthread_self()};
        if (threads == 1) {
            ck_assert_int_eq(sw__trials(TRIALS, 1, 1, note, &l, listen, &t),
                             77);
            ck_assert_int_eq(l.blocks, 3);
        } else {
            harvest h = {malloc((size_t)TRIALS * 3 * sizeof(double)),
                         pthread_self(), 0};
            must(h.value != NULL, "memory");
            ck_assert_int_eq(
                sw__trials(TRIALS, 1, threads, draw, &h, listen, &t), 77);
            must(t.last < 1, "ran to its end");
            free(h.value);
        }
        ck_assert_int_eq(t.calls, 3);
        ck_assert_int_eq(t.foreign, 0);
    }
}
END_TEST

/* GSL's error handler is the caller's and is never reached. */
START_TEST(no_handler)
{
    count_gsl_errors();
    for (uint64_t seed = 0; seed < 200; seed++)
        free(drawn(1, seed, 1, NULL));
    double one = 1;
    near(one_quantile(&one, 1, 0), 1, 0, 0);
    near(one_quantile(&one, 1, 1), 1, 0, 0);
    ck_assert_int_eq(gsl_errors(), 0);
}
END_TEST

int main(void)
{
    return RUN_TESTS("trials", threads_alike, seeds_differ, block_edges,
                     blocks_differ, quantiles, distributions, first_draws,
                     progress, ended, no_handler);
}
