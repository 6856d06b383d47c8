/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tool: conversions that are exact by definition, the rounding against a count
 * of every setting, what ISO 6789 permits, refusals and who is named in them.
 */
#include "../common.h"
#include "../near.h"
#include "../random.h"

/* exact: 0.45359237 kg * 9.80665 m/s2 * 0.3048 m */
#define FTLBF 1.3558179483314004
#define INLBF (FTLBF / 12)

static double unit_Nm(int unit)
{
    return unit == SW_TORQUE_FTLBF   ? FTLBF
           : unit == SW_TORQUE_INLBF ? INLBF
                                     : 1;
}

static sw_tool_in of_table(const char *key, double torque_Nm)
{
    sw_tool_in in;
    sw_tool_defaults(&in);
    SET(in.tool, key);
    in.torque_Nm = torque_Nm;
    return in;
}

static sw_tool_in own(double low, double high, double step, double torque_Nm)
{
    sw_tool_in in;
    sw_tool_defaults(&in);
    in.range_low_Nm = low;
    in.range_high_Nm = high;
    in.resolution_Nm = step;
    in.torque_Nm = torque_Nm;
    return in;
}

static sw_tool_out good(const char *what, const sw_tool_in *in)
{
    sw_error err;
    const sw_tool_out out = sw_tool(in, &err);
    check_no_error(what, out.status, &err);
    check_numbers(what, &out, SW_STRUCT_TOOL_OUT, out.status);
    return out;
}

static sw_tool_in resolved(const char *key)
{
    sw_error err;
    sw_tool_in in = of_table(key, 1);
    check_no_error(key, sw_tool_resolve(&in, &err), &err);
    return in;
}

/* By definition: 1 ft-lbf is 12 in-lbf and 1.3558179483314004 N.m. */
START_TEST(conversions)
{
    sw_tool_in in = of_table("click-75ftlbf", 30 * FTLBF);
    sw_tool_out out = good("30 ft-lbf", &in);
    near(out.setting, 30, 0, 1e-15);
    near(out.set_torque_ftlbf, 30, 0, 1e-15);
    near(out.set_torque_inlbf, 360, 0, 1e-15);
    near(out.set_torque_Nm, 40.674538449942012, 0, 1e-15);
    near(out.usable_low_Nm, 20.337269224971006, 0, 1e-15);
    near(out.usable_high_Nm, 101.68634612485503, 0, 1e-15);
    near(out.rounding_pct, 0, 1e-12, 0);
    ck_assert_int_eq(out.torque_unit, SW_TORQUE_FTLBF);
    in = of_table("click-200inlbf", 72 * INLBF);
    out = good("72 in-lbf", &in);
    near(out.setting, 72, 0, 1e-15);
    near(out.set_torque_ftlbf, 6, 0, 1e-15);
    near(out.set_torque_Nm, 8.1349076899884024, 0, 1e-15);
    in = of_table("click-25Nm", 12);
    out = good("12 N.m", &in);
    near(out.setting, 12, 0, 0);
    near(out.set_torque_inlbf, 106.2089494959262, 0, 1e-15);
}
END_TEST

/* ISO 6789-1:2017, from memory: 4 %; 6 % where the scale ends at 10 N.m or
 * below, and for screwdrivers and beams of any size. */
START_TEST(permitted)
{
    static const struct {
        double high, pct;
    } row[] = {{0.5, 6}, {10, 6}, {10.001, 4}, {100, 4}, {1000, 4}};
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        const sw_tool_in in =
            own(SW_UNSET, row[i].high, row[i].high / 100, row[i].high / 2);
        near(good("own", &in).deviation_pct, row[i].pct, 0, 0);
    }
    int small = 0, large = 0;
    for (int i = 0; sw_tool_name(i); i++) {
        const char *key = sw_tool_name(i);
        const sw_tool_in in = resolved(key);
        const int six = in.range_high_Nm <= 10 ||
                        strncmp(key, "driver", 6) == 0 ||
                        strncmp(key, "beam", 4) == 0;
        near_in(key, in.deviation_pct, six ? 6 : 4, 0, 0);
        *(six ? &small : &large) += 1;
    }
    ck_assert_int_ge(small, 8);
    ck_assert_int_ge(large, 12);
}
END_TEST

