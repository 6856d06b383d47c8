/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Job: what is read is what was written. Clamps and cuts are compared with the
 * rooms they come from, put by hand; loads along a path with the cutter fed
 * that way; the weight, units and spellings with arithmetic; the whole chain
 * with the closed answers of two reference fixtures.
 */
#include "jobs.h"

#include <strapwise-fixture.h>

#define PI 3.14159265358979323846

START_TEST(part)
{
    sw_job *j = read_job(JOB);
    const sw_job_out a = sw_job_about(j, NULL);
    check_numbers("about", &a, SW_STRUCT_JOB_OUT, a.status);
    ck_assert_str_eq(a.material, "6061-T6");
    ck_assert(a.length_mm == 200 && a.width_mm == 150 && a.thickness_mm == 10);
    ck_assert(a.supports == 3 && a.clamps == 1 && a.stops == 0 &&
              a.operations == 1 && a.corners == 4);
    const double rho = sw_material("6061-T6", NULL).density_kg_per_m3;
    near(a.weight_N, rho * 0.2 * 0.15 * 0.01 * 9.80665, 0, 1e-12);
    ck_assert(a.centre_x_mm == 100 && a.centre_y_mm == 75 &&
              a.centre_z_mm == 5);
    const sw_job_corner_out c = sw_job_corner(j, 2, NULL);
    ck_assert(c.x_mm == 200 && c.y_mm == 150 && c.edge_mm == 200);
    sw_job_free(j);
}
END_TEST

static double weight_of(const char *lines)
{
    char text[2000];
    snprintf(text, sizeof text,
             "strapwise: 1\npart:\n  size: [200 mm, 150 mm]\n  thickness: 10 "
             "mm\n%s" SUPPORTS CLAMPS OPERATIONS,
             lines);
    sw_job *j = read_job(text);
    const double W = sw_job_about(j, NULL).weight_N;
    sw_job_free(j);
    return W;
}

START_TEST(weight)
{
    near(weight_of("  weight: 2 lbf\n"), 2 * 4.4482216152605, 0, 1e-12);
    near(weight_of("  mass: 2 kg\n"), 2 * 9.80665, 0, 1e-12);
    near(weight_of("  density: 7850 kg/m3\n"), 7850 * 3e-4 * 9.80665, 0, 1e-12);
    near(weight_of("  material: 6061-T6\n  density: 7850 kg/m3\n"),
         7850 * 3e-4 * 9.80665, 0, 1e-12);
}
END_TEST

#define STRAP_LINES                                                            \
    "clamps:\n"                                                                \
    "  - kind: strap\n"                                                        \
    "    place: [10 mm, 75 mm]\n"                                              \
    "    toward stud: -x\n"                                                    \
    "    thread: M10\n"                                                        \
    "    lubrication: oiled\n"                                                 \
    "    torque: 16 N.m\n"                                                     \
    "    stud to toe: 30 mm\n"                                                 \
    "    stud to heel: 60 mm\n"                                                \
    "    heel height: 11 mm\n"

static sw_job_clamp_out first_clamp(const char *text)
{
    sw_job *j = read_job(text);
    const sw_job_clamp_out c = sw_job_clamp(j, 0, NULL);
    check_numbers("clamp", &c, SW_STRUCT_JOB_CLAMP_OUT, c.status);
    sw_job_free(j);
    return c;
}

/* The strap of those lines, put to its own room. */
static sw_strap_in strap_by_hand(void)
{
    sw_strap_in in;
    sw_strap_defaults(&in);
    SET(in.thread, "M10");
    SET(in.lubrication, "oiled");
    in.stud_to_toe_mm = 30;
    in.stud_to_heel_mm = 60;
    in.part_height_mm = 10;
    in.heel_height_mm = 11;
    return in;
}

START_TEST(strap)
{
    const sw_job_clamp_out c =
        first_clamp("strapwise: 1\n" PART SUPPORTS STRAP_LINES OPERATIONS);
    sw_torque_in torque;
    sw_spread_in spread;
    sw_torque_defaults(&torque);
    sw_spread_defaults(&spread);
    SET(torque.thread, "M10");
    SET(torque.lubrication, "oiled");
    torque.torque_Nm = 16;
    const sw_spread_out F = sw_spread(&torque, &spread, NULL);
    near(c.preload_low_N, F.preload_low_N, 0, 1e-9);
    near(c.preload_high_N, F.preload_high_N, 0, 1e-9);
    near(c.scatter_pct, F.scatter_pct, 0, 1e-9);
    sw_strap_in in = strap_by_hand();
    in.preload_N = F.preload_low_N;
    const sw_strap_out low = sw_strap(&in, NULL);
    in.preload_N = F.preload_high_N;
    const sw_strap_out high = sw_strap(&in, NULL);
    near(c.force_low_N, low.toe_force_low_N, 0, 1e-9);
    near(c.force_high_N, high.toe_force_high_N, 0, 1e-9);
    near(c.pull_low_N, low.side_pull_low_N, 0, 1e-9);
    near(c.pull_high_N, low.side_pull_high_N, 0, 1e-9);
    near(c.drag_high_N, low.drag_N, 0, 1e-9);
    ck_assert(c.drag_low_N == 0);
    in.preload_N = SW_UNSET;
    in.torque_Nm = 16;
    near(c.force_N, sw_strap(&in, NULL).toe_force_N, 0, 1e-9);
    ck_assert(c.force_low_N < c.force_N && c.force_N < c.force_high_N);
    ck_assert(c.toward_deg == 180 && c.stud_mm == 30 && c.z_mm == 10);
    ck_assert(c.torque_Nm == 16 && c.setting == SW_UNSET && !c.tool[0]);
}
END_TEST

