#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
#   BUILD=build run.sh [SECONDS]
#
# Builds the fuzz targets with clang, address and undefined-behaviour
# sanitizers, and runs each for SECONDS (60) from the seeds in corpus/. Prints
# what each did and a last line "N passed, N failed"; a finding is kept as
# finding-TARGET-... in the working folder.
#
# BUILD is a build tree (the compiled-in tables come from there), CLANG the
# compiler.

here=$(cd "$(dirname "$0")" && pwd) || exit 1
top=$here/../..
BUILD=${BUILD:-build}
CLANG=${CLANG:-clang}
seconds=${1:-60}
case $seconds in
'' | *[!0-9]*)
    echo "usage: BUILD=build run.sh [SECONDS]" >&2
    exit 2
    ;;
esac
if ! command -v "$CLANG" >/dev/null 2>&1; then
    echo "SKIP: $CLANG is not installed"
    exit 77
fi
if ! test -f "$BUILD/base/tables.h"; then
    echo "BUILD=$BUILD is no build tree: it has no base/tables.h" >&2
    exit 2
fi
tmp=$(mktemp -d "${TMPDIR:-/tmp}/fuzz.XXXXXX") || exit 1
trap 'rm -rf "$tmp"' 0
trap 'exit 1' 1 2 15

passed=0
failed=0

build()
{
    "$CLANG" -std=c11 -g -O1 -fno-omit-frame-pointer \
        -fsanitize=fuzzer,address,undefined,float-cast-overflow \
        -fno-sanitize-recover=all \
        -I"$top/include" -I"$top/lib" -I"$BUILD" \
        -DSW_BUILD -DSW__VERSION='"fuzz"' -DSW__TABLES_VERSION='"fuzz"' "$@"
}

for target in text strap pairs job; do
    mkdir -p "$tmp/$target" "$tmp/seeds-$target" "$tmp/found-$target"
    cp "$here/corpus/$target"-* "$tmp/seeds-$target/" || exit 1
    # shellcheck disable=SC2046 # lists of words
    if ! build -Wall -Wextra -Werror -c -o "$tmp/fuzz_$target.o" \
        "$here/fuzz_$target.c" ||
        ! build -w -o "$tmp/fuzz_$target" "$tmp/fuzz_$target.o" \
            "$top"/lib/*/*.c "$BUILD"/tables/*.c \
            $(pkg-config --cflags --libs gsl yaml-0.1) -lglpk -lpthread -lm
    then
        echo "FAIL $target: does not build"
        failed=$((failed + 1))
        continue
    fi
    longest=400
    test $target = job && longest=3000
    # a soft strap asked backwards by its band takes seconds: no finding
    "$tmp/fuzz_$target" -max_total_time="$seconds" \
        -timeout=60 -report_slow_units=60 \
        -max_len=$longest -rss_limit_mb=2048 -print_final_stats=1 \
        -artifact_prefix="$tmp/found-$target/" \
        "$tmp/$target" "$tmp/seeds-$target" >"$tmp/said" 2>&1
    status=$?
    runs=$(sed -n 's/^stat::number_of_executed_units: *//p' "$tmp/said")
    findings=$(find "$tmp/found-$target" -type f | wc -l | tr -d ' ')
    echo "$target: ${runs:-0} executions, $findings findings"
    if test $status -eq 0 && test "$findings" -eq 0 && test -n "$runs"; then
        passed=$((passed + 1))
        continue
    fi
    failed=$((failed + 1))
    tail -n 40 "$tmp/said"
    for found in "$tmp/found-$target"/*; do
        test -f "$found" || continue
        kept=finding-$target-$(basename "$found")
        cp "$found" "$kept" && echo "kept as $kept"
    done
done

echo "$passed passed, $failed failed"
test $failed -eq 0
