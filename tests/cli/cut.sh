#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The command: cuts, one cutter or two, and which way the part is pushed.

. "$(dirname "$0")/common.sh"

# ---- the family

good cut --help
has 'cut turn' 'cut mill' 'cut drill' 'cut materials'
good help cut
has 'cut drill'
good help cut mill
has '--feed-per-tooth LENGTH' '--other-diameter LENGTH' '6061-T6' \
    'strapwise cut materials'
good cut mill --help
bad 2 'which one? turn, mill, drill, materials' cut
bad 2 '"plane" is none of turn' cut plane
bad 2 'nearest' cut mill --diametre 3mm

# ---- materials

good cut materials
has 'vdi-22' '0.25' '6061-T6 = vdi-22' '4140 = 42CrMo4' 'titanium by 70 %'
good cut materials --json
has '"material": "vdi-37-2022"' '"mc": null' '"cut_editions"'

# ---- mill

mill='cut mill --material 6061-T6 --diameter 12mm --teeth 3 --depth 10mm'
mill="$mill --feed-per-tooth 0.08mm"
good $mill --width 3mm
has 'Climb milling in 6061-T6, assumed group vdi-22' \
    'back against the feed, into the cutter' 'to the right of the feed' \
    'lifted' 'not at the axis' 'N (' '0 or 1: the load stops' \
    'by the mean chip' '--wear-factor' 'not checked' 'Planning aid'
has_not 'power at the cut' 'this one'
good $mill --width 3mm --way up --speed 8000rpm
has 'Up milling' 'ahead along the feed' 'kW (' 'ft/min' '8000 rpm' 'cm³/min'
good $mill --width 3mm --way up --cutting-speed 900ft/min --units us
has 'hp (' 'in³/min' 'lbf ('
good $mill
has 'Slot' 'to the right of the feed'
good $mill --mode face --width 9mm --corner 45deg --helix 0deg
has 'Face milling' 'pressed down' 'presses the part down'
good $mill --mode face --width 9mm --feed-direction 90deg
has 'the feed goes 90 deg counterclockwise from x' 'neither lifts'
good $mill --width 3mm --json
has '"peak_N":' '"over_a_pitch": [' '"turn_deg": 0' '"metal": {' \
    '"stands_for": "vdi-22"' '"cut_group"' '"name": "wear_factor"' \
    '"power_W": null'
check test "$(grep -c turn_deg "$tmp/out")" -eq 25 # and the peak's
# the direction turns the vector: what was x is y
$STRAPWISE $mill --width 3mm --json | grep '"mean_x_N"' >"$tmp/x"
$STRAPWISE $mill --width 3mm --feed-direction 90deg --json |
    grep '"mean_y_N"' | sed 's/_y_/_x_/' | cmp - "$tmp/x" >/dev/null
check test $? -eq 0
good $mill --kc11 800MPa --mc 0.25 --unit-power 0.3hp.min/in3
has "by the handbook's power"
run $mill --width 3mm --strict
check test "$status" -eq 1

# ---- two cutters

good $mill --width 3mm --other-diameter 8mm --other-rake 12deg \
    --speed 8000rpm
has 'this one the other' 'peak in the plane' 'lift' 'power' \
    '% less'
has_not '% more'
good $mill --width 3mm --other-wear-factor 1.5
has '15 % more'
good $mill --width 3mm --other-helix 0deg --json
has '"other": {' '"other_saves_pct": {' '"z_high_N": 100'
# 12 % of the force for 12 degrees of rake
good $mill --width 3mm --other-rake 12deg --json
has '"peak_N": 12'
good $mill --speed 8000rpm --other-cutting-speed 100m/min
has 'power'
bad 2 'the other cutter: --teeth: 2.5 is not a whole number' $mill --other-teeth 2.5
bad 2 'the other cutter: --width' $mill --width 3mm --other-width 20mm

# ---- turn and drill

good cut turn --material C45 --depth 2mm --feed 0.25mm --diameter 80mm \
    --nose-radius 0.8mm --cutting-speed 180m/min --other-nose-radius 0.4mm
has 'brakes the work' 'pushes toward the chuck' \
    'pushes inward, toward the axis' 'torque' 'the grip must carry it' \
    'kW (' '716.2 rpm' 'away from the tool' '% less'
good cut turn --material vdi-2 --depth 2mm --feed 0.25mm --lead 95deg
has 'pushes outward' '1456 N' # 2.24 x 1.3 x 0.5
good cut turn --material vdi-2 --depth 2mm --feed 0.25mm --direction facing
has 'Facing' 'pushes toward the axis' 'presses toward the chuck'
good cut turn --material vdi-2 --depth 2mm --feed 0.25mm --direction boring \
    --lead 75deg
has 'Boring' 'pushes outward'
good cut turn --kc11 2000MPa --mc 0.2 --depth 2mm --feed 0.01mm
has 'a metal of the constants given' 'the chip is thinner than 0.02 mm'
has_not 'cut_group'
good cut drill --material 4140 --diameter "3/8 in" --feed 0.008in --units us \
    --speed 700rpm --work-factor 24000 --other-chisel-ratio 0.03
has 'taken as 42CrMo4' 'turns the part clockwise' 'lips alone' \
    'falls to nothing and the torque stays' 'handbook' 'hp (' \
    'this one' 'thrust' '% less'
good cut drill --material vdi-6 --diameter 10mm --feed 0.2mm --json
has '"pull_N":' '"z_low_N": -' '"handbook_thrust_N": null' \
    '"unit_power_Nm":'
bad 2 '--mc: missing; no exponent is in print for vdi-38' cut drill \
    --material vdi-38 --diameter 5mm --feed 0.1mm
bad 2 'nearest are 6061' cut drill --material 6061T --diameter 5mm --feed 0.1mm
bad 2 '--material: missing' cut drill --diameter 5mm --feed 0.1mm
bad 2 '--feed: missing' cut drill --material C45 --diameter 5mm
bad 2 '--speed: the unit is missing' cut drill --material C45 --speed 700
bad 2 '--speed' cut drill --material C45 --diameter 5mm --feed 0.1mm \
    --speed 700rpm --cutting-speed 20m/min

finish