/* What the fixture is given of it. */
START_TEST(strap_in_fixture)
{
    sw_clamp_in in;
    sw_job *j = read_job("strapwise: 1\n" PART SUPPORTS STRAP_LINES OPERATIONS);
    const sw_job_clamp_out c = sw_job_clamp(j, 0, NULL);
    sw_fixture *f = sw_job_fixture(j, 0, NULL);
    ck_assert_int_eq(sw_fixture_clamp(f, 0, &in, NULL), 0);
    ck_assert(in.force_N == c.force_low_N && in.pull_low_N == c.pull_low_N &&
              in.pull_high_N == c.pull_high_N && in.drag_low_N == 0 &&
              in.drag_high_N == c.drag_high_N && in.toward_deg == 180 &&
              in.x_mm == 10 && in.y_mm == 75 && in.z_mm == 10);
    ck_assert_str_eq(in.name, "C1");
    sw_fixture_free(f);
    sw_job_free(j);
}
END_TEST

START_TEST(tool)
{
    const sw_job_clamp_out c = first_clamp(
        "strapwise: 1\n" PART SUPPORTS
        "tools:\n  - {name: red, range high: 25 N.m, resolution: 0.5 N.m, "
        "torque unit: ft-lbf}\n"
        "clamps:\n  - {kind: strap, place: [10 mm, 75 mm], toward stud: 180 "
        "deg, thread: M10, torque: 16.2 N.m, tool: red, stud to toe: 30 mm, "
        "stud to heel: 60 mm, heel height: 11 mm}\n" OPERATIONS);
    ck_assert(c.torque_Nm == 16); /* 16.2 is no setting of half a N.m */
    ck_assert_str_eq(c.tool, "red");
    near(c.setting, 16 / 1.3558179483314004, 0, 1e-12); /* ft-lbf, NIST */
    ck_assert_int_eq(c.torque_unit, SW_TORQUE_FTLBF);
}
END_TEST

START_TEST(other_clamps)
{
    sw_cylinder_in cylinder;
    sw_cylinder_defaults(&cylinder);
    cylinder.pressure_MPa = 7;
    cylinder.low_pressure_MPa = 6;
    cylinder.bore_mm = 25;
    const sw_cylinder_out want = sw_cylinder(&cylinder, NULL);
    sw_job_clamp_out c = first_clamp(
        "strapwise: 1\n" PART SUPPORTS
        "clamps:\n  - {kind: cylinder, place: [100 mm, 50 mm], pressure: 70 "
        "bar, low pressure: 60 bar, bore: 25 mm}\n" OPERATIONS);
    /* 0.85 of an efficiency that is 0.85 to 0.98, which nobody gave */
    near(c.force_low_N, 6 * PI / 4 * 25 * 25 * 0.85, 0, 1e-12);
    near(c.force_N, want.force_N, 0, 1e-12);
    const sw_job_clamp_out given = first_clamp(
        "strapwise: 1\n" PART SUPPORTS
        "clamps:\n  - {kind: cylinder, place: [100 mm, 50 mm], pressure: 70 "
        "bar, bore: 25 mm, efficiency: 0.9}\n" OPERATIONS);
    near(given.force_low_N, 7 * PI / 4 * 25 * 25 * 0.9, 0, 1e-12);
    ck_assert(c.torque_Nm == SW_UNSET && c.pull_low_N == 0);
    sw_screw_in screw;
    sw_screw_defaults(&screw);
    screw.screw = SW_SCREW_THROUGH;
    SET(screw.thread, "M6");
    screw.torque_Nm = 6;
    const sw_screw_out s = sw_screw(&screw, NULL);
    c = first_clamp("strapwise: 1\n" PART SUPPORTS
                    "clamps:\n  - {kind: through-screw, place: [100 mm, 50 "
                    "mm], thread: M6, torque: 6 N.m}\n" OPERATIONS);
    near(c.force_low_N, s.force_low_N, 0, 1e-12);
    near(c.force_high_N, s.force_high_N, 0, 1e-12);
    ck_assert_int_eq(c.clamp_kind, SW_CLAMP_THROUGH);
    c = first_clamp("strapwise: 1\n" PART SUPPORTS
                    "clamps:\n  - {kind: vacuum, place: [100 mm, 50 mm], "
                    "vacuum: 0.08 MPa, seal length: 150 mm, seal width: 100 "
                    "mm}\n" OPERATIONS);
    near(c.force_low_N, 1200, 0, 1e-9); /* 0.08 MPa on 150 cm2 */
    c = first_clamp("strapwise: 1\n" PART SUPPORTS
                    "clamps:\n  - {kind: swing, place: [100 mm, 50 mm], arm: "
                    "80.5 mm, rated force: 4450 N, rated arm: 49.5 "
                    "mm}\n" OPERATIONS);
    near(c.force_low_N, 4450 * 49.5 / 80.5, 0, 1e-9); /* the arm's moment */
}
END_TEST

/* 6 kN at both ends of 200 mm; pads 50 mm and 150 mm from the first stud. */
START_TEST(bar)
{
    sw_clamp_in c;
    sw_job *j = read_job(
        "strapwise: 1\n" PART SUPPORTS
        "clamps:\n  - {kind: force, place: [100 mm, 60 mm], force: 1 kN}\n"
        "  - {name: beam, kind: bar, place: [50 mm, 60 mm], second place: [130 "
        "mm, 60 mm], stud1: 6 kN, stud2: 4 kN, span: 200 mm, pad1: 50 mm, "
        "pad2: 130 mm, bar width: 40 mm, bar thickness: 20 mm}\n"
        "operations:\n  - cut: {kind: force, force x: 1 N}\n"
        "    clamps: [beam]\n    path: {points: [[100 mm, 60 mm]]}\n");
    ck_assert(sw_job_about(j, NULL).clamps == 3);
    ck_assert(sw_job_operation(j, 0, NULL).clamps == 2);
    sw_fixture *f = sw_job_fixture(j, 0, NULL);
    ck_assert_int_eq(sw_fixture_count(f, SW_PART_CLAMP), 2);
    ck_assert_int_eq(sw_fixture_clamp(f, 0, &c, NULL), 0);
    /* moments about the second pad: 6 * 130 = N1 * 80 + 4 * -70 */
    near(c.force_N, (6000 * 130 - 4000 * 70.0) / 80, 0, 1e-9);
    ck_assert(c.x_mm == 50);
    ck_assert_int_eq(sw_fixture_clamp(f, 1, &c, NULL), 0);
    near(c.force_N, 10000 - (6000 * 130 - 4000 * 70.0) / 80, 0, 1e-9);
    ck_assert(c.x_mm == 130);
    ck_assert_str_eq(c.name, "beam second");
    sw_fixture_free(f);
    sw_job_free(j);
}
END_TEST

