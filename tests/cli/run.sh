#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# Runs real commands and looks at what they print and how they end.
#
#   STRAPWISE=path/to/strapwise run.sh [CASES]
#
# CASES: the folder of the corpus, by default ../cases from here. Without
# python3 the JSON is not parsed, without a comma locale none is tried, without
# /dev/full no full disk; each is said.

here=$(dirname "$0")
cases=${1:-$here/../cases}
STRAPWISE=${STRAPWISE:-strapwise}
unset POSIXLY_CORRECT

. "$(dirname "$0")/../tally.sh"

passed=0
failed=0
what=

fail()
{
    failed=$((failed + 1))
    echo "FAIL strapwise $what: $*"
}

check()
{
    if "$@"; then pass; else fail "not so: $*"; fi
}

# run ARGS...: leaves $status, $tmp/out, $tmp/err
run()
{
    what=$*
    $STRAPWISE "$@" >"$tmp/out" 2>"$tmp/err"
    status=$?
}

# has TEXT...: each stands in the output, wherever its lines were broken
has()
{
    tr '\n' ' ' <"$tmp/out" | tr -s ' ' >"$tmp/flat"
    for text; do
        if grep -F -e "$text" "$tmp/flat" >/dev/null; then
            pass
        else
            fail "output lacks \"$text\""
        fi
    done
}

has_not()
{
    for text; do
        if grep -F -e "$text" "$tmp/out" >/dev/null; then
            fail "output has \"$text\""
        else
            pass
        fi
    done
}

# good ARGS...: ends with 0, says something, and nothing on stderr
good()
{
    run "$@"
    if test "$status" -ne 0; then
        fail "status $status: $(cat "$tmp/err")"
    elif test -s "$tmp/err"; then
        fail "stderr: $(cat "$tmp/err")"
    elif test ! -s "$tmp/out"; then
        fail "no output"
    else
        pass
    fi
}

# bad STATUS TEXT ARGS...: that status, nothing on stdout, one line with TEXT
# on stderr, of reasonable length
bad()
{
    want=$1 text=$2
    shift 2
    run "$@"
    what=$(echo "$what" | cut -c1-100)
    if test "$status" -ne "$want"; then
        fail "status $status, wanted $want: $(cut -c1-200 "$tmp/err")"
    elif test -s "$tmp/out"; then
        fail "something on stdout"
    elif test "$(wc -l <"$tmp/err")" -ne 1; then
        fail "not one line on stderr: $(cut -c1-200 "$tmp/err")"
    elif test "$(wc -c <"$tmp/err")" -gt 700; then
        fail "a line of $(wc -c <"$tmp/err") bytes"
    elif ! grep -F -e "$text" "$tmp/err" >/dev/null; then
        fail "wanted \"$text\", got: $(cat "$tmp/err")"
    elif ! grep '^strapwise' "$tmp/err" >/dev/null; then
        fail "does not say who speaks: $(cat "$tmp/err")"
    else
        pass
    fi
}

set_strap()
{
    strap="strap --thread M12 --preload 12kN --stud-to-toe 30mm"
    strap="$strap --stud-to-heel 60mm --part-height 40mm"
}
set_strap

# ---- the program itself

good
has thread torque preload chart strap tool cases
good --help
good help
good --version
check test "$(wc -l <"$tmp/out")" -eq 1
if grep -E '^strapwise [0-9]+\.[0-9]+\.[0-9]+$' "$tmp/out" >/dev/null; then
    pass
else
    fail "version line: $(cat "$tmp/out")"
fi
bad 2 'is no topic' frobnicate
bad 2 'nearest: torque' torqe M12
bad 2 'options come after the topic' --json thread M12
bad 2 'is no topic' help frobnicate

