#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Margins of a fixture of 12 supports, 4 clamps and 3 stops over a path.

hold.py lines KIND POINTS   the fixture for tests/hold/hold_lines; KIND is high
                            (stops and cut above the supports) or flat
hold.py linprog KIND POINTS processor seconds for the same margins with SciPy's linprog
                            (HiGHS): the same linear program with the same
                            polygons, built once, the cut's column exchanged;
                            then the least margin
"""
import math
import sys
import time

SIDES, TOP = 32, 1e4


def fixture(kind, points):
    high = kind == "high"
    pads = [(100*(i % 4), 90*(i//4), 0.12 + 0.005*i) for i in range(12)]
    clamps = [(x, y, 20 if high else 0, 3000)
              for x, y in ((50, 45), (250, 45), (50, 135), (250, 135))]
    stops = [(x, y, 12 if high else 0, a)
             for x, y, a in ((50, -5, 90), (250, -5, 90), (-5, 90, 0))]
    loads = []
    for k in range(points):
        a = 2*math.pi*k/37
        loads.append((20 + 260*k/points, 90 + 60*math.sin(0.11*k), 30 if high else 0,
                      600*math.cos(a), 600*math.sin(a), 60 if high else 0,
                      4000*math.sin(k)))
    return pads, clamps, stops, (60, 150, 90, 15 if high else 0), loads


def lines(kind, points):
    pads, clamps, stops, weight, loads = fixture(kind, points)
    print("in depth margin")
    for p in pads:
        print("support %g %g 0 %g" % p)
    for c in clamps:
        print("clamp %g %g %g %g" % c)
    for s in stops:
        print("stop %g %g %g %g" % s)
    print("weight %g %g %g %g" % weight)
    for x, y, z, fx, fy, fz, mz in loads:
        print("load %.17g %.17g %.17g %.17g %.17g %.17g 0 0 %.17g"
              % (x, y, z, fx, fy, fz, mz/1000))
    print("time\nsolve")


def linprog_seconds(kind, points):
    import numpy as np
    from scipy.optimize import linprog
    pads, clamps, stops, weight, loads = fixture(kind, points)
    F, L = 12060.0, 150.0

    def wrench(x, y, z, fx, fy, fz):
        at, f = np.array((x - 150, y - 90, z))/L, np.array((fx, fy, fz))/F
        return np.concatenate([f, np.cross(at, f)])
    n = len(pads)
    cols = 4 + n*SIDES + len(stops)
    A = np.zeros((6, cols))
    disc = np.zeros((n, cols))
    g = np.array([(1, (y - 90)/L, -(x - 150)/L) for x, y, _ in pads])
    A[2:5, 1:4] = g.T @ g
    turn = math.atan2(loads[0][4], loads[0][3])
    for i, (x, y, mu) in enumerate(pads):
        disc[i, 1:4] = -g[i]
        for k in range(SIDES):
            a = turn + 2*math.pi*k/SIDES
            at = 4 + i*SIDES + k
            A[:, at] = wrench(x, y, 0, F*mu*math.cos(a), F*mu*math.sin(a), 0)
            disc[i, at] = 1
    for j, (x, y, z, a) in enumerate(stops):
        A[:, 4 + n*SIDES + j] = wrench(x, y, z, F*math.cos(math.radians(a)),
                                       F*math.sin(math.radians(a)), 0)
    w0 = wrench(*weight[1:], 0, 0, -weight[0])
    for x, y, z, P in clamps:
        w0 += wrench(x, y, z, 0, 0, -P)
    columns = []
    for x, y, z, fx, fy, fz, mz in loads:
        w = wrench(x, y, z, fx, fy, fz)
        w[5] += mz/F/L
        columns.append(w)
    cost = np.zeros(cols)
    cost[0] = -1
    bounds = [(0, TOP)] + [(None, None)]*3 + [(0, None)]*(cols - 4)
    zero = np.zeros(n)
    least = TOP
    start = time.process_time()
    for w in columns:
        A[:, 0] = w
        least = min(least, linprog(cost, disc, zero, A, -w0, bounds,
                                   method="highs").x[0])
    return time.process_time() - start, least


if __name__ == "__main__":
    what, kind, points = sys.argv[1], sys.argv[2], int(sys.argv[3])
    if what == "lines":
        lines(kind, points)
    else:
        print("%.6f %.6f" % linprog_seconds(kind, points))
