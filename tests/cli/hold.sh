#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The command: job files, what was understood of them, and whether the part
# holds.

. "$(dirname "$0")/common.sh"

jobs=$(dirname "$0")/../jobs
yoke=$jobs/yoke-plate.yaml
hold_keys='margin required_margin margin_ceiling worst_point_mm first_to_go
hold_limit_N net_force_N net_moment_Nm'

# ---- check

good check "$yoke"
has 'yoke plate, 6061-T6: 240.0 mm (9.449 in) by 160.0 mm (6.299 in)' \
    'at 225, 140 mm (8.858, 5.512 in), friction 0.15' 'pushes +y, height 6.00 mm' \
    'strap M10 at 15, 20 mm' 'its stud toward -x' \
    '10 N·m (88.5 in-lbf) (set 10 N.m on small clicker)' \
    'holding counts on the low end' 'away from the stud' \
    'mill at 60 points' 'C1, C2, C3, C4; wanted margin 2' \
    'assumed (usual range' 'C1, C2, C3, C4: nut factor 0.18 (0.15 .. 0.2)' \
    'other defaults' 'not checked' 'qualified person'
has_not 'seat slip' 'nan'
good check "$yoke" --assumed
has 'C1, C2, C3, C4: seat slip' 'skim, bolt holes: disc sides 32'
good check "$yoke" --units us
has '9.449 in (240.0 mm) by'
good check "$yoke" --json
parses 'part supports stops clamps operations assumed not_checked warnings'
has '"torque_inlbf": 88.50' '"clamp_kind": "strap"' '"C1.nut_factor"' \
    '"clamp_names"'
good check "$jobs/encoder-ring.yaml"
has '12 corners' 'through screw M6' 'marks on the part' 'turn at 42 points'
what='check -'
$STRAPWISE check - <"$yoke" >"$tmp/again" 2>"$tmp/err"
$STRAPWISE check "$yoke" >"$tmp/out" 2>"$tmp/err"
check cmp -s "$tmp/out" "$tmp/again"
bad 2 'JOB: missing' check
bad 2 'one job file' check "$yoke" "$yoke"
bad 3 'No such file' check "$tmp/none.yaml"
bad 3 'cannot read' check "$tmp"
printf 'strapwise: 2\n' >"$tmp/two.yaml"
bad 2 'two.yaml:1:12: strapwise: this library reads version 1' check \
    "$tmp/two.yaml"
printf 'strapwise: 2\n' >"$tmp/$(printf 'odd\033name').yaml"
bad 2 'odd?name.yaml:1:12: ' check "$tmp/$(printf 'odd\033name').yaml"

# ---- the side that a mill is on

cat >"$tmp/edge.yaml" <<'EOF2'
strapwise: 1
part: {size: [200 mm, 150 mm], thickness: 10 mm, material: 6061-T6}
supports:
  - place: [0 mm, 0 mm]
  - place: [200 mm, 0 mm]
  - place: [100 mm, 150 mm]
clamps:
  - {kind: force, place: [100 mm, 60 mm], force: 9 kN}
operations:
  - name: edge
    cut: {kind: mill, mode: side, way: climb, diameter: 10 mm, width: 1 mm, teeth: 3, feed per tooth: 0.05 mm, depth: 5 mm}
    path: {lines: [[[0 mm, 150 mm], [200 mm, 150 mm]], [[200 mm, 0 mm], [0 mm, 0 mm]]], step: 20 mm}
EOF2
good check "$tmp/edge.yaml"
# x -48.1 N, y -57.2 N along +x (strapwise cut mill): 180 + 50 degrees
has 'climb: the material lies to the right of the path' \
    'pushes the part toward 230 deg, from P12 on toward 50 deg'
good check "$tmp/edge.yaml" --json
has '"cut_way": "climb"' '"milling_mode": "side"'
sed -e 's/way: climb/way: up/' "$tmp/edge.yaml" >"$tmp/up.yaml"
good check "$tmp/up.yaml"
has 'up: the material lies to the left of the path'

