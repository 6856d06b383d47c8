# SPDX-License-Identifier: GPL-3.0-or-later
#
# The tests. Folders mirror lib/; "make check" runs the C suite, then the
# scripts. Names of tests stay different when .sh is cut off.

TEST_EXTENSIONS = .sh
SH_LOG_COMPILER = $(SHELL)

AM_TESTS_ENVIRONMENT = \
	srcdir='$(abs_top_srcdir)'; export srcdir; \
	builddir='$(abs_top_builddir)'; export builddir; \
	STRAPWISE='$(abs_top_builddir)/strapwise$(EXEEXT)'; export STRAPWISE; \
	CK_DEFAULT_TIMEOUT=120; export CK_DEFAULT_TIMEOUT; \
	AWK='$(AWK)'; CC='$(CC)'; CFLAGS='$(CFLAGS)'; LDFLAGS='$(LDFLAGS)'; \
	MAKE='$(MAKE)'; NM='$(NM)'; PKG_CONFIG='$(PKG_CONFIG)'; \
	PYTHON='$(PYTHON)'; \
	export AWK CC CFLAGS LDFLAGS MAKE NM PKG_CONFIG PYTHON;

C_TESTS = \
	tests/base/test_number \
	tests/base/test_units \
	tests/base/test_units_oracle \
	tests/base/test_say \
	tests/base/test_words \
	tests/base/test_field \
	tests/base/test_material \
	tests/base/test_status \
	tests/base/test_memory \
	tests/base/test_root \
	tests/base/test_csv \
	tests/base/test_trials \
	tests/base/test_quantile \
	tests/base/test_tolerance \
	tests/fastener/test_thread \
	tests/fastener/test_fit \
	tests/fastener/test_grade \
	tests/fastener/test_lubrication \
	tests/fastener/test_nut \
	tests/fastener/test_strip \
	tests/fastener/test_torque \
	tests/fastener/test_chart \
	tests/fastener/test_tool \
	tests/fastener/test_method \
	tests/fastener/test_spread \
	tests/fastener/test_window \
	tests/fastener/test_fit_line \
	tests/fastener/test_pairs \
	tests/fastener/test_calibrate \
	tests/fastener/test_calibrate_plot \
	tests/sheet/test_svg \
	tests/sheet/test_lettering \
	tests/sheet/test_strap_drawing \
	tests/sheet/test_strap_marks \
	tests/sheet/test_tilt_plot \
	tests/clamp/test_seat \
	tests/clamp/test_strap \
	tests/clamp/test_ask \
	tests/clamp/test_matters \
	tests/clamp/test_weakest \
	tests/clamp/test_turn \
	tests/clamp/test_remark \
	tests/clamp/test_strap_spread \
	tests/clamp/test_strap_window \
	tests/job/test_job_file \
	tests/job/test_outline \
	tests/job/test_job \
	tests/sheet/test_hold_map \
	tests/hold/test_fixture \
	tests/hold/test_guard \
	tests/hold/test_engine \
	tests/hold/test_hold \
	tests/base/test_room \
	tests/clamp/test_screw \
	tests/clamp/test_vacuum \
	tests/clamp/test_bar \
	tests/clamp/test_contact \
	tests/hold/test_disc \
	tests/hold/test_chuck \
	tests/hold/test_couple \
	tests/hold/test_tight \
	tests/hold/test_tight_fixture \
	tests/cut/test_cut_material \
	tests/cut/test_turning \
	tests/cut/test_milling \
	tests/cut/test_drilling

if HAVE_CHECK
check_LTLIBRARIES = libfailing.la
check_PROGRAMS += $(C_TESTS)
TESTS += $(C_TESTS)
else
TESTS += tests/no-check.sh
endif

