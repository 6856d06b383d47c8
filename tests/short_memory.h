/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Between memory_short() and memory_plenty() an allocation of more than 100 MB
 * fails. The address sanitizer needs the whole address space for itself and is
 * told the same by its own option.
 */
#ifndef TESTS_SHORT_MEMORY_H
#define TESTS_SHORT_MEMORY_H

#include <sys/resource.h>

#if defined(__has_feature)
#if __has_feature(address_sanitizer)
#define UNDER_SANITIZER 1
#endif
#endif
#ifdef __SANITIZE_ADDRESS__
#define UNDER_SANITIZER 1
#endif

#ifdef UNDER_SANITIZER
const char *__asan_default_options(void);
const char *__asan_default_options(void)
{
    return "allocator_may_return_null=1:max_allocation_size_mb=100";
}
static void memory_short(void) {}
static void memory_plenty(void) {}
#else
static struct rlimit plenty;
static void memory_short(void)
{
    getrlimit(RLIMIT_AS, &plenty);
    const struct rlimit tight = {100u << 20, plenty.rlim_max};
    setrlimit(RLIMIT_AS, &tight);
}
static void memory_plenty(void) { setrlimit(RLIMIT_AS, &plenty); }
#endif

#endif