# every topic has a help, and the example in it works
for topic in thread torque preload chart strap tool calibrate cases; do
    good "$topic" --help
    has 'For example' '--json' '--output'
    cp "$tmp/out" "$tmp/help"
    good help "$topic"
    check cmp -s "$tmp/out" "$tmp/help"
    test "$topic" = cases && continue
    test "$topic" = calibrate && continue # tried below, with a file
    example=$(sed -n '/^For example/,/^Options/s/^  strapwise //p' "$tmp/out")
    if test -z "$example"; then
        fail 'no example'
    else
        eval "good $example"
    fi
done

# ---- thread

good thread M12
has '12 mm (0.4724 in)' '84.27 mm' '18 mm'
good thread 1/2-13 UNC
has '1/2-13 UNC'
good thread '1/2-13 UNC'
good thread 10-32
has '#10-32 UNF'
good thread M12 x 1.25
has 'M12x1.25'
good thread M12 --units us
has '0.4724 in (12 mm)'
bad 2 'nearest are M12, M14, M10, M16' thread M13
bad 2 'unquoted #10-32 is a comment' thread
bad 2 'unquoted #10-32 is a comment' thread ''
bad 2 'is in no table' thread M12 M16

# ---- torque and preload

good torque M12 --preload 20kN --nut-factor 0.2
has '48 N·m (35.4 ft-lbf)' '20 kN (4496 lbf)' 'assumed (usual range; give it to replace it)'
good torque M12 --preload=20kN --nut-factor=0.2
has '48 N·m (35.4 ft-lbf)'
good torque --preload 20kN --nut-factor 0.2 -- M12
good torque M12 --preload 20kN --units us
has '35.4 ft-lbf (48 N·m)' '4496 lbf (20 kN)'
good torque M12 --grade 8.8 --use 90% --mu-thread 0.12 --mu-seat 0.12
has '90 % of the yield'
good torque M5 --preload 1kN --nut-factor 0.2
has '1 N·m (8.9 in-lbf)'
good preload M12 --torque '48 N.m' --nut-factor 0.2
has '20 kN (4496 lbf)'
good preload 1/2-13 --torque '25 ft-lbf'
good preload 1/2-13 --torque 25lb-ft --form exact --mu-thread 0.1 \
    --mu-seat 0.1 --torsion elastic
bad 2 '--preload: missing' torque M12
bad 2 'thread: missing' torque --preload 3kN
bad 2 '--torque: missing' preload M12
bad 2 '--torque: no option of this topic' torque M12 --torque 3N.m
bad 2 '--preload: no option of this topic' preload M12 --preload 3kN
bad 2 '--preload: the unit is missing' torque M12 --preload 20
bad 2 '--preload: lb is a mass; write lbf' torque M12 --preload 20lb
bad 2 '--preload: unknown unit' torque M12 --preload 20kM
bad 2 'is of another kind' torque M12 --preload 20mm
bad 2 'comma' torque M12 --preload 1,5kN
bad 2 'not a plain number' torque M12 --preload nan
bad 2 'not a plain number' torque M12 --preload inf
bad 2 '--preload: -3000 N is outside the allowed range' \
    torque M12 --preload -3kN
bad 2 'is empty' torque M12 --preload=
bad 2 'the value is missing' torque M12 --preload
bad 2 'the value is missing' torque M12 --preload --json
bad 2 'takes no value' torque M12 --preload 3kN --json=yes
bad 2 '--preload: given twice' torque M12 --preload 3kN --preload 4kN
bad 2 'thread: given twice' torque M12 --preload 3kN --thread M12
bad 2 'give only one' torque M12 --preload 3kN --use 0.5
bad 2 'either the nut factor or both friction' \
    torque M12 --preload 3kN --mu-thread 0.1 --mu-seat 0.1 --nut-factor 0.2
bad 2 'none of linear, exact' torque M12 --preload 3kN --form round
bad 2 'known are' torque M12 --preload 3kN --lubrication butter
bad 2 'known are' torque M12 --preload 3kN --grade 8.9
bad 2 'none of us, si' torque M12 --preload 3kN --units furlong
bad 2 '--frobnicate: unknown option' torque M12 --frobnicate 3