TESTS += \
	tests/header.sh \
	tests/readme.sh \
	tests/symbols.sh \
	tests/installed.sh \
	tests/locale.sh \
	tests/bad-tables/run.sh \
	tests/bad-jobs/jobs.sh \
	tests/cli/run.sh \
	tests/cli/tool.sh \
	tests/cli/calibrate.sh \
	tests/cli/spread.sh \
	tests/cli/weakest.sh \
	tests/cli/tight.sh \
	tests/cli/cut.sh \
	tests/cli/page.sh \
	tests/cli/clamps.sh \
	tests/cli/picture.sh \
	tests/cli/hold.sh \
	tests/cli/corpus.sh

if HAVE_PYTHON
TESTS += tests/python.sh
endif

TEST_LIBS = libstrapwise.la $(CHECK_LIBS)
FIXTURE_LIBS = libstrapwise-fixture.la $(TEST_LIBS)
TEST_CPPFLAGS = $(AM_CPPFLAGS) $(CHECK_CFLAGS)

tests_base_test_number_SOURCES = tests/base/test_number.c
tests_base_test_number_CPPFLAGS = $(TEST_CPPFLAGS)
tests_base_test_number_LDADD = $(TEST_LIBS)
tests_base_test_units_SOURCES = tests/base/test_units.c
tests_base_test_units_CPPFLAGS = $(TEST_CPPFLAGS)
tests_base_test_units_LDADD = $(TEST_LIBS)
tests_base_test_units_oracle_SOURCES = tests/base/test_units_oracle.c
tests_base_test_units_oracle_CPPFLAGS = $(TEST_CPPFLAGS)
tests_base_test_units_oracle_LDADD = $(TEST_LIBS)
tests_base_test_say_SOURCES = tests/base/test_say.c
tests_base_test_say_CPPFLAGS = $(TEST_CPPFLAGS)
tests_base_test_say_LDADD = $(TEST_LIBS)
tests_base_test_words_SOURCES = tests/base/test_words.c
tests_base_test_words_CPPFLAGS = $(TEST_CPPFLAGS)
tests_base_test_words_LDADD = $(TEST_LIBS)
tests_base_test_field_SOURCES = tests/base/test_field.c
tests_base_test_field_CPPFLAGS = $(TEST_CPPFLAGS)
tests_base_test_field_LDADD = $(TEST_LIBS)
tests_base_test_material_SOURCES = tests/base/test_material.c
tests_base_test_material_CPPFLAGS = $(TEST_CPPFLAGS)
tests_base_test_material_LDADD = $(TEST_LIBS)
tests_fastener_test_thread_SOURCES = tests/fastener/test_thread.c
tests_fastener_test_thread_CPPFLAGS = $(TEST_CPPFLAGS)
tests_fastener_test_thread_LDADD = $(TEST_LIBS)
tests_fastener_test_fit_SOURCES = tests/fastener/test_fit.c lib/fastener/fit.c
nodist_tests_fastener_test_fit_SOURCES = tables/fits.c tables/fits_pitch.c
tests_fastener_test_fit_CPPFLAGS = \
	$(TEST_CPPFLAGS) -I$(top_srcdir)/lib -I$(top_builddir)
