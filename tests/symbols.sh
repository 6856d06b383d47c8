#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# What the library exports is what exported-symbols.txt says, nothing more; its
# internal names cannot clash with anybody's; and it calls nothing that would
# print, end the process, or look into the environment.
#
# srcdir, builddir and NM are set by make check. A library that was not built
# (--disable-shared, --disable-static) is not looked at.

srcdir=${srcdir:-$(dirname "$0")/..}
builddir=${builddir:-.}
NM=${NM:-nm}
LC_ALL=C
export LC_ALL
shared=$builddir/.libs/libstrapwise.so
static=$builddir/.libs/libstrapwise.a
want=$srcdir/tests/exported-symbols.txt
. "$srcdir/tests/tally.sh"

# names FILE OPTION...: one name a line
names()
{
    file=$1
    shift
    # shellcheck disable=SC2086 # NM may carry options
    $NM -P "$@" "$file" 2>"$tmp/said" | sed -n 's/^\([^ ]*\) [^ ].*/\1/p' |
        sed 's/@.*//' | sort -u
}

# exports FILE OPTION...: the same without what compilers and linkers add of
# their own (_init, _edata, __gcov_..., __odr_asan...)
exports()
{
    names "$@" | grep -v -e '^__' -e '^_init$' -e '^_fini$' -e '^_edata$' \
        -e '^_end$'
}

# same FILE: $tmp/got against the list
same()
{
    if cmp -s "$want" "$tmp/got"; then
        pass
        return
    fi
    fail "$1 does not export what tests/exported-symbols.txt lists:"
    diff "$want" "$tmp/got" | sed -n 's/^[<>]/&/p'
    echo "  (< listed but not exported, > exported but not listed.)  A name"
    echo "  that is gone or has changed breaks programs that use it: raise"
    echo "  current in SW_INTERFACE of configure.ac.  Then bring the list up"
    echo "  to date and mark new functions SW_API in their header."
}

# harmless FILE OPTION...: calls nothing that a library must not call
harmless()
{
    file=$1
    names "$@" >"$tmp/calls"
    bad=$(grep -x -e '_*v\{0,1\}f\{0,1\}printf\(_chk\)\{0,1\}' -e 'puts' \
        -e 'fputs' -e 'putchar' -e 'putc' -e 'fputc' -e 'fwrite' -e 'perror' \
        -e 'std\(in\|out\|err\)' -e '_*exit' -e '_Exit' -e 'abort' \
        -e 'raise' -e '_*assert_fail' -e 'getenv' -e 'secure_getenv' \
        -e 'setenv' -e 'setlocale' -e 'localeconv' -e 'signal' -e 'rand' \
        -e 'srand' -e 'gsl_set_error_handler\(_off\)\{0,1\}' "$tmp/calls")
    if test -z "$bad"; then
        pass
    else
        # shellcheck disable=SC2086
        fail "$file calls" $bad
    fi
    if grep -qx snprintf "$tmp/calls" || grep -q __snprintf "$tmp/calls" ||
        grep -q strtod "$tmp/calls"; then
        pass # it was read at all
    else
        fail "$file: no symbol found: $(cat "$tmp/said")"
    fi
}

sort -c -u "$want" || fail "$want is not sorted (LC_ALL=C sort -u)"

looked=0
if test -f "$shared"; then
    looked=1
    exports "$shared" -D -g --defined-only >"$tmp/got"
    same "$shared"
    harmless "$shared" -D -u
else
    echo "no shared library in $builddir: that part is left out"
fi
if test -f "$static"; then
    looked=1
    exports "$static" -g --defined-only >"$tmp/all"
    clash=$(grep -v '^sw_' "$tmp/all")
    if test -z "$clash"; then
        pass
    else
        # shellcheck disable=SC2086
        fail "$static: names without sw_:" $clash
    fi
    grep -v '^sw__' "$tmp/all" >"$tmp/got"
    same "$static"
    harmless "$static" -u
else
    echo "no static library in $builddir: that part is left out"
fi
test $looked -eq 1 || fail "no library in $builddir/.libs"

finish
