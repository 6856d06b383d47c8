#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The library's hold against three others (hold_reference.py).

Asks tests/hold/hold_lines for random fixtures, made from the seed, and compares

  program     margin and ceiling with a linear program for HiGHS, written
              independently with tangents of the round disc: 1e-5, since the
              library makes its discs round where it counts
  limit       the same program's margin with the clamps scaled by hold_scale is
              the one wanted: 1e-3 (supports that lift: 2e-3)
  motions     flat fixtures, least work over sliding motions: never above it, at
              most 0.5 % below (it is a search, so it may stop early: then it is
              above)
  simulation  springs with Coulomb friction: the margin over the factor at which
              they find no equilibrium. The library's model has rigid friction
              and free choice of stop forces, so it may be higher: allowed -0.5 %
              to +1.5 % flat and with heights, +15 % with held toes; the median
              must be within 0.2 % (0.5 %).

The table of a long run is stored in hold_simulation.csv (--write FILE).
"""
import argparse
import multiprocessing
import statistics
import subprocess
import sys

import numpy as np

import hold_reference as ref

KINDS = ("flat", "height", "held")


def ask(program, fixtures):
    text = "\n".join("\n".join(ref.lines(f) + ["solve"]) for f in fixtures) + "\n"
    done = subprocess.run([program], input=text, capture_output=True, text=True,
                          check=True)
    answers = []
    for block in done.stdout.split("end\n")[:-1]:
        words = block.split()
        if words[0] != "total":
            raise SystemExit("refused: " + block)
        one = {}
        for pair in words[1:]:
            key, value = pair.split("=")
            try:
                one[key] = float(value)
            except ValueError:
                one[key] = None if value == "none" and key != "first_to_go" else value
        answers.append(one)
    if len(answers) != len(fixtures):
        raise SystemExit("%d answers for %d fixtures" % (len(answers), len(fixtures)))
    return answers


class Tally:
    def __init__(self):
        self.passed = self.failed = 0
        self.seen = {}

    def check(self, ok, text):
        self.passed += bool(ok)
        self.failed += not ok
        if not ok:
            print("FAIL", text)

    def near(self, what, name, got, want, tolerance):
        off = abs(got - want)/max(abs(want), 1e-3)
        self.seen[what] = max(self.seen.get(what, 0), off)
        self.check(off <= tolerance, "%s %s: %.9g, want %.9g" % (name, what, got, want))


def scaled(f, t):
    return dict(f, clamps=[(x, y, z, P*t, px*t, py*t, mu)
                           for x, y, z, P, px, py, mu in f["clamps"]])


def by_program(job):
    """Margin, ceiling, margin with scaled clamps, least over motions."""
    f, t, flat = job
    margin = ref.lp_margin(f)
    if margin is None:
        return None
    return (margin, ref.lp_margin(f, True),
            None if t is None else ref.lp_margin(scaled(f, t)) or 0.0,
            ref.dual_margin(f) if flat else None)


def by_springs(f):
    return ref.simulate(f)


def programs(tally, program, count):
    rng = np.random.default_rng(20)
    fixtures, names = [], []
    for i in range(count):
        kind = KINDS[i % 3]
        needed = 3 if i % 5 == 4 else 1
        fixtures.append(ref.random_fixture(rng, kind, needed))
        names.append("%d %s%s" % (i, kind, ", may lift" if needed == 3 else ""))
    answers = ask(program, fixtures)
    rested = limits = 0
    jobs = []
    for i, (f, got) in enumerate(zip(fixtures, answers)):
        t = got["hold_scale"] if i % 3 == 0 or i % 5 == 4 else None
        jobs.append((f, t if t is not None and 1e-6 < t < 1e3 else None,
                     i % 3 == 0 and f["pads"][0][4] == 1))
    with multiprocessing.Pool() as pool:
        wanted = pool.map(by_program, jobs, 4)
    for name, got, want in zip(names, answers, wanted):
        if want is None:
            tally.check(got["margin"] == 0 and got["rest"] != "stays",
                        name + " does not rest")
            continue
        rested += 1
        margin, ceiling, limit, motion = want
        tally.near("margin", name, got["margin"], margin, 1e-5)
        tally.near("ceiling", name, got["margin_ceiling"], ceiling, 1e-5)
        tally.check(got["margin_ceiling"] >= got["margin"], name + " above its ceiling")
        if limit is not None:
            limits += 1
            tally.near("limit", name, limit, 2.0, 2e-3 if "lift" in name else 1e-3)
        if motion is not None:
            tally.check(got["margin"] <= motion*(1 + 1e-6), "%s above %.9g by motion: %.9g"
                        % (name, motion, got["margin"]))
            tally.check(got["margin"] >= motion*0.995 or got["first_to_go"] == "lift",
                        "%s below %.9g by motion: %.9g" % (name, motion, got["margin"]))
    tally.check(rested >= 0.7*count, "only %d of %d rest" % (rested, count))
    tally.check(limits >= 0.2*count, "only %d limits" % limits)


def simulations(tally, program, count, write):
    rng = np.random.default_rng(30)
    rows = []
    for kind in KINDS:
        ratios = []
        while len(ratios) < count:
            fixtures = [ref.random_fixture(rng, kind, 3) for _ in range(8)]
            with multiprocessing.Pool() as pool:
                results = pool.map(by_springs, fixtures, 1)
            for got, (collapse, first) in zip(ask(program, fixtures), results):
                if len(ratios) == count or got["margin"] < 0.02:
                    continue
                if collapse is None or collapse < 0.02:
                    continue
                ratio = got["margin"]/(collapse + 1e-4)
                ratios.append(ratio)
                rows.append((kind, got["margin"], got["margin_ceiling"], collapse,
                             first or collapse))
                # a step of the load is up to 2e-4
                slack = 2e-4/collapse
                tally.check(0.995 - slack <= ratio <=
                            (1.15 if kind == "held" else 1.015) + slack,
                            "%s %d: %.5g times the simulation's %.5g"
                            % (kind, len(ratios), ratio, collapse))
        middle = statistics.median(ratios)
        tally.check(count < 10 or abs(middle - 1) < (0.005 if kind == "held" else 0.002),
                    "%s median %.5f" % (kind, middle))
        slips = sorted(r[4]/r[3] for r in rows if r[0] == kind)
        print("%-7s %d: margin over simulation %.4f %.4f %.4f; first slip at %.2f of it"
              % (kind, len(ratios), min(ratios), middle, max(ratios),
                 statistics.median(slips)))
    if write:
        with open(write, "w", encoding="ascii") as out:
            out.write("# SPDX-License-Identifier: GPL-3.0-or-later\n"
                      "# Made by compare_hold.py --write; factors on the cut.\n"
                      "kind,margin,ceiling,simulation,first_slip\n")
            for row in rows:
                out.write("%s,%.5f,%.5f,%.5f,%.5f\n" % row)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--lines", required=True, help="tests/hold/hold_lines")
    parser.add_argument("--fixtures", type=int, default=200)
    parser.add_argument("--simulations", type=int, default=3, help="of each kind")
    parser.add_argument("--write", help="CSV of the simulations")
    args = parser.parse_args()
    tally = Tally()
    programs(tally, args.lines, args.fixtures)
    for what, off in sorted(tally.seen.items()):
        print("largest difference of %s: %.2g" % (what, off))
    simulations(tally, args.lines, args.simulations, args.write)
    print("%d passed, %d failed" % (tally.passed, tally.failed))
    return tally.failed > 0


if __name__ == "__main__":
    sys.exit(main())
