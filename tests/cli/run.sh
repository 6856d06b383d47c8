#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The command: the program itself, thread, torque, chart, strap, files and
# locale. Without a comma locale none is tried, without /dev/full no full disk;
# each is said.

. "$(dirname "$0")/common.sh"

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

finish
