/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Field: the lists cover their structs to the last byte, and the checks that
 * follow from the list alone hold for every field of every input.
 */
#include "../common.h"
#include "../near.h"

typedef struct {
    const char *name;
    int structure;
    size_t size;
    int has_status, has_warnings;
    size_t warnings, assumed, seal; /* offsets; 0 = none */
} described;

#define OUT(type, number)                                                      \
    {                                                                          \
#type, number, sizeof(type), 1, 1, offsetof(type, warnings), 0, 0      \
    }
#define IN(type, number)                                                       \
    {                                                                          \
#type, number, sizeof(type), 0, 0, 0, offsetof(type, assumed),         \
            offsetof(type, seal)                                               \
    }
/* a question that is never resolved */
#define HOW(type, number)                                                      \
    {                                                                          \
#type, number, sizeof(type), 0, 0, 0, 0, 0                             \
    }

static const described all[] = {
    OUT(sw_thread_out, SW_STRUCT_THREAD_OUT),
    OUT(sw_grade_out, SW_STRUCT_GRADE_OUT),
    OUT(sw_lubrication_out, SW_STRUCT_LUBRICATION_OUT),
    IN(sw_torque_in, SW_STRUCT_TORQUE_IN),
    OUT(sw_torque_out, SW_STRUCT_TORQUE_OUT),
    IN(sw_chart_in, SW_STRUCT_CHART_IN),
    OUT(sw_chart_out, SW_STRUCT_CHART_OUT),
    IN(sw_strap_in, SW_STRUCT_STRAP_IN),
    OUT(sw_strap_out, SW_STRUCT_STRAP_OUT),
    OUT(sw_tilt_out, SW_STRUCT_TILT_OUT),
    OUT(sw_place_out, SW_STRUCT_PLACE_OUT),
    OUT(sw_strap_torque_out, SW_STRUCT_STRAP_TORQUE_OUT),
    OUT(sw_matter_out, SW_STRUCT_MATTER_OUT),
    OUT(sw_method_out, SW_STRUCT_METHOD_OUT),
    IN(sw_spread_in, SW_STRUCT_SPREAD_IN),
    OUT(sw_spread_out, SW_STRUCT_SPREAD_OUT),
    OUT(sw_window_out, SW_STRUCT_WINDOW_OUT),
    OUT(sw_strap_spread_out, SW_STRUCT_STRAP_SPREAD_OUT),
    IN(sw_tool_in, SW_STRUCT_TOOL_IN),
    OUT(sw_tool_out, SW_STRUCT_TOOL_OUT),
    OUT(sw_shop_tool_out, SW_STRUCT_SHOP_TOOL_OUT),
    OUT(sw_pairs_out, SW_STRUCT_PAIRS_OUT),
    OUT(sw_pair_out, SW_STRUCT_PAIR_OUT),
    IN(sw_calibrate_in, SW_STRUCT_CALIBRATE_IN),
    OUT(sw_calibrate_out, SW_STRUCT_CALIBRATE_OUT),
    OUT(sw_material_out, SW_STRUCT_MATERIAL_OUT),
    OUT(sw_nut_out, SW_STRUCT_NUT_OUT),
    IN(sw_strip_in, SW_STRUCT_STRIP_IN),
    OUT(sw_strip_out, SW_STRUCT_STRIP_OUT),
    IN(sw_engage_in, SW_STRUCT_ENGAGE_IN),
    OUT(sw_gives_out, SW_STRUCT_GIVES_OUT),
    OUT(sw_turn_out, SW_STRUCT_TURN_OUT),
    HOW(sw_strap_drawing_in, SW_STRUCT_STRAP_DRAWING_IN),
    IN(sw_support_in, SW_STRUCT_SUPPORT_IN),
    IN(sw_clamp_in, SW_STRUCT_CLAMP_IN),
    IN(sw_stop_in, SW_STRUCT_STOP_IN),
    IN(sw_load_in, SW_STRUCT_LOAD_IN),
    IN(sw_weight_in, SW_STRUCT_WEIGHT_IN),
    IN(sw_hold_in, SW_STRUCT_HOLD_IN),
    OUT(sw_hold_out, SW_STRUCT_HOLD_OUT),
    OUT(sw_hold_point_out, SW_STRUCT_HOLD_POINT_OUT),
    OUT(sw_hold_contact_out, SW_STRUCT_HOLD_CONTACT_OUT),
    OUT(sw_job_out, SW_STRUCT_JOB_OUT),
    OUT(sw_job_corner_out, SW_STRUCT_JOB_CORNER_OUT),
    OUT(sw_job_clamp_out, SW_STRUCT_JOB_CLAMP_OUT),
    OUT(sw_job_operation_out, SW_STRUCT_JOB_OPERATION_OUT),
    HOW(sw_hold_map_in, SW_STRUCT_HOLD_MAP_IN),
    IN(sw_screw_in, SW_STRUCT_SCREW_IN),
    OUT(sw_screw_out, SW_STRUCT_SCREW_OUT),
    IN(sw_cylinder_in, SW_STRUCT_CYLINDER_IN),
    OUT(sw_cylinder_out, SW_STRUCT_CYLINDER_OUT),
    IN(sw_swing_in, SW_STRUCT_SWING_IN),
    OUT(sw_swing_out, SW_STRUCT_SWING_OUT),
    IN(sw_vacuum_in, SW_STRUCT_VACUUM_IN),
    OUT(sw_vacuum_out, SW_STRUCT_VACUUM_OUT),
    IN(sw_adhesive_in, SW_STRUCT_ADHESIVE_IN),
    OUT(sw_adhesive_out, SW_STRUCT_ADHESIVE_OUT),
    IN(sw_bar_in, SW_STRUCT_BAR_IN),
    OUT(sw_bar_out, SW_STRUCT_BAR_OUT),
    IN(sw_contact_in, SW_STRUCT_CONTACT_IN),
    OUT(sw_contact_out, SW_STRUCT_CONTACT_OUT),
    IN(sw_pad_in, SW_STRUCT_PAD_IN),
    OUT(sw_pad_out, SW_STRUCT_PAD_OUT),
    IN(sw_disc_in, SW_STRUCT_DISC_IN),
    OUT(sw_disc_out, SW_STRUCT_DISC_OUT),
    IN(sw_chuck_in, SW_STRUCT_CHUCK_IN),
    OUT(sw_chuck_out, SW_STRUCT_CHUCK_OUT),
    IN(sw_squeeze_in, SW_STRUCT_SQUEEZE_IN),
    OUT(sw_squeeze_out, SW_STRUCT_SQUEEZE_OUT),
    IN(sw_couple_in, SW_STRUCT_COUPLE_IN),
    OUT(sw_couple_out, SW_STRUCT_COUPLE_OUT),
    IN(sw_tripod_in, SW_STRUCT_TRIPOD_IN),
    OUT(sw_tripod_out, SW_STRUCT_TRIPOD_OUT),
    IN(sw_tight_in, SW_STRUCT_TIGHT_IN),
    OUT(sw_tight_out, SW_STRUCT_TIGHT_OUT),
    OUT(sw_remedy_out, SW_STRUCT_REMEDY_OUT),
    OUT(sw_cut_material_out, SW_STRUCT_CUT_MATERIAL_OUT),
    OUT(sw_cut_load_out, SW_STRUCT_CUT_LOAD_OUT),
    IN(sw_turning_in, SW_STRUCT_TURNING_IN),
    OUT(sw_turning_out, SW_STRUCT_TURNING_OUT),
    IN(sw_milling_in, SW_STRUCT_MILLING_IN),
    OUT(sw_milling_out, SW_STRUCT_MILLING_OUT),
    IN(sw_drilling_in, SW_STRUCT_DRILLING_IN),
    OUT(sw_drilling_out, SW_STRUCT_DRILLING_OUT),
};

