# SPDX-License-Identifier: GPL-3.0-or-later
"""A part on its fixture, three ways that share nothing with the library.

lp_margin    the definition as one linear program for HiGHS: friction by
             tangents of the round disc, added until none is violated, so from
             outside; supports that lift and come back by marching
dual_margin  where the normals do not depend on the cut: least work over sliding
             motions (a centre of rotation each), by search
simulate     springs with Coulomb friction at every contact, load grown in small
             steps until no equilibrium is found

A fixture is a dict: pads (x, y, mu, k, needed), clamps (x, y, z, P, px, py,
mu), stops (x, y, z, nx, ny), weight (W, x, y, z), cut (x, y, z, Fx, Fy, Fz, Mz),
in mm, N and N.mm. Supports are at height 0.
"""
import itertools
import math

import numpy as np
from scipy.optimize import linprog, minimize

TOP = 1e4


def wrench(p, f):
    return np.concatenate([f, np.cross(p, f)])


def loads(f):
    """Wrench of everything but the cut, and of the cut."""
    w0 = np.zeros(6)
    for x, y, z, P, px, py, _ in f["clamps"]:
        w0 += wrench((x, y, z), (px, py, -P))
    W, x, y, z = f["weight"]
    w0 += wrench((x, y, z), (0, 0, -W))
    x, y, z, fx, fy, fz, mz = f["cut"]
    w1 = wrench((x, y, z), (fx, fy, fz))
    w1[5] += mz
    return w0, w1


def bed(f, w):
    """Unilateral springs: normals, or None where they balance nothing."""
    g = np.array([(1, p[1], -p[0]) for p in f["pads"]], float)
    k = np.array([p[3] for p in f["pads"]], float)
    rhs = -w[2:5]
    on = np.ones(len(k), bool)
    for _ in range(200):
        G = (g[on] * k[on, None]).T @ g[on]
        u = np.linalg.lstsq(G, rhs, rcond=1e-12)[0]
        new = g @ u > 0
        if np.array_equal(new, on):
            break
        on = new
        if not on.any():
            return None
    N = np.where(on, k*(g @ u), 0)
    if np.abs(g.T @ N - rhs).max() > 1e-7*np.abs(rhs).max():
        return None
    return N


def one_program(f, w0, w1, on, low, needed, free=False, fixed=None):
    """Largest factor for one set of supports that carry (fixed: only look
    whether this factor is possible). Returns factor, normals, gaps or None."""
    pads, clamps, stops = f["pads"], f["clamps"], f["stops"]
    n, m, s = len(pads), len(clamps), len(stops)
    # factor, u (3), N (n), fx fy by pad, tx ty by clamp, R
    N0, F0, T0, R0 = 4, 4 + n, 4 + 3*n, 4 + 3*n + 2*m
    cols = R0 + s
    L, F = 100.0, max(1.0, sum(c[3] for c in clamps) + f["weight"][0])
    scale = np.array([F]*3 + [F*L]*3)
    Aeq = np.zeros((6, cols))
    Aeq[:, 0] = w1
    for i, p in enumerate(pads):
        at = (p[0], p[1], 0)
        Aeq[:, N0 + i] = wrench(at, (0, 0, F))
        Aeq[:, F0 + 2*i] = wrench(at, (F, 0, 0))
        Aeq[:, F0 + 2*i + 1] = wrench(at, (0, F, 0))
    for c, q in enumerate(clamps):
        Aeq[:, T0 + 2*c] = wrench(q[:3], (F, 0, 0))
        Aeq[:, T0 + 2*c + 1] = wrench(q[:3], (0, F, 0))
    for j, q in enumerate(stops):
        Aeq[:, R0 + j] = wrench(q[:3], (F*q[3], F*q[4], 0))
    rows, rhs = list(Aeq/scale[:, None]), list(-w0/scale)
    low_n, high_n = np.zeros(n), np.full(n, np.inf)
    Aub, bub = [], []
    for i, p in enumerate(pads):
        g = np.zeros(cols)
        g[1:4] = p[3]*np.array([1, p[1]/L, -p[0]/L])
        if free:
            continue
        if on[i]:
            g[N0 + i] = -1
            rows.append(g)
            rhs.append(0)
        else:
            high_n[i] = 0
            Aub.append(g)
            bub.append(0)
    bounds = [(low, TOP) if fixed is None else (fixed, fixed)] + [(None, None)]*3
    bounds += list(zip(low_n, high_n))
    for i, p in enumerate(pads):
        still = p[2] == 0 or not (on[i] or free)
        bounds += [(0, 0) if still else (None, None)]*2
    for q in clamps:
        bounds += [(0, 0) if q[6] == 0 else (None, None)]*2
    bounds += [(0, None)]*s
    discs = [(F0 + 2*i, N0 + i, p[2], 0) for i, p in enumerate(pads)
             if p[2] > 0 and (on[i] or free)]
    discs += [(T0 + 2*c, None, 0, q[6]*q[3]/F) for c, q in enumerate(clamps)
              if q[6] > 0]

    def tangent(disc, a):
        at, normal, mu, limit = disc
        row = np.zeros(cols)
        row[at], row[at + 1] = math.cos(a), math.sin(a)
        if normal is not None:
            row[normal] = -mu
        Aub.append(row)
        bub.append(limit)

    for disc in discs:
        for k in range(16):
            tangent(disc, 2*math.pi*k/16)
    cost = np.zeros(cols)
    cost[0] = -1
    for _ in range(40):
        r = linprog(cost, np.array(Aub) if Aub else None, bub or None,
                    np.array(rows), rhs, bounds, method="highs-ds",
                    options=dict(primal_feasibility_tolerance=1e-10,
                                 dual_feasibility_tolerance=1e-10))
        if r.status != 0:
            return None
        violated = 0
        for disc in discs:
            at, normal, mu, limit = disc
            most = limit if normal is None else mu*r.x[normal]
            have = math.hypot(r.x[at], r.x[at + 1])
            if have > most*(1 + 1e-9) + 1e-12:
                tangent(disc, math.atan2(r.x[at + 1], r.x[at]))
                violated += 1
        if not violated:
            break
    gap = np.array([p[3]*(r.x[1] + p[1]/L*r.x[2] - p[0]/L*r.x[3]) for p in pads])
    return r.x[0], r.x[N0:N0 + n], gap