tests_fastener_test_fit_LDADD = $(TEST_LIBS)
tests_fastener_test_grade_SOURCES = tests/fastener/test_grade.c
tests_fastener_test_grade_CPPFLAGS = $(TEST_CPPFLAGS)
tests_fastener_test_grade_LDADD = $(TEST_LIBS)
tests_fastener_test_lubrication_SOURCES = tests/fastener/test_lubrication.c
tests_fastener_test_lubrication_CPPFLAGS = $(TEST_CPPFLAGS)
tests_fastener_test_lubrication_LDADD = $(TEST_LIBS)
tests_fastener_test_nut_SOURCES = tests/fastener/test_nut.c
tests_fastener_test_nut_CPPFLAGS = $(TEST_CPPFLAGS)
tests_fastener_test_nut_LDADD = $(TEST_LIBS)
tests_cut_test_cut_material_SOURCES = tests/cut/test_cut_material.c
tests_cut_test_cut_material_CPPFLAGS = $(TEST_CPPFLAGS)
tests_cut_test_cut_material_LDADD = $(TEST_LIBS)
tests_cut_test_turning_SOURCES = tests/cut/test_turning.c
tests_cut_test_turning_CPPFLAGS = $(TEST_CPPFLAGS)
tests_cut_test_turning_LDADD = $(TEST_LIBS)
tests_cut_test_milling_SOURCES = tests/cut/test_milling.c
tests_cut_test_milling_CPPFLAGS = $(TEST_CPPFLAGS)
tests_cut_test_milling_LDADD = $(TEST_LIBS)
tests_cut_test_drilling_SOURCES = tests/cut/test_drilling.c
tests_cut_test_drilling_CPPFLAGS = $(TEST_CPPFLAGS)
tests_cut_test_drilling_LDADD = $(TEST_LIBS)
tests_fastener_test_strip_SOURCES = tests/fastener/test_strip.c
tests_fastener_test_strip_CPPFLAGS = $(TEST_CPPFLAGS)
tests_fastener_test_strip_LDADD = $(TEST_LIBS)
tests_fastener_test_torque_SOURCES = tests/fastener/test_torque.c
tests_fastener_test_torque_CPPFLAGS = $(TEST_CPPFLAGS)
tests_fastener_test_torque_LDADD = $(TEST_LIBS)
tests_fastener_test_chart_SOURCES = tests/fastener/test_chart.c
tests_fastener_test_chart_CPPFLAGS = $(TEST_CPPFLAGS)
tests_fastener_test_chart_LDADD = $(TEST_LIBS)
tests_fastener_test_tool_SOURCES = tests/fastener/test_tool.c
tests_fastener_test_tool_CPPFLAGS = $(TEST_CPPFLAGS)
tests_fastener_test_tool_LDADD = $(TEST_LIBS)
tests_fastener_test_method_SOURCES = tests/fastener/test_method.c
tests_fastener_test_method_CPPFLAGS = $(TEST_CPPFLAGS)
tests_fastener_test_method_LDADD = $(TEST_LIBS)
tests_fastener_test_spread_SOURCES = tests/fastener/test_spread.c
tests_fastener_test_spread_CPPFLAGS = $(TEST_CPPFLAGS)
tests_fastener_test_spread_LDADD = $(TEST_LIBS)
tests_fastener_test_window_SOURCES = tests/fastener/test_window.c
tests_fastener_test_window_CPPFLAGS = $(TEST_CPPFLAGS)
tests_fastener_test_window_LDADD = $(TEST_LIBS)
tests_clamp_test_strap_SOURCES = tests/clamp/test_strap.c
tests_clamp_test_strap_CPPFLAGS = $(TEST_CPPFLAGS)
tests_clamp_test_strap_LDADD = $(TEST_LIBS)
tests_clamp_test_ask_SOURCES = tests/clamp/test_ask.c
tests_clamp_test_ask_CPPFLAGS = $(TEST_CPPFLAGS)
tests_clamp_test_ask_LDADD = $(TEST_LIBS)
tests_clamp_test_matters_SOURCES = tests/clamp/test_matters.c
tests_clamp_test_matters_CPPFLAGS = $(TEST_CPPFLAGS)
tests_clamp_test_matters_LDADD = $(TEST_LIBS)
tests_clamp_test_weakest_SOURCES = tests/clamp/test_weakest.c
tests_clamp_test_weakest_CPPFLAGS = $(TEST_CPPFLAGS)
tests_clamp_test_weakest_LDADD = $(TEST_LIBS)
tests_clamp_test_turn_SOURCES = tests/clamp/test_turn.c
tests_clamp_test_turn_CPPFLAGS = $(TEST_CPPFLAGS)
tests_clamp_test_turn_LDADD = $(TEST_LIBS)
tests_clamp_test_strap_spread_SOURCES = tests/clamp/test_strap_spread.c
tests_clamp_test_strap_spread_CPPFLAGS = $(TEST_CPPFLAGS) $(GSL_CFLAGS)
tests_clamp_test_strap_spread_LDADD = $(TEST_LIBS) $(GSL_LIBS)
tests_clamp_test_strap_window_SOURCES = tests/clamp/test_strap_window.c
tests_clamp_test_strap_window_CPPFLAGS = $(TEST_CPPFLAGS) $(GSL_CFLAGS)
tests_clamp_test_strap_window_LDADD = $(TEST_LIBS) $(GSL_LIBS)