enum { ALL = sizeof all / sizeof all[0], LARGEST = 2048 };

static const described *of(int structure)
{
    for (int i = 0; i < ALL; i++)
        if (all[i].structure == structure)
            return &all[i];
    ck_abort_msg("structure %d has no row here", structure);
    return NULL;
}

static void mark(unsigned char *taken, size_t offset, size_t size,
                 const char *name)
{
    for (size_t i = offset; i < offset + size; i++) {
        must(!taken[i], "%s lies on another field", name);
        taken[i] = 1;
    }
}

/* What no field covers is status, warnings, assumed, seal, or padding: fewer
 * than 8 bytes before something that must be aligned, never a whole double, and
 * no int unless it is the padding of one. */
START_TEST(covered)
{
    ck_assert_int_eq(ALL, SW_STRUCT_COUNT);
    for (int s = 1; s <= SW_STRUCT_COUNT; s++) {
        const described *d = of(s);
        unsigned char taken[LARGEST] = {0}, starts[LARGEST + 1] = {0};
        ck_assert_uint_le(d->size, LARGEST);
        if (d->has_status)
            mark(taken, 0, sizeof(int), "status");
        if (d->has_warnings) {
            mark(taken, d->warnings, sizeof(uint64_t), "warnings");
            starts[d->warnings] = 8;
        }
        if (d->assumed) {
            mark(taken, d->assumed, sizeof(uint64_t), "assumed");
            mark(taken, d->seal, sizeof(uint64_t), "seal");
            starts[d->assumed] = starts[d->seal] = 8;
        }
        for (int i = 0; sw_field_at(s, i); i++) {
            const sw_field *f = sw_field_at(s, i);
            ck_assert_uint_le(f->offset + f->size, d->size);
            mark(taken, f->offset, f->size, f->name);
            starts[f->offset] = f->type == SW_FIELD_NUMBER ? 8
                                : f->type == SW_FIELD_WORD ? 4
                                                           : 1;
        }
        starts[d->size] = 8;
        for (size_t i = 0; i < d->size;) {
            size_t end = i;
            while (end < d->size && !taken[end])
                end++;
            if (end > i)
                must(end - i < starts[end],
                     "%s: %d bytes at %d belong to no field", d->name,
                     (int)(end - i), (int)i);
            i = end > i ? end : i + 1;
        }
    }
}
END_TEST