def lp_margin(f, free=False):
    """Margin by definition, or None where the part does not rest."""
    w0, w1 = loads(f)
    N = bed(f, w0)
    if N is None: # side pulls that tip the part may be held by stops and toes
        N = bed(f, loads(dict(f, clamps=[c[:4] + (0, 0, c[6]) for c in f["clamps"]]))[0])
    if N is None:
        return None
    on = N > 1e-6*N.max()
    needed = np.array([p[4] == 2 or (p[4] == 1 and on[i])
                       for i, p in enumerate(f["pads"])])
    if one_program(f, w0, w1, on, 0, needed, free, fixed=0) is None:
        return None
    best, low, seen = None, 0.0, []
    while True:
        got = one_program(f, w0, w1, on, low, needed, free)
        if got is None or (best is not None and got[0] < best*(1 - 1e-9)):
            return best
        best = got[0]
        seen.append(on.tobytes())
        drop = on & ~needed & (got[1] <= 1e-8)
        add = ~on & (got[2] >= -1e-8)
        on = (on & ~drop) | add
        if free or not (drop.any() or add.any()) or on.tobytes() in seen:
            return best
        low = best*(1 - 1e-9)


def dual_margin(f):
    """Least factor over sliding motions; the normals must not change."""
    w0, w1 = loads(f)
    N = bed(f, w0)
    a = np.array([(w1[0], w1[1], w1[5]/100)])[0]
    b = np.array([w0[0], w0[1], w0[5]/100])
    places = [(p[0]/100, p[1]/100, p[2]*n) for p, n in zip(f["pads"], N)]
    places += [(c[0]/100, c[1]/100, c[6]*c[3]) for c in f["clamps"] if c[6] > 0]
    stops = [np.array([q[3], q[4], (q[0]*q[4] - q[1]*q[3])/100]) for q in f["stops"]]

    def work(v, smooth=0.0):
        total = -float(b @ v)
        for x, y, r in places:
            total += r*math.sqrt((v[0] - v[2]*y)**2 + (v[1] + v[2]*x)**2 + smooth)
        return total

    # motions on which the cut does unit work: v0 + B s
    v0 = a/(a @ a)
    B = np.linalg.svd(a[None, :])[2][1:].T
    allowed = lambda v: all(float(q @ v) >= -1e-10*np.linalg.norm(v) for q in stops)
    best = TOP

    def take(v):
        nonlocal best
        power = float(a @ v)
        if power > 1e-9*np.linalg.norm(v)*np.linalg.norm(a) and allowed(v/power):
            best = min(best, work(v/power))
            return True
        return False

    starts = []
    for x, y, _ in places: # turning about a contact
        for sign in (1, -1):
            v = sign*np.array([y, -x, 1.0])
            if take(v):
                starts.append(v/float(a @ v))
    for p, q in itertools.combinations(stops, 2): # two stops stay
        v = np.cross(p, q)
        for sign in (1, -1):
            if take(sign*v):
                starts.append(sign*v/float(a @ v)*sign)
    starts.append(v0)
    constraints = [dict(type="ineq", fun=lambda s, q=q: float(q @ (v0 + B @ s)),
                        jac=lambda s, q=q: q @ B) for q in stops]
    starts = starts[:8]
    for smooth in (1e-6, 1e-10, 1e-14):
        unit = (v0 @ v0)*smooth
        for k, start in enumerate(starts):
            r = minimize(lambda s: work(v0 + B @ s, unit)*1.0, B.T @ (start - v0),
                         method="SLSQP", constraints=constraints,
                         options=dict(maxiter=300, ftol=1e-13))
            v = v0 + B @ r.x
            if take(v):
                starts[k] = v
    # polish without constraints in the way
    def free(s):
        v = v0 + B @ s
        return work(v) if allowed(v) else 1e9
    start = min(starts, key=lambda v: free(B.T @ (v - v0)))
    r = minimize(free, B.T @ (start - v0), method="Nelder-Mead",
                 options=dict(xatol=1e-14, fatol=1e-12, maxiter=2000, maxfev=4000))
    take(v0 + B @ r.x)
    return best


