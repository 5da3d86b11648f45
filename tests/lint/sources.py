# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# docs/sources.md and the rules name the same sources, and every figure that
# is published names one of them.
import json

from tree import files_under, report, text_of

TABLE = 'docs/sources.md'
FIGURES = ['demands', 'limits', 'heat_laws', 'air_figures']
LISTS = ['air.json', 'heat.json']


def rows():
    """The tables of the page: key to title, publisher and year."""
    for line in text_of(TABLE).splitlines():
        cells = [cell.strip() for cell in line.strip('|').split('|')]
        if len(cells) == 6 and cells[0] not in ('key', '---'):
            yield cells[0], tuple(cells[1:4])


def unlike(rules, listed):
    for source in rules.get('sources', []):
        said = (source['title'], source['publisher'], str(source.get('year', '')))
        if listed.get(source['key']) != said:
            yield f"{source['key']}: {said} is {listed.get(source['key'])} in {TABLE}"


def without_source(rules):
    known = {source['key'] for source in rules.get('sources', [])}
    for figure in (figure for of in FIGURES for figure in rules.get(of, [])):
        if figure['basis'] == 'published' and figure.get('source') not in known:
            yield f"{figure['id']} is published where?"


def unused(all_rules, listed):
    used = {source['key'] for rules in all_rules.values() for source in rules.get('sources', [])}
    return sorted(set(listed) - used)


listed = dict(rows())
all_rules = {path.name: json.loads(text_of(path))
             for path in files_under('data/standards', 'data/birds', suffixes=('.json',))
             if path.parent.name == 'standards' or path.name in LISTS}
report([
    *((f'{name} names sources as {TABLE} does', unlike(rules, listed))
      for name, rules in all_rules.items()),
    *((f'{name} has a source for what is published', without_source(rules))
      for name, rules in all_rules.items()),
    (f'{TABLE} lists no source that nothing uses', unused(all_rules, listed)),
])