START_TEST(pad)
{
    const sw_job_clamp_out c = first_clamp(
        "strapwise: 1\n" PART SUPPORTS
        "clamps:\n  - {kind: force, place: [100 mm, 60 mm], force: 4 kN, pad: "
        "{pad diameter: 16 mm, pad material: C11000}}\n" OPERATIONS);
    near(c.pad_MPa, 4000 / (PI * 64), 0, 1e-9);
    ck_assert_int_ne(c.mark, 0);
}
END_TEST

/* ---- clamps that must not be used ---- */

#define STRAP_AT(heel, torque)                                                 \
    "strapwise: 1\n" PART SUPPORTS                                             \
    "clamps:\n  - {kind: strap, place: [10 mm, 75 mm], toward stud: -x, "      \
    "thread: M10, lubrication: oiled, torque: " torque ", stud to toe: 30 "    \
    "mm, stud to heel: 60 mm, heel height: " heel ", nose: round, seat: "      \
    "spherical, restraint: held}\n" OPERATIONS

START_TEST(faulty_straps)
{
    ck_assert_int_eq(first_clamp(STRAP_AT("11 mm", "16 N.m")).clamp_fault,
                     SW_CLAMP_FAULT_NONE);
    const sw_job_clamp_out walks =
        first_clamp(STRAP_AT("11 mm, part height: 31 mm", "16 N.m"));
    ck_assert(walks.warnings & SW_WARN_STRAP_WALKS);
    ck_assert_int_eq(walks.clamp_fault, SW_CLAMP_FAULT_WALKS);
    const sw_job_clamp_out c = first_clamp(STRAP_AT("11 mm", "100 N.m"));
    ck_assert_int_eq(c.clamp_fault, SW_CLAMP_FAULT_YIELDS);
    ck_assert(c.strength_use > 1 && c.yield_N < c.preload_N);
    /* the strap's own room, at the tension found: stress is yield */
    sw_strap_in in = strap_by_hand();
    in.preload_N = c.yield_N;
    in.nose = SW_NOSE_ROUND;
    in.seat = SW_SEAT_SPHERICAL;
    in.restraint = SW_RESTRAINT_HELD;
    const sw_strap_out s = sw_strap(&in, NULL);
    ck_assert(s.stud_yield_use <= 1 + 1e-9);
    near(s.torque_Nm, c.yield_torque_Nm, 0, 1e-9);
    /* class 8.8: proof 580 MPa on 58 mm2, ISO 898-1 */
    near(fmax(s.stud_yield_use, c.yield_N / (580 * 57.99)), 1, 0, 1e-3);
}
END_TEST

static sw_job_clamp_out only_clamp(const char *lines)
{
    char text[2000];
    snprintf(text, sizeof text,
             "strapwise: 1\n" PART SUPPORTS "clamps:\n  - {%s}\n" OPERATIONS,
             lines);
    return first_clamp(text);
}

START_TEST(faulty_screws)
{
    sw_job_clamp_out c = only_clamp("kind: through-screw, place: [100 mm, 50 "
                                    "mm], thread: M6, torque: 60 N.m");
    ck_assert_int_eq(c.clamp_fault, SW_CLAMP_FAULT_YIELDS);
    near(c.strength_use * c.yield_torque_Nm, 60, 0, 1e-9);
    near(c.strength_use * c.yield_N, c.force_N, 0, 1e-9);
    /* no M6 of 8.8 holds more than proof load, 11.6 kN: ISO 898-1 */
    ck_assert(c.yield_N < 11600 * 1.005 && c.yield_N > 8000);
    c = only_clamp("kind: through-screw, place: [100 mm, 50 mm], thread: M6, "
                   "torque: 6 N.m");
    ck_assert_int_eq(c.clamp_fault, SW_CLAMP_FAULT_NONE);
    c = only_clamp("kind: through-screw, place: [100 mm, 50 mm], thread: M6, "
                   "torque: 14 N.m");
    ck_assert_int_eq(c.clamp_fault, SW_CLAMP_FAULT_YIELDS);
    c = only_clamp("kind: through-screw, place: [100 mm, 50 mm], thread: M6, "
                   "torque: 14 N.m, grade: \"12.9\"");
    ck_assert_int_eq(c.clamp_fault, SW_CLAMP_FAULT_NONE);
}
END_TEST

#define SWING                                                                  \
    "kind: swing, place: [20 mm, 50 mm], arm: 65 mm, bore: 32 mm, rod: 16 "    \
    "mm, rated force: 3 kN, rated arm: 50 mm, rated pressure: 70 bar, "