/* The deviation is that of the reading from the true torque: at both ends of
 * the band it is just the permitted one. */
START_TEST(deviation)
{
    randoms r = {1};
    for (int i = 0; i < 1000; i++) {
        sw_tool_in in = own(0, 100, 0.5, random_between(&r, 20, 100));
        in.deviation_pct = random_between(&r, 0.1, 50);
        const sw_tool_out out = good("deviation", &in);
        const double a = in.deviation_pct / 100, S = out.set_torque_Nm;
        near((S - out.torque_low_Nm) / out.torque_low_Nm, a, 1e-14, 1e-12);
        near((S - out.torque_high_Nm) / out.torque_high_Nm, -a, 1e-14, 1e-12);
        near(out.torque_high_Nm / out.torque_low_Nm, (1 + a) / (1 - a), 0,
             1e-12);
    }
}
END_TEST

/* Independent: of all settings inside the usable range the nearest one, the
 * lower one of two, counted one by one. */
START_TEST(counted)
{
    randoms r = {2};
    int edges = 0;
    for (int i = 0; i < 4000; i++) {
        const double high = random_log(&r, 0.5, 500);
        const double step = high * random_log(&r, 0.002, 0.3);
        sw_tool_in in = own(high * random_between(&r, 0, 0.5), high, step, 1);
        in.usable_fraction = random_between(&r, 0, 0.5);
        const double low =
            fmax(in.range_low_Nm, in.usable_fraction * in.range_high_Nm);
        in.torque_Nm = random_between(&r, low, high);
        double best = NAN;
        for (int n = 1; n * step <= high; n++)
            if (n * step >= low &&
                !(fabs(n * step - in.torque_Nm) >= fabs(best - in.torque_Nm)))
                best = n * step;
        sw_error err;
        const sw_tool_out out = sw_tool(&in, &err);
        if (isnan(best)) {
            check_refused("no step", &err, SW_ERR_CONFLICT, "resolution_Nm");
            continue;
        }
        check_no_error("counted", out.status, &err);
        near(out.set_torque_Nm, best, 0, 1e-12);
        near(out.rounding_pct, 100 * (best / in.torque_Nm - 1), 1e-9, 0);
        /* half a step at most, but where the nearest lies outside */
        const double off = fabs(best - in.torque_Nm);
        if (off > 0.5 * step * (1 + 1e-9)) {
            edges++;
            must(best - step < low || best + step > high, "%g of %g", off,
                 step);
            must(off < step, "%g of %g", off, step);
        }
    }
    ck_assert_int_ge(edges, 20); /* the ends of the range were met */
}
END_TEST

/* Halfway goes to the lower setting, whatever the unit makes of the last
 * digit. */
START_TEST(halfway)
{
    for (int unit = SW_TORQUE_NM; unit <= SW_TORQUE_FTLBF; unit++)
        for (int n = 21; n < 100; n++) {
            const double Nm = unit_Nm(unit);
            sw_tool_in in = own(20 * Nm, 100 * Nm, Nm, (n + 0.5) * Nm);
            in.torque_unit = unit;
            near(good("halfway", &in).setting, n, 0, 1e-14);
            in.torque_Nm = (n + 0.5001) * Nm;
            near(good("above", &in).setting, n + 1, 0, 1e-14);
        }
}
END_TEST

