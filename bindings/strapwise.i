/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The interface for scripting languages: names, errors, how a value crosses.
 *
 * Everything is wrapped from the public headers; nothing is declared twice.
 * What only one language needs is in LANGUAGE/strapwise-LANGUAGE.i, which
 * defines, for the C compiler:
 *
 *   SW_RAISE(e)      raises the sw_error that e points to and leaves the call
 *   SW_IS_NONE(obj)  whether a value of the language is its "nothing"
 *   SW_NONE          that "nothing", ready to be returned
 *
 * Values. A field that is left to the library, or that does not apply, is the
 * language's "nothing" in both directions, whatever it holds. A field of words
 * takes the word or the enumerator, and is read as the enumerator. A text that
 * does not fit is refused, never cut. The error argument is not seen. The
 * typemaps are written in the macros that SWIG has for Python, Perl, Ruby and
 * Tcl alike; Lua has none of them and needs its own.
 */
%module strapwise

%{
#include <strapwise-fixture.h>

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
%}

%include <stdint.i>
%include <exception.i>

/* ---- names: without prefix, structs in camel case ---- */

%rename("%(strip:[sw_])s", %$isfunction) "";
%rename("%(strip:[SW_])s", %$isenumitem) "";
%rename("%(strip:[SW_])s", %$isconstant) ""; /* bits of warnings */
%rename(Assumption) sw_assumption;
%rename(CalibrateIn) sw_calibrate_in;
%rename(CalibrateOut) sw_calibrate_out;
%rename(ChartIn) sw_chart_in;
%rename(ChartOut) sw_chart_out;
%rename(EngageIn) sw_engage_in;
%rename(Field) sw_field;
%rename(Drawing) sw_drawing;
%rename(GivesOut) sw_gives_out;
%rename(GradeOut) sw_grade_out;
%rename(LubricationOut) sw_lubrication_out;
%rename(MaterialOut) sw_material_out;
%rename(MatterOut) sw_matter_out;
%rename(MethodOut) sw_method_out;
%rename(NutOut) sw_nut_out;
%rename(PairOut) sw_pair_out;
%rename(Pairs) sw_pairs;
%rename(PairsOut) sw_pairs_out;
%rename(PlaceOut) sw_place_out;
%rename(SpreadIn) sw_spread_in;
%rename(SpreadOut) sw_spread_out;
%rename(StrapIn) sw_strap_in;
%rename(StrapOut) sw_strap_out;
%rename(StrapSpreadOut) sw_strap_spread_out;
%rename(StrapTorqueOut) sw_strap_torque_out;
%rename(StripIn) sw_strip_in;
%rename(StripOut) sw_strip_out;
%rename(ThreadOut) sw_thread_out;
%rename(TightIn) sw_tight_in;
%rename(TightOut) sw_tight_out;
%rename(TiltOut) sw_tilt_out;
%rename(ShopToolOut) sw_shop_tool_out;
%rename(ToolIn) sw_tool_in;
%rename(ToolOut) sw_tool_out;
%rename(TorqueIn) sw_torque_in;
%rename(TorqueOut) sw_torque_out;
%rename(TurnOut) sw_turn_out;
%rename(WindowOut) sw_window_out;
%rename(ScrewIn) sw_screw_in;
%rename(ScrewOut) sw_screw_out;
%rename(CylinderIn) sw_cylinder_in;
%rename(CylinderOut) sw_cylinder_out;
%rename(SwingIn) sw_swing_in;
%rename(SwingOut) sw_swing_out;
%rename(VacuumIn) sw_vacuum_in;
%rename(VacuumOut) sw_vacuum_out;
%rename(AdhesiveIn) sw_adhesive_in;
%rename(AdhesiveOut) sw_adhesive_out;
%rename(BarIn) sw_bar_in;
%rename(BarOut) sw_bar_out;
%rename(ContactIn) sw_contact_in;
%rename(ContactOut) sw_contact_out;
%rename(PadIn) sw_pad_in;
%rename(PadOut) sw_pad_out;
%rename(DiscIn) sw_disc_in;
%rename(DiscOut) sw_disc_out;
%rename(ChuckIn) sw_chuck_in;
%rename(ChuckOut) sw_chuck_out;
%rename(SqueezeIn) sw_squeeze_in;
%rename(SqueezeOut) sw_squeeze_out;
%rename(CoupleIn) sw_couple_in;
%rename(CoupleOut) sw_couple_out;
%rename(TripodIn) sw_tripod_in;
%rename(TripodOut) sw_tripod_out;

