# SPDX-License-Identifier: GPL-3.0-or-later
#
# The teaching page in one file: a line "@include NAME" becomes that file of
# the folder `from`, a line "@engine" the base64 text of the file `engine`.

function copy(name, line, got) {
    while ((got = (getline line < name)) > 0)
        print line
    if (got < 0) {
        print "assemble.awk: cannot read " name > "/dev/stderr"
        exit 1
    }
    close(name)
}

$1 == "@include" { copy(from "/" $2); next }
$1 == "@engine" { copy(engine); next }
{ print }
