# SPDX-License-Identifier: GPL-3.0-or-later
#
# The end of module strapwise: what makes the wrapped structs and lists handy in
# Python. It is pasted behind the generated code, whose names it uses.

__doc__ = """Torque, stud preload and strap clamp forces for thin parts.

Questions are structs: TorqueIn, ChartIn, StrapIn, ToolIn. Name their fields when
you make one, put it to torque(), chart(), strap() or tool(), read the fields of
the answer:

>>> q = TorqueIn(thread="M12", preload_N=20000, nut_factor=0.2)
>>> round(torque(q).torque_Nm, 6)
48.0

Units are fixed and stand in every name: N, N.m, mm, MPa, degree; quantity()
reads other ones. A field that you leave open is None and is filled by the
library; assumed(q) says with what and why. In an answer None means that the
field does not apply. A field of words takes the word ("flat") or its constant
(SEAT_FLAT), and reads as the constant; word("seat"), as_dict() and print() give
the word. What cannot be answered raises Error; an answer that is doubtful says
so in its warnings: warnings(r).

Threads may share a question as long as none of them changes it.
"""

__version__ = version()
Error = _strapwise.Error
UNSET = None


def _nearest(name, names):
    import difflib
    found = difflib.get_close_matches(name, names, 1, 0.0)
    return "; nearest is " + found[0] if found else ""


class _Fields:
    """What questions and answers have in common. _dress() copies it into them,
    which SWIG has made already, and sets _field_of: name -> (index, kind,
    words)."""

    def as_dict(self):
        """The fields by name: None where open or not applicable, words as
        words; `warnings` as a list of names."""
        values = {name: self._value(name) for name in self._field_of}
        if hasattr(type(self), "warnings"):
            values["warnings"] = warnings(self)
        return values

    def word(self, name):
        """The word of a field of words: q.word("seat") is "flat"; None where it
        is open."""
        if self._field_of.get(name, (0, 0, 0))[1] != _FIELD_WORD:
            raise AttributeError("%s has no field of words %r%s" % (
                type(self).__name__, name, _nearest(name, [
                    n for n, f in self._field_of.items()
                    if f[1] == _FIELD_WORD])))
        return word(self._field_of[name][2], getattr(self, name) or 0)

    def _value(self, name):
        value = getattr(self, name)
        _, kind, words = self._field_of[name]
        if kind == _FIELD_WORD and value is not None:
            return word(words, value) or value
        return value

    def __str__(self):
        return "\n".join("%-24s %s" % (
            name, "%.6g" % value if isinstance(value, float) else
            ", ".join(value) or "none" if isinstance(value, list) else value)
            for name, value in self.as_dict().items() if value is not None)

    def __getattr__(self, name):
        raise AttributeError("%s has no field %r%s" % (
            type(self).__name__, name, _nearest(name, self._field_of)))


class _Question(_Fields):
    """What questions have."""

    def copy(self, **changes):
        """Another question with the same fields, except for those named."""
        other = self._copy()
        for name, value in changes.items():
            setattr(other, name, value)
        return other

    def __copy__(self):
        return self._copy()

    def __deepcopy__(self, memo):
        return self._copy()

    def __repr__(self):
        return "%s(%s)" % (type(self).__name__, ", ".join(
            "%s=%r" % (name, value) for name, value in self.as_dict().items()
            if value is not None))

    def __setattr__(self, name, value):
        if name in self._field_of:
            object.__setattr__(self, name, value)
            self._given(self._field_of[name][0])
        elif name in ("this", "thisown"):
            object.__setattr__(self, name, value)
        else:
            raise AttributeError("%s has no field %r that could be set%s" % (
                type(self).__name__, name, _nearest(name, self._field_of)))


class _Answer(_Fields):
    """What answers have."""

    def __copy__(self):
        return self

    def __deepcopy__(self, memo):
        return self

    def __repr__(self):
        return "%s(%s)" % (type(self).__name__, ", ".join(
            "%s=%s" % (name, "%.6g" % value if isinstance(value, float)
                       else repr(value))
            for name, value in self.as_dict().items() if value is not None))

    def __setattr__(self, name, value):
        if name not in ("this", "thisown"):
            raise AttributeError("%s is an answer, its %r cannot be set" % (
                type(self).__name__, name))
        object.__setattr__(self, name, value)


