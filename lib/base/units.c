/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Units: the one place where a unit is converted.
 *
 * A closed list of spellings as they are used in the trade. Factors are exact
 * by definition: inch 25.4 mm (1959), pound 0.45359237 kg, standard gravity
 * 9.80665 m/s2, standard atmosphere 101325 Pa, conventional inch of mercury
 * 3386.389 Pa (NIST SP 811, appendix B.8).
 *
 * Inches and feet are also read as fractions, "1/2 in", "1-1/4in".
 *
 * Refused rather than guessed: a number without a unit, a bare "lb" (a mass),
 * and a unit of another kind, the torque in "m.N" order of milli against metre
 * included ("mN.m" is a millinewton metre).
 */
#include "base/number.h"

#include <strapwise/units.h>

#include <string.h>

#define IN_MM 25.4
#define KGF_N 9.80665
#define POUND_KG 0.45359237
#define HP_W (550 * SW__FTLBF_NM) /* a horsepower is 550 ft-lbf/s */
#define PSI_MPA (SW__LBF_N / (IN_MM * IN_MM))

static const char *const kind_unit[SW_KIND_COUNT + 1] = {
    NULL,   "",      "mm",  "N", "N.m", "MPa", "deg", "mm/m",
    "mm/N", "m/min", "rpm", "W", "kg",  "mm2", "m"};

static const char *const kind_example[SW_KIND_COUNT + 1] = {
    NULL,       "0.15",   "10 mm",     "12 kN",     "25 N.m",
    "70 bar",   "3 deg",  "0.02 mm/m", "1e-6 mm/N", "120 m/min",
    "3000 rpm", "1.5 kW", "2 kg",      "32 cm2",    "500 m"};

