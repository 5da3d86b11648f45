#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The first frame and the memory of the program with a plan, against an empty
window: opening.py PROGRAM PLAN. Medians of 15 runs of each, by turns."""
import statistics
import subprocess
import sys
import time

RUNS = 15
MOST_TIMES_SLOWER = 1.8
MOST_TIMES_LARGER = 1.3


def open_once(words):
    start = time.monotonic()
    with subprocess.Popen(words, stdout=subprocess.PIPE, text=True) as program:
        program.stdout.readline()
        first_frame = time.monotonic() - start
        return first_frame, int(program.stdout.read())


def report(what, ratio, bar):
    print(f'{what}: {ratio:.2f} ×, bar {bar}: {"within" if ratio <= bar else "over"}')


def main():
    program, plan = sys.argv[1:]
    empty, full = [], []
    for _ in range(RUNS):
        empty.append(open_once([program]))
        full.append(open_once([program, plan]))
    (empty_s, empty_kb), (full_s, full_kb) = (
        [statistics.median(each) for each in zip(*runs)] for runs in (empty, full))
    print(f'empty {empty_s:.3f} s, {empty_kb / 1024:.1f} MB; '
          f'with a plan {full_s:.3f} s, {full_kb / 1024:.1f} MB')
    report('first frame against an empty window', full_s / empty_s, MOST_TIMES_SLOWER)
    report('memory against an empty window', full_kb / empty_kb, MOST_TIMES_LARGER)


main()