# ---- hold

good hold "$yoke"
has 'It holds: margin ' ' on the cut, 2 wanted' 'skim: It holds' \
    'bolt holes: It holds' 'worst point' 'goes first' 'ceiling' \
    'less friction' 'hold limit' 'on every nut, in proportion' \
    'straps push it' 'The part is rigid' 'qualified person'
has_not 'nan'
case $(sed -n 1p "$tmp/out") in
'It holds: margin '*) pass ;;
*) fail "the verdict does not come first" ;;
esac
good hold "$yoke" --operation skim
has_not 'bolt holes:'
run hold "$yoke" --required-margin 20
check test "$status" -eq 1
has 'It does not hold as safely as wanted: margin ' '20 wanted; it slides'
check test ! -s "$tmp/err"
good hold "$yoke" --points --operation 'bolt holes'
has 'point at margin goes first' 'P1 90, 50 mm'
good hold "$yoke" --json
parses "$hold_keys"
has '"operation": ' '"verdict": "holds"' '"sentence": "It holds: margin ' \
    '"hold_limit_torques"' '"points"' '"worst_name"' '"margin_friction_low"'
if test -n "$python"; then
    what='hold --json, its numbers'
    if $python - "$tmp/out" <<'EOP' >"$tmp/said" 2>&1
import json, sys
d = json.load(open(sys.argv[1], encoding="utf-8"))
assert len(d["operations"]) == 2
assert d["margin"] == min(o["margin"] for o in d["operations"])
for o in d["operations"]:
    assert o["margin"] == min(p["margin"] for p in o["points"]), o["operation"]
    assert o["margin"] <= o["margin_ceiling"] * (1 + 1e-6)
    assert len(o["net_force_N"]) == 3 and len(o["worst_point_mm"]) == 3
    for t in o["hold_limit_torques"]:
        assert abs(t["torque_Nm"] - 10 * o["hold_scale"]) < 1e-6, t
    assert abs(o["hold_limit_N"] - o["hold_scale"] * o["clamp_total_N"]) < 1e-3
EOP
    then pass; else fail "$(tail -n 1 "$tmp/said")"; fi
fi
bad 2 'no operation "skin"; there is skim, bolt holes' hold "$yoke" \
    --operation skin
bad 2 '--required-margin' hold "$yoke" --required-margin 2mm
bad 2 'required' hold "$yoke" --required-margin 0.5
bad 2 'JOB: missing' hold

# ---- whom a warning is about

sed -e '0,/heel height: .*/s//heel height: 3 mm/' "$yoke" >"$tmp/low.yaml"
run hold "$tmp/low.yaml" --operation skim
has '- C1: the strap rises from heel to toe' \
    '- skim: the material stands for a group'
has_not 'bolt holes'
run check "$tmp/low.yaml"
has '- C1: the strap rises from heel to toe' \
    '- skim, bolt holes: the material stands for a group'

# ---- what does not hold

spoil() # NAME SED-SCRIPT
{
    sed "$2" "$yoke" >"$tmp/$1.yaml"
    run hold "$tmp/$1.yaml" --operation skim
    check test "$status" -eq 1
    check test ! -s "$tmp/err"
}
spoil rocks 's/- place: \[225 mm, 140 mm\]/- place: [100 mm, 60 mm]/'
has 'It is on the point of rocking before the cut: clamp C3 stands outside of the supports'
spoil moves 's/supports: 0.15/supports: 0.05/'
has 'the side pull of the straps moves it before the cut' \
    'friction and stops resist only' '% of it' \
    'Remedies: level the straps, use spherical washers, or put a stop where'
has_not 'second spanner' 'drag of'
cat >"$tmp/lifts.yaml" <<'EOF2'
strapwise: 1
part: {size: [200 mm, 150 mm], thickness: 10 mm, weight: 0 N}
friction: {supports: 0.15}
supports:
  - place: [0 mm, 0 mm]
  - place: [200 mm, 0 mm]
  - place: [100 mm, 150 mm]