static const struct {
    const char *name;
    int kind;
    double factor;
} unit[] = {
    {"%", SW_KIND_RATIO, 0.01},
    {"um", SW_KIND_LENGTH, 1e-3},
    {"\xc2\xb5m", SW_KIND_LENGTH, 1e-3}, /* micro sign */
    {"\xce\xbcm", SW_KIND_LENGTH, 1e-3}, /* Greek mu */
    {"micron", SW_KIND_LENGTH, 1e-3},
    {"mm", SW_KIND_LENGTH, 1},
    {"cm", SW_KIND_LENGTH, 10},
    {"m", SW_KIND_LENGTH, 1000},
    {"in", SW_KIND_LENGTH, IN_MM},
    {"inch", SW_KIND_LENGTH, IN_MM},
    {"inches", SW_KIND_LENGTH, IN_MM},
    {"\"", SW_KIND_LENGTH, IN_MM},
    {"thou", SW_KIND_LENGTH, IN_MM / 1000},
    {"mil", SW_KIND_LENGTH, IN_MM / 1000},
    {"ft", SW_KIND_LENGTH, 12 * IN_MM},
    {"N", SW_KIND_FORCE, 1},
    {"daN", SW_KIND_FORCE, 10},
    {"kN", SW_KIND_FORCE, 1000},
    {"lbf", SW_KIND_FORCE, SW__LBF_N},
    {"kip", SW_KIND_FORCE, 1000 * SW__LBF_N},
    {"klbf", SW_KIND_FORCE, 1000 * SW__LBF_N},
    {"ozf", SW_KIND_FORCE, SW__LBF_N / 16},
    {"kgf", SW_KIND_FORCE, KGF_N},
    {"kp", SW_KIND_FORCE, KGF_N},
    {"N.m", SW_KIND_TORQUE, 1},
    {"N*m", SW_KIND_TORQUE, 1},
    {"N-m", SW_KIND_TORQUE, 1},
    {"N m", SW_KIND_TORQUE, 1},
    {"N\xc2\xb7m", SW_KIND_TORQUE, 1},     /* middle dot */
    {"N\xe2\x8b\x85m", SW_KIND_TORQUE, 1}, /* dot operator */
    {"Nm", SW_KIND_TORQUE, 1},
    {"N.cm", SW_KIND_TORQUE, 0.01},
    {"Ncm", SW_KIND_TORQUE, 0.01},
    {"N.mm", SW_KIND_TORQUE, 0.001},
    {"Nmm", SW_KIND_TORQUE, 0.001},
    {"kN.m", SW_KIND_TORQUE, 1000},
    {"kNm", SW_KIND_TORQUE, 1000},
    {"daN.m", SW_KIND_TORQUE, 10},
    {"daNm", SW_KIND_TORQUE, 10},
    {"ft-lbf", SW_KIND_TORQUE, SW__FTLBF_NM},
    {"ft.lbf", SW_KIND_TORQUE, SW__FTLBF_NM},
    {"ft lbf", SW_KIND_TORQUE, SW__FTLBF_NM},
    {"ft-lb", SW_KIND_TORQUE, SW__FTLBF_NM},
    {"ft.lb", SW_KIND_TORQUE, SW__FTLBF_NM},
    {"ft lb", SW_KIND_TORQUE, SW__FTLBF_NM},
    {"ftlbf", SW_KIND_TORQUE, SW__FTLBF_NM},
    {"ftlb", SW_KIND_TORQUE, SW__FTLBF_NM},
    {"lbf-ft", SW_KIND_TORQUE, SW__FTLBF_NM},
    {"lbf.ft", SW_KIND_TORQUE, SW__FTLBF_NM},
    {"lbf ft", SW_KIND_TORQUE, SW__FTLBF_NM},
    {"lb-ft", SW_KIND_TORQUE, SW__FTLBF_NM},
    {"lb.ft", SW_KIND_TORQUE, SW__FTLBF_NM},
    {"lb ft", SW_KIND_TORQUE, SW__FTLBF_NM},
    {"in-lbf", SW_KIND_TORQUE, SW__FTLBF_NM / 12},
    {"in.lbf", SW_KIND_TORQUE, SW__FTLBF_NM / 12},
    {"in lbf", SW_KIND_TORQUE, SW__FTLBF_NM / 12},
    {"in-lb", SW_KIND_TORQUE, SW__FTLBF_NM / 12},
    {"in.lb", SW_KIND_TORQUE, SW__FTLBF_NM / 12},
    {"in lb", SW_KIND_TORQUE, SW__FTLBF_NM / 12},
    {"inlbf", SW_KIND_TORQUE, SW__FTLBF_NM / 12},
    {"inlb", SW_KIND_TORQUE, SW__FTLBF_NM / 12},
    {"lbf-in", SW_KIND_TORQUE, SW__FTLBF_NM / 12},
    {"lbf.in", SW_KIND_TORQUE, SW__FTLBF_NM / 12},
    {"lbf in", SW_KIND_TORQUE, SW__FTLBF_NM / 12},
    {"lb-in", SW_KIND_TORQUE, SW__FTLBF_NM / 12},
    {"lb.in", SW_KIND_TORQUE, SW__FTLBF_NM / 12},
    {"lb in", SW_KIND_TORQUE, SW__FTLBF_NM / 12},
    {"ozf-in", SW_KIND_TORQUE, SW__FTLBF_NM / 192},
    {"ozf.in", SW_KIND_TORQUE, SW__FTLBF_NM / 192},
    {"in-ozf", SW_KIND_TORQUE, SW__FTLBF_NM / 192},
    {"kgf.m", SW_KIND_TORQUE, KGF_N},
    {"kgf-m", SW_KIND_TORQUE, KGF_N},
    {"kgfm", SW_KIND_TORQUE, KGF_N},
    {"kgf.cm", SW_KIND_TORQUE, KGF_N / 100},
    {"kgf-cm", SW_KIND_TORQUE, KGF_N / 100},
    {"kgfcm", SW_KIND_TORQUE, KGF_N / 100},
    {"Pa", SW_KIND_PRESSURE, 1e-6},
    {"kPa", SW_KIND_PRESSURE, 1e-3},
    {"MPa", SW_KIND_PRESSURE, 1},
    {"GPa", SW_KIND_PRESSURE, 1000},
    {"N/mm2", SW_KIND_PRESSURE, 1},
    {"N/mm^2", SW_KIND_PRESSURE, 1},
    {"N/mm\xc2\xb2", SW_KIND_PRESSURE, 1},
    {"bar", SW_KIND_PRESSURE, 0.1},
    {"mbar", SW_KIND_PRESSURE, 1e-4},
    {"psi", SW_KIND_PRESSURE, PSI_MPA},
    {"ksi", SW_KIND_PRESSURE, 1000 * PSI_MPA},
    {"Mpsi", SW_KIND_PRESSURE, 1e6 * PSI_MPA},
    {"atm", SW_KIND_PRESSURE, 0.101325},
    {"J/cm3", SW_KIND_PRESSURE, 1}, /* energy per volume of chips */
    {"J/mm3", SW_KIND_PRESSURE, 1000},
    {"W.s/mm3", SW_KIND_PRESSURE, 1000},
    {"hp.min/in3", SW_KIND_PRESSURE, 60000 * HP_W / (IN_MM * IN_MM * IN_MM)},
    {"inHg", SW_KIND_PRESSURE, 3386.389e-6},
    {"mmHg", SW_KIND_PRESSURE, 133.3224e-6},
    {"deg", SW_KIND_ANGLE, 1},
    {"degree", SW_KIND_ANGLE, 1},
    {"degrees", SW_KIND_ANGLE, 1},
    {"\xc2\xb0", SW_KIND_ANGLE, 1}, /* degree sign */
    {"rad", SW_KIND_ANGLE, 180 / SW__PI},
    {"mrad", SW_KIND_ANGLE, 0.18 / SW__PI},
    {"arcmin", SW_KIND_ANGLE, 1 / 60.0},
    {"arcsec", SW_KIND_ANGLE, 1 / 3600.0},
    {"mm/m", SW_KIND_SLOPE, 1},
    {"um/m", SW_KIND_SLOPE, 1e-3},
    {"in/ft", SW_KIND_SLOPE, 1000 / 12.0},
    {"thou/ft", SW_KIND_SLOPE, 1 / 12.0},
    {"mm/N", SW_KIND_COMPLIANCE, 1},
    {"um/N", SW_KIND_COMPLIANCE, 1e-3},
    {"mm/kN", SW_KIND_COMPLIANCE, 1e-3},
    {"um/kN", SW_KIND_COMPLIANCE, 1e-6},
    {"kg", SW_KIND_MASS, 1},
    {"g", SW_KIND_MASS, 1e-3},
    {"lb", SW_KIND_MASS, POUND_KG},
    {"lbm", SW_KIND_MASS, POUND_KG},
    {"oz", SW_KIND_MASS, POUND_KG / 16},
    {"mm2", SW_KIND_AREA, 1},
    {"mm^2", SW_KIND_AREA, 1},
    {"mm\xc2\xb2", SW_KIND_AREA, 1},
    {"cm2", SW_KIND_AREA, 100},
    {"cm^2", SW_KIND_AREA, 100},
    {"cm\xc2\xb2", SW_KIND_AREA, 100},
    {"in2", SW_KIND_AREA, IN_MM *IN_MM},
    {"in^2", SW_KIND_AREA, IN_MM *IN_MM},
    {"sq in", SW_KIND_AREA, IN_MM *IN_MM},
    {"m", SW_KIND_ALTITUDE, 1},
    {"km", SW_KIND_ALTITUDE, 1000},
    {"ft", SW_KIND_ALTITUDE, 0.012 * IN_MM},
    {"m/min", SW_KIND_SPEED, 1},
    {"mm/min", SW_KIND_SPEED, 1e-3},
    {"m/s", SW_KIND_SPEED, 60},
    {"ft/min", SW_KIND_SPEED, 12 * IN_MM / 1000},
    {"sfm", SW_KIND_SPEED, 12 * IN_MM / 1000},
    {"in/min", SW_KIND_SPEED, IN_MM / 1000},
    {"ipm", SW_KIND_SPEED, IN_MM / 1000},
    {"rpm", SW_KIND_ROTATION, 1},
    {"r/min", SW_KIND_ROTATION, 1},
    {"rev/min", SW_KIND_ROTATION, 1},
    {"min-1", SW_KIND_ROTATION, 1},
    {"rps", SW_KIND_ROTATION, 60},
    {"W", SW_KIND_POWER, 1},
    {"kW", SW_KIND_POWER, 1000},
    {"hp", SW_KIND_POWER, HP_W},
};

