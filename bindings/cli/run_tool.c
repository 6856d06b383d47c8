/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Run tool: one torque tool, the usual ones that would do, or all of the
 * shop's own.
 */
#include "cli.h"

#include <string.h>

static double wanted(const request *r) { return r->question.in.tool.torque_Nm; }

/* Whose tools come first: as asked for, else those of the system that the tool
 * is marked in. */
static int first_unit(const request *r)
{
    sw_tool_in in = r->question.in.tool;
    if (!r->units && !sw_tool_resolve(&in, NULL))
        return in.torque_unit;
    return r->us ? SW_TORQUE_INLBF : SW_TORQUE_NM;
}

static json list_json(page *p, const request *r)
{
    json j = json_start(p);
    json_number(&j, "torque_Nm", wanted(r));
    json_number(&j, "torque_inlbf",
                in_unit(wanted(r), "in-lbf", SW_KIND_TORQUE));
    json_number(&j, "torque_ftlbf",
                in_unit(wanted(r), "ft-lbf", SW_KIND_TORQUE));
    json_open(&j, "tools", '[');
    return j;
}

static void list_json_end(json *j, const request *r)
{
    json_close(j, ']');
    json_not_checked(j, r->topic);
    json_warnings(j, "warnings", r->warnings);
    json_end(j);
}

/* The usual tools that would do, one's own system first. */
static void usual_json(request *r, page *p)
{
    json j = list_json(p, r);
    for (int i = 0;; i++) {
        answer a;
        a.out.tool = sw_tool_for(wanted(r), first_unit(r), i, NULL);
        if (a.out.status)
            break;
        json_open(&j, NULL, '{');
        json_fields(&j, r, r->topic, &a);
        json_close(&j, '}');
    }
    list_json_end(&j, r);
}

static void say_usual(request *r, page *p)
{
    say_torque(p, r->us, wanted(r));
    page_add(p, ": usual tools that would do, the best first\n\n");
    say_tools_head(p);
    for (int i = 0;; i++) {
        const sw_tool_out t = sw_tool_for(wanted(r), first_unit(r), i, NULL);
        if (t.status)
            break;
        say_tools_one(p, t.tool, &t);
    }
    say_warnings(p, r->warnings);
    say_not_checked(p, r->topic);
}

static int usual(request *r, page *p)
{
    sw_error err;
    const sw_tool_out best = sw_tool_for(wanted(r), first_unit(r), 0, &err);
    if (best.status)
        return complain_error(r, &err);
    r->warnings = best.warnings;
    (r->json ? usual_json : say_usual)(r, p);
    return DONE;
}

static int one(request *r, page *p)
{
    answer a;
    r->topic->solve(&r->question, &a);
    if (a.out.status) {
        const int status = complain_error(r, &a.err);
        /* what would do goes where results go */
        if (status == NOT_MET &&
            !sw_tool_for(wanted(r), first_unit(r), 0, NULL).status)
            usual(r, p);
        return status;
    }
    r->warnings = topic_warnings(r->topic, &a);
    if (r->json) {
        json j = json_start(p);
        json_fields(&j, r, r->topic, &a);
        json_assumed(&j, r->topic, &r->question, NULL);
        json_not_checked(&j, r->topic);
        json_warnings(&j, "warnings", r->warnings);
        json_end(&j);
        return DONE;
    }
    say_tool(p, r, &a.out.tool);
    say_warnings(p, r->warnings);
    say_assumed(p, r->us, r->topic, &r->question, NULL);
    say_not_checked(p, r->topic);
    return DONE;
}

/* One tool of the file: its line or object. NOT_MET where it would not do. */
static int own_one(request *r, page *p, json *j, const sw_shop_tool_out *tool)
{
    answer a;
    question q = r->question;
    sw_tool_use(&q.in.tool, tool);
    a.out.tool = sw_tool(&q.in.tool, &a.err);
    const int good = !a.out.status;
    if (!good && a.err.code != SW_ERR_NONE)
        return complain_error(r, &a.err);
    if (good)
        r->warnings |= a.out.tool.warnings;
    if (!r->json && good) {
        say_tools_one(p, tool->name, &a.out.tool);
    } else if (!r->json) {
        say_tools_not(p, tool->name, &a.err, wanted(r), tool->torque_unit);
    } else {
        json_open(j, NULL, '{');
        json_text(j, "name", tool->name);
        if (good)
            json_fields(j, r, r->topic, &a);
        else
            json_text(j, "refused", a.err.message);
        json_close(j, '}');
    }
    return good ? DONE : NOT_MET;
}

static int none_of(request *r, int unit)
{
    sw_error err;
    page line = {0};
    const sw_tool_out best = sw_tool_for(wanted(r), unit, 0, &err);
    page_add(&line, r->tools);
    page_add(&line, ": none of these tools would do; ");
    if (best.status) {
        page_add(&line, err.message);
    } else {
        page_add(&line, "of the usual ones a ");
        page_add(&line, best.label);
        page_add(&line, " would, ");
        page_add(&line, best.tool);
    }
    return complain_page(NOT_MET, r->command->name, &line);
}

static int own_list(request *r, page *p, const page *file)
{
    int good = 0, unit = first_unit(r);
    json j = {0};
    if (r->json) {
        j = list_json(p, r);
    } else {
        say_torque(p, r->us, wanted(r));
        page_add(p, " on the tools of ");
        page_add(p, r->tools);
        page_add(p, "\n\n");
        say_tools_head(p);
    }
    for (int i = 0;; i++) {
        sw_error err;
        const sw_shop_tool_out tool =
            sw_shop_tool(file->text, r->tools, i, &err);
        if (tool.status && strcmp(err.field, "index") != 0)
            return complain_error(r, &err);
        if (tool.status)
            break;
        unit = tool.torque_unit;
        const int status = own_one(r, p, &j, &tool);
        if (status > NOT_MET)
            return status;
        good += status == DONE;
    }
    if (r->json) {
        list_json_end(&j, r);
    } else {
        say_warnings(p, r->warnings);
        say_not_checked(p, r->topic);
    }
    return good ? DONE : none_of(r, unit);
}

static int own(request *r, page *p)
{
    page file = {0};
    int status = read_file(r->command->name, r->tools, &file);
    page_add(&file, "");
    if (!status && file.failed)
        status = complain(NOT_FINISHED, r->command->name, "out of memory",
                          (char *)NULL);
    if (!status && strlen(file.text) < file.length)
        status = complain(BAD_INPUT, r->command->name, r->tools,
                          ": has a zero byte in it", (char *)NULL);
    if (!status)
        status = own_list(r, p, &file);
    page_free(&file);
    return status;
}

/* Whether an option describes one tool. */
static const char *describes_tool(const request *r)
{
    static const char *const name[] = {
        "--tool",      "--range-low", "--range-high", "--resolution",
        "--deviation", "--kind",      "--torque-unit"};
    for (size_t i = 0; i < sizeof name / sizeof name[0]; i++)
        if (request_given(r, name[i]))
            return name[i];
    return NULL;
}

int run_tool(request *r, page *p)
{
    const char *described = describes_tool(r);
    if (!request_given(r, "--torque"))
        return complain(BAD_INPUT, r->command->name,
                        "torque: missing; give the torque wanted (8.3N.m, "
                        "\"6 ft-lbf\")",
                        (char *)NULL);
    if (r->tools && described)
        return complain(BAD_INPUT, r->command->name, described,
                        ": not together with --tools", (char *)NULL);
    if (r->tools)
        return own(r, p);
    return described || request_given(r, "--usable-fraction") ? one(r, p)
                                                              : usual(r, p);
}
