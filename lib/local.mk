# SPDX-License-Identifier: GPL-3.0-or-later
#
# libstrapwise. Order: the way of the force.

lib_LTLIBRARIES += libstrapwise.la libstrapwise-fixture.la
libstrapwise_la_CPPFLAGS = \
	$(AM_CPPFLAGS) -I$(top_srcdir)/lib -I$(top_builddir) \
	$(GSL_CFLAGS) -DSW_BUILD \
	-DSW__VERSION='"$(PACKAGE_VERSION)"' \
	-DSW__TABLES_VERSION='"$(SW_TABLES_VERSION)"'
libstrapwise_la_LDFLAGS = -version-info $(SW_INTERFACE) -no-undefined
libstrapwise_la_LIBADD = $(GSL_LIBS)
libstrapwise_la_SOURCES = \
	lib/base/internal.h \
	lib/base/status.c \
	lib/base/words.c \
	lib/base/field.c lib/base/structs.c \
	lib/base/number.h lib/base/number.c \
	lib/base/units.c lib/base/say.c \
	lib/base/root.h lib/base/root.c \
	lib/base/material.h lib/base/material.c \
	lib/base/settle.h \
	lib/base/trials.h lib/base/trials.c \
	lib/base/distribution.h lib/base/distribution.c \
	lib/base/quantile.c \
	lib/base/tolerance.h lib/base/tolerance.c \
	lib/base/utf8.h lib/base/utf8.c \
	lib/base/csv.h lib/base/csv_reader.h lib/base/csv_fault.c \
	lib/base/csv_header.c lib/base/csv.c \
	lib/fastener/designation.h lib/fastener/designation.c \
	lib/fastener/fit.h lib/fastener/fit.c \
	lib/fastener/thread.c \
	lib/fastener/grade.c \
	lib/fastener/lubrication.c \
	lib/fastener/nut.h lib/fastener/nut.c \
	lib/fastener/method.c \
	lib/fastener/torque.h lib/fastener/torque_resolve.c \
	lib/fastener/torque.c \
	lib/fastener/spread.h lib/fastener/spread_resolve.c \
	lib/fastener/spread.c \
	lib/fastener/window.h lib/fastener/window.c \
	lib/fastener/chart.c \
	lib/fastener/strip.h lib/fastener/strip_resolve.c \
	lib/fastener/strip.c \
	lib/fastener/tool.h lib/fastener/tool_resolve.c \
	lib/fastener/tool_choice.c lib/fastener/tool_file.c \
	lib/fastener/tool.c \
	lib/fastener/fit_line.h lib/fastener/fit_line.c \
	lib/fastener/pairs.h lib/fastener/pairs.c \
	lib/fastener/calibrate.h lib/fastener/calibrate_resolve.c \
	lib/fastener/sample.c lib/fastener/calibrate_judge.c \
	lib/fastener/calibrate_friction.c lib/fastener/calibrate.c \
	lib/fastener/calibrate_plot.c \
	lib/clamp/seat.h lib/clamp/seat.c \
	lib/clamp/strap_balance.h lib/clamp/strap_balance.c \
	lib/clamp/strap_fields.c \
	lib/clamp/strap_resolve.h lib/clamp/strap_resolve.c \
	lib/clamp/strap_unused.c \
	lib/clamp/strap_geometry.h lib/clamp/strap_geometry.c \
	lib/clamp/strap_band.h lib/clamp/strap_band.c \
	lib/clamp/strap.h lib/clamp/strap.c \
	lib/clamp/ask_tilt.c \
	lib/clamp/ask.c \
	lib/clamp/matters.c \
	lib/clamp/engage.h lib/clamp/engage.c \
	lib/clamp/weakest.c \
	lib/clamp/turn.c \
	lib/clamp/remark.h lib/clamp/remark_reason.c \
	lib/clamp/remark_change.c lib/clamp/remark.c \
	lib/clamp/strap_draw.h lib/clamp/strap_draw.c \
	lib/clamp/strap_spread.c \
	lib/clamp/strap_window.c \
	lib/cut/cut_material.h lib/cut/cut_material.c \
	lib/cut/kienzle.h lib/cut/kienzle.c \
	lib/cut/turning_resolve.c lib/cut/turning.h lib/cut/turning.c \
	lib/cut/milling_resolve.c lib/cut/milling.h lib/cut/milling_load.c \
	lib/cut/milling_swing.c lib/cut/milling.c \
	lib/cut/drilling_resolve.c lib/cut/drilling.h lib/cut/drilling.c \
	lib/base/room.h lib/base/room.c \
	lib/clamp/hertz.h lib/clamp/hertz.c \
	lib/clamp/screw.c lib/clamp/cylinder.c lib/clamp/swing.c \
	lib/clamp/vacuum.c lib/clamp/adhesive.c lib/clamp/bar.c \
	lib/clamp/contact.c lib/clamp/pad.c \
	lib/hold/face_turn.h lib/hold/face_turn.c lib/hold/disc.c \
	lib/hold/chuck.c lib/hold/squeeze.c lib/hold/couple.c lib/hold/tripod.c \
	lib/sheet/svg.h lib/sheet/svg.c \
	lib/sheet/scale.h lib/sheet/scale.c \
	lib/sheet/lettering.h lib/sheet/lettering.c \
	lib/sheet/hatch.h lib/sheet/hatch.c \
	lib/sheet/arrow.h lib/sheet/arrow.c \
	lib/sheet/vial.h lib/sheet/vial.c \
	lib/sheet/strap_picture.h lib/sheet/strap_place.c \
	lib/sheet/strap_fixture.c lib/sheet/strap_bar.c lib/sheet/strap_stud.c \
	lib/sheet/strap_side.c lib/sheet/strap_lanes.c \
	lib/sheet/strap_plan.c \
	lib/sheet/strap_words.c lib/sheet/strap_notes.c \
	lib/sheet/strap_drawing.c \
	lib/sheet/tilt_curve.h lib/sheet/tilt_curve.c \
	lib/sheet/tilt_words.h lib/sheet/tilt_words.c \
	lib/sheet/tilt_sheet.h lib/sheet/tilt_sheet.c \
	lib/sheet/tilt_scales.c \
	lib/sheet/tilt_places.h lib/sheet/tilt_places.c lib/sheet/tilt_names.c \
	lib/sheet/tilt_plot.c \
	lib/hold/fixture_fields.c lib/hold/hold_fields.c \
	lib/job/job_fields.c \
	lib/hold/tight.h lib/hold/tight_resolve.c lib/hold/tight_need.c \
	lib/hold/tight.c \
	lib/hold/tight_remedy.c
