/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Everything of libstrapwise, in the order of the force: table, thread,
 *        torque, strap.
 */
#ifndef STRAPWISE_H
#define STRAPWISE_H

#include <strapwise/status.h>
#include <strapwise/units.h>
#include <strapwise/say.h>
#include <strapwise/quantile.h>
#include <strapwise/words.h>
#include <strapwise/field.h>
#include <strapwise/thread.h>
#include <strapwise/grade.h>
#include <strapwise/lubrication.h>
#include <strapwise/material.h>
#include <strapwise/nut.h>
#include <strapwise/strip.h>
#include <strapwise/method.h>
#include <strapwise/torque.h>
#include <strapwise/spread.h>
#include <strapwise/tool.h>
#include <strapwise/chart.h>
#include <strapwise/drawing.h>
#include <strapwise/calibrate.h>
#include <strapwise/strap.h>
#include <strapwise/ask.h>
#include <strapwise/weakest.h>
#include <strapwise/turn.h>
#include <strapwise/tilt_plot.h>
#include <strapwise/remark.h>
#include <strapwise/strap_spread.h>
#include <strapwise/strap_drawing.h>
#include <strapwise/cut_material.h>
#include <strapwise/cut_load.h>
#include <strapwise/turning.h>
#include <strapwise/milling.h>
#include <strapwise/drilling.h>
#include <strapwise/screw.h>
#include <strapwise/cylinder.h>
#include <strapwise/swing.h>
#include <strapwise/vacuum.h>
#include <strapwise/adhesive.h>
#include <strapwise/bar.h>
#include <strapwise/contact.h>
#include <strapwise/pad.h>
#include <strapwise/disc.h>
#include <strapwise/chuck.h>
#include <strapwise/squeeze.h>
#include <strapwise/couple.h>
#include <strapwise/tripod.h>
#include <strapwise/tight.h>

#endif
