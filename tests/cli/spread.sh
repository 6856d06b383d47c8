#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The command: what the same torque gives, by formula, by trials, and between
# two limits.

. "$(dirname "$0")/common.sh"

# ---- methods

good methods
has 'by-feel' '±35 %' 'wrench-oiled' '±25 %' 'largest over smallest preload' \
    'load-cell' '95 of 100 is assumed'
good methods --json
has '"method": "wrench-friction-measured"' '"scatter_pct": 23.1'

# ---- beside torque and preload

# 40 N.m on M12 with K 0.2 is 16.67 kN; +-25 % is 16.67 kN times or over the
# square root of 1.25/0.75 = 1.291
good preload M12 --torque 40N.m --nut-factor 0.2 --scatter 25%
has '95 of 100 give 12.91 .. 21.52 kN' '±25 %'
good preload M12 --torque 40N.m --lubrication oiled
has 'wrench-oiled, ±25 %' 'the way of tightening that fits the lubrication'
good preload M12 --torque 40N.m --mu-thread 0.12 --mu-seat 0.12
has 'wrench-friction-guessed, ±33.3 %'
# tanh(2.5758/1.96 atanh(0.35)) = 0.446
good torque M12 --preload 20kN --method by-feel --coverage 99%
has '99 of 100 give' 'by-feel, ±44.6 %'
good torque M12 --preload 20kN --tool-scatter 4% --factor-scatter 20%
has 'of its variance from the torque tool'
has_not '--method'
good torque M12 --preload 20kN --json
parses "$torque_keys"
has '"spread": {' '"method": "wrench-dry"' '"alpha": 2.07692307692' \
    '"name": "published_coverage"'
good torque M12 --preload 25kN --scatter 25
has_not 'high end'
good torque M12 --preload 35kN --scatter 25
has 'the high end of the spread exceeds 75 % of the proof load'
bad 2 'nearest is by-feel' torque M12 --preload 20kN --method byfeel
bad 2 'give either the method or a scatter' torque M12 --preload 20kN \
    --method by-feel --scatter 25
bad 2 'is the whole' torque M12 --preload 20kN --tool-scatter 4 --scatter 25
bad 2 '--factor-scatter: missing' torque M12 --preload 20kN --tool-scatter 4
bad 2 'could be a part or percent' torque M12 --preload 20kN --scatter 0.25
good preload M12 --torque 20N.m --method load-cell
has 'reads something else than torque'
run window M12 --hold 60kN --flat 500kN
check test "$status" -eq 1
has 'The stud yields below the lower limit'
good window M12 --hold 20kN --flat 500kN --lubrication oiled
has 'up to where the stud may yield'
bad 2 '--scatter: 96' torque M12 --preload 20kN --scatter 96
bad 2 '--coverage: 1 is outside' torque M12 --preload 20kN --coverage 100%
bad 2 'unknown option' torque M12 --preload 20kN --trials 100

# ---- through the strap

set_strap
by_torque=$(echo "$strap --nose round" | sed 's/--preload 12kN/--torque 40N.m/')
good $by_torque --tilt 3deg
has 'This torque again and again (wrench-dry, ±35 %): 95 of 100 lie between' \
    'high over low' '20000 trials' "in the model's band"
has_not 'with the scatter'
good $by_torque --tilt 3deg --json
parses "$strap_keys"
has '"band": "model",' '"spread": {' '"band": "model+scatter"'
cp "$tmp/out" "$tmp/first"
good $by_torque --tilt 3deg --json
check cmp -s "$tmp/out" "$tmp/first"
good $by_torque --tilt 3deg --json --threads 4
grep -A 30 '"spread"' "$tmp/out" | grep -B 30 -m 1 '}' >"$tmp/spread4"
grep -A 30 '"spread"' "$tmp/first" | grep -B 30 -m 1 '}' >"$tmp/spread1"
check test -s "$tmp/spread1"
check cmp -s "$tmp/spread1" "$tmp/spread4"
good $by_torque --tilt 3deg --json --seed 2
check grep -q '"band": "model+scatter"' "$tmp/out"
grep -A 30 '"spread"' "$tmp/out" | grep -B 30 -m 1 '}' >"$tmp/spread2"
check test "$(cmp -s "$tmp/spread1" "$tmp/spread2"; echo $?)" -eq 1
good $by_torque --tilt 3deg --method wrench-oiled
has 'wrench-oiled, ±25 %'
good $by_torque --tilt 3deg --vary preload
has 'the tightening alone'
good $strap --tilt 0deg
has_not 'again and again'
bad 2 'nobody turns this one' $strap --tilt 0deg --nut still --scatter 25 \
    --trials 1000