/* a part on its fixture */
%rename(Fixture) sw_fixture;
%rename(Hold) sw_hold;
%rename(HoldOut) sw_hold_out;
%rename(HoldPointOut) sw_hold_point_out;
%rename(HoldContactOut) sw_hold_contact_out;
%rename(_SupportIn) sw_support_in;
%rename(_ClampIn) sw_clamp_in;
%rename(_StopIn) sw_stop_in;
%rename(_LoadIn) sw_load_in;
%rename(_WeightIn) sw_weight_in;
%rename(_HoldIn) sw_hold_in;
%rename(CutMaterialOut) sw_cut_material_out;
%rename(CutLoadOut) sw_cut_load_out;
%rename(TurningIn) sw_turning_in;
%rename(TurningOut) sw_turning_out;
%rename(MillingIn) sw_milling_in;
%rename(MillingOut) sw_milling_out;
%rename(DrillingIn) sw_drilling_in;
%rename(DrillingOut) sw_drilling_out;

/* a job file */
%rename(Job) sw_job;
%rename(JobOut) sw_job_out;
%rename(JobCornerOut) sw_job_corner_out;
%rename(JobClampOut) sw_job_clamp_out;
%rename(JobOperationOut) sw_job_operation_out;

/* Members are named without their struct: SWIG reads an unnamed struct before
 * it knows what the typedef calls it, and STRUCT::MEMBER would match nothing. */

/* keywords of D and Perl (where it is but a hash key): no harm */
%namewarn("") version;
%namewarn("") use;
/* keywords of OCaml */
%namewarn("") method;
%rename(kind) type;

/* "nothing" stands for both */
%ignore SW_UNSET;
%ignore SW_UNSET_WORD;
/* sizes of lists */
%ignore SW_KIND_COUNT;
%ignore SW_STRUCT_COUNT;
%ignore SW_WORDS_COUNT;
/* an error is raised, so a result that arrives is good */
%ignore sw_error;
%ignore status;
/* every language has its own */
%ignore sw_format;
%ignore sw_format_fixed;
/* done by the constructors */
%ignore sw_calibrate_defaults;
%ignore sw_chart_defaults;
%ignore sw_spread_defaults;
%ignore sw_engage_defaults;
%ignore sw_strap_defaults;
%ignore sw_strip_defaults;
%ignore sw_tight_defaults;
%ignore sw_tool_defaults;
%ignore sw_torque_defaults;
%ignore sw_screw_defaults;
%ignore sw_cylinder_defaults;
%ignore sw_swing_defaults;
%ignore sw_vacuum_defaults;
%ignore sw_adhesive_defaults;
%ignore sw_bar_defaults;
%ignore sw_contact_defaults;
%ignore sw_pad_defaults;
%ignore sw_disc_defaults;
%ignore sw_chuck_defaults;
%ignore sw_squeeze_defaults;
%ignore sw_couple_defaults;
%ignore sw_tripod_defaults;
%ignore sw_turning_defaults;
%ignore sw_milling_defaults;
%ignore sw_drilling_defaults;
/* methods of a class */
%ignore sw_pairs_new;
%ignore sw_pairs_free;
%ignore sw_pairs_add;
%ignore sw_pairs_read;
%ignore sw_pairs_count;
%ignore sw_pairs_about;
%ignore sw_pairs_at;
%ignore sw_drawing_free;
%ignore sw_drawing_svg;
%rename("$ignore", regextarget = 1) "^sw_fixture_.*";
%rename("$ignore", regextarget = 1)
    "^sw_(support|clamp|stop|load|weight)_(defaults|resolve|assumed)$";
