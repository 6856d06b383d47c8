#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The command: pads, discs, chucks, vacuum and clamps other than straps.

. "$(dirname "$0")/common.sh"

# every help shows an example, and the example works
for topic in pad disc chuck vacuum 'clamp screw' 'clamp cylinder' \
    'clamp swing' 'clamp adhesive' 'clamp bar' 'clamp squeeze' \
    'clamp couple' 'clamp tripod'; do
    # shellcheck disable=SC2086 # two words
    good $topic --help
    has 'For example' '--json'
    example=$(sed -n 's/^  strapwise \('"$topic"' --.*[0-9a-zA-Z]\)$/\1/p' \
        "$tmp/out" | tail -n 1)
    # shellcheck disable=SC2086
    good $example
    has 'not checked' 'makers govern' '('
    # shellcheck disable=SC2086
    good $example --units us
    # shellcheck disable=SC2086
    good $example --json
    has '"not_checked"' '"assumed"' '"warnings"'
done

# ---- pad

good pad --force 2kN --pad-diameter 16mm --part-material 6061-T6
has 'A mark on the part is unlikely' '(yield)' 'sharp edges of the pad'
run pad --force 60kN --pad-diameter 16mm --part-material 6061-T6
check test "$status" -eq 1
has 'A mark on the part is likely'
good pad --force 2kN --pad-diameter 16mm --pad-material nylon-66 \
    --part-material 6061-T6
has 'creeps' 'measure' 'pad stands'
run pad --force 20kN --pad-diameter 16mm --pad-material nylon-66 \
    --part-material C45
check test "$status" -eq 1 # the nylon gives
has 'The pad itself gives first'
bad 2 '--part-material: missing' pad --force 2kN --pad-diameter 16mm
bad 2 '--pad-area: missing' pad --force 2kN --part-material C45

# ---- disc

good disc --thrust 5kN --driver-diameter 80mm --driver-bore 50mm \
    --mu-face 0.2 --cut-diameter 120mm --tangential-cut 200N \
    --face-pressure even --json
has '"rim_N": 448.37' '"verdict": "holds"' '"first": "turn"'
run disc --thrust 5kN --driver-diameter 80mm --cut-diameter 120mm \
    --tangential-cut 200N
check test "$status" -eq 1
has 'Too little margin' 'one face: a cap on a live centre' \
    'not at torque over radius' 'a disc that slips is thrown'
run disc --thrust 5kN --driver-diameter 80mm --cut-diameter 120mm \
    --tangential-cut 200N --required-margin 1
check test "$status" -eq 0
has 'Holds: margin'
run disc --thrust 5kN --driver-diameter 80mm --cut-diameter 180mm \
    --axial-cut=-3kN
check test "$status" -eq 1
has 'Does not hold' 'First it tips' 'the face opens at its edge'
good disc --thrust 5kN --driver-diameter 80mm
has 'No cut was given'

# ---- chuck

good chuck --chuck-force 40kN --jaw-mass 2kg --jaw-radius 80mm \
    --speed 2000rpm --mu-jaw 0.2 --grip-diameter 120mm --cut-diameter 100mm \
    --tangential-cut 2kN --feed-cut 800N
has 'margin 2.05' '2256 rpm' 'each jaw is one face'
run chuck --chuck-force 40kN --jaw-mass 4.41lb --jaw-radius 80mm \
    --speed 2300rpm
check test "$status" -eq 1
has 'more than EN 1550 allows'
bad 2 '--jaw-mass: missing' chuck --chuck-force 40kN --speed 2000rpm
bad 2 '--speed: the unit is missing' chuck --chuck-force 40kN --speed 2000
bad 2 'another kind' chuck --chuck-force 40kN --speed 2000mm

# ---- vacuum

good vacuum --vacuum 80kPa --seal-length 150mm --seal-width 100mm \
    --cut-height 40mm --weight 10N --mu-face 0.2