def simulate(f, kn=1e5, top=12.0):
    """Factor at which springs with Coulomb friction find no equilibrium, and
    the factor at which the first support slips: (None, reason) where it does
    not rest or does not go."""
    L = 100.0
    pads, clamps, stops = f["pads"], f["clamps"], f["stops"]
    held = [c for c in clamps if c[6] > 0]

    def moves(at):
        x, y, z = np.array(at[:3])/L
        return np.array([[1, 0, 0, 0, z, -y], [0, 1, 0, -z, 0, x], [0, 0, 1, y, -x, 0]],
                        float)
    J = np.array([moves((p[0], p[1], 0)) for p in pads])
    Jh = np.array([moves(c) for c in held]) if held else np.zeros((0, 3, 6))
    Js = np.array([np.array([q[3], q[4], 0]) @ moves(q) for q in stops]) \
        if stops else np.zeros((0, 6))
    k = np.array([p[3] for p in pads])*kn
    mu = np.array([p[2] for p in pads])
    kt = np.concatenate([0.8*k, np.full(len(held), 0.3*kn)])
    cap = np.array([c[6]*c[3] for c in held])
    JT = np.concatenate([J, Jh])[:, :2, :]
    w0, w1 = loads(f)
    w0, w1 = w0.astype(float), w1.astype(float)
    w0[3:] /= L
    w1[3:] /= L
    size = np.abs(w0).max()

    def contact(q, slip):
        down = -(J[:, 2, :] @ q)
        N = k*np.maximum(0, down)
        d = JT @ q
        trial = -kt[:, None]*(d - slip)
        limit = np.concatenate([mu*N, cap])
        have = np.hypot(trial[:, 0], trial[:, 1])
        slides = have > limit
        with np.errstate(divide="ignore", invalid="ignore"):
            t = np.where(have[:, None] > 0, trial/have[:, None], 0)
        force = np.where(slides[:, None], limit[:, None]*t, trial)
        return N, down, force, trial, have, t, limit, slides

    def residual(q, slip, w):
        N, down, force, trial, have, t, limit, slides = contact(q, slip)
        r = w.copy()
        r += J[:, 2, :].T @ N
        r += np.einsum("nij,ni->j", JT, force)
        K = np.zeros((6, 6)) # -dr/dq
        on = down > 0
        Jz = J[:, 2, :]
        K += (Jz[on]*k[on, None]).T @ Jz[on]
        for i in range(len(kt)):
            if not slides[i]:
                K += kt[i]*JT[i].T @ JT[i]
                continue
            if have[i] > 0:
                P = np.eye(2) - np.outer(t[i], t[i])
                K += limit[i]*kt[i]/have[i]*JT[i].T @ P @ JT[i]
            if i < len(pads) and on[i]: # limit changes with the normal
                K += mu[i]*k[i]*np.outer(JT[i].T @ t[i], Jz[i])
        for j in Js:
            into = -float(j @ q)
            if into > 0:
                r += kn*into*j
                K += kn*np.outer(j, j)
        return r, K, force, slides

    def settle(q, slip, w):
        q = q.copy()
        for _ in range(60):
            r, K, force, slides = residual(q, slip, w)
            if np.abs(r).max() < 1e-9*size:
                d = JT @ q
                return q, np.where(slides[:, None], d + force/kt[:, None], slip), slides
            try:
                step = np.linalg.solve(K, r)
            except np.linalg.LinAlgError:
                return None
            if not np.isfinite(step).all() or np.abs(step).max() > 1e3:
                return None
            q += step
        return None

    q, slip = np.zeros(6), np.zeros((len(kt), 2))
    q[2] = -size/k.sum()
    for part in np.arange(1, 11)/10:
        got = settle(q, slip, part*w0)
        if got is None:
            return None, "rest"
        q, slip, _ = got
    factor, step, first = 0.0, 0.05, None
    while factor < top:
        got = settle(q, slip, w0 + (factor + step)*w1)
        if got is None:
            step /= 2
            if step < 2e-4:
                return factor, first
            continue
        q, slip, slides = got
        factor += step
        if first is None and slides[:len(pads)].any():
            first = factor
    return None, "does not go"


