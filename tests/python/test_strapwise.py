# SPDX-License-Identifier: GPL-3.0-or-later
"""Tests of the Python binding: values with their sources, every error, what
people mistype, memory, threads, names, docstrings.

    test_strapwise.py           runs the tests
    test_strapwise.py --names   prints the public names, for names.txt
"""
import copy
import decimal
import doctest
import fractions
import inspect
import json
import locale
import math
import os
import pickle
import pydoc
import random
import re
import subprocess
import sys
import threading
import unittest
import xml.dom.minidom

try:
    import resource
except ImportError:
    resource = None

import strapwise
from strapwise import (CalibrateIn, ChartIn, Error, Pairs, SpreadIn, StrapIn,
                       ToolIn, TorqueIn)

HERE = os.path.dirname(os.path.abspath(__file__))
NAMES = os.path.join(HERE, "names.txt")
EXAMPLE = os.path.join(HERE, "..", "..", "bindings", "python", "example.py")

LBF_N = 4.4482216152605      # exact: 0.45359237 kg * 9.80665 m/s2
INLBF_NM = LBF_N * 0.0254    # exact

QUESTIONS = (TorqueIn, ChartIn, StrapIn, SpreadIn, ToolIn, CalibrateIn,
             strapwise.StripIn,
             strapwise.EngageIn,
             strapwise.ScrewIn, strapwise.CylinderIn, strapwise.SwingIn,
             strapwise.VacuumIn, strapwise.AdhesiveIn, strapwise.BarIn,
             strapwise.ContactIn, strapwise.PadIn, strapwise.DiscIn,
             strapwise.ChuckIn, strapwise.SqueezeIn, strapwise.CoupleIn,
             strapwise.TripodIn, strapwise.TightIn,
             strapwise.TurningIn, strapwise.MillingIn, strapwise.DrillingIn)
ANSWERS = (strapwise.ThreadOut, strapwise.GradeOut, strapwise.LubricationOut,
           strapwise.TorqueOut, strapwise.ChartOut, strapwise.StrapOut,
           strapwise.TiltOut, strapwise.PlaceOut, strapwise.StrapTorqueOut,
           strapwise.MaterialOut, strapwise.TightOut,
           strapwise.NutOut,
           strapwise.StripOut,
           strapwise.TurnOut,
           strapwise.HoldOut, strapwise.HoldPointOut,
           strapwise.HoldContactOut,
           strapwise.JobOut, strapwise.JobCornerOut, strapwise.JobClampOut,
           strapwise.JobOperationOut,
           strapwise.MethodOut, strapwise.SpreadOut, strapwise.WindowOut,
           strapwise.StrapSpreadOut, strapwise.ToolOut, strapwise.ShopToolOut,
           strapwise.CalibrateOut, strapwise.PairOut, strapwise.PairsOut,
           strapwise.ScrewOut, strapwise.CylinderOut, strapwise.SwingOut,
           strapwise.VacuumOut, strapwise.AdhesiveOut, strapwise.BarOut,
           strapwise.ContactOut, strapwise.PadOut, strapwise.DiscOut,
           strapwise.ChuckOut, strapwise.SqueezeOut, strapwise.CoupleOut,
           strapwise.TripodOut,
           strapwise.CutMaterialOut, strapwise.CutLoadOut,
           strapwise.TurningOut, strapwise.MillingOut, strapwise.DrillingOut)

TABLE = "name: bench\nthread: M12\ntorque [N.m];force [kN]\n20;8.31\n40;16.9\n"


def level(**changes):
    """A level strap that needs nothing more."""
    fields = dict(thread="M12", preload_N=12000, stud_to_toe_mm=30,
                  stud_to_heel_mm=60, part_height_mm=40, heel_height_mm=40)
    fields.update(changes)
    return StrapIn(**fields)


def short_of_memory(call, *args):
    """Calls with no more than 100 MB left."""
    with open("/proc/self/statm", encoding="ascii") as f:
        taken = int(f.read().split()[0]) * resource.getpagesize()
    before = resource.getrlimit(resource.RLIMIT_AS)
    resource.setrlimit(resource.RLIMIT_AS, (taken + 100 * 2**20, before[1]))
    try:
        return call(*args)
    finally:
        resource.setrlimit(resource.RLIMIT_AS, before)


def resident_MB():
    with open("/proc/self/statm", encoding="ascii") as f:
        return int(f.read().split()[1]) * resource.getpagesize() / 1024 ** 2


def public_names():
    """Public names of the module, and of its structs after a point."""
    names = []
    for name in dir(strapwise):
        if name.startswith("_"):
            continue
        names.append(name)
        thing = getattr(strapwise, name)
        if isinstance(thing, type) and thing is not Error:
            names += ["%s.%s" % (name, member) for member in vars(thing)
                      if not member.startswith("_")]
    return sorted(names + ["Error." + n for n in ("code", "field", "high",
                                                  "low")])


