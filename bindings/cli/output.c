/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Output: the finished page to standard output or to a file, whole or not at
 * all, and errors as one line on stderr.
 */
#define _POSIX_C_SOURCE 200809L
#include "cli.h"

#include <errno.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

/* No line may flood a terminal, whatever was typed. */
enum { LINE_MOST = 600 };

int complain_page(int status, const char *who, page *line)
{
    page whole = {0};
    page_add(&whole, "strapwise");
    if (who && who[0]) {
        page_add(&whole, " ");
        page_add(&whole, who);
    }
    page_add(&whole, ": ");
    page_add(&whole, line->text ? line->text : "");
    if (whole.failed || line->failed) {
        fputs("strapwise: out of memory\n", stderr);
        status = NOT_FINISHED;
    } else {
        for (size_t i = 0; i < whole.length; i++)
            if (whole.text[i] == '\n' || whole.text[i] == KEEP[0])
                whole.text[i] = ' ';
        if (whole.length > LINE_MOST) {
            whole.length = LINE_MOST;
            page_add(&whole, "...");
        }
        page_add(&whole, "\n");
        fputs(whole.text, stderr);
    }
    page_free(&whole);
    page_free(line);
    return status;
}

int complain(int status, const char *who, ...)
{
    page line = {0};
    va_list part;
    va_start(part, who);
    for (const char *text; (text = va_arg(part, const char *));)
        page_add(&line, text);
    va_end(part);
    return complain_page(status, who, &line);
}

int complain_error(request *r, const sw_error *err)
{
    page line = {0};
    spell_message(&line, r, err);
    if (strcmp(err->field, "thread") == 0 &&
        (err->code == SW_ERR_MISSING || err->code == SW_ERR_NULL))
        page_add(&line, " (to the shell an unquoted #10-32 is a comment: "
                        "write 10-32)");
    return complain_page(err->code == SW_ERR_NONE     ? NOT_MET
                         : err->code == SW_ERR_MEMORY ? NOT_FINISHED
                                                      : BAD_INPUT,
                         r->command->name, &line);
}

static int file_trouble(const char *who, const char *verb, const char *name)
{
    const int why = errno;
    page line = {0};
    page_add(&line, verb);
    page_add(&line, " ");
    spell_quoted(&line, name);
    page_add(&line, ": ");
    page_add(&line, strerror(why));
    return complain_page(NOT_FINISHED, who, &line);
}

static int exists(const char *name, struct stat *about)
{
    return stat(name, about) == 0;
}

int same_file(const char *a, const char *b)
{
    struct stat of_a, of_b;
    return exists(a, &of_a) && exists(b, &of_b) && of_a.st_dev == of_b.st_dev &&
           of_a.st_ino == of_b.st_ino;
}

int output_refused(const char *who, const char *output, int replace)
{
    return file_refused(who, "--output", output, replace);
}

int file_refused(const char *who, const char *option_name, const char *output,
                 int replace)
{
    struct stat about;
    if (!output || strcmp(output, "-") == 0)
        return DONE;
    /* a link that leads nowhere is something, too */
    if (lstat(output, &about) == 0 && !replace) {
        page line = {0};
        page_add(&line, option_name);
        page_add(&line, ": ");
        spell_quoted(&line, output);
        page_add(&line, " exists; give --replace to write over it");
        return complain_page(NOT_FINISHED, who, &line);
    }
    return DONE;
}

static int write_all(FILE *file, const page *p)
{
    return fwrite(p->text, 1, p->length, file) == p->length &&
           fflush(file) == 0 && !ferror(file);
}

static int to_stdout(const page *p, const char *who)
{
    errno = 0;
    if (write_all(stdout, p))
        return DONE;
    return complain(NOT_FINISHED, who, "cannot write the result: ",
                    errno ? strerror(errno) : "output error", (char *)NULL);
}

/* A new file beside the wanted one, so that the rename stays on its disk. */
static FILE *open_beside(const char *name, char *beside, size_t room)
{
    for (int n = 0; n < 100; n++) {
        snprintf(beside, room, "%s.part%d", name, n);
        FILE *file = fopen(beside, "wx");
        if (file || errno != EEXIST)
            return file;
    }
    return NULL;
}

static int to_file(const page *p, const char *who, const char *name)
{
    struct stat about;
    /* a device or a pipe cannot be replaced by a file: write into it */
    const int special = exists(name, &about) && !S_ISREG(about.st_mode);
    const size_t room = strlen(name) + 16;
    char *beside = malloc(room);
    if (!beside)
        return complain(NOT_FINISHED, who, "out of memory", (char *)NULL);
    FILE *file = special ? fopen(name, "w") : open_beside(name, beside, room);
    int status = DONE;
    if (!file) {
        status = file_trouble(who, "cannot write", name);
    } else {
        int good = write_all(file, p);
        if (exists(name, &about) && !special) /* as private as before */
            good = good && fchmod(fileno(file), about.st_mode & 07777) == 0;
        good = (fclose(file) == 0) && good;
        if (good && !special)
            good = rename(beside, name) == 0;
        if (!good) {
            status = file_trouble(who, "cannot write", name);
            if (!special)
                remove(beside);
        }
    }
    free(beside);
    return status;
}

int deliver(page *p, const char *who, const char *output, int replace)
{
    if (p->failed)
        return complain(NOT_FINISHED, who, "out of memory", (char *)NULL);
    if (!p->text)
        return DONE;
    for (size_t i = 0; i < p->length; i++)
        if (p->text[i] == KEEP[0])
            p->text[i] = ' ';
    if (!output || strcmp(output, "-") == 0)
        return to_stdout(p, who);
    /* asked again: the file may have come into being meanwhile */
    const int refused = output_refused(who, output, replace);
    return refused ? refused : to_file(p, who, output);
}
