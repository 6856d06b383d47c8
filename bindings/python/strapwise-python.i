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
%private(_job_not_checked, sw_job_not_checked)
%private(_draw_map, draw_map)
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
%private(_tight, sw_tight)
%private(_tight_remedy, sw_tight_remedy)
%private(_tight_assumed, sw_tight_assumed)
%private(_tight_not_checked, sw_tight_not_checked)
%private(_tight_resolve, sw_tight_resolve)
%private(_RemedyOut, sw_remedy_out)
%private(_strap_weakest, sw_strap_weakest)
%private(_strap_weakest_assumed, sw_strap_weakest_assumed)
%private(_strip_assumed, sw_strip_assumed)
%private(_thread_name, sw_thread_name)
%private(_cut_material_name, sw_cut_material_name)
%private(_turning_assumed, sw_turning_assumed)
%private(_milling_assumed, sw_milling_assumed)
%private(_milling_load_at, sw_milling_load_at)
%private(_drilling_assumed, sw_drilling_assumed)
%private(_shop_tool, sw_shop_tool)
%private(_tool_assumed, sw_tool_assumed)
%private(_tool_for, sw_tool_for)
%private(_tool_name, sw_tool_name)
%private(_torque_assumed, sw_torque_assumed)
%private(_screw_assumed, sw_screw_assumed)
%private(_cylinder_assumed, sw_cylinder_assumed)
%private(_swing_assumed, sw_swing_assumed)
%private(_vacuum_assumed, sw_vacuum_assumed)
%private(_adhesive_assumed, sw_adhesive_assumed)
%private(_bar_assumed, sw_bar_assumed)
%private(_contact_assumed, sw_contact_assumed)
%private(_pad_assumed, sw_pad_assumed)
%private(_disc_assumed, sw_disc_assumed)
%private(_chuck_assumed, sw_chuck_assumed)
%private(_squeeze_assumed, sw_squeeze_assumed)
%private(_couple_assumed, sw_couple_assumed)
%private(_tripod_assumed, sw_tripod_assumed)
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

%feature("docstring") sw_screw
"Screw clamp or through-screw: force of a torque, or torque for a force.

Returns a ScrewOut.";
%feature("docstring") sw_screw_resolve
"Fills every open field of a ScrewIn in place; assumed() lists them.";
%feature("docstring") sw_screw_in
"Question to screw(). Required: a thread, or diameter and pitch; and one of torque, force or hand force with handle length.";
%feature("docstring") sw_screw_out "Answer of screw().";
%feature("docstring") sw_cylinder
"Force of a hydraulic or pneumatic cylinder, capped by its maker's limit.

Returns a CylinderOut.";
%feature("docstring") sw_cylinder_resolve
"Fills every open field of a CylinderIn in place; assumed() lists them.";
%feature("docstring") sw_cylinder_in
"Question to cylinder(). Required: pressure; and bore or piston area.";
%feature("docstring") sw_cylinder_out "Answer of cylinder().";
%feature("docstring") sw_swing
"Force at the end of a swing arm or pivoted arm, and the pressure that its arm allows.

Returns a SwingOut.";
%feature("docstring") sw_swing_resolve
"Fills every open field of a SwingIn in place; assumed() lists them.";
%feature("docstring") sw_swing_in
"Question to swing(). Required: arm length; and pressure with bore, or input force, or the rating alone.";
%feature("docstring") sw_swing_out "Answer of swing().";
%feature("docstring") sw_vacuum
"What a vacuum plate holds, and the cut at which the part slides, gapes or tips.

Returns a VacuumOut.";
%feature("docstring") sw_vacuum_resolve
"Fills every open field of a VacuumIn in place; assumed() lists them.";
%feature("docstring") sw_vacuum_in
"Question to vacuum(). Required: vacuum; and the length and width inside the seal, or its area.";
%feature("docstring") sw_vacuum_out "Answer of vacuum().";
%feature("docstring") sw_adhesive
"What a bond holds by its maker's data sheet; nothing without one.