def _from_keywords(make):
    """The constructor of a question, which takes its fields by name."""
    def __init__(self, **fields):
        for name in fields:
            if name not in self._field_of:
                raise TypeError("%s() has no field %r%s" % (
                    type(self).__name__, name,
                    _nearest(name, self._field_of)))
        make(self)
        for name, value in fields.items():
            setattr(self, name, value)
    __init__.__doc__ = "Everything is open except for what is named."
    return __init__


def _describe(field, text):
    """Docstring of one field: what it is, its unit, what is allowed."""
    if field.kind == _FIELD_WORD:
        words = []
        while word(field.words, len(words) + 1):
            words.append(word(field.words, len(words) + 1))
        return "one of: " + ", ".join(words)
    for open_value in ("SW_UNSET", '""'):
        text = text.replace(open_value, "None")
    text = " ".join(text.split())
    if field.kind != _FIELD_NUMBER:
        return text
    limits = [field.unit] if field.unit else []
    if field.min < field.max:
        limits.append("%g to %g" % (field.min, field.max))
    return "%s [%s]" % (text, ", ".join(limits)) if limits else text


def _dress(cls, kind, structure):
    """Gives a wrapped struct the methods of its kind and its fields' docs."""
    cls._kind = kind
    cls._field_of = {}
    while _field_at(structure, len(cls._field_of)):
        field = _field_at(structure, len(cls._field_of))
        cls._field_of[field.name] = (len(cls._field_of), field.kind,
                                     field.words)
        member = vars(cls)[field.name]
        member.__doc__ = _describe(field, member.__doc__ or "")
    for base in (_Fields, kind):
        for name, method in vars(base).items():
            if callable(method):
                setattr(cls, name, method)
    if kind is _Question:
        cls.__init__ = _from_keywords(cls.__init__)
        cls.assumed.__doc__ = "bit n: field n was left open; see assumed()"
    elif hasattr(cls, "warnings"):
        cls.warnings.__doc__ = "WARN_... together; see warnings()"


for _cls, _structure in (
        (TorqueIn, _STRUCT_TORQUE_IN), (ChartIn, _STRUCT_CHART_IN),
        (SpreadIn, _STRUCT_SPREAD_IN), (StrapIn, _STRUCT_STRAP_IN),
        (ToolIn, _STRUCT_TOOL_IN), (CalibrateIn, _STRUCT_CALIBRATE_IN),
        (StripIn, _STRUCT_STRIP_IN),
        (EngageIn, _STRUCT_ENGAGE_IN),
        (ScrewIn, _STRUCT_SCREW_IN),
        (CylinderIn, _STRUCT_CYLINDER_IN),
        (SwingIn, _STRUCT_SWING_IN),
        (VacuumIn, _STRUCT_VACUUM_IN),
        (AdhesiveIn, _STRUCT_ADHESIVE_IN),
        (BarIn, _STRUCT_BAR_IN),
        (ContactIn, _STRUCT_CONTACT_IN),
        (PadIn, _STRUCT_PAD_IN),
        (DiscIn, _STRUCT_DISC_IN),
        (ChuckIn, _STRUCT_CHUCK_IN),
        (SqueezeIn, _STRUCT_SQUEEZE_IN),
        (_SupportIn, _STRUCT_SUPPORT_IN), (_ClampIn, _STRUCT_CLAMP_IN),
        (_StopIn, _STRUCT_STOP_IN), (_LoadIn, _STRUCT_LOAD_IN),
        (_WeightIn, _STRUCT_WEIGHT_IN), (_HoldIn, _STRUCT_HOLD_IN),
        (CoupleIn, _STRUCT_COUPLE_IN),
        (TripodIn, _STRUCT_TRIPOD_IN), (TightIn, _STRUCT_TIGHT_IN),
        (TurningIn, _STRUCT_TURNING_IN), (MillingIn, _STRUCT_MILLING_IN),
        (DrillingIn, _STRUCT_DRILLING_IN)):
    _dress(_cls, _Question, _structure)
