/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Everything of libstrapwise and libstrapwise-fixture: a whole part on
 *        its supports.
 */
#ifndef STRAPWISE_FIXTURE_H
#define STRAPWISE_FIXTURE_H

#include <strapwise.h>
#include <strapwise/fixture.h>
#include <strapwise/hold.h>
#include <strapwise/job.h>
#include <strapwise/hold_map.h>

#endif