# ---- tool

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
bad 2 'No such file' tool 8N.m --tools "$tmp/none.csv"

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

# ---- long and dirty words

long=$(awk 'BEGIN { for (i = 0; i < 10000; i++) printf "9" }')
bad 2 '--preload' torque M12 --preload "$long"
bad 2 '--preload' torque M12 --preload "${long}kN"
bad 2 '--preload' torque M12 --preload "3$(echo "$long" | tr 9 k)"
bad 2 '--grade' torque M12 --preload 3kN --grade "$long"
bad 2 'thread' torque "$long" --preload 3kN
bad 2 'thread' thread "$long"
bad 2 'is no topic' "$long"
bad 2 'unknown option' torque M12 "--$long"
bad 2 '--seat' strap --seat "$long"
bad 2 '--find' strap --find "$long"
bad 2 '--series' chart --series "$long"
bad 2 '--units' torque M12 --preload 3kN --units "$long"
bad 2 'thread' thread "$(printf 'M12\033[31m\n\001')"
if LC_ALL=C grep '[[:cntrl:]]' "$tmp/err" >/dev/null; then
    fail 'control bytes reach the terminal'
else
    pass
fi
bad 2 'thread' thread "$(printf 'M\377\303')"

# ---- chart

good chart
has M12 M64 'N·m' 'ft-lbf' 'Nut factor K 0.2' 'not clamp settings' \
    "machine maker's limit for the T-slot governs"
good chart --series unc --preload 700lbf --units us
has '1/2-13 UNC' '3/4 in'
good chart --series all --grade A2-70
has ' -'
good chart --csv
check test "$(head -n 1 "$tmp/out" | cut -d, -f1)" = thread
check test "$(awk -F, 'NR == 1 { n = NF } NF != n' "$tmp/out" | wc -l)" -eq 0
bad 2 'none of coarse, fine' chart --series metric
bad 2 'known are' chart --grade 8.9
bad 2 'not together with --json' chart --csv --json
bad 2 'belongs to no option' chart M12

# ---- strap

good $strap --heel-height 45mm
has 'toe force' 'lever ratio' 'heel force' 'The part is pushed AWAY' \
    'Hold the strap with a second spanner' 'not checked' 'qualified person' \
    'highest point'
good $strap --heel-height 40mm --strap rigid
has '8000 N (1798 lbf)' 'The part is not drawn either way' '4000 N'
good $strap --tilt -1deg
has 'heel LOW by 1.00 deg' 'warnings' 'the strap rises from heel to toe' \
    'with the heel higher by'
good $strap --tilt 6deg --heel screw --units us
has 'drawn TOWARD the stud'
good $strap --tilt 3deg --nut still
has 'The nut does not turn' ' away .. '
has_not 'AWAY' 'TOWARD' 'bent by'
good $strap --tilt 3deg --seat spherical
has 'the spherical pair takes the tilt up'
good $strap --heel-height 45mm --pad 3mm --slot 14mm
good $strap --heel-height 45mm --pad-thickness 3mm --slot-width 14mm
bad 2 '--stud-too-toe: unknown option; nearest: --stud-to-toe' \
    strap --stud-too-toe 30mm
bad 2 '--stud-to-toe: given twice' \
    strap --stud-to-toe 30mm --stud-to-toe=30mm
bad 2 'unquoted #10-32 is a comment' strap
bad 2 '--stud-to-toe: missing' strap --thread M12 --preload 12kN
bad 2 '--heel-height: missing' strap --thread M12 --preload 12kN \
    --stud-to-toe 30mm --stud-to-heel 60mm
bad 2 '--stud-to-toe: -30 mm is outside' strap --thread M12 --preload 12kN \
    --stud-to-toe -30mm --stud-to-heel 60mm --tilt 0deg
