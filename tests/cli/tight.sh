#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The command: the short way from strap, part and cut to the torque.

. "$(dirname "$0")/common.sh"

strap='--thread M12 --stud-to-toe 30mm --stud-to-heel 60mm
    --restraint held --nose round'
tight="tight --straps 4 $strap"
good $tight --cut 500N --tilt 0deg --lift 0N --toe-limit 12kN
has 'on each of 4 nuts; anything within' 'N·m' 'in-lbf' 'lbf' \
    'so that the part does not slide' 'matters most' '--friction' \
    'turning and tipping: give' 'Planning aid'
has_not '--strap-modulus'
good $tight --cut 500N --tilt 0deg --lift 0N --toe-limit 12kN --assumed
has '--strap-modulus'
good $tight --cut 500N --tilt 0deg --lift 0N
has 'the least that holds, no limit was given'
good $tight --cut 500N --tilt 0deg --part-length 240mm --part-width 160mm \
    --part-height 40mm
has 'turning' 'times the friction' '0.6 of the cut'
has_not 'turning and tipping'
good $tight --cut 500N --tilt 0deg --toe-limit 12kN --json
parses
has '"verdict": "fits"' '"torque_inlbf"' '"remedies": [' '"not_checked"' \
    '"assumed"' '"pull_share"'

# the same in inches and pounds, whatever comes first
good tight --thread 1/2-13 --straps 4 --stud-to-toe 1.25in \
    --stud-to-heel 2.5in --tilt 0deg --cut 110lbf --toe-limit 2700lbf \
    --restraint held --nose round --units us
has 'ft-lbf' 'N·m' 'lbf ('

# no torque: said first, with what would do
run $tight --cut 900N --tilt 0deg --lift 0N --toe-limit 6kN
check test "$status" -eq 1
check test "$(head -c 15 "$tmp/out")" = 'No torque works'
has 'Each of these alone opens a window' 'straps:' 'a cut of'
run $tight --cut 900N --tilt 0deg --lift 0N --toe-limit 6kN --json
check test "$status" -eq 1
parses
has '"verdict": "none"' '"torque_Nm": null' '"remedy": "straps"'

# a remedy carried out opens it
good tight $strap --cut 900N --tilt 0deg --lift 0N --toe-limit 6kN --straps 12

good tight --thread M12 --lubrication oiled --straps 4 --cut 500N \
    --stud-to-toe 30mm --stud-to-heel 60mm --part-height 40mm \
    --heel-height 40mm --part-length 240mm --part-width 160mm --nose round \
    --restraint held --toe-limit 15kN # the help's example

bad 2 '--cut: missing' $tight --tilt 0deg
bad 2 '--straps: must be a whole number' tight $strap --cut 500N \
    --tilt 0deg --straps 3.5
bad 2 '--cut: the unit is missing' $tight --cut 500 --tilt 0deg
bad 2 '--toe-area: missing beside' $tight --cut 500N --tilt 0deg \
    --part-material 6061-T6
bad 2 'thread' tight --straps 4 --cut 500N

finish