START_TEST(rows)
{
    static const struct {
        const char *tail, *unit;
    } tail[] = {
        {"_m", "m"},
        {"_N", "N"},
        {"_Nm", "N.m"},
        {"_mm", "mm"},
        {"_MPa", "MPa"},
        {"_deg", "deg"},
        {"_pct", "%"},
        {"_mm2", "mm2"},
        {"_mm_per_m", "mm/m"},
        {"_mm_per_N", "mm/N"},
        {"_per_klbf_ftlbf", "ft-lbf"},
        {"_per_kN_Nm", "N.m"},
        {"_kg_per_m3", "kg/m3"},
        {"_inlbf", "in-lbf"},
        {"_torque_ftlbf", "ft-lbf"},
        {"_px", "px"},
        {"_kg", "kg"},
        {"_N_per_mm", "N/mm"},
        {"_W", "W"},
        {"_rpm", "rpm"},
        {"_m_per_min", "m/min"},
        {"_mm_per_min", "mm/min"},
        {"_mm3_per_min", "mm3/min"},
    };
    for (int s = 1; s <= SW_STRUCT_COUNT; s++)
        for (int i = 0; sw_field_at(s, i); i++) {
            const sw_field *f = sw_field_at(s, i);
            const size_t n = strlen(f->name);
            ck_assert_uint_lt(n, sizeof((sw_error *)0)->field);
            ck_assert_uint_lt(n, sizeof((sw_assumption *)0)->name);
            ck_assert_uint_lt(strlen(f->unit),
                              sizeof((sw_assumption *)0)->unit);
            ck_assert_uint_lt(strlen(f->source),
                              sizeof((sw_assumption *)0)->source);
            ck_assert_ptr_eq(sw_field_named(s, f->name), f);
            const char *unit = "";
            for (size_t t = 0; t < sizeof tail / sizeof tail[0]; t++) {
                const size_t m = strlen(tail[t].tail);
                if (n > m && strcmp(f->name + n - m, tail[t].tail) == 0)
                    unit = tail[t].unit;
            }
            must(strcmp(f->unit, unit) == 0,
                 "%s has the unit \"%s\", its name says \"%s\"", f->name,
                 f->unit, unit);
            switch (f->type) {
            case SW_FIELD_NUMBER:
                ck_assert_uint_eq(f->size, sizeof(double));
                break;
            case SW_FIELD_WORD:
                ck_assert_uint_eq(f->size, sizeof(int));
                ck_assert_ptr_nonnull(sw_word(f->words, 1));
                break;
            case SW_FIELD_TEXT:
                ck_assert_uint_gt(f->size, 1);
                break;
            default:
                ck_abort_msg("%s: type %d", f->name, f->type);
            }
            if (of(s)->assumed && f->type == SW_FIELD_NUMBER) {
                must(f->min < f->max, "%s", f->name);
                must(f->low <= f->high, "%s", f->name);
                if (f->relative)
                    must(0 <= f->low && f->low <= 1 && 1 <= f->high, "%s",
                         f->name);
                else if (f->low < f->high)
                    must(f->min <= f->low && f->high <= f->max, "%s", f->name);
            }
        }
}
END_TEST

START_TEST(past_the_end)
{
    static const int none[] = {0, -1, SW_STRUCT_COUNT + 1, 1000};
    for (size_t i = 0; i < sizeof none / sizeof none[0]; i++) {
        ck_assert_ptr_null(sw_field_at(none[i], 0));
        ck_assert_ptr_null(sw_field_named(none[i], "thread"));
    }
    for (int s = 1; s <= SW_STRUCT_COUNT; s++) {
        int n = 0;
        while (sw_field_at(s, n))
            n++;
        ck_assert_int_ge(n, 3);
        ck_assert_int_le(n, 64); /* one bit each in `assumed` */
        ck_assert_ptr_null(sw_field_at(s, n + 1));
        ck_assert_ptr_null(sw_field_at(s, 1000000));
        ck_assert_ptr_null(sw_field_at(s, -1));
        ck_assert_ptr_null(sw_field_named(s, "no_such_field"));
        ck_assert_ptr_null(sw_field_named(s, ""));
        ck_assert_ptr_null(sw_field_named(s, NULL));
        ck_assert_ptr_null(sw_field_named(s, "status"));
    }
}
END_TEST

/* ---- every input alike ---- */

typedef union {
    sw_torque_in torque;
    sw_chart_in chart;
    sw_strap_in strap;
    sw_tool_in tool;
    sw_calibrate_in calibrate;
    sw_strip_in strip;
    sw_engage_in engage;
    sw_turning_in turning;
    sw_milling_in milling;
    sw_drilling_in drilling;
} any_in;

typedef union {
    sw_torque_out torque;
    sw_chart_out chart;
    sw_strap_out strap;
    sw_tool_out tool;
    sw_calibrate_out calibrate;
    sw_strip_out strip;
    sw_gives_out gives;
    sw_turning_out turning;
    sw_milling_out milling;
    sw_drilling_out drilling;
} any_out;