for _cls, _structure in (
        (ThreadOut, _STRUCT_THREAD_OUT), (GradeOut, _STRUCT_GRADE_OUT),
        (LubricationOut, _STRUCT_LUBRICATION_OUT),
        (TorqueOut, _STRUCT_TORQUE_OUT), (ChartOut, _STRUCT_CHART_OUT),
        (StrapOut, _STRUCT_STRAP_OUT), (TiltOut, _STRUCT_TILT_OUT),
        (PlaceOut, _STRUCT_PLACE_OUT),
        (StrapTorqueOut, _STRUCT_STRAP_TORQUE_OUT),
        (MethodOut, _STRUCT_METHOD_OUT), (SpreadOut, _STRUCT_SPREAD_OUT),
        (WindowOut, _STRUCT_WINDOW_OUT),
        (StrapSpreadOut, _STRUCT_STRAP_SPREAD_OUT),
        (_MatterOut, _STRUCT_MATTER_OUT), (ToolOut, _STRUCT_TOOL_OUT),
        (ShopToolOut, _STRUCT_SHOP_TOOL_OUT), (PairsOut, _STRUCT_PAIRS_OUT),
        (PairOut, _STRUCT_PAIR_OUT), (CalibrateOut, _STRUCT_CALIBRATE_OUT),
        (MaterialOut, _STRUCT_MATERIAL_OUT),
        (NutOut, _STRUCT_NUT_OUT),
        (StripOut, _STRUCT_STRIP_OUT), (TightOut, _STRUCT_TIGHT_OUT),
        (_RemedyOut, _STRUCT_REMEDY_OUT),
        (_GivesOut, _STRUCT_GIVES_OUT),
        (TurnOut, _STRUCT_TURN_OUT),
        (ScrewOut, _STRUCT_SCREW_OUT),
        (CylinderOut, _STRUCT_CYLINDER_OUT),
        (SwingOut, _STRUCT_SWING_OUT),
        (VacuumOut, _STRUCT_VACUUM_OUT),
        (AdhesiveOut, _STRUCT_ADHESIVE_OUT),
        (BarOut, _STRUCT_BAR_OUT),
        (ContactOut, _STRUCT_CONTACT_OUT),
        (PadOut, _STRUCT_PAD_OUT),
        (DiscOut, _STRUCT_DISC_OUT),
        (ChuckOut, _STRUCT_CHUCK_OUT),
        (SqueezeOut, _STRUCT_SQUEEZE_OUT),
        (HoldOut, _STRUCT_HOLD_OUT), (HoldPointOut, _STRUCT_HOLD_POINT_OUT),
        (HoldContactOut, _STRUCT_HOLD_CONTACT_OUT),
        (JobOut, _STRUCT_JOB_OUT), (JobCornerOut, _STRUCT_JOB_CORNER_OUT),
        (JobClampOut, _STRUCT_JOB_CLAMP_OUT),
        (JobOperationOut, _STRUCT_JOB_OPERATION_OUT),
        (CoupleOut, _STRUCT_COUPLE_OUT),
        (TripodOut, _STRUCT_TRIPOD_OUT),
        (CutMaterialOut, _STRUCT_CUT_MATERIAL_OUT),
        (CutLoadOut, _STRUCT_CUT_LOAD_OUT),
        (TurningOut, _STRUCT_TURNING_OUT), (MillingOut, _STRUCT_MILLING_OUT),
        (DrillingOut, _STRUCT_DRILLING_OUT)):
    _dress(_cls, _Answer, _structure)
del _cls, _structure


def _pairs_class():
    """Handy arguments for Pairs, whose methods C gave all of them."""
    make, add, read = Pairs.__init__, Pairs.add, Pairs.read

    def __init__(self, pairs=()):
        """Each pair is a tuple as add() takes it."""
        make(self)
        for pair in pairs:
            self.add(*pair)

    def add_(self, torque_Nm, force_N, thread_torque_Nm=None,
             seat_torque_Nm=None):
        """Adds one pair: torque on the nut, prevailing torque included, and
        tension in the stud. Parts of the torque that were measured apart, in
        the thread and under the nut, are for the friction."""
        add(self, torque_Nm, force_N, thread_torque_Nm, seat_torque_Nm)

    def read_(self, text, file=None):
        """Replaces everything by what the text of a file of pairs holds: lines
        such as "thread: M12", a header "torque [N.m], force [kN]", rows. A fault
        raises Error, which names `file` and line, and changes nothing."""
        read(self, text, file)

    add_.__name__, read_.__name__ = "add", "read"
    Pairs.__init__, Pairs.add, Pairs.read = __init__, add_, read_
    Pairs.__len__ = Pairs.count
    Pairs.count.__doc__ = "Number of pairs, as len() has it."
    Pairs.about.__doc__ = "What the head of the file said: a PairsOut."
    Pairs.at.__doc__ = """One pair by its index from 0, with its K and how far
        it is from the others, for a CalibrateIn: a PairOut."""


