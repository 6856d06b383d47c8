#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Trials of one strap in NumPy: the closed chain of lib/clamp, vectorised.

The formulas are those of lib/clamp/strap.c, seat.c and strap_draw.c, written
again for arrays; generator and normal draws are NumPy's. So it is a check on
how the library draws and takes quantiles, and what `make bench` runs against;
an independent model of the strap is strap_planar.py.

One kind of strap: ball nose, block for a heel without a land, a nut that turns;
seat flat or dished, foot open, held or rocking, strap rigid or bending.

    chain(params, n, seed) -> dict of quantiles; params change DEFAULTS
"""
import json
import math
import sys

import numpy as np

STEEL = 205000.0
PIECE = 20000                 # trials at a time, so that they stay in the cache

# M12, 3 degrees, as in tests/clamp/strap_question.h; the nut by K = 0.2
DEFAULTS = dict(
    torque_Nm=24.0, nut_factor=0.2, nominal_mm=12.0, prevailing_torque_Nm=0.0,
    sigma_tool=0.0, sigma_factor=math.atanh(0.25)/1.959963984540054,
    height_mm=0.5/1.959963984540054,            # standard deviation
    a_mm=30.0, b_mm=60.0, tilt_deg=3.0, t_mm=16.0, width_mm=32.0,
    d3_mm=9.852978686, length_mm=80.0, rim_mm=9.5, mu_toe=0.15, mu_heel=0.15,
    mu_heel_high=0.20, give_toe=1/430e3, give_heel=1/430e3, play_deg=0.0,
    slip=0.05, seat="flat", sphere_mm=17.0, mu_sphere=0.12, permitted_deg=3.0,
    foot="open", strap="bending", vary="all", coverage=0.95)

RIM_PASSES = 8
PASSES = 60


def stick_ratio(u):
    T = np.tanh(u/2)
    return np.where(u < 0.02, 6/(u*u)*(1 + 11*u*u/60), (u - T)/(u - 2*T))


def tanh_lag(u):
    return np.where(u < 0.02, u**3/3*(1 - 0.4*u*u), u - np.tanh(u))


class Stud:
    """A beam under tension, foot held or rocking, one per trial."""

    def __init__(self, F, EI, length, rim, play, slip, rocking):
        self.F, self.EI, self.length, self.rim = F, EI, length, rim
        self.play, self.most, self.rocking = play, np.arctan(slip), rocking
        self.k = np.sqrt(F/EI)
        self.u = self.k*length
        self.tanh, self.sinh, self.cosh = np.tanh(self.u), np.sinh(self.u), np.cosh(self.u)
        self.stick, self.lag = stick_ratio(self.u), tanh_lag(self.u)

    def part(self, at):
        """The trials at these places."""
        s = object.__new__(Stud)
        for name, value in vars(self).items():
            setattr(s, name, value[at] if isinstance(value, np.ndarray) else value)
        return s

    def rim_moment(self, alpha, lean):
        return self.F*self.rim*(np.cos(alpha) + np.sin(alpha)*np.tan(lean))

    def lie_flat(self, phi):
        EIk = self.EI*self.k
        turn = np.maximum(0, phi - self.play)
        ratio = np.where(self.rocking, self.u/self.lag, self.stick)
        lean = phi - np.minimum(self.most, phi + turn*(ratio - 1))
        held = EIk*((phi - self.play - lean)/self.tanh + lean/self.sinh)
        rocking = EIk*(phi - self.play - lean)*self.tanh
        return lean, np.maximum(0, np.where(self.rocking, rocking, held))

    def on_rim(self, phi, lean):
        EIk = self.EI*self.k
        alpha = phi - self.play
        for _ in range(RIM_PASSES):
            M = self.rim_moment(alpha, lean)
            grip = np.where(self.rocking, M/(self.F*self.length),
                            M/self.F*self.k*(1 - 1/self.cosh)/self.lag)
            lean = phi - np.minimum(self.most, phi + grip)
            alpha = lean + np.where(self.rocking, M/(EIk*self.tanh),
                                    self.tanh*(M/EIk - lean/self.sinh))
        return lean, M, self.rim*(np.cos(alpha)*np.tan(phi) - np.sin(alpha))

    def press(self, phi):
        """Lean and line of the seat's force, way of the nut, its lift."""
        lean, M = self.lie_flat(phi)
        lift = np.zeros_like(phi)
        edge = np.flatnonzero(M > self.rim_moment(phi - self.play, lean))
        if edge.size:
            lean[edge], M[edge], lift[edge] = self.part(edge).on_rim(phi[edge], lean[edge])
        foot = np.where(self.rocking, 0, M/self.cosh + self.EI*self.k*lean*self.tanh)
        level = phi <= 0
        arm = np.where(level, 0, self.length*np.tan(lean) - foot/self.F)
        travel = np.where(level, 0, arm + M/self.F)
        return np.where(level, 0, lean), arm, travel, np.where(level, 0, lift)


