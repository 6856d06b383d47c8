/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Csv: tables as people keep them, and every way in which one is refused with
 * file and line. It is not exported, so its source is compiled into this
 * program.
 */
#include "base/csv.h"

#include "../common.h"

static const sw__csv_column column[] = {
    {"torque", "tightening torque|moment", SW_KIND_TORQUE, 1, 1e-6, 1e6},
    {"force", "preload", SW_KIND_FORCE, 1, 1e-3, 1e8},
    {"seat torque", "", SW_KIND_TORQUE, 0, 0, 1e6},
    {"share", "", SW_KIND_RATIO, 0, 0, 1},
    {"note", "", 0, 0, 0, 0},
    {"tool", "", 0, 1, 0, 0},
    {NULL, NULL, 0, 0, 0, 0}};
/* the same without the required text */
static const sw__csv_column plain_column[] = {
    {"torque", "tightening torque|moment", SW_KIND_TORQUE, 1, 1e-6, 1e6},
    {"force", "preload", SW_KIND_FORCE, 1, 1e-3, 1e8},
    {"seat torque", "", SW_KIND_TORQUE, 0, 0, 1e6},
    {"share", "", SW_KIND_RATIO, 0, 0, 1},
    {"note", "", 0, 0, 0, 0},
    {NULL, NULL, 0, 0, 0, 0}};
static const char *const key[] = {"name", "stud grade", NULL};
static const sw__csv_layout tools = {column, key};
static const sw__csv_layout plain = {plain_column, key};

typedef struct {
    char text[4000]; /* all that was told, one line each */
    size_t length;
    int rows, refuse; /* the row to refuse */
    double torque, force;
} told;

static int take_key(void *with, int k, const char *value, sw_error *err)
{
    told *t = with;
    if (strcmp(value, "refuse") == 0) {
        err->code = SW_ERR_RANGE;
        SET(err->field, "name");
        SET(err->message, "name: refused");
        return SW_ERR_RANGE;
    }
    t->length +=
        (size_t)snprintf(t->text + t->length, sizeof t->text - t->length,
                         "%s=%s\n", key[k], value);
    return SW_OK;
}

static int take_row(void *with, const sw__csv_row *row, sw_error *err)
{
    told *t = with;
    if (++t->rows == t->refuse) {
        err->code = SW_ERR_NONE;
        SET(err->field, "force");
        SET(err->message, "force: refused");
        return SW_ERR_NONE;
    }
    t->torque = row->number[0];
    t->force = row->number[1];
    if (t->length < sizeof t->text - 200) {
        t->length +=
            (size_t)snprintf(t->text + t->length, 100, "%d:", row->line);
        for (int i = 0; i < 4; i++) {
            char number[40] = "-";
            if (row->number[i] != SW_UNSET)
                sw_format(row->number[i], 9, number, sizeof number);
            t->length +=
                (size_t)snprintf(t->text + t->length, 40, " %s", number);
        }
        t->length += (size_t)snprintf(t->text + t->length, 60, " %.40s|%.10s\n",
                                      row->text[4], row->text[5]);
    }
    return SW_OK;
}

static int read_in(const sw__csv_layout *layout, const char *text, size_t n,
                   const char *file, told *t, sw_error *err)
{
    /* no larger than the text, so that a read past its end is seen */
    char *own = malloc(n ? n : 1);
    memcpy(own, text, n);
    const sw__csv_taker to = {t, take_key, take_row};
    const int status = sw__csv_read(layout, own, n, file, &to, err);
    free(own);
    return status;
}

#define READS(shown, want)                                                     \
    do {                                                                       \
        told t = {0};                                                          \
        sw_error err;                                                          \
        const int status =                                                     \
            read_in(&plain, shown, sizeof shown - 1, "p.csv", &t, &err);       \
        check_no_error(shown, status, &err);                                   \
        ck_assert_str_eq(t.text, want);                                        \
    } while (0)

