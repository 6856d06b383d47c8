/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Status: every error code and every warning bit is provoked here, through
 * the public functions; one that is not provoked fails the test.
 */
#include "../common.h"
#include "../near.h"
#include "../short_memory.h"

static sw_torque_in torque_question(void)
{
    sw_torque_in in;
    sw_torque_defaults(&in);
    SET(in.thread, "M12");
    in.preload_N = 20000;
    return in;
}

static sw_strap_in strap_question(void)
{
    sw_strap_in in;
    sw_strap_defaults(&in);
    SET(in.thread, "M12");
    in.preload_N = 10000;
    in.stud_to_toe_mm = 30;
    in.stud_to_heel_mm = 60;
    in.part_height_mm = 40;
    in.tilt_deg = 1;
    return in;
}

static int stop(double done, void *with)
{
    (void)with;
    return done > 0;
}

static sw_tool_in tool_question(void)
{
    sw_tool_in in;
    sw_tool_defaults(&in);
    SET(in.tool, "click-25Nm");
    in.torque_Nm = 12;
    return in;
}

static int provoke(int code, sw_error *err)
{
    sw_torque_in in = torque_question();
    const sw_strap_in strap = strap_question();
    sw_spread_in spread;
    sw_spread_defaults(&spread);
    switch (code) {
    case SW_ERR_NULL:
        return sw_thread(NULL, err).status;
    case SW_ERR_MISSING:
        in.preload_N = SW_UNSET;
        return sw_torque(&in, err).status;
    case SW_ERR_NAN:
        in.preload_N = NAN;
        return sw_torque(&in, err).status;
    case SW_ERR_RANGE:
        in.preload_N = -1;
        return sw_torque(&in, err).status;
    case SW_ERR_SYNTAX:
        return sw_number("twelve", "load", err).status;
    case SW_ERR_UNIT:
        return sw_quantity("12 lb", SW_KIND_FORCE, "load", err).status;
    case SW_ERR_UNKNOWN:
        return sw_thread("M13", err).status;
    case SW_ERR_CONFLICT:
        in.torque_Nm = 40;
        return sw_torque(&in, err).status;
    case SW_ERR_NONE:
        in.preload_N = SW_UNSET;
        in.torque_Nm = 5;
        in.prevailing_torque_Nm = 6;
        return sw_torque(&in, err).status;
    case SW_ERR_MEMORY:
        spread.trials = 1e7;
        memory_short();
        const int status =
            sw_strap_spread(&strap, &spread, NULL, NULL, err).status;
        memory_plenty();
        return status;
    case SW_ERR_STOPPED:
        return sw_strap_spread(&strap, &spread, stop, NULL, err).status;
    default:
        return SW_OK;
    }
}

START_TEST(every_code)
{
    for (int code = 1; code <= sw_status_count(); code++) {
        sw_error err;
        must(provoke(code, &err) == code,
             "%s (%d) is not provoked: add it to provoke()",
             sw_status_name(code), code);
        check_error(sw_status_name(code), &err, code);
        ck_assert_int_eq(provoke(code, NULL), code);
    }
    ck_assert_int_eq(sw_status_count(), SW_ERR_STOPPED);
}
END_TEST

START_TEST(code_names)
{
    static const char *const want[] = {
        "ok",   "null_pointer", "missing",  "nan",       "range",  "syntax",
        "unit", "unknown",      "conflict", "no_answer", "memory", "stopped"};
    for (int code = 0; code <= sw_status_count(); code++)
        ck_assert_str_eq(sw_status_name(code), want[code]);
    ck_assert_str_eq(sw_status_name(-1), "unknown_code");
    ck_assert_str_eq(sw_status_name(sw_status_count() + 1), "unknown_code");
}
END_TEST

/* Warnings of a calibration: that many pairs, the n-th force times `last`, K
 * rising by `trend` from one to the next. */
