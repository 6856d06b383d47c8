#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The installed library as a stranger uses it: make install into an empty
# folder, the example of strap.h compiled with what pkg-config says, once
# against the shared and once against the static library, and run.
#
# srcdir, builddir, CC, CFLAGS, LDFLAGS, MAKE and PKG_CONFIG are set by make
# check. A kind of library that was not built is left out.

srcdir=${srcdir:-$(dirname "$0")/..}
builddir=${builddir:-.}
CC=${CC:-cc}
MAKE=${MAKE:-make}
PKG_CONFIG=${PKG_CONFIG:-pkg-config}
unset MAKEFLAGS MFLAGS MAKELEVEL DESTDIR
if ! command -v "$PKG_CONFIG" >/dev/null 2>&1; then
    echo "SKIP: pkg-config is not installed"
    exit 77
fi
. "$srcdir/tests/tally.sh"
dest=$tmp/dest

if (cd "$builddir" && "$MAKE" install DESTDIR="$dest") >"$tmp/said" 2>&1; then
    pass
else
    fail "make install: $(tail -n 5 "$tmp/said")"
    finish
fi

pc=$(find "$dest" -name strapwise.pc)
lib=$(dirname "$(dirname "$pc")")
if test -f "$pc" && test -d "$lib"; then
    pass
else
    fail "no strapwise.pc was installed"
    finish
fi
PKG_CONFIG_PATH=$(dirname "$pc")${PKG_CONFIG_PATH:+:$PKG_CONFIG_PATH}
export PKG_CONFIG_PATH

# ask OPTION...: what pkg-config says, the install folder put before its paths
ask()
{
    PKG_CONFIG_SYSROOT_DIR=$dest "$PKG_CONFIG" "$@" strapwise
}

want=$(sed -n "s/^AC_INIT(\[strapwise\],\[\(.*\)\])\$/\1/p" \
    "$srcdir/configure.ac")
version=$("$PKG_CONFIG" --modversion strapwise 2>&1)
if test -n "$want" && test "$version" = "$want"; then
    pass
else
    fail "strapwise.pc says version $version, configure.ac $want"
fi
if "$PKG_CONFIG" --libs strapwise | grep -q gsl; then
    fail "a program that links the shared library is made to link GSL"
else
    pass
fi
tables=$dest$("$PKG_CONFIG" --variable=tablesdir strapwise)
if test -f "$tables/threads.csv" && test -f "$tables/README.md"; then
    pass
else
    fail "tablesdir names $tables, where no tables are"
fi

# The example stands in the header between @code and @endcode.
example()
{
    sed -n '/@code/,/@endcode/p' "$1" | sed -e '/@code/d' -e '/@endcode/d' \
        -e 's/^ \* \{0,1\}//'
}
{
    cat <<'EOF'
#include <strapwise.h>
#include <stdio.h>
#include <string.h>
static double torque(void) {
EOF
    example "$(find "$dest" -name torque.h)"
    cat <<'EOF'
return out.torque_Nm; }
static double strap(void) {
EOF
    example "$(find "$dest" -name strap.h)"
    cat <<'EOF'
return out.toe_force_N; }
int main(void) {
    char text[2][32];
    sw_format(torque(), 9, text[0], sizeof text[0]);
    sw_format(strap(), 9, text[1], sizeof text[1]);
    printf("%s %s %s\n", sw_version(), text[0], text[1]);
    return 0;
}
EOF
} >"$tmp/example.c"

# use WHAT LIBRARIES: compiles, links and runs the example
use()
{
    what=$1
    # shellcheck disable=SC2086,SC2046 # lists of words
    if ! $CC $CFLAGS -std=c11 -Wall -Wextra -Werror $(ask --cflags) \
        -o "$tmp/example-$what" "$tmp/example.c" $LDFLAGS $2 \
        -L"$tmp/none" $("$PKG_CONFIG" --libs-only-L gsl) >"$tmp/said" 2>&1
    then
        fail "$what: $(sed -n 1,5p "$tmp/said")"
        return
    fi
    pass
    got=$(LD_LIBRARY_PATH=$lib "$tmp/example-$what" 2>&1)
    if test "$got" = "$want 48 8000"; then
        pass
    else
        fail "$what: the examples of the headers give \"$got\", they say 48" \
            "and 8000 (version $want)"
    fi
}

if test -f "$lib/libstrapwise.so"; then
    use shared "$(ask --libs)"
else
    echo "no shared library was built: that part is left out"
fi
if test -f "$lib/libstrapwise.a"; then
    rm -f "$lib"/libstrapwise.so*
    use static "$(ask --static --libs)"
    if command -v ldd >/dev/null 2>&1 &&
        ldd "$tmp/example-static" 2>/dev/null | grep strapwise; then
        fail "static: the shared library is needed after all"
    else
        pass
    fi
else
    echo "no static library was built: that part is left out"
fi

if (cd "$builddir" && "$MAKE" uninstall DESTDIR="$dest") >"$tmp/said" 2>&1; then
    left=$(find "$dest" ! -type d)
    if test -z "$left"; then pass; else fail "make uninstall leaves: $left"; fi
else
    fail "make uninstall: $(tail -n 5 "$tmp/said")"
fi
finish
