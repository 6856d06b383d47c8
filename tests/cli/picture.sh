#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The command: a strap as a drawing, its tilt as a plot.

. "$(dirname "$0")/common.sh"
tmp=$(mktemp -d "${TMPDIR:-/tmp}/picture.XXXXXX") || exit 1
trap 'rm -rf "$tmp"' 0
trap 'exit 1' 1 2 15
strap="$strap --heel-height 42mm"

# draws TEXT...: each stands in the drawing
draws()
{
    tr '\n' ' ' <"$tmp/a.svg" >"$tmp/flat"
    for text; do
        if grep -F -e "$text" "$tmp/flat" >/dev/null; then
            pass
        else
            fail "the drawing lacks \"$text\""
        fi
    done
}

# the text is the same with and without a drawing, the drawing the same twice
good $strap
cp "$tmp/out" "$tmp/plain"
good $strap --svg "$tmp/a.svg"
check cmp -s "$tmp/out" "$tmp/plain"
draws '<svg ' '12 kN' 'class="toe-force"' 'class="side-pull'
check test "$(tail -n 1 "$tmp/a.svg")" = '</svg>'
good $strap --svg "$tmp/b.svg" --tilt-svg "$tmp/c.svg"
check cmp -s "$tmp/a.svg" "$tmp/b.svg"
check grep -q 'class="dished"' "$tmp/c.svg"
good $strap --json --svg "$tmp/d.svg" --replace
check cmp -s "$tmp/a.svg" "$tmp/d.svg"
parses "$strap_keys"

# 2 mm on 90 mm is 22 mm/m: 1.1 divisions of 20 mm/m
good $strap --vial '20 mm/m' --svg "$tmp/a.svg" --replace
draws '1.1 divisions, heel high'
bad 2 '--vial: only with --find tilt' $strap --vial '20 mm/m'
good $strap --units us --svg "$tmp/a.svg" --replace
draws 'lbf (12 kN)'

# a strap that was found is the one that is drawn: a toe force of 6 kN
good $strap --find place --toe-force 6kN --svg "$tmp/a.svg" --replace
draws '6000 N'

# a file is whole or not there, and nothing is written over
bad 3 '--svg: ' $strap --svg "$tmp/a.svg"
bad 3 '--tilt-svg: ' $strap --svg "$tmp/e.svg" --tilt-svg "$tmp/c.svg"
check test ! -e "$tmp/e.svg"
bad 2 'not the same file' $strap --svg "$tmp/e.svg" --tilt-svg "$tmp/e.svg"
bad 2 'not the same file' $strap --svg "$tmp/e.svg" -o "$tmp/e.svg"
bad 2 '--tilt-svg: name a file' $strap --tilt-svg -
bad 3 'cannot write' $strap --svg "$tmp/none/e.svg"
bad 2 '--tilt: ' $strap --tilt 3deg --svg "$tmp/e.svg"
check test ! -e "$tmp/e.svg"
# nobody turns this nut: it has no line to plot
bad 2 '--tilt-svg: a nut' $strap --nut still --svg "$tmp/e.svg" --tilt-svg "$tmp/f.svg"
check test ! -e "$tmp/e.svg"
# one file under two names
cp "$tmp/a.svg" "$tmp/g.svg"
bad 2 'not the same file' $strap --svg "$tmp/g.svg" --tilt-svg "$tmp/./g.svg" \
    --replace
# where no torque works there is no strap to draw
run $strap --find window --hold 8kN --flat 8.1kN --svg "$tmp/h.svg"
check test "$status" -ne 0
check test ! -e "$tmp/h.svg"
good $strap --nut still --svg "$tmp/e.svg"

finish
