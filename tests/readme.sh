#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# What README.md prints under its examples is what the command prints: the strap
# whole, the job as far as it is shown; and the job file that it shows is good.
#
# srcdir and STRAPWISE are set by make check.

srcdir=${srcdir:-$(dirname "$0")/..}
tmp=$(mktemp -d "${TMPDIR:-/tmp}/readme.XXXXXX") || exit 1
trap 'rm -rf "$tmp"' 0
trap 'exit 1' 1 2 15

passed=0
failed=0

# block WORDS: the first indented block that starts with them, up to plain text
block()
{
    awk -v start="    $1" 'index($0, start) == 1 { on = 1 }
         on && /^[^ ]/ { exit }
         on { sub(/^    /, ""); print }' "$srcdir/README.md"
}

# shown TOPIC: what stands under "build/strapwise TOPIC", and what it prints
shown()
{
    block "build/strapwise $1" >"$tmp/block"
    command=$(sed -n '1s/^build\/strapwise //p' "$tmp/block")
    sed '1,2d' "$tmp/block" | sed -e :a -e '/^\n*$/{$d;N;ba' -e '}' \
        >"$tmp/wanted"
    # shellcheck disable=SC2086 # the words of the command
    (cd "$srcdir" && "$STRAPWISE" $command) >"$tmp/got" || exit 1
}

# same: counts
same()
{
    if test -s "$tmp/wanted" && diff "$tmp/wanted" "$tmp/got"; then
        passed=$((passed + 1))
    else
        echo "README.md shows another answer than strapwise $command"
        failed=$((failed + 1))
    fi
}

shown strap
same
shown hold
head -n "$(wc -l <"$tmp/wanted")" "$tmp/got" >"$tmp/head"
mv "$tmp/head" "$tmp/got"
same

block 'strapwise: 1' >"$tmp/job.yaml"
for topic in check hold; do
    if "$STRAPWISE" $topic "$tmp/job.yaml" >"$tmp/got" 2>&1; then
        passed=$((passed + 1))
    else
        echo "the job in README.md: $(sed -n 1,3p "$tmp/got")"
        failed=$((failed + 1))
    fi
done

echo "$passed passed, $failed failed"
test $failed -eq 0
