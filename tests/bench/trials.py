#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Seconds for 1e6 trials through one strap in NumPy, quantiles included, the
smallest of a few runs: all trials as one array, and in pieces of 20,000 that
stay in the cache. One line for each seat."""
import os
import sys
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)),
                                "..", "reference"))
import spread_trials  # noqa: E402

TRIALS, RUNS = 1000000, 3


def seconds(seat, at_a_time):
    best = 1e9
    for seed in range(RUNS):
        start = time.perf_counter()
        spread_trials.chain({"seat": seat}, TRIALS, seed, at_a_time)
        best = min(best, time.perf_counter() - start)
    return best


for name, seat in ("flat", "flat"), ("spherical", "dished"):
    print("%s %.4f %.4f" % (name, seconds(seat, TRIALS),
                            seconds(seat, spread_trials.PIECE)))
