/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Cut material: the group table as printed, names that stand for a row, and
 * what is refused.
 */
#include "../common.h"
#include "../values.h"

static sw_cut_material_out good(const char *name)
{
    sw_error err;
    const sw_cut_material_out m = sw_cut_material(name, &err);
    check_no_error(name, m.status, &err);
    check_numbers(name, &m, SW_STRUCT_CUT_MATERIAL_OUT, m.status);
    return m;
}

/* Published: VDI 3323 / ISO 513 material groups as printed in three tool
 * catalogues; exact. */
START_TEST(groups)
{
    static const struct {
        int group;
        double kc11, mc;
    } row[] = {
        {1, 1350, 0.21},  {2, 1500, 0.22},  {3, 1675, 0.24},  {4, 1700, 0.24},
        {5, 1900, 0.24},  {6, 1775, 0.24},  {7, 1675, 0.24},  {8, 1725, 0.24},
        {9, 1800, 0.24},  {10, 2450, 0.23}, {11, 2500, 0.23}, {12, 1875, 0.21},
        {13, 1875, 0.21}, {14, 2150, 0.20}, {15, 1150, 0.20}, {16, 1350, 0.28},
        {17, 1225, 0.25}, {18, 1350, 0.28}, {19, 1225, 0.25}, {20, 1420, 0.30},
        {21, 700, 0.25},  {22, 800, 0.25},  {23, 700, 0.25},  {24, 700, 0.25},
        {25, 750, 0.25},  {26, 700, 0.27},  {27, 700, 0.27},  {28, 700, 0.27},
        {31, 2600, 0.24}, {32, 3100, 0.24}, {33, 3300, 0.24}, {34, 3300, 0.24},
        {35, 3300, 0.24},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        char key[16];
        snprintf(key, sizeof key, "vdi-%d", row[i].group);
        const sw_cut_material_out m = good(key);
        ck_assert_str_eq(m.stands_for, key);
        near_in(key, m.kc11_MPa, row[i].kc11, 0, 0);
        near_in(key, m.mc, row[i].mc, 0, 0);
        near_in(key, m.reference_rake_deg, 0, 0, 0);
        ck_assert_uint_eq(m.warnings, 0);
    }
}
END_TEST

/* Two editions of that table disagree about titanium: 2017 and 2022. The plain
 * key is the larger, its range reaches down to the other. */
START_TEST(editions)
{
    static const struct {
        const char *key, *other;
        double kc11, mc, kc11_other, mc_other;
    } row[] = {{"vdi-36", "vdi-36-2022", 1700, 0.23, 1160, 0.24},
               {"vdi-37", "vdi-37-2022", 2110, 0.22, 1245, 0.24}};
    for (size_t i = 0; i < 2; i++) {
        const sw_cut_material_out a = good(row[i].key), b = good(row[i].other);
        near(a.kc11_MPa, row[i].kc11, 0, 0);
        near(a.mc, row[i].mc, 0, 0);
        near(b.kc11_MPa, row[i].kc11_other, 0, 0);
        near(b.mc, row[i].mc_other, 0, 0);
        near(a.kc11_low_MPa, b.kc11_MPa, 0, 0);
        near(b.kc11_high_MPa, a.kc11_MPa, 0, 0);
        ck_assert_uint_eq(a.warnings, SW_WARN_CUT_EDITIONS);
        ck_assert_uint_eq(b.warnings, SW_WARN_CUT_EDITIONS);
    }
    const sw_cut_material_out ti = good("Ti-6Al-4V");
    ck_assert_str_eq(ti.stands_for, "vdi-37");
    ck_assert_uint_eq(ti.warnings, SW_WARN_CUT_EDITIONS | SW_WARN_CUT_GROUP);
}
END_TEST

