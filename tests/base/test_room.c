/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Room: what all questions on clamps, pads and holding keep, whatever they ask.
 */
#include "../common.h"
#include "../near.h"
#include "../random.h"

/* Every room by the names of its functions. */
typedef struct {
    const char *name;
    int in, out;
    size_t in_size, out_size, warnings, assumed, seal;
    void (*defaults)(void *);
    int (*resolve)(void *, sw_error *);
    void (*solve)(const void *, void *, sw_error *);
    sw_assumption (*assume)(const void *, int, sw_error *);
} room;

#define ROOM(x, X)                                                             \
    static void x##_defaults(void *in) { sw_##x##_defaults(in); }              \
    static int x##_resolve(void *in, sw_error *err)                            \
    {                                                                          \
        return sw_##x##_resolve(in, err);                                      \
    }                                                                          \
    static void x##_solve(const void *in, void *out, sw_error *err)            \
    {                                                                          \
        const sw_##x##_out o = sw_##x(in, err);                                \
        memcpy(out, &o, sizeof o);                                             \
    }                                                                          \
    static sw_assumption x##_assume(const void *in, int i, sw_error *err)      \
    {                                                                          \
        return sw_##x##_assumed(in, i, err);                                   \
    }
#define ROW(x, X)                                                              \
    {                                                                          \
#x, SW_STRUCT_##X##_IN, SW_STRUCT_##X##_OUT, sizeof(sw_##x##_in),      \
            sizeof(sw_##x##_out), offsetof(sw_##x##_out, warnings),            \
            offsetof(sw_##x##_in, assumed), offsetof(sw_##x##_in, seal),       \
            x##_defaults, x##_resolve, x##_solve, x##_assume                   \
    }

ROOM(screw, SCREW)
ROOM(cylinder, CYLINDER)
ROOM(swing, SWING)
ROOM(vacuum, VACUUM)
ROOM(adhesive, ADHESIVE)
ROOM(bar, BAR)
ROOM(contact, CONTACT)
ROOM(pad, PAD)
ROOM(disc, DISC)
ROOM(chuck, CHUCK)
ROOM(squeeze, SQUEEZE)
ROOM(couple, COUPLE)
ROOM(tripod, TRIPOD)

static const room all[] = {
    ROW(screw, SCREW),     ROW(cylinder, CYLINDER), ROW(swing, SWING),
    ROW(vacuum, VACUUM),   ROW(adhesive, ADHESIVE), ROW(bar, BAR),
    ROW(contact, CONTACT), ROW(pad, PAD),           ROW(disc, DISC),
    ROW(chuck, CHUCK),     ROW(squeeze, SQUEEZE),   ROW(couple, COUPLE),
    ROW(tripod, TRIPOD),
};
enum { ROOMS = sizeof all / sizeof all[0], LARGEST = 1024 };

typedef union {
    double aligned;
    unsigned char byte[LARGEST];
} space;

/* What each needs, and no more; a field of 0 ends the row. */
static const struct {
    const char *room, *field;
    double number;
    const char *text;
} needed[] = {
    {"screw", "screw_diameter_mm", 20, NULL},
    {"screw", "pitch_mm", 4, NULL},
    {"screw", "torque_Nm", 20, NULL},
    {"cylinder", "pressure_MPa", 7, NULL},
    {"cylinder", "bore_mm", 40, NULL},
    {"swing", "arm_mm", 50, NULL},
    {"swing", "pressure_MPa", 7, NULL},
    {"swing", "bore_mm", 32, NULL},
    {"vacuum", "vacuum_MPa", 0.08, NULL},
    {"vacuum", "seal_length_mm", 150, NULL},
    {"vacuum", "seal_width_mm", 100, NULL},
    {"vacuum", "side_cut_N", 50, NULL},
    {"adhesive", "shear_MPa", 0.5, NULL},
    {"adhesive", "sheet_factor", 3, NULL},
    {"adhesive", "bond_length_mm", 100, NULL},
    {"adhesive", "bond_width_mm", 50, NULL},
    {"adhesive", "side_cut_N", 50, NULL},
    {"bar", "stud1_N", 6000, NULL},
    {"bar", "stud2_N", 5000, NULL},
    {"bar", "span_mm", 200, NULL},
    {"bar", "pad1_mm", 60, NULL},
    {"bar", "pad2_mm", 150, NULL},
    {"bar", "bar_width_mm", 40, NULL},
    {"bar", "bar_thickness_mm", 20, NULL},
    {"contact", "force_N", 100, NULL},
    {"contact", "radius1_mm", 6, NULL},
    {"contact", "contact_length_mm", 20, NULL},
    {"contact", "material1", 0, "C45"},
    {"contact", "material2", 0, "6061-T6"},
    {"pad", "force_N", 1000, NULL},
    {"pad", "pad_length_mm", 10, NULL},
    {"pad", "pad_width_mm", 12, NULL},
    {"pad", "part_material", 0, "6061-T6"},
    {"disc", "thrust_N", 5000, NULL},
    {"disc", "driver_diameter_mm", 80, NULL},
    {"disc", "cut_diameter_mm", 120, NULL},
    {"disc", "tangential_cut_N", 100, NULL},
    {"chuck", "chuck_force_N", 40000, NULL},
    {"chuck", "feed_cut_N", 500, NULL},
    {"couple", "normal1_N", 4000, NULL},
    {"couple", "distance_mm", 200, NULL},
    {"couple", "across_N", 400, NULL},
    {"tripod", "x1_mm", 1, NULL},
    {"tripod", "y1_mm", 2, NULL},
    {"tripod", "x2_mm", 200, NULL},
    {"tripod", "y2_mm", 3, NULL},
    {"tripod", "x3_mm", 100, NULL},
    {"tripod", "y3_mm", 150, NULL},
    {"tripod", "force_N", 3000, NULL},
    {"tripod", "x_mm", 100, NULL},
    {"tripod", "y_mm", 60, NULL},
    {"squeeze", "cut_N", 1000, NULL},
    {"squeeze", "squeeze_N", 20000, NULL},
};

static void good_question(const room *r, space *in)
{
    r->defaults(in);
    for (size_t i = 0; i < sizeof needed / sizeof needed[0]; i++) {
        if (strcmp(needed[i].room, r->name) != 0)
            continue;
        const sw_field *f = sw_field_named(r->in, needed[i].field);
        must(f != NULL, "%s has no %s", r->name, needed[i].field);
        if (needed[i].text)
            set_text((char *)in->byte + f->offset, f->size, needed[i].text);
        else
            set_field(in, f, needed[i].number);
    }
}

static uint64_t bits_at(const space *s, size_t offset)
{
    uint64_t bits;
    memcpy(&bits, s->byte + offset, sizeof bits);
    return bits;
}

static int solve(const room *r, const space *in, space *out, sw_error *err)
{
    int status;
    r->solve(in, out, err);
    memcpy(&status, out, sizeof status);
    check_numbers(r->name, out, r->out, status);
    return status;
}

/* Defaults leave everything open; a null pointer is an error everywhere. */
START_TEST(open_and_null)
{
    for (int i = 0; i < ROOMS; i++) {
        const room *r = &all[i];
        space in, out;
        sw_error err;
        ck_assert_uint_le(r->in_size, sizeof in);
        ck_assert_uint_le(r->out_size, sizeof out);
        memset(&in, 0xff, sizeof in);
        r->defaults(NULL);
        r->defaults(&in);
        for (int k = 0; sw_field_at(r->in, k); k++) {
            const sw_field *f = sw_field_at(r->in, k);
            if (f->type == SW_FIELD_NUMBER)
                must(field_number(&in, f) == SW_UNSET, "%s", f->name);
            else
                must(in.byte[f->offset] == 0, "%s", f->name);
        }
        ck_assert_uint_eq(bits_at(&in, r->assumed), 0);
        ck_assert_uint_eq(bits_at(&in, r->seal), 0);
        r->solve(NULL, &out, &err);
        check_refused(r->name, &err, SW_ERR_NULL, "in");
        ck_assert_int_eq(r->resolve(NULL, &err), SW_ERR_NULL);
        ck_assert_int_eq(r->assume(NULL, 0, &err).status, SW_ERR_NULL);
        r->solve(NULL, &out, NULL);
        ck_assert_int_ne(solve(r, &in, &out, &err), SW_OK); /* nothing given */
        check_error(r->name, &err, SW_ERR_MISSING);
    }
}
END_TEST

/* A resolved question has the same answer, may be resolved again, and is
 * refused when it was changed. What was filled in is listed. */
START_TEST(resolving)
{
    for (int i = 0; i < ROOMS; i++) {
        const room *r = &all[i];
        space in, full, out, again;
        sw_error err;
        good_question(r, &in);
        memset(&out, 0, sizeof out);
        memset(&again, 0, sizeof again);
        must(solve(r, &in, &out, &err) == SW_OK, "%s: %s", r->name,
             err.message);
        full = in;
        ck_assert_int_eq(r->resolve(&full, &err), SW_OK);
        ck_assert_int_eq(solve(r, &full, &again, &err), SW_OK);
        ck_assert_mem_eq(&out, &again, r->out_size);
        again = full;
        ck_assert_int_eq(r->resolve(&again, &err), SW_OK);
        ck_assert_mem_eq(&again, &full, r->in_size);
        const uint64_t assumed = bits_at(&full, r->assumed);
        int listed = 0, set = 0;
        for (; !r->assume(&in, listed, &err).status; listed++) {
            const sw_assumption a = r->assume(&in, listed, &err);
            must(sw_field_named(r->in, a.name) && a.source[0], "%s: %s",
                 r->name, a.name);
            ck_assert_str_eq(r->assume(&full, listed, &err).name, a.name);
        }
        for (int k = 0; k < 64; k++)
            set += (int)(assumed >> k & 1);
        ck_assert_int_eq(listed, set);
        if (r->in != SW_STRUCT_TRIPOD_IN) /* all of it is needed */
            ck_assert_int_gt(listed, 0);
        for (int k = 0; sw_field_at(r->in, k); k++) {
            const sw_field *f = sw_field_at(r->in, k);
            if (f->type != SW_FIELD_NUMBER ||
                field_number(&full, f) == SW_UNSET)
                continue;
            again = full;
            set_field(&again, f, field_number(&full, f) * 1.01 + 1e-3);
            ck_assert_int_ne(solve(r, &again, &out, &err), SW_OK);
            check_refused(f->name, &err, SW_ERR_CONFLICT, "seal");
        }
    }
}
END_TEST

/* Every number: NaN, below, above; every word and text out of its list. */
START_TEST(every_field)
{
    for (int i = 0; i < ROOMS; i++)
        for (int k = 0; sw_field_at(all[i].in, k); k++) {
            const room *r = &all[i];
            const sw_field *f = sw_field_at(r->in, k);
            space in, out;
            sw_error err;
            good_question(r, &in);
            if (f->type == SW_FIELD_WORD) {
                in.byte[f->offset] = 99;
                solve(r, &in, &out, &err);
                check_refused(f->name, &err, SW_ERR_RANGE, f->name);
            } else if (f->type == SW_FIELD_TEXT) {
                memset(in.byte + f->offset, 'x', f->size);
                solve(r, &in, &out, &err);
                check_refused(f->name, &err, SW_ERR_SYNTAX, f->name);
            } else {
                set_field(&in, f, NAN);
                solve(r, &in, &out, &err);
                check_refused(f->name, &err, SW_ERR_NAN, f->name);
                must(f->min < f->max, "%s", f->name);
                set_field(&in, f, nextafter(f->min, -INFINITY));
                solve(r, &in, &out, &err);
                check_refused(f->name, &err, SW_ERR_RANGE, f->name);
                near(err.low, f->min, 0, 0);
                set_field(&in, f, INFINITY);
                solve(r, &in, &out, &err);
                check_refused(f->name, &err, SW_ERR_RANGE, f->name);
                near(err.high, f->max, 0, 0);
            }
        }
}
END_TEST

/* Fields at the ends of their ranges never give an infinity or a NaN: an
 * answer or a refusal. */
START_TEST(ends)
{
    for (int i = 0; i < ROOMS; i++)
        for (int k = 0; sw_field_at(all[i].in, k); k++)
            for (int end = 0; end < 2; end++) {
                const room *r = &all[i];
                const sw_field *f = sw_field_at(r->in, k);
                space in, out;
                sw_error err;
                if (f->type != SW_FIELD_NUMBER)
                    continue;
                good_question(r, &in);
                set_field(&in, f, end ? f->max : f->min);
                if (solve(r, &in, &out, &err))
                    check_error(f->name, &err, err.code);
            }
}
END_TEST

static double anywhere(const sw_field *f, randoms *r)
{
    if (f->min > 0)
        return random_log(r, f->min, f->max);
    return random_below(r, 2) ? random_between(r, f->min, f->max)
                              : fmin(f->max, random_log(r, 1e-9, 1e3));
}

/* Anything at all: an answer of finite numbers or a refusal in one line. */
START_TEST(anything)
{
    randoms some = {41};
    for (int i = 0; i < ROOMS; i++) {
        const room *r = &all[i];
        int answered = 0;
        for (int n = 0; n < (r->in == SW_STRUCT_DISC_IN ? 1000 : 20000); n++) {
            space in, out;
            sw_error err;
            good_question(r, &in);
            for (int k = 0; sw_field_at(r->in, k); k++) {
                const sw_field *f = sw_field_at(r->in, k);
                if (random_below(&some, 3))
                    continue;
                if (f->type == SW_FIELD_NUMBER) {
                    set_field(&in, f, anywhere(f, &some));
                } else if (f->type == SW_FIELD_WORD) {
                    const int word = 1 + random_below(&some, 2);
                    memcpy(in.byte + f->offset, &word, sizeof word);
                }
            }
            if (solve(r, &in, &out, &err))
                check_error(r->name, &err, err.code);
            else
                answered++;
        }
        must(answered >= 20, "%s: %d", r->name, answered);
    }
}
END_TEST

int main(void)
{
    return RUN_TESTS("room", open_and_null, resolving, every_field, ends,
                     anything);
}