/* One pound-foot is 1.3558179483 N.m, one pound 4.4482216152605 N: exact. */
START_TEST(shapes)
{
    READS("torque [N.m],force [kN]\n10,2\n20,4.5\n",
          "2: 10 2000 - - |\n3: 20 4500 - - |\n");
    READS("torque [N.m],force [kN]\r\n10,2\r\n20,4.5",
          "2: 10 2000 - - |\n3: 20 4500 - - |\n");
    READS("\xef\xbb\xbftorque (N.m);force (N)\n10;2\n", "2: 10 2 - - |\n");
    READS("force [lbf]\ttorque [ft-lbf]\n1000\t25\n",
          "2: 33.8954487 4448.22162 - - |\n");
    READS("Torque_Nm,Force_kN\n10,2\n", "2: 10 2000 - - |\n");
    READS("torque_in_lbf,preload_klbf\n12,1\n",
          "2: 1.35581795 4448.22162 - - |\n");
    READS("Tightening-Torque N.m , PRELOAD kN\n 10 , 2 \n",
          "2: 10 2000 - - |\n");
    READS("moment [N\xc2\xb7m],force[N]\n1e1,+2.5e3\n", "2: 10 2500 - - |\n");
    READS("\"torque [N.m]\";\"force [N]\"\n\"10\";\"2\"\n", "2: 10 2 - - |\n");
    READS("torque [N.m],force [N],note\n10,2,\"oiled, \"\"new\"\" stud\"\n"
          "11,3,\n12,4,1/2\" stud\n",
          "2: 10 2 - - oiled, \"new\" stud|\n3: 11 3 - - |\n"
          "4: 12 4 - - 1/2\" stud|\n");
    READS(
        "torque [N.m],force [N],seat torque [N.m],share\n10,2,0,0.5\n11,3,,\n",
        "2: 10 2 0 0.5 |\n3: 11 3 - - |\n");
    READS("torque [N.m],force [N],share [%]\n10,2,50\n", "2: 10 2 - 0.5 |\n");
    READS("# a table\n\nname: bench 3\n ,,\nStud Grade: 8.8,,\n"
          "torque [N.m],force [N]\n# first\n10,2\n,\n\n  \n11,3\n",
          "name=bench 3\nstud grade=8.8\n8: 10 2 - - |\n12: 11 3 - - |\n");
    READS("name: a; b: c\ntorque [N.m]\tforce [N]\n10\t2",
          "name=a; b: c\n3: 10 2 - - |\n");
}
END_TEST

static void refused(const sw__csv_layout *layout, const char *text, size_t n,
                    int code, const char *field, const char *said)
{
    told t = {0};
    sw_error err;
    const int status = read_in(layout, text, n, "p.csv", &t, &err);
    ck_assert_int_eq(status, code);
    check_refused(said, &err, code, field);
    must(strstr(err.message, said) != NULL, "wanted \"%s\", got: %s", said,
         err.message);
    must(strncmp(err.message, "p.csv:", 6) == 0, "%s", err.message);
    told again = {0};
    ck_assert_int_eq(read_in(layout, text, n, NULL, &again, NULL), code);
}

#define REFUSED(text, code, field, said)                                       \
    refused(&plain, text, sizeof text - 1, code, field, said)
#define HEAD "torque [N.m],force [N]\n"

START_TEST(header)
{
    REFUSED("", SW_ERR_MISSING, "file", "p.csv:1: file: there is no header");
    REFUSED("\n# nothing\n", SW_ERR_MISSING, "file", "p.csv:2: file");
    REFUSED(HEAD, SW_ERR_MISSING, "file", "p.csv:1: file: there is no row");
    REFUSED("torque,force [N]\n10,2\n", SW_ERR_UNIT, "torque",
            "p.csv:1: torque: the unit is missing; write for example torque "
            "[N.m]");
    REFUSED("torque [],force [N]\n", SW_ERR_UNIT, "torque", "missing");
    REFUSED("torque [kN],force [N]\n", SW_ERR_UNIT, "torque",
            "\"kN\" is of another kind; write for example torque [N.m]");
    REFUSED("torque [furlong],force [N]\n", SW_ERR_UNIT, "torque",
            "unknown unit \"furlong\"");
    REFUSED("torque [N.m],force [lb]\n", SW_ERR_UNIT, "force",
            "lb is a mass; write lbf");
    REFUSED("torque [N.m,force [N]\n", SW_ERR_UNIT, "torque", "does not close");
    REFUSED("torque [N.m),force [N]\n", SW_ERR_UNIT, "torque",
            "does not close");
    REFUSED("torque [,force [N]\n", SW_ERR_UNIT, "torque", "does not close");
    REFUSED(HEAD "10,2\n" HEAD, SW_ERR_SYNTAX, "torque", "p.csv:3: torque");
    REFUSED("torque [N.m],force [N],note [mm]\n", SW_ERR_UNIT, "note",
            "a text has no unit, here \"mm\"");
    REFUSED("torque [N.m],force [N],colour\n", SW_ERR_UNKNOWN, "header",
            "no column is called \"colour\"; known are torque, force, seat");
    REFUSED("torques [N.m],force [N]\n", SW_ERR_UNKNOWN, "header", "torques");
    REFUSED("torque [N.m],force [N],\n", SW_ERR_MISSING, "header",
            "a column has no name");
    REFUSED("torque [N.m],force [N],moment [N.m]\n", SW_ERR_CONFLICT, "torque",
            "there twice");
    REFUSED("torque [N.m]\n10\n", SW_ERR_MISSING, "force",
            "there is no such column");
    REFUSED("torque [N.m];force [N],note\n", SW_ERR_SYNTAX, "header",
            "only one of them");
    REFUSED("10,2\n", SW_ERR_UNKNOWN, "header", "\"10\"");
    REFUSED("note,note,note,note,note,note,note,note,note,note,note,note,note,"
            "note,note,note,note\n",
            SW_ERR_SYNTAX, "row", "more than 16 cells");
    REFUSED("stud: 3\n" HEAD, SW_ERR_UNKNOWN, "header",
            "nothing is called \"stud\"; known are name, stud grade");
    REFUSED("name: a\nname: b\n" HEAD, SW_ERR_CONFLICT, "name",
            "p.csv:2: name: is there twice");
    REFUSED("name:\n" HEAD, SW_ERR_SYNTAX, "name", "is empty");
    REFUSED("name: a\tb\n" HEAD, SW_ERR_SYNTAX, "name", "tab");
    REFUSED("name: refuse\n" HEAD, SW_ERR_RANGE, "name",
            "p.csv:1: name: refused");
}
END_TEST

