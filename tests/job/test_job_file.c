/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Job file: what may not stand in one at all: bytes, sizes, and what YAML can
 * do beyond keys, lists and texts. Faults of meaning: tests/bad-jobs.
 */
#include "jobs.h"

START_TEST(bytes)
{
    refuse("", SW_ERR_MISSING, "1:1: the file is empty");
    refuse("# nothing\n", SW_ERR_MISSING, "1:1: the file is empty");
    refuse_n("a: \0b\n", 6, SW_ERR_SYNTAX,
             "1:4: there is a zero byte; save the file as UTF-8 text");
    refuse("strapwise:\t1\n", SW_ERR_SYNTAX,
           "1:11: there is a tab; use blanks");
    refuse("a: 1\rb: 2\n", SW_ERR_SYNTAX,
           "1:5: a line ends here with a bare carriage return; save the file "
           "with line ends of its system");
    refuse("# \xc3\xa9\n# \xc3\n", SW_ERR_SYNTAX,
           "2:3: this is no UTF-8; save the file as UTF-8");
    refuse("# \xed\xa0\x80\n", SW_ERR_SYNTAX, /* half a surrogate pair */
           "1:3: this is no UTF-8; save the file as UTF-8");
    refuse("# \xc2\x85\n", SW_ERR_SYNTAX, "1:3: there is a control character");
    refuse("# \xe2\x80\xa8\n", SW_ERR_SYNTAX,
           "1:3: there is an invisible line separator");
    refuse("# \xe2\x80\xae\n", SW_ERR_SYNTAX, /* turns the writing round */
           "1:3: there is an invisible character");
    refuse("# \xef\xbb\xbf\n", SW_ERR_SYNTAX,
           "1:3: there is an invisible byte order mark");
    refuse("# \x7f\n", SW_ERR_SYNTAX, "1:3: there is a control character");
}
END_TEST

START_TEST(harmless)
{
    /* an editor of another system: a mark in front, two bytes to a line's end;
     * umlauts in remarks and names */
    static const char job[] =
        "\xef\xbb\xbf# M\xc3\xbcller\r\nstrapwise: 1\r\npart:\r\n  name: "
        "\"T\xc3\xbcr: #1\"\r\n  material: 6061-T6\r\n  size: [200 mm, 150 "
        "mm]\r\n  thickness: 10 mm\r\n" SUPPORTS CLAMPS OPERATIONS;
    sw_job *j = read_job(job);
    ck_assert_str_eq(sw_job_about(j, NULL).name, "T\xc3\xbcr: #1");
    sw_job_free(j);
    sw_job_free(read_job("---\n" JOB "...\n"));
    sw_job_free(NULL);
}
END_TEST

/* A text of `n` pieces between a head and a tail; to be freed. */
static char *many(const char *head, const char *piece, int n, const char *tail)
{
    const size_t h = strlen(head), m = strlen(piece), t = strlen(tail);
    char *text = malloc(h + m * (size_t)n + t + 1);
    memcpy(text, head, h);
    for (int i = 0; i < n; i++)
        memcpy(text + h + m * (size_t)i, piece, m);
    memcpy(text + h + m * (size_t)n, tail, t + 1);
    return text;
}

static void refuse_many(const char *head, const char *piece, int n,
                        const char *tail, const char *message)
{
    char *text = many(head, piece, n, tail);
    refuse(text, SW_ERR_RANGE, message);
    free(text);
}

START_TEST(sizes)
{
    refuse_many("", "#", 256 * 1024 + 1, "",
                "1:1: the file is longer than 256 KiB");
    char *full = many(JOB "#", " ", 256 * 1024 - (int)sizeof JOB, "");
    ck_assert_uint_eq(strlen(full), 256 * 1024);
    sw_job_free(read_job(full));
    free(full);
    refuse_many("a: ", "[", 32, "", "1:35: the file is nested too deeply");
    refuse_many("a: ", "[", 100000, "", "1:35: the file is nested too deeply");
    refuse_many("a: ", "{a: ", 32, "", "1:128: the file is nested too deeply");
    refuse_many("a: [", "1,", 60000, "]",
                "1:100001: the file has too many entries");
    refuse_many("a: ", "x", 201, "\n",
                "1:4: this text is longer than 200 characters");
    refuse_many("", "x", 201, ": 1\n",
                "1:1: this text is longer than 200 characters");
}
END_TEST