class Strap:
    """The strap's own shape and bending."""

    def __init__(self, p):
        self.a, self.b, self.t = p["a_mm"], p["b_mm"], p["t_mm"]
        self.L = self.a + self.b
        self.EI = STEEL*p["width_mm"]*self.t**3/12
        self.rigid = p["strap"] == "rigid"
        self.rim = p["rim_mm"]
        own = 0 if self.rigid else 4*self.t**2/(12*self.EI)
        self.give_toe = p["give_toe"] + own*self.a
        self.give = p["give_heel"] + own*self.b + self.give_toe

    def sag(self, F, x, c):
        far = x > c
        x, c = np.where(far, self.L - x, x), np.where(far, self.L - c, c)
        d = self.L - c
        return F*d*x*(self.L**2 - d*d - x*x)/(6*self.L)

    def slope(self, F, nut, load):
        c = np.clip(load, 0, self.L)
        return (self.sag(F, nut - self.rim, c) - self.sag(F, nut + self.rim, c))/(
            2*self.rim*self.EI)


def press_strap(p, strap, stud, F, theta, extra_load, extra_place, slope):
    """Force of the stud on the strap: along the table, place, height."""
    permitted = math.radians(p["permitted_deg"]) if p["seat"] == "dished" else 0
    tangent = np.tan(theta)

    def once(stud, F, at_nut, load, place):
        sign = np.where(at_nut < 0, -1.0, 1.0)
        lean, arm, travel, lift = stud.press(np.maximum(0, np.abs(at_nut) - permitted))
        return (-sign*F*np.tan(lean) + load*F, strap.b + sign*arm + place,
                sign*travel, lift)

    X, x, travel, lift = once(stud, F, theta, extra_load, extra_place)
    moving = np.flatnonzero(slope)
    own, pace = np.zeros(moving.size), np.ones(moving.size)
    before = np.full(moving.size, np.inf)
    for _ in range(PASSES):
        if not moving.size:
            break
        change = strap.slope(F[moving], strap.b + travel[moving], x[moving]) - own
        keep = np.abs(change) > 1e-13
        moving, own, pace, before, change = (
            v[keep] for v in (moving, own, pace, before, change))
        pace = np.where(np.abs(change) > 0.5*before, pace/2, pace)
        before = np.abs(change)
        own = own + pace*change
        X[moving], x[moving], travel[moving], lift[moving] = once(
            stud.part(moving), F[moving], theta[moving] - own, extra_load[moving],
            extra_place[moving])
    y = strap.t/np.cos(theta) - strap.b*tangent - travel*tangent + lift
    return X, x, y


def balance(p, strap, F, theta, X, x, y, mu_heel):
    """Toe force, heel force, side pull, what is unheld, whether it jams."""
    b = np.clip(x, 0, strap.L)
    spread = 0 if strap.rigid else F*(strap.L - b)*b*strap.t/(4*strap.EI)
    wants = (spread - X*strap.give_toe)/strap.give
    y_toe = -strap.L*np.tan(theta)
    moment = F*x + X*y
    S = np.zeros_like(F)

    def surplus(S):
        toe = (moment + S*y_toe)/strap.L
        heel = np.maximum(F - toe, 0)*mu_heel
        free = -X - np.clip(wants, -heel, heel)
        cap = p["mu_toe"]*np.maximum(toe, 0)
        return np.clip(free, -cap, cap) - S

    for _ in range(PASSES):
        rest = surplus(S)
        S += rest
        if np.all(np.abs(rest) <= 1e-14*F):
            break
    jammed = np.abs(surplus(S)) > 1e-12*F
    toe = (moment + S*y_toe)/strap.L
    heel = F - toe
    cap = mu_heel*np.maximum(heel, 0)
    unheld = -X - S - np.clip(-X - S, -cap, cap)
    return toe, heel, S, np.abs(unheld) >= 1e-12*F, jammed


