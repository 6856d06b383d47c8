#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# make bench: how fast, as a ratio against a named reference in the same run,
# one core. Nothing here is a test: a machine may be busy.
#
# srcdir, builddir and PYTHON are set by make bench. A reference that is not
# installed leaves its row out, and says so.

srcdir=${srcdir:-$(dirname "$0")/../..}
builddir=${builddir:-.}
PYTHON=${PYTHON:-python3}
LC_ALL=C
export LC_ALL
tmp=$(mktemp -d "${TMPDIR:-/tmp}/bench.XXXXXX") || exit 1
trap 'rm -rf "$tmp"' 0
trap 'exit 1' 1 2 15

# the program itself: a shared build leaves a shell script in its place
program=$builddir/strapwise
if test -x "$builddir/.libs/strapwise"; then
    program=$builddir/.libs/strapwise
    LD_LIBRARY_PATH=$builddir/.libs
    export LD_LIBRARY_PATH
fi

# row WORK OURS REFERENCE-NAME THEIRS GOAL: seconds each
row()
{
    awk -v work="$1" -v ours="$2" -v name="$3" -v theirs="$4" -v goal="$5" \
        'BEGIN { printf "%-36s %9.4f s   %-28s %9.4f s   %6.1f   %s\n",
                 work, ours, name, theirs, theirs / ours, goal }'
}

# seconds COUNT COMMAND...: mean of COUNT runs
seconds()
{
    count=$1
    shift
    start=$(date +%s%N)
    i=0
    while test "$i" -lt "$count"; do
        "$@" >/dev/null || return 1
        i=$((i + 1))
    done
    awk -v ns=$(($(date +%s%N) - start)) -v n="$count" \
        'BEGIN { print ns / n / 1e9 }'
}

printf '%-36s %11s   %-28s %11s   %6s   %s\n' work ours reference theirs \
    ratio goal

"$builddir/tests/bench/trials" >"$tmp/ours" || exit 1
if "$PYTHON" -c 'import numpy' 2>/dev/null; then
    OMP_NUM_THREADS=1 "$PYTHON" "$srcdir/tests/bench/trials.py" \
        >"$tmp/theirs" || exit 1
    while read -r seat ours; do
        sed -n "s/^$seat //p" "$tmp/theirs" >"$tmp/seat"
        read -r whole pieces <"$tmp/seat"
        row "1e6 trials through a strap, $seat" "$ours" \
            "NumPy, vectorised" "$whole" '>= 2'
        row "" "$ours" "NumPy, pieces in the cache" "$pieces" ''
    done <"$tmp/ours"
else
    echo "no NumPy: trials through a strap left out"
fi

# processor time: threads and a busy machine do not count
if "$PYTHON" -c 'import scipy.optimize' 2>/dev/null; then
    for kind in high flat; do
        for points in 125 250 500 1000; do
            "$PYTHON" "$srcdir/tests/bench/hold.py" lines $kind $points \
                >"$tmp/fixture"
            "$builddir/tests/hold/hold_lines" <"$tmp/fixture" |
                sed -n 's/^time //p' >"$tmp/hold$points"
        done
        case $kind in
        high) name='stops at height' goal='>= 20' ;;
        flat) name='all in one plane' goal='>= 100' ;;
        esac
        OMP_NUM_THREADS=1 "$PYTHON" "$srcdir/tests/bench/hold.py" linprog \
            $kind 500 >"$tmp/theirs" || exit 1
        read -r theirs _ <"$tmp/theirs"
        row "500 margins, $name" "$(cat "$tmp/hold500")" \
            "SciPy linprog, the same LPs" "$theirs" "$goal"
        printf '    125, 250, 500, 1000 points:'
        printf ' %s s' "$(cat "$tmp/hold125")" "$(cat "$tmp/hold250")" \
            "$(cat "$tmp/hold500")" "$(cat "$tmp/hold1000")"
        echo
    done
else
    echo "no SciPy: margins of a fixture left out"
fi

if command -v bc >/dev/null; then
    echo 'scale=6; 0.2 * 0.012 * 20000' >"$tmp/formula"
    ours=$(seconds 200 "$program" torque M12 --preload 20kN \
        --nut-factor 0.2) || exit 1
    theirs=$(seconds 200 bc -q "$tmp/formula" </dev/null) || exit 1
    row 'one torque, whole process' "$ours" 'bc, the one-line formula' \
        "$theirs" '>= 0.25'
else
    echo "no bc: one torque left out"
fi

# shellcheck source=../page/needs.sh
. "$srcdir/tests/page/needs.sh"
if page_needs "$tmp"; then
    node "$srcdir/tests/bench/page.mjs" >"$tmp/page" || exit 1
    while IFS='|' read -r of which ours theirs; do
        case $of in
        whole) name="slider to frame, $which" goal='' ;;
        work) name="its own work, $which" goal='0.0160 s at most' ;;
        esac
        row "$name" "$ours" "a page with a bare slider" "$theirs" "$goal"
    done <"$tmp/page"
else
    echo "$why: slider to drawn frame left out"
fi