START_TEST(faulty_devices)
{
    sw_job_clamp_out c = only_clamp(SWING "pressure: 200 bar");
    ck_assert_int_eq(c.clamp_fault, SW_CLAMP_FAULT_DEVICE);
    near(c.limit_pressure_MPa, 7 * 50 / 65.0, 0, 1e-12); /* the moment's */
    near(c.limit_use, 20 / (7 * 50 / 65.0), 0, 1e-12);
    ck_assert(c.force_low_N > 0 && c.force_low_N <= 3000 * 50 / 65.0);
    ck_assert(c.force_high_N > 7000); /* what acts all the same */
    c = only_clamp(SWING "pressure: 50 bar");
    ck_assert_int_eq(c.clamp_fault, SW_CLAMP_FAULT_NONE);
    ck_assert(c.limit_use < 1);
    /* a short arm lowers no rated pressure */
    c = only_clamp("kind: swing, place: [20 mm, 50 mm], arm: 25 mm, rated "
                   "force: 3 kN, rated arm: 50 mm, rated pressure: 70 bar, "
                   "pressure: 100 bar");
    ck_assert_int_eq(c.clamp_fault, SW_CLAMP_FAULT_DEVICE);
    near(c.limit_pressure_MPa, 7, 0, 1e-12);
    c = only_clamp("kind: cylinder, place: [20 mm, 50 mm], bore: 40 mm, "
                   "pressure: 70 bar, limit: 7 kN");
    ck_assert_int_eq(c.clamp_fault, SW_CLAMP_FAULT_DEVICE);
    ck_assert(c.force_low_N <= 7000 && c.force_high_N > 7000);
}
END_TEST

/* Whether one remark has both texts. */
static int remarked(const char *lines, const char *who, const char *what)
{
    char text[2000];
    int found = 0;
    snprintf(text, sizeof text,
             "strapwise: 1\n" PART SUPPORTS "clamps:\n  - {%s}\n" OPERATIONS,
             lines);
    sw_job *j = read_job(text);
    for (int i = 0; sw_job_remark(j, i); i++) {
        const char *s = sw_job_remark(j, i);
        found += strncmp(s, who, strlen(who)) == 0 && strstr(s, what);
    }
    sw_job_free(j);
    return found;
}

#define STRAP_REST                                                             \
    "thread: M10, torque: 16 N.m, stud to toe: 30 mm, stud to heel: 60 mm, "   \
    "heel height: 11 mm"

/* Swing clamp, pull area pi/4 (32^2 - 16^2), arm 40 mm: at the bad end of
 * efficiency, guide friction and guide (0.7 bores of 32 mm). */
START_TEST(swing_low_end)
{
    const double pull = 3 * PI / 4 * (32 * 32 - 16 * 16);
    const sw_job_clamp_out c =
        only_clamp("kind: swing, place: [20 mm, 50 mm], arm: 40 mm, bore: 32 "
                   "mm, rod: 16 mm, pressure: 30 bar");
    near(c.force_low_N, pull * 0.85 / (1 + 2 * 0.15 * 40 / (0.7 * 32)), 0,
         1e-12);
    near(c.force_N, pull * 0.9 / (1 + 2 * 0.1 * 40 / 32.0), 0, 1e-12);
    ck_assert(c.force_high_N == c.force_N);
}
END_TEST

static sw_assumption default_named(const sw_job *j, const char *name);

/* A name of the trade finds the row of the same metal, and the job says it. */
START_TEST(other_names)
{
    static const struct {
        const char *name, *row;
    } one[] = {{"4140", "42CrMo4"},
               {"6061", "6061-T6"},
               {"1045", "C45"},
               {"6061-T651", "6061-T6"},
               {"7075-t651", "7075-T6"}};
    for (size_t i = 0; i < sizeof one / sizeof one[0]; i++) {
        char text[2000];
        snprintf(text, sizeof text,
                 "strapwise: 1\npart: {material: \"%s\", size: [200 mm, 150 "
                 "mm], thickness: 10 mm}\n" SUPPORTS CLAMPS
                 "operations:\n  - cut: {kind: drill, diameter: 5 mm, feed: "
                 "0.1 mm}\n    path: {points: [[100 mm, 60 mm]]}\n",
                 one[i].name);
        sw_job *j = read_job(text);
        ck_assert_str_eq(sw_job_about(j, NULL).material, one[i].row);
        const sw_assumption a = default_named(j, "part.material");
        ck_assert_str_eq(a.word, one[i].row);
        ck_assert_ptr_nonnull(strstr(a.source, one[i].name));
        sw_job_free(j);
    }
    sw_job *j = read_job(JOB);
    ck_assert(default_named(j, "part.material").status);
    sw_job_free(j);
}
END_TEST

START_TEST(doubtful_places)
{
    /* 60 mm over (100, 60) to the nearest support, 90 mm */
    ck_assert(remarked("kind: force, place: [100 mm, 60 mm], force: 3 kN",
                       "C1: ", "no support within 90 mm (3.54 in)"));
    ck_assert(!remarked("kind: force, place: [100 mm, 130 mm], force: 3 kN",
                        "C1: ", "no support"));
    ck_assert(!remarked("kind: force, place: [100 mm, 60 mm], force: 3 kN",
                        "C1: ", "outside of the supports"));
    ck_assert(remarked("name: far, kind: force, place: [10 mm, 140 mm], force: "
                       "3 kN",
                       "far: ", "outside of the supports"));
    ck_assert(remarked("kind: strap, place: [10 mm, 75 mm], toward stud: "
                       "+x, " STRAP_REST,
                       "C1: ", "its stud stands within"));
    ck_assert(!remarked("kind: strap, place: [10 mm, 75 mm], toward stud: "
                        "-x, " STRAP_REST,
                        "C1: ", "its stud stands within"));
    near(only_clamp("kind: force, place: [30 mm, 40 mm], force: 1 N")
             .support_gap_mm,
         50, 0, 1e-12);
}
END_TEST

static int remarks_of(const char *stop, const char *path, const char *what)
{
    char text[2000];
    int found = 0;
    snprintf(text, sizeof text,
             "strapwise: 1\n" PART SUPPORTS CLAMPS "stops:\n  - {%s}\n"
             "operations:\n  - cut: {kind: force, force x: 1 N}\n    path: {%s}"
             "\n",
             stop, path);
    sw_job *j = read_job(text);
    for (int i = 0; sw_job_remark(j, i); i++)
        found += strstr(sw_job_remark(j, i), what) != NULL;
    sw_job_free(j);
    return found;
}