%rename("$ignore", regextarget = 1)
    "^sw_hold_(defaults|resolve|new|free|total|point|contact)$";
%rename("$ignore", regextarget = 1)
    "^sw_job_(read|free|about|corner|clamp|operation|find_operation)$";
%rename("$ignore", regextarget = 1)
    "^sw_job_(has_clamp|fixture|hold_in|assumed|matters|remark|rocks)$";
%ignore sw_hold_map;
%ignore sw_hold_map_in;
%ignore sw_hold_map_defaults;
/* one number, returned as such */
%ignore sw_quantity_out;
/* sw_field_at() is enough */
%ignore sw_field_named;

#if defined(SWIGPYTHON)
%include "python/strapwise-python.i"
#endif

/* ---- errors ---- */

%{
#ifdef __cplusplus
#define SW_PER_THREAD static thread_local
#else
#define SW_PER_THREAD static _Thread_local
#endif

/* Filled by the call that is under way; one per thread. It owns nothing, so
 * nothing is lost where a language leaves a call by longjmp. */
SW_PER_THREAD sw_error sw_call_error;

#ifndef SW_RAISE
#define SW_RAISE(e)                                                            \
    SWIG_exception_fail((e)->code == SW_ERR_NULL ? SWIG_TypeError              \
                                                 : SWIG_ValueError,            \
                        (e)->message)
#endif
%}

%typemap(in, numinputs = 0) sw_error *err "$1 = &sw_call_error;"
%typemap(check) sw_error *err ""

%exception {
    sw_call_error.code = SW_OK;
    $action
    if (sw_call_error.code)
        SW_RAISE(&sw_call_error);
}

/* "Nothing" arrives as NULL. A text may be NULL: the library answers. */
%typemap(check) SWIGTYPE * {
    if (!$1)
        SWIG_exception_fail(SWIG_TypeError, "$1_name: missing");
}
%typemap(check) const char * ""

/* ---- values ---- */

%{
static int sw_refuse(int code, const char *field, const char *message)
{
    sw_call_error.code = code;
    sw_call_error.low = sw_call_error.high = NAN;
    snprintf(sw_call_error.field, sizeof sw_call_error.field, "%s", field);
    snprintf(sw_call_error.message, sizeof sw_call_error.message, "%s",
             message);
    return code;
}

/* C would see the text end at its first zero byte. */
static int sw_check_text(const char *text, size_t size, const char *field)
{
    char message[120];
    if (!text || strlen(text) + 1 == size)
        return SW_OK;
    snprintf(message, sizeof message, "%s: there is a zero byte in the text",
             field);
    return sw_refuse(SW_ERR_SYNTAX, field, message);
}

/* A text of `size` bytes, its final zero included, into a field of `room`. */
static int sw_take_text(const char *text, size_t size, char *to, size_t room,
                        const char *field)
{
    char message[120];
    if (sw_check_text(text, size, field))
        return sw_call_error.code;
    if (text && size > room) {
        snprintf(message, sizeof message,
                 "%s: the text has %lu bytes, at most %lu fit", field,
                 (unsigned long)size - 1, (unsigned long)room - 1);
        return sw_refuse(SW_ERR_SYNTAX, field, message);
    }
    memset(to, 0, room);
    if (text)
        memcpy(to, text, size);
    return SW_OK;
}

static int sw_take_word(const char *word, int list, int *value,
                        const char *field)
{
    char message[240];
    *value = sw_word_value(list, word);
    if (*value)
        return SW_OK;
    size_t n = (size_t)snprintf(message, sizeof message,
                                "%s: \"%.40s\" is none of", field, word);
    for (int v = 1; sw_word(list, v) && n < sizeof message; v++)
        n += (size_t)snprintf(message + n, sizeof message - n, "%s %s",
                              v > 1 ? "," : "", sw_word(list, v));
    return sw_refuse(SW_ERR_UNKNOWN, field, message);
}
%}

/* numbers */