/* What is set can be set: asked for again it stays, without rounding. */
START_TEST(idempotent)
{
    randoms r = {3};
    for (int i = 0; sw_tool_name(i); i++) {
        const sw_tool_in full = resolved(sw_tool_name(i));
        const double low = fmax(full.range_low_Nm, 0.2 * full.range_high_Nm);
        for (int k = 0; k < 200; k++) {
            const double wanted = random_between(&r, low, full.range_high_Nm);
            sw_tool_in in = of_table(full.tool, wanted);
            const sw_tool_out once = good(full.tool, &in);
            in.torque_Nm = once.set_torque_Nm;
            const sw_tool_out twice = good(full.tool, &in);
            near_in(full.tool, twice.set_torque_Nm, once.set_torque_Nm, 0, 0);
            near_in(full.tool, twice.rounding_pct, 0, 0, 0);
            must(!(twice.warnings & SW_WARN_TOOL_ROUNDING), "%s", full.tool);
            /* every usual tool has its usable ends on its steps */
            must(fabs(once.set_torque_Nm - wanted) <=
                     0.5 * full.resolution_Nm * (1 + 1e-9),
                 "%s at %g", full.tool, wanted);
            /* a whole number of steps of its own unit */
            const double n = once.set_torque_Nm / full.resolution_Nm;
            near_in(full.tool, n, floor(n + 0.5), 1e-9, 0);
        }
    }
}
END_TEST

/* One scale in two units, 12 in-lbf to 1 ft-lbf, is one tool. */
START_TEST(either_system)
{
    randoms r = {4};
    for (int i = 0; i < 2000; i++) {
        const double T = random_between(&r, 20, 100) * FTLBF;
        sw_tool_in foot = own(20 * FTLBF, 100 * FTLBF, FTLBF / 4, T);
        sw_tool_in inch = own(240 * INLBF, 1200 * INLBF, 3 * INLBF, T);
        sw_tool_in metre =
            own(27.116358966628008, 135.58179483314004, 0.3389544870828501, T);
        foot.torque_unit = SW_TORQUE_FTLBF;
        inch.torque_unit = SW_TORQUE_INLBF;
        metre.torque_unit = SW_TORQUE_NM;
        const sw_tool_out a = good("foot", &foot), b = good("inch", &inch),
                          c = good("metre", &metre);
        near(b.set_torque_Nm, a.set_torque_Nm, 0, 1e-14);
        near(c.set_torque_Nm, a.set_torque_Nm, 0, 1e-14);
        near(b.setting, 12 * a.setting, 0, 1e-14);
        near(c.setting, a.set_torque_Nm, 0, 1e-14);
    }
}
END_TEST

START_TEST(usable_ends)
{
    /* the ends themselves, after a conversion too */
    for (int i = 0; sw_tool_name(i); i++) {
        const sw_tool_in full = resolved(sw_tool_name(i));
        const double Nm = unit_Nm(full.torque_unit);
        const double low = fmax(full.range_low_Nm, 0.2 * full.range_high_Nm);
        const double end[] = {low, full.range_high_Nm, low / Nm * Nm,
                              full.range_high_Nm / Nm * Nm};
        for (int k = 0; k < 4; k++) {
            sw_error err;
            sw_tool_in in = of_table(full.tool, end[k]);
            good(full.tool, &in);
            in.torque_Nm = end[k] * (k % 2 ? 1 + 1e-6 : 1 - 1e-6);
            const sw_tool_out out = sw_tool(&in, &err);
            check_refused(full.tool, &err, SW_ERR_NONE, "torque_Nm");
            check_numbers(full.tool, &out, SW_STRUCT_TOOL_OUT, out.status);
            near_in(full.tool, err.low, low, 0, 1e-15);
            near_in(full.tool, err.high, full.range_high_Nm, 0, 1e-15);
        }
    }
    /* marked from zero, used from the fraction given */
    sw_tool_in in = of_table("dial-35Nm", 3.5);
    in.usable_fraction = 0.1;
    near(good("a tenth", &in).usable_low_Nm, 3.5, 0, 1e-15);
    in.usable_fraction = 0;
    near(good("all of it", &in).usable_low_Nm, 0, 0, 0);
    in.torque_Nm = 0.1; /* nearest is zero, which is no torque */
    near(good("the first step", &in).setting, 0.5, 0, 1e-15);
    /* the nearest setting, 26, lies outside */
    in = own(5, 25.9, 1, 25.8);
    near(good("inside", &in).setting, 25, 0, 0);
    in = own(5.5, 25, 1, 5.5);
    near(good("inside", &in).setting, 6, 0, 0);
}
END_TEST