has '1200 N' '80 kPa (23.62 inHg)' '242 N' '504 N' '1513 N'
good vacuum --vacuum 14psi --seal-area 25in2 --json
has '"held_N": 1556.8' 'vacuum_deep'
run vacuum --vacuum 80kPa --seal-length 150mm --seal-width 100mm \
    --side-cut 400N
check test "$status" -eq 1
has 'Does not hold' 'First the part slides' 'everything goes at once'
bad 2 '--vacuum: 0.08' vacuum --vacuum 80kPa --seal-area 10cm2 --altitude 7000ft
bad 2 '--altitude: the unit is missing' vacuum --vacuum 8kPa --seal-area 10cm2 \
    --altitude 7000

# ---- clamp

bad 2 'which one? screw, cylinder' clamp
bad 2 'is none of screw' clamp --json
bad 2 '"swung" is none of screw' clamp swung
good clamp --help
has 'clamp squeeze'
good help clamp
has 'clamp squeeze'
good help clamp bar
has 'Pads are measured from the first stud'
good clamp cylinder --pressure 25bar --piston-area 32cm2 --efficiency 1 \
    --limit 7kN
has '7000 N' 'caps it' '8000 N' 'have it signed' '362.6 psi'
run clamp cylinder --pressure 25bar --piston-area 32cm2 --limit 7kN --strict
check test "$status" -eq 1
good clamp cylinder --pressure 25bar --piston-area 32cm2
has 'is not given: look it up (--limit)'
good clamp swing --arm 80.5mm --rated-force 4450N --rated-arm 49.5mm
has '2736 N' "The maker's chart governs"
good clamp screw --screw-diameter 22mm --pitch 5mm --profile square \
    --force 750N --mu-thread 0.15 --mu-collar 0.15 --collar-radius 15mm \
    --hand-force 20N
has '3.4 N·m' '170.1 mm' 'hold with'
bad 2 'data sheet' clamp adhesive --bond-area 10cm2 --side-cut 10N
bad 2 '--sheet-factor: missing' clamp adhesive --bond-area 10cm2 --shear 1MPa
good clamp squeeze --cut 1kN --mu-face 0.2
has 'Squeeze with 10 kN' 'on one face. If both faces grip' '5000 N'
good clamp squeeze --cut 1kN --mu-face 0.2 --faces 2
has 'Squeeze with 5000 N' 'on two faces' 'it takes 10 kN'
run clamp squeeze --cut 1kN --mu-face 0.2 --squeeze 8kN
check test "$status" -eq 1
has 'Too little margin: margin 1.6'
run clamp bar --stud1 60kN --stud2 60kN --span 200mm --pad1 50mm --pad2 150mm \
    --bar-width 40mm --bar-thickness 20mm
check test "$status" -eq 1
has 'bends past its yield'
bad 2 'the bar tips' clamp bar --stud1 60kN --stud2 0N --span 200mm \
    --pad1 50mm --pad2 150mm --bar-width 40mm --bar-thickness 20mm

good clamp couple --normal1 4kN --distance 200mm --along 500N --couple 30N.m
has 'margin 2.06' 'One face of each clamp is counted'
run clamp couple --normal1 4kN --distance 200mm --across 500N --couple 30N.m
check test "$status" -eq 1
has 'Too little margin: margin 1.5'
good clamp tripod --x1 0mm --y1 0mm --x2 200mm --y2 0mm --x3 100mm \
    --y3 150mm --force 3kN --x 100mm --y 60mm
has '900 N' '1200 N' 'inside the triangle'
bad 2 'the part rocks' clamp tripod --x1 0mm --y1 0mm --x2 200mm --y2 0mm \
    --x3 100mm --y3 150mm --force 3kN --x 120mm --y=-10mm
good disc --thrust 5kN --driver-diameter 80mm --center-limit 4kN
has 'more is asked than the maker'

finish