tests_base_test_room_SOURCES = tests/base/test_room.c
tests_base_test_room_CPPFLAGS = $(TEST_CPPFLAGS)
tests_base_test_room_LDADD = $(TEST_LIBS)
tests_clamp_test_screw_SOURCES = tests/clamp/test_screw.c
tests_clamp_test_screw_CPPFLAGS = $(TEST_CPPFLAGS)
tests_clamp_test_screw_LDADD = $(TEST_LIBS)
tests_clamp_test_vacuum_SOURCES = tests/clamp/test_vacuum.c
tests_clamp_test_vacuum_CPPFLAGS = $(TEST_CPPFLAGS)
tests_clamp_test_vacuum_LDADD = $(TEST_LIBS)
tests_clamp_test_bar_SOURCES = tests/clamp/test_bar.c
tests_clamp_test_bar_CPPFLAGS = $(TEST_CPPFLAGS)
tests_clamp_test_bar_LDADD = $(TEST_LIBS)
tests_clamp_test_contact_SOURCES = tests/clamp/test_contact.c
tests_clamp_test_contact_CPPFLAGS = $(TEST_CPPFLAGS)
tests_clamp_test_contact_LDADD = $(TEST_LIBS)
tests_hold_test_disc_SOURCES = tests/hold/test_disc.c
tests_hold_test_disc_CPPFLAGS = $(TEST_CPPFLAGS)
tests_hold_test_disc_LDADD = $(TEST_LIBS)
tests_hold_test_chuck_SOURCES = tests/hold/test_chuck.c
tests_hold_test_chuck_CPPFLAGS = $(TEST_CPPFLAGS)
tests_hold_test_chuck_LDADD = $(TEST_LIBS)
tests_hold_test_couple_SOURCES = tests/hold/test_couple.c
tests_hold_test_couple_CPPFLAGS = $(TEST_CPPFLAGS)
tests_hold_test_couple_LDADD = $(TEST_LIBS)

tests_base_test_quantile_SOURCES = tests/base/test_quantile.c
tests_base_test_quantile_CPPFLAGS = $(TEST_CPPFLAGS)
tests_base_test_quantile_LDADD = $(TEST_LIBS)

tests_fastener_test_pairs_SOURCES = tests/fastener/test_pairs.c
tests_fastener_test_pairs_CPPFLAGS = $(TEST_CPPFLAGS)
tests_fastener_test_pairs_LDADD = $(TEST_LIBS)
tests_fastener_test_calibrate_SOURCES = tests/fastener/test_calibrate.c
tests_fastener_test_calibrate_CPPFLAGS = $(TEST_CPPFLAGS)
tests_fastener_test_calibrate_LDADD = $(TEST_LIBS)
tests_fastener_test_calibrate_plot_SOURCES = \
	tests/fastener/test_calibrate_plot.c
tests_fastener_test_calibrate_plot_CPPFLAGS = $(TEST_CPPFLAGS)
tests_fastener_test_calibrate_plot_LDADD = $(TEST_LIBS)

tests_base_test_status_SOURCES = tests/base/test_status.c
tests_base_test_status_CPPFLAGS = \
	$(TEST_CPPFLAGS) -DPACKAGE_VERSION_TEXT='"$(PACKAGE_VERSION)"'
tests_base_test_status_LDADD = $(FIXTURE_LIBS)

# The library once more, with allocations that fail when they are told to.
libfailing_la_SOURCES = \
	$(libstrapwise_la_SOURCES) $(libstrapwise_fixture_la_SOURCES)
nodist_libfailing_la_SOURCES = $(nodist_libstrapwise_la_SOURCES)
libfailing_la_CPPFLAGS = $(libstrapwise_la_CPPFLAGS) $(YAML_CFLAGS) \
	-Dmalloc=failing_malloc -Dcalloc=failing_calloc \
	-Drealloc=failing_realloc -Dpthread_create=failing_pthread_create \
	-Dglp_simplex=failing_glp_simplex