%typemap(out) int sw_calibrate_resolve,
              int sw_chart_resolve,
              int sw_spread_resolve,
              int sw_strap_resolve,
              int sw_strip_resolve,
              int sw_tool_resolve,
              int sw_torque_resolve,
              int sw_screw_resolve,
              int sw_cylinder_resolve,
              int sw_swing_resolve,
              int sw_vacuum_resolve,
              int sw_adhesive_resolve,
              int sw_bar_resolve,
              int sw_contact_resolve,
              int sw_pad_resolve,
              int sw_disc_resolve,
              int sw_chuck_resolve,
              int sw_squeeze_resolve,
              int sw_couple_resolve,
              int sw_tripod_resolve,
              int sw_tight_resolve,
              int sw_turning_resolve,
              int sw_milling_resolve,
              int sw_drilling_resolve {
    %set_output(SW_NONE);
}

#if !defined(%as_number)
%define %as_number(OBJ, PLACE) SWIG_AsVal(double)(OBJ, PLACE) %enddef
#endif

%typemap(in, fragment = SWIG_AsVal_frag(double)) double {
    if (SW_IS_NONE($input))
        $1 = SW_UNSET;
    else if (!SWIG_IsOK(%as_number($input, &$1)))
        SWIG_exception_fail(SWIG_TypeError, "$1_name: a number is wanted");
}

/* arguments that are always needed */
%typemap(in, fragment = SWIG_AsVal_frag(double))
    double nominal_mm, double toe_force_N, double vial_mm_per_m,
    double hold_N, double flat_N, double p, double df {
    if (!SWIG_IsOK(%as_number($input, &$1)))
        SWIG_exception_fail(SWIG_TypeError, "$1_name: a number is wanted");
}

%typemap(out, fragment = SWIG_From_frag(double)) double {
    if ($1 == SW_UNSET) {
        %set_output(SW_NONE);
    } else {
        %set_output(SWIG_From(double)($1));
    }
}

%typemap(out, fragment = SWIG_From_frag(double)) sw_quantity_out {
    %set_output(SWIG_From(double)($1.value));
}

/* texts */

%typemap(in, fragment = "SWIG_AsCharPtrAndSize") const char *
    (int res, char *buf = 0, size_t size = 0, int alloc = 0) {
    res = SWIG_AsCharPtrAndSize($input, &buf, &size, &alloc);
    if (!SWIG_IsOK(res))
        SWIG_exception_fail(SWIG_TypeError, "$1_name: a text is wanted");
    if (sw_check_text(buf, size, "$1_name"))
        SW_RAISE(&sw_call_error);
    $1 = buf;
}

%typemap(in, fragment = "SWIG_AsCharPtrAndSize") char [ANY]
    (int res, char *buf = 0, size_t size = 0, int alloc = 0,
     char taken[$1_dim0]) {
    res = SWIG_AsCharPtrAndSize($input, &buf, &size, &alloc);
    if (!SWIG_IsOK(res))
        SWIG_exception_fail(SWIG_TypeError, "$1_name: a text is wanted");
    if (sw_take_text(buf, size, taken, $1_dim0, "$1_name"))
        SW_RAISE(&sw_call_error);
    $1 = taken;
}
%typemap(freearg, match = "in") char [ANY] {
    if (alloc$argnum == SWIG_NEWOBJ)
        free(buf$argnum);
}

/* none is "left to the library" or "does not apply" */
%typemap(out, fragment = "SWIG_FromCharPtrAndSize") char [ANY] {
    if ($1[0]) {
        %set_output(SWIG_FromCharPtrAndSize($1, strlen($1)));
    } else {
        %set_output(SW_NONE);
    }
}

/* words */