/* Same pages, hardened groups: a kc1 is printed, an exponent is not. */
START_TEST(hardened)
{
    static const double kc[] = {4600, 4700, 4600, 4500};
    for (int i = 0; i < 4; i++) {
        char key[16];
        snprintf(key, sizeof key, "vdi-%d", 38 + i);
        const sw_cut_material_out m = good(key);
        near_in(key, m.kc11_MPa, kc[i], 0, 0);
        near_in(key, m.mc, SW_UNSET, 0, 0);
        sw_error err;
        sw_turning_in in;
        sw_turning_defaults(&in);
        SET(in.material, key);
        in.depth_mm = 1;
        in.feed_mm = 0.2;
        ck_assert_int_eq(sw_turning(&in, &err).status, SW_ERR_MISSING);
        check_refused(key, &err, SW_ERR_MISSING, "mc");
        in.mc = 0;
        in.wear_factor = 1;
        near_in(key, sw_turning(&in, &err).cutting_N, kc[i] * 0.2, 0, 1e-14);
    }
}
END_TEST

/* Single metals, tables of the 1970s and 1980s, from memory: 15 % either way. */
START_TEST(single)
{
    static const struct {
        const char *key;
        double kc11, mc, rake;
    } row[] = {
        {"S235", 1780, 0.17, 6},     {"E295", 1990, 0.26, 6},
        {"E335", 2110, 0.17, 6},     {"E360", 2260, 0.30, 6},
        {"C15", 1820, 0.22, 6},      {"C35", 1860, 0.20, 6},
        {"C45", 2220, 0.14, 6},      {"C60", 2130, 0.18, 6},
        {"16MnCr5", 2100, 0.26, 6},  {"18CrNi6", 2260, 0.30, 6},
        {"42CrMo4", 2500, 0.26, 6},  {"34CrMo4", 2240, 0.21, 6},
        {"50CrV4", 2220, 0.26, 6},   {"30CrNiMo8", 2600, 0.20, 6},
        {"GG-20", 1020, 0.25, 2},    {"GG-25", 1160, 0.26, 2},
        {"CuZn39Pb3", 780, 0.18, 6}, {"AlMg-cast", 460, 0.27, 6},
        {"Mg-alloy", 280, 0.19, 6},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const sw_cut_material_out m = good(row[i].key);
        near_in(row[i].key, m.kc11_MPa, row[i].kc11, 0, 0);
        near_in(row[i].key, m.mc, row[i].mc, 0, 0);
        near_in(row[i].key, m.reference_rake_deg, row[i].rake, 0, 0);
        near_in(row[i].key, m.kc11_low_MPa, 0.85 * row[i].kc11, 0, 1e-9);
        near_in(row[i].key, m.kc11_high_MPa, 1.15 * row[i].kc11, 0, 1e-9);
        ck_assert_uint_eq(m.warnings, SW_WARN_TABLE_FROM_MEMORY);
    }
}
END_TEST

/* Published: Machinery's Handbook 31st ed. p. 1147 Table 1b, kW per cm3/s,
 * which is 1000 N/mm2. The inch column over it is 2.73 within rounding. */
START_TEST(unit_power)
{
    near(good("vdi-2").unit_power_MPa, 2240, 0, 1e-12);
    near(good("vdi-6").unit_power_MPa, 1880, 0, 1e-12);
    near(good("vdi-7").unit_power_MPa, 2380, 0, 1e-12);
    near(good("1215").unit_power_MPa, 1120, 0, 1e-12); /* free machining */
    near(good("8620").unit_power_MPa, 1690, 0, 1e-12);
    near(good("4140").unit_power_MPa, 2380, 0, 1e-12);
    near(good("1018").unit_power_MPa, 2020, 0, 1e-12); /* the next harder */
    near(good("vdi-5").unit_power_MPa, 2810, 0, 1e-12);
    ck_assert_ptr_nonnull(strstr(good("vdi-6").unit_power, "4140"));
    near(good("vdi-22").unit_power_MPa, SW_UNSET, 0, 0);
    ck_assert_str_eq(good("vdi-22").unit_power, "");
    near(0.82 * sw_unit_factor("hp.min/in3", SW_KIND_PRESSURE, "x", NULL).value,
         2240, 0, 0.006);
}
END_TEST

/* Its two columns, hp per in3/min and kW per cm3/s: one is 2.7303 of the other
 * (1 hp is 550 ft-lbf/s) within the last digit of both. */