static const int inputs[] = {SW_STRUCT_TORQUE_IN,    SW_STRUCT_CHART_IN,
                             SW_STRUCT_STRAP_IN,     SW_STRUCT_TOOL_IN,
                             SW_STRUCT_CALIBRATE_IN, SW_STRUCT_STRIP_IN,
                             SW_STRUCT_ENGAGE_IN,    SW_STRUCT_TURNING_IN,
                             SW_STRUCT_MILLING_IN,   SW_STRUCT_DRILLING_IN};
enum { INPUTS = sizeof inputs / sizeof inputs[0] };

/* What a calibration is put with; with a torque measured apart, so that every
 * field enters. */
static const sw_pairs *some_pairs(void)
{
    static sw_pairs *pairs;
    if (!pairs) {
        pairs = sw_pairs_new(NULL);
        must(!sw_pairs_add(pairs, 20, 8300, 9, SW_UNSET, NULL) &&
                 !sw_pairs_add(pairs, 40, 16900, SW_UNSET, 20, NULL),
             "no pairs");
    }
    return pairs;
}

static void prepare(any_in *in, int structure)
{
    memset(in, 0xa5, sizeof *in); /* defaults must set every byte that counts */
    switch (structure) {
    case SW_STRUCT_TORQUE_IN:
        sw_torque_defaults(&in->torque);
        break;
    case SW_STRUCT_CHART_IN:
        sw_chart_defaults(&in->chart);
        break;
    case SW_STRUCT_TOOL_IN:
        sw_tool_defaults(&in->tool);
        break;
    case SW_STRUCT_CALIBRATE_IN:
        sw_calibrate_defaults(&in->calibrate);
        break;
    case SW_STRUCT_STRIP_IN:
        sw_strip_defaults(&in->strip);
        break;
    case SW_STRUCT_ENGAGE_IN:
        sw_engage_defaults(&in->engage);
        break;
    case SW_STRUCT_TURNING_IN:
        sw_turning_defaults(&in->turning);
        break;
    case SW_STRUCT_MILLING_IN:
        sw_milling_defaults(&in->milling);
        break;
    case SW_STRUCT_DRILLING_IN:
        sw_drilling_defaults(&in->drilling);
        break;
    default:
        sw_strap_defaults(&in->strap);
    }
}

/* With what is required, and the rest left open. */
static void prepare_good(any_in *in, int structure)
{
    prepare(in, structure);
    switch (structure) {
    case SW_STRUCT_TORQUE_IN:
        SET(in->torque.thread, "M12");
        in->torque.preload_N = 10000;
        break;
    case SW_STRUCT_CHART_IN:
        SET(in->chart.thread, "M12");
        break;
    case SW_STRUCT_TOOL_IN:
        SET(in->tool.tool, "click-25Nm");
        in->tool.torque_Nm = 12;
        break;
    case SW_STRUCT_CALIBRATE_IN:
        SET(in->calibrate.thread, "M12");
        break;
    case SW_STRUCT_STRIP_IN:
        SET(in->strip.thread, "M12");
        in->strip.preload_N = 10000;
        break;
    case SW_STRUCT_ENGAGE_IN:
        break;
    case SW_STRUCT_TURNING_IN:
        SET(in->turning.material, "vdi-2");
        in->turning.depth_mm = 2;
        in->turning.feed_mm = 0.25;
        break;
    case SW_STRUCT_MILLING_IN:
        SET(in->milling.material, "6061-T6");
        in->milling.rake_deg = 10;
        in->milling.diameter_mm = 12;
        in->milling.teeth = 3;
        in->milling.feed_per_tooth_mm = 0.08;
        in->milling.depth_mm = 10;
        in->milling.width_mm = 3;
        break;
    case SW_STRUCT_DRILLING_IN:
        SET(in->drilling.material, "Ti-6Al-4V");
        in->drilling.diameter_mm = 10;
        in->drilling.feed_mm = 0.2;
        break;
    default:
        SET(in->strap.thread, "M12");
        in->strap.preload_N = 10000;
        in->strap.stud_to_toe_mm = 30;
        in->strap.stud_to_heel_mm = 60;
        in->strap.tilt_deg = 1;
    }
}

/* The strap that goes with a question about its ends. */
static sw_strap_in strap_for_engage(void)
{
    any_in in;
    prepare_good(&in, SW_STRUCT_STRAP_IN);
    return in.strap;
}

