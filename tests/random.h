/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Numbers that look random and are the same everywhere: splitmix64 (Steele,
 * Lea and Flood 2014, public domain algorithm).
 */
#ifndef TESTS_RANDOM_H
#define TESTS_RANDOM_H

#include <math.h>
#include <stdint.h>
#include <string.h>

typedef struct {
    uint64_t state;
} randoms;

static inline uint64_t random_bits(randoms *r)
{
    uint64_t z = r->state += 0x9e3779b97f4a7c15u;
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
    return z ^ (z >> 31);
}

/* low <= number < high */
static inline double random_between(randoms *r, double low, double high)
{
    return low + (high - low) * ((double)(random_bits(r) >> 11) * 0x1p-53);
}

/* evenly spread over the logarithm; low > 0 */
static inline double random_log(randoms *r, double low, double high)
{
    return fmin(high, exp(random_between(r, log(low), log(high))));
}

/* 0 .. count - 1 */
static inline int random_below(randoms *r, int count)
{
    return (int)(random_bits(r) % (uint64_t)count);
}

/* any finite double, every exponent as likely */
static inline double random_double(randoms *r)
{
    double value;
    do {
        const uint64_t bits = random_bits(r);
        memcpy(&value, &bits, sizeof value);
    } while (!isfinite(value));
    return value;
}

#endif