static uint64_t calibration(int n, double last, double trend,
                            const char *thread)
{
    static const char head[] = "thread: M12\ntorque_Nm,force_N\n1,1\n";
    sw_error err;
    sw_pairs *pairs = sw_pairs_new(&err);
    const int alike = strstr(thread, "alike") != NULL;
    for (int i = 0; i < 12 && alike; i++)
        ck_assert_int_eq(
            sw_pairs_add(pairs, 40, 16000, SW_UNSET, SW_UNSET, &err), 0);
    if (!alike && strcmp(thread, "M12") != 0)
        ck_assert_int_eq(sw_pairs_read(pairs, head, strlen(head), NULL, &err),
                         0);
    for (int i = 0; i < n; i++)
        ck_assert_int_eq(
            sw_pairs_add(pairs, 40,
                         (i == n - 1 ? last : 1) * (16000 + 100 * (i % 3)) *
                             exp(-trend * i),
                         SW_UNSET, SW_UNSET, &err),
            0);
    sw_calibrate_in in;
    sw_calibrate_defaults(&in);
    SET(in.thread, alike ? "M12" : thread);
    const sw_calibrate_out out = sw_calibrate(&in, pairs, &err);
    check_no_error("calibrate", out.status, &err);
    sw_pairs_free(pairs);
    return out.warnings;
}

/* A short engagement in aluminium. */
static uint64_t strip_warnings(void)
{
    sw_error err;
    sw_strip_in in;
    sw_strip_defaults(&in);
    SET(in.thread, "M12");
    SET(in.material, "6061-T6");
    in.preload_N = 30000;
    in.engaged_length_mm = 4;
    return sw_strip(&in, &err).warnings;
}

/* A thin chip; titanium, by the name of an alloy. */
static uint64_t cut_warnings(void)
{
    sw_error err;
    sw_turning_in in;
    sw_turning_defaults(&in);
    SET(in.material, "Ti-6Al-4V");
    in.depth_mm = 1;
    in.feed_mm = 0.01;
    return sw_turning(&in, &err).warnings;
}

static uint64_t weakest_warnings(const sw_strap_in *s, int rank)
{
    sw_error err;
    sw_engage_in engage;
    sw_engage_defaults(&engage);
    return sw_strap_weakest(s, &engage, rank, &err).warnings;
}

/* The warnings of a question made for this bit. */
static uint64_t provoke_spread_warning(uint64_t bit)
{
    sw_error err;
    sw_torque_in t = torque_question();
    sw_strap_in s = strap_question();
    sw_spread_in spread;
    sw_spread_defaults(&spread);
    spread.scatter_pct = 60;
    switch (bit) {
    case SW_WARN_HIGH_OVER_PROOF:
        t.preload_N =
            20000; /* 41 % of the proof load, twice as much at worst */
        return sw_spread(&t, &spread, &err).warnings;
    case SW_WARN_HIGH_OVER_YIELD:
        t.preload_N = 35000;
        return sw_spread(&t, &spread, &err).warnings;
    case SW_WARN_FEW_TRIALS: /* 2.5 beyond each end */
        spread.trials = 100;
        return sw_strap_spread(&s, &spread, NULL, NULL, &err).warnings;
    case SW_WARN_STUD_ENDS_WINDOW:
        return sw_window(&t, &spread, 1000, 90000, &err).warnings;
    case SW_WARN_METHOD_READS:
        spread.scatter_pct = SW_UNSET;
        SET(spread.method, "load-cell");
        return sw_spread(&t, &spread, &err).warnings;
    case SW_WARN_TRIALS_FAILED:
        /* the stud so near the toe that some tip over it */
        s.stud_to_toe_mm = 5;
        s.tilt_deg = 0;
        s.nose = SW_NOSE_ROUND;
        spread.height_scatter_mm = 5;
        return sw_strap_spread(&s, &spread, NULL, NULL, &err).warnings;
    default:
        return 0;
    }
}