%define %word_field(NAME, LIST)
%typemap(in, fragment = SWIG_AsVal_frag(int),
         fragment = "SWIG_AsCharPtrAndSize") int NAME
    (int res, char *buf = 0, size_t size = 0, int alloc = 0) {
    if (SW_IS_NONE($input)) {
        $1 = SW_UNSET_WORD;
    } else if (!SWIG_IsOK(SWIG_AsVal(int)($input, &$1))) {
        res = SWIG_AsCharPtrAndSize($input, &buf, &size, &alloc);
        if (!SWIG_IsOK(res) || !buf)
            SWIG_exception_fail(SWIG_TypeError,
                                "$1_name: a word or its number is wanted");
        if (sw_check_text(buf, size, "$1_name") ||
            sw_take_word(buf, LIST, &$1, "$1_name"))
            SW_RAISE(&sw_call_error);
    }
}
%typemap(freearg, match = "in") int NAME {
    if (alloc$argnum == SWIG_NEWOBJ)
        free(buf$argnum);
}
%typemap(out, fragment = SWIG_From_frag(int)) int NAME {
    if ($1 == SW_UNSET_WORD) {
        %set_output(SW_NONE);
    } else {
        %set_output(SWIG_From(int)($1));
    }
}
%enddef

%word_field(basis, SW_WORDS_BASIS)
%word_field(depth, SW_WORDS_DEPTH)
%word_field(needed, SW_WORDS_NEEDED)
%word_field(facing, SW_WORDS_FACING)
%word_field(foot, SW_WORDS_FOOT)
%word_field(form, SW_WORDS_FORM)
%word_field(heel, SW_WORDS_HEEL)
%word_field(nose, SW_WORDS_NOSE)
%word_field(nut, SW_WORDS_NUT)
%word_field(seat, SW_WORDS_SEAT)
%word_field(show, SW_WORDS_SHOW)
%word_field(strap, SW_WORDS_STRAP)
%word_field(restraint, SW_WORDS_RESTRAINT)
%word_field(tool_kind, SW_WORDS_TOOL_KIND)
%word_field(torque_unit, SW_WORDS_TORQUE_UNIT)
%word_field(torsion, SW_WORDS_TORSION)
%word_field(vary, SW_WORDS_VARY)
%word_field(views, SW_WORDS_VIEW)
%word_field(arm_kind, SW_WORDS_ARM)
%word_field(contact, SW_WORDS_CONTACT)
%word_field(face_pressure, SW_WORDS_FACE)
%word_field(grip, SW_WORDS_GRIP)
%word_field(profile, SW_WORDS_PROFILE)
%word_field(screw, SW_WORDS_SCREW)
%word_field(side, SW_WORDS_SIDE)
%word_field(direction, SW_WORDS_TURNING)
%word_field(mode, SW_WORDS_MILLING)
%word_field(way, SW_WORDS_CUT_WAY)

%typemap(default) double snug_N "$1 = SW_UNSET;"
/* one function with an optional argument, not two of one name */
%feature("compactdefaultargs") sw_strap_turn;
%feature("compactdefaultargs") sw_strap_spread;
%feature("kwargs") sw_strap_turn;
%feature("kwargs") sw_strap_spread;

/* a language without a typemap of its own is told nothing of long runs */
#if !defined(SW_OWN_PROGRESS)
%typemap(in, numinputs = 0) (sw_progress progress, void *with)
    "$1 = NULL; $2 = NULL;"
#endif
%typemap(check) (sw_progress progress, void *with) ""
%ignore sw_progress;

/* ---- text that a function writes ---- */

%typemap(in, numinputs = 0) (char *text, size_t room) (char made[240])
    "$1 = made; $2 = sizeof made; made[0] = 0;"
%typemap(argout, fragment = "SWIG_FromCharPtrAndSize")
    (char *text, size_t room) {
    %set_output(SWIG_FromCharPtrAndSize($1, strlen($1)));
}
%typemap(out) size_t sw_say ""
%typemap(out) size_t sw_say_range ""

/* ---- structs ---- */

%nodefaultctor;
%immutable assumed;
%ignore seal; /* a field that is set breaks it on purpose, see below */

%define %input_struct(TYPE, NAME, DEFAULTS)
%typemap(in) const TYPE * (void *place = NULL),
             TYPE *q (void *place = NULL) {
    if (!SWIG_IsOK(SWIG_ConvertPtr($input, &place, $descriptor(TYPE *), 0)) ||
        !place)
        SWIG_exception_fail(SWIG_TypeError, "$1_name: a NAME is wanted");
    $1 = (TYPE *)place;
}
%newobject TYPE::copy;
%extend TYPE {
    TYPE()
    {
        TYPE *made = (TYPE *)calloc(1, sizeof *made);
        DEFAULTS(made);
        return made;
    }
    TYPE *copy()
    {
        TYPE *made = (TYPE *)calloc(1, sizeof *made);
        if (made)
            *made = *$self;
        return made;
    }
    /* A field that is set after resolving is no longer assumed; its number is
     * the index of sw_field_at(). */
    void given(int index)
    {
        if (index >= 0 && index < 64)
            $self->assumed &= ~((uint64_t)1 << index);
        $self->seal = 0;
    }
}
%enddef

