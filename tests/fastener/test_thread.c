/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Thread: published diameters, areas and limits of size (tests/values), the
 * profile constructed from its 60 degree triangle, and designations as people
 * write them.
 */
#include "../common.h"
#include "../near.h"
#include "../values.h"

#define INCH 25.4

static sw_thread_out good(const char *name)
{
    sw_error err;
    const sw_thread_out t = sw_thread(name, &err);
    check_no_error(name, t.status, &err);
    check_numbers(name, &t, SW_STRUCT_THREAD_OUT, t.status);
    return t;
}

/* Published: sources row by row in thread_values.csv. */
START_TEST(published)
{
    values v;
    values_open(&v, "tests/values/thread_values.csv");
    int areas = 0, diameters = 0, pitches = 0, misprints = 0;
    while (values_next(&v)) {
        const char *quantity = values_text(&v, "quantity");
        const char *id = values_text(&v, "id");
        const char *thread = values_text(&v, "thread");
        const int misprint = strncmp(quantity, "misprint_", 9) == 0;
        char name[64], what[128];
        snprintf(name, sizeof name, "%s", quantity + (misprint ? 9 : 0));
        snprintf(what, sizeof what, "%s %s %s", id, thread, quantity);
        const sw_thread_out t = good(thread);
        double unit = 1;
        char *inch = strstr(name, "_in2");
        if (inch) {
            strcpy(inch, "_mm2");
            unit = INCH * INCH;
        }
        const sw_field *f = sw_field_named(SW_STRUCT_THREAD_OUT, name);
        must(f != NULL, "%s: no such quantity", what);
        const double got = field_number(&t, f);
        const double want = values_number(&v, "value") * unit;
        if (misprint) {
            misprints++;
            must(fabs(got / want - 1) > 0.006,
                 "%s: the misprint %.17g is reproduced", what, want);
        } else if (strstr(name, "_mm2")) {
            areas++;
            near_in(what, got, want, 0, 0.006);
        } else if (strcmp(name, "pitch_mm") == 0) {
            pitches++;
            near_in(what, got, want, 0, 1e-9);
        } else {
            diameters++;
            near_in(what, got, want, 0.0006, 0);
        }
    }
    ck_assert_int_ge(areas, 150);
    ck_assert_int_ge(diameters, 130);
    ck_assert_int_ge(pitches, 40);
    ck_assert_int_eq(misprints, 2);
}
END_TEST

/* Independent: the profile as a drawing. A sharp 60 degree triangle of width P
 * is cut off at the crest to a width of P/8; from there the tooth widens by
 * 2 tan 30 for each unit of depth. Each diameter is where the tooth has a
 * certain width, found by bisection (ISO 68-1: pitch line P/2, internal minor
 * 3P/4, sharp-cornered root 7P/8). The rounded root is the circle of radius
 * H/6 that touches both flanks. */
static double diameter_where_tooth_is(double width, double d, double P)
{
    const double slope = 1 / sqrt(3); /* tan 30 */
    double low = 0, high = P;         /* depth below the crest */
    for (int i = 0; i < 200; i++) {
        const double depth = (low + high) / 2;
        if (P / 8 + 2 * depth * slope < width)
            low = depth;
        else
            high = depth;
    }
    return d - 2 * low;
}

static double diameter_under_rounded_root(double d, double P)
{
    /* the groove's flanks meet at depth P/8 tan 60 less than the full
     * triangle; seen from there the circle's centre is R/sin 30 away */
    const double height = P / 2 * sqrt(3), R = height / 6;
    const double apex = height - P / 16 * sqrt(3);
    const double lowest = R / 0.5 - R; /* of the circle, over the apex */
    return d - 2 * (apex - lowest);
}