/* Practice: a wrench that starts at 20 ft-lbf, an answer of 6. */
START_TEST(too_small)
{
    sw_error err;
    const sw_tool_in in = of_table("click-100ftlbf", 6 * FTLBF);
    const sw_tool_out out = sw_tool(&in, &err);
    ck_assert_int_eq(out.status, SW_ERR_NONE);
    ck_assert_str_eq(err.message,
                     "torque_Nm: 8.13491 N.m (6 ft-lbf) is below the usable 20 "
                     "to 100 ft-lbf of this tool; small click wrench, 40 to "
                     "200 in-lbf, would do (click-200inlbf)");
    const sw_tool_in metric = of_table("click-100Nm", 8.3);
    ck_assert_int_eq(sw_tool(&metric, &err).status, SW_ERR_NONE);
    ck_assert_str_eq(err.message,
                     "torque_Nm: 8.3 N.m is below the usable 20 to 100 N.m of "
                     "this tool; small click wrench, 2 to 10 N.m, would do "
                     "(click-10Nm)");
    ck_assert_int_eq(sw_tool(&metric, NULL).status, SW_ERR_NONE);
    /* and one that no usual tool reaches, below and above */
    static const double beyond[] = {0.05, 2000};
    for (int i = 0; i < 2; i++) {
        const sw_tool_in none = of_table("click-100Nm", beyond[i]);
        ck_assert_int_eq(sw_tool(&none, &err).status, SW_ERR_NONE);
        check_refused("none", &err, SW_ERR_NONE, "torque_Nm");
        ck_assert_ptr_nonnull(strstr(err.message, "flats of nut turn"));
        ck_assert_ptr_nonnull(strstr(err.message, i ? "above" : "below"));
        near(err.low, 20, 0, 1e-15);
    }
}
END_TEST

/* Of half the usable range; independent of the library's ranking. */
static double from_middle(const sw_tool_out *t)
{
    return fabs(t->torque_Nm - (t->usable_low_Nm + t->usable_high_Nm) / 2) /
           (t->usable_high_Nm - t->usable_low_Nm);
}

static int is_metric(int unit) { return unit == SW_TORQUE_NM; }

/* All that would do, each once, the best first, one's own system before. */
START_TEST(choice)
{
    randoms r = {5};
    for (int i = 0; i < 1500; i++) {
        const double T = random_log(&r, 0.15, 400);
        const int unit = random_below(&r, 4);
        int want = 0, got = 0, other = 0;
        for (int k = 0; sw_tool_name(k); k++) {
            const sw_tool_in in = of_table(sw_tool_name(k), T);
            want += sw_tool(&in, NULL).status == 0;
        }
        double last = -1;
        sw_error err;
        for (;; got++) {
            const sw_tool_out t = sw_tool_for(T, unit, got, &err);
            check_numbers("for", &t, SW_STRUCT_TOOL_OUT, t.status);
            if (t.status)
                break;
            check_no_error("for", t.status, &err);
            const sw_tool_in in = of_table(t.tool, T);
            const sw_tool_out same = good(t.tool, &in);
            near_in(t.tool, t.set_torque_Nm, same.set_torque_Nm, 0, 0);
            if (unit && !other && is_metric(unit) != is_metric(t.torque_unit)) {
                other = 1;
                last = -1;
            }
            must(!other || is_metric(unit) != is_metric(t.torque_unit),
                 "%s comes late", t.tool);
            must(from_middle(&t) >= last - 1e-12, "%s at %g", t.tool, T);
            last = from_middle(&t);
        }
        ck_assert_int_eq(got, want);
        check_refused("end", &err, got ? SW_ERR_RANGE : SW_ERR_NONE,
                      got ? "index" : "torque_Nm");
    }
    /* 120 N.m is the middle of 40 to 200 N.m */
    ck_assert_str_eq(sw_tool_for(120, 0, 0, NULL).tool, "click-200Nm");
    ck_assert_str_eq(sw_tool_for(120, SW_TORQUE_NM, 0, NULL).tool,
                     "click-200Nm");
    ck_assert(
        !is_metric(sw_tool_for(120, SW_TORQUE_INLBF, 0, NULL).torque_unit));
}
END_TEST

