#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# Every job in this folder has one fault and is named after it. Each must be
# refused with the line, column and message that its "# expect:" line says: exit
# status 2, one line on stderr, nothing on stdout. Every good job of ../jobs must
# be read.
#
# STRAPWISE is set by make check.

bad=$(dirname "$0")
STRAPWISE=${STRAPWISE:-strapwise}
LC_ALL=C
export LC_ALL

. "$bad/../tally.sh"

found=0
for file in "$bad"/*.yaml; do
    test -f "$file" || continue
    found=$((found + 1))
    fault=$(basename "$file" .yaml)
    want=$(sed -n '1s/^# expect: //p' "$file")
    if test -z "$want"; then
        fail "$fault: it has no '# expect:' line"
        continue
    fi
    for topic in check hold; do
        (cd "$bad" && $STRAPWISE $topic "$fault.yaml") >"$tmp/out" 2>"$tmp/err"
        status=$?
        if test $status -ne 2; then
            fail "$fault: $topic: exit status $status, 2 expected"
        elif test -s "$tmp/out"; then
            fail "$fault: $topic: refused, but something went to stdout"
        elif test "$(wc -l <"$tmp/err")" -ne 1; then
            fail "$fault: $topic: more than one line: $(cat "$tmp/err")"
        elif test "$(cat "$tmp/err")" != \
            "strapwise $topic: $fault.yaml:$want"; then
            fail "$fault: $topic: says $(cat "$tmp/err")"
        else
            pass
        fi
    done
done
test $found -ge 15 || fail "only $found bad jobs found in $bad"

good=0
for file in "$bad"/../jobs/*.yaml; do
    test -f "$file" || continue
    good=$((good + 1))
    if $STRAPWISE check "$file" >"$tmp/out" 2>"$tmp/err"; then
        pass
    else
        fail "$file: $(cat "$tmp/err")"
    fi
done
test $good -ge 3 || fail "only $good good jobs found"

finish