def piece(p, n, rng):
    """n trials: preload, toe force, side pull, flags."""
    strap = Strap(p)
    every = p["vary"] == "all"
    bends = not strap.rigid
    T, T0 = p["torque_Nm"], p["prevailing_torque_Nm"]
    turning = T*np.exp(p["sigma_tool"]*rng.standard_normal(n)) - T0
    F = np.maximum(turning, 0)*1000/(p["nut_factor"]*p["nominal_mm"])*np.exp(
        -p["sigma_factor"]*rng.standard_normal(n))
    zero = np.zeros(n)
    tangent = np.full(n, math.tan(math.radians(p["tilt_deg"])))
    slip, play, load, place = zero, zero, zero, zero
    rocking = np.full(n, p["foot"] == "rocking")
    slope = np.full(n, p["strap"] == "full")
    mu_heel = np.full(n, p["mu_heel"])
    if every:
        tangent += p["height_mm"]/strap.L*rng.standard_normal(n)
        slip = p["slip"]*rng.random(n)
        play = math.radians(p["play_deg"])*rng.random(n)
        mu_heel = max(p["mu_heel"], p["mu_heel_high"])*rng.random(n)
        if p["seat"] == "dished":
            load = 0.01*rng.uniform(-1, 1, n)
            place = p["mu_sphere"]*p["sphere_mm"]*rng.uniform(-1, 1, n)
        if p["foot"] == "open":
            rocking = rng.random(n) < 0.5
        if bends:
            slope = rng.random(n) < 0.5
    # no preload, no force; a tiny one keeps the formulas finite
    none = F <= 0
    F = np.where(none, 1e-3, F)
    theta = np.arctan(tangent)
    stud = Stud(F, STEEL*math.pi*p["d3_mm"]**4/64, p["length_mm"], p["rim_mm"], play,
                slip, rocking)
    X, x, y = press_strap(p, strap, stud, F, theta, load, place, slope)
    toe, heel, S, walks, jammed = balance(p, strap, F, theta, X, x, y, mu_heel)
    slides = (S != 0) & (np.abs(S) >= p["mu_toe"]*toe*(1 - 1e-9))
    failed = ~none & (jammed | ~(toe > 0) | ~(heel > 0))
    force = ~none
    return np.where(none, 0, F), toe*force, S*force, slides & force, walks & force, failed


def trials(params, n, seed, at_a_time=PIECE):
    """Preload, toe force, side pull, slides, walks of the trials that stand, and
    how many do not."""
    p = {**DEFAULTS, **params}
    rng = np.random.Generator(np.random.SFC64(seed))
    got = [piece(p, min(at_a_time, n - i), rng) for i in range(0, n, at_a_time)]
    *values, failed = (np.concatenate(v) for v in zip(*got))
    if failed.any():
        values = [v[~failed] for v in values]
    return (*values, int(np.count_nonzero(failed)))


def chain(params, n, seed, at_a_time=PIECE):
    """Low, median and high of preload, toe force and side pull."""
    preload, toe, pull, slides, walks, failed = trials(params, n, seed, at_a_time)
    c = {**DEFAULTS, **params}["coverage"]
    at = ((1 - c)/2, 0.5, (1 + c)/2)
    return dict(preload_N=np.quantile(preload, at), toe_force_N=np.quantile(toe, at),
                side_pull_N=np.quantile(pull, at), slides_share=slides.mean(),
                walks_share=walks.mean(), trials=toe.size, failed=failed)


def main():
    n = int(float(sys.argv[1])) if len(sys.argv) > 1 else 1000000
    for seat in "flat", "dished":
        out = chain({"seat": seat}, n, 1)
        print(json.dumps({"seat": seat, **{k: v.tolist() if hasattr(v, "tolist") else v
                                           for k, v in out.items()}}))
    return 0


if __name__ == "__main__":
    sys.exit(main())