clamps:
  - {kind: force, place: [100 mm, 60 mm], height: 0 mm, force: 3 kN}
operations:
  - {cut: {kind: force, force z: 5 kN}, path: {points: [[100 mm, 20 mm]]}}
EOF2
run hold "$tmp/lifts.yaml"
check test "$status" -eq 1
has 'It does not hold: the cut moves it, margin 0.41' 'it lifts off S' \
    'hold limit'
has_not 'on every nut'

sed -e 's/100 mm, 60 mm/190 mm, 140 mm/' "$tmp/lifts.yaml" >"$tmp/rocks.yaml"
run hold "$tmp/rocks.yaml"
check test "$status" -eq 1
has 'It rocks before the cut: clamp C1 stands outside of the supports'

sed -e 's/100 mm, 150 mm/100 mm, 0 mm/' "$tmp/lifts.yaml" >"$tmp/line.yaml"
run hold "$tmp/line.yaml"
check test "$status" -eq 1
has 'all its supports stand in one line: move one of them out of it'
good check "$tmp/line.yaml"
has 'all its supports stand in one line'
sed -e 's/100 mm, 150 mm/200 mm, 0 mm/' "$tmp/lifts.yaml" >"$tmp/twins.yaml"
bad 2 'S3 stands where another support stands' hold "$tmp/twins.yaml"

# The pulls cancel, the drags turn the part: level straps, no spanner.
cat >"$tmp/drag.yaml" <<'EOF2'
strapwise: 1
part: {size: [200 mm, 150 mm], thickness: 10 mm, weight: 0 N}
friction: {supports: 0.1}
supports:
  - place: [0 mm, 0 mm]
  - place: [200 mm, 0 mm]
  - place: [100 mm, 150 mm]
clamps:
  - {kind: force, place: [20 mm, 50 mm], toward stud: -x, force: 1 kN, drag low: 0 N, drag high: 400 N}
  - {kind: force, place: [180 mm, 50 mm], toward stud: +x, force: 1 kN, drag low: 0 N, drag high: 400 N}
operations:
  - {cut: {kind: force, force x: 5 N}, path: {points: [[100 mm, 20 mm]]}}
EOF2
run hold "$tmp/drag.yaml"
check test "$status" -eq 1
has 'It does not hold: the drag of the nuts, which turn their straps with them, moves it before the cut' \
    'Remedy: hold each strap with a second spanner while its nut is turned'
has_not 'level the straps, use'

# A push straight through the middle: a direction, no centre far away.
cat >"$tmp/slides.yaml" <<'EOF2'
strapwise: 1
part: {size: [4 in, 4 in], thickness: 0.5 in, weight: 0 N}
friction: {supports: 0.15}
supports:
  - place: [0 in, 0 in]
  - place: [4 in, 0 in]
  - place: [4 in, 4 in]
  - place: [0 in, 4 in]
clamps:
  - {name: A, kind: force, place: [2 in, 2 in], height: 0 in, force: 900 lbf}
operations:
  - {cut: {kind: force, force x: -180 lbf}, path: {points: [[2 in, 2 in, 0 in]]}}
EOF2
run hold "$tmp/slides.yaml"
check test "$status" -eq 1
has 'it slides toward -x' 'at 2, 2 in (50.8, 50.8 mm)' \
    'A 2400 lbf (10.68 kN)'
has_not 'turning'
run hold "$tmp/slides.yaml" --units si
has 'at 50.8, 50.8 mm (2, 2 in)'
good check "$tmp/slides.yaml" --assumed
has '4.000 in (101.6 mm) by' 'largest clamp 4496 lbf' 'S4: stiffness 100000'
bad 2 '--required-margin: 30 is outside of 1 .. 20' hold "$tmp/slides.yaml" \
    --required-margin 30
good hold "$yoke" --operation skim
has 'the sum is least with' 'idle: tighten all alike all the same' 'C1 1' \
    'turning clockwise about'
has_not 'nothing is asked'

# ---- clamps that must not be used, whatever the margin

