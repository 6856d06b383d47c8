/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What only Python needs: the exception class, private names, docstrings.
 * Python code is in helpers.py, which ends the module.
 */

%define %as_number(OBJ, PLACE) sw_as_number(OBJ, PLACE) %enddef

%{
/* Whatever has __float__ is a number: numpy's scalars, Decimal, Fraction. */
static int sw_as_number(PyObject *obj, double *value)
{
    *value = PyFloat_AsDouble(obj);
    if (!PyErr_Occurred())
        return SWIG_OK;
    PyErr_Clear();
    return SWIG_TypeError;
}

#define SW_IS_NONE(obj) ((obj) == Py_None)
#define SW_NONE SWIG_Py_Void()
#define SW_RAISE(e)                                                            \
    do {                                                                       \
        sw_raise(e);                                                           \
        SWIG_fail;                                                             \
    } while (0)

/* class strapwise.Error; made when the module is loaded, never changed */
static PyObject *sw_error_class;

/* Sets an attribute and drops the reference. */
static int sw_set(PyObject *error, const char *name, PyObject *value)
{
    const int failed = !value || PyObject_SetAttrString(error, name, value);
    Py_XDECREF(value);
    return failed;
}

static PyObject *sw_text(const char *text)
{
    return PyUnicode_DecodeUTF8(text, (Py_ssize_t)strlen(text), "replace");
}

static PyObject *sw_number_or_none(double value)
{
    return isfinite(value) ? PyFloat_FromDouble(value) : SWIG_Py_Void();
}

static void sw_raise(const sw_error *e)
{
    if (PyErr_Occurred()) /* what ended the run says more */
        return;
    PyObject *text = sw_text(e->message);
    PyObject *error = text ? PyObject_CallFunctionObjArgs(sw_error_class, text,
                                                          NULL)
                           : NULL;
    Py_XDECREF(text);
    if (!error)
        return;
    if (!sw_set(error, "code", sw_text(sw_status_name(e->code))) &&
        !sw_set(error, "field", sw_text(e->field)) &&
        !sw_set(error, "low", sw_number_or_none(e->low)) &&
        !sw_set(error, "high", sw_number_or_none(e->high)))
        PyErr_SetObject(sw_error_class, error);
    Py_DECREF(error);
}

/* `code` and the rest are there even on an Error that a script made. */
static PyObject *sw_make_error_class(void)
{
    static const char doc[] =
        "A question that could not be answered; str() is one line that names\n"
        "field, value and allowed range.\n"
        "\n"
        "code   null_pointer, missing, nan, range, syntax, unit, unknown,\n"
        "       conflict, no_answer, memory or stopped\n"
        "field  name of the field or argument to blame\n"
        "low    allowed range, lower end; None where there is none\n"
        "high   allowed range, upper end; None where there is none";
    PyObject *made = NULL;
    PyObject *names = Py_BuildValue("{s:O,s:O,s:O,s:O}", "code", Py_None,
                                    "field", Py_None, "low", Py_None, "high",
                                    Py_None);
    if (names)
        made = PyErr_NewExceptionWithDoc("strapwise.Error", doc,
                                         PyExc_ValueError, names);
    Py_XDECREF(names);
    return made;
}
%}

%init %{
    sw_error_class = sw_make_error_class();
    Py_XINCREF(sw_error_class); /* one for us, one for the module */
    if (sw_error_class && PyModule_AddObject(m, "Error", sw_error_class))
        Py_DECREF(sw_error_class);
%}

/* ---- progress of long runs: any callable; Ctrl-C ends them ---- */

#define SW_OWN_PROGRESS
%{
static int sw_tell_progress(double done, void *with)
{
    if (PyErr_CheckSignals())
        return 1;
    if (!with)
        return 0;
    PyObject *said = PyObject_CallFunction((PyObject *)with, "d", done);
    const int stop = said ? PyObject_IsTrue(said) : 1;
    Py_XDECREF(said);
    return stop != 0;
}
%}
%typemap(default) (sw_progress progress, void *with) {
    $1 = sw_tell_progress;
    $2 = NULL;
}
%typemap(in) (sw_progress progress, void *with) {
    if ($input != Py_None && !PyCallable_Check($input))
        SWIG_exception_fail(SWIG_TypeError, "progress: a function is wanted");
    $1 = sw_tell_progress;
    $2 = $input == Py_None ? NULL : (void *)$input;
}

