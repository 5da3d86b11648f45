# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# Includes run one way through the folders, and core knows no toolkit.
import re

from tree import TOP, files_under, report, text_of

# A folder may include from itself and from the layers before its own.
LAYERS = [
    ['base'],
    ['plan'],
    ['files', 'book', 'survey'],
    ['flock'],
    ['supply'],
    ['air'],
    ['climate'],
    ['needs'],
    ['season', 'build'],
    ['mend'],
    ['begin'],
    ['document'],
    ['words'],
    ['drawing'],
    ['app', 'cli'],
]
LAYER_OF = {folder: at for at, layer in enumerate(LAYERS) for folder in layer}

INCLUDE = re.compile(r'^\s*#\s*include\s+([<"])([^>"]+)[>"]', re.MULTILINE)
TOOLKIT = re.compile(r'^(gtk|gdk|gsk|gdk-pixbuf|adwaita|cairo|pango|graphene)\b')


def folder_of(path):
    parts = path.parts[1:]
    return parts[1] if parts[0] == 'core' and len(parts) > 2 else parts[0]


def wrong_way(path, included):
    """Why a file may not include what it includes, or nothing."""
    own, other = folder_of(path), included.split('/')[0]
    if '/' not in included or own not in LAYER_OF:
        return None
    if other not in LAYER_OF:
        return None
    if other != own and LAYER_OF[other] >= LAYER_OF[own]:
        return f'{path}: {own} comes before {other} and may not include {included}'
    return None


def main():
    backwards, toolkits, unknown, strangers = [], [], [], set()
    for path in files_under('src', suffixes=('.c', '.h')):
        if folder_of(path) not in LAYER_OF and folder_of(path) != 'core':
            strangers.add(folder_of(path))
        for bracket, included in INCLUDE.findall(text_of(path)):
            fault = wrong_way(path, included) if bracket == '"' else None
            if fault:
                backwards.append(fault)
            if path.parts[1] == 'core' and TOOLKIT.match(included):
                toolkits.append(f'{path}: {included}')
            if bracket == '"' and '/' in included and not found(path, included):
                unknown.append(f'{path}: {included} is not there')
    report([
        ('includes run one way', backwards),
        ('core includes no toolkit', toolkits),
        ('included headers are found', unknown),
        ('every folder has its layer', sorted(strangers)),
    ])


def found(path, included):
    roots = [TOP / 'src' / 'core', TOP / 'src', (TOP / path).parent]
    return any((root / included).is_file() for root in roots)


main()