spoil walks 's/heel height: 33 mm/heel height: 13 mm/'
has 'It must not be used: clamp C1: it walks' 'nor may C2 (walks)' \
    'C1, C2, C3, C4: toe and heel together'
has_not 'It holds'
spoil yields 's/torque: 10 N.m/torque: 100 N.m/; /tool: small/d'
has 'It must not be used: clamp C' 'its stud is at' 'before it yields' \
    'it yields at' 'C1, C2, C3, C4: the stud is past its yield'
run hold "$tmp/yields.yaml" --operation skim --json
has '"verdict": "clamp fails"' '"clamp_faults"' '"fault": "yields"' \
    '"clamp_warnings"'
sed 's/thread: M10/thread: M6/' "$yoke" >"$tmp/m8.yaml"
run hold "$tmp/m8.yaml" --operation skim --required-margin 17
check test "$status" -eq 1
has 'hold limit' 'no torque reaches it: C' 'yields at'
has_not 'on every nut'
run hold "$tmp/m8.yaml" --operation skim --required-margin 17 --json
has '"reachable": "no"'
sed 's/pressure: 760 psi/pressure: 1000 psi/' "$jobs/counterweight-arm.yaml" \
    >"$tmp/over.yaml"
run hold "$tmp/over.yaml"
check test "$status" -eq 1
has 'It must not be used: clamp swing 2: it is at 130 % of what its maker allows' \
    'lower its pressure to 769 psi (53 bar)' 'swing 2: more is asked'
good hold "$jobs/counterweight-arm.yaml"
good check "$tmp/over.yaml"
has 'must not be used: it is at 130 %'

# ---- what is doubtful stands in the warnings

good hold "$jobs/encoder-ring.yaml"
has 'screw 1: a value' 'rim: the material'
sed -e '/^operations:/i\
  - {name: late, kind: force, place: [10 mm, 140 mm], force: 1 N}' \
    -e 's/  - {cut: {kind: force/  - {clamps: [C1], cut: {kind: force/' \
    "$tmp/lifts.yaml" >"$tmp/late.yaml"
run hold "$tmp/late.yaml"
has 'late: it presses outside'
run hold "$tmp/late.yaml" --operation 'operation 1'
has 'C1: no support within'
has_not 'late: it presses outside'
run check "$tmp/rocks.yaml"
has 'C1: it presses outside of the supports' 'C1: no support within'
run check "$tmp/rocks.yaml" --json
has '"remarks"' '"support_gap_mm"'

# ---- the map

good hold "$yoke" --operation skim --map "$tmp/skim.svg"
has 'skim is drawn'
has_not 'not drawn'
what='hold --map'
check grep -q '<svg ' "$tmp/skim.svg"
check grep -q '>worst: ' "$tmp/skim.svg"
check grep -q 'class="stop"' "$tmp/skim.svg"
bad 3 '--replace' hold "$yoke" --map "$tmp/skim.svg"
good hold "$yoke" --map "$tmp/skim.svg" --replace
has 'skim is drawn, the worst of them; not drawn: bolt holes: name it with --operation'
bad 2 'name a file' hold "$yoke" --map -

good help hold
has 'strapwise hold yoke-plate.yaml' '--required-margin' '--map'
good help check
has 'Keys of a job file' 'stiffness, needed' 'center of gravity'

# ---- no key of the help is unknown to the reader

# "SECTION/KEY", one a line
keys()
{
    $STRAPWISE help hold | awk '/^Keys of a job file/ { on = 1; next }
        on && /^ *[a-z, -]*: / && !/^      / {
            if (line) print line; sub(/^ */, ""); line = $0; next }
        on && NF { sub(/^ */, ""); line = line " " $0 }
        END { print line }' | awk -F': ' '{ n = split($2, key, /, /)
            for (i = 1; i <= n; i++) {
                sub(/:$/, "", key[i])
                if (key[i] !~ /[()]|^and by/) print $1 "/" key[i] } }'
}