def lines(f, required=2.0):
    """The fixture for tests/hold/hold_lines."""
    out = ["in required_margin %.17g" % required, "in support_least_N 0"]
    for x, y, mu, k, needed in f["pads"]:
        out.append("support %.17g %.17g 0 %.17g %.17g %d" % (x, y, mu, 1e5*k, needed))
    for x, y, z, P, px, py, mu in f["clamps"]:
        out.append("clamp %.17g %.17g %.17g %.17g 0 %.17g %.17g %.17g %.17g %.17g"
                   % (x, y, z, P, px, px, py, py, mu))
    for x, y, z, nx, ny in f["stops"]:
        out.append("stop %.17g %.17g %.17g %.17g" % (x, y, z,
                                                    math.degrees(math.atan2(ny, nx))))
    out.append("weight %.17g %.17g %.17g %.17g" % f["weight"])
    x, y, z, fx, fy, fz, mz = f["cut"]
    out.append("load %.17g %.17g %.17g %.17g %.17g %.17g 0 0 %.17g"
               % (x, y, z, fx, fy, fz, mz/1000))
    return out


def random_fixture(rng, kind, needed=1):
    """flat: all in one plane, the cut too; height: cut, stops and toes above it;
    held: the same with friction at the toes."""
    high = kind != "flat"
    u = rng.uniform
    width, depth = u(80, 400), u(60, 300)
    pads = [(u(0, width), u(0, depth), u(0.08, 0.3), math.exp(u(-0.7, 0.7)), needed)
            for _ in range(rng.integers(3, 9))]
    cx = sum(p[0] for p in pads)/len(pads)
    cy = sum(p[1] for p in pads)/len(pads)
    clamps = []
    for _ in range(rng.integers(2, 5)):
        # somewhere among the supports
        share = rng.dirichlet(np.ones(len(pads)))
        x = sum(s*p[0] for s, p in zip(share, pads))
        y = sum(s*p[1] for s, p in zip(share, pads))
        P, a = u(500, 4000), u(0, 2*math.pi)
        pull = u(0, 0.04)*P
        clamps.append((x, y, u(10, 40) if high else 0.0, P, pull*math.cos(a),
                       pull*math.sin(a), u(0.05, 0.2) if kind == "held" else 0.0))
    stops = []
    for _ in range(rng.integers(0, 4)):
        a = u(0, 2*math.pi) # from the middle outward, pushing back
        d = 0.6*max(width, depth)
        b = a + u(-0.3, 0.3)
        stops.append((cx + d*math.cos(a), cy + d*math.sin(a), u(5, 25) if high else 0.0,
                      -math.cos(b), -math.sin(b)))
    a, force = u(0, 2*math.pi), u(300, 1200)
    cut = (u(0, width), u(0, depth), u(10, 60) if high else 0.0, force*math.cos(a),
           force*math.sin(a), u(-0.2, 0.5)*force if high else 0.0,
           u(-10, 10)*1000)
    return dict(pads=pads, clamps=clamps, stops=stops,
                weight=(u(5, 100), cx, cy, 15.0 if high else 0.0), cut=cut)
