# SPDX-License-Identifier: GPL-3.0-or-later
# shellcheck shell=sh
#
# Read by the scripts beside it, which run real commands and look at what they
# print and how they end.
#
#   STRAPWISE=path/to/strapwise NAME.sh
#
# Without python3 the JSON is not parsed.

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