/* ---- names that helpers.py turns into something shorter ---- */

%define %private(NAME, FUNCTION)
%rename(NAME) FUNCTION;
%enddef

/* by index, in C; a list each, here */
%private(_calibrate_assumed, sw_calibrate_assumed)
%private(_calibrate_not_checked, sw_calibrate_not_checked)
%private(_chart_assumed, sw_chart_assumed)
%private(_hold_assumed, sw_hold_assumed)
%private(_hold_not_checked, sw_hold_not_checked)
%private(_grade_name, sw_grade_name)
%private(_lubrication_name, sw_lubrication_name)
%private(_material_name, sw_material_name)
%private(_nut_name, sw_nut_name)
%private(_method_name, sw_method_name)
%private(_spread_assumed, sw_spread_assumed)
%private(_strap_assumed, sw_strap_assumed)
%private(_strap_spread_assumed, sw_strap_spread_assumed)
%ignore sw_strap_window_assumed; /* a part of the other */
%private(_strap_matters, sw_strap_matters)
%private(_strap_not_checked, sw_strap_not_checked)
%private(_strap_weakest, sw_strap_weakest)
%private(_strap_weakest_assumed, sw_strap_weakest_assumed)
%private(_strip_assumed, sw_strip_assumed)
%private(_thread_name, sw_thread_name)
%private(_shop_tool, sw_shop_tool)
%private(_tool_assumed, sw_tool_assumed)
%private(_tool_for, sw_tool_for)
%private(_tool_name, sw_tool_name)
%private(_torque_assumed, sw_torque_assumed)
%private(_warning_name, sw_warning_name)
%private(_warning_text, sw_warning_text)
%private(_Assumption, sw_assumption)
%private(_RemarkOut, sw_remark_out)
%private(_strap_remark, sw_strap_remark)
%private(_draw_strap, draw_strap)
%private(_tilt_plot, sw_tilt_plot)
%private(_say, sw_say)
%private(_say_range, sw_say_range)
%private(_MatterOut, sw_matter_out)
%private(_GivesOut, sw_gives_out)
%ignore sw_thread_count;
/* with the name to blame, which is optional here */
%private(_number, sw_number)
%private(_quantity, sw_quantity)
%private(_unit_factor, sw_unit_factor)
/* Error.code is the name itself, so numbers would only mislead */
%private(_status_count, sw_status_count)
%private(_status_name, sw_status_name)
%rename("$ignore", regextarget = 1) "^SW_ERR_";
%ignore SW_OK;
/* the fields by name, for as_dict() and the docstrings */
%private(_Field, sw_field)
%private(_field_at, sw_field_at)
%rename("_%(strip:[SW_])s", regextarget = 1, %$isenumitem)
    "^SW_(FIELD|STRUCT)_";
%rename(_copy) copy;
%rename(_given) given;

/* ---- docstrings of what is wrapped as it stands ---- */

%feature("docstring") sw_version "Version of the library, 'major.minor.patch'.";
%feature("docstring") sw_tables_version
    "Edition and date of the tables that are compiled in.";
%feature("docstring") sw_kind_unit
    "Unit of a kind of quantity: kind_unit(KIND_FORCE) is 'N'; '' for ratios, "
    "None\nfor no kind.";
%feature("docstring") sw_word
    "Word of a number in one of the lists WORDS_...: "
    "word(WORDS_SEAT, SEAT_FLAT) is\n'flat'. None where there is none.";
%feature("docstring") sw_word_value
    "Number of a word in one of the lists WORDS_..., 0 where there is none.";

%feature("docstring") sw_thread
"Looks a thread up: 'M12', 'M12x1.25', '1/2-13', '1/2-13 UNC', '#10-32'.

