# SPDX-License-Identifier: GPL-3.0-or-later
#
# The teaching page: the closed forms of the library compiled to WebAssembly,
# put with its document into one file, which the command carries.

PAGE_ENGINE = \
	lib/base/status.c lib/base/words.c lib/base/field.c \
	lib/base/number.c lib/base/units.c lib/base/say.c lib/base/utf8.c \
	lib/fastener/designation.c lib/fastener/fit.c lib/fastener/thread.c \
	lib/fastener/grade.c lib/fastener/lubrication.c \
	lib/fastener/torque_resolve.c lib/fastener/torque.c \
	lib/fastener/chart.c \
	lib/clamp/seat.c lib/clamp/strap_balance.c lib/clamp/strap_fields.c \
	lib/clamp/strap_resolve.c lib/clamp/strap_unused.c \
	lib/clamp/strap_geometry.c lib/clamp/strap_band.c lib/clamp/strap.c \
	lib/clamp/remark.c lib/clamp/remark_reason.c \
	lib/clamp/remark_change.c \
	lib/sheet/svg.c lib/sheet/scale.c \
	lib/sheet/lettering.c lib/sheet/hatch.c lib/sheet/arrow.c \
	lib/sheet/vial.c lib/sheet/strap_place.c lib/sheet/strap_fixture.c lib/sheet/strap_stud.c lib/sheet/strap_notes.c \
	lib/sheet/strap_bar.c lib/sheet/strap_side.c lib/sheet/strap_lanes.c \
	lib/sheet/strap_plan.c lib/sheet/strap_words.c \
	lib/sheet/strap_drawing.c lib/sheet/tilt_curve.c \
	lib/sheet/tilt_words.c lib/sheet/tilt_sheet.c lib/sheet/tilt_scales.c \
	lib/sheet/tilt_places.c lib/sheet/tilt_names.c lib/sheet/tilt_plot.c \
	bindings/cli/slots.c bindings/cli/page.c \
	bindings/cli/json.c bindings/cli/json_parts.c \
	bindings/page/structs.c bindings/page/settings.c \
	bindings/page/answer.c bindings/page/engine.c \
	bindings/page/no_files.c
PAGE_TABLES = \
	tables/threads.c tables/hardware.c tables/grades.c \
	tables/lubrication.c tables/spherical.c tables/straps.c \
	tables/tslots.c tables/fits.c tables/fits_pitch.c
PAGE_INCLUDED = \
	bindings/page/answer.h bindings/page/settings.h
PAGE_DOCUMENT = \
	bindings/page/page.html bindings/page/page.css \
	bindings/page/drawings.css \
	bindings/page/engine.js bindings/page/state.js \
	bindings/page/controls.js bindings/page/show.js \
	bindings/page/lessons.js bindings/page/start.js
EXTRA_DIST += $(PAGE_INCLUDED) $(PAGE_DOCUMENT) bindings/page/assemble.awk \
	bindings/page/structs.c bindings/page/settings.c \
	bindings/page/answer.c bindings/page/engine.c bindings/page/no_files.c

strapwise_SOURCES += bindings/page/document.h bindings/cli/run_page.c

if HAVE_PAGE
nodist_strapwise_SOURCES = bindings/page/document.c
CLEANFILES += bindings/page/engine.wasm bindings/page/page-whole.html \
	bindings/page/document.c

if HAVE_WASM
PAGE_CFLAGS = --target=wasm32-wasi -std=c11 -O2 -ffp-contract=off \
	-I$(top_srcdir)/include -I$(top_srcdir)/lib -I$(top_builddir) \
	-DSW_BUILD -DSW__VERSION='"$(PACKAGE_VERSION)"' \
	-DSW__TABLES_VERSION='"$(SW_TABLES_VERSION)"'

bindings/page/engine.wasm: $(PAGE_ENGINE) $(PAGE_INCLUDED) $(PAGE_TABLES) \
		base/tables.h $(include_HEADERS) $(roominclude_HEADERS)
	$(AM_V_GEN)$(MKDIR_P) $(@D) && \
	$(WASM_CC) $(PAGE_CFLAGS) -nostartfiles -Wl,--no-entry \
	-Wl,-z,stack-size=262144 -Wl,--stack-first -Wl,--strip-all -o $@.tmp $(addprefix $(top_srcdir)/,$(PAGE_ENGINE)) \
	$(PAGE_TABLES) && mv $@.tmp $@
else
bindings/page/engine.wasm: bindings/page/shipped.wasm
	$(AM_V_GEN)$(MKDIR_P) $(@D) && \
	cp $(top_srcdir)/bindings/page/shipped.wasm $@
endif

bindings/page/page-whole.html: $(PAGE_DOCUMENT) bindings/page/engine.wasm \
		bindings/page/assemble.awk
	$(AM_V_GEN)base64 bindings/page/engine.wasm >$@.b64 && \
	LC_ALL=C $(AWK) -v from=$(top_srcdir)/bindings/page -v engine=$@.b64 \
	-f $(top_srcdir)/bindings/page/assemble.awk \
	$(top_srcdir)/bindings/page/page.html >$@.tmp && \
	rm -f $@.b64 && mv $@.tmp $@

bindings/page/document.c: bindings/page/page-whole.html
	$(AM_V_GEN){ echo '#include "bindings/page/document.h"' && \
	echo 'const unsigned char page_document[] = {' && \
	od -An -v -tu1 bindings/page/page-whole.html | \
	$(SED) 's/  *\([0-9]\)/\1/; s/  */,/g; s/$$/,/' && \
	echo '0};' && \
	echo 'const size_t page_document_size = sizeof page_document - 1;'; } \
	>$@.tmp && mv $@.tmp $@

DIST_PAGE = dist-page
# A release carries the engine, for machines without that compiler.
dist-page: bindings/page/engine.wasm
	$(MKDIR_P) $(distdir)/bindings/page && \
	cp bindings/page/engine.wasm $(distdir)/bindings/page/shipped.wasm
else
DIST_PAGE = dist-no-page
dist-no-page:
	@echo 'a release carries the teaching page: configure --with-page' >&2; \
	exit 1
strapwise_SOURCES += bindings/page/no_document.c
endif
EXTRA_DIST += bindings/page/no_document.c
