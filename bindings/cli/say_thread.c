/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say thread: the geometry of a thread and the hardware of its size.
 */
#include "cli.h"

#include <string.h>

static void length(page *p, int us, const char *label, double mm)
{
    if (!is_known(mm))
        return;
    const size_t start = say_label(p, label);
    for (int half = 0; half < 2; half++) {
        page_add(p, half ? KEEP "(" : "");
        if ((half != 0) == (us != 0)) {
            page_number(p, mm, mm < 1 ? 3 : mm < 10 ? 4 : 5);
            page_add(p, KEEP "mm");
        } else {
            page_fixed(p, in_unit(mm, "in", SW_KIND_LENGTH), 4);
            page_add(p, KEEP "in");
        }
    }
    page_add(p, ")");
    say_done(p, start);
}

static void area(page *p, int us, const char *label, double mm2)
{
    const double inch = 1 / in_unit(1, "in", SW_KIND_LENGTH); /* mm */
    const size_t start = say_label(p, label);
    for (int half = 0; half < 2; half++) {
        page_add(p, half ? KEEP "(" : "");
        if ((half != 0) == (us != 0)) {
            page_number(p, mm2, 4);
            page_add(p, KEEP "mm\xc2\xb2");
        } else {
            page_number(p, mm2 / (inch * inch), 4);
            page_add(p, KEEP "in\xc2\xb2");
        }
    }
    page_add(p, ")");
    say_done(p, start);
}

void say_thread(page *p, int us, const sw_thread_out *t)
{
    page_add(p, t->designation);
    page_add(p, strcmp(t->series, "constant") == 0 ? ", " : ", series ");
    page_add(p, t->series);
    page_add(p, "\n\n");
    length(p, us, "diameter d", t->nominal_mm);
    length(p, us, "pitch P", t->pitch_mm);
    size_t start = say_label(p, "threads per inch");
    page_number(p, t->threads_per_inch, 4);
    say_done(p, start);
    length(p, us, "pitch diameter d2", t->pitch_diameter_mm);
    length(p, us, "root of the stud", t->root_diameter_mm);
    length(p, us, "bore of the nut D1", t->minor_diameter_mm);
    length(p, us, "triangle height H", t->triangle_height_mm);
    start = say_label(p, "lead angle");
    page_fixed(p, t->lead_angle_deg, 2);
    page_add(p, KEEP "deg");
    say_done(p, start);
    area(p, us, "stress area", t->stress_area_mm2);
    area(p, us, "root area", t->root_area_mm2);
    page_add(p, "\n");
    length(p, us, "nut across flats", t->across_flats_mm);
    length(p, us, "nut height", t->nut_height_mm);
    length(p, us, "nut bearing face", t->bearing_diameter_mm);
    length(p, us, "hole, close fit", t->hole_fine_mm);
    length(p, us, "hole, medium fit", t->clearance_hole_mm);
    length(p, us, "hole, loose fit", t->hole_coarse_mm);
    length(p, us, "washer outside", t->washer_diameter_mm);
    length(p, us, "washer inside", t->washer_hole_mm);
    length(p, us, "washer thickness", t->washer_thickness_mm);
    start = say_label(p, "play of the nut");
    page_fixed(p, t->play_mean_deg, 2);
    page_add(p, KEEP "deg of tilt, at most ");
    page_fixed(p, t->play_max_deg, 2);
    page_add(p, KEEP "deg");
    say_done(p, start);
}
