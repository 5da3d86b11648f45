# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# data.py TOP: every data file keeps to its published schema, the schemas are
# strict and know the reader's words.
import copy
import json
import re
import sys
from pathlib import Path

import jsonschema

TOP = Path(sys.argv[1])
DATA = TOP / 'data'
FILES = {
    'birds/kinds.json': 'kinds',
    'birds/breeds.json': 'breeds',
    'birds/lives.json': 'lives',
    'birds/eggs.json': 'eggs',
    'birds/feeds.json': 'feeds',
    'birds/care.json': 'care',
    'materials/compost.json': 'compost',
    'birds/heat.json': 'heat',
    'birds/air.json': 'air',
    'fittings/fittings.json': 'fittings',
    'fittings/openings.json': 'openings',
    'houses/measures.json': 'house-measures',
    'materials/floors.json': 'floors',
    'materials/bedding.json': 'bedding',
    'materials/latches.json': 'latches',
    'materials/mesh.json': 'mesh',
    'materials/constructions.json': 'constructions',
    'predators.json': 'predators',
    **{str(path.relative_to(DATA)): 'standard'
       for path in sorted((DATA / 'standards').glob('*.json'))},
}


def load(path):
    return json.loads(path.read_text(encoding='utf-8'))


def validator(name):
    schema = load(DATA / 'schemas' / f'{name}.schema.json')
    kind = jsonschema.validators.validator_for(schema)
    kind.check_schema(schema)
    return kind(schema)


def faults(path, name):
    for error in validator(name).iter_errors(load(DATA / path)):
        yield f'{path}: {"/".join(map(str, error.absolute_path))}: {error.message}'


def unlisted():
    listed = re.findall(r'<file>(.*?\.json)</file>',
                        (DATA / 'hencote.gresource.xml').read_text(encoding='utf-8'))
    return sorted(set(FILES) - set(listed))


def entries(document):
    for members in document.values():
        if isinstance(members, list):
            yield from (entry for entry in members if isinstance(entry, dict))


def spoiled(document):
    """The document with one entry spoiled, one way after another."""
    for at, entry in enumerate(entries(document)):
        for change in ({'colour_of_moon': 1}, {'basis': 'hearsay'}, {'id': 7, 'kind': 7, 'key': 7}):
            worse = copy.deepcopy(document)
            victim = list(entries(worse))[at]
            if 'basis' in change and 'basis' not in victim:
                continue
            victim.update(change)
            yield worse


def let_through(path, name):
    check = validator(name)
    return [f'{path}: a spoiled entry passes' for worse in spoiled(load(DATA / path))
            if check.is_valid(worse)]


def words_of_the_reader():
    text = (TOP / 'src/core/book/words.c').read_text(encoding='utf-8')
    return {name: tuple(re.findall(r'"([^"]+)"', body))
            for name, body in re.findall(r'hc_(\w+)_words\[\]\s*=\s*\{(.*?)\}', text, re.DOTALL)}


def enumerations(node):
    if isinstance(node, dict):
        if isinstance(node.get('enum'), list):
            yield tuple(node['enum'])
        for child in node.values():
            yield from enumerations(child)
    elif isinstance(node, list):
        for child in node:
            yield from enumerations(child)


def unknown_words():
    kinds = tuple(kind['id'] for kind in load(DATA / 'birds/kinds.json')['kinds'])
    known = set(words_of_the_reader().values()) | {kinds}
    for name in sorted(set(FILES.values())):
        for words in enumerations(load(DATA / 'schemas' / f'{name}.schema.json')):
            if words not in known:
                yield f'{name}: {words}'


def format_page():
    return (TOP / 'docs/rules-format.md').read_text(encoding='utf-8')


def unsound_examples():
    check = validator('standard')
    for example in re.findall(r'```json\n(.*?)```', format_page(), re.DOTALL):
        yield from (error.message for error in check.iter_errors(json.loads(example)))


def measures():
    for path, name in FILES.items():
        if name == 'standard':
            rules = load(DATA / path)
            for figure in rules['demands'] + rules['limits']:
                yield f'{figure["need"]}.{figure["measure"]}'


def undocumented():
    return sorted(set(measures()) ^ set(re.findall(r'^\| `(\S+\.\S+)` \| (?:demand|limit) ',
                                                   format_page(), re.MULTILINE)))


def sources_named(node):
    if isinstance(node, dict):
        if 'basis' in node:
            yield node.get('source')
        node = list(node.values())
    if isinstance(node, list):
        for child in node:
            yield from sources_named(child)


def unused_sources(path):
    document = load(DATA / path)
    used = set(sources_named(document))
    return [f'{path}: {source["key"]}' for source in document.get('sources', [])
            if source['key'] not in used]


def report(cases):
    cases = [(name, list(found)) for name, found in cases]
    print(f'1..{len(cases)}')
    for number, (name, found) in enumerate(cases, 1):
        for line in found[:20]:
            print(f'# {line}')
        print(f'{"not ok" if found else "ok"} {number} - {name}')
    sys.exit(any(found for _, found in cases))


report([
    *((f'{path} keeps to its schema', faults(path, name)) for path, name in FILES.items()),
    *((f'the schema of {path} is strict', let_through(path, name))
      for path, name in FILES.items()),
    *((f'{path} uses its sources', unused_sources(path)) for path in FILES),
    ('every data file is in the library', unlisted()),
    ('the example of the format keeps to the schema', unsound_examples()),
    ('the format lists what is measured', undocumented()),
    ('the schemas know the words of the reader', unknown_words()),
])