_pairs_class()
del _pairs_class
def _fixture_class():
    """Fixture and Hold take fields by name and answer with objects."""
    def adds(cls, add, what):
        def method(self, **fields):
            add(self, cls(**fields))
        method.__doc__ = what + " Fields by name:\n\n" + "\n".join(
            "%s  %s" % (name, vars(cls)[name].__doc__) for name in cls._field_of)
        return method

    for name, cls, what in (
            ("add_support", _SupportIn, "Adds a point that carries the part."),
            ("add_clamp", _ClampIn, "Adds what one clamp does to the part."),
            ("add_stop", _StopIn, "Adds a point that it is pushed against."),
            ("add_load", _LoadIn, "Adds the cut at one point of its path."),
            ("set_weight", _WeightIn, "Gives the part its weight.")):
        method = adds(cls, getattr(Fixture, "_" + name), what)
        method.__name__ = name
        setattr(Fixture, name, method)

    def count(self, part):
        """How many there are of a kind: 'support', 'clamp', 'stop', 'load'."""
        number = word_value(WORDS_PART, part)
        if not number:
            raise Error("part: %r is none of support, clamp, stop, load" % (part,))
        return self._count(number)

    def hold(self, progress=None, **fields):
        """Looks at every load: a Hold. Of what may be asked, by name:

        %s
        progress is called now and then with what is done, 0 .. 1; when it
        returns something true the run ends with Error 'stopped'."""
        q = _HoldIn(**fields)
        h = Hold(self, q, progress)
        h._about = q, tuple(self._count(n) for n in range(1, 5))
        return h

    hold.__doc__ %= "\n        ".join(
        "%s  %s" % (name, vars(_HoldIn)[name].__doc__)
        for name in _HoldIn._field_of)

    def total(self):
        """The part under its worst load: a HoldOut."""
        return self._total()

    def point(self, load):
        """The part under one load, by its index from 0: a HoldPointOut."""
        return self._point(load)

    def points(self):
        """The part under every load: a list of HoldPointOut."""
        return [self._point(i) for i in range(self._about[1][3])]

    def contact(self, part, index, load=-1):
        """One contact under one load (-1: the worst): a HoldContactOut; part is
        'support', 'clamp' or 'stop'."""
        return self._contact(load, word_value(WORDS_PART, part), index)

    def contacts(self, load=-1):
        """All contacts under one load (-1: the worst): a dict of lists of
        HoldContactOut by 'support', 'clamp' and 'stop'."""
        return {word(WORDS_PART, n + 1): [
            self._contact(load, n + 1, i) for i in range(self._about[1][n])]
                for n in range(3)}

    def assumed_(self):
        """What the library filled in about the question: a list as that of
        assumed()."""
        return [_assumption(a) for a in _until_end(_hold_assumed, self._about[0])]

    assumed_.__name__ = "assumed"
    for method in (count, hold):
        setattr(Fixture, method.__name__, method)
    for method in (total, point, points, contact, contacts, assumed_):
        setattr(Hold, method.__name__, method)


_fixture_class()
del _fixture_class