class Values(unittest.TestCase):
    def near(self, got, want, relative):
        self.assertTrue(abs(got - want) <= abs(want) * relative,
                        "got %.17g, want %.17g within %g" % (got, want,
                                                             relative))

    def test_thread(self):
        t = strapwise.thread("m12 x 1.75")
        self.assertEqual(t.designation, "M12")
        self.assertEqual(t.system, strapwise.SYSTEM_METRIC)
        self.assertEqual(t.word("system"), "metric")
        # ISO 724 and ISO 68-1, as tabled: d2, d3, D1 of M12
        self.assertAlmostEqual(t.pitch_diameter_mm, 10.863, delta=6e-4)
        self.assertAlmostEqual(t.root_diameter_mm, 9.853, delta=6e-4)
        self.assertAlmostEqual(t.minor_diameter_mm, 10.106, delta=6e-4)
        # ISO 898-1: stress area of M12
        self.near(t.stress_area_mm2, 84.3, 0.001)

    def test_unified_thread(self):
        t = strapwise.thread("3/4-16 UNF")
        self.assertEqual(t.word("system"), "unified")
        # Mechanical Engineering Design, 9th ed., table 8-2: 0.373 in2
        self.near(t.stress_area_mm2, 0.373 * 25.4 ** 2, 0.002)

    def test_grade(self):
        # ISO 898-1: 8.8 up to 16 mm
        g = strapwise.grade("8.8", 12)
        self.assertEqual((g.proof_MPa, g.yield_MPa, g.tensile_MPa),
                         (580, 640, 800))
        self.assertIn("ISO 898-1", g.source)

    def test_textbook_torque(self):
        # Mechanical Engineering Design, 9th ed., example 8-3: 3/4-16 UNF,
        # 25 kip, K = 0.20 gives 3750 in-lbf
        r = strapwise.torque(TorqueIn(thread="3/4-16 UNF", nut_factor=0.20,
                                      preload_N=25000 * LBF_N))
        self.near(r.torque_Nm, 3750 * INLBF_NM, 1e-9)

    def test_torque_and_preload_are_inverse(self):
        q = TorqueIn(thread="M16x1.5", preload_N=23850, mu_thread=0.137,
                     mu_seat=0.112, prevailing_torque_Nm=1.7)
        r = strapwise.torque(q)
        back = strapwise.torque(q.copy(preload_N=None, torque_Nm=r.torque_Nm))
        self.near(back.preload_N, 23850, 1e-12)

    def test_use_of_yield(self):
        # VDI 2230-1, table of 90 % of yield: M12 8.8, mu 0.14, 41.9 kN
        r = strapwise.torque(TorqueIn(thread="M12", grade="8.8", use=0.9,
                                      mu_thread=0.14, mu_seat=0.14))
        self.near(r.preload_N, 41900, 0.005)

    def test_lever_law(self):
        # statics: F b/(a + b) at the toe, F a/(a + b) at the heel
        r = strapwise.strap(level(strap="rigid"))
        self.near(r.toe_force_N, 8000, 1e-12)
        self.near(r.heel_force_N, 4000, 1e-12)
        self.near(r.lever_ratio, 2 / 3, 1e-12)
        self.assertEqual(r.word("seat_state"), "level")

    def test_strap_stress(self):
        # beam: M = F a b/(a + b) = 240 N.m, W = (40 - 14) 25^2/6 mm3:
        # 88.6 MPa
        r = strapwise.strap(level(strap_width_mm=40, strap_thickness_mm=25,
                                  slot_width_mm=14))
        self.near(r.strap_stress_MPa, 240e3 / (26 * 25 ** 2 / 6), 1e-12)
        self.near(r.strap_stress_MPa, 88.6, 0.001)

    def test_contact_run(self):
        # planar contact finite element run, turned nut, 10 kN, heel 1 degree
        # low: toe force 0.6824 F, side pull -0.0658 F
        r = strapwise.strap(StrapIn(
            thread="M12", preload_N=10000, stud_to_toe_mm=30,
            stud_to_heel_mm=60, part_height_mm=40, tilt_deg=-1,
            strap_thickness_mm=16, strap_width_mm=32, slot_width_mm=0,
            stud_length_mm=80, rim_radius_mm=9.5, mu_toe=0.15, mu_heel=0.15,
            nose="ball"))
        self.assertAlmostEqual(r.toe_force_N / 10000, 0.6824, delta=0.007)
        self.assertAlmostEqual(r.side_pull_N / 10000, -0.0658, delta=0.003)
        self.assertEqual(r.word("pull_direction"), "away from stud")

    def test_backwards(self):
        q = level()
        t = strapwise.strap_torque(q, 6000)
        r = strapwise.strap(q.copy(preload_N=t.preload_N))
        self.near(r.toe_force_N, 6000, 1e-9)
        self.near(r.torque_Nm, t.torque_Nm, 1e-9)
        # statics: half of the tension when the stud is in the middle
        p = strapwise.strap_place(level(strap="rigid"), 6000)
        self.near(p.stud_to_toe_mm, 45, 1e-6)
        t = strapwise.strap_tilt(level(), side_pull_N=700, toe_error_pct=None,
                                 vial_mm_per_m=0.02, basis="nominal")
        self.assertLess(t.tilt_low_deg, t.tilt_high_deg)
        # geometry: slope of the tilt, and divisions of 0.02 mm/m
        slope = 1000 * math.tan(math.radians(t.tilt_high_deg))
        self.near(t.slope_high_mm_per_m, slope, 1e-9)
        self.near(t.divisions_high, slope / 0.02, 1e-9)
        # the strap there keeps the limit
        r = strapwise.strap(level(heel_height_mm=None,
                                  tilt_deg=t.tilt_high_deg))
        self.assertLessEqual(abs(r.side_pull_N), 700 * 1.001)

    def test_chart(self):
        # K d: 0.2 * 12 mm is 2.4 N.m per kN
        r = strapwise.chart(ChartIn(thread="M12", nut_factor=0.2,
                                    grade="8.8"))
        self.near(r.torque_per_kN_Nm, 2.4, 1e-12)
        # the same in ft-lbf per 1000 lbf: 2.4 mm in feet
        self.near(r.torque_per_klbf_ftlbf, 2.4 / 0.3048, 1e-12)
        self.assertIsNone(r.preload_N)

    def test_calibrate(self):
        # Mechanical Engineering Design, 9th ed., table 8-13: 90 N.m
        kN = (23.6, 27.6, 28.0, 29.4, 30.3, 30.7, 32.9, 33.8, 33.8, 33.8, 34.7,
              35.6, 35.6, 37.4, 37.8, 37.8, 39.2, 40.0, 40.5, 42.7)
        pairs = Pairs((90, 1000 * f) for f in kN)
        q = CalibrateIn(thread="M12x1.25")
        r = strapwise.calibrate(q, pairs)
        self.assertEqual(len(pairs), 20)
        self.assertAlmostEqual(r.nut_factor_mean, 0.22362, delta=0.5e-5)
        self.assertAlmostEqual(r.nut_factor_origin, 0.21473, delta=0.5e-5)
        self.assertAlmostEqual(r.nut_factor_sd, 0.03515, delta=0.5e-5)
        self.assertIsNone(r.mu_thread)
        drawing = strapwise.calibrate_plot(q, pairs)
        self.assertTrue(drawing.svg().startswith("<svg "))
        self.assertIn("M12x1.25: nut factor K 0.221", drawing.svg())
        xml.dom.minidom.parseString(drawing.svg())
        self.assertRaises(Error, strapwise.calibrate_plot, q, Pairs())
        mean = sum(math.log(pairs.at(q, i).nut_factor) for i in range(20)) / 20
        self.near(r.nut_factor, math.exp(mean), 1e-13)
        self.assertEqual([a["name"] for a in strapwise.assumed(q, pairs)],
                         ["prevailing_torque_Nm", "confidence", "proportion"])
        # tables of t and of the normal distribution
        self.near(strapwise.t_quantile(0.975, 9), 2.262157, 1e-6)
        self.near(strapwise.normal_quantile(0.975), 1.959964, 1e-6)

    def test_say(self):
        self.assertEqual(strapwise.say(6052.3, strapwise.KIND_FORCE),
                         "6052 N (1361 lbf)")
        self.assertEqual(strapwise.say(6052.3, strapwise.KIND_FORCE, "us"),
                         "1361 lbf")
        self.assertEqual(strapwise.say(None, strapwise.KIND_FORCE), "-")
        self.assertEqual(
            strapwise.say_range(7710, 8064, strapwise.KIND_FORCE),
            "7710 .. 8064 N (1733 .. 1813 lbf)")
        self.assertRaises(Error, strapwise.say, 1, strapwise.KIND_FORCE, "uk")
        self.assertRaises(Error, strapwise.say, 1, 99)

    def test_strap_drawing(self):
        q = level()
        r = strapwise.strap(q)
        both = strapwise.strap_drawing(q, vial_mm_per_m=20).svg()
        xml.dom.minidom.parseString(both)
        self.assertIn(strapwise.say(r.toe_force_N, strapwise.KIND_FORCE, "si"),
                      both)
        self.assertIn('width="700"', strapwise.strap_drawing(
            q, width_px=700, views="side").svg())
        self.assertRaises(Error, strapwise.strap_drawing, q, width_px=1)
        self.assertRaises(TypeError, strapwise.strap_drawing, None)
        plot = strapwise.tilt_plot(q, show="us first").svg()
        xml.dom.minidom.parseString(plot)
        self.assertRaises(Error, strapwise.tilt_plot, level(nut="still"))

    def test_remarks(self):
        q = level(nose="round", heel_height_mm=42)
        said = strapwise.remarks(q)
        self.assertEqual({about for about, _ in said} - {"change"},
                         {"part", "reason"})
        pull = abs(strapwise.strap(q).side_pull_N)
        self.assertIn(strapwise.say(pull, strapwise.KIND_FORCE), said[0][1])
        self.assertIn(strapwise.say(pull, strapwise.KIND_FORCE, "us first"),
                      strapwise.remarks(q, "us first")[0][1])
        self.assertRaises(Error, strapwise.remarks, StrapIn())

    def test_cuts(self):
        """Fundamentals of Machining Processes p. 189: 1019 N along the rim; with
        four teeth always in the slot the part feels a constant push."""
        q = strapwise.MillingIn(kc11_MPa=1000, mc=0, wear_factor=1, teeth=8,
                                diameter_mm=30, feed_per_tooth_mm=0.1,
                                depth_mm=4, helix_deg=0, radial_ratio=0)
        out = strapwise.milling(q)
        self.assertAlmostEqual(out.tangential_N, 1019, delta=0.5)
        self.assertIsNone(out.power_W)
        loads = strapwise.milling_loads(q, 12)
        self.assertEqual(len(loads), 12)
        for load in loads:
            self.assertAlmostEqual(load.y_N, -800, places=6)
        q.mode, q.width_mm, q.way = "side", 3, "climb"
        self.assertLess(strapwise.milling(q).mean_x_N, 0)
        self.assertEqual(q.word("way"), "climb")
        with self.assertRaises(Error) as caught:
            strapwise.milling_loads(q, 0)
        self.assertEqual(caught.exception.field, "count")
        metal = strapwise.cut_material("6061-T6")
        self.assertEqual(metal.stands_for, "vdi-22")
        self.assertEqual(strapwise.warnings(metal), ["cut_group"])
        self.assertIsNone(strapwise.cut_material("vdi-38").mc)
        self.assertIn("4140", strapwise.cut_material_names())
        d = strapwise.DrillingIn(material="C45", diameter_mm=8, feed_mm=0.15)
        self.assertIn("wear_factor", [a["name"] for a in strapwise.assumed(d)])
        t = strapwise.TurningIn(material="C45", depth_mm=1, feed_mm=0.2)
        strapwise.turning_resolve(t)
        self.assertEqual(t.word("direction"), "along")

    def test_pairs(self):
        pairs = Pairs()
        pairs.add(1, 2)
        pairs.add(3, 4, seat_torque_Nm=1)
        self.assertEqual((len(pairs), pairs.count()), (2, 2))
        pairs.read(TABLE)
        self.assertEqual(pairs.about().as_dict(), {
            "name": "bench", "thread": "M12", "lubrication": None,
            "prevailing_torque_Nm": None, "n": 2.0, "warnings": []})
        pair = pairs.at(CalibrateIn(), 1)
        self.assertEqual((pair.torque_Nm, pair.force_N), (40, 16900))
        with self.assertRaises(Error) as caught:
            pairs.read(TABLE + "60;x\n", "bench.csv")
        self.assertEqual(caught.exception.code, "syntax")
        self.assertEqual(caught.exception.field, "force")
        self.assertTrue(str(caught.exception).startswith("bench.csv:6: force"))
        self.assertEqual(len(pairs), 2)
        for bad in ((0, 1), (1, math.nan), (1, 1, -1), (None, 1)):
            self.assertRaises(Error, pairs.add, *bad)
        self.assertRaises(Error, pairs.at, CalibrateIn(), 2)
        self.assertRaises(Error, pairs.read, "thread: M12\0\n")
        self.assertRaises(TypeError, pairs.read, b"x")
        for bad in (None, 5, TABLE, StrapIn(), [(1, 2)]):
            self.assertRaises(TypeError, strapwise.calibrate, CalibrateIn(),
                              bad)
            self.assertRaises(TypeError, strapwise.assumed, CalibrateIn(), bad)
            self.assertRaises(TypeError, pairs.at, bad, 0)
        q = CalibrateIn()
        self.assertIsNone(strapwise.calibrate_resolve(q, pairs))
        self.assertEqual((q.thread, q.confidence), ("M12", 0.95))
        self.assertGreaterEqual(len(strapwise.calibrate_not_checked()), 3)

    def test_units(self):
        self.near(strapwise.quantity("25 ft-lbf", strapwise.KIND_TORQUE),
                  25 * 12 * INLBF_NM, 1e-15)
        self.near(strapwise.quantity("0.002 in", strapwise.KIND_LENGTH),
                  0.0508, 1e-15)
        self.near(strapwise.unit_factor("lbf", strapwise.KIND_FORCE), LBF_N,
                  1e-15)
        self.assertEqual(strapwise.kind_unit(strapwise.KIND_FORCE), "N")
        self.assertEqual(strapwise.kind_unit(strapwise.KIND_RATIO), "")
        self.assertIsNone(strapwise.kind_unit(99))
        self.assertEqual(strapwise.number("-1.5e3"), -1500)

    def test_numbers_whatever_the_locale(self):
        before = locale.setlocale(locale.LC_NUMERIC)
        try:
            locale.setlocale(locale.LC_NUMERIC, "de_DE.UTF-8")
        except locale.Error:
            self.skipTest("there is no locale with a decimal comma")
        try:
            self.assertEqual(strapwise.number("1.5"), 1.5)
            r = strapwise.torque(TorqueIn(thread="M12x1.25", preload_N=1.5e3,
                                          nut_factor=0.2))
            self.near(r.torque_Nm, 3.6, 1e-12)
        finally:
            locale.setlocale(locale.LC_NUMERIC, before)