%input_struct(sw_calibrate_in, CalibrateIn, sw_calibrate_defaults)
%input_struct(sw_chart_in, ChartIn, sw_chart_defaults)
%input_struct(sw_spread_in, SpreadIn, sw_spread_defaults)
%input_struct(sw_engage_in, EngageIn, sw_engage_defaults)
%input_struct(sw_strap_in, StrapIn, sw_strap_defaults)
%input_struct(sw_strip_in, StripIn, sw_strip_defaults)
%input_struct(sw_support_in, _SupportIn, sw_support_defaults)
%input_struct(sw_clamp_in, _ClampIn, sw_clamp_defaults)
%input_struct(sw_stop_in, _StopIn, sw_stop_defaults)
%input_struct(sw_load_in, _LoadIn, sw_load_defaults)
%input_struct(sw_weight_in, _WeightIn, sw_weight_defaults)
%input_struct(sw_hold_in, _HoldIn, sw_hold_defaults)
%input_struct(sw_tight_in, TightIn, sw_tight_defaults)
%input_struct(sw_tool_in, ToolIn, sw_tool_defaults)
%input_struct(sw_torque_in, TorqueIn, sw_torque_defaults)
%input_struct(sw_screw_in, ScrewIn, sw_screw_defaults)
%input_struct(sw_cylinder_in, CylinderIn, sw_cylinder_defaults)
%input_struct(sw_swing_in, SwingIn, sw_swing_defaults)
%input_struct(sw_vacuum_in, VacuumIn, sw_vacuum_defaults)
%input_struct(sw_adhesive_in, AdhesiveIn, sw_adhesive_defaults)
%input_struct(sw_bar_in, BarIn, sw_bar_defaults)
%input_struct(sw_contact_in, ContactIn, sw_contact_defaults)
%input_struct(sw_pad_in, PadIn, sw_pad_defaults)
%input_struct(sw_disc_in, DiscIn, sw_disc_defaults)
%input_struct(sw_chuck_in, ChuckIn, sw_chuck_defaults)
%input_struct(sw_squeeze_in, SqueezeIn, sw_squeeze_defaults)
%input_struct(sw_couple_in, CoupleIn, sw_couple_defaults)
%input_struct(sw_tripod_in, TripodIn, sw_tripod_defaults)
%input_struct(sw_turning_in, TurningIn, sw_turning_defaults)
%input_struct(sw_milling_in, MillingIn, sw_milling_defaults)
%input_struct(sw_drilling_in, DrillingIn, sw_drilling_defaults)

/* ---- classes: what owns memory ---- */

/* SWIG calls a method TYPE_METHOD in C, so none may be named as in the header
 * before it is renamed. */
%rename(add) sw_pairs::add_one;
%rename(read) sw_pairs::read_text;
%rename(count) sw_pairs::count_all;
%rename(about) sw_pairs::about_all;
%rename(at) sw_pairs::at_index;

typedef struct sw_pairs {
} sw_pairs;
%extend sw_pairs {
    sw_pairs(sw_error *err) { return sw_pairs_new(err); }
    ~sw_pairs() { sw_pairs_free($self); }
    void add_one(double torque_Nm, double force_N, double thread_torque_Nm,
                 double seat_torque_Nm, sw_error *err)
    {
        if (sw_pairs_add($self, torque_Nm, force_N, thread_torque_Nm,
                         seat_torque_Nm, err))
            return; /* raised by what err holds */
    }
    void read_text(const char *text, const char *file, sw_error *err)
    {
        if (sw_pairs_read($self, text, text ? strlen(text) : 0, file, err))
            return;
    }
    int count_all() { return sw_pairs_count($self); }
    sw_pairs_out about_all(sw_error *err) { return sw_pairs_about($self, err); }
    sw_pair_out at_index(const sw_calibrate_in *q, int index, sw_error *err)
    {
        return sw_pairs_at(q, $self, index, err);
    }
}