START_TEST(rows)
{
    REFUSED(HEAD "10\n", SW_ERR_SYNTAX, "row",
            "p.csv:2: row: 1 cell where the header has 2");
    REFUSED(HEAD "10,2\n10,2,3\n", SW_ERR_SYNTAX, "row",
            "p.csv:3: row: 3 cells where the header has 2; write the decimal "
            "mark as a point");
    REFUSED(HEAD "10,\n", SW_ERR_MISSING, "force", "the cell is empty");
    REFUSED(HEAD "ten,2\n", SW_ERR_SYNTAX, "torque",
            "\"ten\" is not a plain number");
    REFUSED(HEAD "10 N.m,2\n", SW_ERR_SYNTAX, "torque", "not a plain number");
    REFUSED(HEAD "\"10,5\",2\n", SW_ERR_SYNTAX, "torque",
            "\"10,5\" has a comma; write the decimal mark as a point");
    REFUSED("torque [N.m];force [N]\n10,5;2\n", SW_ERR_SYNTAX, "torque",
            "has a comma");
    REFUSED(HEAD "nan,2\n", SW_ERR_SYNTAX, "torque", "not a plain number");
    REFUSED(HEAD "10,inf\n", SW_ERR_SYNTAX, "force", "not a plain number");
    REFUSED(HEAD "10,1e999\n", SW_ERR_SYNTAX, "force", "not a plain number");
    REFUSED(HEAD "0x10,2\n", SW_ERR_SYNTAX, "torque", "not a plain number");
    REFUSED(HEAD "1 000,2\n", SW_ERR_SYNTAX, "torque", "not a plain number");
    REFUSED(HEAD "-10,2\n", SW_ERR_RANGE, "torque",
            "-10 N.m is outside the allowed range");
    REFUSED(HEAD "10,0\n", SW_ERR_RANGE, "force", "0 N is outside");
    REFUSED(HEAD "10,1e300\n", SW_ERR_RANGE, "force", "outside");
    REFUSED("torque [N.m],force [N],share [%]\n10,2,101\n", SW_ERR_RANGE,
            "share", "1.01 is outside");
    REFUSED(HEAD "\"10,2\n", SW_ERR_SYNTAX, "row", "quoted cell");
    REFUSED(HEAD "\"10\"\"\n", SW_ERR_SYNTAX, "row", "quoted cell");
    REFUSED(HEAD "\"10\"5,2\n", SW_ERR_SYNTAX, "row", "quoted cell");
    REFUSED(HEAD "10\t,2\n", SW_ERR_SYNTAX, "row", "a tab within a cell");
    refused(&tools, "torque_Nm,force_N,tool\n1,2,\n", 28, SW_ERR_MISSING,
            "tool", "the cell is empty");
}
END_TEST

