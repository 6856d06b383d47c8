# SPDX-License-Identifier: GPL-3.0-or-later
include_HEADERS = include/strapwise.h include/strapwise-fixture.h
roomincludedir = $(includedir)/strapwise
roominclude_HEADERS = \
	include/strapwise/ask.h \
	include/strapwise/calibrate.h \
	include/strapwise/chart.h \
	include/strapwise/cut_load.h \
	include/strapwise/cut_material.h \
	include/strapwise/drawing.h \
	include/strapwise/drilling.h \
	include/strapwise/field.h \
	include/strapwise/fixture.h \
	include/strapwise/grade.h \
	include/strapwise/hold.h \
	include/strapwise/hold_map.h \
	include/strapwise/job.h \
	include/strapwise/lubrication.h \
	include/strapwise/material.h \
	include/strapwise/method.h \
	include/strapwise/milling.h \
	include/strapwise/nut.h \
	include/strapwise/quantile.h \
	include/strapwise/remark.h \
	include/strapwise/say.h \
	include/strapwise/spread.h \
	include/strapwise/status.h \
	include/strapwise/strap.h \
	include/strapwise/strap_drawing.h \
	include/strapwise/strap_spread.h \
	include/strapwise/strip.h \
	include/strapwise/thread.h \
	include/strapwise/tight.h \
	include/strapwise/tilt_plot.h \
	include/strapwise/tool.h \
	include/strapwise/torque.h \
	include/strapwise/turn.h \
	include/strapwise/turning.h \
	include/strapwise/units.h \
	include/strapwise/weakest.h \
	include/strapwise/screw.h \
	include/strapwise/cylinder.h \
	include/strapwise/swing.h \
	include/strapwise/vacuum.h \
	include/strapwise/adhesive.h \
	include/strapwise/bar.h \
	include/strapwise/contact.h \
	include/strapwise/pad.h \
	include/strapwise/disc.h \
	include/strapwise/chuck.h \
	include/strapwise/squeeze.h \
	include/strapwise/couple.h \
	include/strapwise/tripod.h \
	include/strapwise/words.h