START_TEST(doubtful_stops_and_paths)
{
    const char *path = "points: [[100 mm, 60 mm]]";
    ck_assert(remarks_of("place: [90 mm, 60 mm], push: +x", path,
                         "A: the stop stands within"));
    ck_assert(!remarks_of("place: [0 mm, 60 mm], push: +x", path, "the stop"));
    ck_assert(!remarks_of("place: [-1 mm, 60 mm], push: +x", path, "the stop"));
    ck_assert(
        !remarks_of("place: [60 mm, 150 mm], push: -y", path, "the stop"));
    const char *stop = "place: [0 mm, 60 mm], push: +x";
    ck_assert(!remarks_of(stop, path, "its path"));
    ck_assert(remarks_of(stop, "height: 11 mm, points: [[100 mm, 60 mm]]",
                         "its path runs higher"));
    ck_assert(!remarks_of(stop, path, "beside the part"));
    ck_assert(remarks_of(stop, "points: [[100 mm, 160 mm]]",
                         "its force acts beside"));
}
END_TEST

/* A seal lies along either side of the part. */
START_TEST(seals)
{
    ck_assert(only_clamp("kind: vacuum, place: [100 mm, 75 mm], vacuum: 0.08 "
                         "MPa, seal length: 150 mm, seal width: 200 mm")
                  .force_low_N == 2400);
    refuse("strapwise: 1\n" PART SUPPORTS
           "clamps:\n  - {kind: vacuum, place: [100 mm, 70 mm], vacuum: 0.08 "
           "MPa, seal length: 150 mm, seal width: 190 mm}\n" OPERATIONS,
           SW_ERR_CONFLICT,
           "12:27: C1 sucks air: its seal, in the middle of its place, reaches "
           "past the part's outline");
    refuse("strapwise: 1\n" PART SUPPORTS
           "clamps:\n  - {kind: vacuum, place: [100 mm, 75 mm], vacuum: 0.08 "
           "MPa, seal area: 30001 mm2}\n" OPERATIONS,
           SW_ERR_CONFLICT,
           "12:5: C1 sucks air: the area within its seal is larger than the "
           "part");
}
END_TEST

/* ---- cuts and paths ---- */

#define MILL_LINES                                                             \
    "mode: side, way: climb, diameter: 12 mm, teeth: 3, feed per tooth: 0.08 " \
    "mm, depth: 10 mm, width: 3 mm"

static sw_milling_in mill_by_hand(double feed_deg)
{
    sw_milling_in in;
    sw_milling_defaults(&in);
    SET(in.material, "6061-T6");
    in.mode = SW_MILL_SIDE;
    in.way = SW_CUT_CLIMB;
    in.diameter_mm = 12;
    in.teeth = 3;
    in.feed_per_tooth_mm = 0.08;
    in.depth_mm = 10;
    in.width_mm = 3;
    in.feed_direction_deg = feed_deg;
    return in;
}

static int has_load(const sw_fixture *f, int first, int count, double x,
                    double y, double z, double mx, double my, double mz)
{
    for (int i = first; i < first + count; i++) {
        sw_load_in l;
        if (sw_fixture_load(f, i, &l, NULL))
            return 0;
        if (near_holds(l.force_x_N, x, 1e-7, 0) &&
            near_holds(l.force_y_N, y, 1e-7, 0) &&
            near_holds(l.force_z_N, z, 1e-7, 0) &&
            near_holds(l.moment_x_Nm, mx, 1e-9, 0) &&
            near_holds(l.moment_y_Nm, my, 1e-9, 0) &&
            near_holds(l.moment_z_Nm, mz, 1e-9, 0))
            return 1;
    }
    return 0;
}

/* The loads at every point are those of the cutter fed that way. */
START_TEST(mill)
{
    sw_job *j = read_job(
        "strapwise: 1\n" PART SUPPORTS CLAMPS
        "operations:\n  - cut: {kind: mill, " MILL_LINES "}\n"
        "    path: {step: 30 mm, lines: [[[20 mm, 20 mm], [100 mm, 80 mm]], "
        "[[100 mm, 80 mm], [100 mm, 20 mm, 5 mm]]]}\n");
    const sw_job_operation_out o = sw_job_operation(j, 0, NULL);
    check_numbers("operation", &o, SW_STRUCT_JOB_OPERATION_OUT, o.status);
    ck_assert(o.points == 5 + 3); /* 100 mm and 60 mm in steps of 30 */
    sw_fixture *f = sw_job_fixture(j, 0, NULL);
    ck_assert_int_eq(sw_fixture_count(f, SW_PART_LOAD), (int)o.loads);
    const int n = (int)o.samples;
    for (int point = 0; point < (int)o.points; point++) {
        sw_load_in l;
        const double deg =
            point < 5 ? atan2(60, 80) * 180 / PI : -90; /* as it is fed */
        const sw_milling_in in = mill_by_hand(deg);
        const sw_milling_out m = sw_milling(&in, NULL);
        ck_assert(has_load(f, point * n, n, m.mean_x_N, m.mean_y_N, m.mean_z_N,
                           m.mean_mx_Nm, m.mean_my_Nm, m.mean_mz_Nm));
        ck_assert(has_load(f, point * n, n, m.peak_x_N, m.peak_y_N, m.peak_z_N,
                           m.peak_mx_Nm, m.peak_my_Nm, m.peak_mz_Nm));
        for (int i = 0; i < 16; i++) {
            const sw_cut_load_out c = sw_milling_load_at(&in, i, 16, NULL);
            ck_assert(has_load(f, point * n, n, c.x_N, c.y_N, c.z_N, c.mx_Nm,
                               c.my_Nm, c.mz_Nm));
        }
        const double t = point < 5 ? point / 4.0 : (point - 5) / 2.0;
        ck_assert_int_eq(sw_fixture_load(f, point * n, &l, NULL), 0);
        near(l.x_mm, point < 5 ? 20 + 80 * t : 100, 1e-9, 0);
        near(l.y_mm, point < 5 ? 20 + 60 * t : 80 - 60 * t, 1e-9, 0);
        near(l.z_mm, point < 5 ? 10 : 10 - 5 * t, 1e-9, 0);
    }
    sw_fixture_free(f);
    sw_job_free(j);
}
END_TEST