Returns a AdhesiveOut.";
%feature("docstring") sw_adhesive_resolve
"Fills every open field of a AdhesiveIn in place; assumed() lists them.";
%feature("docstring") sw_adhesive_in
"Question to adhesive(). Required: shear strength of the data sheet with its factor, tension strength where anything pulls; and length and width, or area.";
%feature("docstring") sw_adhesive_out "Answer of adhesive().";
%feature("docstring") sw_bar
"Forces at two pads under a bar that two studs pull down, with its bending.

Returns a BarOut.";
%feature("docstring") sw_bar_resolve
"Fills every open field of a BarIn in place; assumed() lists them.";
%feature("docstring") sw_bar_in
"Question to bar(). Required: both tensions, span, both pads, width and thickness.";
%feature("docstring") sw_bar_out "Answer of bar().";
%feature("docstring") sw_contact
"Hertz line or point contact: half-width, peak pressure, approach, and onset of yield.

Returns a ContactOut.";
%feature("docstring") sw_contact_resolve
"Fills every open field of a ContactIn in place; assumed() lists them.";
%feature("docstring") sw_contact_in
"Question to contact(). Required: force, first radius, length of a line contact, and both materials or moduli.";
%feature("docstring") sw_contact_out "Answer of contact().";
%feature("docstring") sw_pad
"Pressure under a pad, a round nose or a ball, and whether it marks the part.

Returns a PadOut.";
%feature("docstring") sw_pad_resolve
"Fills every open field of a PadIn in place; assumed() lists them.";
%feature("docstring") sw_pad_in
"Question to pad(). Required: force, part material or its limit; area of a flat pad, or radius (and width) of a nose.";
%feature("docstring") sw_pad_out "Answer of pad().";
%feature("docstring") sw_disc
"Whether the driver's face carries a disc round, and whether the cut tips it off.

Returns a DiscOut.";
%feature("docstring") sw_disc_resolve
"Fills every open field of a DiscIn in place; assumed() lists them.";
%feature("docstring") sw_disc_in
"Question to disc(). Required: thrust and driver diameter; and the cut's diameter where there is a cut.";
%feature("docstring") sw_disc_out "Answer of disc().";
%feature("docstring") sw_chuck
"Grip of a lathe chuck at speed, its margin on the cut, and the force it needs standing.

Returns a ChuckOut.";
%feature("docstring") sw_chuck_resolve
"Fills every open field of a ChuckIn in place; assumed() lists them.";
%feature("docstring") sw_chuck_in
"Question to chuck(). Required: chuck force.";
%feature("docstring") sw_chuck_out "Answer of chuck().";
%feature("docstring") sw_squeeze
"Squeeze that holds a cut by friction, and which faces were counted on.

Returns a SqueezeOut.";
%feature("docstring") sw_squeeze_resolve
"Fills every open field of a SqueezeIn in place; assumed() lists them.";
%feature("docstring") sw_squeeze_in
"Question to squeeze(). Required: cut.";
%feature("docstring") sw_squeeze_out "Answer of squeeze().";
%feature("docstring") sw_couple
"Margin of two pads against a push along the table and a couple, by friction.

Returns a CoupleOut.";
%feature("docstring") sw_couple_resolve
"Fills every open field of a CoupleIn in place; assumed() lists them.";
%feature("docstring") sw_couple_in
"Question to couple(). Required: first normal force, distance; and a load.";
%feature("docstring") sw_couple_out "Answer of couple().";
%feature("docstring") sw_tripod
"What each of three supports carries of a force, or that the part rocks.

Returns a TripodOut.";
%feature("docstring") sw_tripod_resolve
"Fills every open field of a TripodIn in place; assumed() lists them.";
%feature("docstring") sw_tripod_in
"Question to tripod(). Required: all three places, the force and its place.";
%feature("docstring") sw_tripod_out "Answer of tripod().";
%feature("docstring") sw_cut_material
"What a metal takes to be cut, by its name or its group: cut_material('6061-T6');
cut_material_names() has the names. 'cut_group' among the warnings says that a
group stands for the alloy.

Returns a CutMaterialOut (MPa).";

%feature("docstring") sw_turning
"Forces of a turning cut on the part (N), torque (N.m) and power (W).