%rename(_add_support) sw_fixture::put_support;
%rename(_add_clamp) sw_fixture::put_clamp;
%rename(_add_stop) sw_fixture::put_stop;
%rename(_add_load) sw_fixture::put_load;
%rename(_set_weight) sw_fixture::put_weight;
%rename(_count) sw_fixture::count_of;
typedef struct sw_fixture {
} sw_fixture;
%extend sw_fixture {
    sw_fixture(sw_error *err) { return sw_fixture_new(err); }
    ~sw_fixture() { sw_fixture_free($self); }
    void put_support(const sw_support_in *q, sw_error *err)
    {
        if (sw_fixture_add_support($self, q, err))
            return; /* raised by what err holds */
    }
    void put_clamp(const sw_clamp_in *q, sw_error *err)
    {
        if (sw_fixture_add_clamp($self, q, err))
            return;
    }
    void put_stop(const sw_stop_in *q, sw_error *err)
    {
        if (sw_fixture_add_stop($self, q, err))
            return;
    }
    void put_load(const sw_load_in *q, sw_error *err)
    {
        if (sw_fixture_add_load($self, q, err))
            return;
    }
    void put_weight(const sw_weight_in *q, sw_error *err)
    {
        if (sw_fixture_set_weight($self, q, err))
            return;
    }
    int count_of(int part) { return sw_fixture_count($self, part); }
}

%feature("compactdefaultargs") sw_hold::sw_hold;
%rename(_total) sw_hold::total_of;
%rename(_point) sw_hold::point_of;
%rename(_contact) sw_hold::contact_of;
typedef struct sw_hold {
} sw_hold;
%extend sw_hold {
    sw_hold(const sw_fixture *fixture, const sw_hold_in *q,
            sw_progress progress, void *with, sw_error *err)
    {
        return sw_hold_new(fixture, q, progress, with, err);
    }
    ~sw_hold() { sw_hold_free($self); }
    sw_hold_out total_of(sw_error *err) { return sw_hold_total($self, err); }
    sw_hold_point_out point_of(int load, sw_error *err)
    {
        return sw_hold_point($self, load, err);
    }
    sw_hold_contact_out contact_of(int load, int part, int index,
                                   sw_error *err)
    {
        return sw_hold_contact($self, load, part, index, err);
    }
}

%rename(_about) sw_job::about_of;
%rename(_corner) sw_job::corner_of;
%rename(_clamp) sw_job::clamp_of;
%rename(_operation) sw_job::operation_of;
%rename(_find) sw_job::find_of;
%rename(_has_clamp) sw_job::has_clamp_of;
%rename(_fixture) sw_job::fixture_of;
%rename(_fill) sw_job::fill_hold;
%rename(_assumed) sw_job::assumed_of;
%rename(_remark) sw_job::remark_of;
%newobject sw_job::fixture_of;
typedef struct sw_job {
} sw_job;
%extend sw_job {
    sw_job(const char *text, const char *file, sw_error *err)
    {
        return sw_job_read(text, text ? strlen(text) : 0, file, err);
    }
    ~sw_job() { sw_job_free($self); }
    sw_job_out about_of(sw_error *err) { return sw_job_about($self, err); }
    sw_job_corner_out corner_of(int index, sw_error *err)
    {
        return sw_job_corner($self, index, err);
    }
    sw_job_clamp_out clamp_of(int index, sw_error *err)
    {
        return sw_job_clamp($self, index, err);
    }
    sw_job_operation_out operation_of(int index, sw_error *err)
    {
        return sw_job_operation($self, index, err);
    }
    int find_of(const char *name) { return sw_job_find_operation($self, name); }
    int has_clamp_of(int operation, int clamp)
    {
        return sw_job_has_clamp($self, operation, clamp);
    }
    sw_fixture *fixture_of(int operation, sw_error *err)
    {
        return sw_job_fixture($self, operation, err);
    }
    void fill_hold(int operation, sw_hold_in *q, sw_error *err)
    {
        if (sw_job_hold_in($self, operation, q, err))
            return; /* raised by what err holds */
    }
    sw_assumption assumed_of(int index, sw_error *err)
    {
        return sw_job_assumed($self, index, err);
    }
    const char *remark_of(int index) { return sw_job_remark($self, index); }
}

