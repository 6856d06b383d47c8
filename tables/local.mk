# SPDX-License-Identifier: GPL-3.0-or-later
#
# Each table becomes one C file; their structs become base/tables.h.

TABLES = threads hardware grades lubrication methods spherical straps tslots tools \
	fits fits_pitch \
	materials nuts \
	cutting cutting_names unit_power chisel
TABLE_FILES = \
	tables/threads.csv tables/hardware.csv tables/grades.csv \
	tables/lubrication.csv tables/methods.csv tables/spherical.csv tables/straps.csv \
	tables/tslots.csv tables/tools.csv \
	tables/fits.csv tables/fits_pitch.csv \
	tables/materials.csv tables/nuts.csv \
	tables/cutting.csv tables/cutting_names.csv \
	tables/unit_power.csv tables/chisel.csv
TABLE_SOURCES = \
	tables/threads.c tables/hardware.c tables/grades.c \
	tables/lubrication.c tables/methods.c tables/spherical.c tables/straps.c \
	tables/tslots.c tables/tools.c \
	tables/fits.c tables/fits_pitch.c \
	tables/materials.c tables/nuts.c \
	tables/cutting.c tables/cutting_names.c \
	tables/unit_power.c tables/chisel.c

tablesdir = $(pkgdatadir)/tables
dist_tables_DATA = $(TABLE_FILES) tables/README.md
EXTRA_DIST += tables/compile.awk
BUILT_SOURCES += base/tables.h
CLEANFILES += $(TABLE_SOURCES) base/tables.h

TABLE_AWK = LC_ALL=C $(AWK) -f $(top_srcdir)/tables/compile.awk

.csv.c:
	$(AM_V_GEN)$(MKDIR_P) $(@D) && \
	name=`basename $@ .c` && \
	$(TABLE_AWK) -v table=$$name $< >$@.tmp && mv $@.tmp $@

$(TABLE_SOURCES): tables/compile.awk base/tables.h

base/tables.h: $(TABLE_FILES) tables/compile.awk
	$(AM_V_GEN)$(MKDIR_P) base && { \
	echo '/* generated from tables/ */' && \
	echo '#ifndef SW_BASE_TABLES_H' && \
	echo '#define SW_BASE_TABLES_H' && \
	echo '#include <strapwise/status.h>' && \
	for name in $(TABLES); do \
	  $(TABLE_AWK) -v table=$$name -v mode=header \
	    $(top_srcdir)/tables/$$name.csv || exit 1; \
	done && \
	echo '#endif'; } >$@.tmp && mv $@.tmp $@
