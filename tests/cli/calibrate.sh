#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The command: the shop's own nut factor.

. "$(dirname "$0")/common.sh"

bench()
{
    cat <<'EOF'
# tool room
name: oiled studs & <nuts>
thread: M12
torque [N.m]; force [kN]; note
20; 8.31; new
20; 8.9;
30; 12.6;
30; 13.4;
40; 16.9;
40; 15.6;
50; 20.7;
50; 22.6;
60; 24.6;
60; 26.9; "worn; twice used"
EOF
}
bench >"$tmp/pairs.csv"
sed 's/^thread: .*//' "$tmp/pairs.csv" >"$tmp/bare.csv"
calibrate_keys='nut_factor nut_factor_low nut_factor_high sigma_ln scatter_pct
slope n'
good calibrate "$tmp/pairs.csv"
has 'M12, 10 pairs: oiled studs & <nuts>' 'the one to use' '95 % confidence' \
    'of the force aimed at' 'mean of the pairs' 'not checked' \
    'head of the pairs' 'qualified person'
good calibrate "$tmp/pairs.csv" --units us --confidence 99% --proportion 0.9
has '44.3 ft-lbf (60 N·m)' '99 % sure' '90 % of such studs'
good calibrate "$tmp/bare.csv" --thread 1/2-13
has '1/2-13 UNC, 10 pairs'
good calibrate "$tmp/pairs.csv" --json
parses "$calibrate_keys"
has '"n": 10' '"thread": "M12"' '"name": "oiled studs & <nuts>"' \
    '"line_intercept_p"' '"mu_thread": null'
what='calibrate -'
bench | $STRAPWISE calibrate - --json >"$tmp/again" 2>"$tmp/err"
check cmp -s "$tmp/out" "$tmp/again"
printf 'torque_Nm,force_N,seat_torque_Nm\n20,8000,9\n40,16500,19\n' \
    >"$tmp/parted.csv"
good calibrate "$tmp/parted.csv" --thread M12 --prevailing-torque 1N.m
has 'friction ' 'under the nut;' 'fewer than 10 pairs'
run calibrate "$tmp/parted.csv" --thread M12 --strict
check test "$status" -eq 1
run calibrate "$tmp/pairs.csv" --thread M16 --json
has '"thread_differs"'
bad 2 'FILE: missing' calibrate
bad 2 'one file' calibrate "$tmp/pairs.csv" "$tmp/bare.csv"
bad 3 'No such file' calibrate "$tmp/none.csv"
bad 3 'cannot read' calibrate "$tmp"
bad 2 'thread: missing' calibrate "$tmp/bare.csv"
bad 2 'M13' calibrate "$tmp/bare.csv" --thread M13
bad 2 '--confidence: 1 is outside' calibrate "$tmp/pairs.csv" \
    --confidence 100%
bad 2 '--prevailing-torque: 25 N.m is not below' calibrate "$tmp/pairs.csv" \
    --prevailing-torque 25N.m
bad 2 'unknown option' calibrate "$tmp/pairs.csv" --nut-factor 0.2
# faulty files: file, line, column
faulty()
{
    printf "$2" >"$tmp/faulty.csv"
    bad 2 "faulty.csv:$1" calibrate "$tmp/faulty.csv" --thread M12
}
faulty '1: file: there is no header' ''
faulty '1: torque: the unit is missing' 'torque,force [N]\n1,2\n'
faulty '1: force: lb is a mass' 'torque [N.m],force [lb]\n1,2\n'
faulty '1: header: no column is called "speed"' 'torque_Nm,force_N,speed\n'
faulty '3: force: "16,9" has a comma' \
    'torque_Nm;force_kN\n20;8.3\n40;16,9\n'
faulty '3: row: 3 cells' 'torque_Nm,force_kN\n20,8.3\n40,16,9\n'
faulty '2: torque: -20 N.m is outside' 'torque_Nm,force_N\n-20,8\n'
faulty '2: line: has a control byte' 'torque_Nm,force_N\n20,\033[31m8\n'
faulty '2: line: has a control byte' 'torque_Nm,force_N\n20,8\000\n'
faulty '1: line: is not UTF-8' '# \377\n'
printf 'torque_Nm,force_N\n20,8\n' >"$tmp/faulty.csv"
bad 2 'pairs: at least 2' calibrate "$tmp/faulty.csv" --thread M12
what='calibrate - <nonsense'
echo nonsense | $STRAPWISE calibrate - >"$tmp/out" 2>"$tmp/err"
check test $? -eq 2
if grep 'standard input:1: header' "$tmp/err" >/dev/null; then
    pass
else
    fail "$(cat "$tmp/err")"
fi
if test -r /dev/zero; then # a device has no end
    bad 2 'is longer than 5 MB' calibrate /dev/zero
fi

# the plot
good calibrate "$tmp/pairs.csv" --svg "$tmp/a.svg"
check grep -q 'M12: nut factor K' "$tmp/a.svg"
check grep -q 'oiled studs &amp; &lt;nuts&gt;' "$tmp/a.svg"
if test -n "$python"; then
    check $python -c \
        'import sys, xml.dom.minidom; xml.dom.minidom.parse(sys.argv[1])' \
        "$tmp/a.svg"
