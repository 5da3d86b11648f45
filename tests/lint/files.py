# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The tree is tidy: licence headers, short files, nothing left open, nothing
# at the top that does not belong there.
import re
import statistics

from tree import TOP, files_under, report, text_of

LONGEST = 800
SOURCES = ('.c', '.h')
WITH_HEADER = ('.c', '.h', '.py', '.sh', '.css', '.ui')
AT_TOP = {'README.md', 'DEVELOPERS.md', 'LICENSE', 'meson.build',
          'src', 'data', 'po', 'tests', 'help', 'docs'}
# Spelled in halves so that this file does not find itself.
OPEN = re.compile(r'\b(' + '|'.join(['TO' 'DO', 'FIX' 'ME', 'X' 'XX', 'HA' 'CK']) + r')\b')


def without_header():
    for path in files_under('src', 'tests', 'data', suffixes=WITH_HEADER):
        head = text_of(path)[:400]
        if 'SPDX-License-Identifier: GPL-3.0-or-later' not in head \
           or 'SPDX-FileCopyrightText:' not in head:
            yield str(path)


def too_long():
    lengths = {path: text_of(path).count('\n')
               for path in files_under('src', 'tests', suffixes=SOURCES)}
    if lengths:
        most = max(lengths, key=lengths.get)
        print(f'# {len(lengths)} files, median {statistics.median(lengths.values()):.0f}'
              f' lines, longest {most} with {lengths[most]}')
    return [f'{path}: {lines} lines' for path, lines in lengths.items() if lines > LONGEST]


def left_open():
    for path in files_under('src', 'tests', 'data', suffixes=WITH_HEADER + ('meson.build',)):
        for number, line in enumerate(text_of(path).splitlines(), 1):
            if OPEN.search(line):
                yield f'{path}:{number}: {line.strip()}'


def strangers_at_top():
    for entry in sorted(TOP.iterdir()):
        if entry.name in AT_TOP or entry.name.startswith('.'):
            continue
        if not (entry / 'build.ninja').exists():
            yield entry.name


report([
    ('every source says its licence', without_header()),
    (f'no file is longer than {LONGEST} lines', too_long()),
    ('nothing is left open', left_open()),
    ('the top holds what belongs there', strangers_at_top()),
])
