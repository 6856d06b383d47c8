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
run pad --force 40kN --pad-diameter 16mm --pad-material nylon-66 \
    --part-limit 40MPa
check test "$status" -eq 1 # the part gives before its nylon pad
has 'A mark on the part is likely' 'The pad gives too, after the part'
has_not 'gives first'
good pad --force 50N --nose ball --nose-radius 25mm --part-material 6061-T6
has 'contact radius'
good pad --force 100N --nose round --nose-radius 25mm --pad-width 20mm \
    --part-material 6061-T6
has 'contact half-width' 'in²)'
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
has 'Does not hold: margin 0.167' 'First a gap opens' \
    'the face opens at its edge' 'under this cut it gapes'
run disc --thrust 5kN --driver-diameter 80mm --cut-diameter 180mm \
    --axial-cut 500N
check test "$status" -eq 1
has 'Too little margin: margin 1.25' 'First a gap opens' 'past the first gap'
good disc --thrust 5kN --driver-diameter 80mm
has 'No cut was given'

# ---- chuck

run chuck --chuck-force 40kN --jaw-mass 2kg --jaw-radius 80mm \
    --speed 2000rpm --mu-jaw 0.2 --grip-diameter 120mm --cut-diameter 100mm \
    --tangential-cut 2kN --feed-cut 800N
check test "$status" -eq 1
has 'Too little force standing' 'margin at speed is 2.05 and 2 is wanted' \
    'Standing it wants 59.31 kN' \
    'and has 40 kN' 'Never above 1246 rpm' '2256 rpm' 'each jaw is one face'
good chuck --chuck-force 40kN --jaw-mass 2kg --jaw-radius 80mm \
    --speed 1246rpm --mu-jaw 0.2 --grip-diameter 120mm --cut-diameter 100mm \
    --tangential-cut 2kN --feed-cut 800N # the printed number passes
has 'Holds: margin'
run chuck --chuck-force 40kN --jaw-mass 2kg --jaw-radius 80mm \
    --speed 2300rpm --mu-jaw 0.2 --feed-cut 100N
check test "$status" -eq 1
has 'Does not hold: too fast. The speed takes 70 %' 'no more than 67 % may go'
has_not 'margin 2'
run chuck --chuck-force 40kN --jaw-mass 2kg --jaw-radius 80mm --speed 5000rpm
check test "$status" -eq 1
has 'Does not hold: the jaws let go'
good chuck --chuck-force 40kN --jaw-mass 2kg --jaw-radius 80mm \
    --speed 2000rpm --grip inside
has 'gained by speed' 'of standing grip'
has_not 'lost to speed'
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
has 'Does not hold' 'First the part slides' 'everything goes at once' \
    'Sliding only: neither the height' 'lifting without its lift' \
    '0.15 (0.1 .. 0.2)' 'mm²'
good vacuum --vacuum 80kPa --seal-length 150mm --seal-width 100mm \
    --side-cut 80N --cut-height 20mm --rim-lift 10N
has 'Holds' 'kPa'
has_not 'Sliding only' 'not given'
good vacuum --vacuum 80kPa --seal-length 150mm --seal-width 100mm \
    --side-cut 80N --cut-height 20mm
has 'The lift of the cut is not given' '101.3 kPa (97.27 .. 104.4)'
good vacuum --vacuum 80kPa --seal-length 150mm --seal-width 100mm --units us
has '14.7 psi (14.11 .. 15.14)' '23.25 in²'
has_not 'ksi'
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
run clamp cylinder --pressure 25bar --piston-area 32cm2 --efficiency 1 \
    --limit 7kN
check test "$status" -eq 1
has 'Count on 7000 N' 'The device is overloaded: 8000 N' 'acts' \
    'Lower the pressure to 21.87 bar (317.2 psi)' 'have it signed' '362.6 psi'
good clamp cylinder --pressure 21.87bar --piston-area 32cm2 --efficiency 1 \
    --limit 7kN # the printed number passes
