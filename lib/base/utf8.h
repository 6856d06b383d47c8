/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_BASE_UTF8_H
#define SW_BASE_UTF8_H

#include "base/internal.h"

#include <stddef.h>

/* Bytes of the UTF-8 character at `at`, of which `room` bytes may be looked at;
 * 0 when there is none: too long a form, half a surrogate pair, past the last
 * character. */
SW_SIBLING size_t sw__utf8(const char *at, size_t room);

#endif
