# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# needs.py PROGRAM: every need PROGRAM names has its five pieces: the file that
# judges it, its figures, its sentences, its page in the manual and its tests.
import json
import re
import subprocess
import sys

from tree import files_under, report, text_of

# These have no figure of their own: distances are named under the thing they are
# kept from, and the keeper enters what the council says.
WITHOUT_FIGURES = {'clearance', 'site-rules'}

words = [page.removeprefix('need-') for page in
         subprocess.run(sys.argv[1:2], text=True, check=True,
                        stdout=subprocess.PIPE).stdout.split()]
sources = {path.stem for path in files_under('src/core/needs/judges', suffixes=('.c',))}
pages = {path.stem for path in files_under('help/C', suffixes=('.page',))}
sentences = ''.join(text_of(path) for path in files_under('src/core/words', suffixes=('.c',)))
tests = ''.join(text_of(path) for path in files_under('tests/needs', suffixes=('.c',)))
figures = {figure['need']
           for path in files_under('data/standards', suffixes=('.json',))
           for part in ('demands', 'limits')
           for figure in json.loads(text_of(path)).get(part, [])}


def lacks(word):
    if f'need-{word}' not in sources:
        yield f'no file judges {word}'
    if word not in figures | WITHOUT_FIGURES:
        yield f'no rules have a figure of {word}'
    if not re.search(rf'\.code = "{word}\.', sentences):
        yield f'no sentence tells of {word}'
    if f'need-{word}' not in pages:
        yield f'the manual has no page on {word}'
    if f'HC_NEED_{word.upper().replace("-", "_")}' not in tests and f'"{word}.' not in tests:
        yield f'no test asks about {word}'


report([(f'{word} has its five pieces', lacks(word)) for word in words])
