# SPDX-License-Identifier: GPL-3.0-or-later
"""Runs the corpus, tests/cases/*.cases, through the Python binding.

    run_cases.py [FILE ...]

A case is a line: topic, name=value in the library's units, =>, what is
expected, # source; with tabs between. Expected is name=value~tolerance (or %),
name<value, name>value, name=unset, name=word, warnings=a,b or none,
warnings+=a; or !code field. A line that is malformed stops everything.
"""
import glob
import os
import sys

import strapwise

UNSET = -sys.float_info.max
WORDS = {"nan": float("nan"), "inf": float("inf"), "-inf": float("-inf"),
         "unset": UNSET}
FIELD_ARGUMENTS = ("designation", "text", "kind", "grade", "lubrication",
                   "tool", "method", "material",
                   "nut_class", "strap_material",
                   "material1", "material2", "bar_material", "pad_material",
                   "part_material")


class Malformed(Exception):
    pass


def number(text):
    return WORDS[text] if text in WORDS else strapwise.number(text)


class Arguments:
    """What functions take beside a struct: absent texts are None, absent
    numbers are open."""
    designation = text = kind = grade = lubrication = method = None
    material = nut_class = None
    nominal_mm = side_pull_N = toe_error_pct = UNSET
    vial_mm_per_m = toe_force_N = hold_N = flat_N = rank = snug_N = UNSET
    p = df = index = count = UNSET
    basis = 0
    beside = None
    third = None


def quantity(g):
    if g.kind == "number":
        return strapwise.number(g.text, "text")
    kind = getattr(strapwise, "KIND_" + (g.kind or "").upper(), 0)
    return strapwise.quantity(g.text, kind, "text")


# topic: struct of the question, plain arguments, the call
TOPICS = {
    "thread": (None, ("designation",),
               lambda q, g: strapwise.thread(g.designation)),
    "grade": (None, ("grade", "nominal_mm"),
              lambda q, g: strapwise.grade(g.grade, g.nominal_mm)),
    "lubrication": (None, ("lubrication",),
                    lambda q, g: strapwise.lubrication(g.lubrication)),
    "torque": (strapwise.TorqueIn, (), lambda q, g: strapwise.torque(q)),
    "preload": (strapwise.TorqueIn, (), lambda q, g: strapwise.torque(q)),
    "chart": (strapwise.ChartIn, (), lambda q, g: strapwise.chart(q)),
    "strap": (strapwise.StrapIn, (), lambda q, g: strapwise.strap(q)),
    "tilt": (strapwise.StrapIn,
             ("side_pull_N", "toe_error_pct", "vial_mm_per_m", "basis"),
             lambda q, g: strapwise.strap_tilt(
                 q, g.side_pull_N, g.toe_error_pct, g.vial_mm_per_m, g.basis)),
    "place": (strapwise.StrapIn, ("toe_force_N",),
              lambda q, g: strapwise.strap_place(q, g.toe_force_N)),
    "strap_torque": (strapwise.StrapIn, ("toe_force_N",),
                     lambda q, g: strapwise.strap_torque(q, g.toe_force_N)),
    "tool": (strapwise.ToolIn, (), lambda q, g: strapwise.tool(q)),
    "method": (None, ("method",), lambda q, g: strapwise.method(g.method)),
    "spread": (strapwise.TorqueIn, (),
               lambda q, g: strapwise.spread(q, g.beside)),
    "window": (strapwise.TorqueIn, ("hold_N", "flat_N"),
               lambda q, g: strapwise.window(q, g.beside, g.hold_N, g.flat_N)),
    "strap_spread": (strapwise.StrapIn, (),
                     lambda q, g: strapwise.strap_spread(q, g.beside)),
    "strap_window": (strapwise.StrapIn, ("hold_N", "flat_N"),
                     lambda q, g: strapwise.strap_window(
                         q, g.beside, g.hold_N, g.flat_N)),
    "material": (None, ("material",),
                 lambda q, g: strapwise.material(g.material)),
    "nut": (None, ("nut_class", "nominal_mm"),
            lambda q, g: strapwise.nut_proof(g.nut_class, g.nominal_mm)),
    "strip": (strapwise.StripIn, (), lambda q, g: strapwise.strip(q)),
    "weakest": (strapwise.StrapIn, ("rank",),
                lambda q, g: strapwise._strap_weakest(q, g.beside,
                                                      int(g.rank))),
    "turn": (strapwise.StrapIn, ("snug_N",),
             lambda q, g: strapwise.strap_turn(q, g.snug_N)),
    "tight": (strapwise.TightIn, (),
              lambda q, g: strapwise.tight(q, g.third, g.beside)),
    "cut_material": (None, ("material",),
                     lambda q, g: strapwise.cut_material(g.material)),
    "turning": (strapwise.TurningIn, (), lambda q, g: strapwise.turning(q)),
    "milling": (strapwise.MillingIn, (), lambda q, g: strapwise.milling(q)),
    "milling_load": (strapwise.MillingIn, ("index", "count"),
                     lambda q, g: strapwise._milling_load_at(
                         q, int(g.index), int(g.count))),
    "drilling": (strapwise.DrillingIn, (),
                 lambda q, g: strapwise.drilling(q)),
    "quantity": (None, ("text", "kind"), lambda q, g: quantity(g)),
    "normal_quantile": (None, ("p",),
                        lambda q, g: strapwise.normal_quantile(g.p)),
    "t_quantile": (None, ("p", "df"),
                   lambda q, g: strapwise.t_quantile(g.p, g.df)),
}
for _name in ("screw", "cylinder", "swing", "vacuum", "adhesive",
              "bar", "contact", "pad", "disc", "chuck",
              "squeeze", "couple", "tripod"):
    TOPICS[_name] = (getattr(strapwise, _name.capitalize() + "In"), (),
                     lambda q, g, _name=_name: getattr(strapwise, _name)(q))
