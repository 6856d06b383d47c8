#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# Every table in this folder has one fault and is named after it.  Each must be
# refused at the place its "# expect:" line says, with one line on stderr and
# nothing on stdout; every good table must compile.
#
#   run.sh [TABLES]       TABLES: the folder with compile.awk and the good
#                         tables, by default ../../tables from here
#
# AWK and CC choose the programs.  Without a C compiler the good tables are
# only turned into C, not compiled.

bad=$(dirname "$0")
tables=${1:-$bad/../../tables}
AWK=${AWK:-awk}
CC=${CC:-cc}
LC_ALL=C
export LC_ALL

. "$bad/../tally.sh"
mkdir "$tmp/base" || exit 1

# compile_table FILE NAME [awk options]: C on $tmp/out, complaint on $tmp/err
compile_table()
{
    file=$1 name=$2
    shift 2
    $AWK -f "$tables/compile.awk" -v table="$name" "$@" "$file" \
        >"$tmp/out" 2>"$tmp/err"
}

# said FILE WORD: what follows "# WORD: " in the head of a bad table
said()
{
    tr -d '\r' <"$1" | sed -n "s/^# $2: //p"
}

# The bad tables.
found=0
for file in "$bad"/*.csv; do
    test -f "$file" || continue
    found=$((found + 1))
    fault=$(basename "$file" .csv)
    name=$(said "$file" table)
    place=$(said "$file" expect)
    if test -z "$place"; then
        fail "$fault: it has no '# expect:' line"
        continue
    fi
    compile_table "$file" "${name:-bad}"
    status=$?
    if test $status -ne 1; then
        fail "$fault: exit status $status, 1 expected"
    elif test -s "$tmp/out"; then
        fail "$fault: refused, but something went to stdout"
    elif test "$(wc -l <"$tmp/err")" -ne 1; then
        fail "$fault: more than one line on stderr: $(cat "$tmp/err")"
    else
        message=$(cat "$tmp/err")
        case $message in
        "$file:$place: "?*) pass ;;
        *) fail "$fault: '$place' expected, got: $message" ;;
        esac
    fi
done
test $found -gt 0 || fail "no bad table in $bad"

# Wrong use of the compiler itself.
{
    echo 'key,pitch_mm,source,edition,status'
    echo 'M12,1.75,ISO 261,1998,seen'
} >"$tmp/one.csv"
echo 'M16,2,ISO 261,1998,seen' >"$tmp/rest.csv"

refuses_use()
{
    $AWK -f "$tables/compile.awk" "$@" >"$tmp/out" 2>"$tmp/err"
    if test $? -eq 1 && test ! -s "$tmp/out" &&
        test "$(wc -l <"$tmp/err")" -eq 1
    then
        pass
    else
        fail "not refused: compile.awk $*"
    fi
}

refuses_use "$tmp/one.csv"
refuses_use -v table=one -v mode=other "$tmp/one.csv"
refuses_use -v table=one "$tmp/one.csv" "$tmp/rest.csv"

# The good tables: first all the structs, then each table by itself.
good=0
{
    echo '#include <stddef.h>'
    echo '#define SW_UNSET (-1.0)'
} >"$tmp/base/tables.h"
for file in "$tables"/*.csv; do
    test -f "$file" || continue
    name=$(basename "$file" .csv)
    if compile_table "$file" "$name" -v mode=header && test ! -s "$tmp/err"
    then
        cat "$tmp/out" >>"$tmp/base/tables.h"
        pass
    else
        fail "$name: no header: $(cat "$tmp/err")"
    fi
done
for file in "$tables"/*.csv; do
    test -f "$file" || continue
    good=$((good + 1))
    name=$(basename "$file" .csv)
    if compile_table "$file" "$name" && test ! -s "$tmp/err"; then
        pass
    else
        fail "$name: refused: $(cat "$tmp/err")"
        continue
    fi
    # A lost row shows here: lines after the header against rows in C.
    want=$($AWK 'h { n++ } !h && !/^#/ { h = 1 } END { print n + 0 }' "$file")
    got=$(grep -c '^    { "' "$tmp/out")
    if test "$want" -eq "$got" && grep "_count = $want;" "$tmp/out" >/dev/null
    then
        pass
    else
        fail "$name: $want rows in the table, $got in C"
    fi
    if command -v "$CC" >/dev/null 2>&1; then
        cp "$tmp/out" "$tmp/$name.c"
        if $CC -std=c11 -pedantic -Wall -Wextra -Werror -I"$tmp" \
            -c -o "$tmp/$name.o" "$tmp/$name.c" 2>"$tmp/err"
        then
            pass
        else
            fail "$name: C refused: $(sed -n 1p "$tmp/err")"
        fi
    fi
done
test $good -gt 0 || fail "no good table in $tables"

finish