A metric size without a pitch is the coarse one; a unified size needs its
threads per inch. Nothing is interpolated: a thread that is in no table raises
Error, which offers the nearest ones.

Returns a ThreadOut (mm, mm2, deg).";

%feature("docstring") sw_grade
"Strength of a grade for a nominal diameter in mm: grade('8.8', 12).

Returns a GradeOut (MPa).";

%feature("docstring") sw_lubrication
"Nut factor or friction by state of lubrication; lubrication_names() has the
keys.

Returns a LubricationOut (ratios).";

%feature("docstring") sw_method
"Way of tightening and the scatter of the preload published for it;
method_names() has the keys.

Returns a MethodOut (%).";

%feature("docstring") sw_spread_resolve
"Fills every open field of a SpreadIn in place; q, the TorqueIn that it goes with,
says which way of tightening fits.";

%feature("docstring") sw_spread
"Spread of the preload (N) at the torque of a TorqueIn, in closed form.

>>> q = TorqueIn(thread='M12', torque_Nm=48, nut_factor=0.2)
>>> s = spread(q, SpreadIn(scatter_pct=25))
>>> round(s.preload_low_N), round(s.preload_high_N)
(15492, 25820)

Returns a SpreadOut (N, N.m, %).";

%feature("docstring") sw_window
"Torque whose whole spread keeps the stud tension between hold_N and flat_N (N),
or the sentence that there is none: word('verdict') is 'fits' or 'none'.

Returns a WindowOut (N, N.m, %).";

%feature("docstring") sw_strap_spread
"Draws a strap again and again (trials, seed and what varies: SpreadIn) and takes
quantiles of toe force and side pull (N). The same question gives the same
answer with any number of threads. progress is called now and then with what is
done, 0 .. 1; when it returns something true the run ends with Error 'stopped'.

Returns a StrapSpreadOut (N).";

%feature("docstring") sw_strap_window
"Torque that keeps the toe force of a strap, its own band included, between hold_N
and flat_N (N), or the sentence that there is none.

Returns a WindowOut (N, N.m, %).";
%feature("docstring") sw_normal_quantile
"What a share p of the standard normal distribution lies below:
normal_quantile(0.975) is 1.96.";

%feature("docstring") sw_t_quantile
"What a share p of Student's t distribution lies below; df degrees of freedom,
whole or not: t_quantile(0.975, 9) is 2.262.";

%feature("docstring") sw_material
"Elastic constants and strengths by name: material('6061-T6');
material_names() has the keys.

Returns a MaterialOut (MPa, kg/m3, ratios).";

%feature("docstring") sw_nut_proof
"Proof stress of a nut for a nominal diameter in mm: nut_proof('8', 12).

Returns a NutOut (MPa).";

%feature("docstring") sw_strip
"Whether a stud breaks before the threads that hold it strip, and the engagement
(mm) that it needs.

>>> q = StripIn(thread='M12', material='6061-T6', engaged_length_mm=12)
>>> strip(q).word('first')
'tapped thread'

Returns a StripOut (N, mm, mm2).";

%feature("docstring") sw_strip_resolve
"Fills every open field of a StripIn in place; assumed() lists them. Setting a
field afterwards makes it yours; what the library filled in follows.";

%feature("docstring") sw_torque
"Torque (N.m) to preload (N), preload to torque, or both at a fraction of yield.

>>> q = TorqueIn(thread='M12', preload_N=20000, nut_factor=0.2)
>>> round(torque(q).torque_Nm, 6)
48.0

Returns a TorqueOut (N, N.m, MPa, deg).";

%feature("docstring") sw_torque_resolve
"Fills every open field of a TorqueIn in place; assumed() lists them. Setting a
field afterwards makes it yours; what the library filled in follows.";

%feature("docstring") sw_chart_resolve
"Fills every open field of a ChartIn in place; assumed() lists them. Setting a
field afterwards makes it yours; what the library filled in follows.";

%feature("docstring") sw_chart
"One line of the wall chart: N.m per kN and ft-lbf per 1000 lbf of stud tension,
and the torque (N.m) that is not to be exceeded.