rest='part: {size: [200 mm, 150 mm], thickness: 10 mm, weight: 9 N}
supports: [{place: [0 mm, 0 mm]}, {place: [200 mm, 0 mm]}, {place: [100 mm, 150 mm]}]'
ops='operations: [{cut: {kind: force, force x: 1 N}, path: {points: [[9 mm, 9 mm]]}}]'
cut='path: {points: [[9 mm, 9 mm]], feed: +x}'

# with_key SECTION KEY: a job that has it where it belongs
with_key()
{
    echo 'strapwise: 1'
    case $1 in
    part | friction) echo "$1: {$2: bad}" ;;
    supports) echo "$rest" | sed "s/place: \\[0 mm, 0 mm\\]/$2: bad/" ;;
    stops | tools) printf '%s\n%s: [{%s: bad}]\n%s\n' "$rest" "$1" "$2" "$ops" ;;
    clamps) printf '%s\nclamps: [{kind: force, %s: bad}]\n%s\n' "$rest" "$2" "$ops" ;;
    pad) printf '%s\nclamps: [{kind: force, place: [50 mm, 50 mm], force: 1 N, pad: {%s: bad}}]\n%s\n' \
        "$rest" "$2" "$ops" ;;
    operations) printf '%s\noperations: [{%s: bad}]\n' "$rest" "$2" ;;
    path) printf '%s\noperations: [{cut: {kind: force}, path: {%s: bad}}]\n' "$rest" "$2" ;;
    circle) printf '%s\noperations: [{cut: {kind: force}, path: {circle: {%s: bad}}}]\n' "$rest" "$2" ;;
    cut,*) printf '%s\noperations: [{cut: {kind: %s, %s: bad}, %s}]\n' "$rest" \
        "${1#cut, kind }" "$2" "$cut" ;;
    *) printf '%s\nclamps: [{kind: %s, %s: bad}]\n%s\n' "$rest" "${1%%,*}" "$2" "$ops" ;;
    esac
}

what='keys in the help of hold'
keys >"$tmp/keys"
check test "$(wc -l <"$tmp/keys")" -gt 150
unknown=
while IFS=/ read -r section key; do
    with_key "$section" "$key" >"$tmp/key.yaml"
    $STRAPWISE check "$tmp/key.yaml" >/dev/null 2>"$tmp/err"
    grep -q "unknown key" "$tmp/err" && unknown="$unknown $section/$key"
done <"$tmp/keys"
if test -z "$unknown"; then pass; else fail "unknown:$unknown"; fi
with_key cylinder "bored" >"$tmp/key.yaml"
bad 2 'unknown key' check "$tmp/key.yaml"

# ---- a clamp outside of the supports that outpresses the one inside

cat >"$tmp/can-rock.yaml" <<'EOF2'
strapwise: 1
part: {size: [300 mm, 120 mm], thickness: 20 mm, weight: 10 N}
friction: {supports: 0.4, toes: 0.1}
supports:
  - place: [60 mm, 10 mm]
  - place: [250 mm, 10 mm]
  - place: [250 mm, 110 mm]
  - place: [60 mm, 110 mm]
clamps:
  - {name: mid, kind: strap, place: [100 mm, 60 mm], toward stud: +y, thread: M12, torque: 20 N.m, stud to toe: 60 mm, stud to heel: 60 mm, heel height: 20 mm, seat: spherical, restraint: held}
  - {name: out, kind: strap, place: [30 mm, 60 mm], toward stud: -x, thread: M12, torque: 20 N.m, stud to toe: 60 mm, stud to heel: 60 mm, heel height: 20 mm, seat: spherical, restraint: held}
operations:
  - {cut: {kind: force, force x: 20 N}, path: {points: [[150 mm, 60 mm]]}}
EOF2
run hold "$tmp/can-rock.yaml"
check test "$status" -eq 1
has 'It can rock: with out at the high end of its spread' \
    'put a support below it'
run hold "$tmp/can-rock.yaml" --json
has '"verdict": "can rock"'

finish
