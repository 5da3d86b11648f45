# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The English texts in the data files of the library, as calls xgettext reads:
# it cannot read JSON itself. With --join CATALOGUE they are added to that
# catalogue.
import json
import re
import subprocess
import sys
from pathlib import Path

HERE = Path(__file__).parent
TEXTS = ('why', 'about', 'note', 'caution', 'egg_colour')


def quoted(text):
    return json.dumps(text, ensure_ascii=False)


def texts(node):
    """Every text for translation below @node, each as a line of C."""
    if isinstance(node, list):
        for child in node:
            yield from texts(child)
    if not isinstance(node, dict):
        return
    if 'plural' in node:
        yield f'ngettext ({quoted(node["name"])}, {quoted(node["plural"])}, n);'
    elif 'name' in node:
        yield f'_({quoted(node["name"])});'
    for member in TEXTS:
        if member in node:
            yield f'_({quoted(node[member])});'
    for child in node.values():
        yield from texts(child)


def data_files():
    listed = (HERE / 'hencote.gresource.xml').read_text(encoding='utf-8')
    return [HERE / name for name in re.findall(r'<file>(.*?\.json)</file>', listed)]


def lines():
    for path in data_files():
        for line in dict.fromkeys(texts(json.loads(path.read_text(encoding='utf-8')))):
            yield f'/* {path.name} */ {line}'


def join(catalogue):
    subprocess.run(['xgettext', '--language=C', '--from-code=UTF-8', '--keyword=_',
                    '--keyword=ngettext:1,2', '--add-comments', '--no-location',
                    '--join-existing', f'--output={catalogue}', '-'],
                   input='\n'.join(lines()), text=True, check=True)


if sys.argv[1:2] == ['--join']:
    join(sys.argv[2])
else:
    print('\n'.join(lines()))