Returns a ChartOut (N, N.m, ft-lbf).";

%feature("docstring") sw_calibrate
"The shop's own nut factor from pairs of torque (N.m) and force (N).

>>> pairs = Pairs([(20, 8310), (40, 16900), (60, 24600)])
>>> round(calibrate(CalibrateIn(thread='M12'), pairs).nut_factor, 3)
0.2

Returns a CalibrateOut (N, N.m, %, mm).";

%feature("docstring") sw_calibrate_plot
"Plot of force (N) against torque (N.m): the pairs, the line of K, the band of the
tolerance interval. Returns a Drawing; its svg() is the text of an SVG file.";

%feature("docstring") sw_calibrate_resolve
"Fills every open field of a CalibrateIn in place, for these pairs; assumed()
lists them. Setting a field afterwards makes it yours; what the library filled in
follows.";

%feature("docstring") sw_strap
"Solves one strap clamp: stud tension (N) to the force at the toe (N) and the
pull on the part (N).

>>> q = StrapIn(thread='M12', preload_N=12000, stud_to_toe_mm=30,
...             stud_to_heel_mm=60, part_height_mm=40, heel_height_mm=40)
>>> round(strap(q).toe_force_level_N)
8000

Returns a StrapOut (N, N.m, MPa, mm, deg).";

%feature("docstring") sw_strap_resolve
"Fills every open field of a StrapIn in place; assumed() lists them. Setting a
field afterwards makes it yours; what the library filled in follows.";

%feature("docstring") sw_strap_tilt
"Tilts, within 10 degrees of level, at which a strap keeps a limit of side pull,
of toe force error, or of both. The tilt and heights of q are not used.

side_pull_N    largest side pull in N, either way; None = no limit
toe_error_pct  largest toe force error in %, either way; None = no limit
vial_mm_per_m  slope for one division of the level in mm/m, 0.001 .. 50
basis          'nominal', or 'band': the worse end of the band

Returns a TiltOut (deg, mm, mm/m, N, %). Raises Error with code 'no_answer'
where no tilt keeps the limits.";

%feature("docstring") sw_strap_place
"Where the stud must stand between toe and heel, their distance kept, for a
wanted toe force (N) at the same preload.

Returns a PlaceOut (mm, N). Raises Error with code 'no_answer' where no place
gives it.";

%feature("docstring") sw_strap_torque
"Preload (N) and torque (N.m) for a wanted toe force (N), the strap as it stands;
its own preload and torque are not used.

Returns a StrapTorqueOut (N, N.m).";

%feature("docstring") sw_method_out
"One way of tightening, from method().";
%feature("docstring") sw_spread_in
"How a tightening scatters: method, or scatter_pct, or tool_scatter_pct and
factor_scatter_pct. Nothing is required.";
%feature("docstring") sw_spread_out "Answer of spread().";
%feature("docstring") sw_window_out "Answer of window() and strap_window().";
%feature("docstring") sw_strap_spread_out "Answer of strap_spread().";

%feature("docstring") sw_tool
"Rounds a torque (N.m) to what a torque tool can be set to.

>>> tool(ToolIn(tool='click-25Nm', torque_Nm=8.3)).set_torque_Nm
8.5

Returns a ToolOut (N.m, in-lbf, ft-lbf, %). Raises Error with code 'no_answer'
outside the usable range; its low and high are that range.";

%feature("docstring") sw_tool_resolve
"Fills every open field of a ToolIn in place; assumed() lists them. Setting a
field afterwards makes it yours; what the library filled in follows.";

%feature("docstring") sw_tool_use
"Puts one of shop_tools() into a ToolIn, in place of one of the table.";
%feature("docstring") sw_shop_tool_out
"One tool of a shop's own file, from shop_tools().";