static uint64_t job_warnings(void)
{
    static const char text[] =
        "strapwise: 1\n"
        "part: {size: [90 mm, 60 mm], thickness: 9 mm, weight: 2 N}\n"
        "supports: [{place: [45 mm, 30 mm], friction: 0.61}]\n"
        "clamps: [{kind: force, place: [45 mm, 30 mm], force: 1 kN}]\n"
        "operations: [{cut: {kind: force, force x: 1 N}, path: {points: [[45 "
        "mm, 30 mm]]}}]\n";
    sw_job *job = sw_job_read(text, strlen(text), NULL, NULL);
    const uint64_t warnings = sw_job_about(job, NULL).warnings;
    sw_job_free(job);
    return warnings;
}

static uint64_t provoke_clamp_warning(uint64_t bit)
{
    sw_error err;
    sw_cylinder_in c;
    sw_pad_in p;
    sw_vacuum_in v;
    sw_chuck_in j;
    sw_cylinder_defaults(&c);
    sw_pad_defaults(&p);
    sw_vacuum_defaults(&v);
    sw_chuck_defaults(&j);
    switch (bit) {
    case SW_WARN_DEVICE_LIMIT:
        c.pressure_MPa = 10;
        c.bore_mm = 40;
        c.limit_N = 5000;
        return sw_cylinder(&c, &err).warnings;
    case SW_WARN_PAD_CREEPS:
        p.force_N = p.pad_area_mm2 = 100;
        SET(p.pad_material, "nylon-66");
        SET(p.part_material, "6061-T6");
        return sw_pad(&p, &err).warnings;
    case SW_WARN_VACUUM_DEEP:
        v.vacuum_MPa = 0.092;
        v.seal_area_mm2 = 100;
        return sw_vacuum(&v, &err).warnings;
    case SW_WARN_GAP_FIRST:
        v.vacuum_MPa = 0.05;
        v.seal_length_mm = v.seal_width_mm = 100;
        v.rim_lift_N = 10;
        return sw_vacuum(&v, &err).warnings;
    default: /* SW_WARN_GRIP_LOST */
        j.chuck_force_N = 20000;
        j.jaw_mass_kg = 2;
        j.jaw_radius_mm = 80;
        j.speed_rpm = 1700;
        return sw_chuck(&j, &err).warnings;
    }
}

