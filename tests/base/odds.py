#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# odds.py PRINT-ODDS: chances of counts are those SciPy finds, for fitted
# shares, beta-binomial and binomial counts.
import subprocess
import sys

from scipy.stats import beta, betabinom, binom

NEAR = 1e-8


def said(*words):
    done = subprocess.run([sys.argv[1], *map(str, words)], check=True, text=True,
                          stdout=subprocess.PIPE)
    return [float(number) for number in done.stdout.split()]


def misses(ours, theirs):
    return max(abs(one - other) for one, other in zip(ours, theirs, strict=True))


def fitted():
    for low, high in ((0.6, 0.9), (0.75, 0.95), (0.05, 0.2), (0.01, 0.98), (0.5, 0.52)):
        a, b = said('fit', low, high)
        yield misses([low, high], beta.ppf([0.1, 0.9], a, b))


def counted():
    for n in (1, 12, 37, 240):
        for a, b in ((1, 1), (6, 3), (0.4, 2.2), (55, 11)):
            yield misses(said('beta-binomial', n, a, b), betabinom.pmf(range(n + 1), n, a, b))
        yield misses(said('binomial', n, 0.5), binom.pmf(range(n + 1), n, 0.5))


def report(number, name, found):
    worst = max(found)
    print(f"{'ok' if worst < NEAR else 'not ok'} {number} - {name}, within {worst:.1g}")
    return worst < NEAR


print('1..2')
passed = [report(1, 'shares fitted to their ends', fitted()),
          report(2, 'chances of counts', counted())]
sys.exit(not all(passed))
