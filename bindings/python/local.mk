# SPDX-License-Identifier: GPL-3.0-or-later
#
# The Python binding: one wrapper in C and one module in Python, both made by
# SWIG in one run.

EXTRA_DIST += \
	bindings/strapwise.i \
	bindings/python/strapwise-python.i \
	bindings/python/helpers.py \
	bindings/python/example.py

# what every wrapper is made from
SWIG_INPUTS = bindings/strapwise.i $(include_HEADERS) $(roominclude_HEADERS)
SWIG_FLAGS = -Wallkw -Werror -I$(srcdir)/bindings -I$(srcdir)/include

if HAVE_PYTHON
pyexec_LTLIBRARIES = bindings/python/_strapwise.la
nodist_python_PYTHON = bindings/python/strapwise.py
nodist_bindings_python__strapwise_la_SOURCES = \
	bindings/python/strapwise_wrap.c
bindings_python__strapwise_la_CPPFLAGS = $(AM_CPPFLAGS) $(PYTHON_CPPFLAGS)
bindings_python__strapwise_la_CFLAGS = -w
bindings_python__strapwise_la_LDFLAGS = -module -avoid-version -shared
bindings_python__strapwise_la_LIBADD = libstrapwise-fixture.la libstrapwise.la
CLEANFILES += bindings/python/strapwise_wrap.c bindings/python/strapwise.py

bindings/python/strapwise_wrap.c: $(SWIG_INPUTS) \
		bindings/python/strapwise-python.i bindings/python/helpers.py
	$(AM_V_GEN)$(MKDIR_P) $(@D) && { \
	$(SWIG) -python -doxygen $(SWIG_FLAGS) -outdir $(@D) -o $@ \
	  $(srcdir)/bindings/strapwise.i || { rm -f $@; exit 1; }; }

# made by the same run
bindings/python/strapwise.py: bindings/python/strapwise_wrap.c
	@test -f $@ || { rm -f bindings/python/strapwise_wrap.c; \
	  $(MAKE) $(AM_MAKEFLAGS) bindings/python/strapwise_wrap.c; }

# At install the module is linked anew, against the library in its final place.
# The target hides in a variable: automake would take a plain one for our own
# rule and leave out its own.
PYTHON_INSTALL = install-pyexecLTLIBRARIES
$(PYTHON_INSTALL): install-libLTLIBRARIES
endif