libfailing_la_LIBADD = $(GSL_LIBS) $(GLPK_LIBS) $(YAML_LIBS)
tests_base_test_memory_SOURCES = tests/base/test_memory.c
tests_base_test_memory_CPPFLAGS = $(TEST_CPPFLAGS)
tests_base_test_memory_LDADD = libfailing.la $(GLPK_LIBS) $(CHECK_LIBS)

tests_job_test_job_file_SOURCES = tests/job/jobs.h tests/job/test_job_file.c
tests_job_test_job_file_CPPFLAGS = $(TEST_CPPFLAGS)
tests_job_test_job_file_LDADD = $(FIXTURE_LIBS)
tests_job_test_outline_SOURCES = tests/job/test_outline.c lib/job/outline.c
tests_job_test_outline_CPPFLAGS = \
	$(TEST_CPPFLAGS) -I$(top_srcdir)/lib -DSW_BUILD
tests_job_test_outline_LDADD = $(CHECK_LIBS)
tests_job_test_job_SOURCES = tests/job/jobs.h tests/job/test_job.c
tests_job_test_job_CPPFLAGS = $(TEST_CPPFLAGS)
tests_job_test_job_LDADD = $(FIXTURE_LIBS)
tests_sheet_test_hold_map_SOURCES = tests/job/jobs.h tests/sheet/test_hold_map.c
tests_sheet_test_hold_map_CPPFLAGS = $(TEST_CPPFLAGS)
tests_sheet_test_hold_map_LDADD = $(FIXTURE_LIBS)

# Not exported, so compiled into their tests.
tests_base_test_root_SOURCES = tests/base/test_root.c lib/base/root.c
tests_base_test_root_CPPFLAGS = \
	$(TEST_CPPFLAGS) -I$(top_srcdir)/lib $(GSL_CFLAGS)
tests_base_test_root_LDADD = $(CHECK_LIBS) $(GSL_LIBS)
tests_base_test_csv_SOURCES = tests/base/test_csv.c \
	lib/base/csv.c lib/base/csv_fault.c lib/base/csv_header.c \
	lib/base/utf8.c lib/base/status.c lib/base/number.c lib/base/units.c
tests_base_test_csv_CPPFLAGS = \
	$(TEST_CPPFLAGS) -I$(top_srcdir)/lib -DSW_BUILD \
	-DSW__VERSION='""' -DSW__TABLES_VERSION='""'
tests_base_test_csv_LDADD = $(CHECK_LIBS)
tests_base_test_trials_SOURCES = tests/base/test_trials.c lib/base/trials.c
tests_base_test_trials_CPPFLAGS = \
	$(TEST_CPPFLAGS) -I$(top_srcdir)/lib $(GSL_CFLAGS)
tests_base_test_trials_LDADD = $(CHECK_LIBS) $(GSL_LIBS)
tests_base_test_tolerance_SOURCES = tests/base/test_tolerance.c \
	lib/base/tolerance.c lib/base/distribution.c lib/base/root.c
tests_base_test_tolerance_CPPFLAGS = \
	$(TEST_CPPFLAGS) -I$(top_srcdir)/lib $(GSL_CFLAGS)
tests_base_test_tolerance_LDADD = $(CHECK_LIBS) $(GSL_LIBS)
tests_fastener_test_fit_line_SOURCES = tests/fastener/test_fit_line.c \
	lib/fastener/fit_line.c lib/base/distribution.c
tests_fastener_test_fit_line_CPPFLAGS = \
	$(TEST_CPPFLAGS) -I$(top_srcdir)/lib $(GSL_CFLAGS)
