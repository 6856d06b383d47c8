#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# make check-page, or run.sh [TEST...]: the teaching page in a browser. Makes
# the page with the command, runs the tests of this folder (or those named) and
# ends with a line "page: N passed, M failed". Not part of make check: it needs
# node (18 or later), Chromium, and two modules of node that npm fetches.
#
#   srcdir, builddir, STRAPWISE   source, build tree, command
#   PAGE_MODULES, CHROMIUM        see needs.sh

srcdir=${srcdir:-$(cd "$(dirname "$0")/../.." && pwd)}
builddir=${builddir:-$(pwd)}
here=$srcdir/tests/page
tmp=$(mktemp -d "${TMPDIR:-/tmp}/strapwise-page.XXXXXX") || exit 1
trap 'rm -rf "$tmp"' 0
trap 'exit 1' 1 2 15

# shellcheck source=needs.sh
. "$here/needs.sh"
page_needs "$tmp" || {
    echo "run.sh: $why"
    echo "page: 0 passed, 1 failed"
    exit 1
}

passed=0
failed=0
test $# -gt 0 || set -- engine numbers move keys use access colour
for name; do
    node "$here/$name.mjs" >"$tmp/out" 2>&1
    status=$?
    line=$(grep -E "^$name: [0-9]+ passed, [0-9]+ failed\$" "$tmp/out" |
        tail -n 1)
    p=$(echo "$line" | sed -n 's/.*: \([0-9]*\) passed.*/\1/p')
    f=$(echo "$line" | sed -n 's/.*, \([0-9]*\) failed$/\1/p')
    # one that died has no such line, or ended otherwise than it says
    if test -z "$p" || { test $status -ne 0 && test "$f" = 0; }; then
        f=$((${f:-0} + 1))
        echo "FAIL $name: ended with status $status"
    fi
    cut -c 1-1200 "$tmp/out"
    passed=$((passed + ${p:-0}))
    failed=$((failed + f))
done

echo "page: $passed passed, $failed failed"
test "$failed" = 0 && test "$passed" -gt 0
