/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_BASE_MATERIAL_H
#define SW_BASE_MATERIAL_H

#include <strapwise/material.h>

/* sw_material() for a field of another name, which gets the blame. */
sw_material_out sw__material(const char *key, const char *field, sw_error *err);

#endif