START_TEST(profile)
{
    const double pi = acos(-1);
    for (int i = 0; i < sw_thread_count(); i++) {
        const char *name = sw_thread_name(i);
        const sw_thread_out t = good(name);
        const double d = t.nominal_mm, P = t.pitch_mm;
        near_in(name, t.pitch_diameter_mm, diameter_where_tooth_is(P / 2, d, P),
                0, 1e-12);
        near_in(name, t.minor_diameter_mm,
                diameter_where_tooth_is(3 * P / 4, d, P), 0, 1e-12);
        const double sharp = diameter_where_tooth_is(7 * P / 8, d, P);
        near_in(name, t.minor_area_mm2, pi / 4 * sharp * sharp, 0, 1e-12);
        const double root = t.system == SW_SYSTEM_METRIC
                                ? diameter_under_rounded_root(d, P)
                                : sharp;
        near_in(name, t.root_diameter_mm, root, 0, 1e-12);
        near_in(name, t.root_area_mm2, pi / 4 * root * root, 0, 1e-12);
        near_in(name, t.triangle_height_mm, P * sin(pi / 3), 0, 1e-14);
        near_in(name, t.flank_angle_deg, 30, 0, 0);
        near_in(name, t.threads_per_inch * P, INCH, 0, 1e-9);
        /* one turn of the helix unrolled: rise P over run pi d2 */
        near_in(name,
                tan(t.lead_angle_deg * pi / 180) * pi * t.pitch_diameter_mm, P,
                0, 1e-12);
    }
}
END_TEST

/* Published: ASME B1.1 gives At = 0.7854 (d - 0.9743/n)^2 and ISO 898-1
 * As = 0.7854 (d - 0.9382 P)^2; four digits, so 2e-4 for the smallest. */
START_TEST(stress_area_formulas)
{
    for (int i = 0; i < sw_thread_count(); i++) {
        const sw_thread_out t = good(sw_thread_name(i));
        const double n = t.system == SW_SYSTEM_METRIC ? 0.9382 : 0.9743;
        const double ds = t.nominal_mm - n * t.pitch_mm;
        near_in(t.designation, t.stress_area_mm2, 0.7854 * ds * ds, 0, 2e-4);
    }
}
END_TEST

/* Properties: the order of diameters and areas; areas scale with the square
 * of the size where pitch and diameter have the same ratio. */
START_TEST(order)
{
    for (int i = 0; i < sw_thread_count(); i++) {
        const sw_thread_out t = good(sw_thread_name(i));
        must(t.root_diameter_mm < t.minor_diameter_mm &&
                 t.minor_diameter_mm < t.pitch_diameter_mm &&
                 t.pitch_diameter_mm < t.nominal_mm,
             "%s", t.designation);
        must(t.minor_area_mm2 <= t.root_area_mm2 &&
                 t.root_area_mm2 < t.stress_area_mm2 &&
                 t.stress_area_mm2 < acos(-1) / 4 * t.nominal_mm * t.nominal_mm,
             "%s", t.designation);
        must(t.bearing_diameter_mm < t.across_flats_mm &&
                 t.bearing_diameter_mm > t.clearance_hole_mm,
             "%s: nut", t.designation);
        must(t.nominal_mm < t.hole_fine_mm &&
                 t.hole_fine_mm < t.clearance_hole_mm &&
                 t.clearance_hole_mm < t.hole_coarse_mm,
             "%s: hole", t.designation);
        must(t.nominal_mm < t.washer_hole_mm &&
                 t.washer_diameter_mm > t.bearing_diameter_mm &&
                 t.washer_thickness_mm > 0,
             "%s: washer", t.designation);
        must(t.nut_height_mm > 0.6 * t.nominal_mm &&
                 t.nut_height_mm < 1.1 * t.nominal_mm,
             "%s: nut height", t.designation);
        must(0 < t.play_mean_deg && t.play_mean_deg < t.play_max_deg &&
                 t.play_max_deg < 10,
             "%s: play", t.designation);
        must(t.lead_angle_deg > 0.5 && t.lead_angle_deg < 6, "%s: lead",
             t.designation);
    }
    /* M4x0.7 and M20x3.5 would be similar; the table has M12x1.5, M24x3 and
     * M16x2 with P = d/8 */
    const double a = good("M12x1.5").stress_area_mm2;
    near(good("M16").stress_area_mm2 / a, 16.0 * 16 / (12 * 12), 0, 1e-12);
    near(good("M24").stress_area_mm2 / a, 4, 0, 1e-12);
}
END_TEST

