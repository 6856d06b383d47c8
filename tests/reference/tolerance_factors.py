#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Factors of two-sided normal tolerance intervals, by another road than
lib/base/tolerance.c: the mean is integrated over by SciPy's adaptive quadrature,
chi-square and normal are SciPy's, and the roots are Brent's.

    tolerance_factors.py              prints tests/values/tolerance_factors.csv
    tolerance_factors.py FILE         puts each factor of it back, its last
                                      digit up and down

The last line of a comparison is "N passed, N failed".
"""
import sys

from scipy import integrate, optimize, stats

CASES = [(n, p, g)
         for n in (2, 3, 5, 10, 20, 43, 100, 1000)
         for p, g in ((0.90, 0.90), (0.95, 0.95), (0.90, 0.99), (0.99, 0.95),
                      (0.5, 0.5), (0.999, 0.9))]


def half_width(z, p):
    def miss(r):
        return stats.norm.cdf(z + r) - stats.norm.cdf(z - r) - p
    return optimize.brentq(miss, 0, z + 40, xtol=1e-14)


def confidence(k, n, p):
    def under(s):
        r = half_width(s / n**0.5, p)
        return 2 * stats.norm.pdf(s) * stats.chi2.sf((n - 1) * (r / k)**2,
                                                     n - 1)
    return integrate.quad(under, 0, 9, epsabs=1e-12, epsrel=1e-11,
                          limit=400)[0]


def factor(n, p, g):
    return optimize.brentq(lambda k: confidence(k, n, p) - g, 0.1, 1e4,
                           xtol=1e-11, rtol=1e-12)


def main():
    if len(sys.argv) == 1:
        print("# Two-sided normal tolerance factors; computed by\n"
              "# tests/reference/tolerance_factors.py (SciPy)\n"
              "n,proportion,confidence,factor")
        for n, p, g in CASES:
            print("%d,%g,%g,%.9f" % (n, p, g, factor(n, p, g)))
        return 0
    passed = failed = 0
    with open(sys.argv[1]) as file:
        for line in file:
            if line[0] in "#n":
                continue
            n, p, g, stored = (float(cell) for cell in line.split(","))
            step = 2e-9 + 1e-10 * stored
            under = confidence(stored - step, int(n), p)
            over = confidence(stored + step, int(n), p)
            if under < g < over:
                passed += 1
            else:
                failed += 1
                print("FAIL n %d, %.9f holds %g with confidence %.12f, not %g"
                      % (n, stored, p, (under + over) / 2, g))
    print("%d passed, %d failed" % (passed, failed))
    return failed > 0


if __name__ == "__main__":
    sys.exit(main())