START_TEST(keys)
{
    char text[4000] = "";
    for (int i = 0; i < 101; i++)
        snprintf(text + strlen(text), sizeof text - strlen(text), "k%d: 1\n",
                 i);
    refuse(text, SW_ERR_RANGE, "101:1: there are too many keys in one list");
    refuse("a: 1\n'': 2\n", SW_ERR_SYNTAX,
           "2:1: there is no key before the colon");
    refuse("a b: 1\na-b: 2\n", SW_ERR_CONFLICT,
           "2:1: \"a-b\" is given twice, first on line 1");
    refuse("a b: 1\na_b: 2\n", SW_ERR_CONFLICT,
           "2:1: \"a_b\" is given twice, first on line 1");
}
END_TEST

START_TEST(beyond)
{
    refuse("a: &x 1\n", SW_ERR_SYNTAX,
           "1:4: anchors (&) are not taken; write every value out, or put the "
           "text in quotes");
    refuse("&x a: 1\n", SW_ERR_SYNTAX,
           "1:1: anchors (&) are not taken; write every value out, or put the "
           "text in quotes");
    refuse("a: &x [1]\n", SW_ERR_SYNTAX,
           "1:4: anchors (&) are not taken; write every value out");
    refuse("a: *x\n", SW_ERR_SYNTAX,
           "1:4: aliases (*) are not taken; write every value out, or put the "
           "text in quotes");
    refuse("a: !!float 1\n", SW_ERR_SYNTAX,
           "1:4: tags (!) are not taken; put the text in quotes");
    refuse("a: ! 1\n", SW_ERR_SYNTAX,
           "1:4: tags (!) are not taken; put the text in quotes");
    refuse("a: !x [1]\n", SW_ERR_SYNTAX, "1:4: tags (!) are not taken");
    refuse("? a\n: 1\n? [b]\n: 2\n", SW_ERR_SYNTAX,
           "3:3: a key is wanted here, a plain word before a colon");
    refuse("a: |\n  text\n", SW_ERR_SYNTAX,
           "1:4: this goes on over several lines: is a colon, a bracket or a "
           "quote missing? Each value stands on one line");
    refuse("a: \"x\\u0007\"\n", SW_ERR_SYNTAX,
           "1:4: there is a control or invisible character in this text");
    refuse("a: \"x\\n\"\n", SW_ERR_SYNTAX,
           "1:4: there is a control or invisible character in this text");
    refuse("a: \"x\\q\"\n", SW_ERR_SYNTAX,
           "1:6: unknown \\ in a text in double quotes; use single ones");
    refuse("a: @x\n", SW_ERR_SYNTAX,
           "1:4: a value cannot begin with this character; put it in quotes");
    refuse("%TAG ! x:\n---\na: 1\n", SW_ERR_SYNTAX,
           "1:1: directives (%) are not taken; leave the line out");
    refuse("a: 1\n---\nb: 1\n", SW_ERR_SYNTAX,
           "2:1: a second document begins here; a file holds one job");
}
END_TEST

/* What other readers of YAML turn into numbers, truths or nothing. */
START_TEST(no_guessing)
{
    static const char *const word[] = {"yes", "no",   "null", "~",
                                       "1e3", "0x10", "1:30", "2001-01-01"};
    for (size_t i = 0; i < sizeof word / sizeof word[0]; i++) {
        char text[1000];
        snprintf(text, sizeof text,
                 "strapwise: 1\npart:\n  name: %s\n  material: 6061-T6\n  "
                 "size: [200 mm, 150 mm]\n  thickness: 10 "
                 "mm\n" SUPPORTS CLAMPS OPERATIONS,
                 word[i]);
        sw_job *j = read_job(text);
        ck_assert_str_eq(sw_job_about(j, NULL).name, word[i]);
        sw_job_free(j);
    }
}
END_TEST

START_TEST(file_names)
{
    char name[200], want[200];
    sw_error err;
    ck_assert_ptr_null(sw_job_read("a\n", 2, NULL, &err));
    ck_assert(strncmp(err.message, "job:1:1: ", 9) == 0);
    memset(name, 'd', 100);
    snprintf(name + 100, sizeof name - 100, "/\x1b\xff\xc3\xa9.yaml");
    ck_assert_ptr_null(sw_job_read("a\n", 2, name, &err));
    snprintf(want, sizeof want, "/??\xc3\xa9.yaml:1:1: ");
    must(strncmp(err.message, "...ddd", 6) == 0 && strstr(err.message, want),
         "%s", err.message);
    ck_assert_ptr_null(sw_job_read(NULL, 0, NULL, &err));
    check_refused("text", &err, SW_ERR_NULL, "text");
}
END_TEST

int main(void)
{
    return RUN_TESTS("job_file", bytes, harmless, sizes, keys, beyond,
                     no_guessing, file_names);
}