good $strap --tilt 0deg --nut still
bad 2 '--trials: 1.5' $by_torque --tilt 0deg --trials 1.5
bad 2 'not a whole number' $by_torque --tilt 0deg --trials 1000.5
bad 2 '--trials: 100000000' $by_torque --tilt 0deg --trials 1e8

# progress goes to a terminal and nowhere else
run $by_torque --tilt 0deg --trials 600000
check test ! -s "$tmp/err"
if command -v script >/dev/null; then
    what='trials on a terminal'
    script -qec "$STRAPWISE $by_torque --tilt 0deg --trials 600000 \
        -o $tmp/long" "$tmp/typescript" >/dev/null 2>&1 </dev/null
    check grep -q 'trials  *50 %' "$tmp/typescript"
    check test -s "$tmp/long"
else
    echo 'skipped: no script to make a terminal'
fi

# ---- between two limits

# sqrt(8 x 18) = 12 kN: 0.18 x 12 mm x 12 kN = 25.92 N.m; ends by the square
# root of 1.25/0.75
good window M12 --hold 8kN --flat 18kN --lubrication oiled
has '25.9 N·m' '22.3 .. 30.1 N·m' '9.30 .. 15.49 kN' '95 of 100'
good window M12 --hold 8kN --flat 18kN --lubrication oiled --json
has '"verdict": "fits"' '"torque_Nm": 25.92,'
run window M12 --hold 8kN --flat 12kN --lubrication oiled
check test "$status" -eq 1
has 'No torque works: the limits are 1.5 apart, one torque spreads the force'
has 'by 1.67' '±20 % or better would fit'
run window M12 --hold 8kN --flat 12kN --lubrication oiled --json
check test "$status" -eq 1
has '"verdict": "none"' '"torque_Nm": null' 'No torque works'
bad 2 '--hold: missing' window M12 --flat 12kN
bad 2 '--flat: missing' window M12 --hold 12kN
bad 2 'is not above --hold' window M12 --hold 12kN --flat 12kN
bad 2 '--hold: the unit is missing' window M12 --hold 12 --flat 15kN

to_find=$(echo "$strap --nose round --tilt 1deg" | sed 's/--preload 12kN//')
good $to_find --find window --hold 3kN --flat 9kN
has 'at the toe' "the strap's own band counted" 'The strap then'
run $to_find --find window --hold 3kN --flat 4kN
check test "$status" -eq 1
has 'No torque works' 'half way between'
run $to_find --find window --hold 3kN --flat 4kN --json
check test "$status" -eq 1
has '"find": {' '"verdict": "none"'
bad 2 'give --hold and --flat' $to_find --find window --hold 3kN
bad 2 'only with --find window' $strap --tilt 0deg --hold 3kN

# ---- the shop's own K brings its scatter along

cat >"$tmp/pairs.csv" <<'EOF'
name: oiled studs
thread: M12
torque [N.m],force [kN]
20,8.3
20,8.9
30,12.6
30,13.4
40,16.9
40,15.6
EOF
good preload M12 --torque 40N.m --nut-factor-from "$tmp/pairs.csv"
has 'scatter to rely on ±' 'of its variance from the torque tool'
good preload M12 --torque 40N.m --nut-factor-from "$tmp/pairs.csv" --scatter 30
has '±30 %'
has_not 'scatter to rely on'
good window M12 --hold 8kN --flat 18kN --nut-factor-from "$tmp/pairs.csv"
has 'K comes from'
good $by_torque --tilt 0deg --nut-factor-from "$tmp/pairs.csv" --json
has '"band": "model+scatter"' '"tolerance_pct"'

finish
