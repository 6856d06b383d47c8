#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The library's trials of a strap against those of spread_trials.py.

Asks the command (`strap --vary all --scatter ...`) and NumPy for the same
straps with other draws, and compares the quantiles of preload, toe force and
side pull, and the shares of the trials that slide, walk or fail. The two share
the formulas of the strap, written twice, but neither draws, distributions nor
quantiles.

Allowed: four standard errors of the difference of two quantiles by chance,
sqrt(2 p (1 - p)/n) over the density there, the density taken from NumPy's
sample (between the quantiles p - 0.004 and p + 0.004); of a share
sqrt(2 q (1 - q)/n). Where many trials stand on one value, such as a side pull
of 0, the density is infinite and a millionth of the preload is allowed. Seeds as
they stand: 1 for the first case, 2 for the next, here and there. (The same seed
for all was tried first; then the cases have their preloads in common and one
odd quantile is counted fifteen times.) Of some 150 numbers one in a hundred runs
would exceed four standard errors by chance; their mean square must also be what
chance makes it, 0.6 to 1.5.
"""
import argparse
import json
import math
import subprocess
import sys

import numpy as np

import spread_trials

Z = 1.959963984540054
N = 400000
# name, what differs from the defaults of spread_trials.py
CASES = [
    ("3 degrees, flat", {}),
    ("3 degrees, dished", dict(seat="dished")),
    ("preload alone, flat", dict(vary="preload", foot="held")),
    ("preload alone, dished", dict(vary="preload", foot="held", seat="dished")),
    ("heel low", dict(tilt_deg=-2.0, foot="held")),
    ("level", dict(tilt_deg=0.0)),
    ("thread play", dict(play_deg=1.07)),
    ("on the rim", dict(torque_Nm=4.8, length_mm=60.0)),
    ("rocking foot, slope", dict(foot="rocking", strap="full", vary="preload")),
    ("rigid", dict(strap="rigid", play_deg=0.5)),
    ("slides and walks", dict(tilt_deg=5.0, mu_toe=0.04, mu_heel=0.03, mu_heel_high=0.06)),
    ("beyond the dished seat", dict(seat="dished", tilt_deg=5.0)),
    ("tool and factor apart", dict(sigma_tool=math.atanh(0.06)/Z,
                                   sigma_factor=math.atanh(0.20)/Z,
                                   prevailing_torque_Nm=3.0)),
    ("some tip", dict(a_mm=5.0, tilt_deg=-2.0, height_mm=2.0/Z)),
    ("90 of 100", dict(coverage=0.9, height_mm=2.0/Z)),
]


def question(p, seed):
    """Options of the command for one strap."""
    p = {**spread_trials.DEFAULTS, **p}
    pct = lambda sigma: "%.12g%%" % (100*math.tanh(sigma*Z))
    o = ["--thread", "M12", "--torque", "%.12gN.m" % p["torque_Nm"],
         "--nut-factor", "%.12g" % p["nut_factor"],
         "--stud-to-toe", "%.12gmm" % p["a_mm"], "--stud-to-heel", "%.12gmm" % p["b_mm"],
         "--tilt", "%.12gdeg" % p["tilt_deg"], "--part-height", "40mm",
         "--strap-thickness", "%.12gmm" % p["t_mm"], "--strap-width",
         "%.12gmm" % p["width_mm"], "--slot-width", "0mm", "--nose", "ball",
         "--stud-length", "%.12gmm" % p["length_mm"],
         "--rim-radius", "%.12gmm" % p["rim_mm"], "--mu-toe", "%.12g" % p["mu_toe"],
         "--mu-heel", "%.12g" % p["mu_heel"], "--mu-heel-high", "%.12g" % p["mu_heel_high"],
         "--thread-play", "%.12gdeg" % p["play_deg"], "--seat-slip", "%.12g" % p["slip"],
         "--strap", p["strap"], "--vary", p["vary"], "--coverage", "%.12g" % p["coverage"],
         "--height-scatter", "%.12gmm" % (p["height_mm"]*Z),
         "--published-coverage", "0.95", "--trials", str(N), "--seed", str(seed),
         "--threads", "2"]
    if p["seat"] == "dished":
        o += ["--seat", "spherical", "--sphere-radius", "%.12gmm" % p["sphere_mm"],
              "--mu-sphere", "%.12g" % p["mu_sphere"],
              "--permitted-tilt", "%.12gdeg" % p["permitted_deg"]]
    if p["foot"] != "open":
        o += ["--foot", p["foot"]]
    if p["prevailing_torque_Nm"]:
        o += ["--prevailing-torque", "%.12gN.m" % p["prevailing_torque_Nm"]]
    if p["sigma_tool"]:
        return o + ["--tool-scatter", pct(p["sigma_tool"]),
                    "--factor-scatter", pct(p["sigma_factor"])]
    return o + ["--scatter", pct(p["sigma_factor"])]


def ask(program, p, seed):
    run = subprocess.run([program, "strap", "--json"] + question(p, seed),
                         capture_output=True, text=True, check=False)
    if run.returncode != 0:
        sys.exit("compare_spread: " + run.stderr.strip())
    return json.loads(run.stdout)["spread"]


def quantile_differences(got, name, sample, c, tiny):
    """Differences in standard errors, of low, median and high."""
    out = []
    for key, p in (("_low_N", (1 - c)/2), ("_N", 0.5), ("_high_N", (1 + c)/2)):
        below, want, above = np.quantile(sample, (p - 0.004, p, p + 0.004))
        error = math.sqrt(2*p*(1 - p)/N)*(above - below)/0.008
        off = got[name + key] - want
        out.append(off/error if error > tiny else 0.0 if abs(off) <= tiny else math.inf)
    return out


def share_difference(got, want, n):
    q = (got + want)/2
    error = math.sqrt(2*q*(1 - q)/n)
    return 0.0 if got == want else (got - want)/error


def differences(program, p, seed):
    got = ask(program, p, seed)
    preload, toe, pull, slides, walks, failed = spread_trials.trials(p, N, seed)
    c = {**spread_trials.DEFAULTS, **p}["coverage"]
    tiny = 1e-6*float(np.median(preload))
    out = {}
    for name, sample in (("preload", preload), ("toe_force", toe), ("side_pull", pull)):
        for end, off in zip(("low", "median", "high"),
                            quantile_differences(got, name, sample, c, tiny)):
            out[name + " " + end] = off
    out["slides"] = share_difference(got["slides_share"], slides.mean(), N)
    out["walks"] = share_difference(got["walks_share"], walks.mean(), N)
    out["failed"] = share_difference(got["failed"]/N, failed/N, N)
    return out, dict(slides=slides.mean(), walks=walks.mean(), failed=failed/N)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--strapwise", required=True)
    parser.add_argument("--all", action="store_true", help="print every number")
    args = parser.parse_args()
    passed = failed = 0
    every, seen = [], dict(slides=0.0, walks=0.0, failed=0.0)
    for seed, (name, p) in enumerate(CASES, 1):
        off, shares = differences(args.strapwise, p, seed)
        worst = max(off, key=lambda k: abs(off[k]))
        ok = abs(off[worst]) <= 4
        passed += ok
        failed += not ok
        every += [v for v in off.values() if v != 0]
        for key, share in shares.items():
            seen[key] = max(seen[key], min(share, 1 - share))
        print("%s %-24s largest %+5.2f standard errors, %s" % (
            "ok  " if ok else "FAIL", name, off[worst], worst))
        if args.all or not ok:
            print("     " + "  ".join("%s %+.2f" % item for item in off.items()))
    square = sum(v*v for v in every)/len(every)
    print("%d numbers, mean square %.2f; shares seen up to %s" % (
        len(every), square, {k: round(float(v), 3) for k, v in seen.items()}))
    if len(every) < 100 or not 0.6 < square < 1.5 or min(seen.values()) <= 0:
        print("not what chance makes, or too poor a set")
        failed += 1
    print("%d passed, %d failed" % (passed, failed))
    return failed > 0


if __name__ == "__main__":
    sys.exit(main())