START_TEST(two_columns)
{
    const double hp =
        sw_unit_factor("hp.min/in3", SW_KIND_PRESSURE, "x", NULL).value / 1000;
    values v;
    values_open(&v, "tables/unit_power.csv");
    int rows = 0;
    while (values_next(&v)) {
        near_in(values_text(&v, "key"), values_number(&v, "kp_si"),
                hp * values_number(&v, "kp_inch"), 0.005 + 0.005 * hp, 0);
        rows++;
    }
    ck_assert_int_eq(rows, 9);
    near(hp, 2.7303, 5e-5, 0);
}
END_TEST

/* Names of the trade, and whether they say that a group stands for them. */
START_TEST(names)
{
    static const struct {
        const char *name, *row;
        int group;
    } row[] = {
        {"6061-T6", "vdi-22", 1}, {"6061-t6", "vdi-22", 1},
        {"7075-T6", "vdi-22", 1}, {"5083", "vdi-21", 1},
        {"304", "vdi-14", 1},     {"316L", "vdi-14", 1},
        {"4140", "42CrMo4", 0},   {"1045", "C45", 0},
        {"St37", "S235", 0},      {"A36", "S235", 0},
        {"GJL-250", "GG-25", 0},  {"GJS-400-15", "vdi-17", 1},
        {"1018", "vdi-1", 1},     {"Inconel-718", "vdi-34", 1},
        {"VDI-22", "vdi-22", 0},  {"c45", "C45", 0},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const sw_cut_material_out m = good(row[i].name);
        ck_assert_str_eq(m.stands_for, row[i].row);
        must(!(m.warnings & SW_WARN_CUT_GROUP) == !row[i].group, "%s",
             row[i].name);
    }
    /* every name is one of a row, none is there twice */
    int n = 0;
    for (; sw_cut_material_name(n); n++) {
        const sw_cut_material_out m = good(sw_cut_material_name(n));
        ck_assert_str_eq(m.material, sw_cut_material_name(n));
        ck_assert(m.source[0] && m.label[0]);
        ck_assert(m.kc11_low_MPa < m.kc11_MPa && m.kc11_MPa < m.kc11_high_MPa);
        for (int k = 0; k < n; k++)
            ck_assert_str_ne(sw_cut_material_name(k), sw_cut_material_name(n));
    }
    ck_assert_int_gt(n, 100);
    ck_assert_ptr_null(sw_cut_material_name(-1));
}
END_TEST

/* Each metal of the table of materials can be cut by its key, but for a few
 * whose group nobody knows from the name. */
START_TEST(metals_of_the_other_table)
{
    for (int i = 0; sw_material_name(i); i++) {
        const char *name = sw_material_name(i);
        const int known = sw_cut_material(name, NULL).status == SW_OK;
        const int open =
            strcmp(name, "17-4PH") == 0 || strcmp(name, "C93200") == 0 ||
            strcmp(name, "nylon-66") == 0 || strcmp(name, "acetal") == 0 ||
            strcmp(name, "polycarbonate") == 0;
        must(known == !open, "%s", name);
    }
}
END_TEST

START_TEST(refused)
{
    sw_error err;
    sw_cut_material_out m = sw_cut_material("6061T6", &err);
    check_refused("6061T6", &err, SW_ERR_UNKNOWN, "material");
    ck_assert_ptr_nonnull(strstr(err.message, "6061-T6"));
    check_numbers("6061T6", &m, SW_STRUCT_CUT_MATERIAL_OUT, m.status);
    m = sw_cut_material("60", &err);
    ck_assert_ptr_nonnull(strstr(err.message, "6061"));
    m = sw_cut_material("", &err);
    check_refused("empty", &err, SW_ERR_UNKNOWN, "material");
    m = sw_cut_material(NULL, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "material");
    ck_assert_int_eq(sw_cut_material(NULL, NULL).status, SW_ERR_NULL);
}
END_TEST

int main(void)
{
    return RUN_TESTS("cut material", groups, editions, hardened, single,
                     unit_power, two_columns, names, metals_of_the_other_table,
                     refused);
}