static uint64_t provoke_warning(uint64_t bit)
{
    if (bit >= SW_WARN_DEVICE_LIMIT && bit <= SW_WARN_GAP_FIRST)
        return provoke_clamp_warning(bit);
    if ((bit >= SW_WARN_HIGH_OVER_PROOF && bit <= SW_WARN_TRIALS_FAILED) ||
        bit == SW_WARN_STUD_ENDS_WINDOW || bit == SW_WARN_METHOD_READS ||
        bit == SW_WARN_FEW_TRIALS)
        return provoke_spread_warning(bit);
    sw_error err;
    sw_strap_in s = strap_question();
    sw_torque_in t = torque_question();
    sw_tool_in o = tool_question();
    switch (bit) {
    case SW_WARN_HEEL_LOW:
        s.tilt_deg = -1;
        break;
    case SW_WARN_TOE_ON_EDGE:
        s.tilt_deg = 0;
        break;
    case SW_WARN_TOE_SLIDES:
        s.tilt_deg = -3;
        s.mu_toe = 0.05;
        break;
    case SW_WARN_STRAP_WALKS:
        s.tilt_deg = 5;
        s.mu_toe = s.mu_heel = s.mu_heel_high = 0.02;
        break;
    case SW_WARN_STUD_YIELDS:
        s.tilt_deg = 4;
        break;
    case SW_WARN_STUD_STRENGTH_UNKNOWN:
        SET(s.thread, "M42"); /* 8.8 ends at M39 */
        break;
    case SW_WARN_SEAT_ANGLE:
        s.seat = SW_SEAT_SPHERICAL;
        s.tilt_deg = 4;
        break;
    case SW_WARN_SEAT_TABLE:
        SET(s.thread, "1/2-13");
        s.seat = SW_SEAT_SPHERICAL;
        break;
    case SW_WARN_TILT_LARGE:
        s.tilt_deg = 5.5;
        break;
    case SW_WARN_ON_RIM:
        s.preload_N = 1000;
        s.tilt_deg = 3;
        break;
    case SW_WARN_NUT_TRAVEL:
        s.slot_clearance_mm = 0.1;
        break;
    case SW_WARN_STRAP_YIELDS:
        s.strap_thickness_mm = 6;
        break;
    case SW_WARN_STUD_NEAR_HEEL:
        s.stud_to_toe_mm = 61;
        break;
    case SW_WARN_NO_NOMINAL:
        s.nut = SW_NUT_STILL;
        break;
    case SW_WARN_MEASURES:
        s.part_height_mm = 40;
        s.stud_length_mm = 50;
        break;
    case SW_WARN_BETWEEN_EDGES:
        s.nose = SW_NOSE_FLAT;
        s.toe_land_mm = 10;
        s.tilt_deg = 0.05;
        break;
    case SW_WARN_PLAY_COVERS_TILT:
        s.tilt_deg = 0.5;
        s.thread_play_deg = 0.6;
        break;
    case SW_WARN_HEIGHTS_ASSUMED:
        s.part_height_mm = SW_UNSET;
        break;
    case SW_WARN_OVER_PROOF:
        t.preload_N = 40000; /* 0.75 * 580 MPa * 84.3 mm2 = 36.7 kN */
        return sw_torque(&t, &err).warnings;
    case SW_WARN_OVER_YIELD:
        t.preload_N = 60000; /* 640 MPa * 84.3 mm2 = 54 kN */
        return sw_torque(&t, &err).warnings;
    case SW_WARN_SELF_LOOSENING:
        t.mu_thread = t.mu_seat = 0;
        return sw_torque(&t, &err).warnings;
    case SW_WARN_TABLE_FROM_MEMORY:
        SET(t.thread, "M14");
        return sw_torque(&t, &err).warnings;
    case SW_WARN_SEAT_TILT_ASSUMED:
        s.seat = SW_SEAT_SPHERICAL;
        s.tilt_deg = 1;
        break;
    case SW_WARN_UNUSED_INPUT:
        s.nose = SW_NOSE_BALL;
        s.nose_radius_mm = 10;
        break;
    case SW_WARN_FRICTION_HIGH:
        return job_warnings();
    case SW_WARN_PAIRS_ALIKE: /* one after the other, the same K */
        return calibration(1, 1, 0, "M12 alike");
    case SW_WARN_FEW_PAIRS:
        return calibration(9, 1, 0, "M12");
    case SW_WARN_OUTLIER:
        return calibration(12, 1.5, 0, "M12");
    case SW_WARN_FACTOR_VARIES:
        return calibration(12, 1, 0.1, "M12");
    case SW_WARN_FACTOR_IMPLAUSIBLE:
        return calibration(12, 10, 0, "M12");
    case SW_WARN_THREAD_DIFFERS:
        return calibration(12, 1, 0, "M16");
    case SW_WARN_LUBRICATION_CONFLICT:
        SET(t.lubrication, "zinc");
        return sw_torque(&t, &err).warnings;
    case SW_WARN_TOOL_ROUNDING: /* half a step, 2 %, against 4 % */
        o.torque_Nm = 12.25;
        return sw_tool(&o, &err).warnings;
    case SW_WARN_TOOL_ASSUMED:
        return sw_tool(&o, &err).warnings;
    case SW_WARN_STRIPS_FIRST:
    case SW_WARN_ENGAGED_SHORT:
        return strip_warnings();
    case SW_WARN_STRENGTH_UNKNOWN:
        SET(s.thread, "M42");
        return weakest_warnings(&s, 5);
    case SW_WARN_CHIP_THIN:
    case SW_WARN_CUT_GROUP:
    case SW_WARN_CUT_EDITIONS:
        return cut_warnings();
    case SW_WARN_GIVES:
        s.preload_N = 60000; /* 54 kN is the yield */
        return weakest_warnings(&s, 0);
    default:
        return 0;
    }
    const sw_strap_out out = sw_strap(&s, &err);
    check_no_error("strap", out.status, &err);
    return out.warnings;
}