class Fixtures(unittest.TestCase):
    """A part on four supports, and what is refused."""

    def fixture(self, **clamp):
        f = strapwise.Fixture()
        for x, y in ((0, 0), (200, 0), (200, 120), (0, 120)):
            f.add_support(x_mm=x, y_mm=y, friction=0.15)
        f.add_clamp(**dict(dict(x_mm=100, y_mm=60, force_N=4000), **clamp))
        f.add_load(x_mm=100, y_mm=60, z_mm=0, moment_z_Nm=30)
        return f

    def test_hold(self):
        """mu sum(N) r/M of four equal supports: 0.15*4000*116.619/30000."""
        f = self.fixture()
        h = f.hold(support_least_N=0)
        r = h.total()
        want = 0.15*4000*math.hypot(100, 60)/30000
        self.assertAlmostEqual(r.margin, want, delta=1e-6*want)
        self.assertAlmostEqual(r.hold_limit_N, 8000/want, delta=0.01)
        self.assertEqual(r.word("first_to_go"), "slide")
        self.assertEqual(r.word("rest"), "stays")
        self.assertIsNone(r.margin_stops_idle)
        self.assertIsNone(r.rest_margin)
        self.assertEqual(len(h.points()), f.count("load"))
        self.assertEqual(h.point(0).margin, r.margin)
        all_of = h.contacts()
        self.assertEqual([len(all_of[k]) for k in ("support", "clamp", "stop")],
                         [4, 1, 0])
        for c in all_of["support"]:
            self.assertAlmostEqual(c.force_rest_N, 1000, delta=1e-3)
        self.assertEqual(h.contact("clamp", 0).name, "C1")
        names = [a["name"] for a in h.assumed()]
        self.assertIn("required_margin", names)
        self.assertNotIn("support_least_N", names)
        self.assertGreater(len(strapwise.hold_not_checked()), 5)

    def test_rocks(self):
        r = self.fixture(x_mm=260).hold().total()
        self.assertEqual((r.word("rest"), r.margin), ("rocks", 0))

    def test_needed(self):
        f = self.fixture()
        f.add_support(x_mm=100, y_mm=60, needed="no", name="jack")
        self.assertEqual(f.hold().contacts()["support"][4].name, "jack")

    def test_refused(self):
        f = strapwise.Fixture()
        for call, field, code in (
                (lambda: f.add_support(x_mm=1), "y_mm", "missing"),
                (lambda: f.add_clamp(x_mm=1, y_mm=1, force_N=-1), "force_N",
                 "range"),
                (lambda: f.add_load(x_mm=1, y_mm=1), "z_mm", "missing"),
                (lambda: f.add_stop(x_mm=1, y_mm=1), "push_deg", "missing"),
                (lambda: f.set_weight(weight_N=1), "x_mm", "missing"),
                (f.hold, "support", "missing"),
                (lambda: self.fixture().hold(required_margin=0),
                 "required_margin", "range"),
                (lambda: self.fixture().hold(progress=lambda done: True),
                 "progress", "stopped"),
                (lambda: self.fixture().hold().point(1), "load", "range"),
                (lambda: self.fixture().hold().contact("stop", 0), "part",
                 "range")):
            with self.assertRaises(Error) as caught:
                call()
            self.assertEqual((caught.exception.field, caught.exception.code),
                             (field, code))
        with self.assertRaises(Error):
            f.count("nut")
        with self.assertRaises(TypeError):
            f.add_clamp(x=1)
        with self.assertRaises(TypeError):
            self.fixture().hold(progress=3)

    def test_outlives_its_fixture(self):
        h = [self.fixture().hold() for _ in range(3)]
        self.assertEqual({round(one.total().margin, 6) for one in h},
                         {round(h[0].total().margin, 6)})


JOB = """strapwise: 1
part: {name: tine, size: [200 mm, 150 mm], thickness: 10 mm, weight: 0 N}
supports:
- {place: [0 mm, 0 mm], friction: 0.15}
- {place: [200 mm, 0 mm], friction: 0.15}
- {place: [100 mm, 150 mm], friction: 0.15}
clamps:
- {kind: force, place: [100 mm, 60 mm], height: 0 mm, force: 3 kN}
- {name: spare, kind: force, place: [100 mm, 60 mm], force: 1 kN}
operations:
- name: push
  clamps: [C1]
  cut: {kind: force, force x: 100 N}
  path: {height: 0 mm, points: [[100 mm, 60 mm]]}
- cut: {kind: force, force x: 100 N}
  required margin: 3
  path: {height: 0 mm, step: 10 mm, lines: [[[50 mm, 50 mm], [150 mm, 50 mm]]]}
"""


class Jobs(unittest.TestCase):
    """A job file, its clamps and operations, and whether they hold."""

    def test_read(self):
        job = strapwise.Job.read(JOB)
        a = job.about()
        self.assertEqual((a.name, a.length_mm, a.clamps), ("tine", 200, 2))
        self.assertEqual([c.name for c in job.clamps()], ["C1", "spare"])
        self.assertEqual([c.name for c in job.clamps("push")], ["C1"])
        self.assertEqual(job.clamps()[0].word("clamp_kind"), "force")
        self.assertIsNone(job.clamps()[0].torque_Nm)
        self.assertEqual([o.name for o in job.operations()],
                         ["push", "operation 2"])
        self.assertEqual([(c.x_mm, c.y_mm) for c in job.corners()],
                         [(0, 0), (200, 0), (200, 150), (0, 150)])
        self.assertIn("spare.z_mm", [d["name"] for d in job.assumed()])
        self.assertGreater(len(strapwise.job_not_checked()), 2)
        self.assertEqual(job.clamps()[0].word("clamp_fault"), "none")
        self.assertTrue(any(s.startswith("C1: no support within")
                            for s in job.remarks()), job.remarks())

    def test_hold(self):
        """0.15*3000 N over 100 N; the disc is a polygon inside the round one."""
        job = strapwise.Job(JOB, "tine.yaml")
        r = job.hold("push").total()
        self.assertTrue(4.5*0.995 < r.margin <= 4.5*(1 + 1e-6), r.margin)
        self.assertEqual(r.required_margin, 2)
        self.assertEqual(job.hold("push", required_margin=4).total().required_margin,
                         4)
        h = job.hold(1)
        self.assertEqual(h.total().required_margin, 3)
        self.assertEqual(len(h.points()), 11)
        self.assertEqual(job.fixture(1).count("load"), 11)
        svg = job.map(h, 1, show="us first").svg()
        self.assertIn("x, y in", svg)
        self.assertEqual(svg.count('class="holds"'), 12)

    def test_refused(self):
        for text, where, code in (
                (JOB.replace("3 kN", "3"), "8:62", "unit"),
                (JOB.replace("force: 3 kN", "farce: 3 kN"), "8:55", "unknown"),
                (JOB.replace("[100 mm, 60 mm], height", "[-1 mm, 60 mm], height"),
                 "8:24", "conflict"),
                ("", "1:1", "missing")):
            with self.assertRaises(Error) as caught:
                strapwise.Job.read(text, "tine.yaml")
            self.assertIn("tine.yaml:" + where + ":", str(caught.exception))
            self.assertEqual(caught.exception.code, code)
        job = strapwise.Job.read(JOB)
        with self.assertRaises(Error):
            job.hold("pull")
        with self.assertRaises(Error):
            job.fixture(2)
        with self.assertRaises(TypeError):
            job.hold(margin=2)
        with self.assertRaises(Error):
            job.map(job.hold("push"), 1)
        with self.assertRaises(TypeError):
            strapwise.Job.read(3)