good clamp cylinder --pressure 317.2psi --piston-area 32cm2 --efficiency 1 \
    --limit 7kN
has '3200 mm² (4.96 in²)'
run clamp cylinder --pressure 25bar --piston-area 32cm2 --limit 7kN --strict
check test "$status" -eq 1
good clamp cylinder --pressure 25bar --piston-area 32cm2
has 'is not given: look it up (--limit)'
good clamp swing --arm 80.5mm --rated-force 4450N --rated-arm 49.5mm
has '2736 N' "The maker's chart governs"
swing="--arm 65mm --bore 32mm --rated-force 3000N --rated-arm 50mm \
    --rated-pressure 70bar"
# shellcheck disable=SC2086 # words
run clamp swing $swing --pressure 70bar
check test "$status" -eq 1
has 'once the pressure is lowered to 53.84 bar' 'overloaded now' \
    "lower"
had=$(sed -n 's/^Count on \([0-9]*\).N.*/\1/p' "$tmp/out")
# shellcheck disable=SC2086
good clamp swing $swing --pressure 53.84bar # the printed number passes
has_not 'overloaded'
gives=$(sed -n 's/^Count on \([0-9]*\).N.*/\1/p' "$tmp/out")
check test "$((had - gives))" -ge 0
check test "$((had - gives))" -le 1 # what was counted on can be had
# shellcheck disable=SC2086
run clamp swing $swing --arm 40mm --pressure 100bar
check test "$status" -eq 2 # twice an arm
run clamp swing --arm 40mm --bore 32mm --rated-force 6kN --rated-arm 50mm \
    --rated-pressure 70bar --pressure 100bar
check test "$status" -eq 1
has 'more than its rated 70 bar' 'lowered to 70 bar'
good clamp screw --screw-diameter 22mm --pitch 5mm --profile square \
    --force 750N --mu-thread 0.15 --mu-collar 0.15 --collar-radius 15mm \
    --hand-force 20N
has '3.4 N·m' '170.1 mm' 'hold with' 'of the yield of class 8.8'
run clamp screw --thread M6 --screw through --torque 60Nm
check test "$status" -eq 1
has 'The screw yields' 'of the yield of class 8.8' 'of proof stress' \
    'usual for clamping screws'
good clamp screw --thread M12 --screw through --torque 40Nm
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
run clamp bar --stud1 60kN --stud2 0N --span 200mm --pad1 50mm --pad2 150mm \
    --bar-width 40mm --bar-thickness 20mm
check test "$status" -eq 1
has 'the bar tips about the first' 'second pad pulls 30 kN'
good clamp bar --stud1 6kN --stud2 6kN --span 200mm --pad1 50mm --pad2 150mm \
    --bar-width 40mm --bar-thickness 20mm
has 'bows up by 0.07 mm'

good clamp couple --normal1 4kN --distance 200mm --along 500N --couple 30N.m
has 'margin 2.06' 'One face of each clamp is counted'
run clamp couple --normal1 4kN --distance 200mm --across 500N --couple 30N.m
check test "$status" -eq 1
has 'Too little margin: margin 1.5'
good clamp tripod --x1 0mm --y1 0mm --x2 200mm --y2 0mm --x3 100mm \
    --y3 150mm --force 3kN --x 100mm --y 60mm
has '900 N' '1200 N' 'inside the triangle'
run clamp tripod --x1 0mm --y1 0mm --x2 200mm --y2 0mm --x3 100mm \
    --y3 150mm --force 3kN --x 120mm --y=-10mm
check test "$status" -eq 1
has 'The part rocks: the force lies 10.0 mm' 'third would pull 200 N' \
    'outside the edge by 10.0 mm'
run disc --thrust 5kN --driver-diameter 80mm --center-limit 4kN
check test "$status" -eq 1
has 'more is asked than the maker'

finish
