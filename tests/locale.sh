#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# Under a locale whose decimal mark is a comma the program answers as it does
# under "C", to the byte, and the suites of numbers and units hold.
#
# builddir, srcdir and STRAPWISE are set by make check. Where no such locale is
# installed one is made in a temporary folder; where that cannot be done the
# test is skipped.

srcdir=${srcdir:-$(dirname "$0")/..}
builddir=${builddir:-.}
STRAPWISE=${STRAPWISE:-$builddir/strapwise}
. "$srcdir/tests/tally.sh"
unset LANG LC_NUMERIC LC_CTYPE LC_MESSAGES LANGUAGE

# is_comma NAME: the decimal mark of that locale is a comma
is_comma()
{
    test "$(LC_ALL=$1 locale decimal_point 2>/dev/null)" = ,
}

comma=
for name in de_DE.UTF-8 de_DE.utf8 fr_FR.UTF-8 fr_FR.utf8 nl_NL.UTF-8 de_DE; do
    if is_comma "$name"; then
        comma=$name
        break
    fi
done
if test -z "$comma" && command -v localedef >/dev/null 2>&1; then
    LOCPATH=$tmp
    export LOCPATH
    localedef -i de_DE -f UTF-8 "$tmp/de_DE.UTF-8" >/dev/null 2>&1
    is_comma de_DE.UTF-8 && comma=de_DE.UTF-8
fi
if test -z "$comma"; then
    echo "SKIP: no locale with a decimal comma, and none can be made"
    exit 77
fi
echo "locale $comma${LOCPATH:+ (made here)}"

# both ARGS...: the program under C and under the other locale
both()
{
    LC_ALL=C "$STRAPWISE" "$@" >"$tmp/c.out" 2>"$tmp/c.err"
    c=$?
    LC_ALL=$comma "$STRAPWISE" "$@" >"$tmp/l.out" 2>"$tmp/l.err"
    l=$?
    if test $c -ne $l; then
        fail "strapwise $*: status $c under C, $l under $comma"
    elif ! cmp -s "$tmp/c.out" "$tmp/l.out"; then
        fail "strapwise $*: $(diff "$tmp/c.out" "$tmp/l.out" | sed -n 1,4p)"
    elif ! cmp -s "$tmp/c.err" "$tmp/l.err"; then
        fail "strapwise $*: $(diff "$tmp/c.err" "$tmp/l.err" | sed -n 1,4p)"
    else
        pass
    fi
}

# good ARGS...: the same, and it must have answered
good()
{
    both "$@"
    if test $c -eq 0 && test -s "$tmp/c.out"; then
        pass
    else
        fail "strapwise $*: status $c: $(sed -n 1p "$tmp/c.err")"
    fi
}

if test -x "$STRAPWISE"; then
    good --version
    good thread M12x1.25
    good thread 1/2-13 --json
    good torque --thread M12 --preload 20.5kN --nut-factor 0.18
    good torque --thread 1/2-13 --preload '11707 lbf' --mu-thread 0.15 \
        --mu-seat 0.15 --json
    good preload --thread M12 --torque '35.5 ft-lbf'
    good chart
    good strap --thread M12 --torque 20.5N.m --stud-to-toe 30mm \
        --stud-to-heel 60.5mm --part-height 40mm --heel-height 43.25mm
    good strap --thread M12 --preload 12kN --stud-to-toe 30mm \
        --stud-to-heel 60mm --tilt 1.5deg --json
    both strap --thread M12 --preload 12,5kN --stud-to-toe 30mm \
        --stud-to-heel 60mm --tilt 1.5deg
    both torque --thread M12 --preload 1,5kN
    if test $c -ne 0; then
        pass
    else
        fail "1,5kN was taken under C and under $comma"
    fi
    for file in "$srcdir"/tests/cases/*.cases; do
        test -f "$file" && both cases "$file"
    done
else
    fail "no program $STRAPWISE"
fi

suites=0
for suite in number units field torque; do
    for program in "$builddir"/tests/*/"test_$suite"; do
        test -x "$program" || continue
        suites=$((suites + 1))
        if srcdir=$srcdir LC_ALL=$comma "$program" >"$tmp/said" 2>&1; then
            pass
        else
            fail "$program under $comma: $(tail -n 3 "$tmp/said")"
        fi
    done
done
test $suites -gt 0 || echo "the C suite was not built: that part is left out"

finish