def _job_class():
    """Job answers with objects, and finds operations by name."""
    plain = Job.__init__

    def __init__(self, text, file=None):
        """Reads the text of a job file; a fault raises Error, whose message
        names `file`, line and column."""
        plain(self, text, file)

    def read(text, file=None):
        """The same as Job(text, file)."""
        return Job(text, file)

    def index_of(self, operation):
        if not isinstance(operation, str):
            return operation
        index = self._find(operation)
        if index < 0:
            names = [o.name for o in self.operations()]
            raise Error("operation: %r is none of %s" % (operation,
                                                         ", ".join(names)))
        return index

    def about(self):
        """The part, and how much there is of everything: a JobOut."""
        return self._about()

    def corners(self):
        """The part's outline, counterclockwise: a list of JobCornerOut."""
        return _until_end(self._corner)

    def clamps(self, operation=None):
        """All clamps, or those of one operation: a list of JobClampOut."""
        every = _until_end(self._clamp)
        if operation is None:
            return every
        at = index_of(self, operation)
        return [c for i, c in enumerate(every) if self._has_clamp(at, i)]

    def operations(self):
        """All operations: a list of JobOperationOut."""
        return _until_end(self._operation)

    def fixture(self, operation=0):
        """The part on its fixture for one operation, by index or name: a
        Fixture, each clamp at the low end of its spread."""
        return self._fixture(index_of(self, operation))

    def hold(self, operation=0, progress=None, **fields):
        """Whether the part stays put under one operation, by index or name: a
        Hold. What is given by name, as to Fixture.hold(), replaces what the job
        says."""
        at = index_of(self, operation)
        q = _HoldIn()
        self._fill(at, q)
        for name, value in fields.items():
            if name not in _HoldIn._field_of:
                raise TypeError("%s: no field of this question" % name)
            setattr(q, name, value)
        f = self._fixture(at)
        h = Hold(f, q, progress)
        h._about = q, tuple(f._count(n) for n in range(1, 5))
        return h

    def map(self, hold, operation=0, width_px=None, text_px=None, show=None):
        """The margin along the path of an operation, for what hold() made of
        it, from above: a Drawing. show as in say()."""
        return _draw_map(self, index_of(self, operation), hold, width_px,
                         text_px, show)

    def remarks(self):
        """Sentences on what looks doubtful in this job, each with the name of
        whom it is about."""
        return _until_none(self._remark)

    def assumed_(self):
        """Every default that entered, "C1.nut_factor" for example: a list as
        that of assumed()."""
        return [_assumption(a) for a in _until_end(self._assumed)]

    read.__name__, assumed_.__name__ = "read", "assumed"
    Job.__init__ = __init__
    Job.read = staticmethod(read)
    for method in (about, corners, clamps, operations, fixture, hold, map,
                   remarks, assumed_):
        setattr(Job, method.__name__, method)


_job_class()
del _job_class
Drawing.svg.__doc__ = "The text of an SVG file."
Drawing._repr_svg_ = Drawing.svg


def quantity(text, kind, field=None):
    """Reads "25 ft-lbf", "0.002 in", "12kN", "1.5deg" as one of the kinds
    KIND_TORQUE, KIND_LENGTH, ...; `field` is the name used in the message.

    Returns the number in the library's unit, kind_unit(kind): N, N.m, mm, MPa,
    deg, mm/m, mm/N, m/min, rpm, W."""
    return _quantity(text, kind, field)


def number(text, field=None):
    """Reads a plain decimal number ("12", "-1.5e3") whatever the locale;
    `field` is the name used in the message."""
    return _number(text, field)


def unit_factor(unit, kind, field=None):
    """What one of a named unit is in the library's unit of that kind:
    unit_factor("ft-lbf", KIND_TORQUE) is 1.3558... N.m."""
    return _unit_factor(unit, kind, field)


def say(value, kind, show="si first"):
    """A quantity as people read it: say(6052, KIND_FORCE) is
    '6052 N (1361 lbf)'. show: 'si first', 'us first', 'si' or 'us'."""
    return _said(_say(value, kind, show), kind)


def say_range(low, high, kind, show="si first"):
    """Two ends on one scale: '7710 .. 8064 N (1733 .. 1813 lbf)'."""
    return _said(_say_range(low, high, kind, show), kind)


def _said(text, kind):
    if not text:
        raise Error("kind: %r has no text" % (kind,))
    return text


def strap_drawing(q, width_px=None, text_px=None, full_force_N=None,
                  sideways=None, vial_mm_per_m=None, views=None, show=None):
    """A strap in side and plan view, to scale, with its forces: a Drawing.

    width_px 300 .. 4000 and text_px 9 .. 60 in pixels of 1/96 inch;
    full_force_N is drawn as the longest upright arrow; forces along the table
    are drawn `sideways` times longer; vial_mm_per_m puts a level on the strap;
    views: 'both', 'side' or 'plan'; show as in say()."""
    return _draw_strap(q, width_px, text_px, full_force_N, sideways,
                       vial_mm_per_m, views, show)


def tilt_plot(q, width_px=None, text_px=None, show=None):
    """Side pull and toe force error of a strap against its tilt, flat and
    spherical seat together: a Drawing."""
    return _tilt_plot(q, width_px, text_px, show)


def remarks(q, show="si first"):
    """What a strap does to the part, in sentences: pairs of what a sentence is
    about ('part', 'reason' or 'change') and its text."""
    return [(word(WORDS_ABOUT, r.about), r.text)
            for r in _until_end(lambda a, i: _strap_remark(a, i, show), q)]