%rename(svg) sw_drawing::svg_text;
typedef struct sw_drawing {
} sw_drawing;
%extend sw_drawing {
    ~sw_drawing() { sw_drawing_free($self); }
    const char *svg_text() { return sw_drawing_svg($self); }
}
%newobject sw_calibrate_plot;
%newobject sw_tilt_plot;
%newobject draw_strap;
%newobject draw_map;
/* how it is drawn: arguments by name, no class */
%ignore sw_strap_drawing_in;
%ignore sw_strap_drawing_defaults;
%ignore sw_strap_drawing;

/* arguments whose names are keywords or functions somewhere */
#define in q
#define list words

%include <strapwise/status.h>
%include <strapwise/units.h>
%include <strapwise/say.h>
%include <strapwise/quantile.h>
%include <strapwise/words.h>
%immutable;
%include <strapwise/field.h>
%mutable;
%include <strapwise/thread.h>
%include <strapwise/grade.h>
%include <strapwise/lubrication.h>
%include <strapwise/material.h>
%include <strapwise/nut.h>
%include <strapwise/strip.h>
%include <strapwise/method.h>
%include <strapwise/torque.h>
%include <strapwise/spread.h>
%include <strapwise/tool.h>
%include <strapwise/chart.h>
%include <strapwise/drawing.h>
%include <strapwise/calibrate.h>
%include <strapwise/strap.h>
%include <strapwise/ask.h>
%include <strapwise/weakest.h>
%include <strapwise/turn.h>
%include <strapwise/strap_spread.h>
%include <strapwise/remark.h>
%include <strapwise/strap_drawing.h>
%include <strapwise/tilt_plot.h>
%include <strapwise/screw.h>
%include <strapwise/cylinder.h>
%include <strapwise/swing.h>
%include <strapwise/vacuum.h>
%include <strapwise/adhesive.h>
%include <strapwise/bar.h>
%include <strapwise/contact.h>
%include <strapwise/pad.h>
%include <strapwise/disc.h>
%include <strapwise/chuck.h>
%include <strapwise/squeeze.h>
%include <strapwise/fixture.h>
%include <strapwise/hold.h>
%include <strapwise/job.h>
%include <strapwise/couple.h>
%include <strapwise/tripod.h>
%include <strapwise/tight.h>
%include <strapwise/cut_material.h>
%include <strapwise/cut_load.h>
%include <strapwise/turning.h>
%include <strapwise/milling.h>
%include <strapwise/drilling.h>

%inline %{
sw_drawing *draw_strap(const sw_strap_in *q, double width_px, double text_px,
                       double full_force_N, double sideways,
                       double vial, int views, int show,
                       sw_error *err)
{
    sw_strap_drawing_in how;
    sw_strap_drawing_defaults(&how);
    how.width_px = width_px;
    how.text_px = text_px;
    how.full_force_N = full_force_N;
    how.sideways = sideways;
    how.vial_mm_per_m = vial; /* the other name is for what must be given */
    how.views = views;
    how.show = show;
    return sw_strap_drawing(q, &how, err);
}

sw_drawing *draw_map(const sw_job *job, int operation, const sw_hold *hold,
                     double width_px, double text_px, int show, sw_error *err)
{
    sw_hold_map_in how;
    sw_hold_map_defaults(&how);
    how.width_px = width_px;
    how.text_px = text_px;
    how.show = show;
    return sw_hold_map(job, operation, hold, &how, err);
}
%}

#undef in
#undef list

#if defined(SWIGPYTHON)
%pythoncode "python/helpers.py"
#endif