/* Published: limits of size of 6g and 6H threads (limits.csv). Clearance on
 * the pitch diameter over the nut's height is the tilt; tables round each
 * limit to microns on the R40 series, so 8 %. */
typedef struct {
    const char *thread;
    double out_max, out_min, in_min, in_max;
} limits;

static int is(const values *v, const char *column, const char *text)
{
    return strcmp(values_text(v, column), text) == 0;
}

static void collect(limits *row, int count)
{
    values v;
    values_open(&v, "tests/values/limits.csv");
    while (values_next(&v))
        for (int i = 0; i < count; i++) {
            if (!is(&v, "thread", row[i].thread))
                continue;
            const double x = values_number(&v, "value");
            const int outside = is(&v, "side", "external");
            if (is(&v, "quantity", "pitch_max_mm"))
                *(outside ? &row[i].out_max : &row[i].in_max) = x;
            if (is(&v, "quantity", "pitch_min_mm"))
                *(outside ? &row[i].out_min : &row[i].in_min) = x;
        }
}

static void check_play(const limits *row, double tolerance)
{
    const sw_thread_out t = good(row->thread);
    const double mean =
        (row->in_min + row->in_max - row->out_min - row->out_max) / 2;
    const double most = row->in_max - row->out_min, to_rad = acos(-1) / 180;
    near_in(row->thread, tan(t.play_mean_deg * to_rad) * t.nut_height_mm, mean,
            0, tolerance);
    near_in(row->thread, tan(t.play_max_deg * to_rad) * t.nut_height_mm, most,
            0, tolerance);
}

START_TEST(play_metric)
{
    limits row[] = {{"M10", 0, 0, 0, 0}, {"M12", 0, 0, 0, 0}};
    collect(row, 2);
    for (int i = 0; i < 2; i++) {
        must(row[i].out_min > 0 && row[i].in_max > 0, "%s: limits missing",
             row[i].thread);
        check_play(&row[i], 0.08);
    }
}
END_TEST

/* ASME B1.1, 2A and 2B, from memory: pitch diameter limits in inches. */
START_TEST(play_unified)
{
    static const limits row[] = {
        {"1/4-20", 0.2164, 0.2127, 0.2175, 0.2224},
        {"3/8-16", 0.3331, 0.3287, 0.3344, 0.3401},
        {"1/2-13", 0.4485, 0.4435, 0.4500, 0.4565},
        {"3/4-10", 0.6832, 0.6773, 0.6850, 0.6927},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const limits mm = {row[i].thread, row[i].out_max * INCH,
                           row[i].out_min * INCH, row[i].in_min * INCH,
                           row[i].in_max * INCH};
        check_play(&mm, 0.08);
    }
}
END_TEST

/* Published limits again: the smallest internal 6H thread is the basic
 * profile itself (fundamental deviation 0). M9x1.25 is in no table of ours:
 * its basic sizes are M10x1.25 less 1 mm. */
START_TEST(basic_internal)
{
    values v;
    values_open(&v, "tests/values/limits.csv");
    int seen = 0;
    while (values_next(&v)) {
        if (!is(&v, "side", "internal"))
            continue;
        const int m9 = is(&v, "thread", "M9x1.25");
        const sw_thread_out t =
            good(m9 ? "M10x1.25" : values_text(&v, "thread"));
        const double want = values_number(&v, "value") + (m9 ? 1 : 0);
        if (is(&v, "quantity", "minor_min_mm")) {
            near_in(t.designation, t.minor_diameter_mm, want, 0.0006, 0);
            seen++;
        } else if (is(&v, "quantity", "pitch_min_mm")) {
            near_in(t.designation, t.pitch_diameter_mm, want, 0.0006, 0);
            seen++;
        }
    }
    ck_assert_int_ge(seen, 16);
}
END_TEST