#define UNITS (sizeof unit / sizeof unit[0])

const char *sw_kind_unit(int kind)
{
    return kind >= 1 && kind <= SW_KIND_COUNT ? kind_unit[kind] : NULL;
}

static void say_wanted(sw__line *line, int kind)
{
    sw__line_add(line, "; write for example ");
    sw__line_add(line, kind_example[kind]);
}

static int fail_unit(sw_error *err, const char *field, const char *name,
                     int kind)
{
    char message[240];
    sw__line line = sw__line_start(message, sizeof message);
    sw__line_add(&line, field);
    sw__line_add(&line, ": ");
    const char *other = NULL, *nearest = NULL;
    int best = 3; /* more edits than this is no likeness */
    for (size_t i = 0; i < UNITS; i++) {
        if (strcmp(unit[i].name, name) == 0)
            other = kind_unit[unit[i].kind];
        const int edits = sw__edits(unit[i].name, name);
        if (unit[i].kind == kind && edits < best &&
            edits < (int)strlen(name) - 1) {
            best = edits;
            nearest = unit[i].name;
        }
    }
    if (!name[0]) {
        sw__line_add(&line, "the unit is missing");
        say_wanted(&line, kind);
    } else if (kind == SW_KIND_RATIO) {
        sw__line_add(&line, "a plain number is wanted, without ");
        sw__line_add_quoted(&line, name);
    } else if (strcmp(name, "lb") == 0 || strcmp(name, "lbs") == 0) {
        sw__line_add(&line, kind == SW_KIND_TORQUE
                                ? "lb is a mass; write ft-lbf or in-lbf"
                                : "lb is a mass; write lbf");
    } else if (strcmp(name, "kg") == 0) {
        sw__line_add(&line, "kg is a mass; write kgf or N");
    } else if (other) {
        sw__line_add_quoted(&line, name);
        sw__line_add(&line, " is of another kind");
        say_wanted(&line, kind);
    } else {
        sw__line_add(&line, "unknown unit ");
        sw__line_add_quoted(&line, name);
        if (nearest) {
            sw__line_add(&line, "; nearest is ");
            sw__line_add(&line, nearest);
        } else {
            say_wanted(&line, kind);
        }
    }
    return sw__fail(err, SW_ERR_UNIT, field, message);
}