def _until_none(name_of):
    names = []
    while name_of(len(names)) is not None:
        names.append(name_of(len(names)))
    return names


def _until_end(answer_of, *q):
    answers = []
    while True:
        try:
            answers.append(answer_of(*q, len(answers)))
        except Error as end:
            if end.field in ("index", "rank"):
                return answers
            raise


def thread_names():
    """Designations of all threads in the table, as thread() takes them."""
    return _until_none(_thread_name)


def grade_names():
    """Names of all grades in the table, as grade() takes them."""
    return list(dict.fromkeys(_until_none(_grade_name)))


def lubrication_names():
    """Keys of all states of lubrication, as lubrication() takes them."""
    return _until_none(_lubrication_name)


def method_names():
    """Keys of all ways of tightening, as method() takes them."""
    return _until_none(_method_name)


def tool_names():
    """Keys of all torque tools in the table, as ToolIn(tool=...) takes them."""
    return _until_none(_tool_name)


def tools_for(torque_Nm, torque_unit=None):
    """The usual torque tools that would do for a torque, a list of ToolOut, the
    best first. With a torque_unit, "N.m", "in-lbf" or "ft-lbf", those of its
    system come before the others.

    Raises Error with code 'no_answer' where none would do."""
    return _until_end(lambda T, i: _tool_for(T, torque_unit, i), torque_Nm)


def shop_tools(text, file=None):
    """The tools of a shop's own list, a list of ShopToolOut: text is a CSV table
    with the columns name, kind, from, to, step and deviation, units in the
    header; tool_use() puts one into a question. Name, to and step are needed;
    `file` is the name used in messages.

    Raises Error with file and line where the table is wrong."""
    return _until_end(lambda t, i: _shop_tool(t, file, i), text)


def material_names():
    """Keys of all materials in the table, as material() takes them."""
    return _until_none(_material_name)


def nut_names():
    """Names of all classes of nuts in the table, as nut_proof() takes them."""
    return list(dict.fromkeys(_until_none(_nut_name)))


def cut_material_names():
    """Names of metals and groups with cutting constants, as cut_material() takes
    them."""
    return _until_none(_cut_material_name)


def milling_loads(q, count=24):
    """The load of a MillingIn on the part at `count` instants, evenly over the
    turn from one tooth to the next: a list of CutLoadOut (N, N.m)."""
    return [_milling_load_at(q, i, count) for i in range(max(count, 1))]


def not_checked():
    """Sentences on what strap() does not check."""
    return _until_none(_strap_not_checked)


def hold_not_checked():
    """Sentences on what Fixture.hold() does not look at."""
    return _until_none(_hold_not_checked)


def job_not_checked():
    """Sentences on what a Job leaves out."""
    return _until_none(_job_not_checked)


def calibrate_not_checked():
    """Sentences on what calibrate() does not check."""
    return _until_none(_calibrate_not_checked)


def _assumption(a):
    ranged = None not in (a.low, a.high) and a.low < a.high
    return {"name": a.name, "value": a.word or a.value, "unit": a.unit or "",
            "low": a.low if ranged else None,
            "high": a.high if ranged else None, "source": a.source}


def assumed(q, nut=None):
    """What the library fills in where a TorqueIn, ChartIn, StrapIn, StripIn,
    ToolIn, TurningIn, MillingIn, DrillingIn, SpreadIn or CalibrateIn is open; a SpreadIn beside the TorqueIn or
    StrapIn that it goes with, a CalibrateIn beside its Pairs.

    Returns a list of dicts with name, value (a number or a word), unit, low and
    high (the usual range, None where there is none) and source."""
    for cls, ask in ((TorqueIn, _torque_assumed), (ChartIn, _chart_assumed),
                     (StrapIn, _strap_assumed), (ToolIn, _tool_assumed),
                     (StripIn, _strip_assumed),
                     (ScrewIn, _screw_assumed),
                     (CylinderIn, _cylinder_assumed),
                     (SwingIn, _swing_assumed),
                     (VacuumIn, _vacuum_assumed),
                     (AdhesiveIn, _adhesive_assumed),
                     (BarIn, _bar_assumed),
                     (ContactIn, _contact_assumed),
                     (PadIn, _pad_assumed),
                     (DiscIn, _disc_assumed),
                     (ChuckIn, _chuck_assumed),
                     (SqueezeIn, _squeeze_assumed),
                     (CoupleIn, _couple_assumed),
                     (TripodIn, _tripod_assumed),
                     (TurningIn, _turning_assumed),
                     (MillingIn, _milling_assumed),
                     (DrillingIn, _drilling_assumed)):
        if isinstance(q, cls):
            return [_assumption(a) for a in _until_end(ask, q)]
    if isinstance(q, SpreadIn):
        ask = ((lambda s, i: _strap_spread_assumed(nut, s, i))
               if isinstance(nut, StrapIn) else
               (lambda s, i: _spread_assumed(s, nut, i)))
        return [_assumption(a) for a in _until_end(ask, q)]
    if isinstance(q, CalibrateIn):
        return [_assumption(a) for a in _until_end(
            lambda c, i: _calibrate_assumed(c, nut, i), q)]
    raise TypeError("q: a TorqueIn, ChartIn, StrapIn, StripIn, SpreadIn, "
                    "ToolIn, CalibrateIn, TurningIn, MillingIn or DrillingIn "
                    "is wanted")