/* A tool that brakes the part: its moment about the axis is against the turn,
 * whichever way that is, and the same all round. The weight, which goes round
 * in the part's frame, falls out of the mean over its ways. */
START_TEST(turn)
{
    sw_turning_in in;
    sw_turning_defaults(&in);
    SET(in.material, "6061-T6");
    in.depth_mm = 0.3;
    in.feed_mm = 0.1;
    const sw_turning_out t = sw_turning(&in, NULL);
    for (int clockwise = 0; clockwise < 2; clockwise++) {
        char text[2000];
        snprintf(text, sizeof text,
                 "strapwise: 1\n" PART SUPPORTS CLAMPS
                 "operations:\n  - cut: {kind: turn, depth: 0.3 mm, feed: 0.1 "
                 "mm}\n    path: {step: 20 mm, circle: {center: [90 mm, 70 "
                 "mm], diameter: 120 mm, turns: %s}}\n",
                 clockwise ? "clockwise" : "counterclockwise");
        sw_job *j = read_job(text);
        sw_fixture *f = sw_job_fixture(j, 0, NULL);
        const double W = sw_job_about(j, NULL).weight_N;
        const int samples = (int)sw_job_operation(j, 0, NULL).samples;
        const int n = sw_fixture_count(f, SW_PART_LOAD) / samples;
        ck_assert_int_eq(n, 19); /* 377 mm in steps of 20 */
        ck_assert_int_eq(samples, 16);
        for (int i = 0; i < n; i++) {
            double F[3] = {0, 0, 0}, x = 0, y = 0;
            for (int k = 0; k < samples; k++) {
                sw_load_in l;
                const int at = i * samples + k;
                ck_assert_int_eq(sw_fixture_load(f, at, &l, NULL), 0);
                if (k < samples / 2) {
                    F[0] += l.force_x_N * 2 / samples;
                    F[1] += l.force_y_N * 2 / samples;
                    F[2] += l.force_z_N * 2 / samples;
                    continue;
                }
                /* without the cut: the weight, not less, and at its place */
                ck_assert(hypot(l.force_x_N, l.force_y_N) >= W &&
                          hypot(l.force_x_N, l.force_y_N) < 1.1 * W &&
                          l.force_z_N == 0);
                near(l.moment_z_Nm,
                     ((100 - l.x_mm) * l.force_y_N -
                      (75 - l.y_mm) * l.force_x_N) /
                         1000,
                     1e-9, 1e-9);
                near(l.moment_x_Nm, 5e-3 * l.force_y_N, 1e-9, 1e-9);
                near(l.moment_y_Nm, -5e-3 * l.force_x_N, 1e-9, 1e-9);
                x = l.x_mm - 90;
                y = l.y_mm - 70;
            }
            near(hypot(x, y), 60, 0, 1e-12);
            near((x * F[1] - y * F[0]) / 60, clockwise ? -t.y_N : t.y_N, 0,
                 1e-9);
            near((x * F[0] + y * F[1]) / 60, t.x_N, 1e-9, 1e-9);
            near(F[2], t.z_N, 0, 1e-12);
        }
        ck_assert_ptr_nonnull(strstr(sw_job_remark(j, 1), "give speed"));
        sw_fixture_free(f);
        sw_job_free(j);
    }
    ck_assert(t.y_N < 0);
}
END_TEST

/* 8 kg, 30 mm along x and 40 mm along y off the axis at 1200 rpm: m r w2 = 8 *
 * 0.05 * (40 pi)2 = 6316.5 N, by hand; by cutting speed the same turns. */
START_TEST(unbalanced)
{
    static const char *const speed[] = {"speed: 1200 rpm",
                                        "cutting speed: 376.991118430775 "
                                        "m/min"}; /* on 100 mm */
    for (int i = 0; i < 2; i++) {
        char text[2000];
        snprintf(text, sizeof text,
                 "strapwise: 1\npart: {size: [200 mm, 150 mm], thickness: 10 "
                 "mm, mass: 8 kg}\n" SUPPORTS CLAMPS
                 "operations:\n  - cut: {kind: turn, material: C45, depth: 0.3 "
                 "mm, feed: 0.1 mm, %s}\n    path: {step: 20 mm, circle: "
                 "{center: [70 mm, 35 mm], diameter: 100 mm}}\n",
                 speed[i]);
        sw_job *j = read_job(text);
        sw_fixture *f = sw_job_fixture(j, 0, NULL);
        for (int point = 0; point < 3; point++) {
            double x = 0, y = 0;
            for (int k = 8; k < 16; k++) {
                sw_load_in l;
                ck_assert_int_eq(sw_fixture_load(f, 16 * point + k, &l, NULL),
                                 0);
                x += l.force_x_N / 8;
                y += l.force_y_N / 8;
            }
            near(x, 6316.5468 * 0.6, 0, 1e-6);
            near(y, 6316.5468 * 0.8, 0, 1e-6);
        }
        ck_assert_ptr_nonnull(strstr(sw_job_remark(j, 1), "50 mm (1.97 in)"));
        ck_assert_ptr_nonnull(strstr(sw_job_remark(j, 1), "6317 N"));
        ck_assert_ptr_null(sw_job_remark(j, 2)); /* the first is the clamp's */
        sw_fixture_free(f);
        sw_job_free(j);
    }
    ck_assert_ptr_null(sw_job_remark(NULL, 0));
}
END_TEST