bad 2 '--heel-height: 400 mm tilts' $strap --heel-height 400mm
bad 2 '--heel-height: -5 mm' $strap --heel-height -5mm
bad 2 '--tilt' $strap --heel-height 45mm --tilt 3deg
bad 2 '--slot' $strap --tilt 0deg --strap-width 20mm --slot 20mm
bad 2 'none of flat, spherical' $strap --tilt 0deg --seat round
bad 2 'put quotes round a value with a blank' $strap --tilt 0deg M12

# ---- backward questions

good $strap --find tilt --side-pull-limit 300N
has 'Tilts that keep' "off the vial" '--vial' '0.02' '--basis'
good $strap --find tilt --toe-error-limit 5 --vial '0.05 mm/m' --basis band
has_not '  --vial' '  --basis'
cp "$tmp/out" "$tmp/plain"
good $strap --find tilt --toe-error-limit 5% --vial '0.05 mm/m' --basis band
check cmp -s "$tmp/out" "$tmp/plain"
good $strap --tilt 0deg --find place --toe-force 6kN
has 'For 6000 N (1349 lbf) at the toe' 'stud to toe' '45.0 mm'
good strap --thread M12 --stud-to-toe 30mm --stud-to-heel 60mm --tilt 0deg \
    --nut-factor 0.2 --find torque --toe-force 6kN
has '21.6 N·m (191 in-lbf)'
bad 1 'toe' $strap --tilt 0deg --find place --toe-force 20kN
bad 2 'tilt, place, torque' $strap --tilt 0deg --find friction
bad 2 'give --side-pull-limit' $strap --find tilt
bad 2 '--toe-force: missing' $strap --tilt 0deg --find place
bad 2 'only with --find tilt' $strap --tilt 0deg --vial '0.02 mm/m'
bad 2 'only with --find tilt' $strap --tilt 0deg --find place \
    --toe-force 6kN --basis band
bad 2 'only with --find place' $strap --tilt 0deg --toe-force 6kN
good $strap --tilt 0deg --find torque --toe-force 6kN

# ---- strict

run $strap --tilt -1deg --strict
check test "$status" -eq 1
check test -s "$tmp/out"
run torque M12 --preload 3kN --strict
check test "$status" -eq 0

# ---- files

file=$tmp/new.txt
run thread M12 --output "$file"
check test "$status" -eq 0
check test ! -s "$tmp/out"
good thread M12
check cmp -s "$tmp/out" "$file"
cp "$file" "$tmp/before"
bad 3 'exists; give --replace' thread M16 -o "$file"
check cmp -s "$file" "$tmp/before"
bad 2 'is in no table' thread M13 -o "$file" --replace
check cmp -s "$file" "$tmp/before"
run thread M16 -o "$file" --replace
check test "$status" -eq 0
if grep M16 "$file" >/dev/null; then pass; else fail 'not replaced'; fi
bad 3 'cannot write' thread M12 -o "$tmp/no/such/folder"
bad 3 'exists' thread M12 -o "$tmp"
good thread M12 -o -
check test "$(find "$tmp" -name "*.part*" | wc -l)" -eq 0

# ---- output that cannot be written

if test -w /dev/full; then
    for topic in 'thread M12' 'chart' '--version' '' 'strap --help' \
        'thread M12 --json'; do
        what="$topic >/dev/full"
        $STRAPWISE $topic >/dev/full 2>"$tmp/err"
        check test $? -eq 3
        check test "$(wc -l <"$tmp/err")" -eq 1
    done
else
    echo 'skipped: there is no /dev/full'
fi
what='thread M12 >&-'
$STRAPWISE thread M12 >&- 2>"$tmp/err"
check test $? -eq 3
what='thread M12 | true'
(
    sleep 1 # until the reader is gone
    $STRAPWISE thread M12 2>/dev/null
    echo $? >"$tmp/status"
) | true
sleep 2
# ended by the signal, or by the write error where the signal is ignored
case $(cat "$tmp/status") in
3 | 141) pass ;;
*) fail "status $(cat "$tmp/status")" ;;
esac