START_TEST(choice_refused)
{
    sw_error err;
    static const double bad[] = {0, -1, 1e7, INFINITY, NAN, SW_UNSET};
    for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++) {
        const sw_tool_out t = sw_tool_for(bad[i], 0, 0, &err);
        check_refused("torque", &err, isnan(bad[i]) ? SW_ERR_NAN : SW_ERR_RANGE,
                      "torque_Nm");
        check_numbers("torque", &t, SW_STRUCT_TOOL_OUT, t.status);
    }
    ck_assert_int_eq(sw_tool_for(50, 4, 0, &err).status, SW_ERR_RANGE);
    check_refused("unit", &err, SW_ERR_RANGE, "torque_unit");
    ck_assert_int_eq(sw_tool_for(50, -1, 0, NULL).status, SW_ERR_RANGE);
    ck_assert_int_eq(sw_tool_for(50, 0, -1, &err).status, SW_ERR_RANGE);
    check_refused("index", &err, SW_ERR_RANGE, "index");
    ck_assert_int_eq(sw_tool_for(0.01, 0, 0, &err).status, SW_ERR_NONE);
    check_refused("small", &err, SW_ERR_NONE, "torque_Nm");
    ck_assert_ptr_nonnull(strstr(err.message, "flats"));
    ck_assert_ptr_null(sw_tool_name(-1));
    int n = 0;
    while (sw_tool_name(n))
        n++;
    ck_assert_int_ge(n, 20);
    ck_assert_ptr_null(sw_tool_name(n + 1));
}
END_TEST

/* Every kind in both systems; one of each range from tenths of a newton metre
 * to what an M20 stud takes. */
START_TEST(every_row)
{
    int kinds[3] = {0}, units[4] = {0};
    for (int i = 0; sw_tool_name(i); i++) {
        const sw_tool_in in = resolved(sw_tool_name(i));
        must(in.range_low_Nm < in.range_high_Nm, "%s", in.tool);
        must(in.resolution_Nm <= 0.2 * in.range_high_Nm, "%s", in.tool);
        kinds[in.tool_kind]++;
        units[in.torque_unit]++;
        const sw_tool_in ask = of_table(in.tool, in.range_high_Nm / 2);
        const sw_tool_out out = good(in.tool, &ask);
        ck_assert_str_eq(out.tool, in.tool);
        must(out.label[0], "%s", in.tool);
        ck_assert_uint_eq(out.warnings & SW_WARN_TOOL_ASSUMED,
                          SW_WARN_TOOL_ASSUMED);
        for (int k = 0; k < i; k++)
            ck_assert_str_ne(sw_tool_name(k), in.tool);
    }
    ck_assert(kinds[1] >= 8 && kinds[2] >= 8);
    ck_assert(units[1] >= 8 && units[2] >= 4 && units[3] >= 4);
    for (double T = 0.21; T < 340; T *= 1.01)
        must(sw_tool_for(T, 0, 0, NULL).status == 0, "%g N.m", T);
}
END_TEST