START_TEST(drill)
{
    sw_drilling_in in;
    sw_drilling_defaults(&in);
    SET(in.material, "C45");
    in.diameter_mm = 8;
    in.feed_mm = 0.1;
    const sw_drilling_out d = sw_drilling(&in, NULL);
    sw_job *j = read_job(
        "strapwise: 1\n" PART SUPPORTS CLAMPS
        "operations:\n  - cut: {kind: drill, material: C45, diameter: 8 mm, "
        "feed: 0.1 mm}\n    path: {points: [[100 mm, 60 mm]]}\n");
    sw_fixture *f = sw_job_fixture(j, 0, NULL);
    ck_assert_int_eq(sw_fixture_count(f, SW_PART_LOAD), 3);
    ck_assert(has_load(f, 0, 3, 0, 0, -d.thrust_high_N, 0, 0, -d.torque_Nm));
    ck_assert(has_load(f, 0, 3, 0, 0, -d.thrust_low_N, 0, 0, -d.torque_Nm));
    ck_assert(has_load(f, 0, 3, 0, 0, d.pull_N, 0, 0, -d.torque_Nm));
    sw_fixture_free(f);
    sw_job_free(j);
}
END_TEST

/* A straight line through a corner is one line; a bent one has its corner
 * twice. */
START_TEST(corners)
{
    static const struct {
        const char *last;
        int points;
    } row[] = {{"[160 mm, 20 mm]", 8 + 7}, {"[90 mm, 90 mm]", 8 + 8}};
    for (int i = 0; i < 2; i++) {
        char text[2000];
        snprintf(text, sizeof text,
                 "strapwise: 1\n" PART SUPPORTS CLAMPS
                 "operations:\n  - cut: {kind: force, force x: 1 N}\n    "
                 "path: {step: 10 mm, lines: [[[20 mm, 20 mm], [90 mm, 20 "
                 "mm], %s]]}\n",
                 row[i].last);
        sw_job *j = read_job(text);
        const int points = (int)sw_job_operation(j, 0, NULL).points;
        ck_assert_int_eq(points, row[i].points);
        sw_job_free(j);
    }
}
END_TEST

/* ---- the same job, written otherwise ---- */

static double margin_of(const char *text)
{
    sw_error err;
    sw_hold_in in;
    sw_job *j = read_job(text);
    sw_fixture *f = sw_job_fixture(j, 0, &err);
    must(f, "%s", err.message);
    ck_assert_int_eq(sw_job_hold_in(j, 0, &in, &err), 0);
    sw_hold *h = sw_hold_new(f, &in, NULL, NULL, &err);
    must(h, "%s", err.message);
    const double margin = sw_hold_total(h, &err).margin;
    sw_hold_free(h);
    sw_fixture_free(f);
    sw_job_free(j);
    return margin;
}

/* H01 and H04 of the reference fixtures: without the part's weight. */
#define LIGHT "part: {size: [200 mm, 150 mm], thickness: 10 mm, weight: 0 N}\n"

START_TEST(reference_fixtures)
{
    /* 0.15 * 3000 N over 100 N; the disc is a polygon of 32 sides inside */
    const double h01 =
        margin_of("strapwise: 1\n" LIGHT SUPPORTS CLAMPS OPERATIONS);
    ck_assert(h01 <= 4.5 * (1 + 1e-6) && h01 >= 4.5 * 0.995);
    const double h04 = margin_of(
        "strapwise: 1\n" LIGHT "friction: {supports: 0.15}\n"
        "supports:\n  - place: [0 mm, 0 mm]\n  - place: [200 mm, 0 mm]\n"
        "  - place: [200 mm, 120 mm]\n  - place: [0 mm, 120 mm]\n"
        "clamps:\n  - {kind: force, place: [60 mm, 40 mm], height: 0 mm, "
        "force: 4 kN}\n"
        "operations:\n  - cut: {kind: force, force x: 300 N}\n"
        "    path: {height: 0 mm, points: [[200 mm, 120 mm]]}\n");
    ck_assert(h04 <= 1.5135 * (1 + 5e-4) && h04 >= 1.5135 * 0.995);
}
END_TEST

START_TEST(spellings)
{
    static const char inches[] =
        "operations:\n  - name: push\n    cut:\n      kind: force\n      "
        "force-x: 22.480894309971 lbf\n    path:\n      height: 0 in\n      "
        "points: [[100 mm, 6 cm]]\n"
        "clamps:\n  - kind: force\n    place: [3.93700787401574803 in, 60 "
        "mm]\n    height: 0 um\n    force: 3000 N\n" SUPPORTS
        "part:\n  name: fork tine\n  material: 6061-t6\n  size: [0.2 m, 15 "
        "cm]\n  thickness: 10 mm\nstrapwise: 1\n";
    near(margin_of(inches), margin_of(JOB), 0, 1e-9);
    const sw_job_clamp_out c = first_clamp(
        "strapwise: 1\n" PART SUPPORTS
        "clamps:\n  - kind: strap\n    place: [10 mm, 75 mm]\n    toward_stud: "
        "180 deg\n    thread: \"M10\"\n    lubrication: oiled\n    torque: "
        "'16 Nm'\n    stud-to-toe: 3 cm\n    stud_to_heel: 60mm\n    heel "
        "height: 11 mm # a shim\n" OPERATIONS);
    const sw_job_clamp_out d =
        first_clamp("strapwise: 1\n" PART SUPPORTS STRAP_LINES OPERATIONS);
    near(c.force_low_N, d.force_low_N, 0, 1e-12);
}
END_TEST

/* ---- defaults, names, indices ---- */

static sw_assumption default_named(const sw_job *j, const char *name)
{
    for (int i = 0;; i++) {
        const sw_assumption a = sw_job_assumed(j, i, NULL);
        if (a.status || strcmp(a.name, name) == 0)
            return a;
    }
}