# struct of the second question, which the call finds as g.beside
BESIDE = {"spread": strapwise.SpreadIn, "window": strapwise.SpreadIn,
          "strap_spread": strapwise.SpreadIn,
          "strap_window": strapwise.SpreadIn, "weakest": strapwise.EngageIn,
          "tight": strapwise.SpreadIn}
# and of a third, g.third
THIRD = {"tight": strapwise.StrapIn}


def take(question, arguments, allowed, part):
    """Puts name=value into the question or among the arguments."""
    name, equals, text = part.partition("=")
    if not equals:
        raise Malformed("%r is not name=value" % part)
    into = arguments if name in allowed else question
    if arguments.beside and into is question and not hasattr(into, name):
        into = arguments.beside
    if arguments.third and not hasattr(into, name):
        into = arguments.third
    if into is None or not hasattr(into, name):
        raise Malformed("%r names no input of this topic" % part)
    if name in FIELD_ARGUMENTS or name == "thread":
        value = text
    elif name == "basis" or into is not arguments and is_word(into, name):
        try:
            value = int(number(text))
        except strapwise.Error:
            value = text
    else:
        value = number(text)
    setattr(into, name, value)


def is_word(question, name):
    try:
        question.word(name)
        return True
    except AttributeError:
        return False


def answer_of(result):
    return {"value": result} if isinstance(result, float) else result.as_dict()


def show(value):
    return "unset" if value is None else "%.9g" % value if isinstance(
        value, float) else str(value)


def check_warnings(answer, wanted, exactly):
    names = [] if wanted == "none" else wanted.split(",")
    for name in names:
        strapwise.warning_text(name)
    got = set(answer.get("warnings", ()))
    if got == set(names) if exactly else got >= set(names):
        return None
    return "warnings: wanted %s, got %s" % (wanted,
                                            ",".join(sorted(got)) or "none")


