#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# Every public header compiles alone, as C11 and as C++17, without a warning,
# and also after <linux/input.h>, which defines names such as SW_MAX. No header
# reaches for anything but its own kind and the C standard's types.
#
# srcdir, CC and CXX are set by make check.

srcdir=${srcdir:-$(dirname "$0")/..}
CC=${CC:-cc}
if test -z "$CXX"; then
    for CXX in c++ g++ clang++ none; do
        command -v "$CXX" >/dev/null 2>&1 && break
    done
fi
. "$srcdir/tests/tally.sh"

# compile WHAT FILE COMMAND...
compile()
{
    what=$1 file=$2
    shift 2
    if "$@" -Wall -Wextra -Wpedantic -Werror -I"$srcdir/include" \
        -c -o "$tmp/out.o" "$file" >"$tmp/said" 2>&1
    then
        pass
    else
        fail "$what: $(sed -n 1,5p "$tmp/said")"
    fi
}

echo '#include <linux/input.h>' >"$tmp/input.c"
linux=yes
# shellcheck disable=SC2086 # CC may carry options
if ! $CC -E "$tmp/input.c" >/dev/null 2>&1; then
    linux=no
    echo "no <linux/input.h> here: that part is left out"
fi

found=0
for path in "$srcdir"/include/*.h "$srcdir"/include/strapwise/*.h; do
    test -f "$path" || continue
    found=$((found + 1))
    header=${path#"$srcdir"/include/}
    echo "#include <$header>" >"$tmp/alone.c"
    cp "$tmp/alone.c" "$tmp/alone.cc"
    # shellcheck disable=SC2086
    compile "$header as C" "$tmp/alone.c" $CC -std=c11
    # shellcheck disable=SC2086
    test "$CXX" = none ||
        compile "$header as C++" "$tmp/alone.cc" $CXX -std=c++17
    if test $linux = yes; then
        echo "#include <linux/input.h>" | cat - "$tmp/alone.c" \
            >"$tmp/after.c"
        # gnu11: that header itself is no ISO C
        # shellcheck disable=SC2086
        compile "$header after <linux/input.h>" "$tmp/after.c" $CC -std=gnu11
    fi
    strange=$(grep '^ *# *include' "$path" |
        grep -v -e '<strapwise/[a-z_]*\.h>' -e '<strapwise\.h>' -e '<stddef\.h>' -e '<stdint\.h>')
    if test -z "$strange"; then
        pass
    else
        fail "$header includes: $strange"
    fi
    if grep -n -e HAVE_ -e 'config\.h' "$path"; then
        fail "$header depends on how the library was configured"
    else
        pass
    fi
done
if test $found -ge 2; then pass; else fail "only $found headers found"; fi

echo "$passed passed, $failed failed"
test $failed -eq 0 || exit 1
if test "$CXX" = none; then
    echo "SKIP: no C++ compiler, so the headers were compiled as C alone"
    exit 77
fi