tests_fastener_test_fit_line_LDADD = $(CHECK_LIBS) $(GSL_LIBS)
tests_sheet_test_strap_drawing_SOURCES = tests/sheet/test_strap_drawing.c
tests_sheet_test_strap_drawing_CPPFLAGS = $(TEST_CPPFLAGS)
tests_sheet_test_strap_drawing_LDADD = $(TEST_LIBS)
tests_sheet_test_strap_marks_SOURCES = tests/sheet/test_strap_marks.c
tests_sheet_test_strap_marks_CPPFLAGS = $(TEST_CPPFLAGS)
tests_sheet_test_strap_marks_LDADD = $(TEST_LIBS)
tests_sheet_test_svg_SOURCES = tests/sheet/test_svg.c \
	lib/sheet/svg.c lib/sheet/scale.c lib/sheet/lettering.c \
	lib/base/utf8.c lib/base/status.c lib/base/number.c
tests_sheet_test_svg_CPPFLAGS = \
	$(TEST_CPPFLAGS) -I$(top_srcdir)/lib -DSW_BUILD \
	-DSW__VERSION='""' -DSW__TABLES_VERSION='""'
tests_sheet_test_svg_LDADD = $(CHECK_LIBS)
tests_sheet_test_lettering_SOURCES = tests/sheet/test_lettering.c \
	lib/sheet/svg.c lib/sheet/lettering.c lib/sheet/hatch.c \
	lib/base/utf8.c lib/base/status.c lib/base/number.c
tests_sheet_test_lettering_CPPFLAGS = \
	$(TEST_CPPFLAGS) -I$(top_srcdir)/lib -DSW_BUILD \
	-DSW__VERSION='""' -DSW__TABLES_VERSION='""'
tests_sheet_test_lettering_LDADD = $(CHECK_LIBS)
tests_sheet_test_tilt_plot_SOURCES = tests/sheet/test_tilt_plot.c
tests_sheet_test_tilt_plot_CPPFLAGS = $(TEST_CPPFLAGS)
tests_sheet_test_tilt_plot_LDADD = $(TEST_LIBS)
tests_clamp_test_remark_SOURCES = tests/clamp/test_remark.c
tests_clamp_test_remark_CPPFLAGS = $(TEST_CPPFLAGS)
tests_clamp_test_remark_LDADD = $(TEST_LIBS)
tests_clamp_test_seat_SOURCES = tests/clamp/test_seat.c lib/clamp/seat.c
tests_clamp_test_seat_CPPFLAGS = $(TEST_CPPFLAGS) -I$(top_srcdir)/lib
tests_clamp_test_seat_LDADD = $(CHECK_LIBS)

tests_hold_test_tight_SOURCES = tests/hold/test_tight.c
tests_hold_test_tight_CPPFLAGS = $(TEST_CPPFLAGS)
tests_hold_test_tight_LDADD = $(TEST_LIBS)

# What needs the whole fixture.
tests_hold_test_tight_fixture_SOURCES = tests/hold/test_tight_fixture.c
tests_hold_test_tight_fixture_CPPFLAGS = $(TEST_CPPFLAGS)
tests_hold_test_tight_fixture_LDADD = $(FIXTURE_LIBS)
tests_hold_test_fixture_SOURCES = tests/hold/test_fixture.c
tests_hold_test_fixture_CPPFLAGS = $(TEST_CPPFLAGS)
tests_hold_test_fixture_LDADD = $(FIXTURE_LIBS)

tests_hold_test_hold_SOURCES = tests/hold/test_hold.c
tests_hold_test_hold_CPPFLAGS = $(TEST_CPPFLAGS)
tests_hold_test_hold_LDADD = $(FIXTURE_LIBS)
# not exported, so compiled into their tests
HOLD_INSIDE = lib/hold/rig.c lib/hold/bed.c lib/hold/guard.c \
	lib/hold/block.c lib/hold/joint.c lib/hold/joint_polish.c \
	lib/hold/joint_read.c lib/hold/planar.c \
	lib/hold/climb.c lib/hold/engine.c lib/hold/load.c \
	lib/hold/corner.c
