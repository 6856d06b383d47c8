/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the answers on turning, milling and drilling have in common.
 */
#ifndef STRAPWISE_CLI_SAY_CUT_H
#define STRAPWISE_CLI_SAY_CUT_H

#include "cli.h"

/* a chip or a feed: three digits, however thin */
void say_thin(page *p, int us, double mm);
/* what is cut, and the group that stands for it */
void say_metal(page *p, const char *material);
void say_one_force(page *p, int us, const char *label, double N);
/* entries; what is not known is left out */
void say_second(page *p, int us, double by_chip, double by_volume);
void say_chip(page *p, int us, double mm, double most_mm, double kc);
void say_drive(page *p, int us, double W, double rpm, double m_per_min,
               double mm3_per_min);

#endif