START_TEST(warned)
{
    /* a quarter of 4 %: 0.5 in 50 is just 1 % */
    sw_tool_in in = own(20, 100, 1, 50);
    in.deviation_pct = 4;
    ck_assert_uint_eq(good("even", &in).warnings, 0);
    in.torque_Nm = 50.4; /* 0.79 % */
    ck_assert_uint_eq(good("little", &in).warnings, 0);
    in.torque_Nm = 30.4; /* 1.3 % */
    ck_assert_uint_eq(good("much", &in).warnings, SW_WARN_TOOL_ROUNDING);
    in.deviation_pct = 6; /* of 1.5 % */
    ck_assert_uint_eq(good("class", &in).warnings, 0);
    in.deviation_pct = SW_UNSET;
    ck_assert_uint_eq(good("open", &in).warnings,
                      SW_WARN_TOOL_ROUNDING | SW_WARN_TOOL_ASSUMED);
}
END_TEST

/* What is given beside a tool of the table replaces what the table says. */
START_TEST(certificate)
{
    sw_tool_in in = of_table("click-25Nm", 10);
    in.deviation_pct = 2;
    near(good("certificate", &in).deviation_pct, 2, 0, 0);
    in.range_high_Nm = 30;
    in.resolution_Nm = 0.2;
    const sw_tool_out out = good("own", &in);
    near(out.usable_high_Nm, 30, 0, 0);
    near(out.usable_low_Nm, 6, 0, 1e-15);
    ck_assert_uint_eq(out.warnings, 0);
    int n = 0, from_table = 0;
    for (;; n++) {
        const sw_assumption a = sw_tool_assumed(&in, n, NULL);
        if (a.status)
            break;
        from_table += strstr(a.source, "small click wrench") != NULL;
        must(strstr(a.source, "no source") || strstr(a.source, "memory"), "%s",
             a.source);
    }
    ck_assert_int_eq(n, 4); /* lower end, fraction, kind, unit */
    ck_assert_int_eq(from_table, 3);
}
END_TEST

START_TEST(refused)
{
    static const struct {
        const char *tool;
        double torque, low, high, step;
        int code;
        const char *field;
    } row[] = {
        {"", SW_UNSET, 0, 100, 1, SW_ERR_MISSING, "torque_Nm"},
        {"click-25Nm", SW_UNSET, SW_UNSET, SW_UNSET, SW_UNSET, SW_ERR_MISSING,
         "torque_Nm"},
        {"", 50, SW_UNSET, SW_UNSET, SW_UNSET, SW_ERR_MISSING, "tool"},
        {"", 50, 0, SW_UNSET, 1, SW_ERR_MISSING, "tool"},
        {"", 50, 0, 100, SW_UNSET, SW_ERR_MISSING, "resolution_Nm"},
        {"click", 10, SW_UNSET, SW_UNSET, SW_UNSET, SW_ERR_UNKNOWN, "tool"},
        {"click-25NM ", 10, SW_UNSET, SW_UNSET, SW_UNSET, SW_ERR_UNKNOWN,
         "tool"},
        {"", 50, 100, 100, 1, SW_ERR_CONFLICT, "range_low_Nm"},
        {"", 50, 101, 100, 1, SW_ERR_CONFLICT, "range_low_Nm"},
        {"click-25Nm", 10, 26, SW_UNSET, SW_UNSET, SW_ERR_CONFLICT,
         "range_low_Nm"},
        {"", 50, 0, 100, 101, SW_ERR_CONFLICT, "resolution_Nm"},
        {"", 62, 60, 65, 22, SW_ERR_CONFLICT, "resolution_Nm"},
        {"", 19, 20, 100, 1, SW_ERR_NONE, "torque_Nm"},
        {"", 101, 20, 100, 1, SW_ERR_NONE, "torque_Nm"},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_error err;
        sw_tool_in in =
            own(row[i].low, row[i].high, row[i].step, row[i].torque);
        SET(in.tool, row[i].tool);
        const sw_tool_out out = sw_tool(&in, &err);
        check_refused(row[i].field, &err, row[i].code, row[i].field);
        ck_assert_int_eq(out.status, row[i].code);
        check_numbers(row[i].field, &out, SW_STRUCT_TOOL_OUT, out.status);
    }
    sw_error err;
    const sw_tool_in in = of_table("clik-25Nm", 10);
    ck_assert_int_eq(sw_tool(&in, &err).status, SW_ERR_UNKNOWN);
    ck_assert_ptr_nonnull(strstr(err.message, "nearest is click-25Nm"));
}
END_TEST

