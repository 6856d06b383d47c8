/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Trials: many draws, in any number of threads, with one answer.
 *
 * The trials are cut into blocks of fixed size. Each block draws from its own
 * generator, seeded from (seed, block), and writes to its own places, so it
 * does not matter which thread does it, nor when. GSL's seeds have 32 bits,
 * of which chance would give one to two blocks now and then; so the blocks of a
 * run are numbered through a one-to-one shuffle of 32 bits (the last step of
 * Appleby's MurmurHash3), twice, with the 64 bits of the mixed seed between
 * (SplitMix64 of Steele, Lea and Flood). Generators and distributions are GSL's
 * (L'Ecuyer's Tausworthe generator, ziggurat normals); the generator's state
 * lives on the block's stack, since GSL would call its error handler when an
 * allocation of its own fails.
 *
 * Threads take the next block by an atomic counter. Where a thread cannot be
 * made, the others do its share. Only the calling thread tells of progress.
 */
#include "base/trials.h"

#include <gsl/gsl_randist.h>
#include <gsl/gsl_rng.h>
#include <gsl/gsl_statistics_double.h>

#include <math.h>
#include <pthread.h>
#include <stdatomic.h>

enum { BLOCK = 4096, THREADS_MOST = 64 };

struct sw__chance {
    gsl_rng rng;
    uint64_t state[16];
};

double sw__uniform(sw__chance *c) { return gsl_rng_uniform(&c->rng); }

unsigned sw__coins(sw__chance *c)
{
    return (unsigned)(gsl_rng_get(&c->rng) >> 16);
}

double sw__normal(sw__chance *c)
{
    return gsl_ran_gaussian_ziggurat(&c->rng, 1);
}

static uint64_t mixed(uint64_t x)
{
    x += 0x9e3779b97f4a7c15u;
    x = (x ^ x >> 30) * 0xbf58476d1ce4e5b9u;
    x = (x ^ x >> 27) * 0x94d049bb133111ebu;
    return x ^ x >> 31;
}

static uint32_t shuffled(uint32_t x)
{
    x = (x ^ x >> 16) * 0x85ebca6bu;
    x = (x ^ x >> 13) * 0xc2b2ae35u;
    return x ^ x >> 16;
}

static uint32_t block_seed(uint64_t seed, size_t block)
{
    const uint64_t key = mixed(seed);
    return shuffled(shuffled((uint32_t)(key + block)) ^ (uint32_t)(key >> 32));
}

static void start(sw__chance *c, uint64_t seed, size_t block)
{
    _Static_assert(sizeof c->state >= 3 * sizeof(unsigned long),
                   "the generator's state");
    c->rng.type = gsl_rng_taus2;
    c->rng.state = c->state;
    gsl_rng_set(&c->rng, block_seed(seed, block));
}

typedef struct {
    size_t trials, blocks;
    uint64_t seed;
    sw__trial_block block;
    void *with;
    atomic_size_t next, done;
    atomic_int stop;
} job;

/* Does one block; 0 when there is none left. */
static int do_next(job *j)
{
    const size_t b = atomic_fetch_add(&j->next, 1);
    if (b >= j->blocks || atomic_load(&j->stop))
        return 0;
    const size_t first = b * BLOCK, left = j->trials - first;
    sw__chance c;
    start(&c, j->seed, b);
    j->block(&c, first, left < BLOCK ? left : BLOCK, j->with);
    atomic_fetch_add(&j->done, 1);
    return 1;
}

static void *work(void *with)
{
    while (do_next(with))
        ;
    return NULL;
}

int sw__trials(size_t trials, uint64_t seed, int threads, sw__trial_block block,
               void *with, int (*progress)(double done, void *with),
               void *progress_with)
{
    job j = {trials, (trials + BLOCK - 1) / BLOCK, seed, block, with, 0, 0, 0};
    pthread_t helper[THREADS_MOST];
    int helpers = 0, stopped = 0;
    double told = 0;
    while (helpers < threads - 1 && helpers < THREADS_MOST &&
           (size_t)helpers + 1 < j.blocks &&
           pthread_create(&helper[helpers], NULL, work, &j) == 0)
        helpers++;
    while (!stopped && do_next(&j)) {
        if (!progress)
            continue;
        told = (double)atomic_load(&j.done) / (double)j.blocks;
        stopped = progress(told, progress_with);
        if (stopped)
            atomic_store(&j.stop, 1);
    }
    for (int i = 0; i < helpers; i++)
        pthread_join(helper[i], NULL);
    if (progress && !stopped && told < 1) /* a helper had the last block */
        stopped = progress(1, progress_with);
    return stopped;
}

/* The value at a place (0 .. n - 1, not always whole) in the order of all, which
 * lies in this part: what is smaller stands before it, what is larger behind. */
static double at_place(double *value, size_t first, size_t end, double place)
{
    const size_t k = (size_t)place;
    const double low =
        gsl_stats_select(value + first, 1, end - first, k - first);
    if (k + 1 >= end || place <= (double)k)
        return low;
    double high = value[k + 1]; /* select leaves what is larger behind k */
    for (size_t i = k + 2; i < end; i++)
        high = value[i] < high ? value[i] : high;
    return low + (place - (double)k) * (high - low);
}

void sw__quantiles(double *value, size_t n, const double p[3], double q[3])
{
    double place[3];
    for (int i = 0; i < 3; i++)
        place[i] = p[i] * (double)(n - 1);
    q[1] = at_place(value, 0, n, place[1]);
    const size_t middle = (size_t)place[1];
    q[0] = at_place(value, 0, place[0] < (double)middle ? middle + 1 : n,
                    place[0]);
    q[2] = at_place(value, middle, n, place[2]);
}
