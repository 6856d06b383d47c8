/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Material: handbook values, VDI 2230 limiting pressures of both editions, and
 * what keeps every row plausible.
 */
#include "../common.h"
#include "../near.h"

static sw_material_out good(const char *key)
{
    sw_error err;
    const sw_material_out m = sw_material(key, &err);
    check_no_error(key, m.status, &err);
    check_numbers(key, &m, SW_STRUCT_MATERIAL_OUT, m.status);
    return m;
}

/* Published: Young's moduli, Materials Science and Engineering: An
 * Introduction, table B.2 (GPa); two handbooks differ by up to 4 %. */
START_TEST(moduli)
{
    static const struct {
        const char *key;
        double GPa;
    } row[] = {{"1020", 207},       {"1040", 207},   {"42CrMo4", 207},
               {"304", 193},        {"316", 193},    {"GJS-400-15", 169},
               {"2024-T351", 72.4}, {"6061-T6", 69}, {"7075-T6", 71},
               {"C11000", 115},     {"1100-O", 69},  {"Ti-6Al-4V", 114}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
        near_in(row[i].key, good(row[i].key).modulus_MPa, 1000 * row[i].GPa, 0,
                0.04);
}
END_TEST

/* Published: yield and tensile strength, the same book's table B.4 and
 * appendices of textbooks on mechanics of materials, MPa; lowest and highest
 * print. Ours must lie within. */
START_TEST(strengths)
{
    static const struct {
        const char *key;
        double yield_low, yield_high, tensile_low, tensile_high;
    } row[] = {
        {"1020", 210, 210, 380, 380},      {"1020-drawn", 350, 350, 420, 420},
        {"1040", 290, 290, 520, 520},      {"A36", 220, 250, 400, 500},
        {"2024-T351", 325, 325, 470, 470}, {"6061-T6", 255, 276, 290, 310},
        {"7075-T6", 483, 505, 540, 572},   {"356-T6", 164, 164, 228, 228},
        {"304", 207, 207, 517, 517},       {"Ti-6Al-4V", 827, 924, 890, 1000},
        {"C26000", 434, 434, 524, 524},    {"C11000", 310, 310, 345, 345},
        {"1100-O", 34, 34, 90, 90},        {"nylon-66", 45, 55, 62, 76},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const sw_material_out m = good(row[i].key);
        must(row[i].yield_low <= m.yield_MPa &&
                 m.yield_MPa <= row[i].yield_high &&
                 row[i].tensile_low <= m.tensile_MPa &&
                 m.tensile_MPa <= row[i].tensile_high,
             "%s", row[i].key);
    }
    ck_assert(good("GJL-150").yield_MPa == SW_UNSET); /* iron has none */
}
END_TEST

/* Published: limiting surface pressure, VDI 2230 of 2003 (table A9) and of
 * 1986, MPa, 0 where that edition does not have the material. The lower one is
 * ours. */
START_TEST(pressures)
{
    static const struct {
        const char *key;
        double of_2003, of_1986;
    } row[] = {
        {"S235", 490, 260},    {"E295", 710, 420},     {"S355", 760, 0},
        {"C45-QT", 630, 700},  {"42CrMo4", 0, 850},    {"34CrNiMo6", 1080, 0},
        {"16MnCr5", 900, 0},   {"304", 630, 210},      {"316", 460, 210},
        {"GJL-150", 0, 600},   {"GJL-250", 900, 800},  {"GJS-400-15", 700, 0},
        {"GJS-500-7", 900, 0}, {"GJS-600-3", 1000, 0}, {"6082-T6", 260, 0},
        {"5083", 230, 0},      {"7075-T6", 410, 0},    {"AlSi9Cu3", 290, 0},
        {"356-T6", 380, 0},    {"Ti-6Al-4V", 890, 0},  {"Ti-grade-2", 0, 300},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const double lower = row[i].of_2003 == 0 ? row[i].of_1986
                             : row[i].of_1986 == 0
                                 ? row[i].of_2003
                                 : fmin(row[i].of_2003, row[i].of_1986);
        near_in(row[i].key, good(row[i].key).pressure_limit_MPa, lower, 0, 0);
    }
}
END_TEST

/* Published: densities, table B.1 and a property database (g/cm3), within a
 * unit of the last digit. */
START_TEST(densities)
{
    static const struct {
        const char *key;
        double g_per_cm3;
    } row[] = {{"1020", 7.87},     {"42CrMo4", 7.85}, {"304", 8.0},
               {"316", 8.0},       {"GJL-150", 7.15}, {"2024-T351", 2.78},
               {"6061-T6", 2.7},   {"7075-T6", 2.81}, {"C11000", 8.89},
               {"C26000", 8.53},   {"C36000", 8.5},   {"Ti-6Al-4V", 4.43},
               {"AZ91", 1.795}, /* 17.6 kN/m3 */
               {"nylon-66", 1.14}, {"acetal", 1.41}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
        near_in(row[i].key, good(row[i].key).density_kg_per_m3,
                1000 * row[i].g_per_cm3, 10, 0);
}
END_TEST

/* Every row: numbers of a solid, a source that is not cut, a name that finds
 * it. The speed of sound sqrt(E/density) of all these metals lies between 3
 * and 5.5 km/s, which two swapped numbers would hardly meet. */
START_TEST(every_row)
{
    int i = 0, metals = 0;
    for (; sw_material_name(i); i++) {
        const char *key = sw_material_name(i);
        const sw_material_out m = good(key);
        ck_assert_str_eq(m.material, key);
        must(m.label[0] && strlen(m.label) + 1 < sizeof m.label, "%s: label",
             key);
        must(m.source[0] && strlen(m.source) + 1 < sizeof m.source,
             "%s: source", key);
        must(0.2 < m.poisson && m.poisson < 0.5, "%s: poisson", key);
        must(m.yield_MPa == SW_UNSET || m.yield_MPa < m.tensile_MPa, "%s", key);
        must(0.5 < m.shear_ratio && m.shear_ratio < 1, "%s: shear", key);
        must(m.pressure_limit_MPa == SW_UNSET ||
                 (m.pressure_limit_MPa > 0.35 * m.tensile_MPa &&
                  m.pressure_limit_MPa < 5 * m.tensile_MPa),
             "%s: pressure", key);
        if (m.modulus_MPa > 10000) {
            const double speed =
                sqrt(m.modulus_MPa * 1e6 / m.density_kg_per_m3);
            must(3000 < speed && speed < 5500, "%s: %g m/s", key, speed);
            metals++;
        }
        for (int j = 0; j < i; j++)
            ck_assert_str_ne(sw_material_name(j), key);
    }
    ck_assert_int_ge(i, 30);
    ck_assert_int_ge(metals, 30);
    ck_assert_ptr_null(sw_material_name(i + 1));
    ck_assert_ptr_null(sw_material_name(-1));
}
END_TEST

START_TEST(spelling)
{
    ck_assert_str_eq(good("c45").material, "C45");
    ck_assert_str_eq(good("6061-t6").material, "6061-T6");
    ck_assert_uint_eq(good("1040").warnings, 0);
    ck_assert_uint_eq(good("C45").warnings, SW_WARN_TABLE_FROM_MEMORY);
}
END_TEST

/* The same metal under the name of another standard, or without a temper. */
START_TEST(other_names)
{
    static const struct {
        const char *name, *key;
    } row[] = {{"1045", "C45"},          {"4140", "42CrMo4"},
               {"4340", "34CrNiMo6"},    {"St37", "S235"},
               {"GG-25", "GJL-250"},     {"6061", "6061-T6"},
               {"6061-t651", "6061-T6"}, {"7075", "7075-T6"}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const sw_material_out m = good(row[i].name);
        ck_assert_str_eq(m.material, row[i].key);
        ck_assert(m.modulus_MPa == good(row[i].key).modulus_MPa);
        for (int k = 0; sw_material_name(k); k++) /* no row is hidden */
            ck_assert_str_ne(sw_material_name(k), row[i].name);
    }
}
END_TEST

START_TEST(unknown)
{
    static const struct {
        const char *text, *offered;
    } row[] = {{"6061-", "6061-T6"}, {"C 45", "C45"}, {"GJL-25", "GJL-250"},
               {"7075-", "7075-T6"}, {"", ""},        {" C45", "C45"},
               {"\n", ""},           {"\xff", ""},    {"unobtainium", ""}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_error err;
        const sw_material_out m = sw_material(row[i].text, &err);
        ck_assert_int_eq(m.status, SW_ERR_UNKNOWN);
        check_refused(row[i].text, &err, SW_ERR_UNKNOWN, "material");
        check_numbers(row[i].text, &m, SW_STRUCT_MATERIAL_OUT, m.status);
        must(strstr(err.message, row[i].offered), "%s", err.message);
    }
    static char longest[10001];
    memset(longest, 'C', 10000);
    sw_error err;
    sw_material_out m = sw_material(longest, &err);
    check_refused("10,000 characters", &err, SW_ERR_UNKNOWN, "material");
    m = sw_material(NULL, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "material");
    check_numbers("NULL", &m, SW_STRUCT_MATERIAL_OUT, m.status);
    ck_assert_int_eq(sw_material("x", NULL).status, SW_ERR_UNKNOWN);
}
END_TEST

int main(void)
{
    return RUN_TESTS("material", moduli, strengths, pressures, densities,
                     every_row, spelling, other_names, unknown);
}
