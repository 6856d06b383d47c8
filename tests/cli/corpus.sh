#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The command: the corpus of cases, and faulty ones.
#
#   corpus.sh [CASES]: the folder of the corpus, by default ../cases from here

. "$(dirname "$0")/common.sh"

cases=${1:-$(dirname "$0")/../cases}

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
bad 3 'No such file' cases "$tmp/none.cases"
bad 3 '' cases "$tmp"

finish