static int ask(const any_in *in, int structure, any_out *out, sw_error *err)
{
    sw_strap_in strap;
    memset(out, 0x5a, sizeof *out);
    switch (structure) {
    case SW_STRUCT_TORQUE_IN:
        out->torque = sw_torque(&in->torque, err);
        check_numbers("torque", out, SW_STRUCT_TORQUE_OUT, out->torque.status);
        return out->torque.status;
    case SW_STRUCT_CHART_IN:
        out->chart = sw_chart(&in->chart, err);
        check_numbers("chart", out, SW_STRUCT_CHART_OUT, out->chart.status);
        return out->chart.status;
    case SW_STRUCT_TOOL_IN:
        out->tool = sw_tool(&in->tool, err);
        check_numbers("tool", out, SW_STRUCT_TOOL_OUT, out->tool.status);
        return out->tool.status;
    case SW_STRUCT_CALIBRATE_IN:
        out->calibrate = sw_calibrate(&in->calibrate, some_pairs(), err);
        check_numbers("calibrate", out, SW_STRUCT_CALIBRATE_OUT,
                      out->calibrate.status);
        return out->calibrate.status;
    case SW_STRUCT_STRIP_IN:
        out->strip = sw_strip(&in->strip, err);
        check_numbers("strip", out, SW_STRUCT_STRIP_OUT, out->strip.status);
        return out->strip.status;
    case SW_STRUCT_ENGAGE_IN:
        strap = strap_for_engage();
        out->gives = sw_strap_weakest(&strap, &in->engage, 0, err);
        check_numbers("gives", out, SW_STRUCT_GIVES_OUT, out->gives.status);
        return out->gives.status;
    case SW_STRUCT_TURNING_IN:
        out->turning = sw_turning(&in->turning, err);
        check_numbers("turning", out, SW_STRUCT_TURNING_OUT,
                      out->turning.status);
        return out->turning.status;
    case SW_STRUCT_MILLING_IN:
        out->milling = sw_milling(&in->milling, err);
        check_numbers("milling", out, SW_STRUCT_MILLING_OUT,
                      out->milling.status);
        return out->milling.status;
    case SW_STRUCT_DRILLING_IN:
        out->drilling = sw_drilling(&in->drilling, err);
        check_numbers("drilling", out, SW_STRUCT_DRILLING_OUT,
                      out->drilling.status);
        return out->drilling.status;
    default:
        out->strap = sw_strap(&in->strap, err);
        check_numbers("strap", out, SW_STRUCT_STRAP_OUT, out->strap.status);
        return out->strap.status;
    }
}

static sw_assumption assumed(const any_in *in, int structure, int index,
                             sw_error *err)
{
    const sw_strap_in strap = strap_for_engage();
    return structure == SW_STRUCT_TORQUE_IN
               ? sw_torque_assumed(&in->torque, index, err)
           : structure == SW_STRUCT_CHART_IN
               ? sw_chart_assumed(&in->chart, index, err)
           : structure == SW_STRUCT_TOOL_IN
               ? sw_tool_assumed(&in->tool, index, err)
           : structure == SW_STRUCT_CALIBRATE_IN
               ? sw_calibrate_assumed(&in->calibrate, some_pairs(), index, err)
           : structure == SW_STRUCT_STRIP_IN
               ? sw_strip_assumed(&in->strip, index, err)
           : structure == SW_STRUCT_ENGAGE_IN
               ? sw_strap_weakest_assumed(&strap, &in->engage, index, err)
           : structure == SW_STRUCT_TURNING_IN
               ? sw_turning_assumed(&in->turning, index, err)
           : structure == SW_STRUCT_MILLING_IN
               ? sw_milling_assumed(&in->milling, index, err)
           : structure == SW_STRUCT_DRILLING_IN
               ? sw_drilling_assumed(&in->drilling, index, err)
               : sw_strap_assumed(&in->strap, index, err);
}

START_TEST(defaults_open)
{
    for (int k = 0; k < INPUTS; k++) {
        any_in in;
        prepare(&in, inputs[k]);
        uint64_t noted;
        memcpy(&noted, (char *)&in + of(inputs[k])->assumed, sizeof noted);
        ck_assert_uint_eq(noted, 0);
        for (int i = 0; sw_field_at(inputs[k], i); i++) {
            const sw_field *f = sw_field_at(inputs[k], i);
            if (f->type == SW_FIELD_NUMBER)
                must(field_number(&in, f) == SW_UNSET, "%s", f->name);
            else if (f->type == SW_FIELD_WORD)
                must(field_word(&in, f) == SW_UNSET_WORD, "%s", f->name);
            else
                must(*((char *)&in + f->offset) == '\0', "%s", f->name);
        }
    }
    sw_torque_defaults(NULL); /* do nothing */
    sw_chart_defaults(NULL);
    sw_strap_defaults(NULL);
    sw_engage_defaults(NULL);
    sw_strip_defaults(NULL);
    sw_tool_defaults(NULL);
    sw_turning_defaults(NULL);
    sw_milling_defaults(NULL);
    sw_drilling_defaults(NULL);
}
END_TEST

