# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# What the lint tests share: the files of the tree, and how they report.
import os
import subprocess
import sys
from pathlib import Path

TOP = Path(__file__).resolve().parents[2]


def files_under(*folders, suffixes=()):
    """The files below the folders, as paths from the top, in order."""
    for folder in folders:
        for place, inner, names in os.walk(TOP / folder):
            inner[:] = sorted(name for name in inner if name != '__pycache__')
            for name in sorted(names):
                if not suffixes or name.endswith(tuple(suffixes)):
                    yield (Path(place) / name).relative_to(TOP)


def text_of(path):
    return (TOP / path).read_text(encoding='utf-8')


def complaints_of(*command, **options):
    """What a validator says about a file it does not like."""
    done = subprocess.run(command, cwd=TOP, text=True, stdout=subprocess.PIPE,
                          stderr=subprocess.STDOUT, check=False, **options)
    if done.returncode == 0:
        return []
    return done.stdout.strip().splitlines() or [f'{command[0]} says no']


def report(cases):
    """Prints (name, faults) pairs as TAP, the faults as errors, and ends."""
    cases = [(name, list(faults)) for name, faults in cases]
    print(f'1..{len(cases)}')
    for number, (name, faults) in enumerate(cases, 1):
        print(f"{'not ok' if faults else 'ok'} {number} - {name}")
        for fault in faults:
            print(f'{name}: {fault}', file=sys.stderr)
    sys.exit(any(faults for _, faults in cases))
