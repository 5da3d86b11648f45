# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# documented.py HEADER...: what a public header declares is described, in the
# header or in a file that begins with its name.
import re
import sys
from pathlib import Path

from tree import report

COMMENT = re.compile(r'/\*\*\n \* (\w+):')
FUNCTION = re.compile(r'^[A-Za-z_][\w \*]*?\b(hc_\w+) \(', re.MULTILINE)
TYPE = re.compile(r'^(?:\}|typedef struct _\w+) (Hc\w+);', re.MULTILINE)
PLAIN = re.compile(r'_(ref|unref|get_type|quark)$')


def undescribed(header):
    text = header.read_text(encoding='utf-8')
    described = set(COMMENT.findall(text))
    for source in header.parent.glob(header.stem + '*.c'):
        described |= set(COMMENT.findall(source.read_text(encoding='utf-8')))
    declared = [name for name in FUNCTION.findall(text) if not PLAIN.search(name)]
    return [name for name in declared + TYPE.findall(text) if name not in described]


headers = [Path(argument) for argument in sys.argv[1:]]
report((f'{header.parent.name}/{header.name} is described', undescribed(header))
       for header in headers)