/* NaN, infinities and values beyond the allowed range are refused by name. */
START_TEST(numbers_judged)
{
    for (int k = 0; k < INPUTS; k++)
        for (int i = 0; sw_field_at(inputs[k], i); i++) {
            const sw_field *f = sw_field_at(inputs[k], i);
            if (f->type != SW_FIELD_NUMBER)
                continue;
            const double over = fabs(f->max) * 1e-9,
                         under = fabs(f->min) * 1e-9;
            const double bad[] = {NAN,
                                  -NAN,
                                  INFINITY,
                                  -INFINITY,
                                  f->max + (over > 0 ? over : 1e-9),
                                  f->min - (under > 0 ? under : 1e-9),
                                  1e300,
                                  -1e300};
            for (size_t j = 0; j < sizeof bad / sizeof bad[0]; j++) {
                any_in in;
                any_out out;
                sw_error err;
                prepare_good(&in, inputs[k]);
                set_field(&in, f, bad[j]);
                const int status = ask(&in, inputs[k], &out, &err);
                const int want = isnan(bad[j]) ? SW_ERR_NAN : SW_ERR_RANGE;
                must(status == want, "%s = %.17g: status %d", f->name, bad[j],
                     status);
                check_refused(f->name, &err, want, f->name);
                near_in(f->name, err.low, f->min, 0, 0);
                near_in(f->name, err.high, f->max, 0, 0);
                must(strstr(err.message, f->name) &&
                         strstr(err.message, f->unit),
                     "%s", err.message);
                any_in same = in;
                ck_assert_int_eq(ask(&in, inputs[k], &out, NULL), want);
                ck_assert_mem_eq(&same, &in, sizeof in);
            }
        }
}
END_TEST

START_TEST(words_judged)
{
    static const int bad[] = {-1, 99, 1 << 30, -(1 << 30)};
    for (int k = 0; k < INPUTS; k++)
        for (int i = 0; sw_field_at(inputs[k], i); i++) {
            const sw_field *f = sw_field_at(inputs[k], i);
            if (f->type != SW_FIELD_WORD)
                continue;
            for (size_t j = 0; j < sizeof bad / sizeof bad[0]; j++) {
                any_in in;
                any_out out;
                sw_error err;
                prepare_good(&in, inputs[k]);
                memcpy((char *)&in + f->offset, &bad[j], sizeof bad[j]);
                ck_assert_int_eq(ask(&in, inputs[k], &out, &err), SW_ERR_RANGE);
                check_refused(f->name, &err, SW_ERR_RANGE, f->name);
                ck_assert_ptr_nonnull(
                    strstr(err.message, sw_word(f->words, 1)));
            }
        }
}
END_TEST

START_TEST(texts_judged)
{
    for (int k = 0; k < INPUTS; k++)
        for (int i = 0; sw_field_at(inputs[k], i); i++) {
            const sw_field *f = sw_field_at(inputs[k], i);
            if (f->type != SW_FIELD_TEXT)
                continue;
            any_in in;
            any_out out;
            sw_error err;
            prepare_good(&in, inputs[k]);
            memset((char *)&in + f->offset, 'M', f->size); /* no end */
            ck_assert_int_eq(ask(&in, inputs[k], &out, &err), SW_ERR_SYNTAX);
            check_refused(f->name, &err, SW_ERR_SYNTAX, f->name);
            prepare_good(&in, inputs[k]);
            memset((char *)&in + f->offset, '\n', f->size - 1);
            *((char *)&in + f->offset + f->size - 1) = '\0';
            ck_assert_int_eq(ask(&in, inputs[k], &out, &err), SW_ERR_UNKNOWN);
            check_refused(f->name, &err, SW_ERR_UNKNOWN, f->name);
        }
}
END_TEST

/* Whatever was open and entered is listed once, by its name, with a source;
 * what was given is not. */
START_TEST(assumptions)
{
    for (int k = 0; k < INPUTS; k++) {
        any_in in;
        any_out out;
        sw_error err;
        prepare_good(&in, inputs[k]);
        ck_assert_int_eq(ask(&in, inputs[k], &out, &err), SW_OK);
        int n = 0, last = -1;
        for (;; n++) {
            const sw_assumption a = assumed(&in, inputs[k], n, &err);
            if (a.status) {
                ck_assert_int_eq(a.status, SW_ERR_RANGE);
                check_refused("past the end", &err, SW_ERR_RANGE, "index");
                ck_assert(isnan(a.value) && isnan(a.low) && isnan(a.high));
                break;
            }
            const sw_field *f = sw_field_named(inputs[k], a.name);
            must(f != NULL, "%s", a.name);
            int index = 0;
            while (sw_field_at(inputs[k], index) != f)
                index++;
            ck_assert_int_gt(index, last);
            last = index;
            ck_assert_str_eq(a.unit, f->unit);
            must(a.source[0], "%s has no source", a.name);
            if (f->type == SW_FIELD_NUMBER) {
                must(field_number(&in, f) == SW_UNSET, "%s", a.name);
                must(a.value >= f->min && a.value <= f->max, "%s", a.name);
                must(a.low == a.high || (a.low <= a.value && a.value <= a.high),
                     "%s: %g is not within %g .. %g", a.name, a.value, a.low,
                     a.high);
                ck_assert_str_eq(a.word, "");
            } else {
                must(a.word[0], "%s", a.name);
                ck_assert(isnan(a.value));
            }
        }
        ck_assert_int_ge(n, 3);
        const sw_assumption a = assumed(&in, inputs[k], -1, &err);
        ck_assert_int_eq(a.status, SW_ERR_RANGE);
    }
    sw_error err;
    sw_assumption a = sw_torque_assumed(NULL, 0, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "in");
    ck_assert(isnan(a.value));
    a = sw_chart_assumed(NULL, 0, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "in");
    a = sw_strap_assumed(NULL, 0, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "in");
    a = sw_strip_assumed(NULL, 0, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "in");
    a = sw_tool_assumed(NULL, 0, &err);
    check_refused("NULL", &err, SW_ERR_NULL, "in");
}
END_TEST

