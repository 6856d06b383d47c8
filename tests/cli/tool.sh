#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The command: torque tools.

. "$(dirname "$0")/common.sh"

good tool 8.3N.m
has '8.3 N·m (73.5 in-lbf)' 'click-25Nm' '8.5 N·m' '+2.4 %' 'exercised'
check test "$(grep -n click-10Nm "$tmp/out" | cut -d: -f1)" -lt \
    "$(grep -n click-25Nm "$tmp/out" | cut -d: -f1)"
check test "$(grep -n click-25Nm "$tmp/out" | cut -d: -f1)" -lt \
    "$(grep -n click-200inlbf "$tmp/out" | cut -d: -f1)"
good tool 6 ft-lbf --units us
has '72 in-lbf (8.13 N·m)'
check test "$(grep -n click-200inlbf "$tmp/out" | cut -d: -f1)" -lt \
    "$(grep -n click-10Nm "$tmp/out" | cut -d: -f1)"
good tool 8.3N.m --tool click-25Nm
has '8.5 N·m (75.2 in-lbf), +2.4 % from the torque wanted' '±4 %' \
    '8.17 .. 8.85 N·m' '5 .. 25 N·m' 'quarter of its permitted deviation' \
    '--usable-fraction' 'from memory'
good tool 50ft-lbf --tool dial-100ftlbf
has 'pull until 50 ft-lbf (67.8 N·m), the torque wanted'
good tool 50.3N.m --range-high 100N.m --resolution 1N.m --deviation 3% \
    --kind indicating --range-low 10N.m --torque-unit N.m --usable-fraction 0.1
has 'a tool of your own' 'pull until 50 N·m' '48.5 .. 51.5 N·m'
has_not warnings
good tool 8.3N.m --tool click-25Nm --json
has '"torque_Nm": 8.3' '"set_torque_Nm": 8.5' '"torque_unit": "N.m"' \
    '"tool_rounding"' '"name": "deviation_pct"' '"not_checked"'
good tool 8.3N.m --json
has '"tools": [' '"tool": "click-10Nm"'
run tool 6ft-lbf --tool click-100ftlbf
check test "$status" -eq 1
check test "$(wc -l <"$tmp/err")" -eq 1
check grep -q 'torque: 8.13491 N.m (6 ft-lbf) is below the usable 20 to 100' \
    "$tmp/err"
check grep -q 'would do (click-200inlbf)' "$tmp/err"
check grep -q '^  click-200inlbf' "$tmp/out"
bad 1 'count flats of nut turn from snug' tool 0.01N.m
bad 1 'count flats of nut turn from snug' tool 9kN.m --tool click-340Nm
bad 2 'torque: missing' tool
bad 2 'torque: the unit is missing' tool 8
bad 2 'torque: unknown unit' tool 8N.m 9N.m
bad 2 'torque: given twice' tool 8N.m --torque 9N.m
bad 2 'is of another kind' tool 8mm
bad 2 'nearest is click-25Nm' tool 8N.m --tool clik-25Nm
bad 2 '--tool: missing; give a tool of the table, or --range-high' \
    tool 8N.m --kind setting
bad 2 '--resolution: missing' tool 8N.m --range-high 20N.m
bad 2 'none of setting, indicating' tool 8N.m --kind click
bad 2 'none of N.m, in-lbf, ft-lbf' tool 8N.m --torque-unit lb-ft
bad 2 '--tool: not together with --tools' tool 8N.m --tool x --tools y
bad 3 'No such file' tool 8N.m --tools "$tmp/none.csv"

cat >"$tmp/shop.csv" <<'EOF'
# second shift
name; kind; from [ft-lbf]; to [ft-lbf]; step [ft-lbf]; deviation [%]
big clicker; setting; 30; 150; 1; 4
old beam; indicating; ; 30; 1;
driver; setting; 0.5; 4; 0.1; 6
EOF
good tool 9.1ft-lbf --tools "$tmp/shop.csv"
has 'big clicker 30 .. 150 ft-lbf no: below its range' \
    'old beam 6 .. 30 ft-lbf 9 ft-lbf 12.2 N·m -1.1 %' \
    'driver 0.8 .. 4 ft-lbf no: above its range' 'certificate'
good tool 9ft-lbf --tools "$tmp/shop.csv" --json
has '"name": "big clicker", "refused": "torque_Nm: 12.2024 N.m (9 ft-lbf) is' \
    '"name": "old beam"' '"setting": 9'
run tool 0.4ft-lbf --tools "$tmp/shop.csv"
check test "$status" -eq 1
check grep -q 'none of these tools would do; of the usual ones a ' "$tmp/err"
check grep -q 'below its range' "$tmp/out"
bad 2 '1e-6 to 1000000 N.m' tool 1e9N.m --tools "$tmp/shop.csv"
bad 2 '--usable-fraction' tool 9ft-lbf --tools "$tmp/shop.csv" \
    --usable-fraction 2
sed 's/ 30; 1;$/ 30; ;/' "$tmp/shop.csv" >"$tmp/bad.csv"
bad 2 'bad.csv:4: step: the cell is empty' tool 9ft-lbf --tools "$tmp/bad.csv"
sed 's/setting; 0.5/slipping; 0.5/' "$tmp/shop.csv" >"$tmp/bad.csv"
bad 2 'bad.csv:5: kind: "slipping" is none of' \
    tool 9ft-lbf --tools "$tmp/bad.csv"
printf 'name,to [N.m],step [N.m]\nx,9,1\n\0' >"$tmp/bad.csv"
bad 2 'zero byte' tool 9ft-lbf --tools "$tmp/bad.csv"
: >"$tmp/bad.csv"
bad 2 'there is no header' tool 9ft-lbf --tools "$tmp/bad.csv"

finish