nodist_libstrapwise_la_SOURCES = $(TABLE_SOURCES) base/tables.h

# libstrapwise-fixture: a whole part on its supports.
libstrapwise_fixture_la_CPPFLAGS = \
	$(AM_CPPFLAGS) -I$(top_srcdir)/lib $(YAML_CFLAGS) -DSW_BUILD
libstrapwise_fixture_la_LDFLAGS = -version-info $(SW_INTERFACE) -no-undefined
libstrapwise_fixture_la_LIBADD = libstrapwise.la $(GLPK_LIBS) $(YAML_LIBS)
libstrapwise_fixture_la_SOURCES = \
	lib/hold/fixture.h lib/hold/fixture_parts.c lib/hold/fixture.c \
	lib/job/blame.h lib/job/blame.c lib/job/letters.c \
	lib/job/tree.h lib/job/tree.c \
	lib/job/reader.h lib/job/reader.c lib/job/values.c \
	lib/job/outline.h lib/job/outline.c \
	lib/job/job.h lib/job/notes.c lib/job/part.c lib/job/contacts.c \
	lib/job/tools.c \
	lib/job/clamp.h lib/job/clamp_strap.c lib/job/clamp_others.c \
	lib/job/clamp_pad.c lib/job/clamp_strength.c lib/job/clamp_place.c \
	lib/job/clamps.c \
	lib/job/remarks.c \
	lib/job/operation.h lib/job/path.c lib/job/cut.h lib/job/cut_turn.c \
	lib/job/cuts.c \
	lib/job/operations.c \
	lib/job/job.c lib/job/job_answers.c lib/job/job_fixture.c lib/job/job_rocks.c \
	lib/sheet/hold_map.h lib/sheet/map_places.c lib/sheet/map_contacts.c \
	lib/sheet/map_points.c lib/sheet/map_words.c lib/sheet/hold_map.c \
	lib/hold/rig.h lib/hold/rig.c \
	lib/hold/bed.h lib/hold/bed.c \
	lib/hold/guard.h lib/hold/guard.c \
	lib/hold/joint.h lib/hold/block.c lib/hold/joint.c \
	lib/hold/joint_polish.c lib/hold/joint_read.c \
	lib/hold/planar.h lib/hold/planar.c \
	lib/hold/climb.h lib/hold/climb.c \
	lib/hold/engine.h lib/hold/engine.c lib/hold/load.c lib/hold/corner.c lib/hold/scale.c lib/hold/least.c \
	lib/hold/hold.h lib/hold/hold_resolve.c lib/hold/rest.c lib/hold/trial.c \
	lib/hold/hold.c lib/hold/hold_new.c lib/hold/hold_answer.c

pkgconfigdir = $(libdir)/pkgconfig
pkgconfig_DATA = lib/strapwise.pc lib/strapwise-fixture.pc
