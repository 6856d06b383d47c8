/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef SW_FASTENER_NUT_H
#define SW_FASTENER_NUT_H

#include <strapwise/nut.h>

/* Class of nut that goes with a grade of stud, or "" where none is known. */
const char *sw__nut_for(const char *grade);

#endif