/* External 6g: major and pitch diameter lie below basic by the same
 * fundamental deviation, 15 + 11 P microns rounded (ISO 965-1). */
START_TEST(basic_external)
{
    values v;
    values_open(&v, "tests/values/limits.csv");
    int seen = 0;
    while (values_next(&v)) {
        if (!is(&v, "side", "external"))
            continue;
        const sw_thread_out t = good(values_text(&v, "thread"));
        const double x = values_number(&v, "value");
        const double es = (15 + 11 * t.pitch_mm) / 1000;
        if (is(&v, "quantity", "major_max_mm")) {
            near_in(t.designation, x, t.nominal_mm - es, 0.0015, 0);
            seen++;
        } else if (is(&v, "quantity", "pitch_max_mm")) {
            near_in(t.designation, x, t.pitch_diameter_mm - es, 0.0015, 0);
            seen++;
        } else if (is(&v, "quantity", "minor_max_mm")) {
            /* under the rounded root: deviation, and the root's own depth */
            must(x < t.minor_diameter_mm, "%s", t.designation);
            seen++;
        }
    }
    ck_assert_int_eq(seen, 18);
}
END_TEST

/* Published hardware: ISO 4032 (2012) nuts, ISO 4014 bearing face, ISO 273
 * holes, ISO 7089 washers; inch hexagons ASME B18.2.2, from memory. */
START_TEST(hardware)
{
    static const struct {
        const char *thread;
        double flats, height, face, fine, medium, coarse, hole, outer, thick;
    } row[] = {
        {"M6", 10, 5.2, 8.88, 6.4, 6.6, 7, 6.4, 12, 1.6},
        {"M8", 13, 6.8, 11.63, 8.4, 9, 10, 8.4, 16, 1.6},
        {"M10", 16, 8.4, 14.63, 10.5, 11, 12, 10.5, 20, 2},
        {"M12", 18, 10.8, 16.63, 13, 13.5, 14.5, 13, 24, 2.5},
        {"M16", 24, 14.8, 22.49, 17, 17.5, 18.5, 17, 30, 3},
        {"M20", 30, 18, 28.19, 21, 22, 24, 21, 37, 3},
        {"M24", 36, 21.5, 33.61, 25, 26, 28, 25, 44, 4},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const sw_thread_out t = good(row[i].thread);
        near_in(row[i].thread, t.across_flats_mm, row[i].flats, 0, 0);
        near_in(row[i].thread, t.nut_height_mm, row[i].height, 0, 0);
        near_in(row[i].thread, t.bearing_diameter_mm, row[i].face, 0, 0);
        near_in(row[i].thread, t.hole_fine_mm, row[i].fine, 0, 0);
        near_in(row[i].thread, t.clearance_hole_mm, row[i].medium, 0, 0);
        near_in(row[i].thread, t.hole_coarse_mm, row[i].coarse, 0, 0);
        near_in(row[i].thread, t.washer_hole_mm, row[i].hole, 0, 0);
        near_in(row[i].thread, t.washer_diameter_mm, row[i].outer, 0, 0);
        near_in(row[i].thread, t.washer_thickness_mm, row[i].thick, 0, 0);
    }
    near(good("1/2-13").across_flats_mm, 0.75 * INCH, 0.01, 0);
    near(good("1/4-20").across_flats_mm, 7.0 / 16 * INCH, 0.01, 0);
    near(good("3/4-10").across_flats_mm, 1.125 * INCH, 0.01, 0);
    near(good("1-8").across_flats_mm, 1.5 * INCH, 0.01, 0);
}
END_TEST

