/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Picture: a drawing beside the answer, into a file of its own.
 */
#include "cli.h"

#include <string.h>

int picture_refused(const request *r, const char *option_name, const char *file)
{
    const char *who = r->command->name;
    if (!file)
        return DONE;
    if (!file[0] || strcmp(file, "-") == 0)
        return complain(BAD_INPUT, who, option_name,
                        ": name a file for the drawing", (char *)NULL);
    if (r->output && strcmp(r->output, file) == 0)
        return complain(BAD_INPUT, who, option_name,
                        ": not the same file as --output", (char *)NULL);
    return file_refused(who, option_name, file, r->replace);
}

int picture_deliver(request *r, sw_drawing *drawing, const char *file,
                    const sw_error *err)
{
    page text = {0};
    if (!drawing)
        return complain_error(r, err);
    page_add(&text, sw_drawing_svg(drawing));
    sw_drawing_free(drawing);
    const int status = deliver(&text, r->command->name, file, r->replace);
    page_free(&text);
    return status;
}
