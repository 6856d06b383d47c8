#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# What README.md prints under its example is what the command prints.
#
# srcdir and STRAPWISE are set by make check.

srcdir=${srcdir:-$(dirname "$0")/..}
tmp=$(mktemp -d "${TMPDIR:-/tmp}/readme.XXXXXX") || exit 1
trap 'rm -rf "$tmp"' 0
trap 'exit 1' 1 2 15

# the first indented block that starts with the command, up to plain text
awk '/^    build\/strapwise strap/ { on = 1 }
     on && /^[^ ]/ { exit }
     on { sub(/^    /, ""); print }' "$srcdir/README.md" >"$tmp/block"
command=$(sed -n '1s/^build\/strapwise //p' "$tmp/block")
sed '1,2d' "$tmp/block" | sed -e :a -e '/^\n*$/{$d;N;ba' -e '}' >"$tmp/wanted"
# shellcheck disable=SC2086 # the words of the command
"$STRAPWISE" $command >"$tmp/got" || exit 1
if test -s "$tmp/wanted" && diff "$tmp/wanted" "$tmp/got"; then
    echo "1 passed, 0 failed"
else
    echo "README.md shows another answer than strapwise $command"
    echo "0 passed, 1 failed"
    exit 1
fi