def matters(q):
    """How much each value that a StrapIn leaves open matters: the strap solved
    with that value at both ends of its usual range, or with each of its words.

    Returns a list of dicts in the order of assumed(), with name, and the forces
    toe_low_N, toe_high_N, pull_low_N and pull_high_N in N."""
    return [m.as_dict() for m in _until_end(_strap_matters, q)]


def tight(q, strap, spread=None):
    """Torque on each nut of equal straps, so that a part stays put under a cut
    and no toe presses harder than it may; or that no torque does. q is a
    TightIn, strap a StrapIn whose preload and torque are not used, spread a
    SpreadIn.

    >>> t = tight(TightIn(straps=4, cut_N=500),
    ...           StrapIn(thread='M12', stud_to_toe_mm=30, stud_to_heel_mm=60,
    ...                   tilt_deg=0, restraint='held'))
    >>> t.word('verdict'), t.word('governs')
    ('fits', 'slide')

    Returns a TightOut (N, N.m)."""
    return _tight(q, strap, spread or SpreadIn())


def tight_remedies(q, strap, spread=None):
    """Single changes that let a torque exist, each tried and computed anew: a
    list of dicts with remedy, value, torque_Nm, torque_low_Nm and
    torque_high_Nm. The arguments are those of tight()."""
    answers = []
    while True:
        try:
            m = _tight_remedy(q, strap, spread or SpreadIn(), len(answers))
        except Error as end:
            if end.code == "no_answer" and end.field == "index":
                return answers
            raise
        answers.append(m.as_dict())


def tight_assumed(q, strap):
    """What the library fills in where a TightIn is open: a list as that of
    assumed()."""
    return [_assumption(a) for a in _until_end(
        lambda t, i: _tight_assumed(t, strap, i), q)]


def tight_not_checked(q):
    """Sentences on what tight() does not check for a TightIn."""
    return _until_none(lambda i: _tight_not_checked(q, i))


def weakest(q, engage=None):
    """What gives first on the strap of a StrapIn, with what stands at both ends
    of its stud, an EngageIn.

    Returns a list of dicts, least margin first: part, margin (tension at which it gives over the strap's),
    preload_at_limit_N, load_N and limit_N or load_MPa and limit_MPa, how,
    warnings. Parts of unknown strength come last, their margin is None."""
    return [g.as_dict() for g in _until_end(_strap_weakest, q,
                                            engage or EngageIn())]


def weakest_assumed(q, engage=None):
    """What the library fills in where an EngageIn is open, for the strap of a
    StrapIn: a list as that of assumed()."""
    return [_assumption(a) for a in _until_end(_strap_weakest_assumed, q,
                                               engage or EngageIn())]


def warnings(r):
    """Names of the warnings of an answer, "heel_low" for example; warning_text()
    has a sentence on each."""
    if getattr(type(r), "_kind", None) is not _Answer:
        raise TypeError("r: an answer is wanted")
    bits = r.warnings if hasattr(type(r), "warnings") else 0
    return [name for bit, name in enumerate(_until_none(_warning_name))
            if bits >> bit & 1]


def warning_text(name):
    """One sentence on a warning, by its name."""
    names = _until_none(_warning_name)
    if name not in names:
        raise Error("name: %r is no warning%s" % (name, _nearest(name, names)))
    return _warning_text(names.index(name))
