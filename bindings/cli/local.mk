# SPDX-License-Identifier: GPL-3.0-or-later
#
# The command-line program. It uses the public headers alone.

bin_PROGRAMS += strapwise
strapwise_LDADD = libstrapwise-fixture.la libstrapwise.la
strapwise_SOURCES = \
	bindings/cli/cli.h \
	bindings/cli/main.c \
	bindings/cli/commands.c \
	bindings/cli/help.c \
	bindings/cli/options.c \
	bindings/cli/arguments.c \
	bindings/cli/spell.c \
	bindings/cli/topics.h bindings/cli/topics.c \
	bindings/cli/topics_clamp.c \
	bindings/cli/topic_fields.c bindings/cli/slots.c \
	bindings/cli/run_single.c \
	bindings/cli/run_strap.c bindings/cli/find.c \
	bindings/cli/spread.c bindings/cli/window.c \
	bindings/cli/run_methods.c \
	bindings/cli/run_clamp.c bindings/cli/say_clamp.c \
	bindings/cli/run_tight.c \
	bindings/cli/run_strip.c bindings/cli/run_weakest.c \
	bindings/cli/chart.h bindings/cli/run_chart.c \
	bindings/cli/run_cut.c bindings/cli/say_cut.h \
	bindings/cli/say_cut.c bindings/cli/say_milling.c \
	bindings/cli/cut_other.c \
	bindings/cli/run_tool.c bindings/cli/say_tool.c \
	bindings/cli/calibration.c \
	bindings/cli/run_calibrate.c bindings/cli/say_calibrate.c \
	bindings/cli/case.h bindings/cli/cases.c \
	bindings/cli/case_input.c bindings/cli/case_expect.c \
	bindings/cli/say.c bindings/cli/say_notes.c bindings/cli/say_matters.c \
	bindings/cli/say_thread.c bindings/cli/say_torque.c \
	bindings/cli/say_chart.c bindings/cli/say_strap.c \
	bindings/cli/json.c bindings/cli/json_parts.c \
	bindings/cli/json_answer.c \
	bindings/cli/input.c bindings/cli/page.c bindings/cli/output.c \
	bindings/cli/picture.c \
	bindings/cli/job.h bindings/cli/job_file.c bindings/cli/job_notes.c \
	bindings/cli/job_keys.c bindings/cli/job_clamps.c \
	bindings/cli/run_check.c bindings/cli/say_path.c \
	bindings/cli/run_hold.c bindings/cli/say_hold.c bindings/cli/say_rest.c \
	bindings/cli/json_hold.c
