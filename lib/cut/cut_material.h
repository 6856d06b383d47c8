/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_CUT_CUT_MATERIAL_H
#define SW_CUT_CUT_MATERIAL_H

#include "base/internal.h"

#include <strapwise/cut_material.h>

/* sw_cut_material() without an error record, NaN where there is no such name */
sw_cut_material_out sw__cut_row(const char *name);

#endif
