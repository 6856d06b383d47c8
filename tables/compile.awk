# SPDX-License-Identifier: GPL-3.0-or-later
#
# Turns one table (CSV) into C.  POSIX awk, so that no build compiler is
# needed and cross builds work.  Run it as
#
#   LC_ALL=C awk -f compile.awk -v table=threads threads.csv
#   LC_ALL=C awk -f compile.awk -v table=threads -v mode=header threads.csv
#
# The first prints the rows as C source, the second the struct and the
# extern declarations that base/tables.h is made of.
#
# A table has comment lines (#), one header row, then rows to the end of the
# file.  After the header a line that starts with # is a row: #10-32 UNF is a
# thread.  Whatever is wrong is said in one line on stderr,
#
#   file:line: field: message
#
# with exit status 1, and then nothing at all goes to stdout.

BEGIN {
    if (table !~ /^[a-z][a-z0-9_]*$/)
        refuse("table", "say which table this is: -v table=NAME")
    if (mode != "" && mode != "header")
        refuse("mode", "must be \"header\" or left out")

    printable = " !\"#$%&'()*+,-./0123456789:;<=>?@" \
                "ABCDEFGHIJKLMNOPQRSTUVWXYZ[\\]^_`" \
                "abcdefghijklmnopqrstuvwxyz{|}~"

    # columns of words, as lib/base/words.c spells them
    words["tool_kind"] = "setting, indicating"
    words["torque_unit"] = "N.m, in-lbf, ft-lbf"
}

# Says what is wrong and ends the run; the END rule then keeps quiet.
function refuse(field, message,    file)
{
    if (refused)
        return
    refused = 1
    file = FILENAME != "" ? FILENAME : ARGV[1]
    print file ":" FNR + 0 ": " field ": " message | "cat 1>&2"
    close("cat 1>&2")
    exit 1
}

# True if every character can stand in a C string as it is.
function is_plain(text,    i)
{
    for (i = 1; i <= length(text); i++)
        if (!index(printable, substr(text, i, 1)))
            return 0
    return !index(text, "\"") && !index(text, "\\") && !index(text, "??")
}

# "number" or "text", or "" for a name whose unit nobody knows.
function kind_of(column)
{
    if (column ~ /^(key|label|system|series|size|grade)$/ ||
        column ~ /^(conflicts_with|method|meaning|reads|source|edition|status)$/ ||
        column ~ /^(stands_for|unit_power)$/)
        return "text"
    if (column in words)
        return "text"
    if (column !~ /^[a-z][A-Za-z0-9_]*$/)
        return ""
    if (column == "tpi" || column == "nut_factor" ||
        column == "poisson" || column == "shear_ratio" ||
        column ~ /^(mc|kp_inch|kp_si|chisel_ratio|factor_[abj])$/)
        return "number"
    if (column ~ /^nut_factor_./ || column ~ /^mu_./)
        return "number"
    if (column ~ /_(mm|mm2|MPa|deg|pct|kg_per_m3)$/)
        return "number"
    # in the unit that the row's torque_unit says
    if (column ~ /^(range_low|range_high|resolution)$/)
        return "number"
    return ""
}

# A leading zero is refused because C would read 012 as ten.
function is_number(text)
{
    return text ~ /^-?(0|[1-9][0-9]*)(\.[0-9]+)?$/
}

function is_word(column, text)
{
    return text != "" && index(", " words[column] ", ", ", " text ", ")
}

# 16, 16.0 and 16.00 are the same key.
function shortest(number)
{
    if (number ~ /\./) {
        sub(/0+$/, "", number)
        sub(/\.$/, "", number)
    }
    return number
}

function read_header(line,    i)
{
    columns = split(line, column, ",")
    if (columns < 4)
        refuse("header", columns " columns, at least 4 expected")
    for (i = 1; i <= columns; i++) {
        kind[i] = kind_of(column[i])
        if (kind[i] == "")
            refuse(column[i], "unknown unit suffix in this column name")
        if (column[i] in seen_column)
            refuse(column[i], "this column is there twice")
        seen_column[column[i]] = 1
    }
    if (column[columns - 2] != "source" || column[columns - 1] != "edition" ||
        column[columns] != "status")
        refuse("header", "the last columns must be source,edition,status")
    if (kind[1] != "text")
        refuse(column[1], "the first column is the key, so it must be text")
}

function read_row(line,    n, i, value, key, text)
{
    n = split(line, value, ",")
    if (n != columns)
        refuse("row", n " columns, " columns " expected")

    for (i = 1; i <= n; i++) {
        if (value[i] ~ /^[ \t]/ || value[i] ~ /[ \t]$/)
            refuse(column[i], "blank around \"" value[i] "\"")
        if (kind[i] == "number" && value[i] != "" && !is_number(value[i]))
            refuse(column[i], "\"" value[i] "\" is not a plain decimal number")
        if (column[i] in words && !is_word(column[i], value[i]))
            refuse(column[i], "\"" value[i] "\" is not one of " \
                   words[column[i]])
    }
    if (value[1] == "")
        refuse(column[1], "empty key")
    if (value[n - 2] == "")
        refuse("source", "missing; say where the row comes from")
    if (value[n] !~ /^(seen|checked|memory|practice)$/)
        refuse("status", "\"" value[n] "\" is not one of" \
               " seen, checked, memory, practice")

    # A grade has one row for each range of diameters.
    key = value[1]
    if (table == "grades" || table == "nuts")
        key = key "," shortest(value[3])
    if (key in line_of)
        refuse(column[1], "\"" key "\" is already on line " line_of[key])
    line_of[key] = FNR

    text = ""
    for (i = 1; i <= n; i++) {
        if (kind[i] == "text")
            value[i] = "\"" value[i] "\""
        else if (value[i] == "")
            value[i] = "SW_UNSET"
        text = text (i > 1 ? ", " : "") value[i]
    }
    row[++rows] = "    { " text " },"
}

NR != FNR {
    refuse("file", "one table at a time")
}

{
    if (index($0, "\r"))
        refuse("line", "carriage return; lines end in LF alone")
    if ($0 ~ /[ \t]$/)
        refuse("line", "blank at the end of the line")
    if (!columns && $0 ~ /^#/)
        next
    if (!is_plain($0))
        refuse("line", "character that a C string cannot hold as it is" \
               " (non-ASCII, control, quote, backslash, ??)")
    if (!columns)
        read_header($0)
    else
        read_row($0)
}

END {
    if (refused)
        exit 1
    if (!columns)
        refuse("header", "no header row")
    if (!rows)
        refuse("row", "no row in this table")

    print "/* Made from tables/" table ".csv by tables/compile.awk:" \
          " edit the table, not this. */"
    if (mode == "header") {
        print "struct sw__" table "_row {"
        for (i = 1; i <= columns; i++)
            print "    " (kind[i] == "text" ? "const char *" : "double ") \
                  column[i] ";"
        print "};"
        print "extern const struct sw__" table "_row sw__" table "[];"
        print "extern const size_t sw__" table "_count;"
    } else {
        print "#include \"base/tables.h\""
        print ""
        print "const struct sw__" table "_row sw__" table "[] = {"
        for (i = 1; i <= rows; i++)
            print row[i]
        print "};"
        print "const size_t sw__" table "_count = " rows ";"
    }
}