def check_number(name, sign, wanted, got):
    if sign in "<>":
        holds = got is not None and (got <= number(wanted) if sign == "<"
                                     else got >= number(wanted))
    elif wanted == "unset":
        holds = got is None
    else:
        value, tilde, tolerance = wanted.partition("~")
        if not tilde:
            raise Malformed("%r has no ~tolerance" % wanted)
        allowed = (abs(number(value)) * number(tolerance[:-1]) / 100
                   if tolerance.endswith("%") else number(tolerance))
        holds = got is not None and abs(got - number(value)) <= allowed
    return None if holds else "%s: wanted %s%s, got %s" % (
        name, sign if sign in "<>" else "", wanted, show(got))


def check(answer, part):
    """None, or what differs."""
    place = next((i for i, c in enumerate(part) if c in "=<>+"), len(part))
    name, sign, wanted = part[:place], part[place:place + 1], part[place + 1:]
    if name == "warnings" and sign == "=":
        return check_warnings(answer, wanted, True)
    if name == "warnings" and sign == "+" and wanted.startswith("="):
        return check_warnings(answer, wanted[1:], False)
    if sign in ("", "+") or name not in answer:
        raise Malformed("%r names no result of this topic" % part)
    got = answer[name]
    if got is None or isinstance(got, float):
        return check_number(name, sign, wanted, got)
    return None if got == wanted else "%s: wanted %s, got %s" % (name, wanted,
                                                                 got)


def run_case(parts):
    """What differs in one case, a list."""
    if parts[0] not in TOPICS:
        raise Malformed("%r is no topic" % parts[0])
    if "=>" not in parts:
        raise Malformed("there is no =>")
    middle = parts.index("=>")
    ends = [i for i in range(middle + 1, len(parts))
            if parts[i].startswith("#")]
    if not ends or len(parts[ends[0]]) < 3:
        raise Malformed("the source after # is missing")
    expected = parts[middle + 1:ends[0]]
    if not expected:
        raise Malformed("nothing is expected")
    make, allowed, call = TOPICS[parts[0]]
    wants_error = expected[0].startswith("!")
    arguments = Arguments()
    question = make() if make else None
    if parts[0] in BESIDE:
        arguments.beside = BESIDE[parts[0]]()
    if parts[0] in THIRD:
        arguments.third = THIRD[parts[0]]()
    for part in parts[1:middle]:
        take(question, arguments, allowed, part)
    try:
        answer = answer_of(call(question, arguments))
    except strapwise.Error as e:
        if not wants_error:
            return ["wanted an answer, got: %s" % e]
        code, _, field = expected[0][1:].partition(" ")
        if e.code == code and field in ("", e.field):
            return []
        return ["wanted %s, got !%s %s" % (expected[0], e.code, e.field)]
    if wants_error:
        return ["wanted %s, got an answer" % expected[0]]
    return [d for d in (check(answer, part) for part in expected) if d]


def run_file(name):
    """Numbers of cases passed and failed."""
    passed = failed = 0
    with open(name, encoding="utf-8", newline="") as lines:
        text = lines.read()
    for place, line in enumerate(text.split("\n"), 1):
        line = line[:-1] if line.endswith("\r") else line
        if not line or line.startswith("#"):
            continue
        try:
            differs = run_case(line.split("\t"))
        except (Malformed, strapwise.Error) as e:
            sys.exit("%s:%d: %s" % (name, place, e))
        for what in differs:
            print("%s:%d: %s" % (name, place, what))
        passed += not differs
        failed += bool(differs)
    if not passed + failed:
        sys.exit("%s: there is no case in this file" % name)
    return passed, failed


def main(names):
    if not names:
        here = os.path.dirname(os.path.abspath(__file__))
        names = sorted(glob.glob(os.path.join(here, "..", "cases", "*.cases")))
    counts = [run_file(name) for name in names]
    passed = sum(c[0] for c in counts)
    failed = sum(c[1] for c in counts)
    print("%d passed, %d failed" % (passed, failed))
    return 1 if failed or not passed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
