#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Milling loads by another road than lib/cut/: each tooth's edge is integrated
over its height with SciPy's adaptive quadrature, between the heights at which
it enters and leaves the work; means are integrals of that over a pitch; peaks
and extremes come from a grid and a bounded search around its best point.

    milling_quad.py              prints tests/cases/milling.cases
    milling_quad.py FILE         says whether FILE is what would be printed

The last line of a comparison is "N passed, N failed".
"""
import math
import random
import sys

from scipy import integrate, optimize

NAMES = ("x", "y", "z", "mx", "my", "mz")


class Cut:
    def __init__(self, **given):
        self.__dict__.update(given)
        self.r = self.diameter_mm / 2
        self.kappa = math.radians(self.corner_deg)
        # exactly upright for 90 degrees
        self.cos_kappa = math.cos(self.kappa) if self.corner_deg < 90 else 0
        self.beta = math.radians(self.helix_deg)
        self.pitch = 2 * math.pi / self.teeth
        r, ae = self.r, self.width_mm
        if self.mode == "slot":
            self.arc = 0, math.pi
        elif self.mode == "face":
            o = self.offset_mm
            self.arc = (math.acos(min(1, (o + ae / 2) / r)),
                        math.acos(max(-1, (o - ae / 2) / r)))
        elif self.way == "up":
            self.arc = 0, math.acos(1 - ae / r)
        else:
            self.arc = math.pi - math.acos(1 - ae / r), math.pi

    def per_mm(self, phi, z):
        """Load of 1 mm of depth of an edge at phi."""
        s, c = math.sin(phi), math.cos(phi)
        h = max(self.feed_per_tooth_mm * s * math.sin(self.kappa), 0)
        if h == 0:
            return [0.0] * 6
        ft = self.kc11_MPa * h**(1 - self.mc) / math.sin(self.kappa)
        fr = self.radial_ratio * ft * math.sin(self.kappa)
        fx, fy = ft * c + fr * s, fr * c - ft * s
        fz = (ft * math.tan(self.beta) * self.lift_share
              - self.radial_ratio * ft * self.cos_kappa)
        x, y = self.r * s, self.r * c
        return [fx, fy, fz, (y * fz - z * fy) / 1000, (z * fx - x * fz) / 1000,
                (x * fy - y * fx) / 1000]

    def turned(self, f):
        a = math.radians(self.feed_direction_deg)
        c, s = math.cos(a), math.sin(a)
        return [c * f[0] - s * f[1], s * f[0] + c * f[1], f[2],
                c * f[3] - s * f[4], s * f[3] + c * f[4], f[5]]

    def at(self, theta):
        k = math.tan(self.beta) / self.r  # lag for each mm of height
        ap = self.depth_mm
        total = [0.0] * 6
        for tooth in range(int(self.teeth)):
            tip = theta + tooth * self.pitch
            for lap in range(-3, 3):
                phi = tip + lap * 2 * math.pi
                if k == 0:
                    if self.arc[0] <= phi < self.arc[1]:
                        part = [ap * f for f in self.per_mm(phi, ap / 2)]
                        total = [a + b for a, b in zip(total, part)]
                    continue
                low = max(0, (phi - self.arc[1]) / k)
                high = min(ap, (phi - self.arc[0]) / k)
                if high <= low:
                    continue
                for i in range(6):
                    total[i] += integrate.quad(
                        lambda z: self.per_mm(phi - k * z, z)[i], low, high,
                        epsabs=1e-10, epsrel=1e-10, limit=200)[0]
        return self.turned(total)

    def mean(self):
        ap, out = self.depth_mm, []
        for i in range(6):
            # every height alike, so that the height's own mean is enough
            out.append(self.teeth * ap / (2 * math.pi) * integrate.quad(
                lambda phi: self.per_mm(phi, ap / 2)[i], *self.arc,
                epsabs=1e-10, epsrel=1e-11, limit=400)[0])
        return self.turned(out)

    def ends(self):
        lag = self.depth_mm * math.tan(self.beta) / self.r
        at = sorted((a + b) % self.pitch for a in self.arc for b in (0, lag))
        return at + [at[0] + self.pitch]

    def largest(self, what, steps=60):
        best = -math.inf
        ends = self.ends()
        for low, high in zip(ends, ends[1:]):
            if high - low < 1e-7:
                continue
            low, high = low + 1e-9, high - 1e-9
            grid = [low + (high - low) * i / steps for i in range(steps + 1)]
            value = [what(self.at(t)) for t in grid]
            i = max(range(steps + 1), key=value.__getitem__)
            best = max(best, value[i])
            found = optimize.minimize_scalar(
                lambda t: -what(self.at(t)), method="bounded",
                bounds=(grid[max(i - 1, 0)], grid[min(i + 1, steps)]),
                options={"xatol": 1e-9})
            best = max(best, -found.fun)
        return best


def drawn(r, i):
    mode = ("slot", "side", "face", "side")[i % 4]
    d = round(r.uniform(6, 63), 1)
    given = dict(
        kc11_MPa=round(r.uniform(400, 2600)), mc=round(r.uniform(0.05, 0.32), 2),
        wear_factor=1, mode=mode, diameter_mm=d, teeth=r.randint(1, 6),
        feed_per_tooth_mm=round(r.uniform(0.04, 0.25), 3),
        depth_mm=round(r.uniform(0.5, 15), 1),
        width_mm=d if mode == "slot" else round(d * r.uniform(0.05, 0.8), 1),
        helix_deg=0 if i % 5 == 0 else round(r.uniform(5, 45)),
        corner_deg=45 if i % 6 == 5 else 90,
        radial_ratio=round(r.uniform(0.2, 0.6), 2),
        lift_share=round(r.uniform(0.4, 1), 2),
        feed_direction_deg=0 if i % 3 else round(r.uniform(-180, 180)))
    if mode == "side":
        given["way"] = "up" if i % 8 == 1 else "climb"
    if mode == "face":
        given["offset_mm"] = round(d * r.uniform(-0.1, 0.1), 1)
    return given


def near(value, scale):
    value = 0 if abs(value) < 1e-11 * scale else value
    return "%.8g~%.2g" % (value, 1e-7 * scale)


def lines():
    yield "# SPDX-License-Identifier: GPL-3.0-or-later"
    yield "#"
    yield "# Milling: made by tests/reference/milling_quad.py (SciPy quadrature)."
    r = random.Random(20)
    for i in range(24):
        given = drawn(r, i)
        cut = Cut(**given)
        put = ["%s=%s" % item for item in given.items()
               if not (item[0] == "width_mm" and given["mode"] == "slot")]
        mean = cut.mean()
        peak = cut.largest(lambda f: math.hypot(f[0], f[1]))
        arm = math.hypot(cut.r, cut.depth_mm) / 1000
        want = ["mean_%s_%s=%s" % (n, "N" if k < 3 else "Nm",
                                   near(mean[k], peak * (1, arm)[k > 2]))
                for k, n in enumerate(NAMES)]
        want.append("peak_N=%.8g~0.001%%" % peak)
        for k, n in enumerate(NAMES):
            unit = "N" if k < 3 else "Nm"
            scale = 100 * peak * (1, arm)[k > 2]
            want.append("%s_low_%s=%s" % (
                n, unit, near(-cut.largest(lambda f: -f[k]), scale)))
            want.append("%s_high_%s=%s" % (
                n, unit, near(cut.largest(lambda f: f[k]), scale)))
        yield "\t".join(["milling"] + put + ["=>"] + want
                        + ["# SciPy quadrature, case %d" % i])
        # an instant that is no end of a tooth's way
        load = cut.at(cut.pitch * 5 / 13)
        want = ["%s_%s=%s" % (n, "N" if k < 3 else "Nm",
                              near(load[k], peak * (1, arm)[k > 2]))
                for k, n in enumerate(NAMES)]
        yield "\t".join(["milling_load"] + put + ["index=5", "count=13", "=>"]
                        + want + ["# SciPy quadrature, case %d" % i])


def main():
    if len(sys.argv) < 2:
        for line in lines():
            print(line)
        return
    with open(sys.argv[1], encoding="ascii") as f:
        have = f.read().splitlines()
    want = list(lines())
    bad = sum(a != b for a, b in zip(have, want)) + abs(len(have) - len(want))
    print("%d passed, %d failed" % (len(want) - bad, bad))
    sys.exit(bad > 0)


main()