START_TEST(every_warning)
{
    int bit = 0;
    for (; sw_warning_name(bit); bit++) {
        const uint64_t mask = (uint64_t)1 << bit;
        must(provoke_warning(mask) & mask,
             "%s (bit %d) is not provoked: add it to "
             "provoke_warning()",
             sw_warning_name(bit), bit);
    }
    ck_assert_int_ge(bit, 22);
    ck_assert_int_le(bit, 64); /* of the field `warnings` */
}
END_TEST

/* A plain level strap with everything given has none but the edge of its flat
 * nose; with a ball nose it has none at all. */
START_TEST(no_warning)
{
    sw_error err;
    sw_strap_in s = strap_question();
    s.tilt_deg = 0;
    ck_assert_uint_eq(sw_strap(&s, &err).warnings, SW_WARN_TOE_ON_EDGE);
    s.nose = SW_NOSE_BALL;
    ck_assert_uint_eq(sw_strap(&s, &err).warnings, 0);
    const sw_torque_in t = torque_question();
    ck_assert_uint_eq(sw_torque(&t, &err).warnings, 0);
    ck_assert_uint_eq(calibration(12, 1, 0, "M12"), 0);
}
END_TEST

START_TEST(warning_texts)
{
    int bit = 0;
    for (; sw_warning_name(bit); bit++) {
        const char *name = sw_warning_name(bit), *text = sw_warning_text(bit);
        ck_assert_ptr_nonnull(text);
        ck_assert_uint_ge(strlen(text), 20);
        ck_assert_ptr_null(strchr(text, '\n'));
        ck_assert_uint_eq(strspn(name, "abcdefghijklmnopqrstuvwxyz_"),
                          strlen(name));
        for (int other = 0; other < bit; other++) {
            ck_assert_str_ne(sw_warning_name(other), name);
            ck_assert_str_ne(sw_warning_text(other), text);
        }
    }
    ck_assert_str_eq(sw_warning_name(0), "heel_low");
    ck_assert_str_eq(sw_warning_name(3), "strap_walks");
    ck_assert_uint_eq(SW_WARN_STRAP_WALKS, 1 << 3);
    ck_assert_ptr_null(sw_warning_text(bit));
    ck_assert_ptr_null(sw_warning_name(-1));
    ck_assert_ptr_null(sw_warning_text(-1));
    ck_assert_ptr_null(sw_warning_name(1000));
}
END_TEST

START_TEST(versions)
{
    int major, minor, patch;
    char rest;
    ck_assert_int_eq(
        sscanf(sw_version(), "%d.%d.%d%c", &major, &minor, &patch, &rest), 3);
    ck_assert_str_eq(sw_version(), PACKAGE_VERSION_TEXT);
    ck_assert_uint_gt(strlen(sw_tables_version()), 0);
}
END_TEST

/* Whatever is thrown in, the message keeps to one line and to its room. */
START_TEST(strange_text)
{
    static const char *const text[] = {
        "M12\nM13",
        "\x1b[31mM12",
        "\xff\xfe",
        "\xc3\xa4\xc3\xb6",
        "M12                                                           x",
        "%s%n%d",
        "\"",
        "\\",
        "M12'; --",
        "\x7f"};
    for (size_t i = 0; i < sizeof text / sizeof text[0]; i++) {
        sw_error err;
        int status = sw_thread(text[i], &err).status;
        check_error(text[i], &err, status);
        status = sw_grade(text[i], 12, &err).status;
        check_error(text[i], &err, status);
        status = sw_lubrication(text[i], &err).status;
        check_error(text[i], &err, status);
        status = sw_number(text[i], "x", &err).status;
        check_error(text[i], &err, status);
        status = sw_quantity(text[i], SW_KIND_LENGTH, "x", &err).status;
        check_error(text[i], &err, status);
        status = sw_unit_factor(text[i], SW_KIND_FORCE, "x", &err).status;
        check_error(text[i], &err, status);
    }
}
END_TEST

int main(void)
{
    return RUN_TESTS("status", every_code, code_names, every_warning,
                     no_warning, warning_texts, versions, strange_text);
}
