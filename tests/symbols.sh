#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# What each library exports is what its list says, nothing more; its internal
# names cannot clash with anybody's; and it calls nothing that would print, end
# the process, or look into the environment. sibling-symbols.txt lists what
# libstrapwise exports for libstrapwise-fixture alone.
#
# srcdir, builddir and NM are set by make check. A library that was not built
# (--disable-shared, --disable-static) is not looked at.

srcdir=${srcdir:-$(dirname "$0")/..}
builddir=${builddir:-.}
NM=${NM:-nm}
LC_ALL=C
export LC_ALL
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

# same FILE LIST: $tmp/got against the list
same()
{
    want=$srcdir/tests/$2
    sort -c -u "$want" || fail "$want is not sorted (LC_ALL=C sort -u)"
    if cmp -s "$want" "$tmp/got"; then
        pass
        return
    fi
    fail "$1 does not export what tests/$2 lists:"
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

# look NAME LIST: one library
look()
{
    shared=$builddir/.libs/$1.so
    static=$builddir/.libs/$1.a
    if test -f "$shared"; then
        looked=$((looked + 1))
        exports "$shared" -D -g --defined-only >"$tmp/all"
        grep -v '^sw__' "$tmp/all" >"$tmp/got"
        same "$shared" "$2"
        grep '^sw__' "$tmp/all" >"$tmp/got"
        if test "$1" = libstrapwise; then
            same "$shared" sibling-symbols.txt
        elif test -s "$tmp/got"; then
            # shellcheck disable=SC2046
            fail "$shared exports internal names:" $(cat "$tmp/got")
        fi
        harmless "$shared" -D -u
    else
        echo "no $1.so in $builddir: that part is left out"
    fi
    if test -f "$static"; then
        looked=$((looked + 1))
        exports "$static" -g --defined-only >"$tmp/all"
        clash=$(grep -v '^sw_' "$tmp/all")
        if test -z "$clash"; then
            pass
        else
            # shellcheck disable=SC2086
            fail "$static: names without sw_:" $clash
        fi
        grep -v '^sw__' "$tmp/all" >"$tmp/got"
        same "$static" "$2"
        harmless "$static" -u
    else
        echo "no $1.a in $builddir: that part is left out"
    fi
}

looked=0
look libstrapwise exported-symbols.txt
look libstrapwise-fixture exported-symbols-fixture.txt
test $looked -ge 2 || fail "a library is missing in $builddir/.libs"

finish