static int resolve(any_in *in, int structure, sw_error *err)
{
    return structure == SW_STRUCT_TORQUE_IN
               ? sw_torque_resolve(&in->torque, err)
           : structure == SW_STRUCT_TOOL_IN ? sw_tool_resolve(&in->tool, err)
           : structure == SW_STRUCT_CALIBRATE_IN
               ? sw_calibrate_resolve(&in->calibrate, some_pairs(), err)
           : structure == SW_STRUCT_STRIP_IN ? sw_strip_resolve(&in->strip, err)
           : structure == SW_STRUCT_TURNING_IN
               ? sw_turning_resolve(&in->turning, err)
           : structure == SW_STRUCT_MILLING_IN
               ? sw_milling_resolve(&in->milling, err)
           : structure == SW_STRUCT_DRILLING_IN
               ? sw_drilling_resolve(&in->drilling, err)
               : sw_strap_resolve(&in->strap, err);
}

static const int resolved[] = {SW_STRUCT_TORQUE_IN,  SW_STRUCT_STRAP_IN,
                               SW_STRUCT_TOOL_IN,    SW_STRUCT_CALIBRATE_IN,
                               SW_STRUCT_STRIP_IN,   SW_STRUCT_TURNING_IN,
                               SW_STRUCT_MILLING_IN, SW_STRUCT_DRILLING_IN};
static const int answers[] = {SW_STRUCT_TORQUE_OUT,  SW_STRUCT_STRAP_OUT,
                              SW_STRUCT_TOOL_OUT,    SW_STRUCT_CALIBRATE_OUT,
                              SW_STRUCT_STRIP_OUT,   SW_STRUCT_TURNING_OUT,
                              SW_STRUCT_MILLING_OUT, SW_STRUCT_DRILLING_OUT};
enum { RESOLVED = sizeof resolved / sizeof resolved[0] };

static void check_same_fields(const char *what, const void *one,
                              const void *two, int structure)
{
    for (int i = 0; sw_field_at(structure, i); i++) {
        const sw_field *f = sw_field_at(structure, i);
        const int number = f->type == SW_FIELD_NUMBER;
        must(memcmp((const char *)one + f->offset,
                    (const char *)two + f->offset, f->size) == 0,
             "%s: %s was %.17g, is %.17g", what, f->name,
             number ? field_number(one, f) : 0,
             number ? field_number(two, f) : 0);
    }
}

/* Resolving twice changes nothing; what was filled has its bit and the answer
 * stays the same to the last bit. */
START_TEST(resolving)
{
    for (int k = 0; k < RESOLVED; k++) {
        const int s = resolved[k];
        any_in in, once, twice;
        any_out before, after;
        sw_error err;
        prepare_good(&in, s);
        once = in;
        check_no_error("resolve", resolve(&once, s, &err), &err);
        twice = once;
        check_no_error("resolve again", resolve(&twice, s, &err), &err);
        check_same_fields("resolved twice", &once, &twice, s);
        ck_assert_mem_eq(&once, &twice, of(s)->size);
        uint64_t noted;
        memcpy(&noted, (char *)&once + of(s)->assumed, sizeof noted);
        for (int i = 0; sw_field_at(s, i); i++) {
            const sw_field *f = sw_field_at(s, i);
            const int changed = memcmp((char *)&in + f->offset,
                                       (char *)&once + f->offset, f->size);
            must(!(noted >> i & 1) == !changed, "%s is %s", f->name,
                 changed ? "filled but not noted" : "noted but not filled");
        }
        ck_assert_int_eq(ask(&in, s, &before, &err), SW_OK);
        ck_assert_int_eq(ask(&once, s, &after, &err), SW_OK);
        check_same_fields("answer", &before, &after, answers[k]);
        /* a refused question is left as it was */
        prepare_good(&in, s);
        set_field(&in,
                  sw_field_named(s, s == SW_STRUCT_CALIBRATE_IN ? "confidence"
                                    : s == SW_STRUCT_STRIP_IN   ? "factor"
                                    : sw_field_named(s, "mc")   ? "mc"
                                                                : "torque_Nm"),
                  NAN);
        once = in;
        ck_assert_int_eq(resolve(&once, s, &err), SW_ERR_NAN);
        ck_assert_mem_eq(&once, &in, of(s)->size);
    }
    sw_error err;
    ck_assert_int_eq(sw_torque_resolve(NULL, &err), SW_ERR_NULL);
    check_refused("NULL", &err, SW_ERR_NULL, "in");
    ck_assert_int_eq(sw_strap_resolve(NULL, &err), SW_ERR_NULL);
    check_refused("NULL", &err, SW_ERR_NULL, "in");
    ck_assert_int_eq(sw_strip_resolve(NULL, &err), SW_ERR_NULL);
    check_refused("NULL", &err, SW_ERR_NULL, "in");
    ck_assert_int_eq(sw_tool_resolve(NULL, &err), SW_ERR_NULL);
    check_refused("NULL", &err, SW_ERR_NULL, "in");
}
END_TEST