tests_hold_test_guard_SOURCES = tests/hold/test_guard.c lib/hold/guard.c
tests_hold_test_guard_CPPFLAGS = $(TEST_CPPFLAGS) -I$(top_srcdir)/lib
tests_hold_test_guard_LDADD = $(FIXTURE_LIBS) $(GLPK_LIBS)
tests_hold_test_engine_SOURCES = tests/hold/test_engine.c $(HOLD_INSIDE)
tests_hold_test_engine_CPPFLAGS = $(TEST_CPPFLAGS) -I$(top_srcdir)/lib
tests_hold_test_engine_LDADD = $(FIXTURE_LIBS) $(GLPK_LIBS)
# fixtures as lines of text, for scripts that compare
check_PROGRAMS += tests/hold/hold_lines
tests_hold_hold_lines_SOURCES = tests/hold/hold_lines.c
tests_hold_hold_lines_LDADD = $(FIXTURE_LIBS_ONLY)
FIXTURE_LIBS_ONLY = libstrapwise-fixture.la libstrapwise.la

# It installs, and that links the second library and the Python module anew where
# they stand: after all others, then, which would find half a library.
tests/installed.log: $(filter-out tests/installed.log,$(TEST_LOGS))

# Speed, as ratios against references in the same run; no test.
EXTRA_PROGRAMS += tests/bench/trials
CLEANFILES += tests/bench/trials$(EXEEXT)
tests_bench_trials_SOURCES = tests/bench/trials.c
tests_bench_trials_LDADD = libstrapwise.la
bench: strapwise$(EXEEXT) tests/bench/trials$(EXEEXT) \
		tests/hold/hold_lines$(EXEEXT)
	srcdir='$(abs_top_srcdir)' builddir='$(abs_top_builddir)' \
	  PYTHON='$(PYTHON)' $(SHELL) $(top_srcdir)/tests/bench/run.sh
.PHONY: bench

# The teaching page in a browser; no part of make check: it fetches what it
# needs.
check-page: strapwise$(EXEEXT)
	srcdir='$(abs_top_srcdir)' builddir='$(abs_top_builddir)' \
	  STRAPWISE='$(abs_top_builddir)/strapwise$(EXEEXT)' \
	  $(SHELL) $(top_srcdir)/tests/page/run.sh
.PHONY: check-page

EXTRA_DIST += \
	tests/common.h \
	tests/gsl_handler.h \
	tests/near.h \
	tests/random.h \
	tests/short_memory.h \
	tests/values.h \
	tests/base/units_list.h \
	tests/fastener/nist.h \
	tests/fastener/pairs_sets.h \
	tests/clamp/strap_question.h \
	tests/hold/fixture_lines.h \
	tests/cut/cut_question.h \
	tests/sheet/dejavu_sans.h \
	tests/sheet/drawn_strap.h \
	tests/sheet/read_svg.h \
	tests/clamp/strap_spread_question.h \
	tests/fastener/spread_question.h \
	tests/exported-symbols.txt \
	tests/exported-symbols-fixture.txt \
	tests/sibling-symbols.txt \
	tests/header.sh \
	tests/readme.sh \
	tests/symbols.sh \
	tests/installed.sh \
	tests/locale.sh \
	tests/no-check.sh \
	tests/tally.sh \
	tests/python.sh

# Folders of data are taken whole, from the source tree alone: in EXTRA_DIST
# they would bring along what the tests left in the build tree.
TEST_FOLDERS = \
	tests/bad-jobs tests/jobs tests/bad-tables tests/bench tests/cases tests/cli tests/fuzz tests/page \
	tests/python tests/reference tests/values

dist-hook: $(DIST_PAGE)
	for folder in $(TEST_FOLDERS); do \
	  $(MKDIR_P) "$(distdir)/$$folder" && \
	  cp -R "$(srcdir)/$$folder/." "$(distdir)/$$folder/" || exit 1; \
	  chmod -R u+w "$(distdir)/$$folder"; \
	  find "$(distdir)/$$folder" \( -name '*.log' -o -name '*.trs' \
	    -o -name __pycache__ \) -prune -exec rm -rf {} + ; \
	done