/* ---- the shop's own file ---- */

#define HEAD "name;kind;from [ft-lbf];to [ft-lbf];step [ft-lbf];deviation [%]\n"

START_TEST(own_file)
{
    static const char file[] = "# wrenches of the second shift\n" HEAD
                               "big clicker;setting;30;150;1;4\n"
                               "\n"
                               "old beam;indicating;;60;2;\n"
                               "small;;;20;0.5;3\n";
    sw_error err;
    sw_shop_tool_out t = sw_shop_tool(file, "tools.csv", 0, &err);
    check_no_error("0", t.status, &err);
    check_numbers("0", &t, SW_STRUCT_SHOP_TOOL_OUT, t.status);
    ck_assert_str_eq(t.name, "big clicker");
    ck_assert_int_eq(t.tool_kind, SW_TOOL_SETTING);
    ck_assert_int_eq(t.torque_unit, SW_TORQUE_FTLBF);
    near(t.range_low_Nm, 30 * FTLBF, 0, 1e-15);
    near(t.range_high_Nm, 150 * FTLBF, 0, 1e-15);
    near(t.resolution_Nm, FTLBF, 0, 1e-15);
    near(t.deviation_pct, 4, 0, 1e-15);
    ck_assert_uint_eq(t.warnings, 0);
    sw_tool_in in = of_table("click-25Nm", 50.4 * FTLBF);
    sw_tool_use(&in, &t);
    near(good("use", &in).setting, 50, 0, 1e-14);
    ck_assert_uint_eq(good("use", &in).warnings, 0);
    t = sw_shop_tool(file, NULL, 1, &err);
    check_no_error("1", t.status, &err);
    ck_assert_int_eq(t.tool_kind, SW_TOOL_INDICATING);
    ck_assert(t.range_low_Nm == SW_UNSET && t.deviation_pct == SW_UNSET);
    ck_assert_uint_eq(t.warnings, SW_WARN_TOOL_ASSUMED);
    sw_tool_use(&in, &t);
    near(good("use", &in).usable_low_Nm, 12 * FTLBF, 0, 1e-15);
    t = sw_shop_tool(file, NULL, 2, &err);
    ck_assert_str_eq(t.name, "small");
    ck_assert_int_eq(t.tool_kind, SW_UNSET_WORD);
    for (int i = -1; i <= 3; i += 4) {
        t = sw_shop_tool(file, "tools.csv", i, &err);
        check_refused("end", &err, SW_ERR_RANGE, "index");
        check_numbers("end", &t, SW_STRUCT_SHOP_TOOL_OUT, t.status);
    }
    /* the scale is marked in the unit of `to`, others are read in N.m */
    static const struct {
        const char *unit;
        int want;
    } unit[] = {{"N.m", SW_TORQUE_NM},      {"Nm", SW_TORQUE_NM},
                {"in-lb", SW_TORQUE_INLBF}, {"in-lbf", SW_TORQUE_INLBF},
                {"lb-ft", SW_TORQUE_FTLBF}, {"kgf.cm", SW_TORQUE_NM}};
    for (size_t i = 0; i < sizeof unit / sizeof unit[0]; i++) {
        char text[200];
        snprintf(text, sizeof text, "name,to [%s],step [in-lbf]\nx,100,1\n",
                 unit[i].unit);
        t = sw_shop_tool(text, NULL, 0, &err);
        check_no_error(unit[i].unit, t.status, &err);
        ck_assert_int_eq(t.torque_unit, unit[i].want);
        near_in(unit[i].unit, t.resolution_Nm, INLBF, 0, 1e-15);
    }
}
END_TEST