class Clamps(unittest.TestCase):
    """Clamps other than straps; their numbers are in the corpus."""

    def test_squeeze(self):
        q = strapwise.SqueezeIn(cut_N=1000, mu_face=0.2)
        r = strapwise.squeeze(q)
        self.assertAlmostEqual(r.normal_N, 10000)
        self.assertIsNone(r.margin)
        self.assertIsNone(r.word("verdict"))
        r = strapwise.squeeze(q.copy(faces=2, squeeze_N=5000))
        self.assertEqual(r.word("verdict"), "holds")

    def test_words(self):
        q = strapwise.DiscIn(thrust_N=5000, driver_diameter_mm=80,
                             cut_diameter_mm=120, tangential_cut_N=100)
        wear = strapwise.disc(q)
        even = strapwise.disc(q.copy(face_pressure="even"))
        self.assertGreater(even.rim_N, wear.rim_N)
        self.assertEqual(wear.word("first"), "turn")
        with self.assertRaises(Error) as caught:
            q.face_pressure = "flat"
        self.assertIn("wear, even", str(caught.exception))

    def test_refused(self):
        with self.assertRaises(Error) as caught:
            strapwise.adhesive(strapwise.AdhesiveIn(bond_area_mm2=100))
        self.assertEqual((caught.exception.code, caught.exception.field),
                         ("missing", "shear_MPa"))

    def test_assumed(self):
        q = strapwise.ChuckIn(chuck_force_N=40000)
        names = [a["name"] for a in strapwise.assumed(q)]
        self.assertIn("required_margin", names)
        strapwise.chuck_resolve(q)
        self.assertEqual(q.required_margin, 2)
        self.assertEqual(names, [a["name"] for a in strapwise.assumed(q)])

    def test_warnings(self):
        r = strapwise.pad(strapwise.PadIn(
            force_N=100, pad_area_mm2=100, pad_material="nylon-66",
            part_material="6061-T6"))
        self.assertEqual(strapwise.warnings(r), ["pad_creeps"])
        self.assertEqual(r.word("mark"), "unlikely")