fi
cp "$tmp/a.svg" "$tmp/b.svg"
bad 3 '--svg: ' calibrate "$tmp/pairs.csv" --svg "$tmp/a.svg"
good calibrate "$tmp/pairs.csv" --svg "$tmp/a.svg" --replace
check cmp -s "$tmp/a.svg" "$tmp/b.svg"
bad 3 'cannot write' calibrate "$tmp/pairs.csv" --svg "$tmp/none/a.svg"
bad 2 '--svg: name a file' calibrate "$tmp/pairs.csv" --svg -
bad 2 'not the same file' calibrate "$tmp/pairs.csv" --svg "$tmp/c" -o "$tmp/c"
bad 2 'M13' calibrate "$tmp/bare.csv" --thread M13 --svg "$tmp/d.svg"
check test ! -e "$tmp/d.svg"

# its K elsewhere
K=$($STRAPWISE calibrate "$tmp/pairs.csv" --json |
    sed -n 's/^  "nut_factor": \(.*\),/\1/p')
good torque M12 --preload 20kN --nut-factor "$K" --json
first_torque()
{
    sed -n 's/^  "torque_Nm": \([0-9.]\{9\}\).*/\1/p' "$tmp/out"
}
by_hand=$(first_torque)
good torque M12 --preload 20kN --nut-factor-from "$tmp/pairs.csv" --json
parses "$torque_keys"
has '"calibration": {' '"name": "oiled studs & <nuts>"'
check test -n "$by_hand"
check test "$by_hand" = "$(first_torque)"
good torque M12 --preload 20kN --nut-factor-from "$tmp/pairs.csv"
has 'K comes from' '"pairs.csv", oiled studs & <nuts>: 10 pairs on M12, K 0.1'
bad 2 'on which thread' preload M12 --torque 40N.m --nut-factor-from \
    "$tmp/bare.csv"
good preload M16 --torque 40N.m --nut-factor-from "$tmp/pairs.csv"
has 'K comes from' 'pairs on M12' 'taken with another thread'
strap="strap --thread M12 --torque 40N.m --stud-to-toe 30mm"
strap="$strap --stud-to-heel 60mm --part-height 40mm --tilt 0deg"
good $strap --nut-factor-from "$tmp/pairs.csv"
has 'K comes from'
good $strap --nut-factor-from "$tmp/pairs.csv" --json
parses "$strap_keys"
has '"calibration": {'
set_strap
sed 's/^thread/prevailing: 2 N.m\nthread/' "$tmp/pairs.csv" >"$tmp/lock.csv"
good preload M12 --torque 40N.m --nut-factor-from "$tmp/lock.csv"
has 'prevailing torque of 2 N·m' 'turns the unloaded nut'
good preload M12 --torque 40N.m --nut-factor-from "$tmp/lock.csv" \
    --prevailing-torque 0N.m
has_not 'prevailing torque of' 'turns the unloaded nut'
for other in '--nut-factor 0.2' '--mu-thread 0.1' '--mu-seat 0.1' \
    '--lubrication oiled'; do
    bad 2 "not together with ${other%% *}" preload M12 --torque 40N.m \
        --nut-factor-from "$tmp/pairs.csv" $other
done
bad 3 'No such file' preload M12 --torque 40N.m --nut-factor-from "$tmp/none"
sed '1s/^/thread: M12\n/' "$tmp/faulty.csv" >"$tmp/one.csv"
bad 2 'pairs: at least 2' preload M12 --torque 4N.m --nut-factor-from \
    "$tmp/one.csv"
bad 2 'exact form needs friction' preload M12 --torque 4N.m --form exact \
    --nut-factor-from "$tmp/pairs.csv"
bad 2 'thread: missing' preload --torque 4N.m \
    --nut-factor-from "$tmp/pairs.csv"
printf 'thread: M12\ntorque [N.m],force [N]\n20,8.3\n40,16.9\n' >"$tmp/k.csv"
bad 2 'which no nut has' preload M12 --torque 4N.m --nut-factor-from "$tmp/k.csv"
good calibrate "$tmp/k.csv"
has 'which hardly any nut has'
# the pairs are not written over
cp "$tmp/pairs.csv" "$tmp/kept.csv"
bad 2 '--svg: is the file of pairs' calibrate "$tmp/kept.csv" \
    --svg "$tmp/kept.csv" --replace
bad 2 '--output: is the file of pairs' calibrate "$tmp/kept.csv" \
    -o "$tmp/kept.csv" --replace
check cmp -s "$tmp/pairs.csv" "$tmp/kept.csv"
# readings all alike tell nothing about scatter
printf 'thread: M12\ntorque_Nm,force_N\n20,8310\n20,8310\n20,8310\n' \
    >"$tmp/alike.csv"
good preload M12 --torque 20N.m --nut-factor-from "$tmp/alike.csv"
has 'say nothing about scatter' 'wrench-friction-guessed, ±33.3 %'
# friction measured apart goes along
printf 'thread: M12\ntorque_Nm,force_N,seat_torque_Nm\n20,8000,9\n40,16500,19\n' \
    >"$tmp/apart.csv"
seat=$($STRAPWISE calibrate "$tmp/apart.csv" --json |
    sed -n 's/^  "mu_seat": \([0-9.]\{8\}\).*/\1/p')
good torque M12 --preload 20kN --nut-factor-from "$tmp/apart.csv" --json
check test -n "$seat"
check grep -q "\"mu_seat\": $seat" "$tmp/out"

finish