START_TEST(spellings)
{
    static const char *const same[][8] = {
        {"M12", "m12", "M 12", " M12 ", "M12x1.75", "M12 x 1.75", "M12X1.75",
         "M12-6g"},
        {"M12x1.25", "m12x1.25", "M12 x 1.25", "M12X1.25", "M12x1.25-6H",
         "M12.0x1.25", "M12x1.250", "M12x1.25-6H6g"},
        {"1/2-13 UNC", "1/2-13", "1/2-13UNC", "1/2 -13 unc", "1/2-13 UNC-2A",
         "1/2-13-UNC", "1/2-13 UNRC", "1/2-13 unc-2a"},
        {"#10-32 UNF", "#10-32", "10-32", "10-32 UNF", "10-32unf", "# 10-32",
         "#10 - 32 UNF", "10-32 UNF-2A"},
        {"1-1/2-6 UNC", "1-1/2-6", "1 1/2-6", "1 1/2 - 6 UNC", "1-1/2-6unc",
         "1-1/2-6 UNC-2A", "1  1/2-6", "1-1/2 -6"},
        {"1-1/2-8 8-UN", "1-1/2-8", "1-1/2-8 8UN", "1-1/2-8 UN", "1-1/2-8UN",
         "1 1/2-8 8-UN", "1-1/2-8 8-UN-2A", "1-1/2-8un"},
    };
    for (size_t i = 0; i < sizeof same / sizeof same[0]; i++)
        for (int j = 0; j < 8; j++) {
            const sw_thread_out t = good(same[i][j]);
            ck_assert_str_eq(t.designation, same[i][0]);
        }
}
END_TEST

START_TEST(own_names)
{
    for (int i = 0; i < sw_thread_count(); i++) {
        const char *name = sw_thread_name(i);
        const sw_thread_out t = good(name);
        ck_assert_str_eq(t.designation, name);
        must(strncmp(name, t.size, strlen(t.size)) == 0, "%s", name);
        must(sw_word(SW_WORDS_SYSTEM, t.system) != NULL, "%s", name);
        must(t.series[0], "%s", name);
        for (int j = 0; j < i; j++)
            ck_assert_str_ne(sw_thread_name(j), name);
    }
    ck_assert_int_ge(sw_thread_count(), 100);
    ck_assert_ptr_null(sw_thread_name(sw_thread_count()));
    ck_assert_ptr_null(sw_thread_name(-1));
    ck_assert_ptr_null(sw_thread_name(-100000000));
    ck_assert_ptr_null(sw_thread_name(100000000));
    ck_assert_str_eq(good("M12").series, "coarse");
    ck_assert_str_eq(good("M12x1.25").series, "fine");
    ck_assert_str_eq(good("1/2-20").series, "unf");
    ck_assert_str_eq(good("1/2-20").size, "1/2");
}
END_TEST