START_TEST(defaults)
{
    sw_job *j = read_job(
        "strapwise: 1\n" PART
        "supports:\n  - {place: [0 mm, 0 mm]}\n  - {place: [200 mm, 0 mm]}\n"
        "  - {place: [100 mm, 150 mm]}\n"
        "stops:\n  - {place: [0 mm, 60 mm], push: +x}\n" STRAP_LINES
            OPERATIONS);
    sw_assumption a = default_named(j, "A.z_mm");
    ck_assert(!a.status && a.value == 0); /* the stop's height */
    a = default_named(j, "S2.friction");
    ck_assert(a.value == 0.15 && a.low == 0.1 && a.high == 0.2 && a.source[0]);
    a = default_named(j, "C1.z_mm");
    ck_assert(a.value == 10 && strcmp(a.unit, "mm") == 0);
    a = default_named(j, "C1.nut_factor");
    ck_assert(!a.status && a.low < a.value && a.value < a.high);
    ck_assert(!default_named(j, "C1.published_coverage").status);
    ck_assert(default_named(j, "C1.seed").status); /* trials did not enter */
    a = default_named(j, "push.required_margin");
    ck_assert(a.value == 2 && a.low == 1.5 && a.high == 4);
    ck_assert(!default_named(j, "part.weight_N").status);
    int slight = 0, all = 0;
    for (; !sw_job_assumed(j, all, NULL).status; all++)
        slight += !sw_job_matters(j, all);
    ck_assert_int_gt(slight, 5);
    ck_assert_int_lt(slight, all - 3);
    ck_assert_int_eq(sw_job_matters(j, all), 0);
    ck_assert_int_eq(sw_job_matters(NULL, 0), 0);
    sw_job_free(j);
}
END_TEST

START_TEST(past_the_end)
{
    sw_error err;
    sw_hold_in in;
    sw_job *j = read_job(JOB);
    ck_assert_int_eq(sw_job_find_operation(j, "push"), 0);
    ck_assert_int_eq(sw_job_find_operation(j, "pull"), -1);
    ck_assert_int_eq(sw_job_find_operation(NULL, "push"), -1);
    ck_assert_int_eq(sw_job_has_clamp(j, 0, 0), 1);
    ck_assert_int_eq(sw_job_has_clamp(j, 0, 1), 0);
    ck_assert_int_eq(sw_job_has_clamp(j, 1, 0), 0);
    const sw_job_clamp_out c = sw_job_clamp(j, 1, &err);
    check_refused("clamp", &err, SW_ERR_RANGE, "index");
    check_numbers("clamp", &c, SW_STRUCT_JOB_CLAMP_OUT, c.status);
    const sw_job_operation_out o = sw_job_operation(j, -1, &err);
    check_refused("operation", &err, SW_ERR_RANGE, "index");
    check_numbers("operation", &o, SW_STRUCT_JOB_OPERATION_OUT, o.status);
    const sw_job_corner_out p = sw_job_corner(j, 4, &err);
    check_refused("corner", &err, SW_ERR_RANGE, "index");
    check_numbers("corner", &p, SW_STRUCT_JOB_CORNER_OUT, p.status);
    ck_assert_ptr_null(sw_job_fixture(j, 1, &err));
    check_refused("fixture", &err, SW_ERR_RANGE, "operation");
    ck_assert_int_eq(sw_job_hold_in(j, 1, &in, &err), SW_ERR_RANGE);
    ck_assert_int_eq(sw_job_hold_in(j, 0, NULL, &err), SW_ERR_NULL);
    ck_assert_int_eq(sw_job_about(NULL, &err).status, SW_ERR_NULL);
    check_refused("about", &err, SW_ERR_NULL, "job");
    ck_assert_ptr_null(sw_job_fixture(NULL, 0, NULL));
    for (int i = 0; sw_job_not_checked(i); i++)
        ck_assert_int_gt((int)strlen(sw_job_not_checked(i)), 10);
    sw_job_free(j);
}
END_TEST

START_TEST(chosen_clamps)
{
    sw_job *j = read_job(
        "strapwise: 1\n" PART SUPPORTS
        "clamps:\n  - {kind: force, place: [100 mm, 60 mm], force: 1 kN}\n"
        "  - {name: late, kind: force, place: [100 mm, 60 mm], force: 2 kN}\n"
        "  - {kind: force, place: [100 mm, 60 mm], force: 3 kN}\n"
        "operations:\n  - cut: {kind: force, force x: 1 N}\n"
        "    clamps: [C3, late]\n    path: {points: [[100 mm, 60 mm]]}\n"
        "  - cut: {kind: force, force x: 1 N}\n    clamps: all\n"
        "    path: {points: [[100 mm, 60 mm]]}\n");
    sw_clamp_in c;
    sw_fixture *f = sw_job_fixture(j, 0, NULL);
    ck_assert_int_eq(sw_fixture_count(f, SW_PART_CLAMP), 2);
    ck_assert_int_eq(sw_fixture_clamp(f, 0, &c, NULL), 0);
    ck_assert_str_eq(c.name, "late");
    sw_fixture_free(f);
    ck_assert(sw_job_operation(j, 1, NULL).clamps == 3);
    ck_assert_str_eq(sw_job_operation(j, 1, NULL).name, "operation 2");
    sw_job_free(j);
}
END_TEST

START_TEST(dry_friction)
{
    sw_job *j =
        read_job("strapwise: 1\n" PART "friction: {supports: 0.61}\n"
                 "supports:\n  - place: [0 mm, 0 mm]\n  - place: [200 "
                 "mm, 0 mm]\n  - place: [100 mm, 150 mm]\n" CLAMPS OPERATIONS);
    ck_assert(sw_job_about(j, NULL).warnings & SW_WARN_FRICTION_HIGH);
    sw_job_free(j);
    j = read_job(JOB);
    ck_assert(!(sw_job_about(j, NULL).warnings & SW_WARN_FRICTION_HIGH));
    sw_job_free(j);
}
END_TEST

int main(void)
{
    return RUN_TESTS("job", part, weight, strap, strap_in_fixture, tool,
                     other_clamps, swing_low_end, other_names, faulty_straps,
                     faulty_screws, faulty_devices, doubtful_places,
                     doubtful_stops_and_paths, seals, bar, pad, mill, turn,
                     unbalanced, drill, corners, reference_fixtures, spellings,
                     defaults, past_the_end, chosen_clamps, dry_friction);
}
