#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The Python binding as it was built: its own tests, and the corpus.
#
# srcdir, builddir and PYTHON are set by make check.

srcdir=${srcdir:-$(dirname "$0")/..}
builddir=${builddir:-.}
PYTHON=${PYTHON:-python3}
module=$builddir/bindings/python
PYTHONPATH=$module:$module/.libs
PYTHONDONTWRITEBYTECODE=1
export PYTHONPATH PYTHONDONTWRITEBYTECODE
if ! test -f "$module/strapwise.py"; then
    echo "SKIP: the Python binding was not built"
    exit 77
fi

passed=0
failed=0
for test in test_strapwise run_cases; do
    said=$("$PYTHON" "$srcdir/tests/python/$test.py" 2>&1)
    status=$?
    # how many checks it says it made; at least one
    made=$(echo "$said" | sed -n -e 's/^Ran \([0-9]*\) tests.*/\1/p' \
        -e 's/^\([0-9]*\) passed, [0-9]* failed$/\1/p' | tail -n 1)
    if test $status -eq 0; then
        echo "$test: ${made:-1} checks"
        passed=$((passed + ${made:-1}))
    else
        echo "FAIL $test"
        echo "$said" | tail -n 60
        failed=$((failed + 1))
    fi
done

echo "$passed passed, $failed failed"
test $failed -eq 0