# ---- locale

comma=
for name in de_DE.UTF-8 de_DE.utf8 fr_FR.UTF-8 fr_FR.utf8 de_DE fr_FR; do
    test -z "$comma" &&
        locale -a 2>/dev/null | grep -x -F "$name" >/dev/null && comma=$name
done
if test -n "$comma"; then
    for topic in 'thread M12 --json' 'chart' "$strap --tilt 1.5deg"; do
        $STRAPWISE $topic >"$tmp/plain"
        what="$topic in $comma"
        LC_ALL=$comma $STRAPWISE $topic >"$tmp/out"
        check cmp -s "$tmp/out" "$tmp/plain"
    done
else
    echo 'skipped: no locale with a decimal comma'
fi

# ---- JSON

check_json='
import json, math, sys
def no_constant(word):
    raise ValueError(word)
d = json.load(open(sys.argv[1], encoding="utf-8"), parse_constant=no_constant)
keys = sys.argv[2].split()
have = list(d)
assert have[:len(keys)] == keys, (have[:len(keys)], keys)
for k in ("assumed", "not_checked", "warnings"):
    assert isinstance(d[k], list), k
for a in d["assumed"]:
    assert list(a) == ["name", "value", "unit", "low", "high", "source"], a
'
parses()
{
    test -n "$python" || return
    if $python -c "$check_json" "$tmp/out" "$1" 2>"$tmp/err"; then
        pass
    else
        fail "JSON: $(tail -n 1 "$tmp/err")"
    fi
}
python=
for name in python3 python; do
    test -z "$python" && $name -c 'import json' 2>/dev/null && python=$name
done
test -n "$python" || echo 'skipped: no python3 to parse the JSON'

thread_keys='designation nominal_mm pitch_mm pitch_diameter_mm root_diameter_mm
minor_diameter_mm stress_area_mm2 across_flats_mm clearance_hole_mm'
torque_keys='thread torque_Nm torque_inlbf torque_ftlbf preload_N preload_lbf
nut_factor stretch_share thread_share seat_share loosening_torque_Nm yield_use
turn_from_snug_deg'
strap_keys='preload_N lever_ratio tilt_deg toe_force_level_N toe_force_N
toe_force_low_N toe_force_high_N toe_force_error_pct side_load_on_strap_N
heel_side_N side_pull_N side_pull_low_N side_pull_high_N pull_direction drag_N
drag_low_N drag_high_N net_part_force_N net_part_angle_deg toe_friction_use
heel_force_N unheld_N seat_offset_mm nut_travel_mm seat_state stud_bending_Nm
foot_bending_Nm stud_stress_MPa strap_stress_MPa strap_sag_mm top_mm band'
good thread '#10-32' --json
parses "$thread_keys"
good torque M12 --preload 20kN --json
parses "$torque_keys"
has '"torque_Nm": 48' '"unit": "N.m"'
cp "$tmp/out" "$tmp/plain"
good torque M12 --preload 20kN --json --units us
check cmp -s "$tmp/out" "$tmp/plain"
good preload 1/2-13 --torque '25 ft-lbf' --grade A4-80 --json
parses "$torque_keys"
has '"proof_use": null'
good $strap --tilt -1deg --json
parses "$strap_keys"
has '"pull_direction": "away from stud"' '"band": "model"' '"heel_low"'
good $strap --tilt 3deg --nut still --json
parses "$strap_keys"
for find in 'tilt --side-pull-limit 300N' 'place --toe-force 6kN'; do
    good $strap --tilt 0deg --json --find $find
    parses "$strap_keys"
    has '"find": {'
done
good chart --json
parses rows
good chart --series unc --preload 700lbf --json
parses rows
has '"preload_over_limit"'