class Errors(unittest.TestCase):
    def refused(self, code, blamed, call, *args, **named):
        with self.assertRaises(Error) as caught:
            call(*args, **named)
        e = caught.exception
        self.assertIsInstance(e, ValueError)
        self.assertEqual((e.code, e.field), (code, blamed))
        self.assertEqual(len(str(e).splitlines()), 1)
        return e

    def test_every_code(self):
        """Each code there is can be provoked, and Error's docstring has it."""
        torque = TorqueIn(thread="M12", torque_Nm=1, nut_factor=0.2,
                          prevailing_torque_Nm=2)
        calls = {
            "null_pointer": (strapwise.thread, None),
            "missing": (strapwise.strap, StrapIn()),
            "nan": (strapwise.strap, level(preload_N=math.nan)),
            "range": (strapwise.strap, level(preload_N=-1)),
            "syntax": (strapwise.number, "1,5"),
            "unit": (strapwise.quantity, "5 lb", strapwise.KIND_FORCE),
            "unknown": (strapwise.thread, "M13"),
            "conflict": (strapwise.strap, level(torque_Nm=5)),
            "no_answer": (strapwise.torque, torque),
            "memory": (short_of_memory, strapwise.strap_spread, level(),
                       SpreadIn(trials=1e7)),
            "stopped": (strapwise.strap_spread, level(), SpreadIn(),
                        lambda done: True)}
        every = [strapwise._status_name(code)
                 for code in range(1, strapwise._status_count() + 1)]
        self.assertEqual(sorted(calls), sorted(every))
        for code, (call, *args) in calls.items():
            with self.assertRaises(Error) as caught:
                call(*args)
            self.assertEqual(caught.exception.code, code)
            self.assertIn(code, Error.__doc__)

    def test_optional_arguments(self):
        told = []
        s = strapwise.strap_spread(q=level(), spread=SpreadIn(trials=10000),
                                   progress=told.append)
        self.assertEqual(told[-1], 1)
        self.assertEqual(strapwise.strap_spread(
            level(), SpreadIn(trials=10000)).toe_force_N, s.toe_force_N)
        turn = strapwise.strap_turn(level())
        self.assertAlmostEqual(turn.snug_N, 0.05 * turn.preload_N, 9)
        self.assertGreater(turn.turn_deg,
                           strapwise.strap_turn(level(), snug_N=2000).turn_deg)
        with self.assertRaises(TypeError):
            strapwise.strap_spread(level(), SpreadIn(), progress=3)

    def test_null_pointer(self):
        e = self.refused("null_pointer", "thread", strapwise.thread, None)
        self.assertEqual((e.low, e.high), (None, None))
        self.refused("null_pointer", "grade", strapwise.grade, None, 12)
        self.refused("null_pointer", "lubrication", strapwise.lubrication,
                     None)
        self.refused("null_pointer", "value", strapwise.number, None)
        self.refused("null_pointer", "value", strapwise.unit_factor, None,
                     strapwise.KIND_FORCE)

    def test_missing(self):
        for field, q in (
                ("thread", StrapIn()),
                ("torque_Nm", level(preload_N=None)),
                ("stud_to_toe_mm", level(stud_to_toe_mm=None)),
                ("stud_to_heel_mm", level(stud_to_heel_mm=None)),
                ("heel_height_mm", level(heel_height_mm=None)),
                ("part_height_mm", level(part_height_mm=None))):
            e = self.refused("missing", field, strapwise.strap, q)
            self.assertIn(field, str(e))
            self.assertEqual((e.low, e.high), (None, None))
            self.refused("missing", field, strapwise.assumed, q)
            self.refused("missing", field, strapwise.strap_resolve, q)
        self.refused("missing", "preload_N", strapwise.torque,
                     TorqueIn(thread="M12"))
        self.refused("missing", "thread", strapwise.chart, ChartIn())
        self.refused("missing", "side_pull_N", strapwise.strap_tilt, level(),
                     None, None, 0.02, "nominal")

    def test_every_number_of_a_question_has_its_range(self):
        """NaN, infinity and what lies just outside, with the range that the
        documentation of the field gives."""
        checked = 0
        for make, call in ((StrapIn, strapwise.strap),
                           (TorqueIn, strapwise.torque),
                           (CalibrateIn, lambda q: strapwise.calibrate(
                               q, Pairs([(20, 8310), (40, 16900)]))),
                           (ChartIn, strapwise.chart)):
            for name in make().as_dict():
                doc = inspect.getdoc(getattr(make, name))
                if " to " not in doc.rpartition("[")[2]:
                    continue
                limits = doc.rpartition("[")[2].rstrip("]").split(", ")[-1]
                low, high = (float(x) for x in limits.split(" to "))
                for code, value in (("nan", math.nan), ("range", math.inf),
                                    ("range", -math.inf),
                                    ("range", low - 1e-9 - abs(low) * 1e-6),
                                    ("range", high + abs(high) * 1e-6)):
                    q = make(thread="M12", **{name: value})
                    e = self.refused(code, name, call, q)
                    self.assertAlmostEqual(e.low, low, delta=1e-5 * abs(low))
                    self.assertAlmostEqual(e.high, high,
                                           delta=1e-5 * abs(high))
                    self.assertIn(name, str(e))
                checked += 1
        self.assertGreater(checked, 45)

    def test_tool(self):
        """6 ft-lbf on a wrench that starts at 20, and the wrenches that would
        do; 1 ft-lbf is 12 in-lbf."""
        T = 72 * INLBF_NM
        e = self.refused("no_answer", "torque_Nm", strapwise.tool,
                         ToolIn(tool="click-100ftlbf", torque_Nm=T))
        self.assertAlmostEqual(e.low, 240 * INLBF_NM, delta=1e-12)
        self.assertAlmostEqual(e.high, 1200 * INLBF_NM, delta=1e-12)
        found = strapwise.tools_for(T, "in-lbf")
        self.assertIn(found[0].tool, str(e))
        inch = [t.word("torque_unit") != "N.m" for t in found]
        self.assertEqual(inch, sorted(inch, reverse=True))
        self.assertEqual({t.tool for t in found},
                         {t.tool for t in strapwise.tools_for(T)})
        for t in found:
            r = strapwise.tool(ToolIn(tool=t.tool, torque_Nm=T))
            self.assertEqual(r.as_dict(), t.as_dict())
            self.assertAlmostEqual(r.set_torque_inlbf,
                                   r.set_torque_Nm / INLBF_NM, delta=1e-11)
        self.refused("no_answer", "torque_Nm", strapwise.tools_for, 0.01)
        self.refused("nan", "torque_Nm", strapwise.tools_for, math.nan)
        self.refused("unknown", "torque_unit", strapwise.tools_for, 5, "lb")
        q = ToolIn(torque_Nm=50.2, range_high_Nm=100, resolution_Nm=1,
                   tool_kind="indicating", torque_unit=strapwise.TORQUE_NM)
        self.assertEqual(strapwise.tool(q).setting, 50)
        self.assertEqual({a["name"] for a in strapwise.assumed(q)},
                         {"range_low_Nm", "deviation_pct", "usable_fraction"})
        strapwise.tool_resolve(q)
        self.assertEqual(q.deviation_pct, 4)

    def test_shop_tools(self):
        text = ("name,kind,from [ft-lbf],to [ft-lbf],step [ft-lbf],"
                "deviation [%]\nbig clicker,setting,30,150,1,4\n"
                "dial,indicating,,75,,\n")
        e = self.refused("missing", "step", strapwise.shop_tools, text, "t.csv")
        self.assertTrue(str(e).startswith("t.csv:3: step: "), e)
        big, dial = strapwise.shop_tools(text.replace("75,,", "75,1,"))
        self.assertEqual((big.name, big.word("tool_kind"), big.deviation_pct),
                         ("big clicker", "setting", 4))
        self.assertEqual((dial.range_low_Nm, dial.deviation_pct), (None, None))
        q = ToolIn(torque_Nm=600.4 * INLBF_NM)
        strapwise.tool_use(q, big)
        r = strapwise.tool(q)
        self.assertAlmostEqual(r.setting, 50, delta=1e-12)
        self.assertEqual(r.word("torque_unit"), "ft-lbf")
        self.assertEqual(strapwise.warnings(r), [])

    def test_range_of_arguments(self):
        e = self.refused("range", "nominal_mm", strapwise.grade, "8.8", 500)
        self.assertEqual((e.low, e.high), (1, 100))
        e = self.refused("nan", "nominal_mm", strapwise.grade, "8.8",
                         math.nan)
        self.assertEqual((e.low, e.high), (1, 100))
        self.refused("range", "grade", strapwise.grade, "grade-5", 90)
        for field, at, low, high in (("side_pull_N", 0, 0, 1e7),
                                     ("toe_error_pct", 1, 0, 100),
                                     ("vial_mm_per_m", 2, 0.001, 50)):
            for code, value in (("range", -1.0), ("range", math.inf),
                                ("nan", math.nan)):
                args = [100, 5, 0.02, "nominal"]
                args[at] = value
                e = self.refused(code, field, strapwise.strap_tilt, level(),
                                 *args)
                self.assertEqual((e.low, e.high), (low, high))
        for call in (strapwise.strap_place, strapwise.strap_torque):
            e = self.refused("range", "toe_force_N", call, level(), -5)
            self.assertEqual((e.low, e.high), (1e-3, 1e7))
            self.refused("nan", "toe_force_N", call, level(), math.nan)
        e = self.refused("range", "basis", strapwise.strap_tilt, level(), 100,
                         None, 0.02, 7)
        self.assertIn("nominal, band", str(e))
        e = self.refused("range", "kind", strapwise.quantity, "5 N", 99)
        self.assertEqual((e.low, e.high), (1, strapwise.KIND_ALTITUDE))

    def test_syntax(self):
        e = self.refused("syntax", "value", strapwise.number, "1,5")
        self.assertIn("comma", str(e))
        self.refused("syntax", "load", strapwise.number, "much", "load")
        self.refused("syntax", "load", strapwise.quantity, "N",
                     strapwise.KIND_FORCE, field="load")

    def test_text_too_long(self):
        for name, most in (("thread", 31), ("lubrication", 23),
                           ("grade", 15)):
            q = StrapIn(**{name: "x" * most})
            self.assertEqual(getattr(q, name), "x" * most)
            for n in (most + 1, most + 2, 10000):
                e = self.refused("syntax", name, setattr, q, name, "y" * n)
                self.assertIn(str(most), str(e))
            self.assertEqual(getattr(q, name), "x" * most)
            self.refused("syntax", name, StrapIn, **{name: "y" * 99})
        # bytes count, not characters
        self.refused("syntax", "grade", StrapIn, grade="\u00b5" * 8)
        self.refused("unknown", "thread", strapwise.thread, "x" * 100000)

    def test_text_with_a_zero(self):
        self.refused("syntax", "thread", StrapIn, thread="M12\0x")
        self.refused("syntax", "designation", strapwise.thread, "M12\0x")
        self.refused("syntax", "text", strapwise.number, "1\0")
        self.refused("syntax", "seat", StrapIn, seat="flat\0")

    def test_text_of_another_kind(self):
        for bad in (12, b"M12", ["M12"], "\ud800"):
            with self.assertRaisesRegex(TypeError, "thread.*text"):
                StrapIn(thread=bad)
            with self.assertRaisesRegex(TypeError, "designation.*text"):
                strapwise.thread(bad)
        # not ASCII, but a text: it is looked up, and not found
        e = self.refused("unknown", "thread", strapwise.strap,
                         level(thread="M\u00f812"))
        self.assertIn("M??12", str(e))

    def test_unit(self):
        e = self.refused("unit", "force", strapwise.quantity, "25 lb",
                         strapwise.KIND_FORCE, "force")
        self.assertIn("lbf", str(e))
        self.refused("unit", "value", strapwise.quantity, "25",
                     strapwise.KIND_FORCE)
        self.refused("unit", "value", strapwise.unit_factor, "stone",
                     strapwise.KIND_FORCE)

    def test_unknown(self):
        e = self.refused("unknown", "thread", strapwise.thread, "M13")
        self.assertIn("M12", str(e))
        self.refused("unknown", "thread", strapwise.strap, level(thread="M13"))
        self.refused("unknown", "grade", strapwise.strap, level(grade="8,8"))
        self.refused("unknown", "lubrication", strapwise.lubrication, "honey")
        self.refused("unknown", "grade", strapwise.grade, "8", 12)

    def test_word(self):
        e = self.refused("unknown", "seat", StrapIn, seat="conical")
        self.assertIn("conical", str(e))
        self.assertIn("flat, spherical", str(e))
        q = StrapIn(nose="ball")
        self.refused("unknown", "nose", setattr, q, "nose", "")
        self.refused("unknown", "nose", setattr, q, "nose", "x" * 100000)
        self.assertEqual(q.word("nose"), "ball")
        self.refused("unknown", "basis", strapwise.strap_tilt, q, 100, None,
                     0.02, "worst")
        for bad in (1.5, b"flat", ["flat"], 2 ** 40):
            with self.assertRaisesRegex(TypeError, "seat.*word"):
                StrapIn(seat=bad)
        # a number is taken as it is and judged by the call, as in C
        e = self.refused("range", "seat", strapwise.strap, level(seat=99))
        self.assertIn("flat, spherical", str(e))

    def test_conflict(self):
        self.refused("conflict", "torque_Nm", strapwise.strap,
                     level(torque_Nm=20))
        self.refused("conflict", "tilt_deg", strapwise.strap,
                     level(tilt_deg=3))
        self.refused("conflict", "nut_factor", strapwise.torque,
                     TorqueIn(thread="M12", preload_N=1000, nut_factor=0.2,
                              mu_thread=0.1, mu_seat=0.1))
        self.refused("conflict", "form", strapwise.torque,
                     TorqueIn(thread="M12", preload_N=1000, nut_factor=0.2,
                              form="exact"))

    def test_no_answer(self):
        self.refused("no_answer", "toe_force_N", strapwise.strap_place,
                     level(), 1e6)
        self.refused("no_answer", "torque_Nm", strapwise.torque,
                     TorqueIn(thread="M12", torque_Nm=1, nut_factor=0.2,
                              prevailing_torque_Nm=2))

    def test_an_error_of_a_script_has_the_same_attributes(self):
        own = Error("mine")
        self.assertEqual((str(own), own.code, own.field, own.low, own.high),
                         ("mine", None, None, None, None))
        e = self.refused("range", "preload_N", strapwise.strap,
                         level(preload_N=1e9))
        again = pickle.loads(pickle.dumps(e))
        self.assertEqual((str(again), again.code, again.high),
                         (str(e), "range", 1e7))

    def test_wrong_type(self):
        q = level()
        r = strapwise.strap(q)
        empty = StrapIn.__new__(StrapIn)
        for bad in (None, 5, "M12", {}, TorqueIn(), r, StrapIn, empty):
            for call in (strapwise.strap, strapwise.strap_resolve):
                self.assertRaises(TypeError, call, bad)
            self.assertRaises(TypeError, strapwise.strap_place, bad, 6000)
            self.assertRaises(TypeError, strapwise.strap_torque, bad, 6000)
            self.assertRaises(TypeError, strapwise.strap_tilt, bad, 1, 1, 0.02,
                              "band")
        for bad in (None, 5, q, ChartIn()):
            self.assertRaises(TypeError, strapwise.torque, bad)
            self.assertRaises(TypeError, strapwise.torque_resolve, bad)
        for bad in (None, 5, q, TorqueIn()):
            self.assertRaises(TypeError, strapwise.chart, bad)
        for bad in (None, 5, "x", r):
            self.assertRaises(TypeError, strapwise.assumed, bad)
        for bad in (None, 5, "x", q):
            self.assertRaises(TypeError, strapwise.warnings, bad)
        for bad in ("12000", [1], 1j, b"1", object()):
            with self.assertRaisesRegex(TypeError, "preload_N.*number"):
                StrapIn(preload_N=bad)
            with self.assertRaisesRegex(TypeError, "toe_force_N.*number"):
                strapwise.strap_place(q, bad)
        for call, args in ((strapwise.strap_place, (q, None)),
                           (strapwise.grade, ("8.8", None)),
                           (strapwise.strap_tilt, (q, 1, 1, None, "band"))):
            self.assertRaises(TypeError, call, *args)
        self.assertRaises(TypeError, strapwise.strap)
        self.assertRaises(TypeError, strapwise.quantity, "5 N", "force")

    def test_none_for_self(self):
        """The functions under the methods, too, refuse instead of crashing."""
        import _strapwise
        tried = 0
        for name in dir(_strapwise):
            call = getattr(_strapwise, name)
            if not callable(call) or name.startswith("_") or \
                    name.endswith(("swigregister", "swiginit")) or \
                    isinstance(call, type):
                continue
            for n in range(6):
                try:
                    call(*[None] * n)
                except (TypeError, Error, AttributeError, OverflowError):
                    pass
                tried += 1
        self.assertGreater(tried, 1000)

    def test_warning_text(self):
        self.assertIn("heel", strapwise.warning_text("heel_low"))
        with self.assertRaisesRegex(Error, "heel_low"):
            strapwise.warning_text("heel_lo")


