#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# make check-page, or run.sh [TEST...]: the teaching page in a browser. Makes
# the page with the command, runs the tests of this folder (or those named) and
# ends with a line "page: N passed, M failed". Not part of make check: it needs
# node (18 or later), Chromium, and two modules of node that npm fetches.
#
#   srcdir, builddir, STRAPWISE   source, build tree, command
#   PAGE_MODULES   a folder that has node_modules; not set: npm ci into a
#                  scratch folder, from the versions in package-lock.json
#   CHROMIUM       the browser; not set: chromium, else chromium-browser

srcdir=${srcdir:-$(cd "$(dirname "$0")/../.." && pwd)}
builddir=${builddir:-.}
STRAPWISE=${STRAPWISE:-$builddir/strapwise}
here=$srcdir/tests/page

give_up()
{
    echo "run.sh: $*"
    echo "page: 0 passed, 1 failed"
    exit 1
}

command -v node >/dev/null || give_up "node is not installed"
CHROMIUM=${CHROMIUM:-$(command -v chromium || command -v chromium-browser)}
test -n "$CHROMIUM" || give_up "chromium is not installed"
test -f "$builddir/bindings/page/engine.wasm" ||
    give_up "$builddir was configured without the page"

tmp=$(mktemp -d "${TMPDIR:-/tmp}/strapwise-page.XXXXXX") || exit 1
trap 'rm -rf "$tmp"' 0
trap 'exit 1' 1 2 15

if test -z "${PAGE_MODULES:-}"; then
    command -v npm >/dev/null || give_up "npm is not installed"
    PAGE_MODULES=$tmp/modules
    mkdir "$PAGE_MODULES" && cp "$here/package.json" \
        "$here/package-lock.json" "$PAGE_MODULES/" || exit 1
    (cd "$PAGE_MODULES" &&
        npm ci --ignore-scripts --no-audit --no-fund) >"$tmp/npm" 2>&1 || {
        cat "$tmp/npm"
        give_up "npm ci failed"
    }
fi
test -d "$PAGE_MODULES/node_modules/playwright-core" ||
    give_up "no playwright-core in $PAGE_MODULES/node_modules"

PAGE=$tmp/page.html
"$STRAPWISE" page --output "$PAGE" >"$tmp/made" 2>&1 || {
    cat "$tmp/made"
    give_up "strapwise page failed"
}
export srcdir builddir STRAPWISE PAGE_MODULES CHROMIUM PAGE

passed=0
failed=0
for name in ${*:-engine numbers move keys use access colour}; do
    node "$here/$name.mjs" >"$tmp/out" 2>&1
    status=$?
    line=$(grep -E "^$name: [0-9]+ passed, [0-9]+ failed\$" "$tmp/out" |
        tail -n 1)
    p=$(echo "$line" | sed -n 's/.*: \([0-9]*\) passed.*/\1/p')
    f=$(echo "$line" | sed -n 's/.*, \([0-9]*\) failed$/\1/p')
    # one that died has no such line, or ended otherwise than it says
    if test -z "$p" || { test $status -ne 0 && test "$f" = 0; }; then
        p=${p:-0}
        f=$((${f:-0} + 1))
        echo "FAIL $name: ended with status $status"
    fi
    cut -c 1-1200 "$tmp/out"
    passed=$((passed + p))
    failed=$((failed + f))
done

echo "page: $passed passed, $failed failed"
test "$failed" = 0 && test "$passed" -gt 0