# ---- calibrate

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
    bad 2 'larger than 4 MB' calibrate /dev/zero
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
good preload M12 --torque 40N.m --nut-factor-from "$tmp/bare.csv"
has 'K comes from' '10 pairs on M12'
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
bad 2 'pairs: at least 2' preload M12 --torque 4N.m --nut-factor-from \
    "$tmp/faulty.csv"
bad 2 'exact form needs friction' preload M12 --torque 4N.m --form exact \
    --nut-factor-from "$tmp/pairs.csv"
bad 2 'thread: missing' preload --torque 4N.m \
    --nut-factor-from "$tmp/bare.csv"

# ---- corpus

put()
{
    printf "$1" >"$tmp/a.cases"
}
for file in "$cases"/*.cases; do
    test -f "$file" || continue
    run cases "$file"
    if test "$status" -eq 0; then
        pass
    else
        fail "status $status: $(tail -n 3 "$tmp/out" "$tmp/err")"
    fi
done
put 'thread\tdesignation=M12\t=>\tpitch_mm=1.75~1%%\t# by hand\n'
good cases "$tmp/a.cases"
has '1 passed, 0 failed'
put '# no end of line\n\nthread\tdesignation=M12\t=>\tpitch_mm=1.8~1%%\t# x'
run cases "$tmp/a.cases"
check test "$status" -eq 1
has 'a.cases:3: pitch_mm: wanted 1.8, got 1.75, tolerance 0.018' \
    '0 passed, 1 failed'
run cases "$tmp/a.cases" --json
check test "$status" -eq 1
has '"failed": 1'
put 'thread\tdesignation=M13\t=>\t!unknown thread\t# x\n'
good cases "$tmp/a.cases"
put 'thread\tdesignation=M13\t=>\t!range thread\t# x\n'
run cases "$tmp/a.cases"
check test "$status" -eq 1
put 'chart\tthread=M12\t=>\ttorque_Nm=unset\twarnings=none\t# x\r\n'
good cases "$tmp/a.cases"
put 'chart\tthread=M3\tpreload_N=3000\t=>\twarnings=none\t# x\n'
run cases "$tmp/a.cases"
check test "$status" -eq 1
has 'wanted none, got over_proof'
for line in '' '# nothing but this\n' 'frobnicate\t=>\ta=1~1\t# x\n' \
    'thread\tdesignation=M12\tpitch_mm=1~1\t# x\n' \
    'thread\tdesignation\t=>\tpitch_mm=1~1\t# x\n' \
    'thread\tsize=M12\t=>\tpitch_mm=1~1\t# x\n' \
    'thread\tdesignation=M12\t=>\tpitch_mm=1.75\t# x\n' \
    'thread\tdesignation=M12\t=>\tpitch_mm=one~1\t# x\n' \
    'thread\tdesignation=M12\t=>\tpitch_mm=1.75~-1\t# x\n' \
    'thread\tdesignation=M12\t=>\tpitch=1.75~1\t# x\n' \
    'thread\tdesignation=M12\t=>\tpitch_mm=1.75~1\n' \
    'thread\tdesignation=M12\t=>\t# x\n' \
    'thread\tdesignation=M12\t=>\t!frob thread\t# x\n' \
    'thread\tdesignation=M12\t=>\twarnings=frob\t# x\n' \
    'torque\tthread=M12\tpreload_N=three\t=>\ttorque_Nm=1~1\t# x\n' \
    'strap\tseat=round\t=>\ttoe_force_N=1~1\t# x\n' \
    'thread\tdesign\000ation=M12\t=>\tpitch_mm=1~1\t# x\n'; do
    put "$line"
    bad 2 'a.cases:' cases "$tmp/a.cases"
done
bad 2 'FILE: missing' cases
bad 2 'No such file' cases "$tmp/none.cases"
bad 2 '' cases "$tmp"

finish