class Structs(unittest.TestCase):
    def test_everything_is_open_at_first(self):
        for make in QUESTIONS:
            q = make()
            self.assertEqual(set(q.as_dict().values()), {None})
            self.assertEqual(repr(q), make.__name__ + "()")
            self.assertEqual(q.assumed, 0)

    def test_keywords(self):
        q = StrapIn(thread="M12", preload_N=12000, seat="spherical",
                    nut=strapwise.NUT_STILL, tilt_deg=None)
        self.assertEqual(q.thread, "M12")
        self.assertEqual(q.preload_N, 12000.0)
        self.assertEqual(q.seat, strapwise.SEAT_SPHERICAL)
        self.assertEqual(q.word("nut"), "still")
        self.assertIsNone(q.tilt_deg)
        self.assertIsNone(q.grade)
        self.assertIsNone(q.nose)
        self.assertIsNone(q.word("nose"))
        self.assertRaises(TypeError, StrapIn, "M12")

    def test_mistyped_keyword(self):
        for make, wrong, right in ((StrapIn, "preload", "preload_N"),
                                   (StrapIn, "preload_n", "preload_N"),
                                   (StrapIn, "tread", "thread"),
                                   (TorqueIn, "torque", "torque_Nm"),
                                   (ChartIn, "proof", "proof_fraction")):
            with self.assertRaisesRegex(TypeError, right):
                make(**{wrong: 1})

    def test_mistyped_attribute(self):
        q = level()
        r = strapwise.strap(q)
        for wrong, right in (("preload_n", "preload_N"),
                             ("stud_to_toe", "stud_to_toe_mm"),
                             ("seet", "seat")):
            with self.assertRaisesRegex(AttributeError, right):
                setattr(q, wrong, 1)
            with self.assertRaisesRegex(AttributeError, right):
                getattr(q, wrong)
            with self.assertRaisesRegex(AttributeError, right):
                q.copy(**{wrong: 1})
        with self.assertRaisesRegex(AttributeError, "toe_force_N"):
            r.toe_force
        with self.assertRaisesRegex(AttributeError, "seat"):
            q.word("seet")
        with self.assertRaises(AttributeError):
            q.word("preload_N")
        self.assertFalse(hasattr(q, "toe_force_N"))
        for attribute in ("assumed", "as_dict", "_field_of", "__class__"):
            with self.assertRaises(AttributeError):
                setattr(q, attribute, 3)

    def test_answers_cannot_be_changed_or_made(self):
        r = strapwise.strap(level())
        for name in ("toe_force_N", "warnings", "seat_state", "new"):
            with self.assertRaises(AttributeError):
                setattr(r, name, 5)
        self.assertAlmostEqual(r.toe_force_N, 8000, delta=100)
        for make in ANSWERS:
            self.assertRaises(AttributeError, make)

    def test_no_status(self):
        self.assertFalse(hasattr(strapwise.strap(level()), "status"))

    def test_numbers_of_any_kind(self):
        for number, value in ((3, 3.0), (decimal.Decimal("2.5"), 2.5),
                              (fractions.Fraction(1, 4), 0.25)):
            q = StrapIn(preload_N=number)
            self.assertEqual(q.preload_N, value)
            self.assertIs(type(q.preload_N), float)
        try:
            import numpy
        except ImportError:
            return
        for number in (numpy.float32(1.5), numpy.float64(1.5),
                       numpy.array(1.5)):
            self.assertEqual(StrapIn(preload_N=number).preload_N, 1.5)
        self.assertEqual(StrapIn(preload_N=numpy.int64(7)).preload_N, 7.0)

    def test_open_again(self):
        q = level(seat="flat", grade="8.8")
        for name in q.as_dict():
            setattr(q, name, None)
        self.assertEqual(set(q.as_dict().values()), {None})
        q.thread = ""
        self.assertIsNone(q.thread)
        q.preload_N = strapwise.UNSET
        self.assertIsNone(q.preload_N)

    def test_unset_never_shows(self):
        r = strapwise.torque(TorqueIn(thread="M12", preload_N=9000,
                                      grade="A2-70"))
        # stainless has no proof stress
        self.assertIsNone(r.proof_use)
        self.assertIsNone(r.as_dict()["proof_use"])
        l = strapwise.lubrication("oiled")
        self.assertTrue((l.nut_factor is None) != (l.mu_thread is None))
        for name in strapwise.lubrication_names():
            for value in strapwise.lubrication(name).as_dict().values():
                self.assertTrue(value is None or
                                isinstance(value, (str, list)) or
                                0 < value < 1)

    def test_as_dict(self):
        q = level(seat=strapwise.SEAT_FLAT)
        fields = q.as_dict()
        self.assertEqual(fields["seat"], "flat")
        self.assertNotIn("assumed", fields)
        self.assertEqual(StrapIn(**fields).as_dict(), fields)
        r = strapwise.strap(q)
        fields = r.as_dict()
        self.assertEqual(fields["pull_direction"], "away from stud")
        self.assertEqual(fields["warnings"], strapwise.warnings(r))
        self.assertNotIn("status", fields)
        self.assertEqual(json.loads(json.dumps(fields)), fields)
        for answer in (strapwise.thread("M12"), strapwise.grade("8.8", 12),
                       strapwise.lubrication("dry"),
                       strapwise.chart(ChartIn(thread="M12"))):
            self.assertTrue(json.dumps(answer.as_dict(), allow_nan=False))

    def test_repr_makes_the_same_question(self):
        q = level(seat="flat", lubrication="oiled")
        self.assertEqual(eval(repr(q)).as_dict(), q.as_dict())
        r = strapwise.strap(q)
        self.assertIn("toe_force_N=8000", repr(r))
        self.assertIn("seat_state='level'", repr(r))
        self.assertIn("warnings=[", repr(r))
        self.assertIn("seat_state               level", str(r))
        self.assertNotIn("1.79", repr(r) + str(r))

    def test_copies_are_separate(self):
        q = level()
        for other in (q.copy(), copy.copy(q), copy.deepcopy(q)):
            other.preload_N = 5
            self.assertEqual(q.preload_N, 12000)
            other.thread = "M16"
            del other
        self.assertEqual(q.copy(thread="M10").thread, "M10")
        r = strapwise.strap(q)
        self.assertEqual(copy.deepcopy(r).toe_force_N, r.toe_force_N)
        self.assertRaises(TypeError, pickle.dumps, q)

    def test_answer_outlives_its_question(self):
        r = strapwise.strap(level())
        names = [strapwise.thread("M12").designation for _ in range(1000)]
        self.assertEqual(set(names), {"M12"})
        self.assertAlmostEqual(r.toe_force_level_N, 8000, delta=1e-6)

    def test_warnings(self):
        r = strapwise.strap(level(heel_height_mm=38))
        self.assertIn("heel_low", strapwise.warnings(r))
        self.assertTrue(r.warnings & strapwise.WARN_HEEL_LOW)
        for name in strapwise.warnings(r):
            self.assertTrue(strapwise.warning_text(name))
        self.assertEqual(strapwise.warnings(strapwise.grade("8.8", 12)), [])

    def test_assumed(self):
        q = level(mu_toe=0.12)
        found = strapwise.assumed(q)
        by_name = {a["name"]: a for a in found}
        self.assertEqual(len(by_name), len(found))
        self.assertNotIn("mu_toe", by_name)
        self.assertNotIn("thread", by_name)
        self.assertEqual(set(found[0]), {"name", "value", "unit", "low",
                                         "high", "source"})
        heel = by_name["mu_heel"]
        self.assertEqual((heel["value"], heel["low"], heel["high"],
                          heel["unit"]), (0.15, 0.10, 0.20, ""))
        self.assertEqual(by_name["lubrication"]["value"], "unknown")
        seat = by_name["seat"]
        self.assertEqual((seat["value"], seat["low"], seat["high"]),
                         ("flat", None, None))
        for a in found:
            self.assertTrue(a["source"], a)
            self.assertTrue(json.dumps(a, allow_nan=False))
        # what was open is exactly what is listed, and the heel's height, which
        # follows from the tilt
        full = q.copy()
        strapwise.strap_resolve(full)
        filled = {n for n, v in full.as_dict().items()
                  if v is not None and q.as_dict()[n] is None}
        self.assertEqual(set(by_name) | {"tilt_deg"}, filled)
        self.assertTrue(strapwise.assumed(TorqueIn(thread="M12",
                                                   preload_N=1)))
        self.assertTrue(strapwise.assumed(ChartIn(thread="M12")))

    def test_matters(self):
        q = level(tilt_deg=None, heel_height_mm=42)
        found = strapwise.matters(q)
        self.assertEqual([m["name"] for m in found],
                         [a["name"] for a in strapwise.assumed(q)])
        r = strapwise.strap(q)
        for m in found:
            self.assertLessEqual(m["toe_low_N"], r.toe_force_N + 1e-6)
            self.assertGreaterEqual(m["toe_high_N"], r.toe_force_N - 1e-6)
            self.assertLessEqual(m["pull_low_N"], r.side_pull_N + 1e-6)
            self.assertGreaterEqual(m["pull_high_N"], r.side_pull_N - 1e-6)
        # friction of the heel pushes the part away: more of it, more push
        heel = {m["name"]: m for m in found}["mu_heel"]
        self.assertLess(heel["pull_low_N"], r.side_pull_N)
        for bad in (None, 5, r, TorqueIn()):
            self.assertRaises(TypeError, strapwise.matters, bad)

    def test_resolve(self):
        q = level()
        before = strapwise.strap(q).as_dict()
        self.assertIsNone(strapwise.strap_resolve(q))
        self.assertEqual(q.mu_toe, 0.15)
        once = q.as_dict(), q.assumed
        strapwise.strap_resolve(q)
        self.assertEqual((q.as_dict(), q.assumed), once)
        self.assertEqual(strapwise.strap(q).as_dict(), before)

    def test_what_is_set_after_resolving_is_no_longer_assumed(self):
        q = level()
        strapwise.strap_resolve(q)
        q.mu_toe = 0.15
        self.assertNotIn("mu_toe", [a["name"] for a in strapwise.assumed(q)])
        self.assertIn("mu_heel", [a["name"] for a in strapwise.assumed(q)])
        q.mu_heel = None
        self.assertIn("mu_heel", [a["name"] for a in strapwise.assumed(q)])
        # friction given beside a nut factor is not quietly dropped
        q = TorqueIn(thread="M12", preload_N=9000, nut_factor=0.2)
        strapwise.torque_resolve(q)
        q.mu_thread = 0.1
        r = strapwise.torque(q)
        self.assertEqual(r.mu_thread, 0.1)
        # the seat carries what the factor leaves: same torque for the same
        # tension
        self.assertAlmostEqual(r.torque_Nm, 0.2 * 0.012 * 9000, 9)
        self.assertGreater(r.mu_seat, strapwise.torque(TorqueIn(
            thread="M12", preload_N=9000, nut_factor=0.2)).mu_seat)

    def test_failed_resolve_changes_nothing(self):
        q = level(preload_N=1e9)
        before = q.as_dict()
        self.assertRaises(Error, strapwise.strap_resolve, q)
        self.assertEqual(q.as_dict(), before)

    def test_lists(self):
        for name in strapwise.thread_names():
            self.assertEqual(strapwise.thread(name).designation, name)
        grades = strapwise.grade_names()
        self.assertEqual(len(set(grades)), len(grades))
        self.assertIn("8.8", grades)
        for key in strapwise.lubrication_names():
            self.assertEqual(strapwise.lubrication(key).lubrication, key)
        for key in strapwise.tool_names():
            self.assertEqual(strapwise.ToolIn(tool=key).tool, key)
        self.assertGreater(len(strapwise.not_checked()), 3)

    def test_words(self):
        self.assertEqual(strapwise.word(strapwise.WORDS_SEAT,
                                        strapwise.SEAT_SPHERICAL),
                         "spherical")
        self.assertEqual(strapwise.word_value(strapwise.WORDS_SEAT,
                                              "spherical"),
                         strapwise.SEAT_SPHERICAL)
        self.assertIsNone(strapwise.word(99, 1))
        self.assertEqual(strapwise.word_value(strapwise.WORDS_SEAT, "x"), 0)
        # every word of every field of a question, there and back
        tried = 0
        for make in QUESTIONS:
            for name in make().as_dict():
                doc = inspect.getdoc(getattr(make, name))
                if not doc.startswith("one of: "):
                    continue
                for value, text in enumerate(doc[8:].split(", "), 1):
                    q = make(**{name: text})
                    self.assertEqual(getattr(q, name), value)
                    self.assertEqual(q.word(name), text)
                    self.assertEqual(make(**{name: value}).word(name), text)
                    tried += 1
        self.assertEqual(tried, 58)

    def test_subclass(self):
        class Strap(StrapIn):
            pass

        q = Strap(**level().as_dict())
        self.assertEqual(strapwise.strap(q).as_dict(),
                         strapwise.strap(level()).as_dict())
        self.assertTrue(strapwise.assumed(q))

    def test_versions(self):
        self.assertRegex(strapwise.version(), r"^\d+\.\d+\.\d+$")
        self.assertEqual(strapwise.__version__, strapwise.version())
        self.assertTrue(strapwise.tables_version())


