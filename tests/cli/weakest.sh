#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The command: what gives first, how far a stud must be screwed in, and the turn
# of its nut.

. "$(dirname "$0")/common.sh"

# ---- materials

good materials
has '6061-T6' 'GJL-250' 'the lower of two editions' 'a certificate is better'
good materials --json
has '"material": "Ti-6Al-4V"' '"pressure_limit_MPa": null' '"source"'

# ---- strip

# Handbook of Bolts and Bolted Joints: 69.6 kN on M10x1.5 in aluminium of
# 130 MPa shear strength needs 21.6 mm (computed 21.55)
run strip M10 --preload 69.6kN --factor 1 --shear-strength 130MPa \
    --major-diameter 9.968mm --nut-pitch-diameter 9.206mm --material 6061-T6 \
    --engaged-length 21.6mm --json
check test "$status" -eq 1 # the stud itself would break
has '"length_needed_mm": 21.5'
good strip M12 --material 6061-T6 --engaged-length 6mm
has 'first to give tapped thread' 'so that the stud breaks before' \
    'a thread strips before the stud breaks' 'aluminium 6061-T6'
has_not 'times the load'
good strip M12 --material 6061-T6 --engaged-length 30mm --preload 20kN
has 'first to give stud' 'times the load'
bad 2 'nearest are GJL-250' strip M12 --material GJL-251
bad 2 'thread: missing' strip
bad 2 '--engaged-length: the unit is missing' strip M12 --engaged-length 12
bad 2 '--factor: 0 is outside' strip M12 --factor 0

# ---- weakest

set_strap
good $strap --tilt 0deg
has 'turn from snug' 'a cross-check, no setting'
good $strap --tilt 0deg --json
has '"turn": {' '"turn_low_deg"'
good $strap --tilt 0deg --nut still
has_not 'turn from snug'
weakest=$(echo "$strap --tilt 0deg" | sed 's/^strap/weakest/')
good $weakest
has 'What gives first at 12 kN' 'margin' 'washer bearing' 'nut' \
    'tapped thread' 'screw it in' '--nut-class' 'not checked'
has_not 'mu-heel-high'
good $weakest --assumed
has '--mu-heel-high' '--nut-class'
good $weakest --json
parses parts
check test "$(grep -c '"part":' "$tmp/out")" -eq 6
# least margin first
awk '/"margin":/ { gsub(/[^0-9.]/, ""); if ($0 + 0 < last) exit 1; last = $0 + 0 }' \
    "$tmp/out"
check test $? -eq 0
run $weakest --material nylon-66 --engaged-length 3mm
check test "$status" -eq 1
has 'this part gives under the load asked for'
check grep -q '^  tapped thread' "$tmp/out"
# 16.67 kN times the square root of 1.35/0.65 is 24.02 kN
good $(echo "$weakest" | sed 's/--preload 12kN/--torque 40N.m/')
has 'one torque gives up to 24.02 kN' '95 of 100): nothing gives'
run $(echo "$weakest" | sed 's/--preload 12kN/--torque 60N.m/')
has 'strap' 'would give'
# a calibration changes K and its scatter, nothing of what gives
printf 'thread: M12\ntorque [N.m],force [kN]\n20,8.3\n30,12.6\n30,13.4\n40,16\n' \
    >"$tmp/pairs.csv"
good $weakest --json
grep -E '"(limit_N|limit_MPa)"' "$tmp/out" >"$tmp/plain"
good $weakest --nut-factor-from "$tmp/pairs.csv" --json
grep -E '"(limit_N|limit_MPa)"' "$tmp/out" >"$tmp/own"
check cmp -s "$tmp/plain" "$tmp/own"
# a strap of a named material bends by that one's yield: nylon 6/6, 45 MPa
run $weakest --strap-material nylon-66
check test "$status" -eq 1
has 'of 45 MPa'
good $weakest --strap-material nylon-66 --strap-yield 290MPa
bad 2 'nearest are' $weakest --material stele
bad 2 '--nut-class' $weakest --nut-class 9
bad 2 'unknown option' $weakest --rank 1

finish