START_TEST(bytes)
{
    REFUSED(HEAD "10,2\r11,3\n", SW_ERR_SYNTAX, "line",
            "p.csv:2: line: has a control byte");
    REFUSED(HEAD "10,2\0\n", SW_ERR_SYNTAX, "line", "control byte");
    REFUSED(HEAD "#\x1b[31m\n10,2\n", SW_ERR_SYNTAX, "line", "control byte");
    REFUSED(HEAD "10,2\x7f\n", SW_ERR_SYNTAX, "line", "control byte");
    REFUSED(HEAD "10,2\xff\n", SW_ERR_SYNTAX, "line", "not UTF-8");
    REFUSED("\xff\xfet\0o\0\n", SW_ERR_SYNTAX, "line", "not UTF-8");
    REFUSED("# \xc0\x80\n", SW_ERR_SYNTAX, "line", "not UTF-8");
    REFUSED("# \xed\xa0\x80\n", SW_ERR_SYNTAX, "line", "not UTF-8");
    REFUSED("# \xf4\x90\x80\x80\n", SW_ERR_SYNTAX, "line", "not UTF-8");
    REFUSED("# \xe2\x82", SW_ERR_SYNTAX, "line", "not UTF-8");
    READS("# \xe2\x82\xac \xf0\x9f\x94\xa9\n" HEAD "10,2\n", "3: 10 2 - - |\n");
}
END_TEST

/* The longest line, the most rows and the largest file, each and one more. */
START_TEST(caps)
{
    static char text[SW__CSV_BYTES + 2];
    told t = {0};
    sw_error err;
    size_t n = (size_t)sprintf(text, HEAD "10,2\n#");
    memset(text + n, 'x', SW__CSV_LINE);
    n += SW__CSV_LINE - 1;
    text[n] = '\n';
    check_no_error("line", read_in(&plain, text, n + 1, "p", &t, &err), &err);
    text[n] = 'x';
    refused(&plain, text, n + 1, SW_ERR_RANGE, "line",
            "p.csv:3: line: longer than 1000 bytes");
    n = (size_t)sprintf(text, HEAD);
    for (int i = 0; i < SW__CSV_ROWS; i++)
        n += (size_t)sprintf(text + n, "1,2\n");
    told many = {0};
    check_no_error("rows", read_in(&plain, text, n, "p", &many, &err), &err);
    ck_assert_int_eq(many.rows, SW__CSV_ROWS);
    n += (size_t)sprintf(text + n, "1,2\n");
    refused(&plain, text, n, SW_ERR_RANGE, "row",
            "p.csv:10002: row: more than 10000 rows");
    n = (size_t)sprintf(text, HEAD "10,2\n");
    memset(text + n, '\n', sizeof text - n);
    check_no_error("file", read_in(&plain, text, SW__CSV_BYTES, "p", &t, &err),
                   &err);
    refused(&plain, text, SW__CSV_BYTES + 1, SW_ERR_RANGE, "file",
            "larger than 4 MB");
}
END_TEST

/* The taker may refuse a row; its message gets the place. */
START_TEST(taker_refuses)
{
    told t = {.refuse = 2};
    sw_error err;
    const char text[] = HEAD "10,2\n\n11,3\n12,4\n";
    const int status =
        read_in(&plain, text, sizeof text - 1, "p.csv", &t, &err);
    ck_assert_int_eq(status, SW_ERR_NONE);
    check_refused("taker", &err, SW_ERR_NONE, "force");
    ck_assert_str_eq(err.message, "p.csv:4: force: refused");
    ck_assert_int_eq(t.rows, 2);
}
END_TEST

/* Whatever the file is called, the message keeps to its line and room. */
START_TEST(file_names)
{
    static char longest[5000];
    memset(longest, 'd', sizeof longest - 1);
    memcpy(longest + sizeof longest - 7, "/p.csv", 6);
    const char *const name[] = {"a\nb.csv", "\x1b[31m", "\xff\xfe",
                                "%s%n",     "",         longest};
    for (size_t i = 0; i < sizeof name / sizeof name[0]; i++) {
        told t = {0};
        sw_error err;
        ck_assert_int_eq(read_in(&plain, HEAD "x,1\n", sizeof HEAD "x,1\n" - 1,
                                 name[i], &t, &err),
                         SW_ERR_SYNTAX);
        check_refused("name", &err, SW_ERR_SYNTAX, "torque");
        ck_assert_ptr_nonnull(strstr(err.message, "2: torque: \"x\""));
    }
    told t = {0};
    sw_error err;
    ck_assert_int_eq(read_in(&plain, HEAD "x,1\n", sizeof HEAD "x,1\n" - 1,
                             "Pr\xc3\xbc"
                             "fstand.csv",
                             &t, &err),
                     SW_ERR_SYNTAX);
    ck_assert_ptr_nonnull(strstr(err.message, "Pr\xc3\xbc"
                                              "fstand.csv:2: "));
}
END_TEST

int main(void)
{
    return RUN_TESTS("csv", shapes, header, rows, bytes, caps, taker_refuses,
                     file_names);
}
