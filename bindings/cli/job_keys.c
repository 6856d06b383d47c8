/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Job keys: what may stand in a job file, section by section, for the help of
 * the topics that read one. Keys that go into a struct of the library are
 * spelled from its field list, so that a new field stands here by itself.
 */
#include "job.h"

#include <string.h>

typedef struct {
    const char *label;
    const char *own;  /* keys with a reader of their own */
    int structure;    /* 0: none */
    const char *skip; /* fields that are no keys, a blank before each */
    int second;       /* one more struct, or 0 */
    const char *second_skip;
} row;

static const row all[] = {
    {"part",
     "name, material, size, outline, thickness, raised, weight, mass, "
     "density, center of gravity",
     0, "", 0, ""},
    {"friction", "supports, stops, toes", 0, "", 0, ""},
    {"supports", "place, height", SW_STRUCT_SUPPORT_IN, " x_mm y_mm z_mm", 0,
     ""},
    {"stops", "place, push, height", SW_STRUCT_STOP_IN,
     " x_mm y_mm z_mm push_deg", 0, ""},
    {"tools", "name, kind", SW_STRUCT_TOOL_IN, " torque_Nm tool_kind", 0, ""},
    {"clamps", "kind, name, place, height, held friction, pad, and by kind:", 0,
     "", 0, ""},
    {"  force", "toward stud", SW_STRUCT_CLAMP_IN,
     " name x_mm y_mm z_mm toward_deg held_friction", 0, ""},
    {"  strap", "toward stud, tool", SW_STRUCT_STRAP_IN, "",
     SW_STRUCT_SPREAD_IN, " height_scatter_mm trials seed threads vary"},
    {"  screw, through-screw", "tool", SW_STRUCT_SCREW_IN, " screw", 0, ""},
    {"  cylinder", "", SW_STRUCT_CYLINDER_IN, "", 0, ""},
    {"  swing", "", SW_STRUCT_SWING_IN, "", 0, ""},
    {"  vacuum", "", SW_STRUCT_VACUUM_IN,
     " mu_face weight_N side_cut_N cut_height_mm lift_N rim_lift_N "
     "required_margin",
     0, ""},
    {"  bar", "second place", SW_STRUCT_BAR_IN, "", 0, ""},
    {"  pad", "", SW_STRUCT_PAD_IN, " force_N", 0, ""},
    {"operations", "name, clamps, cut, path", SW_STRUCT_HOLD_IN,
     " depth largest_margin disc_sides", 0, ""},
    {"  path", "points, lines, circle, step, height, feed", 0, "", 0, ""},
    {"  circle", "center, diameter, turns", 0, "", 0, ""},
    {"  cut, kind force", "kind", SW_STRUCT_LOAD_IN, " name x_mm y_mm z_mm", 0,
     ""},
    {"  cut, kind mill", "kind", SW_STRUCT_MILLING_IN, " feed_direction_deg", 0,
     ""},
    {"  cut, kind turn", "kind", SW_STRUCT_TURNING_IN, "", 0, ""},
    {"  cut, kind drill", "kind", SW_STRUCT_DRILLING_IN, "", 0, ""},
};

/* A field without its unit, with blanks. */
static void say_field(page *p, const sw_field *f)
{
    char name[64];
    size_t n = strlen(f->name), m = 0;
    for (const char *c = f->unit; *c; c++) /* letters of its ending */
        m += *c == '/' ? 5 : *c == '%' ? 3 : *c != '.';
    n -= m && n > m + 1 && f->name[n - m - 1] == '_' ? m + 1 : 0;
    copy_cut(name, n + 1 < sizeof name ? n + 1 : sizeof name, f->name);
    for (char *c = name; *c; c++)
        *c = *c == '_' ? ' ' : *c;
    page_add(p, name);
}

static int add_keys(page *p, int structure, const char *skip, int said)
{
    const sw_field *f;
    for (int i = 0; structure && (f = sw_field_at(structure, i)); i++) {
        if (listed(skip, f->name))
            continue;
        page_add(p, said++ ? ", " : "");
        say_field(p, f);
    }
    return said;
}

void say_job_keys(page *p)
{
    page_add(p, "\nKeys of a job file, below strapwise: 1 (a quantity has its "
                "unit: 30 mm, 25 ft-lbf)\n\n");
    for (size_t i = 0; i < sizeof all / sizeof all[0]; i++) {
        const row *r = &all[i];
        page_add(p, "  ");
        const size_t start = p->length;
        page_add(p, r->label);
        page_add(p, ": ");
        page_add(p, r->own);
        int said = add_keys(p, r->structure, r->skip, r->own[0] != '\0');
        add_keys(p, r->second, r->second_skip, said);
        page_wrap(p, start, 6);
        page_add(p, "\n");
    }
}
