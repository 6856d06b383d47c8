#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The teaching page as a file. What it does in a browser: tests/page/.

. "$(dirname "$0")/common.sh"
tmp=$(mktemp -d "${TMPDIR:-/tmp}/page.XXXXXX") || exit 1
trap 'rm -rf "$tmp"' 0
trap 'exit 1' 1 2 15

good help page
has '--thread' 'strapwise page --thread M16'
has_not '--nut '

run page
if test "$status" -eq 3; then # configured without
    bad 3 'built without the page' page
    bad 3 'built without the page' page -o "$tmp/none.html"
    check test ! -e "$tmp/none.html"
    finish
fi

# settings FILE: the strap that a page opens with, on one line
settings()
{
    sed -n '/<script type="application\/json" id="settings">/,/<\/script>/p' \
        "$1" | tr -d '\n' | sed 's/^[^{]*//; s/<.*//; s/  */ /g'
}
# opens FILE TEXT...: each stands in those settings
opens()
{
    settings "$1" >"$tmp/settings"
    shift
    for text; do
        if grep -F -e "$text" "$tmp/settings" >/dev/null; then
            pass
        else
            fail "opens with $(cat "$tmp/settings"), not $text"
        fi
    done
}

# one file: whole, self-contained, the same bytes each time
run page -o "$tmp/a.html"
check test "$status" -eq 0
check test ! -s "$tmp/out"
check test ! -s "$tmp/err"
check test "$(head -n 1 "$tmp/a.html")" = '<!doctype html>'
check test "$(tail -n 1 "$tmp/a.html")" = '</html>'
$STRAPWISE page >"$tmp/b.html"
check cmp -s "$tmp/a.html" "$tmp/b.html"
check test "$(grep -c '@settings@' "$tmp/a.html")" -eq 0
check test "$(grep -c -E '@include|@engine' "$tmp/a.html")" -eq 0
# no address, nothing fetched
check test "$(grep -c -E '(https?|ftp|wss?)://' "$tmp/a.html")" -eq 0
check test "$(grep -c -E '<(link|script|img)[^>]*(href|src)="[^d]' \
    "$tmp/a.html")" -eq 0
check grep -q "default-src 'none'" "$tmp/a.html"
# the settings are one JSON object
if test -n "$python"; then
    settings "$tmp/a.html" >"$tmp/settings"
    check $python -c 'import json, sys; json.load(open(sys.argv[1]))' \
        "$tmp/settings"
fi
opens "$tmp/a.html" '"thread": "M12"' '"torque_Nm": 25' '"stud_to_toe_mm": 30'

# it opens with the strap of the options: a tilt becomes a height, a preload a
# torque: 30 + 60 = 90 mm, tan 2 deg = 0.0349208, so 3.1429 mm
run page --thread 1/2-13 --preload 2000lbf --nut-factor 0.2 --stud-to-toe 30mm \
    --stud-to-heel 60mm --part-height 40mm --tilt 2deg --seat spherical \
    --strap-width 50mm -o "$tmp/c.html"
check test "$status" -eq 0
# 2000 lbf * 12.7 mm * 0.2 = 22.597 N.m
opens "$tmp/c.html" '"heel_height_mm": 43.1428' \
    '"torque_Nm": 22.59' '"seat": "spherical"' '"strap_width_mm": 50'
settings "$tmp/c.html" >"$tmp/settings"
check test "$(grep -c -E 'tilt_deg|preload_N' "$tmp/settings")" -eq 0

# a thread as people write it is the one of the page's menu
opens "$tmp/c.html" '"thread": "1/2-13 UNC"'
# every size opens, also where no table says how hard it may be tightened
for thread in M1.6 M2.5 M6 M36 M48 M64 10-32 '0-80' 2-8 m16x2; do
    run page --thread "$thread" -o "$tmp/d.html" --replace
    if test "$status" -eq 0; then pass; else fail "$(cat "$tmp/err")"; fi
done
opens "$tmp/d.html" '"thread": "M16"'
# a heel a little high counts pad and step: 48 + 5 + 2 mm
run page --pad-thickness 5mm -o "$tmp/d.html" --replace
opens "$tmp/d.html" '"heel_height_mm": 55'
run page --units us -o "$tmp/d.html" --replace
opens "$tmp/d.html" '"look_show": "us first"'
bad 2 'a page is HTML' page --json

# what a strap refuses, a page refuses
bad 2 'M13' page --thread M13
bad 2 '--nut: no option' page --nut still
bad 2 '--tilt: ' page --heel-height 40mm --tilt 2deg
bad 2 '--torque: ' page --torque 1e5N.m
bad 2 '--stud-to-toe: ' page --stud-to-toe 0mm
bad 3 'exists' page -o "$tmp/a.html"
check cmp -s "$tmp/a.html" "$tmp/b.html"
run page -o "$tmp/a.html" --thread M16 --replace
check test "$status" -eq 0
opens "$tmp/a.html" '"thread": "M16"'
bad 3 'cannot write' page -o "$tmp/none/a.html"

finish