%feature("docstring") sw_thread_out
"Geometry of one thread and the hardware of its size, from thread().";
%feature("docstring") sw_grade_out
"Strength of one grade for one diameter, from grade().";
%feature("docstring") sw_lubrication_out
"Friction of one state of lubrication, from lubrication(). It has either a nut
factor or friction coefficients; the other is None.";
%feature("docstring") sw_material_out
"One material, from material(). What is not known is None.";
%feature("docstring") sw_nut_out
"Strength of one class of nut for one diameter, from nut_proof().";
%feature("docstring") sw_strap_turn
"How far the nut of a StrapIn turns from snug to its tension, in degrees and
flats, with its band. snug_N is the tension when the nut is snug (N); None = 5 %
of the strap's.

Returns a TurnOut (deg, N, mm).";
%feature("docstring") sw_turn_out "Answer of strap_turn().";
%feature("docstring") sw_engage_in
"What stands at both ends of a strap's stud, for weakest(). Nothing is required.";
%feature("docstring") sw_strip_in "Question to strip(). Required: thread.";
%feature("docstring") sw_strip_out "Answer of strip().";
%feature("docstring") sw_hold_rest_text
"One sentence on a state at rest, by its number: hold_rest_text(REST_ROCKS).";
%feature("docstring") sw_hold_out
"Answer of Hold.total(): the part under its worst load.";
%feature("docstring") sw_hold_point_out
"Answer of Hold.point(): the part under one load of its path.";
%feature("docstring") sw_hold_contact_out
"Answer of Hold.contact(): one contact under one load.";
%feature("docstring") sw_fixture
"A part on its fixture: supports that carry it, clamps that press it, stops that
it is pushed against, its weight, and the loads of the cut. x and y in the
table's plane, z up; every force is the one on the part.

>>> f = Fixture()
>>> for x, y in ((0, 0), (200, 0), (200, 120), (0, 120)):
...     f.add_support(x_mm=x, y_mm=y, friction=0.15)
>>> f.add_clamp(x_mm=100, y_mm=60, z_mm=30, force_N=4000)
>>> f.set_weight(weight_N=50, x_mm=100, y_mm=60, z_mm=15)
>>> f.add_load(x_mm=100, y_mm=60, z_mm=50, force_y_N=500)
>>> h = f.hold(required_margin=2)
>>> round(h.total().margin, 4), h.total().word('first_to_go')
(1.215, 'slide')
>>> round(h.total().hold_limit_N)
6617";
%feature("docstring") sw_hold
"Whether the part of a Fixture stays put; made by Fixture.hold().";
%feature("docstring") sw_torque_in
"Question to torque(). Required: thread and one of preload_N, torque_Nm and use.";
%feature("docstring") sw_torque_out "Answer of torque().";
%feature("docstring") sw_tool_in
"Question to tool(). Required: torque_Nm, and tool or range_high_Nm and
resolution_Nm.";
%feature("docstring") sw_tool_out
"What is set on a tool, from tool() or tools_for().";
%feature("docstring") sw_pairs
"Pairs of torque (N.m) and force (N) in the order they were measured; len() is
their number. Pairs([(20, 8310), (40, 16900)]) makes two.";
%feature("docstring") sw_drawing
"A finished drawing. The same question gives the same bytes.";
%feature("docstring") sw_pairs_out
"What the head of a file of pairs says, from Pairs.about().";
%feature("docstring") sw_pair_out
"One pair, and how far it is from the others, from Pairs.at().";
%feature("docstring") sw_calibrate_in
"Question to calibrate(). Required: thread, unless the pairs have it.";
%feature("docstring") sw_calibrate_out
"Answer of calibrate(). Torques are net of the prevailing one.";
%feature("docstring") sw_chart_in "Question to chart(). Required: thread.";
%feature("docstring") sw_chart_out "One line of the wall chart, from chart().";
%feature("docstring") sw_strap_in
"Question to strap(). Required: thread; preload_N or torque_Nm; stud_to_toe_mm
and stud_to_heel_mm; both heights, or tilt_deg instead.";
%feature("docstring") sw_strap_out "Answer of strap().";
%feature("docstring") sw_tilt_out
"Answer of strap_tilt(): the tilts that keep the demand.";
%feature("docstring") sw_place_out "Answer of strap_place().";
%feature("docstring") sw_strap_torque_out "Answer of strap_torque().";