START_TEST(own_file_refused)
{
    static const struct {
        const char *text, *where, *field;
        int code;
    } row[] = {
        {"", "t.csv:1: ", "file", SW_ERR_MISSING},
        {HEAD, "t.csv:1: ", "file", SW_ERR_MISSING},
        {"name,step [N.m]\nx,1\n", "t.csv:1: ", "to", SW_ERR_MISSING},
        {"name,to,step [N.m]\nx,9,1\n", "t.csv:1: ", "to", SW_ERR_UNIT},
        {"name,to [mm],step [N.m]\nx,9,1\n", "t.csv:1: ", "to", SW_ERR_UNIT},
        {"name,to [N.m],step [N.m],colour\nx,9,1,red\n", "t.csv:1: ", "header",
         SW_ERR_UNKNOWN},
        {HEAD "a;setting;30;150;1;4\nb;click;30;150;1;4\n", "t.csv:3: ", "kind",
         SW_ERR_UNKNOWN},
        {HEAD "a;setting;150;150;1;4\n", "t.csv:2: ", "from", SW_ERR_CONFLICT},
        {HEAD "a;setting;30;150;200;4\n", "t.csv:2: ", "step", SW_ERR_CONFLICT},
        {HEAD "a;setting;30;150;0;4\n", "t.csv:2: ", "step", SW_ERR_RANGE},
        {HEAD "a;setting;-1;150;1;4\n", "t.csv:2: ", "from", SW_ERR_RANGE},
        {HEAD "a;setting;30;0;1;4\n", "t.csv:2: ", "to", SW_ERR_RANGE},
        {HEAD "a;setting;30;150;1;0\n", "t.csv:2: ", "deviation", SW_ERR_RANGE},
        {HEAD "a;setting;30;150;1;60\n", "t.csv:2: ", "deviation",
         SW_ERR_RANGE},
        {HEAD ";setting;30;150;1;4\n", "t.csv:2: ", "name", SW_ERR_MISSING},
        {HEAD "a;setting;30;nan;1;4\n", "t.csv:2: ", "to", SW_ERR_SYNTAX},
        {HEAD "a;setting;30;1,5;1;4\n", "t.csv:2: ", "to", SW_ERR_SYNTAX},
        {HEAD "0123456789012345678901234567890123456789012345678901234567890123"
              ";;;9;1;\n",
         "t.csv:2: ", "name", SW_ERR_RANGE},
    };
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        sw_error err;
        const sw_shop_tool_out t = sw_shop_tool(row[i].text, "t.csv", 0, &err);
        check_refused(row[i].text, &err, row[i].code, row[i].field);
        check_numbers(row[i].text, &t, SW_STRUCT_SHOP_TOOL_OUT, t.status);
        must(strncmp(err.message, row[i].where, strlen(row[i].where)) == 0,
             "%s", err.message);
        ck_assert_int_eq(sw_shop_tool(row[i].text, NULL, 0, NULL).status,
                         row[i].code);
    }
    sw_error err;
    ck_assert_int_eq(sw_shop_tool(NULL, "t.csv", 0, &err).status, SW_ERR_NULL);
    check_refused("NULL", &err, SW_ERR_NULL, "text");
    sw_tool_use(NULL, NULL); /* does nothing */
    /* 200 tools and no more */
    static char text[8000] = HEAD;
    for (int i = 0; i < 200; i++)
        strcat(text, "a;setting;30;150;1;4\n");
    ck_assert_int_eq(sw_shop_tool(text, NULL, 199, &err).status, SW_OK);
    strcat(text, "a;setting;30;150;1;4\n");
    ck_assert_int_eq(sw_shop_tool(text, NULL, 0, &err).status, SW_ERR_RANGE);
    check_refused("many", &err, SW_ERR_RANGE, "row");
}
END_TEST

int main(void)
{
    return RUN_TESTS("tool", conversions, permitted, deviation, counted,
                     halfway, idempotent, either_system, usable_ends, too_small,
                     choice, choice_refused, every_row, warned, certificate,
                     refused, own_file, own_file_refused);
}