sw_quantity_out sw_unit_factor(const char *name, int kind, const char *field,
                               sw_error *err)
{
    sw_quantity_out out = {SW_OK, NAN};
    sw__clear(err);
    if (!field)
        field = "value";
    if (!name) {
        out.status = sw__fail_null(err, field);
    } else if (!sw_kind_unit(kind)) {
        out.status = sw__fail_range(err, "kind", kind, "", 1, SW_KIND_COUNT);
    } else if (kind == SW_KIND_RATIO && !name[0]) {
        out.value = 1;
    } else {
        for (size_t i = 0; i < UNITS; i++)
            if (unit[i].kind == kind && strcmp(unit[i].name, name) == 0)
                out.value = unit[i].factor;
        if (isnan(out.value))
            out.status = fail_unit(err, field, name, kind);
    }
    return out;
}

static size_t scan_whole(const char *text, double *value)
{
    size_t n = 0;
    *value = 0;
    for (; text[n] >= '0' && text[n] <= '9' && n < 6; n++)
        *value = 10 * *value + (text[n] - '0');
    return n;
}

/* "1/2", "1-1/4", "1 1/4" as inches are written; the bytes used or 0. */
static size_t scan_fraction(const char *text, double *value)
{
    double whole = 0, over, under;
    const size_t sign = text[0] == '-';
    text += sign;
    size_t n = scan_whole(text, &over), m;
    if (n && (text[n] == '-' || text[n] == ' ')) {
        whole = over;
        n++;
        m = scan_whole(text + n, &over);
        if (!m)
            return 0;
        n += m;
    }
    if (!n || text[n] != '/')
        return 0;
    m = scan_whole(text + n + 1, &under);
    if (!m || under == 0)
        return 0;
    *value = (sign ? -1 : 1) * (whole + over / under);
    return sign + n + 1 + m;
}

static int is_inch(const char *name)
{
    return strcmp(name, "in") == 0 || strcmp(name, "inch") == 0 ||
           strcmp(name, "inches") == 0 || strcmp(name, "\"") == 0 ||
           strcmp(name, "ft") == 0;
}

sw_quantity_out sw_quantity(const char *text, int kind, const char *field,
                            sw_error *err)
{
    enum { LONGEST = 64 };
    sw_quantity_out out = {SW_OK, NAN};
    sw__clear(err);
    if (!field)
        field = "value";
    if (!text) {
        out.status = sw__fail_null(err, field);
        return out;
    }
    while (*text == ' ')
        text++;
    double number;
    size_t used = kind == SW_KIND_LENGTH ? scan_fraction(text, &number) : 0;
    const int fraction = used > 0;
    if (!fraction)
        used = sw__scan_number(text, &number);
    size_t end = used;
    while (text[end] && end <= LONGEST)
        end++;
    if (!used || text[used] == ',' || end > LONGEST || !isfinite(number)) {
        out.status = sw__fail_number(err, field, text);
        return out;
    }
    while (end > used && text[end - 1] == ' ')
        end--;
    while (text[used] == ' ')
        used++;
    char name[LONGEST + 1];
    sw__copy(name, end >= used ? end - used + 1 : 1, text + used);
    const int length =
        sw_unit_factor(name, SW_KIND_LENGTH, field, NULL).status == SW_OK;
    if (fraction && length && !is_inch(name)) {
        out.status = sw__fail_number(err, field, text);
        return out;
    }
    out = sw_unit_factor(name, kind, field, err);
    if (!out.status) {
        out.value *= number;
        if (!isfinite(out.value)) {
            out.status = sw__fail_number(err, field, text);
            out.value = NAN;
        }
    }
    return out;
}