START_TEST(refused)
{
    static const struct {
        const char *text, *offered; /* NULL: anything */
    } row[] = {
        {"M13", NULL},
        {"M12x1.75x2", NULL},
        {"M12x", NULL},
        {"M", NULL},
        {"M12x2", "M12x1.25"},
        {"M12x1,25", "M12x1.25"},
        {"Mx1.25", NULL},
        {"M-12", NULL},
        {"M1e1", NULL},
        {"M0", NULL},
        {"Mnan", NULL},
        {"1/2", "1/2-13"},
        {"1/2-14", "1/2-13"},
        {"1/2-13 UNF", "1/2-13 UNC"},
        {"10-33", NULL},
        {"0.5-13", NULL},
        {"12", NULL},
        {" ", NULL},
        {"M12 M12", NULL},
        {"x", NULL},
        {"#", NULL},
        {"UNC", NULL},
        {"-13", NULL},
        {"#1/2-13", NULL},
        {"M12x-1.75", NULL},
        {"M12x0", NULL},
        {"M12x0.0", NULL},
        {"M12x1.75\n", NULL},
        {"M12,", NULL},
        {"M12x1.75 UNC", NULL},
        {"12x1.75", NULL},
        {"M\xc2\xa0"
         "12",
         NULL},
        {"Tr16x4", NULL},
        {"M12                                                            "
         "               ",
         NULL},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_error err;
        const sw_thread_out t = sw_thread(row[i].text, &err);
        must(t.status == SW_ERR_UNKNOWN, "\"%s\" was taken as %s", row[i].text,
             t.designation);
        check_refused(row[i].text, &err, SW_ERR_UNKNOWN, "thread");
        check_numbers(row[i].text, &t, SW_STRUCT_THREAD_OUT, t.status);
        if (row[i].offered)
            must(strstr(err.message, row[i].offered), "%s", err.message);
    }
    sw_error err;
    sw_thread_out t = sw_thread(NULL, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "thread");
    check_numbers("NULL", &t, SW_STRUCT_THREAD_OUT, t.status);
    t = sw_thread("", &err);
    check_refused("empty", &err, SW_ERR_MISSING, "thread");
    ck_assert_int_eq(sw_thread("M13", NULL).status, SW_ERR_UNKNOWN);
}
END_TEST

/* The same size is offered first, with or without its '#' as it was written;
 * else the sizes next to it. */
START_TEST(offered)
{
    static const struct {
        const char *text, *offered[3], *not_offered;
    } row[] = {
        {"1/2-14", {"1/2-13 UNC", "1/2-20 UNF"}, "M12"},
        {"1/2", {"1/2-13 UNC", "1/2-20 UNF"}, "1-1/2"},
        {"10-33", {"#10-24 UNC", "#10-32 UNF"}, "M10"},
        {"#10-33", {"#10-24 UNC", "#10-32 UNF"}, "M10"},
        {"#1-65", {"#1-64 UNC", "#1-72 UNF"}, "1-8 UNC"},
        {"1-9", {"1-8 UNC", "1-12 UNF"}, "#1-64"},
        {"1-1/2-7", {"1-1/2-6 UNC", "1-1/2-12 UNF", "1-1/2-8 8-UN"}, "1-8 UNC"},
        {"M12x2", {"M12x1.25", "M12x1.5", "M12"}, "M20"},
        {"M13", {"M12", "M14"}, "M3"},
        {"M50", {"M48", "M52"}, "M5,"},
        {"M100", {"M64"}, "M10"},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_error err;
        const sw_thread_out t = sw_thread(row[i].text, &err);
        must(t.status == SW_ERR_UNKNOWN, "%s", row[i].text);
        const char *said = strstr(err.message, "nearest");
        must(said != NULL, "%s: %s", row[i].text, err.message);
        for (int j = 0; j < 3 && row[i].offered[j]; j++)
            must(strstr(said, row[i].offered[j]), "%s: %s is not offered: %s",
                 row[i].text, row[i].offered[j], err.message);
        must(!strstr(said, row[i].not_offered), "%s: %s is offered: %s",
             row[i].text, row[i].not_offered, err.message);
    }
}
END_TEST

START_TEST(long_text)
{
    enum { LENGTH = 10000 };
    static char text[LENGTH + 1];
    for (const char *c = "M1x-#/ \n\xff"; *c; c++) {
        memset(text, *c, LENGTH);
        sw_error err;
        sw_thread_out t = sw_thread(text, &err);
        check_error("10,000 characters", &err, SW_ERR_UNKNOWN);
        text[0] = 'M';
        t = sw_thread(text, &err);
        check_error("10,000 characters", &err, SW_ERR_UNKNOWN);
        ck_assert_int_eq(t.status, SW_ERR_UNKNOWN);
    }
}
END_TEST

int main(void)
{
    return RUN_TESTS("thread", published, profile, stress_area_formulas, order,
                     play_metric, play_unified, basic_internal, basic_external,
                     hardware, spellings, own_names, refused, offered,
                     long_text);
}