class Robustness(unittest.TestCase):
    def test_random_questions(self):
        """Whatever is asked, there is an Error or an answer without NaN."""
        rng = random.Random(20251)
        words = {"seat": 2, "nose": 3, "heel": 3, "foot": 2, "nut": 2,
                 "strap": 3, "restraint": 3}
        answers = refusals = 0
        for _ in range(4000):
            q = StrapIn(
                thread=rng.choice(("M6", "M12", "1/2-13", "M48", "#10-32")),
                preload_N=10 ** rng.uniform(1, 5.5),
                stud_to_toe_mm=10 ** rng.uniform(0.1, 3),
                stud_to_heel_mm=10 ** rng.uniform(0.1, 3),
                part_height_mm=rng.uniform(0, 200),
                tilt_deg=rng.uniform(-21, 21),
                **{n: rng.randint(0, most) for n, most in words.items()})
            for name in rng.sample(sorted(q.as_dict()), 4):
                if name not in words and name not in ("thread", "grade",
                                                      "lubrication"):
                    setattr(q, name, rng.choice((0, 1, 1e-3, 10, 1e3)))
            try:
                fields = strapwise.strap(q).as_dict()
                answers += 1
            except Error as e:
                self.assertTrue(e.code and e.field, str(e))
                refusals += 1
                continue
            for name, value in fields.items():
                self.assertFalse(isinstance(value, float) and
                                 not math.isfinite(value), (name, q))
        self.assertGreater(answers, 100)
        self.assertGreater(refusals, 100)

    def test_threads(self):
        questions = [level(preload_N=1000 + 37 * i, tilt_deg=None)
                     for i in range(40)]
        alone = [strapwise.strap(q).as_dict() for q in questions]
        found, failed = {}, []

        def work(number):
            try:
                answers = []
                for q in questions:
                    answers.append(strapwise.strap(q).as_dict())
                    try:
                        strapwise.strap(q.copy(preload_N=1e8 + number))
                    except Error as e:
                        assert e.field == "preload_N", e.field
                    try:
                        StrapIn(seat="x%d" % number)
                    except Error as e:
                        assert "x%d" % number in str(e), str(e)
                found[number] = answers
            except BaseException as e:
                failed.append(e)

        threads = [threading.Thread(target=work, args=(n,)) for n in range(8)]
        for t in threads:
            t.start()
        for t in threads:
            t.join()
        self.assertEqual(failed, [])
        self.assertEqual(sorted(found), list(range(8)))
        for answers in found.values():
            self.assertEqual(answers, alone)

    def flat(self, call, *args, times=100000):
        """100,000 calls do not raise the peak of memory, and 20,000 leave
        nothing behind: what is lost at each call is at least 32 bytes. Of a
        slow call that would lose more, fewer will do."""
        def once():
            try:
                call(*args)
            except (Error, TypeError, AttributeError):
                pass

        def repeat(times):
            for _ in range(times):
                once()

        repeat(times // 100)
        if resource:
            unit = 1024 ** 2 if sys.platform == "darwin" else 1024
            before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
            repeat(times)
            after = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
            self.shown("peak", (after - before) / unit, 4, call)
        try:
            before = resident_MB()
        except OSError:
            return
        repeat(min(times, 20000))
        self.shown("left", resident_MB() - before, 0.5, call)

    def shown(self, what, growth, most, call):
        if "STRAPWISE_SHOW_MEMORY" in os.environ:
            print("%s %.3f MB %s" % (what, growth, call))
        self.assertLess(growth, most)

    def test_memory_of_good_straps(self):
        q = level()
        self.flat(lambda: strapwise.strap(q).toe_force_N)

    def test_memory_of_bad_straps(self):
        self.flat(strapwise.strap, level(preload_N=math.nan))

    def test_memory_of_words_and_texts(self):
        q = level()
        self.flat(setattr, q, "seat", "flat")
        self.flat(setattr, q, "seat", "conical")
        self.flat(setattr, q, "thread", "1/2-13")
        self.flat(setattr, q, "thread", "x" * 100)
        self.flat(getattr, q, "thread")

    def test_memory_of_mistakes(self):
        q = level()
        self.flat(strapwise.strap, None)
        self.flat(strapwise.number, "1,5")
        self.flat(strapwise.number, "1\0")
        self.flat(strapwise.number, 5)
        self.flat(setattr, q, "preload_N", "12")
        self.flat(setattr, q, "seat", [])

    def test_memory_of_pairs(self):
        pairs = Pairs([(20, 8310), (40, 16900)])
        q = CalibrateIn(thread="M13")
        self.flat(lambda: Pairs([(20, 8310), (40, 16900)]).about())
        self.flat(pairs.read, TABLE)
        self.flat(pairs.read, TABLE + "1;2;3\n")
        self.flat(pairs.at, CalibrateIn(), 1)
        self.flat(strapwise.calibrate_plot, CalibrateIn(), Pairs())
        self.flat(strapwise.calibrate, q, pairs)

    def test_memory_of_drawings(self):
        q = level(heel_height_mm=41)  # a drawing is some 30 kB
        self.flat(strapwise.strap_drawing, q, times=1000)
        self.flat(strapwise.tilt_plot, q, times=500)
        self.flat(strapwise.strap_drawing, StrapIn(), times=1000)
        self.flat(strapwise.remarks, q, times=2000)
        self.flat(strapwise.say, 5, strapwise.KIND_FORCE)

    def test_memory_of_the_rest(self):
        q, t = level(), TorqueIn(thread="M12", preload_N=9000)
        for call, *args in ((strapwise.torque, t), (strapwise.grade, "8.8", 9),
                            (q.copy,), (strapwise.strap_resolve, q.copy()),
                            (strapwise.unit_factor, "lbf", 3, None)):
            self.flat(call, *args)

    def run_python(self, *args):
        done = subprocess.run([sys.executable, "-W", "error", *args],
                              stdout=subprocess.PIPE, stderr=subprocess.PIPE,
                              universal_newlines=True, timeout=300, cwd=HERE)
        self.assertEqual(done.returncode, 0, done.stderr)
        # SWIG tells about leaks there
        self.assertEqual(done.stderr, "")
        return done.stdout

    def test_quiet_at_exit(self):
        out = self.run_python(
            "-c", "import strapwise as s; q = s.StrapIn(thread='M12'); "
            "r = [s.thread(n) for n in s.thread_names()]; t = s.grade; "
            "print(len(r) > 100)")
        self.assertEqual(out, "True\n")

    def test_example(self):
        out = self.run_python(EXAMPLE).splitlines()
        rows = [re.match(r"(.+?) +(M12|1/2-13) +([\d.]+) +([\d.]+) ", row)
                for row in out[1:6]]
        self.assertEqual([row.group(2) for row in rows],
                         ["M12"] * 4 + ["1/2-13"])
        for row in rows:
            # N.m over ft-lbf, both printed with one decimal
            self.assertAlmostEqual(float(row.group(3)) / float(row.group(4)),
                                   12 * INLBF_NM, delta=0.02)


class Documentation(unittest.TestCase):
    def functions(self):
        return {n: f for n, f in vars(strapwise).items()
                if inspect.isfunction(f) and not n.startswith("_")}

    def texts(self):
        """Every docstring that people see, by name."""
        texts = {"strapwise": strapwise.__doc__, "Error": Error.__doc__}
        for name, f in self.functions().items():
            texts[name] = f.__doc__
        for cls in QUESTIONS + ANSWERS + (Pairs, strapwise.Drawing,
                                          strapwise.Fixture, strapwise.Hold):
            texts[cls.__name__] = cls.__doc__
            for member, thing in vars(cls).items():
                if not member.startswith("_") and member != "thisown":
                    texts[cls.__name__ + "." + member] = thing.__doc__
        return texts

    def test_everything_has_one(self):
        for name, text in self.texts().items():
            self.assertTrue(text and len(text.strip()) >= 1, name)

    def test_they_speak_python(self):
        for name, text in self.texts().items():
            self.assertNotRegex(text, r"sw_|SW_|NULL|NaN|\berr\b|\*", name)

    def test_units(self):
        """A unit in a field's name is a unit in its docstring; functions that
        return quantities name theirs."""
        units = {"_N": "N", "_Nm": "N.m", "_mm": "mm", "_MPa": "MPa",
                 "_deg": "deg", "_pct": "%", "_mm_per_N": "mm/N",
                 "_mm_per_m": "mm/m", "_ftlbf": "ft-lbf"}
        seen = 0
        for name, text in self.texts().items():
            fits = [e for e in units if name.endswith(e)]
            if "." in name and fits:
                unit = units[max(fits, key=len)]
                self.assertRegex(text, r"\[%s[\],]" % unit.replace(".", r"\."),
                                 name)
                seen += 1
        self.assertGreater(seen, 100)
        for f in (strapwise.thread, strapwise.torque, strapwise.chart,
                  strapwise.strap, strapwise.strap_tilt, strapwise.strap_place,
                  strapwise.strap_torque, strapwise.quantity):
            self.assertRegex(f.__doc__, r"\b(N|mm)\b", f.__name__)

    def test_signatures(self):
        """The error argument is not there."""
        wanted = {"strap": ["q"], "torque": ["q"], "chart": ["q"],
                  "thread": ["designation"], "grade": ["grade", "nominal_mm"],
                  "quantity": ["text", "kind", "field"],
                  "strap_place": ["q", "toe_force_N"],
                  "strap_tilt": ["q", "side_pull_N", "toe_error_pct",
                                 "vial_mm_per_m", "basis"]}
        for name, f in self.functions().items():
            arguments = list(inspect.signature(f).parameters)
            self.assertNotIn("err", arguments)
            self.assertEqual(arguments, wanted.get(name, arguments))

    def test_help(self):
        text = pydoc.render_doc(strapwise, renderer=pydoc.plaintext)
        for part in ("strap(q)", "strap_place(q, toe_force_N)",
                     "toe force", "[mm, 1 to 2000]", "Raises Error",
                     "(self, **fields)"):
            self.assertTrue(part in text, part)
        for part in ("sw_", "SW_", "NULL"):
            self.assertFalse(part in text, part)

    def test_examples_in_docstrings(self):
        tests = doctest.DocTestFinder().find(strapwise, "strapwise",
                                             module=strapwise)
        runner = doctest.DocTestRunner(verbose=False)
        results = [runner.run(t) for t in tests if t.examples]
        self.assertGreaterEqual(len(results), 3)
        self.assertEqual(sum(r.failed for r in results), 0)


class Names(unittest.TestCase):
    def test_snapshot(self):
        """Public names come and go only together with names.txt."""
        with open(NAMES, encoding="ascii") as lines:
            wanted = [line.strip() for line in lines
                      if line.strip() and not line.startswith("#")]
        got = public_names()
        self.assertEqual(sorted(set(wanted) - set(got)), [], "lost")
        self.assertEqual(sorted(set(got) - set(wanted)), [], "new")


if __name__ == "__main__":
    if sys.argv[1:] == ["--names"]:
        print("# SPDX-License-Identifier: GPL-3.0-or-later")
        print("# Public names of the Python module; test_strapwise.py --names")
        print("\n".join(public_names()))
    else:
        unittest.main()
