# SPDX-License-Identifier: GPL-3.0-or-later
# shellcheck shell=sh
#
# Read by the scripts that open the page: page_needs SCRATCH-FOLDER finds what
# that takes and makes the page. Sets and exports srcdir, builddir, STRAPWISE,
# CHROMIUM, PAGE_MODULES, PAGE; or sets $why and fails.
#
#   PAGE_MODULES   a folder that has node_modules; not set: npm ci into the
#                  scratch folder, of the versions in package-lock.json
#   CHROMIUM       the browser; not set: chromium, else chromium-browser

page_needs()
{
    STRAPWISE=${STRAPWISE:-$builddir/strapwise}
    CHROMIUM=${CHROMIUM:-$(command -v chromium || command -v chromium-browser)}
    PAGE=$1/page.html
    why=
    if ! command -v node >/dev/null; then
        why="node is not installed"
    elif test -z "$CHROMIUM"; then
        why="chromium is not installed"
    elif test ! -f "$builddir/bindings/page/engine.wasm"; then
        why="$builddir was configured without the page"
    elif test -z "${PAGE_MODULES:-}"; then
        if ! command -v npm >/dev/null; then
            why="npm is not installed"
        else
            PAGE_MODULES=$1/modules
            mkdir "$PAGE_MODULES" && cp "$srcdir/tests/page/package.json" \
                "$srcdir/tests/page/package-lock.json" "$PAGE_MODULES/" &&
                (cd "$PAGE_MODULES" && npm ci --ignore-scripts --no-audit \
                    --no-fund) >"$1/npm" 2>&1 ||
                why="npm ci failed: $(tail -n 5 "$1/npm")"
        fi
    fi
    test -z "$why" || return 1
    if test ! -d "$PAGE_MODULES/node_modules/playwright-core"; then
        why="no playwright-core in $PAGE_MODULES/node_modules"
    elif ! "$STRAPWISE" page --output "$PAGE" >"$1/made" 2>&1; then
        why="strapwise page failed: $(cat "$1/made")"
    fi
    export srcdir builddir STRAPWISE CHROMIUM PAGE_MODULES PAGE
    test -z "$why"
}