/* A resolved question that is changed is refused, whatever is changed: what
 * depends on it would be stale. */
START_TEST(changed_after_resolving)
{
    for (int k = 0; k < RESOLVED; k++) {
        const int s = resolved[k];
        any_in in, good_one;
        any_out out;
        sw_error err;
        prepare_good(&good_one, s);
        check_no_error("resolve", resolve(&good_one, s, &err), &err);
        for (int i = 0; sw_field_at(s, i); i++) {
            const sw_field *f = sw_field_at(s, i);
            in = good_one;
            if (f->type == SW_FIELD_NUMBER)
                set_field(&in, f,
                          field_number(&in, f) == SW_UNSET ? 1 : SW_UNSET);
            else if (f->type == SW_FIELD_WORD)
                *((char *)&in + f->offset) ^= 3;
            else
                *((char *)&in + f->offset) ^= 1;
            must(ask(&in, s, &out, &err) == SW_ERR_CONFLICT,
                 "%s was changed: %s", f->name, err.message);
            check_refused(f->name, &err, SW_ERR_CONFLICT, "seal");
            const any_in same = in;
            must(resolve(&in, s, &err) == SW_ERR_CONFLICT, "%s", f->name);
            ck_assert_mem_eq(&same, &in, of(s)->size);
            must(assumed(&in, s, 0, &err).status == SW_ERR_CONFLICT, "%s",
                 f->name);
        }
        in = good_one;
        uint64_t noted;
        memcpy(&noted, (char *)&in + of(s)->assumed, sizeof noted);
        noted ^= 2;
        memcpy((char *)&in + of(s)->assumed, &noted, sizeof noted);
        ck_assert_int_eq(ask(&in, s, &out, &err), SW_ERR_CONFLICT);
    }
}
END_TEST

START_TEST(null_input)
{
    sw_error err;
    const sw_torque_out t = sw_torque(NULL, &err);
    check_refused("torque", &err, SW_ERR_NULL, "in");
    check_numbers("torque", &t, SW_STRUCT_TORQUE_OUT, t.status);
    const sw_chart_out c = sw_chart(NULL, &err);
    check_refused("chart", &err, SW_ERR_NULL, "in");
    check_numbers("chart", &c, SW_STRUCT_CHART_OUT, c.status);
    const sw_strap_out s = sw_strap(NULL, &err);
    check_refused("strap", &err, SW_ERR_NULL, "in");
    check_numbers("strap", &s, SW_STRUCT_STRAP_OUT, s.status);
    ck_assert_int_eq(sw_strap(NULL, NULL).status, SW_ERR_NULL);
    const sw_strip_out p = sw_strip(NULL, &err);
    check_refused("strip", &err, SW_ERR_NULL, "in");
    check_numbers("strip", &p, SW_STRUCT_STRIP_OUT, p.status);
    const sw_tool_out o = sw_tool(NULL, &err);
    check_refused("tool", &err, SW_ERR_NULL, "in");
    check_numbers("tool", &o, SW_STRUCT_TOOL_OUT, o.status);
    const sw_turning_out u = sw_turning(NULL, &err);
    check_refused("turning", &err, SW_ERR_NULL, "in");
    check_numbers("turning", &u, SW_STRUCT_TURNING_OUT, u.status);
    const sw_milling_out m = sw_milling(NULL, &err);
    check_refused("milling", &err, SW_ERR_NULL, "in");
    check_numbers("milling", &m, SW_STRUCT_MILLING_OUT, m.status);
    const sw_drilling_out d = sw_drilling(NULL, &err);
    check_refused("drilling", &err, SW_ERR_NULL, "in");
    check_numbers("drilling", &d, SW_STRUCT_DRILLING_OUT, d.status);
    const sw_cut_load_out l = sw_milling_load_at(NULL, 0, 1, &err);
    check_refused("load", &err, SW_ERR_NULL, "in");
    check_numbers("load", &l, SW_STRUCT_CUT_LOAD_OUT, l.status);
    ck_assert_int_eq(sw_turning_resolve(NULL, &err), SW_ERR_NULL);
    ck_assert_int_eq(sw_milling_resolve(NULL, &err), SW_ERR_NULL);
    ck_assert_int_eq(sw_drilling_resolve(NULL, &err), SW_ERR_NULL);
    ck_assert_int_eq(sw_turning_assumed(NULL, 0, &err).status, SW_ERR_NULL);
    ck_assert_int_eq(sw_milling_assumed(NULL, 0, &err).status, SW_ERR_NULL);
    ck_assert_int_eq(sw_drilling_assumed(NULL, 0, &err).status, SW_ERR_NULL);
}
END_TEST

int main(void)
{
    return RUN_TESTS("field", covered, rows, past_the_end, defaults_open,
                     numbers_judged, words_judged, texts_judged, assumptions,
                     resolving, changed_after_resolving, null_input);
}
