# SPDX-License-Identifier: GPL-3.0-or-later
# shellcheck shell=sh
#
# Read by the test scripts: a scratch folder $tmp that goes away, and a tally.
# finish prints it and ends the script with its status.

tmp=$(mktemp -d "${TMPDIR:-/tmp}/strapwise-test.XXXXXX") || exit 1
trap 'chmod -R u+w "$tmp"; rm -rf "$tmp"' 0
trap 'exit 1' 1 2 15

passed=0
failed=0

pass()
{
    passed=$((passed + 1))
}

fail()
{
    failed=$((failed + 1))
    echo "FAIL $*"
}

finish()
{
    echo "$passed passed, $failed failed"
    test $failed -eq 0
    exit
}