>>> q = TurningIn(material='vdi-2', feed_mm=0.25, depth_mm=2, wear_factor=1)
>>> round(turning(q).cutting_N, 1)
1017.5

Returns a TurningOut.";

%feature("docstring") sw_milling
"Mean load on the part, its peak, and how far each component swings while a tooth
goes by (N, N.m). x along the feed, y to its left, z up.

>>> q = MillingIn(material='6061-T6', mode='side', way='climb', teeth=3,
...               diameter_mm=12, feed_per_tooth_mm=0.08, depth_mm=10,
...               width_mm=3)
>>> milling(q).mean_x_N < 0  # back, under the cutter
True

Returns a MillingOut.";

%feature("docstring") sw_drilling
"Torque (N.m) and thrust (N) of a drill on the part, and its pull (N) when it
breaks through.

>>> q = DrillingIn(material='vdi-22', diameter_mm=10, feed_mm=0.2,
...                wear_factor=1)
>>> round(drilling(q).torque_Nm, 2)
3.7

Returns a DrillingOut.";

%feature("docstring") sw_turning_resolve
"Fills every open field of a TurningIn in place; assumed() lists them. Setting a
field afterwards makes it yours; what the library filled in follows.";

%feature("docstring") sw_milling_resolve
"Fills every open field of a MillingIn in place; assumed() lists them. Setting a
field afterwards makes it yours; what the library filled in follows.";

%feature("docstring") sw_drilling_resolve
"Fills every open field of a DrillingIn in place; assumed() lists them. Setting a
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
%feature("docstring") sw_cut_material_out
"What a metal takes to be cut, from cut_material(). What is not known is None.";
%feature("docstring") sw_cut_load_out
"Force and moment on the part at one instant, from milling_loads(). The moment is
about the tool point: where the cutter's axis meets the floor of the cut.";
%feature("docstring") sw_turning_in
"Question to turning(). Required: material (or kc11_MPa and mc), depth_mm,
feed_mm.";
%feature("docstring") sw_turning_out
"Answer of turning(). Forces on the part: x from the spindle axis to the tool, y
the way the work's surface runs there, z away from the chuck.";
%feature("docstring") sw_milling_in
"Question to milling(). Required: material (or kc11_MPa and mc), diameter_mm,
teeth, feed_per_tooth_mm, depth_mm, and width_mm unless it is a slot.";
%feature("docstring") sw_milling_out
"Answer of milling(). Forces and moments on the part.";
%feature("docstring") sw_drilling_in
"Question to drilling(). Required: material (or kc11_MPa and mc), diameter_mm,
feed_mm.";
%feature("docstring") sw_drilling_out "Answer of drilling().";
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
%feature("docstring") sw_job
"A job file that was read: Job.read(text) or Job(text).

>>> job = Job.read('''strapwise: 1
... part: {size: [200 mm, 150 mm], thickness: 10 mm, weight: 6 N}
... supports:
... - {place: [0 mm, 0 mm]}
... - {place: [200 mm, 0 mm]}
... - {place: [100 mm, 150 mm]}
... clamps: [{kind: force, place: [100 mm, 60 mm], force: 3 kN}]
... operations:
... - cut: {kind: force, force x: 100 N}
...   path: {height: 0 mm, points: [[100 mm, 60 mm]]}
... ''')
>>> job.clamps()[0].force_low_N
3000.0
>>> round(job.hold().total().margin, 1)
4.5";
%feature("docstring") sw_job_out
"Answer of Job.about(): the part, and how much there is of everything.";
%feature("docstring") sw_job_corner_out "A corner of the part, from Job.corners().";
%feature("docstring") sw_job_clamp_out
"A clamp and what it does to the part, from Job.clamps().";
%feature("docstring") sw_job_operation_out
"An operation of a job, from Job.operations().";
%feature("docstring") sw_torque_in
"Question to torque(). Required: thread and one of preload_N, torque_Nm and use.";
%feature("docstring") sw_torque_out "Answer of torque().";
%feature("docstring") sw_tight_in
"A part under equal straps, for tight(). Required: straps and cut_N.";
%feature("docstring") sw_tight_out "Answer of tight().";
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
